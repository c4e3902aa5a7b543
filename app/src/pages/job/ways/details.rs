//! The figures of one way, from its frame to its cost: pure, from the evaluation.

use crate::locale::energy as locale_energy;
use crate::locale::{
    Shown, amperes, device, frequency, kiloamperes, kilovolt_amperes, kilowatts, lead_size, line_volts, metal,
    money_shown, peak_volts, percent, power, words,
};
use crate::pages::job::headline::phases;
use wellwright_core::cable::lead::Conductor;
use wellwright_core::evaluate::{Evaluation, PoweredWay};
use wellwright_core::papers::{Topic, working};
use wellwright_core::power::fit::FrameFit;
use wellwright_core::power::transformer::Loading;
use wellwright_core::quantity::UnitSystem;

/// A figure of a way.
#[derive(Debug, Clone, PartialEq)]
pub struct Detail {
    /// Its name.
    pub label: &'static str,
    /// The figure with its unit.
    pub text: String,
    /// What is said beside it.
    pub note: String,
    /// Its working, where there is one.
    pub topic: Option<Topic>,
}

type Found = Option<(String, String)>;

/// The name of a figure, and its working by the way's place.
type OfWay = (&'static str, fn(usize) -> Topic);

/// The working of a figure, by its name.
fn topic(label: &str, place: usize) -> Option<Topic> {
    let words = &words().ways;
    let topics: [OfWay; 31] = [
        (words.frame, Topic::WayFrame),
        (words.input_power, Topic::WayInput),
        (words.supply_size, Topic::WaySupply),
        (words.supply_drop, Topic::WaySupplyDrop),
        (words.device, Topic::WayDevice),
        (words.transformer_load, Topic::WayLoading),
        (words.at_drive, Topic::WaySag),
        (words.fault, Topic::WayFault),
        (words.distortion, Topic::WayHarmonics),
        (words.start_current, Topic::WayStart),
        (words.start_motor, Topic::WayStart),
        (words.start_pole, Topic::WayStart),
        (words.generator, Topic::WayGenerator),
        (words.at_motor, Topic::WayVolts),
        (words.runs_out, Topic::WayVolts),
        (words.peak, Topic::WayPeak),
        (words.lifetime, Topic::WayCost),
        (words.required, Topic::WayRequired),
        (words.rated_input, Topic::WaySupply),
        (words.step_up, Topic::WayStepUp),
        (words.core_limit, Topic::WayStepUp),
        (words.idler, Topic::WayIdler),
        (words.lead, Topic::WayLead),
        (words.lead_cost, Topic::WayCost),
        (words.supply_cost, Topic::WayCost),
        (words.equipment_cost, Topic::WayCost),
        (words.remedy_cost, Topic::WayCost),
        (words.line_cost, Topic::WayCost),
        (words.first_cost, Topic::WayCost),
        (words.yearly, Topic::WayCost),
        (words.metal, Topic::WayMetal),
    ];
    topics.into_iter().find(|(name, _)| *name == label).map(|(_, topic)| topic(place))
}

fn plain(shown: Shown) -> Found {
    Some((shown.text(), String::new()))
}

/// The figures of a way that there are.
#[must_use]
pub fn details(answer: &Evaluation, place: usize, system: UnitSystem) -> Vec<Detail> {
    let Some(way) = answer.ways.all.get(place) else { return Vec::new() };
    let words = &words().ways;
    let all = [
        (words.required, way.motor.and_then(|motor| plain(amperes(motor.required)))),
        (words.frame, frame(way, system)),
        (words.input_power, way.draw.and_then(|draw| plain(kilowatts(draw.input)))),
        (words.rated_input, way.draw.and_then(|draw| plain(amperes(draw.rated)))),
        (words.device, way.draw.map(|draw| (device(draw.device).text(), (words.device_by)(draw.device_by).to_owned()))),
        (words.supply_size, way.supply.map(|run| (wires(way, run.run.conductor), String::new()))),
        (words.supply_ground, way.supply.map(|run| (lead_size(run.run.ground), String::new()))),
        (words.supply_drop, way.supply.map(|run| (line_volts(run.drop).text(), percent(run.share, 2).text()))),
    ];
    let extras = [
        (words.step_up, way.step_up.and_then(|one| plain(kilovolt_amperes(one.rating?)))),
        (words.core_limit, way.step_up.and_then(|one| plain(frequency(one.lowest)))),
        (
            words.idler,
            way.idler.map(|one| (power(one.power, system).text(), (words.idles)(&kilowatts(one.idle).text()))),
        ),
    ];
    let rest = extras.into_iter().chain(at_pole(way)).chain(at_motor(way)).chain(money(way, system));
    let known = |topic: &Topic| working(answer, *topic, system).is_some();
    let told = |(label, found): (&'static str, Found)| {
        found.map(|(text, note)| Detail { label, text, note, topic: topic(label, place).filter(known) })
    };
    all.into_iter().chain(rest).filter_map(told).collect()
}

/// Conductors of a run, by how many lines its supply has.
pub fn wires(way: &PoweredWay, conductor: Conductor) -> String {
    let lines = match way.family.supply.feed {
        wellwright_core::power::family::Feed::SinglePhase => 2,
        wellwright_core::power::family::Feed::ThreePhase => 3,
    };
    format!("{lines}\u{a0}×\u{a0}{}", crate::locale::conductor(conductor))
}

fn frame(way: &PoweredWay, system: UnitSystem) -> Found {
    match way.frame? {
        FrameFit::Serves { frame, .. } => {
            let said = (words().ways.frame_of)(&power(frame.power, system).text(), &amperes(frame.derated).text());
            Some((said, String::new()))
        }
        FrameFit::CurrentShort { most, .. } => plain(amperes(most)),
        FrameFit::SizeShort { most, .. } => plain(power(most, system)),
        FrameFit::AskMaker(_) => None,
    }
}

fn at_pole(way: &PoweredWay) -> Vec<(&'static str, Found)> {
    let words = &words().ways;
    let Some(pole) = way.pole else { return vec![(words.generator, generator(way))] };
    let (Loading::Within(load) | Loading::Close(load) | Loading::Over(load)) = pole.loading;
    let assumed = if pole.assumed { crate::locale::words().fields.assumed } else { "" };
    vec![
        (words.transformer, Some((kilovolt_amperes(pole.transformer.rating).text(), assumed.to_owned()))),
        (words.transformer_load, plain(percent(load, 1))),
        (words.at_drive, pole.sag.and_then(|sag| plain(line_volts(sag.left)))),
        (words.fault, Some((kiloamperes(pole.fault_here).text(), (words.limit_of)(&kiloamperes(pole.marked).text())))),
        (
            words.distortion,
            pole.harmonics
                .map(|found| (percent(found.distortion, 0).text(), (words.limit_of)(&percent(found.limit, 0).text()))),
        ),
        (words.start_current, way.start.and_then(|start| plain(amperes(start.dip.current)))),
        (words.start_motor, way.start.and_then(|start| plain(percent(start.dip.at_motor, 1)))),
        (words.start_pole, way.start.and_then(|start| plain(percent(start.dip.at_pole, 1)))),
        (words.generator, generator(way)),
    ]
}

fn generator(way: &PoweredWay) -> Found {
    way.set.and_then(|need| plain(kilovolt_amperes(need.needed())))
}

fn at_motor(way: &PoweredWay) -> [(&'static str, Found); 4] {
    let words = &words().ways;
    [
        (words.lead, way.lead.map(|lead| (phases(lead.run.conductor), percent(lead.drop_share, 2).text()))),
        (
            words.at_motor,
            way.volts.map(|volts| {
                (line_volts(volts.budget.at_motor).text(), percent(super::rows::share(volts.verdict), 1).text())
            }),
        ),
        (words.runs_out, way.volts.and_then(|volts| plain(frequency(volts.runs_out)))),
        (
            words.peak,
            way.stress.map(|stress| {
                (peak_volts(stress.peak).text(), (words.limit_of)(&peak_volts(stress.limit.peak()).text()))
            }),
        ),
    ]
}

fn money(way: &PoweredWay, system: UnitSystem) -> Vec<(&'static str, Found)> {
    let words = &words().ways;
    let Some(cost) = way.cost else { return Vec::new() };
    let part = |amount: wellwright_core::quantity::Money| {
        (amount.0 != 0.0).then(|| (money_shown(amount, 0).text(), String::new()))
    };
    vec![
        (words.lead_cost, part(cost.lead)),
        (words.supply_cost, part(cost.beyond.supply)),
        (words.equipment_cost, part(cost.beyond.equipment)),
        (words.remedy_cost, part(cost.beyond.remedy)),
        (words.line_cost, part(cost.beyond.line)),
        (words.first_cost, plain(money_shown(cost.first, 0))),
        (
            words.yearly,
            cost.energy.map(|energy| {
                let note = cost.yearly.map(|yearly| money_shown(yearly, 0).text()).unwrap_or_default();
                (locale_energy(energy).text(), note)
            }),
        ),
        (words.lifetime, cost.lifetime.and_then(|cost| plain(money_shown(cost, 0)))),
        (words.metal, plain(metal(cost.metal, system))),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;

    /// The first figure of a text; nothing where it holds none.
    fn figure(text: &str) -> Option<(f64, usize)> {
        let start = text.find(|letter: char| letter.is_ascii_digit())?;
        let rest: String = text[start..]
            .chars()
            .take_while(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ','))
            .filter(|letter| *letter != ',')
            .collect();
        let decimals = rest.split_once('.').map_or(0, |(_, after)| after.len());
        Some((rest.trim_end_matches('.').parse().ok()?, decimals))
    }

    #[test]
    fn every_figure_of_every_way_opens_to_a_working_that_holds_it() {
        let words = &words().ways;
        // Sizes are read from a list with what the figures beside them say; the transformer is entered or the next usual.
        let from_lists = [words.supply_size, words.supply_ground, words.transformer];
        let mut met = 0;
        for answer in demo_jobs().iter().map(evaluate) {
            for place in 0..answer.ways.all.len() {
                for system in [UnitSystem::Us, UnitSystem::Si] {
                    for detail in details(&answer, place, system) {
                        let Some((value, decimals)) = figure(&detail.text) else { continue };
                        if from_lists.contains(&detail.label) {
                            continue;
                        }
                        assert!(detail.topic.is_some(), "{}: {} opens nothing", detail.label, detail.text);
                        met += 1;
                        // The lead is told by its size, with the drop beside it.
                        let (value, decimals) = match figure(&detail.note) {
                            Some(note) if detail.label == words.lead => note,
                            _ => (value, decimals),
                        };
                        let found = working(&answer, detail.topic.unwrap(), system).unwrap();
                        let off = 0.500_001 * 10_f64.powi(-i32::try_from(decimals).unwrap());
                        let steps = found.steps.iter().map(|step| step.result);
                        let values = found.values.iter().map(|put| put.value);
                        let limits = found.limit.iter().flat_map(|limit| [limit.actual, limit.limit]);
                        let all = steps.chain(values).chain(limits).chain(found.more.iter().copied());
                        // A list may tell kilowatts and kiloamperes where a formula has watts and amperes.
                        let mut told = all.flat_map(|figure| [figure.value, figure.value / 1000.0]);
                        assert!(
                            told.any(|told| (told - value).abs() <= off),
                            "{}: {} is not in {:?}",
                            detail.label,
                            detail.text,
                            found.topic
                        );
                    }
                }
            }
        }
        assert!(met > 500, "{met}");
    }
}
