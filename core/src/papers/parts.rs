//! What is bought and brought to the site: the parts of the way that the job goes by, with sizes, counts and lengths.

use crate::cable::filter::Remedy;
use crate::cable::lead::{Conductor, Run};
use crate::evaluate::{DeviceBy, Evaluation, ORDER_SPARE, PoweredWay, wires};
use crate::job::{Control, Field, Job, Origin, Part};
use crate::power::family::{Feed, Start};
use crate::power::fit::FrameFit;
use crate::pump::motor::MotorKind;
use crate::quantity::{
    ElectricPotential, Entry, Length, Unit, in_amperes, in_feet, in_gpm, in_horsepower, in_kilovolt_amperes, in_psi,
    in_volts,
};
use crate::standards::conductor::Size;
use crate::standards::pipe::PipeSize;

/// A part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartName {
    /// The pump, for a flow at a head.
    Pump,
    /// The motor, by power and rated volts.
    Motor,
    /// What makes its power: drive, converter, starter.
    Equipment,
    /// What stands between that and the lead.
    Remedy(Remedy),
    /// A transformer behind the drive.
    StepUp,
    /// Overcurrent device ahead of the equipment.
    Device,
    /// Conductors of the supply.
    Supply,
    /// Their equipment ground.
    SupplyGround,
    /// Conductors of the lead to the motor.
    Lead,
    /// Their equipment ground.
    LeadGround,
    /// A pipe of the line.
    Pipe(Part),
    /// Check valve above a pump in a well.
    CheckValve,
    /// Pressure transducer, 4 to 20 mA.
    Transducer,
    /// Pressure tank.
    Tank,
    /// Relief valve.
    Relief,
}

/// What tells one part from another of its name.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PartSize {
    /// A figure, or two: flow and head, power and volts.
    Figures(Entry, Option<Entry>),
    /// A conductor.
    Conductor(Size),
    /// A pipe; nothing where only its inside diameter is known.
    Pipe(Option<PipeSize>, Entry),
    /// Nothing tells it.
    Plain,
}

/// A line of the list.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartLine {
    /// Which part.
    pub name: PartName,
    /// What tells it.
    pub size: PartSize,
    /// How many, of conductors the wires that lie side by side.
    pub count: u32,
    /// Length of each to order: with a spare of 3 % for conductors (common practice), as laid for pipe.
    pub length: Option<Entry>,
    /// Whether it goes by a figure that is assumed, or is provisional until a marking is read.
    pub assumed: bool,
}

impl PartLine {
    fn one(name: PartName, size: PartSize) -> Self {
        Self { name, size, count: 1, length: None, assumed: false }
    }

    fn of(name: PartName, value: f64, unit: Unit) -> Self {
        Self::one(name, PartSize::Figures(Entry::new(value, unit), None))
    }

    fn and(mut self, value: f64, unit: Unit) -> Self {
        if let PartSize::Figures(first, _) = self.size {
            self.size = PartSize::Figures(first, Some(Entry::new(value, unit)));
        }
        self
    }

    fn wire(name: PartName, size: Size, count: u32, length: Length) -> Self {
        let length = Some(Entry::new(in_feet(length * (1.0 + ORDER_SPARE)), Unit::Foot));
        Self { name, size: PartSize::Conductor(size), count, length, assumed: false }
    }

    fn assumed(self, assumed: bool) -> Self {
        Self { assumed, ..self }
    }
}

/// The parts of a job, in the order from the water to the supply; those that can be told.
///
/// # Units
/// Each figure with its unit.
/// # Range
/// The job that the evaluation is of; without a way that serves the electrical parts are missing.
#[must_use]
pub fn parts(job: &Job, answer: &Evaluation) -> Vec<PartLine> {
    let mut all = in_the_water(answer);
    all.extend(answer.ways.picked().map(|way| of_way(job, answer, way)).unwrap_or_default());
    all
}

