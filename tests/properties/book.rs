//! Laws of the price book: it is read back as it was written, no price is below nothing, and prices rise with metal.

use super::tried;
use proptest::prelude::*;
use uom::si::f64::{Length, Mass};
use wellwright_core::cable::filter::Remedy as CableRemedy;
use wellwright_core::cable::reactance::Build as CableBuild;
use wellwright_core::cost::book::{
    BookUnit, Build, Cable, Currency, Date, Equipment, Item, Piece, Price, PriceBook, Rating, Remedy,
};
use wellwright_core::cost::book_table::{Cells, MOST_TEXT, read, write};
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::{Field, Job};
use wellwright_core::power::family::Kind;
use wellwright_core::power::generic::generic;
use wellwright_core::power::line_extension::Tariff;
use wellwright_core::quantity::{
    Entry, MassPerLength, MoneyPerMass, Unit, feet, horsepower, kilovolt_amperes, meters, watts,
};
use wellwright_core::standards::conductor::{Metal, Size};

fn mass(kilograms_per_meter: f64) -> MassPerLength {
    Mass::new::<uom::si::mass::kilogram>(kilograms_per_meter) / Length::new::<uom::si::length::meter>(1.0)
}

fn any_of<T: Clone + std::fmt::Debug + 'static>(all: &[T]) -> impl Strategy<Value = T> + use<T> {
    prop::sample::select(all.to_vec())
}

fn cable() -> impl Strategy<Value = Cable> {
    let metal = any_of(&[Metal::Copper, Metal::Aluminum]);
    (any_of(&Build::ALL), metal, any_of(&Size::ALL)).prop_map(|(build, metal, size)| Cable { build, metal, size })
}

fn piece() -> impl Strategy<Value = Piece> {
    prop_oneof![
        any_of(&Equipment::ALL).prop_map(Piece::Equipment),
        any_of(&Remedy::ALL).prop_map(Piece::Remedy),
        Just(Piece::Transformer),
    ]
}

fn item() -> impl Strategy<Value = Item> {
    let plain = [
        Item::CableFixed,
        Item::CableFactor,
        Item::Metal(Metal::Copper),
        Item::Metal(Metal::Aluminum),
        Item::LineFixed,
        Item::LinePerLength,
        Item::LineFree,
        Item::LaborFixed,
        Item::LaborPerLength,
    ];
    let sized = (piece(), 0.15..700.0, any::<prop::sample::Index>())
        .prop_map(|(piece, value, unit)| Item::Sized(piece, Rating { value, unit: *unit.get(piece.size_units()) }));
    prop_oneof![
        any_of(&plain),
        cable().prop_map(Item::Cable),
        piece().prop_map(Item::Fixed),
        piece().prop_map(Item::PerSize),
        sized,
    ]
}

/// A number of any size, all its digits in use, or a round one.
fn amount() -> impl Strategy<Value = f64> {
    let sized = (-12.0..5.0f64).prop_map(|power| 10f64.powf(power));
    prop_oneof![sized, 0.0..1e4, any_of(&[0.0, 1.0, 9.0, 0.5, 5e-324])]
}

fn text() -> impl Strategy<Value = String> {
    let letters: Vec<char> = "aZ9 ,;\"'=+-@\tñ＝.\u{301}🛢".chars().filter(|c| !c.is_control()).collect();
    let letters = prop::collection::vec(any_of(&letters), 0..MOST_TEXT);
    letters.prop_map(|letters| letters.into_iter().collect::<String>().trim().to_owned())
}

/// Books of every kind, each price in a range that all items share, but for the factor.
fn book() -> impl Strategy<Value = PriceBook> {
    let rows = prop::collection::vec((item(), any::<prop::sample::Index>(), amount()), 0..60);
    let day = (1583..=9999u32, 1..=12u32, 1..=28u32);
    (rows, text(), text(), day, "[A-Z]{3}").prop_map(|(rows, name, source, (year, month, day), code)| {
        let date = Date::of(&format!("{year:04}-{month:02}-{day:02}")).unwrap();
        let mut book = PriceBook::new(Currency::of(&code).unwrap(), date);
        (book.name, book.source) = (name, source);
        for (item, unit, amount) in rows {
            let amount = if item == Item::CableFactor { 0.1 + amount.min(9.9) } else { amount };
            book.set(item, Price::new(amount, *unit.get(item.units()))).unwrap();
        }
        book
    })
}

/// A book that has a price of every cable: by its own row, or by the model.
fn priced() -> impl Strategy<Value = (PriceBook, Cable)> {
    (book(), cable(), 0.0..50.0, 0.1..50.0, prop::option::of(0.0..500.0)).prop_map(
        |(book, cable, fixed, metal, row)| {
            let mut book = book;
            book.remove(Item::Cable(cable));
            book.set(Item::CableFixed, Price::new(fixed, BookUnit::PerFoot)).unwrap();
            book.set(Item::Metal(cable.metal), Price::new(metal, BookUnit::PerPound)).unwrap();
            if let Some(row) = row {
                book.set(Item::Cable(cable), Price::new(row, BookUnit::PerMeter)).unwrap();
            }
            (book, cable)
        },
    )
}

