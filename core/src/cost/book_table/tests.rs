//! What is read and written, and that no text stops the reader.

use super::*;
use crate::cost::book::{Build, Cable, Equipment, Item, Piece, Price, PriceBook, Rating, Remedy};
use crate::standards::conductor::{Metal, Size};
use crate::table::chance::{Chance, is_line};

#[cfg(test)]
mod refused;

const HEAD: &str = "item,kind,metal,size,unit,price\ncurrency,USD,,,,\ndate,2026-11-01,,,,\n";

/// The book of rows behind the head, whose first stands on line 4.
fn book(rows: &str) -> PriceBook {
    read(&format!("{HEAD}{rows}")).unwrap().unwrap()
}

fn cable(build: Build, metal: Metal, size: Size) -> Item {
    Item::Cable(Cable { build, metal, size })
}

const DRIVE: Piece = Piece::Equipment(Equipment::LargeEconomy);

#[test]
fn a_blank_text_has_no_book() {
    for text in ["", " \r\n\t\n", "\u{feff}", ",,\n,,\n", "item,kind,unit,price\n", "PRICE;unit;Kind;item\r\n;;;\r\n"] {
        assert_eq!(read(text), Ok(None), "{text:?}");
    }
    assert!(book("").rows().is_empty() && book("").is_invented());
}

#[test]
fn every_item_is_read_in_every_unit() {
    use BookUnit::{
        Each, Foot, Horsepower, KilovoltAmpere, Kilowatt, Meter, One, PerFoot, PerHorsepower, PerKilofoot, PerKilogram,
        PerKilometer, PerKilovoltAmpere, PerKilowatt, PerMeter, PerPound,
    };
    let sized = |piece, value, unit| Item::Sized(piece, Rating { value, unit });
    let filter = Piece::Remedy(Remedy::DvDtFilter);
    let cases = [
        ("cable_fixed,,,,$/ft,0.5", Item::CableFixed, 0.5, PerFoot),
        ("cable_fixed,,,,$/m,1.7", Item::CableFixed, 1.7, PerMeter),
        ("cable_factor,,,,1,1.1", Item::CableFactor, 1.1, One),
        ("cable_factor,,,,,0.9", Item::CableFactor, 0.9, One),
        ("metal,,copper,,$/lb,9", Item::Metal(Metal::Copper), 9.0, PerPound),
        ("Metal,,ALUMINUM,,$/KG,6.6", Item::Metal(Metal::Aluminum), 6.6, PerKilogram),
        (
            "cable,flat_jacketed,copper,4 AWG,$/ft,5.25",
            cable(Build::FlatJacketed, Metal::Copper, Size::Awg4),
            5.25,
            PerFoot,
        ),
        ("cable,twisted,copper,4/0,$/kft,9e3", cable(Build::Twisted, Metal::Copper, Size::Awg4_0), 9e3, PerKilofoot),
        (
            "cable,plastic_conduit,aluminum,250,$/km,4100",
            cable(Build::PlasticConduit, Metal::Aluminum, Size::Kcmil250),
            4100.0,
            PerKilometer,
        ),
        (
            "cable,steel_conduit,copper,500 KCMIL,$/m,88",
            cable(Build::SteelConduit, Metal::Copper, Size::Kcmil500),
            88.0,
            PerMeter,
        ),
        ("equipment,large_economy,,,$,1500", Item::Fixed(DRIVE), 1500.0, Each),
        ("equipment,large_economy,,,$/hp,95", Item::PerSize(DRIVE), 95.0, PerHorsepower),
        ("equipment,large_economy,,,$/kW,127.5", Item::PerSize(DRIVE), 127.5, PerKilowatt),
        ("equipment,large_economy,,7.5 hp,$,2100", sized(DRIVE, 7.5, Horsepower), 2100.0, Each),
        ("equipment,large_economy,,7.5,$,2100", sized(DRIVE, 7.5, Horsepower), 2100.0, Each),
        ("equipment,large_economy,,5.5kw,$,2100", sized(DRIVE, 5.5, Kilowatt), 2100.0, Each),
        ("remedy,dv_dt_filter,,,$,300", Item::Fixed(filter), 300.0, Each),
        ("remedy,dv_dt_filter,,,$/hp,30", Item::PerSize(filter), 30.0, PerHorsepower),
        ("remedy,DV_DT_FILTER,,10 hp,$,610", sized(filter, 10.0, Horsepower), 610.0, Each),
        ("transformer,,,,$,400", Item::Fixed(Piece::Transformer), 400.0, Each),
        ("transformer,,,,$/kVA,40", Item::PerSize(Piece::Transformer), 40.0, PerKilovoltAmpere),
        ("transformer,,,37.5,$,2000", sized(Piece::Transformer, 37.5, KilovoltAmpere), 2000.0, Each),
        ("transformer,,,15 kva,$,1000", sized(Piece::Transformer, 15.0, KilovoltAmpere), 1000.0, Each),
        ("line,,,,$,5000", Item::LineFixed, 5000.0, Each),
        ("line,,,,$/ft,25", Item::LinePerLength, 25.0, PerFoot),
        ("line_free,,,,ft,100", Item::LineFree, 100.0, Foot),
        ("line_free,,,,m,0", Item::LineFree, 0.0, Meter),
        ("labor,,,,$,350", Item::LaborFixed, 350.0, Each),
        ("labor,,,,$/m,4", Item::LaborPerLength, 4.0, PerMeter),
    ];
    for (row, item, amount, unit) in cases {
        let read = book(row);
        assert_eq!((read.rows().len(), read.get(item)), (1, Some(Price::new(amount, unit))), "{row}");
        assert_eq!(super::read(&write(&read)), Ok(Some(read)));
    }
}