fn in_the_water(answer: &Evaluation) -> Vec<PartLine> {
    let (water, inputs) = (&answer.water, &answer.inputs);
    let mut all = Vec::new();
    if let Some((demand, head)) = water.demand.zip(water.head.as_ref()) {
        let flow = water.running.unwrap_or(demand.flow.value);
        let pump = PartLine::of(PartName::Pump, in_gpm(flow), Unit::GallonPerMinute);
        all.push(pump.and(in_feet(head.total()), Unit::Foot));
    }
    for pipe in water.system.iter().flat_map(|system| &system.pipes) {
        let inside = Entry::new(crate::quantity::in_inches(pipe.inside.value), Unit::Inch);
        all.push(PartLine {
            name: PartName::Pipe(pipe.part),
            size: PartSize::Pipe(pipe.size, inside),
            count: 1,
            length: Some(Entry::new(in_feet(pipe.section.pipe.length), Unit::Foot)),
            assumed: pipe.inside.origin == Origin::Assumed,
        });
    }
    if answer.kind == MotorKind::Submersible && water.system.is_some() {
        all.push(PartLine::one(PartName::CheckValve, PartSize::Plain));
    }
    if let Some(tank) = water.tank {
        let gallons = crate::quantity::in_gallons(tank.volume);
        let typed = inputs.entered.is_typed(Field::TankVolume);
        all.push(
            PartLine::of(PartName::Tank, gallons, Unit::Gallon)
                .and(in_psi(tank.band.precharge), Unit::PoundPerSquareInch)
                .assumed(!typed),
        );
    }
    if let Some(found) = water.dead_head.filter(|found| found.over) {
        let line = PartLine::of(PartName::Relief, in_psi(found.rating.value), Unit::PoundPerSquareInch);
        let line = found.relief.map_or(line, |flow| line.and(in_gpm(flow), Unit::GallonPerMinute));
        all.push(line.assumed(found.rating.origin == Origin::Assumed));
    }
    all
}

fn of_way(job: &Job, answer: &Evaluation, way: &PoweredWay) -> Vec<PartLine> {
    let mut all = Vec::new();
    let Some(motor) = way.motor else { return all };
    let typed = answer.inputs.motor_power.as_ref().is_ok_and(|known| known.origin == Origin::Typed);
    all.push(
        PartLine::of(PartName::Motor, in_horsepower(motor.power), Unit::Horsepower)
            .and(in_volts(motor.rated), Unit::Volt)
            .assumed(!typed),
    );
    if let Some(lead) = way.lead {
        let count = wires(&motor).conductors().into();
        all.extend(wired([PartName::Lead, PartName::LeadGround], lead.run, count, lead.length));
    }
    let fitted = way.stress.map(|stress| stress.fitted).filter(|fitted| *fitted != Remedy::NoneNeeded);
    all.extend(
        fitted.map(|fitted| PartLine::one(PartName::Remedy(fitted), amps_at(in_amperes(motor.required), motor.rated))),
    );
    if let Some(rating) = way.step_up.and_then(|one| one.rating) {
        all.push(PartLine::of(PartName::StepUp, in_kilovolt_amperes(rating), Unit::KilovoltAmpere));
    }
    if let Some(FrameFit::Serves { frame, .. }) = way.frame {
        let line = PartLine::of(PartName::Equipment, in_horsepower(frame.power), Unit::Horsepower);
        all.push(line.and(in_amperes(frame.derated), Unit::Ampere));
    }
    // A drive that holds a pressure reads it; a pump that is switched on and off has a switch.
    if way.family.start == Start::Ramp && job.choices.control() == Control::ConstantPressure {
        let span = answer.inputs.entered.take(Field::TransducerSpan, |span| span).ok().flatten();
        let usual = answer.inputs.stand_in(Field::TransducerSpan).and_then(|entry| entry.to(Unit::PoundPerSquareInch));
        if let Some(value) = span.map(|known| known.value).or(usual) {
            let typed = answer.inputs.entered.is_typed(Field::TransducerSpan);
            all.push(PartLine::of(PartName::Transducer, value, Unit::PoundPerSquareInch).assumed(!typed));
        }
    }
    if let Some(draw) = way.draw {
        let sure = matches!(draw.device_by, DeviceBy::Entered | DeviceBy::Marked);
        all.push(PartLine::of(PartName::Device, in_amperes(draw.device), Unit::Ampere).assumed(!sure));
    }
    if let Some(supply) = way.supply {
        let wires = if way.family.supply.feed == Feed::SinglePhase { 2 } else { 3 };
        all.extend(wired([PartName::Supply, PartName::SupplyGround], supply.run, wires, supply.length));
    }
    all
}

fn amps_at(amps: f64, volts: ElectricPotential) -> PartSize {
    PartSize::Figures(Entry::new(amps, Unit::Ampere), Some(Entry::new(in_volts(volts), Unit::Volt)))
}

