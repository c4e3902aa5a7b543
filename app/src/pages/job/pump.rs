//! Pump: its curve, the speed that it runs at, the motor that turns it, and what they stand.

use super::curve::CurveText;
use super::figures::{Answer, Figures, Told, any_wrong, typed_note};
use super::{Desk, Heading, grids};
use crate::locale::{self, Shown, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::choice::ChoiceField;
use crate::parts::group::{Fold, Group};
use crate::parts::table::Table;
use crate::pictures::PumpPicture;
use crate::routes::Page;
use crate::state::{Choice, Edit, Open, app};
use leptos::prelude::*;
use wellwright_core::evaluate::{Cooling, Duty, Evaluation, Pumping};
use wellwright_core::job::{Control, Field, Way};
use wellwright_core::papers::Topic;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::UnitSystem;

const WITHOUT_CURVE: [Field; 2] = [Field::PumpEfficiency, Field::ShutOffHead];
const SPEED: [Field; 3] = [Field::CurveFrequency, Field::LeastFrequency, Field::MostFrequency];
const MOTOR: [Field; 3] = [Field::MotorPower, Field::NameplateAmps230, Field::NameplateAmps460];
const MORE_MOTOR: [Field; 5] = [
    Field::MotorEfficiency,
    Field::MotorPowerFactor,
    Field::ServiceFactor,
    Field::ServiceAmps230,
    Field::ServiceAmps460,
];
const COOLING: [Field; 4] = [Field::MotorDiameter, Field::CasingInside, Field::SleeveInside, Field::LeastFlow];
const STRING: [Field; 1] = [Field::PumpMass];
const SUCTION: [Field; 2] = [Field::NpshRequired, Field::NpshMargin];

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
        <Heading page=Page::Pump desk=desk />
        <Curve desk=desk />
        <Speed desk=desk />
        <Motor desk=desk />
        <Show when=surface fallback=move || view! { <InWell desk=desk /> }>
            <Group title=words().flow.suction>
                <Figures fields=&SUCTION open=open />
                <Answer label=words().flow.npsh hint=words().flow.npsh_hint of=npsh topic=Topic::SuctionHead desk=desk />
            </Group>
        </Show>
        <CautionBoxes cautions=words().cautions.pump.to_vec() />
    }
}

/// The curve, or what stands in for it.
#[component]
fn Curve(desk: Desk) -> impl IntoView {
    let words = &words().flow;
    view! {
        <Group title=words.curve>
            <CurveText desk=desk />
            <Figures fields=&WITHOUT_CURVE open=desk.open />
            <Answer label=words.shaft hint=words.shaft_hint of=shaft topic=Topic::ShaftPower desk=desk />
            <Answer label=words.of_best hint=words.of_best_hint of=of_best topic=Topic::ShareOfBest desk=desk />
            <Answer label=words.most_flow hint=words.most_flow_hint of=most_flow topic=Topic::FullSpeed desk=desk />
            <Answer label=words.dead_head hint=words.dead_head_hint of=dead_head topic=Topic::DeadHead desk=desk />
            <Answer label=words.relief hint=words.relief_hint of=relief topic=Topic::Relief desk=desk />
            <Answer label=words.on_pipe hint=words.on_pipe_hint of=on_pipe topic=Topic::OnPipe desk=desk />
        </Group>
    }
}

/// How the pump is run.
#[component]
fn Speed(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    let ways = [Control::ConstantPressure, Control::OnOff];
    view! {
        <Group title=words.speed>
            <ChoiceField
                label=words.control_label
                id="pump.control"
                options=ways.map(|way| (way, (words.control)(way).to_owned())).to_vec()
                assumed=Some(Control::default())
                value=desk.chosen(|choices| choices.control)
                on_choose=desk.choose(Choice::Control)
            />
            <Answer label=words.pump_speed hint=words.pump_speed_hint of=speed topic=Topic::PumpSpeed desk=desk />
            <Answer label=words.lowest_speed hint=words.lowest_speed_hint of=lowest topic=Topic::LowestSpeed desk=desk />
        </Group>
        <Fold title=words.band note=typed_note(&SPEED, open) must=any_wrong(&SPEED, open)>
            <Figures fields=&SPEED open=open />
        </Fold>
    }
}

/// The motor.
#[component]
fn Motor(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    view! {
        <Group title=words.motor>
            <Figures fields=&MOTOR open=open />
            <Answer label=words.load hint=words.load_hint of=load topic=Topic::MotorLoad desk=desk />
            <Answer label=words.running_230 of=|answer, _| running(answer, Way::V240) topic=Topic::RunningCurrent(Way::V240) desk=desk />
            <Answer label=words.running_460 of=|answer, _| running(answer, Way::V480) topic=Topic::RunningCurrent(Way::V480) desk=desk />
        </Group>
        <Fold title=words.more_of_motor note=typed_note(&MORE_MOTOR, open) must=any_wrong(&MORE_MOTOR, open)>
            <Figures fields=&MORE_MOTOR open=open />
        </Fold>
    }
}

