//! Measures of the well section that its parts and words share.

use super::facts::Facts;
use super::layout::Layout;
use super::spec::View;

/// Length of the pump above its intake and of the motor below it, and the least that is drawn of them.
const PUMP: (f64, f64) = (30.0, 12.0);
const MOTOR: (f64, f64) = (34.0, 5.0);
/// How far a motor may hang past the end of the scale: on the desk at least and at most, on a phone.
const HANGS: (f64, f64) = (6.0, 14.0);
const HANGS_COMPACT: f64 = 10.0;
/// From the ground line to the pump.
const UNDER_GROUND: f64 = 3.0;
/// Water this close to the surface or the pump is drawn apart from it.
const CLEAR: f64 = 3.0;
/// Height of the note in the corner, in sizes of the lettering.
const NOTE: f64 = 1.4;

/// The pump as drawn: larger than scale, its intake at the true depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pump {
    /// Height of its depth.
    pub depth: f64,
    /// Upper end of the pump.
    pub top: f64,
    /// The intake: at its depth, unless the pump would then stand out of the ground.
    pub intake: f64,
    /// Lower end of the motor.
    pub end: f64,
}

/// Where the casing ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bottom {
    /// The job does not say.
    Unknown,
    /// At a height.
    At(f64),
    /// Below the end of the scale.
    Beyond,
}

/// Measures of the section.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// Places of the parts.
    pub layout: Layout,
    /// Left and right side of the casing.
    pub sides: (f64, f64),
    /// Upper end of the casing.
    pub cap: f64,
    /// The pump.
    pub pump: Option<Pump>,
    /// Water at rest, where the scale shows it.
    pub table: Option<f64>,
    /// Water in the casing, where the scale shows it.
    pub level: Option<f64>,
    /// The well's bottom.
    pub bottom: Bottom,
    /// Lower end of what is drawn of the ground.
    pub floor: f64,
    /// Size of the pump against the desk's.
    pub size: f64,
}

impl Frame {
    /// The frame of a well.
    #[must_use]
    pub fn of(facts: &Facts, view: &View) -> Self {
        let layout = view.layout;
        let scale = layout.scale(view.end);
        let size = if layout.compact { 0.8 } else { 1.0 };
        let shown = |depth: wellwright_core::quantity::Length| (depth <= view.end).then(|| scale.y(depth));
        let level = facts.level().and_then(shown);
        let bottom = match facts.well_depth {
            None => Bottom::Unknown,
            Some(depth) => shown(depth).map_or(Bottom::Beyond, Bottom::At),
        };
        let pump = facts.depth.map(|depth| pump(scale.y(depth), level, bottom, view));
        let floor = pump.map_or(layout.bottom, |pump| layout.bottom.max(pump.end + CLEAR));
        Self {
            layout,
            sides: (layout.axis - layout.casing, layout.axis + layout.casing),
            cap: layout.ground - 7.0,
            pump,
            table: facts.static_level.and_then(shown),
            level,
            bottom,
            floor,
            size,
        }
    }

    /// Half the width of the pipe, the pump and the motor.
    #[must_use]
    pub fn halves(&self) -> (f64, f64, f64) {
        (4.2 * self.size, 8.5 * self.size, 7.0 * self.size)
    }

    /// Where the lead hangs beside the pipe.
    #[must_use]
    pub fn lead(&self) -> f64 {
        self.layout.axis + self.halves().0 + 3.6
    }

    /// Lower end of the casing as drawn.
    #[must_use]
    pub fn casing_end(&self) -> f64 {
        match self.bottom {
            Bottom::At(y) => y,
            Bottom::Unknown => self.floor,
            Bottom::Beyond => self.floor - 1.0,
        }
    }

    /// Middle of the check valve in the pipe, where there is pipe enough for it.
    #[must_use]
    pub fn check_valve(&self) -> Option<f64> {
        let middle = self.pump?.top - 14.0 * self.size;
        (middle > self.layout.ground + 14.0).then_some(middle)
    }

    /// Height of the water table beside the well at a place: the cone from the table at rest to the level in the casing.
    #[must_use]
    pub fn table_at(&self, x: f64) -> Option<f64> {
        let (table, level) = (self.table?, self.level?);
        let off = (self.sides.0 - x).max(x - self.sides.1).max(0.0);
        Some(table + (level - table) * (-off / (0.22 * self.layout.axis)).exp())
    }
}

/// The pump: shorter than usual where water, bottom or ground line are so close that it would seem to stand out of them.
fn pump(depth: f64, level: Option<f64>, bottom: Bottom, view: &View) -> Pump {
    let layout = &view.layout;
    let size = if layout.compact { 0.8 } else { 1.0 };
    let highest = layout.ground + UNDER_GROUND;
    let intake = depth.max(highest + PUMP.1);
    let under = level.map(|level| intake - level - CLEAR).filter(|under| *under > 0.0);
    let over = match bottom {
        Bottom::At(y) => Some(y - intake - CLEAR).filter(|over| *over > -CLEAR),
        Bottom::Unknown | Bottom::Beyond => None,
    };
    let above = under.unwrap_or(f64::INFINITY).clamp(PUMP.1, PUMP.0 * size).min(intake - highest);
    let below = over.unwrap_or(f64::INFINITY).clamp(MOTOR.1, MOTOR.0 * size);
    Pump { depth, top: intake - above, intake, end: (intake + below).min(layout.bottom + hangs(view)) }
}

/// How far a motor may hang past the end of the scale: not into the note in the corner.
fn hangs(view: &View) -> f64 {
    if view.layout.compact {
        return HANGS_COMPACT;
    }
    let under = view.layout.height - view.layout.bottom;
    (under - NOTE * view.lettering.small - 2.0 * CLEAR).clamp(HANGS.0, HANGS.1)
}