/// Conductors of a run and the ground of each set.
fn wired([phase, ground]: [PartName; 2], run: Run, wires: u32, length: Length) -> [PartLine; 2] {
    let Conductor { sets, size } = run.conductor;
    let sets = u32::from(sets);
    [PartLine::wire(phase, size, wires * sets, length), PartLine::wire(ground, run.ground, sets, length)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::evaluate::evaluate;
    use crate::job::{Sets, WayKey, wire};
    use crate::power::family::Kind;
    use crate::quantity::Entry;

    fn job() -> Job {
        wire::read_text(include_str!("../../examples/jobs/house_and_stock_well.json")).unwrap()
    }

    #[test]
    fn the_leads_are_those_of_the_way_with_their_spare() {
        let job = job();
        let answer = evaluate(&job);
        let way = answer.ways.picked().unwrap();
        let lead = way.lead.unwrap();
        let all = parts(&job, &answer);
        let line = |name| all.iter().find(|line| line.name == name).copied();
        let wire = line(PartName::Lead).unwrap();
        assert_eq!(wire.count, 3 * u32::from(lead.run.conductor.sets));
        assert_eq!(wire.size, PartSize::Conductor(lead.run.conductor.size));
        let ordered = wire.length.unwrap().value;
        assert!((ordered / in_feet(lead.length) - 1.03).abs() < 1e-12);
        assert!((ordered - in_feet(answer.here.as_ref().unwrap().order)).abs() < 1e-9);
        assert_eq!(line(PartName::LeadGround).unwrap().size, PartSize::Conductor(lead.run.ground));
        assert_eq!(line(PartName::Supply).unwrap().count, 2);
        assert!(line(PartName::Motor).is_some() && line(PartName::Pump).is_some());
        // Each part stands once.
        for (place, one) in all.iter().enumerate() {
            assert!(all[..place].iter().all(|other| other.name != one.name), "{one:?}");
        }
    }

    /// The start winding of a single-phase motor beyond 1.5 hp has a wire of its own, as its price counts (common practice).
    #[test]
    fn a_single_phase_motor_has_the_wires_that_it_needs() {
        for (power, wires) in [(1.5, 2), (2.0, 3), (5.0, 3)] {
            let mut job = job();
            job.set(Field::MotorPower, Some(Entry::new(power, Unit::Horsepower)));
            job.way = Some(WayKey::Generic(Kind::SinglePhaseMotor));
            let answer = evaluate(&job);
            let lead = answer.ways.picked().unwrap().lead.unwrap();
            let line = |name| parts(&job, &answer).into_iter().find(|line| line.name == name).unwrap();
            assert_eq!(line(PartName::Lead).count, wires * u32::from(lead.run.conductor.sets), "{power} hp");
            assert_eq!(line(PartName::LeadGround).count, u32::from(lead.run.conductor.sets), "{power} hp");
        }
    }

    #[test]
    fn sets_in_parallel_have_their_wires_and_grounds() {
        let mut job = Job::default();
        let figures = [(Field::MotorPower, 200.0, Unit::Horsepower), (Field::PumpSetting, 800.0, Unit::Foot)];
        for (field, value, unit) in figures.into_iter().chain([(Field::PoleDistance, 50.0, Unit::Foot)]) {
            job.set(field, Some(Entry::new(value, unit)));
        }
        job.choices.most_sets = Sets::new(4);
        job.way = Some(WayKey::Generic(Kind::LargeEconomy));
        let answer = evaluate(&job);
        let sets = u32::from(answer.ways.picked().unwrap().lead.unwrap().run.conductor.sets);
        assert!(sets > 1, "{sets}");
        let count = |name| parts(&job, &answer).into_iter().find(|line| line.name == name).unwrap().count;
        assert_eq!((count(PartName::Lead), count(PartName::LeadGround)), (3 * sets, sets));
    }

    #[test]
    fn a_transducer_is_bought_where_a_drive_holds_the_pressure() {
        let mut job = job();
        let bought = |job: &Job| parts(job, &evaluate(job)).iter().any(|line| line.name == PartName::Transducer);
        assert!(bought(&job));
        for (kind, control, expected) in [
            (Kind::Doubling, Control::ConstantPressure, true),
            (Kind::Doubling, Control::OnOff, false),
            (Kind::RotaryConverter, Control::ConstantPressure, false),
            (Kind::RotaryConverter, Control::OnOff, false),
        ] {
            (job.way, job.choices.control) = (Some(WayKey::Generic(kind)), Some(control));
            assert_eq!(bought(&job), expected, "{kind:?} {control:?}");
        }
    }

    #[test]
    fn without_figures_there_are_no_parts() {
        assert_eq!(parts(&Job::default(), &evaluate(&Job::default())), []);
    }
}
