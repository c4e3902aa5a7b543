//! What is read and written, and that no text stops the reader.

use super::*;
use crate::power::family::{Bus, Change, Filter, OutputRule, Start, Step};
use crate::quantity::{amperes, meters};
use crate::standards::enclosure::EnclosureType;
use crate::table::chance::{Chance, is_line};

#[cfg(test)]
mod refused;

fn one(text: &str) -> Family {
    let mut families = read(text).unwrap();
    assert_eq!(families.len(), 1, "{text}");
    families.remove(0)
}

/// A family of one row with one figure beside its name and kind.
fn with(kind: Kind, column: &str, cell: &str) -> String {
    format!("name,kind,{column}\nA,{},{cell}\n", word(kind))
}

#[test]
fn a_kind_has_the_word_that_files_have() {
    for kind in Kind::ALL {
        assert_eq!(serde_json::to_value(kind).unwrap(), word(kind));
        assert_eq!(one(&format!("name,kind\nA,{}", word(kind))), own(kind, "A"));
    }
}

#[test]
fn a_blank_text_has_no_family() {
    for text in ["", " \r\n\t\n", "\u{feff}", ",,\n,,\n", "name,kind\n", "kind;name;hp\r\n;;\r\n"] {
        assert_eq!(read(text), Ok(Vec::new()), "{text:?}");
    }
    assert_eq!(write(&[]), "");
}

#[test]
fn every_figure_of_a_family_is_read() {
    type Edit = fn(&mut Family);
    let active = Kind::StepUpActive;
    let cases: [(Kind, &str, &str, Edit); 22] = [
        (active, "displacement", "0.975", |f| f.input.displacement = 0.975),
        (active, "thd_pct", "12.3", |f| f.input.distortion = 0.123),
        (active, "efficiency_pct", "95.4", |f| f.input.efficiency = 0.954),
        (active, "capacity_pct", "70", |f| f.capacity = 0.7),
        (active, "filter_drop_pct", "3.5", |f| f.filter = Filter::Sine { share: 0.035, built_in: false }),
        (active, "transformer_drop_pct", "4.5", |f| f.change = Change::SteppedUp { drop: 0.045 }),
        (active, "output_pct", "85", |f| f.output = OutputRule::Held { floor: 0.85 }),
        (Kind::LargeEconomy, "output_pct", "91", |f| f.output = OutputRule::Follows { share: 0.91 }),
        (active, "bus_v_240", "375", |f| f.bus = Bus::Held { low: 375.0, high: 720.0 }),
        (active, "bus_v_480", "735", |f| f.bus = Bus::Held { low: 370.0, high: 735.0 }),
        (Kind::LargeEconomy, "bus_rise", "1.08", |f| f.bus = Bus::Peak { rise: 1.08 }),
        (Kind::ThreePhaseLine, "bus_rise", "1.05", |f| f.bus = Bus::Mean { rise: 1.05 }),
        (Kind::RotaryConverter, "locked_rotor", "6", |f| f.start = Start::AcrossTheLine { multiple: 6.0 }),
        (active, "rated_c", "50", |f| f.rating.ambient.0 = 50.0),
        (active, "per_c_pct", "2.5", |f| f.rating.per_degree = 0.025),
        (active, "to_c_above", "15", |f| f.rating.degrees = 15.0),
        (active, "rated_m", "1200", |f| f.rating.altitude = meters(1200.0)),
        (active, "per_100_m_pct", "0.9", |f| f.rating.per_100_m = 0.009),
        (active, "highest_m", "2500", |f| f.rating.highest = meters(2500.0)),
        (active, "price_usd", "1850.5", |f| f.price.get_or_insert_default().fixed.0 = 1850.5),
        (active, "price_per_hp_usd", "199", |f| f.price.get_or_insert_default().per_hp.0 = 199.0),
        (active, "short_circuit_ka", "22.5", |f| f.marking.short_circuit = Some(amperes(22_500.0))),
    ];
    for (kind, column, cell, change) in cases {
        let mut expected = own(kind, "A");
        change(&mut expected);
        assert_ne!(expected, own(kind, "A"));
        assert_eq!(one(&with(kind, column, cell)), expected, "{column}");
    }
    for cell in ["3R", "3r"] {
        let marked = one(&with(active, "enclosure", cell)).marking;
        assert_eq!(marked.enclosure, Some(EnclosureType::T3R));
    }
}

