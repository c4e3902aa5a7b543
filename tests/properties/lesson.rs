//! The lesson: its law over any motor and lead, its figures those of the evaluation, its sums worked again, its questions.

use super::arithmetic::numbers;
use super::jobs::TABLE_HP;
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation, Here, evaluate};
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::papers::{
    Choice, Lesson, LessonStep, LessonSum, Measured, Offered, Topic, Working, example, lesson, question,
    with_numbers_of, working,
};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, in_amperes, in_circular_mils, in_feet, in_pounds, in_volts};
use wellwright_core::standards::conductor::Metal;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// A job that holds what the lesson asks for, in either family of units.
fn numbers_of(hp: f64, feet: f64, drop: f64, metal: Metal, us: bool) -> Job {
    let mut job = example();
    let (power, lead) = if us {
        (Entry::new(hp, Unit::Horsepower), Entry::new(feet, Unit::Foot))
    } else {
        (Entry::new(hp * 0.7457, Unit::Kilowatt), Entry::new(feet * 0.3048, Unit::Meter))
    };
    job.set(Field::MotorPower, Some(power));
    job.set(Field::PumpSetting, Some(lead));
    job.set(Field::AllowedDrop, Some(Entry::new(drop, Unit::Percent)));
    job.choices.metal = Some(metal);
    job
}

fn any_numbers() -> impl Strategy<Value = Job> {
    let hp = prop_oneof![prop::sample::select(TABLE_HP.to_vec()), 0.5..200.0];
    let metal = prop::sample::select(vec![Metal::Copper, Metal::Aluminum]);
    (hp, 5.0..2500.0, 0.5..10.0, metal, any::<bool>())
        .prop_map(|(hp, feet, drop, metal, us)| numbers_of(hp, feet, drop, metal, us))
}

fn every_sum() -> Vec<LessonSum> {
    let both = |sum: fn(Way) -> LessonSum| Way::ALL.map(sum);
    let of_ways =
        [LessonSum::Current, LessonSum::SameWire, LessonSum::Area, LessonSum::Least, LessonSum::Peak].map(both);
    let answers = LessonStep::ALL.into_iter().map(LessonSum::Answer);
    of_ways.into_iter().flatten().chain([LessonSum::Ratio, LessonSum::Metal]).chain(answers).collect()
}

/// What the lesson itself holds for a sum.
fn own(lesson: &Lesson, sum: LessonSum) -> Option<Entry> {
    let entry = |value, unit| Entry::new(value, unit);
    let [low, high] = lesson.ways;
    Some(match sum {
        LessonSum::Current(way) => entry(in_amperes(lesson.way(way).by_power), Unit::Ampere),
        LessonSum::SameWire(way) => entry(100.0 * lesson.way(way).lost_share, Unit::Percent),
        LessonSum::Area(way) => entry(in_circular_mils(lesson.way(way).area) / 1e3, Unit::Kcmil),
        LessonSum::Ratio => entry((high.area / low.area).value, Unit::One),
        LessonSum::Least(way) => entry(in_amperes(lesson.way(way).required), Unit::Ampere),
        LessonSum::Metal => entry(100.0 * in_pounds(high.here.metal) / in_pounds(low.here.metal), Unit::Percent),
        LessonSum::Peak(way) => entry(in_volts(lesson.way(way).pulses?.peak), Unit::Volt),
        LessonSum::Answer(LessonStep::Home) => return None,
        LessonSum::Answer(step) => return figure(&right(&question(lesson, step))),
    })
}

/// Each step of a working, from the numbers that it shows.
fn steps_hold(found: &Working) -> Result<(), TestCaseError> {
    prop_assert!(!found.steps.is_empty());
    for step in &found.steps {
        let from_numbers = numbers(&step.filled).map_err(TestCaseError::fail)?;
        let off = (from_numbers.value - step.result.value).abs();
        prop_assert!(close(from_numbers.value, step.result.value) || off <= from_numbers.off, "{step:?}");
    }
    Ok(())
}

fn right(choices: &[Choice]) -> Vec<Offered> {
    choices.iter().filter(|choice| choice.is_right()).map(|choice| choice.offered).collect()
}

fn figure(offered: &[Offered]) -> Option<Measured> {
    match offered {
        [Offered::Figure(entry)] => Some(*entry),
        _ => None,
    }
}

