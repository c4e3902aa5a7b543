//! From the water in the ground to the power at the shaft.

mod beyond;
mod demand;
mod findings;
mod line;
mod pressure;
mod pump;
mod safety;
mod well;

pub use demand::{Demand, USERS};
pub use findings::NEAR_BOTTOM_FEET;
pub(crate) use findings::{LEAST_BAND, SENSOR_SHARE, largest_load};
pub use line::{Lift, Pipework, System};
pub use pump::{CurveProblem, CurveRead, Duty, NoDuty, Pumping, Trace};
pub use safety::{Cooling, DeadHead, PRECHARGE_SHARE, Surge, Tank};
pub use well::Law;

pub(super) use findings::findings;
pub(super) use pump::duty_at;

use crate::job::{Entered, Field, Inputs, Job, Part};
use crate::pump::motor::MotorKind;
use crate::quantity::{Entry, Length, Power, Unit, VolumeRate, fahrenheit, feet, in_inches, in_psi};
use crate::water::head::{SuctionHead, TotalHead};
use crate::water::level::{pumping_level, submergence};
use crate::water::properties;
use crate::water::string::HangingLoad;

/// What follows from the figures of the water and the pump. Each part is nothing where what it needs was not entered or
/// can't be used; levels are depths below ground.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Water {
    /// Water with the pump at rest.
    pub static_level: Option<Length>,
    /// How far it falls at the flow that is asked for, or at which a switched pump runs.
    pub drawdown: Option<Length>,
    /// Water while the pump runs.
    pub pumping_level: Option<Length>,
    /// Depth of water above the pump while it runs; below zero the pump hangs dry.
    pub submergence: Option<Length>,
    /// The well's bottom.
    pub well_depth: Option<Length>,
    /// How the water falls with the flow.
    pub law: Option<Law>,
    /// The flow that draws the water down to the pump.
    pub well_gives: Option<VolumeRate>,
    /// What is asked for.
    pub demand: Option<Demand>,
    /// The flow of a pump that is switched on and off, where it is not what is asked for: levels, head, suction, surge,
    /// cooling and tank are told at it.
    pub running: Option<VolumeRate>,
    /// What a pump works against at any flow.
    pub system: Option<System>,
    /// The head at the flow that is asked for, or at which a switched pump runs.
    pub head: Option<TotalHead>,
    /// What is asked for, or its head, lies beyond what the formulas hold for.
    pub outside: bool,
    /// The pump's curve, or why there is none.
    pub curve: Option<Result<CurveRead, CurveProblem>>,
    /// The pump at work.
    pub pump: Option<Pumping>,
    /// Head that a surface pump finds at its suction.
    pub suction: Option<SuctionHead>,
    /// The pump against a shut valve.
    pub dead_head: Option<DeadHead>,
    /// Water past the motor.
    pub cooling: Option<Cooling>,
    /// The pressure tank.
    pub tank: Option<Tank>,
    /// A sudden stop.
    pub surge: Option<Surge>,
    /// What hangs in the well.
    pub hanging: Option<HangingLoad>,
    /// Figures that the head waits for.
    pub waits_for: Vec<Field>,
}

impl Water {
    /// The power that chooses the motor: at the shaft at the flow that is asked for, and so much that its service factor
    /// bears the largest that the pump takes anywhere on its curve.
    #[must_use]
    pub fn motor_for(&self, service_factor: f64) -> Option<Power> {
        let largest = findings::largest_load(self)? / service_factor;
        Some(self.shaft()?.max(largest))
    }

    /// The power at the shaft, where it is known.
    #[must_use]
    pub fn shaft(&self) -> Option<Power> {
        self.pump.as_ref()?.duty.ok().map(|duty| duty.shaft)
    }
}

pub(super) fn water(job: &Job, entered: &Entered) -> Water {
    let choices = &job.choices;
    let asked = demand::demand(choices, entered);
    let (demand, outside) = (asked.ok().flatten(), asked.is_err());
    let flow = demand.map(|demand| demand.flow.value);
    let law = well::law(choices, entered, flow);
    let mut water = levels(entered, law, flow);
    (water.demand, water.outside) = (demand, outside);
    water.curve = pump::curve(job);
    water.waits_for = waits_for(job, entered, demand.is_some() || outside);
    water.tank = safety::tank(entered, choices.control(), flow);
    let Some(flow) = flow else { return water };
    water.cooling = safety::cooling(entered, flow);
    let liquid = entered.get(Field::WaterTemperature, fahrenheit).and_then(|at| properties::water(at).ok());
    let system = liquid.and_then(|liquid| line::system(choices, entered, flow, law, liquid));
    if let Some(system) = system {
        in_the_line(&mut water, job, entered, flow, &system);
        water.system = Some(system);
    }
    water
}

fn levels(entered: &Entered, law: Option<Law>, flow: Option<VolumeRate>) -> Water {
    let static_level = entered.get(Field::StaticLevel, feet);
    let drawdown = match (law, flow) {
        (Some(Law::Fixed(drawdown)), _) => Some(drawdown),
        (Some(law), Some(flow)) => law.drawdown(flow).ok(),
        _ => None,
    };
    let pumping = static_level.zip(drawdown).map(|(level, drawdown)| pumping_level(level, drawdown));
    let setting = entered.get(Field::PumpSetting, feet);
    let room = setting.zip(static_level).map(|(setting, level)| setting - level).filter(|room| *room > feet(0.0));
    Water {
        static_level,
        drawdown,
        pumping_level: pumping,
        submergence: setting.zip(pumping).map(|(setting, pumping)| submergence(setting, pumping)),
        well_depth: entered.get(Field::WellDepth, feet),
        law,
        well_gives: law.zip(room).and_then(|(law, room)| law.flow(room)),
        ..Water::default()
    }
}

