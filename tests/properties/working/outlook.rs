//! The workings of the curve's pieces, of how sure the saving is, of a year, and of what is entered at the drive.

use super::{every_topic_holds, kind};
use std::collections::BTreeSet;
use wellwright_core::evaluate::range::saving_range;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate, payback};
use wellwright_core::job::{Control, Field, Job, Sets, Way, WayKey, wire};
use wellwright_core::papers::{OfYear, Topic, working};
use wellwright_core::power::family::{Kind, Start};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{
    Entry, Unit, UnitSystem, in_amperes, in_feet, in_gallons, in_pounds, in_psi, in_watts, psi,
};
use wellwright_core::startup::SettingCode;
use wellwright_core::startup::protection::{dry_run, high_pressure, overload};
use wellwright_core::startup::transducer::signal;

const DEMO: [&str; 3] = [
    include_str!("../../../app/src/demo/house_and_stock.json"),
    include_str!("../../../app/src/demo/stock_tank.json"),
    include_str!("../../../app/src/demo/north_pivot.json"),
];
/// Service factor of a submersible motor until it is entered.
const SUBMERSIBLE: f64 = 1.15;
/// Most pieces of a way, and rows of a year, that the jobs here have; one more is asked for, which is not there.
const PIECES: usize = 24;
const ROWS: usize = 25;
const OF_YEAR: [OfYear; 7] =
    [OfYear::Energy, OfYear::Bill, OfYear::Water, OfYear::Performance, OfYear::BySpeed, OfYear::OnOff, OfYear::Carbon];
const SETTINGS: [SettingCode; 5] = [
    SettingCode::CurrentLimit,
    SettingCode::Overload,
    SettingCode::SensorSignal,
    SettingCode::DryRun,
    SettingCode::HighPressure,
];

pub fn topics() -> Vec<Topic> {
    let mut all: Vec<Topic> = OF_YEAR.into_iter().map(Topic::Year).collect();
    all.extend((0..ROWS).map(|row| Topic::Year(OfYear::Row(row))));
    all.extend(Basis::ALL.map(Topic::SavingRange));
    all.extend([Topic::PaysBack, Topic::MoreHeat]);
    all.extend(SETTINGS.map(Topic::Setting));
    all.extend((0..10).map(Topic::CurvePoint));
    for basis in Basis::ALL {
        all.extend(Way::ALL.into_iter().flat_map(|way| (0..PIECES).map(move |place| Topic::Piece(way, place, basis))));
    }
    all
}

/// The figure that the evaluation itself holds for one of these.
pub fn own(answer: &Evaluation, topic: Topic) -> Option<Entry> {
    Some(match topic {
        Topic::Piece(way, place, _) => {
            let piece = answer.sweep.as_ref()?.way(way).pieces.get(place)?;
            Entry::new(in_feet(piece.to), Unit::Foot)
        }
        Topic::CurvePoint(place) => {
            let (_, points) = answer.water.pump.as_ref()?.points();
            Entry::new(in_feet(points.get(place)?.1), Unit::Foot)
        }
        Topic::SavingRange(basis) => Entry::new(saving_range(answer).ok()??.on(basis)?.median, Unit::Dollar),
        Topic::PaysBack => {
            let found = payback(answer)?;
            found.simple.map_or(Entry::new(found.yearly.0, Unit::Dollar), |years| Entry::new(years, Unit::Year))
        }
        Topic::MoreHeat => {
            let here = answer.here.as_ref()?;
            Entry::new(in_watts(here.way(Way::V480)?.loss - here.way(Way::V240)?.loss), Unit::Watt)
        }
        Topic::Year(of) => return of_year(answer, of),
        Topic::Setting(code) => return of_setting(answer, code),
        _ => return None,
    })
}

fn of_year(answer: &Evaluation, of: OfYear) -> Option<Entry> {
    let year = answer.year.as_ref()?;
    let plain = |value| Entry::new(value, Unit::One);
    Some(match of {
        OfYear::Row(place) => Entry::new(in_watts(year.rows.get(place)?.power.metered), Unit::Watt),
        OfYear::Energy => plain(year.energy),
        OfYear::Bill => Entry::new(year.bill.total.0, Unit::Dollar),
        OfYear::Water => Entry::new(in_gallons(year.volume?), Unit::Gallon),
        OfYear::Performance => plain(year.performance?.0),
        OfYear::BySpeed => plain(year.by_control.as_ref()?[0].energy),
        OfYear::OnOff => plain(year.by_control.as_ref()?[1].energy),
        OfYear::Carbon => Entry::new(in_pounds(year.carbon?), Unit::Pound),
    })
}

