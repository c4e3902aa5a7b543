//! What every test here may need: where the project stands, and comparing two JSON values by their numbers.

use serde_json::Value;
use std::path::{Path, PathBuf};

/// The top folder of the project.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The first place where two JSON values differ, or `None` where they agree: numbers to a share of the larger one, or of
/// `floor` where both are smaller, everything else exactly.
#[must_use]
pub fn difference(left: &Value, right: &Value, share: f64, floor: f64) -> Option<String> {
    differ("$", left, right, &|a, b| (a - b).abs() <= share * a.abs().max(b.abs()).max(floor))
}

fn differ(path: &str, left: &Value, right: &Value, same: &dyn Fn(f64, f64) -> bool) -> Option<String> {
    match (left, right) {
        (Value::Number(_), Value::Number(_)) => {
            let (a, b) = (left.as_f64()?, right.as_f64()?);
            (!same(a, b)).then(|| format!("{path}: {a} and {b}"))
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            a.iter().zip(b).enumerate().find_map(|(i, (a, b))| differ(&format!("{path}[{i}]"), a, b, same))
        }
        (Value::Object(a), Value::Object(b)) if a.keys().eq(b.keys()) => {
            a.iter().find_map(|(key, a)| differ(&format!("{path}.{key}"), a, &b[key], same))
        }
        _ if left == right => None,
        _ => Some(format!("{path}: {left} and {right}")),
    }
}

#[cfg(test)]
mod tests {
    use super::difference;
    use serde_json::json;

    #[test]
    fn a_difference_is_found_and_named() {
        let kept = json!({"a": [1.0, {"b": 2.0}], "c": "x"});
        assert_eq!(difference(&kept, &kept, 0.0, 0.0), None);
        let moved = json!({"a": [1.0, {"b": 2.0 + 1e-8}], "c": "x"});
        assert_eq!(difference(&kept, &moved, 1e-7, 0.0), None);
        assert_eq!(difference(&kept, &moved, 1e-9, 100.0), None);
        assert!(difference(&kept, &moved, 1e-9, 0.0).is_some_and(|text| text.starts_with("$.a[1].b")));
        for other in [json!({"a": [1.0], "c": "x"}), json!({"a": null, "c": "x"}), json!({"c": "x"}), json!(1)] {
            assert!(difference(&kept, &other, 1.0, 0.0).is_some(), "{other}");
        }
    }
}