/// The right answers by their meaning: half, a quarter, twice, a ninth, what is left.
fn right_answers_hold(lesson: &Lesson) -> Result<(), TestCaseError> {
    let [low, high] = lesson.ways;
    let kcmil = in_circular_mils(low.area) / 1e3;
    let other = lesson.other;
    let wanted = [
        (LessonStep::Power, 2.0 * in_amperes(low.by_power)),
        (LessonStep::Amps, in_amperes(low.by_power) / 3.0),
        (LessonStep::Share, 100.0 * low.lost_share / 16.0),
        (LessonStep::Area, 2.0 * kcmil),
        (LessonStep::Quarter, kcmil / 9.0),
        (LessonStep::Heat, 2.0 * in_amperes(low.required)),
        (LessonStep::Pays, other.cables[0].0 - other.cables[1].0 - other.extra.0),
        (LessonStep::Home, 100.0 * in_pounds(high.here.metal) / in_pounds(low.here.metal)),
    ];
    for (step, value) in wanted {
        let found = figure(&right(&question(lesson, step))).map(|entry| entry.value);
        prop_assert!(
            found.is_some_and(|found| (found - value).abs() <= 1e-6 * value.abs().max(1.0)),
            "{step:?}: {found:?}"
        );
    }
    let size = other.conductor.size;
    prop_assert_eq!(right(&question(lesson, LessonStep::Sizes)), vec![Offered::Wire(size)]);
    prop_assert!(other.share <= lesson.allowed * (1.0 + 1e-9));
    if let Some(below) = other.below {
        prop_assert!(
            !(below.carries && below.share.is_some_and(|share| share <= lesson.allowed)),
            "{below:?} would serve"
        );
    }
    let peak = figure(&right(&question(lesson, LessonStep::Peak))).map(|entry| entry.value);
    prop_assert_eq!(peak, high.pulses.map(|pulses| 2.0 * in_volts(pulses.bus)));
    Ok(())
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn twice_the_volts_half_the_amps_a_quarter_of_the_share_and_of_the_area(job in any_numbers()) {
        let answer = evaluate(&job);
        let Some(found) = lesson(&answer) else {
            prop_assert!(answer.here.is_none_or(|here| here.saving.is_none()), "{:?}", answer.errors);
            return Ok(());
        };
        let [low, high] = found.ways;
        prop_assert!(close(in_amperes(high.by_power), in_amperes(low.by_power) / 2.0));
        prop_assert!(close(in_amperes(high.current), in_amperes(low.current) / 2.0));
        prop_assert!(close(in_volts(high.lost), in_volts(low.lost) / 2.0));
        prop_assert!(close(high.lost_share, low.lost_share / 4.0));
        prop_assert!(close(in_circular_mils(high.area), in_circular_mils(low.area) / 4.0));
    }

    #[test]
    fn the_figures_are_those_of_the_evaluation(job in any_numbers()) {
        let answer = evaluate(&job);
        let Some(found) = lesson(&answer) else { return Ok(()) };
        let (here, sweep) = (answer.here.as_ref().unwrap(), answer.sweep.as_ref().unwrap());
        prop_assert_eq!(found.lead, here.lead);
        prop_assert_eq!(Some(found.saving), here.saving);
        prop_assert!(close(found.saving.cable.0 - found.extra.0, found.saving.net.0) || found.saving.net.0.abs() < 1e-6);
        let lasting = sweep.break_even(Basis::Installed).lasting();
        prop_assert_eq!(found.even, lasting.map(|at| (at.depth + sweep.surface_run, at.below)));
        for way in Way::ALL {
            let one = found.way(way);
            prop_assert_eq!(Some(&one.here), here.way(way));
            // What is sold is never less than what the drop asks for, by the rounding of the table of wires.
            let sold = one.here.run.run.conductor.cmil();
            prop_assert!(sold >= 0.995 * in_circular_mils(one.area), "{sold} for {:?}", one.area);
            prop_assert!(one.here.run.run.conductor >= one.least && sweep.way(way).required == one.required);
            let powered = one.place.map(|place| &answer.ways.all[place]);
            prop_assert_eq!(one.pulses, powered.and_then(|powered| powered.bare));
            // Where pulses reach the motor, the page Power tells the same peak.
            if let Some(stress) = powered.and_then(|powered| powered.stress) {
                prop_assert_eq!(one.pulses, Some(stress));
                prop_assert!(!one.filtered);
            }
        }
    }

    #[test]
    fn the_sums_lead_to_the_figures(job in any_numbers()) {
        let answer = evaluate(&job);
        let found = lesson(&answer);
        for (sum, system) in every_sum().into_iter().flat_map(|sum| [(sum, UnitSystem::Us), (sum, UnitSystem::Si)]) {
            let worked = working(&answer, Topic::Lesson(sum), system);
            let own = found.as_ref().and_then(|found| own(found, sum));
            prop_assert_eq!(worked.is_some(), own.is_some(), "{:?}", sum);
            let (Some(worked), Some(own)) = (worked, own) else { continue };
            let own = own.shown_in(system);
            let reached = match worked.limit {
                // What carries the current is reached; what it must carry is told.
                Some(limit) if matches!(sum, LessonSum::Least(_)) => {
                    prop_assert!(limit.holds && limit.actual.value >= limit.limit.value);
                    limit.limit
                }
                _ => worked.result,
            };
            prop_assert!(reached.unit == own.unit && close(reached.value, own.value), "{reached:?} is not {own:?}: {sum:?}");
            steps_hold(&worked)?;
        }
    }

    #[test]
    fn one_answer_is_right_and_all_can_be_told_apart(job in any_numbers()) {
        let Some(found) = lesson(&evaluate(&job)) else { return Ok(()) };
        for step in LessonStep::ALL {
            let choices = question(&found, step);
            if choices.is_empty() {
                prop_assert!(step == LessonStep::Peak && found.way(Way::V480).pulses.is_none());
                continue;
            }
            prop_assert!((2..=4).contains(&choices.len()), "{step:?}: {choices:?}");
            prop_assert_eq!(right(&choices).len(), 1, "{:?}: {:?}", step, choices);
            let values: Vec<f64> = choices.iter().filter_map(|choice| figure(&[choice.offered])).map(|it| it.value).collect();
            for pair in values.windows(2) {
                prop_assert!(pair[1] - pair[0] > 0.03 * pair[1].abs().max(pair[0].abs()), "{step:?}: {values:?}");
            }
            let mut keys: Vec<u8> = choices.iter().map(|choice| choice.key).collect();
            keys.sort_unstable();
            keys.dedup();
            prop_assert_eq!(keys.len(), choices.len());
        }
        right_answers_hold(&found)?;
    }

    #[test]
    fn the_numbers_of_a_job_give_its_lead(job in any_numbers(), surface in 0.0..200.0, us in any::<bool>()) {
        let mut of = job;
        of.set(Field::SurfaceRun, Some(Entry::new(surface, Unit::Foot)));
        of.set(Field::StaticLevel, Some(Entry::new(40.0, Unit::Foot)));
        let answer = evaluate(&of);
        let system = if us { UnitSystem::Us } else { UnitSystem::Si };
        let Some(taken) = with_numbers_of(&of, &answer, system) else {
            prop_assert!(answer.here.is_none());
            return Ok(());
        };
        let again = evaluate(&taken);
        let (one, other) = (answer.here.unwrap(), again.here.unwrap());
        // To the millionth that a field keeps.
        prop_assert!((in_feet(one.lead) - in_feet(other.lead)).abs() < 1e-5);
        let drops = |here: &Here| here.ways.map(|way| way.map(|way| way.drop_share));
        for (one, other) in drops(&one).into_iter().zip(drops(&other)) {
            let step = one.zip(other).is_some_and(|(one, other)| (one / other - 1.0).abs() > 1e-5);
            prop_assert!(!step && one.is_some() == other.is_some(), "{one:?} and {other:?}");
        }
    }
}

