//! What a first cost is worth, bills, duties, the pumping plant criteria, and the spread of a result.

use super::tried;
use proptest::prelude::*;
use wellwright_core::cost::annuity::{annuity_factor, present_value};
use wellwright_core::cost::criteria::{
    Energy, energy_for, energy_per_acre_inch, performance, potential_saving, rating, water_horsepower_hours,
};
use wellwright_core::cost::duty::{Duty, DutyRow};
use wellwright_core::cost::duty_text::{FlowUnit, read_duty};
use wellwright_core::cost::spread::{Estimate, latin_hypercube, percentiles, range_of};
use wellwright_core::cost::tariff::{Season, Tariff, Use, bill};
use wellwright_core::cost::worth::{discounted_payback, level_net_present_value, net_present_value, simple_payback};
use wellwright_core::quantity::{
    Money, cubic_meters_per_hour, feet, gallons, gpm, hours, in_gpm, in_hours, kilograms_per_cubic_meter, kilowatts,
    psi, watts,
};

fn close(a: f64, b: f64, size: f64) -> bool {
    (a - b).abs() <= 1e-11 * size.abs()
}

proptest! {
    #![proptest_config(tried(500))]

    #[test]
    fn a_level_series_is_an_annuity(first in 0.0..1e6, yearly in -1e5..1e5, rate in 0.0..1.0, years in 0_usize..=100) {
        let by_years = net_present_value(Money(first), &vec![Money(yearly); years], rate).unwrap().0;
        let by_factor = present_value(Money(yearly), rate, years as f64).unwrap().0;
        let level = level_net_present_value(Money(first), Money(yearly), rate, years as f64).unwrap().0;
        let size = first + yearly.abs() * 100.0;
        prop_assert!(close(by_years, by_factor - first, size) && close(level, by_years, size), "{by_years} {level}");
    }

    #[test]
    fn worth_goes_in_proportion_and_adds_up(sums in prop::collection::vec((-1e5..1e5, -1e5..1e5), 0..40), rate in 0.0..1.0, times in 0.0..10.0) {
        let worth = |pick: &dyn Fn(&(f64, f64)) -> f64| {
            let sums: Vec<Money> = sums.iter().map(|pair| Money(pick(pair))).collect();
            net_present_value(Money(0.0), &sums, rate).unwrap().0
        };
        prop_assert!(close(worth(&|pair| times * pair.0), times * worth(&|pair| pair.0), 1e8));
        prop_assert!(close(worth(&|pair| pair.0 + pair.1), worth(&|pair| pair.0) + worth(&|pair| pair.1), 1e8));
    }

    #[test]
    fn interest_puts_the_payback_off(first in 0.0..1e6, saving in 1.0..1e5, rate in 0.0..1.0, times in 0.001..1000.0) {
        let simple = simple_payback(Money(first), Money(saving)).unwrap().unwrap();
        let Some(years) = discounted_payback(Money(first), Money(saving), rate).unwrap() else {
            prop_assert!(rate * first >= saving * (1.0 - 1e-12), "{rate} {first} {saving} pays");
            return Ok(());
        };
        prop_assert!(years >= simple * (1.0 - 1e-14), "{years} {simple}");
        // A job of another size in the same proportion pays back in the same time.
        let scaled = simple_payback(Money(times * first), Money(times * saving)).unwrap().unwrap();
        prop_assert!(close(scaled, simple, simple));
        if years <= 100.0 {
            let factor = annuity_factor(rate, years).unwrap();
            prop_assert!((factor * saving - first).abs() <= 1e-9 * (1.0 + first), "{factor} {saving} {first}");
        }
    }
}

