//! What a book holds, refuses and answers.

use super::*;
use crate::quantity::{MassPerLength, Money, MoneyPerMass, feet, horsepower, in_feet, kilovolt_amperes, meters, watts};
use crate::standards::conductor::{Metal, Size};
use uom::si::f64::{Length, Mass};

fn empty() -> PriceBook {
    PriceBook::new(Currency::USD, Date::of("2026-11-01").unwrap())
}

fn mass(kilograms_per_meter: f64) -> MassPerLength {
    Mass::new::<uom::si::mass::kilogram>(kilograms_per_meter) / Length::new::<uom::si::length::meter>(1.0)
}

const CABLE: Cable = Cable { build: Build::FlatJacketed, metal: Metal::Copper, size: Size::Awg4 };
const DRIVE: Piece = Piece::Equipment(Equipment::LargeEconomy);

fn hp(value: f64) -> Rating {
    Rating { value, unit: BookUnit::Horsepower }
}

#[test]
fn the_built_in_book_is_in_order_and_says_that_it_is_invented() {
    let book = PriceBook::invented();
    let mut again = empty();
    for row in book.rows().iter().rev() {
        again.set(row.item, row.price).unwrap();
    }
    assert_eq!(again, book);
    assert!(book.is_invented() && !PriceBook { source: "A quote".to_owned(), ..again }.is_invented());
    assert_eq!((book.currency.code().as_str(), book.date.text().as_str()), ("USD", "2026-11-01"));
    let line = book.line_extension().unwrap();
    assert_eq!((line.fixed, in_feet(line.free)), (Money(5000.0), 0.0));
    assert!((line.per_length.per_foot() - 25.0).abs() < 1e-12);
    assert_eq!(book.labor_price(feet(1000.0)), Ok(Money(0.0)));
    // 15 kVA at 400 + 40 for each.
    assert_eq!(book.piece_price(Piece::Transformer, kilovolt_amperes(15.0)), Ok(Some(Money(1000.0))));
    // 0.5 + 0.5 lb/ft · 9 $/lb, per foot.
    let half_a_pound = mass(0.5 * 0.453_592_37 / 0.3048);
    let price = |metal| book.cable_price(Cable { metal, ..CABLE }, half_a_pound, None).unwrap().unwrap().per_foot();
    assert!((price(Metal::Copper) - 5.0).abs() < 1e-12 && (price(Metal::Aluminum) - 2.0).abs() < 1e-12);
}

#[test]
fn a_price_replaces_the_one_before_and_units_do_not_part_sizes() {
    let mut book = empty();
    let price = |amount| Price::new(amount, BookUnit::Each);
    book.set(Item::Sized(DRIVE, hp(10.0)), price(2000.0)).unwrap();
    book.set(Item::Sized(DRIVE, hp(5.0)), price(1500.0)).unwrap();
    // 7.457 kW are 10 hp of 745.7 W.
    let same = Item::Sized(DRIVE, Rating { value: 7.457, unit: BookUnit::Kilowatt });
    assert_eq!(book.get(same), Some(price(2000.0)));
    book.set(same, price(2100.0)).unwrap();
    assert_eq!(book.rows().len(), 2);
    assert_eq!(book.rows()[1], Row { item: same, price: price(2100.0) });
    assert_eq!(book.get(Item::Sized(DRIVE, hp(7.5))), None);
    for whole in (1..1000).map(f64::from) {
        let kilowatts: f64 = format!("{:.4}", whole * 0.7457).parse().unwrap();
        assert!(
            Item::Sized(DRIVE, hp(whole)).is(Item::Sized(DRIVE, Rating { value: kilowatts, unit: BookUnit::Kilowatt }))
        );
    }
    book.remove(Item::Sized(DRIVE, hp(10.0)));
    book.remove(Item::LineFixed);
    assert_eq!(book.rows().len(), 1);
}

