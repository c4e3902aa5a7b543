//! What is told of both ways at the depth of the job, by what each of them costs there.

use super::jobs::plain;
use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::conductor::{STRAND_LAY, metal_mass};
use wellwright_core::cable::drop::Load;
use wellwright_core::cable::flat::flat_drop;
use wellwright_core::cable::reactance::Build;
use wellwright_core::evaluate::{Basis, Beyond, BreakEven, Evaluation, Here, WayHere, WaySweep, evaluate};
use wellwright_core::job::{Field, Job, Origin, Sets, Way, wire};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{
    Entry, Length, Money, Unit, UnitSystem, VolumeRate, circular_mils, gpm, in_feet, in_gpm,
};

fn house() -> Job {
    wire::read_text(include_str!("../golden/v1/house_and_stock_well_in_whole.job.json")).unwrap()
}

fn cost(lead: &WayHere, basis: Basis) -> Option<f64> {
    let cost = match basis {
        Basis::Cable => Some(lead.cable),
        Basis::Installed => Some(lead.installed),
        Basis::Lifetime => lead.lifetime,
    };
    cost.map(|cost| cost.0)
}

/// The cheaper way, and what it leaves of the dearer one's cost, taken from the whole.
fn share(here: &Here, basis: Basis) -> Option<(Way, f64)> {
    let [low, high] = Way::ALL.map(|way| here.way(way).and_then(|lead| cost(lead, basis)));
    let (low, high) = (low?, high?);
    if high == low {
        return None;
    }
    Some(if high < low { (Way::V480, 1.0 - high / low) } else { (Way::V240, 1.0 - low / high) })
}

fn is_told(answer: &Evaluation) -> Result<usize, TestCaseError> {
    let Some(here) = &answer.here else { return Ok(0) };
    let mut told = 0;
    for basis in Basis::ALL {
        for lead in Way::ALL.into_iter().filter_map(|way| here.way(way)) {
            prop_assert_eq!(lead.cost(basis).map(|cost| cost.0), cost(lead, basis));
        }
        match (here.share_saved(basis), share(here, basis)) {
            (None, None) => {}
            (Some((way, found)), Some((cheap, expected))) => {
                prop_assert!(way == cheap && (found - expected).abs() < 1e-9, "{basis:?}: {way:?} {found}, {expected}");
                told += 1;
            }
            other => prop_assert!(false, "{basis:?}: {other:?}"),
        }
    }
    Ok(told)
}

proptest! {
    #![proptest_config(tried(64))]

    #[test]
    fn the_share_saved_is_of_the_dearer_way(job in plain()) {
        is_told(&evaluate(&job.job(UnitSystem::Us)))?;
    }
}

#[test]
fn the_share_saved_of_a_whole_job_is_told_on_every_basis() {
    let answer = evaluate(&house());
    assert_eq!(is_told(&answer).unwrap(), 3);
    // Where the ways cost the same there is no cheaper one, and no share of nothing.
    let mut here = answer.here.unwrap();
    let [Some(low), Some(high)] = &mut here.ways else { panic!("a way has no lead") };
    high.installed = low.installed;
    assert_eq!(here.share_saved(Basis::Installed), None);
}

/// What may be entered as more that 480 V needs is what its equipment costs more.
#[test]
fn more_equipment_is_what_the_equipment_costs_more() {
    let mut job = house();
    job.set(Field::ExtraEquipment, None);
    let answer = evaluate(&job);
    let here = answer.here.as_ref().unwrap();
    let [low, high] = Way::ALL.map(|way| here.way(way).unwrap().outfit.cost.total().0);
    assert!(low > 0.0 && low != high);
    assert_eq!(answer.inputs.stand_in(Field::ExtraEquipment), Some(Entry::new(high - low, Unit::Dollar)));
}

/// A year is that of the table of duty where there is one: without the water that it needs there is none.
#[test]
fn a_table_of_duty_without_its_water_is_no_year_at_the_rating() {
    let mut job = Job::default();
    for (field, value, unit) in [
        (Field::MotorPower, 7.5, Unit::Horsepower),
        (Field::PumpSetting, 620.0, Unit::Foot),
        (Field::EnergyPrice, 0.12, Unit::DollarPerKilowattHour),
    ] {
        job.set(field, Some(Entry::new(value, unit)));
    }
    let has_years = |job: &Job| evaluate(job).sweep.unwrap().has_lifetime();
    assert!(has_years(&job));
    job.duty = "25 100".into();
    assert!(!has_years(&job));
}

/// Flat cables in parallel share the current: each has the drop that its share makes in it.
#[test]
fn flat_cables_in_parallel_share_the_current() {
    let mut job = Job::default();
    for (field, value, unit) in [
        (Field::MotorPower, 200.0, Unit::Horsepower),
        (Field::PumpSetting, 400.0, Unit::Foot),
        (Field::AllowedDrop, 5.0, Unit::Percent),
    ] {
        job.set(field, Some(Entry::new(value, unit)));
    }
    job.choices.build = Some(Build::FlatJacketed);
    job.choices.most_sets = Sets::new(4);
    let answer = evaluate(&job);
    let here = answer.here.as_ref().unwrap();
    let run = here.way(Way::V240).unwrap().run.run.conductor;
    assert!(run.sets > 1, "{run:?}");
    let service = answer.service[0].as_ref().unwrap();
    let sweep = answer.sweep.as_ref().unwrap().way(Way::V240);
    let share = Load { current: service.current / f64::from(run.sets), ..sweep.demands.load };
    let alone = flat_drop(share, run.size, service.warm.at_75, service.length, service.frequency).unwrap();
    assert!(alone.is_some() && service.flat == alone, "{:?}, {alone:?}", service.flat);
}

