//! What each figure accepts, what is usual, and what stands in until it is entered.
//!
//! Limits mark where the tables end, or physics; defaults are common practice, no single source, and always shown as
//! assumed.

use super::Field;
use crate::error::Range;
use crate::quantity::{Entry, Unit};
use crate::standards::water_use::User;

/// What a field accepts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spec {
    /// Accepted range, ends included.
    pub accepted: Range,
    /// Bounds beyond which a value is unusual, in the unit of `accepted`.
    pub usual: (f64, f64),
    /// What stands in until a figure is entered: a fixed value, or worked out from others, or nothing.
    pub default: Stand,
}

/// What stands in for an empty field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stand {
    /// Nothing: the figure must be entered.
    Nothing,
    /// This value, shown as assumed.
    Assumed(Entry),
    /// A value that follows from other figures, shown as assumed.
    Follows,
    /// No value is needed.
    Optional,
}

impl Spec {
    /// A range in a unit, nothing unusual in it, and no value needed.
    const fn of(min: f64, max: f64, unit: Unit) -> Self {
        let usual = (f64::NEG_INFINITY, f64::INFINITY);
        Self { accepted: Range { min, max, unit }, usual, default: Stand::Optional }
    }
    /// Unusual above a bound.
    const fn usual_to(self, most: f64) -> Self {
        Self { usual: (self.usual.0, most), ..self }
    }
    /// Unusual below a bound.
    const fn usual_from(self, least: f64) -> Self {
        Self { usual: (least, self.usual.1), ..self }
    }
    /// With what stands in.
    const fn or(self, default: Stand) -> Self {
        Self { default, ..self }
    }
    /// With an assumed value, in the unit of the range.
    const fn assumed(self, value: f64) -> Self {
        let unit = self.accepted.unit;
        self.or(Stand::Assumed(Entry::new(value, unit)))
    }
}

/// What a field accepts and what stands in for it.
pub(super) fn spec(field: Field) -> Spec {
    match field.path().split_once('.').map(|(group, _)| group) {
        Some("site") => site(field),
        Some("demand") => demand(field),
        Some("well") => well(field),
        Some("line") => line(field),
        Some("pump") => pump(field),
        Some("motor") => motor(field),
        Some("cable") => lead(field),
        Some("supply") => supply(field),
        Some("startup") => startup(field),
        _ => money(field),
    }
}

fn site(field: Field) -> Spec {
    match field {
        Field::PumpSetting => Spec::of(0.0, 3000.0, Unit::Foot).or(Stand::Nothing),
        Field::WellDepth => Spec::of(0.0, 5000.0, Unit::Foot),
        Field::MinimumSubmergence => Spec::of(0.0, 200.0, Unit::Foot).usual_from(5.0).assumed(10.0),
        Field::SurfaceRun => Spec::of(0.0, 3000.0, Unit::Foot).assumed(20.0),
        Field::Ambient => Spec::of(-40.0, 60.0, Unit::DegreeCelsius).usual_from(-10.0).usual_to(40.0).assumed(40.0),
        Field::Altitude => Spec::of(-430.0, 5000.0, Unit::Meter).usual_to(2000.0).assumed(1000.0),
        _ => Spec::of(0.0, 3000.0, Unit::Foot),
    }
}

fn demand(field: Field) -> Spec {
    let daily = |user: User| {
        let most = Spec::of(1.0, 500.0, Unit::GallonPerDay);
        most.assumed(crate::quantity::in_gallons(user.daily()))
    };
    match field {
        Field::Flow => Spec::of(0.5, 20_000.0, Unit::GallonPerMinute),
        Field::PumpingHours => Spec::of(0.5, 24.0, Unit::Hour).usual_to(22.0).assumed(22.0),
        Field::IrrigatedArea => Spec::of(0.01, 10_000.0, Unit::Acre),
        Field::WaterDepth => Spec::of(0.01, 2.0, Unit::InchPerDay),
        Field::ApplicationEfficiency => Spec::of(0.3, 1.0, Unit::One).usual_from(0.6).assumed(0.8),
        Field::PersonDaily => daily(User::Person),
        Field::BeefDaily => daily(User::Beef),
        Field::DairyDaily => daily(User::Dairy),
        Field::HorseDaily => daily(User::Horse),
        _ => Spec::of(0.0, 100_000.0, Unit::One),
    }
}

fn well(field: Field) -> Spec {
    match field {
        Field::SpecificCapacity => Spec::of(0.01, 1000.0, Unit::GallonPerMinutePerFoot).usual_from(0.5),
        Field::Transmissivity => Spec::of(1.0, 5e6, Unit::GallonPerDayPerFoot),
        Field::Storage => Spec::of(1e-6, 0.4, Unit::One),
        Field::BoreDiameter => Spec::of(2.0, 60.0, Unit::Inch).assumed(8.0),
        Field::AquiferTime => Spec::of(0.1, 100_000.0, Unit::Hour).usual_from(4.0).assumed(24.0),
        Field::WellLoss => Spec::of(0.0, 10.0, Unit::FootPerSquareGallonPerMinute),
        Field::TestedYield => Spec::of(0.1, 20_000.0, Unit::GallonPerMinute),
        Field::CasingInside => Spec::of(2.0, 60.0, Unit::Inch),
        Field::WaterTemperature => Spec::of(32.0, 140.0, Unit::DegreeFahrenheit).usual_to(86.0).assumed(60.0),
        _ => Spec::of(0.0, 3000.0, Unit::Foot),
    }
}

