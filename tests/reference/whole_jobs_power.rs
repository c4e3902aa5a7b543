//! The two worked jobs from the motor back to the pole, through the whole evaluation: every way that was worked by hand,
//! its verdict, and what it says.
//!
//! The results are those of `power_jobs` and were worked apart from core, as it says; they are held to the printed
//! digits. Where an exact sum and the hand-worked sheet differ by a digit, the place says which is right.

use super::whole_jobs::{FIELD, HOUSE, job, prints};
use wellwright_core::cable::filter::Remedy;
use wellwright_core::evaluate::{Evaluation, Fits, PoweredWay, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job};
use wellwright_core::power::family::Kind;
use wellwright_core::power::fit::FrameFit;
use wellwright_core::power::generator::Hookup;
use wellwright_core::power::transformer::Loading;
use wellwright_core::quantity::{
    Entry, Unit, in_amperes, in_feet, in_hertz, in_horsepower, in_kilovolt_amperes, in_pounds, in_volts, in_watts,
};
use wellwright_core::standards::conductor::Size;

const ACTIVE: Kind = Kind::ConvertingActive;
const PASSIVE: Kind = Kind::ConvertingPassive;
const DOUBLING: Kind = Kind::Doubling;
const LOW: Kind = Kind::LargeLowHarmonic;
const ECONOMY: Kind = Kind::LargeEconomy;
const CONVERTER: Kind = Kind::SolidStateConverter;

/// Equipment like the generic one that is rated at 50 °C.
const RATED_50: &str = "name,kind,rated_c\nA,converting_active,50\nP,converting_passive,50\nD,doubling,50\n";

fn with(mut job: Job, figures: &[(Field, f64)]) -> Job {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
    job
}

/// The well with equipment rated at 50 °C beside the generic one, and the device not known.
fn well() -> Evaluation {
    let mut job = job(HOUSE);
    job.families = RATED_50.into();
    job.set(Field::DeviceAmps, None);
    evaluate(&job)
}

/// A way of the user's own, by its name.
fn own(answer: &Evaluation, name: &str) -> PoweredWay {
    answer.ways.all.iter().find(|way| way.family.name == name).unwrap().clone()
}

fn generic(answer: &Evaluation, kind: Kind) -> PoweredWay {
    answer.ways.all.iter().find(|way| way.family.kind == kind && way.family.name.is_empty()).unwrap().clone()
}

/// Codes and severities of what a way says.
fn said(way: &PoweredWay) -> Vec<(&'static str, Severity)> {
    way.findings.iter().map(|finding| (finding.code(), finding.severity())).collect()
}

/// The pump on the surface as the sheet has its electrical figures: without the heat of the 30 ft to its motor, of which
/// the sheet leaves out the watts.
fn surface() -> Job {
    with(job(FIELD), &[(Field::SurfaceRun, 0.0)])
}

fn three(answer: &Evaluation) -> [PoweredWay; 3] {
    [LOW, ECONOMY, CONVERTER].map(|kind| generic(answer, kind))
}

#[test]
fn the_frames_of_the_well() {
    let answer = well();
    // 45 °C and 1,400 m: 0.96 of what is rated at 50 °C, 0.864 at 40 °C.
    for (way, hp, derated, left) in [
        (own(&answer, "A"), "10", "26.88", "0.960"),
        (own(&answer, "D"), "10", "13.44", "0.960"),
        (own(&answer, "P"), "10", "26.88", "0.960"),
        (generic(&answer, ACTIVE), "15", "36.29", "0.864"),
        (generic(&answer, DOUBLING), "15", "18.14", "0.864"),
        (generic(&answer, PASSIVE), "15", "36.29", "0.864"),
    ] {
        let Some(FrameFit::Serves { frame, .. }) = way.frame else { panic!("{:?}", way.frame) };
        prints(in_horsepower(frame.power), 0, hp);
        prints(in_amperes(frame.derated), 2, derated);
        prints(way.derated.unwrap().factor().unwrap(), 3, left);
    }
    // 25.9 A and 13.0 A of the service factor: the 10 hp frame rated at 40 °C gives 24.19 A and 12.10 A.
    prints(in_amperes(own(&answer, "A").motor.unwrap().required), 1, "25.9");
    prints(in_amperes(own(&answer, "D").motor.unwrap().required), 1, "13.0");
    prints(28.0 * 0.864, 2, "24.19");
    prints(14.0 * 0.864, 2, "12.10");
}

