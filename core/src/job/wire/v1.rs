//! Version 1 of the job file. Frozen once released: never change a name or a meaning here, add a version instead.
//!
//! A file is an object of groups; each group holds figures, `null` where nothing was entered, and choices.

use super::{WireError, record};
use crate::cost::book_table::MOST_BYTES;
use crate::job::{Field, Job, Part, Place, Sets, WayKey};
use crate::quantity::{Entry, Unit};
use crate::standards::enclosure::{EnclosureType, TABLE};
use crate::standards::pipe::{Nominal, Series};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value, json};

const GROUPS: [&str; 12] =
    ["site", "demand", "well", "line", "pump", "motor", "cable", "prices", "supply", "energy", "range", "startup"];

pub(super) fn bad(path: &str, detail: impl Into<String>) -> WireError {
    WireError::BadField { path: path.to_owned(), detail: detail.into() }
}

/// A value of a type. No type of version 1 is a list; the deserializer would take one for an object's values in order.
pub(super) fn of<T: DeserializeOwned>(value: &Value, path: &str) -> Result<T, WireError> {
    if value.is_array() {
        return Err(bad(path, "a list has no place here"));
    }
    serde_path_to_error::deserialize(value).map_err(|error| {
        let inner = error.path().to_string();
        let path = if inner == "." { path.to_owned() } else { format!("{path}.{inner}") };
        bad(&path, error.inner().to_string())
    })
}

/// A word or a truth value; an object is neither, yet the deserializer would take one for a word.
fn word<T: DeserializeOwned>(value: &Value, path: &str) -> Result<Option<T>, WireError> {
    if value.is_object() { Err(bad(path, "an object has no place here")) } else { of(value, path) }
}

fn figure(value: &Value, path: &str) -> Result<Option<Entry>, WireError> {
    if let Some(members) = value.as_object()
        && let Some((name, _)) = members.iter().find(|(_, member)| member.is_object() || member.is_array())
    {
        return Err(bad(&format!("{path}.{name}"), "a list or an object has no place here"));
    }
    of(value, path)
}

pub(super) fn members<'a>(value: &'a Value, path: &str) -> Result<&'a Map<String, Value>, WireError> {
    value.as_object().ok_or_else(|| bad(path, "not an object"))
}

pub(super) fn read(value: &Value) -> Result<Job, WireError> {
    let mut job = Job::default();
    for (name, member) in members(value, "")? {
        match name.as_str() {
            "schema" => {}
            "name" => job.name = of(member, name)?,
            "note" => job.note = of(member, name)?,
            "demo" => job.demo = of(member, name)?,
            "record" => job.record = record::read(member, name)?,
            group if GROUPS.contains(&group) => {
                for (key, member) in members(member, group)? {
                    slot(&mut job, &format!("{group}.{key}"), member)?;
                }
            }
            unknown => return Err(bad(unknown, "unknown")),
        }
    }
    whole(&job)?;
    Ok(job)
}

/// A size that its series does not have is no pipe.
fn whole(job: &Job) -> Result<(), WireError> {
    for part in Part::ALL {
        if let Some(size) = job.choices.pipe(part).size
            && job.choices.series(part).named(size.name()).is_none()
        {
            return Err(bad(pipe_path(part, 1), "no such size in the series"));
        }
    }
    Ok(())
}

/// Where the series (0) and the size (1) of a part stand.
fn pipe_path(part: Part, at: usize) -> &'static str {
    match part {
        Part::Drop => ["line.drop_series", "line.drop_size"][at],
        Part::Suction => ["line.suction_series", "line.suction_size"][at],
        Part::Surface => ["line.surface_series", "line.surface_size"][at],
    }
}

