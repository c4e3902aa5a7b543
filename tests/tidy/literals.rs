//! The literals of a Rust file, each with its place: in code, in an attribute of a `view!`, or as text of one.

use super::tree::code;

/// Where a literal stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    Code,
    /// A child of an element: text on the page.
    Text,
    /// Anywhere in the value of an attribute, or of a component's prop.
    Attribute(String),
}

/// A text between quotes, as the program holds it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Literal {
    pub line: usize,
    pub text: String,
    pub place: Place,
    /// Where its quotes begin and end in the mask.
    pub from: usize,
    pub to: usize,
}

/// A file without its comments and tests: the code with blanks where literals hold text, and the literals.
pub struct Source {
    pub mask: String,
    pub literals: Vec<Literal>,
}

/// Takes a file apart.
pub fn source(text: &str) -> Source {
    let numbers: Vec<usize> = code(text).into_iter().map(|(number, _)| number).collect();
    let kept = |(index, line): (usize, &str)| {
        if numbers.binary_search(&(index + 1)).is_ok() { format!("{line}\n") } else { "\n".to_owned() }
    };
    let mut source = lexed(&text.lines().enumerate().map(kept).collect::<String>());
    place(&mut source);
    source
}

/// A text with something else in place of each gap: `{name}` and `{}`.
pub fn gaps_as(stand_in: &str, text: &str) -> String {
    let mut out = String::new();
    let mut depth = 0_usize;
    for letter in text.chars() {
        match letter {
            '{' => depth += 1,
            '}' => {
                depth = depth.saturating_sub(1);
                out.push_str(stand_in);
            }
            letter if depth == 0 => out.push(letter),
            _ => {}
        }
    }
    out
}

/// The gaps of a text, by what stands in them before a colon.
pub fn gaps(text: &str) -> Vec<&str> {
    let pieces = text.split('{').skip(1).filter_map(|piece| piece.split_once('}'));
    let mut names: Vec<&str> = pieces.map(|(gap, _)| gap.split(':').next().unwrap_or_default()).collect();
    names.sort_unstable();
    names
}

fn lexed(text: &str) -> Source {
    let mut mask = String::with_capacity(text.len());
    let mut literals = Vec::new();
    let mut rest = text;
    let mut line = 1;
    while let Some(letter) = rest.chars().next() {
        let from = mask.len();
        let in_a_name = mask.ends_with(|c: char| c.is_alphanumeric() || c == '_');
        let length = match letter {
            '/' if rest.starts_with("//") => rest.find('\n').unwrap_or(rest.len()),
            '"' => plain(rest),
            'r' if !in_a_name && is_raw(rest) => raw(rest),
            '\'' => character(rest),
            letter => {
                mask.push(letter);
                line += usize::from(letter == '\n');
                rest = &rest[letter.len_utf8()..];
                continue;
            }
        };
        let (token, after) = rest.split_at(length);
        if letter == '"' || letter == 'r' {
            let hashes = token.chars().skip(1).take_while(|c| *c == '#').count();
            let held = if letter == 'r' { &token[hashes + 2..length - hashes - 1] } else { &token[1..length - 1] };
            let text = if letter == 'r' { held.to_owned() } else { unescaped(held) };
            literals.push(Literal { line, text, place: Place::Code, from, to: from + length });
        }
        let blank = |c: char| if c == '\n' { "\n".to_owned() } else { " ".repeat(c.len_utf8()) };
        mask.extend(token.chars().map(blank));
        line += token.matches('\n').count();
        if letter == '"' || letter == 'r' {
            mask.replace_range(from..=from, "\"");
            mask.replace_range(mask.len() - 1.., "\"");
        }
        rest = after;
    }
    Source { mask, literals }
}

/// Bytes of a literal that begins here, its quotes included.
fn plain(text: &str) -> usize {
    let mut escaped = false;
    let end = text.char_indices().skip(1).find(|(_, letter)| {
        let ends = *letter == '"' && !escaped;
        escaped = *letter == '\\' && !escaped;
        ends
    });
    end.map_or(text.len(), |(at, _)| at + 1)
}

fn is_raw(text: &str) -> bool {
    text[1..].trim_start_matches('#').starts_with('"')
}

fn raw(text: &str) -> usize {
    let hashes = text[1..].len() - text[1..].trim_start_matches('#').len();
    let end = format!("\"{}", "#".repeat(hashes));
    let start = hashes + 2;
    text[start..].find(&end).map_or(text.len(), |at| start + at + end.len())
}

/// Bytes of a character between quotes; 1 for the quote of a lifetime.
fn character(text: &str) -> usize {
    let mut letters = text.char_indices().skip(1);
    let Some((_, first)) = letters.next() else { return 1 };
    if first == '\\' {
        let _ = letters.next();
        return letters.find(|(_, letter)| *letter == '\'').map_or(1, |(at, _)| at + 1);
    }
    letters.next().filter(|(_, letter)| *letter == '\'').map_or(1, |(at, _)| at + 1)
}

fn unescaped(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('\\') {
        out.push_str(before);
        let Some(sign) = after.chars().next() else { break };
        rest = &after[sign.len_utf8()..];
        match sign {
            'n' => out.push('\n'),
            't' => out.push('\t'),
            '\n' => rest = rest.trim_start(),
            'u' => {
                let (digits, next) = rest.trim_start_matches('{').split_once('}').unwrap();
                out.push(u32::from_str_radix(digits, 16).ok().and_then(char::from_u32).unwrap());
                rest = next;
            }
            sign => out.push(sign),
        }
    }
    out + rest
}

