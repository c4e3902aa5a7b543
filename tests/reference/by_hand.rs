//! Formulas that no row of a table tells: each worked by hand from its equation, with the figures beside it.

use wellwright_core::cable::ampacity::Setting;
use wellwright_core::cable::conductor::table_resistance;
use wellwright_core::cable::drop::{Load, Phases};
use wellwright_core::cable::feeder::{Feeder, feeder_runs};
use wellwright_core::cable::filter::longest_by_volts;
use wellwright_core::cable::lead::Laying;
use wellwright_core::cable::long_lead::{Wave, corners};
use wellwright_core::cable::reactance::{Build, reactance};
use wellwright_core::cost::criteria::potential_saving;
use wellwright_core::cost::duty::{Duty, DutyRow};
use wellwright_core::pump::affinity::curve_at;
use wellwright_core::pump::curve::{Point, PumpCurve};
use wellwright_core::pump::motor::volts_share;
use wellwright_core::quantity::{
    Celsius, amperes, feet, gpm, hertz, hours, in_feet, in_gpm, in_inches, in_meters, in_psi, in_volts, inches,
    kilowatts, meters, volts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};
use wellwright_core::standards::fittings::Fitting;
use wellwright_core::standards::pipe::Series;
use wellwright_core::water::fittings::coefficient_in;
use wellwright_core::water::pipe_rating::rating_in_service;

#[track_caller]
fn near(found: f64, expected: f64, off: f64) {
    assert!((found - expected).abs() <= off, "{found}, by hand {expected}");
}

/// Schedule 80 pipe of 1-1/2 in: 471 psi at 73 °F; handbooks of plastic plumbing print for it at 90 to 140 °F 353, 292,
/// 235, 188, 141 and 104 psi (from memory). Threads take half.
#[test]
fn plastic_pipe_in_warm_water() {
    let pipe =
        Series::PvcSchedule80.sizes().find(|size| (in_inches(size.outside_diameter()) - 1.900).abs() < 1e-9).unwrap();
    for (water, printed) in
        [(73.0, 471.0), (90.0, 353.0), (100.0, 292.0), (110.0, 235.0), (120.0, 188.0), (130.0, 141.0), (140.0, 104.0)]
    {
        let plain = in_psi(rating_in_service(pipe, water, false).unwrap().unwrap());
        // Tables round the rating to whole pounds, and then what is left of it.
        near(plain, printed, 0.005 * printed + 1.0);
        near(in_psi(rating_in_service(pipe, water, true).unwrap().unwrap()), plain / 2.0, 1e-9);
    }
}

/// A threaded elbow has 1.5 in any pipe, by the text table.
#[test]
fn fittings_in_a_pipe() {
    near(coefficient_in(Fitting::Elbow90Threaded, None).unwrap().unwrap(), 1.5, 1e-12);
    near(coefficient_in(Fitting::Elbow90Threaded, Some(inches(2.067))).unwrap().unwrap(), 1.5, 1e-12);
}

/// Affinity laws at 50 of 60 Hz: flow 5/6, head 25/36, power 125/216.
#[test]
fn a_curve_at_another_speed() {
    let point = |flow: f64, head: f64| Point { flow: gpm(flow), head: feet(head), efficiency: None, power: None };
    let curve = PumpCurve::new(vec![point(0.0, 360.0), point(24.0, 288.0), point(48.0, 72.0)]).unwrap();
    let slow = curve_at(&curve, 50.0 / 60.0).unwrap();
    let found: Vec<(f64, f64)> = slow.points().iter().map(|point| (in_gpm(point.flow), in_feet(point.head))).collect();
    for ((flow, head), (by_hand, above)) in found.iter().zip([(0.0, 250.0), (20.0, 200.0), (40.0, 50.0)]) {
        near(*flow, by_hand, 1e-9);
        near(*head, above, 1e-9);
    }
}

/// Constant volts per hertz: 50 of 60 Hz have 5/6 of the volts; above 60 Hz the supply gives no more.
#[test]
fn volts_by_frequency() {
    near(volts_share(hertz(50.0), hertz(60.0)).unwrap(), 5.0 / 6.0, 1e-12);
    near(volts_share(hertz(60.0), hertz(60.0)).unwrap(), 1.0, 1e-12);
    near(volts_share(hertz(75.0), hertz(60.0)).unwrap(), 1.0, 1e-12);
}

