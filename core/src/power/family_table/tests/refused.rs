//! What is refused, by row, column and fault.

use super::*;

/// The fault of a text.
fn refused(text: &str) -> (usize, Option<&'static str>, TableFault) {
    let error = read(text).unwrap_err();
    (error.row, error.column, error.what)
}

/// The fault of the first row's cell of a column.
fn cell(kind: Kind, column: &'static str, cell: &str) -> TableFault {
    let (row, at, fault) = refused(&with(kind, column, cell));
    assert_eq!((row, at), (2, Some(column)), "{fault:?}");
    fault
}

#[test]
fn headers() {
    use TableFault::{ColumnTwice, MissingColumn, NoHeader, UnknownColumn};
    assert_eq!(refused("\n\nA,large_economy,15\n"), (3, None, NoHeader));
    assert_eq!(refused("hp,name\n15,A"), (1, Some("kind"), MissingColumn));
    assert_eq!(refused("\r\nkind;hp\r\nlarge_economy;15"), (2, Some("name"), MissingColumn));
    assert_eq!(refused("name,kind,weight"), (1, None, UnknownColumn("weight".to_owned())));
    assert_eq!(refused("name,kind,"), (1, None, UnknownColumn(String::new())));
    assert_eq!(refused(&format!("name,{}", "é".repeat(1000))), (1, None, UnknownColumn("é".repeat(40))));
    assert_eq!(refused("name,kind;hp"), (1, None, UnknownColumn("name,kind".to_owned())));
    assert_eq!(refused("name,kind,hp,HP"), (1, Some("hp"), ColumnTwice));
}

#[test]
fn names_and_kinds() {
    use TableFault::{Apart, ControlInName, NameTooLong, NoName, OtherKind, UnknownKind};
    assert_eq!(refused("name,kind\n ,doubling"), (2, Some("name"), NoName));
    assert_eq!(refused("name,kind,hp\n\n,,5"), (3, Some("name"), NoName));
    let long = |count: usize| format!("kind,name\ndoubling,{}", "é".repeat(count));
    assert_eq!(refused(&long(MOST_NAME + 1)), (2, Some("name"), NameTooLong));
    assert_eq!(one(&long(MOST_NAME)).name.chars().count(), MOST_NAME);
    for control in ['\0', '\u{1b}', '\u{7f}', '\u{85}', '\u{2028}', '\u{202e}', '\u{2067}', '\u{feff}', '\t'] {
        assert_eq!(
            refused(&format!("name,kind\nA{control}B,doubling")),
            (2, Some("name"), ControlInName),
            "{control:?}"
        );
    }
    assert_eq!(refused("name,kind\n\"A\nB\",doubling"), (2, Some("name"), ControlInName));
    assert_eq!(refused("name,kind\nA,magic"), (2, Some("kind"), UnknownKind("magic".to_owned())));
    assert_eq!(refused("name,kind\nA,doubling\nA,"), (3, Some("kind"), UnknownKind(String::new())));
    let long = refused(&format!("name,kind\nA,{}", "x".repeat(1000))).2;
    assert_eq!(long, UnknownKind("x".repeat(40)));
    assert_eq!(refused("name,kind\nA,doubling\nB,doubling\nA,doubling"), (4, Some("name"), Apart));
    assert_eq!(refused("name,kind\nA,doubling\nA,large_economy"), (3, Some("kind"), OtherKind));
}

#[test]
fn numbers() {
    let cells = [
        "=1+1", "=A1", "+", "'5", "$5", "95 %", "NaN", "inf", "-inf", "infinity", "1e999", "0x10", "5 0", "5\0",
        "1_000", "٣",
    ];
    for text in cells {
        for column in ["hp", "device_a", "thd_pct", "short_circuit_ka"] {
            assert_eq!(cell(Kind::Doubling, column, text), TableFault::NotANumber(text.to_owned()));
        }
    }
    assert_eq!(cell(Kind::Doubling, "hp", "\"7,5\""), TableFault::NotANumber("7,5".to_owned()));
    assert_eq!(cell(Kind::Doubling, "hp", &"x".repeat(1000)), TableFault::NotANumber("x".repeat(40)));
    let thousands = refused("name;kind;rated_m\nA;doubling;1,200");
    assert_eq!(thousands, (2, Some("rated_m"), TableFault::Ambiguous("1,200".to_owned())));
    assert_eq!(cell(Kind::Doubling, "enclosure", "3Q"), TableFault::UnknownEnclosure("3Q".to_owned()));
    assert_eq!(cell(Kind::Doubling, "enclosure", &"9".repeat(99)), TableFault::UnknownEnclosure("9".repeat(40)));
}

