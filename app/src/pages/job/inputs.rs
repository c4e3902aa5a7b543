//! The figures and choices of a job, in the order in which people have them.

use crate::locale::{self, words};
use crate::parts::choice::ChoiceField;
use crate::parts::quantity_field::QuantityField;
use crate::state::{Choice, Edit, Sheet, app};
use leptos::prelude::*;
use wellwright_core::cable::reactance::Build;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::{Choices, Field};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::Metal;

/// The inputs of a job.
#[component]
pub fn Inputs(
    /// The job's id.
    id: Signal<String>,
    /// The job.
    sheet: Memo<Sheet>,
    /// Its evaluation.
    answer: Memo<Evaluation>,
) -> impl IntoView {
    let words = words();
    let figure = move |field| view! { <QuantityField field=field id=id sheet=sheet answer=answer /> };
    view! {
        <section>
            <h2>{words.frame.pages[0]}</h2>
            {figure(Field::PumpSetting)}
            {figure(Field::SurfaceRun)}
        </section>
        <section>
            <h2>{words.frame.pages[1]}</h2>
            {figure(Field::MotorPower)}
            {figure(Field::NameplateAmps230)}
            {figure(Field::NameplateAmps460)}
            {figure(Field::MotorPowerFactor)}
            {figure(Field::MotorEfficiency)}
            <MotorChoices id=id sheet=sheet />
        </section>
        <section>
            <h2>{words.frame.pages[3]}</h2>
            {figure(Field::AllowedDrop)}
            {figure(Field::Ambient)}
            {figure(Field::DeviceAmps)}
            <CableChoices id=id sheet=sheet />
        </section>
        <section>
            <h2>{words.frame.pages[4]}</h2>
            {figure(Field::CableMetal)}
            {figure(Field::CableFixed)}
            {figure(Field::ExtraEquipment)}
            <PriceSource id=id sheet=sheet />
        </section>
    }
}

/// Writes a choice.
fn choose<T>(id: Signal<String>, make: fn(Option<T>) -> Choice) -> Callback<Option<T>>
where
    T: Copy + Send + Sync + 'static,
{
    let app = app();
    Callback::new(move |value| id.with_untracked(|id| app.edit(id, Edit::Choice(make(value)))))
}

/// Reads a choice.
fn chosen<T: Copy + Send + Sync + PartialEq + 'static>(
    sheet: Memo<Sheet>,
    pick: fn(&Choices) -> Option<T>,
) -> Signal<Option<T>> {
    Signal::derive(move || sheet.with(|sheet| pick(&sheet.job.choices)))
}

#[component]
fn MotorChoices(id: Signal<String>, sheet: Memo<Sheet>) -> impl IntoView {
    let words = words();
    let usual = Choices::default();
    view! {
        <ChoiceField
            label=words.fields.motor_kind_label
            id="motor.kind"
            options=[MotorKind::Submersible, MotorKind::Surface].map(|kind| (kind, (words.fields.motor_kind)(kind))).to_vec()
            assumed=usual.motor_kind()
            value=chosen(sheet, |choices| choices.motor_kind)
            on_choose=choose(id, Choice::MotorKind)
        />
    }
}

#[component]
fn CableChoices(id: Signal<String>, sheet: Memo<Sheet>) -> impl IntoView {
    let words = words();
    let usual = Choices::default();
    let sets: Vec<_> = (1..=Choices::SETS_LIMIT).map(|sets| (sets, (words.fields.sets)(sets))).collect();
    let builds = [Build::PlasticConduit, Build::FlatJacketed, Build::Twisted, Build::SteelConduit];
    view! {
        <ChoiceField
            label=words.fields.terminals_label
            id="cable.terminals_marked_75"
            options=[false, true].map(|marked| (marked, if marked { words.frame.on } else { words.frame.off })).to_vec()
            assumed=usual.terminals_marked_75()
            value=chosen(sheet, |choices| choices.terminals_marked_75)
            on_choose=choose(id, Choice::Terminals)
        />
        <ChoiceField
            label=words.fields.insulation_label
            id="cable.insulation"
            options=[Rating::C60, Rating::C75, Rating::C90].map(|rating| (rating, locale::rating(rating))).to_vec()
            assumed=usual.insulation()
            value=chosen(sheet, |choices| choices.insulation)
            on_choose=choose(id, Choice::Insulation)
        />
        <ChoiceField
            label=words.fields.build_label
            id="cable.build"
            options=builds.map(|build| (build, (words.fields.build)(build))).to_vec()
            assumed=usual.build()
            value=chosen(sheet, |choices| choices.build)
            on_choose=choose(id, Choice::Build)
        />
        <ChoiceField
            label=words.fields.metal_label
            id="cable.metal"
            options=[Metal::Copper, Metal::Aluminum].map(|metal| (metal, (words.fields.metal)(metal))).to_vec()
            assumed=usual.metal()
            value=chosen(sheet, |choices| choices.metal)
            on_choose=choose(id, Choice::Metal)
        />
        <ChoiceField
            label=words.fields.sets_label
            id="cable.most_sets"
            options=sets
            assumed=usual.most_sets()
            value=chosen(sheet, |choices| choices.most_sets)
            on_choose=choose(id, Choice::Sets)
        />
    }
}

/// Where the prices come from, in the user's words.
#[component]
fn PriceSource(id: Signal<String>, sheet: Memo<Sheet>) -> impl IntoView {
    let app = app();
    let write = move |event| id.with(|id| app.edit(id, Edit::PriceSource(event_target_value(&event))));
    view! {
        <div class="field line">
            <label for="prices.source">{words().fields.price_source}</label>
            <input
                id="prices.source"
                maxlength="120"
                autocomplete="off"
                prop:value=move || sheet.with(|sheet| sheet.job.price_source.clone())
                on:input=write
                on:blur=move |_| id.with(|id| app.pause(id))
            />
        </div>
    }
}
