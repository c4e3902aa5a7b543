//! A job's figures as the lead and its money need them: typed quantities, each with where it comes from.

use super::{Checked, Entered, Field, Job, Known, Maybe, Origin, Stand, Way};
use crate::cost::book::PriceBook;
use crate::cost::book_table::{self, BookError};
use crate::cost::price::Prices;
use crate::error::InputError;
use crate::numeric::order::by_number;
use crate::power::supply::{drive_input_current, provisional_device, true_power_factor};
use crate::pump::motor::{
    assumed_efficiency_and_power_factor, next_standard_power, reconnected_current, sizing_current, table_current,
};
use crate::quantity::{
    Celsius, ElectricCurrent, Entry, KILOGRAM_PER_POUND, Length, METER_PER_FOOT, Money, MoneyPerLength, MoneyPerMass,
    Power, Unit, amperes, feet, horsepower, in_amperes, in_feet, in_horsepower, volts,
};
use crate::standards::conductor::Metal;
use std::collections::BTreeMap;

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

/// All figures of a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    /// Depth of the pump below ground.
    pub pump_setting: Checked<Length>,
    /// Lead on the surface.
    pub surface_run: Checked<Length>,
    /// Rated power of the motor: entered, or the next standard rating for the shaft's power.
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
    /// The price book, or why it can't be read: then the built-in one stands in.
    pub book: Result<PriceBook, BookError>,
    /// Rated input of the way that the job goes by, where its device follows from it.
    pub rated_input: Option<ElectricCurrent>,
    /// Every figure of the job.
    pub entered: Entered,
    /// Every figure that can't be used, each once, in the order of the pages.
    pub errors: Vec<InputError>,
    /// What stands in fields whose figure follows from others.
    follows: BTreeMap<Field, Entry>,
}

/// Drive efficiency that the provisional device is worked out with: the lower of the two ways' (voltage-doubling drive
/// with its filter), common practice.
pub const ASSUMED_DRIVE_EFFICIENCY: f64 = 0.94;
/// Displacement factor and current distortion of an active front end, common practice.
pub const ASSUMED_FRONT_END: (f64, f64) = (0.99, 0.10);
/// Nominal single-phase supply.
pub const SUPPLY_VOLTS: f64 = 240.0;

impl Inputs {
    /// The figures of a job. Without a motor's power the power at the pump's shaft chooses the motor.
    #[must_use]
    pub fn of(job: &Job, entered: Entered, shaft: Option<Power>) -> Self {
        let percent = |percent: f64| percent / 100.0;
        let motor_power = rated_power(&entered, shaft);
        let nameplates = Way::ALL.map(|way| entered.take(way.nameplate_field(), amperes));
        let assumed =
            motor_power.clone().map(|power| assumed_efficiency_and_power_factor(job.choices.motor_kind(), power.value));
        let or_assumed = |field, pick: fn((f64, f64)) -> f64| match entered.take(field, |share| share) {
            Ok(Some(known)) => Ok(known),
            Ok(None) => assumed.clone().map(|pair| Known::assumed(pick(pair))),
            Err(error) => Err(error),
        };
        let efficiency = or_assumed(Field::MotorEfficiency, |pair| pair.0);
        let device = device(&entered, &motor_power, &efficiency);
        let book = book_table::read(&job.book).map(|read| read.unwrap_or_else(PriceBook::invented));
        let mut inputs = Self {
            pump_setting: entered.need(Field::PumpSetting, feet),
            surface_run: entered.need(Field::SurfaceRun, feet),
            motor_current: Way::ALL.map(|way| motor_current(way, &motor_power, &nameplates)),
            power_factor: or_assumed(Field::MotorPowerFactor, |pair| pair.1),
            efficiency,
            ambient: entered.need(Field::Ambient, Celsius),
            allowed_drop: entered.need(Field::AllowedDrop, percent),
            prices: priced(&entered, &book, job.choices.metal()),
            book,
            rated_input: None,
            errors: entered.errors().cloned().collect(),
            follows: BTreeMap::new(),
            motor_power,
            device,
            entered,
        };
        inputs.own_errors();
        inputs.own_follows();
        inputs
    }