fn of_setting(answer: &Evaluation, code: SettingCode) -> Option<Entry> {
    let amps = |current| Entry::new(in_amperes(current), Unit::Ampere);
    let pressure = |field| {
        let typed = answer.inputs.entered.take(field, psi).ok()?.map(|known| known.value);
        typed.or_else(|| answer.inputs.stand_in(field)?.to(Unit::PoundPerSquareInch).map(psi))
    };
    let motor = || answer.ways.picked()?.motor;
    Some(match code {
        SettingCode::CurrentLimit => {
            let ramps = answer.ways.picked()?.family.start == Start::Ramp;
            amps(motor().filter(|_| ramps)?.required)
        }
        SettingCode::Overload => {
            let factor = match answer.kind {
                // A motor on the surface has none to spare on a drive.
                MotorKind::Surface => 1.0,
                MotorKind::Submersible => {
                    let entered = answer.inputs.entered.take(Field::ServiceFactor, |factor| factor).ok()?;
                    entered.map_or(SUBMERSIBLE, |known| known.value)
                }
            };
            amps(overload(motor()?.nameplate, factor).ok()?)
        }
        SettingCode::SensorSignal => {
            let found = signal(pressure(Field::Pressure)?, pressure(Field::TransducerSpan)?).ok()?;
            Entry::new(1000.0 * in_amperes(found), Unit::Milliampere)
        }
        SettingCode::DryRun => {
            let way = answer.ways.picked()?;
            motor()?;
            amps(dry_run(answer.motor.filter(|motor| !motor.light)?.running[way.way? as usize]?).ok()?)
        }
        SettingCode::HighPressure => {
            let trip = high_pressure(pressure(Field::Pressure)?, pressure(Field::PressureRating)?).ok()?;
            Entry::new(in_psi(trip), Unit::PoundPerSquareInch)
        }
        _ => return None,
    })
}

fn with(mut job: Job, figures: &[(Field, f64)]) -> Job {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
    job
}

/// Jobs that meet every answer.
fn jobs() -> Vec<Job> {
    let tariff = [
        (Field::DemandPrice, 12.0),
        (Field::StandingCharge, 30.0),
        (Field::SeasonMonths, 4.0),
        (Field::SeasonPrice, 0.25),
        (Field::Carbon, 0.9),
    ];
    let mut all: Vec<Job> = DEMO.into_iter().map(|text| wire::read_text(text).unwrap()).collect();
    for job in all.clone() {
        let mut table = with(job.clone(), &tariff);
        table.duty = "gpm, hours\n20, 1500\n12, 900\n6, 400\n".to_owned();
        all.push(table.clone());
        table.choices.control = Some(Control::OnOff);
        all.push(table);
        all.push(with(
            job.clone(),
            &[(Field::Discount, 0.0), (Field::YearlyHours, 4000.0), (Field::PoleDistance, 0.0)],
        ));
        all.push(with(job.clone(), &[(Field::ExtraEquipment, 1234.0), (Field::ServiceFactor, 1.15)]));
        let mut sets = with(job, &[(Field::MotorPower, 75.0), (Field::PumpSetting, 1400.0)]);
        sets.choices.most_sets = Sets::new(3);
        sets.way = Some(WayKey::Generic(Kind::LargeLowHarmonic));
        all.push(sets);
    }
    all
}

#[test]
fn every_one_leads_to_its_answer() {
    for (at, job) in jobs().into_iter().enumerate() {
        let answer = evaluate(&job);
        let trouble = every_topic_holds(&answer);
        trouble.unwrap_or_else(|trouble| panic!("{trouble:?} in job {at}, {:?}", answer.errors));
        let pieces = Way::ALL.map(|way| answer.sweep.as_ref().map_or(0, |sweep| sweep.way(way).pieces.len()));
        assert!(pieces.into_iter().all(|pieces| pieces < PIECES), "{pieces:?}");
    }
}

/// Steps and values that the jobs must meet: the laws hold idly where nothing comes up.
const MEETS: [&str; 22] = [
    "Piece L_max",
    "Piece R_1",
    "Piece Y_1",
    "Piece C_e",
    "SavingRange S_m,1",
    "SavingRange S_q,2",
    "SavingRange S_t,1",
    "SavingRange S_E,2",
    "PaysBack t",
    "PaysBack t_i",
    "MoreHeat ΔP",
    "Year P_u",
    "Year n_l",
    "Year C_E",
    "Year c_P",
    "Year V",
    "Year x_p",
    "Year m_CO₂",
    "Year t_3",
    "Setting I_ol",
    "Setting I_min",
    "Setting p_t",
];

#[test]
fn the_jobs_meet_every_one() {
    let mut met = BTreeSet::new();
    for answer in jobs().iter().map(evaluate) {
        for topic in topics() {
            let Some(found) = working(&answer, topic, UnitSystem::Us) else { continue };
            met.extend(found.steps.iter().map(|step| format!("{} {}", kind(topic), step.symbol.text())));
            met.extend(found.values.iter().map(|put| format!("{} {}", kind(topic), put.symbol.text())));
        }
    }
    let missing: Vec<_> = MEETS.into_iter().filter(|one| !met.contains(*one)).collect();
    assert!(missing.is_empty(), "{missing:?} are not among {met:?}");
}
