//! What the comparison of the ways holds: pure, from the evaluation.

use crate::locale::{Shown, amperes, peak_volts};
use crate::locale::{finding_text, kilowatts, metal, money_shown, percent, power, words};
use crate::parts::table::{Cell, Grid};
use wellwright_core::cable::filter::Remedy;
use wellwright_core::evaluate::{Evaluation, Fits, PoweredWay};
use wellwright_core::job::{Field, Way};
use wellwright_core::numeric::order::by_number;
use wellwright_core::power::family::{Feed, Filter, Kind};
use wellwright_core::power::volts::VoltsVerdict;
use wellwright_core::quantity::UnitSystem;

/// What the ways are sorted by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sort {
    /// What they cost at first.
    #[default]
    FirstCost,
    /// What they cost over the years.
    Lifetime,
    /// Metal in the conductors.
    Metal,
    /// Harmonic current.
    Harmonics,
}

impl Sort {
    /// What a way is sorted by, least first; unknown ones come last.
    fn key(self, way: &PoweredWay) -> f64 {
        let figure = match self {
            Self::FirstCost => way.cost.map(|cost| cost.first.0),
            Self::Lifetime => way.cost.and_then(|cost| cost.lifetime).map(|cost| cost.0),
            Self::Metal => way.cost.map(|cost| cost.metal.value),
            Self::Harmonics => Some(way.family.input.distortion),
        };
        figure.unwrap_or(f64::INFINITY)
    }
}

/// A way in the comparison.
#[derive(Debug, Clone, PartialEq)]
pub struct WayRow {
    /// Its equipment.
    pub kind: Kind,
    /// The voltage of its lead.
    pub way: Option<Way>,
    /// Its name.
    pub name: String,
    /// From what to what, and what stands between.
    pub from_to: String,
    /// How it comes out.
    pub fits: Fits,
    /// Why: what it waits for, then the gravest reason first; never empty.
    pub reasons: Vec<String>,
    /// Figures beside one another, in the order of [`columns`].
    pub figures: [Option<Shown>; 5],
    /// Its first cost.
    pub cost: Option<Shown>,
    /// Whether the job goes by it.
    pub picked: bool,
    /// Whether the user chose it.
    pub chosen: bool,
}

/// Names of the figures of a row, the last by what is sorted.
#[must_use]
pub fn columns(sort: Sort) -> [&'static str; 5] {
    let words = &words().ways;
    let last = match sort {
        Sort::FirstCost | Sort::Lifetime => words.lifetime,
        Sort::Metal => words.copper,
        Sort::Harmonics => words.harmonics,
    };
    [words.supply_amps, words.true_power_factor, words.line_dip, words.motor_volts, last]
}

/// The places of the ways in the order that they are shown: those that serve first, each group sorted.
#[must_use]
pub fn order(answer: &Evaluation, sort: Sort) -> Vec<usize> {
    let rank = |way: &PoweredWay| match way.fits {
        Fits::Serves | Fits::WithCare => 0.0,
        Fits::Waits => 1.0,
        Fits::No if way.way.is_some() => 2.0,
        Fits::No => 3.0,
    };
    let all = &answer.ways.all;
    let mut places: Vec<usize> = (0..all.len()).collect();
    by_number(&mut places, |place| sort.key(&all[*place]));
    by_number(&mut places, |place| rank(&all[*place]));
    places
}

/// A way by its place.
#[must_use]
pub fn row(answer: &Evaluation, place: usize, sort: Sort, system: UnitSystem) -> Option<WayRow> {
    let way = answer.ways.all.get(place)?;
    let picked = answer.ways.pick == Some(place);
    Some(WayRow {
        kind: way.family.kind,
        way: way.way,
        name: name(way),
        from_to: from_to(way),
        fits: way.fits,
        reasons: reasons(answer, way, system),
        figures: figures(way, sort, system),
        cost: way.cost.map(|cost| money_shown(cost.first, 0)),
        picked,
        chosen: picked && answer.ways.chosen,
    })
}

/// Why a way comes out as it does.
fn reasons(answer: &Evaluation, way: &PoweredWay, system: UnitSystem) -> Vec<String> {
    let found = way.findings.iter().map(|finding| finding_text(finding, system));
    let first = (way.fits == Fits::Waits || way.findings.is_empty()).then(|| otherwise(answer, way));
    first.into_iter().chain(found).collect()
}

/// The name: the user's own, or the generic one.
#[must_use]
pub fn name(way: &PoweredWay) -> String {
    if way.family.name.is_empty() { (words().ways.name)(way.family.kind).to_owned() } else { way.family.name.clone() }
}

