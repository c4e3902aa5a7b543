//! A formula as a tree, and the same tree with numbers put in the place of its symbols.

use crate::quantity::{Entry, Unit};

/// A number with its unit.
pub type Measured = Entry;

/// A symbol of a formula: a letter, and an index where one letter stands for several quantities.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Symbol {
    /// The letter, or a function of one, as `cos φ`.
    pub letter: &'static str,
    /// What stands below it; empty for none.
    pub index: &'static str,
}

impl Symbol {
    /// A letter without an index.
    pub(super) const fn plain(letter: &'static str) -> Self {
        Self { letter, index: "" }
    }
    /// A letter with an index.
    pub(super) const fn of(letter: &'static str, index: &'static str) -> Self {
        Self { letter, index }
    }

    /// The symbol on one line, the index after a low line.
    #[must_use]
    pub fn text(self) -> String {
        if self.index.is_empty() { self.letter.to_owned() } else { format!("{}_{}", self.letter, self.index) }
    }
}

/// A piece of a formula. A list of pieces reads from left to right; products bind before sums.
#[derive(Debug, Clone, PartialEq)]
pub enum Math {
    /// A quantity.
    Symbol(Symbol),
    /// A number.
    Number(Measured),
    /// One of `+`, `−`, `·`, `(` and `)`, or `ln` or `log` (to base ten) before what stands in brackets.
    Sign(&'static str),
    /// The first over the second.
    Fraction(Vec<Math>, Vec<Math>),
    /// Square root.
    Root(Vec<Math>),
    /// A power.
    Power(Vec<Math>, f64),
    /// The larger of both.
    Max(Vec<Math>, Vec<Math>),
    /// The smaller of both.
    Min(Vec<Math>, Vec<Math>),
}

impl From<Symbol> for Math {
    fn from(symbol: Symbol) -> Self {
        Self::Symbol(symbol)
    }
}
impl From<&'static str> for Math {
    fn from(sign: &'static str) -> Self {
        Self::Sign(sign)
    }
}
impl From<f64> for Math {
    fn from(number: f64) -> Self {
        Self::Number(Entry::new(number, Unit::One))
    }
}

/// A list of pieces, from symbols, signs and plain numbers.
macro_rules! formula {
    ($($piece:expr),+ $(,)?) => { vec![$(crate::papers::math::Math::from($piece)),+] };
}
pub(super) use formula;

/// The formula with numbers in the place of the symbols that `value` knows; a number below zero in brackets.
pub(super) fn filled(formula: &[Math], value: &impl Fn(Symbol) -> Option<Measured>) -> Vec<Math> {
    let inside = |part: &[Math]| filled(part, value);
    let mut found = Vec::with_capacity(formula.len());
    for piece in formula {
        match piece {
            Math::Symbol(symbol) => match value(*symbol) {
                Some(number) if number.value < 0.0 => {
                    found.extend([Math::Sign("("), Math::Number(number), Math::Sign(")")]);
                }
                Some(number) => found.push(Math::Number(number)),
                None => found.push(piece.clone()),
            },
            Math::Number(_) | Math::Sign(_) => found.push(piece.clone()),
            Math::Fraction(over, under) => found.push(Math::Fraction(inside(over), inside(under))),
            Math::Root(part) => found.push(Math::Root(inside(part))),
            Math::Power(base, power) => found.push(Math::Power(inside(base), *power)),
            Math::Max(one, other) => found.push(Math::Max(inside(one), inside(other))),
            Math::Min(one, other) => found.push(Math::Min(inside(one), inside(other))),
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn symbols_become_numbers_and_those_below_zero_stand_in_brackets() {
        let (a, b, c) = (Symbol::plain("a"), Symbol::of("b", "1"), Symbol::plain("c"));
        assert_eq!((a.text(), b.text()), ("a".to_owned(), "b_1".to_owned()));
        let value = |symbol: Symbol| match symbol.letter {
            "a" => Some(Entry::new(2.0, Unit::Volt)),
            "b" => Some(Entry::new(-3.0, Unit::Volt)),
            _ => None,
        };
        let tree = formula![a, "−", Math::Root(vec![Math::Power(formula![b], 2.0)]), "+", c, "·", 4.0];
        let (two, three) = (Math::Number(Entry::new(2.0, Unit::Volt)), Math::Number(Entry::new(-3.0, Unit::Volt)));
        let squared = Math::Power(vec![Math::Sign("("), three, Math::Sign(")")], 2.0);
        assert_eq!(filled(&tree, &value), formula![two, "−", Math::Root(vec![squared]), "+", c, "·", 4.0]);
    }
}
