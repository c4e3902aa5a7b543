//! Colors are written down once, in `style/tokens.css`; everything else reads them there.

use super::none;
use super::style::lines;
use super::tree::{File, code, files, program};

const TOKENS: &str = "style/tokens.css";

/// The color that a line writes down, if any: `#` with 3, 4, 6 or 8 hexadecimal digits, or a color function of numbers.
fn color(line: &str) -> Option<&str> {
    let hex = line.match_indices('#').find_map(|(at, _)| {
        let rest = &line[at + 1..];
        let digits = rest.chars().take_while(char::is_ascii_hexdigit).count();
        let ends = !rest[digits..].starts_with(|c: char| c.is_alphanumeric() || matches!(c, '-' | '_' | '\''));
        (matches!(digits, 3 | 4 | 6 | 8) && ends).then(|| &line[at..at + 1 + digits])
    });
    let functions = ["rgb(", "rgba(", "hsl(", "hsla(", "hwb(", "lab(", "lch(", "oklab(", "oklch("];
    let function = functions.into_iter().find_map(|name| {
        let (before, after) = line.split_once(name)?;
        let inside_a_name = before.ends_with(|c: char| c.is_alphanumeric() || c == '_');
        (!inside_a_name && after.trim_start().starts_with(|c: char| c.is_ascii_digit() || c == '.')).then_some(name)
    });
    hex.or(function)
}

fn problems(file: &File) -> Vec<String> {
    let lines: Vec<(usize, String)> = match file.ending() {
        "css" => lines(&file.text),
        _ => code(&file.text).into_iter().map(|(number, line)| (number, line.to_owned())).collect(),
    };
    let colors = lines.iter().filter_map(|(number, line)| Some((number, color(line)?)));
    colors.map(|(number, color)| format!("{}:{number}: {color}", file.path)).collect()
}

#[test]
fn colors_stand_only_among_the_tokens() {
    let sheets = files("style").into_iter().filter(|file| file.ending() == "css" && file.path != TOKENS);
    none(program("app/src").into_iter().chain(sheets).flat_map(|file| problems(&file)).collect());
}

#[test]
fn a_color_elsewhere_is_found() {
    for line in ["a { color: #0a5a64; }", "a{color:#fff}", "rgb(1 2 3)", "a: rgba( 0,0,0,.5)", "oklch(.5 0 0)"] {
        assert!(color(line).is_some(), "{line}");
        assert_eq!(problems(&File::new("style/base.css", &format!("{line}\n"))).len(), 1, "{line}");
    }
    for line in [
        "a { color: var(--ink); }",
        "#[component]",
        "to_rgba(1)",
        "url(#fade-in)",
        "r#\"x\"#",
        "rgb(from var(--a) r g b)",
    ] {
        assert_eq!(color(line), None, "{line}");
    }
    assert!(problems(&File::new("style/base.css", "/* #fff\n#000 */ a {}\n")).is_empty());
    assert_eq!(problems(&File::new("app/src/a.rs", "// #fff\nlet a = \"#ffffff\";\n")), ["app/src/a.rs:2: #ffffff"]);
}
