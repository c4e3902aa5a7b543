//! Every word that a person sees stands in `app/src/locale`. Elsewhere a literal with a letter has to show that it is no
//! word: by its place, by its form, by what is done with it, or by standing in a short list of its file.

use super::literals::{Literal, Place, Source, gaps_as, source};
use super::none;
use super::style::{classes, defined};
use super::tree::{File, files, program};
use std::collections::BTreeSet;

/// Attributes, and props of the parts, that hold names and no words.
const ATTRIBUTES: &[&str] = &[
    // Names of elements and what points to them.
    "id",
    "name",
    "for",
    "href",
    "place",
    "swatch",
    "aria-describedby",
    "aria-labelledby",
    // What an element is, and how the browser treats what is typed.
    "type",
    "role",
    "scope",
    "target",
    "rel",
    "accept",
    "autocomplete",
    "spellcheck",
    "enterkeyhint",
    // States that have a fixed set of values.
    "aria-hidden",
    "aria-live",
    "aria-atomic",
    "aria-invalid",
    "aria-current",
    "aria-orientation",
];

/// Calls whose text goes to the browser, to the compiler or, of `error!`, to the console of who builds the page.
const CALLS: &[&str] = &[
    "set_attribute(",
    "remove_attribute(",
    "match_media(",
    "event_listener_untyped(",
    "event_listener_with_callback(",
    "strip_suffix(",
    "create_element(",
    "include_str!(",
    "#[serde(rename_all = ",
    "logging::error!(",
];