#[test]
fn what_the_well_draws() {
    let answer = well();
    for (name, current, ampacity, size, device) in [
        ("A", "34.12", "53.21", Size::Awg6, 60.0),
        ("D", "34.52", "53.77", Size::Awg4, 60.0),
        ("P", "43.91", "68.48", Size::Awg4, 70.0),
    ] {
        let way = own(&answer, name);
        let draw = way.draw.unwrap();
        prints(in_amperes(draw.current), 2, current);
        prints(in_amperes(draw.ampacity), 2, ampacity);
        assert_eq!((way.supply.unwrap().run.conductor.size, in_amperes(draw.device)), (size, device), "{name}");
    }
    let ratio = |name| in_amperes(own(&answer, name).draw.unwrap().current) / 22.5;
    prints(ratio("A"), 2, "1.52");
    prints(ratio("P"), 2, "1.95");
    prints(own(&answer, "A").draw.unwrap().power_factor, 5, "0.98509");
    prints(own(&answer, "P").draw.unwrap().power_factor, 5, "0.75744");
    // 6 AWG carries 53.3 A at 45 °C.
    prints(in_amperes(own(&answer, "A").supply.unwrap().run.ampacity), 1, "53.3");
}

#[test]
fn the_volts_of_the_well() {
    let answer = well();
    let sag = own(&answer, "A").pole.unwrap().sag.unwrap();
    prints(in_volts(sag.at_pole), 2, "1.15");
    prints(in_volts(sag.at_equipment - sag.at_pole), 2, "5.04");
    prints(in_volts(sag.left), 1, "233.8");
    prints(100.0 * in_volts(sag.at_equipment) / 240.0, 2, "2.58");
    prints(in_volts(own(&answer, "P").pole.unwrap().sag.unwrap().left), 1, "234.5");
    for (name, volts, percent, hertz) in
        [("A", "229.0", "99.6", "59.7"), ("D", "444.5", "96.6", "58.0"), ("P", "200.1", "87.0", "52.2")]
    {
        let way = own(&answer, name);
        let found = way.volts.unwrap();
        prints(in_volts(found.budget.at_motor), 1, volts);
        prints(100.0 * (found.budget.at_motor / way.motor.unwrap().rated).value, 1, percent);
        prints(in_hertz(found.runs_out), 1, hertz);
    }
    // A passive front end has volts to 52.2 Hz, and at 50.14 Hz the pump just lifts the water.
    let mut slow = with(job(HOUSE), &[(Field::MostFrequency, 50.14)]);
    slow.families = RATED_50.into();
    assert!(said(&own(&evaluate(&slow), "P")).iter().all(|(code, _)| *code != "MOTOR_VOLTS_LOW"));
}

#[test]
fn the_lead_of_the_well_way_by_way() {
    let answer = well();
    for (name, size, ground, drop, percent, cost) in [
        ("A", Size::Awg6, Size::Awg6, "10.979", "4.575", "2255"),
        ("P", Size::Awg6, Size::Awg6, "10.979", "4.575", "2255"),
        ("D", Size::Awg12, Size::Awg12, "21.108", "4.397", "809"),
    ] {
        let way = own(&answer, name);
        let lead = way.lead.unwrap();
        prints(in_feet(lead.length), 0, "660");
        assert_eq!((lead.run.conductor.size, lead.run.ground), (size, ground), "{name}");
        prints(in_volts(lead.drop), 3, drop);
        prints(100.0 * lead.drop_share, 3, percent);
        prints(way.cost.unwrap().lead.0, 0, cost);
    }
    let metal = |name| in_pounds(own(&answer, name).lead.unwrap().metal);
    prints(metal("A") - metal("D"), 1, "160.7");
}

#[test]
fn the_peak_at_the_well_s_motor() {
    let answer = well();
    let stress = own(&answer, "A").stress.unwrap();
    prints(in_volts(stress.bus), 0, "370");
    prints(stress.reflection, 3, "0.948");
    // 370 · 1.94805 = 720.78, told to a volt.
    prints(in_volts(stress.peak), 0, "721");
    assert_eq!((stress.fitted, stress.cured), (Remedy::NoneNeeded, true));
    assert!(own(&answer, "D").stress.is_none(), "a sine filter is built in");
    // On a supply of 480 V the same drive has a bus of 720 V, and 660 ft ask for a sine filter.
    let high = generic(&evaluate(&with(job(HOUSE), &[(Field::SupplyVolts, 480.0)])), ACTIVE).stress.unwrap();
    prints(in_volts(high.bus), 0, "720");
    prints(in_volts(high.peak), 0, "1403");
    assert_eq!((high.least, high.fitted, high.cured), (Some(Remedy::SineFilter), Remedy::SineFilter, true));
}

