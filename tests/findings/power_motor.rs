//! The volts that the motor gets, and the peak of the pulses at its terminals.

use super::{OVER, UNDER, by, field, found, grave, house, of_way, way, with};
use wellwright_core::cable::filter::Remedy;
use wellwright_core::evaluate::Fits;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{in_hertz, in_volts};

use Severity::{Caution, Stop};

fn remedied(mut job: Job, remedy: Remedy) -> Job {
    job.choices.remedy = Some(remedy);
    job
}

#[test]
fn the_volts_at_the_speed_that_is_needed() {
    const CODE: &str = "MOTOR_VOLTS_LOW";
    // Held at 240 V, less 10.979 V in the lead: 229.021 V last to 59.745 Hz for a motor of 230 V and 60 Hz, by hand.
    let kind = Kind::ConvertingActive;
    let at = |hertz: f64| with(house(), &[(Field::MostFrequency, hertz)]);
    let lasts = in_hertz(way(&house(), kind).volts.unwrap().runs_out);
    assert!((lasts - 60.0 * (240.0 - 10.979) / 230.0).abs() < 2e-4, "{lasts}");
    for (hertz, expected) in [
        (lasts * UNDER, &[][..]),
        (lasts, &[]),
        (lasts * OVER, &[Caution]),
        (60.0, &[Caution]),
        (lasts / 0.9 * UNDER, &[Caution]),
        (lasts / 0.9 * OVER, &[Stop]),
    ] {
        assert_eq!(grave(&at(hertz), kind, CODE), expected, "{hertz} Hz");
    }
    let told = of_way(&house(), kind, CODE);
    let [Finding::MotorVoltsLow { share, runs_out, needed }] = told[..] else { panic!("{told:?}") };
    assert!((share - 229.021 / 230.0).abs() < 5e-6 && in_hertz(needed) == 60.0, "{share}");
    assert!((in_hertz(runs_out) - lasts).abs() < 1e-12);
    // A way of full speed needs its volts at 60 Hz whatever the drive was to do.
    let converter = |hertz: f64| way(&at(hertz), Kind::SolidStateConverter).volts.unwrap();
    assert_eq!(in_hertz(converter(40.0).needed), 60.0);
    assert_eq!(converter(40.0).verdict, converter(60.0).verdict);
}

/// With a curve the duty tells the speed, and a pump that turns slower needs fewer volts.
#[test]
fn the_duty_tells_the_speed_that_is_needed() {
    const CODE: &str = "MOTOR_VOLTS_LOW";
    let mut job = house();
    assert_eq!(grave(&job, Kind::ConvertingPassive, CODE), [Stop]);
    // At 50.1 Hz and 25 gpm this pump lifts the water with not a foot to spare for more.
    job.curve = "0,950,0\n10,930,38\n20,880,57\n25,840,60\n30,770,59\n40,560,44\n".into();
    let volts = way(&job, Kind::ConvertingPassive).volts.unwrap();
    assert!(in_hertz(volts.needed) < 54.0 && in_hertz(volts.needed) > 50.0, "{volts:?}");
    assert_ne!(grave(&job, Kind::ConvertingPassive, CODE), [Stop]);
}

/// 60 hp on 5 kVA: the more its impedance, the less arrives, until a load of constant power can't be fed.
#[test]
fn no_volts_are_left() {
    const CODE: &str = "NO_VOLTS_LEFT";
    let at = |percent: f64| with(field(), &[(Field::TransformerRating, 5.0), (Field::TransformerImpedance, percent)]);
    let kind = Kind::LargeEconomy;
    let edge = super::edge(1.0, 8.0, |percent| grave(&at(percent), kind, CODE).is_empty());
    // √(V² − b²) − a = 50 V, the least that the sums of the volts hold for, with a = I (R cos φ + X sin φ) and
    // b = I (X cos φ − R sin φ) of transformer (0.6 and 0.8 of z V²/S) and feeder together, worked apart from core.
    let economy = way(&at(2.0), kind);
    let (draw, run) = (economy.draw.unwrap(), economy.supply.unwrap());
    let amps = draw.current.value;
    let (cos, sin) = (draw.power_factor, (1.0 - draw.power_factor.powi(2)).sqrt());
    let left = |percent: f64| {
        let base = percent / 100.0 * 480.0 * 480.0 / 5000.0;
        let (r, x) = (0.6 * base + run.impedance.resistance.value, 0.8 * base + run.impedance.reactance.value);
        let (a, b) = (amps * (r * cos + x * sin), amps * (x * cos - r * sin));
        (480.0 * 480.0 - b * b).sqrt() - a
    };
    assert!((left(edge) - 50.0).abs() < 1e-6, "{} V at {edge} %", left(edge));
    assert_eq!(grave(&at(edge * UNDER), kind, CODE), []);
    assert_eq!(grave(&at(edge * OVER), kind, CODE), [Stop]);
    // Just before, the volts are merely far too low.
    assert_eq!(grave(&at(edge * UNDER), kind, "MOTOR_VOLTS_LOW"), [Stop]);
    assert!(way(&at(edge * OVER), kind).volts.is_none() && way(&at(edge * OVER), kind).fits == Fits::No);
}

