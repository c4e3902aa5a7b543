//! Water: how deep the pump hangs and where the water stands.

use super::{Desk, Heading};
use crate::locale::{depth, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::quantity_field::QuantityField;
use crate::parts::worked_out::WorkedOut;
use crate::routes::Page;
use leptos::prelude::*;
use wellwright_core::evaluate::Water;
use wellwright_core::job::Field;
use wellwright_core::quantity::Length;

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let tables = &words().tables;
    let level = move |pick: fn(&Water) -> Option<Length>| {
        Signal::derive(move || {
            open.answer.with(|answer| pick(&answer.water)).map(|level| depth(level, open.system.get()))
        })
    };
    view! {
        <Heading page=Page::Water desk=desk />
        <QuantityField field=Field::PumpSetting open=open />
        <QuantityField field=Field::StaticLevel open=open />
        <QuantityField field=Field::Drawdown open=open />
        <WorkedOut label=tables.pumping_level hint=tables.pumping_level_hint shown=level(|water| water.pumping_level) />
        <WorkedOut label=tables.under_water hint=tables.under_water_hint shown=level(|water| water.submergence) />
        <QuantityField field=Field::MinimumSubmergence open=open />
        <QuantityField field=Field::WellDepth open=open />
        <CautionBoxes cautions=words().cautions.water.to_vec() />
    }
}
