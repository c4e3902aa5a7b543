//! Whole jobs from the water to the saving, as the second opinion in Python works them (`tests/second`): it shares no
//! code, no table and no constant with core. All of them are invented; the first is worked job A.

use serde_json::Value;
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::wire;

const WHOLE: &str = include_str!("../second/whole.json");
/// Depths of a change of the cheaper way are found to within this, ft.
const DEPTH: f64 = 1e-5;

fn whole() -> Vec<Value> {
    serde_json::from_str(WHOLE).unwrap()
}

/// A figure of an evaluation by its path; a path's `240 V` is one step of it.
fn pick<'a>(evaluation: &'a Value, path: &str) -> &'a Value {
    path.split('.').fold(evaluation, |place, step| &place[step])
}

/// How an evaluation's figure differs from the second opinion's.
fn differs(path: &str, theirs: &Value, ours: &Value) -> Option<String> {
    let Some(off) = theirs.get("off").and_then(Value::as_f64) else {
        return (theirs != ours).then(|| format!("{path}: {ours}, second opinion {theirs}"));
    };
    let number = |figure: &Value| figure["value"].as_f64().unwrap_or(f64::NAN);
    // Written so that NaN differs.
    let near = (number(theirs) - number(ours)).abs() <= off;
    (!near || theirs["unit"] != ours["unit"]).then(|| format!("{path}: {ours}, second opinion {theirs}"))
}

#[test]
fn whole_jobs_agree_with_the_second_opinion() {
    let jobs = whole();
    assert!(jobs.len() >= 12);
    let mut wrong = Vec::new();
    for kept in &jobs {
        let job = wire::read_text(&kept["job"].to_string()).unwrap();
        let answer = evaluate(&job);
        assert!(answer.errors.is_empty(), "{}: {:?}", job.name, answer.errors);
        let told = report(&job.name, &answer);
        let figures = kept["figures"].as_object().unwrap();
        assert!(figures.len() >= 45, "{}: {} figures", job.name, figures.len());
        let found = figures.iter().filter_map(|(path, theirs)| differs(path, theirs, pick(&told, path)));
        wrong.extend(found.map(|found| format!("{}: {found}", job.name)));
        for (basis, changes) in kept["changes"].as_object().unwrap() {
            let (theirs, ours) =
                (changes.as_array().unwrap(), told["break_even"][basis]["changes"].as_array().unwrap());
            let alike = |(theirs, ours): (&Value, &Value)| {
                let off = theirs["depth"].as_f64().unwrap() - ours["depth"]["value"].as_f64().unwrap();
                off.abs() <= DEPTH && theirs["cheaper_below"] == ours["cheaper_below"]
            };
            if theirs.len() != ours.len() || !theirs.iter().zip(ours).all(alike) {
                wrong.push(format!("{}: {basis} {ours:?}, second opinion {theirs:?}", job.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_figure_that_differs_is_found() {
    let theirs = serde_json::json!({"value": 10.0, "unit": "ft", "off": 0.01});
    let ours = |value: f64, unit: &str| serde_json::json!({"value": value, "unit": unit});
    assert_eq!(differs("a", &theirs, &ours(10.009, "ft")), None);
    assert!(differs("a", &theirs, &ours(10.02, "ft")).is_some());
    assert!(differs("a", &theirs, &ours(10.0, "m")).is_some());
    assert!(differs("a", &theirs, &Value::Null).is_some());
    assert!(differs("a", &Value::from("6 AWG"), &Value::from("8 AWG")).is_some());
}
