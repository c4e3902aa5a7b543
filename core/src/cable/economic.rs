//! Kelvin's law: the size whose price and lost energy together cost the least over the years.

use super::drop::{Load, Phases, lead_loss};
use super::lead::Conductor;
use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, Length, Money, MoneyPerLength, OhmsPerLength, Power, in_amperes, in_watts, meters, volts,
};

/// Hours in the longest year.
const HOURS_IN_A_YEAR: f64 = 8784.0;

/// A conductor that may be laid, with what the choice needs to know of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Candidate {
    /// Size and sets.
    pub conductor: Conductor,
    /// Resistance of all sets together, in service or at 75 °C.
    pub resistance: OhmsPerLength,
    /// Price of the cable, ground included.
    pub price: MoneyPerLength,
}

/// What the lead does in a year, and what that is worth over its life.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    /// Current that it carries.
    pub current: ElectricCurrent,
    /// Phases.
    pub phases: Phases,
    /// Hours a year.
    pub hours: f64,
    /// Price of one kilowatt-hour.
    pub kilowatt_hour: Money,
    /// Worth today of one unit of money a year over the life, years: an annuity factor. The price of energy stays.
    pub present_worth: f64,
}

/// Energy that a loss comes to in a year: P h / 1000.
///
/// # Units
/// `loss` a power, `hours` a year; the result kilowatt-hours a year.
/// # Range
/// Loss 0 to 10 MW; hours 0 to 8,784.
/// # Errors
/// [`OutsideRange`] names `loss` (W) or `hours`.
/// # Source
/// Definition.
pub fn yearly_energy(loss: Power, hours: f64) -> Result<f64, OutsideRange> {
    let watts = OutsideRange::check("loss", in_watts(loss), 0.0, 1e7)?;
    Ok(watts * OutsideRange::check("hours", hours, 0.0, HOURS_IN_A_YEAR)? / 1000.0)
}

/// What the energy lost in a lead costs in a year.
///
/// # Units
/// `resistance` ohms per length of one conductor, all sets together; `length` one way; the result money a year.
/// # Range
/// Current to 100,000 A; kilowatt-hour 0 to 1,000; a loss to 10 MW; hours 0 to 8,784.
/// # Errors
/// [`OutsideRange`] names `current` (A), `kilowatt_hour`, `loss` (W) or `hours`.
/// # Source
/// Joule's law.
pub fn yearly_cost(duty: Duty, resistance: OhmsPerLength, length: Length) -> Result<Money, OutsideRange> {
    OutsideRange::check("current", in_amperes(duty.current), 0.0, 1e5)?;
    let price = OutsideRange::check("kilowatt_hour", duty.kilowatt_hour.0, 0.0, 1000.0)?;
    // Heat depends on neither the sending voltage nor the power factor.
    let load = Load { sending: volts(1.0), current: duty.current, power_factor: 1.0, phases: duty.phases };
    Ok(Money(yearly_energy(lead_loss(load, resistance, length), duty.hours)? * price))
}

/// What a candidate costs over the years, per length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lifetime {
    /// The candidate.
    pub candidate: Candidate,
    /// Worth today of the energy that it loses.
    pub energy: MoneyPerLength,
    /// Price and energy together.
    pub total: MoneyPerLength,
}

impl Lifetime {
    /// Price and lost energy of a lead.
    ///
    /// # Units
    /// `length` one way; the result money of today.
    /// # Range
    /// Length not below zero.
    /// # Source
    /// Both go in proportion to the length.
    #[must_use]
    pub fn cost(&self, length: Length) -> Money {
        self.total * length
    }
}

