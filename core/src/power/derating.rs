//! What heat and thin air take off the output of equipment.

use super::family::Rating;
use crate::error::OutsideRange;
use crate::quantity::{Celsius, Length, in_meters, meters};

/// What is left of the rated output.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Derated {
    /// Two factors, 1 where nothing is taken off.
    By {
        /// For heat.
        heat: f64,
        /// For altitude.
        altitude: f64,
    },
    /// Beyond what the family's rule holds for: the maker has to say.
    AskMaker {
        /// Degrees above the warmest ambient that the rule holds for; 0 within.
        too_hot: f64,
        /// Height above the highest place that the rule holds for; 0 within.
        too_high: Length,
    },
}

impl Derated {
    /// Both factors together: heat · altitude; `None` where the maker has to say.
    ///
    /// # Units
    /// Dimensionless.
    /// # Range
    /// Any.
    /// # Source
    /// Common practice, no single source: the factors are multiplied.
    #[must_use]
    pub fn factor(self) -> Option<f64> {
        match self {
            Self::By { heat, altitude } => Some(heat * altitude),
            Self::AskMaker { .. } => None,
        }
    }
}

/// Air around equipment outdoors: the ambient, and what the sun on the cabinet adds where there is no shade.
///
/// # Units
/// `sun` in degrees.
/// # Range
/// Sun 0 to 40 degrees; ambient −60 to 70 °C.
/// # Errors
/// [`OutsideRange`] names `ambient` (°C) or `sun`.
/// # Source
/// Common practice, no single source; about 10 degrees.
pub fn cabinet_ambient(ambient: Celsius, sun: f64) -> Result<Celsius, OutsideRange> {
    let ambient = OutsideRange::check("ambient", ambient.0, -60.0, 70.0)?;
    Ok(Celsius(ambient + OutsideRange::check("sun", sun, 0.0, 40.0)?))
}

/// What a place leaves of the rated output: (1 − c_T (T − T_0)) for heat, (1 − c_h (h − h_0)/100 m) for altitude.
///
/// # Units
/// `ambient` of the air around the equipment; `altitude` above the sea.
/// # Range
/// Ambient −60 to 110 °C; altitude −430 to 9,000 m. Beyond the family's own ends the answer is to ask the maker.
/// # Errors
/// [`OutsideRange`] names `ambient` (°C), `altitude` (m), or `factor` where the family takes off more than all.
/// # Source
/// Common practice, no single source; figures by the family.
/// # Example
/// ```
/// # use wellwright_core::{power::{derating::derate, family::Kind, generic::generic}, quantity::*};
/// // 5 degrees and 400 m over: 0.90 · 0.96.
/// let place = derate(generic(Kind::ConvertingActive).rating, Celsius(45.0), meters(1400.0))?;
/// assert!(place.factor().is_some_and(|factor| (factor - 0.864).abs() < 1e-12));
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn derate(rating: Rating, ambient: Celsius, altitude: Length) -> Result<Derated, OutsideRange> {
    let hot = OutsideRange::check("ambient", ambient.0, -60.0, 110.0)? - rating.ambient.0;
    let height = OutsideRange::check("altitude", in_meters(altitude), -430.0, 9000.0)?;
    let (too_hot, too_high) = (hot - rating.degrees, height - in_meters(rating.highest));
    if too_hot > 0.0 || too_high > 0.0 {
        return Ok(Derated::AskMaker { too_hot: too_hot.max(0.0), too_high: meters(too_high.max(0.0)) });
    }
    let above = (height - in_meters(rating.altitude)).max(0.0);
    let share = |off: f64| OutsideRange::check("factor", 1.0 - off, 0.0, 1.0);
    Ok(Derated::By {
        heat: share(rating.per_degree * hot.max(0.0))?,
        altitude: share(rating.per_100_m * above / 100.0)?,
    })
}
