//! How sure the saving is and when it has paid back, worked a second time in plain loops.

use super::jobs;
use wellwright_core::cost::book::{BookUnit, Item, Price, PriceBook};
use wellwright_core::cost::book_table::write;
use wellwright_core::evaluate::range::{Band, POINTS, Uncertain, band, saving_range};
use wellwright_core::evaluate::ranking::{Ranked, ranking};
use wellwright_core::evaluate::{Basis, Evaluation, evaluate, payback};
use wellwright_core::job::{Field, Job, Way, WayKey, wire};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{Entry, Unit, in_amperes, in_feet, in_gallons, in_gpm, in_meters};
use wellwright_core::standards::conductor::TABLE_8;

fn house(figures: &[(Field, f64)]) -> Job {
    jobs::with(jobs::house(), figures)
}

fn net(answer: &Evaluation) -> f64 {
    answer.here.as_ref().unwrap().saving.unwrap().net.0
}

/// Hours and energy as they are counted, the equipment as it is priced: only the metal is left to vary.
fn certain(metal: [f64; 3]) -> Job {
    let [low, middle, high] = metal;
    house(&[
        (Field::CableMetal, middle),
        (Field::MetalLow, low),
        (Field::MetalHigh, high),
        (Field::EquipmentLow, 100.0),
        (Field::EquipmentHigh, 100.0),
        (Field::YearlyHours, 1500.0),
        (Field::HoursLow, 1500.0),
        (Field::HoursHigh, 1500.0),
        (Field::EnergyPrice, 0.12),
        (Field::EnergyLow, 0.12),
        (Field::EnergyHigh, 0.12),
    ])
}

/// Thirty percent more or less, and no more than a year of 366 days has.
#[test]
fn hours_may_turn_out_as_many_as_a_year_has() {
    for (hours, low, high) in [(1500.0, 1050.0, 1950.0), (8000.0, 5600.0, 8784.0)] {
        let answer = evaluate(&house(&[(Field::YearlyHours, hours)]));
        for (field, expected) in [(Field::HoursLow, low), (Field::HoursHigh, high)] {
            let stands = answer.inputs.stand_in(field).unwrap();
            assert!((stands.value - expected).abs() < 1e-9 * expected, "{field:?}: {stands:?}");
        }
    }
}

/// By months of use: five of six in the season, all of four, none without a season; no part of a month.
#[test]
fn energy_falls_into_the_season_by_its_months() {
    for (season, used, expected) in
        [(5.0, 6.0, Some(100.0 * 5.0 / 6.0)), (5.0, 4.0, Some(100.0)), (0.0, 6.0, Some(0.0)), (4.5, 6.0, None)]
    {
        let answer = evaluate(&house(&[(Field::SeasonMonths, season), (Field::MonthsOfUse, used)]));
        let share = answer.inputs.stand_in(Field::SeasonShare).map(|entry| entry.value);
        let agrees = match (share, expected) {
            (Some(share), Some(expected)) => (share - expected).abs() < 1e-9,
            (share, expected) => share == expected,
        };
        assert!(agrees, "{season} and {used} months: {share:?}");
    }
}

/// What the metal moves, the conductors from the pole too, is what the job costs less or more at that price; the book asks
/// for its metal 1.5 times.
#[test]
fn the_metal_moves_what_the_job_costs_at_its_price() {
    let mut job = wire::read_text(include_str!("../golden/v1/house_and_stock_well_on_its_supply.job.json")).unwrap();
    job.set(Field::ExtraEquipment, None);
    job.pair[0] = Some(WayKey::Generic(Kind::RotaryConverter));
    let mut book = PriceBook::invented();
    book.set(Item::CableFactor, Price::new(1.5, BookUnit::One)).unwrap();
    job.book = write(&book);
    let answer = evaluate(&job);
    let all = ranking(&job, &answer);
    let metal = all.ranks.iter().find(|rank| rank.what == Ranked::Uncertain(Uncertain::Metal)).unwrap();
    let ends = band(&job, &answer, Band::Metal).unwrap();
    for (end, (answer, saving)) in ends.iter().zip(metal.saving[Basis::Installed as usize]).enumerate() {
        let (expected, found) = (net(answer), saving.unwrap().0);
        assert!((found - expected).abs() < 1e-6 * expected.abs(), "end {end}: {found}, {expected}");
    }
    let here = answer.here.as_ref().unwrap();
    let supply = Way::ALL.map(|way| here.way(way).unwrap().outfit.cost.supply.0);
    assert!((supply[0] - supply[1]).abs() > 1.0, "{supply:?}");
}

