//! Random figures of the water, the line and the pump: plain numbers in US units, entered in either family of units.

use super::pump::Made;
use proptest::prelude::*;
use wellwright_core::job::{Choices, Control, DemandBy, DepthOf, DrawdownBy, Field, Job, Part, PipePick};
use wellwright_core::quantity::{Entry, Kind, Unit, UnitSystem};
use wellwright_core::standards::pipe::Series;
use wellwright_core::water::line::FrictionMethod;

/// Figures of water, line and pump beyond those that every random job has.
#[derive(Debug, Clone)]
pub struct Waters {
    /// In the US unit of each field.
    pub figures: Vec<(Field, f64)>,
    pub curve: Option<Rows>,
    pub demand: DemandBy,
    pub depth_of: DepthOf,
    pub drawdown: DrawdownBy,
    pub friction: FrictionMethod,
    pub control: Control,
    pub pipes: [PipePick; 3],
}

/// A curve as rows: gpm, feet, percent. A curve of head alone has no percent.
#[derive(Debug, Clone)]
pub struct Rows(pub Vec<(f64, f64, Option<f64>)>);

/// Each field with the range that jobs are likely to have, and how often of ten it is entered.
const LIKELY: [(Field, f64, f64, u32); 59] = [
    (Field::Altitude, -100.0, 3000.0, 5),
    (Field::Flow, 0.5, 400.0, 9),
    (Field::PumpingHours, 4.0, 24.0, 5),
    (Field::IrrigatedArea, 0.1, 80.0, 9),
    (Field::WaterDepth, 0.02, 0.5, 9),
    (Field::ApplicationEfficiency, 0.5, 1.0, 5),
    (Field::People, 0.0, 40.0, 9),
    (Field::BeefCattle, 0.0, 900.0, 5),
    (Field::DairyCows, 0.0, 200.0, 5),
    (Field::Horses, 0.0, 50.0, 5),
    (Field::PersonDaily, 40.0, 120.0, 3),
    (Field::BeefDaily, 8.0, 25.0, 3),
    (Field::DairyDaily, 20.0, 60.0, 3),
    (Field::HorseDaily, 8.0, 25.0, 3),
    (Field::SpecificCapacity, 0.05, 60.0, 9),
    (Field::Transmissivity, 300.0, 90_000.0, 9),
    (Field::Storage, 1e-5, 0.3, 9),
    (Field::BoreDiameter, 5.0, 20.0, 5),
    (Field::AquiferTime, 2.0, 2000.0, 5),
    (Field::WellLoss, 0.0, 0.01, 5),
    (Field::TestedYield, 1.0, 900.0, 5),
    (Field::CasingInside, 4.0, 16.0, 7),
    (Field::ScreenTop, 50.0, 3000.0, 5),
    (Field::WaterTemperature, 33.0, 130.0, 5),
    (Field::SuctionLift, -20.0, 28.0, 9),
    (Field::DropInside, 0.8, 10.0, 3),
    (Field::DropRoughness, 0.0, 0.01, 3),
    (Field::DropHazenWilliams, 80.0, 160.0, 3),
    (Field::DropFittings, 0.0, 30.0, 5),
    (Field::SuctionLength, 0.0, 200.0, 5),
    (Field::SuctionInside, 1.0, 12.0, 3),
    (Field::SuctionRoughness, 0.0, 0.01, 3),
    (Field::SuctionHazenWilliams, 80.0, 160.0, 3),
    (Field::SuctionFittings, 0.0, 10.0, 5),
    (Field::SurfaceLength, 0.0, 5000.0, 5),
    (Field::SurfaceInside, 0.8, 12.0, 3),
    (Field::SurfaceRoughness, 0.0, 0.01, 3),
    (Field::SurfaceHazenWilliams, 80.0, 160.0, 3),
    (Field::SurfaceFittings, 0.0, 30.0, 5),
    (Field::Rise, -50.0, 300.0, 5),
    (Field::Pressure, 0.0, 120.0, 5),
    (Field::PressureRating, 60.0, 300.0, 5),
    (Field::TankVolume, 1.0, 500.0, 5),
    (Field::TankPrecharge, 0.0, 80.0, 3),
    (Field::CutIn, 0.0, 80.0, 3),
    (Field::PumpEfficiency, 0.3, 0.85, 5),
    (Field::ShutOffHead, 50.0, 3000.0, 5),
    (Field::CurveFrequency, 45.0, 65.0, 3),
    (Field::LeastFrequency, 15.0, 45.0, 3),
    (Field::MostFrequency, 45.0, 75.0, 3),
    (Field::NpshRequired, 0.0, 30.0, 5),
    (Field::NpshMargin, 0.0, 6.0, 3),
    (Field::MotorDiameter, 3.5, 12.0, 7),
    (Field::SleeveInside, 4.0, 14.0, 3),
    (Field::LeastFlow, 0.0, 200.0, 5),
    (Field::PumpMass, 20.0, 3000.0, 5),
    (Field::ServiceFactor, 1.0, 1.4, 5),
    (Field::ServiceAmps230, 1.0, 700.0, 3),
    (Field::ServiceAmps460, 0.6, 400.0, 3),
];

