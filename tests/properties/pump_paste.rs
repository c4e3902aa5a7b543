//! Pasted pump curves: what is read, what is refused and where, and that no text stops the reader.

use super::tried;
use proptest::prelude::*;
use wellwright_core::pump::curve::Quantity;
use wellwright_core::pump::paste::{ColumnUnit, MOST_POINTS, PasteError, PasteFault, Pasted, read, with_units};
use wellwright_core::quantity::{
    in_cubic_meters_per_hour, in_feet, in_gpm, in_horsepower, in_liters_per_second, in_watts,
};

fn pasted(text: &str) -> Result<Pasted, PasteError> {
    read(text, ColumnUnit::Gpm, ColumnUnit::Foot)
}

fn refused(text: &str) -> (usize, usize, PasteFault) {
    let error = pasted(text).unwrap_err();
    (error.line, error.column, error.fault)
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * b.abs()
}

fn units(text: &str) -> Vec<(ColumnUnit, bool)> {
    pasted(text).unwrap().columns.iter().map(|column| (column.unit, column.told)).collect()
}

#[test]
fn tabs_commas_semicolons_and_spaces() {
    for text in
        ["0\t820\t0\n25\t676.5\t60", "0,820,0\r\n25,676.5,60\r\n", "0; 820 ;0\n25;676,5;60", " 0 820  0\n25 676.5 60"]
    {
        let read = pasted(text).unwrap();
        let last = read.points[1];
        assert!(close(in_gpm(last.flow), 25.0) && close(in_feet(last.head), 676.5), "{text:?}: {last:?}");
        assert!(last.efficiency.is_some_and(|share| close(share, 0.60)) && read.points.len() == 2, "{text:?}");
        assert_eq!(
            units(text),
            [(ColumnUnit::Gpm, false), (ColumnUnit::Foot, false), (ColumnUnit::Percent, false)],
            "{text:?}"
        );
    }
}

#[test]
fn headings_tell_units_in_any_order() {
    let text = "\u{feff}# an invented pump\n\nPower (kW)\tHead [m]\tFlow (m³/h)\tEff. %\n2,2\t100,5\t3,6\t45\n2,5\t90\t5,4\t52 %\n";
    let read = pasted(text).unwrap();
    let first = read.points[0];
    assert!(close(in_cubic_meters_per_hour(first.flow), 3.6) && close(in_liters_per_second(first.flow), 1.0));
    assert!(close(in_feet(first.head), 100.5 / 0.3048));
    assert!(first.power.is_some_and(|power| close(in_watts(power), 2200.0)));
    assert!(read.points[1].efficiency.is_some_and(|share| close(share, 0.52)));
    assert!(read.columns.iter().all(|column| column.told));
    for heading in ["gpm,ft,hp", "Flow,Head,Power\ngpm,ft,hp", "USGPM,Feet,BHP", "Q (gpm),TDH (ft),P (hp)"] {
        let read = pasted(&format!("{heading}\n25,676,7.1\n")).unwrap();
        assert!(read.points[0].power.is_some_and(|power| close(in_horsepower(power), 7.1)), "{heading}");
    }
    assert_eq!(units("Caudal;Carga\n1,5;80"), [(ColumnUnit::Gpm, false), (ColumnUnit::Foot, false)]);
    assert_eq!(units("L/s;m\n1,5;80"), [(ColumnUnit::LiterPerSecond, true), (ColumnUnit::Meter, true)]);
    for heading in ["m3/h", "M3/H", "m^3/h", "m³/hr", "(cmh)"] {
        assert_eq!(units(&format!("{heading}\tm\n1\t80"))[0], (ColumnUnit::CubicMeterPerHour, true), "{heading}");
    }
}

