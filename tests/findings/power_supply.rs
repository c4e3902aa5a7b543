//! The supply conductors, the drops along them and the lead, the device ahead, and how the supply is grounded.

use super::{OVER, UNDER, by, edge, field, found, grave, house, of_code, of_way, raised, way, with, without};
use wellwright_core::evaluate::{DeviceBy, Fits, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Grounding, Job, Sets, Way};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{in_amperes, in_feet};
use wellwright_core::standards::conductor::Size;
use wellwright_core::standards::overcurrent::STANDARD_RATINGS;

use Severity::{Caution, Note, Stop};

const LOW: Kind = Kind::LargeLowHarmonic;

/// The share of the supply that its conductors take over a length.
fn share(job: &Job, kind: Kind) -> f64 {
    way(job, kind).supply.unwrap().share
}

/// More than 3 % along the supply conductors, where more was allowed.
#[test]
fn a_drop_along_the_supply_conductors() {
    const CODE: &str = "SUPPLY_DROP_HIGH";
    let at = |feet: f64| with(field(), &[(Field::AllowedSupplyDrop, 10.0), (Field::PoleDistance, feet)]);
    // Of 1/0: 8.087 V over 300 ft at the worked current; 14.4 V are 3 % of 480 V.
    let three = edge(300.0, 800.0, |feet| share(&at(feet), LOW) <= 0.03);
    assert_eq!(way(&at(three), LOW).supply.unwrap().run.conductor.size, Size::Awg1_0);
    assert!((three / (300.0 * 14.4 / 8.087) - 1.0).abs() < 0.005, "{three} ft");
    assert_eq!((grave(&at(three * UNDER), LOW, CODE), grave(&at(three * OVER), LOW, CODE)), (vec![], vec![Caution]));
    let told = of_way(&at(600.0), LOW, CODE);
    let [Finding::SupplyDropHigh { share: found, limit, whole: false }] = told[..] else { panic!("{told:?}") };
    assert_eq!((found, limit), (share(&at(600.0), LOW), 0.03));
    // Sized for 3 %, they never take more.
    for feet in [300.0, 600.0, 1200.0, 2400.0] {
        assert_eq!(grave(&with(field(), &[(Field::PoleDistance, feet)]), LOW, CODE), [], "{feet} ft");
    }
}

/// More than 5 % along them and the lead together.
#[test]
fn a_drop_along_all_of_it() {
    const CODE: &str = "SUPPLY_DROP_HIGH";
    let one = way(&field(), LOW);
    let both = one.supply.unwrap().share + one.lead.unwrap().drop_share;
    let limit = |percent: f64| with(field(), &[(Field::AllowedWholeDrop, percent)]);
    assert_eq!((grave(&limit(100.0 * both * OVER), LOW, CODE), grave(&field(), LOW, CODE)), (vec![], vec![]));
    assert_eq!(grave(&limit(100.0 * both * UNDER), LOW, CODE), [Caution]);
    let told = of_way(&limit(1.0), LOW, CODE);
    let [Finding::SupplyDropHigh { share, limit: most, whole: true }] = told[..] else { panic!("{told:?}") };
    assert!((share - both).abs() < 1e-15 && (most - 0.01).abs() < 1e-15);
    // The well's lead takes 4.575 % at 240 V; with its supply conductors it passes 5 %.
    assert_eq!(grave(&house(), Kind::ConvertingActive, CODE), [Caution]);
    let near = with(house(), &[(Field::PoleDistance, 10.0)]);
    assert_eq!(grave(&near, Kind::ConvertingActive, CODE), []);
    let well = |feet: f64| with(house(), &[(Field::PoleDistance, feet)]);
    let whole = |feet: f64| {
        let one = way(&well(feet), Kind::ConvertingActive);
        one.supply.unwrap().share + one.lead.unwrap().drop_share
    };
    let five = edge(1.0, 150.0, |feet| whole(feet) <= 0.05);
    assert_eq!(grave(&well(five * UNDER), Kind::ConvertingActive, CODE), []);
    assert_eq!(grave(&well(five * OVER), Kind::ConvertingActive, CODE), [Caution]);
}

#[test]
fn no_size_of_supply_conductors() {
    const CODE: &str = "SUPPLY_NO_SIZE";
    let at = |feet: f64, sets: u8| {
        let mut job = with(field(), &[(Field::PoleDistance, feet)]);
        job.choices.feeder_sets = Sets::new(sets);
        job
    };
    let last = edge(300.0, 10_000.0, |feet| grave(&at(feet, 1), LOW, CODE).is_empty());
    // At the last length the drop is the 3 % that are allowed, of the largest size that is listed.
    let run = way(&at(last * UNDER, 1), LOW).supply.unwrap();
    assert!((run.share - 0.03).abs() < 1e-6 && run.run.conductor.size == Size::ALL[Size::ALL.len() - 1], "{run:?}");
    assert_eq!((grave(&at(last * UNDER, 1), LOW, CODE), grave(&at(last * OVER, 1), LOW, CODE)), (vec![], vec![Stop]));
    assert_eq!(way(&at(last * OVER, 1), LOW).fits, Fits::No);
    // Another set carries it further.
    assert_eq!(grave(&at(last * OVER, 2), LOW, CODE), []);
    // Without a distance none is asked for, and the way waits.
    let unknown = without(field(), &[Field::PoleDistance]);
    assert_eq!(grave(&unknown, LOW, CODE), []);
    assert!(way(&unknown, LOW).fits == Fits::Waits);
    assert_eq!(evaluate(&unknown).ways.waits_for, [Field::PoleDistance]);
}

