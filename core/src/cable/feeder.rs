//! The conductors from the service to the drive.

use super::ampacity::{Setting, required_ampacity};
use super::drop::{Load, Phases};
use super::lead::{Demands, Laying, Run, drop_over, run_for, runs_laid};
use super::reactance::Build;
use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, Length, in_amperes, in_volts};

/// Largest drop along a branch or feeder, as a share: what the code's notes advise.
pub const USUAL_DROP: f64 = 0.03;
/// Largest drop of feeder and lead together, as a share: what the code's notes advise.
pub const USUAL_WHOLE_DROP: f64 = 0.05;

/// All that the choice of a drive's supply conductors depends on beside their length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feeder {
    /// Nominal line voltage of the service.
    pub supply: ElectricPotential,
    /// Lines of the service.
    pub phases: Phases,
    /// Rated input current of the drive's frame, rms: what 430.122(A) goes by.
    pub rated_input: ElectricCurrent,
    /// Input current at the motor's load, rms: what drops volts.
    pub running: ElectricCurrent,
    /// True power factor of the input.
    pub power_factor: f64,
    /// Where the conductors lie and how they end; aluminum is a choice here, above ground.
    pub setting: Setting,
    /// What they lie in.
    pub build: Build,
    /// How parallel sets lie.
    pub laying: Laying,
    /// Most parallel sets, 1 or more.
    pub most_sets: u8,
    /// Largest drop, as a share of the supply: [`USUAL_DROP`] unless set otherwise.
    pub allowed_drop: f64,
    /// Rating of the overcurrent device ahead.
    pub device: ElectricCurrent,
}

/// A drive's supply conductors over one length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fed {
    /// The conductors, their ground and what governed.
    pub run: Run,
    /// Drop at the running current.
    pub drop: ElectricPotential,
    /// Drop as a share of the supply.
    pub share: f64,
}

/// The conductors that serve a drive over each stretch of lengths, shortest first, with their ground.
///
/// They carry at least 125 % of the drive's rated input current, and drop no more than is allowed at the running one; the
/// load's power factor is its true one. Two conductors, out and back, or three.
///
/// # Units
/// Lengths one way.
/// # Range
/// As [`runs_laid`]; rated input 0 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `rated_input` (A), or as [`runs_laid`].
/// # Source
/// [nec-2023-430.122] (A); [nec-2023-310.16], [nec-2023-310.10g], [nec-2023-250.122]; 3 % is what the code's
/// informational notes advise.
pub fn feeder_runs(feeder: &Feeder) -> Result<Vec<Run>, OutsideRange> {
    runs_laid(&demands(feeder)?, feeder.laying)
}

/// The conductors of a feeder of this length, or `None` where no listed conductor serves it.
///
/// # Units
/// `length` one way; the drop volts, line to line.
/// # Range
/// As [`feeder_runs`]; length 0 to 10⁶ m.
/// # Errors
/// [`OutsideRange`] names `length` (m), or as [`feeder_runs`].
/// # Source
/// As [`feeder_runs`]; drop [ieee-141-1993].
pub fn fed(feeder: &Feeder, length: Length) -> Result<Option<Fed>, OutsideRange> {
    let demands = demands(feeder)?;
    let runs = runs_laid(&demands, feeder.laying)?;
    let Some(run) = run_for(&runs, length).copied() else { return Ok(None) };
    let drop = drop_over(&demands, run.conductor, length)?;
    Ok(drop.map(|drop| Fed { run, drop, share: in_volts(drop) / in_volts(feeder.supply) }))
}

