//! A worked job: 7.5 hp house and stock well, 620 ft setting, 660 ft of lead, 45 degC, prices invented.
//!
//! Its results are worked by hand with the formulas that core documents (table 8 resistance, table 9 reactance in
//! plastic conduit, exact drop, 125 % of the larger current, grown ground capped at the phase size, three phases and
//! ground by table 8 area and 2 % lay). They are not measured and not published; they are held to the printed digits.

use serde_json::{Value, json};
use wellwright_core::cable::lead::{Governs, drop_over};
use wellwright_core::evaluate::{Basis, Evaluation, WayHere, evaluate};
use wellwright_core::job::{Field, Way, wire};
use wellwright_core::papers::{Math, Topic, working};
use wellwright_core::quantity::{UnitSystem, in_amperes, in_feet, in_pounds, in_volts};
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

/// The lead does not hang on the water: without a figure of it the job has the same lead, and the same costs.
#[test]
fn the_lead_stands_without_the_water() {
    let mut job = wire::read_text(JOB).unwrap();
    let of_water = |field: &Field| !["motor", "cable", "prices"].contains(&field.path().split('.').next().unwrap());
    let kept = [Field::PumpSetting, Field::SurfaceRun, Field::Ambient];
    for field in Field::ALL.into_iter().filter(of_water).filter(|field| !kept.contains(field)) {
        job.set(field, None);
    }
    let (bare, whole) = (evaluate(&job), evaluated());
    assert!(bare.water.head.is_none() && whole.water.head.is_some());
    let leads = |answer: &Evaluation| {
        let here = answer.here.as_ref().unwrap();
        let runs = answer
            .sweep
            .as_ref()
            .unwrap()
            .ways
            .clone()
            .map(|way| way.runs.into_iter().map(|run| run.run).collect::<Vec<_>>());
        (
            here.ways.map(|way| way.map(|way| (way.run.run, way.cable, way.drop))),
            here.saving.map(|saving| saving.cable),
            runs,
        )
    };
    assert_eq!(leads(&bare), leads(&whole));
}

/// A formula on one line, its numbers to three digits after the point.
fn line(formula: &[Math]) -> String {
    let piece = |piece: &Math| match piece {
        Math::Symbol(symbol) => symbol.text(),
        Math::Number(number) => format!("{}", (1000.0 * number.value).round() / 1000.0),
        Math::Sign(sign) => (*sign).to_owned(),
        Math::Fraction(over, under) => format!("[{}]/[{}]", line(over), line(under)),
        Math::Root(part) => format!("√[{}]", line(part)),
        Math::Power(base, power) => format!("{}^{power}", line(base)),
        Math::Max(one, other) => format!("max[{}, {}]", line(one), line(other)),
        Math::Min(one, other) => format!("min[{}, {}]", line(one), line(other)),
    };
    formula.iter().map(piece).collect()
}

/// The steps behind an answer, each on one line: symbol, formula, numbers, result.
fn steps(topic: Topic, system: UnitSystem) -> Vec<String> {
    let working = working(&evaluated(), topic, system).unwrap();
    let steps = working.steps.iter();
    steps
        .map(|step| {
            let result = format!("{:.3} {}", step.result.value, json!(step.result.unit).as_str().unwrap());
            format!("{} = {} = {} = {result}", step.symbol.text(), line(&step.formula), line(&step.filled))
        })
        .collect()
}

