//! The doors: each reads a text, keeps its promises about what it read, and says in a word what came of it.

use serde_json::Value;
use wellwright_core::cost::book_table;
use wellwright_core::cost::duty_text::{FlowUnit, read_duty};
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::Job;
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::passing;
use wellwright_core::power::family_table;
use wellwright_core::pump::curve::PumpCurve;
use wellwright_core::pump::paste::{self, ColumnUnit};
use wellwright_core::quantity::{in_feet, in_gpm, in_hours};

/// A figure of a report that is not finite stands in it as nothing.
fn hole(value: &Value, path: &str) -> Option<String> {
    match value {
        Value::Object(parts) => parts.iter().find_map(|(key, part)| match part {
            Value::Null if key == "value" => Some(path.to_owned()),
            _ => hole(part, &format!("{path}.{key}")),
        }),
        Value::Array(parts) => parts.iter().find_map(|part| hole(part, path)),
        _ => None,
    }
}

/// What was read is written and read again as it was.
fn comes_back(job: &Job) {
    assert_eq!(wire::read_text(&wire::write(job).to_string()).as_ref(), Ok(job), "it does not come back");
}

/// A job file, and all that follows from it.
pub fn job(text: &str) -> String {
    let job = match wire::read_text(text) {
        Ok(job) => job,
        Err(error) => {
            assert!(!error.to_string().is_empty());
            // A member may have a name without letters.
            let nameless = matches!(&error, WireError::BadField { detail, .. } if detail == "unknown");
            assert!(nameless || !error.path().is_empty() || error.code() == "not_json", "{error:?} names no place");
            return format!("{} {}", error.code(), error.path());
        }
    };
    comes_back(&job);
    let answer = evaluate(&job);
    let told = report(&job.name, &answer);
    // An error repeats what was entered, which may be anything.
    let mut figures = told.clone();
    figures["errors"] = Value::Null;
    assert_eq!(hole(&figures, "$"), None, "a figure is no number");
    let codes = |list: &Value, key: &str| -> String {
        let all = list.as_array().into_iter().flatten().filter_map(|one| one[key].as_str().map(str::to_owned));
        all.collect::<std::collections::BTreeSet<_>>().into_iter().collect::<Vec<_>>().join(" ")
    };
    format!("{} | {}", codes(&told["errors"], "field"), codes(&told["findings"], "code"))
}

/// A link, as letters or as digits.
pub fn link(text: &str) -> String {
    match passing::read(text) {
        Ok(job) => {
            comes_back(&job);
            assert_eq!(passing::read(&passing::write(&job)), Ok(job), "the link does not come back");
            "read".to_owned()
        }
        Err(error) => format!("{error:?}").split(['(', '{']).next().unwrap_or_default().to_owned(),
    }
}

/// A table of prices.
pub fn book(text: &str) -> String {
    match book_table::read(text) {
        Ok(None) => "none".to_owned(),
        Ok(Some(book)) => {
            assert_eq!(
                book_table::read(&book_table::write(&book)),
                Ok(Some(book.clone())),
                "the book does not come back"
            );
            format!("read {}", text.lines().count())
        }
        Err(error) => {
            assert!(error.row >= 1 && error.row <= text.split(['\n', '\r']).count() + 1, "{error:?}");
            format!("{:?} {}", error.column, named(&format!("{:?}", error.what)))
        }
    }
}

/// A table of equipment.
pub fn families(text: &str) -> String {
    match family_table::read(text) {
        Ok(families) => {
            let again = family_table::read(&family_table::write(&families));
            assert_eq!(again.as_ref(), Ok(&families), "the equipment does not come back");
            format!("read {}", families.len())
        }
        Err(error) => {
            assert!(error.row >= 1, "{error:?}");
            format!("{:?} {}", error.column, named(&format!("{:?}", error.what)))
        }
    }
}

/// Hours of a year at each flow.
pub fn duty(text: &str) -> String {
    match read_duty(text, FlowUnit::Gpm) {
        Ok(read) => {
            assert!(read.duty.rows().iter().all(|row| in_gpm(row.flow).is_finite()));
            assert!(in_hours(read.duty.time()) <= 8784.0 + 1e-6);
            format!("read {} {}", read.duty.rows().len(), read.told)
        }
        Err(error) => {
            assert!(error.line >= 1 && error.line <= text.split(['\n', '\r']).count() + 1, "{error:?}");
            named(&format!("{error:?}"))
        }
    }
}

/// Points of a pump's curve, and the curve through them.
pub fn curve(text: &str) -> String {
    let read = match paste::read(text, ColumnUnit::Gpm, ColumnUnit::Foot) {
        Ok(read) => read,
        Err(error) => {
            assert!(error.line >= 1 && error.line <= text.split(['\n', '\r']).count() + 1, "{error:?}");
            return format!("{} {}", error.column, named(&format!("{:?}", error.fault)));
        }
    };
    match PumpCurve::new(read.points) {
        Ok(curve) => {
            let (from, to) = curve.flows();
            for part in 0..=20 {
                let head = curve.head(from + (to - from) * (f64::from(part) / 20.0)).unwrap();
                assert!(in_feet(head).is_finite() && in_feet(head) >= 0.0, "{head:?}");
            }
            format!("curve {:?}", curve.warnings().len())
        }
        Err(error) => named(&format!("{error:?}")),
    }
}

/// The name of a kind, without what it holds.
fn named(shown: &str) -> String {
    let what = shown.rsplit_once("what: ").or_else(|| shown.rsplit_once("fault: ")).map_or(shown, |(_, rest)| rest);
    what.split(['(', '{', ' ']).next().unwrap_or_default().to_owned()
}