/// A figure that can't be used is an error of its field; it says nothing of volts or leads, and no way serves of which it
/// hides the judgement.
#[test]
fn a_wrong_figure_is_no_want_of_volts_or_of_a_lead() {
    let of_drives = [Field::MostFrequency, Field::MotorImpedance, Field::MotorPeakLimit, Field::RiseTime];
    let of_all = [Field::AllowedDrop, Field::DeviceAmps, Field::UtilityLimit, Field::MarkedShortCircuit];
    assert_eq!(way(&house(), Kind::ConvertingActive).fits, Fits::WithCare);
    for field in of_drives.into_iter().chain(of_all) {
        let spoiled = with(house(), &[(field, 1e6)]);
        let answer = wellwright_core::evaluate::evaluate(&spoiled);
        assert_eq!(answer.errors.iter().map(|error| error.field()).collect::<Vec<_>>(), [field]);
        for way in &answer.ways.all {
            let codes: Vec<_> = way.findings.iter().map(Finding::code).collect();
            assert!(!codes.contains(&"NO_VOLTS_LEFT") && !codes.contains(&"CABLE_NO_SIZE"), "{field:?} {codes:?}");
        }
        let active = answer.ways.all.iter().find(|way| way.family.kind == Kind::ConvertingActive);
        assert!(active.is_none_or(|way| way.fits == Fits::Waits), "{field:?}");
    }
}

/// A bus of 720 V and 1,500 Ω on 80 Ω: 720 · (1 + 1,420/1,580) = 1,367.1 V at the end of a lead of 7.5 m and more.
#[test]
fn a_peak_that_asks_for_a_filter() {
    const CODE: &str = "LEAD_NEEDS_FILTER";
    let (kind, peak) = (Kind::LargeLowHarmonic, 720.0 * (1.0 + 1420.0 / 1580.0));
    let limit = |volts: f64| with(field(), &[(Field::MotorPeakLimit, volts)]);
    assert_eq!(grave(&limit(peak * OVER), kind, CODE), []);
    assert_eq!(grave(&limit(peak), kind, CODE), []);
    assert_eq!(grave(&limit(peak * UNDER), kind, CODE), [Caution]);
    assert_eq!(grave(&limit(peak * UNDER), kind, "LEAD_PEAK_HIGH"), []);
    // Until a limit is entered it is 1,000 V, or 3.1 times 460 V where the nameplate says inverter duty.
    let told = of_way(&field(), kind, CODE);
    let [Finding::LeadNeedsFilter { peak: found, limit: stands, remedy }] = told[..] else { panic!("{told:?}") };
    assert!((in_volts(found) - peak).abs() < 1e-9 && (in_volts(found) - 1367.1).abs() < 0.05);
    assert_eq!((in_volts(stands), remedy), (1000.0, Remedy::DvDtFilter));
    let mut duty = field();
    duty.choices.inverter_duty = Some(true);
    assert_eq!((grave(&duty, kind, CODE), in_volts(way(&duty, kind).stress.unwrap().limit.peak())), (vec![], 1426.0));
    // A reactor takes a fifth off the peak, on 150 ft and less; a sine filter serves where a dV/dt filter does not reach.
    for (feet, volts, remedy) in [
        (30.0, 0.8 * peak, Remedy::OutputReactor),
        (30.0, 0.8 * peak * UNDER, Remedy::DvDtFilter),
        (150.0, 0.8 * peak, Remedy::OutputReactor),
        (150.0 * OVER, 0.8 * peak, Remedy::DvDtFilter),
        (500.0, 1000.0, Remedy::DvDtFilter),
        (500.0 * OVER, 1000.0, Remedy::SineFilter),
    ] {
        let job = with(limit(volts), &[(Field::SurfaceRun, feet), (Field::AllowedDrop, 15.0)]);
        let told = of_way(&job, kind, CODE);
        let [Finding::LeadNeedsFilter { remedy: found, .. }] = told[..] else {
            panic!("{feet} ft {volts} V: {told:?}")
        };
        assert_eq!(found, remedy, "{feet} ft, {volts} V");
    }
    // The made phase of a converter is filtered, and behind a sine filter or a transformer nothing is left of the pulses.
    for kind in [Kind::SolidStateConverter, Kind::RotaryConverter, Kind::Doubling, Kind::StepUpActive] {
        assert!(way(&house(), kind).stress.is_none() && grave(&house(), kind, CODE).is_empty(), "{kind:?}");
    }
}