/// Names of one file each, none of them a word on the page.
const NAMES: &[(&str, &[&str])] = &[
    // Marks of the sprite.
    ("app/src/parts/menu.rs", &["more"]),
    ("app/src/parts/verdict.rs", &["verdict fine", "verdict caution", "verdict stop", "ok", "note", "caution", "stop"]),
    ("app/src/parts/stations.rs", &["done", "open", "stop", "wrong", "here"]),
    // The order that a sorted column tells, and the mark beside it.
    ("app/src/parts/table.rs", &["up", "down", "ascending", "descending"]),
    // Groups of fields, as files name them.
    ("app/src/pages/job/chapter.rs", &["range"]),
    // A slider's step, ids of controls, states that the style sheets tell apart.
    ("app/src/pages/job/curve_choices.rs", &["any", "prices.way_240", "prices.way_480", "assumed", "typed"]),
    // States that the style sheets tell apart, and the id of what a field says.
    ("app/src/pages/jobs/row.rs", &["ok", "stop", "stopped", "none", "job-{id}"]),
    ("app/src/parts/choice.rs", &["typed", "assumed"]),
    // The kind of a file.
    ("app/src/pages/jobs/mod.rs", &["json", "application/json", "jobs-title"]),
    // Ids of controls.
    (
        "app/src/pages/job/pipe.rs",
        &[
            "line.drop_series",
            "line.drop_size",
            "line.suction_series",
            "line.suction_size",
            "line.surface_series",
            "line.surface_size",
            "{}.add",
        ],
    ),
    ("app/src/parts/switch.rs", &["typed", "assumed"]),
    // Ids of controls, states that the style sheets tell apart, a keyboard, and what parts day and time.
    ("app/src/pages/job/startup/readings.rs", &["reading.{}", "{id}-says", "error", "rest", "typed", "decimal"]),
    ("app/src/platform/clock.rs", &["T"]),
    // No keyboard of the phone beside the pad; members of the browser's lock on the screen.
    ("app/src/pages/job/startup/big/screens.rs", &["none"]),
    // What keep.js tells the page, and what it takes.
    (
        "app/src/platform/device.rs",
        &[
            "wellwrightDevice",
            "wellwright-device",
            "kept",
            "newer",
            "installable",
            "lasting",
            "standalone",
            "takeNewer",
            "install",
            "askToLast",
        ],
    ),
    ("app/src/platform/wake.rs", &["released", "wakeLock", "request", "screen", "release"]),
    ("app/src/parts/tick.rs", &["{id}-says"]),
    ("app/src/parts/quantity_field.rs", &["typed", "assumed", "empty", "error", "rest", "{name}-says"]),
    // Keyboards that a phone offers.
    ("app/src/parts/quantity_field.rs", &["text", "decimal"]),
    ("app/src/state/settings.rs", &["light", "dark", "sun"]),
    // Classes and the ends of lettering, as the picture is drawn.
    // The feature that the benches build with, and what it offers them.
    ("app/src/main.rs", &["timed"]),
    ("app/src/pictures/mod.rs", &["timed"]),
    ("app/src/pictures/timed.rs", &["timed", "work", "draw", "costs"]),
    ("app/src/pictures/head.rs", &["part"]),
    ("app/src/pictures/water.rs", &["mark"]),
    ("app/src/pictures/well.rs", &["part", "valve", "rod"]),
    (
        "app/src/pictures/shapes.rs",
        &["http://www.w3.org/2000/svg", "path", "text", "class", "d", "x", "y", "text-anchor", "start", "end"],
    ),
    // Where the last answer is kept, and the id of what stands on the page at first.
    ("app/src/platform/first.rs", &["wellwright.last", "first"]),
    // The lesson: how its pictures stretch and run, how an answer stands and its mark, what is kept of it, its address.
    ("app/src/pictures/lesson.rs", &["none", "M", "L", "{start}{:.1} {:.1}H{:.1}"]),
    ("app/src/pages/lesson/ask.rs", &["right", "wrong", "ok", "error"]),
    (
        "app/src/platform/storage/lesson.rs",
        &["wellwright.lesson", "wellwright.lesson.unread.", "lesson", "step", "answers", "sheet"],
    ),
    ("app/src/routes.rs", &["lesson"]),
    ("app/src/pictures/svg.rs", &["start", "middle", "end"]),
    // Keys that take back and do again, beside the control key.
    ("app/src/pages/job/bar.rs", &["z", "y"]),
    // What the style sheets and the screen are asked for.
    ("app/src/pictures/ink.rs", &["font-size", "sans-serif"]),
    ("app/src/pictures/room.rs", &["(prefers-color-scheme: dark)", "print", "beforeprint", "afterprint"]),
    ("app/src/platform/clipboard.rs", &["clipboard", "readText", "SELECT", "text/plain"]),
    ("app/src/platform/focus.rs", &["position", "button, [tabindex='0']"]),
    ("app/src/parts/screen_settings.rs", &["settings-menu"]),
    // An element of MathML.
    ("app/src/parts/working/formula.rs", &["mfrac"]),
    // Ids of the cells of own equipment.
    ("app/src/pages/job/equipment.rs", &["own.{}.{column}", "error"]),
    // States and keyboards of cells, and what a table is as a file.
    ("app/src/pages/job/cell.rs", &["{}-says", "error", "assumed", "typed", "decimal"]),
    ("app/src/pages/job/exchange.rs", &["csv", "text/csv", "r\n"]),
    // Ids of what changes a price book, and kinds of inputs.
    (
        "app/src/pages/job/book/table.rs",
        &[
            "book.group.{place}",
            "book.{row}.{part}",
            "book.{}",
            "{id}-says",
            "price",
            "out",
            "error",
            "typed",
            "date",
            "text",
        ],
    ),
    ("app/src/pages/job/book/add.rs", &["book.add.{column}", "text", "decimal"]),
    // Kinds and endings of files, and where the picture of a paper stands.
    (
        "app/src/pages/job/papers/files.rs",
        &["json", "application/json", "csv", "text/csv", "svg", "image/svg+xml", "png", ".paper .plate"],
    ),
    ("app/src/pages/job/papers/customer.rs", &["first"]),
    ("app/src/pages/job/papers/seller.rs", &["image/*"]),
    ("app/src/state/seller.rs", &["data:image/png;base64,", "data:image/jpeg;base64,"]),
    // Sizes of paper, by their names in every language.
    ("app/src/state/settings.rs", &["Letter", "A4"]),
    // What a drawing is made of, and what is asked of the browser for one.
    ("app/src/parts/qr.rs", &["crispEdges"]),
    (
        "app/src/pictures/vector.rs",
        &["viewBox=\"", "<svg data-drawn=\"\" viewBox=\"{view}\" xmlns=\"http://www.w3.org/2000/svg\">{}"],
    ),
    (
        "app/src/platform/pictures.rs",
        &[
            "2d",
            "image/jpeg",
            "fill",
            "fill-opacity",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "stroke-linejoin",
            "stroke-opacity",
            "opacity",
            "paint-order",
            "font-family",
            "font-size",
            "font-style",
            "font-weight",
            "visibility",
            "svg[data-drawn]",
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\"><rect width=\"100%\" height=\"100%\" fill=\"{}\"/>",
            "</svg>",
            "data:image/svg+xml;charset=utf-8,{}",
        ],
    ),
    ("app/src/platform/share.rs", &["share", "title", "url"]),
    // Keys of the browser's storage, and of the entries there.
    ("app/src/platform/storage.rs", &["wellwright.order", "wellwright.settings", "wellwright.seller", "demo-{place}"]),
    ("app/src/platform/storage/parts.rs", &["wellwright.parts"]),
    ("app/src/platform/storage/entries.rs", &["wellwright.job.", "wellwright.before.", "job", "drafts", "sum"]),
    (
        "app/src/platform/storage/backup.rs",
        &[
            "wellwright.",
            "wellwright.job.",
            "wellwright.book.",
            "wellwright.seller",
            "wellwright.before.",
            "wellwright.errors",
            "wellwright.last",
            "wellwright_backup",
            "entries",
        ],
    ),
    ("app/src/platform/crash.rs", &["wellwright.errors"]),
    ("app/src/platform/storage/books.rs", &["wellwright.book.", "wellwright.books"]),
    // Words of an address and of messages, the same in every language.
    (
        "app/src/pages/embed/asked.rs",
        &[
            "depth",
            "motor",
            "price",
            "units",
            "count",
            "sense",
            "other_choice",
            "embed",
            "change",
            "nothing",
            "us",
            "si",
            "system",
            "light",
            "dark",
            "sun",
            "cable",
            "installed",
            "lifetime",
            "lead",
            "water",
            "shown",
            "hidden",
        ],
    ),
    (
        "app/src/pages/embed/message.rs",
        &[
            "wellwright",
            "type",
            "ready",
            "result",
            "count",
            "word",
            "value",
            "code",
            "refused",
            "words",
            "unknown_message",
        ],
    ),
    (
        "app/src/platform/frame.rs",
        &["https://", "http://", "wellwright", "type", "size", "height", "_blank", "noopener"],
    ),
    // What has keys of its own.
    ("app/src/platform/focus.rs", &["input, .menu, [role=group]"]),
    // A canvas, and a color as it takes it.
    (
        "app/src/pictures/batch.rs",
        &[
            "2d",
            "rgba({red},{green},{blue},{alpha})",
            "start",
            "center",
            "end",
            "top",
            "middle",
            "bottom",
            "{} {}px {}",
        ],
    ),
    // Words of an address, the same in every language, so that a link can be passed on.
    ("app/src/routes.rs", &["water", "pump", "power", "cable", "cost", "start-up", "papers", "job", "add", "show"]),
];

