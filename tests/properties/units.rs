//! The same job in US and in SI units is the same job.

use super::jobs::{Plain, TABLE_HP, supplied};
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::{Field, Job, Way, wire};
use wellwright_core::quantity::{Entry, Kind, Unit, UnitSystem, feet};
use wellwright_tests::difference;

fn evaluated(job: &Plain, system: UnitSystem) -> serde_json::Value {
    report("random", &evaluate(&job.job(system)))
}

proptest! {
    #![proptest_config(tried(300))]

    // The floor of one foot, volt, dollar keeps the difference of two near costs from counting as an error.
    #[test]
    fn si_units_evaluate_as_us_units(job in supplied()) {
        let (us, si) = (evaluated(&job, UnitSystem::Us), evaluated(&job, UnitSystem::Si));
        prop_assert_eq!(difference(&us, &si, 1e-9, 1.0), None);
    }

    #[test]
    fn a_unit_and_back_is_the_same_number(value in -1e9..1e9, us in any::<prop::sample::Index>()) {
        let fields = Field::ALL.map(Field::kind);
        let shown = [
            Kind::Voltage,
            Kind::ResistancePerLength,
            Kind::Mass,
            Kind::MassPerLength,
            Kind::Area,
            Kind::Density,
            Kind::Heat,
        ];
        let kinds = [&fields[..], &shown[..]].concat();
        let kind = kinds[us.index(kinds.len())];
        let (us, si) = (UnitSystem::Us.unit(kind), UnitSystem::Si.unit(kind));
        let there = Entry::new(value, us).to(si).unwrap();
        let back = Entry::new(there, si).to(us).unwrap();
        prop_assert!((back - value).abs() <= 1e-12 * value.abs().max(100.0), "{value} {us:?}: {back}");
        prop_assert_eq!(Entry::new(value, us).to(us).unwrap().to_bits(), value.to_bits());
    }

    // Every bit of a number survives the file.
    #[test]
    fn a_number_survives_the_file_bit_for_bit(value in prop::num::f64::NORMAL | prop::num::f64::ZERO) {
        let mut job = Job::default();
        job.set(Field::PumpSetting, Some(Entry::new(value, Unit::Meter)));
        let back = wire::read_text(&wire::write(&job).to_string()).unwrap();
        prop_assert_eq!(back.get(Field::PumpSetting).unwrap().value.to_bits(), value.to_bits());
    }
}

/// On the rows of the motor table a change of units changes nothing: not the current, not the size at any depth, not
/// what is assumed, not what is found.
#[test]
fn a_table_row_in_kilowatts_is_the_same_row() {
    for hp in TABLE_HP {
        let job = |entry: Entry| {
            let mut job = Job::default();
            job.set(Field::MotorPower, Some(entry));
            job.set(Field::PumpSetting, Some(Entry::new(620.0, Unit::Foot)));
            evaluate(&job)
        };
        let (us, si) = (job(Entry::new(hp, Unit::Horsepower)), job(Entry::new(hp * 0.7457, Unit::Kilowatt)));
        let (us_sweep, si_sweep) = (us.sweep.as_ref().unwrap(), si.sweep.as_ref().unwrap());
        for way in Way::ALL {
            let (a, b) = (us_sweep.way(way), si_sweep.way(way));
            assert_eq!(a.current, b.current, "{hp} hp");
            assert_eq!(a.demands, b.demands, "{hp} hp");
            for depth in (0..3000).step_by(25) {
                let size = |sweep: &wellwright_core::evaluate::WaySweep| {
                    sweep.run_at(feet(f64::from(depth))).map(|run| (run.run.conductor, run.run.ground))
                };
                assert_eq!(size(a), size(b), "{hp} hp at {depth} ft");
            }
        }
        assert_eq!(us.findings, si.findings, "{hp} hp");
    }
}

/// The ends of every field's range, entered in the other family of units, are inside it.
#[test]
fn the_ends_of_a_range_are_inside_it_in_every_unit() {
    for field in Field::ALL {
        let accepted = field.spec().accepted;
        for unit in [UnitSystem::Us.unit(field.kind()), UnitSystem::Si.unit(field.kind())] {
            for end in [accepted.min, accepted.max] {
                let entry = Entry::new(Entry::new(end, accepted.unit).to(unit).unwrap(), unit);
                let value = field.check(entry);
                assert!(
                    value.as_ref().is_ok_and(|value| (value - end).abs() <= 1e-9 * end.abs()),
                    "{field:?}: {value:?}"
                );
            }
            let beyond = Entry::new(accepted.max + 1e-6 * accepted.max.abs().max(1.0), accepted.unit);
            assert!(field.check(beyond).is_err(), "{field:?} takes {beyond:?}");
        }
    }
}
