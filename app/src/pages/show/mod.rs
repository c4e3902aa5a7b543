//! The answer for the customer's side of the table: the picture large, three numbers, the depth to move. It plays with a
//! copy: the job stays as it is.

pub mod numbers;

use crate::locale::{self, entry_text, words};
use crate::pages::job::findings::Findings;
use crate::pages::job::headline::reason;
use crate::pages::job::{Desk, NotFound, Picture, SenseOfDepth, depth_field};
use crate::parts::announcer::Announcer;
use crate::parts::icon::Icon;
use crate::parts::screen_settings::SettingsMenu;
use crate::pictures::depth_after;
use crate::platform::{focus, full_screen, theme, wake};
use crate::routes::{Page, Route};
use crate::state::{Edit, Open, Sheet, app};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use numbers::{ThreeNumbers, Told, heard};
use wellwright_core::finding::Severity;
use wellwright_core::job::Field;
use wellwright_core::quantity::Entry;

/// A figure that was moved on the copy.
type Moved = Option<(Field, Entry)>;

/// The page.
#[component]
pub fn ShowPage(
    /// The job's id.
    id: String,
) -> impl IntoView {
    let app = app();
    if app.sheet_untracked(&id).is_none() {
        return view! { <NotFound /> }.into_any();
    }
    let id = StoredValue::new(id);
    let present = Memo::new(move |_| id.with_value(|id| app.shelf.with(|shelf| shelf.find(id).is_some())));
    let kept = Memo::new(move |_| id.with_value(|id| app.sheet(id)).unwrap_or_default());
    let moved = RwSignal::new(Moved::None);
    let open = copy_of(kept, moved);
    theme::stage(true);
    wake::ask();
    on_cleanup(|| {
        theme::stage(false);
        wake::release();
        full_screen::leave();
    });
    let back = move || id.with_value(|id| Route::Job(id.clone(), Page::Water).href());
    let keys = window_event_listener(leptos::ev::keydown, move |event| key(&event, open, id));
    on_cleanup(move || keys.remove());
    let name = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.name.clone()));
    Effect::new(move |_| {
        let name = name.get();
        document().set_title(&format!("{} · {name} · {}", words().show.title, words().frame.app));
    });
    let currency = Memo::new(move |_| open.answer.with(locale::currency_of));
    on_cleanup(|| locale::count_in(None));
    let whole = move || {
        locale::count_in(currency.get());
        view! {
            <Show when=move || present.get() fallback=|| view! { <NotFound /> }>
                <Stage open=open kept=kept moved=moved back=Signal::derive(back) />
            </Show>
        }
    };
    view! { {whole} }.into_any()
}

/// A copy of a job on which one figure can be moved.
fn copy_of(kept: Memo<Sheet>, moved: RwSignal<Moved>) -> Open {
    let sheet = Memo::new(move |_| {
        let mut sheet = kept.get();
        if let Some((field, entry)) = moved.get() {
            sheet.set(field, Some(entry));
        }
        sheet
    });
    let edit = Callback::new(move |edit| {
        if let Edit::Figure(field, Some(entry)) = edit {
            moved.set(Some((field, entry)));
        }
    });
    Open::of(app(), sheet, edit, Callback::new(|()| ()))
}

/// Keys move the depth from anywhere on the page; Escape leaves it.
fn key(event: &KeyboardEvent, open: Open, id: StoredValue<String>) {
    if event.default_prevented() || event.ctrl_key() || event.meta_key() || event.alt_key() {
        return;
    }
    if focus::has_own_keys(event) {
        return;
    }
    if event.key() == "Escape" {
        id.with_value(|id| Route::Job(id.clone(), Page::Water)).go();
        return;
    }
    let now = open.answer.with_untracked(|answer| answer.depth);
    if let Some(entry) = depth_after(&event.key(), now, open.system.get_untracked()) {
        event.prevent_default();
        open.edit.run(Edit::Figure(depth_field(open), Some(entry)));
    }
}

#[component]
fn Stage(open: Open, kept: Memo<Sheet>, moved: RwSignal<Moved>, back: Signal<String>) -> impl IntoView {
    let app = app();
    let show = &words().show;
    let desk = Desk::of(open);
    let money = Signal::derive(move || !app.settings.get().prices_hidden);
    let told = Memo::new(move |_| Told {
        system: open.system.get(),
        basis: desk.basis.get(),
        money: money.get(),
        metal: open.sheet.with(|sheet| sheet.job.choices.metal()),
    });
    let said = Memo::new(move |_| desk.seen.with(|answer| heard(answer, told.get())));
    let why = move || desk.seen.with(|answer| reason(answer, open.system.get()));
    let invented = Memo::new(move |_| money.get() && open.answer.with(is_invented));
    view! {
        <main class="show">
            <div class="stage"><Picture desk=desk money=money /></div>
            <aside>
                <header>
                    <h1>{move || open.sheet.with(|sheet| sheet.job.name.clone())}</h1>
                    <SettingsMenu />
                    <a class="btn" href=back aria-label=show.close><Icon name="close" /></a>
                </header>
                <ThreeNumbers answer=desk.seen told=told />
                <p class="why">{why}</p>
                <Findings open=open least=Severity::Stop />
                <div class="controls">
                    <Back kept=kept moved=moved open=open />
                    <SenseOfDepth desk=desk />
                    <div class="row">
                        <button
                            class="btn"
                            aria-pressed=move || (!money.get()).to_string()
                            on:click=move |_| app.set(|settings| settings.prices_hidden = !settings.prices_hidden)
                        >
                            {show.hide_prices}
                        </button>
                        <FullScreen />
                    </div>
                </div>
                <p class="note">
                    <Show when=move || invented.get()>{show.invented}" "</Show>
                    {show.foot}
                </p>
            </aside>
            <Announcer text=said />
        </main>
    }
}

/// Whether the prices that an answer counts with are invented.
pub fn is_invented(answer: &wellwright_core::evaluate::Evaluation) -> bool {
    answer.inputs.prices.as_ref().is_ok_and(|prices| prices.book.is_invented())
}

/// Back to the job's own figure, once it was moved.
#[component]
fn Back(kept: Memo<Sheet>, moved: RwSignal<Moved>, open: Open) -> impl IntoView {
    // The job's own entry, where it is another.
    let own = Memo::new(move |_| {
        let (field, entry) = moved.get()?;
        kept.with(|sheet| sheet.job.get(field)).filter(|own| *own != entry)
    });
    let there = Memo::new(move |_| own.get().is_some());
    let text = move || own.get().map(|own| (words().show.back_to)(&entry_text(own, open.system.get())));
    view! {
        <Show when=move || there.get()>
            <button class="btn" on:click=move |_| moved.set(None)><Icon name="undo" />{text}</button>
        </Show>
    }
}

/// The whole screen for the page, where the browser can.
#[component]
fn FullScreen() -> impl IntoView {
    let full = full_screen::follow();
    let show = &words().show;
    let word = move || if full.get() { show.leave_full_screen } else { show.full_screen };
    full_screen::can().then(|| view! { <button class="btn" on:click=move |_| full_screen::toggle()>{word}</button> })
}
