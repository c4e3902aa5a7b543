//! Further ways along the curve: which, what they cost here, and where they are cheaper than the two of the curve.

use super::Desk;
use super::ways::name_of;
use crate::locale::{self, money, words};
use crate::parts::group::Fold;
use crate::parts::tick::Tick;
use crate::pictures::letter;
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, BreakEven, Evaluation, WaySweep, Whose};
use wellwright_core::job::{Way, WayKey};
use wellwright_core::quantity::UnitSystem;

/// A way that can be seen along the curve.
#[derive(Debug, Clone, PartialEq)]
struct Line {
    place: usize,
    key: WayKey,
    name: String,
}

/// The further ways, to tick.
#[component]
pub fn Beside(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let all = Memo::new(move |_| desk.open.answer.with(lines));
    let tick = move |line: Line| {
        let (key, told) = (line.key.clone(), line.key.clone());
        let ticked = Memo::new(move |_| desk.beside.with(|keys| keys.contains(&key)));
        let note = Memo::new(move |_| {
            desk.seen.with(|seen| said(seen, &told, desk.basis.get(), desk.open.system.get())).unwrap_or_default()
        });
        let key = line.key.clone();
        let on_tick = Callback::new(move |on: bool| {
            desk.beside.update(|keys| {
                keys.retain(|one| *one != key);
                if on {
                    keys.push(key.clone());
                }
            });
        });
        view! { <Tick id=format!("beside.{}", line.place) label=line.name note=note ticked=ticked on_tick=on_tick /> }
    };
    let shown = Signal::derive(move || (words().cost.beside_shown)(desk.beside.with(Vec::len)));
    let each = move || all.get().into_iter().map(tick).collect_view();
    view! {
        <Show when=move || all.with(|all| !all.is_empty())>
            <Fold title=words().cost.beside note=shown must=Signal::stored(false)>{each}</Fold>
        </Show>
    }
}

fn lines(answer: &Evaluation) -> Vec<Line> {
    let line = |place| answer.ways.all.get(place).map(|way| Line { place, key: way.key(), name: name_of(way) });
    answer.can_be_beside().into_iter().filter_map(line).collect()
}

/// What is said of a way that stands along the curve: its letter, its cost at the job's depth, and how it compares.
fn said(seen: &Evaluation, key: &WayKey, basis: Basis, system: UnitSystem) -> Option<String> {
    let sweep = seen.sweep.as_ref()?;
    let own =
        |way: &WaySweep| way.place.and_then(|place| seen.ways.all.get(place)).is_some_and(|way| way.key() == *key);
    let place = sweep.beside.iter().position(own)?;
    let line = &sweep.beside[place];
    let cost = &words().cost;
    let here = seen.depth.map(|depth| match line.cost_at(depth, basis) {
        Some(amount) => (cost.beside_costs)(&money(amount, 0), &locale::depth(depth, system).text()),
        None => words().answer.no_size.to_owned(),
    });
    let against = Way::ALL.map(|way| {
        let found = line.even_with(sweep.way(way), basis);
        (cost.beside_against)(way, &compared(&found, system))
    });
    let line = here.into_iter().chain(against).collect::<Vec<_>>().join(" ");
    Some(format!("{}: {line}", letter(place)))
}

/// Where a way is cheaper than another, in words.
fn compared(found: &BreakEven<Whose>, system: UnitSystem) -> String {
    let cost = &words().cost;
    let depths: Vec<String> =
        found.crossings.iter().map(|crossing| locale::depth(crossing.depth, system).text()).collect();
    match (found.lasting(), found.first) {
        (Some(last), _) => (cost.beside_even)(&depths.join(", "), last.below),
        (None, Some(whose)) => (cost.beside_always)(whose).to_owned(),
        (None, None) => cost.beside_same.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::{Sense, evaluate};

    #[test]
    fn every_further_way_says_its_cost_and_how_it_compares() {
        let job = demo_jobs().remove(0);
        let answer = evaluate(&job);
        let all = lines(&answer);
        assert!(all.len() > 2);
        for line in &all {
            assert_eq!(said(&answer, &line.key, Basis::Installed, UnitSystem::Us), None);
        }
        let keys: Vec<WayKey> = all.iter().map(|line| line.key.clone()).collect();
        let seen = answer.with_beside(&job, Sense::LongerLead, &keys);
        for (place, line) in all.iter().enumerate() {
            let text = said(&seen, &line.key, Basis::Installed, UnitSystem::Us).unwrap();
            assert!(text.starts_with(&format!("{}: $", letter(place))), "{text}");
            assert!(text.contains("at 620\u{a0}ft. ") && text.contains("480\u{a0}V"), "{text}");
        }
    }

    #[test]
    fn a_comparison_is_told_in_words() {
        let alike = BreakEven { crossings: Vec::new(), first: None };
        assert_eq!(compared(&alike, UnitSystem::Us), "costs the same.");
        let always = BreakEven { first: Some(Whose::This), ..alike.clone() };
        assert_eq!(compared(&always, UnitSystem::Us), "cheaper at every depth.");
    }
}
