//! The planted errors: each text that one replaces stands in its file once, so that the list does not rot.

use super::none;
use wellwright_tests::root;

/// Fewest errors, and fewest of a chapter.
const LEAST: (usize, usize) = (30, 3);
const CHAPTERS: [&str; 8] = ["water", "quantity", "pump", "standards", "cable", "power", "cost", "startup"];

#[test]
fn every_planted_error_has_its_place() {
    let text = std::fs::read_to_string(root().join("tests/planted/errors.json")).unwrap();
    let errors: Vec<serde_json::Value> = serde_json::from_str(&text).unwrap();
    assert!(errors.len() >= LEAST.0);
    let part = |error: &serde_json::Value, name: &str| error[name].as_str().unwrap().to_owned();
    for chapter in CHAPTERS {
        assert!(errors.iter().filter(|error| part(error, "chapter") == chapter).count() >= LEAST.1, "{chapter}");
    }
    let out = errors.iter().filter_map(|error| {
        let (file, find, put) = (part(error, "file"), part(error, "find"), part(error, "put"));
        let count = std::fs::read_to_string(root().join(&file)).unwrap().matches(&find).count();
        (count != 1 || find == put).then(|| format!("{file}: {find:?} stands there {count} times"))
    });
    none(out.collect());
}
