//! A worked job: 7.5 hp house and stock well, 620 ft setting, 660 ft of lead, 45 degC, prices invented.
//!
//! Its results are worked by hand with the formulas that core documents (table 8 resistance, table 9 reactance in
//! plastic conduit, exact drop, 125 % of the larger current, grown ground capped at the phase size, three phases and
//! ground by table 8 area and 2 % lay). They are not measured and not published; they are held to the printed digits.

use serde_json::Value;
use wellwright_core::cable::lead::{Governs, drop_over};
use wellwright_core::evaluate::{Evaluation, WayHere, evaluate};
use wellwright_core::job::{Field, Way, wire};
use wellwright_core::quantity::{Entry, Unit, in_amperes, in_feet, in_pounds, in_volts};
use wellwright_core::standards::conductor::Size;

const JOB: &str = include_str!("../../core/examples/jobs/house_and_stock_well.json");

fn evaluated() -> Evaluation {
    let answer = evaluate(&wire::read_text(JOB).unwrap());
    assert!(answer.errors.is_empty(), "{:?}", answer.errors);
    answer
}

fn lead(answer: &Evaluation, way: Way) -> WayHere {
    *answer.here.as_ref().unwrap().way(way).unwrap()
}

/// True where a value rounds to the digits that are printed.
fn prints(value: f64, decimals: usize, printed: &str) {
    assert_eq!(format!("{value:.decimals$}"), printed);
}

/// Drop over the job's lead of a conductor of one set.
fn drop_of(answer: &Evaluation, way: Way, size: Size) -> f64 {
    let sweep = answer.sweep.as_ref().unwrap().way(way);
    let conductor = wellwright_core::cable::lead::Conductor { sets: 1, size };
    let lead = answer.here.as_ref().unwrap().lead;
    in_volts(drop_over(&sweep.demands, conductor, lead).unwrap().unwrap())
}

#[test]
fn the_lead_is_the_setting_and_the_surface_run() {
    let here = evaluated().here.unwrap();
    prints(in_feet(here.lead), 3, "660.000");
    prints(in_feet(here.order), 1, "679.8");
}

#[test]
fn the_lead_at_240_volts() {
    let answer = evaluated();
    let sweep = answer.sweep.as_ref().unwrap().way(Way::V240);
    prints(in_amperes(sweep.required), 3, "28.125");
    let first = sweep.runs.first().unwrap().run;
    assert_eq!(first.conductor.size, Size::Awg10);
    prints(in_amperes(first.ampacity), 1, "28.7");
    prints(drop_of(&answer, Way::V240, Size::Awg10), 3, "26.971");
    prints(drop_of(&answer, Way::V240, Size::Awg8), 3, "17.061");
    let chosen = lead(&answer, Way::V240);
    assert_eq!(chosen.run.run.conductor.size, Size::Awg6);
    assert_eq!(chosen.run.run.governs, Governs::Drop);
    prints(in_volts(chosen.drop), 3, "10.979");
    prints(100.0 * chosen.drop_share, 3, "4.575");
    assert_eq!(chosen.run.run.ground, Size::Awg6);
}

#[test]
fn the_lead_at_480_volts() {
    let answer = evaluated();
    let sweep = answer.sweep.as_ref().unwrap().way(Way::V480);
    prints(in_amperes(sweep.required), 3, "14.125");
    prints(drop_of(&answer, Way::V480, Size::Awg14), 3, "33.486");
    let chosen = lead(&answer, Way::V480);
    assert_eq!(chosen.run.run.conductor.size, Size::Awg12);
    prints(in_volts(chosen.drop), 3, "21.108");
    prints(100.0 * chosen.drop_share, 3, "4.397");
    // The ground would grow past the phases; it is held at their size.
    assert_eq!(chosen.run.run.ground, Size::Awg12);
}

#[test]
fn the_saving() {
    let answer = evaluated();
    let saving = answer.here.as_ref().unwrap().saving.unwrap();
    prints(lead(&answer, Way::V240).cable.0, 0, "2255");
    prints(lead(&answer, Way::V480).cable.0, 0, "809");
    prints(saving.cable.0, 0, "1446");
    prints(in_pounds(saving.metal), 1, "160.7");
    prints(saving.net.0, 0, "546");
}

/// Static level 430 ft, 25 gpm from 0.60 gpm/ft; by hand.
#[test]
fn the_water_above_the_pump() {
    let mut job = wire::read_text(JOB).unwrap();
    job.set(Field::StaticLevel, Some(Entry::new(430.0, Unit::Foot)));
    job.set(Field::Drawdown, Some(Entry::new(25.0 / 0.60, Unit::Foot)));
    let answer = evaluate(&job);
    prints(in_feet(answer.water.pumping_level.unwrap()), 2, "471.67");
    prints(in_feet(answer.water.submergence.unwrap()), 2, "148.33");
    // Nothing else moves, and nothing is unsafe about it.
    let without = evaluated();
    assert_eq!((answer.here, answer.findings), (without.here, without.findings));
}

#[test]
fn the_report_says_the_same() {
    let job = wire::read_text(JOB).unwrap();
    let report = wellwright_core::evaluate::report(&job.name, &evaluate(&job));
    let value = |path: &str| report.pointer(path).and_then(Value::as_f64).unwrap();
    prints(value("/at_depth/240 V/drop/value"), 3, "10.979");
    prints(value("/at_depth/480 V/drop/value"), 3, "21.108");
    prints(value("/at_depth/saving/net/value"), 0, "546");
    assert_eq!(report.pointer("/at_depth/240 V/size").and_then(Value::as_str), Some("6 AWG"));
    assert_eq!(report.pointer("/at_depth/480 V/ground").and_then(Value::as_str), Some("12 AWG"));
}
