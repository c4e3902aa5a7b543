//! The working of the volts: from what the supply leaves at the equipment to the motor, and the frequency they last to.

use super::Case;
use crate::cable::filter::{Practice, Remedy};
use crate::finding::Finding;
use crate::job::Origin;
use crate::papers::lead::{DROP, RATED};
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{Sheet, percent, plain, volts};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::family::{Change, Class, Filter, OutputRule};
use crate::quantity::{Frequency, Unit, in_hertz};

pub(super) const AT_EQUIPMENT: Symbol = Symbol::of("V", "e");
const NOMINAL_IN: Symbol = Symbol::of("V", "1");
const NOMINAL_OUT: Symbol = Symbol::of("V", "2");
const FLOOR: Symbol = Symbol::of("k", "f");
const FOLLOWS: Symbol = Symbol::of("k", "o");
const OUTPUT: Symbol = Symbol::of("V", "o");
const FILTER_SHARE: Symbol = Symbol::of("c", "f");
const FILTER: Symbol = Symbol::of("ΔV", "f");
const TRANSFORMER_SHARE: Symbol = Symbol::of("c", "x");
const TRANSFORMER: Symbol = Symbol::of("ΔV", "x");
const AT_MOTOR: Symbol = Symbol::of("V", "M");
const RATED_FREQUENCY: Symbol = Symbol::of("f", "n");
const RUNS_OUT: Symbol = Symbol::of("f", "v");

pub(super) fn at_motor(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let found = case.way.volts?;
    let budget = found.budget;
    sheet.put(AT_EQUIPMENT, Name::VoltsAtEquipment, volts(budget.at_equipment), Origin::WorkedOut);
    put_output(case, &mut sheet)?;
    let mut left = formula![OUTPUT];
    if let Some((share, origin)) = filter_share(case) {
        sheet.put(FILTER_SHARE, Name::FilterShare, percent(share), origin);
        sheet.step(FILTER, share_of_output(FILTER_SHARE), volts(budget.filter));
        left.extend(formula!["−", FILTER]);
    }
    if let Change::SteppedUp { drop } = case.way.family.change {
        sheet.put(TRANSFORMER_SHARE, Name::TransformerShare, percent(drop), case.of_family());
        sheet.step(TRANSFORMER, share_of_output(TRANSFORMER_SHARE), volts(budget.transformer));
        left.extend(formula!["−", TRANSFORMER]);
    }
    sheet.put(DROP, Name::LeadDrop, volts(budget.lead), Origin::WorkedOut);
    left.extend(formula!["−", DROP]);
    let result = sheet.step(AT_MOTOR, left, volts(budget.at_motor));
    sheet.put(RATED, Name::RatedVoltage, volts(case.motor.rated), Origin::Definition);
    sheet.put(RATED_FREQUENCY, Name::RatedFrequency, (60.0, Unit::Hertz), Origin::Definition);
    let ratio = Math::Fraction(formula![AT_MOTOR], formula![RATED]);
    let lasts = sheet.step(RUNS_OUT, formula![RATED_FREQUENCY, "·", ratio], frequency(found.runs_out));
    let needed = sheet.shown(frequency(found.needed));
    let low = case.found(|finding| matches!(finding, Finding::MotorVoltsLow { .. }));
    let limit = Some(Limit::unless(low, LimitKind::AtLeast, lasts, needed));
    Some(Working { more: vec![lasts], limit, ..sheet.done(result, &["practice", "nema-mg1-2016"]) })
}

fn frequency(frequency: Frequency) -> (f64, Unit) {
    (in_hertz(frequency), Unit::Hertz)
}

fn share_of_output(share: Symbol) -> Vec<Math> {
    formula![Math::Fraction(formula![share], formula![100.0]), "·", OUTPUT]
}

/// What the equipment gives before filter and transformer, brought to the motor's class.
fn put_output(case: &Case, sheet: &mut Sheet) -> Option<()> {
    let (family, supply) = (&case.way.family, case.way.fed.0);
    let motor = family.motor_class(supply)?;
    let nominal = |symbol, name, class: Class, sheet: &mut Sheet| {
        sheet.put(symbol, name, volts(class.nominal()), Origin::Definition);
    };
    let changes = motor != supply;
    let output = volts(case.way.volts?.budget.output);
    match family.output {
        OutputRule::Held { floor } => {
            sheet.put(FLOOR, Name::OutputFloor, plain(floor), case.of_family());
            nominal(NOMINAL_IN, Name::NominalSupply, supply, sheet);
            nominal(NOMINAL_OUT, Name::NominalOutput, motor, sheet);
            let share = Math::Fraction(formula![AT_EQUIPMENT], formula![FLOOR, "·", NOMINAL_IN]);
            sheet.step(OUTPUT, formula![NOMINAL_OUT, "·", Math::Min(vec![share], formula![1.0])], output);
        }
        OutputRule::Follows { share } => {
            sheet.put(FOLLOWS, Name::OutputShare, plain(share), case.of_family());
            let mut formula = formula![FOLLOWS, "·", AT_EQUIPMENT];
            if changes {
                nominal(NOMINAL_IN, Name::NominalSupply, supply, sheet);
                nominal(NOMINAL_OUT, Name::NominalOutput, motor, sheet);
                let ratio = Math::Fraction(formula![NOMINAL_OUT], formula![NOMINAL_IN]);
                formula.extend(formula!["·", ratio]);
            }
            sheet.step(OUTPUT, formula, output);
        }
    }
    Some(())
}

/// Share of the volts that a filter takes: the equipment's own, or what was put ahead of the lead.
fn filter_share(case: &Case) -> Option<(f64, Origin)> {
    let fitted = case.way.stress.map(|stress| stress.fitted).filter(|fitted| *fitted != Remedy::NoneNeeded);
    match (fitted, case.way.family.filter) {
        (Some(fitted), _) => Some((Practice::default().of(fitted).cost, Origin::Assumed)),
        (None, Filter::Sine { share, .. }) => Some((share, case.of_family())),
        (None, Filter::None | Filter::MadeLine) => None,
    }
}
