//! One job: seven pages around one picture. Inputs at the left, the answer and the picture at the right; on a phone one
//! column, the answer on top.

mod answers;
mod bar;
mod beside;
pub mod book;
mod cable;
mod cell;
mod chapter;
mod cost;
mod curve;
mod curve_choices;
mod equipment;
mod exchange;
mod figures;
pub mod findings;
mod grids;
pub mod headline;
mod nudge;
mod outlook;
mod papers;
mod pipe;
mod power;
pub mod pump;
mod ranks;
mod startup;
mod supply;
mod water;
mod ways;
mod year;

use crate::locale::{self, words};
use crate::parts::empty::Empty;
use crate::parts::notice::StorageNotice;
use crate::parts::segmented::Segmented;
use crate::parts::stations::{Dock, Traverse};
use crate::parts::working::WorkingDrawer;
use crate::pictures::Plate;
use crate::platform::first::{self, Last};
use crate::platform::focus;
use crate::routes::{Page, Route};
use crate::state::{Choice, Edit, Open, app};
use answers::Answers;
use bar::Bar;
use findings::Findings;
use headline::sentence;
use leptos::html;
use leptos::prelude::*;
use nudge::Nudge;
use supply::Supply;
use wellwright_core::evaluate::range::{Band, band};
use wellwright_core::evaluate::{Basis, Evaluation, Sense, Sweep, evaluate};
use wellwright_core::job::{Choices, Field, WayKey};
use wellwright_core::papers::{Topic, working};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::Entry;

/// A working that is open.
#[derive(Clone, Copy)]
enum Opened {
    /// Of a figure that is what it is.
    Fixed(Topic),
    /// Of an answer that counts in what is chosen under the picture.
    Counting(fn(Basis) -> Topic),
    /// Of an answer with another figure in a field.
    With(Field, Entry, Topic),
}

/// What the pages of a job share.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The open job.
    pub open: Open,
    /// What is counted in: what was asked for, as far as it is known.
    pub basis: Memo<Basis>,
    /// What was asked to be counted in.
    asked: RwSignal<Basis>,
    /// What depth means along the curve.
    pub sense: RwSignal<Sense>,
    /// What the band along the curve shows.
    pub band: RwSignal<Band>,
    /// The further ways that stand along the curve.
    pub beside: RwSignal<Vec<WayKey>>,
    /// The evaluation in that sense, with those ways.
    pub seen: Memo<Evaluation>,
    /// The working that is open.
    working: RwSignal<Option<Opened>>,
    /// Whether a page was turned: then the new page's heading takes the focus.
    turned: StoredValue<bool>,
    /// What is open of the price book.
    book: book::Unfolded,
    /// The paper in sight.
    paper: RwSignal<papers::Paper>,
    /// Whether its readings are lines to write on.
    blank: RwSignal<papers::Readings>,
}

impl Desk {
    /// The desk of a job that is open.
    #[must_use]
    pub fn of(open: Open) -> Self {
        let sense = RwSignal::new(Sense::default());
        let asked = RwSignal::new(Basis::Installed);
        let beside = RwSignal::new(Vec::new());
        let seen = move |answer: &Evaluation| {
            let (sense, keys) = (sense.get(), beside.get());
            open.sheet.with(|sheet| answer.with_beside(&sheet.job, sense, &keys))
        };
        let years =
            Memo::new(move |_| open.answer.with(|answer| answer.sweep.as_ref().is_some_and(Sweep::has_lifetime)));
        Self {
            open,
            basis: Memo::new(move |_| match asked.get() {
                Basis::Lifetime if !years.get() => Basis::Installed,
                asked => asked,
            }),
            asked,
            sense,
            band: RwSignal::new(Band::default()),
            beside,
            seen: Memo::new(move |_| open.answer.with(seen)),
            working: RwSignal::new(None),
            turned: StoredValue::new(false),
            book: book::Unfolded::default(),
            paper: RwSignal::new(papers::Paper::default()),
            blank: RwSignal::new(papers::Readings::default()),
        }
    }

    /// Counts in something else from here on.
    pub fn count_in(self, basis: Basis) {
        self.asked.set(basis);
    }

    /// Opens the working of one figure.
    fn opens(self, topic: Topic) -> Callback<()> {
        Callback::new(move |()| self.show_working(Opened::Fixed(topic)))
    }

