//! What the curve shows: the metal's price by a slider, a band, and the equipment that stands for each voltage.

use super::Desk;
use super::ways::name_of;
use crate::locale::words;
use crate::parts::group::Group;
use crate::parts::segmented::Segmented;
use crate::state::Edit;
use leptos::prelude::*;
use wellwright_core::evaluate::range::Band;
use wellwright_core::job::{Field, Way, WayKey};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};

/// What the curve shows.
#[component]
pub fn CurveChoices(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let words = &words().cost;
    let band = desk.band;
    view! {
        <Group title=words.curve>
            <MetalSlider desk=desk />
            <div class="field band">
                <span class="label">{words.band_label}</span>
                <Segmented
                    label=words.band_label
                    name="band".to_owned()
                    options=[Band::None, Band::Metal, Band::Drop].map(|one| (one, (words.band)(one))).to_vec()
                    value=band.into()
                    on_choose=Callback::new(move |chosen| band.set(chosen))
                />
            </div>
            {Way::ALL.map(|way| view! { <Stands way=way desk=desk /> })}
        </Group>
    }
}

/// The metal's price between its lowest and highest, slid.
#[component]
fn MetalSlider(desk: Desk) -> impl IntoView {
    let open = desk.open;
    let unit = move || match open.system.get() {
        UnitSystem::Us => Unit::DollarPerPound,
        UnitSystem::Si => Unit::DollarPerKilogram,
    };
    let figure = move |field: Field, unit: Unit| {
        open.answer.with(|answer| {
            let typed = open.sheet.with(|sheet| sheet.job.get(field));
            typed.or_else(|| answer.inputs.stand_in(field))?.to(unit)
        })
    };
    // The ends stay while the price is slid, though they follow from it.
    let ends = RwSignal::new(None::<(f64, f64)>);
    let known = Memo::new(move |_| {
        let unit = unit();
        let (low, now) = (figure(Field::MetalLow, unit)?, figure(Field::CableMetal, unit)?);
        let high = figure(Field::MetalHigh, unit)?;
        Some((low.min(now), now, high.max(now)))
            .filter(|(low, now, high)| low.is_finite() && now.is_finite() && high > low)
    });
    let range = move || ends.get().or_else(|| known.get().map(|(low, _, high)| (low, high)));
    let slide = move |event: leptos::ev::Event| {
        let Ok(value) = event_target_value(&event).parse::<f64>() else { return };
        if ends.with_untracked(Option::is_none) {
            ends.set(known.get_untracked().map(|(low, _, high)| (low, high)));
        }
        let rounded = (value * 100.0).round() / 100.0;
        open.edit.run(Edit::Figure(Field::CableMetal, Some(Entry::new(rounded, unit()))));
    };
    let done = move |_| {
        ends.set(None);
        let _ = open.pause.try_run(());
    };
    view! {
        <Show when=move || known.with(Option::is_some)>
            <div class="field slide">
                <label for="cost.metal-slider">{words().cost.metal_slider}</label>
                <input
                    id="cost.metal-slider"
                    type="range"
                    step="any"
                    min=move || range().map(|(low, _)| low.to_string())
                    max=move || range().map(|(_, high)| high.to_string())
                    prop:value=move || known.get().map(|(_, now, _)| now.to_string())
                    on:input=slide
                    on:change=done
                />
            </div>
        </Show>
    }
}

/// The equipment that stands for a voltage.
#[component]
fn Stands(way: Way, desk: Desk) -> impl IntoView {
    let open = desk.open;
    let choices = Memo::new(move |_| {
        open.answer.with(|answer| {
            let all = answer.ways.all.iter().filter(|one| one.stands_for(way));
            all.map(|one| (one.key(), name_of(one))).collect::<Vec<(WayKey, String)>>()
        })
    });
    let stands = Memo::new(move |_| {
        open.answer.with(|answer| {
            let place = answer.sweep.as_ref()?.way(way).place?;
            answer.ways.all.get(place).map(name_of)
        })
    });
    let chosen = Memo::new(move |_| {
        let key = open.sheet.with(|sheet| sheet.job.pair[way as usize].clone());
        let place = key.and_then(|key| choices.with(|all| all.iter().position(|(one, _)| *one == key)));
        place.map_or_else(String::new, |place| place.to_string())
    });
    let id = match way {
        Way::V240 => "prices.way_240",
        Way::V480 => "prices.way_480",
    };
    let take = move |event| {
        let place = event_target_value(&event).parse::<usize>().ok();
        let key = place.and_then(|place| choices.with_untracked(|all| all.get(place).map(|(key, _)| key.clone())));
        open.edit.run(Edit::Stands(way, key));
    };
    let assumed = words().fields.assumed;
    let follows = move || stands.get().map_or_else(|| assumed.to_owned(), |name| format!("{name}, {assumed}"));
    let option = |(place, name): (usize, String)| view! { <option value=place.to_string()>{name}</option> };
    let state = move || if chosen.with(String::is_empty) { "assumed" } else { "typed" };
    view! {
        <Show when=move || choices.with(|all| !all.is_empty())>
            <div class="field pick" data-state=state>
                <label for=id>{(words().cost.stands_label)(way)}</label>
                <select id=id prop:value=chosen on:change=take>
                    <option value="">{follows}</option>
                    {move || choices.get().into_iter().map(|(_, name)| name).enumerate().map(option).collect_view()}
                </select>
            </div>
        </Show>
    }
}
