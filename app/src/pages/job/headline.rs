//! What the answer says, in words and figures: pure, from the evaluation.

use super::chapter::blocks;
use crate::locale::{self, depth, money, money_alike, percent, words};
use crate::parts::big_answer::Says;
use wellwright_core::cable::lead::{Conductor, Governs};
use wellwright_core::error::InputError;
use wellwright_core::evaluate::{Basis, Evaluation, Here, Saving, WayHere};
use wellwright_core::job::Way;
use wellwright_core::quantity::{Money, UnitSystem, in_feet};

/// The whole answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Headline {
    /// What is saved.
    pub saving: Says,
    /// The 240 V and the 480 V way.
    pub ways: [Says; 2],
    /// Where both cost the same.
    pub even: Says,
}

/// The answer of an evaluation.
#[must_use]
pub fn headline(answer: &Evaluation, system: UnitSystem, basis: Basis) -> Headline {
    let here = answer.here.as_ref();
    let saving = here.and_then(|here| here.saving.as_ref());
    let decimals = here.map_or(0, |here| decimals(here, basis));
    Headline {
        saving: match (here, saving) {
            (Some(here), Some(saving)) => saved(here, saving, system, basis),
            (Some(_), None) => plain(words().answer.no_saving, words().answer.no_size),
            (None, _) => waiting(answer),
        },
        ways: Way::ALL.map(|way| match here {
            Some(here) => here.way(way).map_or_else(
                || plain((words().answer.way_short)(way), words().answer.no_size),
                |lead| way_says(way, lead, basis, decimals),
            ),
            None => plain((words().answer.way_short)(way), ""),
        }),
        even: even(answer, system, basis),
    }
}

fn plain(title: &str, note: &str) -> Says {
    Says { title: title.to_owned(), figure: "–".to_owned(), unit: "", note: note.to_owned() }
}

/// Without an answer: the figures that are waited for are listed by the page.
fn waiting(answer: &Evaluation) -> Says {
    let missing = answer.errors.iter().any(|error| matches!(error, InputError::Missing { .. }));
    let title = if missing { words().answer.waiting_for } else { words().answer.figures_wrong };
    Says { title: title.to_owned(), ..Says::default() }
}

/// The saving in a sentence, for who hears it; what is waited for where there is none.
#[must_use]
pub fn sentence(answer: &Evaluation, system: UnitSystem, basis: Basis) -> String {
    let saving = answer.here.as_ref().and_then(|here| Some((here.depth, here.saving.as_ref()?.on(basis)?)));
    match saving {
        Some((at, amount)) if amount.0 == 0.0 => (words().answer.same_at)(&depth(at, system).text()),
        Some((at, amount)) => {
            let way = if amount.0 < 0.0 { Way::V240 } else { Way::V480 };
            (words().say.saving_now)(way, &money(amount.size(), 0), &depth(at, system).text())
        }
        None if answer.errors.is_empty() => words().answer.no_size.to_owned(),
        None => {
            let fields = answer.errors.iter().map(|error| error.field()).filter(|field| blocks(*field));
            let names: Vec<&str> = fields.map(|field| (words().fields.label)(field)).collect();
            format!("{} {}", waiting(answer).title, names.join(", "))
        }
    }
}

