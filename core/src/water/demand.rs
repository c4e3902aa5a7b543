//! How much water is asked for, and over how many hours.

use crate::error::OutsideRange;
use crate::quantity::{Area, Length, Time, Volume, VolumeRate, days, hours, liters};
use crate::standards::water_use::User;

/// Water to be spread on a field in a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Depth {
    /// As pumped: losses are in it already.
    Gross(Length),
    /// As the crop needs it: the share that reaches the roots is told apart.
    Net {
        /// Depth that the crop needs in a day.
        depth: Length,
        /// Share of the pumped water that reaches the roots.
        efficiency: f64,
    },
}

/// Depth that has to be pumped in a day: as given where it is gross, divided by the efficiency where it is net.
///
/// # Units
/// Depths of water over the field; efficiency a share.
/// # Range
/// Depth 0 to 1 m a day; efficiency 0.3 to 1.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of application efficiency.
pub fn gross_depth(depth: Depth) -> Result<Length, OutsideRange> {
    let gross = match depth {
        Depth::Gross(depth) => depth,
        Depth::Net { depth, efficiency } => depth / OutsideRange::check("efficiency", efficiency, 0.3, 1.0)?,
    };
    OutsideRange::check("depth", gross.value, 0.0, 1.0).map(|_| gross)
}

/// Water that a field takes in a day: area × gross depth; 27,154 gal for each acre and inch.
///
/// # Units
/// Area and depth; the result a volume.
/// # Range
/// Area 0 to 100 km²; depth as [`gross_depth`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition; [nist-sp-811] for the acre and the gallon.
pub fn irrigation_volume(area: Area, depth: Depth) -> Result<Volume, OutsideRange> {
    OutsideRange::check("area", area.value, 0.0, 1e8)?;
    Ok(area * gross_depth(depth)?)
}

/// Water that people and stock take in a day: Σ number × use of one.
///
/// # Units
/// For each kind of user the number of them and what one uses in a day, [`User::daily`] unless the job says otherwise; the
/// result a volume.
/// # Range
/// Numbers 0 to 10⁶; use 0 to 10 m³ a day.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Sum; the table of uses is [practice].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, standards::water_use::User, water::demand::*};
/// let volume = household_volume(&[(User::Person, 4.0, User::Person.daily()), (User::Beef, 100.0, gallons(18.0))])?;
/// assert!((in_gallons(volume) - 2100.0).abs() < 1e-9);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn household_volume(users: &[(User, f64, Volume)]) -> Result<Volume, OutsideRange> {
    let mut sum = liters(0.0);
    for (_, number, daily) in users {
        OutsideRange::check("daily", daily.value, 0.0, 10.0)?;
        sum += OutsideRange::check("number", *number, 0.0, 1e6)? * *daily;
    }
    Ok(sum)
}

/// Flow that gives a day's water within the hours that are pumped: Q = V/t.
///
/// # Units
/// The day's volume; hours of pumping in a day; the result a flow.
/// # Range
/// Volume 0 to 10⁶ m³; 0.5 to 24 h.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of flow.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::demand::*};
/// let volume = irrigation_volume(acres(10.0), Depth::Gross(inches(0.30)))?;
/// assert!((in_gpm(flow_for(volume, hours(22.0))?) - 61.714).abs() < 0.001);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn flow_for(volume: Volume, pumping: Time) -> Result<VolumeRate, OutsideRange> {
    OutsideRange::check("volume", volume.value, 0.0, 1e6)?;
    Ok(volume / checked(pumping)?)
}

/// Water that a flow gives in a week: Q × pumping time of a day × 7.
///
/// # Units
/// Flow; time of pumping in a day; the result a volume.
/// # Range
/// Flow 0 to 2 m³/s; 0.5 to 24 h.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of flow.
pub fn weekly_volume(flow: VolumeRate, pumping: Time) -> Result<Volume, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    Ok(7.0 * flow * checked(pumping)?)
}

fn checked(pumping: Time) -> Result<Time, OutsideRange> {
    OutsideRange::check("pumping", pumping.value, hours(0.5).value, days(1.0).value).map(|_| pumping)
}
