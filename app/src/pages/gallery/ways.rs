//! The peak voltage at the motor and the diagrams of the ways in the gallery, with invented leads.

use crate::locale::words;
use crate::parts::one_line::OneLine;
use crate::pictures::PeakPicture;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::cable::filter::{Practice, Remedy, remedy};
use wellwright_core::cable::long_lead::{
    Limit, Wave, critical_length, longest_unfiltered, peak, pulses_can_meet, reflection, usual_cable_impedance,
    usual_motor_impedance,
};
use wellwright_core::evaluate::Stress;
use wellwright_core::job::Way;
use wellwright_core::power::family::{Change, Kind};
use wellwright_core::power::generic::generic;
use wellwright_core::quantity::{ElectricPotential, feet, horsepower, meters_per_second, seconds, volts};

/// The stress on a motor of 7.5 hp behind a drive of this bus, at the end of a lead.
fn stress(bus: f64, lead: f64, limit: Limit, fitted: Option<Remedy>) -> Option<Stress> {
    let (bus, length): (ElectricPotential, _) = (volts(bus), feet(lead));
    let wave = Wave {
        speed: meters_per_second(150e6),
        rise: seconds(0.1e-6),
        cable: usual_cable_impedance(),
        motor: usual_motor_impedance(horsepower(7.5)),
    };
    let critical = critical_length(wave.speed, wave.rise).ok()?;
    let peak = peak(bus, wave, length).ok()?;
    let least = remedy((peak, bus), limit.peak(), length, &Practice::default()).ok()?;
    let fitted = fitted.or(least).unwrap_or(Remedy::NoneNeeded);
    Some(Stress {
        bus,
        wave,
        reflection: reflection(wave.motor, wave.cable).ok()?,
        critical,
        length,
        peak,
        limit,
        bare: longest_unfiltered(bus, wave, limit.peak()).ok()?,
        meet: pulses_can_meet(length, critical),
        least,
        fitted,
        cured: least.is_some_and(|least| fitted >= least),
    })
}

/// Pictures and diagrams.
#[component]
pub fn Ways() -> impl IntoView {
    let app = app();
    let words = words();
    let system = Signal::derive(move || app.settings.get().units);
    let theme = Signal::derive(move || app.settings.get().theme);
    let cases = [
        (Way::V480, stress(720.0, 480.0, Limit::GeneralPurpose, None)),
        (Way::V240, stress(370.0, 90.0, Limit::GeneralPurpose, None)),
        (Way::V480, stress(720.0, 200.0, Limit::Typed(volts(1300.0)), Some(Remedy::OutputReactor))),
    ];
    let pictures = cases.map(|(way, stress)| {
        let stress = Memo::new(move |_| stress);
        view! { <PeakPicture stress=stress way=Signal::stored(Some(way)) system=system theme=theme /> }
    });
    // A motor of 480 V where the equipment changes the voltage, else each way in turn, and once without one.
    let way = |index: usize, kind: Kind| match (generic(kind).change, index) {
        (_, 2) => None,
        (Change::None, _) if kind == Kind::SinglePhaseMotor || index % 2 == 1 => Some(Way::V240),
        _ => Some(Way::V480),
    };
    let diagrams = Kind::ALL.into_iter().enumerate().map(|(index, kind)| {
        view! { <p class="diagram"><OneLine kind=kind way=way(index, kind) /><span>{(words.gallery.kind)(kind)}</span></p> }
    });
    view! {
        <section class="wide">
            <h2>{words.gallery.peak_picture}</h2>
            {pictures.into_iter().collect_view()}
        </section>
        <section>
            <h2>{words.gallery.one_line}</h2>
            {diagrams.collect_view()}
        </section>
    }
}
