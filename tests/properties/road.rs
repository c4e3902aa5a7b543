//! Laws of the road from the water to the shaft, through the whole evaluation of random jobs.

use super::jobs::house;
use super::pump::{Made, pump};
use super::tried;
use super::waters::{Rows, entry};
use proptest::prelude::*;
use wellwright_core::evaluate::{Evaluation, Water, evaluate};
use wellwright_core::job::{Control, DrawdownBy, Field, Job};
use wellwright_core::pump::affinity::head_of;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Length, UnitSystem, VolumeRate, feet, gpm, in_feet, in_gpm, in_hertz, in_horsepower};
use wellwright_core::water::line::FrictionMethod;

/// A job with all that the head needs. Every pipe has its bore entered, so that none follows from the flow.
#[derive(Debug, Clone)]
pub struct Road {
    pub figures: Vec<(Field, f64)>,
    pub drawdown: DrawdownBy,
    pub friction: FrictionMethod,
    pub kind: MotorKind,
}

impl Road {
    pub fn job(&self) -> Job {
        let mut job = Job::default();
        let choices = &mut job.choices;
        (choices.drawdown, choices.friction) = (Some(self.drawdown), Some(self.friction));
        choices.motor_kind = Some(self.kind);
        for (field, value) in &self.figures {
            job.set(*field, Some(entry(*field, *value, UnitSystem::Us)));
        }
        job
    }

    pub fn value(&self, field: Field) -> f64 {
        self.figures.iter().find(|(other, _)| *other == field).unwrap().1
    }

    pub fn with(&self, changes: &[(Field, f64)]) -> Self {
        let mut changed = self.clone();
        for (field, value) in changes {
            let figure = changed.figures.iter_mut().find(|(other, _)| other == field);
            figure.unwrap_or_else(|| panic!("{field:?} is not entered")).1 = *value;
        }
        changed
    }

    /// With one figure larger by this.
    fn more(&self, fields: &[Field], more: f64) -> Self {
        let changes: Vec<_> = fields.iter().map(|field| (*field, self.value(*field) + more)).collect();
        self.with(&changes)
    }
}

/// Total head in feet.
fn total(answer: &Evaluation) -> f64 {
    in_feet(answer.water.head.as_ref().unwrap().total())
}

pub fn road() -> impl Strategy<Value = Road> {
    let kinds = prop_oneof![3 => Just(MotorKind::Submersible), 1 => Just(MotorKind::Surface)];
    let drawdown = [DrawdownBy::Measured, DrawdownBy::SpecificCapacity, DrawdownBy::Aquifer];
    let methods = [FrictionMethod::DarcyWeisbach, FrictionMethod::HazenWilliams];
    let well = (20.0..1200.0f64, 30.0..300.0f64, 1.0..60.0f64, 0.3..40.0f64, 2000.0..60_000.0f64);
    let line = (1.5..6.0f64, 1.5..6.0f64, 0.0..0.005f64, 0.0..20.0f64, 1.0..2000.0f64, -10.0..100.0f64);
    let other = (5.0..200.0f64, 5.0..80.0f64, 35.0..120.0f64, -5.0..15.0f64);
    let picked = (kinds, prop::sample::select(drawdown.to_vec()), prop::sample::select(methods.to_vec()));
    (well, line, other, picked).prop_map(|(well, line, other, (kind, drawdown, friction))| {
        let ((level, below, fall, capacity, through), (drop, surface, rough, fittings, length, rise)) = (well, line);
        let (flow, pressure, degrees, lift) = other;
        let figures = vec![
            (Field::Flow, flow),
            (Field::StaticLevel, level),
            (Field::PumpSetting, level + below),
            (Field::Drawdown, fall),
            (Field::SpecificCapacity, capacity),
            (Field::Transmissivity, through),
            (Field::Storage, 1e-3),
            (Field::WellLoss, 1e-4),
            (Field::WaterTemperature, degrees),
            (Field::SuctionLift, lift),
            (Field::SuctionLength, 30.0),
            (Field::DropInside, drop),
            (Field::SuctionInside, drop),
            (Field::SurfaceInside, surface),
            (Field::DropRoughness, rough),
            (Field::SuctionRoughness, rough),
            (Field::SurfaceRoughness, rough),
            (Field::DropHazenWilliams, 130.0),
            (Field::SuctionHazenWilliams, 130.0),
            (Field::SurfaceHazenWilliams, 130.0),
            (Field::DropFittings, fittings),
            (Field::SuctionFittings, fittings),
            (Field::SurfaceFittings, fittings),
            (Field::SurfaceLength, length),
            (Field::Rise, rise),
            (Field::Pressure, pressure),
        ];
        Road { figures, drawdown, friction, kind }
    })
}

