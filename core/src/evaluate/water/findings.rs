//! What is unwise or unsafe about the water and the pump. Only what was entered is judged.

use super::beyond::beyond;
use super::pump::{NoDuty, Pumping};
use super::{Water, counted_service_factor, pressure};
use crate::finding::{Finding, Supplier};
use crate::job::{Control, DemandBy, Field, Inputs, Job, Way};
use crate::pump::curve::PumpCurve;
use crate::pump::motor::running_current;
use crate::pump::operating_point::NoOperatingPoint;
use crate::quantity::{Length, Power, VolumeRate, feet, gpm, hertz, inches, psi, volts};
use crate::water::level::{off_bottom, short_of, submergence};
use crate::water::line::usual_speed;

/// Least distance from the pump to the well's bottom, feet: common practice, for sand and sludge.
pub const NEAR_BOTTOM_FEET: f64 = 10.0;
/// Share of a limit that rounding may pass: a change of units costs the last digits.
pub(super) const SLACK: f64 = 1e-9;
/// Least band of useful frequencies, hertz: common practice.
pub(crate) const LEAST_BAND: f64 = 5.0;
/// Flow over the flow of best efficiency that pumps are run at for long: common practice.
const NEAR_BEST: (f64, f64) = (0.7, 1.2);
/// Least gap between a motor and a sleeve, on both sides together, inches: common practice.
const LEAST_GAP: f64 = 0.5;
/// Least of what is around a motor over its width, as [`annulus`](crate::water::cooling::annulus) takes it.
const LEAST_ROOM: f64 = 1.0 + 1e-6;
/// Share by which nameplate amperes may differ from those of power, efficiency and power factor: common practice.
const NAMEPLATE_TOLERANCE: f64 = 0.10;

pub(crate) fn findings(job: &Job, inputs: &Inputs, water: &Water) -> Vec<Finding> {
    let mut found = demand_not_met(inputs, water);
    if let Some(setting) = inputs.entered.get(Field::PumpSetting, feet) {
        found.extend(little_water(inputs, water, setting));
        found.extend(near_bottom(water, setting));
        let top = inputs.entered.get(Field::ScreenTop, feet).filter(|top| submergence(setting, *top) >= feet(0.0));
        found.extend(top.map(|top| Finding::PumpInScreen { top }));
    }
    found.extend(below_bottom(water));
    found.extend(of_curve(water));
    let of_pump = |finding: &Finding| {
        matches!(finding, Finding::DemandNotMet { by: Supplier::Pump, .. } | Finding::PumpBeyondCurve { .. })
    };
    if beyond(&inputs.entered, water, found.iter().any(of_pump)) {
        found.push(Finding::BeyondFormulas);
    }
    found.extend(npsh_short(inputs, water));
    found.extend(day_average(job, water));
    found.extend(runs_by_itself(water));
    found.extend(does_not_fit(inputs));
    found.extend(cools_above(job, inputs, water));
    found.extend(pressure::findings(job, inputs, water));
    found.extend(cooling_low(water));
    found.extend(overloaded(job, inputs, water));
    found.extend(water.pump.as_ref().and_then(|pump| narrow_band(job, pump)));
    found.extend(sensor(job, inputs));
    found.extend(fast_pipes(water));
    found.extend(Way::ALL.into_iter().filter_map(|way| nameplate_disagrees(inputs, way)));
    found
}

/// What the pump, then the well, then its test give less than is asked for.
fn demand_not_met(inputs: &Inputs, water: &Water) -> Vec<Finding> {
    let Some(asked) = water.demand.map(|demand| demand.flow.value) else { return Vec::new() };
    let short = |asked: VolumeRate, gives: Option<VolumeRate>, by| {
        let gives = gives.filter(|gives| *gives < asked * (1.0 - SLACK))?;
        Some(Finding::DemandNotMet { asked, gives, by })
    };
    let pump = water.pump.as_ref().and_then(pump_gives);
    let tested = inputs.entered.get(Field::TestedYield, gpm);
    // At full speed a pump draws all that the system lets through, be it more than is asked for.
    let duty = water.pump.as_ref().and_then(|pump| pump.duty.ok());
    let drawn = duty.map_or(asked, |duty| duty.flow.max(asked));
    let all = [
        short(asked, pump, Supplier::Pump),
        short(drawn, water.well_gives, Supplier::Well),
        short(drawn, tested, Supplier::Test),
    ];
    all.into_iter().flatten().collect()
}

/// The most that the pump gives through the system; nothing where it runs past the end of its curve, or has none.
fn pump_gives(pump: &Pumping) -> Option<VolumeRate> {
    match pump.most? {
        Ok(point) => Some(point.flow),
        Err(NoOperatingPoint::HeadShort { .. }) => Some(gpm(0.0)),
        Err(_) => None,
    }
}

