//! What the utility bills for a year's power: energy, the largest power of each month, and what stands each month.
//!
//! Demand is billed for each month in which the pump runs. Where it is billed for more, because the year's largest
//! power holds through months without use or a least number of months is asked for, `billed_months` says how many.

use crate::error::OutsideRange;
use crate::quantity::{Money, Power, in_kilowatts};

/// Hours in the longest month.
const HOURS_IN_A_MONTH: f64 = 744.0;
/// What rounding may add to a sum of energies.
const ROUNDING: f64 = 1e-9;

/// Prices of a utility.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tariff {
    /// Price of one kilowatt-hour; outside the season where there is one.
    pub energy: Money,
    /// Price of one kilowatt of a month's largest power, for each month that is billed; outside the season where there
    /// is one.
    pub demand: Money,
    /// Least months of a year for which demand is billed, whether or not the pump runs; outside the season where there
    /// is one. 0 bills months of use alone; all of them bill the year's largest power throughout.
    pub billed_months: u8,
    /// What stands for each month of the year.
    pub standing: Money,
    /// Months with prices of their own.
    pub season: Option<Season>,
}

/// Months with prices of their own.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Season {
    /// How many.
    pub months: u8,
    /// Price of one kilowatt-hour in them.
    pub energy: Money,
    /// Price of one kilowatt in them, for each that is billed.
    pub demand: Money,
    /// Least of them for which demand is billed.
    pub billed_months: u8,
}

impl Tariff {
    /// A level price of energy and nothing else.
    ///
    /// # Units
    /// `energy` money for a kilowatt-hour.
    /// # Range
    /// Any price; [`bill`] checks it.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn level(energy: Money) -> Self {
        Self { energy, demand: Money(0.0), billed_months: 0, standing: Money(0.0), season: None }
    }
}

/// What a pump uses in a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Use {
    /// Energy, kWh.
    pub energy: f64,
    /// Largest power, which each month of use reaches.
    pub largest: Power,
    /// Months in which the pump runs.
    pub months: u8,
    /// How many of them lie in the season. Read where the tariff has one.
    pub months_in_season: u8,
    /// Share of the energy that falls in the season. Read where the tariff has one.
    pub share_in_season: f64,
}

/// A year's bill.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bill {
    /// For energy.
    pub energy: Money,
    /// For the months' largest powers.
    pub demand: Money,
    /// What stands.
    pub standing: Money,
    /// All together.
    pub total: Money,
}

/// A part of the year at one price: months of use, least months billed, energy.
struct Part {
    price: Money,
    demand: Money,
    months: u8,
    billed: u8,
    energy: f64,
}

/// A year's bill: Σ c_E E + c_P P max(n_u, n_l) over the season and the rest, + 12 c_b, with n_u months of use and n_l
/// the least that are billed.
///
/// # Units
/// As [`Tariff`] and [`Use`] say; the result money a year.
/// # Range
/// Price of a kilowatt-hour 0 to 1,000, of a kilowatt 0 to 10⁵, standing 0 to 10⁶ a month. Months of the season 0 to
/// 12, months billed and of use to those of their part. Largest power 0 to 10 MW; energy 0 to what it comes to in the
/// months of use, of 744 hours each; share in the season 0 to 1 and such that both parts have the hours for their
/// energy.
/// # Errors
/// [`OutsideRange`] names `energy_price`, `demand_price`, `billed_months`, `standing`, the same with `season_` before
/// them, `season_months`, `largest` (kW), `months`, `months_in_season`, `energy` (kWh) or `share_in_season`.
/// # Source
/// The form of rural tariffs for pumps, [practice]; no formula.
/// # Example
/// ```
/// # use wellwright_core::{cost::tariff::*, quantity::*};
/// // Invented prices.
/// let tariff = Tariff { demand: Money(9.0), standing: Money(25.0), ..Tariff::level(Money(0.10)) };
/// let pump = Use { energy: 9_000.0, largest: kilowatts(8.0), months: 5, months_in_season: 0, share_in_season: 0.0 };
/// assert_eq!(bill(&tariff, &pump)?.total, Money(900.0 + 5.0 * 8.0 * 9.0 + 12.0 * 25.0));
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn bill(tariff: &Tariff, use_: &Use) -> Result<Bill, OutsideRange> {
    let kilowatts = OutsideRange::check("largest", in_kilowatts(use_.largest), 0.0, 1e4)?;
    let standing = OutsideRange::check("standing", tariff.standing.0, 0.0, 1e6)? * 12.0;
    let (mut energy, mut demand) = (0.0, 0.0);
    for part in parts(tariff, use_, kilowatts)?.iter().flatten() {
        energy += part.price.0 * part.energy;
        demand += part.demand.0 * kilowatts * f64::from(part.months.max(part.billed));
    }
    let total = energy + demand + standing;
    Ok(Bill { energy: Money(energy), demand: Money(demand), standing: Money(standing), total: Money(total) })
}