/// The classes of all style sheets and the custom properties of the tokens.
struct Sheets {
    classes: BTreeSet<String>,
    tokens: BTreeSet<String>,
}

impl Sheets {
    fn read() -> Self {
        let all = files("style");
        let all = || all.iter().filter(|file| file.ending() == "css");
        let classes = all().flat_map(|file| classes(&file.text)).collect();
        let tokens = all().flat_map(|file| defined(&file.text)).collect();
        Self { classes, tokens }
    }

    /// Classes of which one at least looks like nothing else: it holds a hyphen or a digit.
    fn are_classes(&self, text: &str) -> bool {
        let strange = |word: &str| word.contains(|c: char| c == '-' || c.is_ascii_digit());
        text.split(' ').all(|word| self.classes.contains(word)) && text.split(' ').any(strange)
    }
}

fn without_gaps(text: &str) -> String {
    gaps_as("", text)
}

fn has_letters(text: &str) -> bool {
    text.contains(char::is_alphabetic)
}

/// What an attribute may hold that takes names: no space, no capital.
fn is_name(text: &str) -> bool {
    text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || "-_.,/#?".contains(c))
}

/// A path of a drawing: commands, each but the last one before a number or a gap.
fn is_path(text: &str) -> bool {
    let text = gaps_as("0", text).replace(char::is_whitespace, "");
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '-' | '.');
    let is_command = |(at, c): (usize, char)| {
        is_number(c)
            || matches!(c, 'z' | 'Z')
            || ("MmLlHhVvQqTtAa".contains(c) && text[at + c.len_utf8()..].starts_with(is_number))
    };
    text.starts_with(['M', 'm']) && text.char_indices().all(is_command)
}

