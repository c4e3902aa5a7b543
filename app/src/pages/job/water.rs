//! Water: what is asked for, where the water stands, and the line that it is pumped through.

use super::figures::{Answer, Figures, Told, any_wrong, typed_note};
use super::pipe::Pipes;
use super::{Desk, Heading};
use crate::locale::{self, Shown, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::choice::ChoiceField;
use crate::parts::group::{Fold, Group};
use crate::parts::head_bar::{HeadBar, head_parts};
use crate::parts::segmented::Segmented;
use crate::routes::Page;
use crate::state::{Choice, Edit};
use leptos::prelude::*;
use wellwright_core::evaluate::{Evaluation, Water};
use wellwright_core::job::{DemandBy, DepthOf, DrawdownBy, Field};
use wellwright_core::papers::Topic;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, Volume, in_gallons};

const ASKED: [Field; 7] = [
    Field::Flow,
    Field::IrrigatedArea,
    Field::WaterDepth,
    Field::People,
    Field::BeefCattle,
    Field::DairyCows,
    Field::Horses,
];
const ASKED_MORE: [Field; 6] = [
    Field::PumpingHours,
    Field::ApplicationEfficiency,
    Field::PersonDaily,
    Field::BeefDaily,
    Field::DairyDaily,
    Field::HorseDaily,
];
const LEVELS: [Field; 2] = [Field::PumpSetting, Field::StaticLevel];
const DRAWDOWN: [Field; 7] = [
    Field::Drawdown,
    Field::SpecificCapacity,
    Field::Transmissivity,
    Field::Storage,
    Field::BoreDiameter,
    Field::AquiferTime,
    Field::WellLoss,
];
const MORE: [Field; 6] = [
    Field::WellDepth,
    Field::MinimumSubmergence,
    Field::TestedYield,
    Field::ScreenTop,
    Field::WaterTemperature,
    Field::Altitude,
];
const TANK: [Field; 4] = [Field::TankVolume, Field::CutIn, Field::TankPrecharge, Field::PressureRating];

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let kind = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.choices.motor_kind()));
    let surface = move || kind.get() == MotorKind::Surface;
    view! {
        <Heading page=Page::Water desk=desk />
        <Where desk=desk />
        <Asked desk=desk />
        <Show when=surface fallback=move || view! { <Well desk=desk /> }>
            <Group title=words().flow.open_water><Figures fields=&[Field::SuctionLift] open=open /></Group>
        </Show>
        <Pipes desk=desk />
        <More desk=desk />
        <Tank desk=desk />
        <CautionBoxes cautions=words().cautions.water.to_vec() />
    }
}

/// Whether the pump hangs in a well or stands on the surface.
#[component]
fn Where(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, words());
    let kinds = [MotorKind::Submersible, MotorKind::Surface].map(|kind| (kind, (words.flow.place)(kind)));
    view! {
        <div class="field pick">
            <Segmented
                label=words.flow.where_label
                name="motor.kind".to_owned()
                options=kinds.to_vec()
                value=Signal::derive(move || open.sheet.with(|sheet| sheet.job.choices.motor_kind()))
                on_choose=Callback::new(move |kind| open.edit.run(Edit::Choice(Choice::MotorKind(Some(kind)))))
            />
        </div>
    }
}

/// What is asked for.
#[component]
fn Asked(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    let kinds = [DemandBy::Flow, DemandBy::Land, DemandBy::PeopleAndStock].map(|by| (by, (words.demand)(by)));
    let by = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.choices.demand()));
    let depths = [DepthOf::Gross, DepthOf::Net].map(|of| (of, (words.depth_of)(of).to_owned()));
    let land = move || by.get() == DemandBy::Land;
    view! {
        <Group title=words.asked>
            <div class="field pick">
                <Segmented
                    label=words.demand_label
                    name="demand.by".to_owned()
                    options=kinds.to_vec()
                    value=by.into()
                    on_choose=Callback::new(move |by| open.edit.run(Edit::Choice(Choice::Demand(Some(by)))))
                />
            </div>
            <Figures fields=&ASKED open=open />
            <Show when=land>
                <ChoiceField
                    label=words.depth_of_label
                    id="demand.depth_of"
                    options=depths.to_vec()
                    assumed=Some(DepthOf::Gross)
                    value=desk.chosen(|choices| choices.depth_of)
                    on_choose=desk.choose(Choice::DepthOf)
                />
            </Show>
            <Figures fields=&ASKED_MORE open=open />
            <Answer label=words.daily of=daily topic=Topic::Demand desk=desk />
            <Answer label=words.flow_worked_out hint=words.flow_hint of=worked_out_flow topic=Topic::Demand desk=desk />
            <Answer label=words.weekly hint=words.weekly_hint of=weekly topic=Topic::Weekly desk=desk />
        </Group>
    }
}

