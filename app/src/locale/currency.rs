//! The currency that money is written in: dollars by their sign, any other by its code, as in `MXN 1,234`. One is in
//! force; a job is drawn anew when its currency changes.

use super::number::NO_BREAK;
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use wellwright_core::cost::book::Currency;
use wellwright_core::evaluate::Evaluation;

/// The sign of dollars, which the units of core have for any money.
const DOLLAR: &str = "$";

thread_local! {
    /// Nothing for dollars.
    static IN_FORCE: Cell<Option<Currency>> = const { Cell::new(None) };
    /// Names of units in other currencies. Each is made once and stays as long as the page does.
    static NAMES: RefCell<BTreeMap<String, &'static str>> = const { RefCell::new(BTreeMap::new()) };
}

/// Puts a currency in force; without one it is dollars.
pub fn count_in(currency: Option<Currency>) {
    let dollars = Currency::of("USD");
    IN_FORCE.set(currency.filter(|currency| Some(*currency) != dollars));
}

/// Writes something in a currency, and leaves the one that was in force.
pub fn counting_in<T>(currency: Option<Currency>, write: impl FnOnce() -> T) -> T {
    let before = IN_FORCE.get();
    count_in(currency);
    let written = write();
    IN_FORCE.set(before);
    written
}

/// The currency of a job: that of its price book.
#[must_use]
pub fn currency_of(answer: &Evaluation) -> Option<Currency> {
    answer.inputs.book.as_ref().ok().map(|book| book.currency)
}

/// What stands before an amount.
pub fn sign() -> String {
    match IN_FORCE.get() {
        None => DOLLAR.to_owned(),
        Some(currency) => format!("{}{NO_BREAK}", currency.code()),
    }
}

/// A unit or an amount that begins with the sign of dollars, in the currency in force; another as it is.
#[must_use]
pub fn in_currency(unit: &str) -> String {
    match (IN_FORCE.get(), unit.strip_prefix(DOLLAR)) {
        (Some(currency), Some(rest)) => currency.code() + rest,
        _ => unit.to_owned(),
    }
}

/// As [`in_currency`], of a name that stays.
pub fn named(unit: &'static str) -> &'static str {
    if IN_FORCE.get().is_none() || !unit.starts_with(DOLLAR) {
        return unit;
    }
    let name = in_currency(unit);
    NAMES
        .with_borrow_mut(|names| *names.entry(name).or_insert_with_key(|name| Box::leak(name.clone().into_boxed_str())))
}

/// What stands behind the currency in the unit of money for something, as `/ft`; `None` where it is no money.
pub fn per(unit: &str) -> Option<&str> {
    let coded = IN_FORCE.get().and_then(|currency| unit.strip_prefix(currency.code().as_str()));
    unit.strip_prefix(DOLLAR).or(coded)
}

/// An amount without the sign or the code that was typed before it.
pub fn without_sign(text: &str) -> Option<&str> {
    let code = IN_FORCE.get().map(Currency::code);
    let coded = code.and_then(|code| {
        let (head, rest) = text.split_at_checked(code.len())?;
        (head.eq_ignore_ascii_case(&code) && !rest.starts_with('/')).then_some(rest)
    });
    text.strip_prefix(DOLLAR).or(coded).map(str::trim_start)
}

#[cfg(test)]
mod tests {
    use super::super::{entry_text, money, money_shown, read, unit_name};
    use super::*;
    use wellwright_core::quantity::{Entry, Kind, Money, Unit, UnitSystem};

    #[test]
    fn amounts_carry_the_code_of_another_currency() {
        let amounts = || {
            let price = Entry::new(1234.5, Unit::DollarPerFoot);
            let shown = money_shown(Money(5.0), 2);
            [money(Money(-1234.0), 0), entry_text(price, UnitSystem::Us), shown.measure().to_owned()]
        };
        let dollars = ["\u{2212}$1,234", "$1,234.50/ft", "$"];
        assert_eq!(amounts(), dollars);
        let pesos = ["\u{2212}MXN\u{a0}1,234", "MXN\u{a0}1,234.50/ft", "MXN"];
        assert_eq!(counting_in(Currency::of("MXN"), amounts), pesos);
        assert_eq!(counting_in(Currency::of("USD"), amounts), dollars);
        assert_eq!(counting_in(Currency::of("MXN"), || counting_in(None, amounts)), dollars);
        assert_eq!(amounts(), dollars);
    }

    #[test]
    fn an_amount_is_read_with_the_sign_or_the_code() {
        let value = |text| read(text, Kind::MoneyPerLength).map(|read| read.map(|read| (read.value, read.unit)));
        let typed = || ["5", "$5", "5 $/m", "$5/m", "$ 5 / m"].map(value);
        let per_meter = Ok(Some((5.0, Some(Unit::DollarPerMeter))));
        let plain = Ok(Some((5.0, None)));
        assert_eq!(typed()[..4], [plain.clone(), plain.clone(), per_meter.clone(), per_meter.clone()]);
        counting_in(Currency::of("MXN"), || {
            assert_eq!(typed()[..4], [plain.clone(), plain.clone(), per_meter.clone(), per_meter.clone()]);
            for text in ["MXN 5/m", "mxn5/m", "5 MXN/m"] {
                assert_eq!(value(text), per_meter, "{text}");
            }
            assert_eq!(value("MXN 5"), plain);
            assert!(value("USD 5").is_err() && value("ñandú 5").is_err());
            assert_eq!(unit_name(Unit::DollarPerPound), "MXN/lb");
            assert_eq!(unit_name(Unit::Pound), "lb");
        });
        assert_eq!(unit_name(Unit::DollarPerPound), "$/lb");
    }
}
