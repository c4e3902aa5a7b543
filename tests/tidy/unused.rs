//! No style without use and no class without style; custom properties are defined among the tokens and read.

use super::literals::{Place, gaps_as, source};
use super::none;
use super::style::{classes, defined, read};
use super::tree::{File, files, program};
use std::collections::BTreeSet;

const TOKENS: &str = "style/tokens.css";

/// Classes that tell an element apart and need no style.
const PLAIN: &[&str] = &[];

/// Attributes and props that hold classes.
const HOLDERS: [&str; 2] = ["class", "swatch"];

/// Classes in a page that is no program.
fn marked(html: &str) -> BTreeSet<String> {
    html.split(" class=\"")
        .skip(1)
        .filter_map(|rest| rest.split_once('"'))
        .flat_map(|(names, _)| words(names))
        .collect()
}

/// Classes that a file gives to elements in so many words.
fn given(file: &File) -> BTreeSet<String> {
    if file.ending() == "html" {
        return marked(&file.text);
    }
    let source = source(&file.text);
    let holds = |place: &Place| matches!(place, Place::Attribute(name) if HOLDERS.contains(&name.as_str()));
    let literals = source.literals.iter().filter(|literal| holds(&literal.place));
    let mut found: BTreeSet<String> = literals.flat_map(|literal| words(&literal.text)).collect();
    let switched = source.mask.split(" class:").skip(1).filter_map(|rest| rest.split_once('='));
    let is_class = |name: &str| name.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_'));
    found.extend(switched.map(|(name, _)| name).filter(|name| is_class(name)).map(str::to_owned));
    found
}

/// Words of a text that stand alone, outside its gaps.
fn words(text: &str) -> Vec<String> {
    let whole = gaps_as("\u{0}", text);
    whole.split_whitespace().filter(|word| !word.contains('\u{0}')).map(str::to_owned).collect()
}

/// Classes that a file gives, and words in its code that may be one.
fn used(file: &File) -> BTreeSet<String> {
    if file.ending() == "html" {
        return marked(&file.text);
    }
    let source = source(&file.text);
    let literals = source.literals.iter().filter(|literal| literal.place == Place::Code);
    literals.flat_map(|literal| words(&literal.text)).chain(given(file)).collect()
}

fn unused_classes(program: &[File], sheets: &[File]) -> Vec<String> {
    let used: BTreeSet<String> = program.iter().flat_map(used).collect();
    let idle = |sheet: &File| {
        let names = classes(&sheet.text).into_iter().filter(|name| !used.contains(name));
        names.map(|name| format!("{}: .{name} is not used", sheet.path)).collect::<Vec<_>>()
    };
    sheets.iter().flat_map(idle).collect()
}

fn unstyled_classes(program: &[File], sheets: &[File], plain: &[&str]) -> Vec<String> {
    let styled: BTreeSet<String> = sheets.iter().flat_map(|sheet| classes(&sheet.text)).collect();
    let all: BTreeSet<String> = program.iter().flat_map(given).collect();
    let bare = |file: &File| {
        let names = given(file).into_iter().filter(|name| !styled.contains(name) && !plain.contains(&name.as_str()));
        names.map(|name| format!("{}: class {name} has no style", file.path)).collect::<Vec<_>>()
    };
    let vain = plain.iter().filter(|name| styled.contains(**name) || !all.contains(**name));
    let vain = vain.map(|name| format!("{name} is listed, and styled or not used"));
    program.iter().flat_map(bare).chain(vain).collect()
}

fn properties(program: &[File], sheets: &[File]) -> Vec<String> {
    let tokens = sheets.iter().filter(|sheet| sheet.path == TOKENS).map(|sheet| defined(&sheet.text));
    let tokens: BTreeSet<String> = tokens.flatten().collect();
    let all = || program.iter().chain(sheets);
    let unknown = all().flat_map(|file| {
        let names = read(&file.text).into_iter().filter(|name| !tokens.contains(name));
        names.map(|name| format!("{}: {name} is not among the tokens", file.path)).collect::<Vec<_>>()
    });
    let elsewhere = sheets.iter().filter(|sheet| sheet.path != TOKENS).flat_map(|sheet| {
        let names = defined(&sheet.text).into_iter();
        names.map(|name| format!("{}: {name} is defined outside the tokens", sheet.path)).collect::<Vec<_>>()
    });
    let read: BTreeSet<String> = all().flat_map(|file| read(&file.text)).collect();
    let idle = tokens.iter().filter(|name| !read.contains(*name)).map(|name| format!("{TOKENS}: {name} is not read"));
    unknown.chain(elsewhere).chain(idle).collect()
}

