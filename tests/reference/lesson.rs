//! The lesson's sums against what handbooks of the trade print, and one lesson worked by hand.

use wellwright_core::cable::drop::{Load, Phases};
use wellwright_core::cable::needed::{allowed_resistance, needed_area, warm_resistance};
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::Way;
use wellwright_core::papers::{example, lesson};
use wellwright_core::quantity::{
    amperes, circular_mils, feet, in_amperes, in_circular_mils, in_ohms_per_kilofoot, in_volts, in_watts, volts,
};
use wellwright_core::standards::conductor::{Metal, Size};

/// The trade's K, ohms of a circular mil a foot at 75 °C: 12.9 for copper and 21.2 for aluminum, as every handbook of
/// voltage drop prints them (common practice, no single source); and each row of NEC chapter 9 table 8 times its area.
#[test]
fn resistance_by_area_is_that_of_the_handbooks() {
    for (metal, k) in [(Metal::Copper, 12.9), (Metal::Aluminum, 21.2)] {
        let found = in_ohms_per_kilofoot(warm_resistance(metal, circular_mils(1000.0)).unwrap());
        assert!((found / k - 1.0).abs() < 0.005, "{found} against {k}");
        for size in Size::ALL {
            let row = size.row();
            let of_row = in_ohms_per_kilofoot(row.resistance(metal)) * row.cmil / 1000.0;
            assert!((found / of_row - 1.0).abs() < 0.006, "{size:?}: {found} against {of_row}");
        }
    }
}

/// CM = √3 K I L / ΔV, the rule of the handbooks, worked by hand: 28 A over 500 ft, 12 V of 240 V, copper, power factor 1:
/// 1.732 · 12.9 · 28 · 500 / 12 = 26,068; at a power factor of 0.84: 21,897.
#[test]
fn area_by_drop_is_the_rule_of_the_handbooks() {
    for (power_factor, by_hand) in [(1.0, 26_068.0), (0.84, 21_897.0)] {
        let load = Load { sending: volts(240.0), current: amperes(28.0), power_factor, phases: Phases::Three };
        let found = in_circular_mils(needed_area(load, feet(500.0), 0.05, Metal::Copper).unwrap());
        assert!((found / by_hand - 1.0).abs() < 0.005, "{found} against {by_hand}");
    }
}

#[test]
fn what_cannot_be_worked_out_is_named() {
    let load = Load { sending: volts(240.0), current: amperes(28.0), power_factor: 0.8, phases: Phases::Three };
    let error = |load, length, allowed| allowed_resistance(load, length, allowed).unwrap_err().argument;
    assert_eq!(error(load, feet(0.0), 0.05), "length");
    assert_eq!(error(load, feet(f64::NAN), 0.05), "length");
    assert_eq!(error(load, feet(500.0), 0.0), "allowed");
    assert_eq!(error(Load { current: amperes(0.0), ..load }, feet(500.0), 0.05), "current");
    assert_eq!(error(Load { power_factor: 0.0, ..load }, feet(500.0), 0.05), "power_factor");
    assert_eq!(error(Load { sending: volts(0.0), ..load }, feet(500.0), 0.05), "sending");
}

/// The example worked by hand: 7.5 hp, 620 ft, 5 %, copper, with the assumed efficiency 0.78 and power factor 0.80.
///
/// P = 7.5 · 745.7 / 0.78 = 7,170 W; I = P/(√3 V PF) = 22.50 A at 230 V. NEC table 430.250: 22 A and 11 A. In 6 AWG
/// (table 8: 0.491 Ω, table 9: 0.051 Ω a thousand feet in PVC) √3 · 22 · 0.62 · (0.491 · 0.80 + 0.051 · 0.60) = 10.00 V,
/// 4.17 % of 240 V. Area: 1.732 · 12.9 · 22 · 620 · 0.80 / 12 = 20,318 cmil, between 8 AWG (16,510) and 6 AWG (26,240);
/// a quarter of it, 5,080, between 14 AWG (4,110) and 12 AWG (6,530). Heat: 1.25 · 22 = 27.5 A and 13.75 A.
#[test]
fn the_example_is_as_worked_by_hand() {
    let found = lesson(&evaluate(&example())).unwrap();
    let near = |value: f64, by_hand: f64, share: f64| {
        assert!((value / by_hand - 1.0).abs() < share, "{value} against {by_hand}");
    };
    near(in_watts(found.input), 7170.0, 1e-4);
    let [low, high] = found.ways;
    near(in_amperes(low.by_power), 22.50, 1e-3);
    near(in_amperes(high.by_power), 11.25, 1e-3);
    assert_eq!([low, high].map(|way| in_amperes(way.current)), [22.0, 11.0]);
    assert_eq!([low, high].map(|way| in_amperes(way.required)), [27.5, 13.75]);
    near(in_volts(low.lost), 10.00, 2e-3);
    near(100.0 * low.lost_share, 4.17, 2e-3);
    near(in_circular_mils(low.area), 20_318.0, 0.005);
    near(in_circular_mils(high.area), 5_080.0, 0.005);
    let sizes = Way::ALL.map(|way| found.way(way).here.run.run.conductor.size);
    assert_eq!(sizes, [Size::Awg6, Size::Awg12]);
}
