//! A finding as JSON: its code, what it is about, what is there, and what it is held to.

use super::{amps, feet, figure, horsepower};
use crate::evaluate::NEAR_BOTTOM_FEET;
use crate::finding::Finding;
use crate::pump::curve::CurveWarning;
use crate::quantity::{Unit, in_feet_per_second, in_gpm, in_hertz, in_psi};
use serde_json::{Map, Value, json};

pub(super) fn finding(finding: &Finding) -> Value {
    let mut told = Map::new();
    for (name, value) in about(finding).into_iter().chain(numbers(finding)) {
        told.insert(name.to_owned(), value);
    }
    for name in ["way", "field", "usual", "actual", "limit"] {
        told.entry(name).or_insert(Value::Null);
    }
    told.insert("code".into(), json!(finding.code()));
    told.insert("severity".into(), json!(finding.severity()));
    told.insert("source".into(), json!(finding.source()));
    Value::Object(told)
}

type Told = Vec<(&'static str, Value)>;

fn about(finding: &Finding) -> Told {
    match *finding {
        Finding::CableNoSize { way } | Finding::GroundWireGrew { way } | Finding::NameplateDisagrees { way, .. } => {
            vec![("way", json!(way))]
        }
        Finding::BeyondUsual { field, usual } => vec![("field", json!(field.path())), ("usual", json!(usual))],
        Finding::DemandNotMet { by, .. } => vec![("by", json!(by))],
        Finding::PipeFast { part, .. } | Finding::PipeOverRating { part, .. } => vec![("part", json!(part))],
        Finding::CurveOdd { warning } => vec![("why", json!(odd(warning)))],
        _ => Vec::new(),
    }
}

fn odd(warning: CurveWarning) -> &'static str {
    match warning {
        CurveWarning::Droop { .. } => "droop",
        CurveWarning::NoShutOff { .. } => "no_shut_off",
        CurveWarning::BestEfficiencyUnlikely { .. } => "best_efficiency_unlikely",
        CurveWarning::EfficiencyAgainstPower { .. } => "efficiency_against_power",
    }
}

fn numbers(finding: &Finding) -> Told {
    let gpm = |flow| figure(in_gpm(flow), Unit::GallonPerMinute);
    let psi = |pressure| figure(in_psi(pressure), Unit::PoundPerSquareInch);
    let speed = |velocity| figure(in_feet_per_second(velocity), Unit::FootPerSecond);
    let hertz = |frequency| figure(in_hertz(frequency), Unit::Hertz);
    let pair = |actual, limit| vec![("actual", actual), ("limit", limit)];
    match *finding {
        Finding::PumpingLevelAtPump { submergence, minimum } => pair(feet(submergence), feet(minimum)),
        Finding::PumpNearBottom { off_bottom } => pair(feet(off_bottom), figure(NEAR_BOTTOM_FEET, Unit::Foot)),
        Finding::LevelBelowBottom { level, bottom } => pair(feet(level), feet(bottom)),
        Finding::DemandNotMet { asked, gives, .. } => pair(gpm(asked), gpm(gives)),
        Finding::PumpBeyondCurve { most } => vec![("limit", gpm(most))],
        Finding::DayAverage { flow } => vec![("actual", gpm(flow))],
        Finding::CoolsAbove { least_flow } => vec![("limit", gpm(least_flow))],
        Finding::PipeOverRating { pressure, rating, .. } => pair(psi(pressure), psi(rating)),
        Finding::MotorDoesNotFit { inner, outer } => pair(feet(inner), feet(outer)),
        Finding::FarFromBest { share } => vec![("actual", figure(100.0 * share, Unit::Percent))],
        Finding::NpshShort { available, required } => pair(feet(available), feet(required)),
        Finding::DeadheadOverRating { gauge, rating } => pair(psi(gauge), psi(rating)),
        Finding::MotorCoolingLow { speed: actual, advised, .. } => pair(speed(actual), speed(advised)),
        Finding::MotorOverloaded { shaft, rated, .. } => pair(horsepower(shaft), horsepower(rated)),
        Finding::SpeedBandNarrow { lowest, most, .. } => pair(hertz(lowest), hertz(most)),
        Finding::PipeFast { velocity, usual, .. } => pair(speed(velocity), speed(usual)),
        Finding::PumpInScreen { top } => vec![("limit", feet(top))],
        Finding::NameplateDisagrees { expected, nameplate, .. } => pair(amps(nameplate), amps(expected)),
        _ => Vec::new(),
    }
}
