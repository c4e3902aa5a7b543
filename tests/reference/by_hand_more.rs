//! More formulas that no row of a table tells, each worked by hand.

use wellwright_core::cable::drop::Phases;
use wellwright_core::cable::economic::{Candidate, Duty, choose, lifetime};
use wellwright_core::cable::filter::{Practice, Remedy, remedies};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::cable::long_lead::{Wave, longest_unfiltered};
use wellwright_core::cable::stretches::{least_cool, most_warm};
use wellwright_core::cable::temperature::{Service, in_service};
use wellwright_core::cost::equipment::equipment_price;
use wellwright_core::cost::price::lead_price;
use wellwright_core::cost::spread::{Estimate, latin_hypercube};
use wellwright_core::power::derating::cabinet_ambient;
use wellwright_core::pump::affinity::{efficiency_of, head_of};
use wellwright_core::pump::curve::{Point, PumpCurve};
use wellwright_core::pump::motor::{MotorKind, assumed_efficiency_and_power_factor};
use wellwright_core::quantity::{
    Celsius, Money, MoneyPerLength, PieceAndSize, amperes, feet, feet_per_second, feet_per_square_gallon_per_minute,
    gpm, horsepower, in_feet, in_feet_per_second, in_gpm, in_inches, in_meters, in_ohms_per_kilofoot, meters,
    ohms_per_kilofoot, seconds, square_meters_per_second, volts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};
use wellwright_core::standards::pipe::{Material, Series};
use wellwright_core::water::level::short_of;
use wellwright_core::water::line::{size_for, usual_speed};
use wellwright_core::water::well::{Aquifer, cooper_jacob_holds, drawdown_in_proportion, flow_for_aquifer_drawdown};

#[track_caller]
fn near(found: f64, expected: f64, off: f64) {
    assert!((found - expected).abs() <= off, "{found}, by hand {expected}");
}

/// 25 gpm run at 5.36 ft/s in pipe of 1.380 in and at 3.94 ft/s in 1.610 in: 5 ft/s, usual in plastic, ask for the wider one,
/// 8 ft/s, usual in steel, do not (both common practice).
#[test]
fn pipe_by_speed() {
    let inside =
        |most| in_inches(size_for(Series::SteelSchedule40, gpm(25.0), most).unwrap().unwrap().inside_diameter());
    near(inside(feet_per_second(5.0)), 1.610, 0.001);
    near(inside(feet_per_second(8.0)), 1.380, 0.001);
    near(in_feet_per_second(usual_speed(Material::Steel)), 8.0, 1e-9);
    near(in_feet_per_second(usual_speed(Material::Pvc)), 5.0, 1e-9);
}

/// 41.667 ft at 25 gpm are 83.333 ft at 50. Theis: with u = r²S/(4 T t) = 100 · 0.001/(4 · 0.001 · 2,500) = 0.01 the table of
/// the well function has W = 4.0379, and 1 m of drawdown is 4π · 0.001/4.0379 = 0.0031121 m³/s (49.33 gpm).
#[test]
fn wells() {
    near(in_feet(drawdown_in_proportion(feet(41.667), gpm(25.0), gpm(50.0)).unwrap()), 83.334, 1e-9);
    let aquifer = Aquifer {
        transmissivity: square_meters_per_second(0.001),
        storage: 0.001,
        radius: meters(10.0),
        time: seconds(2500.0),
    };
    let none = feet_per_square_gallon_per_minute(0.0);
    near(in_gpm(flow_for_aquifer_drawdown(meters(1.0), aquifer, none).unwrap()), 49.328, 0.002);
    assert!(cooper_jacob_holds(0.0099) && !cooper_jacob_holds(0.0101));
    assert!(short_of(feet(9.99), feet(10.0), feet(10.0)) && !short_of(feet(10.0), feet(10.0), feet(10.0)));
}

/// At 50 of 60 Hz the point of 24 gpm, 288 ft, 60 % comes to 20 gpm, 200 ft, 60 %.
#[test]
fn a_point_of_a_curve_at_another_speed() {
    let point = |flow: f64, head: f64, share: f64| Point {
        flow: gpm(flow),
        head: feet(head),
        efficiency: Some(share),
        power: None,
    };
    let curve = PumpCurve::new(vec![point(0.0, 360.0, 0.0), point(24.0, 288.0, 0.6), point(48.0, 72.0, 0.3)]).unwrap();
    near(in_feet(head_of(&curve, gpm(20.0), 50.0 / 60.0).unwrap()), 200.0, 1e-9);
    near(efficiency_of(&curve, gpm(20.0), 50.0 / 60.0).unwrap().unwrap(), 0.6, 1e-12);
    near(in_feet(curve.shut_off_head().unwrap()), 360.0, 1e-9);
    let (flow, best) = curve.best_efficiency().unwrap();
    near(in_gpm(flow), 24.0, 1e-6);
    near(best, 0.6, 1e-9);
}

/// Usual figures of motors without a nameplate: common practice, no single source.
#[test]
fn motors_without_a_nameplate() {
    for (kind, power, usual) in [
        (MotorKind::Submersible, 7.5, (0.78, 0.80)),
        (MotorKind::Submersible, 20.0, (0.82, 0.84)),
        (MotorKind::Submersible, 60.0, (0.86, 0.85)),
        (MotorKind::Surface, 60.0, (0.92, 0.86)),
    ] {
        assert_eq!(assumed_efficiency_and_power_factor(kind, horsepower(power)), usual, "{kind:?} {power}");
    }
}

