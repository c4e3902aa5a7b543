//! How far the water falls while the pump draws it.

use crate::error::OutsideRange;
use crate::quantity::{
    Length, SpecificCapacity, Time, Transmissivity, VolumeRate, WellLossCoefficient, cubic_meters_per_hour,
};
use core::f64::consts::PI;

/// Euler's constant γ.
pub(crate) const EULER_GAMMA: f64 = 0.577_215_664_901_532_9;
/// Below this u the short form is good.
pub const COOPER_JACOB_BELOW: f64 = 0.01;

/// A confined aquifer without bounds, at a distance from the well and a time of pumping.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aquifer {
    /// Transmissivity T.
    pub transmissivity: Transmissivity,
    /// Storage coefficient S, dimensionless.
    pub storage: f64,
    /// Distance r from the middle of the well; for the level in the well itself, the radius of the hole.
    pub radius: Length,
    /// Time t since the pump was started.
    pub time: Time,
}

fn flow_checked(flow: VolumeRate) -> Result<VolumeRate, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0).map(|_| flow)
}

fn capacity_checked(capacity: SpecificCapacity) -> Result<SpecificCapacity, OutsideRange> {
    OutsideRange::check("specific_capacity", capacity.value, 1e-8, 1.0).map(|_| capacity)
}

/// Drawdown by a measured specific capacity: s = Q/C_s. It holds the losses of the well already.
///
/// # Units
/// Flow; flow per length of drawdown; the result a length.
/// # Range
/// Flow 0 to 2 m³/s; specific capacity 10⁻⁸ to 1 m²/s (0.00005 to 4,800 gpm/ft). Near the flow and time of the test.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of specific capacity.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::well::*};
/// let s = drawdown_by_capacity(gpm(25.0), gallons_per_minute_per_foot(0.6))?;
/// assert!((in_feet(s) - 41.667).abs() < 0.001);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn drawdown_by_capacity(flow: VolumeRate, capacity: SpecificCapacity) -> Result<Length, OutsideRange> {
    Ok(flow_checked(flow)? / capacity_checked(capacity)?)
}

/// Flow that draws the water down by a length: Q = C_s s, the most that the well gives above a depth.
///
/// # Units
/// Length of drawdown; flow per length of drawdown; the result a flow.
/// # Range
/// Drawdown 0 to 3 km; specific capacity as [`drawdown_by_capacity`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of specific capacity.
pub fn flow_for_drawdown(drawdown: Length, capacity: SpecificCapacity) -> Result<VolumeRate, OutsideRange> {
    OutsideRange::check("drawdown", drawdown.value, 0.0, 3000.0)?;
    Ok(drawdown * capacity_checked(capacity)?)
}

/// Drawdown at another flow, in proportion to one that was measured: s = s₁ Q/Q₁, which is to say that the specific capacity
/// stays what it was.
///
/// # Units
/// Drawdown at the flow `at`; flow; the result a length.
/// # Range
/// Drawdown 0 to 3 km at 10⁻⁶ to 2 m³/s; flow 0 to 2 m³/s. Near the flow of the measurement.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of specific capacity.
pub fn drawdown_in_proportion(measured: Length, at: VolumeRate, flow: VolumeRate) -> Result<Length, OutsideRange> {
    OutsideRange::check("measured", measured.value, 0.0, 3000.0)?;
    OutsideRange::check("at", at.value, 1e-6, 2.0)?;
    Ok(measured * (flow_checked(flow)? / at))
}

/// Flow that draws an aquifer and its well down by a length: the positive root of C Q² + b Q = s, with b = W(u)/(4π T).
///
/// # Units
/// Drawdown; the aquifer; coefficient of the well's loss; the result a flow.
/// # Range
/// Drawdown 0 to 3 km; the rest as [`theis_drawdown`] and [`well_loss`]; u at most 700.
/// # Errors
/// [`OutsideRange`] names the argument (SI units), or `u`.
/// # Source
/// [theis-1935] and [jacob-1947], solved for the flow; written so that no digits cancel.
pub fn flow_for_aquifer_drawdown(
    drawdown: Length,
    aquifer: Aquifer,
    coefficient: WellLossCoefficient,
) -> Result<VolumeRate, OutsideRange> {
    let drawdown = OutsideRange::check("drawdown", drawdown.value, 0.0, 3000.0)?;
    let coefficient = OutsideRange::check("coefficient", coefficient.value, 0.0, 1e9)?;
    let linear = well_function(theis_argument(aquifer)?)? / (4.0 * PI * aquifer.transmissivity.value);
    let root = (linear * linear + 4.0 * coefficient * drawdown).sqrt();
    Ok(cubic_meters_per_hour(3600.0 * 2.0 * drawdown / (linear + root)))
}