/// A tariff of two parts and a use that fits it.
fn billed() -> impl Strategy<Value = (Tariff, Use)> {
    let prices = (0.0..1.0, 0.0..30.0, 0.0..100.0, 0.0..1.0, 0.0..30.0);
    (prices, 0_u8..=12, 0_u8..=12, 0_u8..=12, 0_u8..=12, 0_u8..=12, 0.1..200.0, 0.0..=1.0, 0.0..=1.0).prop_map(
        |((energy, demand, standing, dear, peak), season, months, inside, idle, idle_inside, kw, load, lean)| {
            let inside = inside.min(season).min(months).max(months.saturating_sub(12 - season));
            let season = Season {
                months: season,
                energy: Money(dear),
                demand: Money(peak),
                billed_months: idle_inside.min(season),
            };
            let tariff = Tariff {
                energy: Money(energy),
                demand: Money(demand),
                billed_months: idle.min(12 - season.months),
                standing: Money(standing),
                season: Some(season),
            };
            let most = |months: u8| 744.0 * kw * f64::from(months);
            let (within, outside) = (load * lean * most(inside), load * (1.0 - lean) * most(months - inside));
            let all = within + outside;
            let share = if all > 0.0 { within / all } else { 0.0 };
            let pump =
                Use { energy: all, largest: kilowatts(kw), months, months_in_season: inside, share_in_season: share };
            (tariff, pump)
        },
    )
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn a_bill_is_the_sum_of_its_parts((tariff, pump) in billed()) {
        let found = bill(&tariff, &pump).unwrap();
        let season = tariff.season.unwrap();
        let kw = pump.largest.value / 1000.0;
        let energy = pump.energy
            * (pump.share_in_season * season.energy.0 + (1.0 - pump.share_in_season) * tariff.energy.0);
        let inside = pump.months_in_season.max(season.billed_months);
        let outside = (pump.months - pump.months_in_season).max(tariff.billed_months);
        let demand = kw * (f64::from(inside) * season.demand.0 + f64::from(outside) * tariff.demand.0);
        prop_assert!(close(found.energy.0, energy, 1.0 + energy) && close(found.demand.0, demand, 1.0 + demand));
        let total = energy + demand + 12.0 * tariff.standing.0;
        prop_assert!(close(found.total.0, total, 1.0 + total));
    }

    #[test]
    fn more_load_never_lowers_the_bill((tariff, pump) in billed(), more in 1.0..3.0) {
        let total = |pump: &Use| bill(&tariff, pump).unwrap().total.0;
        let (before, size) = (total(&pump), 1e-12 * (1.0 + total(&pump)));
        let stronger = Use { largest: pump.largest * more, ..pump };
        prop_assert!(total(&stronger) >= before - size);
        let busier = Use { energy: pump.energy * more, ..stronger };
        prop_assert!(total(&busier) >= before - size);
        if pump.months < 12 && pump.months - pump.months_in_season < 12 - tariff.season.unwrap().months {
            let longer = Use { months: pump.months + 1, ..pump };
            prop_assert!(total(&longer) >= before - size);
        }
        // Dearer energy and more standing.
        let (energy, standing) = (Money(tariff.energy.0 * more), Money(tariff.standing.0 * more));
        let dearer = Tariff { energy, standing, ..tariff };
        prop_assert!(bill(&dearer, &pump).unwrap().total.0 >= before - size);
    }

    #[test]
    fn a_level_price_is_the_special_case((tariff, pump) in billed(), price in 0.0..1.0) {
        let level = Tariff::level(Money(price));
        prop_assert_eq!(bill(&level, &pump).unwrap().total, Money(price * pump.energy));
        // So is a season whose prices are those of the rest of the year.
        let season = Season { energy: Money(price), demand: Money(0.0), billed_months: 0, ..tariff.season.unwrap() };
        let same = bill(&Tariff { season: Some(season), ..level }, &pump).unwrap().total.0;
        prop_assert!(close(same, price * pump.energy, 1.0 + price * pump.energy));
    }
}

fn rows() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((0.1..5000.0, 0.0..366.0), 1..=24)
}

fn duty(rows: &[(f64, f64)]) -> Duty {
    Duty::new(rows.iter().map(|&(flow, time)| DutyRow { flow: gpm(flow), time: hours(time) }).collect()).unwrap()
}

