//! The road from a job to its lead, worked a second time in plain numbers: tables from the standards' data, every sum
//! written here. Feet, volts, amperes, ohms per thousand feet.

use super::jobs::Plain;
use wellwright_core::cable::reactance::Build;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::standards::ambient::BANDS;
use wellwright_core::standards::ampacity::{ALUMINUM, COPPER};
use wellwright_core::standards::conductor::{Metal, TABLE_8};
use wellwright_core::standards::reactance::TABLE_9;
use wellwright_core::standards::{ground, motor_current, overcurrent};

/// A complex number: real and imaginary part.
#[derive(Debug, Clone, Copy)]
pub struct Complex(pub f64, pub f64);

impl Complex {
    pub fn times(self, other: Self) -> Self {
        Self(self.0 * other.0 - self.1 * other.1, self.0 * other.1 + self.1 * other.0)
    }
    pub fn plus(self, real: f64) -> Self {
        Self(self.0 + real, self.1)
    }
    pub fn size(self) -> f64 {
        self.0.hypot(self.1)
    }
}

/// A circuit: line volts at the sending end, line amperes, power factor, line-to-line drop per conductor drop.
#[derive(Debug, Clone, Copy)]
pub struct Circuit {
    pub volts: f64,
    pub amps: f64,
    pub power_factor: f64,
    pub factor: f64,
}

impl Circuit {
    /// The drop as a phasor on the voltage of the load: k I (cos φ − j sin φ)(R + jX) of the whole lead.
    pub fn drop_phasor(self, ohms: Complex) -> Complex {
        let sin = (1.0 - self.power_factor * self.power_factor).sqrt();
        let current = Complex(self.factor * self.amps * self.power_factor, -self.factor * self.amps * sin);
        current.times(ohms)
    }

    /// Volts that must be sent so that this many arrive.
    pub fn sent_for(self, received: f64, ohms: Complex) -> f64 {
        self.drop_phasor(ohms).plus(received).size()
    }

    /// The drop, searched by halving: the volts to send grow with the volts received.
    pub fn drop(self, ohms: Complex) -> Option<f64> {
        if self.sent_for(0.0, ohms) >= self.volts {
            return None;
        }
        let (mut low, mut high) = (0.0, self.volts);
        for _ in 0..100 {
            let middle = 0.5 * (low + high);
            if self.sent_for(middle, ohms) <= self.volts { low = middle } else { high = middle }
        }
        Some(self.volts - low)
    }
}

/// A candidate: sets in parallel and the row of table 8.
pub type Candidate = (u8, usize);

/// The lead that a depth takes on a way (0: 240 V, 1: 480 V).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lead {
    pub candidate: Candidate,
    /// Row of table 8.
    pub ground: usize,
    pub cable: f64,
    pub installed: f64,
}

impl Plain {
    pub fn sizing_amps(&self, way: usize) -> f64 {
        let typed = self.nameplate[way].or_else(|| {
            let other = self.nameplate[1 - way]?;
            Some(if way == 0 { 2.0 * other } else { 0.5 * other })
        });
        let table = table_amps(self.hp, way);
        typed.map_or(table, |amps| amps.max(table))
    }

    /// Amperes of the nameplate, or of the table.
    pub fn nameplate_amps(&self, way: usize) -> f64 {
        let other = || self.nameplate[1 - way].map(|other| if way == 0 { 2.0 * other } else { 0.5 * other });
        self.nameplate[way].or_else(other).unwrap_or_else(|| table_amps(self.hp, way))
    }

    pub fn motor_efficiency(&self) -> f64 {
        self.efficiency.unwrap_or_else(|| self.assumed().0)
    }

    pub fn circuit(&self, way: usize) -> Circuit {
        let power_factor = self.power_factor.unwrap_or_else(|| self.assumed().1);
        Circuit { volts: [240.0, 480.0][way], amps: self.sizing_amps(way), power_factor, factor: 3f64.sqrt() }
    }

    /// Assumed efficiency and power factor: common practice.
    fn assumed(&self) -> (f64, f64) {
        match self.kind {
            MotorKind::Surface => (0.92, 0.86),
            MotorKind::Submersible if self.hp <= 10.0 => (0.78, 0.80),
            MotorKind::Submersible if self.hp <= 30.0 => (0.82, 0.84),
            MotorKind::Submersible => (0.86, 0.85),
        }
    }

    /// Rating of the device: typed, or the next standard rating at or above 125 % of the drive's input, or `None`
    /// beyond the standard ratings that a ground is listed for.
    pub fn device(&self) -> Option<f64> {
        if self.device.is_some() {
            return self.device;
        }
        let efficiency = self.efficiency.unwrap_or_else(|| self.assumed().0);
        let power_factor = 0.99 / (1.0 + 0.1 * 0.1_f64).sqrt();
        let input = self.hp * 745.7 / (efficiency * 0.94 * 240.0 * power_factor);
        let rating = overcurrent::STANDARD_RATINGS.into_iter().find(|rating| *rating >= 1.25 * input)?;
        (rating <= 2000.0).then_some(rating)
    }