fn bits(book: &PriceBook) -> Vec<u64> {
    book.rows().iter().map(|row| row.price.amount.to_bits()).collect()
}

proptest! {
    #![proptest_config(tried(400))]

    #[test]
    fn a_book_is_read_back_bit_for_bit(book in book()) {
        let text = write(&book);
        let again = read(&text).unwrap().unwrap();
        prop_assert_eq!(&again, &book, "{}", text);
        prop_assert_eq!(bits(&again), bits(&book));
        prop_assert_eq!(write(&again), text.clone());
        let cells = Cells::of_book(&book).unwrap();
        prop_assert_eq!(read(&cells.text()).unwrap(), Some(book));
    }

    #[test]
    fn no_price_is_below_nothing((book, cable) in priced(), kilograms in 0.0..30.0, asked in prop::option::of(0.0..200.0)) {
        match book.cable_price(cable, mass(kilograms), asked.map(MoneyPerMass)) {
            Ok(price) => {
                let price = price.unwrap();
                prop_assert!(price.0 >= 0.0 && price.0.is_finite(), "{:?}", price);
            }
            Err(outside) => {
                prop_assert_eq!((outside.argument, Some(outside.given)), ("metal_price", asked));
                prop_assert!(outside.given <= outside.min && outside.min <= outside.max, "{:?}", outside);
                // What is told as the least price is one that serves.
                let least = MoneyPerMass(outside.min * (1.0 + 1e-9));
                prop_assert!(book.cable_price(cable, mass(kilograms), Some(least)).is_ok());
            }
        }
    }

    #[test]
    fn pieces_labor_and_lines_are_not_below_nothing(book in book(), piece in piece(), size in 0.0..1000.0, length in 0.0..5000.0) {
        let power = if piece == Piece::Transformer { kilovolt_amperes(size) } else { horsepower(size.min(999.0)) };
        let price = book.piece_price(piece, power).unwrap();
        prop_assert!(price.is_none_or(|price| price.0 >= 0.0 && price.0.is_finite()));
        prop_assert!(book.labor_price(meters(length)).unwrap().0 >= 0.0);
        if let Some(line) = book.line_extension() {
            prop_assert!(line.fixed.0 >= 0.0 && line.per_length.0 >= 0.0 && line.free >= meters(0.0));
        }
    }

    #[test]
    fn a_cable_rises_with_its_metal((book, cable) in priced(), kilograms in 0.001..30.0f64, from in 0.0..200.0, more in 0.01..100.0f64) {
        let at = |price: f64| book.cable_price(cable, mass(kilograms), Some(MoneyPerMass(price)));
        if let Ok(Some(before)) = at(from) {
            let after = at(from + more).unwrap().unwrap();
            prop_assert!(after > before);
            // It rises by what the metal in it has become dearer.
            let expected = kilograms * more * book.cable_factor();
            prop_assert!((after.0 - before.0 - expected).abs() <= 1e-11 * after.0, "{} {}", after.0 - before.0, expected);
        }
        // At the book's own price, told or not, it costs the same.
        let own = book.metal_price(cable.metal);
        prop_assert_eq!(book.cable_price(cable, mass(kilograms), own), book.cable_price(cable, mass(kilograms), None));
    }

    #[test]
    fn a_cable_rises_with_its_mass((book, cable) in priced(), kilograms in 0.0..30.0, more in 0.001..10.0, dearer in 0.01..50.0) {
        let own = book.metal_price(cable.metal).unwrap();
        let asked = Some(MoneyPerMass(own.0 + dearer));
        let at = |kilograms: f64| book.cable_price(cable, mass(kilograms), asked).unwrap().unwrap();
        prop_assert!(at(kilograms + more) > at(kilograms));
    }

    #[test]
    fn the_unit_has_no_part_in_a_price(amount in 0.01..1000.0f64, size in 0.2..900.0f64, kilograms in 0.01..30.0) {
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-12 * a.abs().max(b.abs());
        let books: Vec<PriceBook> = [1.0, 2.0].into_iter().map(|system| {
            let us = system == 1.0;
            let mut book = PriceBook::invented();
            let unit = |a, b| if us { a } else { b };
            let of = |us_amount: f64, si_amount: f64| if us { us_amount } else { si_amount };
            let piece = Piece::Remedy(Remedy::SineFilter);
            for (item, amount, unit) in [
                (Item::CableFixed, of(amount, amount / 0.3048 * 1000.0), unit(BookUnit::PerFoot, BookUnit::PerKilometer)),
                (Item::Metal(Metal::Copper), of(amount, amount / 0.453_592_37), unit(BookUnit::PerPound, BookUnit::PerKilogram)),
                (Item::PerSize(piece), of(amount, amount / 0.7457), unit(BookUnit::PerHorsepower, BookUnit::PerKilowatt)),
                (Item::LaborPerLength, of(amount * 1000.0, amount / 0.3048), unit(BookUnit::PerKilofoot, BookUnit::PerMeter)),
                (Item::LineFree, of(amount, amount * 0.3048), unit(BookUnit::Foot, BookUnit::Meter)),
            ] {
                book.set(item, Price::new(amount, unit)).unwrap();
            }
            book
        }).collect();
        let cable = Cable { build: Build::Twisted, metal: Metal::Copper, size: Size::Awg4 };
        let figures = |book: &PriceBook| [
            book.cable_price(cable, mass(kilograms), None).unwrap().unwrap().0,
            book.piece_price(Piece::Remedy(Remedy::SineFilter), horsepower(size)).unwrap().unwrap().0,
            book.labor_price(feet(size)).unwrap().0,
            book.line_extension().unwrap().free.value,
        ];
        for (a, b) in figures(&books[0]).into_iter().zip(figures(&books[1])) {
            prop_assert!(near(a, b), "{} {}", a, b);
        }
    }

    #[test]
    fn no_text_stops_the_reader(book in book(), at in any::<prop::sample::Index>(), piece in ".{0,3}") {
        let mut text = write(&book);
        let places: Vec<usize> = text.char_indices().map(|(place, _)| place).collect();
        text.insert_str(*at.get(&places), &piece);
        if let Ok(Some(book)) = read(&text) {
            prop_assert_eq!(read(&write(&book)), Ok(Some(book)));
        }
        let cells = Cells::of(&text);
        prop_assert!(cells.is_err() || Cells::of(&cells.clone().unwrap().text()) .is_ok());
    }
}

