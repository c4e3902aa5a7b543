//! One reading against what the job predicts.

use super::advice::Advice;
use super::insulation::{LEAST_AT_40, LEAST_IN_WELL, MOST_LOST, STOP, at_40};
use super::readings::{Judged, Predicted};
use super::transducer::signal;
use crate::finding::Severity;
use crate::job::Reading;
use crate::job::record::Visit;
use crate::quantity::{Celsius, Entry, in_amperes, in_ohms, ohms, psi};

/// Shares that a reading may lie off what is predicted, or off nominal, before it is looked into: of the supply's volts by
/// ANSI C84.1 range A, the others common practice, no single source.
const SUPPLY_BAND: f64 = 0.05;
const SAG_MORE: f64 = 0.02;
const AMPS_OFF: f64 = 0.15;
const WATER_OFF: f64 = 0.10;
const PRESSURE_OFF: f64 = 0.05;
/// Hz, psi, mA.
const FREQUENCY_OFF: f64 = 3.0;
const PRECHARGE_OFF: f64 = 2.0;
const SIGNAL_OFF: f64 = 0.3;

/// A verdict: what was predicted, the limit that counts, how grave, what to look at.
struct Said {
    predicted: Option<f64>,
    limit: Option<f64>,
    severity: Option<Severity>,
    advice: &'static [Advice],
}

impl Said {
    fn fine(predicted: Option<f64>) -> Self {
        Self { predicted, limit: None, severity: None, advice: &[] }
    }
    fn at(self, limit: f64, severity: Severity, advice: &'static [Advice]) -> Self {
        Self { limit: Some(limit), severity: Some(severity), advice, ..self }
    }
}

/// What the job predicts of a reading, by what else was read on the visit.
pub(super) fn expected(reading: Reading, visit: Option<&Visit>, predicted: &Predicted) -> Option<f64> {
    let read = |reading| visit.and_then(|visit| visit.value(reading));
    match reading {
        Reading::InsulationAfter => read(Reading::InsulationBefore),
        Reading::SupplyIdle => predicted.supply,
        Reading::SupplyLoaded => {
            let idle = read(Reading::SupplyIdle).or(predicted.supply)?;
            Some(idle * (1.0 - predicted.sag_share?))
        }
        Reading::SupplyAmps => predicted.supply_amps,
        Reading::Amps1 | Reading::Amps2 | Reading::Amps3 => predicted.running,
        Reading::Volts12 | Reading::Volts23 | Reading::Volts31 => predicted.motor_volts,
        Reading::StaticLevel => predicted.static_level,
        Reading::PumpingLevel => predicted.pumping_level,
        Reading::Flow => predicted.flow,
        Reading::Pressure => predicted.setpoint,
        Reading::Frequency => predicted.frequency,
        Reading::Precharge => predicted.precharge,
        Reading::Signal => {
            let pressure = read(Reading::Pressure).or(predicted.setpoint)?;
            Some(in_amperes(signal(psi(pressure), psi(predicted.span?)).ok()?) * 1000.0)
        }
        Reading::InsulationBefore | Reading::WindingTemperature => None,
    }
}

/// The judgement of one reading; nothing where there is no figure.
pub(super) fn one(reading: Reading, visit: &Visit, predicted: &Predicted) -> Option<Judged> {
    let value = visit.value(reading)?;
    let wanted = expected(reading, Some(visit), predicted);
    let said = match reading {
        Reading::InsulationBefore => insulation(value, visit),
        Reading::InsulationAfter => in_the_well(value, wanted),
        Reading::SupplyIdle => idle(value, wanted),
        Reading::SupplyLoaded => loaded(value, wanted, visit, predicted),
        Reading::SupplyAmps => over(value, wanted, predicted.supply_most),
        Reading::Amps1 | Reading::Amps2 | Reading::Amps3 => amps(value, wanted, predicted),
        Reading::WindingTemperature | Reading::Volts12 | Reading::Volts23 | Reading::Volts31 => Said::fine(wanted),
        _ => water(reading, value, wanted, predicted),
    };
    let entry = |value: f64| Entry::new(value, reading.unit());
    Some(Judged {
        reading,
        value: entry(value),
        predicted: said.predicted.map(entry),
        limit: said.limit.map(entry),
        severity: said.severity,
        advice: said.advice,
    })
}

