//! Generic families of equipment: common practice, no single source, until a data sheet replaces them. Nobody's product.

use super::family::{Bus, Change, Family, Feed, Filter, Input, Kind, Marking, OutputRule, Rating, Start, Step, Supply};
use crate::quantity::{Celsius, meters};
use crate::standards::motor_current::TABLE;

/// Least share of its nominal input at which a regulated drive still gives its nominal output.
pub const HELD_FLOOR: f64 = 0.90;
/// Output of a passive drive on two lines, over its input.
pub const PASSIVE_SHARE: f64 = 0.90;
/// Rise of an unregulated bus at high line.
pub const BUS_RISE: f64 = 1.1;
/// Volts that a sine filter takes: built in, and bought besides.
pub const FILTER_SHARES: [f64; 2] = [0.03, 0.05];
/// Volts that a transformer behind a drive takes.
pub const TRANSFORMER_DROP: f64 = 0.04;
/// Efficiency of filter and transformer together.
pub const STEP_UP_EFFICIENCY: f64 = 0.97;
/// Share of a three-phase drive's frame that may be used on two lines.
pub const DERATED_CAPACITY: f64 = 0.50;

/// The generic family of a kind.
///
/// # Units
/// As the fields of [`Family`].
/// # Range
/// Every kind.
/// # Source
/// Common practice, no single source; frames in the steps of [nec-2023-430.250].
#[must_use]
pub fn generic(kind: Kind) -> Family {
    match kind {
        Kind::ConvertingActive => active(kind, 0.10, 0.95, sizes(1.5, 20.0)),
        Kind::ConvertingPassive => passive(kind, 0.80, 0.96, sizes(1.5, 20.0)),
        Kind::Doubling => Family {
            supply: Supply { feed: Feed::SinglePhase, low: true, high: false },
            change: Change::Doubled,
            filter: Filter::Sine { share: FILTER_SHARES[0], built_in: true },
            ..active(kind, 0.10, 0.94, sizes(3.0, 20.0))
        },
        Kind::LargeLowHarmonic => filtered(active(kind, 0.08, 0.955, sizes(15.0, 150.0))),
        Kind::LargeEconomy => passive(kind, 0.80, 0.965, sizes(15.0, 200.0)),
        Kind::LargeEconomyChoke => filtered(passive(kind, 0.48, 0.965, sizes(15.0, 200.0))),
        Kind::SolidStateConverter => converter(active(kind, 0.10, 0.96, sizes(5.0, 75.0)), 6.5),
        Kind::RotaryConverter => converter(rotary(kind), 6.5),
        Kind::DeratedDrive => Family { capacity: DERATED_CAPACITY, ..passive(kind, 0.80, 0.965, sizes(1.0, 200.0)) },
        Kind::StepUpActive => stepped_up(active(kind, 0.10, 0.95, sizes(3.0, 50.0))),
        Kind::StepUpPassive => stepped_up(passive(kind, 0.80, 0.96, sizes(3.0, 50.0))),
        Kind::ThreePhaseLine | Kind::ThreePhaseGenerator => three_phase(kind),
        Kind::SinglePhaseMotor => single_phase_motor(kind),
    }
}

fn sizes(from: f64, to: f64) -> Vec<Step> {
    let inside = TABLE.iter().filter(|row| row.hp >= from && row.hp <= to);
    inside.map(|row| Step::sized(row.hp)).collect()
}

fn rating() -> Rating {
    Rating {
        ambient: Celsius(40.0),
        per_degree: 0.02,
        degrees: 10.0,
        altitude: meters(1000.0),
        per_100_m: 0.01,
        highest: meters(3000.0),
    }
}

