//! How the rows of a price book are grouped and called.

use crate::locale::{build_name, equipment_name, remedy_name, unit_word, words};
use wellwright_core::cost::book::{BookUnit, Build, Equipment, Remedy};
use wellwright_core::cost::book_table::{Cells, KIND, METAL, SIZE, UNIT, Word, choices};
use wellwright_core::numeric::order::by_number;
use wellwright_core::standards::conductor::Metal;

/// Rows that are folded away together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    /// Cable.
    Cable,
    /// Drives and converters.
    Equipment,
    /// What stands ahead of a long lead, and the transformer.
    Remedies,
    /// Line extension and labor.
    Line,
    /// Rows whose item is not known.
    Unknown,
}

/// Rows under one heading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Section {
    /// Cable by its metal.
    ByMetal,
    /// Whole cables.
    Quoted,
    /// Equipment, by its place among all.
    Equipment(usize),
    /// A remedy, by its place among all.
    Remedy(usize),
    /// The transformer.
    Transformer,
    /// The line extension.
    Line,
    /// Labor.
    Labor,
    /// What is not known.
    Unknown,
}

impl Group {
    /// Every group, in the order of the page.
    pub const ALL: [Self; 5] = [Self::Cable, Self::Equipment, Self::Remedies, Self::Line, Self::Unknown];

    /// What it is called.
    pub fn name(self) -> &'static str {
        let words = &words().book;
        match self {
            Self::Cable => words.cable,
            Self::Equipment => words.equipment,
            Self::Remedies => words.remedies,
            Self::Line => words.line_and_labor,
            Self::Unknown => words.unknown,
        }
    }
}

impl Section {
    /// The heading that a row stands under; `None` for a text of the book.
    pub fn of(cells: &Cells, row: usize) -> Option<Self> {
        let kind = cells.get(row, KIND);
        let place = |found: Option<usize>, section: fn(usize) -> Self| found.map_or(Self::Unknown, section);
        Some(match cells.word(row) {
            None => Self::Unknown,
            Some(Word::Name | Word::Source | Word::Currency | Word::Date) => return None,
            Some(Word::CableFixed | Word::CableFactor | Word::Metal) => Self::ByMetal,
            Some(Word::Cable) => Self::Quoted,
            Some(Word::Equipment) => place(Equipment::named(kind).map(|one| one as usize), Self::Equipment),
            Some(Word::Remedy) => place(Remedy::named(kind).map(|one| one as usize), Self::Remedy),
            Some(Word::Transformer) => Self::Transformer,
            Some(Word::Line | Word::LineFree) => Self::Line,
            Some(Word::Labor) => Self::Labor,
        })
    }

    /// The group that it belongs to.
    pub fn group(self) -> Group {
        match self {
            Self::ByMetal | Self::Quoted => Group::Cable,
            Self::Equipment(_) => Group::Equipment,
            Self::Remedy(_) | Self::Transformer => Group::Remedies,
            Self::Line | Self::Labor => Group::Line,
            Self::Unknown => Group::Unknown,
        }
    }

    /// Its heading.
    pub fn name(self) -> &'static str {
        let words = &words().book;
        match self {
            Self::ByMetal => words.by_metal,
            Self::Quoted => words.quoted,
            Self::Equipment(place) => Equipment::ALL.get(place).map_or("", |one| equipment_name(*one)),
            Self::Remedy(place) => Remedy::ALL.get(place).map_or("", |one| remedy_name(*one)),
            Self::Transformer => (words.item)(Word::Transformer),
            Self::Line => (words.item)(Word::Line),
            Self::Labor => (words.item)(Word::Labor),
            Self::Unknown => words.unknown,
        }
    }

    /// Its place on the page.
    fn order(self) -> (usize, usize) {
        match self {
            Self::ByMetal => (0, 0),
            Self::Quoted => (1, 0),
            Self::Equipment(place) => (2, place),
            Self::Remedy(place) => (3, place),
            Self::Transformer => (4, 0),
            Self::Line => (5, 0),
            Self::Labor => (6, 0),
            Self::Unknown => (7, 0),
        }
    }
}

/// The rows of a group under their headings, at most so many, and how many are left.
pub fn sections(cells: &Cells, group: Group, most: usize) -> (Vec<(Section, Vec<usize>)>, usize) {
    let all = (0..cells.count()).filter_map(|row| Some((Section::of(cells, row)?, row)));
    let mut rows: Vec<(Section, usize)> = all.filter(|(section, _)| section.group() == group).collect();
    by_number(&mut rows, |(section, _)| section.order().1 as f64);
    by_number(&mut rows, |(section, _)| section.order().0 as f64);
    let left = rows.len().saturating_sub(most);
    rows.truncate(most);
    let mut found: Vec<(Section, Vec<usize>)> = Vec::new();
    for (section, row) in rows {
        match found.last_mut() {
            Some((last, of_last)) if *last == section => of_last.push(row),
            _ => found.push((section, vec![row])),
        }
    }
    (found, left)
}

/// How many rows of a table are for a price.
pub fn count(cells: &Cells) -> usize {
    (0..cells.count()).filter(|row| Section::of(cells, *row).is_some()).count()
}