/// What stands in the fields of the equipment is what its way has.
#[test]
fn the_fields_of_the_equipment_follow_its_way() {
    let mut job = wire::read_text(include_str!("../golden/v1/house_and_stock_well_on_its_supply.job.json")).unwrap();
    for field in [Field::MarkedShortCircuit, Field::TransformerRating, Field::DeviceAmps, Field::MotorPeakLimit] {
        job.set(field, None);
    }
    let stands = |job: &Job, field| evaluate(job).inputs.stand_in(field).map(|entry| (entry.value, entry.unit));
    let answer = evaluate(&job);
    let way = answer.ways.picked().unwrap();
    let (pole, draw) = (way.pole.unwrap(), way.draw.unwrap());
    let near = |field, expected: f64, unit| {
        let (value, of) = stands(&job, field).unwrap();
        assert!(of == unit && (value - expected).abs() < 1e-9 * expected, "{field:?}: {value} {of:?}");
    };
    near(Field::MarkedShortCircuit, pole.marked.value / 1000.0, Unit::Kiloampere);
    near(Field::TransformerRating, pole.transformer.rating.value / 1000.0, Unit::KilovoltAmpere);
    near(Field::DeviceAmps, draw.device.value, Unit::Ampere);
    // 1,000 V of a general-purpose motor; 3.1 times 460 V of an inverter-duty one (NEMA MG 1, parts 30 and 31).
    near(Field::MotorPeakLimit, 1000.0, Unit::Volt);
    job.choices.inverter_duty = Some(true);
    assert_eq!(stands(&job, Field::MotorPeakLimit).map(|(volts, _)| volts.round()), Some(1426.0));
    // A figure that can't be used stays told beside it.
    let mut wrong = job.clone();
    wrong.set(Field::Years, Some(Entry::new(1e6, Unit::Year)));
    let errors: Vec<Field> = evaluate(&wrong).errors.iter().map(|error| error.field()).collect();
    assert_eq!(errors, [Field::Years]);
    // What was entered is not taken over.
    job.set(Field::DeviceAmps, Some(Entry::new(draw.device.value + 10.0, Unit::Ampere)));
    let device = evaluate(&job).inputs.device.unwrap();
    assert!((device.value.value - draw.device.value - 10.0).abs() < 1e-9 && device.origin == Origin::Typed);
}

/// Without a year that can be told there is no lifetime, of no two ways.
#[test]
fn two_ways_without_a_lifetime_never_change_over_it() {
    let priced = evaluate(&house()).sweep.unwrap();
    assert!(priced.has_lifetime());
    let mut bare = house();
    bare.duty = "x".into();
    let bare = evaluate(&bare).sweep.unwrap();
    assert!(!bare.has_lifetime());
    let [low, high] = &priced.ways;
    let even = |one: &WaySweep, other: &WaySweep| one.even_with(other, Basis::Lifetime);
    assert_ne!(even(low, high), BreakEven::default());
    for (one, other) in [(low, &bare.ways[1]), (&bare.ways[0], high), (&bare.ways[0], &bare.ways[1])] {
        assert_eq!(even(one, other), BreakEven::default());
    }
    assert_eq!(bare.break_even(Basis::Lifetime), &BreakEven::default());
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

#[test]
fn what_a_way_needs_beyond_its_lead_is_the_sum_of_its_parts() {
    let beyond = Beyond {
        equipment: Money(1.0),
        remedy: Money(2.0),
        supply: Money(4.0),
        transformer: Money(8.0),
        line: Money(16.0),
        labor: Money(32.0),
        extra: Money(64.0),
    };
    assert_eq!(beyond.total(), Money(127.0));
}

/// A single-phase motor beyond 1.5 hp has a start winding with a wire of its own (common practice): beside a ground of
/// their size four wires then, three before.
#[test]
fn a_single_phase_motor_has_two_wires_or_three() {
    let lead = |power: f64| {
        let mut job = house();
        for (field, value, unit) in [
            (Field::MotorPower, power, Unit::Horsepower),
            (Field::PumpSetting, 150.0, Unit::Foot),
            (Field::StaticLevel, 50.0, Unit::Foot),
            (Field::SpecificCapacity, 10.0, Unit::GallonPerMinutePerFoot),
        ] {
            job.set(field, Some(Entry::new(value, unit)));
        }
        let ways = evaluate(&job).ways.all;
        let lead = ways.iter().find(|way| way.family.kind == Kind::SinglePhaseMotor).unwrap().lead.unwrap();
        assert_eq!(lead.run.ground, lead.run.conductor.size, "{power} hp");
        let area = circular_mils(lead.run.conductor.size.row().cmil);
        let each = metal_mass(lead.demands.setting.metal, area, STRAND_LAY);
        (lead.metal / (each * lead.length)).value
    };
    assert!((lead(1.5) - 3.0).abs() < 1e-9 && (lead(2.0) - 4.0).abs() < 1e-9, "{}, {}", lead(1.5), lead(2.0));
}
