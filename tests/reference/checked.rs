//! What checks each formula: `formulas.csv` names for every public formula of core the quantities of published values or
//! the tests here that fail once the formula answers something else (those that fail for the fewest formulas, as
//! `tests/mutants` found them), and `core/CHECKED.md` is written from it. A formula that nothing from outside checks fails.

use super::rows::{Row, rows};
use super::{Answer, CHAPTERS, answer};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::Path;
use wellwright_tests::root;

/// Where formulas stand, by chapter.
const FOLDERS: [&str; 6] = ["water", "pump", "power", "cable", "cost", "startup"];
/// What reads and writes texts and tables, and looks up data: no formulas.
const DATA: [&str; 9] = [
    "_table/",
    "cost/book/",
    "cost/duty_text.rs",
    "power/family.rs",
    "power/generic.rs",
    "pump/demo.rs",
    "pump/paste.rs",
    "tests.rs",
    "mod.rs",
];
/// Methods that only hand out what they hold.
const HANDED_OUT: [&str; 8] = [
    "cost::duty::Duty::rows",
    "cost::price::PriceBook::quote",
    "cost::spread::Estimate::expected",
    "cost::spread::Estimate::high",
    "cost::spread::Estimate::low",
    "pump::curve::PumpCurve::flows",
    "pump::curve::PumpCurve::points",
    "pump::curve::PumpCurve::warnings",
];
/// Of the start-up: formulas stand in these files, the rest reads whole jobs.
const STARTUP: [&str; 3] = ["insulation.rs", "protection.rs", "transducer.rs"];

/// What checks a formula.
enum By {
    /// Published values of a quantity.
    Values(String),
    /// A test of this folder, with its figures beside it.
    Test(String),
    /// Another formula, which is nothing but this one and what is checked apart.
    Through(String),
}

/// Files of a chapter that hold formulas.
fn sources(folder: &Path, found: &mut Vec<String>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else {
            found.push(path.to_str().unwrap().replace('\\', "/"));
        }
    }
}

/// Formulas of a file by their paths, each with its source.
fn of_file(module: &str, text: &str) -> Vec<(String, String)> {
    let text = text.split("#[cfg(test)]").next().unwrap_or_default();
    let (mut found, mut owner, mut doc): (_, _, Vec<&str>) = (Vec::new(), String::new(), Vec::new());
    for line in text.lines() {
        if line.starts_with("impl") {
            let name = line.trim_end_matches(['{', ' ']).rsplit(' ').next().unwrap_or_default();
            owner = format!("{}::", name.split('<').next().unwrap_or_default());
        } else if line == "}" {
            owner.clear();
        }
        let inside = line.trim_start();
        let head = inside.strip_prefix("pub fn ").or_else(|| inside.strip_prefix("pub const fn "));
        if let Some(head) = head {
            let name = head.split(['(', '<']).next().unwrap_or_default();
            let own = if line.starts_with(' ') { owner.as_str() } else { "" };
            let source =
                doc.iter().skip_while(|line| **line != "# Source").skip(1).take_while(|line| !line.starts_with('#'));
            found.push((format!("{module}::{own}{name}"), source.copied().collect::<Vec<_>>().join(" ")));
        }
        match inside.strip_prefix("///") {
            Some(said) => doc.push(said.trim()),
            None if inside.starts_with("#[") => {}
            None => doc.clear(),
        }
    }
    found
}

/// Every public formula by its path, with its source.
fn formulas() -> BTreeMap<String, String> {
    let core = root().join("core/src");
    let mut files = Vec::new();
    for folder in FOLDERS {
        sources(&core.join(folder), &mut files);
    }
    let mut found = BTreeMap::new();
    for file in files.iter().filter(|file| !DATA.iter().any(|part| file.contains(part))) {
        let (_, place) = file.rsplit_once("core/src/").unwrap();
        if place.starts_with("startup/") && !STARTUP.iter().any(|name| place.ends_with(name)) {
            continue;
        }
        let module = place.trim_end_matches(".rs").replace('/', "::");
        found.extend(of_file(&module, &std::fs::read_to_string(file).unwrap()));
    }
    found.retain(|path, source| !HANDED_OUT.contains(&path.as_str()) && !source.contains("no formula"));
    found
}

