//! The working of the overcurrent device ahead of a way.

use super::Case;
use super::supply::{RATED_INPUT, of_fixed_loads, put_rated_input};
use crate::evaluate::DeviceBy;
use crate::finding::Finding;
use crate::job::Origin;
use crate::papers::lead::NAMEPLATE;
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{Sheet, current};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::family::Kind;
use crate::quantity::ElectricCurrent;

const DEVICE: Symbol = Symbol::of("I", "d");
const LEAST: Symbol = Symbol::of("I", "d1");
/// Largest inverse-time breaker ahead of a motor, over its full-load current.
const BRANCH_BREAKER: f64 = 2.5;

pub(super) fn device(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let draw = case.draw()?;
    let (name, origin, sources): (_, _, &[&str]) = match draw.device_by {
        DeviceBy::Entered => (Name::DeviceEntered, Origin::Typed, &["nec-2023-430.122"]),
        DeviceBy::Marked => (Name::DeviceMarked, Origin::Typed, &["nec-2023-430.122"]),
        DeviceBy::Provisional => (Name::NextRating, Origin::Table, &["nec-2023-240.6", "nec-2023-430.122", "practice"]),
        DeviceBy::Converters => {
            (Name::NextRating, Origin::Table, &["nec-2023-455", "nec-2023-240.4", "nec-2023-240.6"])
        }
        DeviceBy::MotorBranch => (Name::NextRating, Origin::Table, &["nec-2023-240.6"]),
    };
    let least: (Vec<Math>, ElectricCurrent) = if draw.device_by == DeviceBy::MotorBranch {
        case.put_nameplate(&mut sheet)?;
        (formula![BRANCH_BREAKER, "·", NAMEPLATE], BRANCH_BREAKER * case.motor.nameplate)
    } else {
        put_rated_input(case, &draw, &mut sheet)?;
        (formula![1.25, "·", RATED_INPUT], 1.25 * draw.rated)
    };
    // A converter's conductors may be smaller than its nameplate asks, and its device protects them.
    let article = matches!(case.way.family.kind, Kind::SolidStateConverter | Kind::RotaryConverter);
    let smaller = article && draw.ampacity < least.1;
    let least = if smaller { (of_fixed_loads(case, &mut sheet), draw.ampacity) } else { least };
    let least_shown = sheet.step(LEAST, least.0, current(least.1));
    let result = sheet.put(DEVICE, name, current(draw.device), origin);
    // One that the article gives is judged by itself.
    let limit = (draw.device_by != DeviceBy::Converters).then(|| {
        let small = Finding::DeviceSmall { device: draw.device, least: least.1 };
        let severity = (draw.device < least.1).then(|| small.severity());
        Limit::unless(severity, LimitKind::AtLeast, result, least_shown)
    });
    Some(Working { limit, ..sheet.done(result, sources) })
}