#[test]
fn frames_are_read_in_any_order_and_sorted() {
    let text = "HP, Device_A ,input_a,output_a_480,output_a_240,KIND,name\n\
                20,100,75,28,,Large_Economy,Well drive\n\
                ,,,,,large_economy, Well drive \n\
                7.5,,,11.5,22,large_economy,Well drive\n";
    let frames = [
        Step { low: Some(22.0), high: Some(11.5), ..Step::sized(7.5) },
        Step { high: Some(28.0), input: Some(75.0), device: Some(100.0), ..Step::sized(20.0) },
    ];
    assert_eq!(one(text), Family { steps: frames.to_vec(), ..own(Kind::LargeEconomy, "Well drive") });
}

#[test]
fn the_first_row_that_has_a_figure_tells_it() {
    let text = "name,kind,hp,efficiency_pct,enclosure\n\
                A,large_economy,20,,\nA,large_economy,15,96,3R\nA,large_economy,25,96.0,3r\n\
                B,large_economy,,,\n";
    let families = read(text).unwrap();
    assert_eq!(families[0].input.efficiency, 0.96);
    assert_eq!(families[0].marking.enclosure, Some(EnclosureType::T3R));
    assert_eq!(families[0].steps, [15.0, 20.0, 25.0].map(Step::sized));
    assert_eq!(families[1], own(Kind::LargeEconomy, "B"));
}

#[test]
fn separators_marks_and_ends_of_line() {
    let commas = "\u{feff}name,kind,hp,output_a_480,price_usd\n\"Drive, 1\",large_economy,7.5,11.5,1250\n\n";
    let expected = one(commas);
    assert_eq!((expected.name.as_str(), expected.price.unwrap().fixed.0), ("Drive, 1", 1250.0));
    assert_eq!(one(&commas.replace('\n', "\r\n")), expected);
    assert_eq!(one(&commas.replace('\n', "\r")), expected);
    for mark in ["\t", ";"] {
        let text = commas.replace("\"Drive, 1\"", "Drive# 1").replace(',', mark).replace('#', ",");
        assert_eq!(one(&text), expected, "{mark:?}");
        assert_eq!(one(&text.replace('.', ",")), expected, "{mark:?}");
    }
}

/// A family of a kind, every figure of it another than the generic one.
fn changed(kind: Kind, name: &str) -> Family {
    let mut family = own(kind, name);
    for figure in &column::FIGURES {
        let usual = (figure.of)(&family);
        let new = match figure.name {
            "short_circuit_ka" => 100_000.0 / 3.0,
            "efficiency_pct" => 0.95 * 0.97 * 0.99,
            "bus_rise" => 1.0 + 0.1 / 3.0,
            _ => usual.map_or(0.0, |usual| usual * 0.987_654_321),
        };
        // False where the kind has no such figure.
        (figure.set)(&mut family, new);
    }
    for step in &mut family.steps {
        *step = Step { low: Some(step.hp * 2.8), high: Some(step.hp * 1.4), ..Step::sized(step.hp * 1.01) };
    }
    family.steps[0].input = Some(17.0 / 3.0);
    family.steps[0].device = Some(40.0);
    family.marking.enclosure = Some(EnclosureType::T12K);
    family
}

#[test]
fn every_kind_is_read_back_bit_for_bit() {
    for kind in Kind::ALL {
        for family in [own(kind, "A"), changed(kind, "A")] {
            assert_eq!(family.clone().checked(), Ok(family.clone()));
            let text = write(std::slice::from_ref(&family));
            let read = read(&text).unwrap();
            assert_eq!(read, std::slice::from_ref(&family), "{text}");
            assert_eq!(write(&read), text);
        }
    }
    let all: Vec<Family> = Kind::ALL.iter().map(|kind| changed(*kind, word(*kind))).map(of_ten_frames).collect();
    let text = write(&all);
    assert_eq!(read(&text), Ok(all));
}