/// A pump that never runs has no hours that may turn out otherwise.
#[test]
fn no_hours_are_certain() {
    let figures = [(Field::YearlyHours, 0.0), (Field::HoursLow, 0.0), (Field::HoursHigh, 0.0)];
    let range = saving_range(&evaluate(&house(&figures))).unwrap().unwrap();
    let spread = range.on(Basis::Lifetime).unwrap();
    assert!(spread.low10.is_finite() && spread.high90.is_finite() && spread.low10 < spread.high90, "{spread:?}");
}

/// A cable whose price holds its metal 1.5 times moves 1.5 times as far with it.
#[test]
fn what_a_cable_asks_for_its_metal_counts_in_the_range() {
    let book = |factor: &str| {
        let rows = ["item,kind,metal,unit,price", "currency,USD,,,", "date,2026-11-01,,,", "cable_fixed,,,$/ft,0.5"];
        let rows = rows.join("\n") + "\nmetal,,copper,$/lb,9\ncable_factor,,,," + factor;
        let mut job = certain([6.0, 9.0, 12.0]);
        job.book = rows;
        let range = saving_range(&evaluate(&job)).unwrap().unwrap();
        let spread = range.on(Basis::Cable).unwrap();
        spread.high90 - spread.low10
    };
    let (plain, more) = (book("1"), book("1.5"));
    assert!(plain > 0.0 && (more / plain - 1.5).abs() < 1e-9, "{plain}, {more}");
}

#[test]
fn what_is_certain_has_no_range() {
    let plain = certain([9.0, 9.0, 9.0]);
    let mut with_demand = plain.clone();
    with_demand.set(Field::DemandPrice, Some(Entry::new(8.0, Unit::DollarPerKilowatt)));
    for job in [plain, with_demand] {
        is_certain(&evaluate(&job));
    }
}

