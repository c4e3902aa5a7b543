//! What was done and measured on the site: ticks and readings, in the order in which they came. Nothing of it is ever
//! changed or taken out; what was wrong is corrected by what comes after it, and stands beside it.

use crate::error::OutsideRange;
use crate::quantity::{Entry, Kind, Unit};
use serde::{Deserialize, Serialize};

/// Something that is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Reading {
    /// Insulation to ground of motor and lead before they are lowered.
    InsulationBefore,
    /// The same after they are lowered, from the well head.
    InsulationAfter,
    /// Temperature of the winding at that test.
    WindingTemperature,
    /// Depth of the water at rest.
    StaticLevel,
    /// Pressure of the air in the drained tank.
    Precharge,
    /// Volts of the supply, nothing running.
    SupplyIdle,
    /// Volts of the supply, the pump running.
    SupplyLoaded,
    /// Amperes of the supply.
    SupplyAmps,
    /// Amperes of the motor's first line.
    Amps1,
    /// Amperes of the second.
    Amps2,
    /// Amperes of the third.
    Amps3,
    /// Volts between the motor's first and second line, where no drive chops them.
    Volts12,
    /// Between the second and third.
    Volts23,
    /// Between the third and first.
    Volts31,
    /// Frequency of the motor's supply.
    Frequency,
    /// Flow.
    Flow,
    /// Pressure at the gauge.
    Pressure,
    /// Current of the transducer.
    Signal,
    /// Depth of the water while the pump runs.
    PumpingLevel,
}

impl Reading {
    /// Every reading, in the order of the work.
    pub const ALL: [Self; 19] = [
        Self::InsulationBefore,
        Self::InsulationAfter,
        Self::WindingTemperature,
        Self::StaticLevel,
        Self::Precharge,
        Self::SupplyIdle,
        Self::SupplyLoaded,
        Self::SupplyAmps,
        Self::Amps1,
        Self::Amps2,
        Self::Amps3,
        Self::Volts12,
        Self::Volts23,
        Self::Volts31,
        Self::Frequency,
        Self::Flow,
        Self::Pressure,
        Self::Signal,
        Self::PumpingLevel,
    ];
    /// Amperes of the motor's lines.
    pub const AMPS: [Self; 3] = [Self::Amps1, Self::Amps2, Self::Amps3];
    /// Volts between them.
    pub const VOLTS: [Self; 3] = [Self::Volts12, Self::Volts23, Self::Volts31];

    /// The unit that its limits are told in.
    #[must_use]
    pub fn unit(self) -> Unit {
        match self {
            Self::InsulationBefore | Self::InsulationAfter => Unit::Megohm,
            Self::WindingTemperature => Unit::DegreeFahrenheit,
            Self::StaticLevel | Self::PumpingLevel => Unit::Foot,
            Self::Precharge | Self::Pressure => Unit::PoundPerSquareInch,
            Self::SupplyIdle | Self::SupplyLoaded | Self::Volts12 | Self::Volts23 | Self::Volts31 => Unit::Volt,
            Self::SupplyAmps | Self::Amps1 | Self::Amps2 | Self::Amps3 => Unit::Ampere,
            Self::Frequency => Unit::Hertz,
            Self::Flow => Unit::GallonPerMinute,
            Self::Signal => Unit::Milliampere,
        }
    }

    /// The kind of quantity.
    #[must_use]
    pub fn kind(self) -> Kind {
        self.unit().kind()
    }

    /// Lowest and highest that an instrument can show, in [`Self::unit`]; what lies outside was mistyped.
    #[must_use]
    pub fn accepted(self) -> (f64, f64) {
        match self.unit() {
            Unit::Megohm => (0.0, 1e6),
            Unit::DegreeFahrenheit => (-40.0, 400.0),
            Unit::Foot => (-100.0, 5000.0),
            Unit::PoundPerSquareInch => (-15.0, 2000.0),
            Unit::Volt | Unit::Ampere => (0.0, 10_000.0),
            Unit::Hertz => (0.0, 200.0),
            Unit::GallonPerMinute => (0.0, 50_000.0),
            _ => (0.0, 30.0),
        }
    }
}