#[test]
fn a_peak_that_nothing_fitted_holds_down() {
    const CODE: &str = "LEAD_PEAK_HIGH";
    let kind = Kind::LargeLowHarmonic;
    let peak = 720.0 * (1.0 + 1420.0 / 1580.0);
    let bare = |volts: f64| remedied(with(field(), &[(Field::MotorPeakLimit, volts)]), Remedy::NoneNeeded);
    assert_eq!(grave(&bare(peak), kind, CODE), []);
    assert_eq!(grave(&bare(peak * UNDER), kind, CODE), [Stop]);
    let told = of_way(&bare(1000.0), kind, CODE);
    let [Finding::LeadPeakHigh { peak: found, limit, remedy }] = told[..] else { panic!("{told:?}") };
    assert!((in_volts(found) - peak).abs() < 1e-9 && in_volts(limit) == 1000.0);
    assert_eq!(remedy, Some(Remedy::DvDtFilter));
    // What was chosen must be enough, and reach.
    let fitted = |remedy, feet: f64| {
        let job = with(field(), &[(Field::SurfaceRun, feet), (Field::AllowedDrop, 15.0)]);
        grave(&remedied(job, remedy), kind, CODE)
    };
    assert_eq!(fitted(Remedy::OutputReactor, 30.0), [Stop]);
    assert_eq!((fitted(Remedy::DvDtFilter, 30.0), fitted(Remedy::SineFilter, 30.0)), (vec![], vec![]));
    assert_eq!((fitted(Remedy::DvDtFilter, 500.0), fitted(Remedy::DvDtFilter, 500.0 * OVER)), (vec![], vec![Stop]));
    assert_eq!(fitted(Remedy::SineFilter, 500.0 * OVER), []);
    // Where the peak keeps within the limit, nothing that is fitted besides makes it pass.
    for remedy in [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter] {
        let job =
            with(field(), &[(Field::SurfaceRun, 600.0), (Field::AllowedDrop, 15.0), (Field::MotorPeakLimit, 1500.0)]);
        assert_eq!(grave(&remedied(job, remedy), kind, CODE), [], "{remedy:?}");
    }
    // No usual remedy reaches beyond 5,000 ft.
    let far = |feet: f64| {
        let small = [(Field::MotorPower, 1.5), (Field::NameplateAmps460, 3.0), (Field::AllowedDrop, 15.0)];
        let job = with(house(), &small);
        with(job, &[(Field::PumpSetting, feet - 3000.0), (Field::SurfaceRun, 3000.0), (Field::SupplyVolts, 480.0)])
    };
    let kind = Kind::ConvertingActive;
    assert_eq!((grave(&far(5000.0 * UNDER), kind, CODE), grave(&far(5000.0 * OVER), kind, CODE)), (vec![], vec![Stop]));
    let told = of_way(&far(5000.0 * OVER), kind, CODE);
    assert!(matches!(told[..], [Finding::LeadPeakHigh { remedy: None, .. }]), "{told:?}");
}