#[test]
fn columns_and_rows_stand_in_any_order() {
    let text = "PRICE, Unit ,kind,ITEM\n\
                25,$/ft,,line\n\
                ,,,\n\
                ,, Any town, SOURCE \n\
                ,,2026-02-28,date\n\
                95,$/hp,large_economy,Equipment\n\
                ,,MXN,currency\n\
                5000,$,,line\n";
    let read = read(text).unwrap().unwrap();
    let mut expected = book("line,,,,$,5000\nline,,,,$/ft,25\nequipment,large_economy,,,$/hp,95\nsource,Any town,,,,");
    (expected.currency, expected.date) = (read.currency, read.date);
    assert_eq!(read, expected);
    assert_eq!((read.currency.code().as_str(), read.date.text().as_str()), ("MXN", "2026-02-28"));
    assert!(!read.is_invented());
}

#[test]
fn a_row_without_a_price_is_none() {
    let rows = "metal,,copper,,,\nmetal,,copper,,$/lb,\nequipment,doubling,,10 hp,,\nline,,,,,\ncable_factor,,,,,\n";
    assert!(book(rows).rows().is_empty());
    assert_eq!(book(&format!("{rows}metal,,copper,,$/lb,9\n")).rows().len(), 1);
}

#[test]
fn separators_marks_and_ends_of_line() {
    let commas = format!("\u{feff}{HEAD}name,\"Wells, 1\",,,,\nequipment,doubling,,7.5 hp,$,1250.25\n\n");
    let expected = read(&commas).unwrap().unwrap();
    assert_eq!((expected.name.as_str(), expected.rows()[0].price.amount), ("Wells, 1", 1250.25));
    for end in ["\r\n", "\r"] {
        assert_eq!(read(&commas.replace('\n', end)), Ok(Some(expected.clone())));
    }
    for mark in ["\t", ";"] {
        let text = commas.replace("\"Wells, 1\"", "Wells# 1").replace(',', mark).replace('#', ",");
        assert_eq!(read(&text), Ok(Some(expected.clone())), "{mark:?}");
        assert_eq!(read(&text.replace('.', ",")), Ok(Some(expected.clone())), "{mark:?}");
    }
}

