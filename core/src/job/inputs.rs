//! A job's figures after checking: typed quantities, each with where it comes from, or why it can't be used.

use super::{Field, Job, Stand, Way};
use crate::cost::price::Prices;
use crate::error::InputError;
use crate::power::supply::{drive_input_current, provisional_device, true_power_factor};
use crate::pump::motor::{assumed_efficiency_and_power_factor, reconnected_current, sizing_current, table_current};
use crate::quantity::{
    Celsius, ElectricCurrent, Entry, KILOGRAM_PER_POUND, Length, METER_PER_FOOT, Money, MoneyPerLength, MoneyPerMass,
    Power, Unit, amperes, feet, horsepower, in_amperes, volts,
};
use serde::Serialize;

/// Where a figure comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Origin {
    /// Entered by the user.
    Typed,
    /// A default, until the user sets it.
    Assumed,
    /// Worked out from other figures.
    WorkedOut,
    /// Read from a published table.
    Table,
    /// True by definition, or nominal for the way.
    Definition,
}

/// A figure and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known<T> {
    /// The value.
    pub value: T,
    /// Where it comes from.
    pub origin: Origin,
}

/// A figure, or why it can't be used.
pub type Checked<T> = Result<Known<T>, InputError>;

/// The current that sizes a lead, and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MotorCurrent {
    /// The larger of nameplate and table.
    pub sizing: ElectricCurrent,
    /// NEC table value.
    pub table: ElectricCurrent,
    /// Nameplate value at this voltage: typed, or worked out from the other voltage.
    pub nameplate: Option<Known<ElectricCurrent>>,
}

/// The levels in the well: depths below ground, and the water that must stand above the pump. A level that was not
/// entered is `None`, and no error.
#[derive(Debug, Clone, PartialEq)]
pub struct Levels {
    /// Depth of the water with the pump at rest.
    pub static_level: Result<Option<Length>, InputError>,
    /// How far the water falls while the pump runs.
    pub drawdown: Result<Option<Length>, InputError>,
    /// Depth of the well's bottom.
    pub well_depth: Result<Option<Length>, InputError>,
    /// Least depth of water above the pump while it runs.
    pub minimum_submergence: Checked<Length>,
}

/// All figures of a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    /// Depth of the pump below ground.
    pub pump_setting: Checked<Length>,
    /// Levels in the well.
    pub levels: Levels,
    /// Lead on the surface.
    pub surface_run: Checked<Length>,
    /// Rated power of the motor.
    pub motor_power: Checked<Power>,
    /// Motor current on the 240 V and the 480 V way.
    pub motor_current: [Result<MotorCurrent, InputError>; 2],
    /// Power factor.
    pub power_factor: Checked<f64>,
    /// Efficiency.
    pub efficiency: Checked<f64>,
    /// Warmest surroundings.
    pub ambient: Checked<Celsius>,
    /// Largest drop, as a share.
    pub allowed_drop: Checked<f64>,
    /// Overcurrent device ahead of the drive.
    pub device: Checked<ElectricCurrent>,
    /// Prices.
    pub prices: Result<Prices, InputError>,
    /// Every figure that can't be used, each once, in the order of the page.
    pub errors: Vec<InputError>,
    /// The fields that hold an entry, in the order of [`Field::ALL`].
    typed: [bool; Field::ALL.len()],
}

/// Drive efficiency that the provisional device is worked out with: the lower of the two ways' (voltage-doubling drive
/// with its filter), common practice.
pub const ASSUMED_DRIVE_EFFICIENCY: f64 = 0.94;
/// Displacement factor and current distortion of an active front end, common practice.
pub const ASSUMED_FRONT_END: (f64, f64) = (0.99, 0.10);
/// Nominal single-phase supply.
pub const SUPPLY_VOLTS: f64 = 240.0;

