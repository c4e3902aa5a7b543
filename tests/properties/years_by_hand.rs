//! Energy of a year and what a lifetime costs, worked a second time in plain numbers.

use super::by_hand::Lead;
use super::jobs::Plain;
use wellwright_core::evaluate::{Evaluation, Sweep};
use wellwright_core::job::{Field, Way};
use wellwright_core::power::family::Feed;
use wellwright_core::quantity::{in_feet, in_volts};
use wellwright_core::standards::conductor::{Metal, TABLE_8};

/// What a way's equipment takes and wastes.
#[derive(Debug, Clone, Copy)]
pub struct Equipment {
    efficiency: f64,
    /// Heat of the supply conductors over the square of the power drawn, 1/W.
    supply: f64,
}

/// The equipment that stands for both voltages; nothing where the curve tells no lifetime.
pub fn equipment(answer: &Evaluation, sweep: &Sweep) -> Option<[Equipment; 2]> {
    if !sweep.has_lifetime() {
        return None;
    }
    Some(Way::ALL.map(|way| {
        let powered = &answer.ways.all[sweep.way(way).place.unwrap()];
        let input = powered.family.input;
        let power_factor = input.displacement / (1.0 + input.distortion * input.distortion).sqrt();
        let supply = powered.supply.map_or(0.0, |run| {
            let (conductor, metal) = (run.run.conductor, run.demands.setting.metal);
            let row = &TABLE_8[conductor.size as usize];
            let per_kilofoot = if metal == Metal::Copper { row.copper } else { row.aluminum };
            let ohms = per_kilofoot / 1000.0 * in_feet(run.length) / f64::from(conductor.sets);
            let volts = in_volts(powered.fed.1);
            let (wires, root) =
                if powered.family.supply.feed == Feed::SinglePhase { (2.0, 1.0) } else { (3.0, 3f64.sqrt()) };
            let amperes_a_watt = 1.0 / (root * volts * power_factor);
            wires * amperes_a_watt * amperes_a_watt * ohms
        });
        Equipment { efficiency: input.efficiency, supply }
    }))
}

impl Plain {
    /// Energy of the years by its worth today, for a lead at a depth.
    pub fn years(&self, answer: &Evaluation, way: usize, lead: &Lead, depth: f64, equipment: Equipment) -> f64 {
        let figure = |field| answer.inputs.entered.get(field, |figure| figure).unwrap();
        let circuit = self.circuit(way);
        let amps = self.nameplate_amps(way);
        let ohms = self.ohms(lead.candidate, self.lead_feet(depth)).0;
        let motor = self.hp * 745.7 / self.motor_efficiency();
        let drawn = (motor + 3.0 * amps * amps * ohms) / equipment.efficiency;
        let whole = drawn + equipment.supply * drawn * drawn;
        let kilowatts = whole / 1000.0;
        let yearly = bill(answer, kilowatts * figure(Field::YearlyHours), kilowatts);
        let (rate, years) = (figure(Field::Discount) / 100.0, figure(Field::Years));
        assert!(circuit.amps >= amps);
        let worth = if rate == 0.0 { years } else { (1.0 - (1.0 + rate).powf(-years)) / rate };
        yearly * worth
    }
}

/// A year's bill: energy and demand by season, and what stands.
fn bill(answer: &Evaluation, energy: f64, kilowatts: f64) -> f64 {
    let typed = |field| answer.inputs.entered.take(field, |figure| figure).unwrap().map(|known| known.value);
    let or_none = |field| typed(field).unwrap_or(0.0);
    let (season, used) = (or_none(Field::SeasonMonths), typed(Field::MonthsOfUse).unwrap());
    let billed = or_none(Field::BilledMonths);
    let (price, demand) = (typed(Field::EnergyPrice).unwrap(), or_none(Field::DemandPrice));
    let within = season.min(used);
    let in_season = typed(Field::SeasonShare).map_or(within / used, |percent| percent / 100.0);
    let in_season = if season > 0.0 { in_season } else { 0.0 };
    let season_price = typed(Field::SeasonPrice).unwrap_or(price);
    let season_demand = typed(Field::SeasonDemandPrice).unwrap_or(demand);
    let months_in = within.max(billed.min(season));
    let months_out = (used - within).max((billed - season).max(0.0));
    energy * (price * (1.0 - in_season) + season_price * in_season)
        + kilowatts * (demand * months_out + season_demand * months_in)
        + 12.0 * or_none(Field::StandingCharge)
}