/// Five critical lengths of 150 m/µs · 0.1 µs/2 = 7.5 m are 37.5 m, or 123.03 ft.
#[test]
fn pulses_that_meet() {
    const CODE: &str = "PULSES_CAN_MEET";
    let kind = Kind::LargeLowHarmonic;
    let at = |feet: f64| with(field(), &[(Field::SurfaceRun, feet), (Field::MotorPeakLimit, 1500.0)]);
    let meet = 37.5 / 0.3048;
    assert_eq!(grave(&at(meet * UNDER), kind, CODE), []);
    assert_eq!(grave(&at(meet * OVER), kind, CODE), [Caution]);
    let told = of_way(&at(200.0), kind, CODE);
    let [Finding::PulsesCanMeet { twice }] = told[..] else { panic!("{told:?}") };
    assert!((in_volts(twice) - 1440.0).abs() < 1e-9);
    // Behind a filter there are none to meet.
    assert_eq!(grave(&remedied(at(200.0), Remedy::DvDtFilter), kind, CODE), []);
    assert_eq!(grave(&with(field(), &[(Field::SurfaceRun, 200.0)]), kind, CODE), []);
    // A pulse that rises more slowly is longer.
    let slow = |rise: f64| grave(&with(at(200.0), &[(Field::RiseTime, rise)]), kind, CODE);
    let rise = 0.1 * 200.0 / meet;
    assert_eq!((slow(rise * OVER), slow(rise * UNDER)), (vec![], vec![Caution]));
}

/// What a way says counts for the job that goes by it, and only for that.
#[test]
fn a_job_tells_what_its_own_way_says() {
    for (kind, code, told) in [
        (Kind::LargeEconomy, "MOTOR_VOLTS_LOW", true),
        (Kind::SolidStateConverter, "MOTOR_VOLTS_LOW", false),
        (Kind::LargeLowHarmonic, "LEAD_NEEDS_FILTER", true),
        (Kind::RotaryConverter, "LEAD_NEEDS_FILTER", false),
    ] {
        assert_eq!(!found(&by(field(), kind), code).is_empty(), told, "{kind:?} {code}");
        assert_eq!(!of_way(&field(), kind, code).is_empty(), told, "{kind:?} {code}");
    }
}

/// Where the lead or the supply's conductors are not known no volts are worked out, and none are said to be missing.
#[test]
fn volts_that_can_not_be_known_are_not_said_to_be_gone() {
    let without_pole = super::without(house(), &[Field::PoleDistance]);
    let without_lead = with(house(), &[(Field::AllowedDrop, 0.2), (Field::PumpSetting, 2400.0)]);
    for job in [without_pole, without_lead] {
        let answer = super::evaluate(&job);
        let gone = answer.ways.all.iter().filter(|way| way.lead.is_none() || way.supply.is_none());
        let found: Vec<_> = gone.flat_map(|way| &way.findings).collect();
        assert!(answer.ways.all.iter().any(|way| way.lead.is_none() || way.supply.is_none()));
        assert!(!found.contains(&&Finding::NoVoltsLeft), "{found:?}");
    }
}

/// A filter on a lead so short that none is needed: nothing asks for one, and behind it no pulses meet.
#[test]
fn a_filter_that_is_not_needed_is_not_asked_for() {
    let short = with(
        by(house(), Kind::ConvertingActive),
        &[
            (Field::SurfaceRun, 0.0),
            (Field::PumpSetting, 12.0),
            (Field::StaticLevel, 1.0),
            (Field::SpecificCapacity, 25.0),
        ],
    );
    for job in [short.clone(), remedied(short, Remedy::SineFilter)] {
        let way = way(&job, Kind::ConvertingActive);
        let stress = way.stress.unwrap();
        assert!(stress.peak <= stress.limit.peak() && stress.cured, "{stress:?}");
        let codes: Vec<_> = way.findings.iter().map(Finding::code).collect();
        assert!(!codes.contains(&"LEAD_NEEDS_FILTER") && !codes.contains(&"LEAD_PEAK_HIGH"), "{codes:?}");
        assert_eq!(codes.contains(&"PULSES_CAN_MEET"), stress.meet && stress.fitted == Remedy::NoneNeeded, "{codes:?}");
    }
}