/// What stands at a place.
fn slot(job: &mut Job, path: &str, value: &Value) -> Result<(), WireError> {
    if let Some(field) = Field::at(path) {
        job.set(field, figure(value, path)?);
        return Ok(());
    }
    let choices = &mut job.choices;
    match path {
        "motor.kind" => choices.motor_kind = word(value, path)?,
        "cable.metal" => choices.metal = word(value, path)?,
        "cable.build" => choices.build = word(value, path)?,
        "cable.insulation" => choices.insulation = word(value, path)?,
        "cable.terminals_marked_75" => choices.terminals_marked_75 = word(value, path)?,
        "cable.cooler_water" => choices.cooler_water = word(value, path)?,
        "startup.restart" => choices.restart = word(value, path)?,
        "startup.freezing" => choices.freezing = word(value, path)?,
        "cable.most_sets" => choices.most_sets = word(value, path)?.map(|given| sets(given, path)).transpose()?,
        "demand.by" => choices.demand = word(value, path)?,
        "demand.depth_of" => choices.depth_of = word(value, path)?,
        "well.drawdown_by" => choices.drawdown = word(value, path)?,
        "line.friction" => choices.friction = word(value, path)?,
        "pump.control" => choices.control = word(value, path)?,
        "pump.curve" => job.curve = text(of(value, path)?, path, Job::MOST_CURVE)?,
        "energy.duty" => job.duty = text(of(value, path)?, path, Job::MOST_DUTY)?,
        "prices.way_240" => job.pair[0] = way(value, path)?,
        "prices.way_480" => job.pair[1] = way(value, path)?,
        "prices.book" => job.book = text(of(value, path)?, path, MOST_BYTES)?,
        "prices.source" => job.price_source = of(value, path)?,
        _ if path.starts_with("supply.") || path.starts_with("cable.") || path == "motor.inverter_duty" => {
            return power(job, path, value);
        }
        _ => return pipe(job, path, value),
    }
    Ok(())
}

/// What stands of the supply and of the ways to run the motor.
fn power(job: &mut Job, path: &str, value: &Value) -> Result<(), WireError> {
    let choices = &mut job.choices;
    match path {
        "supply.place" => choices.place = word(value, path)?,
        "supply.shaded" => choices.shaded = word(value, path)?,
        "supply.enclosure" => choices.enclosure = enclosure(value, path)?,
        "supply.grounding" => choices.grounding = word(value, path)?,
        "supply.metal" => choices.feeder_metal = word(value, path)?,
        "supply.build" => choices.feeder_build = word(value, path)?,
        "supply.most_sets" => choices.feeder_sets = word(value, path)?.map(|given| sets(given, path)).transpose()?,
        "supply.three_phase" => choices.three_phase = word(value, path)?,
        "supply.hookup" => choices.hookup = word(value, path)?,
        "supply.families" => job.families = text(of(value, path)?, path, Job::MOST_FAMILIES)?,
        "supply.way" => job.way = way(value, path)?,
        "cable.remedy" => choices.remedy = word(value, path)?,
        "motor.inverter_duty" => choices.inverter_duty = word(value, path)?,
        _ => return Err(bad(path, "unknown")),
    }
    Ok(())
}

fn enclosure(value: &Value, path: &str) -> Result<Option<EnclosureType>, WireError> {
    let name: Option<String> = word(value, path)?;
    name.map(|name| EnclosureType::named(&name).ok_or_else(|| bad(path, "no such type"))).transpose()
}

/// What stands ahead of the name of a family of the user's own.
const OWN: &str = "own: ";

/// A kind of equipment, or the name of a family of the user's own.
fn way(value: &Value, path: &str) -> Result<Option<WayKey>, WireError> {
    let Some(key) = word::<String>(value, path)? else { return Ok(None) };
    Ok(Some(match key.strip_prefix(OWN) {
        Some(name) => WayKey::Own(name.to_owned()),
        None => WayKey::Generic(of(value, path)?),
    }))
}

fn pipe(job: &mut Job, path: &str, value: &Value) -> Result<(), WireError> {
    for part in Part::ALL {
        let pick = &mut job.choices.pipes[part as usize];
        if path == pipe_path(part, 0) {
            pick.series = word::<String>(value, path)?
                .map(|key| Series::of_key(&key).ok_or_else(|| bad(path, "no such series")))
                .transpose()?;
            return Ok(());
        }
        if path == pipe_path(part, 1) {
            pick.size = word::<String>(value, path)?
                .map(|name| Nominal::named(&name).ok_or_else(|| bad(path, "no such size")))
                .transpose()?;
            return Ok(());
        }
    }
    Err(bad(path, "unknown"))
}

fn sets(given: u8, path: &str) -> Result<Sets, WireError> {
    Sets::new(given).ok_or_else(|| bad(path, format!("{given} is not 1 to {}", Sets::LIMIT)))
}

fn text(text: String, path: &str, most: usize) -> Result<String, WireError> {
    if text.len() <= most { Ok(text) } else { Err(bad(path, format!("longer than {most} bytes"))) }
}