fn line(field: Field) -> Spec {
    match field {
        Field::SuctionLift => Spec::of(-100.0, 30.0, Unit::Foot).usual_to(20.0),
        Field::DropInside | Field::SuctionInside | Field::SurfaceInside => {
            Spec::of(0.25, 48.0, Unit::Inch).or(Stand::Follows)
        }
        // 0.05 of the largest inside diameter; the formulas refuse more than 0.05 of the pipe's own.
        Field::DropRoughness | Field::SuctionRoughness | Field::SurfaceRoughness => {
            Spec::of(0.0, 2.4, Unit::Inch).or(Stand::Follows)
        }
        Field::DropHazenWilliams | Field::SuctionHazenWilliams | Field::SurfaceHazenWilliams => {
            Spec::of(60.0, 160.0, Unit::One).or(Stand::Follows)
        }
        Field::DropFittings | Field::SuctionFittings | Field::SurfaceFittings => {
            Spec::of(0.0, 500.0, Unit::One).assumed(0.0)
        }
        Field::SuctionLength | Field::SurfaceLength => Spec::of(0.0, 50_000.0, Unit::Foot).assumed(0.0),
        Field::Rise => Spec::of(-1000.0, 2000.0, Unit::Foot).assumed(0.0),
        Field::Pressure => Spec::of(0.0, 300.0, Unit::PoundPerSquareInch).usual_to(80.0).assumed(50.0),
        Field::PressureRating => Spec::of(20.0, 1500.0, Unit::PoundPerSquareInch).assumed(125.0),
        Field::TankVolume => Spec::of(0.1, 20_000.0, Unit::Gallon),
        Field::TankPrecharge | Field::CutIn => Spec::of(0.0, 300.0, Unit::PoundPerSquareInch).or(Stand::Follows),
        _ => Spec::of(0.0, 3000.0, Unit::Foot),
    }
}

fn pump(field: Field) -> Spec {
    match field {
        Field::PumpEfficiency => Spec::of(0.2, 0.9, Unit::One).usual_from(0.5).or(Stand::Follows),
        Field::ShutOffHead => Spec::of(1.0, 9000.0, Unit::Foot),
        Field::CurveFrequency => Spec::of(10.0, 120.0, Unit::Hertz).assumed(60.0),
        Field::LeastFrequency => Spec::of(10.0, 120.0, Unit::Hertz).usual_from(30.0).assumed(30.0),
        Field::MostFrequency => Spec::of(10.0, 120.0, Unit::Hertz).usual_to(60.0).assumed(60.0),
        Field::NpshRequired => Spec::of(0.0, 60.0, Unit::Foot),
        Field::NpshMargin => Spec::of(0.0, 60.0, Unit::Foot).usual_from(3.0).assumed(3.0),
        Field::MotorDiameter | Field::SleeveInside => Spec::of(1.0, 60.0, Unit::Inch),
        Field::LeastFlow => Spec::of(0.0, 20_000.0, Unit::GallonPerMinute),
        _ => Spec::of(0.0, 50_000.0, Unit::Pound),
    }
}

fn motor(field: Field) -> Spec {
    match field {
        Field::MotorPower => Spec::of(0.5, 200.0, Unit::Horsepower).usual_to(20.0).or(Stand::Follows),
        Field::ServiceFactor => Spec::of(1.0, 1.4, Unit::One).or(Stand::Follows),
        Field::MotorPowerFactor | Field::MotorEfficiency => Spec::of(0.4, 0.98, Unit::One).or(Stand::Follows),
        Field::MotorImpedance => Spec::of(100.0, 10_000.0, Unit::Ohm).or(Stand::Follows),
        Field::MotorPeakLimit => Spec::of(600.0, 3000.0, Unit::Volt).or(Stand::Follows),
        _ => Spec::of(0.5, 800.0, Unit::Ampere),
    }
}

fn lead(field: Field) -> Spec {
    match field {
        Field::AllowedDrop => Spec::of(0.5, 15.0, Unit::Percent).usual_to(5.0).assumed(5.0),
        Field::DeviceAmps => Spec::of(15.0, 2000.0, Unit::Ampere).or(Stand::Follows),
        Field::RiseTime => Spec::of(0.02, 5.0, Unit::Microsecond).assumed(0.1),
        Field::WaveSpeed => Spec::of(100.0, 250.0, Unit::MeterPerMicrosecond).assumed(150.0),
        _ => Spec::of(20.0, 300.0, Unit::Ohm).assumed(80.0),
    }
}

