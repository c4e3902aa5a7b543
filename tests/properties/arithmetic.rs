//! A formula worked out from its tree, apart from core, with a bound on what rounding may have cost.

use std::iter::Peekable;
use std::slice::Iter;
use wellwright_core::papers::{Math, Symbol};

/// A number and how far rounding may have moved it.
#[derive(Debug, Clone, Copy)]
pub struct Worked {
    pub value: f64,
    pub off: f64,
}

impl Worked {
    /// A number that went through a few conversions of units.
    fn given(value: f64) -> Self {
        Self { value, off: 8.0 * f64::EPSILON * value.abs() }
    }
    /// A result: what the operands bring, and its own rounding.
    fn rounded(value: f64, off: f64) -> Self {
        Self { value, off: off + f64::EPSILON * value.abs() }
    }
    fn plus(self, other: Self, sign: f64) -> Self {
        Self::rounded(self.value + sign * other.value, self.off + other.off)
    }
    fn times(self, other: Self) -> Self {
        let off = self.value.abs() * other.off + other.value.abs() * self.off + self.off * other.off;
        Self::rounded(self.value * other.value, off)
    }
    fn over(self, under: Self) -> Self {
        let value = self.value / under.value;
        Self::rounded(value, (self.off + value.abs() * under.off) / (under.value.abs() - under.off).max(0.0))
    }
    /// Raised to any power; the exponent is a plain number of the formula.
    fn raised(self, power: f64) -> Self {
        let value = self.value.powf(power);
        Self::rounded(value, (value * power * self.off / self.value).abs() + 4.0 * f64::EPSILON * value.abs())
    }
    fn ln(self) -> Self {
        Self::rounded(self.value.ln(), (self.off / self.value).abs())
    }
    fn root(self) -> Self {
        let value = self.value.sqrt();
        // Near zero the root of what rounding may have left there.
        let off = if value > 0.0 { (self.off / value).min(self.off.sqrt()) } else { self.off.sqrt() };
        Self::rounded(value, off)
    }
}

/// What a symbol stands for; where there are only numbers, none is asked for.
pub type Known<'a> = &'a dyn Fn(Symbol) -> Option<f64>;

/// The value of a formula.
pub fn work(formula: &[Math], known: Known) -> Result<Worked, String> {
    let mut pieces = formula.iter().peekable();
    let value = sum(&mut pieces, known)?;
    match pieces.next() {
        None => Ok(value),
        Some(piece) => Err(format!("{piece:?} stands where the formula should end")),
    }
}

type Pieces<'a> = Peekable<Iter<'a, Math>>;

fn take(pieces: &mut Pieces, signs: &[&'static str]) -> Option<&'static str> {
    match pieces.peek() {
        Some(Math::Sign(sign)) if signs.contains(sign) => {
            pieces.next();
            Some(sign)
        }
        _ => None,
    }
}

fn sum(pieces: &mut Pieces, known: Known) -> Result<Worked, String> {
    let mut total = product(pieces, known)?;
    while let Some(sign) = take(pieces, &["+", "−"]) {
        total = total.plus(product(pieces, known)?, if sign == "+" { 1.0 } else { -1.0 });
    }
    Ok(total)
}

fn product(pieces: &mut Pieces, known: Known) -> Result<Worked, String> {
    let mut total = factor(pieces, known)?;
    while take(pieces, &["·"]).is_some() {
        total = total.times(factor(pieces, known)?);
    }
    Ok(total)
}

fn factor(pieces: &mut Pieces, known: Known) -> Result<Worked, String> {
    if let Some(function) = take(pieces, &["ln", "log"]) {
        let inside = match pieces.peek() {
            Some(Math::Sign("(")) => factor(pieces, known)?.ln(),
            piece => return Err(format!("{function} of {piece:?}")),
        };
        let base_ten = Worked::given(std::f64::consts::LN_10);
        return Ok(if function == "ln" { inside } else { inside.over(base_ten) });
    }
    if take(pieces, &["("]).is_some() {
        let inside = sum(pieces, known)?;
        return take(pieces, &[")"]).map(|_| inside).ok_or_else(|| "a bracket is open".into());
    }
    let pick = |one: Worked, other: Worked, first: bool| if first { one } else { other };
    match pieces.next() {
        Some(Math::Number(number)) => Ok(Worked::given(number.value)),
        Some(Math::Symbol(symbol)) => {
            known(*symbol).map(Worked::given).ok_or_else(|| format!("{} has no value", symbol.text()))
        }
        Some(Math::Fraction(over, under)) => Ok(work(over, known)?.over(work(under, known)?)),
        Some(Math::Root(part)) => Ok(work(part, known)?.root()),
        Some(Math::Power(base, power)) => {
            let base = work(base, known)?;
            // A whole power of what may be below zero, or zero.
            if power.fract() == 0.0 && (1.0..10.0).contains(power) {
                return Ok((1..*power as u8).fold(base, |total, _| total.times(base)));
            }
            Ok(base.raised(*power))
        }
        Some(Math::Max(one, other)) => {
            let (one, other) = (work(one, known)?, work(other, known)?);
            Ok(pick(one, other, one.value >= other.value))
        }
        Some(Math::Min(one, other)) => {
            let (one, other) = (work(one, known)?, work(other, known)?);
            Ok(pick(one, other, one.value <= other.value))
        }
        piece => Err(format!("{piece:?} stands where a number should")),
    }
}

/// The value of a formula that holds numbers only.
pub fn numbers(formula: &[Math]) -> Result<Worked, String> {
    work(formula, &|_| None)
}

#[test]
fn a_formula_is_worked_as_it_is_read() {
    let number = |value: f64| Math::from(value);
    let two_plus_three_times_four = [number(2.0), "+".into(), number(3.0), "·".into(), number(4.0)];
    assert_eq!(numbers(&two_plus_three_times_four).unwrap().value, 14.0);
    let bracket: Vec<Math> = ["(".into(), number(2.0), "−".into(), number(5.0), ")".into()].into();
    let tree = [
        Math::Root(vec![Math::Power(bracket.clone(), 2.0), "+".into(), Math::Power(vec![number(4.0)], 2.0)]),
        "−".into(),
        Math::Fraction(vec![number(6.0)], bracket.clone()),
        "·".into(),
        Math::Max(vec![number(1.0)], vec![number(2.0)]),
        "+".into(),
        Math::Min(vec![number(1.0)], vec![number(2.0)]),
    ];
    // √((−3)² + 4²) − 6/(−3) · 2 + 1
    assert!((numbers(&tree).unwrap().value - 10.0).abs() < 1e-12);
    // −2 · log 100 + ln(1) + 32^0.4 = −4 + 0 + 4
    let of =
        |function: &'static str, value: f64| -> [Math; 4] { [function.into(), "(".into(), number(value), ")".into()] };
    let mut functions = vec![number(-2.0), "·".into()];
    functions.extend(of("log", 100.0));
    functions.push("+".into());
    functions.extend(of("ln", 1.0));
    functions.extend(["+".into(), Math::Power(vec![number(32.0)], 0.4)]);
    assert!(numbers(&functions).unwrap().value.abs() < 1e-12);
    assert!(numbers(&["ln".into(), number(1.0)]).is_err());
    for bad in [&bracket[..4], &[number(1.0), number(2.0)], &["+".into()], &[], &[number(1.0), "·".into()]] {
        assert!(numbers(bad).is_err(), "{bad:?}");
    }
}