/// Why the one voltage costs less than the other, and from where on.
#[must_use]
pub fn reason(answer: &Evaluation, system: UnitSystem) -> String {
    let papers = &words().papers;
    let Some(saving) = answer.here.as_ref().and_then(|here| here.saving) else { return String::new() };
    let first = if saving.net.0 > 0.0 { papers.saves } else { papers.does_not_save };
    let crossing = answer.sweep.as_ref().and_then(|sweep| sweep.break_even(Basis::Installed).crossings.last());
    let from = crossing.map(|crossing| {
        let at = depth(crossing.depth, system).text();
        (papers.from_here_on)(crossing.below, &at)
    });
    [Some(first.to_owned()), from].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// Decimals with which the two costs and their difference add up.
fn decimals(here: &Here, basis: Basis) -> usize {
    match here.ways {
        [Some(low), Some(high)] => {
            let (low, high) = (cost(&low, basis), cost(&high, basis));
            if low.0 > high.0 { money_alike(low, high) } else { money_alike(high, low) }
        }
        _ => 0,
    }
}

/// A way's cost on a basis; installed where the years are not known.
fn cost(lead: &WayHere, basis: Basis) -> Money {
    lead.cost(basis).unwrap_or(lead.installed)
}

/// The saving, in whole dollars where it and what it is made of add up in them.
fn saved(here: &Here, saving: &Saving, system: UnitSystem, basis: Basis) -> Says {
    let amount = saving.on(basis).unwrap_or(saving.net);
    let decimals = match basis {
        Basis::Cable => 0,
        Basis::Installed => money_alike(saving.cable, saving.cable - saving.net),
        Basis::Lifetime => money_alike(amount, saving.net),
    };
    let at = depth(here.depth, system).text();
    let title = if amount.0 > 0.0 {
        (words().answer.saves_at)(Way::V480, &at)
    } else if amount.0 < 0.0 {
        (words().answer.saves_at)(Way::V240, &at)
    } else {
        (words().answer.same_at)(&at)
    };
    let extra = saving.cable - saving.net;
    let note = match basis {
        Basis::Lifetime => {
            let energy = amount - saving.net;
            let told = |part: Money| (part.0 >= 0.0, money(part.size(), decimals));
            let ((saves, first), (less, energy)) = (told(saving.net), told(energy));
            (words().answer.first_and_energy)((saves, &first), (less, &energy))
        }
        Basis::Installed => {
            (words().answer.cable_less_equipment)(&money(saving.cable, decimals), &money(extra, decimals))
        }
        Basis::Cable => {
            let mass = locale::mass(saving.metal.abs(), system).text();
            if saving.metal.value < 0.0 {
                (words().answer.metal_more)(&mass)
            } else {
                (words().answer.metal_not_bought)(&mass)
            }
        }
    };
    Says { title, figure: money(amount.size(), decimals), unit: "", note }
}

fn way_says(way: Way, lead: &WayHere, basis: Basis, decimals: usize) -> Says {
    let size = phases(lead.run.run.conductor);
    let drop = (words().answer.drop_of)(&percent(lead.drop_share, 1).text());
    Says {
        title: (words().answer.way_short)(way).to_owned(),
        figure: money(cost(lead, basis), decimals),
        unit: "",
        note: format!("{size}, {drop}"),
    }
}

/// A way's conductors in a few words.
#[must_use]
pub fn size_line(lead: Option<&WayHere>) -> String {
    lead.map_or_else(|| words().answer.no_size.to_owned(), |lead| phases(lead.run.run.conductor))
}

/// The net saving in a few words.
#[must_use]
pub fn cost_line(saving: Option<&Saving>) -> String {
    saving.map_or_else(
        || words().answer.no_saving.to_owned(),
        |saving| {
            if saving.net.0 == 0.0 {
                return money(saving.net, 0);
            }
            let way = if saving.net.0 < 0.0 { Way::V240 } else { Way::V480 };
            (words().answer.saved)(way, &money(saving.net.size(), 0))
        },
    )
}

/// Phase conductors as they are ordered: three of a size, or sets of it.
#[must_use]
pub fn phases(conductor: Conductor) -> String {
    let text = locale::conductor(conductor);
    if conductor.sets > 1 { text } else { (words().answer.three_of)(&text) }
}

/// Why a lead has its size.
#[must_use]
pub fn why(governs: Governs) -> &'static str {
    match governs {
        Governs::Ampacity => words().answer.governs_ampacity,
        Governs::Drop => words().answer.governs_drop,
    }
}

fn even(answer: &Evaluation, system: UnitSystem, basis: Basis) -> Says {
    let title = words().answer.even_at.to_owned();
    let Some(sweep) = answer.sweep.as_ref() else { return plain(&title, "") };
    let found = sweep.break_even(basis);
    match (found.lasting(), found.first) {
        (Some(last), _) => {
            let shown = depth(last.depth, system);
            let before: Vec<String> = found.crossings[..found.crossings.len() - 1]
                .iter()
                .map(|crossing| depth(crossing.depth, system).text())
                .collect();
            let mut note = (words().answer.then_cheaper)(last.below).to_owned();
            if !before.is_empty() {
                note = format!("{note}; {}", (words().answer.also_even_at)(&before.join(", ")));
            }
            Says { title, figure: shown.figure, unit: shown.unit, note }
        }
        (None, Some(way)) => plain(&title, (words().answer.always_cheaper)(way)),
        (None, None) if in_feet(sweep.way(Way::V240).reach()) > 0.0 => plain(&title, words().answer.never_differs),
        (None, None) => plain(&title, ""),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::job::Job;

    #[test]
    fn the_answer_of_the_first_demo_job() {
        let answer = evaluate(&demo_jobs().remove(0));
        let says = headline(&answer, UnitSystem::Us, Basis::Installed);
        assert_eq!(says.saving.title, "480\u{a0}V saves, at 620\u{a0}ft");
        assert_eq!(says.saving.figure, "$546");
        assert_eq!(says.saving.note, "480\u{a0}V: $1,446 off the cable, $900 more equipment");
        // In whole dollars they would be 545 apart.
        assert_eq!(says.ways[0].figure, "$5,637.42");
        assert_eq!(says.ways[0].note, "3\u{a0}×\u{a0}6\u{a0}AWG, drop\u{a0}4.6\u{a0}%");
        assert_eq!(says.ways[1].figure, "$5,091.51");
        assert_eq!((says.even.figure.as_str(), says.even.unit), ("426", "ft"));
        let said = sentence(&answer, UnitSystem::Us, Basis::Installed);
        assert_eq!(said, "At 620\u{a0}ft, 480\u{a0}V saves $546.");
        let cable = headline(&answer, UnitSystem::Si, Basis::Cable);
        assert_eq!(cable.saving.figure, "$1,446");
        assert_eq!(cable.saving.note, "72.9\u{a0}kg of metal not bought");
    }

    #[test]
    fn without_figures_it_says_what_is_waited_for() {
        let says = headline(&evaluate(&Job::default()), UnitSystem::Us, Basis::Installed);
        assert_eq!(says.saving.title, "Waiting for");
        assert_eq!(says.saving.figure, "");
        let said = sentence(&evaluate(&Job::default()), UnitSystem::Us, Basis::Installed);
        assert_eq!(said, "Waiting for Pump setting, Motor power");
    }
}
