//! The learner's own few numbers: motor, lead, drop, metal; typed, or taken from a job.

use crate::locale::words;
use crate::parts::icon::Icon;
use crate::parts::quantity_field::QuantityField;
use crate::parts::segmented::Segmented;
use crate::state::{Choice, Edit, Open, Sheet, app};
use leptos::prelude::*;
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::Field;
use wellwright_core::papers::{example, with_numbers_of};
use wellwright_core::standards::conductor::Metal;

/// The numbers; on a phone folded to one line.
#[component]
pub fn Own(open: Open, says: Signal<String>) -> impl IntoView {
    let app = app();
    let words = words();
    let lesson = &words.lesson;
    let unfolded = RwSignal::new(false);
    let is_example = Memo::new(move |_| app.learning.with(|learning| learning.progress.is_example()));
    let wrong = Memo::new(move |_| open.answer.with(|answer| !answer.errors.is_empty()));
    let shut = move || !unfolded.get() && !wrong.get();
    let metal = Signal::derive(move || open.sheet.with(|sheet| sheet.job.choices.metal()));
    let to_example = move |_| app.learn(|progress| progress.sheet = Sheet::of(example()));
    view! {
        <section class="lesson-own" class:shut=shut aria-label=lesson.own>
            <button
                class="lesson-fold only-phone"
                aria-expanded=move || (!shut()).to_string()
                on:click=move |_| unfolded.update(|open| *open = !*open)
            >
                <b>{lesson.own}</b>
                <span class="note">{says}</span>
                <Icon name="on" />
            </button>
            <div class="lesson-fields">
                <h2 class="only-desk">{lesson.own}</h2>
                <Show
                    when=move || is_example.get()
                    fallback=move || view! { <button class="btn quiet" on:click=to_example>{lesson.example_again}</button> }
                >
                    <p class="note">{lesson.example}</p>
                </Show>
                <QuantityField field=Field::MotorPower open=open />
                <QuantityField field=Field::PumpSetting open=open called=(lesson.lead_label, lesson.lead_hint) />
                <QuantityField field=Field::AllowedDrop open=open />
                <div class="field pick">
                    <span class="label">{words.fields.metal_label}</span>
                    <Segmented
                        label=words.fields.metal_label
                        name="lesson-metal".to_owned()
                        options=[Metal::Copper, Metal::Aluminum].map(|metal| (metal, (words.fields.metal)(metal))).to_vec()
                        value=metal
                        on_choose=Callback::new(move |metal| open.edit.run(Edit::Choice(Choice::Metal(Some(metal)))))
                    />
                </div>
                <Take />
            </div>
        </section>
    }
}

/// Takes motor, lead, drop and metal of a job.
#[component]
fn Take() -> impl IntoView {
    let app = app();
    let lesson = &words().lesson;
    let jobs = Memo::new(move |_| {
        let named = |kept: &crate::state::Kept| (kept.id.clone(), kept.sheet.job.name.clone());
        app.shelf.with(|shelf| shelf.jobs.iter().map(named).collect::<Vec<_>>())
    });
    let chosen = RwSignal::new(String::new());
    let take = move |event| {
        let id = event_target_value(&event);
        let system = app.settings.with_untracked(|settings| settings.units);
        let found = app.sheet_untracked(&id).map(|sheet| with_numbers_of(&sheet.job, &evaluate(&sheet.job), system));
        match found {
            Some(Some(job)) => app.learn(|progress| progress.sheet = Sheet::of(job)),
            Some(None) => app.tell(lesson.take_not.to_owned()),
            None => {}
        }
        chosen.set(id);
        chosen.set(String::new());
    };
    let some = Memo::new(move |_| jobs.with(|jobs| !jobs.is_empty()));
    let options =
        move || jobs.get().into_iter().map(|(id, name)| view! { <option value=id>{name}</option> }).collect_view();
    view! {
        <Show when=move || some.get()>
            <div class="field pick">
                <label for="lesson.take">{lesson.take}</label>
                <select id="lesson.take" prop:value=move || chosen.get() on:change=take>
                    <option value="">{lesson.take_none}</option>
                    {options}
                </select>
            </div>
        </Show>
    }
}
