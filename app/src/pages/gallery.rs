//! The gallery of parts, for those who build the page: every part in its states, at `?gallery`.

mod charts;
mod ways;

use crate::locale::{shown, unit_name, words};
use crate::parts::big_answer::{BigAnswer, Says, Swatch};
use crate::parts::caution::CautionBoxes;
use crate::parts::choice::ChoiceField;
use crate::parts::dialog::Dialog;
use crate::parts::empty::Empty;
use crate::parts::file_drop::FileDrop;
use crate::parts::group::{Fold, Group};
use crate::parts::icon::Icon;
use crate::parts::menu::Menu;
use crate::parts::qr::Qr;
use crate::parts::quantity_field::QuantityField;
use crate::parts::screen_settings::{SettingsMenu, Units};
use crate::parts::segmented::Segmented;
use crate::parts::stations::{Standing, Station, Traverse};
use crate::parts::switch::Switch;
use crate::parts::table::{Cell, Grid, Table};
use crate::parts::tick::Tick;
use crate::parts::trend::Trend;
use crate::parts::verdict::{Level, Verdict};
use crate::parts::worked_out::WorkedOut;
use crate::parts::working::WorkingDrawer;
use crate::routes::Page;
use crate::state::{App, Edit, Open, Sheet, app};
use charts::Charts;
use leptos::prelude::*;
use ways::Ways;
use wellwright_core::evaluate::Basis;
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::papers::{Topic, working};
use wellwright_core::passing::code;
use wellwright_core::quantity::{Entry, Unit};
use wellwright_core::standards::conductor::Metal;

/// The gallery.
#[component]
pub fn Gallery() -> impl IntoView {
    let app = app();
    let gallery = &words().gallery;
    document().set_title(gallery.title);
    view! {
        <header class="bar">
            <div class="name"><h1 class="plain">{gallery.title}</h1><span class="note">{gallery.line}</span></div>
            <span class="only-desk"><Units place="bar" /></span>
            <SettingsMenu />
        </header>
        <main class="page">
            <p class="note">{gallery.sample}</p>
            <div class="gallery">
                <Fields app=app />
                <Choices />
                <Judged />
                <Shows />
                <Asks app=app />
                <Worked />
                <Charts />
                <Ways />
            </div>
        </main>
    }
}

/// A job on no shelf, with a field in every state.
fn sample(app: App) -> Open {
    let mut sheet = Sheet::of(Job::named(""));
    sheet.set(Field::PumpSetting, Some(Entry::new(480.0, Unit::Foot)));
    sheet.set(Field::StaticLevel, Some(Entry::new(412.0, Unit::Foot)));
    sheet.set(Field::Drawdown, Some(Entry::new(86.0, Unit::Foot)));
    sheet.set(Field::AllowedDrop, Some(Entry::new(90.0, Unit::Percent)));
    sheet.set_draft(Field::Ambient, words().picture.drive.to_owned());
    let kept = RwSignal::new(sheet);
    let edit = Callback::new(move |edit: Edit| kept.update(|sheet| *sheet = edit.apply(sheet.clone())));
    Open::of(app, Memo::new(move |_| kept.get()), edit, Callback::new(|()| ()))
}

#[component]
fn Fields(app: App) -> impl IntoView {
    let open = sample(app);
    let fields = [Field::PumpSetting, Field::SurfaceRun, Field::MotorPower, Field::AllowedDrop, Field::Ambient];
    view! {
        <section>
            <h2>{words().gallery.fields}</h2>
            {fields.map(|field| view! { <QuantityField field=field open=open /> }).collect_view()}
            <WorkedOut
                label=words().tables.pumping_level
                hint=words().fields.worked_out
                shown=Signal::stored(Some(shown(471.7, 1, unit_name(Unit::Foot))))
            />
        </section>
    }
}

#[component]
fn Choices() -> impl IntoView {
    let words = words();
    let (metal, marked, basis) = (RwSignal::new(None), RwSignal::new(None), RwSignal::new(Basis::Installed));
    let ticked = RwSignal::new(true);
    view! {
        <section>
            <h2>{words.gallery.choices}</h2>
            <ChoiceField
                label=words.fields.metal_label
                id="gallery.metal"
                options=[Metal::Copper, Metal::Aluminum].map(|metal| (metal, (words.fields.metal)(metal).to_owned())).to_vec()
                assumed=Some(Metal::Copper)
                value=metal.into()
                on_choose=Callback::new(move |chosen| metal.set(chosen))
            />
            <Switch
                label=words.fields.terminals_label
                hint=words.fields.terminals_hint
                id="gallery.terminals"
                assumed=false
                value=marked.into()
                on_set=Callback::new(move |on| marked.set(Some(on)))
            />
            <Segmented
                label=words.answer.count_in
                name="gallery-basis".to_owned()
                options=vec![(Basis::Cable, words.answer.cable_only), (Basis::Installed, words.answer.with_equipment)]
                value=basis.into()
                on_choose=Callback::new(move |chosen| basis.set(chosen))
            />
            <Tick
                id="gallery.tick".to_owned()
                label=words.gallery.tick
                note=Signal::stored(words.curve.demo.to_owned())
                ticked=ticked
                on_tick=Callback::new(move |on| ticked.set(on))
            />
            <ul class="trends">
                <Trend label=words.fields.metal_label values=vec![9.0, 11.0, 10.0, 14.0] said=words.curve.demo.to_owned() />
            </ul>
            <Group title=words.flow.well>
                <Fold title=words.flow.more_of_well note=Signal::stored((words.flow.typed)(2)) must=false>
                    <p class="note">{words.curve.demo}</p>
                </Fold>
            </Group>
            <h2>{words.passing.code}</h2>
            {code(words.frame.app).map(|code| view! { <Qr code=code label=words.passing.code.to_owned() /> })}
            <h2>{words.gallery.buttons}</h2>
            <div class="row">
                <button class="btn act">{words.list.new_job}</button>
                <button class="btn">{words.list.duplicate}</button>
                <button class="btn quiet"><Icon name="undo" />{words.frame.undo}</button>
                <button class="btn" disabled>{words.papers.print}</button>
                <Menu label=Signal::stored((words.list.more_for)(words.gallery.title)) closes=true>
                    <button class="btn quiet">{words.list.rename}</button>
                    <button class="btn quiet">{words.list.duplicate}</button>
                </Menu>
            </div>
        </section>
    }
}

