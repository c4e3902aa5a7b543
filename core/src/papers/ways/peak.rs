//! The working of the peak that a drive's pulses come to at the motor.

use super::{Case, SUPPLY};
use crate::cable::long_lead::{INVERTER_DUTY_RATIO, Limit as Stands};
use crate::evaluate::Stress;
use crate::finding::{Finding, Severity};
use crate::job::{Field, Origin};
use crate::papers::lead::RATED;
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, length, plain, volts};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::family::Bus;
use crate::quantity::{Unit, in_ohms};

const BUS: Symbol = Symbol::of("V", "dc");
const RISE: Symbol = Symbol::of("k", "r");
const CRITICAL: Symbol = Symbol::of("ℓ", "c");
const PULSE_SPEED: Symbol = Symbol::of("v", "p");
const RISE_TIME: Symbol = Symbol::of("t", "r");
const CABLE: Symbol = Symbol::of("Z", "c");
const MOTOR: Symbol = Symbol::of("Z", "m");
const REFLECTION: Symbol = Symbol::plain("Γ");
const PEAK: Symbol = Symbol::of("V", "p");
const STANDS: Symbol = Symbol::of("V", "s");

pub(super) fn peak(case: &Case, sheet: Sheet) -> Option<Working> {
    let stress = case.way.stress?;
    let worked = worked(case, &stress, sheet)?;
    let passed = stress.peak > stress.limit.peak();
    let high = case.found(|finding| matches!(finding, Finding::LeadPeakHigh { .. } | Finding::LeadNeedsFilter { .. }));
    let [result, most] = [worked.result, worked.most];
    let limit = Some(Limit::unless(high.filter(|_| passed), LimitKind::AtMost, result, most));
    Some(Working { limit, ..worked.done() })
}

/// The same without a filter of the equipment's own: what the lesson tells.
pub(super) fn bare(case: &Case, sheet: Sheet) -> Option<Working> {
    let stress = case.way.bare?;
    let worked = worked(case, &stress, sheet)?;
    let passed = stress.peak > stress.limit.peak();
    let [result, most] = [worked.result, worked.most];
    let limit = Some(Limit::unless(passed.then_some(Severity::Caution), LimitKind::AtMost, result, most));
    Some(Working { limit, ..worked.done() })
}

/// The sums of a peak, before it is judged.
struct Worked {
    sheet: Sheet,
    result: Measured,
    more: Vec<Measured>,
    most: Measured,
}

impl Worked {
    fn done(self) -> Working {
        Working { more: self.more, ..self.sheet.done(self.result, &["saunders-1996", "practice"]) }
    }
}

fn worked(case: &Case, stress: &Stress, mut sheet: Sheet) -> Option<Worked> {
    put_bus(case, stress, &mut sheet)?;
    sheet.take(case.inputs, PULSE_SPEED, Name::PulseSpeed, Field::WaveSpeed)?;
    sheet.take(case.inputs, RISE_TIME, Name::RiseTime, Field::RiseTime)?;
    let half = Math::Fraction(formula![PULSE_SPEED, "·", RISE_TIME], formula![2.0]);
    let critical = sheet.step(CRITICAL, vec![half], length(stress.critical));
    sheet.take(case.inputs, CABLE, Name::CableImpedance, Field::CableImpedance)?;
    let origin = case.inputs.origin(Field::MotorImpedance);
    sheet.put(MOTOR, Name::MotorImpedance, (in_ohms(stress.wave.motor), Unit::Ohm), origin);
    let sent_back = Math::Fraction(formula![MOTOR, "−", CABLE], formula![MOTOR, "+", CABLE]);
    let reflection = sheet.step(REFLECTION, vec![sent_back], plain(stress.reflection));
    sheet.put(LEAD, Name::LeadLength, length(stress.length), Origin::WorkedOut);
    let grown = Math::Min(vec![Math::Fraction(formula![LEAD], formula![CRITICAL])], formula![1.0]);
    let formula = formula![BUS, "·", "(", 1.0, "+", REFLECTION, "·", grown, ")"];
    let result = sheet.step(PEAK, formula, volts(stress.peak));
    let most = put_limit(stress, &mut sheet);
    Some(Worked { sheet, result, more: vec![critical, reflection], most })
}

/// Voltage of the bus: held, or what a rectifier charges it to at high line.
fn put_bus(case: &Case, stress: &Stress, sheet: &mut Sheet) -> Option<()> {
    let bus = volts(stress.bus);
    let (rise, of_line) = match case.way.family.bus {
        Bus::Held { .. } => {
            sheet.put(BUS, Name::BusVolts, bus, case.of_family());
            return Some(());
        }
        Bus::Peak { rise } => (rise, formula![Math::Root(formula![2.0])]),
        Bus::Mean { rise } => {
            let over = formula![3.0, "·", Math::Root(formula![2.0])];
            (rise, vec![Math::Fraction(over, formula![sheet.pi()])])
        }
        Bus::None => return None,
    };
    case.put_supply_volts(sheet);
    sheet.put(RISE, Name::BusRise, plain(rise), case.of_family());
    sheet.step(BUS, [of_line, formula!["·", SUPPLY, "·", RISE]].concat(), bus);
    sheet.cite(&["mohan-2003"]);
    Some(())
}

/// The largest peak that the motor stands.
fn put_limit(stress: &Stress, sheet: &mut Sheet) -> Measured {
    let most = volts(stress.limit.peak());
    match stress.limit {
        Stands::GeneralPurpose => {
            sheet.cite(&["nema-mg1-30"]);
            sheet.put(STANDS, Name::MotorStands, most, Origin::Definition)
        }
        Stands::Typed(_) => sheet.put(STANDS, Name::MotorStands, most, Origin::Typed),
        Stands::InverterDuty(rated) => {
            sheet.cite(&["nema-mg1-31"]);
            sheet.put(RATED, Name::RatedVoltage, volts(rated), Origin::Definition);
            sheet.step(STANDS, formula![INVERTER_DUTY_RATIO, "·", RATED], most)
        }
    }
}
