//! What is unwise or unsafe about a way, and about the supply of a job.

use super::{Base, DeviceBy, Draw, Fits, PoweredWay, Ways};
use crate::cable::feeder::USUAL_DROP;
use crate::cable::filter::Remedy;
use crate::evaluate::gravest_first;
use crate::finding::Finding;
use crate::job::{Control, Field, Grounding, Job};
use crate::power::derating::Derated;
use crate::power::family::{Class, Feed, Kind, Start};
use crate::power::fit::{EnclosureFit, FrameFit, ShortCircuitFit, enclosure_fit, next_size, plainest_enclosure};
use crate::power::generator::SetVerdict;
use crate::power::impedance::fault_current;
use crate::power::rotary::UNBALANCE;
use crate::power::start::StartVerdict;
use crate::power::transformer::{LEAST_IMPEDANCE, Loading, Transformer};
use crate::power::volts::VoltsVerdict;
use crate::pump::unbalance::derated_power;
use crate::quantity::horsepower;

impl Base<'_> {
    pub(super) fn findings(&self, powered: &PoweredWay) -> Vec<Finding> {
        let mut found = Vec::new();
        found.extend(not_taken(powered));
        found.extend(self.frame_short(powered));
        // What a way can't do at all is said before what it does with care.
        if powered.way.is_some() {
            found.extend(self.of_its_kind(powered));
        }
        found.extend(self.place(powered));
        if powered.way.is_some() {
            found.extend(self.no_conductor(powered));
            found.extend(self.drops(powered));
            found.extend(self.at_the_motor(powered));
            found.extend(at_the_pole(powered));
            found.extend(self.start_dips(powered));
        }
        gravest_first(&mut found);
        found
    }

    /// Whether a frame serves; a single-phase motor is sold to a size of its own.
    fn frame_short(&self, powered: &PoweredWay) -> Option<Finding> {
        if powered.family.motor == Feed::SinglePhase {
            let motor = self.inputs.motor_power.as_ref().ok()?.value;
            let most = horsepower(powered.family.steps.last()?.hp);
            return next_size(&powered.family, motor)
                .ok()?
                .is_none()
                .then_some(Finding::DriveSizeShort { most, motor });
        }
        match powered.frame? {
            FrameFit::CurrentShort { most, required } => Some(Finding::DriveAmpsShort { derated: most, required }),
            FrameFit::SizeShort { most, motor } => Some(Finding::DriveSizeShort { most, motor }),
            FrameFit::Serves { .. } | FrameFit::AskMaker(_) => None,
        }
    }

    /// Heat, altitude and what the place brings; none of it is asked of a motor that stands for its own equipment.
    fn place(&self, powered: &PoweredWay) -> Vec<Finding> {
        let mut found = Vec::new();
        if powered.family.motor == Feed::SinglePhase {
            return found;
        }
        let left = powered.derated.and_then(Derated::factor);
        if powered.derated.is_some() && left.is_none_or(|left| left < 1.0) {
            let (ambient, altitude) = (self.site.ambient, self.site.altitude);
            found.push(Finding::HeatOrAltitude { ambient, altitude, left });
        }
        let enclosure = powered.family.marking.enclosure.unwrap_or(self.choices.enclosure());
        let demands = self.choices.place().demands();
        if let EnclosureFit::Lacks(lacks) = enclosure_fit(enclosure, demands)
            && let Some(lacks) = lacks.first().copied()
        {
            found.push(Finding::EnclosureWrong { enclosure, lacks, plainest: plainest_enclosure(demands) });
        }
        found
    }

    fn no_conductor(&self, powered: &PoweredWay) -> Option<Finding> {
        // A lead that a wrong figure hides is not known; it has an error of its own.
        let asked = powered.draw.is_some() && self.lead.is_some() && self.inputs.allowed_drop.is_ok();
        let no_lead = asked && powered.lead.is_none();
        let no_supply = powered.draw.is_some() && self.site.distance.is_some() && powered.supply.is_none();
        match powered.way {
            Some(way) if no_lead => Some(Finding::CableNoSize { way }),
            _ => no_supply.then_some(Finding::SupplyNoSize),
        }
    }

    fn drops(&self, powered: &PoweredWay) -> Option<Finding> {
        let supply = powered.supply?;
        if supply.share > USUAL_DROP {
            return Some(Finding::SupplyDropHigh { share: supply.share, limit: USUAL_DROP, whole: false });
        }
        let (share, limit) = (supply.share + powered.lead?.drop_share, self.site.allowed_whole);
        (share > limit).then_some(Finding::SupplyDropHigh { share, limit, whole: true })
    }

    fn start_dips(&self, powered: &PoweredWay) -> Vec<Finding> {
        let Some(start) = powered.start else { return Vec::new() };
        let (dip, limits) = (start.dip, self.site.dips);
        let motor = Finding::StartDipHigh { at_motor: true, dip: dip.at_motor, limit: limits.motor };
        let pole = Finding::StartDipHigh { at_motor: false, dip: dip.at_pole, limit: limits.pole };
        match start.verdict {
            StartVerdict::Holds => Vec::new(),
            StartVerdict::PoleOver(_) => vec![pole],
            StartVerdict::MotorOver(_) if dip.at_pole > limits.pole => vec![motor, pole],
            StartVerdict::MotorOver(_) => vec![motor],
        }
    }

    fn at_the_motor(&self, powered: &PoweredWay) -> Vec<Finding> {
        let mut found = Vec::new();
        if let Some(stress) = powered.stress {
            let (peak, limit) = (stress.peak, stress.limit.peak());
            if !stress.cured {
                found.push(Finding::LeadPeakHigh { peak, limit, remedy: stress.least });
            } else if stress.fitted != Remedy::NoneNeeded && peak > limit {
                found.push(Finding::LeadNeedsFilter { peak, limit, remedy: stress.fitted });
            } else if stress.meet && stress.fitted == Remedy::NoneNeeded {
                found.push(Finding::PulsesCanMeet { twice: 2.0 * stress.bus });
            }
        }
        match powered.volts {
            Some(volts) => {
                let low = |share| Finding::MotorVoltsLow { share, runs_out: volts.runs_out, needed: volts.needed };
                found.extend(match volts.verdict {
                    VoltsVerdict::Holds(_) => None,
                    VoltsVerdict::Low(share) | VoltsVerdict::TooLow(share) => Some(low(share)),
                });
            }
            // Volts that a wrong figure hides are not known; it has an error of its own.
            None if powered.lead.is_some() && powered.supply.is_some() && self.needed(powered).is_some() => {
                found.push(Finding::NoVoltsLeft);
            }
            None => {}
        }
        found
    }

    /// What a way of this kind brings with it.
    fn of_its_kind(&self, powered: &PoweredWay) -> Vec<Finding> {
        let mut found = Vec::new();
        let full_speed = powered.family.start != Start::Ramp;
        if full_speed && self.choices.control() == Control::ConstantPressure {
            found.push(Finding::FullSpeedOnly);
        }
        if powered.family.kind == Kind::RotaryConverter {
            found.extend(self.unbalanced(powered));
        }
        if let (Some(limit), Some(draw)) = (self.site.utility, powered.draw)
            && powered.family.supply.feed == Feed::SinglePhase
        {
            let current = powered.start.map_or(draw.current, |start| start.dip.current.max(draw.current));
            if current > limit {
                found.push(Finding::UtilityPassed { current, limit });
            }
        }
        if let (Some(need), Some(set)) = (powered.set, self.site.set)
            && matches!(need.verdict, Some(SetVerdict::Short(_)))
        {
            found.push(Finding::GeneratorShort { needed: need.needed(), left: set * self.site.set_share });
        }
        found
    }

    fn unbalanced(&self, powered: &PoweredWay) -> Option<Finding> {
        let (shaft, motor) = (self.water.shaft()?, powered.motor?);
        let left = derated_power(motor.power, UNBALANCE).ok()?;
        let factor = crate::evaluate::water::counted_service_factor(&self.inputs.entered, self.choices.motor_kind())?;
        let beyond_service_factor = shaft > left * factor;
        (shaft > left).then_some(Finding::UnbalanceDerates { shaft, left, beyond_service_factor })
    }
}