/// The well function W(u) = E₁(u) = ∫ e⁻ˣ/x dx from u on, to a few units in the last place.
///
/// Below 0.5 by the series −γ − ln u + u − u²/(2·2!) + u³/(3·3!) − …; above by the continued fraction
/// e⁻ᵘ/(u+1− 1/(u+3− 4/(u+5− 9/(u+7− …)))).
///
/// # Units
/// Dimensionless.
/// # Range
/// 10⁻³⁰⁰ ≤ u ≤ 700; above, the result is too small for a float.
/// # Errors
/// [`OutsideRange`] names `u`.
/// # Source
/// [theis-1935]; series and fraction: [abramowitz-stegun-1964] 5.1.11 and 5.1.22.
pub fn well_function(u: f64) -> Result<f64, OutsideRange> {
    let u = OutsideRange::check("u", u, 1e-300, 700.0)?;
    Ok(if u < 0.5 { series(u) } else { fraction(u) })
}

fn series(u: f64) -> f64 {
    let (mut power, mut sum) = (1.0, 0.0);
    for k in 1..=30 {
        let k = f64::from(k);
        power *= -u / k;
        sum -= power / k;
    }
    sum - EULER_GAMMA - u.ln()
}

/// From the far end backwards, where rounding dies away; so many terms that the rest is below rounding.
fn fraction(u: f64) -> f64 {
    let terms = 25 + (100.0 / u) as u32;
    let rest = (1..=terms).rev().map(f64::from).fold(0.0, |rest, k| k * k / (u + 1.0 + 2.0 * k - rest));
    (-u).exp() / (u + 1.0 - rest)
}

/// The argument of the well function: u = r² S/(4 T t).
///
/// # Units
/// The aquifer; the result dimensionless.
/// # Range
/// T 10⁻⁹ to 10 m²/s; S 10⁻⁷ to 0.5; r 1 cm to 100 km; t 1 s to 1,000 years.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [theis-1935].
pub fn theis_argument(aquifer: Aquifer) -> Result<f64, OutsideRange> {
    let Aquifer { transmissivity, storage, radius, time } = aquifer;
    OutsideRange::check("transmissivity", transmissivity.value, 1e-9, 10.0)?;
    OutsideRange::check("storage", storage, 1e-7, 0.5)?;
    OutsideRange::check("radius", radius.value, 0.01, 1e5)?;
    OutsideRange::check("time", time.value, 1.0, 3.2e10)?;
    Ok((radius * radius * storage / (4.0 * transmissivity * time)).value)
}

/// Drawdown in a confined aquifer (Theis): s = Q/(4π T) · W(u).
///
/// # Units
/// Flow; the result a length. Above u = 700 no drawdown has arrived yet: zero, which it is to 300 digits.
/// # Range
/// Flow 0 to 2 m³/s; the aquifer as [`theis_argument`]. Steady flow, a well that reaches through the whole of an even
/// aquifer without bounds; no losses of the well itself.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [theis-1935].
pub fn theis_drawdown(flow: VolumeRate, aquifer: Aquifer) -> Result<Length, OutsideRange> {
    let u = theis_argument(aquifer)?;
    let factor = flow_checked(flow)? / (4.0 * PI * aquifer.transmissivity);
    Ok(if u > 700.0 { 0.0 * factor } else { factor * well_function(u)? })
}

/// True where the short form of Cooper and Jacob agrees with Theis within 0.25 %: u < 0.01.
///
/// # Units
/// Dimensionless.
/// # Range
/// Any.
/// # Source
/// [cooper-jacob-1946]; the first term left out, u, is 0.01 where W is 4.04.
#[must_use]
pub fn cooper_jacob_holds(u: f64) -> bool {
    u < COOPER_JACOB_BELOW
}

/// Drawdown by the short form (Cooper-Jacob): s = Q/(4π T) · (−γ − ln u), which is 2.30 Q/(4π T) · log10(2.25 T t/(r² S)).
///
/// # Units
/// Flow; the result a length, always below that of Theis.
/// # Range
/// u < 0.01, as [`cooper_jacob_holds`]; the rest as [`theis_drawdown`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units), or `u`.
/// # Source
/// [cooper-jacob-1946].
pub fn cooper_jacob_drawdown(flow: VolumeRate, aquifer: Aquifer) -> Result<Length, OutsideRange> {
    let u = theis_argument(aquifer)?;
    if !cooper_jacob_holds(u) {
        return Err(OutsideRange { argument: "u", given: u, min: 0.0, max: COOPER_JACOB_BELOW });
    }
    Ok(flow_checked(flow)? / (4.0 * PI * aquifer.transmissivity) * (-EULER_GAMMA - u.ln()))
}

/// Loss of the well itself (Jacob): s_w = C Q². It comes on top of a drawdown by an aquifer formula, never on top of one by
/// a measured specific capacity, which holds it already.
///
/// # Units
/// Coefficient: length per square of flow; flow; the result a length.
/// # Range
/// Coefficient 0 to 10⁹ s²/m⁵; flow 0 to 2 m³/s.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [jacob-1947].
pub fn well_loss(coefficient: WellLossCoefficient, flow: VolumeRate) -> Result<Length, OutsideRange> {
    OutsideRange::check("coefficient", coefficient.value, 0.0, 1e9)?;
    let flow = flow_checked(flow)?;
    Ok(coefficient * (flow * flow))
}
