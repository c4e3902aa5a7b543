//! What is refused, by row, column and fault.

use super::*;
use BookFault::{
    Ambiguous, ColumnTwice, ControlInText, DoesNotApply, Missing, MissingColumn, NoHeader, NoUnit, NotACurrency,
    NotADate, NotANumber, OutOfRange, TextTooLong, TooLong, TooMany, Twice, UnknownColumn, UnknownItem, UnknownKind,
    UnknownMetal, UnknownSize, UnknownUnit, Unreadable, WrongUnit,
};

/// The fault of a text.
fn refused(text: &str) -> (usize, Option<&'static str>, BookFault) {
    let error = read(text).unwrap_err();
    (error.row, error.column, error.what)
}

/// The fault of a row behind the head.
fn row(row: &str) -> (Option<&'static str>, BookFault) {
    let (line, column, fault) = refused(&format!("{HEAD}{row}\n"));
    assert_eq!(line, 4, "{fault:?}");
    (column, fault)
}

#[test]
fn headers() {
    assert_eq!(refused("\n\nline,x,$,25\n"), (3, None, NoHeader));
    assert_eq!(refused("item,kind,unit\nline,,$"), (1, Some(PRICE), MissingColumn));
    assert_eq!(refused("\r\nkind;unit;price\r\n;;25"), (2, Some(ITEM), MissingColumn));
    assert_eq!(refused("item,price"), (1, Some(KIND), MissingColumn));
    assert_eq!(refused("item,kind,price"), (1, Some(UNIT), MissingColumn));
    assert_eq!(refused("item,kind,unit,price,weight"), (1, None, UnknownColumn("weight".to_owned())));
    assert_eq!(refused("item,kind,unit,price,"), (1, None, UnknownColumn(String::new())));
    assert_eq!(refused(&format!("item,{}", "é".repeat(1000))), (1, None, UnknownColumn("é".repeat(40))));
    assert_eq!(refused("item,kind;unit"), (1, None, UnknownColumn("item,kind".to_owned())));
    assert_eq!(refused("item,kind,unit,price,PRICE"), (1, Some(PRICE), ColumnTwice));
}

#[test]
fn words() {
    let long = "x".repeat(1000);
    assert_eq!(row("pump,,,,$,1"), (Some(ITEM), UnknownItem("pump".to_owned())));
    assert_eq!(row(",large_economy,,,$,1"), (Some(ITEM), UnknownItem(String::new())));
    assert_eq!(row("=line,,,,$,1"), (Some(ITEM), UnknownItem("=line".to_owned())));
    assert_eq!(row(&format!("{long},,,,$,1")), (Some(ITEM), UnknownItem("x".repeat(40))));
    assert_eq!(row("equipment,sine_filter,,,$,1"), (Some(KIND), UnknownKind("sine_filter".to_owned())));
    assert_eq!(row("equipment,,,,$,1"), (Some(KIND), UnknownKind(String::new())));
    assert_eq!(row("remedy,none_needed,,,$,1"), (Some(KIND), UnknownKind("none_needed".to_owned())));
    assert_eq!(row("cable,round,copper,4 AWG,$/ft,1"), (Some(KIND), UnknownKind("round".to_owned())));
    assert_eq!(row("metal,,gold,,$/lb,1"), (Some(METAL), UnknownMetal("gold".to_owned())));
    assert_eq!(row("metal,,,,$/lb,1"), (Some(METAL), UnknownMetal(String::new())));
    for size in ["5 AWG", "4/0 kcmil", "250 AWG", "-4", "4 hp", "04", "\"4\"\"\""] {
        let shown = if size.starts_with('"') { "4\"" } else { size };
        let fault = row(&format!("cable,twisted,copper,{size},$/ft,1"));
        assert_eq!(fault, (Some(SIZE), UnknownSize(shown.to_owned())));
    }
    assert_eq!(row("cable,twisted,copper,,$/ft,1"), (Some(SIZE), UnknownSize(String::new())));
}

#[test]
fn cells_that_an_item_has_no_use_for() {
    for (text, column) in [
        ("cable_fixed,twisted,,,$/ft,1", KIND),
        ("cable_fixed,,copper,,$/ft,1", METAL),
        ("metal,,copper,4 AWG,$/lb,1", SIZE),
        ("equipment,doubling,copper,,$,1", METAL),
        ("transformer,doubling,,,$,1", KIND),
        ("line,,,10 hp,$,1", SIZE),
        ("labor,x,,,$,1", KIND),
        ("name,A,,,,1", PRICE),
        ("source,A,,,$,", UNIT),
        ("name,A,copper,,,", METAL),
    ] {
        assert_eq!(row(text), (Some(column), DoesNotApply), "{text}");
    }
    assert_eq!(refused("item,kind,unit,price\ncurrency,USD,,5").1, Some(PRICE));
}