    /// Opens the working of an answer, on the basis that is chosen.
    fn opens_on_basis(self, topic: fn(Basis) -> Topic) -> Callback<()> {
        Callback::new(move |()| self.show_working(Opened::Counting(topic)))
    }

    /// Opens any working.
    fn opener(self) -> Callback<Topic> {
        Callback::new(move |topic| self.show_working(Opened::Fixed(topic)))
    }

    fn show_working(self, opened: Opened) {
        focus::remember();
        self.working.set(Some(opened));
    }

    /// Whether the motor works on the surface.
    fn on_surface(self) -> bool {
        self.open.answer.with(|answer| answer.kind == MotorKind::Surface)
    }

    /// A choice of the job.
    fn chosen<T: Send + Sync + 'static>(self, pick: fn(&Choices) -> Option<T>) -> Signal<Option<T>> {
        Signal::derive(move || self.open.sheet.with(|sheet| pick(&sheet.job.choices)))
    }

    /// Makes a choice.
    fn choose<T: Send + Sync + 'static>(self, choice: fn(Option<T>) -> Choice) -> Callback<Option<T>> {
        Callback::new(move |chosen| self.open.edit.run(Edit::Choice(choice(chosen))))
    }
}

/// Address of a page of a job.
fn page_href(id: StoredValue<String>, page: Page) -> String {
    id.with_value(|id| Route::Job(id.clone(), page).href())
}

/// A job's pages.
#[component]
pub fn JobPage(
    /// Its id.
    id: String,
) -> impl IntoView {
    let app = app();
    if app.sheet_untracked(&id).is_none() {
        return view! { <NotFound /> }.into_any();
    }
    let id = StoredValue::new(id);
    let present = move || id.with_value(|id| app.shelf.with(|shelf| shelf.find(id).is_some()));
    let here = Memo::new(move |before: Option<&Page>| match app.route.get() {
        Route::Job(_, page) => page,
        _ => before.copied().unwrap_or_default(),
    });
    let open = Open::on_shelf(app, id);
    let desk = Desk::of(open);
    let keys = window_event_listener(leptos::ev::keydown, move |event| bar::undo_keys(app, &event, id));
    on_cleanup(move || keys.remove());
    let name = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.name.clone()));
    Effect::new(move |_| {
        let frame = &words().frame;
        let name = name.get();
        document().set_title(&format!("{} · {name} · {}", frame.pages[here.get() as usize], frame.app));
    });
    // Another currency draws the job anew; what had the focus has it again.
    let currency = Memo::new(move |_| open.answer.with(locale::currency_of));
    on_cleanup(|| locale::count_in(None));
    let drawn = StoredValue::new(false);
    let whole = move || {
        locale::count_in(currency.get());
        let again = drawn.try_update_value(|drawn| std::mem::replace(drawn, true)) == Some(true);
        if let Some(holder) = focus::holder().filter(|_| again) {
            request_animation_frame(move || {
                focus::take(&holder);
            });
        }
        view! {
            <Show when=present fallback=|| view! { <NotFound /> }>
                <Job id=id desk=desk here=here />
            </Show>
        }
    };
    view! { {whole} }.into_any()
}

/// What stands where a job is not on this device.
#[component]
pub fn NotFound() -> impl IntoView {
    view! {
        <main class="page">
            <Empty title=words().list.not_found>
                <a class="btn" href=Route::Jobs.href()>{words().list.all_jobs}</a>
            </Empty>
        </main>
    }
}

#[component]
fn Job(id: StoredValue<String>, desk: Desk, here: Memo<Page>) -> impl IntoView {
    let Desk { open, basis, .. } = desk;
    let stations = Memo::new(move |_| open.answer.with(|answer| chapter::stations(answer, open.system.get())));
    first::keep_last(move || Last {
        id: id.get_value(),
        name: open.sheet.with_untracked(|sheet| sheet.job.name.clone()),
        told: open.answer.with_untracked(|answer| sentence(answer, open.system.get_untracked(), basis.get_untracked())),
    });
    let href = Callback::new(move |page| page_href(id, page));
    let papers = Memo::new(move |_| here.get() == Page::Papers);
    view! {
        <Bar id=id open=open />
        <Traverse stations=stations here=here href=href />
        <Show when=move || papers.get() fallback=move || view! { <Body id=id desk=desk here=here /> }>
            <main class="page"><papers::Papers desk=desk /></main>
        </Show>
        <Dock stations=stations here=here href=href list=Route::Jobs.href() />
    }
}

