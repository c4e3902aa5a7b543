//! When the voltage that costs more at first has paid for it.

use super::{Basis, Evaluation};
use crate::cost::worth::{discounted_payback, simple_payback};
use crate::job::{Field, Way};
use crate::quantity::{Money, in_meters};

/// The dearer voltage at first, and what it saves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Payback {
    /// The way that costs more at first.
    pub way: Way,
    /// How much more.
    pub first: Money,
    /// What it saves on energy in a year; below zero it costs more.
    pub yearly: Money,
    /// Years until that has paid for it; nothing where it never does.
    pub simple: Option<f64>,
    /// The same with money that earns the discount; nothing where it never does.
    pub discounted: Option<f64>,
}

/// The payback between both voltages at the job's depth; nothing where the energy of either is not known.
#[must_use]
pub fn payback(answer: &Evaluation) -> Option<Payback> {
    let here = answer.here.as_ref()?;
    let lead = in_meters(here.lead);
    let yearly = |way: Way| Some(here.way(way)?.run.yearly?.at(lead));
    let saving = here.saving.as_ref()?.on(Basis::Installed)?;
    let way = if saving.0 < 0.0 { Way::V480 } else { Way::V240 };
    let (first, yearly) = (saving.size(), Money(yearly(way.other())? - yearly(way)?));
    let rate = answer.inputs.entered.get(Field::Discount, |percent| percent / 100.0)?;
    Some(Payback {
        way,
        first,
        yearly,
        simple: simple_payback(first, yearly).ok()?,
        discounted: discounted_payback(first, yearly, rate).ok()?,
    })
}
