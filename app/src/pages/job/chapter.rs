//! Which page a figure and a finding belong to, and how each page stands.

use super::headline::{cost_line, size_line};
use crate::locale::{self, shown, words};
use crate::parts::stations::{Standing, Station};
use crate::routes::Page;
use wellwright_core::error::InputError;
use wellwright_core::evaluate::{Evaluation, Fits};
use wellwright_core::finding::{Finding, Severity, Supplier};
use wellwright_core::job::{Field, Origin, Way};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, in_amperes};

/// The page where a figure is entered.
#[must_use]
pub fn page_of(field: Field) -> Page {
    if matches!(field.path().split_once('.'), Some(("energy" | "range", _))) {
        return Page::Cost;
    }
    match field {
        Field::PumpEfficiency
        | Field::ShutOffHead
        | Field::CurveFrequency
        | Field::LeastFrequency
        | Field::MostFrequency
        | Field::NpshRequired
        | Field::NpshMargin
        | Field::MotorDiameter
        | Field::CasingInside
        | Field::SleeveInside
        | Field::LeastFlow
        | Field::PumpMass
        | Field::MotorPower
        | Field::NameplateAmps230
        | Field::NameplateAmps460
        | Field::ServiceFactor
        | Field::ServiceAmps230
        | Field::ServiceAmps460
        | Field::MotorPowerFactor
        | Field::MotorEfficiency => Page::Pump,
        Field::SurfaceRun
        | Field::Ambient
        | Field::AllowedDrop
        | Field::RiseTime
        | Field::WaveSpeed
        | Field::CableImpedance
        | Field::MotorImpedance
        | Field::MotorPeakLimit => Page::Cable,
        Field::TransducerSpan | Field::RestartDelay => Page::Startup,
        Field::CableFixed | Field::CableMetal | Field::ExtraEquipment => Page::Cost,
        Field::DeviceAmps
        | Field::SupplyVolts
        | Field::TransformerRating
        | Field::TransformerImpedance
        | Field::OtherLoad
        | Field::UtilityLimit
        | Field::PoleDistance
        | Field::FeederAmbient
        | Field::AllowedSupplyDrop
        | Field::AllowedWholeDrop
        | Field::DriveAmbient
        | Field::SunRise
        | Field::MarkedShortCircuit
        | Field::StartDipMotor
        | Field::StartDipPole
        | Field::LineDistance
        | Field::LineFixed
        | Field::LinePrice
        | Field::LineFree
        | Field::GeneratorRating
        | Field::GeneratorSite => Page::Power,
        _ => Page::Water,
    }
}

/// The page that a finding is about.
fn page_of_finding(finding: &Finding) -> Page {
    match finding {
        Finding::CableNoSize { .. }
        | Finding::AluminumInWell
        | Finding::GroundWireGrew { .. }
        | Finding::LeadNeedsFilter { .. }
        | Finding::LeadPeakHigh { .. }
        | Finding::CoolerWaterIdle { .. }
        | Finding::PulsesCanMeet { .. } => Page::Cable,
        Finding::SensorRange { .. } | Finding::SensorFreezes | Finding::ReadingStop { .. } => Page::Startup,
        Finding::BookUnreadable
        | Finding::PriceMissing { .. }
        | Finding::DutyUnreadable
        | Finding::DutyNotMet { .. }
        | Finding::TariffContradicts => Page::Cost,
        Finding::AssumptionDecides { field } => page_of(*field),
        Finding::SupplyNotTaken { .. }
        | Finding::DriveAmpsShort { .. }
        | Finding::DriveSizeShort { .. }
        | Finding::HeatOrAltitude { .. }
        | Finding::EnclosureWrong { .. }
        | Finding::MotorVoltsLow { .. }
        | Finding::NoVoltsLeft
        | Finding::SupplyNoSize
        | Finding::SupplyDropHigh { .. }
        | Finding::TransformerLoaded { .. }
        | Finding::UtilityUnknown
        | Finding::UtilityPassed { .. }
        | Finding::StartDipHigh { .. }
        | Finding::HarmonicsOver { .. }
        | Finding::FaultOverSccr { .. }
        | Finding::DeviceProvisional { .. }
        | Finding::DeviceSmall { .. }
        | Finding::DeviceLarge { .. }
        | Finding::DeviceOver { .. }
        | Finding::FaultAssumed { .. }
        | Finding::GeneratorShort { .. }
        | Finding::SupplyGrounding { .. }
        | Finding::FullSpeedOnly
        | Finding::UnbalanceDerates { .. }
        | Finding::NoWayServes
        | Finding::WayGone
        | Finding::EquipmentUnreadable => Page::Power,
        Finding::BeyondUsual { field, .. } => page_of(*field),
        Finding::DemandNotMet { by: Supplier::Pump, .. }
        | Finding::PumpBeyondCurve { .. }
        | Finding::CurveUnusable
        | Finding::CurveOdd { .. }
        | Finding::FarFromBest { .. }
        | Finding::NpshShort { .. }
        | Finding::DeadheadOverRating { .. }
        | Finding::MotorDoesNotFit { .. }
        | Finding::CoolsAbove { .. }
        | Finding::MotorCoolingLow { .. }
        | Finding::MotorOverloaded { .. }
        | Finding::MotorLight { .. }
        | Finding::SpeedBandNarrow { .. }
        | Finding::NameplateDisagrees { .. } => Page::Pump,
        _ => Page::Water,
    }
}

