//! The pipe line: what each part is made of, its size, its details; rise and pressure at its end.

use super::Desk;
use super::figures::{Answer, Figures, any_wrong, typed_note};
use crate::locale::{self, Shown, series_name, size_name, words};
use crate::parts::choice::ChoiceField;
use crate::parts::group::{Fold, Group};
use crate::platform::forms;
use crate::state::{Choice, Edit};
use leptos::prelude::*;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::{Field, Part};
use wellwright_core::papers::Topic;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::UnitSystem;
use wellwright_core::standards::fittings::{FITTINGS, Fitting};
use wellwright_core::standards::pipe::{Nominal, Series};
use wellwright_core::water::fittings::coefficient_in;
use wellwright_core::water::line::FrictionMethod;

const DETAILS: [Field; 12] = [
    Field::DropInside,
    Field::DropRoughness,
    Field::DropHazenWilliams,
    Field::DropFittings,
    Field::SuctionInside,
    Field::SuctionRoughness,
    Field::SuctionHazenWilliams,
    Field::SuctionFittings,
    Field::SurfaceInside,
    Field::SurfaceRoughness,
    Field::SurfaceHazenWilliams,
    Field::SurfaceFittings,
];

/// The line.
#[component]
pub fn Pipes(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    let methods = [FrictionMethod::DarcyWeisbach, FrictionMethod::HazenWilliams];
    let surface = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.choices.motor_kind() == MotorKind::Surface));
    let first = move || if surface.get() { Part::Suction } else { Part::Drop };
    view! {
        <Group title=words.line>
            {move || view! { <Pipe part=first() desk=desk /> }}
            <Pipe part=Part::Surface desk=desk />
            <Figures fields=&[Field::Rise, Field::Pressure] open=open />
            <Answer label=words.surge hint=words.surge_hint of=surge topic=Topic::Surge desk=desk />
        </Group>
        <Fold title=words.more_of_line note=typed_note(&DETAILS, open) must=any_wrong(&DETAILS, open)>
            <ChoiceField
                label=words.friction_label
                id="line.friction"
                options=methods.map(|method| (method, (words.friction)(method).to_owned())).to_vec()
                assumed=Some(FrictionMethod::default())
                value=desk.chosen(|choices| choices.friction)
                on_choose=desk.choose(Choice::Friction)
            />
            <Figures fields=&DETAILS open=open />
            {move || view! { <AddFitting part=first() desk=desk /> }}
            <AddFitting part=Part::Surface desk=desk />
        </Fold>
    }
}

fn surge(answer: &Evaluation, system: UnitSystem) -> Option<Shown> {
    answer.water.surge.map(|surge| locale::pressure(surge.rise, system))
}

/// What a part is made of, its length and its size.
#[component]
fn Pipe(part: Part, desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    let picked =
        Memo::new(move |_| open.sheet.with(|sheet| (sheet.job.choices.pipe(part), sheet.job.choices.series(part))));
    let series = Series::ALL.map(|(series, _)| (series, series_name(series)));
    let assumed = Memo::new(move |_| {
        open.answer.with(|answer| {
            let system = answer.water.system.as_ref()?;
            system.pipes.iter().find(|pipe| pipe.part == part)?.size.map(|size| size.size())
        })
    });
    let made_of = Memo::new(move |_| picked.get().1);
    let [series_id, size_id] = ids(part);
    let length: &'static [Field] = match part {
        Part::Drop => &[],
        Part::Suction => &[Field::SuctionLength],
        Part::Surface => &[Field::SurfaceLength],
    };
    let usual = part.assumed();
    view! {
        <Figures fields=length open=open />
        <ChoiceField
            label=(words.series_label)(part)
            id=series_id
            options=series.to_vec()
            assumed=Some(usual)
            value=Signal::derive(move || picked.get().0.series)
            on_choose=Callback::new(move |series| open.edit.run(Edit::Choice(Choice::Series(part, series))))
        />
        {move || {
            let sizes: Vec<(Nominal, String)> =
                made_of.get().sizes().map(|size| (size.size(), size_name(size.size()))).collect();
            view! {
                <ChoiceField
                    label=(words.size_label)(part)
                    id=size_id
                    options=sizes
                    assumed=assumed
                    value=Signal::derive(move || picked.get().0.size)
                    on_choose=Callback::new(move |size| open.edit.run(Edit::Choice(Choice::Size(part, size))))
                />
            }
        }}
    }
}

/// Ids of the controls of series and size.
fn ids(part: Part) -> [&'static str; 2] {
    match part {
        Part::Drop => ["line.drop_series", "line.drop_size"],
        Part::Suction => ["line.suction_series", "line.suction_size"],
        Part::Surface => ["line.surface_series", "line.surface_size"],
    }
}

/// Fittings that a part may have. The water leaves the line with its velocity head, so an exit is not among them.
fn fittings_of(part: Part) -> impl Iterator<Item = Fitting> {
    let suction = [Fitting::FootValveHinged, Fitting::FootValvePoppet, Fitting::EntranceSharp];
    let fits = move |fitting: &Fitting| part == Part::Suction || !suction.contains(fitting);
    FITTINGS.iter().map(|row| row.fitting).filter(|fitting| *fitting != Fitting::Exit).filter(fits)
}

/// Adds the loss coefficient of a fitting to the sum of a part.
#[component]
fn AddFitting(part: Part, desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().flow);
    let [.., sum] = part.fields();
    let id = format!("{}.add", sum.path());
    let inside = Memo::new(move |_| {
        open.answer.with(|answer| {
            let system = answer.water.system.as_ref()?;
            system.pipes.iter().find(|pipe| pipe.part == part).map(|pipe| pipe.inside.value)
        })
    });
    let known = Memo::new(move |_| {
        let coefficient = |fitting| coefficient_in(fitting, inside.get()).ok().flatten();
        fittings_of(part).filter_map(|fitting| Some((fitting, coefficient(fitting)?))).collect::<Vec<_>>()
    });
    let add = move |event: leptos::ev::Event| {
        let taken = forms::taken(&event).and_then(|place| known.with_untracked(|known| known.get(place).copied()));
        if let Some((_, coefficient)) = taken {
            open.edit.run(Edit::Fitting(part, coefficient));
        }
    };
    let option = |(place, (fitting, coefficient)): (usize, (Fitting, f64))| {
        let word = (words.fitting)((words.fitting_name)(fitting), &locale::plain_figure(coefficient));
        view! { <option value=place.to_string()>{word}</option> }
    };
    view! {
        <div class="field pick">
            <label for=id.clone()>{(words.add_to)(part)}</label>
            <select id=id on:change=add>
                <option value="">{words.add_fitting}</option>
                {move || known.get().into_iter().enumerate().map(option).collect_view()}
            </select>
        </div>
    }
}