/// Inputs, answer, picture, tables.
#[component]
fn Body(id: StoredValue<String>, desk: Desk, here: Memo<Page>) -> impl IntoView {
    let words = words();
    let Desk { open, basis, .. } = desk;
    let inputs = move || match here.get() {
        Page::Water => view! { <water::Inputs desk=desk /> }.into_any(),
        Page::Pump => view! { <pump::Inputs desk=desk /> }.into_any(),
        Page::Power => view! { <power::Inputs desk=desk /> }.into_any(),
        Page::Cable => view! { <cable::Inputs desk=desk /> }.into_any(),
        Page::Cost => view! { <cost::Inputs desk=desk /> }.into_any(),
        Page::Startup | Page::Papers => view! { <startup::Inputs desk=desk /> }.into_any(),
    };
    let below = move || match here.get() {
        Page::Water => view! { <water::Below desk=desk /> }.into_any(),
        Page::Pump => view! { <pump::Below open=desk.open on_working=desk.opener() /> }.into_any(),
        Page::Power => view! { <power::Below desk=desk /> }.into_any(),
        Page::Cable => view! { <cable::Below desk=desk /> }.into_any(),
        Page::Cost => view! { <cost::Below desk=desk /> }.into_any(),
        Page::Startup => view! { <startup::Below desk=desk /> }.into_any(),
        _ => ().into_any(),
    };
    let worked = Memo::new(move |_| {
        let topic = match desk.working.get()? {
            Opened::Fixed(topic) => topic,
            Opened::Counting(topic) => topic(basis.get()),
            Opened::With(field, entry, topic) => {
                let mut job = open.sheet.with(|sheet| sheet.job.clone());
                job.set(field, Some(entry));
                return working(&evaluate(&job), topic, open.system.get());
            }
        };
        desk.seen.with(|answer| working(answer, topic, open.system.get()))
    });
    let type_depth = Callback::new(move |()| {
        let field = depth_field(open);
        if !focus::take(field.path()) {
            id.with_value(|id| Route::Job(id.clone(), chapter::page_of(field))).go();
        }
    });
    // The pump's own picture, as soon as there is a line for it to work against.
    let at_pump =
        Memo::new(move |_| here.get() == Page::Pump && open.answer.with(|answer| answer.water.system.is_some()));
    let at_power = Memo::new(move |_| here.get() == Page::Power);
    let at_startup = Memo::new(move |_| here.get() == Page::Startup);
    let opened = Memo::new(move |_| desk.working.with(Option::is_some));
    let close = Callback::new(move |()| {
        desk.working.set(None);
        // What had the focus may be out of sight until the inputs are back.
        request_animation_frame(focus::give_back);
    });
    // Another page, another subject.
    Effect::new(move |_| {
        here.track();
        desk.working.set(None);
    });
    view! {
        <main class="job" class:aside=move || opened.get() class:waiting=move || open.answer.with(|answer| answer.here.is_none())>
            // They stay while a working covers them, so that closing it gives the focus back.
            <section class="inputs" aria-label=words.fields.figures_label hidden=move || opened.get()>{inputs}</section>
            <Show when=move || opened.get()>
                <WorkingDrawer working=worked on_close=close />
            </Show>
            <section class="sheet" aria-label=words.answer.label>
                <StorageNotice />
                <Supply desk=desk id=id here=here />
                <Answers desk=desk id=id />
                <div class="picture">
                    <Show when=move || at_power.get()><ways::Comparison desk=desk /></Show>
                    <Show when=move || at_pump.get()><pump::Picture open=desk.open /></Show>
                    <Show when=move || at_startup.get()><startup::Sheet desk=desk /></Show>
                    <Show when=move || !at_pump.get() && !at_power.get() && !at_startup.get()><Living desk=desk type_depth=type_depth /></Show>
                    <Findings open=open />
                </div>
            </section>
            <div class="below">{below}</div>
        </main>
    }
}