#[test]
fn faults_name_line_and_column() {
    let cell = |cell: &str| cell.to_owned();
    assert_eq!(refused(""), (1, 1, PasteFault::NoPoints));
    assert_eq!(refused("gpm,ft\n# no points\n"), (1, 1, PasteFault::NoPoints));
    assert_eq!(refused("0,820\n10,x7"), (2, 2, PasteFault::NotANumber { cell: cell("x7") }));
    assert_eq!(refused("gpm\tft\n0\t820\n\n5\t8.1.2"), (4, 2, PasteFault::NotANumber { cell: cell("8.1.2") }));
    assert_eq!(refused("0;820\n;800"), (2, 1, PasteFault::NotANumber { cell: cell("") }));
    assert_eq!(refused("0,820\n1e999,800"), (2, 1, PasteFault::NotANumber { cell: cell("1e999") }));
    assert_eq!(refused("0,820\nNaN,800"), (2, 1, PasteFault::NotANumber { cell: cell("NaN") }));
    assert_eq!(refused("0,820\n10"), (2, 2, PasteFault::Cells { given: 1, wanted: 2 }));
    assert_eq!(refused("0,820\n10,800,50"), (2, 3, PasteFault::Cells { given: 3, wanted: 2 }));
    assert_eq!(refused("17"), (1, 1, PasteFault::Cells { given: 1, wanted: 2 }));
    assert_eq!(refused("1,2,3,4,5"), (1, 5, PasteFault::Cells { given: 5, wanted: 4 }));
    assert_eq!(refused("gpm,ft,psi\n1,2,3"), (1, 3, PasteFault::Unit { cell: cell("psi") }));
    assert_eq!(refused("Flow (l/min),ft\n1,2"), (1, 1, PasteFault::Unit { cell: cell("Flow (l/min)") }));
    assert_eq!(refused("imp gpm,ft\n1,2"), (1, 1, PasteFault::Unit { cell: cell("imp gpm") }));
    assert_eq!(refused("Flow,Head,NPSH\n1,2,3"), (1, 3, PasteFault::Unit { cell: cell("NPSH") }));
    assert_eq!(refused("1,2,3,4"), (1, 4, PasteFault::Unit { cell: cell("") }));
    assert_eq!(refused("gpm,ft,m\n1,2,3"), (1, 3, PasteFault::Twice { quantity: Quantity::Head }));
    assert_eq!(refused("%,ft\n1,2"), (1, 1, PasteFault::Lacks { quantity: Quantity::Flow }));
    assert_eq!(refused("gpm,kW\n1,2"), (1, 1, PasteFault::Lacks { quantity: Quantity::Head }));
    let many = "1,2\n".repeat(MOST_POINTS + 1);
    assert_eq!(refused(&many), (MOST_POINTS + 1, 1, PasteFault::TooManyPoints));
    let long = format!("1,2\n3,{}", "z".repeat(1000));
    assert_eq!(refused(&long).2, PasteFault::NotANumber { cell: "z".repeat(40) });
}

// 1,200 may be one and a fifth or twelve hundred; 12,5 elsewhere says which.
#[test]
fn units_that_are_chosen_are_written_so_that_they_are_read() {
    use ColumnUnit as U;
    for text in ["0\t250\n3\t110", "0;250\n3;110", "0,250\n3,110", "0 250\n3 110"] {
        for flow in [U::Gpm, U::LiterPerSecond, U::CubicMeterPerHour] {
            for head in [U::Foot, U::Meter] {
                let told = with_units(text, flow, head);
                assert_eq!(units(&told), [(flow, true), (head, true)], "{told:?}");
            }
        }
    }
}

/// A heading beyond the last column of figures.
#[test]
fn a_unit_without_a_column_is_refused() {
    assert_eq!(refused("gpm,ft,%\n1,2\n3,1"), (1, 3, PasteFault::Cells { given: 3, wanted: 2 }));
}

