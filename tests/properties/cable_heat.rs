//! Conductors in service: resistance by heat and frequency, what the years cost, short warm stretches. Laws.

use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::conductor::{resistance_at, round_area, table_resistance};
use wellwright_core::cable::drop::Phases;
use wellwright_core::cable::economic::{Candidate, Duty, choose, lifetime, yearly_cost, yearly_energy};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::cable::reactance::from_spacing;
use wellwright_core::cable::skin::{ac_resistance, alternating_share, proximity_effect, skin_effect};
use wellwright_core::cable::stretches::{least_cool, most_warm};
use wellwright_core::cable::temperature::{
    Service, conductor_temperature, in_service, resistance_moved, settled_temperature, temperature_coefficient,
};
use wellwright_core::quantity::{
    Celsius, Money, MoneyPerLength, amperes, feet, hertz, in_feet, inches, ohms_per_kilofoot, watts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};

fn size() -> impl Strategy<Value = Size> {
    proptest::sample::select(Size::ALL.to_vec())
}

fn metal() -> impl Strategy<Value = Metal> {
    proptest::sample::select(vec![Metal::Copper, Metal::Aluminum])
}

fn service(ambient: f64, current: f64) -> Service {
    Service {
        ambient: Celsius(ambient),
        insulation: Rating::C75,
        current: amperes(current),
        rated_at_30: amperes(100.0),
    }
}