impl Waters {
    pub fn choices(&self) -> Choices {
        Choices {
            demand: Some(self.demand),
            depth_of: Some(self.depth_of),
            drawdown: Some(self.drawdown),
            friction: Some(self.friction),
            control: Some(self.control),
            pipes: self.pipes,
            ..Choices::default()
        }
    }

    pub fn enter(&self, job: &mut Job, system: UnitSystem) {
        for (field, value) in &self.figures {
            job.set(*field, Some(entry(*field, *value, system)));
        }
        job.curve = self.curve.as_ref().map_or_else(String::new, |rows| rows.text(system));
    }

    /// Nothing but what the lead needs.
    pub fn none() -> Self {
        Self {
            figures: Vec::new(),
            curve: None,
            demand: DemandBy::Flow,
            depth_of: DepthOf::Gross,
            drawdown: DrawdownBy::Measured,
            friction: FrictionMethod::DarcyWeisbach,
            control: Control::ConstantPressure,
            pipes: [PipePick::default(); 3],
        }
    }
}

impl Rows {
    /// The text of the curve; US units are the ones that are read where none are told.
    pub fn text(&self, system: UnitSystem) -> String {
        let us = system == UnitSystem::Us;
        let mut text = match (us, self.0.iter().any(|row| row.2.is_some())) {
            (true, _) => String::new(),
            (false, true) => "L/s\tm\t%\n".to_owned(),
            (false, false) => "L/s\tm\n".to_owned(),
        };
        for (flow, head, percent) in &self.0 {
            let (flow, head) = if us { (*flow, *head) } else { (flow * 3.785_411_784 / 60.0, head * 0.3048) };
            text += &format!("{flow}\t{head}");
            if let Some(percent) = percent {
                text += &format!("\t{percent}");
            }
            text.push('\n');
        }
        text
    }
}

impl From<&Made> for Rows {
    fn from(made: &Made) -> Self {
        let rows = made.flows.iter().zip(&made.heads).zip(&made.efficiencies);
        Self(rows.map(|((flow, head), share)| (*flow, *head, Some(100.0 * share))).collect())
    }
}

/// An entry of a plain number in the US unit of its field, in either family. Conversions by definition of the units.
pub fn entry(field: Field, value: f64, system: UnitSystem) -> Entry {
    let (us, si, factor) = match field.kind() {
        Kind::Length if field == Field::Altitude => (Unit::Meter, Unit::Meter, 1.0),
        Kind::Length => (Unit::Foot, Unit::Meter, 0.3048),
        Kind::Flow => (Unit::GallonPerMinute, Unit::LiterPerSecond, 3.785_411_784 / 60.0),
        Kind::Volume => (Unit::Gallon, Unit::Liter, 3.785_411_784),
        Kind::DailyVolume => (Unit::GallonPerDay, Unit::LiterPerDay, 3.785_411_784),
        Kind::Time => (Unit::Hour, Unit::Hour, 1.0),
        Kind::Land => (Unit::Acre, Unit::Hectare, 0.404_685_642_24),
        Kind::Spread => (Unit::InchPerDay, Unit::MillimeterPerDay, 25.4),
        Kind::SpecificCapacity => {
            (Unit::GallonPerMinutePerFoot, Unit::LiterPerSecondPerMeter, 3.785_411_784 / 60.0 / 0.3048)
        }
        Kind::Transmissivity => (Unit::GallonPerDayPerFoot, Unit::SquareMeterPerDay, 0.003_785_411_784 / 0.3048),
        // Foot over the square of a gallon in a minute.
        Kind::WellLoss => (
            Unit::FootPerSquareGallonPerMinute,
            Unit::SecondSquaredPerMeterToTheFifth,
            0.3048 * (60.0 / 0.003_785_411_784) * (60.0 / 0.003_785_411_784),
        ),
        Kind::Diameter => (Unit::Inch, Unit::Millimeter, 25.4),
        // A pound-force over a square inch.
        Kind::Pressure => {
            (Unit::PoundPerSquareInch, Unit::Kilopascal, 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254) / 1000.0)
        }
        Kind::Frequency => (Unit::Hertz, Unit::Hertz, 1.0),
        Kind::Mass => (Unit::Pound, Unit::Kilogram, 0.453_592_37),
        Kind::Power => (Unit::Horsepower, Unit::Kilowatt, 0.7457),
        Kind::Current => (Unit::Ampere, Unit::Ampere, 1.0),
        Kind::Number => (Unit::One, Unit::One, 1.0),
        Kind::Temperature if system == UnitSystem::Si => {
            return Entry::new((value - 32.0) * 5.0 / 9.0, Unit::DegreeCelsius);
        }
        Kind::Temperature => (Unit::DegreeFahrenheit, Unit::DegreeFahrenheit, 1.0),
        other => panic!("{field:?} is of kind {other:?}"),
    };
    match system {
        UnitSystem::Us => Entry::new(value, us),
        UnitSystem::Si => Entry::new(value * factor, si),
    }
}

