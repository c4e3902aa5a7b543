//! A pump's curve at its rated speed: head, and efficiency or shaft power, over flow.

use crate::error::OutsideRange;
use crate::numeric::pchip::Pchip;
use crate::quantity::{
    Length, MassDensity, Power, VolumeRate, cubic_meters_per_hour, feet, in_kilograms_per_cubic_meter, meters,
    standard_gravity, watts,
};

/// Fewest points that make a curve.
pub const LEAST_POINTS: usize = 3;
/// Largest flow of a curve, m³/s; 20,000 gpm and a little.
const MOST_FLOW: f64 = 1.3;
/// Largest head of a curve, m.
const MOST_HEAD: f64 = 3000.0;
/// Largest shaft power of a curve, W.
const MOST_POWER: f64 = 1e7;
/// Density of the water that curves are measured with, clean and at 20 °C, kg/m³.
const CURVE_DENSITY: f64 = 998.2;
/// Best efficiencies outside this range are hardly a pump's.
const LIKELY_BEST: (f64, f64) = (0.20, 0.90);

/// One point of a curve as it was read from a data sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Flow.
    pub flow: VolumeRate,
    /// Head of all stages together.
    pub head: Length,
    /// Efficiency of the pump alone, a share.
    pub efficiency: Option<f64>,
    /// Shaft power.
    pub power: Option<Power>,
}

/// What a column of a curve holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    /// Flow, m³/s.
    Flow,
    /// Head, m.
    Head,
    /// Efficiency, a share.
    Efficiency,
    /// Shaft power, W.
    Power,
}

/// Why points make no curve. Points count from 0.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum CurveError {
    /// Fewer than [`LEAST_POINTS`].
    TooFew {
        /// How many there are.
        given: usize,
    },
    /// A figure that is not a number, below zero, or beyond what a pump gives.
    Figure {
        /// The point.
        point: usize,
        /// The figure.
        quantity: Quantity,
        /// What was given, in the unit of [`Quantity`].
        given: f64,
        /// Largest accepted; the least is 0.
        most: f64,
    },
    /// Flow that does not rise from point to point: the same again, or less.
    FlowNotRising {
        /// The later point.
        point: usize,
        /// Its flow.
        given: VolumeRate,
        /// The flow before it.
        before: VolumeRate,
    },
    /// Head that falls nowhere.
    HeadNeverFalls {
        /// Head of the first point.
        first: Length,
        /// Head of the last.
        last: Length,
    },
    /// Efficiency or power at some points and not at this one.
    Gap {
        /// The point.
        point: usize,
        /// What is missing there.
        quantity: Quantity,
    },
    /// Efficiency of zero where water is lifted, or above zero where none is.
    EfficiencyAgainstHead {
        /// The point.
        point: usize,
        /// Its efficiency.
        given: f64,
    },
    /// No more power at the shaft than in the water.
    PowerShort {
        /// The point.
        point: usize,
        /// Shaft power given.
        given: Power,
        /// Power in the water.
        water: Power,
    },
    /// A speed that the curve can't be carried to.
    Speed(OutsideRange),
    /// Efficiency that leaves zero so slowly that the shaft power there would have no bound.
    EfficiencyFlat {
        /// The point of zero efficiency.
        point: usize,
    },
}

/// What is odd about a curve that can still be used.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum CurveWarning {
    /// Head rises with flow on a stretch, so that one head belongs to two flows: the curve droops toward shut-off.
    Droop {
        /// Head at the beginning of the stretch.
        from: Length,
        /// Head at its end.
        to: Length,
        /// Flow at its end.
        flow: VolumeRate,
    },
    /// The curve begins above zero flow, so that its shut-off head is not known.
    NoShutOff {
        /// Least flow.
        first: VolumeRate,
    },
    /// The best efficiency is hardly a pump's; a unit may be wrong.
    BestEfficiencyUnlikely {
        /// The best efficiency.
        best: f64,
    },
    /// Efficiency and power were both given and differ by more than a tenth; power is used.
    EfficiencyAgainstPower {
        /// The point that differs most.
        point: usize,
        /// Efficiency given.
        given: f64,
        /// Efficiency by the power.
        by_power: f64,
    },
}