/// A step of the check list.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Check {
    /// Locked off, waited for the discharge, tested dead.
    LockedOff,
    /// The maker's manual is at hand, its marking read.
    ManualRead,
    /// Ground and bond, the casing with it.
    Grounded,
    /// Surge protection at the service and at the drive.
    SurgeProtected,
    /// A disconnect in sight of the motor.
    Disconnect,
    /// Ground-fault protection where the code asks for it.
    GroundFault,
    /// Free space around the drive.
    Clearances,
    /// Conduits enter from below or are sealed.
    Entries,
    /// Filter between drive and lead, as near as its maker says.
    FilterFitted,
    /// Grounding brush or insulated bearing at the shaft.
    ShaftGrounded,
    /// A converter's made phase feeds nothing but the motor.
    MadePhaseAlone,
    /// A transfer switch ahead of the generator.
    TransferSwitch,
    /// Splice watertight, and tested in water.
    SpliceTested,
    /// Insulation tested before and after lowering.
    InsulationTested,
    /// Check valves in.
    CheckValves,
    /// Relief valve in, and what it lets go runs off.
    ReliefValve,
    /// Precharge set with the tank drained.
    PrechargeSet,
    /// Transducer line open, purged, kept from freezing.
    TransducerLine,
    /// Guard on the shaft, sign posted.
    SignPosted,
    /// Settings entered and read back.
    SettingsEntered,
    /// Turns the right way: the higher pressure of both ways.
    Rotation,
    /// Against a shut valve: the pressure stays under the least rating.
    ShutOffTest,
    /// Runs dry: the drive stops it.
    DryRunTest,
    /// Pressure holds at least and at most flow.
    HoldsPressure,
    /// Readings taken and left with the owner.
    HandedOver,
}

impl Check {
    /// Every step, in the order of the work.
    pub const ALL: [Self; 25] = [
        Self::LockedOff,
        Self::ManualRead,
        Self::Grounded,
        Self::SurgeProtected,
        Self::Disconnect,
        Self::GroundFault,
        Self::Clearances,
        Self::Entries,
        Self::FilterFitted,
        Self::ShaftGrounded,
        Self::MadePhaseAlone,
        Self::TransferSwitch,
        Self::SpliceTested,
        Self::InsulationTested,
        Self::CheckValves,
        Self::ReliefValve,
        Self::PrechargeSet,
        Self::TransducerLine,
        Self::SignPosted,
        Self::SettingsEntered,
        Self::Rotation,
        Self::ShutOffTest,
        Self::DryRunTest,
        Self::HoldsPressure,
        Self::HandedOver,
    ];
}

/// A step that was ticked, or whose tick was taken back.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tick {
    /// The step.
    pub check: Check,
    /// Whether it is done.
    pub done: bool,
    /// When, as the clock of the device has it.
    pub at: String,
}

/// A reading as it was typed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Taken {
    /// What was read.
    pub reading: Reading,
    /// As it was typed.
    pub text: String,
    /// The figure in it; nothing where it can't be read, or is empty.
    pub entry: Option<Entry>,
    /// When it was begun, as the clock of the device has it.
    pub at: String,
    /// Whether it is still being typed; once it is not, it never changes.
    pub open: bool,
}

/// A visit to the site.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Visit {
    /// When it began, as the clock of the device has it.
    pub at: String,
    /// Who measured: a name or initials, as typed.
    pub by: String,
    /// Every reading, in the order in which they came.
    pub taken: Vec<Taken>,
}

impl Visit {
    /// What was typed for a reading, the first first.
    pub fn history(&self, reading: Reading) -> impl DoubleEndedIterator<Item = &Taken> {
        self.taken.iter().filter(move |taken| taken.reading == reading)
    }

    /// What counts of a reading: the last that was typed.
    #[must_use]
    pub fn last(&self, reading: Reading) -> Option<&Taken> {
        self.history(reading).next_back()
    }

    /// The figure that counts, in the reading's unit, where it is one that an instrument can show.
    #[must_use]
    pub fn value(&self, reading: Reading) -> Option<f64> {
        let value = self.last(reading)?.entry?.to(reading.unit())?;
        let (low, high) = reading.accepted();
        OutsideRange::check("reading", value, low, high).ok()
    }
}

/// What was done and measured on the site.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Record {
    ticks: Vec<Tick>,
    visits: Vec<Visit>,
}

/// Why something can't be added.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Full {
    /// The text is too long.
    Text,
    /// There are too many ticks, visits, or readings of a visit.
    Many,
}

impl Record {
    /// Most ticks.
    pub const MOST_TICKS: usize = 2000;
    /// Most visits.
    pub const MOST_VISITS: usize = 200;
    /// Most readings of a visit, corrections counted.
    pub const MOST_TAKEN: usize = 400;
    /// Most bytes of any text.
    pub const MOST_TEXT: usize = 200;