/// A number is missing, wrong, or too long for any wire: no lesson, and no panic.
#[test]
fn without_a_number_there_is_no_lesson() {
    let without = |field: Field, entry: Option<Entry>| {
        let mut job = example();
        job.set(field, entry);
        evaluate(&job)
    };
    let far = without(Field::PumpSetting, Some(Entry::new(3000.0, Unit::Foot)));
    assert!(far.here.as_ref().is_some_and(|here| here.way(Way::V480).is_some()));
    let none: Vec<Evaluation> = vec![
        without(Field::MotorPower, None),
        without(Field::PumpSetting, None),
        without(Field::MotorPower, Some(Entry::new(f64::NAN, Unit::Horsepower))),
        without(Field::AllowedDrop, Some(Entry::new(99.0, Unit::Percent))),
        without(Field::PumpSetting, Some(Entry::new(-1.0, Unit::Foot))),
    ];
    assert!(none.iter().all(|answer| lesson(answer).is_none()));
    let stuck = evaluate(&numbers_of(200.0, 2500.0, 0.5, Metal::Aluminum, true));
    assert!(lesson(&stuck).is_none() && stuck.here.is_some(), "no listed wire serves");
}

/// The example has all ten questions, and pulses reach its motor on both ways.
#[test]
fn the_example_asks_ten_questions() {
    let found = lesson(&evaluate(&example())).unwrap();
    assert!(LessonStep::ALL.iter().all(|step| question(&found, *step).len() >= 3));
    assert!(found.ways.iter().all(|way| way.pulses.is_some()));
    assert!(
        found.way(Way::V480).filtered && !found.way(Way::V240).filtered,
        "the drive for 480 V has its filter built in"
    );
    assert!(found.even.is_some());
}