/// Rated input 53.21 A: 66.5 A at 125 %. At 45 °C copper of 75 °C keeps 0.82 of table 310.16: 6 AWG 53.3 A, 4 AWG 69.7 A,
/// which serves; 60 A need a ground of 10 AWG (table 250.122).
#[test]
fn supply_conductors() {
    let setting =
        Setting { metal: Metal::Copper, insulation: Rating::C75, terminals: Rating::C75, ambient: Celsius(45.0) };
    let feeder = Feeder {
        supply: volts(240.0),
        phases: Phases::Single,
        rated_input: amperes(53.21),
        running: amperes(34.12),
        power_factor: 0.985,
        setting,
        build: Build::PlasticConduit,
        laying: Laying::Apart,
        most_sets: 1,
        allowed_drop: 0.03,
        device: amperes(60.0),
    };
    let first = feeder_runs(&feeder).unwrap()[0];
    assert_eq!((first.conductor.size, first.ground), (Size::Awg4, Size::Awg10));
    near(first.ampacity.value, 0.82 * 85.0, 1e-9);
}

/// 480 V, a filter that costs 3 %: 465.6 V; the motor needs 450 V, so the lead may drop 15.6 V. At power factor 1 and without
/// reactance the drop is √3 I R ℓ: 12 AWG (1.98 Ω in 1,000 ft) and 10 A give 15.6/(1.7321 · 10 · 1.98) · 1,000 = 454.9 ft.
#[test]
fn a_lead_by_volts_behind_a_filter() {
    let load = Load { sending: volts(480.0), current: amperes(10.0), power_factor: 1.0, phases: Phases::Three };
    let (r, x) = (table_resistance(Size::Awg12, Metal::Copper), reactance(Size::Awg12, Build::PlasticConduit));
    near(in_feet(longest_by_volts(load, r, x * 0.0, volts(450.0), 0.03).unwrap()), 454.88, 0.01);
    near(in_feet(longest_by_volts(load, r, x, volts(470.0), 0.03).unwrap()), 0.0, 0.0);
}

/// 0.1 µs at 150 m/µs: 7.5 m. Γ = (3,000 − 80)/3,080 = 0.948052; 720 V grow straight to 1,402.6 V there, and stay.
#[test]
fn peaks_along_a_lead() {
    let speed = meters(150.0) / wellwright_core::quantity::seconds(1e-6);
    let ohms = |value: f64| volts(value) / amperes(1.0);
    let wave = Wave { speed, rise: wellwright_core::quantity::seconds(1e-7), motor: ohms(3000.0), cable: ohms(80.0) };
    let found = corners(volts(720.0), wave, meters(200.0)).unwrap();
    let found: Vec<(f64, f64)> = found.iter().map(|corner| (in_meters(corner.length), in_volts(corner.peak))).collect();
    for ((length, peak), (by_hand, high)) in found.iter().zip([(0.0, 720.0), (7.5, 1402.6), (200.0, 1402.6)]) {
        near(*length, by_hand, 1e-9);
        near(*peak, high, 0.01);
    }
    assert_eq!(found.len(), 3);
}

/// A plant at 80 % of the criteria that uses 10,000 kWh could do with 8,000.
#[test]
fn what_a_better_plant_saves() {
    near(potential_saving(10_000.0, 0.8).unwrap(), 2000.0, 1e-9);
    near(potential_saving(10_000.0, 1.1).unwrap(), -1000.0, 1e-9);
}

/// 1,000 h at 30 gpm and 500 h at 60: 40 gpm on the mean. 3 and 6 kW: 6,000 kWh of 6 kW · 1,500 h, two thirds.
#[test]
fn means_of_a_duty() {
    let row = |flow: f64, time: f64| DutyRow { flow: gpm(flow), time: hours(time) };
    let duty = Duty::new(vec![row(30.0, 1000.0), row(60.0, 500.0)]).unwrap();
    near(in_gpm(duty.mean_flow().unwrap()), 40.0, 1e-9);
    near(duty.mean_share(&[kilowatts(3.0), kilowatts(6.0)]).unwrap().unwrap(), 2.0 / 3.0, 1e-12);
}
