//! Pump curves to try things with. They are invented: no pump that can be bought has them.

use super::curve::{CurveError, Point, PumpCurve};
use crate::quantity::{feet, gpm};

/// An invented pump: its curve at 60 Hz as rows of gpm, ft and percent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DemoPump {
    /// A short stable name.
    pub key: &'static str,
    /// Rows of flow in gpm, head in ft and efficiency in percent.
    pub rows: &'static [(f64, f64, f64)],
}

impl DemoPump {
    /// The rows as text: one point a line, under a line that names the units.
    ///
    /// # Units
    /// Flow in gpm, head in ft, efficiency in percent.
    /// # Range
    /// The rows.
    /// # Source
    /// Invented.
    #[must_use]
    pub fn text(&self) -> String {
        let rows = self.rows.iter().map(|(flow, head, percent)| format!("{flow}\t{head}\t{percent}"));
        core::iter::once("gpm\tft\t%".to_owned()).chain(rows).collect::<Vec<_>>().join("\n")
    }

    /// The pump's curve.
    ///
    /// # Units
    /// As [`PumpCurve`].
    /// # Range
    /// The rows.
    /// # Errors
    /// [`CurveError`], which none of the demo pumps gives.
    /// # Source
    /// Invented, shaped as submersible and end-suction pumps commonly are.
    pub fn curve(&self) -> Result<PumpCurve, CurveError> {
        let point = |&(flow, head, percent): &(f64, f64, f64)| Point {
            flow: gpm(flow),
            head: feet(head),
            efficiency: Some(percent / 100.0),
            power: None,
        };
        PumpCurve::new(self.rows.iter().map(point).collect())
    }
}

/// Invented submersible pump of many stages for a house and stock well: about 25 gpm, 7.5 hp.
pub const HOUSE_WELL: DemoPump = DemoPump {
    key: "house_well",
    rows: &[
        (0.0, 820.0, 0.0),
        (5.0, 812.0, 22.0),
        (10.0, 797.0, 38.0),
        (15.0, 773.0, 50.0),
        (20.0, 734.0, 57.0),
        (25.0, 676.0, 60.0),
        (30.0, 596.0, 59.0),
        (35.0, 492.0, 54.0),
        (40.0, 362.0, 44.0),
    ],
};

/// Invented submersible pump for an irrigation well: about 250 gpm, 40 hp. Its head droops toward shut-off.
pub const FIELD_WELL: DemoPump = DemoPump {
    key: "field_well",
    rows: &[
        (0.0, 520.0, 0.0),
        (50.0, 526.0, 27.0),
        (100.0, 522.0, 47.0),
        (150.0, 508.0, 61.0),
        (200.0, 480.0, 70.0),
        (250.0, 436.0, 73.0),
        (300.0, 372.0, 70.0),
        (350.0, 286.0, 60.0),
    ],
};

/// Invented end-suction surface pump for a field: about 800 gpm, 60 hp.
pub const FIELD_SURFACE: DemoPump = DemoPump {
    key: "field_surface",
    rows: &[
        (0.0, 238.0, 0.0),
        (200.0, 236.0, 38.0),
        (400.0, 230.0, 60.0),
        (600.0, 219.0, 73.0),
        (800.0, 200.0, 78.0),
        (1000.0, 172.0, 75.0),
        (1200.0, 134.0, 64.0),
    ],
};

/// Every demo pump.
pub const ALL: [DemoPump; 3] = [HOUSE_WELL, FIELD_WELL, FIELD_SURFACE];