/// Little water above the pump, or none: while it runs, or at rest where the drawdown is not known.
fn little_water(inputs: &Inputs, water: &Water, setting: Length) -> Option<Finding> {
    let level = water.pumping_level.or(water.static_level)?;
    let minimum = inputs.entered.get(Field::MinimumSubmergence, feet)?;
    let submergence = submergence(setting, level);
    let short = submergence <= feet(0.0) || short_of(submergence, minimum, setting.max(level));
    short.then_some(Finding::PumpingLevelAtPump { submergence, minimum })
}

fn near_bottom(water: &Water, setting: Length) -> Option<Finding> {
    let well_depth = water.well_depth?;
    let off_bottom = off_bottom(well_depth, setting);
    short_of(off_bottom, feet(NEAR_BOTTOM_FEET), setting.max(well_depth))
        .then_some(Finding::PumpNearBottom { off_bottom })
}

/// The first level that leaves no water above the bottom: at rest, then while the pump runs.
fn below_bottom(water: &Water) -> Option<Finding> {
    let bottom = water.well_depth?;
    let mut levels = [water.static_level, water.pumping_level].into_iter().flatten();
    let level = levels.find(|level| submergence(bottom, *level) <= feet(0.0))?;
    Some(Finding::LevelBelowBottom { level, bottom })
}

fn of_curve(water: &Water) -> Vec<Finding> {
    let mut found = match &water.curve {
        None => Vec::new(),
        Some(Err(_)) => vec![Finding::CurveUnusable],
        Some(Ok(read)) => read.curve.warnings().into_iter().map(|warning| Finding::CurveOdd { warning }).collect(),
    };
    let Some(pump) = &water.pump else { return found };
    if let (Err(NoDuty::NoPoint(NoOperatingPoint::BeyondRunOut { .. })), Some(curve)) = (pump.duty, &pump.curve) {
        found.push(Finding::PumpBeyondCurve { most: run_out(pump, curve) });
    }
    let (least, most) = (NEAR_BEST.0 * (1.0 - SLACK), NEAR_BEST.1 * (1.0 + SLACK));
    let far = pump.share_of_best.filter(|share| *share < least || *share > most);
    found.extend(far.map(|share| Finding::FarFromBest { share }));
    found
}

/// The end of the curve at the highest frequency.
fn run_out(pump: &Pumping, curve: &PumpCurve) -> VolumeRate {
    curve.flows().1 * pump.ratio(pump.band.1).unwrap_or(1.0)
}

fn npsh_short(inputs: &Inputs, water: &Water) -> Option<Finding> {
    let available = water.suction?.available();
    let margin = inputs.entered.get(Field::NpshMargin, feet)?;
    // Without the pump's figure there is no verdict, but water that boils in the suction needs none.
    let required = match inputs.entered.take(Field::NpshRequired, feet).ok()? {
        Some(required) => required.value + margin,
        None => feet(0.0),
    };
    let short = available < required - SLACK * required.abs();
    short.then_some(Finding::NpshShort { available, required })
}

fn cooling_low(water: &Water) -> Option<Finding> {
    let cooling = water.cooling?;
    let slow = cooling.speed < cooling.advised * (1.0 - SLACK);
    slow.then_some(Finding::MotorCoolingLow {
        speed: cooling.speed,
        advised: cooling.advised,
        least_flow: cooling.least_flow,
        sleeve: Some(cooling.widest_sleeve).filter(|sleeve| *sleeve - cooling.motor >= inches(LEAST_GAP)),
    })
}

/// People and stock use a day's water in a few hours.
fn day_average(job: &Job, water: &Water) -> Option<Finding> {
    let flow = water.demand?.flow.value;
    (job.choices.demand() == DemandBy::PeopleAndStock).then_some(Finding::DayAverage { flow })
}

/// Where water stands high enough, the sums leave nothing for a pump to do.
fn runs_by_itself(water: &Water) -> Option<Finding> {
    let head = water.head.as_ref()?.total();
    (head <= feet(0.0)).then_some(Finding::RunsByItself { head })
}

/// The motor in its sleeve or casing, and the sleeve in the casing.
fn does_not_fit(inputs: &Inputs) -> Option<Finding> {
    let size = |field| inputs.entered.get(field, inches);
    let [motor, sleeve, casing] = [Field::MotorDiameter, Field::SleeveInside, Field::CasingInside].map(size);
    let pairs = [(motor, sleeve), (sleeve, casing), (motor, casing)];
    let (inner, outer) = pairs
        .into_iter()
        .filter_map(|(inner, outer)| inner.zip(outer))
        .find(|(inner, outer)| *outer < *inner * LEAST_ROOM)?;
    Some(Finding::MotorDoesNotFit { inner, outer })
}