/// What a candidate costs over the years: price + w · h · $/kWh · n I² R / 1000, per length.
///
/// # Units
/// Money per length, of today; w the annuity factor in years, n conductors.
/// # Range
/// As [`yearly_cost`]; price 0 to 10⁶ per meter; present worth 0 to 100 years.
/// # Errors
/// [`OutsideRange`] names `price` (per meter), `present_worth`, or as [`yearly_cost`].
/// # Source
/// [kelvin-1881]; [iec-60287-3-2] has the same sum.
pub fn lifetime(candidate: Candidate, duty: Duty) -> Result<Lifetime, OutsideRange> {
    let price = OutsideRange::check("price", candidate.price.0, 0.0, 1e6)?;
    let worth = OutsideRange::check("present_worth", duty.present_worth, 0.0, 100.0)?;
    let energy = yearly_cost(duty, candidate.resistance, meters(1.0))?.0 * worth;
    Ok(Lifetime { candidate, energy: MoneyPerLength(energy), total: MoneyPerLength(price + energy) })
}

/// The smallest conductor that may be laid, and the one that costs least over the years.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Choice {
    /// The smallest.
    pub smallest: Lifetime,
    /// The cheapest over the years; the smallest itself where nothing larger pays.
    pub economic: Lifetime,
}

impl Choice {
    /// What the economic size saves over the years against the smallest.
    ///
    /// # Units
    /// `length` one way; the result money of today, not below zero.
    /// # Range
    /// Length not below zero.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn saving(&self, length: Length) -> Money {
        self.smallest.cost(length) - self.economic.cost(length)
    }
}

