//! Files of at most 600 lines, data aside, and functions whose bodies are at most 60 lines, comments and markup aside.

use super::none;
use super::tree::{File, files, rust};

const LINES: usize = 600;
const FUNCTION_LINES: usize = 60;

/// Endings of files that hold data, not code.
const DATA: [&str; 5] = ["csv", "json", "svg", "lock", "txt"];

fn too_long(file: &File) -> Option<String> {
    let lines = file.text.lines().count();
    (!DATA.contains(&file.ending()) && lines > LINES).then(|| format!("{}: {lines} lines", file.path))
}

/// Lines of a body that count: neither empty, nor comment, nor inside a `view!`.
fn counted<'a>(body: impl Iterator<Item = &'a str>) -> usize {
    let mut markup_ends: Option<String> = None;
    let mut count = 0;
    for line in body {
        let trimmed = line.trim_start();
        if markup_ends.as_ref().is_some_and(|end| line.starts_with(end)) {
            markup_ends = None;
        } else if markup_ends.is_none() && !trimmed.is_empty() && !trimmed.starts_with("//") {
            count += 1;
            if trimmed.ends_with("view! {") {
                markup_ends = Some(format!("{}}}", &line[..line.len() - trimmed.len()]));
            }
        }
    }
    count
}

fn long_functions(file: &File) -> Vec<String> {
    let lines: Vec<&str> = file.text.lines().collect();
    let mut problems = Vec::new();
    for (start, line) in lines.iter().enumerate() {
        let trimmed = line.trim_start();
        let indent = &line[..line.len() - trimmed.len()];
        let head =
            trimmed.trim_start_matches("pub(crate) ").trim_start_matches("pub(super) ").trim_start_matches("pub ");
        let head = head.trim_start_matches("const ").trim_start_matches("async ");
        if !head.starts_with("fn ") || line.trim_end().ends_with(['}', ';']) {
            continue;
        }
        let end = format!("{indent}}}");
        let body =
            lines[start..].iter().skip_while(|line| !line.ends_with('{')).skip(1).take_while(|line| **line != end);
        let long = counted(body.copied());
        if long > FUNCTION_LINES {
            problems.push(format!("{}:{}: a function of {long} lines", file.path, start + 1));
        }
    }
    problems
}

#[test]
fn files_are_short() {
    let all = ["core/src", "core/examples", "app/src", "tests"].into_iter().flat_map(files);
    none(all.filter_map(|file| too_long(&file)).collect());
}

#[test]
fn functions_are_short() {
    let all = ["core/src", "core/examples", "app/src", "tests"].into_iter().flat_map(rust);
    none(all.flat_map(|file| long_functions(&file)).collect());
}

#[test]
fn what_is_long_is_found() {
    let long = "x\n".repeat(601);
    assert!(too_long(&File::new("core/src/a.rs", &long)).is_some());
    assert!(too_long(&File::new("tests/run", &long)).is_some());
    assert!(too_long(&File::new("core/src/a.rs", &"x\n".repeat(600))).is_none());
    assert!(too_long(&File::new("tests/a.csv", &long)).is_none());
    let function = |lines: usize| format!("    pub const fn a() {{\n{}    }}\n", "        b();\n".repeat(lines));
    assert_eq!(long_functions(&File::new("a.rs", &function(60))).len(), 0);
    assert_eq!(long_functions(&File::new("a.rs", &function(61))), ["a.rs:1: a function of 61 lines"]);
    let markup = format!("        view! {{\n{}        }}\n        // c\n\n", "            <b />\n".repeat(99));
    assert_eq!(counted(markup.lines()), 1);
    assert_eq!(counted(format!("{markup}{}", "        b();\n".repeat(60)).lines()), 61);
}
