//! The picture of the peak voltage at the motor.

use super::Text;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::long_lead::Limit;

/// Words of the picture.
pub struct Peak {
    pub label: Text,
    pub volts_axis: fn(&str) -> String,
    pub length_axis: fn(&str) -> String,
    pub axis_broken: Text,
    pub and_broken: fn(&str) -> String,
    pub bus: fn(&str) -> String,
    pub bus_short: fn(&str) -> String,
    pub limit: fn(Limit, &str) -> String,
    pub limit_short: fn(&str) -> String,
    pub limit_beyond: fn(&str) -> String,
    pub limit_higher: fn(&str) -> String,
    pub critical: fn(&str) -> String,
    pub critical_short: fn(&str) -> String,
    pub lead: fn(&str) -> String,
    pub without: fn(Remedy, &str) -> String,
    pub fitted: fn(Remedy) -> Text,
    pub not_enough: fn(Text) -> String,
    pub over: Text,
    pub over_from: fn(&str) -> String,
    pub twice: fn(&str) -> String,
    pub twice_short: fn(&str) -> String,
    pub meet: fn(&str) -> String,
    pub alt_bus: fn(&str) -> String,
    pub alt_rise: fn(&str, &str) -> String,
    pub alt_falls: fn(&str, &str) -> String,
    pub alt_limit: fn(Limit, &str) -> String,
    pub alt_bare: fn(&str) -> String,
    pub alt_lead: fn(&str, &str) -> String,
    pub alt_over: Text,
    pub alt_within: Text,
    pub alt_meet: fn(&str, &str) -> String,
    pub alt_fitted: fn(Remedy) -> Text,
    pub alt_not_enough: Text,
}

/// US English.
pub const ENGLISH: Peak = Peak {
    label: "Peak voltage at the motor by length of the lead",
    volts_axis: |unit| format!("peak at the motor, {unit}"),
    length_axis: |unit| format!("length of the lead, {unit}"),
    axis_broken: "axis broken",
    and_broken: |axis| format!("{axis}, axis broken"),
    bus: |volts| format!("drive’s bus {volts}"),
    bus_short: |volts| format!("bus {volts}"),
    limit: |limit, volts| match limit {
        Limit::GeneralPurpose => format!("limit {volts}, general-purpose motor"),
        Limit::InverterDuty(_) => format!("limit {volts}, inverter-duty motor"),
        Limit::Typed(_) => format!("limit {volts}, as entered"),
    },
    limit_short: |volts| format!("limit {volts}"),
    limit_beyond: |volts| format!("limit {volts}, higher than this picture"),
    limit_higher: |volts| format!("limit {volts}, higher"),
    critical: |length| format!("critical length {length}"),
    critical_short: |length| format!("critical {length}"),
    lead: |length| format!("lead {length}"),
    without: |remedy, volts| match remedy {
        Remedy::NoneNeeded => volts.to_owned(),
        Remedy::OutputReactor => format!("{volts} without the reactor"),
        Remedy::DvDtFilter | Remedy::SineFilter => format!("{volts} without the filter"),
    },
    fitted: |remedy| match remedy {
        Remedy::NoneNeeded => "nothing fitted",
        Remedy::OutputReactor => "output reactor fitted",
        Remedy::DvDtFilter => "dV/dt filter fitted",
        Remedy::SineFilter => "sine filter fitted",
    },
    not_enough: |fitted| format!("{fitted}: not enough"),
    over: "above the limit",
    over_from: |length| format!("above the limit from {length}"),
    twice: |volts| format!("can pass twice the bus, {volts}"),
    twice_short: |volts| format!("can pass {volts}"),
    meet: |length| format!("pulses can meet from {length}"),
    alt_bus: |volts| format!("The drive’s bus holds {volts}."),
    alt_rise: |volts, length| {
        format!(
            "The peak at the motor rises with the lead to {volts} at the critical length, {length}, and stays level."
        )
    },
    alt_falls: |volts, length| {
        format!(
            "The peak at the motor falls with the lead to {volts} at the critical length, {length}, and stays level."
        )
    },
    alt_limit: |limit, volts| match limit {
        Limit::GeneralPurpose => format!("A general-purpose motor stands {volts}."),
        Limit::InverterDuty(_) => format!("An inverter-duty motor of its voltage stands {volts}."),
        Limit::Typed(_) => format!("The motor stands {volts}, as entered."),
    },
    alt_bare: |length| format!("A lead passes that from {length} on."),
    alt_lead: |length, volts| format!("This lead is {length} long: {volts} with nothing in between."),
    alt_over: "That is above the limit.",
    alt_within: "That is within the limit.",
    alt_meet: |length, volts| {
        format!("From {length} on pulses can meet on the lead, and the peak can pass twice the bus, {volts}.")
    },
    alt_fitted: |remedy| match remedy {
        Remedy::NoneNeeded => "Nothing is fitted.",
        Remedy::OutputReactor => "An output reactor is fitted.",
        Remedy::DvDtFilter => "A dV/dt filter is fitted.",
        Remedy::SineFilter => "A sine filter is fitted.",
    },
    alt_not_enough: "That is not enough.",
};

