//! Every answer that can be opened, and the figure that the evaluation itself holds for it.

use super::outlook;
use wellwright_core::evaluate::{Basis, Evaluation, NoDuty, PoweredWay};
use wellwright_core::job::{Part, Way};
use wellwright_core::papers::Topic;
use wellwright_core::power::family::{Feed, Kind};
use wellwright_core::power::fit::FrameFit;
use wellwright_core::power::transformer::{Loading, apparent_power};
use wellwright_core::quantity::{
    ElectricCurrent, ElectricPotential, Entry, Length, Power, Pressure, Unit, VolumeRate, in_amperes, in_feet,
    in_feet_per_second, in_gallons, in_gpm, in_hertz, in_horsepower, in_inches, in_kilovolt_amperes, in_pounds, in_psi,
    in_volts, in_watts,
};

pub fn topics() -> Vec<Topic> {
    let mut all = of_the_lead();
    all.extend(of_the_water());
    all.extend(of_the_ways());
    all.extend(of_the_service());
    all.extend(outlook::topics());
    all
}

/// Kinds of answers of a way.
pub const OF_A_WAY: [fn(usize) -> Topic; 19] = [
    Topic::WayFrame,
    Topic::WayInput,
    Topic::WaySupply,
    Topic::WaySupplyDrop,
    Topic::WayDevice,
    Topic::WayVolts,
    Topic::WayPeak,
    Topic::WaySag,
    Topic::WayLoading,
    Topic::WayHarmonics,
    Topic::WayFault,
    Topic::WayStart,
    Topic::WayGenerator,
    Topic::WayCost,
    Topic::WayRequired,
    Topic::WayLead,
    Topic::WayMetal,
    Topic::WayStepUp,
    Topic::WayIdler,
];

/// Of every generic way, and of one that is not there.
pub fn of_the_ways() -> Vec<Topic> {
    OF_A_WAY.into_iter().flat_map(|topic| (0..=Kind::ALL.len()).map(topic)).collect()
}

pub fn of_the_service() -> Vec<Topic> {
    const OF_A_LEAD: [fn(Way) -> Topic; 5] =
        [Topic::LeadTemperature, Topic::LeadLoss, Topic::Alternating, Topic::FlatUnbalance, Topic::EconomicSize];
    OF_A_LEAD.into_iter().flat_map(|topic| Way::ALL.map(topic)).collect()
}

/// The way that a topic is of.
pub fn place(topic: Topic) -> Option<usize> {
    (0..=Kind::ALL.len()).find(|place| OF_A_WAY.iter().any(|of| of(*place) == topic))
}

pub fn of_the_lead() -> Vec<Topic> {
    let ways = Way::ALL.into_iter();
    let mut all: Vec<Topic> = ways
        .flat_map(|way| [Topic::MotorCurrent(way), Topic::Ampacity(way), Topic::Drop(way), Topic::FullLoadHeat(way)])
        .collect();
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
        Topic::FullLoadHeat(way) => Entry::new(in_watts(lead(way)?.loss), Unit::Watt),
        Topic::CableCost(way, Basis::Cable) => Entry::new(lead(way)?.cable.0, Unit::Dollar),
        Topic::CableCost(way, Basis::Installed) => Entry::new(lead(way)?.installed.0, Unit::Dollar),
        Topic::CableCost(way, Basis::Lifetime) => Entry::new(lead(way)?.lifetime?.0, Unit::Dollar),
        Topic::Saving(basis) => Entry::new(answer.here.as_ref()?.saving?.on(basis)?.0, Unit::Dollar),
        Topic::BreakEven(basis) => foot(answer.sweep.as_ref()?.break_even(basis).lasting()?.depth),
        _ => match (place(topic), own_of_the_service(answer, topic)) {
            (Some(place), _) => return own_of_a_way(answer.ways.all.get(place)?, topic),
            (None, Some(own)) => own,
            (None, None) => return own_of_the_water(answer, topic).or_else(|| outlook::own(answer, topic)),
        },
    })
}

fn ampere(current: ElectricCurrent) -> Entry {
    Entry::new(in_amperes(current), Unit::Ampere)
}
fn volt(potential: ElectricPotential) -> Entry {
    Entry::new(in_volts(potential), Unit::Volt)
}
fn share(share: f64) -> Entry {
    Entry::new(100.0 * share, Unit::Percent)
}

fn own_of_a_way(way: &PoweredWay, topic: Topic) -> Option<Entry> {
    Some(match topic {
        Topic::WayFrame(_) => match way.frame? {
            FrameFit::Serves { frame, .. } => ampere(frame.derated),
            FrameFit::CurrentShort { most, .. } => ampere(most),
            FrameFit::SizeShort { most, .. } => hp(most),
            FrameFit::AskMaker(_) => return None,
        },
        Topic::WayInput(_) => ampere(way.draw?.current),
        Topic::WaySupply(_) => ampere(way.supply?.run.ampacity),
        Topic::WaySupplyDrop(_) => volt(way.supply?.drop),
        Topic::WayDevice(_) => ampere(way.draw?.device),
        Topic::WayVolts(_) => volt(way.volts?.budget.at_motor),
        Topic::WayPeak(_) => volt(way.stress?.peak),
        Topic::WaySag(_) => volt(way.pole?.sag?.at_equipment),
        Topic::WayLoading(_) => match way.pole?.loading {
            Loading::Within(load) | Loading::Close(load) | Loading::Over(load) => share(load),
        },
        Topic::WayHarmonics(_) => share(way.pole?.harmonics?.distortion),
        Topic::WayFault(_) => Entry::new(in_amperes(way.pole?.fault_here) / 1000.0, Unit::Kiloampere),
        Topic::WayStart(_) => share(way.start?.dip.at_motor),
        Topic::WayGenerator(_) => Entry::new(in_kilovolt_amperes(way.set?.needed()), Unit::KilovoltAmpere),
        Topic::WayCost(_) => Entry::new(way.cost?.first.0, Unit::Dollar),
        Topic::WayRequired(_) => ampere(way.motor?.required),
        Topic::WayLead(_) => volt(way.lead?.drop),
        Topic::WayMetal(_) => Entry::new(in_pounds(way.cost?.metal), Unit::Pound),
        Topic::WayStepUp(_) => {
            let needed = apparent_power(way.way?.sending(), way.motor?.required, Feed::ThreePhase).ok()?;
            Entry::new(in_kilovolt_amperes(way.step_up?.rating.unwrap_or(needed)), Unit::KilovoltAmpere)
        }
        Topic::WayIdler(_) => hp(way.idler?.power),
        _ => return None,
    })
}

fn own_of_the_service(answer: &Evaluation, topic: Topic) -> Option<Entry> {
    let lead = |way: Way| answer.service[way as usize].as_ref();
    Some(match topic {
        Topic::LeadTemperature(way) => Entry::new(lead(way)?.warm.temperature.0, Unit::DegreeCelsius),
        Topic::LeadLoss(way) => Entry::new(in_watts(lead(way)?.loss), Unit::Watt),
        Topic::Alternating(way) => share(lead(way)?.alternating?),
        Topic::FlatUnbalance(way) => share(lead(way)?.flat?.voltage_unbalance),
        Topic::EconomicSize(way) => {
            let lead = lead(way)?;
            Entry::new(lead.choice?.economic.cost(lead.length).0, Unit::Dollar)
        }
        _ => return None,
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