/// The drop at 240 V as it is worked by hand: table 8 and table 9 give 0.491 and 0.051 Ω/1000 ft for 6 AWG.
#[test]
fn the_working_of_the_drop() {
    let expected = [
        "L = D+L_s = 620+40 = 660.000 ft",
        "sin φ = √[1−cos φ^2] = √[1−0.8^2] = 0.600 1",
        "a = [k·I·L·(R·cos φ+X·sin φ)]/[1000] = [1.732·22.5·660·(0.491·0.8+0.051·0.6)]/[1000] = 10.890 V",
        "b = [k·I·L·(X·cos φ−R·sin φ)]/[1000] = [1.732·22.5·660·(0.051·0.8−0.491·0.6)]/[1000] = -6.528 V",
        "ΔV = V+a−√[V^2−b^2] = 240+10.89−√[240^2−(-6.528)^2] = 10.979 V",
        "d = [ΔV]/[V]·100 = [10.979]/[240]·100 = 4.575 %",
    ];
    assert_eq!(steps(Topic::Drop(Way::V240), UnitSystem::Us), expected);
    // 660 ft are 201.168 m, 0.491 Ω in 0.3048 km are 1.611 Ω/km.
    let si = steps(Topic::Drop(Way::V240), UnitSystem::Si);
    assert_eq!(si[0], "L = D+L_s = 188.976+12.192 = 201.168 m");
    assert!(si[2].ends_with("[1.732·22.5·201.168·(1.611·0.8+0.167·0.6)]/[1000] = 10.890 V"), "{}", si[2]);
}

#[test]
fn the_working_of_current_and_ampacity() {
    assert_eq!(steps(Topic::MotorCurrent(Way::V240), UnitSystem::Us), ["I = max[I_t, I_n] = max[22, 22.5] = 22.500 A"]);
    let expected = [
        "I_r = 1.25·I = 1.25·22.5 = 28.125 A",
        // 6 AWG copper: 65 A at 75 °C; 0.82 at 45 °C; the terminals are marked 75 °C.
        "I_z = min[I_i·F_a, I_e] = min[65·0.82, 65] = 53.300 A",
    ];
    assert_eq!(steps(Topic::Ampacity(Way::V240), UnitSystem::Us), expected);
}

#[test]
fn the_working_of_cost_and_saving() {
    // 26,240 cmil are 13.296 mm²; at 8.89 g/cm³ and 2 % lay 0.12057 kg/m, or 0.08102 lb/ft; by hand to five digits.
    let expected = [
        "m_p = [A_p·ρ·1.02]/[1000] = [26.24·3.027·1.02]/[1000] = 0.081 lb/ft",
        "m_g = [A_g·ρ·1.02]/[1000] = [26.24·3.027·1.02]/[1000] = 0.081 lb/ft",
        "m = 3·m_p+m_g = 3·0.081+0.081 = 0.324 lb/ft",
        "c_240 = c_0+p·m = 0.5+9·0.324 = 3.417 $/ft",
        "L = D+L_s = 620+40 = 660.000 ft",
    ];
    let cost = steps(Topic::CableCost(Way::V240, Basis::Installed), UnitSystem::Us);
    assert_eq!(cost[..5], expected);
    assert!(cost[5].starts_with("C_240 = c_240·L = 3.417·660 = 2254.9"), "{}", cost[5]);
    let si = steps(Topic::CableCost(Way::V240, Basis::Installed), UnitSystem::Si);
    assert_eq!(si[0], "m_p = [A_p·ρ·1.02]/[1000] = [13.296·8.89·1.02]/[1000] = 0.121 kg/m");
    let saving = steps(Topic::Saving(Basis::Installed), UnitSystem::Us);
    assert!(
        saving[0].starts_with("S_c = C_240−C_480 = 2254.9") && saving[1].starts_with("S = S_c−C_e = "),
        "{saving:?}"
    );
    let result = |topic: Topic| working(&evaluated(), topic, UnitSystem::Us).unwrap().result.value;
    prints(result(Topic::Saving(Basis::Cable)), 0, "1446");
    prints(result(Topic::Saving(Basis::Installed)), 0, "546");
    // 809.04 and the 900 more that 480 V needs, beyond what both ways need.
    let [low, high] = Way::ALL.map(|way| result(Topic::CableCost(way, Basis::Installed)));
    let cable = Way::ALL.map(|way| result(Topic::CableCost(way, Basis::Cable)));
    prints(high - (low - cable[0]), 0, "1709");
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