const MEGOHM: f64 = 1e6;

/// Insulation of the motor before it is lowered, by the standard's least for a winding at 40 °C.
fn insulation(value: f64, visit: &Visit) -> Said {
    use Advice as A;
    let warm = visit.value(Reading::WindingTemperature);
    let at = warm.and_then(|degrees| at_40(ohms(value * MEGOHM), Celsius((degrees - 32.0) / 1.8)).ok());
    let at = at.map_or(value, |corrected| in_ohms(corrected) / MEGOHM);
    let said = Said::fine(None);
    let (stop, least) = (STOP / MEGOHM, LEAST_AT_40 / MEGOHM);
    // Equality passes.
    if value < stop {
        return said.at(stop, Severity::Stop, &[A::LockOff, A::Splice, A::LeadHurt, A::Winding, A::TestApart]);
    }
    if at < least {
        return said.at(least, Severity::Caution, &[A::TestAgain, A::Splice, A::Winding, A::TestApart]);
    }
    said
}

/// Insulation of motor, splice and cable together in the water, by what is usual for new ones there.
fn in_the_well(value: f64, before: Option<f64>) -> Said {
    use Advice as A;
    let said = Said::fine(before);
    let (stop, least) = (STOP / MEGOHM, LEAST_IN_WELL / MEGOHM);
    if value < stop {
        return said.at(stop, Severity::Stop, &[A::LockOff, A::Splice, A::LeadHurt, A::Winding, A::TestApart]);
    }
    if value < least {
        return said.at(least, Severity::Caution, &[A::TestAgain, A::Splice, A::LeadHurt, A::TestApart]);
    }
    match before.map(|before| before * (1.0 - MOST_LOST)) {
        Some(kept) if value < kept => said.at(kept, Severity::Caution, &[A::Splice, A::LeadHurt, A::TestApart]),
        _ => said,
    }
}

fn idle(value: f64, nominal: Option<f64>) -> Said {
    use Advice as A;
    let Some(nominal) = nominal else { return Said::fine(None) };
    let (low, high) = (nominal * (1.0 - SUPPLY_BAND), nominal * (1.0 + SUPPLY_BAND));
    let said = Said::fine(Some(nominal));
    if value < low {
        said.at(low, Severity::Caution, &[A::Utility, A::Transformer, A::LooseConnection])
    } else if value > high {
        said.at(high, Severity::Caution, &[A::Utility])
    } else {
        said
    }
}

/// Volts while the pump runs: no lower than the sag that is worked out, from the volts that were read at rest.
fn loaded(value: f64, wanted: Option<f64>, visit: &Visit, predicted: &Predicted) -> Said {
    use Advice as A;
    let said = Said::fine(wanted);
    let idle = visit.value(Reading::SupplyIdle).or(predicted.supply);
    let Some((wanted, idle)) = wanted.zip(idle) else { return said };
    let least = wanted - SAG_MORE * idle;
    if value < least {
        said.at(least, Severity::Caution, &[A::LooseConnection, A::Conductors, A::Transformer, A::Utility])
    } else {
        said
    }
}

fn over(value: f64, usual: Option<f64>, most: Option<f64>) -> Said {
    use Advice as A;
    let said = Said::fine(usual);
    match most {
        Some(most) if value > most => said.at(most, Severity::Caution, &[A::LowVolts, A::Overload, A::Instrument]),
        _ => said,
    }
}

/// Amperes of a line of the motor: over the service-factor amperes nobody goes on.
fn amps(value: f64, wanted: Option<f64>, predicted: &Predicted) -> Said {
    use Advice as A;
    let said = Said::fine(wanted);
    if let Some(most) = predicted.most_amps.filter(|most| value > *most) {
        return said.at(most, Severity::Stop, &[A::LockOff, A::Connection, A::Overload, A::LowVolts, A::Rotation]);
    }
    let Some(running) = wanted else { return said };
    let (low, high) = (running * (1.0 - AMPS_OFF), running * (1.0 + AMPS_OFF));
    if value > high {
        said.at(high, Severity::Caution, &[A::Overload, A::LowVolts, A::Instrument])
    } else if value < low {
        said.at(low, Severity::Caution, &[A::Valve, A::WellFalls, A::Rotation, A::Instrument])
    } else {
        said
    }
}

