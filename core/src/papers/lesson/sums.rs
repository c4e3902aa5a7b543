//! The sums of the lesson, as formulas with the numbers put in.

use super::{Lesson, LessonStep, LessonSum, Offered, lesson, question};
use crate::cable::drop::drop_parts;
use crate::cable::lead::{Demands, impedance};
use crate::cable::needed::{allowed_resistance, warm_resistance};
use crate::evaluate::Evaluation;
use crate::job::{Field, Origin, Way};
use crate::papers::conversion::Conversion;
use crate::papers::cost::EXTRA;
use crate::papers::lead::{
    ALLOWED, ALONG, COS, CURRENT, DROP, FACTOR, POWER, RATED, REACTANCE, REQUIRED, RESISTANCE, SENDING, SHARE, SIN,
    enter_columns, per_length, put_ampacity, put_impedance, reactance_source,
};
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::motor::EFFICIENCY;
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, current, heat, length, money, percent, plain, power, volts};
use crate::papers::ways::bare_peak;
use crate::papers::working::{Limit, LimitKind, Working};
use crate::quantity::{Area, Unit, circular_mils, in_circular_mils, in_pounds};
use uom::si::area::square_millimeter;

const TAKEN_IN: Symbol = Symbol::of("P", "el");
const ONE_AREA: Symbol = Symbol::of("A", "0");
const ONE_RESISTANCE: Symbol = Symbol::of("R", "0");
const AREA: Symbol = Symbol::plain("A");
const RATIO: Symbol = Symbol::of("r", "A");
const METAL_RATIO: Symbol = Symbol::of("r", "M");
const CURRENTS: [Symbol; 2] = [Symbol::of("I", "240"), Symbol::of("I", "480")];
const VOLTS: [Symbol; 2] = [Symbol::of("V", "240"), Symbol::of("V", "480")];
const COSTS: [Symbol; 2] = [Symbol::of("C", "240"), Symbol::of("C", "480")];
/// What a question asks for.
const OTHER_CURRENT: Symbol = Symbol::of("I", "x");
const OTHER_SHARE: Symbol = Symbol::of("d", "x");
const OTHER_AREA: Symbol = Symbol::of("A", "x");
const OTHER_SAVING: Symbol = Symbol::of("S", "x");
const OTHER_PEAK: Symbol = Symbol::of("V", "x");
const BUS: Symbol = Symbol::of("V", "dc");
const METALS: [Symbol; 2] = [Symbol::of("M", "240"), Symbol::of("M", "480")];

/// The working of a sum.
pub(in crate::papers) fn sum(evaluation: &Evaluation, sum: LessonSum, sheet: Sheet) -> Option<Working> {
    let case = Case { evaluation, lesson: lesson(evaluation)? };
    match sum {
        LessonSum::Current(way) => case.by_power(way, sheet),
        LessonSum::SameWire(way) => case.same_wire(way, sheet),
        LessonSum::Area(way) => case.area(way, sheet),
        LessonSum::Ratio => case.ratio(sheet),
        LessonSum::Least(way) => case.least(way, sheet),
        LessonSum::Peak(way) => bare_peak(evaluation, case.lesson.way(way).place?, sheet),
        LessonSum::Metal => Some(case.metal(sheet)),
        LessonSum::Answer(step) => case.answer(step, sheet),
    }
}

struct Case<'a> {
    evaluation: &'a Evaluation,
    lesson: Lesson,
}

