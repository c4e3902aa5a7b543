//! A reading of the last visit, as both the page and the large screens show and take it.

use crate::locale::{self, not_read_text, percent, words};
use crate::parts::verdict::Level;
use crate::platform::clock;
use crate::state::{Noted, Open};
use leptos::prelude::*;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::finding::Severity;
use wellwright_core::job::record::{Taken, Visit};
use wellwright_core::job::{Reading, Record};
use wellwright_core::papers::{Topic, working};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};
use wellwright_core::startup::{Advice, Balance, Judged, SettingCode, VisitJudged, judge, predicted};

/// The last visit, judged.
pub fn last_visit(open: Open) -> Memo<Option<VisitJudged>> {
    Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| judge(&sheet.job, answer).pop())))
}

/// A reading at hand.
#[derive(Clone, Copy)]
pub struct AtHand {
    /// The unit of what is typed: that of the figure that stands there, else the screen's.
    pub unit: Memo<Unit>,
    /// As it was typed.
    pub text: Memo<String>,
    /// Its verdict; nothing without a figure.
    pub verdict: Memo<Option<Judged>>,
    /// Balance of the lines that it is one of.
    pub balance: Memo<Option<Balance>>,
    /// Why what is typed is no reading.
    pub fault: Memo<Option<String>>,
    /// What the job predicts.
    pub expects: Memo<Option<String>>,
    /// The working of that; nothing where it is typed, by definition, or follows from another reading.
    pub opens: Memo<Option<Topic>>,
    /// What stood there before a correction.
    pub before: Memo<String>,
    /// Takes what is typed.
    pub write: Callback<String>,
}

impl AtHand {
    /// A reading of the last visit.
    pub fn of(open: Open, reading: Reading, judged: Memo<Option<VisitJudged>>) -> Self {
        let taken = Memo::new(move |_| open.sheet.with(|sheet| last(&sheet.job.record, reading).cloned()));
        let unit = Memo::new(move |_| {
            let typed = taken.with(|taken| taken.as_ref()?.entry.map(|entry| entry.unit));
            typed.unwrap_or_else(|| open.system.get().unit(reading.kind()))
        });
        let text =
            Memo::new(move |_| taken.with(|taken| taken.as_ref().map_or_else(String::new, |taken| taken.text.clone())));
        let verdict = Memo::new(move |_| {
            judged.with(|visit| visit.as_ref()?.readings.iter().find(|judged| judged.reading == reading).cloned())
        });
        let write = Callback::new(move |text: String| {
            let read = locale::read(&text, reading.kind()).ok().flatten();
            let entry = read.map(|read| Entry::new(read.value, read.unit.unwrap_or_else(|| unit.get_untracked())));
            open.note.run(Noted::Type(reading, text, entry, clock::now()));
        });
        let wanted = move || open.sheet.with(|sheet| open.answer.with(|answer| predicted(&sheet.job, answer, reading)));
        Self {
            unit,
            text,
            verdict,
            balance: Memo::new(move |_| {
                judged.with(|visit| visit.as_ref().and_then(|visit| balance_of(visit, reading)))
            }),
            fault: Memo::new(move |_| text.with(|text| fault(reading, text, verdict.with(Option::is_some)))),
            expects: Memo::new(move |_| {
                wanted().map(|entry| (words().startup.predicted)(&shown(entry, open.system.get())))
            }),
            opens: Memo::new(move |_| {
                let expected = wanted()?;
                open.answer.with(|answer| topic(reading, answer).filter(|topic| holds(answer, *topic, expected)))
            }),
            before: Memo::new(move |_| open.sheet.with(|sheet| before(&sheet.job.record, reading))),
            write,
        }
    }

    /// Whether it stops the work, by itself or by how far its lines differ.
    pub fn stops(self) -> bool {
        let own = self.verdict.with(|judged| judged.as_ref().and_then(|judged| judged.severity));
        let lines = self.balance.with(|balance| balance.and_then(|balance| balance.severity));
        own.max(lines) == Some(Severity::Stop)
    }
}