    /// Ampacity of one set among `sets` that lie together.
    fn ampacity(&self, row: usize, sets: u8, required: f64) -> Option<f64> {
        let table: &[[f64; 3]] = if self.metal == Metal::Copper { &COPPER } else { &ALUMINUM };
        let row = if self.metal == Metal::Copper { Some(row) } else { row.checked_sub(1) };
        let amps = table.get(row?)?;
        let band = BANDS.iter().find(|band| self.ambient <= band.up_to)?;
        let insulation = self.insulation as usize;
        let bundle = [1.0, 0.8, 0.7, 0.5][usize::from(sets) - 1];
        let terminals = if self.marked || required > 100.0 { 1 } else { 0 };
        let corrected = amps[insulation] * band.factors[insulation]? * bundle;
        Some(corrected.min(amps[terminals]))
    }

    /// Resistance and reactance of a lead of one conductor per phase and set, ohms.
    pub fn ohms(&self, candidate: Candidate, feet: f64) -> Complex {
        let (sets, row) = candidate;
        let share = feet / 1000.0 / f64::from(sets);
        let resistance = if self.metal == Metal::Copper { TABLE_8[row].copper } else { TABLE_8[row].aluminum };
        Complex(resistance * share, self.reactance(row) * share)
    }

    fn reactance(&self, row: usize) -> f64 {
        let data = &TABLE_8[row];
        let pitch = data.diameter_in + 2.0 * data.insulation_in;
        let spread = match self.build {
            Build::PlasticConduit => return TABLE_9[row].plastic,
            Build::SteelConduit => return TABLE_9[row].steel,
            Build::Twisted => pitch,
            Build::FlatJacketed => (pitch * pitch * 2.0 * pitch).cbrt(),
        };
        let strand = match data.wires {
            7 => 0.726,
            19 => 0.758,
            _ => 0.768,
        };
        let per_meter = 2.0 * std::f64::consts::PI * 60.0 * 2e-7 * (spread / (strand * data.diameter_in / 2.0)).ln();
        per_meter * 304.8
    }

    /// Sizes in the order that they are tried: one set of any size, then more sets of 1/0 AWG (row 9) and larger.
    pub fn candidates(&self) -> Vec<Candidate> {
        let single = (0..TABLE_8.len()).map(|row| (1, row));
        let parallel = (2..=self.sets).flat_map(|sets| (9..TABLE_8.len()).map(move |row| (sets, row)));
        single.chain(parallel).collect()
    }

    /// True where a candidate may carry the current.
    pub fn carries(&self, way: usize, candidate: Candidate) -> bool {
        let required = 1.25 * self.sizing_amps(way);
        let one = self.ampacity(candidate.1, candidate.0, required);
        one.is_some_and(|amps| amps * f64::from(candidate.0) >= required)
    }

    /// The first candidate that meets both limits over a lead from this depth, its ground and its price.
    pub fn lead(&self, way: usize, depth: f64) -> Option<Lead> {
        let feet = self.lead_feet(depth);
        let circuit = self.circuit(way);
        let kept = (1.0 - self.drop / 100.0) * circuit.volts;
        let fits = |candidate: &Candidate| circuit.sent_for(kept, self.ohms(*candidate, feet)) <= circuit.volts;
        let carrying = || self.candidates().into_iter().filter(|candidate| self.carries(way, *candidate));
        let least = carrying().next()?;
        let chosen = carrying().find(fits)?;
        let ground = self.ground(chosen, least)?;
        let cable = self.price(chosen, ground) * feet;
        let installed = cable + if way == 1 { self.extra } else { 0.0 };
        Some(Lead { candidate: chosen, ground, cable, installed })
    }

    /// Table 250.122, grown with the phases, no larger than they are.
    fn ground(&self, chosen: Candidate, least: Candidate) -> Option<usize> {
        let device = self.device()?;
        let row = ground::TABLE.iter().find(|row| device <= row.amperes)?;
        let base = if self.metal == Metal::Copper { row.copper } else { row.aluminum } as usize;
        let area = |candidate: Candidate| f64::from(candidate.0) * TABLE_8[candidate.1].cmil;
        let growth = (area(chosen) / area(least)).max(1.0);
        let grown = TABLE_8.iter().position(|row| row.cmil >= TABLE_8[base].cmil * growth);
        Some(grown.map_or(chosen.1, |grown| grown.min(chosen.1)))
    }

    /// Dollars a foot: the fixed part of each set, and metal of three phases and a ground in each set, 2 % longer than the strand.
    fn price(&self, chosen: Candidate, ground: usize) -> f64 {
        let cmil = (3.0 * TABLE_8[chosen.1].cmil + TABLE_8[ground].cmil) * f64::from(chosen.0);
        let density = if self.metal == Metal::Copper { 8.89 } else { 2.705 };
        let square_mm = cmil * std::f64::consts::PI / 4.0 * 0.0254 * 0.0254;
        let pounds_a_foot = square_mm * density * 1e-3 * 1.02 * 0.3048 / 0.453_592_37;
        self.fixed * f64::from(chosen.0) + self.metal_price * pounds_a_foot
    }
}

/// Table 430.250 at 230 V or 460 V, straight lines between its rows.
fn table_amps(hp: f64, way: usize) -> f64 {
    let column = |row: &motor_current::Row| if way == 0 { row.v230 } else { row.v460 };
    let above = motor_current::TABLE.iter().position(|row| row.hp >= hp).unwrap();
    let high = &motor_current::TABLE[above];
    if high.hp == hp {
        return column(high);
    }
    let low = &motor_current::TABLE[above - 1];
    column(low) + (hp - low.hp) / (high.hp - low.hp) * (column(high) - column(low))
}
