//! Laws of the ways to power the motor: input, derating, frames, volts, sag, start, harmonics, generator.

use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::drop::{Load, Phases, voltage_drop};
use wellwright_core::power::derating::{Derated, cabinet_ambient, derate};
use wellwright_core::power::family::{Change, Class, Family, Feed, Filter, Kind, Rating};
use wellwright_core::power::fit::{FrameFit, enclosure_fit, fit_frame, frames, plainest_enclosure};
use wellwright_core::power::generator::{Hookup, running_rating};
use wellwright_core::power::generic::generic;
use wellwright_core::power::harmonics::{Coupling, fundamental, total_distortion};
use wellwright_core::power::impedance::{Impedance, feeder, sag};
use wellwright_core::power::line_extension::Tariff;
use wellwright_core::power::start::start_dip;
use wellwright_core::power::step_up::{flux, lowest_frequency};
use wellwright_core::power::supply::{drive_input_current, input_current, input_power, true_power_factor};
use wellwright_core::power::transformer::{Transformer, apparent_power, next_size};
use wellwright_core::power::volts::{VoltsVerdict, budget, judge_volts, runs_out_at};
use wellwright_core::pump::motor::{RatedVoltage, running_current, table_current};
use wellwright_core::quantity::{
    Celsius, Money, MoneyPerLength, amperes, feet, hertz, horsepower, in_amperes, in_hertz, in_horsepower, in_volts,
    in_watts, kilovolt_amperes, meters, ohms_per_kilofoot, volts, watts,
};
use wellwright_core::standards::enclosure::{Demand, TABLE};
use wellwright_core::standards::motor_current::amperes_at;

fn near(a: f64, b: f64, share: f64) -> bool {
    (a - b).abs() <= share * a.abs().max(b.abs()).max(1e-12)
}

fn family() -> impl Strategy<Value = Family> {
    prop::sample::select(Kind::ALL.to_vec()).prop_map(generic)
}

fn class() -> impl Strategy<Value = Class> {
    prop::sample::select(vec![Class::Low, Class::High])
}

fn feed() -> impl Strategy<Value = Feed> {
    prop::sample::select(vec![Feed::SinglePhase, Feed::ThreePhase])
}

fn transformer(kva: f64, feed: Feed) -> Impedance {
    let unit = Transformer { rating: kilovolt_amperes(kva), voltage: volts(240.0), impedance: 0.02, feed };
    unit.as_impedance().unwrap()
}

fn run(length: f64, feed: Feed) -> Impedance {
    feeder(ohms_per_kilofoot(0.491), ohms_per_kilofoot(0.051), feet(length), feed).unwrap()
}

/// The factor of a place, or none where the maker is asked.
fn factor(rating: Rating, ambient: f64, altitude: f64) -> Option<f64> {
    derate(rating, Celsius(ambient), meters(altitude)).unwrap().factor()
}

/// Place of the frame that serves; beyond the last where none does.
fn frame_for(family: &Family, class: Class, required: f64, motor: f64, derated: Derated) -> f64 {
    match fit_frame(family, class, amperes(required), horsepower(motor), derated).unwrap() {
        FrameFit::Serves { frame, .. } => in_horsepower(frame.power),
        _ => f64::INFINITY,
    }
}