// The ranges are those that the family's own check documents, in the unit of the column.
#[test]
fn figures_outside_their_range() {
    let ranges: [(Kind, &str, f64, f64); 25] = [
        (Kind::Doubling, "hp", 0.25, 250.0),
        (Kind::Doubling, "output_a_240", 0.1, 2000.0),
        (Kind::Doubling, "output_a_480", 0.1, 2000.0),
        (Kind::Doubling, "input_a", 0.1, 2000.0),
        (Kind::Doubling, "device_a", 0.1, 2000.0),
        (Kind::Doubling, "displacement", 0.1, 1.0),
        (Kind::Doubling, "thd_pct", 0.0, 300.0),
        (Kind::Doubling, "efficiency_pct", 50.0, 100.0),
        (Kind::Doubling, "capacity_pct", 10.0, 100.0),
        (Kind::Doubling, "filter_drop_pct", 0.0, 20.0),
        (Kind::StepUpActive, "transformer_drop_pct", 0.0, 20.0),
        (Kind::Doubling, "output_pct", 50.0, 110.0),
        (Kind::LargeEconomy, "output_pct", 50.0, 110.0),
        (Kind::Doubling, "bus_v_240", 100.0, 2000.0),
        (Kind::Doubling, "bus_v_480", 100.0, 2000.0),
        (Kind::ThreePhaseLine, "bus_rise", 1.0, 1.3),
        (Kind::RotaryConverter, "locked_rotor", 1.0, 12.0),
        (Kind::Doubling, "rated_c", 20.0, 60.0),
        (Kind::Doubling, "per_c_pct", 0.0, 10.0),
        (Kind::Doubling, "to_c_above", 0.0, 25.0),
        (Kind::Doubling, "rated_m", 0.0, 5000.0),
        (Kind::Doubling, "per_100_m_pct", 0.0, 5.0),
        (Kind::Doubling, "highest_m", 0.0, 5000.0),
        (Kind::Doubling, "price_usd", 0.0, 1e7),
        (Kind::Doubling, "short_circuit_ka", 1.0, 200.0),
    ];
    for (kind, column, min, max) in ranges {
        for given in [-7.5, max * 1.5, max + 0.001] {
            let expected = TableFault::OutOfRange { given, min, max };
            // Amperes need the size of their frame, which is looked at only when they are right.
            assert_eq!(cell(kind, column, &given.to_string()), expected, "{column}");
        }
    }
    let price = TableFault::OutOfRange { given: 1e9, min: 0.0, max: 1e6 };
    assert_eq!(cell(Kind::Doubling, "price_per_hp_usd", "1e9"), price);
}

#[test]
fn figures_that_do_not_go_together() {
    let head = "name,kind,hp,rated_m,highest_m,per_c_pct,to_c_above,per_100_m_pct\n";
    let outside = |given, min, max| TableFault::OutOfRange { given, min, max };
    let of = |rows: &str| refused(&format!("{head}{rows}"));
    // Highest before highest that is told: the generic one, in the family's first row.
    assert_eq!(of("A,doubling,,4000,,,,\n"), (2, Some("highest_m"), outside(3000.0, 4000.0, 5000.0)));
    let rows = "A,doubling,5,4000,,,,\nA,doubling,10,,3500,,,\nB,doubling,,,,,,\n";
    assert_eq!(of(rows), (3, Some("highest_m"), outside(3500.0, 4000.0, 5000.0)));
    assert_eq!(of("A,doubling,,,,8,20,\n"), (2, Some("to_c_above"), outside(20.0, 0.0, 12.5)));
    assert_eq!(of("A,doubling,,0,,,,4\n"), (2, Some("highest_m"), outside(3000.0, 0.0, 2500.0)));
    // Each of these is outside what the generic figures allow the other, and both go together.
    let low = one(&format!("{head}A,doubling,,4000,4500,,,\n"));
    assert_eq!((low.rating.altitude, low.rating.highest), (meters(4000.0), meters(4500.0)));
    let high = one(&format!("{head}A,doubling,,0,500,,,\n"));
    assert_eq!((high.rating.altitude, high.rating.highest), (meters(0.0), meters(500.0)));
}