fn of_ten_frames(mut family: Family) -> Family {
    family.steps.truncate(10);
    family
}

#[test]
fn what_is_generic_is_left_blank() {
    let mut well = own(Kind::LargeEconomy, "Well \"A\", drive");
    well.steps = vec![Step { high: Some(22.5), ..Step::sized(15.0) }, Step::sized(20.0)];
    well.input.efficiency = 0.954;
    let mut motor = own(Kind::SinglePhaseMotor, "Motor");
    motor.marking.short_circuit = Some(amperes(5000.0));
    motor.marking.enclosure = Some(EnclosureType::T4X);
    let text = "name,kind,hp,output_a_240,output_a_480,input_a,device_a,efficiency_pct,short_circuit_ka,enclosure\n\
                \"Well \"\"A\"\", drive\",large_economy,15,,22.5,,,95.4,,\n\
                \"Well \"\"A\"\", drive\",large_economy,20,,,,,,,\n\
                Motor,single_phase_motor,,,,,,,5,4X\n";
    assert_eq!(write(&[well.clone(), motor.clone()]), text);
    assert_eq!(read(text), Ok(vec![well, motor]));
}

#[test]
fn no_name_is_a_formula() {
    for name in ["=1+1", "+A", "-A", "@A", "＝A", "'=A", "''@A"] {
        let text = write(&[own(Kind::Doubling, name)]);
        assert!(text.contains(&format!("\n'{name},doubling,")), "{text}");
        assert_eq!(one(&text).name, name);
        assert_eq!(one(&format!("name,kind\n{name},doubling")).name, name.strip_prefix('\'').unwrap_or(name));
    }
    for name in ["'A", "A=1", "''", "5\" casing", "a;b", "ñandú"] {
        let text = write(&[own(Kind::Doubling, name)]);
        assert!(!text.contains("\n''A") && one(&text).name == name, "{text}");
    }
    let text = write(&[own(Kind::Doubling, "  A\nB\t\u{202e}C\u{0} ")]);
    assert_eq!(one(&text).name, "A B  C");
}

/// A table of a few rows, right or nearly, with a few pieces put in anywhere.
fn any_table(chance: &mut Chance) -> String {
    let mark = chance.one_of(&[",", ";", "\t"]);
    let end = chance.one_of(&["\n", "\r\n", "\r"]);
    let columns: [(&str, &[&str]); 7] = [
        ("name", &["A", "A", "A", "B", "'=A"]),
        ("kind", &["doubling", "doubling", "doubling", "Large_Economy"]),
        ("hp", &["5", "7.5", "10", "15", ""]),
        ("output_a_480", &["", "", "22.5"]),
        ("rated_m", &["", "", "1500", "4000"]),
        ("highest_m", &["", "", "4500"]),
        ("efficiency_pct", &["", "", "95.4"]),
    ];
    let mut text = columns.map(|(name, _)| name).join(mark) + end;
    for _ in 0..chance.below(4) {
        text += &(columns.map(|(_, cells)| chance.one_of(cells)).join(mark) + end);
    }
    chance.spoiled(text, &["hp"])
}

#[test]
fn no_text_stops_the_reader() {
    let mut chance = Chance(20_260_214);
    let (mut taken, mut refused) = (0, 0);
    for _ in 0..4000 {
        let text = any_table(&mut chance);
        match read(&text) {
            Ok(families) => {
                taken += usize::from(!families.is_empty());
                for family in &families {
                    assert_eq!(family.clone().checked().as_ref(), Ok(family), "{text:?}");
                }
                assert_eq!(read(&write(&families)), Ok(families), "{text:?}");
            }
            Err(error) => {
                refused += 1;
                assert!(is_line(error.row, &text), "{text:?}: {error:?}");
            }
        }
    }
    assert!(taken > 400 && refused > 400, "{taken} taken, {refused} refused");
}