#[test]
fn how_the_ways_of_the_well_come_out() {
    use Severity::{Caution, Stop};
    let answer = well();
    let heat = ("HEAT_OR_ALTITUDE", Caution);
    let (volts, drop, meet) =
        (("MOTOR_VOLTS_LOW", Caution), ("SUPPLY_DROP_HIGH", Caution), ("PULSES_CAN_MEET", Caution));
    for (name, fits, expected) in [
        ("A", Fits::WithCare, vec![heat, drop, meet, volts]),
        ("D", Fits::WithCare, vec![heat, drop, volts]),
        ("P", Fits::No, vec![("MOTOR_VOLTS_LOW", Stop), ("HARMONICS_OVER", Stop), heat, drop, meet]),
    ] {
        let way = own(&answer, name);
        assert_eq!((way.fits, said(&way)), (fits, expected), "{name}");
    }
    // Altitude alone takes 4 % off what is rated at 50 °C.
    let told = own(&answer, "A").findings.into_iter().find(|one| one.code() == "HEAT_OR_ALTITUDE");
    assert!(matches!(told, Some(Finding::HeatOrAltitude { left: Some(left), .. }) if (left - 0.96).abs() < 1e-12));
}

#[test]
fn what_the_surface_pump_draws() {
    let answer = evaluate(&surface());
    let printed = [
        ["50.05", "0.98685", "105.67", "132.1", "1.51"],
        ["49.54", "0.75744", "136.25", "170.3", "1.95"],
        ["49.79", "0.98509", "105.31", "131.6", "1.51"],
    ];
    for (way, printed) in three(&answer).iter().zip(printed) {
        let draw = way.draw.unwrap();
        assert_eq!(in_watts(draw.lead_loss), 0.0);
        prints(in_watts(draw.input) / 1000.0, 2, printed[0]);
        prints(draw.power_factor, 5, printed[1]);
        prints(in_amperes(draw.current), 2, printed[2]);
        prints(in_amperes(draw.ampacity), 1, printed[3]);
        prints(in_amperes(draw.current) / 69.76, 2, printed[4]);
        // A frame of the motor's own size; the two are worked out by different roads.
        assert!((in_amperes(draw.rated) / in_amperes(draw.current) - 1.0).abs() < 1e-12, "{draw:?}");
    }
    // 30 ft of 2 AWG at 69.76 A give off 85 W, which the drive feeds too.
    let whole = generic(&evaluate(&job(FIELD)), LOW).draw.unwrap();
    prints(in_watts(whole.lead_loss), 0, "85");
    prints(in_watts(whole.input) / 1000.0, 2, "50.14");
    prints(in_amperes(whole.current), 2, "105.86");
}

#[test]
fn the_supply_of_the_surface_pump() {
    let answer = evaluate(&surface());
    // The sheet says 1.69 % of the first: 8.087 V of 480 V are 1.685 %, rounded twice; the exact share is right.
    for (way, (size, drop, percent, device)) in three(&answer).iter().zip([
        (Size::Awg1_0, "8.087", "1.68", 150.0),
        (Size::Awg2_0, "8.289", "1.73", 175.0),
        (Size::Awg1_0, "8.074", "1.68", 150.0),
    ]) {
        let supply = way.supply.unwrap();
        assert_eq!((supply.run.conductor.size, supply.run.ground), (size, Size::Awg6));
        prints(in_volts(supply.drop), 3, drop);
        prints(100.0 * supply.share, 2, percent);
        assert_eq!(in_amperes(way.draw.unwrap().device), device);
        prints(in_amperes(way.pole.unwrap().fault) / 1000.0, 1, "7.8");
    }
    // The sheet has 3.6 kA with conductors of 75 °C; cold ones let more pass, which is the safe side for a marking.
    prints(in_amperes(three(&answer)[0].pole.unwrap().fault_here) / 1000.0, 1, "3.9");
}

#[test]
fn the_transformer_of_the_surface_pump() {
    let answer = evaluate(&surface());
    // The sheet's 0.98 % of the converter is the approximate form; the exact one, 0.9865 %, is right.
    for (way, (load, dip, ratio, total)) in three(&answer).iter().zip([
        ("67.6", "0.98", "74", "8"),
        ("87.2", "1.70", "73", "80"),
        ("67.4", "0.99", "75", "10"),
    ]) {
        let pole = way.pole.unwrap();
        let (Loading::Within(share) | Loading::Close(share) | Loading::Over(share)) = pole.loading;
        prints(100.0 * share, 1, load);
        prints(100.0 * in_volts(pole.sag.unwrap().at_pole) / 480.0, 2, dip);
        let harmonics = pole.harmonics.unwrap();
        prints(harmonics.ratio, 0, ratio);
        prints(100.0 * harmonics.limit, 0, "12");
        prints(100.0 * harmonics.distortion, 0, total);
        assert_eq!(harmonics.keeps(), total != "80");
    }
}

