//! Each part is one file or folder, says what it is and what it takes, has its style and stands in the gallery.

use super::literals::source;
use super::none;
use super::tree::{File, files, rust};

const PARTS: &str = "app/src/parts";
const STYLES: &str = "style/parts";

/// Parts without a style sheet of their own name, and the sheets that they share.
const SHARED: &[(&str, &[&str])] = &[
    // Each is a field, and looks like one.
    ("choice", &["field"]),
    ("quantity_field", &["field"]),
    ("worked_out", &["field"]),
    // A sign among buttons.
    ("equals", &[]),
    // Made of other parts.
    ("screen_settings", &["menu", "segmented"]),
    // Not seen: one is for who listens, the other reads keys.
    ("announcer", &[]),
    ("stepping", &[]),
];

/// Style sheets of no part: buttons stand in pages and parts alike.
const NO_PART: &[&str] = &["button"];

/// Components that the gallery can't show.
const NOT_SHOWN: &[&str] = &[
    // Put once at the top of every page, the gallery's too.
    "Sprite",
    "Toasts",
    // Not seen.
    "Announcer",
    // It stands behind figures of other parts.
    "Equals",
    // At the foot of a phone only.
    "Dock",
    // Shown while something is wrong with the storage; the gallery shows how such a notice looks.
    "StorageNotice",
    "SetAsideNotice",
    "BooksAsideNotice",
    // They follow what the browser keeps or what became of the program, which a gallery can't set.
    "Crashed",
    "NewerBuild",
    "OnDevice",
];

/// Names of the parts, as `mod.rs` declares them.
fn names(list: &str) -> Vec<String> {
    let lines = list.lines().map(|line| line.trim_start_matches("pub "));
    lines.filter_map(|line| line.strip_prefix("mod ")?.strip_suffix(';')).map(str::to_owned).collect()
}

/// A public component: its name, the comment above it, its props with theirs.
struct Component<'a> {
    name: &'a str,
    has_comment: bool,
    props: Vec<(&'a str, bool)>,
}

fn components(text: &str) -> Vec<Component<'_>> {
    let lines: Vec<&str> = text.lines().collect();
    // Comments of what stands at a line are right above it, attributes between.
    let has_comment = |at: usize| {
        let mut above = lines[..at].iter().rev().map(|line| line.trim());
        above.find(|line| !line.starts_with("#[")).is_some_and(|line| line.starts_with("///"))
    };
    let heads = lines.windows(2).enumerate().filter(|(_, pair)| pair[0] == "#[component]");
    heads
        .filter_map(|(at, pair)| {
            let rest = pair[1].strip_prefix("pub fn ")?;
            let name = rest.split(['(', '<']).next().unwrap_or_default();
            let props = if rest.ends_with('(') {
                let inside = lines.iter().enumerate().skip(at + 2).take_while(|(_, line)| !line.starts_with(')'));
                let is_prop =
                    |line: &str| line.starts_with("    ") && line[4..].starts_with(|c: char| c.is_alphabetic());
                inside.filter(|(_, line)| is_prop(line)).map(|(at, line)| (line.trim(), has_comment(at))).collect()
            } else {
                let inside = rest.split_once('(').and_then(|(_, rest)| rest.split(')').next()).unwrap_or_default();
                inside.split(", ").filter(|prop| !prop.is_empty()).map(|prop| (prop, false)).collect()
            };
            Some(Component { name, has_comment: has_comment(at), props })
        })
        .collect()
}

/// A part without a word on what it is, and components and props without one.
fn uncommented(file: &File) -> Vec<String> {
    let path = &file.path;
    let mut found = Vec::new();
    if !file.text.starts_with("//! ") {
        found.push(format!("{path}: no comment at its head"));
    }
    for component in components(&file.text) {
        let name = component.name;
        if !component.has_comment {
            found.push(format!("{path}: {name} has no comment"));
        }
        let bare = component.props.iter().filter(|(_, has_comment)| !has_comment);
        found.extend(bare.map(|(prop, _)| format!("{path}: {name}: no comment on {prop}")));
    }
    found
}

/// Parts that are no file or two, and files that are no part.
fn misplaced(parts: &[String], paths: &[String]) -> Vec<String> {
    let is_of = |path: &str, part: &str| {
        let rest = path.strip_prefix(PARTS).and_then(|rest| rest.strip_prefix('/')?.strip_prefix(part));
        rest.is_some_and(|rest| rest == ".rs" || rest == "/mod.rs")
    };
    let homes = |part: &str| paths.iter().filter(|path| is_of(path, part)).count();
    let wrong = parts.iter().filter(|part| homes(part) != 1);
    let wrong = wrong.map(|part| format!("{part} is not one file or folder"));
    let declared = |path: &str| {
        let name = path[PARTS.len() + 1..].split(['/', '.']).next().unwrap_or_default();
        name == "mod" || parts.iter().any(|part| part == name)
    };
    let idle = paths.iter().filter(|path| !declared(path)).map(|path| format!("{path} is no part"));
    wrong.chain(idle).collect()
}

/// Parts without a style, styles without a part, and entries of the lists above that are not so.
fn unstyled(parts: &[String], sheets: &[String], shared: &[(&str, &[&str])]) -> Vec<String> {
    let is_sheet = |name: &str| sheets.iter().any(|sheet| sheet == name);
    let is_listed = |name: &str| shared.iter().any(|(part, _)| *part == name);
    let mut found = Vec::new();
    for part in parts.iter().filter(|part| is_sheet(part) == is_listed(part)) {
        found.push(format!("{part}: one style sheet of its own, or an entry in the list of those that share one"));
    }
    for (part, others) in shared {
        let missing = others.iter().filter(|other| !is_sheet(other));
        found.extend(missing.map(|other| format!("{part} is listed with {other}, which is no style sheet")));
        if !parts.iter().any(|name| name == part) {
            found.push(format!("{part} is listed and no part"));
        }
    }
    let is_shared = |sheet: &str| shared.iter().any(|(_, others)| others.contains(&sheet));
    let is_needed =
        |sheet: &str| parts.iter().any(|part| part == sheet) || is_shared(sheet) || NO_PART.contains(&sheet);
    found.extend(sheets.iter().filter(|sheet| !is_needed(sheet)).map(|sheet| format!("{sheet} styles no part")));
    found
}

