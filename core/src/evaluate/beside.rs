//! Further ways along the curve of cost, beside the two that stand for 240 V and 480 V.

use super::runs::Swept;
use super::sweep::WaySweep;
use super::ways::Base;
use super::{Evaluation, Laid, Sense, cooler::Cooler, deeper, duty, lead};
use crate::job::{Job, WayKey};

impl Evaluation {
    /// The evaluation as it is seen in a sense of depth, with further ways along its curve: each as if it stood for its
    /// voltage, with its own equipment by the price book. Ways that stand there already, and those that can't, are left
    /// out; the order is that of all ways.
    ///
    /// # Range
    /// The job that the evaluation is of.
    #[must_use]
    pub fn with_beside(&self, job: &Job, sense: Sense, keys: &[WayKey]) -> Self {
        let mut seen = self.in_sense(sense);
        if let Some(sweep) = seen.sweep.as_mut().filter(|_| !keys.is_empty()) {
            sweep.beside = beside(self, job, sense, keys);
        }
        seen
    }

    /// The places of the ways that can be seen beside the pair.
    #[must_use]
    pub fn can_be_beside(&self) -> Vec<usize> {
        let stands = |place: &usize| {
            let pair = self.sweep.iter().flat_map(|sweep| &sweep.ways);
            pair.into_iter().all(|way| way.place != Some(*place))
        };
        let can = |place: &usize| {
            let way = self.ways.all.get(*place);
            way.is_some_and(|way| way.way.is_some_and(|voltage| way.stands_for(voltage)))
        };
        (0..self.ways.all.len()).filter(can).filter(stands).collect()
    }
}

fn beside(answer: &Evaluation, job: &Job, sense: Sense, keys: &[WayKey]) -> Vec<WaySweep> {
    let Evaluation { water, ways, kind, .. } = answer;
    // What was entered as the extra of one way is not that of another.
    let mut inputs = answer.inputs.clone();
    if let Ok(prices) = &mut inputs.prices {
        prices.extra_equipment = None;
    }
    let (depth, surface) = lead(*kind, &inputs);
    let Some(surface_run) = surface else { return Vec::new() };
    let cooler = Cooler::of(&job.choices, &inputs, water);
    let laid = depth.map(|depth| Laid { depth, surface: surface_run, cooler });
    let loads = duty::loads(job, &inputs, water);
    let base = Base::of(&job.choices, &inputs, water, laid, loads);
    let pair = answer.sweep.as_ref().map_or([None, None], |sweep| [sweep.ways[0].place, sweep.ways[1].place]);
    let asked = |place: &usize| ways.all.get(*place).is_some_and(|way| keys.contains(&way.key()));
    let one = |place: usize| {
        let voltage = ways.all.get(place)?.way?;
        let mut pair = pair;
        pair[voltage as usize] = Some(place);
        let base = base.as_ref();
        let swept = Swept { inputs: &inputs, choices: &job.choices, base, ways, pair, surface_run, cooler };
        match sense {
            Sense::DeeperWater if answer.deeper.is_some() => deeper::alone(&swept, water, voltage),
            _ => swept.longer_alone(voltage),
        }
    };
    answer.can_be_beside().into_iter().filter(asked).filter_map(one).collect()
}
