//! What the picture of the peak holds, in quantities. All voltages and lengths are core's.

use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::long_lead::{Limit, OVERLAP, corners};
use wellwright_core::evaluate::Stress;
use wellwright_core::job::Way;
use wellwright_core::quantity::{ElectricPotential, Length, in_volts, meters};

/// What is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chart {
    /// The way whose lead it is.
    pub way: Option<Way>,
    /// The drive's bus.
    pub bus: ElectricPotential,
    /// The peak from the critical length on.
    pub full: ElectricPotential,
    /// Length at which the peak is full.
    pub critical: Length,
    /// Length of the job's lead.
    pub lead: Length,
    /// Its peak.
    pub peak: ElectricPotential,
    /// What the motor stands.
    pub limit: Limit,
    /// Longest lead within that.
    pub bare: Length,
    /// Whether pulses can meet on the job's lead.
    pub meet: bool,
    /// The remedy that is fitted.
    pub fitted: Remedy,
    /// Whether the motor is kept within its limit.
    pub cured: bool,
}

impl Chart {
    /// The chart of a lead; `None` where a figure of it is none to draw.
    #[must_use]
    pub fn of(stress: &Stress, way: Option<Way>) -> Option<Self> {
        let full = corners(stress.bus, stress.wave, stress.critical).ok()?.last()?.peak;
        let lengths = [stress.critical, stress.length];
        let volts = [stress.bus, full, stress.peak, stress.limit.peak()].map(in_volts);
        let drawable = lengths.iter().all(|length| length.is_finite() && *length >= meters(0.0))
            && stress.critical > meters(0.0)
            && volts.iter().all(|volts| volts.is_finite() && *volts >= 0.0);
        drawable.then_some(Self {
            way,
            bus: stress.bus,
            full,
            critical: stress.critical,
            lead: stress.length,
            peak: stress.peak,
            limit: stress.limit,
            bare: stress.bare,
            meet: stress.meet,
            fitted: stress.fitted,
            cured: stress.cured,
        })
    }

    /// The length from which pulses can meet.
    #[must_use]
    pub fn overlap(&self) -> Length {
        OVERLAP * self.critical
    }

    /// Twice the voltage of the bus.
    #[must_use]
    pub fn twice(&self) -> ElectricPotential {
        2.0 * self.bus
    }

    /// Whether the job's lead passes the motor's limit with nothing in between.
    #[must_use]
    pub fn over(&self) -> bool {
        self.peak > self.limit.peak()
    }

    /// The length from which a lead passes the limit; nothing where none does, or where even none at all does.
    #[must_use]
    pub fn over_from(&self) -> Option<Length> {
        Some(self.bare).filter(|bare| bare.is_finite() && *bare > meters(0.0))
    }
}