/// What a row is called under its heading.
pub fn part_name(cells: &Cells, row: usize) -> String {
    let words = &words().book;
    let cell = |column| cells.get(row, column).to_owned();
    let by = |unit: &'static str| if cells.get(row, UNIT) == BookUnit::Each.word() { words.fixed } else { unit };
    match cells.word(row) {
        Some(Word::Cable) => {
            let named = [KIND, METAL, SIZE].map(|column| choice_name(Word::Cable, column, cells.get(row, column)));
            named.join(", ")
        }
        Some(Word::Metal) => choice_name(Word::Metal, METAL, &cell(METAL)),
        Some(Word::Equipment | Word::Remedy | Word::Transformer) if !cells.get(row, SIZE).is_empty() => cell(SIZE),
        Some(Word::Equipment | Word::Remedy | Word::Transformer) => by(words.by_size).to_owned(),
        Some(Word::Line | Word::Labor) => by(words.by_length).to_owned(),
        Some(word) => (words.item)(word).to_owned(),
        None => cells.get(row, wellwright_core::cost::book_table::ITEM).to_owned(),
    }
}

/// What a row is called where its heading does not stand above it.
pub fn full_name(cells: &Cells, row: usize) -> String {
    let part = part_name(cells, row);
    Section::of(cells, row).map_or_else(|| part.clone(), |section| format!("{}, {part}", section.name()))
}

/// What one of a list is called; what is not on it stays as it is.
pub fn choice_name(word: Word, column: &str, choice: &str) -> String {
    let fields = &words().fields;
    let named = match (word, column) {
        (Word::Cable, KIND) => Build::named(choice).map(build_name),
        (Word::Equipment, KIND) => Equipment::named(choice).map(equipment_name),
        (Word::Remedy, KIND) => Remedy::named(choice).map(remedy_name),
        (_, METAL) => {
            let place = choices(word, METAL).iter().position(|one| one.eq_ignore_ascii_case(choice));
            place.and_then(|place| [Metal::Copper, Metal::Aluminum].get(place).copied()).map(fields.metal)
        }
        (_, UNIT) => return unit_word(choice),
        _ => None,
    };
    named.unwrap_or(choice).to_owned()
}

/// Units that a row's price may be written in without becoming another price.
pub fn units(cells: &Cells, row: usize) -> Vec<String> {
    let (Some(word), now) = (cells.word(row), cells.get(row, UNIT)) else { return Vec::new() };
    let is_each = |unit: &str| unit == BookUnit::Each.word();
    let all = choices(word, UNIT);
    let known = all.iter().any(|unit| unit.eq_ignore_ascii_case(now));
    if !known {
        // What was written stays until another is chosen.
        return std::iter::once(now.to_owned()).chain(all).collect();
    }
    let sized = !cells.get(row, SIZE).is_empty() && word != Word::Cable;
    all.into_iter().filter(|unit| if sized { is_each(unit) } else { is_each(unit) == is_each(now) }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::cost::book::PriceBook;
    use wellwright_core::cost::book_table::{COLUMNS, PRICE, read};

    fn cells(rows: &str) -> Cells {
        Cells::of(&format!("{}\n{rows}", COLUMNS.join(","))).unwrap()
    }

    #[test]
    fn every_row_of_the_built_in_book_has_its_group_and_its_own_name() {
        let cells = Cells::of_book(&PriceBook::invented()).unwrap();
        let rows = |group| sections(&cells, group, 999).0.into_iter().flat_map(|(_, rows)| rows);
        let all: Vec<usize> = Group::ALL.into_iter().flat_map(rows).collect();
        assert_eq!(
            (all.len(), count(&cells)),
            (PriceBook::invented().rows().len(), PriceBook::invented().rows().len())
        );
        assert_eq!(rows(Group::Unknown).count(), 0);
        let mut names: Vec<String> = all.iter().map(|row| full_name(&cells, *row)).collect();
        assert!(names.iter().all(|name| !name.ends_with(", ") && !name.starts_with(", ")), "{names:#?}");
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all.len());
    }

    #[test]
    fn a_group_tells_what_it_leaves_out() {
        let cells = Cells::of_book(&PriceBook::invented()).unwrap();
        let (found, left) = sections(&cells, Group::Equipment, 3);
        assert_eq!((found.len(), found[0].1.len(), found[1].1.len(), left), (2, 2, 1, 25));
    }

    #[test]
    fn rows_that_are_not_known_stand_apart() {
        let cells = cells("pump,,,,$,5\nequipment,warp,,,$,5\nname,A,,,,\n");
        assert_eq!(sections(&cells, Group::Unknown, 9), (vec![(Section::Unknown, vec![0, 1])], 0));
        assert_eq!((part_name(&cells, 0), count(&cells)), ("pump".to_owned(), 2));
    }

    #[test]
    fn another_unit_keeps_a_price_what_it_is() {
        let cells = cells(
            "equipment,doubling,,,$/hp,140\nequipment,doubling,,,$,5\nequipment,doubling,,10 hp,$,5\nline,,,,$/m,5\nmetal,,copper,,$/ft,5\ncable_factor,,,,,1\n",
        );
        let units = |row| super::units(&cells, row);
        assert_eq!(units(0), ["$/hp", "$/kW"]);
        assert_eq!((units(1), units(2)), (vec!["$".to_owned()], vec!["$".to_owned()]));
        assert_eq!(units(3), ["$/ft", "$/m", "$/kft", "$/km"]);
        assert_eq!(units(4), ["$/ft", "$/lb", "$/kg"]);
        assert_eq!(units(5), ["", "1"]);
        let mut changed = cells.clone();
        changed.set(4, UNIT, "$/lb");
        changed.tell(Word::Currency, "USD");
        changed.tell(Word::Date, "2026-11-01");
        assert_eq!(changed.get(2, PRICE), "140");
        assert!(read(&changed.text()).is_ok());
    }
}