/// A pump's curve at its rated speed.
///
/// Head over flow is joined by a monotone cubic ([`Pchip`]), and so is shaft power where it was given, else efficiency.
#[derive(Debug, Clone, PartialEq)]
pub struct PumpCurve {
    points: Vec<Point>,
    head: Pchip,
    shaft: Shaft,
}

#[derive(Debug, Clone, PartialEq)]
enum Shaft {
    Unknown,
    Efficiency(Pchip),
    Power(Pchip),
}

impl PumpCurve {
    /// The curve through points.
    ///
    /// # Units
    /// As [`Point`].
    /// # Range
    /// At least 3 points; flow from 0 to 1.3 m³/s, rising; head 0 to 3,000 m, falling somewhere; efficiency 0 to 1 and
    /// power 0 to 10 MW, each at all points or none.
    /// # Errors
    /// [`CurveError`] names the point and the figure. Nothing is sorted, dropped or mended.
    /// # Source
    /// [fritsch-carlson-1980] joins the points.
    pub fn new(points: Vec<Point>) -> Result<Self, CurveError> {
        check_figures(&points)?;
        check_order(&points)?;
        let broken = CurveError::TooFew { given: points.len() };
        let head = column(&points, |point| Some(point.head.value)).ok_or(broken)?;
        let shaft = if points.iter().any(|point| point.power.is_some()) {
            check_power(&points)?;
            Shaft::Power(column(&points, |point| point.power.map(|power| power.value)).ok_or(broken)?)
        } else if points.iter().any(|point| point.efficiency.is_some()) {
            let efficiency = column(&points, |point| point.efficiency).ok_or(broken)?;
            check_efficiency(&points, &efficiency)?;
            Shaft::Efficiency(efficiency)
        } else {
            Shaft::Unknown
        };
        Ok(Self { points, head, shaft })
    }

    /// The points as given.
    ///
    /// # Units
    /// As [`Point`].
    /// # Range
    /// Any curve.
    /// # Source
    /// What was given to [`PumpCurve::new`].
    #[must_use]
    pub fn points(&self) -> &[Point] {
        &self.points
    }

    /// Least and largest flow of the curve: its range. Beyond the largest, the run-out, nothing is known.
    ///
    /// # Units
    /// Flows.
    /// # Range
    /// Any curve.
    /// # Source
    /// The points.
    #[must_use]
    pub fn flows(&self) -> (VolumeRate, VolumeRate) {
        let flow = |point: Option<&Point>| point.map_or(cubic_meters_per_hour(0.0), |point| point.flow);
        (flow(self.points.first()), flow(self.points.last()))
    }

    /// Head at no flow, or `None` where the curve begins above zero flow.
    ///
    /// # Units
    /// A length.
    /// # Range
    /// Any curve.
    /// # Source
    /// The first point.
    #[must_use]
    pub fn shut_off_head(&self) -> Option<Length> {
        self.points.first().filter(|point| point.flow.value == 0.0).map(|point| point.head)
    }

    /// Head at a flow, at rated speed.
    ///
    /// # Units
    /// `flow` a flow; the result a length.
    /// # Range
    /// [`PumpCurve::flows`].
    /// # Errors
    /// [`OutsideRange`] names `flow` (m³/s).
    /// # Source
    /// [fritsch-carlson-1980] joins the points.
    pub fn head(&self, flow: VolumeRate) -> Result<Length, OutsideRange> {
        self.head.value(flow.value).map(meters).ok_or(self.outside(flow))
    }

    /// Efficiency of the pump at a flow, at rated speed; `None` where neither efficiency nor power is known.
    ///
    /// Of a curve with power: η = ρ g Q H / P, ρ that of cold water.
    ///
    /// # Units
    /// `flow` a flow; the result a share.
    /// # Range
    /// [`PumpCurve::flows`].
    /// # Errors
    /// [`OutsideRange`] names `flow` (m³/s), or `efficiency` where power between two points is joined to less than the
    /// water takes.
    /// # Source
    /// Definition of efficiency; [fritsch-carlson-1980] joins the points.
    pub fn efficiency(&self, flow: VolumeRate) -> Result<Option<f64>, OutsideRange> {
        let outside = self.outside(flow);
        match &self.shaft {
            Shaft::Unknown => self.head(flow).map(|_| None),
            Shaft::Efficiency(curve) => curve.value(flow.value).map(Some).ok_or(outside),
            Shaft::Power(curve) => {
                let (head, power) = (self.head(flow)?, curve.value(flow.value).ok_or(outside)?);
                let water = water(flow, head, CURVE_DENSITY);
                OutsideRange::check("efficiency", water / power, 0.0, 1.0).map(Some)
            }
        }
    }

