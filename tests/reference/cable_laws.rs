//! Laws of the cable chapter that hold for any figures: what a pulse, a filter, a feeder, a flat cable, an economic size
//! and a warm conductor can and can't do.

use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};
use uom::si::electrical_resistance::ohm;
use wellwright_core::cable::ampacity::{Setting, ampacity};
use wellwright_core::cable::conductor::table_resistance;
use wellwright_core::cable::drop::{Load, Phases, voltage_drop};
use wellwright_core::cable::economic::{Candidate, Duty, choose, lifetime};
use wellwright_core::cable::feeder::{Feeder, fed};
use wellwright_core::cable::filter::{Practice, Remedy, longest_by_volts, remedy};
use wellwright_core::cable::flat::flat_drop;
use wellwright_core::cable::lead::{Conductor, Governs, Laying, impedance};
use wellwright_core::cable::long_lead::{Wave, corners, critical_length, longest_unfiltered, peak, reflection};
use wellwright_core::cable::reactance::Build;
use wellwright_core::cable::skin::{ROUND_STRANDED, ac_resistance, proximity_effect, skin_effect};
use wellwright_core::cable::temperature::{Service, conductor_temperature, settled_temperature};
use wellwright_core::cost::annuity::annuity_factor;
use wellwright_core::quantity::{
    Celsius, ElectricalResistance, Money, MoneyPerLength, amperes, feet, hertz, in_amperes, in_feet, in_meters,
    in_volts, meters, meters_per_second, ohms_per_kilofoot, seconds, volts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};

/// Settings of a law that is tried this many times, with the same figures each run.
fn tried(cases: u32) -> Config {
    let mut config = Config { failure_persistence: None, ..Config::default() };
    if config.rng_seed == RngSeed::Random {
        config.rng_seed = RngSeed::Fixed(20_260_214);
    }
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    config
}

fn size() -> impl Strategy<Value = Size> {
    prop::sample::select(Size::ALL.to_vec())
}

fn metal() -> impl Strategy<Value = Metal> {
    prop_oneof![Just(Metal::Copper), Just(Metal::Aluminum)]
}

fn rating() -> impl Strategy<Value = Rating> {
    prop_oneof![Just(Rating::C60), Just(Rating::C75), Just(Rating::C90)]
}

fn wave() -> impl Strategy<Value = Wave> {
    let ohms = ElectricalResistance::new::<ohm>;
    (100.0..250.0, 0.02..5.0, 20.0..300.0, 100.0..10_000.0).prop_map(move |(speed, rise, cable, motor)| Wave {
        speed: meters_per_second(speed * 1e6),
        rise: seconds(rise * 1e-6),
        cable: ohms(cable),
        motor: ohms(motor),
    })
}

proptest! {
    #![proptest_config(tried(500))]

    #[test]
    fn a_peak_lies_between_nothing_and_twice_the_bus_and_never_turns_back(
        wave in wave(), bus in 100.0..1000.0, length in 0.0..2000.0, more in 0.0..100.0,
    ) {
        let at = |length: f64| in_volts(peak(volts(bus), wave, meters(length)).unwrap());
        let sent_back = reflection(wave.motor, wave.cable).unwrap();
        prop_assert!(sent_back.abs() < 1.0 && at(length) > 0.0 && at(length) < 2.0 * bus);
        prop_assert!((at(length + more) - at(length)) * sent_back >= 0.0);
        prop_assert_eq!(at(0.0), bus);
        let longest = critical_length(wave.speed, wave.rise).unwrap();
        prop_assert!((at(in_meters(longest)) / bus - 1.0 - sent_back).abs() < 1e-12);
        let corners = corners(volts(bus), wave, meters(length)).unwrap();
        prop_assert!(corners.iter().all(|corner| (in_volts(corner.peak) - at(in_meters(corner.length))).abs() < 1e-9));
        prop_assert!(corners.windows(2).all(|pair| pair[0].length <= pair[1].length));
    }

    #[test]
    fn up_to_the_longest_lead_without_a_filter_none_is_needed_and_beyond_it_one_is(
        wave in wave(), bus in 100.0..1000.0, limit in 100.0..2000.0, share in 0.0..0.999,
    ) {
        let longest = longest_unfiltered(volts(bus), wave, volts(limit)).unwrap();
        let needed = |length: f64| {
            let peak = peak(volts(bus), wave, meters(length)).unwrap();
            let least = remedy((peak, volts(bus)), volts(limit), meters(length), &Practice::default()).unwrap();
            least != Some(Remedy::NoneNeeded)
        };
        if longest.value.is_infinite() {
            prop_assert!(!needed(1000.0));
        } else {
            let longest = in_meters(longest);
            prop_assert!(longest == 0.0 || !needed(share * longest));
            prop_assert!(needed(longest * 1.001 + 1e-6));
        }
    }

    #[test]
    fn a_filter_that_costs_more_volts_reaches_less_far(
        size in size(), sending in 200.0..600.0, amps in 1.0..200.0, pf in 0.5..1.0, need in 0.80..0.96, cost in 0.0..0.2,
    ) {
        let load = Load { sending: volts(sending), current: amperes(amps), power_factor: pf, phases: Phases::Three };
        let (r, x) = (table_resistance(size, Metal::Copper), ohms_per_kilofoot(0.05));
        let reach = |cost: f64| in_feet(longest_by_volts(load, r, x, volts(need * sending), cost).unwrap());
        prop_assert!(reach(cost) < reach(0.0));
        prop_assert!(reach(cost) == 0.0 || reach(cost + 0.01) < reach(cost));
    }
}

