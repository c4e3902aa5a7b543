//! The head bar and the picture of the pump in the gallery, with invented wells.

use crate::locale::words;
use crate::pages::job::pump::{Below, Picture};
use crate::parts::head_bar::{HeadBar, head_parts};
use crate::state::{App, Edit, Open, Sheet, app};
use leptos::prelude::*;
use wellwright_core::job::{DrawdownBy, Field, Job};
use wellwright_core::pump::demo::HOUSE_WELL;
use wellwright_core::quantity::{Entry, Unit};

/// An invented well on no shelf: what is asked for in gpm, the rise in feet, with a curve or without.
fn well(app: App, flow: f64, rise: f64, with_curve: bool) -> Open {
    let mut job = Job::named("");
    job.choices.drawdown = Some(DrawdownBy::SpecificCapacity);
    let row = |(flow, head, percent): &(f64, f64, f64)| format!("{flow} {head} {percent}\n");
    if with_curve {
        job.curve = HOUSE_WELL.rows.iter().map(row).collect();
    }
    let mut sheet = Sheet::of(job);
    for (field, value, unit) in [
        (Field::PumpSetting, 620.0, Unit::Foot),
        (Field::StaticLevel, 430.0, Unit::Foot),
        (Field::Flow, flow, Unit::GallonPerMinute),
        (Field::SpecificCapacity, 0.6, Unit::GallonPerMinutePerFoot),
        (Field::DropFittings, 9.0, Unit::One),
        (Field::SurfaceLength, 80.0, Unit::Foot),
        (Field::Rise, rise, Unit::Foot),
        (Field::Pressure, 60.0, Unit::PoundPerSquareInch),
    ] {
        sheet.set(field, Some(Entry::new(value, unit)));
    }
    let kept = RwSignal::new(sheet);
    let edit = Callback::new(move |edit: Edit| kept.update(|sheet| *sheet = edit.apply(sheet.clone())));
    Open::of(app, Memo::new(move |_| kept.get()), edit, Callback::new(|()| ()))
}

/// The head bar and the picture.
#[component]
pub fn Charts() -> impl IntoView {
    let app = app();
    let words = words();
    let bar = |open: Open| {
        let parts = Memo::new(move |_| open.answer.with(|answer| head_parts(&answer.water, open.system.get())));
        view! { <HeadBar parts=parts on_working=Callback::new(|_| ()) /> }
    };
    let usual = well(app, 25.0, 4.0, true);
    view! {
        <section>
            <h2>{words.gallery.head_bar}</h2>
            {bar(usual)}
            {bar(well(app, 25.0, -150.0, true))}
        </section>
        <section class="wide">
            <h2>{words.gallery.pump_picture}</h2>
            <Picture open=usual />
            <Below open=usual />
            <Picture open=well(app, 36.0, 4.0, true) />
            <Picture open=well(app, 25.0, 4.0, false) />
        </section>
    }
}