    /// Errors of figures that follow from others: no power of a motor, or a device larger than its field accepts.
    fn own_errors(&mut self) {
        let of_power = self.motor_power.as_ref().err().filter(|error| error.field() == Field::MotorPower);
        let of_prices = self.prices.as_ref().err();
        let of_device = self.device.as_ref().err().filter(|error| error.field() == Field::DeviceAmps);
        for error in [of_power, of_device, of_prices].into_iter().flatten() {
            if self.errors.iter().all(|other| other.field() != error.field()) {
                self.errors.push(error.clone());
            }
        }
        by_number(&mut self.errors, |error| f64::from(error.field() as u16));
    }

    fn own_follows(&mut self) {
        let share = |figure: &Checked<f64>| figure.as_ref().ok().map(|known| Entry::new(known.value, Unit::One));
        let ampere = |current: ElectricCurrent| Entry::new(in_amperes(current), Unit::Ampere);
        let device = self.device.as_ref().ok().map(|known| ampere(known.value));
        let power = self.motor_power.as_ref().ok();
        let power = power.map(|known| Entry::new(in_horsepower(known.value), Unit::Horsepower));
        let mut found = vec![
            (Field::MotorPower, power),
            (Field::MotorPowerFactor, share(&self.power_factor)),
            (Field::MotorEfficiency, share(&self.efficiency)),
            (Field::DeviceAmps, device),
        ];
        for way in Way::ALL {
            let current = self.motor_current[way as usize].as_ref().ok();
            let amps = current.map(|current| current.nameplate.map_or(current.table, |known| known.value));
            found.push((way.nameplate_field(), amps.map(ampere)));
        }
        for (field, entry) in found.into_iter().chain(self.of_book()) {
            self.follow(field, entry);
        }
    }

    /// What the price book tells of prices that may be entered.
    fn of_book(&self) -> Vec<(Field, Option<Entry>)> {
        let book = self.book.clone().unwrap_or_else(|_| PriceBook::invented());
        let metal = self.prices.as_ref().ok().and_then(|prices| book.metal_price(prices.metal));
        let line = book.line_extension();
        let per_foot = |price: MoneyPerLength| Entry::new(price.per_foot(), Unit::DollarPerFoot);
        vec![
            (Field::CableFixed, book.fixed_part().map(per_foot)),
            (Field::CableMetal, metal.map(|price| Entry::new(price.per_pound(), Unit::DollarPerPound))),
            (Field::LineFixed, line.map(|line| Entry::new(line.fixed.0, Unit::Dollar))),
            (Field::LinePrice, line.map(|line| per_foot(line.per_length))),
            (Field::LineFree, line.map(|line| Entry::new(in_feet(line.free), Unit::Foot))),
        ]
    }

    /// Takes the device that the way of the job asks for, in place of the one that stood in for it; one that its field
    /// does not accept is left.
    pub(crate) fn take_device(&mut self, device: ElectricCurrent, rated_input: ElectricCurrent) {
        let entry = Entry::new(in_amperes(device), Unit::Ampere);
        if Field::DeviceAmps.check(entry).is_ok() {
            self.device = Ok(Known::assumed(device));
            self.rated_input = Some(rated_input);
            self.follow(Field::DeviceAmps, Some(entry));
            self.errors.retain(|error| error.field() != Field::DeviceAmps);
        }
    }

    /// Notes what stands in a field.
    pub(crate) fn follow(&mut self, field: Field, entry: Option<Entry>) {
        if let Some(entry) = entry {
            self.follows.insert(field, entry);
        }
    }

    /// Where the figure of a field comes from: entered, or where what stands in for it comes from. A nameplate current
    /// is worked out from the one at the other voltage, else read from the table of motors; the motor's power is worked
    /// out from the pump's; the rest is assumed.
    #[must_use]
    pub fn origin(&self, field: Field) -> Origin {
        let way = Way::ALL.into_iter().find(|way| way.nameplate_field() == field);
        match way.map(|way| &self.motor_current[way as usize]) {
            _ if self.entered.is_typed(field) => Origin::Typed,
            Some(Ok(current)) => current.nameplate.map_or(Origin::Table, |known| known.origin),
            None if field == Field::MotorPower => Origin::WorkedOut,
            Some(Err(_)) | None => Origin::Assumed,
        }
    }

    /// The figure that stands in an empty field, as the user would enter it, where there is one.
    #[must_use]
    pub fn stand_in(&self, field: Field) -> Option<Entry> {
        match field.spec().default {
            Stand::Assumed(entry) => Some(entry),
            _ => self.follows.get(&field).copied(),
        }
    }
}