#[component]
fn Judged() -> impl IntoView {
    let words = words();
    let levels = [
        (Level::Fine, words.tables.ready),
        (Level::Found(Severity::Note), words.tables.pumping_level_hint),
        (Level::Found(Severity::Caution), words.tables.costs_hint),
        (Level::Found(Severity::Stop), words.say.aluminum_in_well),
    ];
    let lines = [("w480", Way::V480), ("w240", Way::V240)];
    view! {
        <section>
            <h2>{words.gallery.verdicts}</h2>
            {levels.map(|(level, reason)| view! { <Verdict level=level reason=reason /> }).collect_view()}
            <h2>{words.gallery.caution}</h2>
            <CautionBoxes cautions=words.cautions.power.to_vec() />
            <h2>{words.gallery.ways}</h2>
            {lines.map(|(class, way)| view! {
                <p class="row"><Swatch class=class />{(words.answer.way)(way)}</p>
            }).collect_view()}
        </section>
    }
}

#[component]
fn Shows() -> impl IntoView {
    let words = words();
    let says = Says {
        title: (words.answer.saves_at)(Way::V480, &shown(620.0, 0, unit_name(Unit::Foot)).text()),
        figure: crate::locale::money(wellwright_core::quantity::Money(546.0), 0),
        unit: "",
        note: words.gallery.sample.to_owned(),
    };
    let cell = |depth: f64| Cell::Figure(shown(depth, 0, unit_name(Unit::Foot)));
    let row = |way: Way, from: f64, to: f64| vec![Cell::words((words.answer.way)(way)), cell(from), cell(to)];
    let grid = Grid {
        columns: vec![words.tables.way, words.tables.from, words.tables.to],
        rows: vec![row(Way::V480, 0.0, 435.0), row(Way::V480, 435.0, 709.0), row(Way::V240, 0.0, 350.0)],
    };
    let station = |standing| Station { standing, says: words.answer.missing.to_owned() };
    let stations = Page::ALL.map(|page| match page {
        Page::Cable => station(Standing::Stop),
        Page::Startup | Page::Papers => station(Standing::Open),
        _ => station(Standing::Done),
    });
    view! {
        <section class="wide">
            <h2>{words.gallery.stations}</h2>
            <Traverse
                stations=Memo::new(move |_| stations.clone())
                here=Memo::new(|_| Page::Pump)
                href=Callback::new(|_| "?gallery".to_owned())
            />
        </section>
        <section>
            <h2>{words.gallery.answer}</h2>
            <dl class="answers alone"><div class="first"><BigAnswer says=Signal::stored(says) /></div></dl>
        </section>
        <section>
            <h2>{words.gallery.table}</h2>
            <Table title=words.tables.steps grid=Memo::new(move |_| Some(grid.clone())) sorts=true />
        </section>
        <section>
            <h2>{words.gallery.empty}</h2>
            <Empty title=words.list.no_jobs hint=words.list.no_jobs_hint>
                <button class="btn">{words.list.add_demo_jobs}</button>
            </Empty>
        </section>
    }
}

#[component]
fn Asks(app: App) -> impl IntoView {
    let words = words();
    let asking = RwSignal::new(false);
    view! {
        <section>
            <h2>{words.gallery.toast}</h2>
            <button class="btn" on:click=move |_| app.tell(words.gallery.sample.to_owned())>{words.gallery.show_toast}</button>
            <h2>{words.gallery.dialog}</h2>
            <button class="btn" on:click=move |_| asking.set(true)>{words.gallery.open_dialog}</button>
            <Dialog
                open=asking
                text=words.frame.delete_for_good_ask
                action=words.frame.delete_for_good
                on_action=Callback::new(|()| ())
            />
            <h2>{words.gallery.file}</h2>
            <FileDrop
                label=words.list.open_file
                accept=".json"
                on_file=Callback::new(move |(name, _): (String, _)| app.tell(name))
            />
            <h2>{words.gallery.notices}</h2>
            <p class="notice caution"><Icon name="caution" />{words.frame.no_storage}</p>
        </section>
    }
}

#[component]
fn Worked() -> impl IntoView {
    let app = app();
    let open = sample(app);
    let opened = RwSignal::new(true);
    let worked = Memo::new(move |_| {
        opened.get().then_some(())?;
        open.answer.with(|answer| working(answer, Topic::Submergence, open.system.get()))
    });
    view! {
        <section>
            <h2>{words().gallery.working}</h2>
            <Show when=move || opened.get()>
                <WorkingDrawer working=worked takes_focus=false on_close=Callback::new(move |()| opened.set(false)) />
            </Show>
        </section>
    }
}