fn not_taken(powered: &PoweredWay) -> Option<Finding> {
    powered.way.is_none().then_some(Finding::SupplyNotTaken { supply: powered.fed.1 })
}

fn at_the_pole(powered: &PoweredWay) -> Vec<Finding> {
    let mut found = Vec::new();
    let Some(pole) = powered.pole else { return found };
    // A transformer that stands in for one that is not known is chosen by the load, and is none to judge.
    if let (Loading::Close(share) | Loading::Over(share), false) = (pole.loading, pole.assumed) {
        found.push(Finding::TransformerLoaded { share });
    }
    // Without the conductors the fault at the equipment is not known; at the pole it is larger.
    if powered.supply.is_some() && !matches!(pole.short_circuit, ShortCircuitFit::Serves(_)) {
        found.push(Finding::FaultOverSccr { fault: pole.fault_here, marked: pole.marked });
    }
    if let Some(harmonics) = pole.harmonics.filter(|harmonics| !harmonics.keeps()) {
        found.push(Finding::HarmonicsOver { distortion: harmonics.distortion, limit: harmonics.limit });
    }
    found
}

/// The overcurrent device: between what the input asks for and what a rule or a marking allows, and provisional for a
/// drive until its marking is known, entered or not.
fn of_device(way: &PoweredWay, draw: &Draw) -> Vec<Finding> {
    let device = draw.device;
    // A converter's device may be smaller where its conductors are.
    let least = draw.ampacity.min(1.25 * draw.rated);
    let by_rule = matches!(way.family.kind, Kind::SolidStateConverter | Kind::RotaryConverter | Kind::SinglePhaseMotor);
    let mut found = Vec::new();
    if matches!(draw.device_by, DeviceBy::Entered | DeviceBy::Marked) && device < least {
        found.push(Finding::DeviceSmall { device, least });
    } else if draw.marked.is_none() && !by_rule && device <= draw.most {
        found.push(Finding::DeviceProvisional { device });
    }
    match draw.marked {
        Some(marked) if device > marked => found.push(Finding::DeviceLarge { device, marked }),
        None if device > draw.most => found.push(Finding::DeviceOver { device, most: draw.most }),
        _ => {}
    }
    found
}

