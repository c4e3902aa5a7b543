//! The handle at the foot of the system's curve: it sets the pressure at the gauge, by pointer and by keys.

use super::chart::Foot;
use super::map::Map;
use crate::locale::{self, words};
use leptos::ev::{KeyboardEvent, PointerEvent};
use leptos::html::Div;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Length, Pressure, Unit, UnitSystem, in_kilopascals, in_psi};
use wellwright_core::water::head::pressure_of_head;

/// Half the size of the handle.
const HALF: f64 = 22.0;
/// Key presses farther apart than this are two runs, in milliseconds.
const RUN_OF_KEYS: f64 = 1000.0;

/// Steps of a system: one, a page of them, in its unit.
fn steps(units: UnitSystem) -> (f64, f64, Unit) {
    match units {
        UnitSystem::Us => (1.0, 10.0, Unit::PoundPerSquareInch),
        UnitSystem::Si => (5.0, 50.0, Unit::Kilopascal),
    }
}

/// Least and largest pressure on whole steps that the field accepts, in the system's unit.
fn limits(units: UnitSystem) -> (f64, f64) {
    let (step, _, unit) = steps(units);
    let accepted = Field::Pressure.spec().accepted;
    let end = |value: f64| Entry::new(value, accepted.unit).to(unit).unwrap_or(value) / step;
    // Adding nothing turns a zero below zero into a plain one.
    ((end(accepted.min) - 1e-9).ceil() * step + 0.0, (end(accepted.max) + 1e-9).floor() * step)
}

fn number(pressure: Pressure, units: UnitSystem) -> f64 {
    match units {
        UnitSystem::Us => in_psi(pressure),
        UnitSystem::Si => in_kilopascals(pressure),
    }
}

/// The pressure, on whole steps, that brings the system's foot nearest to a head.
#[must_use]
pub fn pressure_at(foot: &Foot, head: Length, units: UnitSystem) -> Option<Entry> {
    let (step, _, unit) = steps(units);
    let (least, most) = limits(units);
    let pressure = pressure_of_head(head - foot.base, foot.density).ok()?;
    let value = (number(pressure, units) / step).round() * step;
    Some(Entry::new(value.clamp(least, most) + 0.0, unit))
}

/// The pressure after a key, or `None` for a key that does not move it.
#[must_use]
pub fn pressure_after(key: &str, now: Pressure, units: UnitSystem) -> Option<Entry> {
    let (step, page, unit) = steps(units);
    let (least, most) = limits(units);
    // In steps; the small slack forgives the rounding of units.
    let at = number(now, units) / step;
    let value = match key {
        "ArrowUp" | "ArrowRight" => ((at + 1e-6).floor() + 1.0) * step,
        "ArrowDown" | "ArrowLeft" => ((at - 1e-6).ceil() - 1.0) * step,
        "PageUp" => at.round() * step + page,
        "PageDown" => at.round() * step - page,
        "Home" => least,
        "End" => most,
        _ => return None,
    };
    Some(Entry::new(value.clamp(least, most) + 0.0, unit))
}

/// How a finger holds the handle: the map is taken once, so that the pressure follows the finger alone.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Grip {
    map: Map,
    /// From a height on the screen to the handle's middle in the picture.
    offset: f64,
    /// Height on the screen where it was taken hold of.
    from: f64,
}

