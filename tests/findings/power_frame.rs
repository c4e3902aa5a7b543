//! The frame that carries the motor, the place that it stands in, and what its kind can't do.

use super::{OVER, UNDER, edge, field, grave, house, of_way, way, with, without};
use wellwright_core::evaluate::Fits;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Control, Field, Job, Place};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{in_amperes, in_horsepower, in_meters, in_volts};
use wellwright_core::standards::enclosure::{Demand, EnclosureType};

use Severity::{Caution, Stop};

/// The well in air that takes nothing off.
fn cool() -> Job {
    with(house(), &[(Field::DriveAmbient, 40.0), (Field::Altitude, 1000.0)])
}

#[test]
fn a_frame_that_gives_too_few_amperes() {
    const CODE: &str = "DRIVE_AMPS_SHORT";
    // The largest frame, 20 hp, gives 54 A at 230 V and 27 A at 460 V by the motor table; 45 °C and 1,400 m leave
    // 0.90 · 0.96 of it.
    for (job, left) in [(cool(), 1.0), (house(), 0.90 * 0.96)] {
        for (kind, field, most) in [
            (Kind::ConvertingActive, Field::ServiceAmps230, 54.0),
            (Kind::ConvertingPassive, Field::ServiceAmps230, 54.0),
            (Kind::Doubling, Field::ServiceAmps460, 27.0),
        ] {
            let asked = |amps: f64| with(job.clone(), &[(field, amps)]);
            assert_eq!(grave(&asked(most * left * UNDER), kind, CODE), []);
            assert_eq!(grave(&asked(most * left * OVER), kind, CODE), [Stop], "{kind:?}");
            let told = of_way(&asked(most * left * OVER), kind, CODE);
            let [Finding::DriveAmpsShort { derated, required }] = told[..] else { panic!("{told:?}") };
            assert!((in_amperes(derated) / (most * left) - 1.0).abs() < 1e-12, "{derated:?}");
            assert!((in_amperes(required) / (most * left * OVER) - 1.0).abs() < 1e-12, "{required:?}");
        }
    }
    // Where nothing is taken off, the very figure passes.
    assert_eq!(grave(&with(cool(), &[(Field::ServiceAmps230, 54.0)]), Kind::ConvertingActive, CODE), []);
    // Half of a plain drive's frame may be used on two lines: 480 A of 200 hp at 230 V, by the motor table.
    assert_eq!(grave(&with(cool(), &[(Field::ServiceAmps230, 240.0)]), Kind::DeratedDrive, CODE), []);
    assert_eq!(grave(&with(cool(), &[(Field::ServiceAmps230, 240.0 * OVER)]), Kind::DeratedDrive, CODE), [Stop]);
    // Ahead of a transformer the drive gives twice the motor's current: 130 A of 50 hp at 230 V.
    assert_eq!(grave(&with(cool(), &[(Field::ServiceAmps460, 65.0)]), Kind::StepUpActive, CODE), []);
    assert_eq!(grave(&with(cool(), &[(Field::ServiceAmps460, 65.0 * OVER)]), Kind::StepUpActive, CODE), [Stop]);
}

/// A motor on the surface asks for its nameplate, a submersible one for its service factor too.
#[test]
fn what_is_required_of_a_frame() {
    let required = |job: &Job, kind| in_amperes(way(job, kind).motor.unwrap().required);
    assert_eq!(required(&house(), Kind::ConvertingActive), 25.9);
    assert_eq!(required(&house(), Kind::Doubling), 13.0);
    assert!((required(&field(), Kind::LargeLowHarmonic) - 69.76).abs() < 1e-12);
    // Without service-factor amperes at this voltage those at the other stand for it; without both, the factor.
    let one = without(house(), &[Field::ServiceAmps230]);
    assert!((required(&one, Kind::ConvertingActive) - 26.0).abs() < 1e-9);
    let none = without(one, &[Field::ServiceAmps460]);
    assert!((required(&none, Kind::ConvertingActive) - 22.5 * 1.15).abs() < 1e-9);
    assert!((required(&none, Kind::Doubling) - 11.3 * 1.15).abs() < 1e-9);
}