/// A pump for a road: one that gives the flow at a speed, at a share of its largest flow.
fn pump_for(made: &Made, road: &Road, share: f64, ratio: f64) -> Rows {
    let (flow, head) = (road.value(Field::Flow), total(&evaluate(&road.job())));
    let mut scaled = made.clone();
    let wide = flow / ratio / (share * made.run_out());
    scaled.flows.iter_mut().for_each(|flow| *flow *= wide);
    let at = in_feet(head_of(&scaled.curve(), gpm(flow), ratio).unwrap());
    scaled.heads.iter_mut().for_each(|rated| *rated *= head / at);
    Rows::from(&scaled)
}

fn near(a: f64, b: f64, share: f64) -> bool {
    (a - b).abs() <= share * a.abs().max(b.abs())
}

fn with_curve(mut job: Job, rows: &Rows, control: Control) -> Job {
    job.curve = rows.text(UnitSystem::Us);
    job.choices.control = Some(control);
    job
}

fn water(job: &Job) -> Water {
    evaluate(job).water
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn the_head_rises_with_all_that_stands_in_the_way(road in road(), more in 0.01..1.0f64) {
        let base = total(&evaluate(&road.job()));
        let grown = |road: &Road| total(&evaluate(&road.job())) - base;
        let well = road.kind == MotorKind::Submersible;
        prop_assert!(grown(&road.with(&[(Field::Flow, road.value(Field::Flow) * (1.0 + more))])) > 0.0, "flow");
        let deeper = [Field::StaticLevel, Field::PumpSetting];
        let (deeper, lift) = (grown(&road.more(&deeper, 10.0 * more)), grown(&road.more(&[Field::SuctionLift], more)));
        if well {
            // The level itself, and the drop pipe that is longer by as much.
            prop_assert!(deeper > 10.0 * more && lift == 0.0, "depth: {deeper}");
            let setting = grown(&road.more(&[Field::PumpSetting], 10.0 * more));
            prop_assert!(setting > 0.0 && near(deeper - 10.0 * more, setting, 1e-6), "setting: {setting}");
        } else {
            prop_assert!(deeper == 0.0 && near(lift, more, 1e-9), "lift: {lift}");
        }
        // A pound on the square inch is the same head at every flow.
        let pressed = grown(&road.more(&[Field::Pressure], 10.0 * more));
        prop_assert!(pressed > 22.0 * more && pressed < 24.0 * more, "pressure: {pressed}");
        prop_assert!(near(grown(&road.more(&[Field::Rise], more)), more, 1e-6), "rise");
        let longer = grown(&road.more(&[Field::SurfaceLength], 100.0 * more));
        prop_assert!(longer > 0.0, "length: {longer}");
        let fitted = grown(&road.more(&[Field::SurfaceFittings], more));
        prop_assert!(fitted > 0.0, "fittings: {fitted}");
    }

    // Only the figure of the method in use counts; rough pipe takes more where the water flows in eddies.
    #[test]
    fn rough_pipe_takes_more(road in road(), more in 1e-4..5e-3f64, smoother in 1.0..20.0f64) {
        let base = water(&road.job()).head.unwrap();
        let rough = road.more(&[Field::DropRoughness, Field::SurfaceRoughness, Field::SuctionRoughness], more);
        let coefficients = [Field::DropHazenWilliams, Field::SurfaceHazenWilliams, Field::SuctionHazenWilliams];
        let smooth = road.more(&coefficients, smoother);
        let [rough, smooth] = [rough, smooth].map(|road| water(&road.job()).head.unwrap().total());
        let laminar = base.sections.iter().all(|loss| loss.darcy_weisbach.friction.is_none_or(|friction| friction.reynolds < 2000.0));
        match road.friction {
            FrictionMethod::DarcyWeisbach => {
                prop_assert_eq!(smooth, base.total());
                prop_assert!(laminar || rough > base.total(), "{:?} and {:?}", rough, base);
            }
            FrictionMethod::HazenWilliams => {
                prop_assert_eq!(rough, base.total());
                prop_assert!(smooth < base.total());
            }
        }
    }

    // Total head is the sum of what it is made of, told by hand from the levels and the pressure.
    #[test]
    fn the_parts_make_the_whole(road in road()) {
        let answer = evaluate(&road.job());
        let head = answer.water.head.as_ref().unwrap();
        let lift = match (road.kind, road.drawdown) {
            (MotorKind::Surface, _) => road.value(Field::SuctionLift),
            (_, DrawdownBy::Measured) => road.value(Field::StaticLevel) + road.value(Field::Drawdown),
            (_, DrawdownBy::SpecificCapacity) => {
                road.value(Field::StaticLevel) + road.value(Field::Flow) / road.value(Field::SpecificCapacity)
            }
            (_, DrawdownBy::Aquifer) => in_feet(answer.water.pumping_level.unwrap()),
        };
        prop_assert!((in_feet(head.lift) - lift).abs() < 1e-9 * 1500.0);
        let parts = head.lift + head.rise + head.pipe + head.fittings + head.pressure + head.velocity;
        prop_assert!(near(total(&answer), in_feet(parts), 1e-12));
        // Of the fittings and the velocity, K v²/2g with the speed of a bore in inches: 0.4085 · gpm/d² ft/s.
        let speed = |bore: Field| 231.0 / 60.0 / 12.0 * road.value(Field::Flow) / (std::f64::consts::PI / 4.0 * road.value(bore).powi(2));
        let first = if road.kind == MotorKind::Surface { Field::SuctionInside } else { Field::DropInside };
        let velocity = |bore: Field| speed(bore).powi(2) / (2.0 * 9.806_65 / 0.3048);
        let fittings = road.value(Field::DropFittings) * (velocity(first) + velocity(Field::SurfaceInside));
        prop_assert!((in_feet(head.fittings) - fittings).abs() < 1e-9 * fittings.max(1.0));
        prop_assert!(near(in_feet(head.velocity), velocity(Field::SurfaceInside), 1e-9));
        let duty = answer.water.pump.as_ref().unwrap().duty.unwrap();
        // ρ g Q H/η by hand, of the density that the pressure's head tells.
        let weight = 6_894.757_293_168_361 * road.value(Field::Pressure) / (in_feet(head.pressure) * 0.3048);
        let power = weight * road.value(Field::Flow) * 0.003_785_411_784 / 60.0 * total(&answer) * 0.3048;
        let efficiency = match road.value(Field::Flow) {
            flow if flow < 50.0 => 0.60,
            _ => 0.68,
        };
        prop_assert!(near(in_horsepower(duty.shaft), power / efficiency / 745.7, 1e-9));
    }

    #[test]
    fn a_switched_pump_runs_where_both_curves_meet(road in road(), made in pump(), share in 0.2..0.9f64, ratio in 0.8..1.1f64) {
        let rows = pump_for(&made, &road, share, ratio);
        let answer = evaluate(&with_curve(road.job(), &rows, Control::OnOff));
        // A pump for such heads may be beyond what curves hold.
        prop_assume!(answer.water.curve.as_ref().is_some_and(Result::is_ok));
        let pump = answer.water.pump.as_ref().unwrap();
        let Ok(duty) = pump.duty else { return Ok(()) };
        prop_assert_eq!((duty.ratio, pump.most.map(|most| most.map(|point| point.flow))), (Some(1.0), Some(Ok(duty.flow))));
        let of_pump = head_of(pump.curve.as_ref().unwrap(), duty.flow, 1.0).unwrap();
        prop_assert!(near(in_feet(of_pump), in_feet(duty.head), 1e-9));
        // The head of a job that asks for just that flow. A drawdown that was measured was so at the flow asked for.
        let mut there = road.with(&[(Field::Flow, in_gpm(duty.flow))]);
        if road.drawdown == DrawdownBy::Measured {
            let fall = road.value(Field::Drawdown) * in_gpm(duty.flow) / road.value(Field::Flow);
            prop_assume!(in_gpm(duty.flow) >= 0.5 && fall < 3000.0);
            there = there.with(&[(Field::Drawdown, fall)]);
        }
        prop_assume!(in_gpm(duty.flow) >= 0.5);
        let of_system = total(&evaluate(&there.job()));
        prop_assert!(near(of_system, in_feet(duty.head), 1e-9), "{of_system} and {:?}", duty.head);
    }

    #[test]
    fn the_speed_that_is_found_gives_what_is_asked(road in road(), made in pump(), share in 0.2..0.9f64, ratio in 0.6..1.0f64) {
        let rows = pump_for(&made, &road, share, ratio);
        let answer = evaluate(&with_curve(road.job(), &rows, Control::ConstantPressure));
        prop_assume!(answer.water.curve.as_ref().is_some_and(Result::is_ok));
        let pump = answer.water.pump.as_ref().unwrap();
        let duty = pump.duty.unwrap();
        let flow = road.value(Field::Flow);
        prop_assert!(near(duty.ratio.unwrap(), ratio, 1e-9), "{duty:?} for {ratio}");
        prop_assert!(near(in_gpm(duty.flow), flow, 1e-12) && near(in_feet(duty.head), total(&answer), 1e-12));
        prop_assert!(near(in_hertz(pump.frequency().unwrap()), 60.0 * ratio, 1e-9));
        // Held to that speed and switched, it meets the system at the flow that was asked for.
        let mut held = with_curve(road.job(), &rows, Control::OnOff);
        held.set(Field::MostFrequency, Some(entry(Field::MostFrequency, in_hertz(pump.frequency().unwrap()), UnitSystem::Us)));
        let back = water(&held).pump.unwrap().duty.unwrap();
        prop_assert!(near(in_gpm(back.flow), flow, 1e-9), "{} for {flow}", in_gpm(back.flow));
        prop_assert!(near(in_horsepower(back.shaft), in_horsepower(duty.shaft), 1e-8));
        // A hair slower and it gives less than is asked for: no duty, no power.
        held.choices.control = None;
        let slow = in_hertz(pump.frequency().unwrap()) * (1.0 - 1e-6);
        held.set(Field::MostFrequency, Some(entry(Field::MostFrequency, slow, UnitSystem::Us)));
        prop_assert!(water(&held).pump.unwrap().duty.is_err() && water(&held).shaft().is_none());
    }

    // A curve at the speed of another frequency is the same pump told otherwise.
    #[test]
    fn a_curve_of_another_frequency_is_the_same_pump(road in road(), made in pump(), share in 0.3..0.8f64, ratio in 0.6..0.95f64) {
        let rows = pump_for(&made, &road, share, ratio);
        let to = 50.0 / 60.0f64;
        let slower = Rows(rows.0.iter().map(|(flow, head, percent)| (flow * to, head * to * to, *percent)).collect());
        let [mut sixty, mut fifty] = [&rows, &slower].map(|rows| with_curve(road.job(), rows, Control::ConstantPressure));
        for (job, hertz) in [(&mut sixty, 60.0), (&mut fifty, 50.0)] {
            job.set(Field::CurveFrequency, Some(entry(Field::CurveFrequency, hertz, UnitSystem::Us)));
        }
        prop_assume!(water(&sixty).curve.is_some_and(|curve| curve.is_ok()));
        let [sixty, fifty] = [sixty, fifty].map(|job| water(&job).pump.unwrap());
        prop_assert!(near(in_hertz(sixty.frequency().unwrap()), in_hertz(fifty.frequency().unwrap()), 1e-9));
        let power = |pump: &wellwright_core::evaluate::Pumping| in_horsepower(pump.duty.unwrap().shaft);
        prop_assert!(near(power(&sixty), power(&fifty), 1e-9));
        let shut = |pump: &wellwright_core::evaluate::Pumping| in_feet(pump.shut_off.unwrap().value);
        prop_assert!(near(shut(&sixty), shut(&fifty), 1e-9));
    }
}