/// Elements of MathML, with no letter between them.
fn is_math(text: &str) -> bool {
    let is_bare = |piece: &str| {
        piece.split_once('>').is_some_and(|(tag, after)| {
            tag.trim_start_matches('/').starts_with(['m', '{']) && !has_letters(&without_gaps(after))
        })
    };
    text.starts_with('<') && text.split('<').skip(1).all(is_bare)
}

fn has_form(text: &str, sheets: &Sheets) -> bool {
    let bare = without_gaps(text);
    bare == "px"
        || is_path(text)
        || is_math(text)
        || sheets.tokens.contains(text)
        || sheets.are_classes(text)
        || (bare.starts_with(['#', '?']) && is_name(&bare))
}

/// Whether a literal is only compared: it stands in a pattern, or beside `==`.
fn is_compared(literal: &Literal, mask: &str) -> bool {
    let (before, after) = (mask[..literal.from].trim_end(), mask[literal.to..].trim_start());
    before.ends_with("==") || after.starts_with("=>") || after.starts_with("| \"") || after.starts_with("==")
}

fn follows(call: &str, literal: &Literal, mask: &str) -> bool {
    mask[..literal.from].trim_end().ends_with(call.trim_end())
}

fn is_technical(file: &str, literal: &Literal, source: &Source, sheets: &Sheets) -> bool {
    let text = literal.text.as_str();
    if !has_letters(&without_gaps(text)) {
        return true;
    }
    let by_place = match &literal.place {
        Place::Text => return false,
        // That each class is styled is checked elsewhere.
        Place::Attribute(name) if name == "class" => true,
        Place::Attribute(name) => {
            (ATTRIBUTES.contains(&name.as_str()) || name.starts_with("data-")) && is_name(&without_gaps(text))
        }
        Place::Code => false,
    };
    by_place
        || has_form(text, sheets)
        || is_compared(literal, &source.mask)
        || CALLS.iter().any(|call| follows(call, literal, &source.mask))
        || NAMES.iter().any(|(path, names)| *path == file && names.contains(&text))
}

fn problems(file: &File, sheets: &Sheets) -> Vec<String> {
    let source = source(&file.text);
    let words = source.literals.iter().filter(|literal| !is_technical(&file.path, literal, &source, sheets));
    words.map(|literal| format!("{}:{}: {:?}", file.path, literal.line, literal.text)).collect()
}

