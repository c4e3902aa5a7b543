//! Formulas as MathML, and on one line of text.

use crate::locale::{measured, words};
use std::fmt::Write as _;
use wellwright_core::papers::{Math, Measured, Symbol};
use wellwright_core::quantity::Unit;

/// A formula as MathML.
#[must_use]
pub fn markup(symbol: Symbol, formula: &[Math]) -> String {
    let mut out = String::from("<math>");
    letter(symbol, &mut out);
    sign("=", &mut out);
    row(formula, &mut out);
    out.push_str("</math>");
    out
}

/// The result behind a formula as MathML.
#[must_use]
pub fn equals(result: Measured) -> String {
    format!("<math><mo>=</mo><mtext>{}</mtext></math>", measured(result).text())
}

fn letter(symbol: Symbol, out: &mut String) {
    let Symbol { letter, index } = symbol;
    let _ = match index {
        "" => write!(out, "<mi>{letter}</mi>"),
        index => write!(out, "<msub><mi>{letter}</mi><mtext>{index}</mtext></msub>"),
    };
}

fn sign(sign: &str, out: &mut String) {
    let _ = write!(out, "<mo>{sign}</mo>");
}

fn row(pieces: &[Math], out: &mut String) {
    out.push_str("<mrow>");
    for piece in pieces {
        match piece {
            Math::Symbol(symbol) => letter(*symbol, out),
            Math::Number(number) => {
                let _ = write!(out, "<mn>{}</mn>", number_text(*number));
            }
            Math::Sign(text) => sign(text, out),
            Math::Fraction(over, under) => both("mfrac", over, under, out),
            Math::Root(inside) => {
                out.push_str("<msqrt>");
                row(inside, out);
                out.push_str("</msqrt>");
            }
            Math::Power(base, power) => {
                out.push_str("<msup><mrow>");
                let whole = is_whole(base);
                out.push_str(if whole { "" } else { "<mo>(</mo>" });
                row(base, out);
                out.push_str(if whole { "" } else { "<mo>)</mo>" });
                out.push_str("</mrow>");
                let _ = write!(out, "<mn>{}</mn></msup>", power_text(*power));
            }
            Math::Max(one, other) => choice(words().working.larger, one, other, out),
            Math::Min(one, other) => choice(words().working.smaller, one, other, out),
        }
    }
    out.push_str("</mrow>");
}

/// Whether a base needs no brackets to be raised as a whole: a letter, a number, or what stands in brackets already.
fn is_whole(base: &[Math]) -> bool {
    match base {
        [Math::Symbol(symbol)] => !symbol.letter.contains(' '),
        [Math::Number(_)] => true,
        [Math::Sign("("), .., Math::Sign(")")] => true,
        _ => false,
    }
}

fn both(name: &str, one: &[Math], other: &[Math], out: &mut String) {
    let _ = write!(out, "<{name}>");
    row(one, out);
    row(other, out);
    let _ = write!(out, "</{name}>");
}

fn choice(name: &str, one: &[Math], other: &[Math], out: &mut String) {
    let _ = write!(out, "<mo>{name}</mo><mo>(</mo>");
    row(one, out);
    sign(";", out);
    row(other, out);
    sign(")", out);
}

/// A number inside a formula: without its unit, which stands with the values.
fn number_text(number: Measured) -> String {
    match number.unit {
        Unit::Dollar => measured(number).text(),
        _ => measured(number).figure,
    }
}

/// The power that something is raised to.
fn power_text(power: f64) -> String {
    measured(Measured::new(power, Unit::One)).figure
}

/// A formula on one line.
#[must_use]
pub fn line(symbol: Symbol, formula: &[Math], result: Option<Measured>) -> String {
    let mut out = format!("{} = ", symbol.text());
    flat(formula, &mut out);
    if let Some(result) = result {
        let _ = write!(out, " = {}", measured(result).text());
    }
    out
}