fn sheets() -> Vec<File> {
    files("style").into_iter().filter(|file| file.ending() == "css").collect()
}

fn app() -> Vec<File> {
    let first = files("app/first").into_iter().filter(|file| file.ending() == "html");
    program("app/src").into_iter().filter(|file| !file.path.starts_with("app/src/locale/")).chain(first).collect()
}

#[test]
fn every_style_is_used() {
    none(unused_classes(&app(), &sheets()));
}

#[test]
fn every_class_is_styled() {
    none(unstyled_classes(&app(), &sheets(), PLAIN));
}

#[test]
fn custom_properties_are_tokens_and_read() {
    none(properties(&app(), &sheets()));
}

#[test]
fn a_style_without_use_and_a_class_without_style_are_found() {
    let sheet = [File::new("style/a.css", ".a .b:not(.c) { d: e; }\n.f-g { h: .5em; }\n")];
    let app = |code: &str| [File::new("app/src/a.rs", &format!("fn a() {{\n    {code}\n}}\n"))];
    let all = "view! { <i class=\"a b\" class:c=x /><i class=format!(\"{y} f-g\") /> }";
    assert_eq!(unused_classes(&app(all), &sheet), Vec::<String>::new());
    assert_eq!(unstyled_classes(&app(all), &sheet, &[]), Vec::<String>::new());
    assert_eq!(unused_classes(&app(&format!("let c = \"c\";{}", all.replace("class:c=x ", ""))), &sheet).len(), 0);
    assert_eq!(unused_classes(&app(&all.replace(" f-g", "")), &sheet), ["style/a.css: .f-g is not used"]);
    assert_eq!(unused_classes(&app(&all.replace("class:c=x", "title=\"c\"")), &sheet).len(), 1);
    assert_eq!(unused_classes(&app(&all.replace("<i class:c=x", "<i>\"c\"</i><i")), &sheet).len(), 0);
    assert_eq!(unused_classes(&app(&all.replace("class:c=x />", ">\"c\"</i>")), &sheet).len(), 1);
    let more = app(&all.replace("a b", "a b z").replace(":c=", ":w="));
    assert_eq!(unstyled_classes(&more, &sheet, &[]).len(), 2);
    assert_eq!(unstyled_classes(&more, &sheet, &["w", "z"]).len(), 0);
    assert_eq!(unstyled_classes(&app(all), &sheet, &["a", "v"]).len(), 2);
    let page = [File::new("app/first/a.html", "<p class=\"a b\"><i class=\"c f-g\"></i></p>")];
    assert_eq!(unused_classes(&page, &sheet), Vec::<String>::new());
    assert_eq!(unused_classes(&page, &[File::new("style/b.css", ".v { d: e; }")]).len(), 1);
}

#[test]
fn a_property_that_is_no_token_or_not_read_is_found() {
    let sheets = |more: &str| {
        let tokens = File::new(TOKENS, ":root { --a: 1; --b: 2; --c: var(--b); }\n");
        [tokens, File::new("style/b.css", &format!("p {{ q: var(--a); {more} }}\n"))]
    };
    let app = [File::new("app/src/a.rs", "get(\"--c\")\n")];
    assert_eq!(properties(&app, &sheets("")), Vec::<String>::new());
    assert_eq!(properties(&[], &sheets("")), ["style/tokens.css: --c is not read"]);
    assert_eq!(properties(&app, &sheets("r: var(--d);")), ["style/b.css: --d is not among the tokens"]);
    assert_eq!(properties(&app, &sheets("--a: 3;")), ["style/b.css: --a is defined outside the tokens"]);
}