/// The levels in the well.
#[component]
fn Well(desk: Desk) -> impl IntoView {
    let (open, tables, flow) = (desk.open, &words().tables, &words().flow);
    let ways = [DrawdownBy::Measured, DrawdownBy::SpecificCapacity, DrawdownBy::Aquifer];
    view! {
        <Group title=flow.well>
            <Figures fields=&LEVELS open=open />
            <ChoiceField
                label=flow.drawdown_label
                id="well.drawdown_by"
                options=ways.map(|by| (by, (flow.drawdown)(by).to_owned())).to_vec()
                assumed=Some(DrawdownBy::default())
                value=desk.chosen(|choices| choices.drawdown)
                on_choose=desk.choose(Choice::Drawdown)
            />
            <Figures fields=&DRAWDOWN open=open />
            <Answer label=flow.drawdown_worked_out of=drawdown topic=Topic::Drawdown desk=desk />
            <Answer label=tables.pumping_level hint=tables.pumping_level_hint of=|answer, system| depth(answer, system, |water| water.pumping_level) topic=Topic::PumpingLevel desk=desk />
            <Answer label=tables.under_water hint=tables.under_water_hint of=|answer, system| depth(answer, system, |water| water.submergence) topic=Topic::Submergence desk=desk />
            <Answer label=flow.well_gives hint=flow.well_gives_hint of=well_gives topic=Topic::WellGives desk=desk />
        </Group>
    }
}

/// What few need to say of the water.
#[component]
fn More(desk: Desk) -> impl IntoView {
    let open = desk.open;
    view! {
        <Fold title=words().flow.more_of_well note=typed_note(&MORE, open) must=any_wrong(&MORE, open)>
            <Figures fields=&MORE open=open />
        </Fold>
    }
}

/// The pressure tank.
#[component]
fn Tank(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    view! {
        <Fold title=words.tank note=typed_note(&TANK, open) must=any_wrong(&TANK, open)>
            <Figures fields=&TANK open=open />
            <Answer label=words.tank_gives hint=words.tank_gives_hint of=tank_gives topic=Topic::Tank desk=desk />
            <Answer label=words.run_time hint=words.run_time_hint of=run_time topic=Topic::Tank desk=desk />
            <Answer label=words.starts hint=words.starts_hint of=starts topic=Topic::Tank desk=desk />
        </Fold>
    }
}

/// The head and its parts.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let parts = Memo::new(move |_| open.answer.with(|answer| head_parts(&answer.water, open.system.get())));
    view! { <HeadBar parts=parts on_working=desk.opener() /> }
}

/// The answers of the page, for the papers.
pub const ANSWERS: [Told; 7] = [
    (|words| words.flow.flow_worked_out, worked_out_flow),
    (|words| words.flow.drawdown_worked_out, drawdown),
    (|words| words.tables.pumping_level, |answer, system| depth(answer, system, |water| water.pumping_level)),
    (|words| words.tables.under_water, |answer, system| depth(answer, system, |water| water.submergence)),
    (|words| words.flow.well_gives, well_gives),
    (|words| words.flow.tank_gives, tank_gives),
    (|words| words.flow.run_time, run_time),
];

fn depth(answer: &Evaluation, system: UnitSystem, pick: fn(&Water) -> Option<Length>) -> Option<Shown> {
    pick(&answer.water).map(|level| locale::depth(level, system))
}

/// Only where it was not typed itself.
fn drawdown(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    let typed = answer.inputs.entered.is_typed(Field::Drawdown);
    answer.water.drawdown.filter(|_| !typed).map(|drawdown| locale::head(drawdown, system))
}

fn worked_out_flow(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    let demand = answer.water.demand.filter(|demand| demand.daily.is_some())?;
    Some(locale::flow(demand.flow.value, system))
}

fn volume(volume: Volume, unit: Unit, system: UnitSystem) -> Shown {
    locale::whole(Entry::new(in_gallons(volume), unit), system)
}

fn daily(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    Some(volume(answer.water.demand?.daily?, Unit::Gallon, system))
}

fn weekly(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    Some(volume(answer.water.demand?.weekly?, Unit::Gallon, system))
}

fn well_gives(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.well_gives.map(|flow| locale::flow(flow, system))
}

fn tank_gives(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.tank.map(|tank| locale::volume(tank.drawdown, system))
}

fn run_time(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    answer.water.tank?.run_time.map(locale::seconds)
}

fn starts(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    answer.water.tank?.starts.map(locale::per_hour)
}