    /// Shaft power at a flow, at rated speed; `None` where neither efficiency nor power is known.
    ///
    /// Of a curve with efficiency: P = ρ g Q H / η, and where η is zero, its limit P = ρ g (QH)′ / η′. Of a curve with
    /// power, that power in proportion to density.
    ///
    /// # Units
    /// `flow` a flow, `density` of the water pumped; the result a power.
    /// # Range
    /// [`PumpCurve::flows`]; density 500 to 1,500 kg/m³.
    /// # Errors
    /// [`OutsideRange`] names `flow` (m³/s) or `density` (kg/m³).
    /// # Source
    /// [pump-handbook]; curves are of clean water at 20 °C (common practice).
    pub fn shaft_power(&self, flow: VolumeRate, density: MassDensity) -> Result<Option<Power>, OutsideRange> {
        let density = OutsideRange::check("density", in_kilograms_per_cubic_meter(density), 500.0, 1500.0)?;
        let outside = self.outside(flow);
        let head = self.head(flow)?;
        let efficiency = match &self.shaft {
            Shaft::Unknown => return Ok(None),
            Shaft::Power(curve) => {
                let power = curve.value(flow.value).ok_or(outside)?;
                return Ok(Some(watts(power * density / CURVE_DENSITY)));
            }
            Shaft::Efficiency(curve) => curve,
        };
        let share = efficiency.value(flow.value).ok_or(outside)?;
        if share > 0.0 {
            return Ok(Some(watts(water(flow, head, density) / share)));
        }
        let (head_slope, share_slope) =
            (self.head.slope(flow.value).ok_or(outside)?, efficiency.slope(flow.value).ok_or(outside)?);
        let rise = head.value + flow.value * head_slope;
        Ok(Some(watts(density * standard_gravity().value * rise / share_slope)))
    }

    /// The point of best efficiency, or `None` where efficiency is not known. A curve joined from efficiencies has its
    /// highest value there; of one joined from powers it is the best of the points.
    ///
    /// # Units
    /// A flow and a share.
    /// # Range
    /// Any curve.
    /// # Source
    /// A monotone cubic is never above the higher of two points, [fritsch-carlson-1980].
    #[must_use]
    pub fn best_efficiency(&self) -> Option<(VolumeRate, f64)> {
        let known = self.points.iter().filter_map(|point| Some((point.flow, self.efficiency(point.flow).ok()??)));
        known.reduce(|best, point| if point.1 > best.1 { point } else { best })
    }

    /// What is odd about the curve.
    ///
    /// # Units
    /// As [`CurveWarning`].
    /// # Range
    /// Any curve.
    /// # Source
    /// Common practice, no single source: a curve should fall all along, begin at shut-off, and be best between 20 and
    /// 90 %.
    #[must_use]
    pub fn warnings(&self) -> Vec<CurveWarning> {
        let no_shut_off = match self.shut_off_head() {
            None => Some(CurveWarning::NoShutOff { first: self.flows().0 }),
            Some(_) => None,
        };
        let best = self.best_efficiency().map(|(_, best)| best);
        let unlikely = best.filter(|best| !(LIKELY_BEST.0..=LIKELY_BEST.1).contains(best));
        self.droops()
            .chain(no_shut_off)
            .chain(unlikely.map(|best| CurveWarning::BestEfficiencyUnlikely { best }))
            .chain(self.disagreement())
            .collect()
    }