/// A drive on two lines whose front end shapes the current and holds the bus.
fn active(kind: Kind, distortion: f64, efficiency: f64, steps: Vec<Step>) -> Family {
    Family {
        name: String::new(),
        kind,
        supply: Supply { feed: Feed::SinglePhase, low: true, high: true },
        motor: Feed::ThreePhase,
        change: Change::None,
        input: Input { displacement: 0.99, distortion, efficiency, filtered: false },
        steps,
        capacity: 1.0,
        filter: Filter::None,
        bus: Bus::Held { low: 370.0, high: 720.0 },
        output: OutputRule::Held { floor: HELD_FLOOR },
        start: Start::Ramp,
        rating: rating(),
        price: None,
        marking: Marking::default(),
    }
}

/// A drive on two lines with a diode bridge.
fn passive(kind: Kind, distortion: f64, efficiency: f64, steps: Vec<Step>) -> Family {
    Family {
        input: Input { displacement: 0.97, distortion, efficiency, filtered: false },
        bus: Bus::Peak { rise: BUS_RISE },
        output: OutputRule::Follows { share: PASSIVE_SHARE },
        ..active(kind, distortion, efficiency, steps)
    }
}

fn filtered(family: Family) -> Family {
    Family { input: Input { filtered: true, ..family.input }, ..family }
}

/// A converter passes two lines straight through and makes the third.
fn converter(family: Family, multiple: f64) -> Family {
    Family {
        filter: Filter::MadeLine,
        bus: Bus::None,
        output: OutputRule::Follows { share: 1.0 },
        start: Start::AcrossTheLine { multiple },
        ..family
    }
}

fn rotary(kind: Kind) -> Family {
    let input = Input { displacement: 0.80, distortion: 0.05, efficiency: 0.88, filtered: false };
    Family { input, ..active(kind, 0.05, 0.88, sizes(2.0, 100.0)) }
}

fn stepped_up(family: Family) -> Family {
    Family {
        supply: Supply { high: false, ..family.supply },
        change: Change::SteppedUp { drop: TRANSFORMER_DROP },
        filter: Filter::Sine { share: FILTER_SHARES[1], built_in: false },
        input: Input { efficiency: family.input.efficiency * STEP_UP_EFFICIENCY, ..family.input },
        ..family
    }
}

/// A plain drive on three lines.
fn three_phase(kind: Kind) -> Family {
    Family {
        supply: Supply { feed: Feed::ThreePhase, low: true, high: true },
        input: Input { displacement: 0.95, distortion: 0.35, efficiency: 0.97, filtered: false },
        bus: Bus::Mean { rise: BUS_RISE },
        output: OutputRule::Follows { share: 0.97 },
        ..active(kind, 0.35, 0.97, sizes(1.0, 200.0))
    }
}