/// No listed size of the lead: told by each way of that voltage, and once by the job.
#[test]
fn no_size_of_the_lead() {
    const CODE: &str = "CABLE_NO_SIZE";
    let at = |feet: f64| with(house(), &[(Field::PumpSetting, feet)]);
    let answer = evaluate(&house());
    let reach = |way: Way| in_feet(answer.sweep.as_ref().unwrap().way(way).reach());
    // At 480 V every depth is reached; at 240 V a motor of 60 hp ends before.
    assert_eq!(reach(Way::V480), 3000.0);
    let large = |feet: f64| {
        let motor = [(Field::MotorPower, 60.0), (Field::NameplateAmps230, 180.0), (Field::NameplateAmps460, 90.0)];
        with(at(feet), &motor)
    };
    let last = edge(100.0, 3000.0, |feet| of_240(&large(feet)).is_empty());
    let swept = evaluate(&large(100.0)).sweep.unwrap();
    assert!((in_feet(swept.way(Way::V240).reach()) / last - 1.0).abs() < 1e-9);
    assert_eq!((of_240(&large(last * UNDER)), of_240(&large(last * OVER))), (vec![], vec![Stop]));
    for kind in [Kind::ConvertingPassive, Kind::LargeEconomy, Kind::ConvertingActive] {
        assert_eq!(grave(&large(last * UNDER), kind, CODE), [], "{kind:?}");
        assert_eq!(of_way(&large(last * OVER), kind, CODE), [Finding::CableNoSize { way: Way::V240 }], "{kind:?}");
        assert_eq!(way(&large(last * OVER), kind).fits, Fits::No);
        // The job that goes by it tells it once.
        assert_eq!(of_240(&by(large(last * OVER), kind)), [Stop], "{kind:?}");
    }
    assert_eq!(grave(&large(last * OVER), Kind::StepUpActive, CODE), []);
}

fn of_240(job: &Job) -> Vec<Severity> {
    let all = of_code(&evaluate(job), "CABLE_NO_SIZE");
    all.iter().filter(|one| **one == Finding::CableNoSize { way: Way::V240 }).map(Finding::severity).collect()
}

/// The ground grows with the phases where the drop asks for more than ampacity does.
#[test]
fn a_ground_that_grew() {
    const CODE: &str = "GROUND_WIRE_GREW";
    let at = |feet: f64| {
        let shallow =
            with(house(), &[(Field::PumpSetting, feet), (Field::SurfaceRun, 0.0), (Field::StaticLevel, 10.0)]);
        without(shallow, &[Field::SpecificCapacity])
    };
    let grew = |feet: f64| {
        let told = of_code(&evaluate(&at(feet)), CODE);
        told.contains(&Finding::GroundWireGrew { way: Way::V240 })
    };
    // 10 AWG carries the current until it takes 5 % of 240 V: of 1.24 and 0.050 Ω/1000 ft a = √3 · 22.5 A · L (R 0.80 +
    // X 0.60) and b = √3 · 22.5 A · L (X 0.80 − R 0.60), and the drop is V + a − √(V² − b²).
    let last = edge(100.0, 620.0, |feet| !grew(feet));
    let each = 3f64.sqrt() * 22.5 * last / 1000.0;
    let (a, b) = (each * (1.24 * 0.8 + 0.050 * 0.6), each * (0.050 * 0.8 - 1.24 * 0.6));
    assert!((240.0 + a - (240.0f64 * 240.0 - b * b).sqrt() - 12.0).abs() < 1e-6, "{last} ft");
    assert!(!grew(last * UNDER) && grew(last * OVER));
    let told = of_code(&evaluate(&at(last * OVER)), CODE);
    assert!(told.iter().all(|finding| finding.severity() == Note) && raised(&house(), CODE));
}

