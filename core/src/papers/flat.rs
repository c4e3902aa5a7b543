//! The working of a flat cable: its conductors lie unlike, so the volts behind it are not alike.

use super::conversion::Conversion;
use super::lead::{COS, FACTOR, REACTANCE, RESISTANCE, SENDING, SIN, put_drop, put_table_resistance};
use super::lead::{DROP, per_length};
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::service::{FREQUENCY, Served, served};
use super::sheet::{LEAD, Sheet, percent, plain, volts};
use super::working::{EnteredValue, Working};
use crate::cable::drop::{Load, drop_parts, voltage_drop};
use crate::cable::flat::{FlatDrop, flat_reactance};
use crate::cable::reactance::{Build, FREQUENCY as TABLE_FREQUENCY, reactance};
use crate::evaluate::Evaluation;
use crate::job::{Origin, Way};
use crate::quantity::{Unit, in_amperes, in_hertz, in_meters, in_volts};
use core::f64::consts::{LN_2, PI};

const AT_60: Symbol = Symbol::of("X", "60");
const RECEIVED: Symbol = Symbol::of("V", "r");
const UNLIKE: Symbol = Symbol::of("X", "k");
const ALONG: [Symbol; 3] = [Symbol::of("a", "1"), Symbol::of("a", "2"), Symbol::of("a", "3")];
const ACROSS: [Symbol; 3] = [Symbol::of("b", "1"), Symbol::of("b", "2"), Symbol::of("b", "3")];
const LINES: [Symbol; 3] = [Symbol::of("V", "12"), Symbol::of("V", "23"), Symbol::of("V", "31")];
const MEAN: Symbol = Symbol::of("V", "av");
const UNBALANCE: Symbol = Symbol::of("u", "V");

pub(super) fn unbalance(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let served = served(evaluation, way)?;
    let flat = served.lead.flat?;
    let current = served.put_current(&mut sheet);
    let power_factor = evaluation.inputs.power_factor.as_ref().ok()?;
    let load = Load { current: served.each(), ..served.demands.load };
    sheet.put(SENDING, Name::SendingVoltage, volts(load.sending), Origin::Definition);
    sheet.put(COS, Name::PowerFactor, plain(power_factor.value), power_factor.origin);
    let sine = Math::Root(formula![1.0, "−", Math::Power(formula![COS], 2.0)]);
    let sin = (1.0 - load.power_factor * load.power_factor).sqrt();
    sheet.step(SIN, vec![sine], plain(sin));
    let received = put_received(&served, load, current, &mut sheet)?;
    // What one conductor's reactance differs from the others', over the whole lead.
    let (circle, meters) = (sheet.pi(), sheet.unit(Conversion::Kilofoot));
    let ln = formula!["ln", "(", 2.0, ")"];
    let per = formula![4.0, "·", circle, "·", FREQUENCY, "·", LEAD, "·", meters, "·"];
    let unlike = vec![Math::Fraction([per, ln].concat(), formula![Math::Power(formula![10.0], 10.0)])];
    let ohms = 4e-7 * PI * in_hertz(served.lead.frequency) * in_meters(served.lead.length) * LN_2;
    sheet.step(UNLIKE, unlike, (ohms, Unit::Ohm));
    let moved = ohms * in_amperes(load.current);
    put_phases(current, (received, moved), (load.power_factor, sin), &mut sheet);
    let result = put_lines(flat, &mut sheet);
    let lines = flat.lines.map(|line| sheet.shown(volts(line)));
    let sources = ["grainger-stevenson-1994", "nec-2023-ch9-t8", "nec-2023-310.4", "nema-mg1-14.36"];
    Some(Working { more: lines.to_vec(), ..sheet.done(result, &sources) })
}

/// Volts to neutral that the mean of the three conductors leaves.
fn put_received(served: &Served, load: Load, current: Symbol, sheet: &mut Sheet) -> Option<f64> {
    let (size, length) = (served.conductor.size, served.lead.length);
    let mean = flat_reactance(size, served.lead.frequency).ok()?.mean;
    let at_75 = served.lead.warm.at_75;
    sheet.put(FACTOR, Name::PhaseFactor, plain(load.phases.factor()), Origin::Definition);
    served.put_length(sheet);
    put_table_resistance(served.conductor, served.demands.setting.metal, RESISTANCE, sheet);
    sheet.enter(Name::LeadBuild, EnteredValue::Build(Build::FlatJacketed));
    sheet.put(AT_60, Name::Reactance, per_length(reactance(size, Build::FlatJacketed)), Origin::WorkedOut);
    served.put_frequency(sheet);
    let moved = formula![AT_60, "·", Math::Fraction(formula![FREQUENCY], formula![TABLE_FREQUENCY])];
    sheet.step(REACTANCE, moved, per_length(mean));
    let drop = voltage_drop(load, at_75, mean, length).ok()??;
    let parts = drop_parts(load, at_75, mean, length).ok()?;
    put_drop(current, COS, parts, (drop, (drop / load.sending).value), sheet);
    let left = vec![Math::Fraction(formula![SENDING, "−", DROP], formula![FACTOR])];
    let received = in_volts(load.sending - drop) / load.phases.factor();
    sheet.step(RECEIVED, left, (received, Unit::Volt));
    Some(received)
}