fn flat(pieces: &[Math], out: &mut String) {
    for piece in pieces {
        match piece {
            Math::Symbol(symbol) => out.push_str(&symbol.text()),
            Math::Number(number) => out.push_str(&number_text(*number)),
            // Brackets, and the name of a function before them, stand close.
            Math::Sign(text) if matches!(*text, "(" | ")") || text.starts_with(char::is_alphabetic) => {
                out.push_str(text);
            }
            Math::Sign(text) => {
                let _ = write!(out, " {text} ");
            }
            Math::Fraction(over, under) => pair("", over, " / ", under, out),
            Math::Root(inside) => {
                out.push_str("√(");
                flat(inside, out);
                out.push(')');
            }
            Math::Power(base, power) => {
                let whole = is_whole(base);
                out.push_str(if whole { "" } else { "(" });
                flat(base, out);
                out.push_str(if whole { "" } else { ")" });
                let _ = write!(out, "^{}", power_text(*power));
            }
            Math::Max(one, other) => pair(words().working.larger, one, "; ", other, out),
            Math::Min(one, other) => pair(words().working.smaller, one, "; ", other, out),
        }
    }
}

/// Both parts, each in brackets where it is a sum of its own.
fn pair(name: &str, one: &[Math], between: &str, other: &[Math], out: &mut String) {
    let part = |pieces: &[Math], out: &mut String| {
        let bracket = name.is_empty() && pieces.len() > 1;
        out.push_str(if bracket { "(" } else { "" });
        flat(pieces, out);
        out.push_str(if bracket { ")" } else { "" });
    };
    out.push_str(name);
    out.push_str(if name.is_empty() { "" } else { "(" });
    part(one, out);
    out.push_str(between);
    part(other, out);
    out.push_str(if name.is_empty() { "" } else { ")" });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::job::{Field, Job, Part, Way};
    use wellwright_core::papers::{Topic, working};
    use wellwright_core::quantity::UnitSystem;

    #[test]
    fn what_stands_below_a_stroke_keeps_its_brackets() {
        let number = |value| Math::Number(Measured::new(value, Unit::One));
        let below = vec![number(3.0), Math::Sign("−"), number(1.0)];
        let mut out = String::new();
        flat(
            &[Math::Fraction(vec![number(6.0)], below.clone()), Math::Sign("+"), Math::Max(below, vec![number(5.0)])],
            &mut out,
        );
        assert_eq!(out, "6 / (3 − 1) + max(3 − 1; 5)");
    }

    #[test]
    fn functions_and_powers_read_as_they_are_said() {
        let number = |value| Math::Number(Measured::new(value, Unit::One));
        let inside = [Math::Sign("log"), Math::Sign("("), number(0.5), Math::Sign(")")];
        let raised = Math::Power(vec![number(4.0)], 1.852);
        let pieces = [vec![number(-2.0), Math::Sign("·")], inside.to_vec(), vec![Math::Sign("+"), raised]].concat();
        let mut out = String::new();
        flat(&pieces, &mut out);
        assert_eq!(out, "\u{2212}2 · log(0.5) + 4^1.852");
    }

    #[test]
    fn a_formula_reads_on_one_line_and_as_markup() {
        let mut job = Job::default();
        job.set(Field::StaticLevel, Some(Measured::new(430.0, Unit::Foot)));
        job.set(Field::Drawdown, Some(Measured::new(42.0, Unit::Foot)));
        let worked = working(&evaluate(&job), Topic::PumpingLevel, UnitSystem::Us).unwrap();
        let step = worked.steps.last().unwrap();
        assert_eq!(line(step.symbol, &step.filled, Some(step.result)), "h = 430 + 42 = 472\u{a0}ft");
        let text = markup(step.symbol, &step.formula);
        assert!(text.starts_with(r#"<math><mi>h</mi><mo>=</mo><mrow><msub>"#), "{text}");
        let answer = evaluate(&demo_jobs().remove(0));
        let topics = [Topic::Drop(Way::V480), Topic::Friction(Part::Drop), Topic::Tank, Topic::LowestSpeed];
        let steps = topics.into_iter().filter_map(|topic| working(&answer, topic, UnitSystem::Us));
        for step in &steps.flat_map(|working| working.steps).collect::<Vec<_>>() {
            let text = markup(step.symbol, &step.filled);
            for name in ["math", "mrow", "mfrac", "msqrt", "msup", "msub"] {
                let opened = text.matches(&format!("<{name}>")).count() + text.matches(&format!("<{name} ")).count();
                assert_eq!(opened, text.matches(&format!("</{name}>")).count(), "{name} in {text}");
            }
        }
    }
}
