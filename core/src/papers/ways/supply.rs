//! The working of the supply conductors: rated input, ampacity, drop.

use super::frame::{CAPACITY, CARRIES, SIZE};
use super::input::put_motor;
use super::{Case, EFFICIENCY, INPUT, SUPPLY, TRUE_FACTOR, on_lines};
use crate::cable::drop::{Load, drop_parts};
use crate::cable::lead::impedance;
use crate::evaluate::Draw;
use crate::finding::Finding;
use crate::job::{Field, Origin};
use crate::papers::conversion::Conversion;
use crate::papers::lead::{
    ALLOWED, CURRENT, FACTOR, POWER, REQUIRED, SIN, enter_columns, put_ampacity, put_drop, put_impedance,
    reactance_source,
};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::motor::EFFICIENCY as MOTOR_EFFICIENCY;
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, current, length, percent, plain, power};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::family::{Feed, Kind};
use crate::power::fit::FrameFit;
use crate::power::rotary::IDLER_RATIO;

pub(super) const RATED_INPUT: Symbol = Symbol::of("I", "ri");

/// A limit of the supply conductors; those that do not keep it are no size for the way.
fn supply_limit(kind: LimitKind, actual: Measured, limit: Measured, holds: bool) -> Option<Limit> {
    let severity = (!holds).then(|| Finding::SupplyNoSize.severity());
    Some(Limit { kind, actual, limit, holds, severity })
}

pub(super) fn ampacity(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (draw, supply) = (case.draw()?, case.way.supply?);
    let setting = supply.demands.setting;
    enter_columns(supply.run.conductor, setting, &mut sheet);
    put_rated_input(case, &draw, &mut sheet)?;
    let required = put_required(case, &draw, &mut sheet)?;
    let lead = case.inputs.ambient.as_ref().ok()?;
    let own = case.inputs.entered.take(Field::FeederAmbient, |degrees| degrees).ok()?;
    let around = (Name::FeederAmbient, own.map_or(lead.origin, |known| known.origin));
    let result = put_ampacity(&supply.run, setting, supply.demands.phases, around, &mut sheet)?;
    if supply.run.conductor.sets > 1 {
        sheet.cite(&["nec-2023-310.15c", "nec-2023-310.10g"]);
    }
    let holds = supply.run.ampacity >= draw.ampacity * (1.0 - 1e-9);
    let limit = supply_limit(LimitKind::AtLeast, result, required, holds);
    Some(Working { limit, ..sheet.done(result, &[]) })
}

/// What the conductors ahead of a converter for fixed loads must carry.
pub(super) fn of_fixed_loads(case: &Case, sheet: &mut Sheet) -> Vec<Math> {
    sheet.put(CURRENT, Name::MotorCurrent, current(case.motor.sizing), Origin::WorkedOut);
    // Two lines pass straight through: output over input volts is 1.
    formula![Math::Min(formula![1.25, "·", RATED_INPUT], formula![2.5, "·", CURRENT])]
}

/// What the conductors must carry.
fn put_required(case: &Case, draw: &Draw, sheet: &mut Sheet) -> Option<Measured> {
    let rated = formula![1.25, "·", RATED_INPUT];
    let formula = match case.way.family.kind {
        Kind::SolidStateConverter | Kind::RotaryConverter => {
            sheet.cite(&["nec-2023-455"]);
            of_fixed_loads(case, sheet)
        }
        Kind::SinglePhaseMotor => {
            sheet.cite(&["nec-2023-430.22"]);
            rated
        }
        _ => {
            sheet.cite(&["nec-2023-430.122"]);
            rated
        }
    };
    Some(sheet.step(REQUIRED, formula, current(draw.ampacity)))
}