/// A fault current that goes by a transformer of which rating or impedance stand in: what it may come to with the least
/// impedance that is usual.
fn fault_assumed(way: &PoweredWay, job: &Job) -> Option<Finding> {
    let (pole, run) = (way.pole?, way.supply?);
    let assumed = pole.assumed || job.get(Field::TransformerImpedance).is_none();
    let least = Transformer { impedance: LEAST_IMPEDANCE.min(pole.transformer.impedance), ..pole.transformer };
    let most = fault_current(way.fed.1, least.as_impedance().ok()? + run.cold).ok()?;
    (assumed && way.family.supply.feed == Feed::SinglePhase).then_some(Finding::FaultAssumed { most })
}

/// What the ways say about a job: all that the way says that it goes by, and what no way can answer.
pub(in crate::evaluate) fn of_job(job: &Job, ways: &Ways) -> Vec<Finding> {
    let mut found = Vec::new();
    if ways.table.is_some() {
        found.push(Finding::EquipmentUnreadable);
    }
    if job.way.is_some() && !ways.chosen && ways.site.is_some() {
        found.push(Finding::WayGone);
    }
    let judged = |way: &PoweredWay| way.fits == Fits::No;
    if !ways.all.is_empty() && ways.all.iter().all(judged) && ways.all.iter().any(|way| way.volts.is_some()) {
        found.push(Finding::NoWayServes);
    }
    let (Some(way), Some(site)) = (ways.picked(), ways.site) else { return found };
    found.extend(way.findings.iter().copied());
    found.extend(way.draw.map_or(Vec::new(), |draw| of_device(way, &draw)));
    found.extend(fault_assumed(way, job));
    if way.family.supply.feed == Feed::SinglePhase && site.utility.is_none() {
        found.push(Finding::UtilityUnknown);
    }
    let asks = way.family.supply.feed == Feed::SinglePhase && site.class == Class::High;
    if asks && job.choices.grounding != Some(Grounding::Midpoint) {
        found.push(Finding::SupplyGrounding { one_line: job.choices.grounding == Some(Grounding::OneLine) });
    }
    found
}