#[test]
fn a_frame_that_is_not_made_for_the_size() {
    const CODE: &str = "DRIVE_SIZE_SHORT";
    // The largest frames of the families, times what may be used of them; a rotary converter's idler is half as large
    // again as the motor: 100 hp for 66.7 hp. The nameplate keeps the current small.
    for (kind, most) in [
        (Kind::LargeLowHarmonic, 150.0),
        (Kind::LargeEconomy, 200.0),
        (Kind::SolidStateConverter, 75.0),
        (Kind::RotaryConverter, 100.0 / 1.5),
        (Kind::DeratedDrive, 100.0),
        (Kind::ThreePhaseLine, 200.0),
    ] {
        let motor = |hp: f64| with(field(), &[(Field::MotorPower, hp)]);
        assert_eq!(grave(&motor(most * UNDER), kind, CODE), [], "{kind:?}");
        if most < 200.0 {
            let told_of = of_way(&motor(most * OVER), kind, CODE);
            let [Finding::DriveSizeShort { most: largest, motor }] = told_of[..] else {
                panic!("{kind:?} {told_of:?}")
            };
            // What is told is the motor, never the idler.
            assert!((in_horsepower(largest) - most).abs() < 1e-9, "{kind:?} {largest:?}");
            assert!((in_horsepower(motor) - most * OVER).abs() < 1e-6, "{kind:?}: {motor:?}");
            assert_eq!(grave(&with(field(), &[(Field::MotorPower, most * OVER)]), kind, CODE), [Stop]);
        }
    }
    for (kind, most) in
        [(Kind::LargeLowHarmonic, 150.0), (Kind::SolidStateConverter, 75.0), (Kind::DeratedDrive, 100.0)]
    {
        assert_eq!(grave(&with(field(), &[(Field::MotorPower, most)]), kind, CODE), [], "{kind:?} at the very size");
    }
    // A single-phase motor is sold to 15 hp.
    let single = |hp: f64| of_way(&with(house(), &[(Field::MotorPower, hp)]), Kind::SinglePhaseMotor, CODE);
    assert_eq!(single(15.0), []);
    let [Finding::DriveSizeShort { most, motor }] = single(15.0 * OVER)[..] else { panic!() };
    assert!((in_horsepower(most) - 15.0).abs() < 1e-9 && in_horsepower(motor) > 15.0);
}

#[test]
fn heat_and_thin_air() {
    const CODE: &str = "HEAT_OR_ALTITUDE";
    let at = |celsius: f64, meters: f64| with(house(), &[(Field::DriveAmbient, celsius), (Field::Altitude, meters)]);
    for (celsius, meters, expected, left) in [
        (40.0, 1000.0, &[][..], None),
        (-20.0, 0.0, &[], None),
        (40.0 * OVER, 1000.0, &[Caution], Some(1.0)),
        (40.0, 1000.0 * OVER, &[Caution], Some(1.0)),
        (50.0, 1000.0, &[Caution], Some(0.80)),
        (40.0, 3000.0, &[Caution], Some(0.80)),
        (45.0, 1400.0, &[Caution], Some(0.864)),
        (50.0, 3000.0, &[Caution], Some(0.64)),
        (50.0 * OVER, 1000.0, &[Stop], None),
        (40.0, 3000.0 * OVER, &[Stop], None),
    ] {
        for kind in [Kind::ConvertingActive, Kind::RotaryConverter, Kind::ThreePhaseLine] {
            assert_eq!(grave(&at(celsius, meters), kind, CODE), expected, "{kind:?} at {celsius} °C, {meters} m");
        }
        let told = of_way(&at(celsius, meters), Kind::ConvertingActive, CODE);
        let [Finding::HeatOrAltitude { ambient, altitude, left: factor }] = told[..] else { continue };
        assert!((ambient.0 - celsius).abs() < 1e-9 && (in_meters(altitude) - meters).abs() < 1e-6);
        assert_eq!(factor.is_some(), left.is_some());
        assert!(factor.is_none_or(|factor| (factor - left.unwrap()).abs() < 1e-6), "{factor:?} and {left:?}");
    }
    // A single-phase motor is its own equipment.
    assert_eq!(grave(&at(60.0, 5000.0), Kind::SinglePhaseMotor, CODE), []);
}

