//! The curve inside a page of somebody else. It stores nothing and reads nothing that is stored.

mod asked;
mod message;

use super::show::is_invented;
use super::show::numbers::{ThreeNumbers, Told, heard};
use crate::locale::{self, Decimals, words};
use crate::pages::job::findings::Findings;
use crate::pages::job::{CountIn, Desk, SenseOfDepth, depth_field};
use crate::parts::announcer::Announcer;
use crate::parts::icon::{Icon, Sprite};
use crate::parts::quantity_field::QuantityField;
use crate::parts::segmented::Segmented;
use crate::pictures::Plate;
use crate::platform::{frame, language, theme};
use crate::routes::Route;
use crate::state::{Edit, Open, Sheet};
use asked::{Asked, Change, Look, Refused, Why};
use leptos::html::Main;
use leptos::prelude::*;
use message::Message;
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::Severity;
use wellwright_core::job::Field;
use wellwright_core::passing;
use wellwright_core::passing::preset::PresetError;
use wellwright_core::quantity::UnitSystem;

/// Size of the picture where the page is printed, in pixels of the page.
const PAPER: (f64, f64) = (680.0, 430.0);

/// Whether an address asks for this page.
#[must_use]
pub fn is_asked_for() -> bool {
    let search = window().location().search().unwrap_or_default();
    frame::words_of(&search).iter().any(|(word, _)| word == asked::EMBED)
}

/// What the page holds.
#[derive(Clone, Copy)]
struct Held {
    sheet: RwSignal<Sheet>,
    look: RwSignal<Look>,
    refused: RwSignal<Vec<Refused>>,
    change: StoredValue<Vec<Change>>,
    hosts: StoredValue<Vec<String>>,
    desk: Desk,
}

/// The page.
#[component]
pub fn Embed() -> impl IntoView {
    let held = Held::of(Asked::of_address(&frame::words_of_address(), frame::is_origin));
    let browser = language::of_browser();
    let main = NodeRef::<Main>::new();
    held.talk();
    frame::follow_height(main, frame::send_height);
    theme::embed();
    Effect::new(move |_| theme::mark(held.look.get().theme));
    let speech = Memo::new(move |_| match held.look.get().language {
        Some(asked) if asked != browser.0 => (asked, Decimals::default()),
        _ => browser,
    });
    let currency = Memo::new(move |_| held.desk.open.answer.with(locale::currency_of));
    let whole = move || {
        let (spoken, decimals) = speech.get();
        locale::speak(spoken, decimals);
        locale::count_in(currency.get());
        language::mark(spoken);
        document().set_title(words().frame.app);
        view! { <Frame held=held main=main /> }
    };
    view! {
        <Sprite />
        {whole}
    }
}

impl Held {
    fn of(asked: Asked) -> Self {
        let sheet = RwSignal::new(Sheet::of(asked.job));
        let look = RwSignal::new(asked.look);
        let read = Memo::new(move |_| sheet.get());
        let desk = Desk::of(Open {
            sheet: read,
            answer: Memo::new(move |_| read.with(|sheet| evaluate(&sheet.job))),
            system: Signal::derive(move || look.get().units),
            edit: Callback::new(move |edit: Edit| sheet.set(edit.apply(sheet.get_untracked()))),
            pause: Callback::new(|()| ()),
            note: Callback::new(|_| ()),
        });
        desk.sense.set(asked.look.sense);
        desk.count_in(asked.look.basis);
        Self {
            sheet,
            look,
            refused: RwSignal::new(asked.refused),
            change: StoredValue::new(asked.change),
            hosts: StoredValue::new(asked.hosts),
            desk,
        }
    }

    fn may_change(self, what: Change) -> bool {
        self.change.with_value(|change| change.contains(&what))
    }

    fn send(self, message: &serde_json::Value) {
        self.hosts.with_value(|hosts| frame::send(hosts, message));
    }

    /// Hears the page around, and tells it every result, at most one for each frame of the screen.
    fn talk(self) {
        let hosts = self.hosts.get_value();
        if hosts.is_empty() {
            return;
        }
        let tell = move || {
            let basis = self.desk.basis.try_get_untracked();
            let told = self.desk.seen.try_with_untracked(|answer| message::result(answer, basis.unwrap_or_default()));
            if let Some(told) = told {
                self.send(&told);
            }
        };
        let waits = StoredValue::new(false);
        Effect::new(move |_| {
            self.desk.seen.track();
            self.desk.basis.track();
            if waits.try_update_value(|waits| std::mem::replace(waits, true)) == Some(false) {
                request_animation_frame(move || {
                    waits.set_value(false);
                    tell();
                });
            }
        });
        frame::follow(hosts, move |text| match message::read(&text) {
            Some(Message::Set(words)) => self.set(&words),
            Some(Message::Ask) => tell(),
            Some(Message::Unknown) => self.send(&message::not_known()),
            None => {}
        });
        self.send(&message::ready());
        let refused = self.refused.get_untracked();
        if !refused.is_empty() {
            self.send(&message::refused(&refused));
        }
    }