/// What matters of a pump that hangs in a well.
#[component]
fn InWell(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    view! {
        <Fold title=words.cooling note=typed_note(&COOLING, open) must=any_wrong(&COOLING, open)>
            <Figures fields=&COOLING open=open />
            <Answer label=words.past_motor hint=words.past_motor_hint of=past_motor topic=Topic::Cooling desk=desk />
            <Answer label=words.cooling_flow hint=words.cooling_flow_hint of=cooling_flow topic=Topic::CoolingFlow desk=desk />
            <Answer label=words.widest_sleeve hint=words.widest_sleeve_hint of=widest_sleeve topic=Topic::WidestSleeve desk=desk />
        </Fold>
        <Fold title=words.string note=typed_note(&STRING, open) must=any_wrong(&STRING, open)>
            <Figures fields=&STRING open=open />
            <Answer label=words.hanging hint=words.hanging_hint of=hanging topic=Topic::Hanging desk=desk />
        </Fold>
    }
}

/// The pump's curves with what the line takes, and the setpoint to drag.
#[component]
pub fn Picture(
    /// The job that it shows and changes.
    open: Open,
) -> impl IntoView {
    let app = app();
    view! {
        <PumpPicture
            answer=open.answer
            control=Signal::derive(move || open.sheet.with(|sheet| sheet.job.choices.control()))
            system=open.system
            theme=Signal::derive(move || app.settings.with(|settings| settings.theme))
            on_grab=open.pause
            on_pressure=Callback::new(move |entry| open.edit.run(Edit::Figure(Field::Pressure, Some(entry))))
        />
    }
}

/// Points of the curve.
#[component]
pub fn Below(
    /// The job whose curve it lists.
    open: Open,
    /// Opens the working of a point; without it the points are plain.
    #[prop(optional)]
    on_working: Option<Callback<Topic>>,
) -> impl IntoView {
    let points = Memo::new(move |_| open.answer.with(|answer| grids::curve(answer, open.system.get())));
    let hint = Signal::derive(move || open.answer.with(|answer| grids::curve_hint(answer, open.system.get())));
    let title = words().charts.pump;
    match on_working {
        Some(working) => view! { <Table title=title hint=hint grid=points on_working=working /> }.into_any(),
        None => view! { <Table title=title hint=hint grid=points /> }.into_any(),
    }
}

/// The answers of the page, for the papers.
pub const ANSWERS: [Told; 14] = [
    (|words| words.flow.shaft, shaft),
    (|words| words.flow.pump_speed, speed),
    (|words| words.flow.lowest_speed, lowest),
    (|words| words.flow.of_best, of_best),
    (|words| words.flow.most_flow, most_flow),
    (|words| words.flow.dead_head, dead_head),
    (|words| words.flow.relief, relief),
    (|words| words.flow.on_pipe, on_pipe),
    (|words| words.flow.load, load),
    (|words| words.flow.running_230, |answer, _| running(answer, Way::V240)),
    (|words| words.flow.running_460, |answer, _| running(answer, Way::V480)),
    (|words| words.flow.cooling_flow, cooling_flow),
    (|words| words.flow.hanging, hanging),
    (|words| words.flow.npsh, npsh),
];

fn pump(answer: &Evaluation) -> Option<&Pumping> {
    answer.water.pump.as_ref()
}

fn duty(answer: &Evaluation) -> Option<Duty> {
    pump(answer)?.duty.ok()
}

fn shaft(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    duty(answer).map(|duty| locale::shaft(duty.shaft, system))
}

fn of_best(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    pump(answer)?.share_of_best.map(|share| locale::percent(share, 0))
}

fn most_flow(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    let point = pump(answer)?.most?.ok()?;
    Some(locale::flow(point.flow, system))
}

fn dead_head(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.dead_head.map(|dead| locale::pressure(dead.gauge, system))
}

fn on_pipe(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.dead_head?.on_pipe.map(|held| locale::pressure(held, system))
}

fn relief(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    let dead = answer.water.dead_head.filter(|dead| dead.over)?;
    dead.relief.map(|flow| locale::flow(flow, system))
}

fn speed(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    pump(answer)?.frequency().map(locale::frequency)
}

fn lowest(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    pump(answer)?.lowest.map(locale::frequency)
}

fn load(answer: &Evaluation, _: UnitSystem) -> Option<Shown> {
    answer.motor.map(|motor| locale::percent(motor.share.of_rating, 0))
}

fn running(answer: &Evaluation, way: Way) -> Option<Shown> {
    answer.motor?.running[way as usize].map(locale::amperes)
}

fn cooling(answer: &Evaluation) -> Option<Cooling> {
    answer.water.cooling
}

fn past_motor(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    cooling(answer).map(|cooling| locale::velocity(cooling.speed, system))
}

fn cooling_flow(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    cooling(answer).map(|cooling| locale::flow(cooling.least_flow, system))
}

fn widest_sleeve(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    let cooling = cooling(answer).filter(|cooling| cooling.speed < cooling.advised)?;
    Some(locale::diameter(cooling.widest_sleeve, system))
}

fn hanging(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.hanging.map(|hanging| locale::weight(hanging.total(), system))
}

fn npsh(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.suction.map(|suction| locale::head(suction.available(), system))
}
