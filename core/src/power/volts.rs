//! The voltage budget: from the supply's nominal volts to the volts at the motor, and the speed that they last for.

use super::family::{Change, Class, Family, Filter, OutputRule};
use crate::error::OutsideRange;
use crate::quantity::{ElectricPotential, Frequency, hertz, in_hertz, in_volts, volts};

/// The volts of a way at full load and full speed, station by station.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Budget {
    /// Supply at the equipment, sag taken off.
    pub at_equipment: ElectricPotential,
    /// Output before filter and transformer, brought to the motor's class.
    pub output: ElectricPotential,
    /// What the filter takes.
    pub filter: ElectricPotential,
    /// What a transformer behind the drive takes.
    pub transformer: ElectricPotential,
    /// What goes into the lead.
    pub sending: ElectricPotential,
    /// What the lead takes.
    pub lead: ElectricPotential,
    /// What the motor gets.
    pub at_motor: ElectricPotential,
}

/// The voltage budget of a family on a supply; `None` where it does not take the supply or the lead leaves nothing.
///
/// Output: V_n,out, or V_n,out · V_in/(floor · V_n,in) where the input is below its floor; or share · V_in · V_n,out/V_n,in.
/// V_motor = output · (1 − filter − transformer) − lead.
///
/// # Units
/// `at_equipment` supply with its sag; `lead_drop` of the lead at the motor's current; line to line.
/// # Range
/// At the equipment 50 to 1,000 V; drop 0 to 1,000 V.
/// # Errors
/// [`OutsideRange`] names `at_equipment` or `lead_drop` (V).
/// # Source
/// Sum of the drops; rules and shares are the family's, common practice.
pub fn budget(
    family: &Family,
    supply: Class,
    at_equipment: ElectricPotential,
    lead_drop: ElectricPotential,
) -> Result<Option<Budget>, OutsideRange> {
    let v = OutsideRange::check("at_equipment", in_volts(at_equipment), 50.0, 1000.0)?;
    let lead = OutsideRange::check("lead_drop", in_volts(lead_drop), 0.0, 1000.0)?;
    let Some(class) = family.motor_class(supply) else { return Ok(None) };
    let (nominal_in, nominal_out) = (in_volts(supply.nominal()), in_volts(class.nominal()));
    let output = match family.output {
        OutputRule::Held { floor } => nominal_out * (v / (floor * nominal_in)).min(1.0),
        OutputRule::Follows { share } => share * v * nominal_out / nominal_in,
    };
    let filter = match family.filter {
        Filter::Sine { share, .. } => share * output,
        Filter::None | Filter::MadeLine => 0.0,
    };
    let transformer = match family.change {
        Change::SteppedUp { drop } => drop * output,
        Change::None | Change::Doubled => 0.0,
    };
    let sending = output - filter - transformer;
    Ok((sending > lead).then(|| Budget {
        at_equipment,
        output: volts(output),
        filter: volts(filter),
        transformer: volts(transformer),
        sending: volts(sending),
        lead: lead_drop,
        at_motor: volts(sending - lead),
    }))
}

/// Frequency at which the volts run out: f = f_rated · V_motor/V_rated. Below it the motor has its full volts per hertz.
///
/// # Units
/// `at_motor` volts at full speed; `rated` and `frequency` by the nameplate.
/// # Range
/// Volts 1 to 2,000; rated 100 to 1,000 V; frequency 10 to 120 Hz. The drop is that of full speed, which errs to the safe
/// side.
/// # Errors
/// [`OutsideRange`] names `at_motor`, `rated` (V) or `frequency` (Hz).
/// # Source
/// Flux goes with volts per hertz.
pub fn runs_out_at(
    at_motor: ElectricPotential,
    rated: ElectricPotential,
    frequency: Frequency,
) -> Result<Frequency, OutsideRange> {
    let v = OutsideRange::check("at_motor", in_volts(at_motor), 1.0, 2000.0)?;
    let rated = OutsideRange::check("rated", in_volts(rated), 100.0, 1000.0)?;
    Ok(hertz(OutsideRange::check("frequency", in_hertz(frequency), 10.0, 120.0)? * v / rated))
}

/// Volts at the motor over what it needs at its speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum VoltsVerdict {
    /// All that it needs.
    Holds(f64),
    /// 90 % and more.
    Low(f64),
    /// Less than 90 %.
    TooLow(f64),
}

/// Share of the needed volts below which a motor should not run.
pub const LEAST_SHARE: f64 = 0.90;

/// Whether the volts suffice at the speed that is needed: V_motor over V_rated · f_needed/f_rated.
///
/// # Units
/// `needed` the highest frequency that the duty asks for; `frequency` by the nameplate.
/// # Range
/// As [`runs_out_at`]; needed 10 to 120 Hz. Equality holds.
/// # Errors
/// [`OutsideRange`] names `at_motor`, `rated` (V), `frequency` or `needed` (Hz).
/// # Source
/// [nema-mg1-2016] 12.44: motors run at 10 % under their rated volts.
pub fn judge_volts(
    at_motor: ElectricPotential,
    rated: ElectricPotential,
    frequency: Frequency,
    needed: Frequency,
) -> Result<VoltsVerdict, OutsideRange> {
    let lasts = runs_out_at(at_motor, rated, frequency)?;
    let share = in_hertz(lasts) / OutsideRange::check("needed", in_hertz(needed), 10.0, 120.0)?;
    Ok(match share {
        share if share >= 1.0 => VoltsVerdict::Holds(share),
        share if share >= LEAST_SHARE => VoltsVerdict::Low(share),
        share => VoltsVerdict::TooLow(share),
    })
}