#[test]
fn the_start_of_the_surface_pump() {
    let start = |kva: f64| {
        let answer = evaluate(&with(surface(), &[(Field::TransformerRating, kva)]));
        let [low, economy, converter] = three(&answer);
        assert!(low.start.is_none() && economy.start.is_none(), "a drive ramps");
        (converter.start.unwrap(), converter.fits)
    };
    let (at_75, fits) = start(75.0);
    prints(in_amperes(at_75.dip.current), 1, "665.8");
    prints(100.0 * at_75.dip.at_pole, 1, "8.3");
    prints(100.0 * at_75.dip.at_motor, 1, "15.2");
    assert_eq!(fits, Fits::No);
    let (at_100, fits) = start(100.0);
    prints(100.0 * at_100.dip.at_pole, 1, "6.3");
    prints(100.0 * at_100.dip.at_motor, 1, "13.4");
    assert_eq!(fits, Fits::WithCare);
}

#[test]
fn the_surface_pump_on_a_set() {
    let needed = |hookup| {
        let mut job = surface();
        job.choices.hookup = hookup;
        three(&evaluate(&job)).map(|way| way.set.unwrap())
    };
    let [low, economy, converter] = needed(None);
    prints(in_kilovolt_amperes(low.needed()), 1, "63.4");
    prints(in_kilovolt_amperes(economy.needed()), 1, "130.8");
    prints(in_kilovolt_amperes(converter.needed()), 0, "176");
    assert_eq!((low.starting, converter.needed()), (None, converter.starting.unwrap()));
    let locked = generic(&evaluate(&surface()), CONVERTER).start.unwrap().locked_rotor;
    prints(in_amperes(locked) * 480.0 / 1000.0, 0, "377");
    prints(in_kilovolt_amperes(needed(Some(Hookup::DoubleDelta))[0].needed()), 0, "95");
    prints(in_kilovolt_amperes(needed(Some(Hookup::TwoLines))[0].needed()), 0, "110");
}

#[test]
fn the_peak_at_the_surface_pump_s_motor() {
    // Of the lead that it has, 30 ft: longer than the 7.5 m that the wave takes to its full height.
    let stress = generic(&evaluate(&job(FIELD)), LOW).stress.unwrap();
    prints(in_volts(stress.peak), 0, "1367");
    prints(1.0 + stress.reflection, 3, "1.899");
    assert_eq!((in_volts(stress.limit.peak()), stress.fitted, stress.cured), (1000.0, Remedy::DvDtFilter, true));
    let mut duty = job(FIELD);
    duty.choices.inverter_duty = Some(true);
    let stress = generic(&evaluate(&duty), LOW).stress.unwrap();
    prints(in_volts(stress.limit.peak()), 0, "1426");
    assert_eq!((stress.fitted, stress.cured), (Remedy::NoneNeeded, true));
}

#[test]
fn how_the_ways_of_the_surface_pump_come_out() {
    use Severity::{Caution, Stop};
    let filter = ("LEAD_NEEDS_FILTER", Caution);
    let loaded = ("TRANSFORMER_OR_UTILITY", Caution);
    let answer = evaluate(&job(FIELD));
    for (kind, fits, expected) in [
        (LOW, Fits::WithCare, vec![filter]),
        (ECONOMY, Fits::No, vec![("MOTOR_VOLTS_LOW", Stop), ("HARMONICS_OVER", Stop), filter, loaded]),
        (
            CONVERTER,
            Fits::No,
            vec![("START_DIP_HIGH", Stop), ("FULL_SPEED_ONLY", Caution), ("START_DIP_HIGH", Caution)],
        ),
        // Beyond 15 hp no single-phase motor is made, and none for 480 V.
        (Kind::SinglePhaseMotor, Fits::No, vec![("SUPPLY_NOT_TAKEN", Stop), ("DRIVE_SIZE_SHORT", Stop)]),
        // Three lines straight to a drive, from a set of its own.
        (Kind::ThreePhaseGenerator, Fits::WithCare, vec![filter, ("MOTOR_VOLTS_LOW", Caution)]),
    ] {
        let way = generic(&answer, kind);
        assert_eq!((way.fits, said(&way)), (fits, expected), "{kind:?}");
    }
    // The low-harmonic drive is the cheapest that serves.
    let picked = answer.ways.picked().unwrap();
    assert_eq!((picked.family.kind, answer.ways.chosen), (LOW, false));
    let stand_in = answer.inputs.stand_in(Field::DeviceAmps).unwrap();
    assert_eq!(stand_in, Entry::new(150.0, Unit::Ampere));
}