#[test]
fn a_row_of_a_size_wins_over_the_parts() {
    let mut book = empty();
    let price = |book: &PriceBook, size| book.piece_price(DRIVE, size).unwrap();
    assert_eq!(price(&book, horsepower(10.0)), None);
    book.set(Item::Sized(DRIVE, hp(10.0)), Price::new(1999.0, BookUnit::Each)).unwrap();
    assert_eq!(price(&book, horsepower(10.0)), Some(Money(1999.0)));
    assert_eq!(price(&book, watts(7457.0)), Some(Money(1999.0)));
    assert_eq!(price(&book, horsepower(10.001)), None);
    book.set(Item::PerSize(DRIVE), Price::new(100.0, BookUnit::PerHorsepower)).unwrap();
    assert_eq!(price(&book, horsepower(10.0)), Some(Money(1999.0)));
    assert!((price(&book, horsepower(15.0)).unwrap().0 - 1500.0).abs() < 1e-9);
    book.set(Item::Fixed(DRIVE), Price::new(250.0, BookUnit::Each)).unwrap();
    assert!((price(&book, horsepower(15.0)).unwrap().0 - 1750.0).abs() < 1e-9);
    // 134.102 $/kW are 100 $/hp of 745.7 W.
    book.set(Item::PerSize(DRIVE), Price::new(100.0 / 0.7457, BookUnit::PerKilowatt)).unwrap();
    assert!((price(&book, horsepower(15.0)).unwrap().0 - 1750.0).abs() < 1e-9);
    assert_eq!(book.piece_price(Piece::Remedy(Remedy::SineFilter), horsepower(15.0)), Ok(None));
}

#[test]
fn a_cable_without_a_row_follows_the_model() {
    let mut book = empty();
    let price = |book: &PriceBook, asked: Option<f64>| {
        book.cable_price(CABLE, mass(0.5), asked.map(MoneyPerMass)).unwrap().map(|price| price.0)
    };
    assert_eq!(price(&book, Some(20.0)), None);
    book.set(Item::Metal(Metal::Copper), Price::new(20.0, BookUnit::PerKilogram)).unwrap();
    assert_eq!(price(&book, None), None, "no fixed part");
    book.set(Item::CableFixed, Price::new(2.0, BookUnit::PerMeter)).unwrap();
    assert_eq!(
        (price(&book, None), price(&book, Some(24.0)), price(&book, Some(0.0))),
        (Some(12.0), Some(14.0), Some(2.0))
    );
    book.set(Item::CableFactor, Price::new(1.5, BookUnit::One)).unwrap();
    assert_eq!(price(&book, None), Some(17.0));
    book.remove(Item::Metal(Metal::Copper));
    assert_eq!((price(&book, None), price(&book, Some(20.0))), (None, Some(17.0)));
}

#[test]
fn a_quoted_cable_moves_with_its_metal_and_never_below_nothing() {
    let mut book = empty();
    book.set(Item::Cable(CABLE), Price::new(8.0, BookUnit::PerMeter)).unwrap();
    let price = |book: &PriceBook, asked: Option<f64>| book.cable_price(CABLE, mass(0.5), asked.map(MoneyPerMass));
    assert_eq!(price(&book, None).unwrap().unwrap().0, 8.0);
    assert_eq!(price(&book, Some(20.0)), Ok(None), "nothing to compare with");
    book.set(Item::Metal(Metal::Copper), Price::new(20.0, BookUnit::PerKilogram)).unwrap();
    for (asked, expected) in [(20.0, 8.0), (26.0, 11.0), (10.0, 3.0), (4.0, 0.0)] {
        assert_eq!(price(&book, Some(asked)).unwrap().unwrap().0, expected);
    }
    let outside = price(&book, Some(3.999)).unwrap_err();
    assert_eq!(outside, OutsideRange { argument: "metal_price", given: 3.999, min: 4.0, max: 1e6 });
    book.set(Item::CableFactor, Price::new(0.5, BookUnit::One)).unwrap();
    assert_eq!(price(&book, Some(26.0)).unwrap().unwrap().0, 9.5);
    let other = Cable { size: Size::Awg6, ..CABLE };
    assert_eq!(book.cable_price(other, mass(0.5), None), Ok(None));
    // Without metal nothing moves.
    assert_eq!(book.cable_price(CABLE, mass(0.0), Some(MoneyPerMass(0.0))).unwrap().unwrap().0, 8.0);
}