fn water(reading: Reading, value: f64, wanted: Option<f64>, predicted: &Predicted) -> Said {
    match reading {
        Reading::StaticLevel | Reading::PumpingLevel => level(value, wanted, predicted),
        Reading::Flow => flow(value, wanted),
        Reading::Pressure => pressure(value, predicted),
        Reading::Frequency => frequency(value, predicted),
        Reading::Precharge => near(value, wanted, PRECHARGE_OFF, &[Advice::TankAir, Advice::Instrument]),
        _ => near(value, wanted, SIGNAL_OFF, &[Advice::Transducer, Advice::Instrument, Advice::Settings]),
    }
}

fn near(value: f64, wanted: Option<f64>, off: f64, advice: &'static [Advice]) -> Said {
    let said = Said::fine(wanted);
    match wanted {
        Some(wanted) if value < wanted - off => said.at(wanted - off, Severity::Caution, advice),
        Some(wanted) if value > wanted + off => said.at(wanted + off, Severity::Caution, advice),
        _ => said,
    }
}

/// A level of the water: at the pump nobody goes on, and near it or far below what is predicted it is looked into.
fn level(value: f64, wanted: Option<f64>, predicted: &Predicted) -> Said {
    use Advice as A;
    let said = Said::fine(wanted);
    let advice: &[Advice] = &[A::WellFalls, A::Screen, A::LessFlow];
    if let Some(setting) = predicted.setting {
        if value >= setting {
            return said.at(setting, Severity::Stop, &[A::LockOff, A::LessFlow, A::WellFalls, A::Screen]);
        }
        let least = setting - predicted.submergence.unwrap_or(0.0);
        if value > least {
            return said.at(least, Severity::Caution, advice);
        }
    }
    match wanted.map(|wanted| wanted * (1.0 + WATER_OFF)) {
        Some(most) if value > most => said.at(most, Severity::Caution, advice),
        _ => said,
    }
}

fn flow(value: f64, wanted: Option<f64>) -> Said {
    use Advice as A;
    let said = Said::fine(wanted);
    match wanted.map(|flow| flow * (1.0 - WATER_OFF)) {
        Some(least) if value < least => {
            said.at(least, Severity::Caution, &[A::Valve, A::Rotation, A::Leak, A::Worn, A::WellFalls])
        }
        _ => said,
    }
}

/// Pressure at the gauge: over the least rating nobody goes on.
fn pressure(value: f64, predicted: &Predicted) -> Said {
    use Advice as A;
    let said = Said::fine(predicted.setpoint);
    if let Some(rating) = predicted.rating.filter(|rating| value > *rating) {
        return said.at(rating, Severity::Stop, &[A::LockOff, A::Settings, A::Transducer, A::Valve]);
    }
    let Some(setpoint) = predicted.setpoint.filter(|_| predicted.held) else { return said };
    near_share(said, value, setpoint)
}

fn near_share(said: Said, value: f64, wanted: f64) -> Said {
    use Advice as A;
    let (low, high) = (wanted * (1.0 - PRESSURE_OFF), wanted * (1.0 + PRESSURE_OFF));
    if value < low {
        said.at(low, Severity::Caution, &[A::Settings, A::Leak, A::Worn, A::Transducer])
    } else if value > high {
        said.at(high, Severity::Caution, &[A::Settings, A::Transducer, A::Instrument])
    } else {
        said
    }
}

fn frequency(value: f64, predicted: &Predicted) -> Said {
    use Advice as A;
    let said = Said::fine(predicted.frequency);
    if let Some(least) = predicted.least_frequency.filter(|least| value < *least) {
        return said.at(least, Severity::Caution, &[A::Settings, A::LessFlow]);
    }
    match predicted.frequency.map(|frequency| frequency + FREQUENCY_OFF) {
        Some(most) if value > most => said.at(most, Severity::Caution, &[A::Worn, A::Leak, A::WellFalls]),
        _ => said,
    }
}