#[test]
fn the_built_in_book_and_awkward_figures_are_read_back_bit_for_bit() {
    let mut book = PriceBook::invented();
    for amount in [0.0, 0.1 + 0.2, 1.0 / 3.0, 5e-324, f64::MIN_POSITIVE, 1e6, 123_456.789_012_345_67] {
        book.set(Item::CableFixed, Price::new(amount, BookUnit::PerMeter)).unwrap();
        let size = Rating { value: 10.0 / 3.0, unit: BookUnit::Kilowatt };
        book.set(Item::Sized(DRIVE, size), Price::new(amount, BookUnit::Each)).unwrap();
        let text = write(&book);
        let read = read(&text).unwrap().unwrap();
        assert_eq!((&read, write(&read)), (&book, text.clone()), "{text}");
        assert_eq!(read.get(Item::CableFixed).map(|price| price.amount.to_bits()), Some(amount.to_bits()));
    }
    let rows = write(&PriceBook::invented());
    assert!(rows.starts_with("item,kind,metal,size,unit,price\ncurrency,USD,,,,\ndate,2026-11-01,,,,\ncable_fixed,"));
    assert!(rows.contains("\nmetal,,copper,,$/lb,9\nmetal,,aluminum,,$/lb,3\nequipment,converting_active,,,$,700\n"));
}

#[test]
fn no_text_of_a_book_is_a_formula() {
    for text in ["=1+1", "+A", "-A", "@A", "＝A", "'=A", "''@A"] {
        let mut book = PriceBook::invented();
        (book.name, book.source) = (text.to_owned(), text.to_owned());
        let written = write(&book);
        assert!(written.contains(&format!("\nname,'{text},,,,\nsource,'{text},")), "{written}");
        assert_eq!(read(&written), Ok(Some(book)));
    }
    for text in ["'A", "5\" casing", "a;b", "ñandú, S. A.", "\"\""] {
        let mut book = PriceBook::invented();
        text.clone_into(&mut book.name);
        assert_eq!(read(&write(&book)), Ok(Some(book)));
    }
    let mut book = PriceBook::invented();
    "  A\nB\t\u{202e}C\u{0} ".clone_into(&mut book.name);
    assert_eq!(read(&write(&book)).unwrap().unwrap().name, "A B  C");
    let written = write(&book);
    let cells = written.lines().flat_map(|line| line.split(','));
    assert!(cells.into_iter().all(|cell| !cell.starts_with(['=', '+', '-', '@'])), "{written}");
}

/// A table of a few rows, right or nearly, with a few pieces put in anywhere.
fn any_table(chance: &mut Chance) -> String {
    let mark = chance.one_of(&[",", ";", "\t"]);
    let end = chance.one_of(&["\n", "\r\n", "\r"]);
    let rows = [
        "name|Wells|||",
        "source|'=A|||",
        "metal||copper||$/lb|9",
        "cable|twisted|copper|4 AWG|$/ft|5.5",
        "equipment|doubling|||$/hp|140",
        "equipment|doubling||7.5 hp|$|1500",
        "transformer|||15|$|1000",
        "line||||$/m|80",
        "labor||||$|",
    ];
    let mut text = "item|kind|metal|size|unit|price\ncurrency|USD||||\ndate|2026-11-01||||\n".to_owned();
    let from = chance.below(rows.len());
    for row in rows.iter().cycle().skip(from).take(chance.below(5)) {
        text += &format!("{row}{}\n", "|".repeat(5 - row.matches('|').count()));
    }
    let text = text.replace('|', mark).replace('\n', end);
    chance.spoiled(text, &["$", "hp", "kVA"])
}

#[test]
fn no_text_stops_the_reader() {
    let mut chance = Chance(20_260_214);
    let (mut taken, mut refused) = (0, 0);
    for _ in 0..4000 {
        let text = any_table(&mut chance);
        match read(&text) {
            Ok(book) => {
                let Some(book) = book else { continue };
                taken += usize::from(!book.rows().is_empty());
                for row in book.rows() {
                    assert_eq!(row.item.check(row.price), Ok(()), "{text:?}");
                }
                assert_eq!(read(&write(&book)), Ok(Some(book)), "{text:?}");
            }
            Err(error) => {
                refused += 1;
                assert!(is_line(error.row, &text), "{text:?}: {error:?}");
            }
        }
    }
    assert!(taken > 400 && refused > 400, "{taken} taken, {refused} refused");
}
