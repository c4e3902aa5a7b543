//! Every kind of equipment serves somewhere and does not serve elsewhere, and says why.

use super::{field, house, way, with, without};
use wellwright_core::evaluate::Fits;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job};
use wellwright_core::power::family::Kind;

/// The well on a large transformer among much other load, its motor turned no faster than 45 Hz: harmonics are thinned
/// out, and a passive front end has volts enough.
fn strong() -> Job {
    let figures = [
        (Field::TransformerRating, 500.0),
        (Field::OtherLoad, 100.0),
        (Field::MarkedShortCircuit, 100.0),
        (Field::MostFrequency, 45.0),
    ];
    with(house(), &figures)
}

/// A kind, a job that it serves, a job that it does not, and the codes of the stops there.
type Case = (Kind, Job, Job, &'static [&'static str]);

fn cases() -> [Case; 14] {
    use Kind as K;
    let house_with = |figures: &[(Field, f64)]| with(house(), figures);
    let field_with = |figures: &[(Field, f64)]| with(field(), figures);
    [
        (K::ConvertingActive, house(), field(), &["DRIVE_AMPS_SHORT"]),
        (K::ConvertingPassive, strong(), house(), &["HARMONICS_OVER", "MOTOR_VOLTS_LOW"]),
        (K::Doubling, house(), field(), &["SUPPLY_NOT_TAKEN"]),
        (K::LargeLowHarmonic, field(), field_with(&[(Field::TransformerImpedance, 8.0)]), &["HARMONICS_OVER"]),
        (K::LargeEconomy, strong(), field(), &["HARMONICS_OVER", "MOTOR_VOLTS_LOW"]),
        (K::LargeEconomyChoke, strong(), field(), &["HARMONICS_OVER", "MOTOR_VOLTS_LOW"]),
        (K::SolidStateConverter, house(), field(), &["START_DIP_HIGH"]),
        // 0.88 · 6.5 hp · 1.15 = 6.58 hp against 6.81 hp at the shaft.
        (K::RotaryConverter, house(), house_with(&[(Field::MotorPower, 6.5)]), &["UNBALANCE_DERATES"]),
        (
            K::DeratedDrive,
            strong(),
            // Half of 200 hp is 100 hp, of 240 A at 460 V 120 A.
            with(strong(), &[(Field::SupplyVolts, 480.0), (Field::ServiceAmps460, 121.0)]),
            &["DRIVE_AMPS_SHORT"],
        ),
        (K::StepUpActive, house(), field(), &["SUPPLY_NOT_TAKEN"]),
        (K::StepUpPassive, strong(), house(), &["HARMONICS_OVER", "MOTOR_VOLTS_LOW"]),
        (K::ThreePhaseLine, strong(), house(), &["HARMONICS_OVER", "MOTOR_VOLTS_LOW"]),
        (K::ThreePhaseGenerator, field(), field_with(&[(Field::GeneratorRating, 80.0)]), &["GENERATOR_SHORT"]),
        (K::SinglePhaseMotor, house(), house_with(&[(Field::MotorPower, 20.0)]), &["DRIVE_SIZE_SHORT"]),
    ]
}

#[test]
fn every_kind_serves_somewhere() {
    for (kind, serves, ..) in cases() {
        let found = way(&serves, kind);
        assert!(matches!(found.fits, Fits::Serves | Fits::WithCare), "{kind:?}: {:?}", found.findings);
        let cautioned = found.findings.iter().any(|finding| finding.severity() == Severity::Caution);
        assert_eq!(found.fits == Fits::WithCare, cautioned, "{kind:?}");
    }
    assert_eq!(cases().map(|(kind, ..)| kind), Kind::ALL);
}

#[test]
fn every_kind_does_not_serve_elsewhere_and_says_why() {
    for (kind, _, refused, codes) in cases() {
        let found = way(&refused, kind);
        let stops = found.findings.iter().filter(|finding| finding.severity() == Severity::Stop);
        let mut stops: Vec<_> = stops.map(Finding::code).collect();
        stops.sort_unstable();
        assert_eq!((found.fits, &stops[..]), (Fits::No, codes), "{kind:?}");
    }
}

/// Without a word of caution a way serves as it is: the large pump with a motor that bears the pulses.
#[test]
fn a_way_of_which_nothing_is_to_be_said() {
    let mut duty = field();
    duty.choices.inverter_duty = Some(true);
    let found = way(&duty, Kind::LargeLowHarmonic);
    assert_eq!((found.fits, found.findings), (Fits::Serves, vec![]));
    // Pulses that can meet want looking after.
    let long = with(duty, &[(Field::SurfaceRun, 130.0)]);
    let found = way(&long, Kind::LargeLowHarmonic);
    assert!(found.fits == Fits::WithCare && matches!(found.findings[..], [Finding::PulsesCanMeet { .. }]));
}

/// What is missing keeps every way that nothing stands against waiting. A fault beyond the marking stands against it
/// before the supply conductors are known: until then it is that at the transformer, on the safe side.
#[test]
fn a_way_waits_for_what_is_missing() {
    let only_the_fault = |findings: &[Finding]| {
        let mut stops = findings.iter().filter(|finding| finding.severity() == Severity::Stop);
        stops.next().is_some_and(|stop| stop.code() == "FAULT_OVER_SCCR") && stops.next().is_none()
    };
    for missing in [Field::PoleDistance, Field::PumpSetting] {
        for (kind, serves, ..) in cases() {
            let counts = missing.counts(&serves);
            let found = way(&without(serves, &[missing]), kind);
            let waits = match found.fits {
                Fits::Waits => true,
                Fits::No => missing == Field::PoleDistance && only_the_fault(&found.findings),
                Fits::Serves | Fits::WithCare => false,
            };
            assert_eq!(waits, counts, "{kind:?} {missing:?}: {:?} {:?}", found.fits, found.findings);
        }
    }
    // No usual transformer is as large as this load, and none was entered: what stands at the pole is not known.
    let huge = |rating: Option<f64>| {
        let job = with(without(field(), &[Field::TransformerRating]), &[(Field::OtherLoad, 460.0)]);
        rating.map_or(job.clone(), |rating| with(job, &[(Field::TransformerRating, rating)]))
    };
    let (unknown, known) = (way(&huge(None), Kind::LargeLowHarmonic), way(&huge(Some(500.0)), Kind::LargeLowHarmonic));
    assert!(unknown.pole.is_none() && unknown.fits == Fits::Waits, "{:?}", unknown.findings);
    assert!(known.fits == Fits::No && known.findings.iter().any(|one| one.code() == "TRANSFORMER_OR_UTILITY"));
}