/// The rated input: of a data sheet, of the table for a motor that is its own equipment, else worked out for the frame.
pub(super) fn put_rated_input(case: &Case, draw: &Draw, sheet: &mut Sheet) -> Option<()> {
    let family = &case.way.family;
    if draw.rated_typed || family.motor == Feed::SinglePhase {
        let origin = if draw.rated_typed { Origin::Typed } else { Origin::Table };
        sheet.put(RATED_INPUT, Name::RatedInput, current(draw.rated), origin);
        if !draw.rated_typed {
            sheet.cite(&["nec-2023-430.248"]);
        }
        return Some(());
    }
    case.put_power_factor(draw, sheet);
    put_motor(case, sheet)?;
    let mut carried = POWER;
    if let Some(FrameFit::Serves { frame, .. }) = case.way.frame {
        sheet.put(SIZE, Name::FrameSize, power(frame.power), case.of_family());
        carried = SIZE;
        if family.kind == Kind::RotaryConverter {
            sheet.step(
                CARRIES,
                vec![Math::Fraction(formula![SIZE], formula![IDLER_RATIO])],
                power(frame.carries / IDLER_RATIO),
            );
            carried = CARRIES;
        } else if family.capacity != 1.0 {
            sheet.put(CAPACITY, Name::Capacity, plain(family.capacity), case.of_family());
            sheet.step(CARRIES, formula![CAPACITY, "·", SIZE], power(frame.carries));
            carried = CARRIES;
        }
    }
    sheet.put(EFFICIENCY, Name::EquipmentEfficiency, plain(family.input.efficiency), case.of_family());
    case.put_supply_volts(sheet);
    let watts = sheet.unit(Conversion::Watts);
    let lines = on_lines(case.feed(), formula![SUPPLY, "·", TRUE_FACTOR]);
    let under = [formula![MOTOR_EFFICIENCY, "·", EFFICIENCY, "·"], lines].concat();
    sheet.step(RATED_INPUT, vec![Math::Fraction(formula![carried, "·", watts], under)], current(draw.rated));
    sheet.cite(&["practice", "ieee-1459-2010"]);
    Some(())
}

pub(super) fn drop(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (draw, supply) = (case.draw()?, case.way.supply?);
    let demands = supply.demands;
    let (r, x) = impedance(supply.run.conductor, demands.setting.metal, demands.build);
    let load = Load {
        sending: demands.supply,
        current: demands.running,
        power_factor: demands.power_factor,
        phases: demands.phases,
    };
    let parts = drop_parts(load, r, x, supply.length).ok()?;
    case.put_supply_volts(&mut sheet);
    sheet.put(INPUT, Name::InputCurrent, current(draw.current), Origin::WorkedOut);
    case.put_true_factor(&draw, &mut sheet);
    sheet.put(FACTOR, Name::PhaseFactor, plain(demands.phases.factor()), Origin::Definition);
    sheet.put(LEAD, Name::SupplyLength, length(supply.length), case.inputs.origin(Field::PoleDistance));
    put_impedance(supply.run.conductor, demands.setting.metal, demands.build, &mut sheet);
    put_sine(&draw, &mut sheet);
    let (result, share) = put_drop(INPUT, TRUE_FACTOR, parts, (supply.drop, supply.share), &mut sheet);
    let allowed = percent(demands.allowed_drop);
    sheet.put(ALLOWED, Name::AllowedDrop, allowed, case.inputs.origin(Field::AllowedSupplyDrop));
    let holds = supply.share <= demands.allowed_drop * (1.0 + 1e-9);
    let limit = supply_limit(LimitKind::AtMost, share, sheet.shown(allowed), holds);
    let sources = ["nec-2023-ch9-t8", reactance_source(demands.build), "ieee-141-1993", "practice"];
    Some(Working { more: vec![share], limit, ..sheet.done(result, &sources) })
}

/// sin φ of the true power factor.
pub(super) fn put_sine(draw: &Draw, sheet: &mut Sheet) {
    let sine = Math::Root(formula![1.0, "−", Math::Power(formula![TRUE_FACTOR], 2.0)]);
    sheet.step(SIN, vec![sine], plain((1.0 - draw.power_factor * draw.power_factor).sqrt()));
}