fn in_the_line(water: &mut Water, job: &Job, entered: &Entered, flow: VolumeRate, system: &System) {
    match system.head(flow) {
        Ok(head) => water.head = Some(head),
        Err(_) => {
            water.outside = true;
            return;
        }
    }
    water.suction = safety::suction(entered, system, flow);
    water.surge = safety::surge(system, flow);
    water.hanging = safety::hanging(entered, system);
    let curve = match &water.curve {
        None => None,
        Some(Ok(read)) => Some(&read.curve),
        // A curve that can't be used is no pump, and no other stands in for it.
        Some(Err(_)) => return,
    };
    water.pump = pump::pumping(job, entered, curve, flow, system);
    if let Some(pump) = &water.pump {
        water.dead_head = safety::dead_head(entered, system, pump);
    }
    let duty = water.pump.as_ref().and_then(|pump| pump.duty.ok());
    if let Some(duty) = duty.filter(|duty| duty.flow != flow) {
        at_full_speed(water, job, entered, duty.flow, system);
    }
}

/// A pump that is switched runs at what the line lets through, whatever is asked for: everything is told at that flow.
fn at_full_speed(water: &mut Water, job: &Job, entered: &Entered, flow: VolumeRate, system: &System) {
    let Ok(head) = system.head(flow) else {
        water.outside = true;
        return;
    };
    let levels = levels(entered, water.law, Some(flow));
    (water.drawdown, water.pumping_level) = (levels.drawdown, levels.pumping_level);
    water.submergence = levels.submergence;
    water.head = Some(head);
    water.running = Some(flow);
    water.suction = safety::suction(entered, system, flow);
    water.surge = safety::surge(system, flow);
    water.cooling = safety::cooling(entered, flow);
    water.tank = safety::tank(entered, job.choices.control(), Some(flow));
}

/// Figures without which there is no head, and which were not entered.
fn waits_for(job: &Job, entered: &Entered, demand: bool) -> Vec<Field> {
    use Field as F;
    let of_demand = [F::Flow, F::IrrigatedArea, F::WaterDepth, F::People];
    let needed = [F::StaticLevel, F::Drawdown, F::SpecificCapacity, F::Transmissivity, F::Storage, F::SuctionLift];
    let missing = |field: &Field| matches!(entered.take(*field, |_| ()), Ok(None));
    // Nobody who drinks asks for no water.
    let nobody = |field: &Field| *field == F::People && entered.get(F::People, |people| people == 0.0).unwrap_or(false);
    let open = |field: &Field| field.counts(job) && (missing(field) || nobody(field));
    let demands = of_demand.iter().filter(|_| !demand);
    demands.chain(&needed).copied().filter(open).collect()
}

/// Notes in the inputs what stands in the fields of the water and the pump.
pub(super) fn follows(inputs: &mut Inputs, job: &Job, water: &Water) {
    let inch = |length: Length| Entry::new(in_inches(length), Unit::Inch);
    for pipe in water.system.iter().flat_map(|system| &system.pipes) {
        let [inside, roughness, hazen_williams, _] = pipe.part.fields();
        inputs.follow(inside, Some(inch(pipe.inside.value)));
        inputs.follow(roughness, Some(inch(pipe.roughness.value)));
        inputs.follow(hazen_williams, Some(Entry::new(pipe.hazen_williams.value, Unit::One)));
    }
    if water.system.is_none() {
        for part in Part::ALL {
            of_series(inputs, job, part);
        }
    }
    let duty = water.pump.as_ref().and_then(|pump| pump.duty.ok());
    inputs.follow(Field::PumpEfficiency, duty.map(|duty| Entry::new(duty.efficiency.value, Unit::One)));
    if let Some((precharge, cut_in)) = safety::band(&inputs.entered, job.choices.control()) {
        let psi = |pressure| Some(Entry::new(in_psi(pressure), Unit::PoundPerSquareInch));
        inputs.follow(Field::TankPrecharge, psi(precharge.value));
        inputs.follow(Field::CutIn, psi(cut_in.value));
    }
    let factor = service_factor(&inputs.entered, job.choices.motor_kind());
    inputs.follow(Field::ServiceFactor, factor.map(|known| Entry::new(known.value, Unit::One)));
}

/// Without a flow: what the series alone tells.
fn of_series(inputs: &mut Inputs, job: &Job, part: Part) {
    let [inside, roughness, hazen_williams, _] = part.fields();
    let series = job.choices.series(part);
    let picked = job.choices.pipe(part).size.and_then(|size| series.named(size.name()));
    let surface = series.material().surface();
    let inch = |length: Length| Entry::new(in_inches(length), Unit::Inch);
    inputs.follow(inside, picked.map(|size| inch(size.inside_diameter())));
    inputs.follow(roughness, Some(inch(surface.roughness())));
    inputs.follow(hazen_williams, Some(Entry::new(surface.hazen_williams(), Unit::One)));
}

/// The service factor that a motor is chosen and judged by: a motor on the surface that a drive feeds has none to spare.
pub(crate) fn counted_service_factor(entered: &Entered, kind: MotorKind) -> Option<f64> {
    match kind {
        MotorKind::Submersible => service_factor(entered, kind).map(|known| known.value),
        MotorKind::Surface => Some(1.0),
    }
}

/// Service factor that stands in its field: a surface motor on a drive has none to spare, whatever its nameplate says.
pub(super) fn service_factor(entered: &Entered, kind: MotorKind) -> Option<crate::job::Known<f64>> {
    let usual = match kind {
        MotorKind::Submersible => 1.15,
        MotorKind::Surface => 1.0,
    };
    entered.or_else(Field::ServiceFactor, |factor| factor, || Some(usual))
}