#[test]
fn labor_and_line_count_what_they_have() {
    let mut book = empty();
    assert_eq!((book.line_extension(), book.labor_price(meters(10.0))), (None, Ok(Money(0.0))));
    book.set(Item::LaborPerLength, Price::new(2000.0, BookUnit::PerKilometer)).unwrap();
    book.set(Item::LaborFixed, Price::new(300.0, BookUnit::Each)).unwrap();
    assert_eq!(book.labor_price(meters(10.0)), Ok(Money(320.0)));
    book.set(Item::LineFree, Price::new(100.0, BookUnit::Foot)).unwrap();
    assert_eq!(book.line_extension(), None);
    book.set(Item::LinePerLength, Price::new(25_000.0, BookUnit::PerKilofoot)).unwrap();
    let line = book.line_extension().unwrap();
    assert_eq!((line.fixed, in_feet(line.free)), (Money(0.0), 100.0));
    assert!((line.per_length.per_foot() - 25.0).abs() < 1e-12);
}

#[test]
fn what_can_not_stand_in_a_book() {
    let mut book = empty();
    let mut fault = |item, amount, unit| book.set(item, Price::new(amount, unit)).unwrap_err();
    let outside = |argument, given, min, max| PriceFault::Outside(OutsideRange { argument, given, min, max });
    assert_eq!(
        fault(Item::CableFixed, 1.0, BookUnit::PerPound),
        PriceFault::Unit { argument: "price", given: BookUnit::PerPound, accepted: unit::PER_LENGTH }
    );
    let sized = |value, unit| Item::Sized(DRIVE, Rating { value, unit });
    assert_eq!(
        fault(sized(10.0, BookUnit::KilovoltAmpere), 1.0, BookUnit::Each),
        PriceFault::Unit { argument: "size", given: BookUnit::KilovoltAmpere, accepted: unit::POWER }
    );
    assert_eq!(fault(sized(0.05, BookUnit::Horsepower), 1.0, BookUnit::Each), outside("size", 0.05, 0.1, 1000.0));
    let PriceFault::Outside(outside_kw) = fault(sized(746.0, BookUnit::Kilowatt), 1.0, BookUnit::Each) else {
        panic!("a unit is at fault");
    };
    assert!((outside_kw.min - 0.074_57).abs() < 1e-12 && (outside_kw.max - 745.7).abs() < 1e-9, "{outside_kw:?}");
    assert_eq!(fault(Item::LineFixed, -1.0, BookUnit::Each), outside("price", -1.0, 0.0, 1e9));
    assert_eq!(fault(Item::CableFactor, 0.0, BookUnit::One), outside("price", 0.0, 0.1, 10.0));
    assert_eq!(fault(Item::Metal(Metal::Copper), 1e9, BookUnit::PerPound), outside("price", 1e9, 0.0, 453_592.37));
    assert!(matches!(fault(Item::LineFree, f64::NAN, BookUnit::Meter), PriceFault::Outside(_)));
    assert!(matches!(fault(Item::Fixed(DRIVE), f64::INFINITY, BookUnit::Each), PriceFault::Outside(_)));
    assert!(book.rows().is_empty());
}

