//! The three numbers that a customer takes in: what is saved, from which depth on, and the metal that is not bought.

use crate::locale::{self, mass, percent, words};
use crate::pages::job::headline::{headline, sentence};
use crate::parts::big_answer::{BigAnswer, Says};
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation, Here};
use wellwright_core::job::Way;
use wellwright_core::quantity::UnitSystem;
use wellwright_core::standards::conductor::Metal;

/// The numbers of an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Numbers {
    /// What is saved; without money as a share.
    pub saving: Says,
    /// Where both ways cost the same.
    pub even: Says,
    /// What is not bought of the metal.
    pub metal: Says,
}

/// How an answer is told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Told {
    /// Units.
    pub system: UnitSystem,
    /// What is counted in.
    pub basis: Basis,
    /// Whether money is told.
    pub money: bool,
    /// Metal of the lead.
    pub metal: Metal,
}

/// The numbers of an answer.
#[must_use]
pub fn numbers(answer: &Evaluation, told: Told) -> Numbers {
    let said = headline(answer, told.system, told.basis);
    let here = answer.here.as_ref();
    let saving = match here {
        Some(here) if !told.money => share(here, told).unwrap_or(Says { figure: "–".to_owned(), ..said.saving }),
        _ => said.saving,
    };
    Numbers { saving, even: said.even, metal: here.map(|here| not_bought(here, told)).unwrap_or_default() }
}

/// How much less the cheaper way costs, where money is not told.
fn share(here: &Here, told: Told) -> Option<Says> {
    let at = locale::depth(here.depth, told.system).text();
    let (way, share) = here.share_saved(told.basis)?;
    let shown = percent(share, 0);
    Some(Says {
        title: (words().show.costs_less)(way, &at),
        figure: shown.figure,
        unit: shown.unit,
        note: String::new(),
    })
}

/// The metal that the 480 V way leaves at the store, or takes beyond the other.
fn not_bought(here: &Here, told: Told) -> Says {
    let show = &words().show;
    let title = |less: bool| (show.metal_not_bought)(told.metal, less).to_owned();
    let [low, high] = Way::ALL.map(|way| here.way(way).map(|lead| mass(lead.metal, told.system).text()));
    match (here.saving, low, high) {
        (Some(saving), Some(low), Some(high)) => {
            let shown = mass(saving.metal.abs(), told.system);
            Says {
                title: title(saving.metal.value >= 0.0),
                figure: shown.figure,
                unit: shown.unit,
                note: (show.metal_of)(&high, &low),
            }
        }
        _ => Says { title: title(true), figure: "–".to_owned(), unit: "", note: words().answer.no_size.to_owned() },
    }
}

/// The answer in a sentence for who hears it, without money where that is not told.
#[must_use]
pub fn heard(answer: &Evaluation, told: Told) -> String {
    match answer.here.as_ref().filter(|_| !told.money) {
        Some(here) => {
            share(here, told).map_or_else(String::new, |says| format!("{}: {}{}", says.title, says.figure, says.unit))
        }
        None => sentence(answer, told.system, told.basis),
    }
}

/// The three numbers.
#[component]
pub fn ThreeNumbers(
    /// The answer.
    answer: Memo<Evaluation>,
    /// How it is told.
    told: Memo<Told>,
) -> impl IntoView {
    let says = Memo::new(move |_| answer.with(|answer| numbers(answer, told.get())));
    let part = move |pick: fn(&Numbers) -> &Says| Memo::new(move |_| says.with(|says| pick(says).clone()));
    view! {
        <dl class="answers numbers">
            <div class="first"><BigAnswer says=part(|says| &says.saving) /></div>
            <div class="even"><BigAnswer says=part(|says| &says.even) /></div>
            <div><BigAnswer says=part(|says| &says.metal) /></div>
        </dl>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::job::Job;

    const TOLD: Told = Told { system: UnitSystem::Us, basis: Basis::Installed, money: true, metal: Metal::Copper };

    #[test]
    fn the_numbers_of_the_first_demo_job() {
        let answer = evaluate(&demo_jobs().remove(0));
        let told = numbers(&answer, TOLD);
        assert_eq!(told.saving.figure, "$546");
        assert_eq!((told.even.figure.as_str(), told.even.unit), ("426", "ft"));
        assert_eq!((told.metal.title.as_str(), told.metal.unit), ("Copper not bought", "lb"));
        // 72.9 kg are 160.7 lb.
        assert_eq!(told.metal.figure, "160.7");
    }

    // 545.91 of 5,637.42 are 9.7 %.
    #[test]
    fn without_money_no_figure_of_money_is_told() {
        let answer = evaluate(&demo_jobs().remove(0));
        for basis in [Basis::Cable, Basis::Installed] {
            let told = Told { money: false, basis, ..TOLD };
            let said = numbers(&answer, told);
            let all = format!("{said:?} {}", heard(&answer, told));
            assert!(!all.contains('$'), "{all}");
        }
        let told = numbers(&answer, Told { money: false, ..TOLD }).saving;
        assert_eq!((told.title.as_str(), told.figure.as_str()), ("480\u{a0}V costs less, at 620\u{a0}ft", "10"));
    }

    #[test]
    fn a_job_without_figures_says_what_it_waits_for() {
        let answer = evaluate(&Job::default());
        for money in [true, false] {
            let told = Told { money, ..TOLD };
            assert_eq!(numbers(&answer, told).saving.title, "Waiting for");
            assert_eq!(heard(&answer, told), "Waiting for Pump setting, Motor power");
        }
    }
}
