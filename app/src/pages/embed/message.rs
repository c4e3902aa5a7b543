//! Messages with the page around, in their first version.

use super::asked::Refused;
use serde::Deserialize;
use serde_json::{Map, Value, json};
use wellwright_core::evaluate::{Basis, Evaluation, brief};

/// The version of the messages.
pub const VERSION: u64 = 1;

/// What the page around may say.
#[derive(Debug, Clone, PartialEq)]
pub enum Message {
    /// Words, as in an address.
    Set(Vec<(String, String)>),
    /// It wants the result again.
    Ask,
    /// It speaks of this page in a form that it does not know.
    Unknown,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Form {
    wellwright: u64,
    #[serde(default)]
    set: Option<Map<String, Value>>,
    #[serde(default)]
    ask: Option<bool>,
}

/// Reads a message; nothing where it is not meant for this page, as pages have messages of many kinds.
#[must_use]
pub fn read(text: &str) -> Option<Message> {
    let value: Value = serde_json::from_str(text).ok()?;
    value.as_object()?.get("wellwright")?;
    let word = |(word, value): (String, Value)| match value {
        Value::String(text) => Some((word, text)),
        Value::Number(number) => Some((word, number.to_string())),
        Value::Null => Some((word, String::new())),
        _ => None,
    };
    Some(match serde_json::from_value::<Form>(value) {
        Ok(Form { wellwright: VERSION, set: Some(words), ask: None }) => {
            let words: Option<Vec<(String, String)>> = words.into_iter().map(word).collect();
            words.map_or(Message::Unknown, Message::Set)
        }
        Ok(Form { wellwright: VERSION, set: None, ask: Some(true) }) => Message::Ask,
        _ => Message::Unknown,
    })
}

/// The page stands and listens.
#[must_use]
pub fn ready() -> Value {
    json!({ "wellwright": VERSION, "type": "ready" })
}

/// What the job comes to.
#[must_use]
pub fn result(answer: &Evaluation, basis: Basis) -> Value {
    json!({ "wellwright": VERSION, "type": "result", "count": basis, "result": brief(answer) })
}

/// Words that were not taken.
#[must_use]
pub fn refused(all: &[Refused]) -> Value {
    let one = |refused: &Refused| json!({ "word": refused.word, "value": refused.value, "code": refused.why.code() });
    json!({ "wellwright": VERSION, "type": "refused", "words": all.iter().map(one).collect::<Vec<_>>() })
}

/// A message whose form is not known.
#[must_use]
pub fn not_known() -> Value {
    json!({ "wellwright": VERSION, "type": "refused", "words": [], "code": "unknown_message" })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_message_is_read_or_named_or_let_pass() {
        let set = |pairs: &[(&str, &str)]| {
            Some(Message::Set(pairs.iter().map(|(word, text)| ((*word).to_owned(), (*text).to_owned())).collect()))
        };
        assert_eq!(
            read(r#"{"wellwright":1,"set":{"depth":"500ft","motor":5,"price":null}}"#),
            set(&[("depth", "500ft"), ("motor", "5"), ("price", "")])
        );
        assert_eq!(read(r#"{"wellwright":1,"ask":true}"#), Some(Message::Ask));
        for odd in [
            r#"{"wellwright":2,"ask":true}"#,
            r#"{"wellwright":1}"#,
            r#"{"wellwright":1,"ask":false}"#,
            r#"{"wellwright":1,"ask":true,"set":{}}"#,
            r#"{"wellwright":1,"set":{"depth":{"value":5}}}"#,
            r#"{"wellwright":1,"set":[]}"#,
            r#"{"wellwright":"1","ask":true}"#,
            r#"{"wellwright":1,"ask":true,"more":1}"#,
        ] {
            assert_eq!(read(odd), Some(Message::Unknown), "{odd}");
        }
        let deep = "[".repeat(100_000);
        for other in ["", "null", "5", "[]", "{}", r#"{"type":"set"}"#, r#""wellwright""#, "{", deep.as_str()] {
            assert_eq!(read(other), None, "{}", other.len());
        }
    }

    // Whoever reads a result knows its basis and finds what the report of a job has.
    #[test]
    fn a_result_holds_what_a_report_does() {
        let job = crate::platform::storage::demo_jobs().remove(0);
        let answer = wellwright_core::evaluate::evaluate(&job);
        let whole = wellwright_core::evaluate::report("", &answer);
        let told = result(&answer, Basis::Installed);
        for part in ["at_depth", "break_even", "prices", "errors", "findings"] {
            assert!(!told["result"][part].is_null(), "{part}");
            assert_eq!(told["result"][part], whole[part], "{part}");
        }
        assert_eq!((&told["count"], &told["type"]), (&json!("installed"), &json!("result")));
    }
}