proptest! {
    #![proptest_config(tried(500))]

    #[test]
    fn a_duty_adds_up(rows in rows(), times in 0.0..1.0, kw in 0.0..100.0) {
        let whole = duty(&rows);
        let part = duty(&rows.iter().map(|&(flow, time)| (flow, times * time)).collect::<Vec<_>>());
        prop_assert!(close(part.volume().value, times * whole.volume().value, whole.volume().value));
        // At one power the energy is that power over all hours, and nothing is below the largest.
        let powers = vec![kilowatts(kw); rows.len()];
        let energy = whole.energy(&powers).unwrap();
        prop_assert!(close(energy, kw * in_hours(whole.time()), energy));
        if let Some(share) = whole.mean_share(&powers).unwrap() {
            prop_assert!((share - 1.0).abs() < 1e-12);
        }
        let (Some(mean), Some(shares)) = (whole.mean_flow(), whole.shares()) else { return Ok(()) };
        prop_assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        let by_shares: f64 = shares.iter().zip(&rows).map(|(share, row)| share * row.0).sum();
        prop_assert!(close(in_gpm(mean), by_shares, by_shares));
    }

    #[test]
    fn a_written_duty_is_read(rows in rows(), mark in prop::sample::select(vec!["\t", ";", ", ", " "]), headed in any::<bool>()) {
        let lines = rows.iter().map(|(flow, time)| format!("{flow:.4}{mark}{time:.4}"));
        let heading = headed.then(|| format!("m3/h{mark}hours"));
        let text: Vec<String> = heading.into_iter().chain(lines).collect();
        let read = read_duty(&text.join("\n"), FlowUnit::CubicMeterPerHour).unwrap();
        prop_assert_eq!(read.told, headed);
        for (row, (flow, time)) in read.duty.rows().iter().zip(&rows) {
            prop_assert!((row.flow - cubic_meters_per_hour(*flow)).value.abs() < 1e-4 / 3600.0);
            prop_assert!((in_hours(row.time) - time).abs() < 1e-4);
        }
    }

    #[test]
    fn no_text_stops_the_reader_of_a_duty(text in "([0-9]{1,4}|[\\n\\t,; .#e-]|gpm|L/s|h|%|\\PC){0,60}") {
        match read_duty(&text, FlowUnit::Gpm) {
            Ok(read) => prop_assert!(read.duty.volume().value.is_finite() && !read.duty.rows().is_empty()),
            Err(error) => {
                prop_assert!(error.line >= 1 && error.line <= text.lines().count().max(1), "{error:?}");
                prop_assert!(error.column >= 1, "{error:?}");
            }
        }
    }
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn energy_goes_with_water_and_head_and_against_the_rating(acre_feet in 0.1..1000.0, head in 1.0..2000.0, share in 0.2..1.5, times in 0.1..1.0, diesel in any::<bool>()) {
        let energy = if diesel { Energy::Diesel } else { Energy::Electric };
        let water = kilograms_per_cubic_meter(999.0);
        let needed = |volume: f64, head: f64, share| {
            energy_for(energy, share, water, gallons(325_851.0 * volume), feet(head)).unwrap()
        };
        let base = needed(acre_feet, head, share);
        prop_assert!(close(needed(times * acre_feet, head, share), times * base, base));
        prop_assert!(close(needed(acre_feet, times * head, share), times * base, base));
        prop_assert!(close(needed(acre_feet, head, times * share) * times, base, base));
        // At the criteria the plant would use what is left of the saving.
        let saved = potential_saving(base, share).unwrap();
        prop_assert!(close(base - saved, needed(acre_feet, head, 1.0), base));
        // The rating of a plant that uses this energy in an hour is the one it was worked out from.
        let work = water_horsepower_hours(water, gallons(325_851.0 * acre_feet), feet(head)).unwrap();
        if work * 745.7 <= 1e7 {
            let found = rating(energy, performance(watts(745.7 * work), base).unwrap()).unwrap();
            prop_assert!(close(found, share, share), "{found} {share}");
        }
    }

    #[test]
    fn pressure_counts_as_its_head(lift in 0.0..1000.0, pressure in 0.0..150.0) {
        let water = kilograms_per_cubic_meter(999.0);
        let inch = |lift: f64, pressure: f64| {
            energy_per_acre_inch(Energy::Electric, 1.0, water, feet(lift), psi(pressure)).unwrap()
        };
        prop_assert!(close(inch(lift, pressure), inch(lift, 0.0) + inch(0.0, pressure), inch(lift, pressure)));
    }
}