impl Inputs {
    /// Checks every figure of a job.
    #[must_use]
    pub fn of(job: &Job) -> Self {
        let mut errors: Vec<InputError> = Vec::new();
        let mut figure = |field: Field| {
            let checked = figure(job, field);
            if let Err(error) = &checked {
                errors.push(error.clone());
            }
            checked
        };
        let pump_setting = figure(Field::PumpSetting);
        let minimum_submergence = figure(Field::MinimumSubmergence);
        let surface_run = figure(Field::SurfaceRun);
        let motor_power = figure(Field::MotorPower).map(|known| known.map(horsepower));
        let nameplates = [Field::NameplateAmps230, Field::NameplateAmps460].map(|field| optional(job, field));
        let [typed_pf, typed_efficiency] = [Field::MotorPowerFactor, Field::MotorEfficiency].map(&mut figure);
        let ambient = figure(Field::Ambient);
        let allowed_drop = figure(Field::AllowedDrop);
        let typed_device = figure(Field::DeviceAmps);
        let prices = [Field::CableFixed, Field::CableMetal, Field::ExtraEquipment].map(&mut figure);
        let levels = [Field::StaticLevel, Field::Drawdown, Field::WellDepth].map(|field| optional(job, field));
        errors.extend(nameplates.iter().chain(&levels).filter_map(|figure| figure.as_ref().err().cloned()));
        errors.retain(|error| !follows(error));
        errors.sort_by_key(InputError::field);

        let (power_factor, efficiency) = follow_motor(job, &motor_power, typed_pf, typed_efficiency);
        let device = follow_device(&motor_power, &efficiency, typed_device);
        if let Err(error) = &device
            && error.field() == Field::DeviceAmps
            && errors.iter().all(|error| error.field() != Field::DeviceAmps)
        {
            errors.push(error.clone());
            errors.sort_by_key(InputError::field);
        }
        Self {
            pump_setting: pump_setting.map(|known| known.map(feet)),
            levels: in_the_well(levels, minimum_submergence),
            surface_run: surface_run.map(|known| known.map(feet)),
            motor_current: Way::ALL.map(|way| motor_current(way, &motor_power, &nameplates)),
            motor_power,
            power_factor,
            efficiency,
            ambient: ambient.map(|known| known.map(Celsius)),
            allowed_drop: allowed_drop.map(|known| known.map(|percent| percent / 100.0)),
            device,
            prices: priced(prices),
            errors,
            typed: Field::ALL.map(|field| job.get(field).is_some()),
        }
    }

    /// Where the figure of a field comes from: entered, or where what stands in for it comes from. A nameplate current
    /// is worked out from the one at the other voltage, else read from the table of motors; the rest is assumed.
    #[must_use]
    pub fn origin(&self, field: Field) -> Origin {
        let way = Way::ALL.into_iter().find(|way| way.nameplate_field() == field);
        match way.map(|way| &self.motor_current[way as usize]) {
            _ if self.typed[field as usize] => Origin::Typed,
            Some(Ok(current)) => current.nameplate.map_or(Origin::Table, |known| known.origin),
            Some(Err(_)) | None => Origin::Assumed,
        }
    }

    /// The figure that stands in an empty field, as the user would enter it, where there is one.
    #[must_use]
    pub fn stand_in(&self, field: Field) -> Option<Entry> {
        match (field.spec().default, field) {
            (Stand::Assumed(entry), _) => Some(entry),
            (_, Field::MotorPowerFactor) => self.power_factor.as_ref().ok().map(|k| Entry::new(k.value, Unit::One)),
            (_, Field::MotorEfficiency) => self.efficiency.as_ref().ok().map(|k| Entry::new(k.value, Unit::One)),
            (_, Field::DeviceAmps) => self.device.as_ref().ok().map(|k| Entry::new(in_amperes(k.value), Unit::Ampere)),
            (_, Field::NameplateAmps230) => self.nameplate_stand_in(0),
            (_, Field::NameplateAmps460) => self.nameplate_stand_in(1),
            _ => None,
        }
    }

    fn nameplate_stand_in(&self, way: usize) -> Option<Entry> {
        let current = self.motor_current[way].as_ref().ok()?;
        let amps = current.nameplate.map_or(current.table, |known| known.value);
        Some(Entry::new(in_amperes(amps), Unit::Ampere))
    }
}

impl<T> Known<T> {
    fn map<U>(self, f: impl FnOnce(T) -> U) -> Known<U> {
        Known { value: f(self.value), origin: self.origin }
    }
}

/// True for the placeholder error of an empty field whose value follows from others.
fn follows(error: &InputError) -> bool {
    matches!(error, InputError::Missing { field, .. } if field.spec().default == Stand::Follows)
}

fn figure(job: &Job, field: Field) -> Checked<f64> {
    let spec = field.spec();
    match (job.get(field), spec.default) {
        (Some(entry), _) => field.check(entry).map(|value| Known { value, origin: Origin::Typed }),
        (None, Stand::Assumed(entry)) => field.check(entry).map(|value| Known { value, origin: Origin::Assumed }),
        (None, _) => Err(InputError::Missing { field, accepted: spec.accepted }),
    }
}

fn optional(job: &Job, field: Field) -> Result<Option<f64>, InputError> {
    job.get(field).map(|entry| field.check(entry)).transpose()
}

fn in_the_well(levels: [Result<Option<f64>, InputError>; 3], minimum_submergence: Checked<f64>) -> Levels {
    let [static_level, drawdown, well_depth] = levels.map(|level| level.map(|level| level.map(feet)));
    let minimum_submergence = minimum_submergence.map(|known| known.map(feet));
    Levels { static_level, drawdown, well_depth, minimum_submergence }
}