/// A feeder of any figures that a job may have.
fn feeder() -> impl Strategy<Value = Feeder> {
    let setting = (metal(), rating(), rating(), -20.0..60.0).prop_map(|(metal, insulation, terminals, ambient)| {
        Setting { metal, insulation, terminals: terminals.min(insulation), ambient: Celsius(ambient) }
    });
    let laying = prop_oneof![Just(Laying::Together), Just(Laying::Apart)];
    (setting, 200.0..500.0, 5.0..300.0, 0.3..1.0, 0.5..1.0, 0.01..0.10, 1..4u8, laying).prop_map(
        |(setting, supply, rated, load, pf, drop, most_sets, laying)| Feeder {
            phases: Phases::Single,
            supply: volts(supply),
            rated_input: amperes(rated),
            running: amperes(rated * load),
            power_factor: pf,
            setting,
            build: Build::PlasticConduit,
            laying,
            most_sets,
            allowed_drop: drop,
            device: amperes(rated * 1.25),
        },
    )
}

/// What a conductor carries and drops, worked apart from the choice; `None` where it can't feed the load.
fn tried_alone(feeder: &Feeder, one: Conductor, length: f64) -> (f64, Option<f64>) {
    let bundled = if feeder.laying == Laying::Apart { 2 } else { 2 * usize::from(one.sets) };
    let carries = ampacity(one.size, feeder.setting, bundled).map_or(0.0, in_amperes) * f64::from(one.sets);
    let (r, x) = impedance(one, feeder.setting.metal, feeder.build);
    let load = Load {
        sending: feeder.supply,
        current: feeder.running,
        power_factor: feeder.power_factor,
        phases: Phases::Single,
    };
    (carries, voltage_drop(load, r, x, feet(length)).unwrap().map(in_volts))
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn a_feeder_is_the_first_conductor_that_serves(feeder in feeder(), length in 0.0..2000.0) {
        let allowed = feeder.allowed_drop * in_volts(feeder.supply);
        let required = 1.25 * in_amperes(feeder.rated_input);
        let serves = |one: Conductor, slack: f64| {
            let (carries, drop) = tried_alone(&feeder, one, length);
            carries >= required && drop.is_some_and(|drop| drop <= allowed + slack)
        };
        let all = (1..=feeder.most_sets).flat_map(|sets| Size::ALL.map(|size| Conductor { sets, size }));
        let all: Vec<_> = all.filter(|one| one.sets == 1 || one.size >= Size::Awg1_0).collect();
        match fed(&feeder, feet(length)).unwrap() {
            None => prop_assert!(!all.iter().any(|one| serves(*one, -1e-9))),
            Some(fed) => {
                prop_assert!(serves(fed.run.conductor, 1e-9));
                let smaller = all.iter().take_while(|one| **one != fed.run.conductor);
                for one in smaller {
                    prop_assert!(!serves(*one, -1e-9), "{one:?} serves before {:?}", fed.run.conductor);
                }
                prop_assert!((in_volts(fed.drop) / in_volts(feeder.supply) - fed.share).abs() < 1e-12);
                prop_assert!(fed.run.ground <= fed.run.conductor.size);
                prop_assert!(fed.run.governs == Governs::Drop || !fed.run.ground_grew);
            }
        }
    }

    #[test]
    fn the_economic_size_is_the_cheapest_of_the_legal_ones_and_never_smaller(
        from in 0..Size::ALL.len(), amps in 0.0..400.0, hours in 0.0..8784.0, price in 0.0..1.0, worth in 0.0..30.0,
        fixed in 0.0..5.0, per_kcmil in 0.001..0.5, length in 1.0..3000.0,
    ) {
        let candidate = |size: &Size| Candidate {
            conductor: Conductor { sets: 1, size: *size },
            resistance: table_resistance(*size, Metal::Copper),
            price: MoneyPerLength(fixed + per_kcmil * size.row().cmil / 1000.0),
        };
        let legal: Vec<Candidate> = Size::ALL[from..].iter().map(candidate).collect();
        let duty = Duty {
            current: amperes(amps), phases: Phases::Three, hours, kilowatt_hour: Money(price), present_worth: worth,
        };
        let choice = choose(&legal, duty).unwrap().unwrap();
        prop_assert_eq!(choice.smallest.candidate.conductor.size, Size::ALL[from]);
        prop_assert!(choice.economic.candidate.conductor.size >= Size::ALL[from]);
        for one in &legal {
            let cost = lifetime(*one, duty).unwrap().cost(feet(length));
            prop_assert!(choice.economic.cost(feet(length)).0 <= cost.0 * (1.0 + 1e-12));
        }
        // A longer life never asks for less metal.
        let longer = choose(&legal, Duty { present_worth: worth + 5.0, ..duty }).unwrap().unwrap();
        prop_assert!(longer.economic.candidate.conductor >= choice.economic.candidate.conductor);
    }

    #[test]
    fn a_flat_leads_line_voltages_come_to_the_mean_and_no_unbalance_is_below_zero(
        size in size(), sending in 200.0..600.0, amps in 0.0..100.0, pf in 0.3..1.0, length in 0.0..1000.0,
    ) {
        let load = Load { sending: volts(sending), current: amperes(amps), power_factor: pf, phases: Phases::Three };
        let r = table_resistance(size, Metal::Copper);
        if let Some(flat) = flat_drop(load, size, r, feet(length), hertz(60.0)).unwrap() {
            prop_assert!(flat.drop_unbalance >= 0.0 && flat.voltage_unbalance >= 0.0 && flat.voltage_unbalance < 2.0);
            let lines = flat.lines.map(in_volts);
            prop_assert!(lines.iter().all(|line| line.is_finite()));
            let mean = flat.drops.iter().map(|drop| in_volts(*drop)).sum::<f64>() / 3.0;
            prop_assert!((mean - in_volts(flat.mean_drop)).abs() < 1e-9);
            // Twice the current at twice the volts leaves the same shares.
            let double = Load { sending: 2.0 * load.sending, current: 2.0 * load.current, ..load };
            let same = flat_drop(double, size, r, feet(length), hertz(60.0)).unwrap().unwrap();
            prop_assert!((same.voltage_unbalance - flat.voltage_unbalance).abs() < 1e-9);
        }
    }

    #[test]
    fn alternating_current_is_resisted_more_the_faster_and_the_nearer(
        size in size(), metal in metal(), temperature in -40.0..150.0, hz in 0.0..119.0, near in 0.0..0.98,
    ) {
        let ac = |hz: f64| {
            ac_resistance(size, metal, Celsius(temperature), hertz(hz), Phases::Three).unwrap()
        };
        prop_assert!(ac(hz + 1.0) > ac(hz));
        let direct = table_resistance(size, metal);
        let skin = skin_effect(direct, hertz(hz), ROUND_STRANDED).unwrap();
        let by = |near: f64, phases| proximity_effect(direct, hertz(hz), ROUND_STRANDED, near, phases).unwrap();
        prop_assert!(by(0.0, Phases::Three) == 0.0 && (0.0..0.07).contains(&skin));
        prop_assert!(hz == 0.0 || by(near + 0.01, Phases::Three) > by(near, Phases::Three));
        // Three conductors: 1.18/0.27 = 4.37 against 2.9 of two.
        prop_assert!(by(near, Phases::Three) >= by(near, Phases::Single));
    }

    #[test]
    fn a_conductor_is_no_cooler_than_its_surroundings_and_within_its_rating_at_its_ampacity(
        metal in metal(), insulation in rating(), ambient in -20.0..55.0_f64, share in 0.0..1.0, rated in 1.0..500.0,
    ) {
        let headroom = ((insulation.celsius() - ambient) / (insulation.celsius() - 30.0)).sqrt().min(1.5);
        let current = amperes(rated * share * headroom);
        let service = Service { ambient: Celsius(ambient), insulation, current, rated_at_30: amperes(rated) };
        let (simple, settled) =
            (conductor_temperature(service).unwrap().0, settled_temperature(metal, service).unwrap().0);
        prop_assert!(ambient <= settled && settled <= simple + 1e-9 && simple <= insulation.celsius() + 1e-9);
    }

    #[test]
    fn a_year_more_is_worth_what_its_own_discount_leaves(rate in 0.0..1.0, years in 0.0..99.0) {
        let (now, next) = (annuity_factor(rate, years).unwrap(), annuity_factor(rate, years + 1.0).unwrap());
        prop_assert!((next - now - (1.0_f64 + rate).powf(-(years + 1.0))).abs() < 1e-9);
        prop_assert!(now <= years && next > now - 1e-12);
    }
}
