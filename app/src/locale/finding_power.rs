//! Findings about the supply and the ways to run the motor, in sentences.

use super::power::{device as rating, kiloamperes, kilovolt_amperes, peak_volts, temperature};
use super::quantity::{depth, percent, power};
use super::water::{frequency, pressure, shaft};
use super::{amperes, words};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::quantity::UnitSystem;

/// A finding in a sentence; nothing where it is about something else.
pub(super) fn of_power(finding: &Finding, system: UnitSystem) -> Option<String> {
    let words = &words().found_power;
    let stop = finding.severity() == Severity::Stop;
    Some(match finding {
        Finding::SupplyNotTaken { supply } => (words.supply_not_taken)(&peak_volts(*supply).text()),
        Finding::DriveAmpsShort { derated, required } => {
            (words.amps_short)(&amperes(*derated).text(), &amperes(*required).text())
        }
        Finding::DriveSizeShort { most, motor } => {
            (words.size_short)(&power(*most, system).text(), &power(*motor, system).text())
        }
        Finding::HeatOrAltitude { ambient, altitude, left } => {
            let (ambient, altitude) = (temperature(*ambient, system).text(), depth(*altitude, system).text());
            match left {
                Some(left) => (words.heat)(&ambient, &altitude, &percent(*left, 0).text()),
                None => (words.too_hot)(&ambient, &altitude),
            }
        }
        Finding::EnclosureWrong { enclosure, lacks, plainest } => {
            (words.enclosure)(enclosure.row().name, (words.demand)(*lacks), plainest.map(|kind| kind.row().name))
        }
        Finding::MotorVoltsLow { share, runs_out, .. } => {
            let say = if stop { words.volts_too_low } else { words.volts_low };
            say(&percent(*share, 1).text(), &frequency(*runs_out).text())
        }
        Finding::NoVoltsLeft => words.no_volts.to_owned(),
        Finding::CoolerWaterIdle { warm, most } => {
            (words.cooler_idle)(&depth(*warm, system).text(), &depth(*most, system).text())
        }
        Finding::PulsesCanMeet { twice } => (words.pulses_meet)(&peak_volts(*twice).text()),
        _ => return of_lead(finding).or_else(|| of_supply(finding)).or_else(|| of_job(finding, system)),
    })
}

fn of_lead(finding: &Finding) -> Option<String> {
    let (words, remedy_name) = (&words().found_power, words().ways.remedy);
    Some(match finding {
        Finding::LeadNeedsFilter { peak, limit, remedy } => {
            (words.needs_filter)(&peak_volts(*peak).text(), &peak_volts(*limit).text(), remedy_name(*remedy))
        }
        Finding::LeadPeakHigh { peak, limit, remedy: Some(remedy) } => {
            (words.peak_high)(&peak_volts(*peak).text(), &peak_volts(*limit).text(), remedy_name(*remedy))
        }
        Finding::LeadPeakHigh { peak, limit, remedy: None } => {
            (words.peak_no_remedy)(&peak_volts(*peak).text(), &peak_volts(*limit).text())
        }
        _ => return None,
    })
}

fn of_supply(finding: &Finding) -> Option<String> {
    let words = &words().found_power;
    let stop = finding.severity() == Severity::Stop;
    Some(match finding {
        Finding::SupplyNoSize => words.supply_no_size.to_owned(),
        Finding::SupplyDropHigh { share, limit, whole } => {
            let say = if *whole { words.whole_drop } else { words.supply_drop };
            say(&percent(*share, 1).text(), &percent(*limit, 0).text())
        }
        Finding::TransformerLoaded { share } => {
            let say = if stop { words.transformer_over } else { words.transformer_close };
            say(&percent(*share, 0).text())
        }
        Finding::UtilityUnknown => words.utility_unknown.to_owned(),
        Finding::UtilityPassed { current, limit } => {
            (words.utility_passed)(&amperes(*current).text(), &amperes(*limit).text())
        }
        Finding::StartDipHigh { at_motor, dip, limit } => {
            let say = if *at_motor { words.start_motor } else { words.start_pole };
            say(&percent(*dip, 1).text(), &percent(*limit, 0).text())
        }
        Finding::HarmonicsOver { distortion, limit } => {
            (words.harmonics)(&percent(*distortion, 0).text(), &percent(*limit, 0).text())
        }
        Finding::FaultOverSccr { fault, marked } => {
            let say = if stop { words.fault_over } else { words.fault_close };
            say(&kiloamperes(*fault).text(), &kiloamperes(*marked).text())
        }
        _ => return None,
    })
}

fn of_job(finding: &Finding, system: UnitSystem) -> Option<String> {
    let words = &words().found_power;
    Some(match finding {
        Finding::DeviceProvisional { device } => (words.device_provisional)(&rating(*device).text()),
        Finding::DeviceSmall { device, least } => {
            (words.device_small)(&rating(*device).text(), &amperes(*least).text())
        }
        Finding::DeviceLarge { device, marked } => {
            (words.device_large)(&rating(*device).text(), &rating(*marked).text())
        }
        Finding::DeviceOver { device, most } => (words.device_over)(&rating(*device).text(), &rating(*most).text()),
        Finding::FaultAssumed { most } => (words.fault_assumed)(&kiloamperes(*most).text()),
        Finding::MotorLight { load } => (words.motor_light)(&percent(*load, 0).text()),
        Finding::GeneratorShort { needed, left } => {
            (words.generator_short)(&kilovolt_amperes(*left).text(), &kilovolt_amperes(*needed).text())
        }
        Finding::SupplyGrounding { one_line: true } => words.grounding_one_line.to_owned(),
        Finding::SupplyGrounding { one_line: false } => words.grounding_unknown.to_owned(),
        Finding::FullSpeedOnly => words.full_speed.to_owned(),
        Finding::UnbalanceDerates { shaft: taken, left, .. } => {
            (words.unbalance)(&shaft(*taken, system).text(), &shaft(*left, system).text())
        }
        Finding::AssumptionDecides { field } => (words.decides)((crate::locale::words().fields.label)(*field)),
        Finding::DutyUnreadable => words.duty_unreadable.to_owned(),
        Finding::DutyNotMet { flow } => (words.duty_not_met)(&super::water::flow(*flow, system).text()),
        Finding::TariffContradicts => words.tariff.to_owned(),
        Finding::BookUnreadable => words.book_unreadable.to_owned(),
        Finding::PriceMissing { way } => (words.price_missing)(*way),
        Finding::SensorRange { setpoint, span } => {
            (words.sensor_range)(&pressure(*setpoint, system).text(), &pressure(*span, system).text())
        }
        Finding::SensorFreezes => words.sensor_freezes.to_owned(),
        Finding::ReadingStop { reading } => (words.reading_stop)((crate::locale::words().startup.reading)(*reading)),
        Finding::NoWayServes => words.no_way.to_owned(),
        Finding::WayGone => words.way_gone.to_owned(),
        Finding::EquipmentUnreadable => words.unreadable.to_owned(),
        _ => return None,
    })
}
