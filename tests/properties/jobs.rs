//! Random jobs: plain numbers in US units, from which a job is entered in either family of units.

use super::supplies::{Supplies, supplies};
use super::waters::{Waters, waters};
use proptest::prelude::*;
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::{Choices, Field, Job, Sets, wire};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Unit, UnitSystem};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::Metal;

/// A job as plain numbers: feet, horsepower, amperes, degrees Celsius, percent, dollars per foot and pound.
#[derive(Debug, Clone)]
pub struct Plain {
    pub depth: f64,
    /// Static level, drawdown, well depth, least submergence.
    pub levels: [Option<f64>; 4],
    pub surface: f64,
    pub hp: f64,
    /// Nameplate amperes at 230 V and 460 V.
    pub nameplate: [Option<f64>; 2],
    pub power_factor: Option<f64>,
    pub efficiency: Option<f64>,
    pub ambient: f64,
    pub drop: f64,
    pub device: Option<f64>,
    pub fixed: f64,
    pub metal_price: f64,
    pub extra: f64,
    pub kind: MotorKind,
    pub metal: Metal,
    pub build: Build,
    pub insulation: Rating,
    pub marked: bool,
    pub sets: u8,
    pub water: Waters,
    pub supply: Supplies,
}

/// Rated powers that table 430.250 lists.
pub const TABLE_HP: [f64; 21] = [
    0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 75.0, 100.0, 125.0, 150.0,
    200.0,
];

/// The levels in the well.
pub const LEVELS: [Field; 4] = [Field::StaticLevel, Field::Drawdown, Field::WellDepth, Field::MinimumSubmergence];

impl Plain {
    /// The length of the lead at a depth: that of a motor on the surface is told whole, and depth stands for it.
    pub fn lead_feet(&self, depth: f64) -> f64 {
        match self.kind {
            MotorKind::Submersible => depth + self.surface,
            MotorKind::Surface => depth,
        }
    }

    /// The depth at which the job's own lead is read off its curve.
    pub fn own_depth(&self) -> f64 {
        match self.kind {
            MotorKind::Submersible => self.depth,
            MotorKind::Surface => self.surface,
        }
    }

    /// The job, entered in a family of units. The conversions are by definition of the units.
    pub fn job(&self, system: UnitSystem) -> Job {
        let us = system == UnitSystem::Us;
        let mut job = Job::default();
        job.name = "random".into();
        job.choices = Choices {
            motor_kind: Some(self.kind),
            metal: Some(self.metal),
            build: Some(self.build),
            insulation: Some(self.insulation),
            terminals_marked_75: Some(self.marked),
            most_sets: Sets::new(self.sets),
            ..self.water.choices()
        };
        self.water.enter(&mut job, system);
        let mut enter = |field: Field, us_entry: (f64, Unit), si_entry: (f64, Unit)| {
            let (value, unit) = if us { us_entry } else { si_entry };
            job.set(field, Some(Entry::new(value, unit)));
        };
        enter(Field::PumpSetting, (self.depth, Unit::Foot), (self.depth * 0.3048, Unit::Meter));
        for (field, level) in LEVELS.into_iter().zip(self.levels) {
            if let Some(level) = level {
                enter(field, (level, Unit::Foot), (level * 0.3048, Unit::Meter));
            }
        }
        enter(Field::SurfaceRun, (self.surface, Unit::Foot), (self.surface * 0.3048, Unit::Meter));
        enter(Field::MotorPower, (self.hp, Unit::Horsepower), (self.hp * 0.7457, Unit::Kilowatt));
        // The wells of the west are hot in degrees Fahrenheit.
        enter(
            Field::Ambient,
            (self.ambient * 9.0 / 5.0 + 32.0, Unit::DegreeFahrenheit),
            (self.ambient, Unit::DegreeCelsius),
        );
        enter(Field::CableFixed, (self.fixed, Unit::DollarPerFoot), (self.fixed / 0.3048, Unit::DollarPerMeter));
        enter(
            Field::CableMetal,
            (self.metal_price, Unit::DollarPerPound),
            (self.metal_price / 0.453_592_37, Unit::DollarPerKilogram),
        );
        let mut same = |field: Field, value: Option<f64>, unit: Unit| {
            job.set(field, value.map(|value| Entry::new(value, unit)));
        };
        same(Field::NameplateAmps230, self.nameplate[0], Unit::Ampere);
        same(Field::NameplateAmps460, self.nameplate[1], Unit::Ampere);
        same(Field::MotorPowerFactor, self.power_factor, Unit::One);
        same(Field::MotorEfficiency, self.efficiency, Unit::One);
        same(Field::AllowedDrop, Some(self.drop), Unit::Percent);
        same(Field::DeviceAmps, self.device, Unit::Ampere);
        same(Field::ExtraEquipment, Some(self.extra), Unit::Dollar);
        self.supply.enter(&mut job, system);
        job
    }
}