    fn droops(&self) -> impl Iterator<Item = CurveWarning> + '_ {
        let pairs = self.points.windows(2).map(|pair| (pair[0], pair[1]));
        pairs.filter(|(from, to)| to.head > from.head).map(|(from, to)| CurveWarning::Droop {
            from: from.head,
            to: to.head,
            flow: to.flow,
        })
    }

    fn disagreement(&self) -> Option<CurveWarning> {
        let Shaft::Power(_) = self.shaft else { return None };
        let both = self
            .points
            .iter()
            .enumerate()
            .filter_map(|(point, row)| Some((point, row.efficiency?, self.efficiency(row.flow).ok()??)));
        let apart = |(_, given, by_power): (usize, f64, f64)| (given - by_power).abs();
        let (point, given, by_power) = both.reduce(|worst, row| if apart(row) > apart(worst) { row } else { worst })?;
        let differ = (given - by_power).abs() > 0.1 * given.max(by_power);
        differ.then_some(CurveWarning::EfficiencyAgainstPower { point, given, by_power })
    }

    fn outside(&self, flow: VolumeRate) -> OutsideRange {
        let (least, most) = self.flows();
        OutsideRange { argument: "flow", given: flow.value, min: least.value, max: most.value }
    }
}

/// Power in water that flows against a head, in SI units.
fn water(flow: VolumeRate, head: Length, density: f64) -> f64 {
    density * standard_gravity().value * flow.value * head.value
}

fn column(points: &[Point], figure: impl Fn(&Point) -> Option<f64>) -> Option<Pchip> {
    let rows: Option<Vec<_>> = points.iter().map(|point| Some((point.flow.value, figure(point)?))).collect();
    Pchip::through(&rows?)
}

fn check_figures(points: &[Point]) -> Result<(), CurveError> {
    if points.len() < LEAST_POINTS {
        return Err(CurveError::TooFew { given: points.len() });
    }
    let wanted = |figure: fn(&Point) -> bool| points.iter().any(figure);
    let (with_efficiency, with_power) = (wanted(|p| p.efficiency.is_some()), wanted(|p| p.power.is_some()));
    for (index, point) in points.iter().enumerate() {
        let check = |quantity, given: f64, most: f64| {
            let bad = CurveError::Figure { point: index, quantity, given, most };
            if given >= 0.0 && given <= most { Ok(()) } else { Err(bad) }
        };
        let gap = |quantity| CurveError::Gap { point: index, quantity };
        check(Quantity::Flow, point.flow.value, MOST_FLOW)?;
        check(Quantity::Head, point.head.value, MOST_HEAD)?;
        if with_efficiency {
            check(Quantity::Efficiency, point.efficiency.ok_or(gap(Quantity::Efficiency))?, 1.0)?;
        }
        if with_power {
            check(Quantity::Power, point.power.ok_or(gap(Quantity::Power))?.value, MOST_POWER)?;
        }
    }
    Ok(())
}

fn check_order(points: &[Point]) -> Result<(), CurveError> {
    for (index, pair) in points.windows(2).enumerate() {
        if pair[1].flow <= pair[0].flow {
            let (given, before) = (pair[1].flow, pair[0].flow);
            return Err(CurveError::FlowNotRising { point: index + 1, given, before });
        }
    }
    if points.windows(2).any(|pair| pair[1].head < pair[0].head) {
        return Ok(());
    }
    let head = |point: Option<&Point>| point.map_or(feet(0.0), |point| point.head);
    Err(CurveError::HeadNeverFalls { first: head(points.first()), last: head(points.last()) })
}

/// Efficiency is zero exactly where no water is lifted, and leaves zero with a slope.
fn check_efficiency(points: &[Point], curve: &Pchip) -> Result<(), CurveError> {
    let rows = || points.iter().enumerate().map(|(index, point)| (index, point, point.efficiency.unwrap_or(0.0)));
    for (index, point, given) in rows() {
        let lifts = point.flow.value > 0.0 && point.head.value > 0.0;
        if lifts != (given > 0.0) {
            return Err(CurveError::EfficiencyAgainstHead { point: index, given });
        }
    }
    for (index, point, given) in rows() {
        if given == 0.0 && curve.slope(point.flow.value).is_none_or(|slope| slope == 0.0) {
            return Err(CurveError::EfficiencyFlat { point: index });
        }
    }
    Ok(())
}

fn check_power(points: &[Point]) -> Result<(), CurveError> {
    for (index, point) in points.iter().enumerate() {
        let (given, water) = (point.power.unwrap_or(watts(0.0)), watts(water(point.flow, point.head, CURVE_DENSITY)));
        if given <= water {
            return Err(CurveError::PowerShort { point: index, given, water });
        }
    }
    Ok(())
}