fn estimate() -> impl Strategy<Value = Estimate> {
    (-1e3..1e3, 0.0..1e3, 0.0..1e3)
        .prop_map(|(low, below, above): (f64, f64, f64)| Estimate::new(low, low + below, low + below + above).unwrap())
}

/// Share of a triangle below a figure, by the areas of its two sides.
fn below(estimate: Estimate, figure: f64) -> f64 {
    let (a, c, b) = (estimate.low(), estimate.expected(), estimate.high());
    if figure <= c {
        (figure - a).powi(2) / ((b - a) * (c - a))
    } else {
        1.0 - (b - figure).powi(2) / ((b - a) * (b - c))
    }
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn a_quantile_has_its_share_below(estimate in estimate(), share in 0.0001..0.9999) {
        prop_assume!(estimate.high() - estimate.expected() > 1e-3 && estimate.expected() - estimate.low() > 1e-3);
        let figure = estimate.quantile(share).unwrap();
        prop_assert!((below(estimate, figure) - share).abs() < 1e-7, "{figure} has {} below", below(estimate, figure));
    }

    #[test]
    fn percentiles_are_ordered_and_follow_scale(numbers in prop::collection::vec(-1e6..1e6, 1..60), a in 0.0..=1.0, b in 0.0..=1.0, times in 0.0..100.0, more in -1e3..1e3) {
        let (low, high) = (f64::min(a, b), f64::max(a, b));
        let found = percentiles(&numbers, [0.0, low, high, 1.0]).unwrap();
        prop_assert!(found.windows(2).all(|pair| pair[0] <= pair[1] + 1e-9), "{found:?}");
        prop_assert_eq!(found[0], numbers.iter().copied().fold(f64::INFINITY, f64::min));
        prop_assert_eq!(found[3], numbers.iter().copied().fold(f64::NEG_INFINITY, f64::max));
        let scaled: Vec<f64> = numbers.iter().map(|number| times * number + more).collect();
        prop_assert!(close(percentiles(&scaled, [low]).unwrap()[0], times * found[1] + more, 1e8));
    }

    // A sum of strata: each part of a column holds one number, so the mean misses by less than a part's width.
    #[test]
    fn a_sample_has_the_mean_of_its_triangle(estimates in prop::collection::vec(estimate(), 1..6), points in 10_usize..400, seed in any::<u64>()) {
        let sample = latin_hypercube(&estimates, points, seed).unwrap();
        prop_assert_eq!(sample.points().count(), points);
        for (column, estimate) in estimates.iter().enumerate() {
            let numbers: Vec<f64> = sample.points().map(|point| point[column]).collect();
            prop_assert!(numbers.iter().all(|number| (estimate.low()..=estimate.high()).contains(number)));
            let mean = numbers.iter().sum::<f64>() / points as f64;
            let width = (estimate.high() - estimate.low()) / points as f64;
            prop_assert!((mean - estimate.mean()).abs() <= width + 1e-9, "{mean} {estimate:?}");
        }
    }

    #[test]
    fn the_spread_of_one_estimate_is_its_triangle(estimate in estimate(), seed in any::<u64>(), times in 0.1..10.0) {
        let points = 1000;
        let spread = range_of(&[estimate], points, seed, |point| Ok(point[0])).unwrap();
        for (found, share) in [(spread.low10, 0.1), (spread.median, 0.5), (spread.high90, 0.9)] {
            let [from, to] = [-0.002, 0.002].map(|off| estimate.quantile(share + off).unwrap());
            prop_assert!(found >= from && found <= to, "{found}, {from} to {to}");
        }
        prop_assert!(spread.low10 <= spread.median && spread.median <= spread.high90);
        let scaled = range_of(&[estimate], points, seed, |point| Ok(times * point[0])).unwrap();
        prop_assert!(close(scaled.median, times * spread.median, 1e5) && close(scaled.mean, times * spread.mean, 1e5));
        prop_assert_eq!(spread, range_of(&[estimate], points, seed, |point| Ok(point[0])).unwrap());
    }
}