proptest! {
    #![proptest_config(tried(200))]

    #[test]
    fn input_current_rises_with_distortion(displacement in 0.5..1.0f64, a in 0.0..1.5f64, b in 0.0..1.5f64, feed in feed()) {
        let (low, high) = (a.min(b), a.max(b));
        let amps = |distortion| {
            let factor = true_power_factor(displacement, distortion).unwrap();
            in_amperes(input_current(watts(8000.0), volts(240.0), factor, feed).unwrap())
        };
        prop_assert!(amps(low) <= amps(high));
        // Harmonics add nothing to the power: the fundamental is the same.
        let first = |distortion| in_amperes(fundamental(amperes(amps(distortion)), distortion).unwrap());
        prop_assert!(near(first(low), first(high), 1e-12));
        prop_assert!(near(first(low), amps(0.0), 1e-12));
    }

    #[test]
    fn two_forms_of_the_input_agree(hp in 0.5..200.0f64, motor in 0.5..0.96f64, drive in 0.9..0.99f64, pf in 0.5..1.0f64) {
        let whole = drive_input_current(horsepower(hp), motor, drive, volts(480.0), pf).unwrap();
        let power = input_power(horsepower(hp), motor, watts(0.0), drive).unwrap();
        let parts = input_current(power, volts(480.0), pf, Feed::SinglePhase).unwrap();
        prop_assert!(near(in_amperes(whole), in_amperes(parts), 1e-12));
        let back = apparent_power(volts(480.0), parts, Feed::SinglePhase).unwrap();
        prop_assert!(near(in_watts(back) * pf, in_watts(power), 1e-12));
        let hot = input_power(horsepower(hp), motor, watts(500.0), drive).unwrap();
        prop_assert!(near(in_watts(hot) - in_watts(power), 500.0 / drive, 1e-9));
    }

    // The trade multiplies a motor's amperes by √3 for a drive on two lines; that is the power balance without losses, at
    // equal volts and power factor. Real motors and a passive front end put it 5 to 25 % higher, an active one lower.
    #[test]
    fn the_rule_of_the_square_root_of_three(hp in 1.0..150.0f64, efficiency in 0.75..0.95f64, pf in 0.80..0.88f64) {
        let motor = in_amperes(running_current(horsepower(hp), volts(230.0), efficiency, pf).unwrap());
        let ratio = |kind| {
            let input = generic(kind).input;
            let factor = true_power_factor(input.displacement, input.distortion).unwrap();
            let power = input_power(horsepower(hp), efficiency, watts(0.0), input.efficiency).unwrap();
            in_amperes(input_current(power, volts(240.0), factor, Feed::SinglePhase).unwrap()) / motor
        };
        let passive = ratio(Kind::ConvertingPassive) / 3f64.sqrt();
        prop_assert!((1.05..1.25).contains(&passive), "{passive}");
        prop_assert!(ratio(Kind::ConvertingActive) / 3f64.sqrt() < 1.0);
    }

    #[test]
    fn derating_never_raises_capacity(family in family(), t in -40.0..60.0f64, more in 0.0..10.0f64, h in -400.0..5000.0f64, up in 0.0..500.0f64) {
        let rating = family.rating;
        let here = factor(rating, t, h);
        if let Some(here) = here {
            prop_assert!(here > 0.0 && here <= 1.0);
        }
        for (warmer, higher) in [(t + more, h), (t, h + up), (t + more, h + up)] {
            match (here, factor(rating, warmer, higher)) {
                (None, Some(left)) => prop_assert!(false, "{left} where the maker was asked before"),
                (Some(here), Some(there)) => prop_assert!(there <= here),
                (_, None) => {}
            }
        }
        let in_the_sun = cabinet_ambient(Celsius(t), more).unwrap();
        prop_assert!(near(in_the_sun.0, t + more, 1e-12));
    }

    #[test]
    fn a_larger_need_never_takes_a_smaller_frame(
        family in family(), class in class(), need in 1.0..300.0f64, more in 0.0..100.0f64, hp in 0.5..200.0f64, grown in 1.0..2.0f64, t in 20.0..60.0f64, h in 0.0..4000.0f64,
    ) {
        let place = |t, h| derate(family.rating, Celsius(t), meters(h)).unwrap();
        let here = frame_for(&family, class, need, hp, place(t, h));
        prop_assert!(frame_for(&family, class, need + more, hp, place(t, h)) >= here);
        prop_assert!(frame_for(&family, class, need, (hp * grown).min(250.0), place(t, h)) >= here);
        prop_assert!(frame_for(&family, class, need, hp, place(t + 3.0, h)) >= here);
        prop_assert!(frame_for(&family, class, need, hp, place(t, h + 400.0)) >= here);
    }

    #[test]
    fn the_frame_that_serves_does_and_the_next_smaller_does_not(
        family in family(), class in class(), need in 1.0..300.0f64, hp in 0.5..200.0f64, t in 20.0..50.0f64, h in 0.0..3000.0f64,
    ) {
        let place = derate(family.rating, Celsius(t), meters(h)).unwrap();
        let all = frames(&family, class, place.factor().unwrap()).unwrap();
        prop_assert!(all.windows(2).all(|pair| pair[0].derated < pair[1].derated));
        let holds = |frame: &wellwright_core::power::fit::Frame| {
            in_amperes(frame.derated) >= need && in_horsepower(frame.carries) * (1.0 + 1e-9) >= hp
        };
        match fit_frame(&family, class, amperes(need), horsepower(hp), place).unwrap() {
            FrameFit::Serves { frame, share, .. } => {
                prop_assert!(holds(&frame) && near(share, need / in_amperes(frame.derated), 1e-12));
                prop_assert!(all.iter().filter(|other| other.power < frame.power).all(|other| !holds(other)));
            }
            FrameFit::CurrentShort { most, required } => {
                prop_assert!(most < required && all.iter().all(|frame| frame.derated <= most));
            }
            FrameFit::SizeShort { most, motor } => {
                prop_assert!(most < motor && all.iter().all(|frame| !holds(frame)));
            }
            FrameFit::AskMaker(place) => prop_assert!(false, "{place:?}"),
        }
    }

    #[test]
    fn amperes_between_frames_are_those_of_the_motor_table(hp in 0.5..200.0f64) {
        for column in [RatedVoltage::V230, RatedVoltage::V460] {
            let table = in_amperes(table_current(horsepower(hp), column).unwrap());
            prop_assert!(near(amperes_at(hp, column).unwrap(), table, 1e-7));
        }
    }

    // Without a transformer the sag is the drop of the lead, whose chapter works it out on its own.
    #[test]
    fn sag_and_drop_agree(amps in 0.1..200.0f64, pf in 0.3..1.0f64, length in 0.0..1000.0f64, feed in feed()) {
        let phases = if feed == Feed::SinglePhase { Phases::Single } else { Phases::Three };
        let load = Load { sending: volts(240.0), current: amperes(amps), power_factor: pf, phases };
        let drop = voltage_drop(load, ohms_per_kilofoot(0.491), ohms_per_kilofoot(0.051), feet(length)).unwrap();
        let sag = sag(volts(240.0), amperes(amps), pf, Impedance::default(), run(length, feed)).unwrap();
        match (drop, sag) {
            (Some(drop), Some(sag)) => {
                prop_assert!((in_volts(drop) - in_volts(sag.at_equipment)).abs() < 1e-9);
                prop_assert!(in_volts(sag.at_pole).abs() < 1e-9);
            }
            (None, None) => {}
            other => prop_assert!(false, "{other:?}"),
        }
    }

    #[test]
    fn sag_grows_with_current_and_length_and_shrinks_with_the_transformer(
        amps in 1.0..100.0f64, pf in 0.5..1.0f64, length in 1.0..300.0f64, kva in 15.0..250.0f64, feed in feed(),
    ) {
        let at = |amps, length, kva| {
            sag(volts(240.0), amperes(amps), pf, transformer(kva, feed), run(length, feed)).unwrap()
        };
        let Some(here) = at(amps, length, kva) else { return Ok(()) };
        prop_assert!(here.at_pole <= here.at_equipment && in_volts(here.at_pole) > 0.0);
        prop_assert!(near(in_volts(here.left + here.at_equipment), 240.0, 1e-12));
        for worse in [at(1.1 * amps, length, kva), at(amps, 1.1 * length, kva), at(amps, length, kva / 1.1)] {
            prop_assert!(worse.is_none_or(|worse| worse.at_equipment > here.at_equipment));
        }
    }

    #[test]
    fn a_start_dips_more_at_the_motor_and_less_on_a_larger_transformer(
        locked in 1.0..2000.0f64, length in 0.0..500.0f64, kva in 10.0..250.0f64,
    ) {
        let feed = Feed::SinglePhase;
        let at = |locked, kva| start_dip(volts(240.0), amperes(locked), transformer(kva, feed), run(length, feed)).unwrap();
        let here = at(locked, kva);
        prop_assert!(here.at_pole <= here.at_motor + 1e-12 && here.at_motor < 1.0);
        prop_assert!(in_amperes(here.current) < locked);
        prop_assert!(at(locked, 2.0 * kva).at_pole < here.at_pole);
        prop_assert!(at(1.5 * locked, kva).at_motor > here.at_motor);
        // A motor of constant impedance: its current falls with its volts.
        prop_assert!(near(in_amperes(here.current) / locked, 1.0 - here.at_motor, 1e-9));
    }

    #[test]
    fn the_volts_add_up(family in family(), class in class(), share in 0.6..1.1f64, drop in 0.0..60.0f64) {
        let supply = class.nominal() * share;
        let found = budget(&family, class, supply, volts(drop)).unwrap();
        let Some(motor) = family.motor_class(class) else {
            prop_assert_eq!(found, None);
            return Ok(());
        };
        let Some(found) = found else { return Ok(()) };
        let sum = found.output - found.filter - found.transformer - found.lead;
        prop_assert!(near(in_volts(sum), in_volts(found.at_motor), 1e-12));
        prop_assert!(found.sending <= found.output && found.at_motor <= found.sending);
        prop_assert_eq!(in_volts(found.filter) > 0.0, matches!(family.filter, Filter::Sine { .. }));
        prop_assert_eq!(in_volts(found.transformer) > 0.0, matches!(family.change, Change::SteppedUp { .. }));
        // No more than nominal from a held output, and no more than the line from one that follows.
        prop_assert!(found.output <= motor.nominal() * share.max(1.0) * (1.0 + 1e-12));
        let less = budget(&family, class, supply * 0.99, volts(drop)).unwrap();
        prop_assert!(less.is_none_or(|less| less.at_motor <= found.at_motor));
    }

    #[test]
    fn where_the_volts_run_out_they_just_hold(at_motor in 150.0..260.0f64, needed in 30.0..60.0f64) {
        let (at_motor, rated) = (volts(at_motor), volts(230.0));
        let lasts = runs_out_at(at_motor, rated, hertz(60.0)).unwrap();
        let judged = |needed| judge_volts(at_motor, rated, hertz(60.0), needed).unwrap();
        prop_assert!(matches!(judged(lasts * (1.0 - 1e-12)), VoltsVerdict::Holds(_)));
        prop_assert!(!matches!(judged(lasts * (1.0 + 1e-9)), VoltsVerdict::Holds(_)));
        let held = matches!(judged(hertz(needed)), VoltsVerdict::Holds(_));
        prop_assert_eq!(held, in_hertz(lasts) / needed >= 1.0);
    }

    #[test]
    fn other_load_thins_the_distortion_and_never_eases_the_row(
        own in 1.0..200.0f64, other in 0.0..400.0f64, thd in 0.0..1.5f64, fault in 500.0..50_000.0f64,
    ) {
        let at = |other| {
            let coupling = Coupling { short_circuit: amperes(fault), equipment: amperes(own), other: amperes(other) };
            coupling.total(thd).unwrap()
        };
        let (alone, shared) = (at(0.0), at(other));
        prop_assert!(near(alone.distortion, thd, 1e-12));
        prop_assert!(shared.distortion <= alone.distortion && shared.limit <= alone.limit);
        prop_assert!(near(shared.distortion * (own + other), thd * own, 1e-9));
        prop_assert_eq!(alone.keeps(), alone.margin >= 0.0);
    }

    #[test]
    fn a_single_order_never_has_more_room_than_all(own in 1.0..200.0f64, fault in 500.0..50_000.0f64, order in 2u32..51) {
        let coupling = Coupling { short_circuit: amperes(fault), equipment: amperes(own), other: amperes(0.0) };
        let (all, one) = (coupling.total(0.1).unwrap(), coupling.single(order, 0.1).unwrap().unwrap());
        prop_assert!(one.limit < all.limit && near(one.ratio, all.ratio, 1e-12));
        prop_assert_eq!(coupling.single(51, 0.1).unwrap(), None);
    }

    #[test]
    fn distortion_is_a_length(shares in prop::collection::vec(0.0..1.0f64, 1..12)) {
        let whole = total_distortion(&shares).unwrap();
        prop_assert!(shares.iter().all(|share| whole >= *share * (1.0 - 1e-12)));
        prop_assert!(whole <= shares.iter().sum::<f64>() * (1.0 + 1e-12));
    }

    #[test]
    fn a_set_is_larger_for_more_distortion_and_a_poorer_hookup(kva in 1.0..500.0f64, a in 0.0..1.5f64, b in 0.0..1.5f64) {
        let rating = |thd, hookup| in_watts(running_rating(kilovolt_amperes(kva), thd, hookup).unwrap());
        prop_assert!(rating(a.min(b), Hookup::AsBuilt) <= rating(a.max(b), Hookup::AsBuilt));
        prop_assert!(rating(a, Hookup::AsBuilt) < rating(a, Hookup::DoubleDelta));
        prop_assert!(rating(a, Hookup::DoubleDelta) < rating(a, Hookup::TwoLines));
        prop_assert!(rating(a, Hookup::AsBuilt) > 1000.0 * kva);
    }

    #[test]
    fn a_transformer_size_covers_its_load_and_is_the_least(kva in 0.1..500.0f64, feed in feed()) {
        let size = next_size(kilovolt_amperes(kva), feed).unwrap().unwrap();
        prop_assert!(in_watts(size) >= 1000.0 * kva * (1.0 - 1e-12));
        prop_assert_eq!(next_size(size, feed).unwrap(), Some(size));
        prop_assert!(next_size(size * 0.999, feed).unwrap().unwrap() <= size);
        let unit = |rating| Transformer { rating, voltage: volts(480.0), impedance: 0.02, feed };
        // What goes in at the rated current is the rating, and its own impedance takes its share of the volts.
        let rated = unit(size).rated_current().unwrap();
        prop_assert!(near(in_watts(apparent_power(volts(480.0), rated, feed).unwrap()), in_watts(size), 1e-12));
        let z = unit(size).as_impedance().unwrap().size();
        prop_assert!(near(in_volts(rated * z), 0.02 * 480.0, 1e-12));
    }

    #[test]
    fn at_its_lowest_frequency_the_core_is_just_full(boost in 0.001..0.2f64, most in 1.01..1.5f64) {
        let f = lowest_frequency(boost, most, hertz(60.0)).unwrap();
        let share = boost + (1.0 - boost) * in_hertz(f) / 60.0;
        prop_assume!(in_hertz(f) >= 0.5);
        prop_assert!(near(flux(volts(240.0 * share), volts(240.0), f, hertz(60.0)).unwrap(), most, 1e-12));
        prop_assert!(in_hertz(f) < 60.0);
    }

    #[test]
    fn at_break_even_the_line_costs_as_much(fixed in 0.0..20_000.0f64, rate in 1.0..100.0f64, free in 0.0..500.0f64, other in 0.0..60_000.0f64) {
        let tariff = Tariff { fixed: Money(fixed), per_length: MoneyPerLength(rate), free: meters(free) };
        match tariff.break_even(Money(other)).unwrap() {
            Some(distance) => {
                prop_assert!(near(tariff.cost(distance).unwrap().0, other, 1e-9));
                prop_assert!(tariff.cost(distance + meters(10.0)).unwrap().0 > other);
                prop_assert!(tariff.cost(distance * 0.5).unwrap().0 <= other * (1.0 + 1e-12));
            }
            None => prop_assert!(tariff.cost(meters(0.0)).unwrap().0 > other),
        }
    }

    #[test]
    fn more_asked_of_an_enclosure_never_widens_the_choice(marks in prop::collection::vec(0usize..11, 0..6)) {
        let all = [
            Demand::Weather, Demand::IceOnHandles, Demand::Drips, Demand::SettlingDust, Demand::BlownDust, Demand::Hose,
            Demand::OilSeepage, Demand::OilSpray, Demand::Corrosion, Demand::BriefFlood, Demand::LongFlood,
        ];
        let place: Vec<Demand> = marks.iter().map(|mark| all[*mark]).collect();
        let serves = |place: &[Demand]| {
            let fits = |kind| enclosure_fit(kind, place) == wellwright_core::power::fit::EnclosureFit::Serves;
            TABLE.iter().filter(|row| fits(row.kind)).count()
        };
        for part in 0..place.len() {
            prop_assert!(serves(&place[..part]) >= serves(&place));
        }
        prop_assert_eq!(plainest_enclosure(&place).is_some(), serves(&place) > 0);
    }
}