/// Entries of the lists above that nothing in the program needs.
fn idle(all: &[File]) -> Vec<String> {
    let sources: Vec<(&str, Source)> = all.iter().map(|file| (file.path.as_str(), source(&file.text))).collect();
    let literals =
        || sources.iter().flat_map(|(path, source)| source.literals.iter().map(move |it| (*path, source, it)));
    let attributes = ATTRIBUTES
        .iter()
        .filter(|name| !literals().any(|(_, _, it)| it.place == Place::Attribute((**name).to_owned())))
        .map(|name| (*name).to_owned());
    let calls = CALLS
        .iter()
        .filter(|call| !literals().any(|(_, source, it)| follows(call, it, &source.mask)))
        .map(|call| (*call).to_owned());
    let names = NAMES.iter().flat_map(|(path, names)| names.iter().map(move |name| (*path, *name)));
    let names = names
        .filter(|(path, name)| !literals().any(|(file, _, it)| file == *path && it.text == *name))
        .map(|(path, name)| format!("{path}: {name}"));
    attributes.chain(calls).chain(names).map(|entry| format!("{entry} is listed and not used")).collect()
}

fn outside_the_locale() -> Vec<File> {
    program("app/src").into_iter().filter(|file| !file.path.starts_with("app/src/locale/")).collect()
}

#[test]
fn words_stand_in_the_locale_alone() {
    let sheets = Sheets::read();
    none(outside_the_locale().iter().flat_map(|file| problems(file, &sheets)).collect());
}

#[test]
fn no_name_is_listed_in_vain() {
    none(idle(&outside_the_locale()));
}

#[test]
fn a_word_is_found() {
    let set = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect();
    let sheets = Sheets { classes: set(&["l-mid", "note", "lead"]), tokens: set(&["--ink"]) };
    let found =
        |code: &str| problems(&File::new("app/src/parts/a.rs", &format!("fn a() {{\n    {code}\n}}\n")), &sheets);
    let markup = |code: &str| found(&format!("view! {{ {code} }}"));
    assert_eq!(found("let a = \"Depth\";"), ["app/src/parts/a.rs:2: \"Depth\""]);
    for code in [
        "a(\"at this depth\")",
        "format!(\"{n} jobs\")",
        "shown(a, 1, \"V\")",
        "r#\"Depth\"#",
        "a => \"depth\",",
        "\"note\"",
        "\"lead note\"",
        "\"<mtext>deep</mtext>\"",
        "\"Mal\"",
        "\"M0 0 Hat\"",
        "\"# Depth\"",
        "\"--depth\"",
        "element.set_title(\"Depth\")",
    ] {
        assert_eq!(found(code).len(), 1, "{code}");
    }
    for code in [
        "<b>\"depth\"</b>",
        "<b>Depth {a}</b>",
        "<b aria-label=\"Close\" />",
        "<b name=\"A depth\" />",
        "<b role=\"button\" title=\"depth\" />",
        "<b on:click=move |_| tell(\"depth\") />",
        "<b>{move || \"depth\"}</b>",
        "<A label=\"depth\" />",
        "<input placeholder=\"depth\" />",
    ] {
        assert_eq!(markup(code).len(), 1, "{code}");
    }
}

#[test]
fn what_is_no_word_passes() {
    let set = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect();
    let sheets = Sheets { classes: set(&["l-mid", "w480", "lead"]), tokens: set(&["--ink"]) };
    let found =
        |code: &str| problems(&File::new("app/src/routes.rs", &format!("fn a() {{\n    {code}\n}}\n")), &sheets);
    for code in [
        "// \"Depth\"",
        "format!(\"{name}: {}\", b)",
        "format!(\"M{x:.1} 0h-5.5q0 4 {y} 6z\")",
        "format!(\"{:.1}px\", a)",
        "\"<msub><mi>{letter}</mi></msub>\"",
        "(\"l-mid\", \"w480 lead\", \"--ink\")",
        "match key { \"ArrowUp\" | \"Home\" => 1, _ => 2 }",
        "key == \"Escape\"",
        "root.set_attribute(\"lang\", a)",
        "\"water\"",
        "format!(\"#/job/{id}\")",
        "view! { <b class=\"note\" id=\"a-b\" d=\"M0 0z\" data-a=move || \"known\" aria-hidden=\"true\">\" \"{a}</b> }",
    ] {
        assert_eq!(found(code), Vec::<String>::new(), "{code}");
    }
}