/// A foot is 0.3048 m, a horsepower 0.7457 kW.
#[test]
fn every_unit_tells_the_limit_in_itself() {
    use BookUnit as U;
    for (item, unit, limit) in [
        (Item::CableFixed, U::PerMeter, 1e6),
        (Item::CableFixed, U::PerFoot, 304_800.0),
        (Item::CableFixed, U::PerKilofoot, 304.8e6),
        (Item::CableFixed, U::PerKilometer, 1e9),
        (Item::Metal(Metal::Copper), U::PerKilogram, 1e6),
        (Item::PerSize(DRIVE), U::PerHorsepower, 1e6),
        (Item::PerSize(DRIVE), U::PerKilowatt, 1e6 / 0.7457),
        (Item::LineFree, U::Meter, 1e6),
        (Item::LineFree, U::Foot, 1e6 / 0.3048),
    ] {
        let PriceFault::Outside(outside) = item.check(Price::new(1e12, unit)).unwrap_err() else { panic!("{unit:?}") };
        assert!((outside.max / limit - 1.0).abs() < 1e-9, "{unit:?}: {outside:?}");
    }
}

/// 3 $/m of which 1 kg/m at 9 $/kg counts 1.5 times: the metal would have to cost 7 $/kg for the cable to cost nothing.
#[test]
fn a_metal_that_would_take_a_price_below_nothing_is_told_its_least() {
    let mut book = empty();
    let put = [
        (Item::Cable(CABLE), 3.0, BookUnit::PerMeter),
        (Item::Metal(Metal::Copper), 9.0, BookUnit::PerKilogram),
        (Item::CableFactor, 1.5, BookUnit::One),
    ];
    for (item, amount, unit) in put {
        book.set(item, Price::new(amount, unit)).unwrap();
    }
    let refused = book.cable_price(CABLE, mass(1.0), Some(MoneyPerMass(6.9))).unwrap_err();
    assert!(refused.argument == "metal_price" && (refused.min - 7.0).abs() < 1e-12, "{refused:?}");
    let half = book.cable_price(CABLE, mass(0.5), Some(MoneyPerMass(4.0))).unwrap_err();
    assert!((half.min - 5.0).abs() < 1e-12, "{half:?}");
}

/// A size of its own has no parts; one of another piece at that size takes none away.
#[test]
fn parts_are_those_of_the_piece() {
    let mut book = empty();
    let other = Piece::Equipment(Equipment::LargeEconomyChoke);
    for (item, amount, unit) in [
        (Item::Fixed(DRIVE), 900.0, BookUnit::Each),
        (Item::Sized(DRIVE, hp(20.0)), 4000.0, BookUnit::Each),
        (Item::Sized(other, hp(10.0)), 3000.0, BookUnit::Each),
    ] {
        book.set(item, Price::new(amount, unit)).unwrap();
    }
    let parts = |size| book.piece_parts(DRIVE, horsepower(size));
    assert_eq!((parts(20.0), parts(10.0)), (None, Some((Money(900.0), Money(0.0)))));
    book.set(Item::PerSize(other), Price::new(50.0, BookUnit::PerHorsepower)).unwrap();
    assert_eq!(book.piece_parts(other, horsepower(5.0)), Some((Money(0.0), Money(50.0))));
}

#[test]
fn arguments_outside_are_named() {
    let book = PriceBook::invented();
    let cable = |kilograms: f64, asked: f64| {
        book.cable_price(CABLE, mass(kilograms), Some(MoneyPerMass(asked))).unwrap_err().argument
    };
    assert_eq!([cable(-0.1, 1.0), cable(f64::NAN, 1.0), cable(1001.0, 1.0)], ["mass"; 3]);
    assert_eq!([cable(1.0, -0.1), cable(1.0, f64::NAN), cable(1.0, 1e7)], ["metal_price"; 3]);
    assert_eq!(book.piece_price(DRIVE, horsepower(-1.0)).unwrap_err().argument, "size");
    assert_eq!(book.piece_price(DRIVE, horsepower(1001.0)).unwrap_err().argument, "size");
    let over = book.piece_price(Piece::Transformer, kilovolt_amperes(10_001.0)).unwrap_err();
    assert_eq!((over.argument, over.max), ("size", 10_000.0));
    assert_eq!(book.labor_price(meters(f64::NAN)).unwrap_err().argument, "length");
}