/// Writes every place, empty ones as `null`.
pub(super) fn write(job: &Job) -> Value {
    let mut file = Map::new();
    file.insert("schema".into(), json!(1));
    file.insert("name".into(), json!(job.name));
    file.insert("note".into(), json!(job.note));
    file.insert("demo".into(), json!(job.demo));
    let mut put = |path: &str, value: Value| {
        if let Some((group, name)) = path.split_once('.')
            && let Some(group) = file.entry(group).or_insert_with(|| json!({})).as_object_mut()
        {
            group.insert(name.to_owned(), value);
        }
    };
    for field in Field::ALL {
        put(field.path(), json!(job.get(field).filter(|entry| entry.value.is_finite())));
    }
    let choices = &job.choices;
    put("motor.kind", json!(choices.motor_kind));
    put("cable.metal", json!(choices.metal));
    put("cable.build", json!(choices.build));
    put("cable.insulation", json!(choices.insulation));
    put("cable.terminals_marked_75", json!(choices.terminals_marked_75));
    put("cable.cooler_water", json!(choices.cooler_water));
    put("startup.restart", json!(choices.restart));
    put("startup.freezing", json!(choices.freezing));
    put("cable.most_sets", json!(choices.most_sets.map(Sets::get)));
    put("demand.by", json!(choices.demand));
    put("demand.depth_of", json!(choices.depth_of));
    put("well.drawdown_by", json!(choices.drawdown));
    put("line.friction", json!(choices.friction));
    put("pump.control", json!(choices.control));
    put("pump.curve", json!(job.curve));
    put("energy.duty", json!(job.duty));
    put("prices.way_240", way_key(job.pair[0].as_ref()));
    put("prices.way_480", way_key(job.pair[1].as_ref()));
    put("prices.book", json!(job.book));
    put("prices.source", json!(job.price_source));
    for (path, value) in power_places(job) {
        put(path, value);
    }
    for part in Part::ALL {
        let pick = choices.pipe(part);
        put(pipe_path(part, 0), json!(pick.series.map(Series::key)));
        put(pipe_path(part, 1), json!(pick.size.map(Nominal::name)));
    }
    file.insert("record".into(), record::write(&job.record));
    Value::Object(file)
}

/// A way as files have it.
fn way_key(way: Option<&WayKey>) -> Value {
    match way {
        None => Value::Null,
        Some(WayKey::Generic(kind)) => json!(kind),
        Some(WayKey::Own(name)) => json!(format!("{OWN}{name}")),
    }
}

/// What stands of the supply and of the ways to run the motor, place by place.
fn power_places(job: &Job) -> [(&'static str, Value); 13] {
    let choices = &job.choices;
    [
        ("supply.place", json!(choices.place)),
        ("supply.shaded", json!(choices.shaded)),
        ("supply.enclosure", json!(choices.enclosure.map(|kind| kind.row().name))),
        ("supply.grounding", json!(choices.grounding)),
        ("supply.metal", json!(choices.feeder_metal)),
        ("supply.build", json!(choices.feeder_build)),
        ("supply.most_sets", json!(choices.feeder_sets.map(Sets::get))),
        ("supply.three_phase", json!(choices.three_phase)),
        ("supply.hookup", json!(choices.hookup)),
        ("supply.families", json!(job.families)),
        ("supply.way", way_key(job.way.as_ref())),
        ("cable.remedy", json!(choices.remedy)),
        ("motor.inverter_duty", json!(choices.inverter_duty)),
    ]
}

/// The words of an enumeration, as files have them.
fn words<T: Serialize>(all: &[T]) -> Value {
    json!({"enum": all.iter().map(|one| json!(one)).chain([Value::Null]).collect::<Vec<_>>()})
}

/// The schema is written by hand from the same field list that the reader walks, so it can't name a field that is not
/// there; a test validates every example against it.
pub(super) fn schema() -> Value {
    let mut groups: Map<String, Value> = Map::new();
    let mut add = |path: &str, schema: Value| {
        if let Some((group, name)) = path.split_once('.') {
            let object = groups
                .entry(group)
                .or_insert_with(|| json!({"type": "object", "additionalProperties": false, "properties": {}}));
            object["properties"][name] = schema;
        }
    };
    for field in Field::ALL {
        let accepted = field.spec().accepted;
        let mut units = vec![accepted.unit];
        units.extend(Unit::ALL.into_iter().filter(|unit| unit.kind() == field.kind() && *unit != accepted.unit));
        add(field.path(), figure_schema(&units, accepted.min, accepted.max));
    }
    for (path, schema) in choice_schemas() {
        add(path, schema);
    }
    let mut properties = json!({
        "schema": {"const": 1},
        "name": {"type": "string"},
        "note": {"type": "string"},
        "demo": {"type": "boolean", "description": "true for invented jobs"},
        "record": record::schema(),
    });
    if let Some(map) = properties.as_object_mut() {
        map.extend(groups);
    }
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Wellwright job, version 1",
        "type": "object",
        "required": ["schema"],
        "additionalProperties": false,
        "properties": properties,
    })
}

