//! The columns: their names, and where a figure stands in a family.

use crate::power::family::{Bus, Change, Family, Filter, OutputRule, Start, Step};
use crate::quantity::{amperes, in_amperes, in_meters, meters};

/// A column of the table.
#[derive(Clone, Copy)]
pub(super) enum Column {
    Name,
    Kind,
    Hp,
    Amperes(&'static Amperes),
    Figure(&'static Figure),
    Enclosure,
}

/// The column of a family's name.
pub const NAME: &str = "name";
pub(super) const KIND: &str = "kind";
/// The column of a frame's size.
pub const HP: &str = "hp";
/// The column of the type of enclosure.
pub const ENCLOSURE: &str = "enclosure";
/// The columns of a frame: its size and its amperes.
pub const FRAME: [&str; 5] = [HP, "output_a_240", "output_a_480", "input_a", "device_a"];
/// Every column but name and kind.
pub const COLUMNS: [&str; 26] = [
    HP,
    "output_a_240",
    "output_a_480",
    "input_a",
    "device_a",
    "displacement",
    "thd_pct",
    "efficiency_pct",
    "capacity_pct",
    "filter_drop_pct",
    "transformer_drop_pct",
    "output_pct",
    "bus_v_240",
    "bus_v_480",
    "bus_rise",
    "locked_rotor",
    "rated_c",
    "per_c_pct",
    "to_c_above",
    "rated_m",
    "per_100_m_pct",
    "highest_m",
    "price_usd",
    "price_per_hp_usd",
    "short_circuit_ka",
    ENCLOSURE,
];

/// Amperes of a frame.
pub(super) struct Amperes {
    pub name: &'static str,
    pub slot: fn(&mut Step) -> &mut Option<f64>,
}

/// A figure of the whole family.
pub(super) struct Figure {
    pub name: &'static str,
    /// What [`Family::checked`] calls it.
    pub arguments: &'static [&'static str],
    /// How far the decimal point moves to the right from the cell to the family.
    pub places: i32,
    /// The figure; `None` where it is not known or the family has no such thing.
    pub of: fn(&Family) -> Option<f64>,
    /// Sets the figure; false where the family has no such thing.
    pub set: fn(&mut Family, f64) -> bool,
}

impl Column {
    pub(super) fn named(name: &str) -> Option<Self> {
        let others = [Self::Name, Self::Kind, Self::Hp, Self::Enclosure].into_iter();
        let mut all = others.chain(AMPERES.iter().map(Self::Amperes)).chain(FIGURES.iter().map(Self::Figure));
        all.find(|column| column.name().eq_ignore_ascii_case(name))
    }

    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Name => NAME,
            Self::Kind => KIND,
            Self::Hp => HP,
            Self::Amperes(amperes) => amperes.name,
            Self::Figure(figure) => figure.name,
            Self::Enclosure => ENCLOSURE,
        }
    }
}

impl Figure {
    /// The figure that [`Family::checked`] calls so.
    pub(super) fn of_argument(argument: &str) -> Option<&'static Self> {
        FIGURES.iter().find(|figure| figure.arguments.contains(&argument))
    }
}

pub(super) static AMPERES: [Amperes; 4] = [
    Amperes { name: FRAME[1], slot: |step| &mut step.low },
    Amperes { name: FRAME[2], slot: |step| &mut step.high },
    Amperes { name: FRAME[3], slot: |step| &mut step.input },
    Amperes { name: FRAME[4], slot: |step| &mut step.device },
];

const PERCENT: i32 = -2;
const KILO: i32 = 3;