fn motor_current(
    way: Way,
    power: &Checked<Power>,
    nameplates: &[Result<Option<f64>, InputError>; 2],
) -> Result<MotorCurrent, InputError> {
    let power = power.clone()?.value;
    let accepted = Field::MotorPower.spec().accepted;
    let table = table_current(power, way.rated()).map_err(|outside| InputError::OutOfRange {
        field: Field::MotorPower,
        given: Entry::new(outside.given, Unit::Horsepower),
        accepted,
    })?;
    let at = |way: Way| nameplates[way as usize].clone().map(|typed| typed.map(amperes));
    let nameplate = match (at(way)?, at(way.other())?) {
        (Some(typed), _) => Some(Known { value: typed, origin: Origin::Typed }),
        (None, Some(other)) => {
            let value = reconnected_current(other, way.other().rated_volts(), way.rated_volts());
            Some(Known { value, origin: Origin::WorkedOut })
        }
        (None, None) => None,
    };
    Ok(MotorCurrent { sizing: sizing_current(table, nameplate.map(|known| known.value)), table, nameplate })
}

/// Efficiency and power factor follow from the motor's kind and power until they are entered.
fn follow_motor(
    job: &Job,
    power: &Checked<Power>,
    power_factor: Checked<f64>,
    efficiency: Checked<f64>,
) -> (Checked<f64>, Checked<f64>) {
    let assumed = power.clone().map(|power| assumed_efficiency_and_power_factor(job.choices.motor_kind(), power.value));
    let stand_in = |typed: Checked<f64>, pick: fn((f64, f64)) -> f64| match typed {
        Err(error) if follows(&error) => {
            assumed.clone().map(|pair| Known { value: pick(pair), origin: Origin::Assumed })
        }
        typed => typed,
    };
    (stand_in(power_factor, |pair| pair.1), stand_in(efficiency, |pair| pair.0))
}

/// The device follows from the drive's input current until it is entered: the drive's marking decides. One larger than
/// the field accepts is an error of that field.
fn follow_device(power: &Checked<Power>, efficiency: &Checked<f64>, typed: Checked<f64>) -> Checked<ElectricCurrent> {
    match typed {
        Err(error) if follows(&error) => {
            let (power, efficiency) = (power.clone()?.value, efficiency.clone()?.value);
            let (displacement, distortion) = ASSUMED_FRONT_END;
            let device = true_power_factor(displacement, distortion)
                .and_then(|pf| {
                    drive_input_current(power, efficiency, ASSUMED_DRIVE_EFFICIENCY, volts(SUPPLY_VOLTS), pf)
                })
                .and_then(provisional_device)
                .map_err(|_| error)?;
            let amps = Field::DeviceAmps.check(Entry::new(in_amperes(device), Unit::Ampere))?;
            Ok(Known { value: amperes(amps), origin: Origin::Assumed })
        }
        typed => typed.map(|known| known.map(amperes)),
    }
}

fn priced(figures: [Checked<f64>; 3]) -> Result<Prices, InputError> {
    let [fixed, metal, extra] = figures;
    Ok(Prices {
        cable_fixed: MoneyPerLength(fixed?.value / METER_PER_FOOT),
        cable_metal: MoneyPerMass(metal?.value / KILOGRAM_PER_POUND),
        extra_equipment: Money(extra?.value),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A motor of 7.5 hp with what its nameplate says at 230 V and 460 V.
    fn inputs(nameplate: [Option<f64>; 2]) -> Inputs {
        let mut job = Job::default();
        job.set(Field::MotorPower, Some(Entry::new(7.5, Unit::Horsepower)));
        for (way, amperes) in Way::ALL.into_iter().zip(nameplate) {
            job.set(way.nameplate_field(), amperes.map(|amperes| Entry::new(amperes, Unit::Ampere)));
        }
        Inputs::of(&job)
    }

    #[test]
    fn a_figure_says_where_it_comes_from() {
        let origins = |inputs: &Inputs| Way::ALL.map(|way| inputs.origin(way.nameplate_field()));
        let table = inputs([None, None]);
        assert_eq!(origins(&table), [Origin::Table; 2]);
        // Table 430.250: 22 A and 11 A.
        assert_eq!(table.stand_in(Field::NameplateAmps460), Some(Entry::new(11.0, Unit::Ampere)));
        assert_eq!(origins(&inputs([Some(25.0), None])), [Origin::Typed, Origin::WorkedOut]);
        assert_eq!(origins(&inputs([None, Some(12.5)])), [Origin::WorkedOut, Origin::Typed]);
        assert_eq!(origins(&inputs([Some(25.0), Some(12.5)])), [Origin::Typed; 2]);
        assert_eq!((table.origin(Field::MotorPower), table.origin(Field::Ambient)), (Origin::Typed, Origin::Assumed));
        assert_eq!(table.origin(Field::MotorPowerFactor), Origin::Assumed);
    }
}
