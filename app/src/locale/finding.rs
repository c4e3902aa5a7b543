//! Findings in sentences: what it is, and what to do.

use super::finding_power::of_power;
use super::quantity::{depth_in_tenths as depth, entry_text, percent, power};
use super::water::{diameter, flow, frequency, head, pressure, shaft, velocity};
use super::{amperes, words};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::pump::curve::CurveWarning;
use wellwright_core::quantity::{Pressure, UnitSystem};

/// A finding in a sentence.
#[must_use]
pub fn finding_text(finding: &Finding, system: UnitSystem) -> String {
    let (say, way_name) = (&words().say, words().answer.way);
    match finding {
        Finding::CableNoSize { way } => (say.no_size)(way_name(*way)),
        Finding::AluminumInWell => say.aluminum_in_well.to_owned(),
        Finding::GroundWireGrew { way } => (say.ground_grew)(way_name(*way)),
        Finding::BeyondUsual { field, usual } => {
            (say.beyond_usual)((words().fields.label)(*field), &entry_text(*usual, system))
        }
        _ => {
            of_levels(finding, system).or_else(|| of_power(finding, system)).unwrap_or_else(|| of_pump(finding, system))
        }
    }
}

fn of_levels(finding: &Finding, system: UnitSystem) -> Option<String> {
    let (say, words) = (&words().say, &words().found);
    let stop = finding.severity() == Severity::Stop;
    Some(match finding {
        Finding::PumpingLevelAtPump { submergence, .. } if stop => {
            (say.pump_dry)(&depth(submergence.abs(), system).text())
        }
        Finding::PumpingLevelAtPump { submergence, minimum } => {
            (say.little_water)(&depth(*submergence, system).text(), &depth(*minimum, system).text())
        }
        Finding::LevelBelowBottom { level, bottom } => {
            (say.level_below_bottom)(&depth(*level, system).text(), &depth(*bottom, system).text())
        }
        Finding::PumpNearBottom { .. } if stop => say.pump_below_bottom.to_owned(),
        Finding::PumpNearBottom { off_bottom } => (say.near_bottom)(&depth(*off_bottom, system).text()),
        Finding::PumpInScreen { top } => (words.in_screen)(&depth(*top, system).text()),
        Finding::DemandNotMet { asked, gives, by } => {
            (words.demand_not_met)(*by, &flow(*gives, system).text(), &flow(*asked, system).text())
        }
        Finding::DayAverage { flow: average } => (words.day_average)(&flow(*average, system).text()),
        Finding::RunsByItself { head: total } => (words.runs_by_itself)(&head(*total, system).text()),
        Finding::BeyondFormulas => words.beyond_formulas.to_owned(),
        _ => return None,
    })
}

fn of_pump(finding: &Finding, system: UnitSystem) -> String {
    let (words, way_short) = (&words().found, words().answer.way_short);
    match finding {
        Finding::PumpBeyondCurve { most } => (words.beyond_curve)(&flow(*most, system).text()),
        Finding::CurveUnusable => words.curve_unusable.to_owned(),
        Finding::CurveOdd { warning } => odd(warning),
        Finding::FarFromBest { share } => (words.far_from_best)(&percent(*share, 0).text()),
        Finding::NpshShort { available, required } => {
            (words.npsh_short)(&depth(*available, system).text(), &depth(*required, system).text())
        }
        Finding::MotorDoesNotFit { inner, outer } => {
            (words.does_not_fit)(&diameter(*inner, system).text(), &diameter(*outer, system).text())
        }
        Finding::CoolsAbove { least_flow } => (words.cools_above)(&flow(*least_flow, system).text()),
        Finding::MotorCoolingLow { speed, advised, least_flow, sleeve: None } => (words.cooling_low_no_sleeve)(
            &velocity(*speed, system).text(),
            &velocity(*advised, system).text(),
            &flow(*least_flow, system).text(),
        ),
        Finding::MotorCoolingLow { speed, advised, least_flow, sleeve: Some(sleeve) } => (words.cooling_low)(
            &velocity(*speed, system).text(),
            &velocity(*advised, system).text(),
            &flow(*least_flow, system).text(),
            &diameter(*sleeve, system).text(),
        ),
        Finding::MotorOverloaded { shaft: most, rated, beyond_service_factor } => {
            let say = if *beyond_service_factor { words.overloaded } else { words.in_service_factor };
            say(&shaft(*most, system).text(), &power(*rated, system).text())
        }
        Finding::SpeedBandNarrow { lowest, least, .. } if lowest < least => {
            (words.band_low)(&frequency(*lowest).text(), &frequency(*least).text())
        }
        Finding::SpeedBandNarrow { lowest, most, .. } => {
            (words.band_narrow)(&frequency(*lowest).text(), &frequency(*most).text())
        }
        Finding::PipeFast { part, velocity: speed, usual } => {
            (words.pipe_fast)(*part, &velocity(*speed, system).text(), &velocity(*usual, system).text())
        }
        Finding::NameplateDisagrees { way, expected, nameplate } => {
            (words.nameplate_disagrees)((way_short)(*way), &amperes(*nameplate).text(), &amperes(*expected).text())
        }
        _ => of_pressure(finding, system).unwrap_or_default(),
    }
}

fn of_pressure(finding: &Finding, system: UnitSystem) -> Option<String> {
    let words = &words().found;
    let told = |held: &Pressure| pressure(*held, system).text();
    Some(match finding {
        Finding::DeadheadOverRating { gauge, rating } => (words.over_rating)(&told(gauge), &told(rating)),
        Finding::DeadheadUnknown { rating } => (words.dead_head_unknown)(&told(rating)),
        Finding::SetpointOverRating { setpoint, rating } => {
            (words.setpoint_over_rating)(&told(setpoint), &told(rating))
        }
        Finding::HousePressureHigh { pressure, limit } => (words.house_pressure)(&told(pressure), &told(limit)),
        Finding::PipeOverRating { part, pressure, rating } => {
            (words.pipe_over_rating)((words.pipe)(*part), &told(pressure), &told(rating))
        }
        Finding::SurgeOverRating { part, pressure, rating } => {
            (words.surge_over_rating)((words.pipe)(*part), &told(pressure), &told(rating))
        }
        _ => return None,
    })
}

fn odd(warning: &CurveWarning) -> String {
    let words = &words().found;
    match warning {
        CurveWarning::Droop { .. } => words.droop.to_owned(),
        CurveWarning::NoShutOff { .. } => words.no_shut_off.to_owned(),
        CurveWarning::BestEfficiencyUnlikely { best } => (words.best_unlikely)(&percent(*best, 0).text()),
        CurveWarning::EfficiencyAgainstPower { point, .. } => (words.efficiency_against_power)(point + 1),
        _ => String::new(),
    }
}