#[test]
fn the_sun_on_the_cabinet() {
    const CODE: &str = "HEAT_OR_ALTITUDE";
    let at = |place, shaded, celsius: f64| {
        let mut job = with(house(), &[(Field::DriveAmbient, celsius), (Field::Altitude, 1000.0)]);
        (job.choices.place, job.choices.shaded) = (Some(place), Some(shaded));
        grave(&job, Kind::ConvertingActive, CODE)
    };
    // 10 degrees of sun until told otherwise.
    assert_eq!(at(Place::Outdoors, false, 30.0), []);
    assert_eq!(at(Place::Outdoors, false, 30.0 + 1e-6), [Caution]);
    assert_eq!(at(Place::Outdoors, false, 40.0), [Caution]);
    assert_eq!(at(Place::Outdoors, false, 40.0 + 1e-6), [Stop]);
    assert_eq!((at(Place::Outdoors, true, 40.0), at(Place::Indoors, false, 40.0)), (vec![], vec![]));
    let mut sunny = with(house(), &[(Field::DriveAmbient, 25.0), (Field::Altitude, 1000.0), (Field::SunRise, 15.0)]);
    sunny.choices.shaded = Some(false);
    assert_eq!(grave(&sunny, Kind::ConvertingActive, CODE), []);
    assert_eq!(grave(&with(sunny, &[(Field::SunRise, 15.0 + 1e-6)]), Kind::ConvertingActive, CODE), [Caution]);
}

#[test]
fn an_enclosure_that_lets_the_place_in() {
    const CODE: &str = "ENCLOSURE_WRONG";
    use EnclosureType as E;
    for (place, fits, wrong, lacks, plainest) in [
        (Place::Indoors, &[E::T1, E::T3R, E::T12][..], &[][..], None, None),
        (Place::Outdoors, &[E::T3R, E::T4], &[E::T1, E::T2, E::T12], Some(Demand::Weather), Some(E::T3R)),
        (Place::IndoorsDusty, &[E::T12, E::T4], &[E::T1, E::T3R], Some(Demand::SettlingDust), Some(E::T12)),
        (Place::IndoorsDusty, &[], &[E::T5], Some(Demand::BlownDust), Some(E::T12)),
        (Place::OutdoorsDusty, &[E::T3, E::T4], &[E::T3R], Some(Demand::BlownDust), Some(E::T3)),
        (Place::OutdoorsDusty, &[], &[E::T12], Some(Demand::Weather), Some(E::T3)),
        (Place::Washdown, &[E::T4, E::T4X], &[E::T3R, E::T3], Some(Demand::Hose), Some(E::T4)),
        (Place::Corrosive, &[E::T3RX, E::T4X], &[E::T3R, E::T4], Some(Demand::Corrosion), Some(E::T3RX)),
    ] {
        let of = |kind| {
            let mut job = house();
            (job.choices.place, job.choices.enclosure) = (Some(place), Some(kind));
            of_way(&job, Kind::ConvertingActive, CODE)
        };
        assert!(fits.iter().all(|kind| of(*kind).is_empty()), "{place:?}");
        for kind in wrong {
            let told = of(*kind);
            let [found @ Finding::EnclosureWrong { enclosure, lacks: missing, plainest: better }] = told[..] else {
                panic!("{place:?} {kind:?}: {told:?}")
            };
            assert_eq!((enclosure, Some(missing), better), (*kind, lacks, plainest), "{place:?}");
            assert_eq!(found.severity(), Stop);
        }
    }
    // Type 3R and outdoors stand in until told otherwise; a single-phase motor has no cabinet.
    let mut bare = house();
    bare.choices.place = None;
    assert_eq!(grave(&bare, Kind::ConvertingActive, CODE), []);
    bare.choices.enclosure = Some(E::T1);
    assert_eq!(grave(&bare, Kind::ConvertingActive, CODE), [Stop]);
    assert_eq!(grave(&bare, Kind::SinglePhaseMotor, CODE), []);
}