/// Gives every literal inside a `view!` its place. Text without quotes becomes a literal too.
fn place(source: &mut Source) {
    let mask = source.mask.clone();
    for (at, head) in mask.match_indices("view! {") {
        let from = at + head.len();
        let to = past(mask.as_bytes(), from - 1) - 1;
        for literal in source.literals.iter_mut().filter(|literal| (from..to).contains(&literal.from)) {
            literal.place = Place::Code;
        }
        children(source, &mask, from, to);
    }
    source.literals.sort_by_key(|literal| literal.from);
}

/// The place after the bracket that closes the one here.
pub fn past(mask: &[u8], open: usize) -> usize {
    let mut depth = 0_usize;
    for (at, byte) in mask.iter().enumerate().skip(open) {
        match byte {
            b'(' | b'[' | b'{' => depth += 1,
            b')' | b']' | b'}' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return at + 1;
        }
    }
    mask.len()
}

fn children(source: &mut Source, mask: &str, from: usize, to: usize) {
    let bytes = mask.as_bytes();
    let mut at = from;
    while at < to {
        at = match bytes[at] {
            b'{' => past(bytes, at),
            b'<' if bytes[at + 1] == b'/' => mask[at..].find('>').map_or(to, |length| at + length + 1),
            b'<' => tag(source, mask, at, to),
            b'"' => {
                let literal = source.literals.iter_mut().find(|literal| literal.from == at).unwrap();
                literal.place = Place::Text;
                literal.to
            }
            byte if byte.is_ascii_whitespace() => at + 1,
            _ => {
                let end = mask[at..to].find(['<', '{', '"']).map_or(to, |length| at + length);
                let line = mask[..at].matches('\n').count() + 1;
                let text = mask[at..end].trim_end().to_owned();
                source.literals.push(Literal { line, text, place: Place::Text, from: at, to: end });
                end
            }
        };
    }
}

/// Walks through an opening tag and gives the literals of its attributes their place.
fn tag(source: &mut Source, mask: &str, open: usize, to: usize) -> usize {
    let bytes = mask.as_bytes();
    let mut attribute: Option<String> = None;
    let mut at = open + 1;
    while at < to {
        at = match bytes[at] {
            b'>' if !matches!(bytes[at - 1], b'-' | b'=') => return at + 1,
            byte if byte.is_ascii_whitespace() => {
                attribute = attribute_at(&mask[at + 1..to]).or(attribute);
                at + 1
            }
            b'"' | b'(' | b'[' | b'{' => {
                let literal = source.literals.iter().find(|literal| literal.from == at);
                let end = literal.map_or_else(|| past(bytes, at), |literal| literal.to);
                if let Some(name) = &attribute {
                    let inside = source.literals.iter_mut().filter(|literal| (at..end).contains(&literal.from));
                    inside.for_each(|literal| literal.place = Place::Attribute(name.clone()));
                }
                end
            }
            _ => at + 1,
        };
    }
    to
}

/// The name of an attribute that begins here.
fn attribute_at(text: &str) -> Option<String> {
    let (name, value) = text.split_once('=')?;
    let is_name = name.starts_with(|c: char| c.is_ascii_alphabetic())
        && name.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | ':'));
    (is_name && !value.starts_with(['=', '>', ' '])).then(|| name.to_owned())
}

#[test]
fn literals_are_read_as_the_program_holds_them() {
    let text = "// \"no\"\nfn a<'b>(c: &'b str) { d('\"', \"e\\\"f\\u{a0}g\"); h(r#\"i \"j\" k\"#); } // \"no\"\n\
        #[cfg(test)]\nmod tests {\n    const X: &str = \"no\";\n}\nlet l = \"m \\\n        n // o\";\nlet p = '\\'';\n";
    let source = source(text);
    let read: Vec<(usize, &str)> =
        source.literals.iter().map(|literal| (literal.line, literal.text.as_str())).collect();
    assert_eq!(read, [(2, "e\"f\u{a0}g"), (2, "i \"j\" k"), (7, "m n // o")]);
    assert!(source.literals.iter().all(|literal| &source.mask[literal.from..=literal.from] == "\""));
    assert_eq!(gaps_as("0", "a {b:.1} c{}"), "a 0 c0");
    assert_eq!(gaps("a {b:.1} c{} {a}"), ["", "a", "b"]);
}

#[test]
fn literals_in_markup_have_their_places() {
    let text = "fn a() {\n    let b = \"code\";\n    view! {\n        <p class=\"one\" on:click=move |_| tell(\"two\") \
        data-x=move || if c { \"three\" } else { \"four\" }>\"five\"{d(\"six\")}</p>\n        <E f=view! { <b \
        title=\"seven\">eight {\"nine\"}</b> } />\n    }\n}\n";
    let places = source(text).literals;
    let place = |text: &str| places.iter().find(|literal| literal.text == text).unwrap().place.clone();
    let attribute = |name: &str| Place::Attribute(name.to_owned());
    assert_eq!([place("code"), place("six"), place("nine")], [Place::Code, Place::Code, Place::Code]);
    assert_eq!([place("five"), place("eight")], [Place::Text, Place::Text]);
    assert_eq!([place("one"), place("two"), place("seven")], ["class", "on:click", "title"].map(attribute));
    assert_eq!([place("three"), place("four")], ["data-x", "data-x"].map(attribute));
}
