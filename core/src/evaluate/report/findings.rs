//! A finding as JSON: its code, what it is about, what is there, and what it is held to.

use super::{amps, feet, figure, horsepower, volts};
use crate::evaluate::NEAR_BOTTOM_FEET;
use crate::finding::Finding;
use crate::pump::curve::CurveWarning;
use crate::quantity::{Unit, in_feet_per_second, in_gpm, in_hertz, in_kilovolt_amperes, in_meters, in_psi};
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
        Finding::CableNoSize { way }
        | Finding::GroundWireGrew { way }
        | Finding::PriceMissing { way }
        | Finding::NameplateDisagrees { way, .. } => {
            vec![("way", json!(way))]
        }
        Finding::BeyondUsual { field, usual } => vec![("field", json!(field.path())), ("usual", json!(usual))],
        Finding::ReadingStop { reading } => vec![("reading", json!(reading))],
        Finding::AssumptionDecides { field } => vec![("field", json!(field.path()))],
        Finding::DemandNotMet { by, .. } => vec![("by", json!(by))],
        Finding::PipeFast { part, .. }
        | Finding::PipeOverRating { part, .. }
        | Finding::SurgeOverRating { part, .. } => vec![("part", json!(part))],
        Finding::CurveOdd { warning } => vec![("why", json!(odd(warning)))],
        Finding::EnclosureWrong { enclosure, lacks, plainest } => {
            vec![
                ("lacks", json!(format!("{lacks:?}"))),
                ("enclosure", json!(enclosure.row().name)),
                ("plainest", json!(plainest.map(|kind| kind.row().name))),
            ]
        }
        Finding::SupplyDropHigh { whole, .. } => vec![("whole", json!(whole))],
        Finding::LeadNeedsFilter { remedy, .. } => vec![("remedy", json!(remedy))],
        Finding::LeadPeakHigh { remedy, .. } => vec![("remedy", json!(remedy))],
        Finding::StartDipHigh { at_motor, .. } => vec![("at", json!(if at_motor { "motor" } else { "pole" }))],
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
        Finding::DutyNotMet { flow } => vec![("actual", gpm(flow))],
        Finding::DayAverage { flow } => vec![("actual", gpm(flow))],
        Finding::RunsByItself { head } => vec![("actual", feet(head))],
        Finding::CoolsAbove { least_flow } => vec![("limit", gpm(least_flow))],
        Finding::PipeOverRating { pressure, rating, .. } | Finding::SurgeOverRating { pressure, rating, .. } => {
            pair(psi(pressure), psi(rating))
        }
        Finding::DeadheadUnknown { rating } => vec![("limit", psi(rating))],
        Finding::SetpointOverRating { setpoint, rating } => pair(psi(setpoint), psi(rating)),
        Finding::HousePressureHigh { pressure, limit } => pair(psi(pressure), psi(limit)),
        Finding::MotorDoesNotFit { inner, outer } => pair(feet(inner), feet(outer)),
        Finding::FarFromBest { share } => vec![("actual", figure(100.0 * share, Unit::Percent))],
        Finding::NpshShort { available, required } => pair(feet(available), feet(required)),
        Finding::DeadheadOverRating { gauge, rating } => pair(psi(gauge), psi(rating)),
        Finding::MotorCoolingLow { speed: actual, advised, .. } => pair(speed(actual), speed(advised)),
        Finding::MotorOverloaded { shaft, rated, .. } => pair(horsepower(shaft), horsepower(rated)),
        Finding::SpeedBandNarrow { lowest, most, .. } => pair(hertz(lowest), hertz(most)),
        Finding::SensorRange { setpoint, span } => pair(psi(setpoint), psi(span)),
        Finding::PipeFast { velocity, usual, .. } => pair(speed(velocity), speed(usual)),
        Finding::PumpInScreen { top } => vec![("limit", feet(top))],
        Finding::NameplateDisagrees { expected, nameplate, .. } => pair(amps(nameplate), amps(expected)),
        _ => of_power(finding),
    }
}

/// The numbers of what is found about the ways to run the motor.
fn of_power(finding: &Finding) -> Told {
    let pair = |actual, limit| vec![("actual", actual), ("limit", limit)];
    let share = |share: f64| figure(100.0 * share, Unit::Percent);
    let hertz = |frequency| figure(in_hertz(frequency), Unit::Hertz);
    let kva = |power| figure(in_kilovolt_amperes(power), Unit::KilovoltAmpere);
    match *finding {
        Finding::SupplyNotTaken { supply } => vec![("actual", volts(supply))],
        Finding::DriveAmpsShort { derated, required } => pair(amps(derated), amps(required)),
        Finding::DriveSizeShort { most, motor } => pair(horsepower(most), horsepower(motor)),
        Finding::HeatOrAltitude { ambient, altitude, left } => vec![
            ("ambient", figure(ambient.0, Unit::DegreeCelsius)),
            ("altitude", figure(in_meters(altitude), Unit::Meter)),
            ("actual", json!(left.map(share))),
        ],
        Finding::MotorVoltsLow { share: of, runs_out, needed } => {
            vec![("actual", share(of)), ("runs_out", hertz(runs_out)), ("needed", hertz(needed))]
        }
        Finding::LeadNeedsFilter { peak, limit, .. } | Finding::LeadPeakHigh { peak, limit, .. } => {
            pair(volts(peak), volts(limit))
        }
        Finding::PulsesCanMeet { twice } => vec![("actual", volts(twice))],
        Finding::CoolerWaterIdle { warm, most } => pair(feet(warm), feet(most)),
        Finding::SupplyDropHigh { share: of, limit, .. } => pair(share(of), share(limit)),
        Finding::TransformerLoaded { share: of } => vec![("actual", share(of))],
        Finding::UtilityPassed { current, limit } => pair(amps(current), amps(limit)),
        Finding::StartDipHigh { dip, limit, .. } => pair(share(dip), share(limit)),
        Finding::HarmonicsOver { distortion, limit } => pair(share(distortion), share(limit)),
        Finding::FaultOverSccr { fault, marked } => pair(amps(fault), amps(marked)),
        Finding::DeviceProvisional { device } => vec![("actual", amps(device))],
        Finding::DeviceSmall { device, least } => pair(amps(device), amps(least)),
        Finding::DeviceLarge { device, marked } => pair(amps(device), amps(marked)),
        Finding::DeviceOver { device, most } => pair(amps(device), amps(most)),
        Finding::FaultAssumed { most } => vec![("actual", amps(most))],
        Finding::MotorLight { load } => vec![("actual", share(load))],
        Finding::GeneratorShort { needed, left } => pair(kva(left), kva(needed)),
        Finding::UnbalanceDerates { shaft, left, .. } => pair(horsepower(shaft), horsepower(left)),
        _ => Vec::new(),
    }
}