/// The three voltages to neutral, each seen from its own phase; the third lags by its part across.
fn put_phases(current: Symbol, (received, moved): (f64, f64), (cos, sin): (f64, f64), sheet: &mut Sheet) {
    let half = || Math::Fraction(formula![Math::Root(formula![3.0])], formula![2.0]);
    let part = |symbol: Symbol, under: f64| Math::Fraction(formula![symbol], formula![under]);
    let times = |sum: Vec<Math>| [formula![current, "·", UNLIKE, "·", "("], sum, formula![")"]].concat();
    let from = |sign: &'static str, sum: Vec<Math>| [formula![RECEIVED, sign], times(sum)].concat();
    let turned = 0.75f64.sqrt();
    let steps: [(Symbol, Vec<Math>, f64); 6] = [
        (
            ALONG[0],
            from("−", formula![half(), "·", COS, "+", part(SIN, 6.0)]),
            received - moved * (turned * cos + sin / 6.0),
        ),
        (ACROSS[0], times(formula![half(), "·", SIN, "−", part(COS, 6.0)]), moved * (turned * sin - cos / 6.0)),
        (ALONG[1], from("+", formula![part(SIN, 3.0)]), received + moved * sin / 3.0),
        (ACROSS[1], times(formula![part(COS, 3.0)]), moved * cos / 3.0),
        (
            ALONG[2],
            from("+", formula![half(), "·", COS, "−", part(SIN, 6.0)]),
            received + moved * (turned * cos - sin / 6.0),
        ),
        (ACROSS[2], times(formula![half(), "·", SIN, "+", part(COS, 6.0)]), moved * (turned * sin + cos / 6.0)),
    ];
    for (symbol, formula, value) in steps {
        sheet.step(symbol, formula, (value, Unit::Volt));
    }
}

/// The line voltages, their mean, and the largest deviation from it.
fn put_lines(flat: FlatDrop, sheet: &mut Sheet) -> crate::papers::Measured {
    let [a, p, c] = ALONG;
    let [b, q, d] = ACROSS;
    let half = || Math::Fraction(formula![Math::Root(formula![3.0])], formula![2.0]);
    let size = |real: Vec<Math>, imaginary: Vec<Math>| {
        let square = |part: Vec<Math>| Math::Power([formula!["("], part, formula![")"]].concat(), 2.0);
        vec![Math::Root(formula![square(real), "+", square(imaginary)])]
    };
    let two = |over: Vec<Math>| Math::Fraction(over, formula![2.0]);
    let lines = [
        size(
            formula![a, "+", two(formula![p]), "−", half(), "·", q],
            formula![b, "+", half(), "·", p, "+", two(formula![q])],
        ),
        size(
            formula![two(formula![c, "−", p]), "+", half(), "·", "(", q, "−", d, ")"],
            formula![half(), "·", "(", p, "+", c, ")", "+", two(formula![q, "+", d])],
        ),
        size(
            formula![a, "+", two(formula![c]), "−", half(), "·", d],
            formula![half(), "·", c, "+", two(formula![d]), "−", b],
        ),
    ];
    for ((symbol, formula), value) in LINES.into_iter().zip(lines).zip(flat.lines) {
        sheet.step(symbol, formula, volts(value));
    }
    let sum = formula![LINES[0], "+", LINES[1], "+", LINES[2]];
    let mean = flat.lines.map(in_volts).iter().sum::<f64>() / 3.0;
    sheet.step(MEAN, vec![Math::Fraction(sum, formula![3.0])], (mean, Unit::Volt));
    let pick =
        |of: fn(Vec<Math>, Vec<Math>) -> Math| of(vec![of(formula![LINES[0]], formula![LINES[1]])], formula![LINES[2]]);
    let over = formula![pick(Math::Max), "−", MEAN];
    let under = formula![MEAN, "−", pick(Math::Min)];
    let most = Math::Fraction(vec![Math::Max(over, under)], formula![MEAN]);
    sheet.step(UNBALANCE, formula![most, "·", 100.0], percent(flat.voltage_unbalance))
}
