//! The working of the input: power factor, power and current that a way draws.

use super::{Case, EFFICIENCY, INPUT, SUPPLY, TRUE_FACTOR, on_lines};
use crate::evaluate::Draw;
use crate::job::Origin;
use crate::papers::conversion::Conversion;
use crate::papers::lead::{NAMEPLATE, POWER, RESISTANCE, put_resistance};
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::motor::EFFICIENCY as MOTOR_EFFICIENCY;
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, current, heat, length, plain, power};
use crate::papers::working::Working;
use crate::power::family::Feed;

pub(super) const INPUT_POWER: Symbol = Symbol::of("P", "in");
pub(super) const LEAD_LOSS: Symbol = Symbol::of("P", "l");

pub(super) fn input(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let draw = case.draw()?;
    let factor = case.put_power_factor(&draw, &mut sheet);
    put_motor(case, &mut sheet)?;
    let watts = sheet.unit(Conversion::Watts);
    let motor = Math::Fraction(formula![POWER, "·", watts], formula![MOTOR_EFFICIENCY]);
    let with_lead = put_lead_loss(case, &draw, &mut sheet);
    let mut output = vec![motor];
    if with_lead.is_some() {
        output.extend(formula!["+", LEAD_LOSS]);
    }
    sheet.put(EFFICIENCY, Name::EquipmentEfficiency, plain(case.way.family.input.efficiency), case.of_family());
    let drawn = sheet.step(INPUT_POWER, vec![Math::Fraction(output, formula![EFFICIENCY])], heat(draw.input));
    case.put_supply_volts(&mut sheet);
    let under = on_lines(case.feed(), formula![SUPPLY, "·", TRUE_FACTOR]);
    let result = sheet.step(INPUT, vec![Math::Fraction(formula![INPUT_POWER], under)], current(draw.current));
    let sources = ["ieee-1459-2010", "practice"];
    Some(Working { more: vec![drawn, factor], ..sheet.done(result, &sources) })
}

/// The motor's rated power and its efficiency.
pub(super) fn put_motor(case: &Case, sheet: &mut Sheet) -> Option<()> {
    let efficiency = case.inputs.efficiency.as_ref().ok()?;
    // A single-phase motor is the next size that is made.
    let origin = match case.way.family.motor {
        Feed::SinglePhase => Origin::WorkedOut,
        Feed::ThreePhase => case.inputs.motor_power.as_ref().ok()?.origin,
    };
    sheet.put(POWER, Name::MotorPower, power(case.motor.power), origin);
    sheet.put(MOTOR_EFFICIENCY, Name::MotorEfficiency, plain(efficiency.value), efficiency.origin);
    Some(())
}

/// Heat of the lead at the nameplate's current, all of its conductors.
fn put_lead_loss(case: &Case, draw: &Draw, sheet: &mut Sheet) -> Option<()> {
    let lead = case.way.lead?;
    case.put_nameplate(sheet)?;
    sheet.put(LEAD, Name::LeadLength, length(lead.length), Origin::WorkedOut);
    put_resistance(lead.run.conductor, lead.demands.setting.metal, sheet);
    sheet.cite(&["nec-2023-ch9-t8"]);
    let conductors = f64::from(case.motor.phases.conductors());
    let squared = Math::Power(formula![NAMEPLATE], 2.0);
    let product = formula![conductors, "·", squared, "·", RESISTANCE, "·", LEAD];
    sheet.step(LEAD_LOSS, vec![Math::Fraction(product, formula![1000.0])], heat(draw.lead_loss));
    Some(())
}