/// The rest of the year and, where there is one, the season, both checked.
fn parts(tariff: &Tariff, use_: &Use, kilowatts: f64) -> Result<[Option<Part>; 2], OutsideRange> {
    let season_months = tariff.season.map_or(0, |season| season.months);
    months("season_months", season_months, 12)?;
    OutsideRange::check("energy_price", tariff.energy.0, 0.0, 1e3)?;
    OutsideRange::check("demand_price", tariff.demand.0, 0.0, 1e5)?;
    months("billed_months", tariff.billed_months, 12 - season_months)?;
    months("months", use_.months, 12)?;
    let most = |months: u8| kilowatts * HOURS_IN_A_MONTH * f64::from(months) * (1.0 + ROUNDING);
    let energy = OutsideRange::check("energy", use_.energy, 0.0, most(use_.months))?;
    let rest =
        Part { price: tariff.energy, demand: tariff.demand, months: use_.months, billed: tariff.billed_months, energy };
    let Some(season) = tariff.season else { return Ok([Some(rest), None]) };
    OutsideRange::check("season_energy_price", season.energy.0, 0.0, 1e3)?;
    OutsideRange::check("season_demand_price", season.demand.0, 0.0, 1e5)?;
    months("season_billed_months", season.billed_months, season.months)?;
    // Months of use fit into both parts.
    let least = use_.months.saturating_sub(12 - season.months);
    let inside = f64::from(use_.months_in_season);
    OutsideRange::check("months_in_season", inside, f64::from(least), f64::from(season.months.min(use_.months)))?;
    let outside = use_.months - use_.months_in_season;
    let (low, high) = if energy > 0.0 {
        ((1.0 - most(outside) / energy).max(0.0), (most(use_.months_in_season) / energy).min(1.0))
    } else {
        (0.0, 1.0)
    };
    let share = OutsideRange::check("share_in_season", use_.share_in_season, low, high)?;
    let within = Part {
        price: season.energy,
        demand: season.demand,
        months: use_.months_in_season,
        billed: season.billed_months,
        energy: energy * share,
    };
    Ok([Some(Part { months: outside, energy: energy * (1.0 - share), ..rest }), Some(within)])
}

