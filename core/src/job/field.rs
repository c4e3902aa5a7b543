//! The figures of a job and where each stands in a file.

use super::spec::{Spec, spec};
use crate::error::InputError;
use crate::quantity::{Entry, Kind};

/// Fields, each with its place in a job file.
macro_rules! fields {
    ($($(#[$doc:meta])* $field:ident = $path:literal;)*) => {
        /// A figure that a person enters.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[non_exhaustive]
        pub enum Field { $($(#[$doc])* $field,)* }

        impl Field {
            /// Every field, in the order of the pages.
            pub const ALL: [Self; [$($path),*].len()] = [$(Self::$field),*];

            /// Where the field stands in a job file.
            #[must_use]
            pub fn path(self) -> &'static str {
                match self { $(Self::$field => $path,)* }
            }
        }
    };
}

fields! {
    /// Depth of the pump below ground.
    PumpSetting = "site.pump_setting";
    /// Depth of the water with the pump at rest.
    StaticLevel = "site.static_level";
    /// How far the water falls while the pump runs.
    Drawdown = "site.drawdown";
    /// Depth of the well's bottom.
    WellDepth = "site.well_depth";
    /// Least depth of water above the pump while it runs.
    MinimumSubmergence = "site.minimum_submergence";
    /// Length of lead from the drive to the well head, or to a motor on the surface.
    SurfaceRun = "site.surface_run";
    /// Warmest surroundings along the lead.
    Ambient = "site.ambient";
    /// Height of the site above sea level.
    Altitude = "site.altitude";
    /// Flow that is asked for.
    Flow = "demand.flow";
    /// Hours in a day that are pumped at most.
    PumpingHours = "demand.hours";
    /// Area that is irrigated.
    IrrigatedArea = "demand.area";
    /// Depth of water spread over it in a day.
    WaterDepth = "demand.depth";
    /// Share of the pumped water that reaches the roots.
    ApplicationEfficiency = "demand.application_efficiency";
    /// People that live on the place.
    People = "demand.people";
    /// Beef cattle.
    BeefCattle = "demand.beef";
    /// Dairy cows in milk.
    DairyCows = "demand.dairy";
    /// Horses.
    Horses = "demand.horses";
    /// Water that a person uses in a day.
    PersonDaily = "demand.person_daily";
    /// Water that a head of beef cattle uses in a day.
    BeefDaily = "demand.beef_daily";
    /// Water that a dairy cow uses in a day.
    DairyDaily = "demand.dairy_daily";
    /// Water that a horse uses in a day.
    HorseDaily = "demand.horse_daily";
    /// Flow of the well for each length of drawdown, measured.
    SpecificCapacity = "well.specific_capacity";
    /// Transmissivity of the aquifer.
    Transmissivity = "well.transmissivity";
    /// Storage coefficient of the aquifer.
    Storage = "well.storage";
    /// Diameter of the hole.
    BoreDiameter = "well.bore_diameter";
    /// Time of pumping that the drawdown is told for.
    AquiferTime = "well.pumping_time";
    /// Loss of the well itself for the square of the flow.
    WellLoss = "well.loss";
    /// Flow that the well gave in its test.
    TestedYield = "well.tested_yield";
    /// Inside diameter of the casing where the motor hangs.
    CasingInside = "well.casing_inside";
    /// Depth of the top of the screen.
    ScreenTop = "well.screen_top";
    /// Temperature of the water.
    WaterTemperature = "well.water_temperature";
    /// From the open water up to a surface pump; below zero where the water stands higher.
    SuctionLift = "line.suction_lift";
    /// Inside diameter of the drop pipe.
    DropInside = "line.drop_inside";
    /// Roughness of the drop pipe.
    DropRoughness = "line.drop_roughness";
    /// Coefficient of Hazen and Williams for the drop pipe.
    DropHazenWilliams = "line.drop_hazen_williams";
    /// Sum of the loss coefficients in the drop pipe.
    DropFittings = "line.drop_fittings";
    /// Length of the suction pipe.
    SuctionLength = "line.suction_length";
    /// Inside diameter of the suction pipe.
    SuctionInside = "line.suction_inside";
    /// Roughness of the suction pipe.
    SuctionRoughness = "line.suction_roughness";
    /// Coefficient of Hazen and Williams for the suction pipe.
    SuctionHazenWilliams = "line.suction_hazen_williams";
    /// Sum of the loss coefficients in the suction pipe.
    SuctionFittings = "line.suction_fittings";
    /// Length of the pipe on the surface.
    SurfaceLength = "line.surface_length";
    /// Inside diameter of the pipe on the surface.
    SurfaceInside = "line.surface_inside";
    /// Roughness of the pipe on the surface.
    SurfaceRoughness = "line.surface_roughness";
    /// Coefficient of Hazen and Williams for the pipe on the surface.
    SurfaceHazenWilliams = "line.surface_hazen_williams";
    /// Sum of the loss coefficients in the pipe on the surface.
    SurfaceFittings = "line.surface_fittings";
    /// From the ground up to the gauge or outlet; below zero downhill.
    Rise = "line.rise";
    /// Pressure to be held at the gauge.
    Pressure = "line.pressure";
    /// Least pressure rating of tank, pipe and fittings at the gauge.
    PressureRating = "line.pressure_rating";
    /// Volume of the pressure tank.
    TankVolume = "line.tank_volume";
    /// Pressure of the air in the drained tank.
    TankPrecharge = "line.tank_precharge";
    /// Pressure at which the pump starts.
    CutIn = "line.cut_in";
    /// Efficiency of the pump without a curve.
    PumpEfficiency = "pump.efficiency";
    /// Head of the pump against a shut valve at rated speed, without a curve.
    ShutOffHead = "pump.shut_off_head";
    /// Frequency that the pump's curve or shut-off head holds for.
    CurveFrequency = "pump.curve_frequency";
    /// Lowest frequency that the motor may run at.
    LeastFrequency = "pump.least_frequency";
    /// Highest frequency that the motor may run at.
    MostFrequency = "pump.most_frequency";
    /// Net positive suction head that a surface pump requires.
    NpshRequired = "pump.npsh_required";
    /// Margin above it.
    NpshMargin = "pump.npsh_margin";
    /// Outside diameter of a submersible motor.
    MotorDiameter = "pump.motor_diameter";
    /// Inside diameter of a flow sleeve around it.
    SleeveInside = "pump.sleeve_inside";
    /// Least flow that is drawn for long.
    LeastFlow = "pump.least_flow";
    /// Mass of pump and motor.
    PumpMass = "pump.mass";
    /// Rated power of the motor.
    MotorPower = "motor.power";
    /// Nameplate amperes connected for 230 V.
    NameplateAmps230 = "motor.nameplate_amps_230";
    /// Nameplate amperes connected for 460 V.
    NameplateAmps460 = "motor.nameplate_amps_460";
    /// Service factor of the motor.
    ServiceFactor = "motor.service_factor";
    /// Nameplate service-factor amperes connected for 230 V.
    ServiceAmps230 = "motor.service_factor_amps_230";
    /// Nameplate service-factor amperes connected for 460 V.
    ServiceAmps460 = "motor.service_factor_amps_460";
    /// Power factor of the motor.
    MotorPowerFactor = "motor.power_factor";
    /// Efficiency of the motor.
    MotorEfficiency = "motor.efficiency";
    /// Largest voltage drop along the lead.
    AllowedDrop = "cable.allowed_drop";
    /// Rating of the overcurrent device ahead of the drive.
    DeviceAmps = "cable.device";
    /// Part of the cable's price that does not depend on metal.
    CableFixed = "prices.cable_fixed";
    /// Price of the metal as cable.
    CableMetal = "prices.cable_metal";
    /// What the equipment of the 480 V way costs beyond that of the 240 V way.
    ExtraEquipment = "prices.extra_equipment";
    /// Voltage of the single-phase supply, line to line.
    SupplyVolts = "supply.volts";
    /// Rating of the transformer on the pole.
    TransformerRating = "supply.transformer";
    /// Impedance of that transformer.
    TransformerImpedance = "supply.transformer_impedance";
    /// Apparent power of other load on that transformer.
    OtherLoad = "supply.other_load";
    /// Largest current that the utility lets a motor draw.
    UtilityLimit = "supply.utility_limit";
    /// From the transformer to the equipment, along the conductors.
    PoleDistance = "supply.distance";
    /// Warmest surroundings along the supply conductors.
    FeederAmbient = "supply.feeder_ambient";
    /// Largest voltage drop along the supply conductors.
    AllowedSupplyDrop = "supply.allowed_drop";
    /// Largest voltage drop of supply conductors and lead together.
    AllowedWholeDrop = "supply.allowed_whole_drop";
    /// Warmest air around the equipment, in the shade.
    DriveAmbient = "supply.drive_ambient";
    /// What the sun on the cabinet adds.
    SunRise = "supply.sun";
    /// Short-circuit current rating that is marked on the equipment.
    MarkedShortCircuit = "supply.short_circuit_rating";
    /// Dip in the motor's circuit that a start may cause.
    StartDipMotor = "supply.start_dip_motor";
    /// Dip at the pole that a start may cause.
    StartDipPole = "supply.start_dip_pole";
    /// Distance of the nearest three-phase line.
    LineDistance = "supply.line_distance";
    /// Rating of a generator set.
    GeneratorRating = "supply.generator";
    /// Share of that rating that heat and altitude leave.
    GeneratorSite = "supply.generator_site";
    /// Time in which the drive's pulse rises.
    RiseTime = "cable.rise_time";
    /// Speed of a pulse along the lead.
    WaveSpeed = "cable.wave_speed";
    /// Surge impedance of the lead.
    CableImpedance = "cable.surge_impedance";
    /// Surge impedance of the motor.
    MotorImpedance = "motor.surge_impedance";
    /// Largest peak that the motor stands.
    MotorPeakLimit = "motor.peak_limit";
    /// What the utility asks for a line extension of any length.
    LineFixed = "prices.line_fixed";
    /// What it asks for each length.
    LinePrice = "prices.line_price";
    /// Length that it brings without charge.
    LineFree = "prices.line_free";
    /// Hours that the pump runs in a year.
    YearlyHours = "energy.hours";
    /// Price of energy.
    EnergyPrice = "energy.price";
    /// Price of a kilowatt of each month's largest power.
    DemandPrice = "energy.demand_price";
    /// Least months for which that is billed.
    BilledMonths = "energy.billed_months";
    /// What the utility bills each month, whatever is used.
    StandingCharge = "energy.standing";
    /// Months of a year in which the pump runs.
    MonthsOfUse = "energy.months";
    /// Months of a year with prices of their own.
    SeasonMonths = "energy.season_months";
    /// Price of energy in them.
    SeasonPrice = "energy.season_price";
    /// Price of a kilowatt of each month's largest power in them.
    SeasonDemandPrice = "energy.season_demand_price";
    /// Share of a year's energy that falls in them.
    SeasonShare = "energy.season_share";
    /// Carbon dioxide for each kilowatt-hour.
    Carbon = "energy.carbon";
    /// Lowest that the metal's price may turn out.
    MetalLow = "range.metal_low";
    /// Highest that it may.
    MetalHigh = "range.metal_high";
    /// Lowest that the equipment's price may turn out, over what is counted.
    EquipmentLow = "range.equipment_low";
    /// Highest that it may.
    EquipmentHigh = "range.equipment_high";
    /// Lowest that the hours of a year may turn out.
    HoursLow = "range.hours_low";
    /// Highest that they may.
    HoursHigh = "range.hours_high";
    /// Lowest that the price of energy may turn out.
    EnergyLow = "range.energy_low";
    /// Highest that it may.
    EnergyHigh = "range.energy_high";
    /// Discount rate of a year.
    Discount = "energy.discount";
    /// Years that are counted.
    Years = "energy.years";
    /// Pressure at which the transducer gives 20 mA.
    TransducerSpan = "startup.transducer_span";
    /// Wait before the motor starts again.
    RestartDelay = "startup.restart_delay";
}

impl Field {
    /// The field of a place in a job file.
    #[must_use]
    pub fn at(path: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|field| field.path() == path)
    }

    /// The kind of quantity that it holds.
    #[must_use]
    pub fn kind(self) -> Kind {
        self.spec().accepted.unit.kind()
    }

    /// What it accepts and what stands in for it.
    #[must_use]
    pub fn spec(self) -> Spec {
        spec(self)
    }

    /// Checks an entry and returns its value in the unit of the accepted range.
    ///
    /// A value within 10⁻⁹ of an end of the range is that end, so that an end entered in another unit is inside it.
    ///
    /// # Errors
    /// Names the field, what was given and what is accepted; NaN and infinity fail too.
    pub fn check(self, given: Entry) -> Result<f64, InputError> {
        let accepted = self.spec().accepted;
        let Some(value) = given.to(accepted.unit) else {
            return Err(InputError::WrongUnit { field: self, given, accepted });
        };
        if !value.is_finite() {
            return Err(InputError::NotFinite { field: self, accepted });
        }
        let slack = 1e-9 * value.abs();
        if value < accepted.min - slack || value > accepted.max + slack {
            return Err(InputError::OutOfRange { field: self, given, accepted });
        }
        Ok(value.clamp(accepted.min, accepted.max))
    }
}