#[test]
fn units() {
    use BookUnit::{Each, Foot, Horsepower, KilovoltAmpere, Kilowatt, PerFoot, PerHorsepower, PerKilofoot, PerPound};
    let unknown = |word: &str| UnknownUnit(word.to_owned());
    for word in ["USD/ft", "€/ft", "$ / ft", "$/foot", "/ft", "ft/$", "=1", "$/lb/ft"] {
        assert_eq!(row(&format!("cable_fixed,,,,{word},1")), (Some(UNIT), unknown(word)));
    }
    assert_eq!(row(&format!("line,,,,{},1", "$".repeat(99))), (Some(UNIT), unknown(&"$".repeat(40))));
    let length: &[BookUnit] = &[PerFoot, BookUnit::PerMeter, PerKilofoot, BookUnit::PerKilometer];
    let wrong = |given, accepted| (Some(UNIT), WrongUnit { given, accepted });
    assert_eq!(row("cable_fixed,,,,$/lb,1"), wrong(PerPound, length));
    assert_eq!(row("cable_fixed,,,,ft,1"), wrong(Foot, length));
    assert_eq!(row("cable,twisted,copper,4,$,1"), wrong(Each, length));
    assert_eq!(row("metal,,copper,,$/ft,1"), wrong(PerFoot, &[PerPound, BookUnit::PerKilogram]));
    assert_eq!(row("equipment,doubling,,,$/kft,1"), wrong(PerKilofoot, &[Each, PerHorsepower, BookUnit::PerKilowatt]));
    assert_eq!(row("transformer,,,,$/hp,1"), wrong(PerHorsepower, &[Each, BookUnit::PerKilovoltAmpere]));
    assert_eq!(row("line_free,,,,$/ft,1"), wrong(PerFoot, &[Foot, BookUnit::Meter]));
    assert_eq!(row("cable_factor,,,,$,1"), wrong(Each, &[BookUnit::One]));
    // A price of one size is not one for each horsepower.
    assert_eq!(row("equipment,doubling,,10 hp,$/hp,1"), wrong(PerHorsepower, &[Each]));
    // Units contradict without a price too.
    assert_eq!(row("cable_fixed,,,,$/lb,"), wrong(PerPound, length));
    assert_eq!(row("cable_fixed,,,,,1"), (Some(UNIT), NoUnit(length)));
    assert_eq!(row("equipment,doubling,,10,,1"), (Some(UNIT), NoUnit(&[Each])));
    let power: &[BookUnit] = &[Horsepower, Kilowatt];
    let of_size = |given, accepted| (Some(SIZE), WrongUnit { given, accepted });
    assert_eq!(row("equipment,doubling,,10 kVA,$,1"), of_size(KilovoltAmpere, power));
    assert_eq!(row("remedy,sine_filter,,10 ft,$,1"), of_size(Foot, power));
    assert_eq!(row("transformer,,,10 hp,$,1"), of_size(Horsepower, &[KilovoltAmpere]));
    assert_eq!(row("equipment,doubling,,10 PS,$,1"), (Some(SIZE), unknown("PS")));
    assert_eq!(row("equipment,doubling,,NaN,$,1"), (Some(SIZE), unknown("NaN")));
}

#[test]
fn numbers() {
    let cells = [
        "=1+1", "=A1", "+", "'5", "$5", "5 $", "95 %", "NaN", "inf", "-inf", "infinity", "1e999", "0x10", "5 0",
        "1_000", "٣", "free",
    ];
    for cell in cells {
        assert_eq!(row(&format!("line,,,,$,{cell}")), (Some(PRICE), NotANumber(cell.to_owned())));
    }
    assert_eq!(row("line,,,,$,\"5,000\""), (Some(PRICE), NotANumber("5,000".to_owned())));
    assert_eq!(row(&format!("line,,,,$,{}", "x".repeat(999))), (Some(PRICE), NotANumber("x".repeat(40))));
    for (size, figure) in [("=1 hp", "=1"), ("hp", ""), ("1.2.3 hp", "1.2.3"), ("10-15 hp", "10-15")] {
        assert_eq!(row(&format!("equipment,doubling,,{size},$,1")), (Some(SIZE), NotANumber(figure.to_owned())));
    }
    let semicolons = |row: &str| refused(&format!("{HEAD}{row}\n").replace(',', ";").replace('#', ","));
    assert_eq!(semicolons("line,,,,$,5#000"), (4, Some(PRICE), Ambiguous("5,000".to_owned())));
    assert_eq!(semicolons("transformer,,,1#500 kVA,$,1"), (4, Some(SIZE), Ambiguous("1,500".to_owned())));
}

