//! Choosing the conductor of a motor lead: the smallest that meets ampacity and drop, and how far each one reaches.

use super::ampacity::{Setting, ampacity};
use super::conductor::table_resistance;
use super::drop::{Load, longest_lead, voltage_drop};
use super::ground::{equipment_ground, grown_ground};
use super::reactance::{Build, reactance};
use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, Length, OhmsPerLength};
use crate::standards::conductor::{Metal, Size};
use serde::Serialize;

/// The smallest size that may run in parallel sets (NEC 310.10(G)).
pub const SMALLEST_PARALLEL: Size = Size::Awg1_0;

/// How parallel sets lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Laying {
    /// Side by side, so that all their conductors count as one bundle: in a well, or in one conduit.
    Together,
    /// Each set in a conduit of its own, with a ground of its own, so that only its own conductors count.
    Apart,
}

/// Everything that the choice depends on beside the length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demands {
    /// The motor at the far end.
    pub load: Load,
    /// Ampacity that the phases need.
    pub required: ElectricCurrent,
    /// Where the conductors lie and how they end.
    pub setting: Setting,
    /// How the lead is built.
    pub build: Build,
    /// Largest drop, as a share of the sending voltage.
    pub allowed_drop: f64,
    /// Most parallel sets, 1 or more; 1 in a well unless asked otherwise.
    pub most_sets: u8,
    /// Rating of the overcurrent device ahead, for the equipment ground.
    pub device: ElectricCurrent,
}

/// A size and how many sets of it run in parallel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Conductor {
    /// Sets in parallel, 1 for an ordinary lead.
    pub sets: u8,
    /// Size of each phase conductor.
    pub size: Size,
}

impl Conductor {
    /// Metal area of one phase, all sets together.
    ///
    /// # Units
    /// Circular mils.
    /// # Range
    /// Listed sizes.
    /// # Source
    /// [nec-2023-ch9-t8].
    #[must_use]
    pub fn cmil(self) -> f64 {
        f64::from(self.sets) * self.size.row().cmil
    }
}

/// Why a size was chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Governs {
    /// The smallest size that may carry the current already meets the drop.
    Ampacity,
    /// Voltage drop asked for more metal than the current does.
    Drop,
}

/// One conductor that the lead takes over a stretch of lengths.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// Phase conductors.
    pub conductor: Conductor,
    /// Equipment ground of each set.
    pub ground: Size,
    /// True where the ground grew with the phases.
    pub ground_grew: bool,
    /// Ampacity of all sets together, corrected.
    pub ampacity: ElectricCurrent,
    /// What governed the choice.
    pub governs: Governs,
    /// Longest lead it serves; at this very length it still does.
    pub longest: Length,
}

/// The runs of a lead, shortest first: each conductor with the longest lead that it serves. Empty where no listed
/// conductor may carry the current.
///
/// Candidates are single conductors 14 AWG to 500 kcmil, then, where asked, two and more sets of 1/0 AWG and larger. A
/// lead takes the first run whose `longest` is not shorter than it, so the next smaller conductor fails one limit.
///
/// # Units
/// Lengths one way.
/// # Range
/// As [`longest_lead`], [`ampacity`] and [`equipment_ground`]; at least one set.
/// # Errors
/// [`OutsideRange`] from those; names `most_sets` where it is 0.
/// # Source
/// [nec-2023-310.16], [nec-2023-430.22], [nec-2023-310.10g], [nec-2023-250.122]; the drop limit is a design choice
/// (NEC informational notes; practice for a motor lead: 5 %).
pub fn runs(demands: &Demands) -> Result<Vec<Run>, OutsideRange> {
    runs_laid(demands, Laying::Together)
}

/// The runs of a lead whose sets lie as said; see [`runs`].
///
/// # Units
/// As [`runs`].
/// # Range
/// As [`runs`]. One set lies the same either way.
/// # Errors
/// As [`runs`].
/// # Source
/// As [`runs`]; [nec-2023-310.15c] counts the conductors of each raceway.
pub fn runs_laid(demands: &Demands, laying: Laying) -> Result<Vec<Run>, OutsideRange> {
    OutsideRange::check("most_sets", f64::from(demands.most_sets), 1.0, f64::from(u8::MAX))?;
    let base_ground = equipment_ground(demands.device, demands.setting.metal)?;
    let mut found: Vec<Run> = Vec::new();
    let mut least = None;
    for conductor in candidates(demands.most_sets) {
        let Some(ampacity) = ampacity_of(conductor, demands, laying) else { continue };
        if ampacity < demands.required {
            continue;
        }
        let least = *least.get_or_insert(conductor);
        let (r, x) = impedance(conductor, demands.setting.metal, demands.build);
        let longest = longest_lead(demands.load, r, x, demands.allowed_drop)?;
        if found.last().is_some_and(|last| last.longest >= longest) {
            continue;
        }
        let plain = base_ground.min(conductor.size);
        let ground = grown_ground(base_ground, conductor.cmil() / least.cmil(), conductor.size);
        found.push(Run {
            conductor,
            ground,
            ground_grew: ground > plain,
            ampacity,
            governs: if conductor == least { Governs::Ampacity } else { Governs::Drop },
            longest,
        });
    }
    Ok(found)
}

/// The run that a lead of this length takes, or `None` where no listed conductor serves it.
///
/// # Units
/// `length` one way.
/// # Range
/// Any length; `runs` as [`runs`] returns them.
/// # Source
/// The rule of [`runs`].
#[must_use]
pub fn run_for(runs: &[Run], length: Length) -> Option<&Run> {
    runs.iter().find(|run| run.longest >= length)
}

/// Resistance and reactance per length of all sets of a conductor together.
///
/// # Units
/// Ohms per length.
/// # Range
/// Listed sizes; sets of equal length share the current equally.
/// # Source
/// [nec-2023-ch9-t8]; [`reactance`].
#[must_use]
pub fn impedance(conductor: Conductor, metal: Metal, build: Build) -> (OhmsPerLength, OhmsPerLength) {
    let sets = f64::from(conductor.sets.max(1));
    (table_resistance(conductor.size, metal) / sets, reactance(conductor.size, build) / sets)
}

/// Drop over a lead of this conductor and length; `None` where the load can't be fed.
///
/// # Units
/// `length` one way; the result volts, line to line.
/// # Range
/// As [`voltage_drop`].
/// # Errors
/// As [`voltage_drop`].
/// # Source
/// As [`voltage_drop`].
pub fn drop_over(
    demands: &Demands,
    conductor: Conductor,
    length: Length,
) -> Result<Option<ElectricPotential>, OutsideRange> {
    let (r, x) = impedance(conductor, demands.setting.metal, demands.build);
    voltage_drop(demands.load, r, x, length)
}

/// Ampacity of all sets together.
fn ampacity_of(conductor: Conductor, demands: &Demands, laying: Laying) -> Option<ElectricCurrent> {
    let sets = conductor.sets.max(1);
    let bundled = match laying {
        Laying::Together => usize::from(sets),
        Laying::Apart => 1,
    };
    let bundle = usize::from(demands.load.phases.conductors()) * bundled;
    ampacity(conductor.size, demands.setting, bundle).map(|one| one * f64::from(sets))
}

fn candidates(most_sets: u8) -> impl Iterator<Item = Conductor> {
    (1..=most_sets).flat_map(|sets| {
        Size::ALL
            .into_iter()
            .filter(move |size| sets == 1 || *size >= SMALLEST_PARALLEL)
            .map(move |size| Conductor { sets, size })
    })
}