#[test]
fn a_comma_that_may_part_thousands_is_refused() {
    assert_eq!(refused("0\t820\n1,200\t700"), (2, 1, PasteFault::Ambiguous { cell: "1,200".into() }));
    assert_eq!(refused("0;820\n10;1,200"), (2, 2, PasteFault::Ambiguous { cell: "1,200".into() }));
    let read = pasted("0;820\n1,200;700\n2,5;600").unwrap();
    assert!(close(in_gpm(read.points[1].flow), 1.2));
    let read = pasted("0;820\n0,125;700").unwrap();
    assert!(close(in_gpm(read.points[1].flow), 0.125));
    assert_eq!(refused("0;820\n1,200.5;700\n2,5;600").0, 2);
}

/// Text of the pieces that such text is made of, and of anything else.
/// Four digits before it, none, or a zero: no comma of thousands stands so. What is no number settles nothing.
#[test]
fn a_comma_that_can_not_part_thousands_is_a_decimal_one() {
    for (text, head) in [("0;1300\n25;1234,567", 1234.567), ("0;2\n25;0,250", 0.25), ("0;2\n25;,500", 0.5)] {
        let read = pasted(text).unwrap();
        assert!(close(in_feet(read.points[1].head), head), "{text:?}");
    }
    let ambiguous = PasteFault::Ambiguous { cell: "1,234".to_owned() };
    for text in ["0;1,234\n25;x,5", "0;1,234\n25;5,x", "0;1,234\n25;1,5x"] {
        assert_eq!(refused(text), (1, 2, ambiguous.clone()), "{text:?}");
    }
}

fn text() -> impl Strategy<Value = String> {
    let piece = prop_oneof![
        4 => "[0-9]{1,4}".prop_map(String::from),
        2 => prop::sample::select(vec!["\n", "\t", ",", ";", " ", ".", "-", "+", "e", "%", "#", "\r\n"]).prop_map(str::to_owned),
        1 => prop::sample::select(vec!["gpm", "L/s", "m3/h", "m³/h", "ft", "m", "hp", "kW", "(", ")", "NaN", "inf", "1e400", "\u{feff}", "\0", "𝟙", "٣"]).prop_map(str::to_owned),
        1 => any::<String>(),
    ];
    prop::collection::vec(piece, 0..60).prop_map(|pieces| pieces.concat())
}

proptest! {
    #![proptest_config(tried(2000))]

    #[test]
    fn no_text_stops_the_reader(text in text()) {
        match pasted(&text) {
            Ok(read) => {
                prop_assert!((2..=4).contains(&read.columns.len()) && !read.points.is_empty());
                for point in read.points {
                    let figures = [Some(point.flow.value), Some(point.head.value), point.efficiency, point.power.map(|p| p.value)];
                    prop_assert!(figures.iter().flatten().all(|figure| figure.is_finite()), "{point:?}");
                }
            }
            Err(error) => {
                prop_assert!(error.line >= 1 && error.line <= text.lines().count().max(1), "{error:?}");
                prop_assert!(error.column >= 1, "{error:?}");
            }
        }
    }

    // What is written is what is read, whatever parts the cells.
    #[test]
    fn what_is_written_is_read(rows in prop::collection::vec((0.0..2000.0f64, 0.0..3000.0f64, 0.0..100.0f64), 1..40), mark in prop::sample::select(vec!["\t", ";", ",", " "]), comma in any::<bool>()) {
        let written = |value: f64| {
            // Four decimals: a comma with three digits after it may part thousands.
            let text = format!("{value:.4}");
            if comma && mark != "," && mark != " " { text.replace('.', ",") } else { text }
        };
        let lines: Vec<String> = rows.iter().map(|row| [row.0, row.1, row.2].map(written).join(mark)).collect();
        let read = pasted(&lines.join("\n")).unwrap();
        prop_assert_eq!(read.points.len(), rows.len());
        for (point, row) in read.points.iter().zip(&rows) {
            prop_assert!((in_gpm(point.flow) - row.0).abs() < 1e-4 && (in_feet(point.head) - row.1).abs() < 1e-4);
            prop_assert!((point.efficiency.unwrap() * 100.0 - row.2).abs() < 1e-4);
        }
    }
}
