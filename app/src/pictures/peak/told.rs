//! The picture in words, for who listens.

use super::chart::Chart;
use super::letters::{length_text, whole_volts};
use crate::locale::words;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::quantity::UnitSystem;

/// The picture in a few sentences.
#[must_use]
pub fn described(chart: &Chart, units: UnitSystem) -> String {
    let peak = &words().peak;
    let length = |value| length_text(value, units);
    let way = chart.way.map(|way| format!(", {}", (words().answer.way)(way))).unwrap_or_default();
    let moves = if chart.full < chart.bus { peak.alt_falls } else { peak.alt_rise };
    let mut said = vec![
        format!("{}{way}.", peak.label),
        (peak.alt_bus)(&whole_volts(chart.bus)),
        moves(&whole_volts(chart.full), &length(chart.critical)),
        (peak.alt_limit)(chart.limit, &whole_volts(chart.limit.peak())),
    ];
    said.extend(chart.over_from().map(|from| (peak.alt_bare)(&length(from))));
    said.push((peak.alt_lead)(&length(chart.lead), &whole_volts(chart.peak)));
    said.push(if chart.over() { peak.alt_over } else { peak.alt_within }.to_owned());
    if chart.meet {
        said.push((peak.alt_meet)(&length(chart.overlap()), &whole_volts(chart.twice())));
    }
    if chart.fitted != Remedy::NoneNeeded || chart.over() {
        said.push((peak.alt_fitted)(chart.fitted).to_owned());
    }
    if chart.fitted != Remedy::NoneNeeded && !chart.cured {
        said.push(peak.alt_not_enough.to_owned());
    }
    said.join(" ")
}