/// The traces that are drawn lie on the curves that are computed, from end to end.
#[test]
fn what_is_drawn_is_what_is_computed() {
    let text = "0,820,0\n10,797,38\n20,734,57\n25,676,60\n30,596,59\n40,362,44\n";
    let mut job =
        wellwright_core::job::wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json"))
            .unwrap();
    job.curve = text.into();
    let water = water(&job);
    let (pump, system) = (water.pump.unwrap(), water.system.unwrap());
    let trace = pump.trace(pump.band.1, 40);
    assert_eq!(trace.len(), 41);
    assert!(in_gpm(trace[0].0).abs() < 1e-12 && near(in_gpm(trace[40].0), 40.0, 1e-12));
    for (flow, head) in [(trace[0].0, 820.0), (trace[10].0, 797.0), (trace[25].0, 676.0), (trace[40].0, 362.0)] {
        let drawn = trace.iter().find(|(other, _)| *other == flow).unwrap().1;
        assert!(near(in_feet(drawn), head, 1e-9), "{drawn:?} at {flow:?}");
    }
    let line = system.trace(gpm(40.0), 8);
    assert_eq!(line.len(), 9);
    for (flow, head) in line {
        assert_eq!(head, system.head(flow).unwrap().total());
    }
    // With nothing drawn: the level at rest, the rise and the pressure.
    let rest = system.head(gpm(0.0)).unwrap().total();
    assert!((rest - feet(434.0) - water.head.unwrap().pressure).abs() < feet(1e-6));
}