    /// Takes the words of a message.
    fn set(self, words: &[(String, String)]) {
        let (job, look) = (self.sheet.get_untracked().job, self.look.get_untracked());
        let mut asked = Asked { job, look: self.look_now(look), ..Asked::default() };
        let before = asked.job.clone();
        asked.take(words);
        if asked.job != before {
            self.sheet.set(Sheet::of(asked.job));
        }
        self.desk.sense.set(asked.look.sense);
        self.desk.count_in(asked.look.basis);
        self.look.set(asked.look);
        if !asked.refused.is_empty() {
            self.send(&message::refused(&asked.refused));
        }
        self.refused.set(asked.refused);
    }

    /// The look with what a visitor chose since.
    fn look_now(self, look: Look) -> Look {
        Look { basis: self.desk.basis.get_untracked(), sense: self.desk.sense.get_untracked(), ..look }
    }
}

#[component]
fn Frame(held: Held, main: NodeRef<Main>) -> impl IntoView {
    let Held { desk, look, .. } = held;
    let open = desk.open;
    let money = Signal::derive(move || !look.get().money_hidden);
    let told = Memo::new(move |_| Told {
        system: open.system.get(),
        basis: desk.basis.get(),
        money: money.get(),
        metal: open.sheet.with(|sheet| sheet.job.choices.metal()),
    });
    let said = Memo::new(move |_| desk.seen.with(|answer| heard(answer, told.get())));
    let invented = Memo::new(move |_| money.get() && open.answer.with(is_invented));
    let embed = &words().embed;
    let open_whole = move |event: leptos::ev::MouseEvent| {
        event.prevent_default();
        let mut job = open.sheet.with_untracked(|sheet| sheet.job.clone());
        if job.name.trim().is_empty() {
            words().list.new_job_name.clone_into(&mut job.name);
        }
        let letters = passing::write(&job);
        frame::open_apart(&Route::Add(letters).address());
    };
    view! {
        <main class="embed" node_ref=main>
            <h1 class="sr">{embed.title}</h1>
            <ThreeNumbers answer=desk.seen told=told />
            <Plate
                answer=desk.seen
                band=Memo::new(|_| None)
                system=open.system
                basis=desk.basis.into()
                theme=Signal::derive(move || look.get().theme)
                on_grab=open.pause
                on_depth=Callback::new(move |entry| open.edit.run(Edit::Figure(depth_field(open), Some(entry))))
                paper=PAPER
                on_paper=false
                money=money
                movable=held.may_change(Change::Depth)
            />
            <Controls held=held />
            <NotTaken refused=held.refused />
            <Findings open=open least=Severity::Stop />
            <p class="note">
                <Show when=move || invented.get()>{words().show.invented}" "</Show>
                {words().show.foot}" "
                <a href=Route::Jobs.address() target="_blank" rel="noopener" on:click=open_whole>{embed.open_whole}</a>
            </p>
            <Announcer text=said />
        </main>
    }
}

/// What a visitor may change.
#[component]
fn Controls(held: Held) -> impl IntoView {
    let Held { desk, look, .. } = held;
    let open = desk.open;
    let settings = &words().frame;
    let field = |change: Change, field: Field| {
        held.may_change(change).then(|| view! { <QuantityField field=field open=open /> })
    };
    let units = || {
        view! {
            <Segmented
                label=settings.units
                name="units".to_owned()
                options=vec![(UnitSystem::Us, settings.us), (UnitSystem::Si, settings.si)]
                value=open.system
                on_choose=Callback::new(move |units| look.update(|look| look.units = units))
            />
        }
    };
    view! {
        <div class="controls">
            {field(Change::Motor, Field::MotorPower)}
            {field(Change::Price, Field::CableMetal)}
            {held.may_change(Change::Sense).then(|| view! { <SenseOfDepth desk=desk /> })}
            {held.may_change(Change::Count).then(|| view! { <CountIn desk=desk /> })}
            {held.may_change(Change::Units).then(units)}
        </div>
    }
}

/// Words of the page around that could not be taken, and why.
#[component]
fn NotTaken(refused: RwSignal<Vec<Refused>>) -> impl IntoView {
    let row = |one: Refused| {
        let why = why(&one.why);
        view! { <li><Icon name="error" /><span><b>{one.word}" = "{one.value}</b>": "{why}</span></li> }
    };
    view! { <div role="alert"><ul class="not-taken">{move || refused.get().into_iter().map(row).collect_view()}</ul></div> }
}

fn why(why: &Why) -> String {
    let embed = &words().embed;
    match why {
        Why::Choice => embed.other_choice.to_owned(),
        Why::Preset(PresetError::Unknown) => embed.unknown_word.to_owned(),
        Why::Preset(PresetError::TooLong) => embed.too_long.to_owned(),
        Why::Preset(PresetError::NotANumber) => embed.not_a_number.to_owned(),
        Why::Preset(PresetError::OtherUnit { accepted }) => {
            let names: Vec<&str> = accepted.iter().map(|unit| locale::unit_name(*unit)).collect();
            (embed.other_unit)(&names.join(", "))
        }
        Why::Preset(PresetError::Link(_)) => words().passing.link_no_job.to_owned(),
        Why::Preset(_) => embed.other_choice.to_owned(),
    }
}