/// Any figures of water, line and pump, most of them likely.
pub fn waters() -> impl Strategy<Value = Waters> {
    let figure = |(_, low, high, often): &(Field, f64, f64, u32)| {
        // Small figures more often than large ones.
        let value = (0.0..1.0f64).prop_map({
            let (low, high) = (*low, *high);
            move |share| low + (high - low) * share * share
        });
        prop::option::weighted(f64::from(*often) / 10.0, value)
    };
    let figures: Vec<_> = LIKELY.iter().map(figure).collect();
    (figures, chosen(), prop::option::weighted(0.4, curve())).prop_map(|(values, mut waters, curve)| {
        let told = LIKELY.iter().zip(values).filter_map(|((field, ..), value)| Some((*field, value?)));
        (waters.figures, waters.curve) = (told.collect(), curve);
        waters
    })
}

/// A curve that falls all along, with efficiencies or of head alone.
fn curve() -> impl Strategy<Value = Rows> {
    (super::pump::pump(), any::<bool>()).prop_map(|(made, alone)| {
        let rows = Rows::from(&made);
        if alone { Rows(rows.0.into_iter().map(|(flow, head, _)| (flow, head, None)).collect()) } else { rows }
    })
}

pub fn chosen() -> impl Strategy<Value = Waters> {
    let demand = prop_oneof![3 => Just(DemandBy::Flow), 1 => Just(DemandBy::Land), 1 => Just(DemandBy::PeopleAndStock)];
    let drawdown = [DrawdownBy::Measured, DrawdownBy::SpecificCapacity, DrawdownBy::Aquifer];
    let methods = [FrictionMethod::DarcyWeisbach, FrictionMethod::HazenWilliams];
    let controls = [Control::ConstantPressure, Control::OnOff];
    let depths = [DepthOf::Gross, DepthOf::Net];
    let pipes = || [pick(Part::Drop), pick(Part::Suction), pick(Part::Surface)];
    (
        demand,
        prop::sample::select(depths.to_vec()),
        prop::sample::select(drawdown.to_vec()),
        prop::sample::select(methods.to_vec()),
        prop::sample::select(controls.to_vec()),
        pipes(),
    )
        .prop_map(|(demand, depth_of, drawdown, friction, control, pipes)| Waters {
            demand,
            depth_of,
            drawdown,
            friction,
            control,
            pipes,
            ..Waters::none()
        })
}

/// A series, or the one that is assumed, and a size that it has, or none.
fn pick(part: Part) -> impl Strategy<Value = PipePick> {
    let series = prop::option::of(prop::sample::select(Series::ALL.map(|(series, _)| series).to_vec()));
    (series, prop::option::of(any::<prop::sample::Index>())).prop_map(move |(series, index)| {
        let assumed = Choices::default().series(part);
        let sizes: Vec<_> = series.unwrap_or(assumed).sizes().collect();
        PipePick { series, size: index.map(|index| sizes[index.index(sizes.len())].size()) }
    })
}
