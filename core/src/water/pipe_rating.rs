//! What plastic pipe keeps of its pressure rating in service.

use crate::error::OutsideRange;
use crate::quantity::Pressure;
use crate::standards::pipe::{Material, PE_WARM, PVC_WARM, PipeSize, Series, THREADED};

/// What is left of the rating of plastic pipe in warmer water, and at threads. Between two rows of the table in a straight
/// line.
///
/// # Units
/// `water` °F inside the pipe; the result a gauge pressure.
/// # Range
/// Water 32 to 140 °F, above which plastic pipe is not to be used; cooler water leaves the rating as it is. Nothing for
/// steel. Only PVC of schedule 80 may be threaded; pipe that may not is taken as joined otherwise.
/// # Errors
/// [`OutsideRange`] names `water` (°F).
/// # Source
/// [astm-d1785], [ppi-handbook]; the shares from memory.
pub fn rating_in_service(size: PipeSize, water: f64, threaded: bool) -> Result<Option<Pressure>, OutsideRange> {
    let Some(rating) = size.pressure_rating() else { return Ok(None) };
    let water = OutsideRange::check("water", water, 32.0, 140.0)?;
    let warm: &[(f64, f64)] = match size.series.material() {
        Material::Polyethylene => &PE_WARM,
        Material::Steel | Material::Pvc => &PVC_WARM,
    };
    let joint = if threaded && size.series == Series::PvcSchedule80 { THREADED } else { 1.0 };
    Ok(Some(rating * (left(warm, water) * joint)))
}

/// A share between the rows of a table that falls with the temperature; at its first row below it.
fn left(table: &[(f64, f64)], at: f64) -> f64 {
    let above = table.iter().position(|(row, _)| *row >= at).unwrap_or(table.len().saturating_sub(1));
    match (above.checked_sub(1).and_then(|below| table.get(below)), table.get(above)) {
        (Some((low, more)), Some((high, less))) => more + (less - more) * (at - low) / (high - low),
        (None, Some((_, share))) => *share,
        (_, None) => 1.0,
    }
}