#[test]
fn a_supply_that_is_not_taken() {
    const CODE: &str = "SUPPLY_NOT_TAKEN";
    let at = |volts: f64, kind| of_way(&with(field(), &[(Field::SupplyVolts, volts)]), kind, CODE);
    for kind in Kind::ALL {
        let low_only =
            [Kind::Doubling, Kind::StepUpActive, Kind::StepUpPassive, Kind::SinglePhaseMotor].contains(&kind);
        // Up to 300 V it counts as a supply of 240 V, above as one of 480 V; each is taken to 1.1 times that (practice).
        assert_eq!(at(264.0, kind), [], "{kind:?}");
        // A line or a set of three phases has volts of its own.
        let of_one = ![Kind::ThreePhaseGenerator, Kind::ThreePhaseLine].contains(&kind);
        for beyond in [264.0 * OVER, 277.0, 300.0] {
            assert_eq!(at(beyond, kind).len(), usize::from(of_one), "{kind:?} at {beyond} V");
        }
        assert_eq!(at(600.0, kind).len(), usize::from(of_one || low_only), "{kind:?}");
        if !low_only {
            assert_eq!((at(300.0 * OVER, kind), at(480.0, kind)), (vec![], vec![]), "{kind:?}");
            assert_eq!((at(528.0, kind).len(), at(528.0 * OVER, kind).len()), (0, usize::from(of_one)), "{kind:?}");
            continue;
        }
        let [found @ Finding::SupplyNotTaken { supply }] = at(480.0, kind)[..] else { panic!("{kind:?}") };
        assert_eq!((in_volts(supply), found.severity()), (480.0, Stop));
        assert_eq!(at(300.0 * OVER, kind).len(), 1, "{kind:?}");
        let refused = way(&field(), kind);
        assert!(refused.fits == Fits::No && refused.way.is_none() && refused.draw.is_none(), "{kind:?}");
    }
}

#[test]
fn a_way_of_full_speed_only() {
    const CODE: &str = "FULL_SPEED_ONLY";
    for kind in Kind::ALL {
        let across = [Kind::SolidStateConverter, Kind::RotaryConverter, Kind::SinglePhaseMotor].contains(&kind);
        for (control, told) in
            [(None, across), (Some(Control::ConstantPressure), across), (Some(Control::OnOff), false)]
        {
            let mut job = house();
            job.choices.control = control;
            assert_eq!(grave(&job, kind, CODE), if told { vec![Caution] } else { vec![] }, "{kind:?} {control:?}");
        }
    }
}

/// 3 % of unbalance leaves 0.88 of a motor by the curve of MG 1, figure 14-1.
#[test]
fn unequal_volts_behind_a_rotary_converter() {
    const CODE: &str = "UNBALANCE_DERATES";
    let shaft = in_horsepower(wellwright_core::evaluate::evaluate(&house()).water.shaft().unwrap());
    let motor = |hp: f64| with(house(), &[(Field::MotorPower, hp), (Field::ServiceFactor, 1.15)]);
    let least = edge(2.0 * shaft, 0.5 * shaft, |hp| grave(&motor(hp), Kind::RotaryConverter, CODE).is_empty());
    assert!((shaft / least - 0.88).abs() < 1e-9, "{}", shaft / least);
    assert_eq!(grave(&motor(least * OVER), Kind::RotaryConverter, CODE), []);
    assert_eq!(grave(&motor(least * UNDER), Kind::RotaryConverter, CODE), [Caution]);
    // The service factor makes up for it to 1.15 times that.
    assert_eq!(grave(&motor(least / 1.15 * OVER), Kind::RotaryConverter, CODE), [Caution]);
    assert_eq!(grave(&motor(least / 1.15 * UNDER), Kind::RotaryConverter, CODE), [Stop]);
    let told = of_way(&motor(7.5), Kind::RotaryConverter, CODE);
    let [Finding::UnbalanceDerates { shaft: carried, left, beyond_service_factor: false }] = told[..] else {
        panic!("{told:?}")
    };
    assert!((in_horsepower(carried) - 6.8145).abs() < 5e-5 && (in_horsepower(left) - 6.6).abs() < 1e-9);
    // No other way brings it.
    let others = Kind::ALL.into_iter().filter(|kind| *kind != Kind::RotaryConverter);
    assert!(others.into_iter().all(|kind| grave(&motor(6.0), kind, CODE).is_empty()));
    // On the surface nothing makes up for it.
    let surface = |hp: f64| grave(&with(field(), &[(Field::MotorPower, hp)]), Kind::RotaryConverter, CODE);
    let carried = in_horsepower(wellwright_core::evaluate::evaluate(&field()).water.shaft().unwrap());
    assert_eq!((surface(carried / 0.88 * OVER), surface(carried / 0.88 * UNDER)), (vec![], vec![Stop]));
}
