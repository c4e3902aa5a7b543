//! What the start-up tells an installer of some jobs: check list, readings and what is predicted of them, settings, and
//! verdicts on readings that are far off. Frozen as the evaluations are; each rule is proved by `findings`.

use super::text;
use serde_json::{Map, Value, json};
use std::path::Path;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::job::{Check, Control, Field, Job, Place, Reading, WayKey, wire};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{Entry, Unit};
use wellwright_core::startup::{
    self, Judged, Setting, VisitJudged, checks, judge, predicted, settings, stops, trend, wanted,
};
use wellwright_tests::difference;

const AT: &str = "2026-11-26T10:00:00-06:00";

/// Wells on every kind of equipment, a surface pump, a pump between two switches, no pump at all.
fn jobs() -> Vec<(String, Job)> {
    let stored = |name: &str| {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.job.json"));
        wire::read_text(&text(&path)).unwrap()
    };
    let by = |mut job: Job, kind| {
        job.way = Some(WayKey::Generic(kind));
        job
    };
    let house = stored("house_and_stock_well_on_its_supply");
    let field = stored("field_surface_pump_on_its_supply");
    let mut found = vec![("nothing".to_owned(), Job::default())];
    for (name, job) in [("house", &house), ("field", &field)] {
        for kind in Kind::ALL {
            found.push((format!("{name}, {kind:?}"), by(job.clone(), kind)));
        }
    }
    let mut filtered = by(house.clone(), Kind::ConvertingActive);
    filtered.choices.remedy = Some(Remedy::SineFilter);
    filtered.choices.place = Some(Place::Indoors);
    filtered.choices.restart = Some(true);
    filtered.set(Field::GeneratorRating, Some(Entry::new(20.0, Unit::KilovoltAmpere)));
    found.push(("house, filtered indoors".to_owned(), filtered));
    let mut switched = by(house, Kind::Doubling);
    switched.choices.control = Some(Control::OnOff);
    found.push(("house, switched".to_owned(), switched));
    for name in ["pump_curve_on_off", "every_place_with_supply_in_si"] {
        found.push((name.to_owned(), stored(name)));
    }
    found
}

/// Visits on which every reading is so many times what is predicted of it, or of a figure of its own kind.
fn visited(job: &Job, answer: &Evaluation) -> Job {
    let mut job = job.clone();
    for times in [0.5, 0.93, 1.0, 1.07, 1.5] {
        job.record.begin("RG", AT).unwrap();
        for (place, reading) in Reading::ALL.into_iter().enumerate() {
            let usual = predicted(&job, answer, reading).map_or(10.0, |entry| entry.value);
            let (low, high) = reading.accepted();
            let value = (usual * times + 0.01 * place as f64).clamp(low, high);
            job.record.type_in(reading, &value.to_string(), Some(Entry::new(value, reading.unit())), AT).unwrap();
            job.record.close();
        }
    }
    job
}

fn setting(setting: &Setting) -> Value {
    let value = match &setting.value {
        startup::Value::Figure(entry) => json!(entry),
        startup::Value::Word(word) => json!(word),
        startup::Value::Missing(fields) => json!(fields.iter().map(|field| field.path()).collect::<Vec<_>>()),
    };
    json!({"code": setting.code, "value": value, "safe": setting.safe, "assumed": setting.assumed})
}

fn judged(judged: &Judged) -> Value {
    json!({
        "reading": judged.reading, "value": judged.value, "predicted": judged.predicted, "limit": judged.limit,
        "severity": judged.severity, "advice": format!("{:?}", judged.advice),
    })
}

fn visit(visit: &VisitJudged) -> Value {
    let balances = [visit.amps, visit.volts].map(|balance| {
        let told = |balance: startup::Balance| {
            json!({
                "share": balance.share, "farthest": balance.farthest, "limit": balance.limit,
                "severity": balance.severity, "left": balance.left,
            })
        };
        balance.map(told)
    });
    json!({
        "by": visit.by, "at": visit.at, "gravest": visit.gravest(), "balances": balances,
        "readings": visit.readings.iter().map(judged).collect::<Vec<_>>(),
    })
}

/// Whether readings are judged too: on a drive and on full volts, and where the job is one of its own.
fn with_visits(name: &str) -> bool {
    ["Doubling", "RotaryConverter", "StepUpActive"].iter().any(|kind| name.ends_with(kind)) || !name.contains(", ")
}

fn told(name: &str, job: &Job) -> Value {
    let answer = evaluate(job);
    let usual: Map<String, Value> = Reading::ALL
        .into_iter()
        .filter_map(|reading| Some((format!("{reading:?}"), json!(predicted(job, &answer, reading)?))))
        .collect();
    let visited = if with_visits(name) { visited(job, &answer) } else { job.clone() };
    let left_out: Vec<Check> = Check::ALL.into_iter().filter(|check| !checks(job, &answer).contains(check)).collect();
    let not_read: Vec<Reading> =
        Reading::ALL.into_iter().filter(|reading| !wanted(job, &answer).contains(reading)).collect();
    json!({
        "checks_left_out": left_out,
        "not_read": not_read,
        "predicted": usual,
        "settings": settings(job, &answer).iter().map(setting).collect::<Vec<_>>(),
        "visits": judge(&visited, &answer).iter().map(visit).collect::<Vec<_>>(),
        "stops": stops(&visited, &answer).iter().map(|finding| format!("{finding:?}")).collect::<Vec<_>>(),
        "trend": trend(&visited, Reading::Flow),
    })
}

/// JSON, its outer levels a line for each part.
fn laid_out(value: &Value, levels: usize) -> String {
    let inside = |parts: Vec<String>, [open, close]: [&str; 2]| format!("{open}\n{}\n{close}", parts.join(",\n"));
    match value {
        Value::Object(all) if levels > 0 && !all.is_empty() => inside(
            all.iter().map(|(key, part)| format!("{}: {}", json!(key), laid_out(part, levels - 1))).collect(),
            ["{", "}"],
        ),
        Value::Array(all) if levels > 0 && !all.is_empty() => {
            inside(all.iter().map(|part| laid_out(part, levels - 1)).collect(), ["[", "]"])
        }
        _ => value.to_string(),
    }
}

/// Written anew where `WELLWRIGHT_WRITE` is set.
#[test]
fn the_startup_is_told_as_it_was() {
    let now: Map<String, Value> = jobs().iter().map(|(name, job)| (name.clone(), told(name, job))).collect();
    let now = Value::Object(now);
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("golden/startup.json");
    if std::env::var_os("WELLWRIGHT_WRITE").is_some() {
        std::fs::write(&path, laid_out(&now, 3) + "\n").unwrap();
    }
    let kept: Value = serde_json::from_str(&text(&path)).unwrap();
    assert_eq!(difference(&now, &kept, 1e-9, 0.0), None);
}
