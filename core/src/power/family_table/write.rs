//! Families written as a table.

use super::column::{AMPERES, ENCLOSURE, FIGURES, Figure, HP, KIND, NAME};
use super::word;
use crate::power::family::{Family, Step};
use crate::power::generic::generic;
use crate::table::{cell_of, plain};

/// Families as a table that [`read`](super::read()) takes, each under its name; nothing for no family.
///
/// A figure that is the generic one is left blank, generic frames too. A column of blanks is left out, those of the
/// frames aside. Numbers are the shortest that are read back bit for bit.
///
/// # Units
/// As the columns tell.
/// # Range
/// Families that [`Family::checked`] accepts, each with a name of its own, are read back the same within the limits of
/// the table. What no column holds (supply, change of class, kinds of filter, bus and start) is that of the kind.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::power::{family::Kind, family_table::*};
/// let mut family = own(Kind::LargeEconomy, "=mine");
/// family.input.efficiency = 0.955;
/// let text = write(&[family.clone()]);
/// let head = "name,kind,hp,output_a_240,output_a_480,input_a,device_a,efficiency_pct";
/// assert_eq!(text, format!("{head}\n'=mine,large_economy,,,,,,95.5\n"));
/// assert_eq!(read(&text), Ok(vec![family]));
/// ```
#[must_use]
pub fn write(families: &[Family]) -> String {
    if families.is_empty() {
        return String::new();
    }
    let pairs: Vec<(&Family, Family)> = families.iter().map(|family| (family, generic(family.kind))).collect();
    let in_use = |figure: &&Figure| pairs.iter().any(|(family, usual)| told(figure, family, usual).is_some());
    let figures: Vec<&Figure> = FIGURES.iter().filter(in_use).collect();
    let enclosures = families.iter().any(|family| family.marking.enclosure.is_some());

    let names = [NAME, KIND, HP].into_iter().chain(AMPERES.iter().map(|amperes| amperes.name));
    let names = names.chain(figures.iter().map(|figure| figure.name)).chain(enclosures.then_some(ENCLOSURE));
    let mut text = names.collect::<Vec<_>>().join(",") + "\n";
    for (family, usual) in &pairs {
        for (place, step) in steps(family, usual).into_iter().enumerate() {
            let mut cells = vec![cell_of(&family.name, ','), word(family.kind).to_owned()];
            cells.extend(frame(step));
            let first = place == 0;
            cells.extend(figures.iter().map(|figure| {
                let value = told(figure, family, usual).filter(|_| first);
                value.map_or_else(String::new, |value| plain(value, -figure.places))
            }));
            if enclosures {
                let kind = family.marking.enclosure.filter(|_| first);
                cells.push(kind.map_or_else(String::new, |kind| kind.row().name.to_owned()));
            }
            text += &(cells.join(",") + "\n");
        }
    }
    text
}

/// A figure that is not the generic one.
fn told(figure: &Figure, family: &Family, usual: &Family) -> Option<f64> {
    (figure.of)(family).filter(|value| Some(*value) != (figure.of)(usual))
}

/// A row for each frame; one for all where they are the generic ones.
fn steps(family: &Family, usual: &Family) -> Vec<Option<Step>> {
    if family.steps == usual.steps { vec![None] } else { family.steps.iter().copied().map(Some).collect() }
}

fn frame(step: Option<Step>) -> [String; 5] {
    let mut step = step;
    let mut figures = [step.map(|step| step.hp); 5];
    for (place, amperes) in AMPERES.iter().enumerate() {
        figures[place + 1] = step.as_mut().and_then(|step| *(amperes.slot)(step));
    }
    figures.map(|figure| figure.map_or_else(String::new, |value| plain(value, 0)))
}
