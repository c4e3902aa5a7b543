//! A year: its duty as text, and where the power goes.

use super::Desk;
use super::ways::name_of;
use crate::locale::{self, Shown, energy, flow, kilowatts, mass, money_shown, percent, shown, unit_name, words};
use crate::parts::icon::Icon;
use crate::parts::table::{Cell, Grid};
use crate::state::Edit;
use leptos::prelude::*;
use wellwright_core::cost::duty_text::{FlowUnit, read_duty};
use wellwright_core::evaluate::{Evaluation, NoYear, Year, YearRow};
use wellwright_core::job::Job;
use wellwright_core::papers::{OfYear, Topic};
use wellwright_core::quantity::{Entry, Power, Unit, UnitSystem, in_gallons, in_hours, in_watts};

/// The year's duty as text.
#[component]
pub fn DutyText(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().cost);
    let text = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.duty.clone()));
    let said = Memo::new(move |_| {
        let system = open.system.get();
        let wrong = open.answer.with(|answer| answer.no_year.as_ref().map(|why| trouble(why, system)));
        match wrong {
            Some(why) => Some((true, why)),
            None => text.with(|text| told(text, system)).map(|told| (false, told)),
        }
    });
    let wrong = Memo::new(move |_| said.with(|said| said.as_ref().is_some_and(|(wrong, _)| *wrong)));
    view! {
        <div class="field points" data-state=move || if wrong.get() { "error" } else { "typed" }>
            <label for="energy.duty">{words.duty}<small>{words.duty_hint}</small></label>
            <textarea
                id="energy.duty"
                rows="3"
                spellcheck="false"
                autocomplete="off"
                maxlength=Job::MOST_DUTY.to_string()
                aria-describedby="energy.duty-says"
                aria-invalid=move || wrong.get().then_some("true")
                prop:value=text
                on:input=move |event| {
                    let text = event_target_value(&event);
                    if text.len() <= Job::MOST_DUTY {
                        open.edit.run(Edit::Duty(text));
                    }
                }
                on:blur=move |_| {
                    let _ = open.pause.try_run(());
                }
            ></textarea>
            <p class="msg" id="energy.duty-says" aria-live="polite">
                <Show when=move || wrong.get()><Icon name="error" /></Show>
                <span>{move || said.with(|said| said.as_ref().map(|(_, text)| text.clone()))}</span>
            </p>
        </div>
    }
}

/// What a duty comes to, in words.
fn told(text: &str, system: UnitSystem) -> Option<String> {
    let duty = read_duty(text, FlowUnit::Gpm).ok()?.duty;
    let rows = duty.rows().iter().map(|row| flow(row.flow, system).text()).collect::<Vec<_>>().join(", ");
    let time = locale::entry(Entry::new(in_hours(duty.time()), Unit::Hour), system).text();
    let water = locale::result(Entry::new(in_gallons(duty.volume()), Unit::Gallon).shown_in(system)).text();
    Some((words().cost.duty_says)(&rows, &time, &water))
}

fn trouble(why: &NoYear, system: UnitSystem) -> String {
    let words = &words().cost;
    match why {
        NoYear::Text(error) => (words.duty_fault)(error.line, error.column),
        NoYear::Flow { flow: asked, .. } => (words.duty_not_given)(&flow(*asked, system).text()),
    }
}

/// Where the power of a year goes, row by row.
pub fn rows(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (year, words) = (answer.year.as_ref()?, &words().cost);
    let columns = vec![
        words.flow,
        words.hours,
        words.shaft,
        words.lost_motor,
        words.lost_lead,
        words.lost_equipment,
        words.lost_supply,
        words.metered,
    ];
    let row = |(place, row): (usize, &YearRow)| {
        let power = row.power;
        let watts = |power: Power| Cell::Figure(shown(in_watts(power), 0, unit_name(Unit::Watt)));
        vec![
            row.drawn.map_or(Cell::words(words.at_rating), |drawn| Cell::Figure(flow(drawn.flow, system))),
            Cell::Figure(locale::result(Entry::new(power.load.hours, Unit::Hour))),
            Cell::Figure(kilowatts(power.shaft)),
            watts(power.motor),
            watts(power.lead),
            watts(power.equipment),
            watts(power.supply),
            // One working holds all of a row.
            Cell::Worked(kilowatts(power.metered), Topic::Year(OfYear::Row(place))),
        ]
    };
    Some(Grid { columns, rows: year.rows.iter().enumerate().map(row).collect() })
}

/// The year in all.
pub fn summary(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (year, words) = (answer.year.as_ref()?, &words().cost);
    let cash = |amount| money_shown(amount, 0);
    let mut found: Vec<(&'static str, Shown, OfYear)> = vec![(words.year_energy, energy(year.energy), OfYear::Energy)];
    if year.bill.demand.0 != 0.0 || year.bill.standing.0 != 0.0 {
        found.extend([
            (words.bill_energy, cash(year.bill.energy), OfYear::Bill),
            (words.bill_demand, cash(year.bill.demand), OfYear::Bill),
            (words.bill_standing, cash(year.bill.standing), OfYear::Bill),
        ]);
    }
    found.push((words.bill, cash(year.bill.total), OfYear::Bill));
    found.extend(of_water(year, system));
    let row = |(name, figure, of)| vec![Cell::words(name), Cell::Worked(figure, Topic::Year(of))];
    let rows = found.into_iter().map(row).collect();
    let tables = &crate::locale::words().tables;
    Some(Grid { columns: vec![tables.figure, tables.value], rows })
}

fn of_water(year: &Year, system: UnitSystem) -> Vec<(&'static str, Shown, OfYear)> {
    let words = &words().cost;
    let mut found = Vec::new();
    let volume = |volume| locale::result(Entry::new(in_gallons(volume), Unit::Gallon).shown_in(system));
    found.extend(year.volume.map(|water| (words.volume, volume(water), OfYear::Water)));
    if let Some((performance, share)) = year.performance {
        found.push((words.performance, shown(performance, 3, ""), OfYear::Performance));
        found.push((words.criterion, percent(share, 0), OfYear::Performance));
    }
    if let Some([speed, on_off]) = &year.by_control {
        found.extend([
            (words.by_speed, energy(speed.energy), OfYear::BySpeed),
            (words.on_off, energy(on_off.energy), OfYear::OnOff),
        ]);
    }
    found.extend(year.carbon.map(|carbon| (words.carbon, mass(carbon, system), OfYear::Carbon)));
    found
}

/// By which way the year is told.
pub fn hint(answer: &Evaluation) -> String {
    answer.ways.picked().map_or_else(String::new, |way| (words().cost.year_hint)(&name_of(way)))
}
