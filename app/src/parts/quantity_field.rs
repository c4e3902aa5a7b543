//! A figure with its unit: typed in ink, assumed in pencil, wrong with its reason beneath. What was typed is kept.

use super::stepping::stepped;
use crate::locale::{self, NotRead, entry_in, error_text, not_read_text, unit_name, words};
use crate::parts::icon::Icon;
use crate::platform::focus;
use crate::state::{Edit, Open, Sheet};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use wellwright_core::error::InputError;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::{Field, Origin};
use wellwright_core::quantity::{Entry, Kind, Unit, UnitSystem};

/// What a field shows: everything that follows from the sheet, its evaluation and the unit.
#[derive(Debug, Clone, PartialEq)]
struct Look {
    /// What was typed, in the shown unit; empty where nothing was.
    text: String,
    /// What stands in while nothing is typed.
    stand_in: String,
    /// Where the value comes from, in a word.
    origin: &'static str,
    /// `typed`, `assumed`, `empty`, `rest` or `error`.
    state: &'static str,
    /// What is wrong.
    message: String,
    /// The range that is accepted.
    accepted: String,
}

/// A figure of the job.
#[component]
pub fn QuantityField(
    /// Which figure.
    field: Field,
    /// The open job.
    open: Open,
    /// Label and hint, where they are not those of the job's page.
    #[prop(optional)]
    called: Option<(&'static str, &'static str)>,
) -> impl IntoView {
    let (label, hint) = called.unwrap_or_else(|| ((words().fields.label)(field), (words().fields.hint)(field)));
    let typing = RwSignal::new(None::<String>);
    let own_unit = RwSignal::new(None::<Unit>);
    let unit = Memo::new(move |_| own_unit.get().unwrap_or_else(|| open.system.get().unit(field.kind())));
    let look = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| look(field, sheet, answer, unit.get(), open.system.get())))
    });
    let value = Memo::new(move |_| match typing.get() {
        Some(text) if open.sheet.with(|sheet| agrees(field, &text, sheet, unit.get())) => text,
        _ => look.with(|look| look.text.clone()),
    });
    let result = Memo::new(move |_| typing.with(|text| worked_out(field, text.as_deref()?, unit.get())));
    let input = move |event| {
        let text = event_target_value(&event);
        open.edit.run(match read(field, &text, unit.get_untracked()) {
            Ok(entry) => Edit::Figure(field, entry.map(|(entry, _)| entry)),
            Err(_) => Edit::Draft(field, text.clone()),
        });
        typing.set(Some(text));
    };
    // A field that is taken away while it has the focus loses it after its values are gone.
    let leave = move |_| {
        let _ = typing.try_set(None);
        let _ = open.pause.try_run(());
    };
    let keys = move |event: KeyboardEvent| {
        if event.key() == "Enter" {
            focus::leave(&event);
            return;
        }
        let now = open.sheet.with_untracked(|sheet| {
            let stand_in = || open.answer.with_untracked(|answer| answer.inputs.stand_in(field));
            sheet.job.get(field).or_else(stand_in)
        });
        if let Some(entry) = stepped(&event, field, now, unit.get_untracked()) {
            event.prevent_default();
            typing.set(None);
            open.edit.run(Edit::Figure(field, Some(entry)));
        }
    };
    let name = field.path();
    // A phone's keypad of digits has no stroke and no space, which `7 1/2` needs.
    let keyboard = if field.kind() == Kind::Power { "text" } else { "decimal" };
    let described = format!("{name}-says");
    let wrong = move || look.with(|look| look.state == "error");
    view! {
        <div class="field" data-state=move || look.with(|look| look.state)>
            <label for=name>
                {label}
                <small>{hint}" "<em>{move || look.with(|look| look.origin)}</em></small>
            </label>
            <input
                id=name
                inputmode=keyboard
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
                on:keydown=keys
            />
            <UnitOf field=field label=label unit=unit own=own_unit system=open.system />
            <p class="result" aria-live="polite">{move || result.get()}</p>
            <p class="msg" id=described>
                <Show when=wrong><Icon name="error" /></Show>
                <span>{move || look.with(|look| look.message.clone())}</span>
                <span class="sr">{move || look.with(|look| format!("{} {}", unit_name(unit.get()), look.accepted))}</span>
            </p>
        </div>
    }
}

