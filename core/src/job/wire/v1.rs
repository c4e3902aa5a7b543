//! Version 1 of the job file. Frozen once released: never change a name or a meaning here, add a version instead.

use super::WireError;
use crate::cable::reactance::Build;
use crate::job::{Choices, Field, Job, Sets};
use crate::pump::motor::MotorKind;
use crate::quantity::{Entry, Unit, UnitSystem};
use crate::standards::ampacity::Rating;
use crate::standards::conductor::Metal;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value, json};

#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields)]
struct JobV1 {
    schema: u64,
    #[serde(default)]
    name: String,
    #[serde(default)]
    note: String,
    #[serde(default)]
    demo: bool,
    #[serde(default)]
    site: SiteV1,
    #[serde(default)]
    motor: MotorV1,
    #[serde(default)]
    cable: CableV1,
    #[serde(default)]
    prices: PricesV1,
}

/// A figure: `null` where nothing was entered.
type Figure = Option<Entry>;

#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields, default)]
struct SiteV1 {
    pump_setting: Figure,
    static_level: Figure,
    drawdown: Figure,
    well_depth: Figure,
    minimum_submergence: Figure,
    surface_run: Figure,
    ambient: Figure,
}

#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields, default)]
struct MotorV1 {
    kind: Option<MotorKind>,
    power: Figure,
    nameplate_amps_230: Figure,
    nameplate_amps_460: Figure,
    power_factor: Figure,
    efficiency: Figure,
}

#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields, default)]
struct CableV1 {
    metal: Option<Metal>,
    build: Option<Build>,
    insulation: Option<Rating>,
    terminals_marked_75: Option<bool>,
    most_sets: Option<u8>,
    allowed_drop: Figure,
    device: Figure,
}

#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields, default)]
struct PricesV1 {
    source: String,
    cable_fixed: Figure,
    cable_metal: Figure,
    extra_equipment: Figure,
}

impl JobV1 {
    /// The slot of a field.
    fn slot(&mut self, field: Field) -> &mut Figure {
        match field {
            Field::PumpSetting => &mut self.site.pump_setting,
            Field::StaticLevel => &mut self.site.static_level,
            Field::Drawdown => &mut self.site.drawdown,
            Field::WellDepth => &mut self.site.well_depth,
            Field::MinimumSubmergence => &mut self.site.minimum_submergence,
            Field::SurfaceRun => &mut self.site.surface_run,
            Field::Ambient => &mut self.site.ambient,
            Field::MotorPower => &mut self.motor.power,
            Field::NameplateAmps230 => &mut self.motor.nameplate_amps_230,
            Field::NameplateAmps460 => &mut self.motor.nameplate_amps_460,
            Field::MotorPowerFactor => &mut self.motor.power_factor,
            Field::MotorEfficiency => &mut self.motor.efficiency,
            Field::AllowedDrop => &mut self.cable.allowed_drop,
            Field::DeviceAmps => &mut self.cable.device,
            Field::CableFixed => &mut self.prices.cable_fixed,
            Field::CableMetal => &mut self.prices.cable_metal,
            Field::ExtraEquipment => &mut self.prices.extra_equipment,
        }
    }
}

/// Where a list stands, or an object that is neither the file, a group nor a figure. Version 1 has none of these, yet
/// the deserializer would take a list for an object's values in order and an object for a word.
fn misplaced(value: &Value, path: &str) -> Option<String> {
    match value {
        Value::Array(_) => Some(path.to_owned()),
        Value::Object(members) => {
            if path.contains('.') && Field::ALL.iter().all(|field| field.path() != path) {
                return Some(path.to_owned());
            }
            members.iter().find_map(|(name, member)| {
                misplaced(member, &if path.is_empty() { name.clone() } else { format!("{path}.{name}") })
            })
        }
        _ => None,
    }
}

pub(super) fn read(value: &Value) -> Result<Job, WireError> {
    if let Some(path) = misplaced(value, "") {
        return Err(WireError::BadField { path, detail: "a list or an object has no place here".into() });
    }
    let mut file: JobV1 = serde_path_to_error::deserialize(value)
        .map_err(|error| WireError::BadField { path: error.path().to_string(), detail: error.inner().to_string() })?;
    let most_sets = file.cable.most_sets.map(sets).transpose()?;
    let mut job = Job::default();
    job.name = std::mem::take(&mut file.name);
    job.note = std::mem::take(&mut file.note);
    job.demo = file.demo;
    job.price_source = std::mem::take(&mut file.prices.source);
    job.choices = Choices {
        motor_kind: file.motor.kind,
        metal: file.cable.metal,
        build: file.cable.build,
        insulation: file.cable.insulation,
        terminals_marked_75: file.cable.terminals_marked_75,
        most_sets,
    };
    for field in Field::ALL {
        job.set(field, file.slot(field).take());
    }
    Ok(job)
}

fn sets(given: u8) -> Result<Sets, WireError> {
    Sets::new(given).ok_or_else(|| WireError::BadField {
        path: "cable.most_sets".into(),
        detail: format!("{given} is not 1 to {}", Sets::LIMIT),
    })
}

pub(super) fn write(job: &Job) -> Value {
    let mut file =
        JobV1 { schema: 1, name: job.name.clone(), note: job.note.clone(), demo: job.demo, ..JobV1::default() };
    file.prices.source.clone_from(&job.price_source);
    file.motor.kind = job.choices.motor_kind;
    file.cable.metal = job.choices.metal;
    file.cable.build = job.choices.build;
    file.cable.insulation = job.choices.insulation;
    file.cable.terminals_marked_75 = job.choices.terminals_marked_75;
    file.cable.most_sets = job.choices.most_sets.map(Sets::get);
    for field in Field::ALL {
        *file.slot(field) = job.get(field).filter(|entry| entry.value.is_finite());
    }
    serde_json::to_value(&file).unwrap_or(Value::Null)
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
        for unit in [UnitSystem::Us, UnitSystem::Si].map(|system| system.unit(field.kind())) {
            if !units.contains(&unit) {
                units.push(unit);
            }
        }
        add(field.path(), figure_schema(&units, accepted.min, accepted.max));
    }
    let words = |words: &[Value]| json!({"enum": words.iter().cloned().chain([Value::Null]).collect::<Vec<_>>()});
    add("motor.kind", words(&[json!("submersible"), json!("surface")]));
    add("cable.metal", words(&[json!("copper"), json!("aluminum")]));
    add(
        "cable.build",
        words(&[json!("plastic_conduit"), json!("steel_conduit"), json!("flat_jacketed"), json!("twisted")]),
    );
    add("cable.insulation", words(&[json!("60 degC"), json!("75 degC"), json!("90 degC")]));
    add("cable.terminals_marked_75", json!({"type": ["boolean", "null"]}));
    add("cable.most_sets", json!({"type": ["integer", "null"], "minimum": 1, "maximum": Sets::LIMIT}));
    add("prices.source", json!({"type": "string"}));
    let mut properties = json!({
        "schema": {"const": 1},
        "name": {"type": "string"},
        "note": {"type": "string"},
        "demo": {"type": "boolean", "description": "true for invented jobs"},
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
