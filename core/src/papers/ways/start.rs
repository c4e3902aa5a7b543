//! The workings of a motor that is put on full volts at once, and of the generator set that a way takes.

use super::pole::{BOTH_R, BOTH_X, FEEDER_R, FEEDER_X, put_both, put_input};
use super::{Case, INPUT, SUPPLY, on_lines};
use crate::finding::Finding;
use crate::job::{Field, Origin};
use crate::papers::lead::NAMEPLATE;
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{Sheet, apparent, current, percent, plain};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::family::{Feed, Start};
use crate::power::generator::{START_DIP, TRANSIENT_REACTANCE, distortion_factor};
use crate::power::start::{LOCKED_ROTOR_POWER_FACTOR, locked_rotor_input};
use crate::quantity::{Unit, in_amperes, in_volts};

const MULTIPLE: Symbol = Symbol::of("k", "LR");
const LOCKED: Symbol = Symbol::of("I", "LR");
const STANDING: Symbol = Symbol::of("Z", "LR");
const STANDING_R: Symbol = Symbol::of("R", "LR");
const STANDING_X: Symbol = Symbol::of("X", "LR");
const STARTING: Symbol = Symbol::of("I", "st");
const DIP: Symbol = Symbol::of("d", "m");
const POLE_DIP: Symbol = Symbol::of("d", "p");
const APPARENT: Symbol = Symbol::of("S", "in");
const ROOM: Symbol = Symbol::of("F", "g");
const HOOKUP: Symbol = Symbol::of("k", "h");
const RUNNING: Symbol = Symbol::of("S", "r");
const START: Symbol = Symbol::of("S", "st");
const NEEDED: Symbol = Symbol::of("S", "g");
const SET: Symbol = Symbol::of("S", "n");
const SITE: Symbol = Symbol::of("k", "s");
const LEFT: Symbol = Symbol::of("S", "a");

/// Current of the standing motor, as the supply would give it at its full volts.
fn put_locked_rotor(case: &Case, sheet: &mut Sheet) -> Option<f64> {
    let Start::AcrossTheLine { multiple } = case.way.family.start else { return None };
    case.put_nameplate(sheet)?;
    sheet.put(MULTIPLE, Name::LockedRotor, plain(multiple), case.of_family());
    let mut formula = formula![NAMEPLATE, "·", MULTIPLE];
    if (case.feed(), case.way.family.motor) == (Feed::SinglePhase, Feed::ThreePhase) {
        formula.extend(formula!["·", Math::Root(formula![3.0])]);
    }
    let locked = locked_rotor_input(case.motor.nameplate, multiple, case.feed(), case.way.family.motor).ok()?;
    sheet.step(LOCKED, formula, current(locked));
    Some(in_amperes(locked))
}

pub(super) fn start(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let found = case.way.start?;
    let locked = put_locked_rotor(case, &mut sheet)?;
    put_both(case, &mut sheet)?;
    let size = in_volts(case.way.fed.1) / locked;
    let cos = LOCKED_ROTOR_POWER_FACTOR;
    sheet.step(STANDING, vec![Math::Fraction(formula![SUPPLY], formula![LOCKED])], (size, Unit::Ohm));
    sheet.step(STANDING_R, formula![cos, "·", STANDING], (cos * size, Unit::Ohm));
    let sine = Math::Root(formula![1.0, "−", Math::Power(formula![cos], 2.0)]);
    sheet.step(STANDING_X, formula![sine, "·", STANDING], ((1.0 - cos * cos).sqrt() * size, Unit::Ohm));
    let with_motor = |r: Symbol, x: Symbol| {
        let square = |one: Symbol, other: Symbol| Math::Power(formula!["(", one, "+", other, ")"], 2.0);
        Math::Root(formula![square(r, STANDING_R), "+", square(x, STANDING_X)])
    };
    let whole = vec![Math::Fraction(formula![SUPPLY], formula![with_motor(BOTH_R, BOTH_X)])];
    let drawn = sheet.step(STARTING, whole, current(found.dip.current));
    let dip = |ohms: Math| {
        let kept = Math::Fraction(formula![STARTING, "·", ohms], formula![SUPPLY]);
        formula![Math::Max(formula![1.0, "−", kept], formula![0.0]), "·", 100.0]
    };
    let result = sheet.step(DIP, dip(Math::from(STANDING)), percent(found.dip.at_motor));
    let pole = sheet.step(POLE_DIP, dip(with_motor(FEEDER_R, FEEDER_X)), percent(found.dip.at_pole));
    let high =
        |at: bool| case.found(|finding| matches!(finding, Finding::StartDipHigh { at_motor, .. } if *at_motor == at));
    // Where the motor bears it and the neighbors do not, it is theirs that is told.
    let limit = match (high(true), high(false)) {
        (None, Some(grave)) => {
            let most = sheet.shown(percent(case.site.dips.pole));
            Limit::unless(Some(grave), LimitKind::AtMost, pole, most)
        }
        (motor, _) => {
            let most = sheet.shown(percent(case.site.dips.motor));
            Limit::unless(motor, LimitKind::AtMost, result, most)
        }
    };
    Some(Working { more: vec![pole, drawn], limit: Some(limit), ..sheet.done(result, &["practice"]) })
}

pub(super) fn generator(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (need, draw) = (case.way.set?, case.draw()?);
    case.put_supply_volts(&mut sheet);
    put_input(case, &mut sheet)?;
    let amps = on_lines(case.feed(), formula![SUPPLY, "·", INPUT]);
    sheet.step(APPARENT, vec![Math::Fraction(amps, formula![1000.0])], apparent(draw.apparent));
    let room = distortion_factor(case.way.family.input.distortion).ok()?;
    sheet.put(ROOM, Name::DistortionRoom, plain(room), Origin::Assumed);
    let share = need.hookup.share();
    let shared = share != 1.0;
    if shared {
        sheet.put(HOOKUP, Name::HookupShare, plain(share), Origin::Definition);
    }
    let over = |over: Vec<Math>| if shared { vec![Math::Fraction(over, formula![HOOKUP])] } else { over };
    let mut result = sheet.step(RUNNING, over(formula![APPARENT, "·", ROOM]), apparent(need.running));
    if let Some(starting) = need.starting {
        put_locked_rotor(case, &mut sheet)?;
        let lines = on_lines(case.feed(), formula![SUPPLY, "·", LOCKED]);
        let dips = Math::Fraction(formula![1.0, "−", START_DIP], formula![START_DIP]);
        let standing = Math::Fraction(lines, formula![1000.0]);
        let product = formula![standing, "·", TRANSIENT_REACTANCE, "·", dips];
        sheet.step(START, over(product), apparent(starting));
        let larger = formula![Math::Max(formula![RUNNING], formula![START])];
        result = sheet.step(NEEDED, larger, apparent(need.needed()));
    }
    let limit = case.site.set.map(|set| {
        sheet.put(SET, Name::SetRating, apparent(set), case.inputs.origin(Field::GeneratorRating));
        sheet.put(SITE, Name::SetShare, plain(case.site.set_share), case.inputs.origin(Field::GeneratorSite));
        let most = sheet.step(LEFT, formula![SET, "·", SITE], apparent(set * case.site.set_share));
        let short = case.found(|finding| matches!(finding, Finding::GeneratorShort { .. }));
        Limit::unless(short, LimitKind::AtMost, result, most)
    });
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}
