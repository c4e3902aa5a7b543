//! Who may read whom. In core the chapters do not read one another, nor the job, nor the evaluation; in the app a page
//! reads parts and pictures, and those read the state and the words.

use super::none;
use super::tree::{File, code, program, rust};

/// Modules of core and what each may read beside itself.
const CORE: &[(&str, &[&str])] = &[
    ("quantity", &[]),
    ("numeric", &[]),
    ("table", &[]),
    // They name the fields of a job, what is odd about a curve, a remedy, the least share of volts and types of
    // enclosures, and nothing more of any.
    ("error", &["job", "quantity"]),
    ("finding", &["job", "quantity", "pump", "cable", "power", "standards"]),
    ("standards", &["quantity"]),
    ("water", CHAPTER),
    ("pump", CHAPTER),
    ("power", CHAPTER),
    ("cable", CHAPTER),
    ("cost", CHAPTER),
    ("job", JOB),
    ("evaluate", EVALUATE),
    ("startup", STARTUP),
    ("papers", PAPERS),
    ("passing", &["job", "quantity"]),
];
const CHAPTER: &[&str] = &["quantity", "numeric", "error", "finding", "standards", "table"];
const JOB: &[&str] =
    &["quantity", "numeric", "error", "finding", "standards", "water", "pump", "power", "cable", "cost"];
const EVALUATE: &[&str] =
    &["quantity", "numeric", "error", "finding", "standards", "water", "pump", "power", "cable", "cost", "job"];
const STARTUP: &[&str] = &[
    "quantity",
    "numeric",
    "error",
    "finding",
    "standards",
    "water",
    "pump",
    "power",
    "cable",
    "cost",
    "job",
    "evaluate",
];
const PAPERS: &[&str] = &[
    "quantity",
    "numeric",
    "error",
    "finding",
    "standards",
    "water",
    "pump",
    "power",
    "cable",
    "cost",
    "job",
    "evaluate",
    // What is entered at the drive has a working, too.
    "startup",
];

/// Modules of the app and what each may read beside itself.
const APP: &[(&str, &[&str])] = &[
    ("locale", &[]),
    ("routes", &["platform", "state"]),
    ("platform", &["state", "routes"]),
    ("state", &["platform", "routes", "locale"]),
    ("pictures", &["state", "locale", "platform"]),
    ("parts", &["state", "locale", "platform", "routes"]),
    ("pages", &["parts", "pictures", "state", "locale", "platform", "routes"]),
];

/// Files that may read one module more.
const ALSO: &[(&str, &str)] = &[
    // It asks the browser for the language and for the sign before decimals; it reads no word.
    ("app/src/platform/language.rs", "locale"),
];

/// The module at the top of the crate that a file belongs to; `None` for the crate's root file.
fn module(path: &str) -> Option<&str> {
    let inside = path.split_once("/src/")?.1;
    let first = inside.split('/').next()?;
    let name = first.strip_suffix(".rs").unwrap_or(first);
    (!["lib", "main"].contains(&name)).then_some(name)
}

/// Names that stand directly after `crate::`, also within braces.
fn crate_reads(code: &str) -> Vec<String> {
    let is_name = |c: char| c.is_alphanumeric() || c == '_';
    let mut found = Vec::new();
    for (at, _) in code.match_indices("crate::") {
        if code[..at].ends_with(is_name) {
            continue;
        }
        let rest = &code[at + "crate::".len()..];
        let Some(group) = rest.strip_prefix('{') else {
            found.push(rest.chars().take_while(|c| is_name(*c)).collect());
            continue;
        };
        let (mut depth, mut name, mut first) = (1, String::new(), true);
        for c in group.chars() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                ',' if depth == 1 => first = true,
                c if depth == 1 && first && is_name(c) => name.push(c),
                c if depth == 1 && !c.is_whitespace() => first = false,
                _ => {}
            }
            if (!first || c == ',' || depth == 0) && !name.is_empty() {
                found.push(std::mem::take(&mut name));
            }
            if depth == 0 {
                break;
            }
        }
    }
    found
}

fn problems(file: &File, rules: &[(&str, &[&str])]) -> Vec<String> {
    let Some(own) = module(&file.path) else { return Vec::new() };
    let Some((_, allowed)) = rules.iter().find(|(name, _)| *name == own) else {
        return vec![format!("{}: no rule says what {own} may read", file.path)];
    };
    let code: String = code(&file.text).into_iter().flat_map(|(_, line)| [line, "\n"]).collect();
    let mut found = Vec::new();
    for read in crate_reads(&code) {
        let also = ALSO.contains(&(file.path.as_str(), read.as_str()));
        if read != own && !also && !allowed.contains(&read.as_str()) {
            found.push(format!("{}: {own} reads {read}", file.path));
        }
    }
    if code.contains("super::super") {
        found.push(format!("{}: super::super hides what is read; write crate::", file.path));
    }
    found
}

#[test]
fn core_is_read_in_one_direction() {
    none(rust("core/src").iter().flat_map(|file| problems(file, CORE)).collect());
}

#[test]
fn the_app_is_read_in_one_direction() {
    none(program("app/src").iter().flat_map(|file| problems(file, APP)).collect());
}

/// Crates of the browser are used by the platform, and where a picture is drawn.
#[test]
fn the_browser_is_touched_in_two_places() {
    let inside = ["app/src/platform/", "app/src/pictures/"];
    let outside = rust("app/src").into_iter().filter(|file| !inside.iter().any(|place| file.path.starts_with(place)));
    none(outside.flat_map(|file| browser_crates(&file)).collect());
}

fn browser_crates(file: &File) -> Vec<String> {
    let names = ["web_sys::", "js_sys::", "gloo_storage::", "gloo::", "wasm_bindgen::"];
    let lines = code(&file.text).into_iter();
    let found = lines.filter(|(_, line)| names.iter().any(|name| line.contains(name)));
    found.map(|(line, code)| format!("{}:{line}: {}", file.path, code.trim())).collect()
}

#[test]
fn a_reading_against_the_direction_is_found() {
    let reads =
        crate_reads("use crate::{cable::{drop, lead}, job::Field,\n quantity};\nlet a = crate::cost::b(mycrate::c);");
    assert_eq!(reads, ["cable", "job", "quantity", "cost"]);
    let cable = |text: &str| problems(&File::new("core/src/cable/a.rs", text), CORE).len();
    assert_eq!(cable("use crate::quantity::Length;\nuse crate::cable::drop;\n"), 0);
    assert_eq!(cable("use crate::{quantity::Length, cost::price::Prices};\n"), 1);
    assert_eq!(cable("fn a(job: &crate::job::Job) {}\n"), 1);
    assert_eq!(cable("use super::super::job::Job;\n"), 1);
    assert_eq!(cable("// crate::job\n#[cfg(test)]\nmod tests {\n    use crate::job::Job;\n}\n"), 0);
    assert_eq!(problems(&File::new("core/src/evaluate.rs", "use crate::papers::a;"), CORE).len(), 1);
    assert_eq!(problems(&File::new("core/src/rope/a.rs", ""), CORE).len(), 1, "an unknown module");
    assert_eq!(problems(&File::new("app/src/parts/a.rs", "use crate::pages::b;"), APP).len(), 1);
    let platform =
        |name: &str| problems(&File::new(&format!("app/src/platform/{name}.rs"), "use crate::locale::a;"), APP);
    assert_eq!(platform("theme").len(), 1);
    assert_eq!(platform("language").len(), 0);
    assert_eq!(browser_crates(&File::new("app/src/state/a.rs", "use web_sys::Window;\n// js_sys::x\n")).len(), 1);
}
