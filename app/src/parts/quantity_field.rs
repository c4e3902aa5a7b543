//! A figure with its unit: typed in ink, assumed in pencil, wrong with its reason beneath. What was typed is kept.

use crate::locale::{self, entry, error_text, not_read_text, words};
use crate::parts::icon::Icon;
use crate::state::{Edit, Sheet, app};
use leptos::prelude::*;
use wellwright_core::error::InputError;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::{Field, Origin, Stand, Way};
use wellwright_core::quantity::{Entry, UnitSystem};

/// What a field shows: everything that follows from the sheet, its evaluation and the units.
#[derive(Debug, Clone, PartialEq)]
struct Look {
    /// What was typed, in the shown unit; empty where nothing was.
    text: String,
    /// What stands in while nothing is typed.
    stand_in: String,
    /// Where the value comes from, in a word.
    origin: &'static str,
    /// `typed`, `assumed`, `empty` or `error`.
    state: &'static str,
    /// What is wrong.
    message: String,
    /// The range that is accepted.
    accepted: String,
    /// The unit.
    unit: &'static str,
}

/// A figure of the job.
#[component]
pub fn QuantityField(
    /// Which figure.
    field: Field,
    /// The job's id.
    #[prop(into)]
    id: Signal<String>,
    /// The job.
    sheet: Memo<Sheet>,
    /// Its evaluation.
    answer: Memo<Evaluation>,
) -> impl IntoView {
    let app = app();
    let typing = RwSignal::new(None::<String>);
    let units = move || app.settings.get().units;
    let look = Memo::new(move |_| sheet.with(|sheet| answer.with(|answer| look(field, sheet, answer, units()))));
    let value = Memo::new(move |_| match typing.get() {
        Some(text) if sheet.with(|sheet| agrees(field, &text, sheet, units())) => text,
        _ => look.with(|look| look.text.clone()),
    });
    let input = move |event| {
        let text = event_target_value(&event);
        let edit = match read(field, &text) {
            Ok(value) => Edit::Figure(field, value.map(|value| Entry::new(value, units().unit(field.kind())))),
            Err(_) => Edit::Draft(field, text.clone()),
        };
        typing.set(Some(text));
        id.with_untracked(|id| app.edit(id, edit));
    };
    let leave = move |_| {
        typing.set(None);
        id.with_untracked(|id| app.pause(id));
    };
    let name = field.path();
    let (described, hint) = (format!("{name}-says"), (words().fields.hint)(field));
    let wrong = move || look.with(|look| look.state == "error");
    view! {
        <div class="field" data-state=move || look.with(|look| look.state)>
            <label for=name>
                {(words().fields.label)(field)}
                <small>
                    {hint}
                    " "
                    <em>{move || look.with(|look| look.origin)}</em>
                </small>
            </label>
            <input
                id=name
                inputmode="decimal"
                autocomplete="off"
                spellcheck="false"
                enterkeyhint="done"
                maxlength="60"
                aria-describedby=described.clone()
                aria-invalid=move || wrong().then_some("true")
                placeholder=move || look.with(|look| look.stand_in.clone())
                prop:value=value
                on:input=input
                on:blur=leave
            />
            <span class="u" aria-hidden="true">{move || look.with(|look| look.unit)}</span>
            <p class="msg" id=described>
                <Show when=wrong><Icon name="error" /></Show>
                <span>{move || look.with(|look| look.message.clone())}</span>
                <span class="sr">{move || look.with(|look| format!("{} {}", look.unit, look.accepted))}</span>
            </p>
        </div>
    }
}

/// Whether a text being typed still says what the sheet holds; if not, the sheet was changed elsewhere and wins.
fn agrees(field: Field, text: &str, sheet: &Sheet, system: UnitSystem) -> bool {
    match read(field, text) {
        Err(_) => sheet.drafts.get(&field).is_some_and(|draft| draft == text),
        Ok(value) => {
            let typed = value.map(|value| Entry::new(value, system.unit(field.kind())));
            !sheet.drafts.contains_key(&field) && sheet.job.get(field) == typed
        }
    }
}

fn look(field: Field, sheet: &Sheet, answer: &Evaluation, system: UnitSystem) -> Look {
    let unit = locale::unit_name(system.unit(field.kind()));
    let range = field.spec().accepted;
    let [from, to] = [range.min, range.max].map(|end| locale::entry_text(Entry::new(end, range.unit), system));
    let accepted = (words().fields.accepted)(&from, &to);
    let draft = sheet.drafts.get(&field);
    let given = sheet.job.get(field);
    let text = match (draft, given) {
        (Some(draft), _) => draft.clone(),
        (None, Some(given)) => entry(given, system).figure,
        (None, None) => String::new(),
    };
    let error = answer.errors.iter().find(|error| error.field() == field);
    let reason = draft.and_then(|draft| read(field, draft).err().map(|reason| not_read_text(draft, &reason)));
    let message = match (reason, error) {
        (Some(reason), _) => format!("{reason} {accepted}."),
        (None, Some(error)) => error_text(error, system),
        (None, None) => String::new(),
    };
    let state = match error {
        Some(InputError::Missing { .. }) => "empty",
        Some(_) => "error",
        None if given.is_some() => "typed",
        None => "assumed",
    };
    let stand_in = match given {
        None => answer.inputs.stand_in(field).map(|stand| entry(stand, system).figure).unwrap_or_default(),
        Some(_) => String::new(),
    };
    let origin = if given.is_some() || stand_in.is_empty() { "" } else { origin(field, answer) };
    Look { text, stand_in, origin, state, message, accepted, unit }
}

/// Where the value of an empty field comes from.
fn origin(field: Field, answer: &Evaluation) -> &'static str {
    match field.spec().default {
        Stand::Nothing => "",
        Stand::Optional => {
            let way = Way::ALL.into_iter().find(|way| way.nameplate_field() == field);
            let current = way.and_then(|way| answer.inputs.motor_current[way as usize].as_ref().ok());
            match current.and_then(|current| current.nameplate).map(|known| known.origin) {
                Some(Origin::WorkedOut) => words().fields.worked_out,
                _ => words().fields.from_table,
            }
        }
        Stand::Assumed(_) | Stand::Follows => words().fields.assumed,
    }
}

fn read(field: Field, text: &str) -> Result<Option<f64>, locale::NotRead> {
    locale::read(text, field.kind()).map(|read| read.map(|read| read.value))
}