fn listed() -> BTreeMap<String, Vec<By>> {
    let text = std::fs::read_to_string(root().join("tests/reference/formulas.csv")).unwrap();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let by = |text: &str| match text.split_once(' ') {
        Some(("test", name)) => By::Test(name.to_owned()),
        Some(("through", path)) => By::Through(path.to_owned()),
        _ => By::Values(text.to_owned()),
    };
    let of = |record: csv::StringRecord| {
        (record[0].to_owned(), record[1].split("; ").filter(|text| !text.is_empty()).map(by).collect())
    };
    reader.records().map(|record| of(record.unwrap())).collect()
}

/// How far a row's answer is from the published value, as a share of it.
fn off(row: &Row) -> f64 {
    match (answer(row), row.expected.parse::<f64>()) {
        (Ok(Answer::Number(number)), Ok(expected)) if expected != 0.0 => ((number - expected) / expected).abs(),
        (Ok(Answer::Number(number)), Ok(_)) => number.abs(),
        _ => 0.0,
    }
}

/// A share with one digit, rounded up, so that it is the same on every machine.
fn share(value: f64) -> String {
    if value < 1e-11 {
        return "none".to_owned();
    }
    let power = value.log10().floor() as i32;
    let digit = (value / 10f64.powi(power) - 1e-6).ceil();
    if digit >= 10.0 { format!("1e{}", power + 1) } else { format!("{digit}e{power}") }
}

/// Published values by quantity: how many, and the worst of them.
fn quantities() -> BTreeMap<String, (usize, f64)> {
    let mut found: BTreeMap<String, (usize, f64)> = BTreeMap::new();
    for row in CHAPTERS.iter().flat_map(|(_, text)| rows(text).unwrap()) {
        let one = found.entry(row.quantity.clone()).or_default();
        *one = (one.0 + 1, one.1.max(off(&row)));
    }
    found
}

struct Page<'a> {
    formulas: &'a BTreeMap<String, String>,
    listed: &'a BTreeMap<String, Vec<By>>,
    quantities: BTreeMap<String, (usize, f64)>,
}

impl Page<'_> {
    /// The line of a formula.
    fn line(&self, path: &str, source: &str) -> String {
        let (mut values, mut worst, mut names) = (0, 0.0_f64, Vec::new());
        for by in &self.listed[path] {
            match by {
                By::Values(quantity) => {
                    let (count, off) = self.quantities[quantity];
                    (values, worst) = (values + count, worst.max(off));
                    names.push(quantity.clone());
                }
                By::Test(name) => names.push(format!("`{name}`")),
                By::Through(path) => names.push(format!("through `{path}`")),
            }
        }
        let (count, worst) =
            if values > 0 { (values.to_string(), share(worst)) } else { (String::new(), String::new()) };
        let source = source.replace('|', "\\|");
        format!("| `{path}` | {} | {count} | {worst} | {source} |\n", names.join(", "))
    }

    /// Formulas of a chapter, published values of their quantities, and the worst of these.
    fn chapter(&self, folder: &str) -> (usize, usize, f64) {
        let of = || self.formulas.keys().filter(|path| path.starts_with(folder));
        let names: BTreeSet<&String> = of()
            .flat_map(|path| &self.listed[path])
            .filter_map(|by| if let By::Values(name) = by { Some(name) } else { None })
            .collect();
        let worst = names.iter().map(|name| self.quantities[*name].1).fold(0.0, f64::max);
        (of().count(), names.iter().map(|name| self.quantities[*name].0).sum(), worst)
    }

    fn text(&self) -> String {
        let mut out = "# What checks each formula\n\nWritten by the reference tests from `tests/reference/formulas.csv`. What \
            is named fails once the formula answers something\nelse. A published value is a row of a CSV file there, with its \
            origin; a test has its figures beside it. Worst is how far\ncore is from a published value, as a share of it; a \
            table's own digits are most of that. `core/SOURCES.md` has the sources by\ntheir keys.\n\n| chapter | formulas | \
            published values | worst |\n| --- | --- | --- | --- |\n"
            .to_owned();
        for folder in FOLDERS {
            let (formulas, values, worst) = self.chapter(folder);
            let _ = writeln!(out, "| {folder} | {formulas} | {values} | {} |", share(worst));
        }
        for folder in FOLDERS {
            let _ = write!(
                out,
                "\n## {folder}\n\n| formula | checked by | values | worst | source |\n| --- | --- | --- | --- | --- |\n"
            );
            for (path, source) in self.formulas.iter().filter(|(path, _)| path.starts_with(folder)) {
                out += &self.line(path, source);
            }
        }
        out
    }
}

