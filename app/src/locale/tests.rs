//! Numbers and words by language.

use super::language::{Decimals, Language, speak, words};
use super::number::{grouped, plain};
use super::{entry_text, error_text, finding_text, money};
use wellwright_core::error::InputError;
use wellwright_core::finding::Finding;
use wellwright_core::job::{Field, Way};
use wellwright_core::quantity::{Entry, Money, Unit, UnitSystem};

/// Runs a check in a language; the thread is left in English.
fn in_language(language: Language, decimals: Decimals, check: impl FnOnce()) {
    speak(language, decimals);
    check();
    speak(Language::English, Decimals::Point);
}

#[test]
fn numbers_follow_the_way_in_force() {
    in_language(Language::Spanish, Decimals::Comma, || {
        assert_eq!(grouped(-1_234_567.5, 1), "\u{2212}1.234.567,5");
        assert_eq!(money(Money(-1445.91), 2), "\u{2212}$1.445,91");
        assert_eq!(money(Money(-0.001), 2), "$0,00");
        assert_eq!(entry_text(Entry::new(7.5, Unit::Horsepower), UnitSystem::Us), "7,5\u{a0}hp");
        assert_eq!(plain(-1234.5, 2), "-1234,50");
    });
    in_language(Language::Spanish, Decimals::Point, || assert_eq!(grouped(1234.5, 1), "1,234.5"));
    assert_eq!(plain(1234.5, 2), "1234.50");
}

#[test]
fn errors_and_findings_speak_the_language() {
    let range = Field::PumpSetting.spec().accepted;
    let error = InputError::Missing { field: Field::PumpSetting, accepted: range };
    let finding = Finding::CableNoSize { way: Way::V480 };
    let both = || (error_text(&error, UnitSystem::Us), finding_text(&finding, UnitSystem::Us));
    let (english, found) = both();
    assert_eq!(english, "Enter a value, 0\u{a0}ft to 3,000\u{a0}ft.");
    assert!(found.starts_with("No listed size"));
    in_language(Language::Spanish, Decimals::Point, || {
        let (spanish, found) = both();
        assert_eq!(spanish, "Escriba un valor, 0\u{a0}ft a 3,000\u{a0}ft.");
        assert!(found.starts_with("Opción de 480\u{a0}V: ningún calibre"));
    });
}

/// Every field has a label in both languages, and no two fields share one.
#[test]
fn every_field_has_its_own_label() {
    for language in Language::ALL {
        in_language(language, Decimals::Point, || {
            let mut labels: Vec<_> = Field::ALL.iter().map(|field| (words().fields.label)(*field)).collect();
            assert!(labels.iter().all(|label| !label.is_empty()), "{labels:?}");
            labels.sort_unstable();
            let before = labels.len();
            labels.dedup();
            assert_eq!(labels.len(), before, "{labels:?}");
        });
    }
}