/// The working that a prediction comes from.
fn topic(reading: Reading, answer: &Evaluation) -> Option<Topic> {
    let (pick, way) = (answer.ways.pick, answer.ways.picked().and_then(|way| way.way));
    match reading {
        Reading::SupplyLoaded => pick.map(Topic::WaySag),
        Reading::SupplyAmps => pick.map(Topic::WayInput),
        Reading::Amps1 | Reading::Amps2 | Reading::Amps3 => way.map(Topic::RunningCurrent),
        Reading::PumpingLevel => Some(Topic::PumpingLevel),
        Reading::Frequency => Some(Topic::PumpSpeed),
        Reading::Signal => Some(Topic::Setting(SettingCode::SensorSignal)),
        Reading::Flow => Some(Topic::Demand),
        _ => None,
    }
}

/// Whether a working holds a figure.
fn holds(answer: &Evaluation, topic: Topic, figure: Entry) -> bool {
    let Some(found) = working(answer, topic, UnitSystem::Us) else { return false };
    let near = |told: &Entry| told.to(figure.unit).is_some_and(|told| (told - figure.value).abs() <= 1e-9 * told.abs());
    let steps = found.steps.iter().map(|step| step.result);
    steps.chain(found.values.iter().map(|put| put.value)).chain([found.result]).any(|told| near(&told))
}

/// Balance of the lines that a reading is one of.
fn balance_of(visit: &VisitJudged, reading: Reading) -> Option<Balance> {
    if Reading::AMPS.contains(&reading) {
        visit.amps
    } else if Reading::VOLTS.contains(&reading) {
        visit.volts
    } else {
        None
    }
}

/// What stands for a reading of the last visit, as it was typed.
fn last(record: &Record, reading: Reading) -> Option<&Taken> {
    record.visits().last()?.last(reading)
}

/// What stood there before a correction.
fn before(record: &Record, reading: Reading) -> String {
    let words = &words().startup;
    let Some(visit) = record.visits().last() else { return String::new() };
    let told = told(visit, reading);
    if told.is_empty() { String::new() } else { (words.before)(&told.join("; ")) }
}

fn told(visit: &Visit, reading: Reading) -> Vec<String> {
    let all: Vec<_> = visit.history(reading).collect();
    let corrected = all.iter().rev().skip(1).rev();
    let time = |at: &str| at.split_once('T').map_or("", |(_, time)| time).chars().take(5).collect::<String>();
    // A figure stands in the unit that it was typed in.
    let figure = |taken: &Taken| {
        taken.entry.map_or_else(|| taken.text.clone(), |entry| locale::entry_in(entry, entry.unit).text())
    };
    corrected.map(|taken| (words().startup.corrected)(&figure(taken), &time(&taken.at))).collect()
}

/// Why what is typed is no reading.
fn fault(reading: Reading, text: &str, judged: bool) -> Option<String> {
    match locale::read(text, reading.kind()) {
        Err(reason) => Some(not_read_text(text, &reason)),
        Ok(Some(_)) if !judged => Some(words().startup.out_of_range.to_owned()),
        Ok(_) => None,
    }
}

/// A figure in the units of the screen.
fn shown(entry: Entry, system: UnitSystem) -> String {
    locale::result(entry.shown_in(system)).text()
}

/// The verdict of a reading: the limit that it passed and what to look at, the likeliest first.
pub fn said(judged: &Judged, system: UnitSystem) -> Option<(Level, String)> {
    let words = &words().startup;
    let severity = judged.severity?;
    let limit = judged.limit?;
    let text = shown(limit, system);
    let passed = if judged.value.value > limit.value { (words.over)(&text) } else { (words.under)(&text) };
    let advice = judged.advice.iter().map(|advice| (words.advice)(*advice));
    let whole: Vec<&str> = core::iter::once(passed.as_str()).chain(advice).collect();
    Some((Level::Found(severity), whole.join(" ")))
}

/// How far the three lines differ, in words, and what to do.
pub fn uneven(found: &Balance) -> String {
    let words = &words().startup;
    let share = percent(found.share, 1).text();
    let Some(limit) = found.limit else { return (words.unbalance_fine)(&share) };
    let line = (words.reading)(found.farthest);
    let mut text = (words.unbalance)(&share, line, &percent(limit, 0).text());
    let less = found.left.filter(|left| *left < 1.0).map(|left| (words.left)(&percent(left, 0).text()));
    let next = (words.advice)(Advice::RollLines);
    for more in less.as_deref().into_iter().chain([next]) {
        text = format!("{text} {more}");
    }
    text
}