pub(super) static FIGURES: [Figure; 20] = [
    figure(
        "displacement",
        &["displacement"],
        0,
        |f| Some(f.input.displacement),
        |f, v| put(&mut f.input.displacement, v),
    ),
    figure("thd_pct", &["distortion"], PERCENT, |f| Some(f.input.distortion), |f, v| put(&mut f.input.distortion, v)),
    figure(
        "efficiency_pct",
        &["efficiency"],
        PERCENT,
        |f| Some(f.input.efficiency),
        |f, v| put(&mut f.input.efficiency, v),
    ),
    figure("capacity_pct", &["capacity"], PERCENT, |f| Some(f.capacity), |f, v| put(&mut f.capacity, v)),
    figure("filter_drop_pct", &["filter_share"], PERCENT, filter_drop, set_filter_drop),
    figure("transformer_drop_pct", &["transformer_drop"], PERCENT, transformer_drop, set_transformer_drop),
    figure("output_pct", &["output_floor", "output_share"], PERCENT, |f| Some(output(f)), set_output),
    figure("bus_v_240", &["bus_low"], 0, |f| held(f).map(|volts| volts[0]), |f, v| set_held(f, 0, v)),
    figure("bus_v_480", &["bus_high"], 0, |f| held(f).map(|volts| volts[1]), |f, v| set_held(f, 1, v)),
    figure("bus_rise", &["bus_rise"], 0, rise, set_rise),
    figure("locked_rotor", &["locked_rotor"], 0, locked_rotor, set_locked_rotor),
    figure("rated_c", &["rated_ambient"], 0, |f| Some(f.rating.ambient.0), |f, v| put(&mut f.rating.ambient.0, v)),
    figure(
        "per_c_pct",
        &["per_degree"],
        PERCENT,
        |f| Some(f.rating.per_degree),
        |f, v| put(&mut f.rating.per_degree, v),
    ),
    figure("to_c_above", &["degrees"], 0, |f| Some(f.rating.degrees), |f, v| put(&mut f.rating.degrees, v)),
    figure(
        "rated_m",
        &["rated_altitude"],
        0,
        |f| Some(in_meters(f.rating.altitude)),
        |f, v| put(&mut f.rating.altitude, meters(v)),
    ),
    figure(
        "per_100_m_pct",
        &["per_100_m"],
        PERCENT,
        |f| Some(f.rating.per_100_m),
        |f, v| put(&mut f.rating.per_100_m, v),
    ),
    figure(
        "highest_m",
        &["highest"],
        0,
        |f| Some(in_meters(f.rating.highest)),
        |f, v| put(&mut f.rating.highest, meters(v)),
    ),
    figure(
        "price_usd",
        &["price"],
        0,
        |f| Some(f.price?.fixed.0),
        |f, v| put(&mut f.price.get_or_insert_default().fixed.0, v),
    ),
    figure(
        "price_per_hp_usd",
        &["price_per_hp"],
        0,
        |f| Some(f.price?.per_hp.0),
        |f, v| put(&mut f.price.get_or_insert_default().per_hp.0, v),
    ),
    figure(
        "short_circuit_ka",
        &["short_circuit"],
        KILO,
        |f| f.marking.short_circuit.map(in_amperes),
        |f, v| put(&mut f.marking.short_circuit, Some(amperes(v))),
    ),
];

const fn figure(
    name: &'static str,
    arguments: &'static [&'static str],
    places: i32,
    of: fn(&Family) -> Option<f64>,
    set: fn(&mut Family, f64) -> bool,
) -> Figure {
    Figure { name, arguments, places, of, set }
}

fn put<T>(slot: &mut T, value: T) -> bool {
    *slot = value;
    true
}

fn filter_drop(family: &Family) -> Option<f64> {
    match family.filter {
        Filter::Sine { share, .. } => Some(share),
        Filter::None | Filter::MadeLine => None,
    }
}

fn set_filter_drop(family: &mut Family, value: f64) -> bool {
    match &mut family.filter {
        Filter::Sine { share, .. } => put(share, value),
        Filter::None | Filter::MadeLine => false,
    }
}

fn transformer_drop(family: &Family) -> Option<f64> {
    match family.change {
        Change::SteppedUp { drop } => Some(drop),
        Change::None | Change::Doubled => None,
    }
}

fn set_transformer_drop(family: &mut Family, value: f64) -> bool {
    match &mut family.change {
        Change::SteppedUp { drop } => put(drop, value),
        Change::None | Change::Doubled => false,
    }
}

fn output(family: &Family) -> f64 {
    match family.output {
        OutputRule::Held { floor } => floor,
        OutputRule::Follows { share } => share,
    }
}

fn set_output(family: &mut Family, value: f64) -> bool {
    match &mut family.output {
        OutputRule::Held { floor: slot } | OutputRule::Follows { share: slot } => put(slot, value),
    }
}

fn held(family: &Family) -> Option<[f64; 2]> {
    match family.bus {
        Bus::Held { low, high } => Some([low, high]),
        Bus::Peak { .. } | Bus::Mean { .. } | Bus::None => None,
    }
}

fn set_held(family: &mut Family, class: usize, value: f64) -> bool {
    match &mut family.bus {
        Bus::Held { low, high } => put(if class == 0 { low } else { high }, value),
        Bus::Peak { .. } | Bus::Mean { .. } | Bus::None => false,
    }
}

fn rise(family: &Family) -> Option<f64> {
    match family.bus {
        Bus::Peak { rise } | Bus::Mean { rise } => Some(rise),
        Bus::Held { .. } | Bus::None => None,
    }
}

fn set_rise(family: &mut Family, value: f64) -> bool {
    match &mut family.bus {
        Bus::Peak { rise } | Bus::Mean { rise } => put(rise, value),
        Bus::Held { .. } | Bus::None => false,
    }
}

fn locked_rotor(family: &Family) -> Option<f64> {
    match family.start {
        Start::AcrossTheLine { multiple } => Some(multiple),
        Start::Ramp => None,
    }
}

fn set_locked_rotor(family: &mut Family, value: f64) -> bool {
    match &mut family.start {
        Start::AcrossTheLine { multiple } => put(multiple, value),
        Start::Ramp => false,
    }
}