fn supply(field: Field) -> Spec {
    let celsius = |usual: f64| Spec::of(-40.0, 60.0, Unit::DegreeCelsius).usual_from(-10.0).usual_to(usual);
    match field {
        Field::SupplyVolts => Spec::of(200.0, 600.0, Unit::Volt).assumed(240.0),
        Field::TransformerRating => Spec::of(5.0, 500.0, Unit::KilovoltAmpere).or(Stand::Follows),
        Field::TransformerImpedance => Spec::of(1.0, 8.0, Unit::Percent).assumed(2.0),
        Field::OtherLoad => Spec::of(0.0, 500.0, Unit::KilovoltAmpere),
        Field::UtilityLimit => Spec::of(1.0, 5000.0, Unit::Ampere),
        Field::PoleDistance => Spec::of(0.0, 10_000.0, Unit::Foot).usual_to(1000.0),
        Field::FeederAmbient | Field::DriveAmbient => celsius(40.0).or(Stand::Follows),
        Field::AllowedSupplyDrop => Spec::of(0.5, 15.0, Unit::Percent).usual_to(3.0).assumed(3.0),
        Field::AllowedWholeDrop => Spec::of(0.5, 15.0, Unit::Percent).usual_to(5.0).assumed(5.0),
        Field::SunRise => Spec::of(0.0, 40.0, Unit::Kelvin).assumed(10.0),
        Field::MarkedShortCircuit => Spec::of(1.0, 200.0, Unit::Kiloampere).or(Stand::Follows),
        Field::StartDipMotor => Spec::of(1.0, 30.0, Unit::Percent).usual_to(15.0).assumed(15.0),
        Field::StartDipPole => Spec::of(1.0, 30.0, Unit::Percent).usual_to(5.0).assumed(5.0),
        Field::LineDistance => Spec::of(0.0, 500_000.0, Unit::Foot),
        Field::GeneratorRating => Spec::of(0.5, 2000.0, Unit::KilovoltAmpere),
        _ => Spec::of(0.3, 1.0, Unit::One).assumed(1.0),
    }
}

fn startup(field: Field) -> Spec {
    match field {
        Field::TransducerSpan => Spec::of(10.0, 1000.0, Unit::PoundPerSquareInch).assumed(150.0),
        _ => Spec::of(0.0, 3600.0, Unit::Second).assumed(60.0),
    }
}

/// Prices follow from the price book, which is invented until a quote replaces it.
fn money(field: Field) -> Spec {
    match field {
        Field::LineFixed => Spec::of(0.0, 1e7, Unit::Dollar).or(Stand::Follows),
        Field::LinePrice => Spec::of(0.0, 10_000.0, Unit::DollarPerFoot).or(Stand::Follows),
        Field::LineFree => Spec::of(0.0, 500_000.0, Unit::Foot).or(Stand::Follows),
        Field::YearlyHours => Spec::of(0.0, 8784.0, Unit::Hour).assumed(1500.0),
        Field::EnergyPrice => Spec::of(0.0, 5.0, Unit::DollarPerKilowattHour).assumed(0.12),
        Field::DemandPrice => Spec::of(0.0, 1000.0, Unit::DollarPerKilowatt),
        Field::SeasonDemandPrice => Spec::of(0.0, 1000.0, Unit::DollarPerKilowatt).or(Stand::Follows),
        Field::SeasonPrice => Spec::of(0.0, 5.0, Unit::DollarPerKilowattHour).or(Stand::Follows),
        Field::SeasonShare => Spec::of(0.0, 100.0, Unit::Percent).or(Stand::Follows),
        Field::BilledMonths | Field::SeasonMonths => Spec::of(0.0, 12.0, Unit::Month),
        Field::MonthsOfUse => Spec::of(1.0, 12.0, Unit::Month).assumed(12.0),
        Field::StandingCharge => Spec::of(0.0, 100_000.0, Unit::DollarPerMonth),
        Field::Carbon => Spec::of(0.0, 5.0, Unit::PoundPerKilowattHour),
        Field::MetalLow | Field::MetalHigh => Spec::of(0.0, 1000.0, Unit::DollarPerPound).or(Stand::Follows),
        Field::EquipmentLow => Spec::of(10.0, 100.0, Unit::Percent).assumed(85.0),
        Field::EquipmentHigh => Spec::of(100.0, 400.0, Unit::Percent).assumed(120.0),
        Field::HoursLow | Field::HoursHigh => Spec::of(0.0, 8784.0, Unit::Hour).or(Stand::Follows),
        Field::EnergyLow | Field::EnergyHigh => Spec::of(0.0, 10.0, Unit::DollarPerKilowattHour).or(Stand::Follows),
        Field::Discount => Spec::of(0.0, 30.0, Unit::Percent).assumed(6.0),
        Field::Years => Spec::of(1.0, 50.0, Unit::Year).assumed(15.0),
        Field::CableFixed => Spec::of(0.0, 1000.0, Unit::DollarPerFoot).or(Stand::Follows),
        Field::CableMetal => Spec::of(0.0, 1000.0, Unit::DollarPerPound).or(Stand::Follows),
        _ => Spec::of(-1e6, 1e6, Unit::Dollar).or(Stand::Follows),
    }
}