fn is_certain(answer: &Evaluation) {
    let range = saving_range(answer).unwrap().unwrap();
    let saving = answer.here.as_ref().unwrap().saving.unwrap();
    for basis in Basis::ALL {
        let (spread, expected) = (range.on(basis).unwrap(), saving.on(basis).unwrap().0);
        for figure in [spread.low10, spread.median, spread.high90, spread.mean] {
            assert!((figure - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{basis:?}: {figure}, {expected}");
        }
    }
}

/// The saving is straight in the metal's price, so its mean is the saving at the mean of the triangle: (a + b + c)/3. A
/// Latin hypercube draws once from each of its thousand strips, so it meets the mean far within a standard error.
#[test]
fn the_mean_of_the_draws_is_the_saving_at_the_mean_of_the_triangle() {
    for metal in [[6.0, 9.0, 12.0], [5.0, 9.0, 20.0], [1.0, 9.0, 9.0]] {
        let answer = evaluate(&certain(metal));
        let spread = saving_range(&answer).unwrap().unwrap().on(Basis::Installed).unwrap();
        let [low, middle, high] = metal;
        let mean = (low + middle + high) / 3.0;
        let at = |price: f64| net(&evaluate(&certain([price, price, price])));
        let slope = at(10.0) - at(9.0);
        // Deviation of a triangle: √((a² + b² + c² − ab − ac − bc)/18).
        let squares = low * low + middle * middle + high * high - low * middle - low * high - middle * high;
        let error = slope.abs() * (squares / 18.0).sqrt() / (POINTS as f64).sqrt();
        assert!((spread.mean - at(mean)).abs() < 0.1 * error, "{metal:?}: {} {} {error}", spread.mean, at(mean));
        assert!(spread.low10 < spread.median && spread.median < spread.high90);
        // The tenth of a triangle that lies lowest ends at a + √(0.1 (c − a)(b − a)), where that is below b.
        if middle > low && 0.1 * (high - low) <= middle - low {
            let tenth = low + (0.1 * (high - low) * (middle - low)).sqrt();
            let found = if slope > 0.0 { spread.low10 } else { spread.high90 };
            assert!((found - at(tenth)).abs() < slope.abs() * 0.02 * (high - low), "{metal:?}: {found}, {}", at(tenth));
        }
    }
}

#[test]
fn the_same_job_has_the_same_range() {
    let answer = evaluate(&house(&[]));
    assert_eq!(saving_range(&answer), saving_range(&answer));
    assert_eq!(saving_range(&answer), saving_range(&evaluate(&house(&[]))));
}

/// The years are stepped one by one: what the dearer way saves, each year's worth today, until it has paid.
#[test]
fn the_payback_is_reached_between_two_years() {
    for (hours, rate) in [(1500.0, 6.0), (4000.0, 6.0), (8000.0, 0.0), (8000.0, 10.0)] {
        let answer = evaluate(&house(&[(Field::YearlyHours, hours), (Field::Discount, rate)]));
        let here = answer.here.as_ref().unwrap();
        let lead = in_meters(here.lead);
        let yearly = Way::ALL.map(|way| here.way(way).unwrap().run.yearly.unwrap().at(lead));
        let installed = Way::ALL.map(|way| here.way(way).unwrap().installed.0);
        let dearer = usize::from(installed[1] > installed[0]);
        let (first, saves) = (installed[dearer] - installed[1 - dearer], yearly[1 - dearer] - yearly[dearer]);
        let found = payback(&answer).unwrap();
        assert_eq!(found.way, Way::ALL[dearer]);
        assert!((found.first.0 - first).abs() < 1e-9 * first && (found.yearly.0 - saves).abs() < 1e-9 * saves.abs());
        let paid =
            |years: u32, rate: f64| (1..=years).map(|year| saves / (1.0 + rate / 100.0).powi(year as i32)).sum::<f64>();
        for (told, rate) in [(found.simple, 0.0), (found.discounted, rate)] {
            match told {
                Some(years) => {
                    let (below, above) = (years.floor() as u32, years.ceil() as u32);
                    assert!(paid(below, rate) <= first * (1.0 + 1e-12), "{hours} h, {rate} %: {years}");
                    assert!(paid(above, rate) >= first * (1.0 - 1e-12), "{hours} h, {rate} %: {years}");
                }
                None => assert!(paid(100_000, rate) < first, "{hours} h, {rate} %"),
            }
        }
        assert!(found.simple.is_some(), "{found:?}");
    }
}

/// A year of duty and its bill, month by month: 7 months of use, 4 of them in a season of their own prices, demand billed
/// in 8 months at least, the season's first.
#[test]
fn a_year_of_duty_is_billed_month_by_month() {
    let job = wire::read_text(include_str!("../golden/v1/pump_curve_with_a_year.job.json")).unwrap();
    let answer = evaluate(&job);
    let (year, way) = (answer.year.as_ref().unwrap(), answer.ways.picked().unwrap());
    let (motor, lead) = (way.motor.unwrap(), way.lead.unwrap());
    let asked = [(8.0, 900.0), (15.0, 700.0), (22.0, 350.0)];
    let (mut energy, mut largest, mut water) = (0.0, 0.0_f64, 0.0);
    for ((gpm, hours), row) in asked.into_iter().zip(&year.rows) {
        let power = row.power;
        assert!((in_gpm(row.drawn.unwrap().flow) - gpm).abs() < 1e-9 && power.load.hours == hours, "{row:?}");
        // Shaft over efficiency is the motor's input; the nameplate's current falls with the load, and rises as the volts
        // fall with the frequency.
        let hertz = 60.0 * row.drawn.unwrap().duty.ratio.unwrap();
        assert!(hertz < 60.0, "{hertz}");
        let share = (power.shaft / motor.power).value / (hertz / 60.0);
        assert!(close(power.motor.value, power.shaft.value * (1.0 / motor.efficiency - 1.0)));
        let (amps, per_kilofoot) =
            (in_amperes(motor.nameplate) * share, TABLE_8[lead.run.conductor.size as usize].copper);
        let heat = 3.0 * amps * amps * per_kilofoot / 1000.0 * in_feet(lead.length);
        assert!(close(power.lead.value, heat), "{} {heat}", power.lead.value);
        let drawn = (power.shaft.value + power.motor.value + heat) / way.family.input.efficiency;
        assert!(close(power.equipment.value, drawn * (1.0 - way.family.input.efficiency)));
        assert!(close(power.metered.value, drawn + power.supply.value));
        energy += power.metered.value / 1000.0 * hours;
        largest = largest.max(power.metered.value / 1000.0);
        water += gpm * 60.0 * hours;
    }
    assert!(close(year.energy, energy) && close(in_gallons(year.volume.unwrap()), water));
    let (mut of_energy, mut of_demand, mut standing) = (0.0, 0.0, 0.0);
    for month in 0..12 {
        let (season, used) = (month < 4, month < 7);
        let (price, kilowatt) = if season { (0.13, 11.0) } else { (0.09, 7.5) };
        let part = if season { 0.65 / 4.0 } else { 0.35 / 3.0 };
        of_energy += if used { energy * part * price } else { 0.0 };
        of_demand += if used || month < 8 { largest * kilowatt } else { 0.0 };
        standing += 22.0;
    }
    assert!(close(year.bill.energy.0, of_energy), "{:?} {of_energy}", year.bill);
    assert!(close(year.bill.demand.0, of_demand), "{:?} {of_demand}", year.bill);
    assert!(close(year.bill.standing.0, standing) && close(year.bill.total.0, of_energy + of_demand + standing));
    assert!(close(year.carbon.unwrap().value, 0.8 * 0.453_592_37 * energy));
    // Water horsepower-hours for a kilowatt-hour over 0.885 (Nebraska).
    let (performance, rating) = year.performance.unwrap();
    assert!(close(rating, performance / 0.885), "{performance} {rating}");
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}