fn figure_schema(units: &[Unit], min: f64, max: f64) -> Value {
    let unit = units.first().map(|unit| json!(unit)).unwrap_or_default();
    json!({
        "type": ["object", "null"],
        "description": format!("accepted: {min} to {max} {}, or the same in another listed unit",
            unit.as_str().unwrap_or_default()),
        "required": ["value", "unit"],
        "additionalProperties": false,
        "properties": {"value": {"type": "number"}, "unit": {"enum": units}},
    })
}

fn choice_schemas() -> Vec<(&'static str, Value)> {
    let mut all = vec![
        ("motor.kind", words(&["submersible", "surface"])),
        ("cable.metal", words(&["copper", "aluminum"])),
        ("cable.build", words(&["plastic_conduit", "steel_conduit", "flat_jacketed", "twisted"])),
        ("cable.insulation", words(&["60 degC", "75 degC", "90 degC"])),
        ("cable.terminals_marked_75", json!({"type": ["boolean", "null"]})),
        ("cable.cooler_water", json!({"type": ["boolean", "null"]})),
        ("startup.restart", json!({"type": ["boolean", "null"]})),
        ("startup.freezing", json!({"type": ["boolean", "null"]})),
        ("cable.most_sets", json!({"type": ["integer", "null"], "minimum": 1, "maximum": Sets::LIMIT})),
        ("demand.by", words(&["flow", "land", "people_and_stock"])),
        ("demand.depth_of", words(&["gross", "net"])),
        ("well.drawdown_by", words(&["measured", "specific_capacity", "aquifer"])),
        ("line.friction", words(&["darcy_weisbach", "hazen_williams"])),
        ("pump.control", words(&["constant_pressure", "on_off"])),
        (
            "pump.curve",
            json!({"type": "string", "maxLength": Job::MOST_CURVE,
            "description": "one point a line: flow in gpm, head in ft, efficiency in %, unless a first line names units"}),
        ),
        (
            "energy.duty",
            json!({"type": "string", "maxLength": Job::MOST_DUTY,
            "description": "hours of a year at each flow: a row a line, flow in gpm and hours, unless a first line names units"}),
        ),
        (
            "prices.book",
            json!({"type": "string", "maxLength": MOST_BYTES,
            "description": "the price book, a table in text: a row for each price, columns by name; empty: the built-in one"}),
        ),
        ("prices.source", json!({"type": "string"})),
    ];
    all.extend(power_schemas());
    for part in Part::ALL {
        all.push((pipe_path(part, 0), words(&Series::ALL.map(|(_, key)| key))));
        all.push((pipe_path(part, 1), json!({"type": ["string", "null"], "description": "nominal size, as 1-1/2"})));
    }
    all
}

fn way_schema() -> Value {
    json!({"type": ["string", "null"],
    "description": format!("a kind of equipment, or '{OWN}' and the name of a family")})
}

fn power_schemas() -> Vec<(&'static str, Value)> {
    let boolean = || json!({"type": ["boolean", "null"]});
    vec![
        ("supply.place", words(&Place::ALL)),
        ("supply.shaded", boolean()),
        ("supply.enclosure", words(&TABLE.each_ref().map(|row| row.name))),
        ("supply.grounding", words(&["midpoint", "one_line"])),
        ("supply.metal", words(&["copper", "aluminum"])),
        ("supply.build", words(&["plastic_conduit", "steel_conduit", "flat_jacketed", "twisted"])),
        ("supply.most_sets", json!({"type": ["integer", "null"], "minimum": 1, "maximum": Sets::LIMIT})),
        ("supply.three_phase", words(&["low", "high"])),
        ("supply.hookup", words(&["as_built", "double_delta", "two_lines"])),
        (
            "supply.families",
            json!({"type": "string", "maxLength": Job::MOST_FAMILIES,
            "description": "the user's own equipment, a table in text: a row for each frame, columns by name"}),
        ),
        ("supply.way", way_schema()),
        ("prices.way_240", way_schema()),
        ("prices.way_480", way_schema()),
        ("cable.remedy", words(&["none_needed", "output_reactor", "dv_dt_filter", "sine_filter"])),
        ("motor.inverter_duty", boolean()),
    ]
}
