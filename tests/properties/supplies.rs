//! Random figures of the supply, the place and the equipment: plain numbers, entered in either family of units.

use super::waters;
use proptest::prelude::*;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::{Choices, Field, Grounding, Job, Place, Sets, WayKey};
use wellwright_core::power::family::{Class, Kind as Equipment};
use wellwright_core::power::generator::Hookup;
use wellwright_core::quantity::{Entry, Kind, Unit, UnitSystem};
use wellwright_core::standards::conductor::Metal;
use wellwright_core::standards::enclosure::TABLE;

/// Figures and choices of the supply, the place and the equipment.
#[derive(Debug, Clone, Default)]
pub struct Supplies {
    /// In the US unit of each field, degrees in Celsius.
    pub figures: Vec<(Field, f64)>,
    pub choices: Choices,
    /// The user's own equipment, as text.
    pub families: String,
    pub way: Option<WayKey>,
}

/// Each field with the range that jobs are likely to have, and how often of ten it is entered.
const LIKELY: [(Field, f64, f64, u32); 49] = [
    (Field::SupplyVolts, 200.0, 600.0, 3),
    (Field::TransformerRating, 5.0, 500.0, 3),
    (Field::TransformerImpedance, 1.0, 8.0, 5),
    (Field::OtherLoad, 0.0, 400.0, 4),
    (Field::UtilityLimit, 5.0, 800.0, 2),
    (Field::PoleDistance, 0.0, 3000.0, 8),
    (Field::FeederAmbient, -20.0, 60.0, 5),
    (Field::AllowedSupplyDrop, 0.5, 15.0, 5),
    (Field::AllowedWholeDrop, 0.5, 15.0, 5),
    (Field::DriveAmbient, -20.0, 60.0, 8),
    (Field::SunRise, 0.0, 40.0, 3),
    (Field::MarkedShortCircuit, 1.0, 200.0, 5),
    (Field::StartDipMotor, 1.0, 30.0, 3),
    (Field::StartDipPole, 1.0, 30.0, 3),
    (Field::LineDistance, 0.0, 20_000.0, 5),
    (Field::GeneratorRating, 1.0, 500.0, 1),
    (Field::GeneratorSite, 0.3, 1.0, 3),
    (Field::RiseTime, 0.02, 5.0, 3),
    (Field::WaveSpeed, 328.1, 820.0, 3),
    (Field::CableImpedance, 20.0, 300.0, 3),
    (Field::MotorImpedance, 100.0, 10_000.0, 3),
    (Field::MotorPeakLimit, 600.0, 3000.0, 3),
    (Field::LineFixed, 0.0, 20_000.0, 3),
    (Field::LinePrice, 0.0, 100.0, 3),
    (Field::LineFree, 0.0, 1000.0, 3),
    (Field::YearlyHours, 0.0, 8784.0, 5),
    (Field::EnergyPrice, 0.0, 1.0, 5),
    (Field::Discount, 0.0, 30.0, 5),
    (Field::Years, 1.0, 50.0, 5),
    (Field::DeviceAmps, 15.0, 800.0, 3),
    (Field::DemandPrice, 0.0, 30.0, 3),
    (Field::BilledMonths, 0.0, 12.0, 2),
    (Field::StandingCharge, 0.0, 100.0, 3),
    (Field::MonthsOfUse, 1.0, 12.0, 4),
    (Field::SeasonMonths, 0.0, 12.0, 3),
    (Field::SeasonPrice, 0.0, 1.0, 5),
    (Field::SeasonDemandPrice, 0.0, 30.0, 5),
    (Field::SeasonShare, 0.0, 100.0, 3),
    (Field::Carbon, 0.0, 2.0, 3),
    (Field::MetalLow, 0.5, 6.0, 3),
    (Field::MetalHigh, 12.0, 60.0, 3),
    (Field::EquipmentLow, 10.0, 100.0, 3),
    (Field::EquipmentHigh, 100.0, 400.0, 3),
    (Field::HoursLow, 0.0, 1500.0, 3),
    (Field::HoursHigh, 1500.0, 8784.0, 3),
    (Field::EnergyLow, 0.0, 0.1, 3),
    (Field::EnergyHigh, 0.15, 1.0, 3),
    (Field::TransducerSpan, 10.0, 1000.0, 3),
    (Field::RestartDelay, 0.0, 3600.0, 3),
];