/// The motor's power: entered, or the next standard rating for the power at the shaft.
fn rated_power(entered: &Entered, shaft: Option<Power>) -> Checked<Power> {
    let missing = match entered.need(Field::MotorPower, horsepower) {
        Err(missing @ InputError::Missing { .. }) => missing,
        typed => return typed,
    };
    let Some(shaft) = shaft else { return Err(missing) };
    next_standard_power(shaft).map(Known::worked_out).map_err(|_| InputError::OutOfRange {
        field: Field::MotorPower,
        given: Entry::new(in_horsepower(shaft), Unit::Horsepower),
        accepted: Field::MotorPower.spec().accepted,
    })
}

fn motor_current(
    way: Way,
    power: &Checked<Power>,
    nameplates: &[Maybe<ElectricCurrent>; 2],
) -> Result<MotorCurrent, InputError> {
    let power = power.clone()?.value;
    let accepted = Field::MotorPower.spec().accepted;
    let table = table_current(power, way.rated()).map_err(|outside| InputError::OutOfRange {
        field: Field::MotorPower,
        given: Entry::new(outside.given, Unit::Horsepower),
        accepted,
    })?;
    let at = |way: Way| nameplates[way as usize].clone();
    let reconnected = |other| reconnected_current(other, way.other().rated_volts(), way.rated_volts());
    let nameplate = match (at(way)?, at(way.other())?) {
        (Some(typed), _) => Some(typed),
        (None, Some(other)) => Some(Known::worked_out(reconnected(other.value))),
        (None, None) => None,
    };
    Ok(MotorCurrent { sizing: sizing_current(table, nameplate.map(|known| known.value)), table, nameplate })
}

/// The device ahead of the drive: entered, or the next standard rating for the drive's input until its marking is known.
/// One larger than the field accepts is an error of that field.
fn device(entered: &Entered, power: &Checked<Power>, efficiency: &Checked<f64>) -> Checked<ElectricCurrent> {
    match entered.need(Field::DeviceAmps, amperes) {
        Err(InputError::Missing { .. }) => {
            let device = provisional(power.clone()?.value, efficiency.clone()?.value);
            device.map(Known::assumed)
        }
        typed => typed,
    }
}

/// The device until the drive's marking is known.
pub(crate) fn provisional(power: Power, efficiency: f64) -> Result<ElectricCurrent, InputError> {
    let (displacement, distortion) = ASSUMED_FRONT_END;
    let missing = InputError::Missing { field: Field::DeviceAmps, accepted: Field::DeviceAmps.spec().accepted };
    let device = true_power_factor(displacement, distortion)
        .and_then(|pf| drive_input_current(power, efficiency, ASSUMED_DRIVE_EFFICIENCY, volts(SUPPLY_VOLTS), pf))
        .and_then(provisional_device)
        .map_err(|_| missing)?;
    Field::DeviceAmps.check(Entry::new(in_amperes(device), Unit::Ampere)).map(amperes)
}

/// What was entered, else what the book tells; a price that neither tells is missing.
fn priced(entered: &Entered, book: &Result<PriceBook, BookError>, metal: Metal) -> Result<Prices, InputError> {
    let book = book.clone().unwrap_or_else(|_| PriceBook::invented());
    let per_length = |price| MoneyPerLength(price / METER_PER_FOOT);
    let per_mass = |price| MoneyPerMass(price / KILOGRAM_PER_POUND);
    let missing = |field: Field| InputError::Missing { field, accepted: field.spec().accepted };
    let fixed = entered.take(Field::CableFixed, per_length)?.map(|known| known.value);
    let of_metal = entered.take(Field::CableMetal, per_mass)?.map(|known| known.value);
    Ok(Prices {
        cable_fixed: fixed.or_else(|| book.fixed_part()).ok_or_else(|| missing(Field::CableFixed))?,
        cable_metal: of_metal.or_else(|| book.metal_price(metal)).ok_or_else(|| missing(Field::CableMetal))?,
        extra_equipment: entered.take(Field::ExtraEquipment, Money)?.map(|known| known.value),
        metal,
        book,
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
        Inputs::of(&job, Entered::of(&job), None)
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