/// The figure that the target and the keys of depth change: of a motor on the surface the length of its lead.
pub fn depth_field(open: Open) -> Field {
    match open.answer.with_untracked(|answer| answer.kind) {
        MotorKind::Submersible => Field::PumpSetting,
        MotorKind::Surface => Field::SurfaceRun,
    }
}

/// What depth means along the curve, where deeper water is known.
#[component]
pub fn SenseOfDepth(desk: Desk) -> impl IntoView {
    let words = &words().answer;
    let known = Memo::new(move |_| desk.open.answer.with(|answer| answer.deeper.is_some()));
    view! {
        <Show when=move || known.get()>
            <Segmented
                label=words.depth_means
                name="sense".to_owned()
                options=vec![(Sense::LongerLead, words.longer_lead), (Sense::DeeperWater, words.deeper_water)]
                value=desk.sense.into()
                on_choose=Callback::new(move |chosen| desk.sense.set(chosen))
            />
        </Show>
    }
}

/// What the costs count.
#[component]
pub fn CountIn(desk: Desk) -> impl IntoView {
    let words = &words().answer;
    view! {
        <Segmented
            label=words.count_in
            name="basis".to_owned()
            options=vec![
                (Basis::Cable, words.cable_only),
                (Basis::Installed, words.with_equipment),
                (Basis::Lifetime, words.with_years),
            ]
            value=desk.basis.into()
            on_choose=Callback::new(move |chosen| desk.count_in(chosen))
        />
    }
}

/// The living picture with what is set under it.
#[component]
fn Living(
    /// What the pages share.
    desk: Desk,
    /// Called to type the depth.
    type_depth: Callback<()>,
) -> impl IntoView {
    let words = words();
    let rod_hint = move || match desk.on_surface() {
        true => words.picture.rod_hint_lead,
        false => words.picture.rod_hint,
    };
    view! {
        <Picture desk=desk />
        <Nudge open=desk.open on_type=type_depth />
        <div class="under">
            <p class="note">{rod_hint}</p>
            <SenseOfDepth desk=desk />
            <CountIn desk=desk />
        </div>
    }
}

/// Size of the living picture where its page is printed, in pixels of the page.
const PAPER: (f64, f64) = (680.0, 470.0);

/// The living picture of the job.
#[component]
pub fn Picture(
    /// What the pages share.
    desk: Desk,
    /// Its size, where it is for paper alone.
    #[prop(optional)]
    paper: Option<(f64, f64)>,
    /// Whether it tells money.
    #[prop(default = Signal::stored(true))]
    money: Signal<bool>,
) -> impl IntoView {
    let app = app();
    let Desk { open, basis, seen, .. } = desk;
    // Both ends are evaluated whole: the curve between them is as exact as the curve itself.
    let ends = Memo::new(move |_| {
        let shown = desk.band.get();
        if shown == Band::None {
            return None;
        }
        let (job, sense) = (open.sheet.with(|sheet| sheet.job.clone()), desk.sense.get());
        let [low, high] = open.answer.with(|answer| band(&job, answer, shown))?;
        let sweep = |answer: Evaluation| answer.in_sense(sense).sweep;
        Some([sweep(low)?, sweep(high)?])
    });
    view! {
        <Plate
            answer=seen
            band=ends
            system=open.system
            basis=basis.into()
            theme=Signal::derive(move || app.settings.get().theme)
            on_grab=open.pause
            on_depth=Callback::new(move |entry| open.edit.run(Edit::Figure(depth_field(open), Some(entry))))
            paper=paper.unwrap_or(PAPER)
            on_paper=paper.is_some()
            money=money
        />
    }
}

/// The heading of a page; it takes the focus when the page was turned to.
#[component]
fn Heading(
    /// Which page.
    page: Page,
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let heading = NodeRef::<html::H2>::new();
    Effect::new(move |_| {
        let Some(heading) = heading.get() else { return };
        if desk.turned.try_update_value(|turned| std::mem::replace(turned, true)) == Some(true) {
            focus::arrive(&heading);
        } else if desk.open.sheet.with_untracked(|sheet| sheet.job.is_blank()) {
            // A new job begins with its first figure.
            focus::take(Field::PumpSetting.path());
        }
    });
    view! { <h2 class="chapter" tabindex="-1" node_ref=heading>{words().frame.pages[page as usize]}</h2> }
}