impl Supplies {
    pub fn enter(&self, job: &mut Job, system: UnitSystem) {
        for (field, value) in &self.figures {
            job.set(*field, Some(entry(*field, *value, system)));
        }
        let (of, to) = (&self.choices, &mut job.choices);
        (to.place, to.shaded, to.enclosure) = (of.place, of.shaded, of.enclosure);
        (to.grounding, to.three_phase, to.hookup) = (of.grounding, of.three_phase, of.hookup);
        (to.feeder_metal, to.feeder_build, to.feeder_sets) = (of.feeder_metal, of.feeder_build, of.feeder_sets);
        (to.inverter_duty, to.remedy) = (of.inverter_duty, of.remedy);
        (job.families, job.way) = (self.families.clone(), self.way.clone());
    }
}

/// An entry of a plain number, in either family. Conversions by definition of the units.
pub fn entry(field: Field, value: f64, system: UnitSystem) -> Entry {
    let (us, si, factor) = match field.kind() {
        Kind::Temperature if system == UnitSystem::Us => {
            return Entry::new(value * 9.0 / 5.0 + 32.0, Unit::DegreeFahrenheit);
        }
        Kind::Temperature => return Entry::new(value, Unit::DegreeCelsius),
        Kind::Warming if system == UnitSystem::Us => return Entry::new(value * 1.8, Unit::FahrenheitDegree),
        Kind::Warming => return Entry::new(value, Unit::Kelvin),
        Kind::Voltage => (Unit::Volt, Unit::Volt, 1.0),
        Kind::Share => (Unit::Percent, Unit::Percent, 1.0),
        Kind::ApparentPower => (Unit::KilovoltAmpere, Unit::KilovoltAmpere, 1.0),
        Kind::FaultCurrent => (Unit::Kiloampere, Unit::Kiloampere, 1.0),
        Kind::Resistance => (Unit::Ohm, Unit::Ohm, 1.0),
        Kind::RiseTime => (Unit::Microsecond, Unit::Microsecond, 1.0),
        Kind::PulseSpeed => (Unit::FootPerMicrosecond, Unit::MeterPerMicrosecond, 0.3048),
        Kind::Money => (Unit::Dollar, Unit::Dollar, 1.0),
        Kind::MoneyPerLength => (Unit::DollarPerFoot, Unit::DollarPerMeter, 1.0 / 0.3048),
        Kind::EnergyPrice => (Unit::DollarPerKilowattHour, Unit::DollarPerKilowattHour, 1.0),
        Kind::Life => (Unit::Year, Unit::Year, 1.0),
        Kind::Delay => (Unit::Second, Unit::Second, 1.0),
        Kind::DemandPrice => (Unit::DollarPerKilowatt, Unit::DollarPerKilowatt, 1.0),
        Kind::MonthlyPrice => (Unit::DollarPerMonth, Unit::DollarPerMonth, 1.0),
        Kind::Months => (Unit::Month, Unit::Month, 1.0),
        Kind::Emission => (Unit::PoundPerKilowattHour, Unit::KilogramPerKilowattHour, 0.453_592_37),
        Kind::MoneyPerMass => (Unit::DollarPerPound, Unit::DollarPerKilogram, 1.0 / 0.453_592_37),
        _ => return waters::entry(field, value, system),
    };
    match system {
        UnitSystem::Us => Entry::new(value, us),
        UnitSystem::Si => Entry::new(value * factor, si),
    }
}