    /// A record of these ticks and visits.
    ///
    /// # Errors
    /// Says what there is too much of.
    pub fn of(ticks: Vec<Tick>, visits: Vec<Visit>) -> Result<Self, Full> {
        let many = ticks.len() > Self::MOST_TICKS
            || visits.len() > Self::MOST_VISITS
            || visits.iter().any(|visit| visit.taken.len() > Self::MOST_TAKEN);
        let taken = visits.iter().flat_map(|visit| &visit.taken).flat_map(|taken| [&taken.text, &taken.at]);
        let texts = ticks
            .iter()
            .map(|tick| &tick.at)
            .chain(visits.iter().flat_map(|visit| [&visit.at, &visit.by]))
            .chain(taken);
        if many {
            return Err(Full::Many);
        }
        let long = { texts }.any(|text| text.len() > Self::MOST_TEXT);
        if long { Err(Full::Text) } else { Ok(Self { ticks, visits }) }
    }

    /// Every tick, in the order in which they came.
    #[must_use]
    pub fn ticks(&self) -> &[Tick] {
        &self.ticks
    }

    /// Every visit, the first first.
    #[must_use]
    pub fn visits(&self) -> &[Visit] {
        &self.visits
    }

    /// Whether nothing was done or measured.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.ticks.is_empty() && self.visits.is_empty()
    }

    /// The tick that counts for a step; nothing where none was made or the last was taken back.
    #[must_use]
    pub fn ticked(&self, check: Check) -> Option<&Tick> {
        self.ticks.iter().rev().find(|tick| tick.check == check).filter(|tick| tick.done)
    }

    /// Ticks a step, or takes its tick back.
    ///
    /// # Errors
    /// Says what there is too much of; the record is as it was.
    pub fn tick(&mut self, check: Check, done: bool, at: &str) -> Result<(), Full> {
        fits(at)?;
        room(self.ticks.len(), Self::MOST_TICKS)?;
        if self.ticked(check).is_some() != done {
            self.ticks.push(Tick { check, done, at: at.to_owned() });
        }
        Ok(())
    }

    /// Begins a visit.
    ///
    /// # Errors
    /// As [`Self::tick`].
    pub fn begin(&mut self, by: &str, at: &str) -> Result<(), Full> {
        fits(by)?;
        fits(at)?;
        room(self.visits.len(), Self::MOST_VISITS)?;
        self.close();
        self.visits.push(Visit { at: at.to_owned(), by: by.to_owned(), taken: Vec::new() });
        Ok(())
    }

    /// What is typed for a reading of the last visit: it changes what is still being typed; beside one that is closed it
    /// begins a correction. Without a visit nothing happens.
    ///
    /// # Errors
    /// As [`Self::tick`].
    pub fn type_in(&mut self, reading: Reading, text: &str, entry: Option<Entry>, at: &str) -> Result<(), Full> {
        fits(text)?;
        fits(at)?;
        let Some(visit) = self.visits.last_mut() else { return Ok(()) };
        let entry = entry.filter(|entry| entry.value.is_finite() && entry.unit.kind() == reading.kind());
        let mut typed = visit.taken.iter_mut().rev().filter(|taken| taken.reading == reading);
        match typed.next() {
            Some(last) if last.open => (last.text, last.entry) = (text.to_owned(), entry),
            Some(last) if last.text == text => {}
            None if text.is_empty() => {}
            _ => {
                room(visit.taken.len(), Self::MOST_TAKEN)?;
                let (text, at) = (text.to_owned(), at.to_owned());
                visit.taken.push(Taken { reading, text, entry, at, open: true });
            }
        }
        Ok(())
    }

    /// Closes everything that is still being typed; what was left empty and stands alone is no reading.
    pub fn close(&mut self) {
        for visit in &mut self.visits {
            let mut kept: Vec<Taken> = Vec::with_capacity(visit.taken.len());
            for mut taken in visit.taken.drain(..) {
                let last = kept.iter().rev().find(|before| before.reading == taken.reading);
                let same = match last {
                    Some(before) => before.text == taken.text,
                    None => taken.text.is_empty(),
                };
                if !(taken.open && same) {
                    taken.open = false;
                    kept.push(taken);
                }
            }
            visit.taken = kept;
        }
    }
}

fn fits(text: &str) -> Result<(), Full> {
    if text.len() <= Record::MOST_TEXT { Ok(()) } else { Err(Full::Text) }
}

fn room(count: usize, most: usize) -> Result<(), Full> {
    if count < most { Ok(()) } else { Err(Full::Many) }
}
