//! Any text at all in a number field, as at the other doors of the program (`tests/fuzz`): a number, a reason, or nothing.
#![allow(clippy::print_stdout)]
#[path = "../../../tests/fuzz/spoil.rs"]
mod spoil;

use super::{Decimals, Language, NotRead, read, speak};
use spoil::{Trial, corpus, spoiled};
use wellwright_core::job::Field;
use wellwright_core::numeric::pcg::Pcg32;
use wellwright_core::quantity::Kind;

/// Every kind of figure that a field holds.
fn kinds() -> Vec<Kind> {
    let mut found: Vec<Kind> = Vec::new();
    for kind in Field::ALL.map(|field| field.spec().accepted.unit.kind()) {
        if !found.contains(&kind) {
            found.push(kind);
        }
    }
    found
}

/// What is read is a number, and reads the same when it is written out plainly.
fn keeps_its_promise(text: &str, kind: Kind, decimals: Decimals) {
    speak(Language::English, decimals);
    match read(text, kind) {
        Ok(Some(found)) => {
            assert!(found.value.is_finite(), "{text:?} gives {found:?}");
            assert!(found.unit.is_none_or(|unit| unit.kind() == kind), "{text:?} gives {found:?}");
            let plain = format!("{}", found.value).replace('.', &decimals.sign().to_string());
            if plain.len() <= 17 {
                assert_eq!(
                    read(&plain, kind).map(|again| again.map(|again| again.value)),
                    Ok(Some(found.value)),
                    "{text:?}, {plain}"
                );
            }
        }
        Ok(None) => assert!(text.chars().all(|c| !c.is_alphanumeric()), "{text:?} is taken for none"),
        Err(NotRead::Unit(unit)) => assert!(!unit.is_empty(), "{text:?}"),
        Err(_) => {}
    }
}

#[test]
fn any_text_in_a_number_field_is_a_number_a_reason_or_nothing() {
    let (kept, kinds) = (corpus("number"), kinds());
    let mut chance = Pcg32::new(20_261_127, 9);
    let mut trial = Trial::of(20_000);
    while trial.goes_on() {
        let text = spoiled(&kept, &mut chance);
        let kind = kinds[chance.below(kinds.len() as u32) as usize];
        let decimals = [Decimals::Point, Decimals::Comma][chance.below(2) as usize];
        keeps_its_promise(&text, kind, decimals);
    }
    speak(Language::English, Decimals::Point);
    println!("number: {} texts", trial.tried);
}