// The ranges are those that the item's own check documents, in the unit of the row.
#[test]
fn figures_outside_their_range() {
    let prices = [
        ("cable_fixed,,,,$/m", 0.0, 1e6),
        ("cable_fixed,,,,$/ft", 0.0, 304_800.0),
        ("cable_factor,,,,", 0.1, 10.0),
        ("metal,,copper,,$/kg", 0.0, 1e6),
        ("cable,twisted,copper,4,$/km", 0.0, 1e9),
        ("equipment,doubling,,,$", 0.0, 1e7),
        ("equipment,doubling,,,$/hp", 0.0, 1e6),
        ("equipment,doubling,,10,$", 0.0, 1e7),
        ("transformer,,,,$/kVA", 0.0, 1e6),
        ("line,,,,$", 0.0, 1e9),
        ("line_free,,,,m", 0.0, 1e6),
        ("labor,,,,$", 0.0, 1e9),
    ];
    for (cells, min, max) in prices {
        for given in [-7.5, -1e-9, max * 1.5, max + 0.001, 1e300] {
            assert_eq!(row(&format!("{cells},{given}")), (Some(PRICE), OutOfRange { given, min, max }), "{cells}");
        }
    }
    for (size, max) in [("equipment,doubling,,# hp,$,1", 1000.0), ("transformer,,,#,$,1", 10_000.0)] {
        for given in [-5.0, 0.0, 0.09, max + 1.0] {
            let fault = row(&size.replace('#', &given.to_string()));
            assert_eq!(fault, (Some(SIZE), OutOfRange { given, min: 0.1, max }));
        }
    }
}

#[test]
fn texts() {
    let of = |rows: &str| refused(&format!("item,kind,unit,price\n{rows}"));
    for code in ["", "US", "usd", "U$D", "dollars", "=USD"] {
        assert_eq!(of(&format!("currency,{code},,\n")), (2, Some(KIND), NotACurrency(code.to_owned())));
    }
    for date in ["", "2026-02-29", "11/01/2026", "2026-11-1", "46327", "2026-13-01"] {
        assert_eq!(of(&format!("date,{date},,\n")), (2, Some(KIND), NotADate(date.to_owned())));
    }
    assert_eq!(of("name,A,,\nline,,$,5\n"), (1, Some(ITEM), Missing(Word::Currency)));
    assert_eq!(of("currency,USD,,\nline,,$,5\n"), (1, Some(ITEM), Missing(Word::Date)));
    for word in ["name", "source"] {
        let long = |count: usize| format!("{word},{},,,,", "é".repeat(count));
        let fault = TextTooLong { given: MOST_TEXT + 1, most: MOST_TEXT };
        assert_eq!(row(&long(MOST_TEXT + 1)), (Some(KIND), fault));
        let read = book(&long(MOST_TEXT));
        assert_eq!(read.name.chars().count() + read.source.chars().count(), MOST_TEXT);
        for control in ['\0', '\u{1b}', '\u{7f}', '\u{85}', '\u{2028}', '\u{202e}', '\u{2067}', '\u{feff}', '\t'] {
            assert_eq!(row(&format!("{word},A{control}B,,,,")), (Some(KIND), ControlInText), "{control:?}");
        }
        assert_eq!(row(&format!("{word},\"A\nB\",,,,")), (Some(KIND), ControlInText));
    }
}

#[test]
fn what_stands_there_already() {
    let second = |rows: &str| {
        let (line, column, fault) = refused(&format!("{HEAD}{rows}\n"));
        assert_eq!((line, column), (5, Some(ITEM)));
        fault
    };
    for rows in [
        "line,,,,$/ft,25\nline,,,,$/ft,25",
        "line,,,,$/ft,25\nline,,,,$/m,80",
        "metal,,copper,,$/lb,9\nMETAL,,Copper,,$/kg,19",
        "cable,twisted,copper,4 AWG,$/ft,5\ncable,twisted,copper,4,$/m,17",
        "equipment,doubling,,10 hp,$,3000\nequipment,doubling,,10,$,3000",
        "equipment,doubling,,10 hp,$,3000\nequipment,doubling,,7.457 kW,$,2900",
        "equipment,doubling,,,$/hp,140\nequipment,doubling,,,$/kW,190",
        "name,A,,,,\nname,A,,,,",
    ] {
        assert_eq!(second(rows), Twice { first: 4 }, "{rows}");
    }
    let (line, _, fault) = refused(&format!("{HEAD}currency,MXN,,,,\n"));
    assert_eq!((line, fault), (4, Twice { first: 2 }));
    // 7.5 kW are not 10 hp, and a fixed part is not one for each horsepower.
    let rows = "equipment,doubling,,10 hp,$,1\nequipment,doubling,,7.5 kW,$,1\nequipment,doubling,,,$,1\nequipment,doubling,,,$/hp,1";
    assert_eq!(book(rows).rows().len(), 4);
}

