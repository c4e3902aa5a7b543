//! What a pump does in a year: hours at each flow.

use crate::error::OutsideRange;
use crate::quantity::{Power, Time, Volume, VolumeRate, hours, in_cubic_meters_per_hour, in_hours, in_kilowatts};

/// Most rows of a duty.
pub const MOST_ROWS: usize = 24;
/// Hours in the longest year.
pub const HOURS_IN_A_YEAR: f64 = 8784.0;
/// Largest flow, m³/h: 100 m³/s.
const MOST_FLOW: f64 = 360_000.0;

/// Hours at one flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DutyRow {
    /// Flow.
    pub flow: VolumeRate,
    /// Time a year.
    pub time: Time,
}

/// A row that can't be used, counted from 1, or all of them together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DutyError {
    /// The row; the last one where it is about their number, the one that passes the year where about their sum.
    pub row: usize,
    /// What is wrong.
    pub error: OutsideRange,
}

/// A year's duty: rows that were checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Duty {
    rows: Vec<DutyRow>,
}

impl Duty {
    /// A duty of these rows.
    ///
    /// # Units
    /// Flows, and times a year.
    /// # Range
    /// 1 to 24 rows; flow above 0 (10⁻⁶ m³/h) to 360,000 m³/h; hours of each row 0 and more, of all together to 8,784.
    /// # Errors
    /// [`DutyError`] names the row and `rows` (how many), `flow` (m³/h), `hours` or `total_hours`.
    /// # Source
    /// A year has 8,784 hours at most.
    /// # Example
    /// ```
    /// # use wellwright_core::{cost::duty::*, quantity::*};
    /// let row = |flow, time| DutyRow { flow: gpm(flow), time: hours(time) };
    /// let duty = Duty::new(vec![row(600.0, 1500.0), row(400.0, 500.0)])?;
    /// assert!((in_hours(duty.time()) - 2000.0).abs() < 1e-9);
    /// // 600 · 60 · 1500 + 400 · 60 · 500 gallons.
    /// assert!((in_gallons(duty.volume()) / 66e6 - 1.0).abs() < 1e-12);
    /// # Ok::<(), DutyError>(())
    /// ```
    pub fn new(rows: Vec<DutyRow>) -> Result<Self, DutyError> {
        let at = |row: usize| move |error| DutyError { row, error };
        let count = rows.len();
        OutsideRange::check("rows", count as f64, 1.0, MOST_ROWS as f64).map_err(at(count.max(1)))?;
        let mut total = 0.0;
        for (row, DutyRow { flow, time }) in (1..).zip(&rows) {
            OutsideRange::check("flow", in_cubic_meters_per_hour(*flow), 1e-6, MOST_FLOW).map_err(at(row))?;
            total += OutsideRange::check("hours", in_hours(*time), 0.0, HOURS_IN_A_YEAR).map_err(at(row))?;
            OutsideRange::check("total_hours", total, 0.0, HOURS_IN_A_YEAR).map_err(at(row))?;
        }
        Ok(Self { rows })
    }

