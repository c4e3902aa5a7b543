//! What was done and measured on the site, as files have it: lists of objects, checked one by one.

use super::WireError;
use super::v1::{bad, members, of};
use crate::job::record::{Check, Full, Reading, Record, Taken, Visit};
use crate::quantity::Unit;
use serde_json::{Value, json};

/// Reads a record; `null` is an empty one.
pub(super) fn read(value: &Value, path: &str) -> Result<Record, WireError> {
    if value.is_null() {
        return Ok(Record::default());
    }
    let (mut ticks, mut visits) = (Vec::new(), Vec::new());
    for (name, member) in members(value, path)? {
        let path = format!("{path}.{name}");
        match name.as_str() {
            "ticks" => ticks = each(member, &path, Record::MOST_TICKS, of)?,
            "visits" => visits = each(member, &path, Record::MOST_VISITS, visit)?,
            _ => return Err(bad(&path, "unknown")),
        }
    }
    Record::of(ticks, visits).map_err(|full| match full {
        Full::Text => bad(path, format!("a text is longer than {} bytes", Record::MOST_TEXT)),
        Full::Many => bad(path, "too many"),
    })
}

fn visit(value: &Value, path: &str) -> Result<Visit, WireError> {
    let mut visit = Visit { at: String::new(), by: String::new(), taken: Vec::new() };
    for (name, member) in members(value, path)? {
        let path = format!("{path}.{name}");
        match name.as_str() {
            "at" => visit.at = of(member, &path)?,
            "by" => visit.by = of(member, &path)?,
            "taken" => visit.taken = each(member, &path, Record::MOST_TAKEN, taken)?,
            _ => return Err(bad(&path, "unknown")),
        }
    }
    Ok(visit)
}

fn taken(value: &Value, path: &str) -> Result<Taken, WireError> {
    let taken: Taken = of(value, path)?;
    let fits = taken.entry.is_none_or(|entry| entry.value.is_finite() && entry.unit.kind() == taken.reading.kind());
    if fits { Ok(taken) } else { Err(bad(&format!("{path}.entry"), "no figure of this reading")) }
}

/// A list of objects, each read alike; no longer than it may be.
fn each<T>(
    value: &Value,
    path: &str,
    most: usize,
    read: impl Fn(&Value, &str) -> Result<T, WireError>,
) -> Result<Vec<T>, WireError> {
    let list = value.as_array().ok_or_else(|| bad(path, "not a list"))?;
    if list.len() > most {
        return Err(bad(path, format!("more than {most}")));
    }
    let one = |(index, value): (usize, &Value)| {
        let path = format!("{path}[{index}]");
        if value.is_object() { read(value, &path) } else { Err(bad(&path, "not an object")) }
    };
    list.iter().enumerate().map(one).collect()
}

/// Writes a record.
pub(super) fn write(record: &Record) -> Value {
    if record.is_empty() { Value::Null } else { json!(record) }
}

/// Its schema.
pub(super) fn schema() -> Value {
    let text = || json!({"type": "string", "maxLength": Record::MOST_TEXT});
    let when =
        || json!({"type": "string", "maxLength": Record::MOST_TEXT, "description": "by the clock of the device"});
    let object = |properties: Value| {
        let required: Vec<&String> = properties.as_object().map(|all| all.keys().collect()).unwrap_or_default();
        json!({"type": "object", "required": required, "additionalProperties": false, "properties": properties})
    };
    let list = |items: Value, most: usize| json!({"type": "array", "maxItems": most, "items": items});
    let entry = json!({
        "type": ["object", "null"],
        "required": ["value", "unit"],
        "additionalProperties": false,
        "properties": {"value": {"type": "number"}, "unit": {"enum": Unit::ALL.to_vec()}},
    });
    let taken = object(json!({
        "reading": {"enum": Reading::ALL},
        "text": text(),
        "entry": entry,
        "at": when(),
        "open": {"type": "boolean", "description": "still being typed; once it is not, it never changes"},
    }));
    let tick = object(json!({"check": {"enum": Check::ALL}, "done": {"type": "boolean"}, "at": when()}));
    let visit = object(json!({"at": when(), "by": text(), "taken": list(taken, Record::MOST_TAKEN)}));
    json!({
        "type": ["object", "null"],
        "description": "what was done and measured on the site, in the order in which it came; only ever added to",
        "additionalProperties": false,
        "properties": {
            "ticks": list(tick, Record::MOST_TICKS),
            "visits": list(visit, Record::MOST_VISITS),
        },
    })
}