/// A curve from 10 to 40 gpm in two steps at its own frequency and at half of it; a system from no flow on.
#[test]
fn curves_are_traced_in_even_steps() {
    let mut job = house();
    job.curve = "10,820,30\n25,676,60\n40,362,44".into();
    let answer = evaluate(&job);
    let (pump, system) = (answer.water.pump.as_ref().unwrap(), answer.water.system.as_ref().unwrap());
    let of = |trace: &[(VolumeRate, Length)]| -> Vec<(f64, f64)> {
        trace.iter().map(|(flow, head)| (in_gpm(*flow), in_feet(*head))).collect()
    };
    let near = |found: &[(f64, f64)], expected: &[(f64, f64)]| {
        let close = |(a, b): (&(f64, f64), &(f64, f64))| (a.0 - b.0).abs() < 1e-9 && (a.1 - b.1).abs() < 1e-6;
        assert!(found.len() == expected.len() && found.iter().zip(expected).all(close), "{found:?}");
    };
    let own = pump.curve_frequency;
    near(&of(&pump.trace(own, 2)), &[(10.0, 820.0), (25.0, 676.0), (40.0, 362.0)]);
    near(&of(&pump.trace(own * 0.5, 2)), &[(5.0, 205.0), (12.5, 169.0), (20.0, 90.5)]);
    let told = of(&system.trace(gpm(40.0), 2));
    let heads = [0.0, 20.0, 40.0].map(|flow| (flow, in_feet(system.head(gpm(flow)).unwrap().total())));
    near(&told, &heads);
    // The table stands at the frequency of the duty.
    assert_eq!(pump.points(), (pump.frequency().unwrap(), pump.trace(pump.frequency().unwrap(), 8)));
}