fn demands(feeder: &Feeder) -> Result<Demands, OutsideRange> {
    OutsideRange::check("rated_input", in_amperes(feeder.rated_input), 0.0, 1e5)?;
    Ok(Demands {
        load: Load {
            sending: feeder.supply,
            current: feeder.running,
            power_factor: feeder.power_factor,
            phases: feeder.phases,
        },
        required: required_ampacity(feeder.rated_input),
        setting: feeder.setting,
        build: feeder.build,
        allowed_drop: feeder.allowed_drop,
        most_sets: feeder.most_sets,
        device: feeder.device,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cable::lead::{Conductor, Governs};
    use crate::quantity::{Celsius, amperes, feet, meters, volts};
    use crate::standards::ampacity::Rating;
    use crate::standards::conductor::{Metal, Size};

    fn feeder(rated: f64, running: f64, metal: Metal) -> Feeder {
        Feeder {
            supply: volts(480.0),
            phases: Phases::Single,
            rated_input: amperes(rated),
            running: amperes(running),
            power_factor: 0.98509,
            setting: Setting { metal, insulation: Rating::C75, terminals: Rating::C75, ambient: Celsius(30.0) },
            build: Build::PlasticConduit,
            laying: Laying::Together,
            most_sets: 1,
            allowed_drop: USUAL_DROP,
            device: amperes(150.0),
        }
    }

    // 125 % of 120 A is 150 A, which 1/0 copper just carries; 120.1 A asks for 2/0. Table 310.16, by hand.
    #[test]
    fn ampacity_goes_by_a_quarter_more_than_the_rated_input_and_equality_passes() {
        let of = |rated: f64| fed(&feeder(rated, 50.0, Metal::Copper), feet(30.0)).unwrap().unwrap().run.conductor.size;
        assert_eq!((of(120.0), of(120.1)), (Size::Awg1_0, Size::Awg2_0));
        // The running current has no part in it.
        let idle = fed(&feeder(120.0, 0.0, Metal::Copper), feet(30.0)).unwrap().unwrap();
        assert_eq!((idle.run.conductor.size, in_volts(idle.drop)), (Size::Awg1_0, 0.0));
    }

    #[test]
    fn a_longer_feeder_takes_more_metal_and_its_ground_grows_with_it() {
        let at = |length: f64| fed(&feeder(105.67, 105.67, Metal::Copper), feet(length)).unwrap();
        let (near, far) = (at(300.0).unwrap(), at(900.0).unwrap());
        assert_eq!((near.run.governs, far.run.governs), (Governs::Ampacity, Governs::Drop));
        assert!(far.run.conductor.size > near.run.conductor.size && far.run.ground_grew && !near.run.ground_grew);
        assert!(far.share <= USUAL_DROP && near.share <= USUAL_DROP);
        assert_eq!(at(20_000.0), None);
    }

    // 135 A for aluminum 2/0 at 75 °C against 132.1 A; 1/0 carries 120 A. Ground for 150 A: 4 AWG aluminum.
    #[test]
    fn aluminum_takes_a_size_more() {
        let aluminum = fed(&feeder(105.67, 105.67, Metal::Aluminum), feet(300.0)).unwrap().unwrap();
        assert_eq!((aluminum.run.conductor.size, aluminum.run.ground), (Size::Awg2_0, Size::Awg4));
        // 2 · 105.67 A · 0.3 kft (0.159 · 0.98509 + 0.043 · 0.17205) = 10.400 V, and 0.002 V for the part across.
        assert!((in_volts(aluminum.drop) - 10.402).abs() < 0.005, "{:?}", aluminum.drop);
    }

    // Six current-carrying conductors in two sets of two and one more set: 0.80 for 4 to 6 in one conduit, none apart.
    #[test]
    fn sets_apart_carry_more_than_sets_in_one_conduit() {
        let with = |laying: Laying| {
            let wide = Feeder { laying, most_sets: 3, ..feeder(400.0, 400.0, Metal::Copper) };
            *feeder_runs(&wide).unwrap().first().unwrap()
        };
        // 500 A: together 2 · 0.80 · 335 = 536 A (400 kcmil); apart 2 · 255 = 510 A (250 kcmil).
        let (together, apart) = (with(Laying::Together), with(Laying::Apart));
        assert_eq!(together.conductor, Conductor { sets: 2, size: Size::Kcmil400 });
        assert_eq!(apart.conductor, Conductor { sets: 2, size: Size::Kcmil250 });
        assert!((in_amperes(together.ampacity) - 536.0).abs() < 1e-9);
        assert!((in_amperes(apart.ampacity) - 510.0).abs() < 1e-9);
    }

    #[test]
    fn arguments_outside_are_named() {
        let wrong = feeder(f64::NAN, 1.0, Metal::Copper);
        assert_eq!(feeder_runs(&wrong).unwrap_err().argument, "rated_input");
        let none = Feeder { most_sets: 0, ..feeder(10.0, 10.0, Metal::Copper) };
        assert_eq!(fed(&none, meters(1.0)).unwrap_err().argument, "most_sets");
        assert_eq!(fed(&feeder(10.0, 10.0, Metal::Copper), meters(-1.0)).unwrap_err().argument, "length");
    }
}
