//! What is computed but unwise or unsafe: codes and quantities, no sentences.

mod code;

use crate::cable::filter::Remedy;
use crate::job::{Field, Part, Reading, Way};
use crate::pump::curve::CurveWarning;
use crate::quantity::{
    Celsius, ElectricCurrent, ElectricPotential, Entry, Frequency, Length, Power, Pressure, Velocity, VolumeRate,
};
use crate::standards::enclosure::{Demand, EnclosureType};
use serde::Serialize;

/// How grave a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// Look before going on.
    Caution,
    /// Do not go on.
    Stop,
}

/// Who does not give what is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Supplier {
    /// The pump, at its highest speed.
    Pump,
    /// The well, drawn down to the pump.
    Well,
    /// The well, as it was tested.
    Test,
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Finding {
    /// No listed size meets ampacity and voltage drop on this way at this depth.
    CableNoSize {
        /// The way concerned.
        way: Way,
    },
    /// Aluminum chosen for a lead that hangs in the well.
    AluminumInWell,
    /// The equipment ground grew with the phase conductors (NEC 250.122(B)).
    GroundWireGrew {
        /// The way concerned.
        way: Way,
    },
    /// The water above the pump is less than the least: while it runs, or at rest where the drawdown is not known. At
    /// zero and below, the pump hangs dry.
    PumpingLevelAtPump {
        /// Depth of water above the pump.
        submergence: Length,
        /// The least.
        minimum: Length,
    },
    /// The pump hangs near the well's bottom, or is set at it or deeper.
    PumpNearBottom {
        /// Distance above the bottom; zero or below, the setting reaches the bottom.
        off_bottom: Length,
    },
    /// The water stands at the well's bottom or below it: at rest, or while the pump runs.
    LevelBelowBottom {
        /// Depth of the water below ground.
        level: Length,
        /// Depth of the bottom.
        bottom: Length,
    },
    /// More is asked for than the pump or the well gives.
    DemandNotMet {
        /// Flow asked for.
        asked: VolumeRate,
        /// Flow that is given.
        gives: VolumeRate,
        /// By whom.
        by: Supplier,
    },
    /// At every speed that gives the flow, the pump runs past the end of its curve.
    PumpBeyondCurve {
        /// The largest flow of the curve.
        most: VolumeRate,
    },
    /// The text of the pump's curve makes no curve.
    CurveUnusable,
    /// The curve can be used, but something is odd about it.
    CurveOdd {
        /// What.
        warning: CurveWarning,
    },
    /// The pump works far from its best efficiency.
    FarFromBest {
        /// Its flow as a share of the flow of best efficiency.
        share: f64,
    },
    /// A surface pump finds too little head at its suction.
    NpshShort {
        /// Head available.
        available: Length,
        /// Head required, margin included.
        required: Length,
    },
    /// Against a shut valve the pump alone passes the least rating at the gauge.
    DeadheadOverRating {
        /// Pressure at the gauge.
        gauge: Pressure,
        /// The rating.
        rating: Pressure,
    },
    /// Against a shut valve the pump alone passes what a pipe is rated for.
    PipeOverRating {
        /// The part of the line.
        part: Part,
        /// What the pipe holds back.
        pressure: Pressure,
        /// Its rating.
        rating: Pressure,
    },
    /// A sudden stop of the water passes what a pipe is rated for.
    SurgeOverRating {
        /// The part of the line.
        part: Part,
        /// Pressure before, and what the wave adds.
        pressure: Pressure,
        /// Its rating.
        rating: Pressure,
    },
    /// What the pump does against a shut valve is not known.
    DeadheadUnknown {
        /// What the weakest part is rated for.
        rating: Pressure,
    },
    /// The pressure that is held, or at which the pump stops, is no less than what the weakest part is rated for.
    SetpointOverRating {
        /// That pressure.
        setpoint: Pressure,
        /// The rating.
        rating: Pressure,
    },
    /// A house is served with more than plumbing codes let into it.
    HousePressureHigh {
        /// The pressure that is held, or that a shut valve builds.
        pressure: Pressure,
        /// The most.
        limit: Pressure,
    },
    /// The motor, or the sleeve around it, is no narrower than what it hangs in.
    MotorDoesNotFit {
        /// Outside diameter of what hangs.
        inner: Length,
        /// Inside diameter around it.
        outer: Length,
    },
    /// What is asked for is the average of a day: it takes a tank that holds a day's use.
    DayAverage {
        /// That flow.
        flow: VolumeRate,
    },
    /// The total head is not above zero: by the figures the water runs by itself.
    RunsByItself {
        /// The total head.
        head: Length,
    },
    /// The drive lets the flow fall below the one that cools the motor, and no least flow was entered.
    CoolsAbove {
        /// The flow that cools the motor.
        least_flow: VolumeRate,
    },
    /// The water past the motor is slow.
    MotorCoolingLow {
        /// Its speed.
        speed: Velocity,
        /// The speed that is advised.
        advised: Velocity,
        /// The flow that gives it.
        least_flow: VolumeRate,
        /// Inside diameter of the widest sleeve that gives it at the flow that is judged; nothing where no sleeve fits.
        sleeve: Option<Length>,
    },
    /// The pump loads the motor beyond its rating: at the flow that is asked for, or anywhere on its curve.
    MotorOverloaded {
        /// The largest power at the shaft.
        shaft: Power,
        /// The rating, without the service factor.
        rated: Power,
        /// True where it passes the rating with the service factor that counts.
        beyond_service_factor: bool,
    },
    /// Little is left between the lowest useful frequency and the highest, or the lowest is too low for the motor.
    SpeedBandNarrow {
        /// The frequency that just holds the pressure.
        lowest: Frequency,
        /// The highest frequency.
        most: Frequency,
        /// The lowest that the motor may run at.
        least: Frequency,
    },
    /// The water runs fast in a pipe.
    PipeFast {
        /// The part of the line.
        part: Part,
        /// Its speed.
        velocity: Velocity,
        /// The usual most.
        usual: Velocity,
    },
    /// The pump hangs in the screen or below its top.
    PumpInScreen {
        /// Depth of the top of the screen.
        top: Length,
    },
    /// The figures of the water or the pump lie beyond what the formulas hold for, or contradict one another.
    BeyondFormulas,
    /// Nameplate amperes and the motor's power, efficiency and power factor disagree.
    NameplateDisagrees {
        /// The way concerned.
        way: Way,
        /// Amperes by power, efficiency and power factor.
        expected: ElectricCurrent,
        /// Amperes entered.
        nameplate: ElectricCurrent,
    },
    /// The equipment is not made for the supply.
    SupplyNotTaken {
        /// The supply's volts.
        supply: ElectricPotential,
    },
    /// No frame gives the current that the motor asks for.
    DriveAmpsShort {
        /// The most that a frame gives where it stands.
        derated: ElectricCurrent,
        /// What is required.
        required: ElectricCurrent,
    },
    /// No frame that gives the current is made for a motor of this size.
    DriveSizeShort {
        /// The largest motor that one may carry.
        most: Power,
        /// The motor.
        motor: Power,
    },
    /// Heat or altitude beyond what the equipment is rated for.
    HeatOrAltitude {
        /// Air around it.
        ambient: Celsius,
        /// Height above the sea.
        altitude: Length,
        /// What is left of its amperes; nothing where the maker has to say.
        left: Option<f64>,
    },
    /// The enclosure does not keep out what the place brings.
    EnclosureWrong {
        /// Its type.
        enclosure: EnclosureType,
        /// What it does not meet.
        lacks: Demand,
        /// The plainest type that does.
        plainest: Option<EnclosureType>,
    },
    /// The motor gets less than its volts at the speed that is needed.
    MotorVoltsLow {
        /// Volts over those that it needs.
        share: f64,
        /// Frequency at which the volts run out.
        runs_out: Frequency,
        /// The highest that is needed.
        needed: Frequency,
    },
    /// The volts are gone before they reach the motor.
    NoVoltsLeft,
    /// The motor's peak asks for something between drive and lead, and that is counted with.
    LeadNeedsFilter {
        /// Peak without it.
        peak: ElectricPotential,
        /// What the motor stands.
        limit: ElectricPotential,
        /// What helps.
        remedy: Remedy,
    },
    /// The peak at the motor passes what it stands, and nothing that is fitted helps.
    LeadPeakHigh {
        /// The peak.
        peak: ElectricPotential,
        /// What the motor stands.
        limit: ElectricPotential,
        /// What would help; nothing where no usual remedy reaches so far.
        remedy: Option<Remedy>,
    },
    /// The lead is so long that pulses can meet on it and pass twice the bus.
    PulsesCanMeet {
        /// Twice the bus.
        twice: ElectricPotential,
    },
    /// No listed size of supply conductors meets ampacity and drop.
    SupplyNoSize,
    /// The water around the lead was to count, and too much of the lead lies in the warmer air.
    CoolerWaterIdle {
        /// From the equipment to the water.
        warm: Length,
        /// The most that it may be.
        most: Length,
    },
    /// Much voltage is lost along the supply conductors, or along them and the lead.
    SupplyDropHigh {
        /// The drop as a share.
        share: f64,
        /// The limit.
        limit: f64,
        /// Whether the lead is counted in.
        whole: bool,
    },
    /// The transformer carries nearly all that it may, or more.
    TransformerLoaded {
        /// Load over rating.
        share: f64,
    },
    /// What the utility lets a motor draw is not known.
    UtilityUnknown,
    /// The way draws more than the utility lets a motor draw.
    UtilityPassed {
        /// The largest current.
        current: ElectricCurrent,
        /// The limit.
        limit: ElectricCurrent,
    },
    /// The volts dip far at a start.
    StartDipHigh {
        /// Whether it is the motor's circuit; else the pole.
        at_motor: bool,
        /// The dip as a share.
        dip: f64,
        /// What is borne.
        limit: f64,
    },
    /// More harmonic current than a user may draw.
    HarmonicsOver {
        /// Distortion of the demand.
        distortion: f64,
        /// The most that it may be.
        limit: f64,
    },
    /// The fault current nears or passes what the equipment is marked for.
    FaultOverSccr {
        /// Fault current at the equipment.
        fault: ElectricCurrent,
        /// Its marking.
        marked: ElectricCurrent,
    },
    /// The largest device that the equipment's maker allows is not known.
    DeviceProvisional {
        /// What stands in.
        device: ElectricCurrent,
    },
    /// The device that was entered is smaller than the input asks for.
    DeviceSmall {
        /// What was entered.
        device: ElectricCurrent,
        /// 125 % of the input.
        least: ElectricCurrent,
    },
    /// The device that was entered is larger than the equipment's maker allows.
    DeviceLarge {
        /// What was entered.
        device: ElectricCurrent,
        /// The largest that is marked.
        marked: ElectricCurrent,
    },
    /// The device is larger than the rule lets any be.
    DeviceOver {
        /// What was entered.
        device: ElectricCurrent,
        /// The largest by the rule.
        most: ElectricCurrent,
    },
    /// The fault current goes by a transformer that was not entered whole.
    FaultAssumed {
        /// What it may come to at the equipment with the least impedance that is usual.
        most: ElectricCurrent,
    },
    /// The motor's load is so light that its nameplate does not tell what it draws.
    MotorLight {
        /// Its load over what its rating is at the volts that it has.
        load: f64,
    },
    /// The generator set is too small.
    GeneratorShort {
        /// What is needed.
        needed: Power,
        /// What the site leaves of the set.
        left: Power,
    },
    /// How a supply of 480 V is grounded is not known, or it is grounded at one line, which many drives forbid.
    SupplyGrounding {
        /// Whether it is known to be grounded at one line.
        one_line: bool,
    },
    /// The way runs the motor at full speed only, and the drive was to hold the pressure.
    FullSpeedOnly,
    /// Unequal volts behind a rotary converter leave less of the motor than the pump asks for.
    UnbalanceDerates {
        /// Power at the shaft.
        shaft: Power,
        /// What is left of the motor.
        left: Power,
        /// Whether the service factor does not make up for it.
        beyond_service_factor: bool,
    },
    /// No way to run the motor serves.
    NoWayServes,
    /// The way that was chosen is no longer there.
    WayGone,
    /// The price book can't be read.
    BookUnreadable,
    /// The pressure that is held lies near the end of the transducer's span.
    SensorRange {
        /// Pressure that is held.
        setpoint: Pressure,
        /// The transducer's span.
        span: Pressure,
    },
    /// The transducer and its line stand where they can freeze.
    SensorFreezes,
    /// A reading that nobody may go on with.
    ReadingStop {
        /// Which.
        reading: Reading,
    },
    /// A verdict flips within the likely range of a figure that is assumed.
    AssumptionDecides {
        /// The figure.
        field: Field,
    },
    /// The table of a year's duty can't be read.
    DutyUnreadable,
    /// The pump can't give a flow of the year's duty.
    DutyNotMet {
        /// The flow.
        flow: VolumeRate,
    },
    /// Months or shares of the tariff contradict one another.
    TariffContradicts,
    /// What a way needs beyond its lead has no price: it is left out of its cost.
    PriceMissing {
        /// The way concerned.
        way: Way,
    },
    /// The table of the user's own equipment can't be read.
    EquipmentUnreadable,
    /// An entry beyond what is usual, though inside what the sums hold for.
    BeyondUsual {
        /// The field.
        field: Field,
        /// The usual bound that was passed.
        usual: Entry,
    },
}
