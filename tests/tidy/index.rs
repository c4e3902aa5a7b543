//! The frame of the page, `index.html`: its few words, and a link to every style sheet.

use super::none;
use super::tree::files;
use wellwright_tests::root;

/// Attributes whose text a person reads or hears.
const SPOKEN: [&str; 4] = [" title=", " alt=", " aria-label=", " placeholder="];
/// Entries of the head whose content is no word on the page, and the description, which search engines show.
const ENTRIES: [&str; 3] = ["viewport", "description", "theme-color"];
/// The languages in which a browser without scripts is told what is wrong.
const LANGUAGES: [&str; 2] = ["en", "es"];

/// Words beside the title, the description and the sentences for a browser without scripts.
fn words(html: &str) -> Vec<String> {
    let mut found = Vec::new();
    for piece in html.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').unwrap_or((piece, ""));
        let text = text.trim();
        if !text.is_empty() && tag != "title" && !LANGUAGES.iter().any(|code| tag == format!("p lang=\"{code}\"")) {
            found.push(format!("index.html: {text:?} after <{tag}>"));
        }
        let listed = ENTRIES.iter().any(|name| tag.contains(&format!("name=\"{name}\"")));
        if SPOKEN.iter().any(|name| tag.contains(name)) || (tag.contains(" content=") && !listed) {
            found.push(format!("index.html: words in <{tag}>"));
        }
    }
    let inside = html.split_once("<noscript>").and_then(|(_, rest)| rest.split_once("</noscript>"));
    for code in LANGUAGES {
        let tag = format!("<p lang=\"{code}\">");
        let told = |text: &str| text.matches(&tag).count();
        if told(html) != 1 || inside.is_none_or(|(inside, _)| told(inside) != 1) {
            found.push(format!("index.html: one sentence in {code} for a browser without scripts"));
        }
    }
    found
}

/// Style sheets that are linked not once, and links to what is not there.
fn links(html: &str, sheets: &[String]) -> Vec<String> {
    let linked: Vec<&str> = html
        .split('<')
        .filter(|tag| tag.starts_with("link ") && tag.contains("rel=\"css\""))
        .filter_map(|tag| tag.split_once("href=\"")?.1.split('"').next())
        .collect();
    let count = |sheet: &String| linked.iter().filter(|link| *link == sheet).count();
    let not_once = sheets.iter().filter(|sheet| count(sheet) != 1);
    let not_once = not_once.map(|sheet| format!("index.html links {sheet} {} times", count(sheet)));
    let missing = linked.iter().filter(|link| !sheets.iter().any(|sheet| sheet == *link));
    not_once.chain(missing.map(|link| format!("index.html links {link}, which is not there"))).collect()
}

fn html() -> String {
    std::fs::read_to_string(root().join("index.html")).unwrap()
}

#[test]
fn the_frame_holds_few_words() {
    none(words(&html()));
}

#[test]
fn every_style_sheet_is_linked_once() {
    let sheets = files("style").into_iter().map(|file| file.path).collect::<Vec<_>>();
    none(links(&html(), &sheets));
}

#[test]
fn a_word_in_the_frame_is_found() {
    let frame = |more: &str| {
        format!(
            "<!doctype html>\n<title>A</title>\n<meta name=\"description\" content=\"b\">\n<noscript>\n\
             <p lang=\"en\">C</p>\n<p lang=\"es\">D</p>\n</noscript>\n{more}\n"
        )
    };
    assert_eq!(words(&frame("")), Vec::<String>::new());
    for more in [
        "<p>Loading</p>",
        "<div>Loading",
        "<img alt=\"a well\">",
        "<meta property=\"a\" content=\"b\">",
        "<p lang=\"en\">D</p>",
    ] {
        assert_eq!(words(&frame(more)).len(), 1, "{more}");
    }
    assert_eq!(words("<title>A</title>").len(), 2);
}

#[test]
fn a_link_that_lacks_or_leads_nowhere_is_found() {
    let sheets = ["style/a.css", "style/b.css"].map(str::to_owned);
    let link = |name: &str| format!("<link data-trunk rel=\"css\" href=\"style/{name}.css\">\n");
    let html = |names: &[&str]| names.iter().map(|name| link(name)).collect::<String>();
    assert_eq!(links(&html(&["a", "b"]), &sheets), Vec::<String>::new());
    assert_eq!(links(&html(&["a"]), &sheets), ["index.html links style/b.css 0 times"]);
    assert_eq!(links(&html(&["a", "b", "b"]), &sheets), ["index.html links style/b.css 2 times"]);
    assert_eq!(links(&html(&["a", "b", "c"]), &sheets), ["index.html links style/c.css, which is not there"]);
}
