//! Power: the supply, the place of the equipment, and every way to run the motor from it.

use super::equipment::Equipment;
use super::figures::{Figures, any_wrong, typed_note};
use super::{Desk, Heading, grids};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::choice::ChoiceField;
use crate::parts::group::{Fold, Group};
use crate::parts::switch::Switch;
use crate::parts::table::Table;
use crate::routes::Page;
use crate::state::{Choice, Edit};
use leptos::prelude::*;
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::{Choices, Field, Grounding, Place, Sets};
use wellwright_core::power::family::Class;
use wellwright_core::power::generator::Hookup;
use wellwright_core::standards::conductor::Metal;
use wellwright_core::standards::enclosure::TABLE;

const SUPPLY: [Field; 4] = [Field::SupplyVolts, Field::PoleDistance, Field::TransformerRating, Field::DeviceAmps];
const MORE: [Field; 8] = [
    Field::TransformerImpedance,
    Field::OtherLoad,
    Field::UtilityLimit,
    Field::AllowedSupplyDrop,
    Field::AllowedWholeDrop,
    Field::FeederAmbient,
    Field::StartDipMotor,
    Field::StartDipPole,
];
const PLACE: [Field; 4] = [Field::DriveAmbient, Field::SunRise, Field::Altitude, Field::MarkedShortCircuit];
const OTHERS: [Field; 6] = [
    Field::LineDistance,
    Field::LineFixed,
    Field::LinePrice,
    Field::LineFree,
    Field::GeneratorRating,
    Field::GeneratorSite,
];

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let words = words();
    view! {
        <Heading page=Page::Power desk=desk />
        <Supply desk=desk />
        <PlaceOfDrive desk=desk />
        <Others desk=desk />
        <Equipment desk=desk />
        <CautionBoxes cautions=words.cautions.power.to_vec() />
    }
}

/// The single-phase supply.
#[component]
fn Supply(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let high =
        Memo::new(move |_| open.answer.with(|answer| answer.ways.site.map(|site| site.class) == Some(Class::High)));
    view! {
        <Group title=words.supply>
            <Figures fields=&SUPPLY open=open />
            <Show when=move || high.get()>
                <ChoiceField
                    label=words.grounding_label
                    id="supply.grounding"
                    options=[Grounding::Midpoint, Grounding::OneLine].map(|one| (one, (words.grounding)(one).to_owned())).to_vec()
                    assumed=None
                    value=desk.chosen(|choices| choices.grounding)
                    on_choose=desk.choose(Choice::Grounding)
                />
            </Show>
        </Group>
        <Fold title=words.more_supply note=typed_note(&MORE, open) must=any_wrong(&MORE, open)>
            <Figures fields=&MORE open=open />
            <Conductors desk=desk />
        </Fold>
    }
}

/// How the supply conductors are made.
#[component]
fn Conductors(desk: Desk) -> impl IntoView {
    let (ways, fields) = (&words().ways, &words().fields);
    let usual = Choices::default();
    let builds = [Build::PlasticConduit, Build::SteelConduit, Build::Twisted];
    let sets: Vec<_> =
        (1..=Sets::LIMIT).filter_map(Sets::new).map(|sets| (sets, (fields.sets)(sets.get()).to_owned())).collect();
    view! {
        <ChoiceField
            label=ways.feeder_metal
            id="supply.metal"
            options=[Metal::Copper, Metal::Aluminum].map(|metal| (metal, (fields.metal)(metal).to_owned())).to_vec()
            assumed=Some(usual.feeder_metal())
            value=desk.chosen(|choices| choices.feeder_metal)
            on_choose=desk.choose(Choice::FeederMetal)
        />
        <ChoiceField
            label=ways.feeder_build
            id="supply.build"
            options=builds.map(|build| (build, (fields.build)(build).to_owned())).to_vec()
            assumed=Some(usual.feeder_build())
            value=desk.chosen(|choices| choices.feeder_build)
            on_choose=desk.choose(Choice::FeederBuild)
        />
        <ChoiceField
            label=ways.feeder_sets
            id="supply.most_sets"
            options=sets
            assumed=Some(Sets::ONE)
            value=desk.chosen(|choices| choices.feeder_sets)
            on_choose=desk.choose(Choice::FeederSets)
        />
    }
}

/// Where the equipment stands.
#[component]
fn PlaceOfDrive(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let usual = Choices::default();
    let outdoors = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.choices.place().outdoors()));
    let types = TABLE.each_ref().map(|row| (row.kind, (words.enclosure)(row.name))).to_vec();
    view! {
        <Group title=words.place>
            <ChoiceField
                label=words.place_label
                id="supply.place"
                options=Place::ALL.map(|place| (place, (words.of_place)(place).to_owned())).to_vec()
                assumed=Some(usual.place())
                value=desk.chosen(|choices| choices.place)
                on_choose=desk.choose(Choice::Place)
            />
            <Show when=move || outdoors.get()>
                <Switch
                    label=words.shaded_label
                    hint=words.shaded_hint
                    id="supply.shaded"
                    assumed=false
                    value=desk.chosen(|choices| choices.shaded)
                    on_set=Callback::new(move |shaded| open.edit.run(Edit::Choice(Choice::Shaded(Some(shaded)))))
                />
            </Show>
            <Figures fields=&PLACE open=open />
            <ChoiceField
                label=words.enclosure_label
                id="supply.enclosure"
                options=types
                assumed=Some(usual.enclosure())
                value=desk.chosen(|choices| choices.enclosure)
                on_choose=desk.choose(Choice::Enclosure)
            />
        </Group>
    }
}

/// A three-phase line or a set of one's own.
#[component]
fn Others(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let usual = Choices::default();
    let hookups = [Hookup::AsBuilt, Hookup::DoubleDelta, Hookup::TwoLines];
    view! {
        <Fold title=words.others note=typed_note(&OTHERS, open) must=any_wrong(&OTHERS, open)>
            <ChoiceField
                label=words.three_phase_label
                id="supply.three_phase"
                options=[Class::Low, Class::High].map(|class| (class, (words.class)(class).to_owned())).to_vec()
                assumed=Some(usual.three_phase())
                value=desk.chosen(|choices| choices.three_phase)
                on_choose=desk.choose(Choice::ThreePhase)
            />
            <Figures fields=&OTHERS open=open />
            <ChoiceField
                label=words.hookup_label
                id="supply.hookup"
                options=hookups.map(|hookup| (hookup, (words.hookup)(hookup).to_owned())).to_vec()
                assumed=Some(usual.hookup())
                value=desk.chosen(|choices| choices.hookup)
                on_choose=desk.choose(Choice::Hookup)
            />
        </Fold>
    }
}

/// The motor's amperes at either voltage.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let tables = &words().tables;
    let ways = Memo::new(move |_| desk.open.answer.with(grids::ways));
    view! { <Table title=tables.ways hint=Signal::stored(tables.ways_hint.to_owned()) grid=ways on_working=desk.opener() /> }
}
