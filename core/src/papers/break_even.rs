//! The working of the break-even depth: where both ways cost the same, or a step makes the other cheaper.

use super::cost::{
    EXTRA, beyond, cost, index, per_length, price, put_difference, put_extra, put_labor, typed_extra, yearly,
};
use super::math::{Math, formula};
use super::name::Name;
use super::sheet::{DEPTH, LEAD, SURFACE, Sheet, length, money};
use super::ways::cost::{WORTH, put_worth};
use super::working::Working;
use crate::evaluate::{Basis, Crossing, Evaluation, Piece, Place, Sweep};
use crate::job::{Field, Origin, Way};
use crate::pump::motor::MotorKind;
use crate::quantity::{Length, Money, in_meters};

pub(super) fn break_even(evaluation: &Evaluation, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let sweep = evaluation.sweep.as_ref()?;
    let crossing = sweep.break_even(basis).lasting()?;
    let above = pair(sweep, |piece| piece.to >= crossing.depth)?;
    let below = pair(sweep, |piece| piece.to > crossing.depth).unwrap_or(above);
    let result = sheet.shown(length(crossing.depth));
    let at = At { evaluation, sweep, crossing, basis };
    if basis == Basis::Lifetime {
        put_worth(&evaluation.inputs, &mut sheet)?;
        sheet.cite(&["nist-hb-135"]);
    }
    if crossing.place == Place::Run {
        // On the very end of a piece the lines that cross are those of the pieces below it.
        let pieces = if at.apart(below) < at.apart(above) { below } else { above };
        at.on_run(pieces, &mut sheet)?;
    } else {
        at.at_step(above, below, &mut sheet)?;
    }
    Some(sheet.done(result, &[]))
}

/// The first piece of each way that meets a condition.
fn pair(sweep: &Sweep, meets: impl Fn(&Piece) -> bool) -> Option<[Piece; 2]> {
    let [low, high] = Way::ALL.map(|way| sweep.way(way).pieces.iter().copied().find(&meets));
    Some([low?, high?])
}

/// A change of the cheaper way.
struct At<'a> {
    evaluation: &'a Evaluation,
    sweep: &'a Sweep,
    crossing: &'a Crossing,
    basis: Basis,
}

impl At<'_> {
    fn cost(&self, way: Way, piece: &Piece) -> Money {
        self.sweep.way(way).cost_on(piece, self.crossing.depth, self.basis)
    }

    /// How far apart the costs of two pieces are.
    fn apart(&self, pieces: [Piece; 2]) -> f64 {
        let [low, high] = Way::ALL.map(|way| self.cost(way, &pieces[way as usize]));
        (low - high).size().0
    }

    /// Two lines that cross. Installed: the lead whose cheaper cable pays for the equipment, and both costs there.
    fn on_run(&self, pieces: [Piece; 2], sheet: &mut Sheet) -> Option<()> {
        for (way, piece) in Way::ALL.into_iter().zip(&pieces) {
            sheet.put(price(index(way)), Name::CablePrice(way), per_length(piece.run.price), Origin::WorkedOut);
        }
        if self.basis == Basis::Installed {
            put_difference(self.evaluation, pieces.map(|piece| Some(piece.outfit)), sheet)?;
            let cheaper = formula![price(index(Way::V240)), "−", price(index(Way::V480))];
            let lead = length(self.crossing.depth + self.sweep.surface_run);
            sheet.step(LEAD, vec![Math::Fraction(formula![EXTRA], cheaper)], lead);
            if self.evaluation.kind == MotorKind::Submersible {
                let origin = self.evaluation.inputs.origin(Field::SurfaceRun);
                sheet.put(SURFACE, Name::SurfaceRun, length(self.sweep.surface_run), origin);
                sheet.step(DEPTH, formula![LEAD, "−", SURFACE], length(self.crossing.depth));
            }
        } else {
            self.put_lead(sheet);
        }
        for (way, piece) in Way::ALL.into_iter().zip(&pieces) {
            self.put_cost(way, piece, index(way), sheet);
        }
        Some(())
    }

    /// A way that steps there: both costs above the step, and those of the ways that step below it.
    fn at_step(&self, above: [Piece; 2], below: [Piece; 2], sheet: &mut Sheet) -> Option<()> {
        self.put_lead(sheet);
        for (way, piece) in Way::ALL.into_iter().zip(&above) {
            sheet.put(price(index(way)), Name::CablePrice(way), per_length(piece.run.price), Origin::WorkedOut);
            self.put_cost(way, piece, index(way), sheet);
        }
        for way in Way::ALL {
            let next = &below[way as usize];
            if *next != above[way as usize] {
                let index = next_index(way);
                sheet.put(price(index), Name::NextCablePrice(way), per_length(next.run.price), Origin::WorkedOut);
                self.put_cost(way, next, index, sheet);
            }
        }
        Some(())
    }

    fn put_lead(&self, sheet: &mut Sheet) {
        let (evaluation, depth) = (self.evaluation, self.crossing.depth);
        if evaluation.kind == MotorKind::Submersible {
            sheet.put(DEPTH, Name::BreakEvenDepth, length(depth), Origin::WorkedOut);
            sheet.lead(depth, self.sweep.surface_run, evaluation.inputs.origin(Field::SurfaceRun));
        } else {
            sheet.put(LEAD, Name::BreakEvenDepth, length(depth), Origin::WorkedOut);
        }
    }

    /// The cost of a way by a piece: cable, what it needs beyond, and the energy of the years, as the basis counts them.
    fn put_cost(&self, way: Way, piece: &Piece, name: &'static str, sheet: &mut Sheet) {
        let mut sum = formula![price(name), "·", LEAD];
        if self.basis != Basis::Cable {
            let extra = typed_extra(self.evaluation).filter(|_| way == Way::V480);
            let own = piece.outfit.cost.total() - extra.unwrap_or(Money(0.0));
            sheet.put(beyond(name), Name::BeyondLead(way), money(own), Origin::WorkedOut);
            sum.extend(formula!["+", beyond(name)]);
            if let Some(extra) = extra {
                put_extra(extra, sheet);
                sum.extend(formula!["+", EXTRA]);
            }
        }
        if self.basis != Basis::Cable {
            put_labor(self.sweep.way(way).labor, &mut sum, sheet);
        }
        if let (Basis::Lifetime, Some(year)) = (self.basis, piece.run.yearly) {
            let lead: Length = self.crossing.depth + self.sweep.surface_run;
            let year = Money(year.at(in_meters(lead)));
            sheet.put(yearly(name), Name::YearlyCost(way), money(year), Origin::WorkedOut);
            sum.extend(formula!["+", yearly(name), "·", WORTH]);
        }
        sheet.step(cost(name, self.basis), sum, money(self.cost(way, piece)));
    }
}

/// Index of what belongs to a way below its step.
fn next_index(way: Way) -> &'static str {
    match way {
        Way::V240 => "240+",
        Way::V480 => "480+",
    }
}