/// Components that stand neither in the gallery nor in the list, or in both.
fn not_shown(names: &[&str], gallery: &str, listed: &[&str]) -> Vec<String> {
    let mask = source(gallery).mask;
    let shown = |name: &str| {
        mask.split(&format!("<{name}")).skip(1).any(|rest| !rest.starts_with(|c: char| c.is_alphanumeric() || c == '_'))
    };
    let wrong = names.iter().filter(|name| shown(name) == listed.contains(name));
    let wrong = wrong.map(|name| format!("{name} stands neither in the gallery nor in the list, or in both"));
    let idle = listed.iter().filter(|name| !names.contains(name)).map(|name| format!("{name} is listed and no part"));
    wrong.chain(idle).collect()
}

fn declared() -> Vec<String> {
    let all = rust(PARTS);
    names(&all.iter().find(|file| file.path == format!("{PARTS}/mod.rs")).unwrap().text)
}

#[test]
fn a_part_is_a_file_and_says_what_it_is() {
    let all = rust(PARTS);
    let found: usize = all.iter().map(|file| components(&file.text).len()).sum();
    assert!(found >= 20, "only {found} components are found");
    none(all.iter().flat_map(uncommented).collect());
    none(misplaced(&declared(), &all.into_iter().map(|file| file.path).collect::<Vec<_>>()));
}

#[test]
fn a_part_has_its_style() {
    let name = |file: File| file.path[STYLES.len() + 1..].trim_end_matches(".css").to_owned();
    let sheets: Vec<String> = files(STYLES).into_iter().map(name).collect();
    none(unstyled(&declared(), &sheets, SHARED));
}

#[test]
fn a_part_stands_in_the_gallery() {
    let is_gallery = |file: &File| file.path.starts_with("app/src/pages/gallery");
    let gallery: String = rust("app/src/pages").into_iter().filter(is_gallery).map(|file| file.text).collect();
    let all = rust(PARTS);
    let names: Vec<&str> = all.iter().flat_map(|file| components(&file.text)).map(|component| component.name).collect();
    none(not_shown(&names, &gallery, NOT_SHOWN));
}

#[test]
fn a_part_without_comment_is_found() {
    let lacks = |text: &str| uncommented(&File::new("app/src/parts/a.rs", text)).len();
    let good = "//! A.\n\n/// B.\n#[component]\npub fn B<T: Copy>(\n    /// C.\n    #[prop(optional)]\n    c: T,\n    \
        /// D.\n    d: Vec<(\n        u8,\n        u8,\n    )>,\n) -> impl IntoView {\n    e\n}\n\n/// F.\n#[component]\n\
        pub fn F() -> impl IntoView {}\n\n#[component]\nfn G(h: u8) -> impl IntoView {}\n";
    assert_eq!(lacks(good), 0);
    for part in ["//! A.\n", "/// B.\n", "    /// C.\n", "    /// D.\n", "/// F.\n"] {
        assert_eq!(lacks(&good.replacen(part, "", 1)), 1, "{part}");
    }
    assert_eq!(lacks(&good.replace("F()", "F(g: u8, h: u8)")), 2);
}

#[test]
fn a_part_out_of_place_is_found() {
    let all = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    let parts = names("//! A.\n\npub mod a;\nmod b;\n");
    assert_eq!(parts, ["a", "b"]);
    let paths = ["app/src/parts/mod.rs", "app/src/parts/a.rs", "app/src/parts/b/mod.rs", "app/src/parts/b/c.rs"];
    assert_eq!(misplaced(&parts, &all(&paths)), Vec::<String>::new());
    assert_eq!(misplaced(&parts, &all(&paths[..2])).len(), 1);
    assert_eq!(misplaced(&parts[..1], &all(&paths[..3])), ["app/src/parts/b/mod.rs is no part"]);
}

#[test]
fn a_part_without_style_or_place_in_the_gallery_is_found() {
    let all = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    let unstyled = |parts: &[&str], sheets: &[&str], shared| unstyled(&all(parts), &all(sheets), shared);
    assert_eq!(unstyled(&["a", "b"], &["a", "button"], &[("b", &["a"])]), Vec::<String>::new());
    assert_eq!(unstyled(&["a", "b"], &["a"], &[]).len(), 1);
    assert_eq!(unstyled(&["a"], &["a"], &[("a", &[])]).len(), 1, "listed, and has its own");
    assert_eq!(unstyled(&["a", "b"], &["a"], &[("b", &["c"])]).len(), 1, "shares what is not there");
    assert_eq!(unstyled(&["a"], &["a"], &[("b", &["a"])]).len(), 1, "listed, and no part");
    assert_eq!(unstyled(&["a"], &["a", "b"], &[]), ["b styles no part"]);
    let gallery = "fn a() {\n    view! { <A b=1 /><Cd>{e}</Cd> }\n    // <F />\n}\n";
    assert_eq!(not_shown(&["A", "Cd", "G"], gallery, &["G"]), Vec::<String>::new());
    assert_eq!(not_shown(&["A", "C", "F", "Cd"], gallery, &["Cd", "G"]).len(), 4);
}
