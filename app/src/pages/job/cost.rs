//! Cost: prices, what each way costs, how sure the saving is, and every step of the curve.

use super::beside::Beside;
use super::curve_choices::CurveChoices;
use super::figures::{Figures, any_wrong, typed_note};
use super::outlook::Outlook;
use super::ranks::Ranks;
use super::year::{self, DutyText};
use super::{Desk, Heading, grids};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::group::{Fold, Group};
use crate::parts::quantity_field::QuantityField;
use crate::parts::table::Table;
use crate::routes::{Page, Route};
use crate::state::{Edit, Open};
use leptos::prelude::*;
use wellwright_core::job::Field;

const ENERGY: [Field; 2] = [Field::YearlyHours, Field::EnergyPrice];
const YEARS: [Field; 2] = [Field::Discount, Field::Years];
const TARIFF: [Field; 9] = [
    Field::DemandPrice,
    Field::StandingCharge,
    Field::MonthsOfUse,
    Field::BilledMonths,
    Field::SeasonMonths,
    Field::SeasonPrice,
    Field::SeasonDemandPrice,
    Field::SeasonShare,
    Field::Carbon,
];
const RANGES: [Field; 8] = [
    Field::MetalLow,
    Field::MetalHigh,
    Field::EquipmentLow,
    Field::EquipmentHigh,
    Field::HoursLow,
    Field::HoursHigh,
    Field::EnergyLow,
    Field::EnergyHigh,
];

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, words());
    view! {
        <Heading page=Page::Cost desk=desk />
        <super::book::Prices desk=desk />
        <QuantityField field=Field::CableMetal open=open />
        <CurveChoices desk=desk />
        <Beside desk=desk />
        <QuantityField field=Field::CableFixed open=open />
        <QuantityField field=Field::ExtraEquipment open=open />
        <PriceSource open=open />
        <Group title=words.cost.energy>
            <Figures fields=&ENERGY open=open />
            <DutyText desk=desk />
            <Figures fields=&YEARS open=open />
        </Group>
        <Fold title=words.cost.tariff note=typed_note(&TARIFF, open) must=any_wrong(&TARIFF, open)>
            <Figures fields=&TARIFF open=open />
        </Fold>
        <Fold title=words.cost.ranges note=typed_note(&RANGES, open) must=any_wrong(&RANGES, open)>
            <Figures fields=&RANGES open=open />
        </Fold>
        <p class="lesson-link"><a class="btn quiet" href=Route::Lesson(0).href()>{words.lesson.link}</a></p>
        <CautionBoxes cautions=words.cautions.cost.to_vec() />
    }
}

/// Where the prices come from, in the user's words; a demo job says that they are invented.
#[component]
fn PriceSource(open: Open) -> impl IntoView {
    let stand_in = move || {
        open.sheet.with(|sheet| (sheet.job.demo && sheet.job.book.is_empty()).then_some(words().list.demo_prices))
    };
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
    let (tables, cost) = (&words().tables, &words().cost);
    let costs = Memo::new(move |_| open.answer.with(grids::costs));
    let steps = Memo::new(move |_| desk.seen.with(|answer| grids::steps(answer, open.system.get(), desk.basis.get())));
    let rows = Memo::new(move |_| open.answer.with(|answer| year::rows(answer, open.system.get())));
    let summary = Memo::new(move |_| open.answer.with(|answer| year::summary(answer, open.system.get())));
    let costs_hint = Signal::derive(move || {
        let far = open.answer.with(|answer| answer.ways.site.is_some_and(|site| site.distance.is_none()));
        if far { format!("{} {}", tables.costs_hint, cost.not_priced) } else { tables.costs_hint.to_owned() }
    });
    let hint = Signal::derive(move || open.answer.with(year::hint));
    view! {
        <Table title=tables.costs hint=costs_hint grid=costs on_working=desk.opener() />
        <Outlook desk=desk />
        <Ranks desk=desk />
        <Table title=cost.year hint=hint grid=rows on_working=desk.opener() />
        <Table title=cost.summary grid=summary on_working=desk.opener() />
        <Table title=tables.steps hint=Signal::stored(tables.steps_hint.to_owned()) grid=steps sorts=true on_working=desk.opener() />
    }
}
