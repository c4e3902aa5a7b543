//! The line of a file in which a place of it stands.

use serde_json::value::RawValue;
use std::borrow::Cow;
use std::collections::HashMap;

/// The line, counted from 1, in which the value at a path as `cable.metal` begins; of a list the job at `place`, from 0.
/// Of a path that leads nowhere the deepest value on its way counts; `None` where the text is no JSON.
#[must_use]
pub fn line_of(text: &str, place: usize, path: &str) -> Option<usize> {
    let mut at: &RawValue = serde_json::from_str(text).ok()?;
    if at.get().starts_with('[') {
        at = item(at, place)?;
    }
    for name in path.split('.').flat_map(|name| name.split('[')).filter(|name| !name.is_empty()) {
        let deeper = match name.strip_suffix(']') {
            Some(index) => index.parse().ok().and_then(|index| item(at, index)),
            None => member(at, name),
        };
        match deeper {
            Some(deeper) => at = deeper,
            None => break,
        }
    }
    let offset = (at.get().as_ptr() as usize).checked_sub(text.as_ptr() as usize)?;
    Some(text.get(..offset)?.matches('\n').count() + 1)
}

fn item(list: &RawValue, index: usize) -> Option<&RawValue> {
    let items: Vec<&RawValue> = serde_json::from_str(list.get()).ok()?;
    items.get(index).copied()
}

fn member<'a>(object: &'a RawValue, name: &str) -> Option<&'a RawValue> {
    let members: HashMap<Cow<'a, str>, &'a RawValue> = serde_json::from_str(object.get()).ok()?;
    members.get(name).copied()
}

#[cfg(test)]
mod tests {
    use super::line_of;

    #[test]
    fn lines_are_those_that_an_editor_shows() {
        let text = "\n{\n  \"schema\": 1,\n  \"cable\": {\n    \"metal\": \"gold\"\n  },\n  \"record\": {\"visits\": [\n    {},\n    {\"by\": 7}\n  ]}\n}\n";
        for (path, line) in [
            ("", 2),
            ("schema", 3),
            ("cable", 4),
            ("cable.metal", 5),
            ("cable.no_such", 4),
            ("record.visits[1].by", 9),
            ("nowhere.at.all", 2),
        ] {
            assert_eq!(line_of(text, 0, path), Some(line), "{path}");
        }
        let list = "[{\"schema\":1},\n{\"schema\":1,\n\"name\":7}]";
        assert_eq!(line_of(list, 1, "name"), Some(3));
        assert_eq!(line_of(list, 0, "name"), Some(1));
        assert_eq!(line_of(list, 2, "name"), None);
        assert_eq!(line_of("{", 0, "name"), None);
        assert_eq!(line_of("{\"n\\u0061me\":\n7}", 0, "name"), Some(2));
    }
}
