//! Cost against the depth of the water: at every depth what the same job costs whose water and pump are moved there, with
//! the motor left to follow.

use super::break_even::{changes_are_true, none_is_missed, reach};
use super::jobs::{Plain, TABLE_HP, plain};
use super::road::{Road, road};
use super::tried;
use super::waters::{Waters, entry};
use proptest::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation, Sense, Sweep, evaluate};
use wellwright_core::job::{Control, Field, Job, Way, wire};
use wellwright_core::pump::demo::HOUSE_WELL;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{UnitSystem, feet, in_feet, in_horsepower};
use wellwright_core::standards::conductor::Size;

/// A well whose motor is left to follow, with any lead.
#[derive(Debug, Clone)]
struct Well {
    plain: Plain,
    road: Road,
}

impl Well {
    fn job(&self) -> Job {
        let mut job = self.plain.job(UnitSystem::Us);
        job.set(Field::MotorPower, None);
        job
    }

    /// The same with water and pump moved so that the pump hangs at a depth.
    fn at(&self, depth: f64) -> Evaluation {
        evaluate(&moved(&self.job(), depth))
    }

    /// Power at the shaft over depth, hp: a straight line through two depths, each worked out whole.
    fn line(&self) -> impl Fn(f64) -> f64 + use<> {
        let shaft = |depth: f64| in_horsepower(self.at(depth).water.shaft().unwrap());
        let (from, to) = (self.plain.depth, self.plain.depth + 500.0);
        let (low, high) = (shaft(from), shaft(to));
        move |depth| low + (high - low) * (depth - from) / (to - from)
    }

    /// The motor and both leads at a depth by hand, or `None` where no motor or no lead serves.
    fn by_hand(&self, shaft: f64, depth: f64) -> Option<(f64, [Option<super::by_hand::Lead>; 2])> {
        let hp = TABLE_HP.into_iter().find(|hp| *hp >= shaft)?;
        let plain = Plain { hp, ..self.plain.clone() };
        Some((hp, [plain.lead(0, depth), plain.lead(1, depth)]))
    }
}

/// Water and pump moved down by as much, so that the pump hangs at a depth.
fn moved(job: &Job, depth: f64) -> Job {
    let feet = |field: Field| job.get(field).unwrap().to(wellwright_core::quantity::Unit::Foot).unwrap();
    let (setting, level) = (feet(Field::PumpSetting), feet(Field::StaticLevel));
    let mut moved = job.clone();
    for (field, value) in [(Field::PumpSetting, depth), (Field::StaticLevel, level + depth - setting)] {
        moved.set(field, Some(entry(field, value, UnitSystem::Us)));
    }
    moved
}

