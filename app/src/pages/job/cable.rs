//! Cable: the lead from the drive down to the motor.

use super::figures::{Figures, any_wrong, typed_note};
use super::{Desk, Heading, grids};
use crate::locale::{depth, rating, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::choice::ChoiceField;
use crate::parts::group::{Fold, Group};
use crate::parts::quantity_field::QuantityField;
use crate::parts::switch::Switch;
use crate::parts::table::Table;
use crate::pictures::PeakPicture;
use crate::routes::Page;
use crate::state::{Choice, Edit, app};
use leptos::prelude::*;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::{Choices, Field, Sets};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::Metal;

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    view! {
        <Heading page=Page::Cable desk=desk />
        <QuantityField field=Field::SurfaceRun open=open />
        <QuantityField field=Field::AllowedDrop open=open />
        <QuantityField field=Field::Ambient open=open />
        <Make desk=desk />
        <Pulses desk=desk />
        <CautionBoxes cautions=words().cautions.cable.to_vec() />
    }
}

const PULSES: [Field; 4] = [Field::RiseTime, Field::WaveSpeed, Field::CableImpedance, Field::MotorImpedance];

/// What the pulses of the drive do to the motor, and what stands against them.
#[component]
fn Pulses(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let remedies = [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter];
    let least = Memo::new(move |_| open.answer.with(|answer| answer.ways.picked()?.stress?.least));
    view! {
        <Group title=words.pulses>
            <Switch
                label=words.inverter_label
                hint=words.inverter_hint
                id="motor.inverter_duty"
                assumed=false
                value=desk.chosen(|choices| choices.inverter_duty)
                on_set=Callback::new(move |duty| open.edit.run(Edit::Choice(Choice::InverterDuty(Some(duty)))))
            />
            <Figures fields=&[Field::MotorPeakLimit] open=open />
            <ChoiceField
                label=words.remedy_label
                id="cable.remedy"
                options=remedies.map(|remedy| (remedy, (words.remedy)(remedy).to_owned())).to_vec()
                assumed=least
                value=desk.chosen(|choices| choices.remedy)
                on_choose=desk.choose(Choice::Remedy)
            />
        </Group>
        <Fold title=words.more_pulses note=typed_note(&PULSES, open) must=any_wrong(&PULSES, open)>
            <Figures fields=&PULSES open=open />
        </Fold>
    }
}

/// How the lead is made.
#[component]
fn Make(desk: Desk) -> impl IntoView {
    let open = desk.open;
    let words = &words().fields;
    let usual = Choices::default();
    let submersible = desk.chosen(|choices| Some(choices.motor_kind() == MotorKind::Submersible));
    let submersible = Signal::derive(move || submersible.get().unwrap_or(false));
    let sets: Vec<_> =
        (1..=Sets::LIMIT).filter_map(Sets::new).map(|sets| (sets, (words.sets)(sets.get()).to_owned())).collect();
    let builds = [Build::PlasticConduit, Build::FlatJacketed, Build::Twisted, Build::SteelConduit];
    view! {
        <Switch
            label=words.terminals_label
            hint=words.terminals_hint
            id="cable.terminals_marked_75"
            assumed=usual.terminals_marked_75()
            value=desk.chosen(|choices| choices.terminals_marked_75)
            on_set=Callback::new(move |marked| open.edit.run(Edit::Choice(Choice::Terminals(Some(marked)))))
        />
        <Show when=move || submersible.get()>
            <Switch
                label=words.cooler_label
                hint=words.cooler_hint
                id="cable.cooler_water"
                assumed=usual.cooler_water()
                value=desk.chosen(|choices| choices.cooler_water)
                on_set=Callback::new(move |counts| open.edit.run(Edit::Choice(Choice::CoolerWater(Some(counts)))))
            />
        </Show>
        <ChoiceField
            label=words.insulation_label
            id="cable.insulation"
            options=[Rating::C60, Rating::C75, Rating::C90].map(|kind| (kind, rating(kind).to_owned())).to_vec()
            assumed=Some(usual.insulation())
            value=desk.chosen(|choices| choices.insulation)
            on_choose=desk.choose(Choice::Insulation)
        />
        <ChoiceField
            label=words.build_label
            id="cable.build"
            options=builds.map(|build| (build, (words.build)(build).to_owned())).to_vec()
            assumed=Some(usual.build())
            value=desk.chosen(|choices| choices.build)
            on_choose=desk.choose(Choice::Build)
        />
        <ChoiceField
            label=words.metal_label
            id="cable.metal"
            options=[Metal::Copper, Metal::Aluminum].map(|metal| (metal, (words.metal)(metal).to_owned())).to_vec()
            assumed=Some(usual.metal())
            value=desk.chosen(|choices| choices.metal)
            on_choose=desk.choose(Choice::Metal)
        />
        <ChoiceField
            label=words.sets_label
            id="cable.most_sets"
            options=sets
            assumed=Some(Sets::ONE)
            value=desk.chosen(|choices| choices.most_sets)
            on_choose=desk.choose(Choice::Sets)
        />
    }
}

/// Both leads at the job's depth.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let tables = &words().tables;
    let here = Memo::new(move |_| open.answer.with(|answer| grids::here(answer, open.system.get())));
    let lead = move || {
        open.answer.with(|answer| {
            let here = answer.here.as_ref()?;
            let [lead, order] = [here.lead, here.order].map(|length| depth(length, open.system.get()).text());
            Some((tables.lead)(&lead, &order))
        })
    };
    let service = Memo::new(move |_| open.answer.with(|answer| grids::service(answer, open.system.get())));
    let stress = Memo::new(move |_| open.answer.with(|answer| answer.ways.picked()?.stress));
    let way = Signal::derive(move || open.answer.with(|answer| answer.ways.picked()?.way));
    let app = app();
    let theme = Signal::derive(move || app.settings.with(|settings| settings.theme));
    view! {
        <PeakPicture stress=stress way=way system=open.system theme=theme />
        <Table title=tables.at_this_depth hint=Signal::derive(move || lead().unwrap_or_default()) grid=here on_working=desk.opener() />
        <Table title=words().ways.in_service hint=Signal::stored(words().ways.in_service_hint.to_owned()) grid=service on_working=desk.opener() />
    }
}