/// The motor takes the supply as it is; what it wastes is counted with the motor.
fn single_phase_motor(kind: Kind) -> Family {
    Family {
        supply: Supply { feed: Feed::SinglePhase, low: true, high: false },
        motor: Feed::SinglePhase,
        input: Input { displacement: 0.90, distortion: 0.05, efficiency: 1.0, filtered: false },
        bus: Bus::None,
        output: OutputRule::Follows { share: 1.0 },
        start: Start::AcrossTheLine { multiple: 5.5 },
        ..active(kind, 0.05, 1.0, sizes(0.5, 15.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::power::family::Class;
    use crate::quantity::volts;

    #[test]
    fn every_family_is_one_that_the_sums_hold_for() {
        for kind in Kind::ALL {
            let family = generic(kind);
            assert_eq!(family.kind, kind);
            assert_eq!(family.clone().checked(), Ok(family));
        }
    }

    // An undistorted inverter gives at most Vdc/√2 line volts; no generic drive claims more from the bus that its rectifier
    // can charge to on the nominal supply: its held volts, or the peak of the line without the rise.
    #[test]
    fn no_drive_gives_more_than_its_bus_can() {
        for family in Kind::ALL.map(generic) {
            for class in [Class::Low, Class::High] {
                let nominal = class.nominal();
                let Some(bus) = family.bus_volts(class, nominal).unwrap() else { continue };
                let bus = if matches!(family.bus, Bus::Held { .. }) { bus } else { nominal * 2f64.sqrt() };
                let doubled = if family.change == Change::Doubled { 2.0 } else { 1.0 };
                let share = match family.output {
                    OutputRule::Held { .. } => 1.0,
                    OutputRule::Follows { share } => share,
                };
                assert!(bus / 2f64.sqrt() >= nominal * doubled * share, "{:?} {class:?}", family.kind);
            }
        }
    }

    #[test]
    fn each_family_takes_and_gives_what_its_kind_does() {
        use Kind as K;
        for kind in Kind::ALL {
            let family = generic(kind);
            let low_alone = matches!(kind, K::Doubling | K::StepUpActive | K::StepUpPassive | K::SinglePhaseMotor);
            assert_eq!((family.supply.low, family.supply.high), (true, !low_alone), "{kind:?}");
            let filtered = matches!(kind, K::LargeLowHarmonic | K::LargeEconomyChoke);
            assert_eq!(family.input.filtered, filtered, "{kind:?}");
            let converts = matches!(kind, K::SolidStateConverter | K::RotaryConverter);
            assert_eq!(family.filter == Filter::MadeLine, converts, "{kind:?}");
            // A converter passes the line through, a transformer with its filter smooths, a motor alone has no drive.
            let smooth =
                [K::SolidStateConverter, K::RotaryConverter, K::StepUpActive, K::StepUpPassive, K::SinglePhaseMotor];
            assert_eq!(family.makes_pulses(), !smooth.contains(&kind), "{kind:?}");
        }
    }

    #[test]
    fn a_family_on_a_supply_that_it_does_not_take_has_no_class_and_no_bus() {
        for kind in [Kind::Doubling, Kind::StepUpActive, Kind::StepUpPassive] {
            let family = generic(kind);
            assert_eq!(family.motor_class(Class::Low), Some(Class::High));
            assert_eq!(family.motor_class(Class::High), None);
            assert_eq!(family.bus_volts(Class::High, volts(480.0)), Ok(None));
        }
        assert_eq!(generic(Kind::LargeEconomy).motor_class(Class::High), Some(Class::High));
        assert_eq!(generic(Kind::SinglePhaseMotor).motor_class(Class::High), None);
    }

    #[test]
    fn a_wrong_figure_is_refused_by_its_name() {
        let good = || generic(Kind::StepUpPassive);
        let steps = |hp: [f64; 2]| hp.map(Step::sized).to_vec();
        let amps = vec![Step { low: Some(0.0), ..Step::sized(5.0) }];
        let input = good().input;
        let held = Bus::Held { low: 370.0, high: 7200.0 };
        let wrong: [(&str, Family); 15] = [
            ("displacement", Family { input: Input { displacement: 1.01, ..input }, ..good() }),
            ("distortion", Family { input: Input { distortion: f64::NAN, ..input }, ..good() }),
            ("efficiency", Family { input: Input { efficiency: 0.0, ..input }, ..good() }),
            ("capacity", Family { capacity: 0.0, ..good() }),
            ("step_count", Family { steps: Vec::new(), ..good() }),
            ("step_hp", Family { steps: steps([5.0, 5.0]), ..good() }),
            ("step_hp", Family { steps: steps([5.0, 251.0]), ..good() }),
            ("step_amperes", Family { steps: amps, ..good() }),
            ("filter_share", Family { filter: Filter::Sine { share: 0.3, built_in: true }, ..good() }),
            ("transformer_drop", Family { change: Change::SteppedUp { drop: -0.01 }, ..good() }),
            ("bus_high", Family { bus: held, ..good() }),
            ("bus_rise", Family { bus: Bus::Mean { rise: 0.9 }, ..good() }),
            ("output_share", Family { output: OutputRule::Follows { share: 2.0 }, ..good() }),
            ("locked_rotor", Family { start: Start::AcrossTheLine { multiple: 0.5 }, ..good() }),
            ("degrees", Family { rating: Rating { per_degree: 0.08, degrees: 13.0, ..good().rating }, ..good() }),
        ];
        for (name, family) in wrong {
            assert_eq!(family.checked().unwrap_err().argument, name);
        }
    }
}