fn well() -> impl Strategy<Value = Well> {
    (plain(), road()).prop_map(|(plain, road)| {
        let road = Road { kind: MotorKind::Submersible, ..road };
        let of_plain = [Field::PumpSetting, Field::StaticLevel, Field::Drawdown];
        let figures = road.figures.iter().filter(|(field, _)| !of_plain.contains(field)).copied().collect();
        let water = Waters { figures, drawdown: road.drawdown, friction: road.friction, ..Waters::none() };
        let levels = [Some(road.value(Field::StaticLevel)), Some(road.value(Field::Drawdown)), None, None];
        let plain = Plain {
            depth: road.value(Field::PumpSetting),
            levels,
            water,
            kind: MotorKind::Submersible,
            nameplate: [None, None],
            power_factor: None,
            efficiency: None,
            device: None,
            ..plain
        };
        Well { plain, road }
    })
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// The sweep over deeper water, where the pump's power is known and some motor has it. Seen in that sense, the answer's
/// own sweep is that one, and nothing else moves.
fn swept(answer: &Evaluation) -> Option<&Sweep> {
    let seen = answer.in_sense(Sense::DeeperWater);
    assert_eq!(seen.sweep, answer.deeper.clone().or(answer.sweep.clone()));
    assert_eq!(Evaluation { sweep: answer.sweep.clone(), ..seen }, *answer);
    answer.deeper.as_ref()
}

proptest! {
    #![proptest_config(tried(120))]

    #[test]
    fn each_depth_costs_what_the_job_moved_there_costs(well in well(), shares in prop::collection::vec(0.0..1.0f64, 12)) {
        let answer = evaluate(&well.job());
        let Some(sweep) = swept(&answer) else {
            prop_assert!(answer.inputs.motor_power.is_err(), "{:?}", answer.errors);
            return Ok(());
        };
        let shallowest = well.road.value(Field::PumpSetting) - well.road.value(Field::StaticLevel);
        let shaft = well.line();
        for share in shares {
            let depth = shallowest + (3000.0 - shallowest) * share;
            let there = well.at(depth);
            let motor = there.inputs.motor_power.as_ref().ok().map(|power| in_horsepower(power.value));
            let hand = well.by_hand(shaft(depth), depth);
            for way in Way::ALL {
                let run = sweep.way(way).run_at(feet(depth));
                let moved = there.here.as_ref().and_then(|here| here.way(way));
                let lead = hand.and_then(|(_, leads)| leads[way as usize]);
                prop_assert_eq!(run.is_some(), moved.is_some(), "{:?} at {} ft: {:?}", way, depth, run);
                prop_assert_eq!(run.is_some(), lead.is_some(), "{:?} at {} ft by hand", way, depth);
                let (Some(run), Some(moved), Some(lead)) = (run, moved, lead) else { continue };
                prop_assert!(close(in_horsepower(run.motor), motor.unwrap()), "{:?} at {depth} ft", run.motor);
                prop_assert!(close(in_horsepower(run.motor), hand.unwrap().0));
                prop_assert_eq!((run.run.conductor, run.run.ground), (moved.run.run.conductor, moved.run.run.ground));
                prop_assert_eq!(run.run.ground, Size::ALL[lead.ground]);
                let cost = |basis| sweep.way(way).cost_at(feet(depth), basis).unwrap().0;
                let (cable, installed) = (cost(Basis::Cable), cost(Basis::Installed));
                prop_assert!(close(cable, moved.cable.0) && close(cable, lead.cable), "{cable} at {depth} ft");
                let beyond = sweep.way(way).piece_at(feet(depth)).unwrap().outfit.cost;
                prop_assert!(close(installed, lead.installed + beyond.total().0 - beyond.extra.0));
                // The equipment at another depth may be of another kind; where it is not, it costs the same.
                let place = there.sweep.as_ref().unwrap().way(Way::V240).place;
                if place == sweep.way(Way::V240).place && beyond.supply.0 == 0.0 {
                    prop_assert!(close(installed, moved.installed.0), "{installed} and {:?} at {depth} ft", moved.installed);
                }
            }
        }
        // Above that the water would stand above the ground.
        for way in Way::ALL {
            let above = feet(shallowest * 0.999 - 1e-3);
            prop_assert!(sweep.way(way).run_at(above).is_none() && sweep.way(way).cost_at(above, Basis::Cable).is_none());
        }
    }

    // Motors step at the depth where the power at the shaft is the smaller one's rating; there it still serves.
    #[test]
    fn motors_step_where_they_are_just_loaded(well in well()) {
        let answer = evaluate(&well.job());
        let Some(sweep) = swept(&answer) else { return Ok(()) };
        for way in Way::ALL {
            let runs = &sweep.way(way).runs;
            for (run, next) in runs.iter().zip(runs.iter().skip(1)) {
                prop_assert_eq!(run.to, next.from);
                prop_assert!(run.to > run.from, "{:?}", run);
                if run.motor == next.motor {
                    prop_assert!(next.run.conductor > run.run.conductor);
                    continue;
                }
                let at = TABLE_HP.iter().position(|hp| close(*hp, in_horsepower(run.motor))).unwrap();
                prop_assert!(close(TABLE_HP[at + 1], in_horsepower(next.motor)), "a motor is left out");
                let there = well.at(in_feet(run.to)).water.shaft().unwrap();
                prop_assert!(close(in_horsepower(there), in_horsepower(run.motor)), "{there:?} at the end of {run:?}");
                prop_assert_eq!(sweep.way(way).run_at(run.to), Some(run));
                prop_assert_eq!(sweep.way(way).run_at(run.to + feet(1e-6)), Some(next));
            }
            prop_assert!(sweep.way(way).reach() <= feet(3000.0 + 1e-9));
        }
    }
}

proptest! {
    #![proptest_config(tried(40))]

    #[test]
    fn the_cheaper_way_changes_where_a_scan_by_hand_finds_it(well in well(), surface in 0.0..300.0f64) {
        let well = Well { plain: Plain { surface, ..well.plain }, ..well };
        let answer = evaluate(&well.job());
        let Some(sweep) = swept(&answer) else { return Ok(()) };
        let shaft = well.line();
        let costs = |depth: f64| {
            let (_, [low, high]) = well.by_hand(shaft(depth), depth)?;
            let (low, high) = (low?, high?);
            let installed = [low.installed, high.installed];
            Some([[low.cable, high.cable], installed, installed])
        };
        for basis in [Basis::Cable, Basis::Installed] {
            changes_are_true(&costs, basis, sweep.break_even(basis))?;
            none_is_missed(&costs, basis, sweep.break_even(basis), reach(sweep))?;
        }
    }

    // The job's own motor keeps its nameplate wherever it is the one; the others come from the table.
    #[test]
    fn the_own_motor_keeps_its_nameplate(well in well(), factor in 0.9..1.3f64, power_factor in 0.75..0.9f64, device in 100.0..600.0f64) {
        let left = evaluate(&well.job());
        prop_assume!(left.inputs.motor_power.is_ok());
        let own = in_horsepower(left.inputs.motor_power.as_ref().unwrap().value);
        let plain = Plain {
            hp: own,
            nameplate: [Some((2.8 * factor * own).max(0.5)), None],
            power_factor: Some(power_factor),
            efficiency: Some(0.8),
            device: Some(device),
            ..well.plain.clone()
        };
        let typed = plain.job(UnitSystem::Us);
        let answer = evaluate(&typed);
        let Some(sweep) = swept(&answer) else { return Ok(()) };
        let mut met = 0;
        for way in Way::ALL {
            for run in &sweep.way(way).runs {
                let depth = in_feet(run.from + (run.to - run.from) * 0.5);
                let is_own = close(in_horsepower(run.motor), own);
                let there = if is_own { evaluate(&moved(&typed, depth)) } else { well.at(depth) };
                let moved = there.here.as_ref().and_then(|here| here.way(way)).unwrap();
                prop_assert_eq!(run.run.conductor, moved.run.run.conductor, "{:?}", run);
                let cable = sweep.way(way).cost_at(feet(depth), Basis::Cable).unwrap().0;
                prop_assert!(close(cable, moved.cable.0), "{cable} and {:?}", moved.cable);
                met += usize::from(is_own);
            }
        }
        prop_assert!(met > 0 || sweep.ways.iter().any(|way| way.reach() < feet(well.plain.depth)));
    }
}

fn house() -> Job {
    wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json")).unwrap()
}

/// The house's well, its motor and the device ahead of the drive left to follow.
fn left() -> Job {
    let mut job = house();
    // Without the way to the pole no way is picked, and the device follows from the motor alone, at every depth.
    let bare = [Field::DeviceAmps, Field::PoleDistance];
    let follows = |field: &Field| field.path().starts_with("motor.") || bare.contains(field);
    for field in Field::ALL.into_iter().filter(follows) {
        job.set(field, None);
    }
    job
}

/// The house's well with the curve of an invented pump: deeper water takes more stages of the same kind, at the same flow
/// and efficiency.
#[test]
fn a_pump_with_a_curve_goes_deeper_at_its_efficiency() {
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = left();
        (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(control));
        let answer = evaluate(&job);
        let duty = answer.water.pump.as_ref().unwrap().duty.unwrap();
        let sweep = swept(&answer).unwrap();
        // Without the curve, at the flow and efficiency that it has.
        let mut bare = job.clone();
        bare.curve = String::new();
        for (field, value) in [
            (Field::Flow, wellwright_core::quantity::in_gpm(duty.flow)),
            (Field::PumpEfficiency, duty.efficiency.value),
        ] {
            bare.set(field, Some(entry(field, value, UnitSystem::Us)));
        }
        let mut met = 0;
        for depth in [200.0, 400.0, 620.0, 800.0, 1000.0, 1500.0, 2000.0, 2900.0] {
            let there = evaluate(&moved(&bare, depth));
            for way in Way::ALL {
                let (run, moved) = (sweep.way(way).run_at(feet(depth)), there.here.as_ref().unwrap().way(way));
                assert_eq!(run.is_some(), moved.is_some(), "{control:?} {way:?} at {depth} ft");
                let (Some(run), Some(moved)) = (run, moved) else { continue };
                met += 1;
                let motor = there.inputs.motor_power.as_ref().unwrap().value;
                assert!(close(in_horsepower(run.motor), in_horsepower(motor)), "{control:?} at {depth} ft: {run:?}");
                let cable = sweep.way(way).cost_at(feet(depth), Basis::Cable).unwrap().0;
                assert!(close(cable, moved.cable.0), "{control:?} at {depth} ft");
            }
        }
        assert!(met >= 13, "{met} leads");
    }
}

