//! The working of a piece of a way's curve: how deep its conductor reaches, and what it costs at both ends.

use super::cost::{EXTRA, LABOR, beyond, index, per_length as per_length_price, price, put_extra, typed_extra};
use super::lead::{
    ALLOWED, COS, CURRENT, FACTOR, REACTANCE, RESISTANCE, SENDING, SIN, put_impedance, reactance_source,
};
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::sheet::{SURFACE, Sheet, current, length, money, percent, plain, volts};
use super::ways::cost::{WORTH, put_worth};
use super::working::Working;
use crate::cable::drop::longest_lead;
use crate::cable::lead::{Demands, impedance};
use crate::evaluate::{Basis, DEEPEST_FEET, Evaluation, Piece, WaySweep};
use crate::job::{Field, Origin, Way};
use crate::quantity::{Length, Money, Unit, feet, in_meters, in_ohms_per_kilofoot, in_volts};

const ALONG: Symbol = Symbol::plain("α");
const ACROSS: Symbol = Symbol::plain("β");
const HALF: Symbol = Symbol::plain("h");
const LEFT: Symbol = Symbol::plain("c");
const LONGEST: Symbol = Symbol::of("L", "max");
/// The depths of the piece's ends, the leads down to them, and what they cost.
const DEPTHS: [Symbol; 2] = [Symbol::of("D", "0"), Symbol::of("D", "1")];
const LEADS: [Symbol; 2] = [Symbol::of("L", "0"), Symbol::of("L", "1")];
const YEARLY: [Symbol; 2] = [Symbol::of("Y", "0"), Symbol::of("Y", "1")];
const COSTS: [Symbol; 2] = [Symbol::of("C", "0"), Symbol::of("C", "1")];

pub(super) fn step(
    evaluation: &Evaluation,
    (way, place, basis): (Way, usize, Basis),
    mut sheet: Sheet,
) -> Option<Working> {
    let sweep = evaluation.sweep.as_ref()?.way(way);
    let piece = sweep.pieces.get(place)?;
    let on = On { evaluation, sweep, piece, basis };
    let [from, to] = on.put_ends(&mut sheet)?;
    let costs = on.put_costs(&mut sheet)?;
    Some(Working { more: [vec![from], costs].concat(), ..sheet.done(to, &["nec-2023-ch9-t8"]) })
}

/// A piece of a way's curve.
struct On<'a> {
    evaluation: &'a Evaluation,
    sweep: &'a WaySweep,
    piece: &'a Piece,
    basis: Basis,
}