impl Case<'_> {
    fn demands(&self, way: Way) -> Option<&Demands> {
        Some(&self.evaluation.sweep.as_ref()?.way(way).demands)
    }

    fn put_cos(&self, sheet: &mut Sheet) -> Option<()> {
        let cos = self.evaluation.inputs.power_factor.as_ref().ok()?;
        sheet.put(COS, Name::PowerFactor, plain(cos.value), cos.origin);
        Some(())
    }

    /// What a drop is worked out from beside the wire.
    fn put_load(&self, way: Way, sheet: &mut Sheet) -> Option<()> {
        let load = self.demands(way)?.load;
        sheet.put(SENDING, Name::SendingVoltage, volts(load.sending), Origin::Definition);
        sheet.put(CURRENT, Name::MotorCurrent, current(load.current), Origin::WorkedOut);
        self.put_cos(sheet)?;
        sheet.put(FACTOR, Name::PhaseFactor, plain(load.phases.factor()), Origin::Definition);
        sheet.put(LEAD, Name::LeadLength, length(self.lesson.lead), self.evaluation.inputs.origin(Field::PumpSetting));
        Some(())
    }

    fn by_power(&self, way: Way, mut sheet: Sheet) -> Option<Working> {
        let inputs = &self.evaluation.inputs;
        let (rated, efficiency) = (inputs.motor_power.as_ref().ok()?, inputs.efficiency.as_ref().ok()?);
        sheet.put(POWER, Name::MotorPower, power(rated.value), rated.origin);
        let watts = sheet.unit(Conversion::Watts);
        sheet.put(EFFICIENCY, Name::MotorEfficiency, plain(efficiency.value), efficiency.origin);
        let taken = vec![Math::Fraction(formula![POWER, "·", watts], formula![EFFICIENCY])];
        sheet.step(TAKEN_IN, taken, heat(self.lesson.input));
        sheet.put(RATED, Name::RatedVoltage, (way.rated_volts(), Unit::Volt), Origin::Definition);
        self.put_cos(&mut sheet)?;
        let under = formula![Math::Root(formula![3.0]), "·", RATED, "·", COS];
        let amps = vec![Math::Fraction(formula![TAKEN_IN], under)];
        let result = sheet.step(CURRENT, amps, current(self.lesson.way(way).by_power));
        Some(sheet.done(result, &["practice"]))
    }

    fn same_wire(&self, way: Way, mut sheet: Sheet) -> Option<Working> {
        let demands = self.demands(way)?;
        let wire = self.lesson.way(Way::V240).here.run.run.conductor;
        let (r, x) = impedance(wire, demands.setting.metal, demands.build);
        let parts = drop_parts(demands.load, r, x, self.lesson.lead).ok()?;
        self.put_load(way, &mut sheet)?;
        put_impedance(wire, demands.setting.metal, demands.build, &mut sheet);
        let cos = demands.load.power_factor;
        let sine = Math::Root(formula![1.0, "−", Math::Power(formula![COS], 2.0)]);
        sheet.step(SIN, vec![sine], plain((1.0 - cos * cos).sqrt()));
        let inside = formula![RESISTANCE, "·", COS, "+", REACTANCE, "·", SIN];
        let product = [formula![FACTOR, "·", CURRENT, "·", LEAD, "·", "("], inside, formula![")"]].concat();
        let along = sheet.step(ALONG, vec![Math::Fraction(product, formula![1000.0])], volts(parts.along));
        let of_sent = formula![Math::Fraction(formula![ALONG], formula![SENDING]), "·", 100.0];
        let result = sheet.step(SHARE, of_sent, percent(self.lesson.way(way).lost_share));
        let sources = ["nec-2023-ch9-t8", reactance_source(demands.build), "ieee-141-1993"];
        Some(Working { more: vec![along], ..sheet.done(result, &sources) })
    }

    fn area(&self, way: Way, mut sheet: Sheet) -> Option<Working> {
        let demands = self.demands(way)?;
        let allowed = self.evaluation.inputs.allowed_drop.as_ref().ok()?;
        let one = if sheet.is_us() { circular_mils(1000.0) } else { Area::new::<square_millimeter>(1.0) };
        sheet.put(ALLOWED, Name::AllowedDrop, percent(allowed.value), allowed.origin);
        self.put_load(way, &mut sheet)?;
        let lost = formula![Math::Fraction(formula![ALLOWED], formula![100.0]), "·", SENDING];
        sheet.step(DROP, lost, volts(self.lesson.way(way).allowed));
        let under = formula![FACTOR, "·", CURRENT, "·", LEAD, "·", COS];
        let needed = allowed_resistance(demands.load, self.lesson.lead, allowed.value).ok()?;
        let most = vec![Math::Fraction(formula![DROP, "·", 1000.0], under)];
        sheet.step(RESISTANCE, most, per_length(needed));
        sheet.put(ONE_AREA, Name::ComparedArea, area(one), Origin::Definition);
        let resistance = warm_resistance(self.lesson.metal, one).ok()?;
        sheet.put(ONE_RESISTANCE, Name::ComparedResistance, per_length(resistance), Origin::WorkedOut);
        let metal = vec![Math::Fraction(formula![ONE_AREA, "·", ONE_RESISTANCE], formula![RESISTANCE])];
        let result = sheet.step(AREA, metal, area(self.lesson.way(way).area));
        Some(sheet.done(result, &["iec-60028", "astm-b8", "ieee-141-1993"]))
    }

    fn ratio(&self, mut sheet: Sheet) -> Option<Working> {
        for way in Way::ALL {
            let load = self.demands(way)?.load;
            sheet.put(CURRENTS[way as usize], Name::MotorCurrent, current(load.current), Origin::WorkedOut);
            sheet.put(VOLTS[way as usize], Name::SendingVoltage, volts(load.sending), Origin::Definition);
        }
        let amps = Math::Fraction(formula![CURRENTS[1]], formula![CURRENTS[0]]);
        let share = Math::Fraction(formula![VOLTS[0]], formula![VOLTS[1]]);
        let [low, high] = self.lesson.ways.map(|way| way.area);
        let result = sheet.step(RATIO, formula![amps, "·", share], plain((high / low).value));
        Some(sheet.done(result, &[]))
    }

    fn least(&self, way: Way, mut sheet: Sheet) -> Option<Working> {
        let swept = self.evaluation.sweep.as_ref()?.way(way);
        let (demands, first) = (&swept.demands, swept.runs.first()?.run);
        let ambient = self.evaluation.inputs.ambient.as_ref().ok()?;
        enter_columns(first.conductor, demands.setting, &mut sheet);
        sheet.put(CURRENT, Name::MotorCurrent, current(demands.load.current), Origin::WorkedOut);
        let required = sheet.step(REQUIRED, formula![1.25, "·", CURRENT], current(demands.required));
        let around = (Name::Ambient, ambient.origin);
        let result = put_ampacity(&first, demands.setting, demands.load.phases, around, &mut sheet)?;
        sheet.cite(&["nec-2023-430.22", "nec-2023-430.122"]);
        let limit = Limit::unless(None, LimitKind::AtLeast, result, required);
        Some(Working { limit: Some(limit), ..sheet.done(result, &[]) })
    }

    /// The right answer to a question, where it is a sum.
    fn answer(&self, step: LessonStep, mut sheet: Sheet) -> Option<Working> {
        let right = question(&self.lesson, step).into_iter().find(|choice| choice.is_right())?;
        let Offered::Figure(right) = right.offered else { return None };
        let right = (right.value, right.unit);
        let (low, high) = (self.lesson.way(Way::V240), self.lesson.way(Way::V480));
        let mut put = |symbol, name, value| sheet.put(symbol, name, value, Origin::WorkedOut);
        let over = |symbol: Symbol, number: f64| vec![Math::Fraction(formula![symbol], formula![number])];
        let (symbol, formula) = match step {
            LessonStep::Power | LessonStep::Amps => {
                put(CURRENT, Name::RunningCurrent, current(low.by_power));
                let twice = step == LessonStep::Power;
                (OTHER_CURRENT, if twice { formula![2.0, "·", CURRENT] } else { over(CURRENT, 3.0) })
            }
            LessonStep::Share => {
                put(SHARE, Name::DropShare, percent(high.lost_share));
                (OTHER_SHARE, over(SHARE, 4.0))
            }
            LessonStep::Area | LessonStep::Quarter => {
                put(AREA, Name::NeededArea, area(low.area));
                let third = formula![3.0, "·", 3.0];
                let ninth = vec![Math::Fraction(formula![AREA], third)];
                (OTHER_AREA, if step == LessonStep::Area { formula![2.0, "·", AREA] } else { ninth })
            }
            LessonStep::Heat => {
                put(CURRENT, Name::MotorCurrent, current(self.lesson.larger_motor()));
                (REQUIRED, formula![1.25, "·", CURRENT])
            }
            LessonStep::Pays => {
                for (way, cable) in Way::ALL.into_iter().zip(self.lesson.other.cables) {
                    put(COSTS[way as usize], Name::CableCost(way), money(cable));
                }
                put(EXTRA, Name::ExtraEquipment, money(self.lesson.other.extra));
                (OTHER_SAVING, formula![COSTS[0], "−", COSTS[1], "−", EXTRA])
            }
            LessonStep::Peak => {
                put(BUS, Name::BusVolts, volts(high.pulses?.bus));
                (OTHER_PEAK, formula![2.0, "·", BUS])
            }
            LessonStep::Sizes | LessonStep::Home => return None,
        };
        let result = sheet.step(symbol, formula, right);
        Some(sheet.done(result, &[]))
    }

    fn metal(&self, mut sheet: Sheet) -> Working {
        for (symbol, way) in METALS.into_iter().zip(&self.lesson.ways) {
            let pounds = (in_pounds(way.here.metal), Unit::Pound);
            sheet.put(symbol, Name::LeadMetalAll, pounds, Origin::WorkedOut);
        }
        let share = formula![Math::Fraction(formula![METALS[1]], formula![METALS[0]]), "·", 100.0];
        let result = sheet.step(METAL_RATIO, share, percent(self.lesson.metal_ratio()));
        sheet.done(result, &[])
    }
}

fn area(area: Area) -> (f64, Unit) {
    (in_circular_mils(area) / 1000.0, Unit::Kcmil)
}