fn months(argument: &'static str, given: u8, most: u8) -> Result<(), OutsideRange> {
    OutsideRange::check(argument, f64::from(given), 0.0, f64::from(most)).map(|_| ())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::kilowatts;

    /// Invented prices: summer of five months, in which demand is billed for three at least.
    fn seasonal() -> Tariff {
        let season = Season { months: 5, energy: Money(0.08), demand: Money(12.0), billed_months: 3 };
        Tariff {
            energy: Money(0.06),
            demand: Money(4.0),
            billed_months: 0,
            standing: Money(30.0),
            season: Some(season),
        }
    }

    fn pump() -> Use {
        Use { energy: 20_000.0, largest: kilowatts(10.0), months: 6, months_in_season: 4, share_in_season: 0.75 }
    }

    fn wrong(tariff: Tariff, use_: Use) -> &'static str {
        bill(&tariff, &use_).unwrap_err().argument
    }

    #[test]
    fn each_part_has_its_prices() {
        let found = bill(&seasonal(), &pump()).unwrap();
        assert!((found.energy.0 - (15_000.0 * 0.08 + 5_000.0 * 0.06)).abs() < 1e-9);
        assert!((found.demand.0 - 10.0 * (4.0 * 12.0 + 2.0 * 4.0)).abs() < 1e-9);
        assert_eq!(found.standing, Money(360.0));
        assert_eq!(found.total, found.energy + found.demand + found.standing);
        // Least months are billed without use.
        let idle = Use { energy: 0.0, months: 0, months_in_season: 0, share_in_season: 0.0, ..pump() };
        assert_eq!(bill(&seasonal(), &idle).unwrap().demand, Money(10.0 * 3.0 * 12.0));
        let throughout = Tariff { demand: Money(2.0), billed_months: 12, ..Tariff::level(Money(0.1)) };
        assert_eq!(bill(&throughout, &pump()).unwrap().demand, Money(240.0));
    }

    #[test]
    fn a_level_price_is_the_price_of_the_energy() {
        let found = bill(&Tariff::level(Money(0.12)), &pump()).unwrap();
        assert_eq!((found.total, found.energy), (Money(0.12 * 20_000.0), found.total));
    }

    #[test]
    fn arguments_outside_are_named() {
        let season = seasonal().season.unwrap();
        let with = |season| Tariff { season: Some(season), ..seasonal() };
        assert_eq!(wrong(Tariff { energy: Money(-0.01), ..seasonal() }, pump()), "energy_price");
        assert_eq!(wrong(Tariff { demand: Money(f64::NAN), ..seasonal() }, pump()), "demand_price");
        assert_eq!(wrong(Tariff { standing: Money(-1.0), ..seasonal() }, pump()), "standing");
        assert_eq!(wrong(Tariff { billed_months: 8, ..seasonal() }, pump()), "billed_months");
        assert_eq!(wrong(with(Season { months: 13, ..season }), pump()), "season_months");
        assert_eq!(wrong(with(Season { energy: Money(1e4), ..season }), pump()), "season_energy_price");
        assert_eq!(wrong(with(Season { demand: Money(-1.0), ..season }), pump()), "season_demand_price");
        assert_eq!(wrong(with(Season { billed_months: 6, ..season }), pump()), "season_billed_months");
        assert_eq!(wrong(seasonal(), Use { largest: kilowatts(-1.0), ..pump() }), "largest");
        assert_eq!(wrong(seasonal(), Use { months: 13, ..pump() }), "months");
        assert_eq!(wrong(seasonal(), Use { energy: f64::NAN, ..pump() }), "energy");
        assert_eq!(wrong(seasonal(), Use { energy: 44_641.0, ..pump() }), "energy");
        assert_eq!(wrong(seasonal(), Use { months_in_season: 6, ..pump() }), "months_in_season");
        assert_eq!(wrong(seasonal(), Use { months: 11, months_in_season: 3, ..pump() }), "months_in_season");
        assert_eq!(wrong(seasonal(), Use { share_in_season: 1.1, ..pump() }), "share_in_season");
        // No energy falls where no month of use lies.
        assert_eq!(wrong(seasonal(), Use { months_in_season: 0, ..pump() }), "share_in_season");
        assert_eq!(wrong(seasonal(), Use { months: 4, share_in_season: 0.9, ..pump() }), "share_in_season");
        assert!(bill(&seasonal(), &Use { months: 4, share_in_season: 1.0, ..pump() }).is_ok());
    }

    /// At 10 kW a month holds 7,440 kWh: two outside of the season 14,880, four in it 29,760.
    #[test]
    fn energy_falls_where_it_has_room() {
        let share =
            |energy: f64, share: f64| bill(&seasonal(), &Use { energy, share_in_season: share, ..pump() }).is_ok();
        for (energy, least, most) in
            [(20_000.0, 0.256, 1.0), (40_000.0, 0.628, 0.744), (44_640.0, 2.0 / 3.0, 2.0 / 3.0)]
        {
            assert!(share(energy, least) && share(energy, most), "{energy} kWh");
            assert!(!share(energy, least - 1e-6) && !share(energy, most + 1e-6), "{energy} kWh");
        }
    }
}
