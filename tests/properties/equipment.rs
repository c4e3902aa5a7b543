//! What a way brings along: its wires and parallel cables, what it needs beyond them, the fields that follow it, its years.

use super::jobs::{house, with};
use wellwright_core::cable::conductor::{STRAND_LAY, metal_mass};
use wellwright_core::cable::drop::Load;
use wellwright_core::cable::flat::flat_drop;
use wellwright_core::cable::reactance::Build;
use wellwright_core::evaluate::{Basis, Beyond, BreakEven, WaySweep, evaluate};
use wellwright_core::job::{Field, Job, Origin, Sets, Way, wire};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{Entry, Money, Unit, circular_mils};

/// A year is that of the table of duty where there is one: without the water that it needs there is none.
#[test]
fn a_table_of_duty_without_its_water_is_no_year_at_the_rating() {
    let figures = [(Field::MotorPower, 7.5), (Field::PumpSetting, 620.0), (Field::EnergyPrice, 0.12)];
    let mut job = with(Job::default(), &figures);
    let has_years = |job: &Job| evaluate(job).sweep.unwrap().has_lifetime();
    assert!(has_years(&job));
    job.duty = "25 100".into();
    assert!(!has_years(&job));
}

/// Flat cables in parallel share the current: each has the drop that its share makes in it.
#[test]
fn flat_cables_in_parallel_share_the_current() {
    let figures = [(Field::MotorPower, 200.0), (Field::PumpSetting, 400.0), (Field::AllowedDrop, 5.0)];
    let mut job = with(Job::default(), &figures);
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
        let shallow = [(Field::PumpSetting, 150.0), (Field::StaticLevel, 50.0), (Field::SpecificCapacity, 10.0)];
        let ways = evaluate(&with(with(house(), &shallow), &[(Field::MotorPower, power)])).ways.all;
        let lead = ways.iter().find(|way| way.family.kind == Kind::SinglePhaseMotor).unwrap().lead.unwrap();
        assert_eq!(lead.run.ground, lead.run.conductor.size, "{power} hp");
        let area = circular_mils(lead.run.conductor.size.row().cmil);
        let each = metal_mass(lead.demands.setting.metal, area, STRAND_LAY);
        (lead.metal / (each * lead.length)).value
    };
    assert!((lead(1.5) - 3.0).abs() < 1e-9 && (lead(2.0) - 4.0).abs() < 1e-9, "{}, {}", lead(1.5), lead(2.0));
}
