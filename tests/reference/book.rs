//! Prices of cable by a price book, from the geometry of its conductors.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::cable::conductor::{STRAND_LAY, awg_diameter, metal_mass, nominal_area, round_area};
use wellwright_core::cost::book::{BookUnit, Build, Cable, Currency, Date, Item, Price, PriceBook};
use wellwright_core::error::OutsideRange;
use wellwright_core::quantity::{KILOGRAM_PER_POUND, MassPerLength, MoneyPerLength, MoneyPerMass};
use wellwright_core::standards::conductor::{Metal, Size};

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = match (quantity, unit) {
        ("cable price", "$/ft") => modeled(inputs),
        ("quoted cable price", "$/ft") => {
            inputs.number("asked").and_then(|asked| quoted(inputs, Some(asked))).and_then(per_foot)
        }
        ("least metal price of a quoted cable", "$/lb") => least(inputs),
        ("worth of solid copper in a lead", "$/ft") => worth(inputs),
        _ => return None,
    };
    Some(number.map(Answer::Number))
}

type Priced = Result<Option<MoneyPerLength>, OutsideRange>;

fn per_foot(price: Priced) -> Result<f64, String> {
    let price = price.map_err(|outside| format!("{outside:?}"))?;
    price.map(MoneyPerLength::per_foot).ok_or_else(|| "no price".into())
}

/// A book with a price of a metal, by the pound, and one of cable, by the foot.
fn book(metal: Metal, metal_price: f64, cable: Item, price: f64) -> Result<PriceBook, String> {
    let date = Date::of("2026-11-01").ok_or("no date")?;
    let mut book = PriceBook::new(Currency::of("USD").ok_or("no currency")?, date);
    let prices = [
        (Item::Metal(metal), Price::new(metal_price, BookUnit::PerPound)),
        (cable, Price::new(price, BookUnit::PerFoot)),
    ];
    for (item, price) in prices {
        book.set(item, price).map_err(|fault| format!("{fault:?}"))?;
    }
    Ok(book)
}

fn with_factor(mut book: PriceBook, inputs: &Inputs) -> Result<PriceBook, String> {
    let factor = Price::new(inputs.number("factor")?, BookUnit::One);
    book.set(Item::CableFactor, factor).map_err(|fault| format!("{fault:?}"))?;
    Ok(book)
}

fn cable(inputs: &Inputs) -> Result<(Cable, MassPerLength), String> {
    let (metal, size) = (inputs.metal()?, inputs.size("size")?);
    let strand = |size: Size| metal_mass(metal, nominal_area(size), STRAND_LAY);
    let mass = strand(size) * 3.0 + strand(inputs.size("ground")?);
    Ok((Cable { build: Build::FlatJacketed, metal, size }, mass))
}

fn modeled(inputs: &Inputs) -> Result<f64, String> {
    let (cable, mass) = cable(inputs)?;
    let book = book(cable.metal, inputs.number("metal_price")?, Item::CableFixed, inputs.number("fixed")?)?;
    per_foot(with_factor(book, inputs)?.cable_price(cable, mass, None))
}

fn quoted(inputs: &Inputs, asked: Option<f64>) -> Result<Priced, String> {
    let (cable, mass) = cable(inputs)?;
    let book = book(cable.metal, inputs.number("metal_price")?, Item::Cable(cable), inputs.number("quoted")?)?;
    let asked = asked.map(|per_pound| MoneyPerMass(per_pound / KILOGRAM_PER_POUND));
    Ok(with_factor(book, inputs)?.cable_price(cable, mass, asked))
}

fn least(inputs: &Inputs) -> Result<f64, String> {
    match quoted(inputs, Some(0.0))? {
        Err(OutsideRange { argument: "metal_price", min, .. }) => Ok(min * KILOGRAM_PER_POUND),
        other => Err(format!("not refused: {other:?}")),
    }
}

fn worth(inputs: &Inputs) -> Result<f64, String> {
    let diameter = awg_diameter(inputs.gauge("gauge")?).map_err(|outside| format!("{outside:?}"))?;
    let mass = metal_mass(Metal::Copper, round_area(diameter), 1.0) * inputs.number("conductors")?;
    let book = book(Metal::Copper, inputs.number("metal_price")?, Item::CableFixed, 0.0)?;
    let cable = Cable { build: Build::Twisted, metal: Metal::Copper, size: Size::Awg6 };
    per_foot(book.cable_price(cable, mass, None))
}