/// Any supply, most of it likely: 240 or 480 V more often than others.
pub fn supplies() -> impl Strategy<Value = Supplies> {
    let figure = |(field, low, high, often): &(Field, f64, f64, u32)| {
        let (low, high) = (*low, *high);
        let whole = field.kind() == Kind::Months;
        let value = (0.0..1.0f64).prop_map(move |share| low + (high - low) * share * share);
        let value = value.prop_map(move |value| if whole { value.round() } else { value });
        prop::option::weighted(f64::from(*often) / 10.0, value)
    };
    let figures: Vec<_> = LIKELY.iter().map(figure).collect();
    (figures, chosen(), own(), way(), prop_oneof![Just(None), Just(Some(480.0))]).prop_map(
        |(values, choices, families, way, volts)| {
            let told = LIKELY.iter().zip(values).filter_map(|((field, ..), value)| Some((*field, value?)));
            let mut figures: Vec<(Field, f64)> = told.collect();
            if let Some(volts) = volts {
                figures.retain(|(field, _)| *field != Field::SupplyVolts);
                figures.push((Field::SupplyVolts, volts));
            }
            Supplies { figures, choices, families, way }
        },
    )
}

fn chosen() -> impl Strategy<Value = Choices> {
    const REMEDIES: [Remedy; 4] = [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter];
    const BUILDS: [Build; 4] = [Build::PlasticConduit, Build::SteelConduit, Build::FlatJacketed, Build::Twisted];
    const HOOKUPS: [Hookup; 3] = [Hookup::AsBuilt, Hookup::DoubleDelta, Hookup::TwoLines];
    let site = (
        prop::option::of(prop::sample::select(&Place::ALL[..])),
        prop::option::of(any::<bool>()),
        prop::option::weighted(0.2, (0..TABLE.len()).prop_map(|at| TABLE[at].kind)),
        prop::option::of(prop_oneof![Just(Grounding::Midpoint), Just(Grounding::OneLine)]),
        prop::option::of(prop_oneof![Just(Class::Low), Just(Class::High)]),
        prop::option::of(prop::sample::select(&HOOKUPS[..])),
    );
    let wires = (
        prop::option::of(prop_oneof![Just(Metal::Copper), Just(Metal::Aluminum)]),
        prop::option::of(prop::sample::select(&BUILDS[..])),
        prop::option::of((1..=Sets::LIMIT).prop_map(|sets| Sets::new(sets).unwrap())),
        prop::option::of(any::<bool>()),
        prop::option::weighted(0.3, prop::sample::select(&REMEDIES[..])),
    );
    (site, wires).prop_map(|(site, (feeder_metal, feeder_build, feeder_sets, inverter_duty, remedy))| {
        let (place, shaded, enclosure, grounding, three_phase, hookup) = site;
        let wires = Choices { feeder_metal, feeder_build, feeder_sets, inverter_duty, remedy, ..Choices::default() };
        Choices { place, shaded, enclosure, grounding, three_phase, hookup, ..wires }
    })
}

/// No equipment of one's own, good rows of it, or a text that is none.
fn own() -> impl Strategy<Value = String> {
    let kinds = ["converting_active", "doubling", "large_low_harmonic", "rotary_converter", "three_phase_line"];
    let row = (prop::sample::select(kinds.to_vec()), 20.0..55.0f64, 0.0..120.0f64, 70.0..99.0f64);
    let rows = prop::collection::vec(row, 1..4).prop_map(|rows| {
        let head = "name,kind,rated_c,thd_pct,efficiency_pct\n".to_owned();
        rows.into_iter().enumerate().fold(head, |text, (at, (kind, rated, thd, efficiency))| {
            text + &format!("Own {at},{kind},{rated},{thd},{efficiency}\n")
        })
    });
    prop_oneof![5 => Just(String::new()), 3 => rows, 1 => Just("no table".to_owned())]
}

fn way() -> impl Strategy<Value = Option<WayKey>> {
    prop_oneof![
        3 => Just(None),
        2 => prop::sample::select(&Equipment::ALL[..]).prop_map(|kind| Some(WayKey::Generic(kind))),
        1 => (0..4).prop_map(|at| Some(WayKey::Own(format!("Own {at}")))),
    ]
}