#[test]
fn a_cabinet_in_the_sun() {
    near(cabinet_ambient(Celsius(45.0), 10.0).unwrap().0, 55.0, 1e-12);
}

/// 7.5 m of critical length, Γ = 2,920/3,080: 720 V reach 1,000 V at 7.5 · (1,000/720 − 1)/Γ = 3.0765 m, and 80 % of them at
/// 7.5 · (1,000/576 − 1)/Γ = 5.8234 m. 370 V never do.
#[test]
fn leads_that_need_no_filter() {
    let ohms = |value: f64| volts(value) / amperes(1.0);
    let wave =
        Wave { speed: meters(150.0) / seconds(1e-6), rise: seconds(1e-7), motor: ohms(3000.0), cable: ohms(80.0) };
    let limit = volts(1000.0);
    near(in_meters(longest_unfiltered(volts(720.0), wave, limit).unwrap()), 3.0765, 1e-4);
    assert!(longest_unfiltered(volts(370.0), wave, limit).unwrap().value.is_infinite());
    let all = remedies(volts(720.0), wave, limit, &Practice::default()).unwrap();
    let found: Vec<Remedy> = all.iter().map(|(_, remedy)| *remedy).collect();
    assert_eq!(found[..3], [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter]);
    near(in_meters(all[1].0), 5.8234, 1e-4);
}

/// NEC 310.14(A)(2): up to 10 ft, and a tenth of the rest.
#[test]
fn short_warm_stretches() {
    near(in_feet(least_cool(feet(8.0)).unwrap()), 80.0, 1e-9);
    assert_eq!(least_cool(feet(10.1)), None);
    near(in_feet(most_warm(feet(50.0))), 5.0, 1e-9);
    near(in_feet(most_warm(feet(500.0))), 10.0, 1e-9);
}

/// 6 AWG, 20.442 A of 65 A in 45 °C: 45 + 45 · (20.442/65)² = 49.451 °C; 0.491 Ω · (1 + 0.00323 (49.451 − 75)) = 0.45048 Ω in
/// 1,000 ft.
#[test]
fn a_conductor_in_service() {
    let service = Service {
        ambient: Celsius(45.0),
        insulation: Rating::C75,
        current: amperes(20.442),
        rated_at_30: amperes(65.0),
    };
    let found = in_service(Size::Awg6, Metal::Copper, service).unwrap();
    near(found.temperature.0, 49.451, 0.001);
    near(in_ohms_per_kilofoot(found.resistance), 0.450_48, 1e-5);
    near(in_ohms_per_kilofoot(found.at_75), 0.491, 1e-9);
}

/// 20 A in 8 AWG, 3 · 400 · 0.778/1,000 = 0.9336 W a foot; 2,000 h at $0.12 and ten years' worth: $2.2406 a foot on $2. 6 AWG:
/// 0.5892 W, $1.4141 on $2.6, which is $4.0141 against $4.2406: the larger one pays.
#[test]
fn the_cheapest_size_over_the_years() {
    let candidate = |size, ohms: f64, price: f64| Candidate {
        conductor: Conductor { sets: 1, size },
        resistance: ohms_per_kilofoot(ohms),
        price: MoneyPerLength(price / 0.3048),
    };
    let duty = Duty {
        current: amperes(20.0),
        phases: Phases::Three,
        hours: 2000.0,
        kilowatt_hour: Money(0.12),
        present_worth: 10.0,
    };
    let both = [candidate(Size::Awg8, 0.778, 2.0), candidate(Size::Awg6, 0.491, 2.6)];
    let totals = both.map(|one| lifetime(one, duty).unwrap().total.0 * 0.3048);
    near(totals[0], 4.240_64, 1e-4);
    near(totals[1], 4.014_08, 1e-4);
    let choice = choose(&both, duty).unwrap().unwrap();
    assert_eq!(choice.economic.candidate.conductor.size, Size::Awg6);
    near(choice.saving(feet(100.0)).0, 22.656, 0.01);
}

/// $700 and $140 a horsepower: $2,100 for 10 hp. 660 ft at $3.41659, and $900: $3,154.95.
#[test]
fn what_is_bought() {
    let price = PieceAndSize { fixed: Money(700.0), per_hp: Money(140.0) };
    near(equipment_price(price, horsepower(10.0)).unwrap().0, 2100.0, 1e-9);
    near(lead_price(MoneyPerLength(3.416_59 / 0.3048), feet(660.0), Money(900.0)).0, 3154.949, 1e-3);
}

/// McKay, Beckman and Conover (1979): one number in each of ten equal parts of the chances. A triangle from 0 over 1 to 2 has
/// half its chances below 1, and a tenth of them below √0.2.
#[test]
fn a_latin_hypercube() {
    let triangle = Estimate::new(0.0, 1.0, 2.0).unwrap();
    let sample = latin_hypercube(&[triangle, triangle], 10, 7).unwrap();
    for column in 0..2 {
        let numbers: Vec<f64> = sample.points().map(|point| point[column]).collect();
        assert_eq!(numbers.iter().filter(|number| **number < 1.0).count(), 5, "{numbers:?}");
        assert_eq!(numbers.iter().filter(|number| **number < 0.2f64.sqrt()).count(), 1, "{numbers:?}");
    }
}