/// Any job that can be evaluated, of whose supply nothing is known.
pub fn plain() -> impl Strategy<Value = Plain> {
    (site(), levels(), motor(), cable(), prices(), waters()).prop_map(|(site, levels, motor, cable, prices, water)| {
        let (depth, surface, ambient) = site;
        let (hp, nameplate, power_factor, efficiency, kind) = motor;
        let (metal, build, insulation, marked, sets, drop, device) = cable;
        let (fixed, metal_price, extra) = prices;
        Plain {
            depth,
            levels,
            surface,
            hp,
            nameplate,
            power_factor,
            efficiency,
            ambient,
            drop,
            device,
            fixed,
            metal_price,
            extra,
            kind,
            metal,
            build,
            insulation,
            marked,
            sets,
            water,
            supply: Supplies::default(),
        }
    })
}

/// The house's well, from the water to the money.
pub fn house() -> Job {
    wire::read_text(include_str!("../golden/v1/house_and_stock_well_in_whole.job.json")).unwrap()
}

/// A job with figures entered in the units of their ranges.
pub fn with(mut job: Job, figures: &[(Field, f64)]) -> Job {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
    job
}

/// Any job that can be evaluated, with any supply, place and equipment.
pub fn supplied() -> impl Strategy<Value = Plain> {
    (plain(), supplies()).prop_map(|(plain, supply)| Plain { supply, ..plain })
}

fn site() -> impl Strategy<Value = (f64, f64, f64)> {
    let surface = prop_oneof![3 => 0.0..300.0, 1 => Just(0.0), 1 => 0.0..3000.0];
    let ambient = prop_oneof![(-8i32..=12).prop_map(|fives| 5.0 * f64::from(fives)), -40.0..60.0];
    let depth = prop_oneof![4 => 0.0..3000.0, 1 => (0i32..=300).prop_map(|tens| 10.0 * f64::from(tens))];
    (depth, surface, ambient)
}

/// Round depths fall together often, so that a pump hangs at the water or at the bottom.
fn levels() -> impl Strategy<Value = [Option<f64>; 4]> {
    let depth = |most: i32| prop_oneof![(0..=most / 10).prop_map(|tens| 10.0 * f64::from(tens)), 0.0..f64::from(most)];
    let level = |most: i32| proptest::option::of(depth(most));
    (level(3000), level(300), level(5000), level(200))
        .prop_map(|(level, drawdown, well, least)| [level, drawdown, well, least])
}

type Motor = (f64, [Option<f64>; 2], Option<f64>, Option<f64>, MotorKind);

fn motor() -> impl Strategy<Value = Motor> {
    let hp = prop_oneof![proptest::sample::select(&TABLE_HP[..]), 0.5..200.0, 0.5..30.0];
    let kind = prop_oneof![Just(MotorKind::Submersible), Just(MotorKind::Surface)];
    let share = || proptest::option::of(0.42..0.98);
    (hp, proptest::option::of(0.8..1.6), proptest::option::of(0.8..1.6), share(), share(), kind).prop_map(
        |(hp, low, high, power_factor, efficiency, kind)| {
            // About 2.8 A a horsepower at 230 V, half of it at 460 V.
            let amps = |factor: f64, each: f64| (factor * each * hp).clamp(0.5, 800.0);
            let nameplate = [low.map(|factor| amps(factor, 2.8)), high.map(|factor| amps(factor, 1.4))];
            (hp, nameplate, power_factor, efficiency, kind)
        },
    )
}

type Cable = (Metal, Build, Rating, bool, u8, f64, Option<f64>);

fn cable() -> impl Strategy<Value = Cable> {
    let metal = prop_oneof![4 => Just(Metal::Copper), 1 => Just(Metal::Aluminum)];
    const BUILDS: [Build; 4] = [Build::PlasticConduit, Build::SteelConduit, Build::FlatJacketed, Build::Twisted];
    const RATINGS: [Rating; 3] = [Rating::C60, Rating::C75, Rating::C90];
    (
        metal,
        proptest::sample::select(&BUILDS[..]),
        proptest::sample::select(&RATINGS[..]),
        any::<bool>(),
        1u8..=4,
        prop_oneof![Just(5.0), 0.5..15.0],
        proptest::option::of(15.0..2000.0),
    )
}

fn prices() -> impl Strategy<Value = (f64, f64, f64)> {
    let extra = prop_oneof![Just(0.0), 0.0..10_000.0, -5_000.0..0.0];
    (prop_oneof![Just(0.0), 0.01..20.0], prop_oneof![1 => Just(0.0), 9 => 0.5..60.0], extra)
}
