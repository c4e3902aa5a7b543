//! Every answer that can be opened, and the figure that the evaluation itself holds for it.

use wellwright_core::evaluate::{Basis, Evaluation, NoDuty};
use wellwright_core::job::{Part, Way};
use wellwright_core::papers::Topic;
use wellwright_core::quantity::{
    Entry, Length, Power, Pressure, Unit, VolumeRate, in_amperes, in_feet, in_feet_per_second, in_gallons, in_gpm,
    in_hertz, in_horsepower, in_inches, in_pounds, in_psi, in_volts,
};

pub fn topics() -> Vec<Topic> {
    let mut all = of_the_lead();
    all.extend(of_the_water());
    all
}

pub fn of_the_lead() -> Vec<Topic> {
    let ways = Way::ALL.into_iter();
    let mut all: Vec<Topic> =
        ways.flat_map(|way| [Topic::MotorCurrent(way), Topic::Ampacity(way), Topic::Drop(way)]).collect();
    for basis in Basis::ALL {
        all.extend(Way::ALL.map(|way| Topic::CableCost(way, basis)));
        all.extend([Topic::Saving(basis), Topic::BreakEven(basis)]);
    }
    all
}

pub fn of_the_water() -> Vec<Topic> {
    let mut all = vec![Topic::PumpingLevel, Topic::Submergence, Topic::Demand, Topic::Drawdown, Topic::WellGives];
    all.extend(Part::ALL.into_iter().flat_map(|part| [Topic::Friction(part), Topic::Fittings(part)]));
    all.extend([Topic::TotalHead, Topic::PressureHead, Topic::VelocityHead, Topic::SuctionHead, Topic::DeadHead]);
    all.extend([Topic::Cooling, Topic::CoolingFlow, Topic::Tank, Topic::Surge, Topic::Hanging, Topic::ShaftPower]);
    all.extend([Topic::PumpSpeed, Topic::LowestSpeed, Topic::MotorLoad]);
    all.extend([
        Topic::FullSpeed,
        Topic::ShareOfBest,
        Topic::Relief,
        Topic::OnPipe,
        Topic::WidestSleeve,
        Topic::Weekly,
    ]);
    all.extend(Way::ALL.map(Topic::RunningCurrent));
    all
}

fn foot(length: Length) -> Entry {
    Entry::new(in_feet(length), Unit::Foot)
}
fn gpm(flow: VolumeRate) -> Entry {
    Entry::new(in_gpm(flow), Unit::GallonPerMinute)
}
fn psi(pressure: Pressure) -> Entry {
    Entry::new(in_psi(pressure), Unit::PoundPerSquareInch)
}
fn hp(power: Power) -> Entry {
    Entry::new(in_horsepower(power), Unit::Horsepower)
}

/// The figure that the evaluation itself holds for a topic.
pub fn own(answer: &Evaluation, topic: Topic) -> Option<Entry> {
    let lead = |way: Way| answer.here.as_ref().and_then(|here| here.way(way));
    Some(match topic {
        Topic::MotorCurrent(way) => {
            let current = answer.inputs.motor_current[way as usize].as_ref().ok()?;
            Entry::new(in_amperes(current.sizing), Unit::Ampere)
        }
        Topic::Ampacity(way) => Entry::new(in_amperes(lead(way)?.run.run.ampacity), Unit::Ampere),
        Topic::Drop(way) => Entry::new(in_volts(lead(way)?.drop), Unit::Volt),
        Topic::CableCost(way, Basis::Cable) => Entry::new(lead(way)?.cable.0, Unit::Dollar),
        Topic::CableCost(way, Basis::Installed) => Entry::new(lead(way)?.installed.0, Unit::Dollar),
        Topic::Saving(basis) => Entry::new(answer.here.as_ref()?.saving?.on(basis).0, Unit::Dollar),
        Topic::BreakEven(basis) => foot(answer.sweep.as_ref()?.break_even(basis).lasting()?.depth),
        _ => return own_of_the_water(answer, topic),
    })
}

fn own_of_the_water(answer: &Evaluation, topic: Topic) -> Option<Entry> {
    let (water, motor) = (&answer.water, answer.motor);
    let section = |part: Part| {
        let pipes = &water.system.as_ref()?.pipes;
        water.head.as_ref()?.sections.get(pipes.iter().position(|pipe| pipe.part == part)?)
    };
    Some(match topic {
        Topic::PumpingLevel => foot(water.pumping_level?),
        Topic::Submergence => foot(water.submergence?),
        Topic::Demand => gpm(water.demand.filter(|demand| demand.daily.is_some())?.flow.value),
        Topic::Drawdown => foot(water.drawdown?),
        Topic::WellGives => gpm(water.well_gives?),
        Topic::TotalHead => foot(water.head.as_ref()?.total()),
        Topic::Friction(part) => foot(section(part)?.pipe(water.system.as_ref()?.method)),
        Topic::Fittings(part) => foot(section(part)?.fittings),
        Topic::PressureHead => foot(water.head.as_ref()?.pressure),
        Topic::VelocityHead => foot(water.head.as_ref()?.velocity),
        Topic::SuctionHead => foot(water.suction?.available()),
        Topic::DeadHead => psi(water.dead_head?.gauge),
        Topic::Cooling => Entry::new(in_feet_per_second(water.cooling?.speed), Unit::FootPerSecond),
        Topic::CoolingFlow => gpm(water.cooling?.least_flow),
        Topic::Tank => Entry::new(in_gallons(water.tank?.drawdown), Unit::Gallon),
        Topic::Surge => psi(water.surge?.rise),
        Topic::Hanging => Entry::new(in_pounds(water.hanging?.total()), Unit::Pound),
        Topic::ShaftPower => hp(water.shaft()?),
        Topic::PumpSpeed => {
            let pump = water.pump.as_ref()?;
            let frequency = match pump.duty {
                Err(NoDuty::Faster { needed }) => needed,
                _ => pump.frequency()?,
            };
            Entry::new(in_hertz(frequency), Unit::Hertz)
        }
        Topic::LowestSpeed => Entry::new(in_hertz(water.pump.as_ref()?.lowest?), Unit::Hertz),
        Topic::FullSpeed => gpm(water.pump.as_ref()?.most?.ok()?.flow),
        Topic::ShareOfBest => Entry::new(100.0 * water.pump.as_ref()?.share_of_best?, Unit::Percent),
        Topic::Relief => gpm(water.dead_head?.relief?),
        Topic::OnPipe => psi(water.dead_head?.on_pipe?),
        Topic::WidestSleeve => Entry::new(in_inches(water.cooling?.widest_sleeve), Unit::Inch),
        Topic::Weekly => Entry::new(in_gallons(water.demand?.weekly?), Unit::Gallon),
        Topic::MotorLoad => Entry::new(100.0 * motor?.share.of_rating, Unit::Percent),
        Topic::RunningCurrent(way) => Entry::new(in_amperes(motor?.running[way as usize]?), Unit::Ampere),
        _ => return None,
    })
}