    /// The rows.
    ///
    /// # Units
    /// Flows, and times a year.
    /// # Range
    /// 1 to 24 rows.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn rows(&self) -> &[DutyRow] {
        &self.rows
    }

    /// Time that the pump runs in a year: Σ h.
    ///
    /// # Units
    /// A time a year.
    /// # Range
    /// 0 to 8,784 hours.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn time(&self) -> Time {
        self.rows.iter().map(|row| row.time).sum()
    }

    /// Water that the pump lifts in a year: Σ Q h.
    ///
    /// # Units
    /// A volume a year.
    /// # Range
    /// As the duty's flows and hours.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn volume(&self) -> Volume {
        self.rows.iter().map(|row| row.flow * row.time).sum()
    }

    /// Mean flow of the hours in which the pump runs: Σ Q h/Σ h; `None` where it does not run.
    ///
    /// # Units
    /// A flow.
    /// # Range
    /// Between the least flow and the largest.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn mean_flow(&self) -> Option<VolumeRate> {
        let time = self.time();
        (time > hours(0.0)).then(|| self.volume() / time)
    }

    /// Each row's share of the hours; `None` where the pump does not run.
    ///
    /// # Units
    /// Shares, 1 together.
    /// # Range
    /// 0 to 1.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn shares(&self) -> Option<Vec<f64>> {
        let time = self.time();
        (time > hours(0.0)).then(|| self.rows.iter().map(|row| (row.time / time).value).collect())
    }

    /// Energy of a year: Σ P h.
    ///
    /// # Units
    /// `powers` the input power of each row, in their order; the result kilowatt-hours.
    /// # Range
    /// As many powers as rows; each 0 to 10 MW.
    /// # Errors
    /// [`DutyError`] names the row and `power` (kW), or `powers` (how many).
    /// # Source
    /// Definition.
    pub fn energy(&self, powers: &[Power]) -> Result<f64, DutyError> {
        let (given, wanted) = (powers.len() as f64, self.rows.len() as f64);
        OutsideRange::check("powers", given, wanted, wanted)
            .map_err(|error| DutyError { row: self.rows.len(), error })?;
        let mut energy = 0.0;
        for (index, (row, power)) in self.rows.iter().zip(powers).enumerate() {
            let kilowatts = OutsideRange::check("power", in_kilowatts(*power), 0.0, 1e4)
                .map_err(|error| DutyError { row: index + 1, error })?;
            energy += kilowatts * in_hours(row.time);
        }
        Ok(energy)
    }

    /// Mean power of the hours in which the pump runs, as a share of the largest: Σ P h/(P_max Σ h); `None` where it
    /// does not run or takes no power. Rows without hours do not count.
    ///
    /// # Units
    /// `powers` as in [`Duty::energy`]; the result a share.
    /// # Range
    /// Above 0 to 1; the powers as in [`Duty::energy`].
    /// # Errors
    /// As [`Duty::energy`].
    /// # Source
    /// Definition of the load factor, over the hours of use.
    pub fn mean_share(&self, powers: &[Power]) -> Result<Option<f64>, DutyError> {
        let energy = self.energy(powers)?;
        let running = self.rows.iter().zip(powers).filter(|(row, _)| row.time > hours(0.0));
        let largest = running.map(|(_, power)| in_kilowatts(*power)).fold(0.0, f64::max);
        let full = largest * in_hours(self.time());
        Ok((full > 0.0).then(|| energy / full))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{cubic_meters_per_hour, gpm, kilowatts};

    fn row(flow: f64, time: f64) -> DutyRow {
        DutyRow { flow: cubic_meters_per_hour(flow), time: hours(time) }
    }

    fn wrong(rows: &[DutyRow]) -> (usize, &'static str) {
        let error = Duty::new(rows.to_vec()).unwrap_err();
        (error.row, error.error.argument)
    }

    #[test]
    fn a_small_duty_by_hand() {
        let duty = Duty::new(vec![row(100.0, 1000.0), row(60.0, 500.0), row(30.0, 0.0)]).unwrap();
        let powers = [20.0, 8.0, 50.0].map(kilowatts);
        assert!((duty.volume().value - 130_000.0).abs() < 1e-6);
        assert!((in_hours(duty.time()) - 1500.0).abs() < 1e-9);
        assert!((in_cubic_meters_per_hour(duty.mean_flow().unwrap()) - 130.0 / 1.5).abs() < 1e-9);
        assert!((duty.energy(&powers).unwrap() - 24_000.0).abs() < 1e-8);
        assert!((duty.mean_share(&powers).unwrap().unwrap() - 24.0 / 30.0).abs() < 1e-12);
        let shares = duty.shares().unwrap();
        assert!((shares[0] - 2.0 / 3.0).abs() < 1e-12 && shares[2] == 0.0, "{shares:?}");
    }

    #[test]
    fn a_pump_at_rest_has_no_means() {
        let duty = Duty::new(vec![row(100.0, 0.0)]).unwrap();
        assert_eq!((duty.mean_flow(), duty.shares()), (None, None));
        assert_eq!(duty.energy(&[kilowatts(5.0)]), Ok(0.0));
        assert_eq!(duty.mean_share(&[kilowatts(5.0)]), Ok(None));
    }

    #[test]
    fn rows_outside_are_named() {
        assert_eq!(wrong(&[]), (1, "rows"));
        assert_eq!(wrong(&[row(1.0, 1.0); 25]), (25, "rows"));
        assert_eq!(wrong(&[row(1.0, 1.0), row(0.0, 1.0)]), (2, "flow"));
        assert_eq!(wrong(&[row(f64::NAN, 1.0)]), (1, "flow"));
        assert_eq!(wrong(&[row(1.0, -1.0)]), (1, "hours"));
        assert_eq!(wrong(&[row(1.0, f64::INFINITY)]), (1, "hours"));
        assert_eq!(wrong(&[row(1.0, 8000.0), row(1.0, 784.0), row(1.0, 1.0)]), (3, "total_hours"));
        let duty = Duty::new(vec![DutyRow { flow: gpm(25.0), time: hours(8784.0) }]).unwrap();
        assert_eq!(duty.energy(&[]).unwrap_err().error.argument, "powers");
        assert_eq!(duty.energy(&[kilowatts(f64::NAN)]).unwrap_err().error.argument, "power");
        assert_eq!(duty.mean_share(&[kilowatts(-1.0)]).unwrap_err().row, 1);
    }
}
