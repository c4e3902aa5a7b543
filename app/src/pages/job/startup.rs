//! Start-up: what the drive asks about the motor, and the cautions of the day.

use super::{Desk, Heading, grids};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::table::Table;
use crate::routes::Page;
use leptos::prelude::*;

/// The inputs of the page: nothing to enter yet, so the figures themselves.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let tables = &words().tables;
    // What must be done before anyone opens the drive stands before its figures.
    let (first, then) = words().cautions.startup.split_at(1);
    let plate = Memo::new(move |_| open.answer.with(|answer| grids::plate(answer, open.system.get())));
    view! {
        <Heading page=Page::Startup desk=desk />
        <CautionBoxes cautions=first.to_vec() />
        <Table title=tables.plate hint=Signal::stored(tables.plate_hint.to_owned()) grid=plate />
        <CautionBoxes cautions=then.to_vec() />
    }
}