#[test]
fn a_device_of_which_nothing_is_known() {
    const CODE: &str = "DEVICE_PROVISIONAL";
    // The next standard rating at 1.25 · 105.67 A is 150 A.
    let job = by(field(), LOW);
    assert_eq!(found(&job, CODE), [Caution]);
    let told = of_code(&evaluate(&job), CODE);
    let [Finding::DeviceProvisional { device }] = told[..] else { panic!("{told:?}") };
    assert_eq!(in_amperes(device), 150.0);
    // Entered, the marking is still to be read; below 125 % of the input it is too small.
    let rated = in_amperes(way(&job, LOW).draw.unwrap().rated);
    let device = |amps: f64| with(job.clone(), &[(Field::DeviceAmps, amps)]);
    for (amps, expected) in
        [(1.25 * rated * OVER, &[Caution][..]), (150.0, &[Caution]), (1.25 * rated * UNDER, &[Caution])]
    {
        assert_eq!(found(&device(amps), CODE), expected, "{amps} A");
    }
    let told = of_code(&evaluate(&device(100.0)), CODE);
    let [Finding::DeviceSmall { device, least }] = told[..] else { panic!("{told:?}") };
    assert!(in_amperes(device) == 100.0 && (in_amperes(least) - 1.25 * rated).abs() < 1e-9);
    // The largest device of a converter and of a motor's branch stand in the code itself.
    for (kind, by_rule) in
        [(Kind::SolidStateConverter, DeviceBy::Converters), (Kind::RotaryConverter, DeviceBy::Converters)]
    {
        assert_eq!((found(&by(field(), kind), CODE), way(&field(), kind).draw.unwrap().device_by), (vec![], by_rule));
    }
    let single = without(by(house(), Kind::SinglePhaseMotor), &[Field::DeviceAmps]);
    assert_eq!(found(&single, CODE), []);
    let draw = way(&single, Kind::SinglePhaseMotor).draw.unwrap();
    // 40 A of the table, 250 %.
    assert_eq!((in_amperes(draw.device), draw.device_by), (100.0, DeviceBy::MotorBranch));
}

/// A device is no larger than the rule for its equipment allows, whoever entered it.
#[test]
fn a_device_beyond_the_rule() {
    const CODE: &str = "DEVICE_OVER";
    let device = |job: &Job, amps: f64| found(&with(job.clone(), &[(Field::DeviceAmps, amps)]), CODE);
    // 2.5 · 105.67 A is 264 A, next rating 300 A: as a motor's breaker, until the marking is read.
    let job = by(field(), LOW);
    assert_eq!((device(&job, 300.0), device(&job, 301.0), device(&job, 2000.0)), (vec![], vec![Stop], vec![Stop]));
    assert_eq!(found(&job, CODE), []);
    // A converter: 1.25 times its nameplate's input, or what protects the smaller conductors of a fixed load.
    for kind in [Kind::SolidStateConverter, Kind::RotaryConverter] {
        let job = by(field(), kind);
        let draw = way(&job, kind).draw.unwrap();
        let most = in_amperes(draw.device);
        let needs = in_amperes(draw.ampacity).min(1.25 * in_amperes(draw.rated));
        let next = STANDARD_RATINGS.into_iter().find(|rating| *rating >= needs).unwrap();
        assert_eq!(most, next, "{kind:?}");
        assert_eq!((device(&job, most), device(&job, most * OVER)), (vec![], vec![Stop]), "{kind:?}");
    }
    // 40 A of the table, 250 %: 100 A.
    let single = by(house(), Kind::SinglePhaseMotor);
    assert_eq!((device(&single, 100.0), device(&single, 100.0 * OVER)), (vec![], vec![Stop]));
}

/// Conductors of a fixed load may carry 2.5 times the motor's current, the larger of table and nameplate: then the device
/// protects them, and is not 125 % of the converter's nameplate. By hand: 2.5 · 77 A = 192.5 A, next rating 200 A, 3/0.
#[test]
fn a_converter_s_device_protects_its_conductors() {
    let rotary = way(&field(), Kind::RotaryConverter);
    let (draw, run) = (rotary.draw.unwrap(), rotary.supply.unwrap());
    assert!((in_amperes(draw.ampacity) - 192.5).abs() < 1e-9, "{draw:?}");
    assert_eq!((in_amperes(draw.device), run.run.conductor.size), (200.0, Size::Awg3_0));
    assert!(in_amperes(draw.device) <= 200.0 && in_amperes(run.run.ampacity) >= 192.5);
}

#[test]
fn a_supply_of_480_volts_and_its_ground() {
    const CODE: &str = "SUPPLY_GROUNDING";
    let told = |kind, volts: f64, grounding| {
        let mut job = with(by(field(), kind), &[(Field::SupplyVolts, volts)]);
        job.choices.grounding = grounding;
        of_code(&evaluate(&job), CODE)
    };
    let unknown = Finding::SupplyGrounding { one_line: false };
    let corner = Finding::SupplyGrounding { one_line: true };
    assert_eq!(told(LOW, 480.0, None), [unknown]);
    assert_eq!(told(LOW, 480.0, Some(Grounding::OneLine)), [corner]);
    assert_eq!(told(LOW, 480.0, Some(Grounding::Midpoint)), []);
    assert_eq!((unknown.severity(), corner.severity()), (Caution, Caution));
    // 240 V stand 120 V from ground, and above 300 V is a supply of 480 V.
    assert_eq!((told(LOW, 300.0, None), told(LOW, 300.0 * OVER, None)), (vec![], vec![unknown]));
    // Three lines are another supply.
    assert_eq!(told(Kind::ThreePhaseLine, 480.0, None), []);
}