/// From what to what.
fn from_to(way: &PoweredWay) -> String {
    let words = &words().ways;
    let (class, _) = way.fed;
    let from = (words.class)(class);
    let Some(lead) = way.way else { return (words.not_this_supply)(&peak_volts(way.fed.1).text()) };
    let three = |feed| feed == Feed::ThreePhase;
    let to = (words_of_way())(lead);
    let mut text = (words.from_to)(from, three(way.family.supply.feed), to, three(way.family.motor));
    if let Filter::Sine { .. } = way.family.filter {
        text += &(words.with_remedy)((words.remedy)(Remedy::SineFilter));
    } else if let Some(stress) = way.stress.filter(|stress| stress.fitted != Remedy::NoneNeeded) {
        text += &(words.with_remedy)((words.remedy)(stress.fitted));
    }
    text
}

fn words_of_way() -> fn(Way) -> &'static str {
    words().answer.way_short
}

/// What is said of a way that nothing stands against: what it has to spare, or what it waits for.
fn otherwise(answer: &Evaluation, way: &PoweredWay) -> String {
    let words = &words().ways;
    let label = words_label();
    if way.fits == Fits::Waits {
        let waits = answer.ways.waits_for.first().copied().unwrap_or(Field::PumpSetting);
        return (words.waits)(label(waits));
    }
    if way.family.kind == Kind::ThreePhaseLine && way.cost.is_none() {
        return (words.waits)(label(Field::LineDistance));
    }
    words.nothing_against.to_owned()
}

fn words_label() -> fn(Field) -> &'static str {
    words().fields.label
}

fn figures(way: &PoweredWay, sort: Sort, system: UnitSystem) -> [Option<Shown>; 5] {
    let last = match sort {
        Sort::FirstCost | Sort::Lifetime => way.cost.and_then(|cost| cost.lifetime).map(|cost| money_shown(cost, 0)),
        Sort::Metal => way.cost.map(|cost| metal(cost.metal, system)),
        Sort::Harmonics => way.way.map(|_| percent(way.family.input.distortion, 0)),
    };
    [
        way.draw.map(|draw| amperes(draw.current)),
        way.draw.map(|draw| crate::locale::shown(draw.power_factor, 2, "")),
        dip(way),
        way.volts.map(|volts| percent(share(volts.verdict), 1)),
        last,
    ]
}

/// The dip at the pole: of the start where the motor is put on full volts, else while it runs.
fn dip(way: &PoweredWay) -> Option<Shown> {
    let of_start = way.start.map(|start| start.dip.at_pole);
    let running = || way.pole?.sag.map(|sag| (sag.at_pole / way.fed.1).value);
    of_start.or_else(running).map(|dip| percent(dip, 1))
}

/// Volts over those that are needed.
#[must_use]
pub fn share(verdict: VoltsVerdict) -> f64 {
    match verdict {
        VoltsVerdict::Holds(share) | VoltsVerdict::Low(share) | VoltsVerdict::TooLow(share) => share,
    }
}

/// The ways as a table, for the papers: those that are made for the supply, in the order of their cost.
#[must_use]
pub fn table(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (words, tables) = (&words().ways, &crate::locale::words().tables);
    let cell = |shown: Option<Shown>| shown.map_or_else(|| Cell::words("–"), Cell::Figure);
    let line = |place: usize| {
        let row = row(answer, place, Sort::Lifetime, system).filter(|row| row.way.is_some())?;
        let name = if row.picked { format!("{}, {}", row.name, words.in_use) } else { row.name };
        let reason = row.reasons.into_iter().next().unwrap_or_default();
        let [amps, _, _, volts, lifetime] = row.figures;
        let figures = [amps, volts, row.cost, lifetime].map(cell);
        let outcome = format!("{}. {reason}", (words.fits)(row.fits));
        Some([vec![Cell::words(name)], figures.to_vec(), vec![Cell::words(outcome)]].concat())
    };
    let rows: Vec<_> = order(answer, Sort::FirstCost).into_iter().filter_map(line).collect();
    let [amps, _, _, volts, lifetime] = columns(Sort::Lifetime);
    let columns = vec![tables.way, amps, volts, words.first_cost, lifetime, tables.why];
    (!rows.is_empty() && answer.ways.waits_for.is_empty()).then_some(Grid { columns, rows })
}

/// How the best of them is told in a line, for who can't see the list.
#[must_use]
pub fn picked(answer: &Evaluation, system: UnitSystem) -> Option<String> {
    let way = answer.ways.picked()?;
    let motor = way.motor.map(|motor| power(motor.power, system).text()).unwrap_or_default();
    let input = way.draw.map(|draw| kilowatts(draw.input).text()).unwrap_or_default();
    Some([name(way), motor, input].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", "))
}