/// Water that runs downhill by itself takes the smallest motor until its level is deep enough to be lifted.
#[test]
fn water_that_runs_by_itself_is_lifted_where_it_is_deep() {
    let mut job = left();
    for (field, value) in
        [(Field::Rise, -900.0), (Field::PumpSetting, 400.0), (Field::StaticLevel, 200.0), (Field::Pressure, 20.0)]
    {
        job.set(field, Some(entry(field, value, UnitSystem::Us)));
    }
    let answer = evaluate(&job);
    assert_eq!(in_horsepower(answer.water.shaft().unwrap()), 0.0);
    let sweep = swept(&answer).unwrap();
    let mut motors = std::collections::BTreeSet::new();
    for step in 0..60 {
        let depth = 205.0 + 45.0 * f64::from(step);
        let there = evaluate(&moved(&job, depth));
        let motor = in_horsepower(there.inputs.motor_power.as_ref().unwrap().value);
        let run = sweep.way(Way::V480).run_at(feet(depth)).unwrap();
        assert!(close(in_horsepower(run.motor), motor), "{depth} ft: {run:?}");
        let cable = sweep.way(Way::V480).cost_at(feet(depth), Basis::Cable).unwrap().0;
        assert!(close(cable, there.here.as_ref().unwrap().way(Way::V480).unwrap().cable.0), "{depth} ft");
        motors.insert(format!("{motor:.2}"));
    }
    assert!(motors.len() > 4 && motors.contains("0.50"), "{motors:?}");
}