/// A drive lets the flow fall to what is drawn, however little.
fn cools_above(job: &Job, inputs: &Inputs, water: &Water) -> Option<Finding> {
    let cooling = water.cooling?;
    let unknown = !inputs.entered.is_typed(Field::LeastFlow) && job.choices.control() == Control::ConstantPressure;
    let cooled = cooling.speed >= cooling.advised * (1.0 - SLACK);
    (unknown && cooled).then_some(Finding::CoolsAbove { least_flow: cooling.least_flow })
}

/// The largest power at the shaft: anywhere on the curve at the highest frequency, or at the flow that is asked for.
pub(crate) fn largest_load(water: &Water) -> Option<Power> {
    let pump = water.pump.as_ref()?;
    let duty = pump.duty.ok().map(|duty| duty.shaft);
    pump.largest.map(|(_, power)| power).or(duty)
}

fn overloaded(job: &Job, inputs: &Inputs, water: &Water) -> Option<Finding> {
    let rated = inputs.motor_power.as_ref().ok()?.value;
    let shaft = largest_load(water)?;
    let factor = counted_service_factor(&inputs.entered, job.choices.motor_kind())?;
    let over = |limit: Power| shaft > limit * (1.0 + SLACK);
    let beyond_service_factor = over(rated * factor);
    over(rated).then_some(Finding::MotorOverloaded { shaft, rated, beyond_service_factor })
}

fn narrow_band(job: &Job, pump: &Pumping) -> Option<Finding> {
    let lowest = pump.lowest.filter(|_| job.choices.control() == crate::job::Control::ConstantPressure)?;
    let (least, most) = pump.band;
    let narrow = most - lowest < hertz(LEAST_BAND * (1.0 - SLACK)) || lowest < least * (1.0 - SLACK);
    narrow.then_some(Finding::SpeedBandNarrow { lowest, most, least })
}

/// Share of a transducer's span that the setpoint may take: common practice.
pub(crate) const SENSOR_SHARE: f64 = 0.85;

/// The transducer of a pressure that a drive holds: its span, and frost.
fn sensor(job: &Job, inputs: &Inputs) -> Vec<Finding> {
    if job.choices.control() != crate::job::Control::ConstantPressure {
        return Vec::new();
    }
    let (setpoint, span) = (inputs.entered.get(Field::Pressure, psi), inputs.entered.get(Field::TransducerSpan, psi));
    let near_its_end = setpoint
        .zip(span)
        .filter(|(setpoint, span)| *setpoint > *span * SENSOR_SHARE * (1.0 + SLACK))
        .map(|(setpoint, span)| Finding::SensorRange { setpoint, span });
    let freezes = job.choices.freezing().then_some(Finding::SensorFreezes);
    near_its_end.into_iter().chain(freezes).collect()
}

fn fast_pipes(water: &Water) -> Vec<Finding> {
    let (Some(system), Some(head)) = (&water.system, &water.head) else { return Vec::new() };
    let fast = |(pipe, loss): (&super::Pipework, &crate::water::line::SectionLoss)| {
        let (velocity, usual) = (loss.darcy_weisbach.velocity, usual_speed(pipe.material));
        let counts = pipe.section.pipe.length > feet(0.0);
        (counts && velocity > usual * (1.0 + SLACK)).then_some(Finding::PipeFast { part: pipe.part, velocity, usual })
    };
    system.pipes.iter().zip(&head.sections).filter_map(fast).collect()
}

/// A nameplate that was typed, against power, efficiency and power factor.
fn nameplate_disagrees(inputs: &Inputs, way: Way) -> Option<Finding> {
    let nameplate = inputs.motor_current[way as usize].as_ref().ok()?.nameplate?;
    // Against assumed figures a plate is not judged.
    let typed = |field| inputs.entered.is_typed(field);
    if ![way.nameplate_field(), Field::MotorEfficiency, Field::MotorPowerFactor].into_iter().all(typed) {
        return None;
    }
    let (efficiency, power_factor) = (inputs.efficiency.as_ref().ok()?, inputs.power_factor.as_ref().ok()?);
    let power = inputs.motor_power.as_ref().ok()?.value;
    let expected = running_current(power, volts(way.rated_volts()), efficiency.value, power_factor.value).ok()?;
    let differs = (nameplate.value / expected).value - 1.0;
    (differs.abs() > NAMEPLATE_TOLERANCE + SLACK).then_some(Finding::NameplateDisagrees {
        way,
        expected,
        nameplate: nameplate.value,
    })
}