/// How each page stands and what it answers.
#[must_use]
pub fn stations(answer: &Evaluation, system: UnitSystem) -> [Station; 7] {
    Page::ALL.map(|page| {
        let stop = |finding: &Finding| finding.severity() == Severity::Stop && page_of_finding(finding) == page;
        let here = || answer.errors.iter().filter(move |error| page_of(error.field()) == page);
        let wrong = here().any(|error| !matches!(error, InputError::Missing { .. }));
        let says = says(page, answer, system);
        let words = &words().answer;
        let (standing, says) = if wrong {
            (Standing::Wrong, words.wrong.to_owned())
        } else if answer.findings.iter().any(stop) {
            (Standing::Stop, says.unwrap_or_else(|| (words.severity)(Severity::Stop).to_owned()))
        } else if here().next().is_some() || says.is_none() {
            (Standing::Open, words.missing.to_owned())
        } else {
            (Standing::Done, says.unwrap_or_default())
        };
        Station { standing, says }
    })
}

/// Whether an answer at the job's depth waits for a figure; the water is judged apart.
#[must_use]
pub fn blocks(field: Field) -> bool {
    matches!(
        field,
        Field::PumpSetting
            | Field::SurfaceRun
            | Field::MotorPower
            | Field::NameplateAmps230
            | Field::NameplateAmps460
            | Field::MotorPowerFactor
            | Field::MotorEfficiency
            | Field::Ambient
            | Field::AllowedDrop
            | Field::DeviceAmps
            | Field::CableFixed
            | Field::CableMetal
            | Field::ExtraEquipment
    )
}

/// A page's answer in a few words; `None` while a figure for it is missing.
fn says(page: Page, answer: &Evaluation, system: UnitSystem) -> Option<String> {
    let inputs = &answer.inputs;
    let here = answer.here.as_ref();
    let amps = |amps| shown(in_amperes(amps), 1, locale::unit_name(Unit::Ampere)).text();
    match page {
        Page::Water => water_says(answer, system),
        Page::Pump => inputs.motor_power.as_ref().ok().map(|power| locale::power(power.value, system).text()),
        Page::Power => power_says(answer, system),
        Page::Cable => here.map(|here| size_line(here.way(Way::V480))),
        Page::Cost => here.map(|here| cost_line(here.saving.as_ref())),
        Page::Startup => {
            let current = inputs.motor_current[Way::V480 as usize].as_ref().ok()?;
            current.nameplate.map(|known| amps(known.value))
        }
        Page::Papers => here.map(|_| words().tables.ready.to_owned()),
    }
}

/// How many ways serve; until that is known the device ahead of the drive.
fn power_says(answer: &Evaluation, system: UnitSystem) -> Option<String> {
    let known = answer.ways.all.iter().filter(|way| way.fits != Fits::Waits).count();
    if answer.ways.waits_for.is_empty() && known > 0 {
        let fit = answer.ways.all.iter().filter(|way| matches!(way.fits, Fits::Serves | Fits::WithCare)).count();
        return Some((words().ways.count)(fit, answer.ways.all.len()));
    }
    answer.inputs.device.as_ref().ok().map(|device| {
        let amps = locale::entry_text(Entry::new(in_amperes(device.value), Unit::Ampere), system);
        if device.origin == Origin::Typed { amps } else { (words().answer.provisional)(&amps) }
    })
}

/// The head at the flow that is asked for; without it how deep the pump hangs.
fn water_says(answer: &Evaluation, system: UnitSystem) -> Option<String> {
    let water = &answer.water;
    match (water.demand, &water.head) {
        (Some(demand), Some(head)) => {
            let flow = locale::flow(water.running.unwrap_or(demand.flow.value), system);
            let head = locale::head(head.total(), system);
            Some(format!("{}, {}", flow.text(), head.text()))
        }
        _ => answer.inputs.pump_setting.as_ref().ok().map(|depth| locale::depth(depth.value, system).text()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::job::Job;

    #[test]
    fn every_station_of_a_whole_job_is_done_and_says_something() {
        let stations = stations(&evaluate(&demo_jobs().remove(0)), UnitSystem::Us);
        let said: Vec<&str> = stations.iter().map(|station| station.says.as_str()).collect();
        assert!(stations.iter().all(|station| station.standing == Standing::Done), "{stations:?}");
        assert_eq!(said[..3], ["25\u{a0}gpm, 648\u{a0}ft", "7.5\u{a0}hp", "8 of 14 ways serve"]);
        assert_eq!(said[3..5], ["3\u{a0}×\u{a0}12\u{a0}AWG", "$546 with 480\u{a0}V"]);
    }

    #[test]
    fn an_empty_job_waits_for_depth_and_motor() {
        let stations = stations(&evaluate(&Job::default()), UnitSystem::Us);
        assert!(stations.iter().all(|station| station.standing == Standing::Open), "{stations:?}");
    }

    #[test]
    fn a_wrong_figure_is_not_called_missing() {
        let mut job = demo_jobs().remove(0);
        job.set(Field::AllowedDrop, Some(Entry::new(90.0, Unit::Percent)));
        let stations = stations(&evaluate(&job), UnitSystem::Us);
        assert_eq!(stations[Page::Cable as usize].standing, Standing::Wrong);
        assert_eq!(stations[Page::Cost as usize].standing, Standing::Open);
        assert!(blocks(Field::AllowedDrop) && !blocks(Field::StaticLevel));
    }

    #[test]
    fn a_stop_stands_at_its_page() {
        let mut job = demo_jobs().remove(0);
        job.choices.metal = Some(wellwright_core::standards::conductor::Metal::Aluminum);
        let stations = stations(&evaluate(&job), UnitSystem::Us);
        assert_eq!(stations[Page::Cable as usize].standing, Standing::Stop);
        assert_eq!(stations[Page::Water as usize].standing, Standing::Done);
    }
}
