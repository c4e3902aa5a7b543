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
    let mut found = Vec::new();
    let Ok(setting) = inputs.pump_setting.as_ref().map(|known| known.value) else { return found };
    if let (Some(pumping), Some(submergence), Ok(minimum)) =
        (water.pumping_level, water.submergence, &inputs.levels.minimum_submergence)
        && short_of(submergence, minimum.value, setting.max(pumping))
    {
        found.push(Finding::PumpingLevelAtPump { submergence, minimum: minimum.value });
    }
    if let Some(well_depth) = water.well_depth {
        let off_bottom = off_bottom(well_depth, setting);
        if short_of(off_bottom, feet(NEAR_BOTTOM_FEET), setting.max(well_depth)) {
            found.push(Finding::PumpNearBottom { off_bottom });
        }
    }
    found
}