/// Spanish.
pub const SPANISH: Peak = Peak {
    label: "Voltaje pico en el motor según el largo del cable",
    volts_axis: |unit| format!("pico en el motor, {unit}"),
    length_axis: |unit| format!("largo del cable, {unit}"),
    axis_broken: "eje cortado",
    and_broken: |axis| format!("{axis}, eje cortado"),
    bus: |volts| format!("bus del variador {volts}"),
    bus_short: |volts| format!("bus a {volts}"),
    limit: |limit, volts| match limit {
        Limit::GeneralPurpose => format!("límite {volts}, motor de uso general"),
        Limit::InverterDuty(_) => format!("límite {volts}, motor para variador"),
        Limit::Typed(_) => format!("límite {volts}, según lo escrito"),
    },
    limit_short: |volts| format!("límite {volts}"),
    limit_beyond: |volts| format!("límite {volts}, más alto que esta figura"),
    limit_higher: |volts| format!("límite {volts}, más alto"),
    critical: |length| format!("longitud crítica {length}"),
    critical_short: |length| format!("crítica {length}"),
    lead: |length| format!("cable {length}"),
    without: |remedy, volts| match remedy {
        Remedy::NoneNeeded => volts.to_owned(),
        Remedy::OutputReactor => format!("{volts} sin el reactor"),
        Remedy::DvDtFilter | Remedy::SineFilter => format!("{volts} sin el filtro"),
    },
    fitted: |remedy| match remedy {
        Remedy::NoneNeeded => "sin nada instalado",
        Remedy::OutputReactor => "con reactor de salida",
        Remedy::DvDtFilter => "con filtro dV/dt",
        Remedy::SineFilter => "con filtro senoidal",
    },
    not_enough: |fitted| format!("{fitted}: no basta"),
    over: "rebasa el límite",
    over_from: |length| format!("rebasa el límite desde {length}"),
    twice: |volts| format!("puede pasar del doble del bus, {volts}"),
    twice_short: |volts| format!("puede pasar de {volts}"),
    meet: |length| format!("los pulsos se pueden encimar desde {length}"),
    alt_bus: |volts| format!("El bus del variador está a {volts}."),
    alt_rise: |volts, length| {
        format!(
            "El pico en el motor sube con el cable hasta {volts} a la longitud crítica, {length}, y de ahí no sube."
        )
    },
    alt_falls: |volts, length| {
        format!(
            "El pico en el motor baja con el cable hasta {volts} a la longitud crítica, {length}, y de ahí no baja."
        )
    },
    alt_limit: |limit, volts| match limit {
        Limit::GeneralPurpose => format!("Un motor de uso general aguanta {volts}."),
        Limit::InverterDuty(_) => format!("Un motor para variador de su voltaje aguanta {volts}."),
        Limit::Typed(_) => format!("El motor aguanta {volts}, según lo escrito."),
    },
    alt_bare: |length| format!("Un cable rebasa eso desde {length}."),
    alt_lead: |length, volts| format!("Este cable mide {length}: {volts} sin nada de por medio."),
    alt_over: "Rebasa el límite.",
    alt_within: "Está dentro del límite.",
    alt_meet: |length, volts| {
        format!(
            "Desde {length} los pulsos se pueden encimar en el cable, y el pico puede pasar del doble del bus, {volts}."
        )
    },
    alt_fitted: |remedy| match remedy {
        Remedy::NoneNeeded => "No hay nada instalado.",
        Remedy::OutputReactor => "Hay un reactor de salida.",
        Remedy::DvDtFilter => "Hay un filtro dV/dt.",
        Remedy::SineFilter => "Hay un filtro senoidal.",
    },
    alt_not_enough: "Eso no basta.",
};
