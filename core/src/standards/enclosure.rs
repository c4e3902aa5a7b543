//! NEMA 250: types of enclosures and what each keeps out, nonhazardous places. Source: [nema-250].

/// What a place asks of an enclosure beyond keeping fingers and falling dirt out, as every type does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Demand {
    /// Rain, snow and sleet.
    Weather,
    /// Outer handles must work while laden with ice.
    IceOnHandles,
    /// Dripping and light splashes.
    Drips,
    /// Dust that settles out of the air.
    SettlingDust,
    /// Dust that circulates or is blown by the wind.
    BlownDust,
    /// Water from a hose, splashes.
    Hose,
    /// Oil and coolant that seep.
    OilSeepage,
    /// Oil and coolant that spray.
    OilSpray,
    /// Corrosive agents.
    Corrosion,
    /// Now and then under water, not for long.
    BriefFlood,
    /// Now and then under water for long.
    LongFlood,
}

/// A type of enclosure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names are the standard's own")]
pub enum EnclosureType {
    T1,
    T2,
    T3,
    T3R,
    T3S,
    T3X,
    T3RX,
    T3SX,
    T4,
    T4X,
    T5,
    T6,
    T6P,
    T12,
    T12K,
    T13,
}

/// One type with its name and the demands that it meets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// The type.
    pub kind: EnclosureType,
    /// Its name, after "type".
    pub name: &'static str,
    /// What it meets.
    pub meets: &'static [Demand],
}

use Demand::{
    BlownDust, BriefFlood, Corrosion, Drips, Hose, IceOnHandles, LongFlood, OilSeepage, OilSpray, SettlingDust, Weather,
};
use EnclosureType::{T1, T2, T3, T3R, T3RX, T3S, T3SX, T3X, T4, T4X, T5, T6, T6P, T12, T12K, T13};

const fn row(kind: EnclosureType, name: &'static str, meets: &'static [Demand]) -> Row {
    Row { kind, name, meets }
}

/// All types. Those that meet weather serve indoors too.
pub const TABLE: [Row; 16] = [
    row(T1, "1", &[]),
    row(T2, "2", &[Drips]),
    row(T3, "3", &[Weather, Drips, SettlingDust, BlownDust]),
    row(T3R, "3R", &[Weather, Drips]),
    row(T3S, "3S", &[Weather, IceOnHandles, Drips, SettlingDust, BlownDust]),
    row(T3X, "3X", &[Weather, Drips, SettlingDust, BlownDust, Corrosion]),
    row(T3RX, "3RX", &[Weather, Drips, Corrosion]),
    row(T3SX, "3SX", &[Weather, IceOnHandles, Drips, SettlingDust, BlownDust, Corrosion]),
    row(T4, "4", &[Weather, Drips, SettlingDust, BlownDust, Hose]),
    row(T4X, "4X", &[Weather, Drips, SettlingDust, BlownDust, Hose, Corrosion]),
    row(T5, "5", &[Drips, SettlingDust]),
    row(T6, "6", &[Weather, Drips, SettlingDust, BlownDust, Hose, BriefFlood]),
    row(T6P, "6P", &[Weather, Drips, SettlingDust, BlownDust, Hose, Corrosion, BriefFlood, LongFlood]),
    row(T12, "12", &[Drips, SettlingDust, BlownDust, OilSeepage]),
    row(T12K, "12K", &[Drips, SettlingDust, BlownDust, OilSeepage]),
    row(T13, "13", &[Drips, SettlingDust, BlownDust, OilSeepage, OilSpray]),
];

impl EnclosureType {
    /// The row of this type.
    #[must_use]
    pub fn row(self) -> &'static Row {
        &TABLE[self as usize]
    }

    /// The type of a name, as `3R`.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        TABLE.iter().find(|row| row.name == name).map(|row| row.kind)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn has(kind: EnclosureType, demand: Demand) -> bool {
        kind.row().meets.contains(&demand)
    }

    #[test]
    fn each_type_finds_its_row() {
        for (place, row) in TABLE.iter().enumerate() {
            assert_eq!(row.kind as usize, place);
            assert_eq!(format!("T{}", row.name), format!("{:?}", row.kind));
        }
        // How many types the standard's tables mark for each demand.
        let marks = [
            (Weather, 10),
            (IceOnHandles, 2),
            (Drips, 15),
            (SettlingDust, 12),
            (BlownDust, 11),
            (Hose, 4),
            (OilSeepage, 3),
            (OilSpray, 1),
            (Corrosion, 5),
            (BriefFlood, 2),
            (LongFlood, 1),
        ];
        for (demand, types) in marks {
            assert_eq!(TABLE.iter().filter(|row| has(row.kind, demand)).count(), types, "{demand:?}");
        }
    }

    // What keeps out the worse keeps out the lesser.
    #[test]
    fn the_worse_takes_in_the_lesser() {
        let pairs = [(LongFlood, BriefFlood), (BriefFlood, Hose), (Hose, Drips), (Hose, Weather)];
        let more = [(BlownDust, SettlingDust), (SettlingDust, Drips), (OilSpray, OilSeepage), (IceOnHandles, Weather)];
        for (worse, lesser) in pairs.into_iter().chain(more) {
            assert!(TABLE.iter().all(|row| !has(row.kind, worse) || has(row.kind, lesser)), "{worse:?} {lesser:?}");
        }
    }

    // A type of the letter X is the one without it, and stands corrosion.
    #[test]
    fn x_adds_corrosion_and_nothing_else() {
        for (with, without) in [(T3X, T3), (T3RX, T3R), (T3SX, T3S), (T4X, T4)] {
            let rest: Vec<Demand> = with.row().meets.iter().copied().filter(|demand| *demand != Corrosion).collect();
            assert!(has(with, Corrosion) && !has(without, Corrosion) && rest == without.row().meets, "{with:?}");
        }
    }
}
