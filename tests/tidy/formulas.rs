//! Every public function of the chapters says its units, its range and its source, and its errors where it has any.

use super::none;
use super::tree::{File, code, rust};

const CHAPTERS: [&str; 5] = ["core/src/water", "core/src/pump", "core/src/power", "core/src/cable", "core/src/cost"];

const STARTUP: [&str; 3] = ["startup/insulation.rs", "startup/protection.rs", "startup/transducer.rs"];

fn problems(file: &File) -> Vec<String> {
    let lines: Vec<&str> = file.text.lines().collect();
    let heads = code(&file.text).into_iter().filter(|(_, line)| is_public(line.trim_start()));
    heads.flat_map(|(number, _)| missing(file, &lines, number - 1)).collect()
}

fn is_public(line: &str) -> bool {
    let Some(rest) = line.strip_prefix("pub ") else { return false };
    ["fn ", "const fn ", "async fn "].iter().any(|word| rest.starts_with(word))
}

fn missing(file: &File, lines: &[&str], head: usize) -> Vec<String> {
    let above = lines[..head].iter().rev().map(|line| line.trim_start());
    let doc: Vec<&str> = above
        .take_while(|line| line.starts_with("///") || line.starts_with("#["))
        .filter_map(|line| line.strip_prefix("///").map(str::trim))
        .collect();
    let signature: String = lines[head..].iter().take_while(|line| !line.contains('{')).copied().collect();
    let signature = signature + lines[head..].iter().find(|line| line.contains('{')).unwrap_or(&"");
    let mut wanted = vec!["# Units", "# Range", "# Source"];
    if signature.split("->").nth(1).is_some_and(|result| result.trim_start().starts_with("Result<")) {
        wanted.push("# Errors");
    }
    let name = lines[head].trim();
    let lacks = |heading: &&str| {
        // A heading with nothing under it says nothing. The lines stand in reverse: what is under it comes before it.
        doc.iter().position(|line| line == heading).is_none_or(|at| at == 0 || doc[at - 1].starts_with('#'))
    };
    wanted.into_iter().filter(lacks).map(|heading| format!("{}: {name} lacks {heading}", file.path)).collect()
}

#[test]
fn formulas_say_units_range_source_and_errors() {
    // Formulas of the start-up stand beside what reads a whole job.
    let of_startup =
        rust("core/src/startup").into_iter().filter(|file| STARTUP.iter().any(|name| file.path.ends_with(name)));
    let all: Vec<File> = CHAPTERS.into_iter().flat_map(rust).chain(of_startup).collect();
    assert!(STARTUP.iter().all(|name| all.iter().any(|file| file.path.ends_with(name))));
    let formulas =
        all.iter().flat_map(|file| code(&file.text)).filter(|(_, line)| is_public(line.trim_start())).count();
    assert!(formulas >= 30, "only {formulas} formulas are found");
    none(all.iter().flat_map(problems).collect());
}

#[test]
fn a_formula_that_says_less_is_found() {
    let lacks = |text: &str| problems(&File::new("core/src/cable/a.rs", text)).len();
    let doc = "/// A.\n///\n/// # Units\n/// V\n/// # Range\n/// any\n/// # Source\n/// law\n#[must_use]\n";
    assert_eq!(lacks(&format!("{doc}pub fn a() -> f64 {{}}\n")), 0);
    assert_eq!(lacks(&format!("{doc}pub fn a(\n    b: f64,\n) -> Result<f64, E> {{\n}}\n")), 1);
    assert_eq!(lacks("/// A.\n/// # Units\n/// # Range\n/// any\npub const fn a() {}\n"), 2);
    assert_eq!(lacks("pub fn a() -> f64 {}\n"), 3);
    assert_eq!(lacks("fn a() {}\npub(super) fn b() {}\n"), 0);
    assert_eq!(lacks("#[cfg(test)]\nmod tests {\n    pub fn a() {}\n}\n"), 0);
}