proptest! {
    #![proptest_config(tried(500))]

    // The warmer, the more ohms, straight over the whole range; there and back is where it was.
    #[test]
    fn resistance_rises_with_heat_and_comes_back(metal in metal(), ohms in 0.01..3.0, from in -20.0..100.0, to in -20.0..100.0) {
        let known = ohms_per_kilofoot(ohms);
        let moved = resistance_moved(known, metal, Celsius(from), Celsius(to)).unwrap();
        prop_assert_eq!(moved > known, to > from);
        let back = resistance_moved(moved, metal, Celsius(to), Celsius(from)).unwrap();
        prop_assert!((back.value / known.value - 1.0).abs() < 1e-9);
        let at = |t: f64| resistance_at(known, metal, Celsius(t)).unwrap().value;
        prop_assert!((at(75.0) / known.value - 1.0).abs() < 1e-12);
        let straight = at(from) + at(to) - 2.0 * at((from + to) / 2.0);
        prop_assert!(straight.abs() < 1e-9 * at(75.0));
        let share = |t: f64| temperature_coefficient(metal, Celsius(t)).unwrap();
        prop_assert_eq!(share(from) > share(to), from < to);
    }

    // Heat goes with the current squared: a conductor at its rating is as hot as its insulation may be.
    #[test]
    fn a_loaded_conductor_warms_with_the_square(size in size(), metal in metal(), ambient in 0.0..30.0, current in 0.0..70.0) {
        let heat = |current: f64| conductor_temperature(service(ambient, current)).unwrap().0 - ambient;
        prop_assert!((heat(2.0f64.sqrt() * current) - 2.0 * heat(current)).abs() < 1e-9);
        prop_assert!((conductor_temperature(service(30.0, 100.0)).unwrap().0 - 75.0).abs() < 1e-9);
        // Below its rating a conductor settles cooler than by its resistance at the rated temperature.
        let settled = settled_temperature(metal, service(ambient, current)).unwrap().0;
        prop_assert!(settled <= ambient + heat(current) + 1e-9 && settled >= ambient - 1e-9, "{settled}");
        let idle = in_service(size, metal, service(ambient, 0.0)).unwrap();
        let loaded = in_service(size, metal, service(ambient, current)).unwrap();
        prop_assert!(loaded.resistance >= idle.resistance && idle.temperature.0 == ambient);
        prop_assert_eq!(loaded.at_75, table_resistance(size, metal));
    }

    // Alternating current meets more than direct current, the more the faster and beside its like, and without frequency the
    // same.
    #[test]
    fn alternating_current_meets_more(size in size(), metal in metal(), t in 20.0..90.0, f in 1.0..60.0, more in 1.01..2.0f64, ohms in 0.03..1.0) {
        let added = |f: f64| alternating_share(size, metal, Celsius(t), hertz(f), Phases::Three).unwrap();
        prop_assert!(added(f) > 0.0 && added(more * f) > added(f) && added(0.0) == 0.0);
        let direct = resistance_at(table_resistance(size, metal), metal, Celsius(t)).unwrap();
        let found = ac_resistance(size, metal, Celsius(t), hertz(f), Phases::Three).unwrap();
        prop_assert!((found.value / (direct.value * (1.0 + added(f))) - 1.0).abs() < 1e-12);
        let skin = |ohms: f64| skin_effect(ohms_per_kilofoot(ohms), hertz(f), 1.0).unwrap();
        prop_assert!(skin(ohms) > skin(ohms * more));
        // Stranding that makes less of it is a conductor of more resistance.
        let stranded = skin_effect(ohms_per_kilofoot(ohms), hertz(f), 1.0 / more).unwrap();
        prop_assert!((stranded / skin(ohms * more) - 1.0).abs() < 1e-9);
        prop_assert!(skin_effect(direct, hertz(f), 1.0).unwrap() < added(f));
        let beside = |near: f64, phases| proximity_effect(ohms_per_kilofoot(ohms), hertz(f), 1.0, near, phases).unwrap();
        for phases in [Phases::Single, Phases::Three] {
            prop_assert!(beside(0.4 * more, phases) > beside(0.4, phases) && beside(0.0, phases) == 0.0);
        }
    }

    // Reactance grows with the distance and the frequency, and by the logarithm of the former.
    #[test]
    fn reactance_grows_with_distance(gmd in 0.3..5.0, f in 1.0..400.0, ratio in 1.1..10.0f64) {
        let x = |gmd: f64, f: f64| from_spacing(inches(gmd), inches(0.2), f).unwrap().value;
        prop_assert!((x(gmd, 2.0 * f) / x(gmd, f) - 2.0).abs() < 1e-12);
        let step = x(gmd * ratio, f) - x(gmd, f);
        let again = x(gmd * ratio * ratio, f) - x(gmd * ratio, f);
        prop_assert!(step > 0.0 && (step / again - 1.0).abs() < 1e-6);
        prop_assert!(((round_area(inches(2.0 * gmd)) / round_area(inches(gmd))).value - 4.0).abs() < 1e-12);
    }

    // Losses cost by the hour, by the price and by the current squared; the years only multiply them.
    #[test]
    fn what_the_losses_cost(current in 1.0..200.0, hours in 1.0..4000.0, price in 0.01..0.5, worth in 1.0..20.0, ohms in 0.05..2.0) {
        let duty = Duty { current: amperes(current), phases: Phases::Three, hours, kilowatt_hour: Money(price), present_worth: worth };
        let year = |duty: Duty| yearly_cost(duty, ohms_per_kilofoot(ohms), feet(1000.0)).unwrap().0;
        let longer = year(Duty { hours: 2.0 * hours, ..duty });
        prop_assert!((longer / year(duty) - 2.0).abs() < 1e-9);
        let doubled = year(Duty { current: amperes(2.0 * current), ..duty });
        prop_assert!((doubled / year(duty) - 4.0).abs() < 1e-9);
        let single = year(Duty { phases: Phases::Single, ..duty });
        prop_assert!((single / year(duty) - 2.0 / 3.0).abs() < 1e-9);
        let by_hand = 3.0 * current * current * ohms * hours / 1000.0 * price;
        prop_assert!((year(duty) / by_hand - 1.0).abs() < 1e-9);
        prop_assert!((yearly_energy(watts(current), hours).unwrap() - current * hours / 1000.0).abs() < 1e-9 * current * hours);
        let one = Candidate { conductor: Conductor { sets: 1, size: Size::Awg8 }, resistance: ohms_per_kilofoot(ohms), price: MoneyPerLength(5.0) };
        let all = lifetime(one, duty).unwrap();
        prop_assert!((all.cost(feet(1000.0)).0 / (5.0 * 304.8 + worth * year(duty)) - 1.0).abs() < 1e-9);
    }

    // The size that pays costs no more than any other, over the years, and never more than the smallest.
    #[test]
    fn the_size_that_pays_is_the_cheapest(current in 1.0..200.0, hours in 0.0..8000.0, prices in proptest::collection::vec((0.05..2.0, 0.5..30.0), 1..8)) {
        let duty = Duty { current: amperes(current), phases: Phases::Three, hours, kilowatt_hour: Money(0.12), present_worth: 10.0 };
        let one = |(at, (ohms, price)): (usize, &(f64, f64))| Candidate {
            conductor: Conductor { sets: 1, size: Size::ALL[at] },
            resistance: ohms_per_kilofoot(*ohms),
            price: MoneyPerLength(*price),
        };
        let all: Vec<Candidate> = prices.iter().enumerate().map(one).collect();
        let choice = choose(&all, duty).unwrap().unwrap();
        let least = all.iter().map(|one| lifetime(*one, duty).unwrap().total.0).fold(f64::INFINITY, f64::min);
        prop_assert_eq!(choice.economic.total.0, least);
        prop_assert_eq!(choice.smallest.candidate, all[0]);
        prop_assert!(choice.saving(feet(100.0)).0 >= 0.0);
        prop_assert!(choose(&[], duty).unwrap().is_none());
    }

    // A warm stretch and the cool one that it needs belong to one another.
    #[test]
    fn a_warm_stretch_has_its_cool_one(warm in 0.01..10.0, cool in 0.1..500.0) {
        let needed = least_cool(feet(warm)).unwrap();
        prop_assert!((in_feet(most_warm(needed)) - warm).abs() < 1e-9);
        let may = most_warm(feet(cool));
        prop_assert!(in_feet(may) <= 10.0 + 1e-9 && in_feet(may) <= cool / 10.0 + 1e-9);
        prop_assert!(least_cool(feet(10.0 + warm)).is_none());
    }
}
