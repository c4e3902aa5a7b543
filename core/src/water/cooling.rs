//! Water past a submersible motor, that carries its heat away.

use crate::error::OutsideRange;
use crate::quantity::{Area, Length, Velocity, VolumeRate, feet_per_second, inches};
use core::f64::consts::PI;

/// Area of the gap between a motor and what it hangs in: π/4 (D² − d²).
///
/// # Units
/// Inside diameter of casing or sleeve, outside diameter of the motor; the result an area.
/// # Range
/// Motor 2 cm to 2 m; outer above motor, to 5 m.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Geometry.
pub fn annulus(outer: Length, motor: Length) -> Result<Area, OutsideRange> {
    OutsideRange::check("motor", motor.value, 0.02, 2.0)?;
    // Equal diameters leave no gap at all.
    let least = motor.value * (1.0 + 1e-6);
    OutsideRange::check("outer", outer.value, least, 5.0)?;
    Ok(0.25 * PI * (outer * outer - motor * motor))
}

/// Speed of the water past the motor: v = Q/A.
///
/// # Units
/// Flow; diameters as [`annulus`]; the result a velocity.
/// # Range
/// Flow 0 to 2 m³/s; all the water comes from below the motor, or a sleeve makes it.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Continuity.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::cooling::*};
/// let speed = cooling_speed(gpm(25.0), inches(6.065), inches(3.75))?;
/// assert!((in_feet_per_second(speed) - 0.449).abs() < 0.0005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn cooling_speed(flow: VolumeRate, outer: Length, motor: Length) -> Result<Velocity, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    Ok(flow / annulus(outer, motor)?)
}

/// Least flow that moves the water past the motor at a speed: Q = v A.
///
/// # Units
/// Speed; diameters as [`annulus`]; the result a flow.
/// # Range
/// Speed 0 to 10 m/s.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Continuity.
pub fn least_flow(speed: Velocity, outer: Length, motor: Length) -> Result<VolumeRate, OutsideRange> {
    OutsideRange::check("speed", speed.value, 0.0, 10.0)?;
    Ok(speed * annulus(outer, motor)?)
}

/// Widest inside diameter of a sleeve in which a flow still passes the motor at a speed: D = √(d² + 4Q/(π v)).
///
/// # Units
/// Flow, speed, outside diameter of the motor; the result an inside diameter.
/// # Range
/// Flow 0 to 2 m³/s; speed 0.01 to 10 m/s; motor 2 cm to 2 m.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [`cooling_speed`], solved for the outer diameter.
pub fn widest_sleeve(flow: VolumeRate, speed: Velocity, motor: Length) -> Result<Length, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    OutsideRange::check("speed", speed.value, 0.01, 10.0)?;
    OutsideRange::check("motor", motor.value, 0.02, 2.0)?;
    let square = motor * motor + 4.0 / PI * (flow / speed);
    Ok(square.sqrt())
}

/// Speed past the motor that is asked for unless its manual says otherwise: 0.25 ft/s for motors for 4 in wells, 0.5 ft/s
/// for those for 6 in wells and larger. The line is drawn at an outside diameter of 4.5 in.
///
/// # Units
/// Outside diameter of the motor; the result a velocity.
/// # Range
/// Any; motors for 4 in wells are 3.75 in across, for 6 in wells 5.4 in and more.
/// # Source
/// [practice].
#[must_use]
pub fn advised_speed(motor: Length) -> Velocity {
    feet_per_second(if motor < inches(4.5) { 0.25 } else { 0.5 })
}