#[test]
fn figures_that_the_kind_does_not_have() {
    use Kind::{
        ConvertingActive, ConvertingPassive, DeratedDrive, Doubling, LargeEconomy, LargeEconomyChoke, LargeLowHarmonic,
        RotaryConverter, SinglePhaseMotor, SolidStateConverter, StepUpActive, StepUpPassive, ThreePhaseGenerator,
        ThreePhaseLine,
    };
    let held = [ConvertingActive, Doubling, LargeLowHarmonic, StepUpActive];
    let charged = [
        ConvertingPassive,
        LargeEconomy,
        LargeEconomyChoke,
        DeratedDrive,
        StepUpPassive,
        ThreePhaseLine,
        ThreePhaseGenerator,
    ];
    let cases: [(&str, &str, &[Kind]); 6] = [
        ("filter_drop_pct", "4", &[Doubling, StepUpActive, StepUpPassive]),
        ("transformer_drop_pct", "3", &[StepUpActive, StepUpPassive]),
        ("bus_v_240", "380", &held),
        ("bus_v_480", "700", &held),
        ("bus_rise", "1.05", &charged),
        ("locked_rotor", "6", &[SolidStateConverter, RotaryConverter, SinglePhaseMotor]),
    ];
    for (column, figure, kinds) in cases {
        for kind in Kind::ALL {
            if kinds.contains(&kind) {
                assert_ne!(one(&with(kind, column, figure)), own(kind, "A"), "{column}");
            } else {
                assert_eq!(cell(kind, column, figure), TableFault::DoesNotApply);
            }
        }
    }
}

#[test]
fn rows_that_do_not_go_together() {
    use TableFault::{Contradicts, FrameMissing, FrameTwice, Unreadable};
    let head = "name,kind,hp,device_a,efficiency_pct,enclosure\n";
    let of = |rows: &str| refused(&format!("{head}{rows}"));
    assert_eq!(of("A,doubling,5,,95,\nA,doubling,10,,95.1,\n"), (3, Some("efficiency_pct"), Contradicts));
    assert_eq!(of("A,doubling,5,,,3R\nA,doubling,10,,,4\n"), (3, Some("enclosure"), Contradicts));
    assert_eq!(of("A,doubling,10,,,\nA,doubling,5,,,\nA,doubling,10.0,,,\n"), (4, Some("hp"), FrameTwice));
    assert_eq!(of("A,doubling,5,,,\nA,doubling,5.000000000001,,,\n"), (3, Some("hp"), FrameTwice));
    assert_eq!(of("A,doubling,5,,,\nA,doubling,,40,,\n"), (3, Some("hp"), FrameMissing));
    assert_eq!(of("A,doubling,5,,,\n\n,,,,,\nA,doubling,10,\n"), (5, None, Unreadable));
    assert_eq!(of("A,doubling,5,,,,\n"), (2, None, Unreadable));
    assert_eq!(of("B,doubling,5,,,\n\"A,doubling,5,,,\nA,doubling,10,,,\n"), (3, None, Unreadable));
    assert_eq!(of("B,doubling,5,,,\n\"A\"x,doubling,5,,,\n"), (3, None, Unreadable));
    assert_eq!(of("A\"x\",doubling,5,,,\n"), (2, None, Unreadable));
    assert_eq!(refused("name,\"kind\nA,doubling"), (1, None, Unreadable));
}

#[test]
fn too_much() {
    let rows = |count: usize, of: fn(usize) -> String| {
        format!("name,kind,hp\n{}", (0..count).map(|n| of(n) + "\n").collect::<String>())
    };
    let family = |n: usize| format!("Family {n},doubling,");
    assert_eq!(read(&rows(MOST_FAMILIES, family)).unwrap().len(), MOST_FAMILIES);
    assert_eq!(refused(&rows(MOST_FAMILIES + 1, family)), (MOST_FAMILIES + 2, None, TableFault::TooMany));
    let frame = |n: usize| format!("Family {},doubling,{}", n / 100, 250 - n % 100);
    assert_eq!(read(&rows(MOST_FRAMES, frame)).unwrap()[1].steps.len(), 100);
    assert_eq!(refused(&rows(MOST_FRAMES + 1, frame)), (MOST_FRAMES + 2, None, TableFault::TooMany));
    // One family has no more than a hundred.
    assert_eq!(refused(&rows(120, |n| format!("A,doubling,{}", n + 1))), (102, None, TableFault::TooMany));
    assert_eq!(refused(&rows(100_000, |_| "A,doubling,".to_owned())), (MOST_FRAMES + 2, None, TableFault::TooMany));
    // A quote that is never closed, and nothing but blank rows.
    let open = rows(100_000, |n| if n == 1 { "\"".to_owned() } else { "A,doubling,5".to_owned() });
    assert_eq!(refused(&open), (3, None, TableFault::Unreadable));
    assert_eq!(read(&rows(100_000, |_| ",,".to_owned())), Ok(Vec::new()));
}

#[test]
fn the_first_fault_is_told() {
    let text = "name,kind,hp,efficiency_pct\nA,doubling,5,x\nA,doubling,5,95\n,doubling,5\n";
    assert_eq!(refused(text), (2, Some("efficiency_pct"), TableFault::NotANumber("x".to_owned())));
    let text = text.replace(",x\n", ",200\n");
    let outside = TableFault::OutOfRange { given: 200.0, min: 50.0, max: 100.0 };
    assert_eq!(refused(&text), (2, Some("efficiency_pct"), outside));
}