/// Chooses among the conductors that may be laid; `None` where there is none.
///
/// Price and energy both go in proportion to the length, so the length has no part in the choice; it only says, through
/// the drop, which conductors may be laid. Where two cost the same the smaller is taken.
///
/// # Units
/// `legal` from the smallest up: those that meet ampacity and drop.
/// # Range
/// As [`lifetime`].
/// # Errors
/// As [`lifetime`].
/// # Source
/// [kelvin-1881]; [iec-60287-3-2].
pub fn choose(legal: &[Candidate], duty: Duty) -> Result<Option<Choice>, OutsideRange> {
    let mut choice: Option<Choice> = None;
    for candidate in legal {
        let one = lifetime(*candidate, duty)?;
        let so_far = choice.get_or_insert(Choice { smallest: one, economic: one });
        if one.total < so_far.economic.total {
            so_far.economic = one;
        }
    }
    Ok(choice)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cable::conductor::table_resistance;
    use crate::quantity::{amperes, feet, ohms_per_kilofoot, watts};
    use crate::standards::conductor::{Metal, Size};

    /// Cable at a fixed part and a price of its metal, by the area of three phases.
    fn candidates(per_cmil_foot: f64) -> Vec<Candidate> {
        let one = |size: Size| Candidate {
            conductor: Conductor { sets: 1, size },
            resistance: table_resistance(size, Metal::Copper),
            price: MoneyPerLength((0.5 + per_cmil_foot * size.row().cmil) / 0.3048),
        };
        Size::ALL.map(one).to_vec()
    }

    fn duty(current: f64, hours: f64) -> Duty {
        Duty {
            current: amperes(current),
            phases: Phases::Three,
            hours,
            kilowatt_hour: Money(0.12),
            present_worth: 9.712,
        }
    }

    // Where the price is linear in the area A and R = ρ/A, the sum is least where the metal's price equals the energy:
    // A = I √(3 ρ w h p/(1000 m)). The listed size that is chosen must be one of the two beside it.
    #[test]
    fn the_choice_lies_beside_the_area_of_the_law() {
        let per_cmil_foot = 3.0 * 9.0 * 3.027e-6 * 1.02;
        let all = candidates(per_cmil_foot);
        let mut seen = std::collections::BTreeSet::new();
        for current in [2.0, 5.0, 10.0, 20.0, 40.0, 80.0] {
            for hours in [200.0, 1500.0, 8000.0] {
                // 12.865 Ω·cmil/ft, copper strand at 75 °C.
                let ideal = current * (3.0 * 12.865 * 9.712 * hours * 0.12 / 1000.0 / per_cmil_foot).sqrt();
                let chosen = choose(&all, duty(current, hours)).unwrap().unwrap().economic.candidate.conductor.size;
                let below = Size::ALL.into_iter().rev().find(|size| size.row().cmil <= ideal);
                let above = Size::with_area_at_least(ideal);
                assert!(Some(chosen) == below || Some(chosen) == above, "{current} A {hours} h: {chosen:?}, {ideal}");
                seen.insert(chosen);
            }
        }
        assert!(seen.len() > 7, "{seen:?}");
    }

    #[test]
    fn the_length_has_no_part_in_it() {
        let all = candidates(8e-5);
        let choice = choose(&all, duty(22.5, 1500.0)).unwrap().unwrap();
        for length in [1.0, 10.0, 660.0, 3000.0] {
            let cheapest = all.iter().map(|one| lifetime(*one, duty(22.5, 1500.0)).unwrap().cost(feet(length)).0);
            let least = cheapest.fold(f64::INFINITY, f64::min);
            assert!((choice.economic.cost(feet(length)).0 / least - 1.0).abs() < 1e-12, "{length}");
            assert!(choice.saving(feet(length)).0 >= 0.0);
        }
        let twice = choice.saving(feet(2000.0)).0 / choice.saving(feet(1000.0)).0;
        assert!((twice - 2.0).abs() < 1e-12, "{twice}");
    }

    #[test]
    fn it_never_goes_below_the_smallest_legal_size() {
        let all = candidates(8e-5);
        let free = choose(&all, duty(5.0, 200.0)).unwrap().unwrap();
        assert!(free.economic.candidate.conductor.size < Size::Awg4);
        let legal = &all[Size::Awg4 as usize..];
        let bound = choose(legal, duty(5.0, 200.0)).unwrap().unwrap();
        assert_eq!(bound.economic.candidate.conductor.size, Size::Awg4);
        assert_eq!(bound.economic, bound.smallest);
        assert_eq!(bound.saving(feet(500.0)), Money(0.0));
        assert_eq!(choose(&[], duty(5.0, 200.0)), Ok(None));
    }

    #[test]
    fn without_hours_the_smallest_is_the_cheapest_and_more_hours_never_choose_less_metal() {
        let all = candidates(8e-5);
        assert_eq!(choose(&all, duty(40.0, 0.0)).unwrap().unwrap().economic.candidate.conductor.size, Size::Awg14);
        let mut last = Size::Awg14;
        for hours in (0..=8784).step_by(61) {
            let now = choose(&all, duty(40.0, f64::from(hours))).unwrap().unwrap().economic.candidate.conductor.size;
            assert!(now >= last);
            last = now;
        }
        assert!(last > Size::Awg14);
        let twins = [all[3], Candidate { conductor: Conductor { sets: 2, size: Size::Awg1_0 }, ..all[3] }];
        assert_eq!(choose(&twins, duty(5.0, 200.0)).unwrap().unwrap().economic.candidate.conductor.sets, 1);
    }

    #[test]
    fn two_conductors_lose_two_thirds_of_what_three_lose() {
        let three = yearly_cost(duty(28.0, 2000.0), ohms_per_kilofoot(0.491), feet(500.0)).unwrap().0;
        let pair = Duty { phases: Phases::Single, ..duty(28.0, 2000.0) };
        let two = yearly_cost(pair, ohms_per_kilofoot(0.491), feet(500.0)).unwrap().0;
        assert!((two / three * 1.5 - 1.0).abs() < 1e-12);
    }

    #[test]
    fn arguments_outside_are_named() {
        let one = candidates(8e-5)[0];
        let name = |duty: Duty| lifetime(one, duty).unwrap_err().argument;
        let good = duty(5.0, 200.0);
        assert_eq!(name(Duty { hours: 8785.0, ..good }), "hours");
        assert_eq!(name(Duty { kilowatt_hour: Money(-1.0), ..good }), "kilowatt_hour");
        assert_eq!(name(Duty { present_worth: f64::NAN, ..good }), "present_worth");
        assert_eq!(name(Duty { current: amperes(-1.0), ..good }), "current");
        let dear = Candidate { price: MoneyPerLength(f64::INFINITY), ..one };
        assert_eq!(lifetime(dear, good).unwrap_err().argument, "price");
        assert_eq!(yearly_energy(watts(-1.0), 1.0).unwrap_err().argument, "loss");
    }
}
