//! Jobs that together raise every finding of the ways to run the motor, each with what is told of it.

use super::told::Told;
use super::{by, field, house, with, without};
use wellwright_core::cable::filter::Remedy;
use wellwright_core::job::{Field, Grounding, Job, Place, WayKey};
use wellwright_core::power::family::Kind;
use wellwright_core::standards::enclosure::EnclosureType;

const PAIR: &[&str] = &["actual", "limit"];
const WITH_REMEDY: &[&str] = &["actual", "limit", "remedy"];

/// Every code of the ways.
pub const CODES: [&str; 28] = [
    "SUPPLY_NOT_TAKEN",
    "DRIVE_AMPS_SHORT",
    "DRIVE_SIZE_SHORT",
    "HEAT_OR_ALTITUDE",
    "ENCLOSURE_WRONG",
    "MOTOR_VOLTS_LOW",
    "NO_VOLTS_LEFT",
    "LEAD_NEEDS_FILTER",
    "LEAD_PEAK_HIGH",
    "PULSES_CAN_MEET",
    "COOLER_WATER_IDLE",
    "SUPPLY_NO_SIZE",
    "SUPPLY_DROP_HIGH",
    "TRANSFORMER_OR_UTILITY",
    "START_DIP_HIGH",
    "HARMONICS_OVER",
    "FAULT_OVER_SCCR",
    "DEVICE_PROVISIONAL",
    "DEVICE_OVER",
    "FAULT_ASSUMED",
    "MOTOR_LIGHT",
    "GENERATOR_SHORT",
    "SUPPLY_GROUNDING",
    "FULL_SPEED_ONLY",
    "UNBALANCE_DERATES",
    "NO_WAY_SERVES",
    "WAY_GONE",
    "EQUIPMENT_UNREADABLE",
];

fn at_the_pole() -> Vec<(Job, &'static [Told])> {
    let low = |figures: &[(Field, f64)]| by(with(field(), figures), Kind::LargeLowHarmonic);
    let converter = by(field(), Kind::SolidStateConverter);
    let mut corner = low(&[(Field::UtilityLimit, 50.0), (Field::GeneratorRating, 20.0), (Field::DeviceAmps, 100.0)]);
    corner.choices.grounding = Some(Grounding::OneLine);
    vec![
        (
            low(&[(Field::TransformerRating, 40.0), (Field::TransformerImpedance, 8.0), (Field::UtilityLimit, 500.0)]),
            &[("TRANSFORMER_OR_UTILITY", &["actual"]), ("HARMONICS_OVER", PAIR), ("DEVICE_PROVISIONAL", &["actual"])],
        ),
        (field(), &[("TRANSFORMER_OR_UTILITY", &[]), ("SUPPLY_GROUNDING", &[])]),
        (corner, &[("TRANSFORMER_OR_UTILITY", PAIR), ("GENERATOR_SHORT", PAIR), ("DEVICE_PROVISIONAL", PAIR)]),
        (converter, &[("START_DIP_HIGH", &["actual", "limit", "at"]), ("FULL_SPEED_ONLY", &[])]),
        (low(&[(Field::MarkedShortCircuit, 1.0)]), &[("FAULT_OVER_SCCR", PAIR)]),
        (low(&[(Field::PoleDistance, 10_000.0)]), &[("SUPPLY_NO_SIZE", &[])]),
        (low(&[(Field::DeviceAmps, 2000.0)]), &[("DEVICE_OVER", PAIR)]),
        (without(low(&[]), &[Field::TransformerImpedance]), &[("FAULT_ASSUMED", &["actual"])]),
        (with(field(), &[(Field::MotorPower, 200.0)]), &[("MOTOR_LIGHT", &["actual"])]),
        (low(&[(Field::AllowedWholeDrop, 1.0)]), &[("SUPPLY_DROP_HIGH", &["actual", "limit", "whole"])]),
    ]
}

fn at_the_motor() -> Vec<(Job, &'static [Told])> {
    let weak = [(Field::TransformerRating, 5.0), (Field::TransformerImpedance, 8.0)];
    let mut bare = by(field(), Kind::LargeLowHarmonic);
    bare.choices.remedy = Some(Remedy::NoneNeeded);
    let small = [(Field::MotorPower, 6.0)];
    vec![
        (
            by(house(), Kind::ConvertingActive),
            &[
                ("MOTOR_VOLTS_LOW", &["actual", "needed", "runs_out"]),
                ("PULSES_CAN_MEET", &["actual"]),
                ("HEAT_OR_ALTITUDE", &["actual", "altitude", "ambient"]),
            ],
        ),
        (by(with(field(), &weak), Kind::LargeEconomy), &[("NO_VOLTS_LEFT", &[])]),
        (by(field(), Kind::LargeLowHarmonic), &[("LEAD_NEEDS_FILTER", WITH_REMEDY)]),
        (bare, &[("LEAD_PEAK_HIGH", WITH_REMEDY)]),
        (by(with(house(), &small), Kind::RotaryConverter), &[("UNBALANCE_DERATES", PAIR)]),
    ]
}

pub fn jobs() -> Vec<(Job, &'static [Told])> {
    let mut outdoors = by(field(), Kind::LargeLowHarmonic);
    (outdoors.choices.place, outdoors.choices.enclosure) = (Some(Place::Outdoors), Some(EnclosureType::T1));
    let mut gone = field();
    (gone.way, gone.families) = (Some(WayKey::Own("Mine".into())), "x".into());
    let mut frost = with(house(), &[(Field::TransducerSpan, 65.0)]);
    frost.choices.freezing = Some(true);
    let mut cooler = house();
    cooler.choices.cooler_water = Some(true);
    let mut all = vec![
        (cooler, &[("COOLER_WATER_IDLE", PAIR)] as &[Told]),
        (frost, &[("SENSOR_RANGE", PAIR), ("SENSOR_FREEZES", &[])]),
        (by(field(), Kind::Doubling), &[("SUPPLY_NOT_TAKEN", &["actual"])]),
        (by(field(), Kind::ConvertingActive), &[("DRIVE_AMPS_SHORT", PAIR)]),
        (by(with(field(), &[(Field::MotorPower, 160.0)]), Kind::LargeLowHarmonic), &[("DRIVE_SIZE_SHORT", PAIR)]),
        (outdoors, &[("ENCLOSURE_WRONG", &["enclosure", "lacks", "plainest"]), ("NO_WAY_SERVES", &[])]),
        (gone, &[("WAY_GONE", &[]), ("EQUIPMENT_UNREADABLE", &[])]),
    ];
    all.extend(at_the_pole());
    all.extend(at_the_motor());
    all
}
