//! Reading the style sheets: lines without comments, classes of selectors, custom properties.

use std::collections::BTreeSet;

/// The lines of a style sheet without its comments, numbered from 1.
pub fn lines(text: &str) -> Vec<(usize, String)> {
    let mut inside = false;
    let strip = |line: &str| {
        let mut kept = String::new();
        let mut rest = line;
        loop {
            let (mark, next) = if inside { ("*/", false) } else { ("/*", true) };
            let found = rest.split_once(mark);
            if !inside {
                kept.push_str(found.map_or(rest, |(before, _)| before));
            }
            let Some((_, after)) = found else { return kept };
            (inside, rest) = (next, after);
        }
    };
    text.lines().map(strip).enumerate().map(|(index, line)| (index + 1, line)).collect()
}

fn is_name(c: char) -> bool {
    c.is_ascii_alphanumeric() || matches!(c, '-' | '_')
}

fn name_at(text: &str) -> &str {
    text.split(|c| !is_name(c)).next().unwrap_or_default()
}

/// Classes that selectors name: what stands before a brace, after a dot.
pub fn classes(text: &str) -> BTreeSet<String> {
    let text: String = lines(text).into_iter().map(|(_, line)| line + "\n").collect();
    let selectors = text.split('{').filter_map(|piece| piece.rsplit([';', '}']).next());
    let dotted = selectors.flat_map(|selector| selector.split('.').skip(1).map(name_at));
    dotted.filter(|name| name.starts_with(|c: char| c.is_ascii_alphabetic())).map(str::to_owned).collect()
}

/// Custom properties that a sheet defines.
pub fn defined(text: &str) -> BTreeSet<String> {
    let text: String = lines(text).into_iter().map(|(_, line)| line + "\n").collect();
    let properties = text.split([';', '{', '}']).filter_map(|piece| piece.trim().split_once(':'));
    properties.map(|(name, _)| name.trim()).filter(|name| name.starts_with("--")).map(str::to_owned).collect()
}

/// Custom properties that a text reads by `var()`, or, as a program does, by their name between quotes.
pub fn read(text: &str) -> BTreeSet<String> {
    let text: String = lines(text).into_iter().map(|(_, line)| line + "\n").collect();
    let starts = ["var(--", "\"--"].into_iter().flat_map(|start| text.match_indices(start));
    starts.map(|(at, start)| name_at(&text[at + start.len() - 2..]).to_owned()).collect()
}

#[test]
fn a_sheet_is_read() {
    let text = "/* .no */\n:root { --a: .5rem; }\n.b-c > .d:is(.e, .f):not([g]) { margin: .5em var(--h, 0); }\n\
        @media (min-width: 1.5rem) {\n  .i::after { content: \"\"; --j: 0; }\n}\n";
    assert_eq!(classes(text).into_iter().collect::<Vec<_>>(), ["b-c", "d", "e", "f", "i"]);
    assert_eq!(defined(text).into_iter().collect::<Vec<_>>(), ["--a", "--j"]);
    assert_eq!(read(&format!("{text}[\"--k\"]")).into_iter().collect::<Vec<_>>(), ["--h", "--k"]);
}