/// The handle.
#[component]
pub fn Setpoint(
    /// The system at no flow.
    foot: Memo<Option<Foot>>,
    /// Where heads stand.
    map: Memo<Map>,
    /// Units.
    units: Signal<UnitSystem>,
    /// Whether a finger holds it.
    held: RwSignal<bool>,
    /// Called when a drag or a run of key presses begins.
    on_grab: Callback<()>,
    /// Called with a new pressure.
    on_pressure: Callback<Entry>,
) -> impl IntoView {
    let handle = NodeRef::<Div>::new();
    let last_key = StoredValue::new(f64::NEG_INFINITY);
    let grip = StoredValue::new(None::<Grip>);
    let place = move |map: Map| foot.get().map_or(map.bottom, |foot| map.y(foot.head).clamp(map.top, map.bottom));
    let press = move |event: PointerEvent| {
        let (Some(element), Some(foot)) = (handle.get_untracked(), foot.get_untracked()) else { return };
        if event.button() != 0 {
            return;
        }
        event.prevent_default();
        on_grab.run(());
        let _ = element.focus();
        let _ = element.unchecked_ref::<web_sys::Element>().set_pointer_capture(event.pointer_id());
        let (map, from) = (map.get_untracked(), f64::from(event.client_y()));
        grip.set_value(Some(Grip { map, offset: map.y(foot.head) - from, from }));
        held.set(true);
    };
    let slide = move |event: PointerEvent| {
        let (true, Some(grip), Some(foot)) = (held.get_untracked(), grip.get_value(), foot.get_untracked()) else {
            return;
        };
        let at = f64::from(event.client_y());
        // Held where it is, the pressure stays as it was entered.
        if at == grip.from {
            return;
        }
        let entry = pressure_at(&foot, grip.map.head(at + grip.offset), units.get_untracked());
        let now = number(foot.pressure, units.get_untracked());
        if let Some(entry) = entry.filter(|entry| (entry.value - now).abs() > 1e-6) {
            on_pressure.run(entry);
        }
    };
    // A handle that is taken away while it is held is let go after its values are gone.
    let release = move |_: PointerEvent| {
        let _ = held.try_set(false);
    };
    let key = move |event: KeyboardEvent| {
        if event.ctrl_key() || event.meta_key() || event.alt_key() {
            return;
        }
        let Some(foot) = foot.get_untracked() else { return };
        let Some(entry) = pressure_after(&event.key(), foot.pressure, units.get_untracked()) else { return };
        event.prevent_default();
        if event.time_stamp() - last_key.get_value() > RUN_OF_KEYS {
            on_grab.run(());
        }
        last_key.set_value(event.time_stamp());
        on_pressure.run(entry);
    };
    let now = move || foot.get().map_or(0.0, |foot| number(foot.pressure, units.get()));
    let text = move || foot.get().map_or_else(String::new, |foot| locale::pressure(foot.pressure, units.get()).text());
    view! {
        <div
            class="setpoint"
            node_ref=handle
            class:held=move || held.get()
            class:unset=move || foot.get().is_some_and(|foot| foot.assumed)
            role="slider"
            tabindex="0"
            aria-orientation="vertical"
            aria-label=words().charts.set_pressure
            aria-valuemin=move || limits(units.get()).0.to_string()
            aria-valuemax=move || limits(units.get()).1.to_string()
            aria-valuenow=move || format!("{:.1}", now()).trim_end_matches(".0").to_owned()
            aria-valuetext=text
            style:left=move || px(map.get().left - HALF)
            style:top=move || px(place(map.get()) - HALF)
            on:pointerdown=press
            on:pointermove=slide
            on:pointerup=release
            on:pointercancel=release
            on:lostpointercapture=release
            on:keydown=key
        >
            <svg width="44" height="56" viewBox="-22 -28 44 56" aria-hidden="true">
                <circle class="face" r="13" />
                <path class="quarter" d="M0 0V-13A13 13 0 0 1 13 0zM0 0V13A13 13 0 0 1 -13 0z" />
                <circle class="rim" r="13" />
                <path class="ways" d="M-5 -17.5l5 -5l5 5M-5 17.5l5 5l5 -5" />
            </svg>
        </div>
    }
}

fn px(value: f64) -> String {
    format!("{value:.1}px")
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::{feet, kilograms_per_cubic_meter, psi};

    /// A foot of 498 ft without pressure, in water of 999 kg/m³.
    fn foot() -> Foot {
        let density = kilograms_per_cubic_meter(999.0);
        Foot { head: feet(636.6), base: feet(498.0), pressure: psi(60.0), assumed: false, density }
    }

    // 138.6 ft of 999 kg/m³: 0.3048 · 138.6 · 999 · 9.80665 = 413.9 kPa = 60.03 psi.
    #[test]
    fn a_height_gives_a_pressure_on_whole_steps() {
        let at = |head: f64, units| pressure_at(&foot(), feet(head), units).unwrap();
        assert_eq!(at(636.6, UnitSystem::Us), Entry::new(60.0, Unit::PoundPerSquareInch));
        assert_eq!(at(636.6, UnitSystem::Si), Entry::new(415.0, Unit::Kilopascal));
        assert_eq!(at(498.2, UnitSystem::Us).value, 0.0);
    }

    #[test]
    fn a_pressure_stays_inside_what_the_field_accepts() {
        for units in [UnitSystem::Us, UnitSystem::Si] {
            let ends = [feet(-100.0), feet(9000.0)].map(|head| pressure_at(&foot(), head, units).unwrap());
            let keys = ["Home", "End"].map(|key| pressure_after(key, psi(60.0), units).unwrap());
            let paged = pressure_after("PageDown", psi(2.0), units).unwrap();
            for entry in ends.into_iter().chain(keys).chain([paged]) {
                assert!(Field::Pressure.check(entry).is_ok(), "{entry:?}");
            }
            assert_eq!((ends[0].value, ends[1].value), limits(units));
        }
        // 300 psi = 2,068.4 kPa.
        assert_eq!([limits(UnitSystem::Us), limits(UnitSystem::Si)], [(0.0, 300.0), (0.0, 2065.0)]);
    }

    #[test]
    fn keys_go_up_and_down_by_steps_and_pages() {
        let after = |key: &str, now: f64, units| pressure_after(key, psi(now), units).map(|entry| entry.value);
        let us = |key: &str, now: f64| after(key, now, UnitSystem::Us);
        assert_eq!(us("ArrowUp", 60.0), Some(61.0));
        assert_eq!(us("ArrowDown", 60.0), Some(59.0));
        assert_eq!(us("ArrowUp", 60.4), Some(61.0));
        assert_eq!(us("ArrowDown", 60.4), Some(60.0));
        assert_eq!(us("PageUp", 60.0), Some(70.0));
        assert_eq!(us("PageUp", 295.0), Some(300.0));
        assert_eq!(us("ArrowDown", 0.0), Some(0.0));
        assert_eq!(us("a", 60.0), None);
        // 60 psi = 413.7 kPa.
        assert_eq!(after("ArrowUp", 60.0, UnitSystem::Si), Some(415.0));
        assert_eq!(after("PageDown", 60.0, UnitSystem::Si), Some(365.0));
    }
}
