//! Power: the supply, and both ways to run the motor from it.

use super::{Desk, Heading, grids};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::quantity_field::QuantityField;
use crate::parts::table::Table;
use crate::routes::Page;
use leptos::prelude::*;
use wellwright_core::job::Field;

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let words = words();
    view! {
        <Heading page=Page::Power desk=desk />
        <div class="field out">
            <span class="label">{words.tables.supply}</span>
            <output class="words">{words.tables.supply_value}</output>
        </div>
        <QuantityField field=Field::DeviceAmps open=desk.open />
        <CautionBoxes cautions=words.cautions.power.to_vec() />
    }
}

/// The ways, side by side.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let tables = &words().tables;
    let ways = Memo::new(move |_| desk.open.answer.with(grids::ways));
    view! { <Table title=tables.ways hint=Signal::stored(tables.ways_hint.to_owned()) grid=ways /> }
}