impl On<'_> {
    fn surface(&self) -> Length {
        self.evaluation.sweep.as_ref().map_or_else(Length::default, |sweep| sweep.surface_run)
    }

    /// Where it begins and ends.
    fn put_ends(&self, sheet: &mut Sheet) -> Option<[Measured; 2]> {
        let inputs = &self.evaluation.inputs;
        sheet.put(SURFACE, Name::SurfaceRun, length(self.surface()), inputs.origin(Field::SurfaceRun));
        let from = sheet.put(DEPTHS[0], Name::PieceFrom, length(self.piece.from), Origin::WorkedOut);
        let demands = self.sweep.demands_of(&self.piece.run);
        let deepest = self.piece.to >= feet(DEEPEST_FEET);
        let by_drop = self.by_drop(&demands);
        if by_drop.is_none() {
            sheet.enter_conductor(self.piece.run.run.conductor, demands.setting.metal);
        }
        let to = match by_drop {
            Some(longest) => {
                self.put_longest(&demands, longest, sheet)?;
                sheet.step(DEPTHS[1], formula![LONGEST, "−", SURFACE], length(self.piece.to))
            }
            None if deepest => sheet.put(DEPTHS[1], Name::DeepestSwept, length(self.piece.to), Origin::Definition),
            None => sheet.put(DEPTHS[1], Name::PieceTo, length(self.piece.to), Origin::WorkedOut),
        };
        Some([from, to])
    }

    /// The longest lead by the drop, where that is what ends the piece.
    fn by_drop(&self, demands: &Demands) -> Option<Length> {
        let (r, x) = impedance(self.piece.run.run.conductor, demands.setting.metal, demands.build);
        let longest = longest_lead(demands.load, r, x, demands.allowed_drop).ok()?;
        let ends = ((longest - self.surface() - self.piece.to) / self.piece.to.max(feet(1.0))).value.abs() < 1e-9;
        ends.then_some(longest)
    }

    /// The lead on which the drop comes to what is allowed: the positive root of the square that [`longest_lead`] tells.
    fn put_longest(&self, demands: &Demands, longest: Length, sheet: &mut Sheet) -> Option<()> {
        let (inputs, load) = (&self.evaluation.inputs, demands.load);
        let (r, x) = impedance(self.piece.run.run.conductor, demands.setting.metal, demands.build);
        let [cos, allowed] = [&inputs.power_factor, &inputs.allowed_drop].map(|known| known.as_ref().ok());
        let (cos, allowed) = (cos?, allowed?);
        sheet.put(SENDING, Name::SendingVoltage, volts(load.sending), Origin::Definition);
        sheet.put(CURRENT, Name::MotorCurrent, current(load.current), Origin::WorkedOut);
        sheet.put(COS, Name::PowerFactor, plain(cos.value), cos.origin);
        sheet.put(FACTOR, Name::PhaseFactor, plain(load.phases.factor()), Origin::Definition);
        sheet.put(ALLOWED, Name::AllowedDrop, percent(allowed.value), allowed.origin);
        put_impedance(self.piece.run.run.conductor, demands.setting.metal, demands.build, sheet);
        let sine = (1.0 - cos.value * cos.value).sqrt();
        let root = Math::Root(formula![1.0, "−", Math::Power(formula![COS], 2.0)]);
        sheet.step(SIN, vec![root], plain(sine));
        let (ohms, reactive) = (in_ohms_per_kilofoot(r), in_ohms_per_kilofoot(x));
        let per_foot = |ohms: f64| (load.phases.factor() * load.current.value * ohms / 1000.0, Unit::VoltPerFoot);
        let over = |inside: Vec<Math>| {
            let product = [formula![FACTOR, "·", CURRENT, "·", "("], inside, formula![")"]].concat();
            vec![Math::Fraction(product, formula![1000.0])]
        };
        let (along, across) =
            (per_foot(ohms * cos.value + reactive * sine), per_foot(reactive * cos.value - ohms * sine));
        sheet.step(ALONG, over(formula![RESISTANCE, "·", COS, "+", REACTANCE, "·", SIN]), along);
        sheet.step(ACROSS, over(formula![REACTANCE, "·", COS, "−", RESISTANCE, "·", SIN]), across);
        let share = || Math::Fraction(formula![ALLOWED], formula![100.0]);
        let (d, v) = (allowed.value, in_volts(load.sending));
        let half = (along.0 * (1.0 - d), Unit::VoltPerFoot);
        sheet.step(HALF, formula![ALONG, "·", "(", 1.0, "−", share(), ")"], half);
        let left = formula![share(), "·", "(", 2.0, "−", share(), ")", "·", SENDING];
        sheet.step(LEFT, left, (d * (2.0 - d) * v, Unit::Volt));
        let two = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
        let per_volt = Math::Fraction(formula![LEFT], formula![SENDING]);
        let inside = formula![two(HALF), "+", "(", two(ALONG), "+", two(ACROSS), ")", "·", per_volt];
        let under = formula![HALF, "+", Math::Root(inside)];
        sheet.step(LONGEST, vec![Math::Fraction(formula![LEFT], under)], length(longest));
        sheet.cite(&[reactance_source(demands.build), "ieee-141-1993"]);
        Some(())
    }

    /// What it costs at both ends.
    fn put_costs(&self, sheet: &mut Sheet) -> Option<Vec<Measured>> {
        let name = index(self.sweep.way);
        sheet.put(
            price(name),
            Name::CablePrice(self.sweep.way),
            per_length_price(self.piece.run.price),
            Origin::WorkedOut,
        );
        let mut stands = Vec::new();
        if self.basis != Basis::Cable {
            let extra = typed_extra(self.evaluation).filter(|_| self.sweep.way == Way::V480);
            let own = self.piece.outfit.cost.total() - extra.unwrap_or(Money(0.0));
            sheet.put(beyond(name), Name::BeyondLead(self.sweep.way), money(own), Origin::WorkedOut);
            stands.extend(formula!["+", beyond(name)]);
            if let Some(extra) = extra {
                put_extra(extra, sheet);
                stands.extend(formula!["+", EXTRA]);
            }
            if self.sweep.labor.0 != 0.0 {
                sheet.put(LABOR, Name::LaborPerLength, per_length_price(self.sweep.labor), Origin::Book);
            }
        }
        let lasts = self.basis == Basis::Lifetime && self.piece.run.yearly.is_some();
        if lasts {
            put_worth(&self.evaluation.inputs, sheet)?;
            sheet.cite(&["nist-hb-135"]);
        }
        let ends = [self.piece.from, self.piece.to];
        let mut found = Vec::new();
        for (end, depth) in ends.into_iter().enumerate() {
            let lead = depth + self.surface();
            sheet.step(LEADS[end], formula![DEPTHS[end], "+", SURFACE], length(lead));
            let mut sum = [formula![price(name), "·", LEADS[end]], stands.clone()].concat();
            if self.basis != Basis::Cable && self.sweep.labor.0 != 0.0 {
                sum.extend(formula!["+", LABOR, "·", LEADS[end]]);
            }
            if let (true, Some(year)) = (lasts, self.piece.run.yearly) {
                let year = Money(year.at(in_meters(lead)));
                sheet.put(YEARLY[end], Name::YearlyCostAt(self.sweep.way), money(year), Origin::WorkedOut);
                sum.extend(formula!["+", YEARLY[end], "·", WORTH]);
            }
            let whole = self.sweep.cost_on(self.piece, depth, self.basis);
            found.push(sheet.step(COSTS[end], sum, money(whole)));
        }
        Some(found)
    }
}