#[test]
fn what_has_no_well_or_no_power_has_no_deeper_water() {
    let field = wire::read_text(include_str!("../../core/examples/jobs/field_surface_pump.json")).unwrap();
    assert!(evaluate(&field).deeper.is_none() && evaluate(&field).sweep.is_some());
    for spoiled in [Field::Flow, Field::StaticLevel, Field::SpecificCapacity] {
        let mut job = house();
        job.set(spoiled, None);
        assert!(evaluate(&job).deeper.is_none() && evaluate(&job).sweep.is_some(), "{spoiled:?}");
    }
    assert!(evaluate(&house()).deeper.is_some());
}

/// The laws above hold idly where no motor steps and no way changes; over random wells both must.
#[test]
fn the_random_wells_do_step_and_change() {
    use proptest::strategy::ValueTree as _;
    let (mut motors, mut changes, mut ends) = (0, 0, 0);
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    for _ in 0..120 {
        let well = well().new_tree(&mut runner).unwrap().current();
        let answer = evaluate(&well.job());
        let Some(sweep) = swept(&answer) else { continue };
        let runs = &sweep.ways[1].runs;
        motors += runs.windows(2).filter(|pair| pair[0].motor != pair[1].motor).count();
        changes += Basis::ALL.map(|basis| sweep.break_even(basis).crossings.len()).iter().sum::<usize>();
        ends += usize::from(sweep.ways[0].reach() < feet(2999.0));
    }
    assert!(motors > 100 && changes > 20 && ends > 20, "{motors} steps of motors, {changes} changes, {ends} ends");
}