/// True where a test of this folder has this name, told by its path.
fn stands(name: &str) -> bool {
    let Some((module, name)) = name.rsplit_once("::") else { return false };
    let file = root().join(format!("tests/reference/{}.rs", module.replace("::", "/")));
    let text = std::fs::read_to_string(file).unwrap_or_default();
    let lines: Vec<&str> = text.lines().map(str::trim).collect();
    lines.windows(2).any(|pair| pair[0] == "#[test]" && pair[1].starts_with(&format!("fn {name}(")))
}

#[test]
fn every_formula_is_checked_from_outside() {
    let (formulas, listed) = (formulas(), listed());
    assert!(formulas.len() >= 250, "{} formulas", formulas.len());
    let quantities = quantities();
    let mut wrong: Vec<String> = formulas
        .keys()
        .filter(|path| !listed.contains_key(*path))
        .map(|path| format!("{path} is not listed"))
        .collect();
    for (path, all) in &listed {
        if !formulas.contains_key(path) {
            wrong.push(format!("{path} is listed and not there"));
        }
        if all.is_empty() {
            wrong.push(format!("{path} is checked by nothing"));
        }
        wrong.extend(all.iter().filter_map(|by| match by {
            By::Values(name) => (!quantities.contains_key(name)).then(|| format!("{path}: no value of {name}")),
            By::Test(name) => (!stands(name)).then(|| format!("{path}: no test {name}")),
            By::Through(other) => {
                let ends = listed.get(other).is_some_and(|all| !all.iter().any(|by| matches!(by, By::Through(_))));
                (!ends).then(|| format!("{path}: {other} is not checked by itself"))
            }
        }));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Written anew where `WELLWRIGHT_WRITE` is set.
#[test]
fn the_page_of_checks_is_up_to_date() {
    let (formulas, listed) = (formulas(), listed());
    let page = Page { formulas: &formulas, listed: &listed, quantities: quantities() };
    let (path, now) = (root().join("core/CHECKED.md"), page.text());
    if std::env::var_os("WELLWRIGHT_WRITE").is_some() {
        std::fs::write(&path, &now).unwrap();
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(kept == now, "core/CHECKED.md is out of date: run this test with WELLWRIGHT_WRITE=1");
    let total: usize = page.quantities.values().map(|(count, _)| count).sum();
    assert!(total >= 400, "{total} published values");
}

#[test]
fn a_formula_is_found_with_its_source() {
    let text = "impl<T> A for B<T> {\n    /// Does.\n    ///\n    /// # Source\n    /// [law], part\n    /// two.\n    \
        /// # Example\n    /// none\n    #[must_use]\n    pub fn c(&self) -> f64 {\n    }\n}\n/// # Source\n/// x\npub const fn \
        d<T>() {}\nfn e() {}\n#[cfg(test)]\nmod tests {\n    pub fn f() {}\n}\n";
    let found = of_file("m", text);
    assert_eq!(found, [("m::B::c".to_owned(), "[law], part two.".to_owned()), ("m::d".to_owned(), "x".to_owned())]);
}

#[test]
fn shares_are_rounded_up_to_one_digit() {
    assert_eq!([0.0, 3.1e-4, 9.7e-3, 0.05, 1e-3].map(share), ["none", "4e-4", "1e-2", "5e-2", "1e-3"]);
}