/// The words are those that job files have, and the invented prices those that stand in without a book.
#[test]
fn the_built_in_book_is_what_stands_in_without_one() {
    let book = PriceBook::invented();
    let word = |value: serde_json::Value| value.as_str().unwrap().to_owned();
    assert_eq!(Equipment::ALL.len(), Kind::ALL.len());
    for (own, kind) in Equipment::ALL.into_iter().zip(Kind::ALL) {
        assert_eq!(own.word(), word(serde_json::to_value(kind).unwrap()));
        // The generic kinds have no price of their own: the book tells it.
        assert!(
            generic(kind).price.is_none()
                && book.piece_price(Piece::Equipment(own), horsepower(7.5)).unwrap().is_some()
        );
    }
    let remedies = [CableRemedy::OutputReactor, CableRemedy::DvDtFilter, CableRemedy::SineFilter];
    for (own, remedy) in Remedy::ALL.into_iter().zip(remedies) {
        assert_eq!(own.word(), word(serde_json::to_value(remedy).unwrap()));
        assert!(book.piece_price(Piece::Remedy(own), watts(9000.0)).unwrap().is_some());
    }
    let builds = [CableBuild::PlasticConduit, CableBuild::SteelConduit, CableBuild::FlatJacketed, CableBuild::Twisted];
    for (own, build) in Build::ALL.into_iter().zip(builds) {
        assert_eq!(own.word(), word(serde_json::to_value(build).unwrap()));
    }
}

/// A blank job shows the built-in book's prices, and goes by them.
#[test]
fn cable_and_line_of_the_built_in_book_are_those_of_a_blank_job() {
    let (book, answer) = (PriceBook::invented(), evaluate(&Job::default()));
    let prices = answer.inputs.prices.as_ref().unwrap();
    assert_eq!(prices.book, book);
    let shown = |field: Field, unit: Unit| Entry::to(answer.inputs.stand_in(field).unwrap(), unit).unwrap();
    let fixed = shown(Field::CableFixed, Unit::DollarPerFoot) / 0.3048;
    let metal = shown(Field::CableMetal, Unit::DollarPerPound) / 0.453_592_37;
    for kilograms in [0.05, 0.4, 2.5] {
        for size in Size::ALL {
            let cable = Cable { build: Build::Twisted, metal: Metal::Copper, size };
            let price = book.cable_price(cable, mass(kilograms), None).unwrap().unwrap().0;
            assert!((price / (fixed + metal * kilograms) - 1.0).abs() < 1e-14);
            assert!((price / prices.cable(cable, mass(kilograms)).unwrap().of(mass(kilograms)).0 - 1.0).abs() < 1e-14);
        }
    }
    let line = book.line_extension().unwrap();
    let tariff = Tariff { fixed: line.fixed, per_length: line.per_length, free: line.free };
    let cost = tariff.cost(feet(1000.0)).unwrap().0;
    let expected = shown(Field::LineFixed, Unit::Dollar) + 1000.0 * shown(Field::LinePrice, Unit::DollarPerFoot);
    assert!((cost - expected).abs() < 1e-9 && shown(Field::LineFree, Unit::Foot) == line.free.value);
}
