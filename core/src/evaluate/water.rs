//! The levels in the well, and what is unsafe about them. Only what was entered is judged.

use crate::finding::Finding;
use crate::job::Inputs;
use crate::quantity::{Length, feet};
use crate::water::level::{off_bottom, pumping_level, short_of, submergence};

/// Least distance from the pump to the well's bottom, feet: common practice, for sand and sludge.
pub const NEAR_BOTTOM_FEET: f64 = 10.0;

/// The levels in the well: depths below ground, `None` where what they need was not entered or can't be used.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Water {
    /// Water with the pump at rest.
    pub static_level: Option<Length>,
    /// Water while the pump runs.
    pub pumping_level: Option<Length>,
    /// Depth of water above the pump while it runs; below zero the pump hangs dry.
    pub submergence: Option<Length>,
    /// The well's bottom.
    pub well_depth: Option<Length>,
}

pub(super) fn water(inputs: &Inputs) -> Water {
    let entered = |level: &Result<Option<Length>, _>| level.as_ref().ok().copied().flatten();
    let levels = &inputs.levels;
    let static_level = entered(&levels.static_level);
    let pumping = static_level.zip(entered(&levels.drawdown)).map(|(level, drawdown)| pumping_level(level, drawdown));
    let setting = inputs.pump_setting.as_ref().ok().map(|known| known.value);
    Water {
        static_level,
        pumping_level: pumping,
        submergence: setting.zip(pumping).map(|(setting, pumping)| submergence(setting, pumping)),
        well_depth: entered(&levels.well_depth),
    }
}

pub(super) fn findings(inputs: &Inputs, water: &Water) -> Vec<Finding> {
    let setting = inputs.pump_setting.as_ref().ok().map(|known| known.value);
    let at_pump = setting.and_then(|setting| little_water(inputs, water, setting));
    let near_bottom = setting.and_then(|setting| near_bottom(water, setting));
    at_pump.into_iter().chain(near_bottom).chain(below_bottom(water)).collect()
}

/// Little water above the pump, or none: while it runs, or at rest where the drawdown is not known.
fn little_water(inputs: &Inputs, water: &Water, setting: Length) -> Option<Finding> {
    let level = water.pumping_level.or(water.static_level)?;
    let minimum = inputs.levels.minimum_submergence.as_ref().ok()?.value;
    let submergence = submergence(setting, level);
    let short = submergence <= feet(0.0) || short_of(submergence, minimum, setting.max(level));
    short.then_some(Finding::PumpingLevelAtPump { submergence, minimum })
}

fn near_bottom(water: &Water, setting: Length) -> Option<Finding> {
    let well_depth = water.well_depth?;
    let off_bottom = off_bottom(well_depth, setting);
    short_of(off_bottom, feet(NEAR_BOTTOM_FEET), setting.max(well_depth))
        .then_some(Finding::PumpNearBottom { off_bottom })
}

/// The first level that leaves no water above the bottom: at rest, then while the pump runs.
fn below_bottom(water: &Water) -> Option<Finding> {
    let bottom = water.well_depth?;
    let mut levels = [water.static_level, water.pumping_level].into_iter().flatten();
    let level = levels.find(|level| submergence(bottom, *level) <= feet(0.0))?;
    Some(Finding::LevelBelowBottom { level, bottom })
}