#[test]
fn rows_that_can_not_be_taken_apart() {
    let of = |rows: &str| refused(&format!("{HEAD}{rows}"));
    assert_eq!(of("line,,,,$\n"), (4, None, Unreadable));
    assert_eq!(of("line,,,,$,5,\n"), (4, None, Unreadable));
    assert_eq!(of("name,\"A\n,,,,\nline,,,,$,5\n"), (4, None, Unreadable));
    assert_eq!(of("name,A\"B\",,,,\n"), (4, None, Unreadable));
    assert_eq!(of("name,\"A\"B,,,,\n"), (4, None, Unreadable));
    assert_eq!(refused("item,\"kind\nline,,,"), (1, None, Unreadable));
}

#[test]
fn too_much() {
    let head = "item,kind,size,unit,price\ncurrency,USD,,,\ndate,2026-11-01,,,\n";
    let rows =
        |count: usize, of: fn(usize) -> String| head.to_owned() + &(0..count).map(|n| of(n) + "\n").collect::<String>();
    let piece = |n: usize| format!("transformer,,{},$,{n}", n + 1);
    // Currency and date are rows too.
    assert_eq!(read(&rows(MOST_ROWS - 2, piece)).unwrap().unwrap().rows().len(), MOST_ROWS - 2);
    assert_eq!(refused(&rows(MOST_ROWS - 1, piece)), (MOST_ROWS + 2, None, TooMany(MOST_ROWS)));
    assert_eq!(Cells::of(&rows(MOST_ROWS - 1, piece)).unwrap_err(), TooMany(MOST_ROWS).at(MOST_ROWS + 2, None));
    assert_eq!(Cells::of(&rows(MOST_ROWS - 2, piece)).unwrap().count(), MOST_ROWS);
    let length = |given: usize| TooLong { given, most: MOST_BYTES };
    let full = format!("{head}{}", ",,,,\n".repeat(MOST_BYTES / 5)).into_bytes();
    let full = |bytes: usize| String::from_utf8(full[..bytes].to_vec()).unwrap();
    assert!(read(&(full(MOST_BYTES - 1) + "\n")).is_ok());
    assert_eq!(refused(&(full(MOST_BYTES) + "\n")), (1, None, length(MOST_BYTES + 1)));
    for text in [rows(100_000, piece), rows(100_000, |_| ",,,,".to_owned()), "\"".repeat(10_000_000)] {
        let start = std::time::Instant::now();
        assert_eq!(refused(&text), (1, None, length(text.len())));
        assert_eq!(Cells::of(&text).unwrap_err().what, length(text.len()));
        assert!(start.elapsed().as_millis() < 100, "{:?}", start.elapsed());
    }
}

#[test]
fn the_first_fault_is_told() {
    let rows = "line,,,,$,x\nline,,,,$,-5\npump,,,,$,5\n";
    let of = |rows: &str| refused(&format!("{HEAD}{rows}"));
    assert_eq!(of(rows), (4, Some(PRICE), NotANumber("x".to_owned())));
    let rows = rows.replace(",x\n", ",7\n");
    assert_eq!(of(&rows), (5, Some(PRICE), OutOfRange { given: -5.0, min: 0.0, max: 1e9 }));
    let rows = rows.replace("line,,,,$,-5", "labor,,,,$,5");
    assert_eq!(of(&rows), (6, Some(ITEM), UnknownItem("pump".to_owned())));
}

/// A plain number may stand without a unit, not with one that nobody knows.
#[test]
fn a_unit_that_nobody_knows() {
    assert!(read(&format!("{HEAD}cable_factor,,,,,1.2\n")).is_ok());
    let error = read(&format!("{HEAD}cable_factor,,,,furlong,1.2\n")).unwrap_err();
    assert_eq!(error.what, BookFault::UnknownUnit("furlong".to_owned()));
}