/// The unit; where the kind has two, a button that shows and takes this one figure in the other.
#[component]
fn UnitOf(
    field: Field,
    label: &'static str,
    unit: Memo<Unit>,
    own: RwSignal<Option<Unit>>,
    system: Signal<UnitSystem>,
) -> impl IntoView {
    // A switch of the whole screen counts for this field too.
    Effect::new(move |before: Option<UnitSystem>| {
        let now = system.get();
        if before.is_some_and(|before| before != now) {
            own.set(None);
        }
        now
    });
    let units = locale::units_of(field.kind());
    if let [first, second] = units[..] {
        let other = move || if unit.get() == first { second } else { first };
        let spoken = move || (words().fields.other_unit)(label, unit_name(unit.get()), unit_name(other()));
        view! {
            <button class="u" type="button" aria-label=spoken on:click=move |_| own.set(Some(other()))>
                {move || unit_name(unit.get())}
            </button>
        }
        .into_any()
    } else {
        view! { <span class="u" aria-hidden="true">{move || unit_name(unit.get())}</span> }.into_any()
    }
}

/// The entry that a text stands for, and whether it was worked out. A unit typed along counts for this entry.
fn read(field: Field, text: &str, unit: Unit) -> Result<Option<(Entry, bool)>, NotRead> {
    let read = locale::read(text, field.kind())?;
    Ok(read.map(|read| (Entry::new(read.value, read.unit.unwrap_or(unit)), read.worked_out)))
}

/// The result of a sum that is being typed, and a typed unit in the shown one.
fn worked_out(field: Field, text: &str, unit: Unit) -> Option<String> {
    let (entry, worked_out) = read(field, text, unit).ok()??;
    (worked_out || entry.unit != unit).then(|| (words().fields.equals)(&entry_in(entry, unit).text()))
}

/// Whether a text being typed still says what the sheet holds; if not, the sheet was changed elsewhere and wins.
fn agrees(field: Field, text: &str, sheet: &Sheet, unit: Unit) -> bool {
    match read(field, text, unit) {
        Err(_) => sheet.drafts.get(&field).is_some_and(|draft| draft == text),
        Ok(typed) => !sheet.drafts.contains_key(&field) && sheet.job.get(field) == typed.map(|(entry, _)| entry),
    }
}

fn look(field: Field, sheet: &Sheet, answer: &Evaluation, unit: Unit, system: UnitSystem) -> Look {
    let range = field.spec().accepted;
    let [from, to] = [range.min, range.max].map(|end| entry_in(Entry::new(end, range.unit), unit).text());
    let accepted = (words().fields.accepted)(&from, &to);
    let draft = sheet.drafts.get(&field);
    let given = sheet.job.get(field);
    let text = match (draft, given) {
        (Some(draft), _) => draft.clone(),
        (None, Some(given)) => entry_in(given, unit).figure,
        (None, None) => String::new(),
    };
    let error = answer.errors.iter().find(|error| error.field() == field);
    let reason = draft.and_then(|draft| read(field, draft, unit).err().map(|reason| not_read_text(draft, &reason)));
    let message = match (reason, error) {
        (Some(reason), _) => format!("{reason} {accepted}."),
        (None, Some(error)) => error_text(error, system),
        (None, None) => String::new(),
    };
    let stand_in = match given {
        None => answer.inputs.stand_in(field).map(|stand| entry_in(stand, unit).figure).unwrap_or_default(),
        Some(_) => String::new(),
    };
    let state = match error {
        Some(InputError::Missing { .. }) => "empty",
        Some(_) => "error",
        None if given.is_some() => "typed",
        None if stand_in.is_empty() => "rest",
        None => "assumed",
    };
    let origin = if given.is_some() || stand_in.is_empty() { "" } else { origin(field, answer) };
    Look { text, stand_in, origin, state, message, accepted }
}

/// Where the value of an empty field comes from, in a word.
pub fn origin(field: Field, answer: &Evaluation) -> &'static str {
    let fields = &words().fields;
    match answer.inputs.origin(field) {
        Origin::WorkedOut => fields.worked_out,
        Origin::Table => fields.from_table,
        Origin::Assumed if of_book(field) => fields.from_book,
        _ => fields.assumed,
    }
}

/// Whether the price book tells what stands in an empty field.
fn of_book(field: Field) -> bool {
    matches!(field, Field::CableFixed | Field::CableMetal | Field::LineFixed | Field::LinePrice | Field::LineFree)
}
