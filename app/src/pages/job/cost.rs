//! Cost: prices, what each way costs, and every step of the curve.

use super::figures::Figures;
use super::{Desk, Heading, grids};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::group::Group;
use crate::parts::quantity_field::QuantityField;
use crate::parts::table::Table;
use crate::routes::Page;
use crate::state::{Edit, Open};
use leptos::prelude::*;
use wellwright_core::job::Field;

const ENERGY: [Field; 4] = [Field::YearlyHours, Field::EnergyPrice, Field::Discount, Field::Years];

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    view! {
        <Heading page=Page::Cost desk=desk />
        <QuantityField field=Field::CableMetal open=open />
        <QuantityField field=Field::CableFixed open=open />
        <QuantityField field=Field::ExtraEquipment open=open />
        <PriceSource open=open />
        <Group title=words().ways.energy>
            <Figures fields=&ENERGY open=open />
        </Group>
        <CautionBoxes cautions=words().cautions.cost.to_vec() />
    }
}

/// Where the prices come from, in the user's words; a demo job says that they are invented.
#[component]
fn PriceSource(open: Open) -> impl IntoView {
    let stand_in = move || open.sheet.with(|sheet| sheet.job.demo.then_some(words().list.demo_prices));
    view! {
        <div class="field line">
            <label for="prices.source">{words().fields.price_source}</label>
            <input
                id="prices.source"
                maxlength="120"
                autocomplete="off"
                placeholder=stand_in
                prop:value=move || open.sheet.with(|sheet| sheet.job.price_source.clone())
                on:input=move |event| open.edit.run(Edit::PriceSource(event_target_value(&event)))
                on:blur=move |_| { let _ = open.pause.try_run(()); }
            />
        </div>
    }
}

/// The cost tables.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let tables = &words().tables;
    let costs = Memo::new(move |_| open.answer.with(grids::costs));
    let steps = Memo::new(move |_| desk.seen.with(|answer| grids::steps(answer, open.system.get(), desk.basis.get())));
    view! {
        <Table title=tables.costs hint=Signal::stored(tables.costs_hint.to_owned()) grid=costs on_working=desk.opener() />
        <Table title=tables.steps hint=Signal::stored(tables.steps_hint.to_owned()) grid=steps sorts=true />
    }
}
