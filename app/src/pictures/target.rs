//! The rod's sliding target: the handle of the depth, by pointer and by keys.

use super::pace::Pace;
use super::scale::{Scale, meters};
use super::spec::View;
use crate::locale::{self, words};
use leptos::ev::{KeyboardEvent, PointerEvent};
use leptos::html::Div;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, feet};

/// A press this near the target takes hold of it where it is.
const HOLD: f64 = 22.0;
/// Key presses farther apart than this are two runs, in milliseconds.
const RUN_OF_KEYS: f64 = 1000.0;

/// Steps of a system: one, a page of them, in its unit.
fn steps(system: UnitSystem) -> (f64, f64, Unit) {
    match system {
        UnitSystem::Us => (1.0, 50.0, Unit::Foot),
        UnitSystem::Si => (0.5, 10.0, Unit::Meter),
    }
}

/// Least and largest depth on whole steps, in the system's unit.
fn limits(system: UnitSystem) -> (f64, f64) {
    let (step, _, unit) = steps(system);
    let accepted = Field::PumpSetting.spec().accepted;
    let end = |value: f64| Entry::new(value, accepted.unit).to(unit).unwrap_or(value);
    // Adding nothing turns a zero below zero into a plain one.
    let least = (end(accepted.min) / step - 1e-9).ceil() * step + 0.0;
    (least, (end(accepted.max) / step + 1e-9).floor() * step)
}

fn number(depth: Length, unit: Unit) -> f64 {
    Entry::new(depth.value, Unit::Meter).to(unit).unwrap_or(0.0)
}

/// The depth at a height, on whole steps.
#[must_use]
pub fn depth_at(scale: &Scale, y: f64, system: UnitSystem) -> Entry {
    let (step, _, unit) = steps(system);
    let (least, most) = limits(system);
    let value = (number(scale.depth(y), unit) / step).round() * step;
    Entry::new(value.clamp(least, most), unit)
}

/// The depth after a key, or `None` for a key that does not move it.
#[must_use]
pub fn depth_after(key: &str, now: Option<Length>, system: UnitSystem) -> Option<Entry> {
    let (step, page, unit) = steps(system);
    let (least, most) = limits(system);
    // In steps; the small slack forgives the rounding of units.
    let at = number(now.unwrap_or(feet(0.0)), unit) / step;
    let value = match key {
        "ArrowDown" | "ArrowRight" => ((at + 1e-6).floor() + 1.0) * step,
        "ArrowUp" | "ArrowLeft" => ((at - 1e-6).ceil() - 1.0) * step,
        "PageDown" => at.round() * step + page,
        "PageUp" => at.round() * step - page,
        "Home" => least,
        "End" => most,
        _ => return None,
    };
    Some(Entry::new(value.clamp(least, most), unit))
}

/// The length that an entry of a depth stands for.
#[must_use]
pub fn length(entry: Entry) -> Length {
    meters(entry.to(Unit::Meter).unwrap_or(0.0))
}

/// The target on its rod.
#[component]
pub fn Target(
    /// Depth of the pump.
    depth: Memo<Option<Length>>,
    /// Whether it is the length of a lead on the surface.
    on_surface: Memo<bool>,
    /// How the picture is looked at.
    view: Memo<View>,
    /// Whether a finger holds it.
    held: RwSignal<bool>,
    /// The depth under the finger.
    slides: RwSignal<Option<Length>>,
    /// Called when a drag or a run of key presses begins.
    on_grab: Callback<()>,
    /// Called with a new depth.
    on_depth: Callback<Entry>,
) -> impl IntoView {
    let rod = NodeRef::<Div>::new();
    let handle = NodeRef::<Div>::new();
    let last_key = StoredValue::new(f64::NEG_INFINITY);
    let scale = move || view.with(|view| view.layout.scale(view.end));
    let y = move || depth.get().map_or(scale().ground, |depth| scale().y(depth));
    let system = move || view.get().system;
    let pace = Pace::of(on_depth);
    let slide = Drag { rod, depth, view, held, slides, pace, grip: StoredValue::new(None) };
    let press = move |event: PointerEvent| {
        if event.button() == 0 {
            on_grab.run(());
            if let Some(handle) = handle.get_untracked() {
                let _ = handle.focus();
            }
            slide.begin(&event);
        }
    };
    // A target that is taken away while it is held is let go after its values are gone.
    let release = move |_: PointerEvent| {
        pace.finish();
        let _ = slides.try_set(None);
        let _ = held.try_set(false);
    };
    let key = move |event: KeyboardEvent| {
        if event.ctrl_key() || event.meta_key() || event.alt_key() {
            return;
        }
        let Some(entry) = depth_after(&event.key(), depth.get_untracked(), view.get_untracked().system) else { return };
        event.prevent_default();
        if event.time_stamp() - last_key.get_value() > RUN_OF_KEYS {
            on_grab.run(());
        }
        last_key.set_value(event.time_stamp());
        on_depth.run(entry);
    };
    let text = move || depth.get().map_or_else(|| "–".to_owned(), |depth| locale::depth(depth, system()).text());
    let now = move || number(depth.get().unwrap_or(feet(0.0)), steps(system()).2);
    view! {
        <div
            class="rod-reach"
            node_ref=rod
            style:left=move || px(view.get().layout.rod_middle() - HOLD)
            style:top=move || px(scale().ground - HOLD)
            style:height=move || px(scale().bottom - scale().ground + 2.0 * HOLD)
            on:pointerdown=press
            on:pointermove=move |event| slide.follow(&event)
            on:pointerup=release
            on:pointercancel=release
            on:lostpointercapture=release
        >
            <div
                class="target"
                node_ref=handle
                class:held=move || held.get()
                class:unset=move || depth.get().is_none()
                role="slider"
                tabindex="0"
                aria-orientation="vertical"
                aria-label=move || if on_surface.get() { words().picture.lead_length } else { words().picture.pump_depth }
                aria-valuemin=move || limits(system()).0.to_string()
                aria-valuemax=move || limits(system()).1.to_string()
                aria-valuenow=move || format!("{:.1}", now()).trim_end_matches(".0").to_owned()
                aria-valuetext=text
                style:top=move || px(y() - scale().ground)
                on:keydown=key
            >
                <svg width="44" height="56" viewBox="-22 -28 44 56" aria-hidden="true">
                    <circle class="face" r="16" />
                    <path class="quarter" d="M0 0V-16A16 16 0 0 1 16 0zM0 0V16A16 16 0 0 1 -16 0z" />
                    <circle class="rim" r="16" />
                    <path class="ways" d="M-5 -20.5l5 -5l5 5M-5 20.5l5 5l5 -5" />
                </svg>
            </div>
        </div>
    }
}

fn px(value: f64) -> String {
    format!("{value:.1}px")
}

/// How a finger holds the target: everything on the screen is taken once, so that the depth stays under the finger's way
/// alone, even where the page moves the picture meanwhile.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Grip {
    /// The scale as it was taken hold of.
    scale: Scale,
    /// From a height on the screen to the target's middle in the picture.
    offset: f64,
}

impl Grip {
    /// Taken hold of at a height on the screen, the rod's room beginning at another; near the target where it is, else
    /// the target comes to the finger.
    fn new(scale: Scale, top: f64, at: f64, target: Option<f64>) -> Self {
        let off = scale.ground - HOLD - top;
        let near = target.map(|target| target - at - off).filter(|far| far.abs() <= HOLD);
        Self { scale, offset: off + near.unwrap_or(0.0) }
    }

    /// The depth for a height on the screen.
    fn depth(self, at: f64, system: UnitSystem) -> Entry {
        depth_at(&self.scale, at + self.offset, system)
    }
}

/// A drag along the rod.
#[derive(Clone, Copy)]
struct Drag {
    rod: NodeRef<Div>,
    depth: Memo<Option<Length>>,
    view: Memo<View>,
    held: RwSignal<bool>,
    slides: RwSignal<Option<Length>>,
    pace: Pace,
    grip: StoredValue<Option<Grip>>,
}

impl Drag {
    fn begin(self, event: &PointerEvent) {
        let Some(rod) = self.rod.get_untracked() else { return };
        event.prevent_default();
        let _ = rod.unchecked_ref::<web_sys::Element>().set_pointer_capture(event.pointer_id());
        self.held.set(true);
        let scale = self.view.with_untracked(|view| view.layout.scale(view.end));
        let target = self.depth.get_untracked().map(|depth| scale.y(depth));
        let at = f64::from(event.client_y());
        let grip = Grip::new(scale, rod.get_bounding_client_rect().top(), at, target);
        self.grip.set_value(Some(grip));
        // Where the target is held where it is, the depth stays as it was entered.
        if target.is_none_or(|target| (at + grip.offset - target).abs() > 0.5) {
            self.go(grip, at);
        }
    }

    fn follow(self, event: &PointerEvent) {
        if self.held.get_untracked()
            && let Some(grip) = self.grip.get_value()
        {
            self.go(grip, f64::from(event.client_y()));
        }
    }

    fn go(self, grip: Grip, at: f64) {
        let entry = grip.depth(at, self.view.get_untracked().system);
        if self.depth.get_untracked() != Some(length(entry)) {
            self.slides.set(Some(length(entry)));
            self.pace.ask(entry);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::facts::Facts;
    use super::super::scale::scale_end;
    use super::*;
    use wellwright_core::evaluate::Basis;

    #[test]
    fn a_drag_lands_on_whole_steps_inside_the_scale() {
        let scale = Scale { ground: 100.0, bottom: 400.0, end: feet(1000.0) };
        let at = |y, system| depth_at(&scale, y, system).value;
        assert_eq!(at(100.0, UnitSystem::Us), 0.0);
        assert_eq!(at(400.0, UnitSystem::Us), 1000.0);
        assert_eq!(at(900.0, UnitSystem::Us), 1000.0);
        assert_eq!(at(-50.0, UnitSystem::Us), 0.0);
        assert_eq!(at(250.3, UnitSystem::Us), 501.0);
        assert_eq!(at(250.0, UnitSystem::Si), 152.5);
    }

    #[test]
    fn a_grip_holds_the_target_where_it_is_or_brings_it_to_the_finger() {
        let scale = Scale { ground: 100.0, bottom: 400.0, end: feet(1000.0) };
        // The rod's room begins at 578 on the screen, so the ground line lies at 600.
        let grip = |at: f64| Grip::new(scale, 578.0, at, Some(250.0));
        let depth = |grip: Grip, at: f64| grip.depth(at, UnitSystem::Us).value;
        assert_eq!([depth(grip(740.0), 740.0), depth(grip(740.0), 770.0)], [500.0, 600.0]);
        assert_eq!([depth(grip(720.0), 720.0), depth(grip(720.0), 750.0)], [400.0, 500.0]);
        assert_eq!(depth(Grip::new(scale, 578.0, 720.0, None), 720.0), 400.0);
    }

    #[test]
    fn letting_go_at_the_end_of_a_scale_gives_a_deeper_one() {
        for system in [UnitSystem::Us, UnitSystem::Si] {
            let mut facts = Facts { depth: Some(feet(1.0)), ..Facts::default() };
            let deepest = limits(system).1;
            for _ in 0..20 {
                let scale = Scale { ground: 100.0, bottom: 400.0, end: scale_end(&facts, Basis::Installed, system) };
                let lowest = depth_at(&scale, 900.0, system);
                assert!(lowest.value == deepest || Some(length(lowest)) > facts.depth, "{lowest:?}");
                facts.depth = Some(length(lowest));
            }
            assert_eq!(depth_after("ArrowUp", facts.depth, system).map(|entry| entry.value < deepest), Some(true));
            assert_eq!(facts.depth.map(|depth| (number(depth, steps(system).2) - deepest).abs() < 1e-6), Some(true));
        }
    }

    #[test]
    fn keys_step_and_stay_in_range() {
        let after = |key: &str, now: f64, system| depth_after(key, Some(feet(now)), system).map(|entry| entry.value);
        assert_eq!(after("ArrowDown", 620.0, UnitSystem::Us), Some(621.0));
        assert_eq!(after("ArrowUp", 620.0, UnitSystem::Us), Some(619.0));
        assert_eq!(after("ArrowDown", 620.4, UnitSystem::Us), Some(621.0));
        assert_eq!(after("PageDown", 620.0, UnitSystem::Us), Some(670.0));
        assert_eq!(after("PageUp", 20.0, UnitSystem::Us), Some(0.0));
        assert_eq!(after("End", 620.0, UnitSystem::Us), Some(3000.0));
        assert_eq!(after("Home", 620.0, UnitSystem::Us), Some(0.0));
        assert_eq!(after("ArrowDown", 620.0, UnitSystem::Si), Some(189.0));
        assert_eq!(after("End", 620.0, UnitSystem::Si), Some(914.0));
        assert_eq!(after("a", 620.0, UnitSystem::Us), None);
        assert_eq!(depth_after("ArrowDown", None, UnitSystem::Us).map(|entry| entry.value), Some(1.0));
    }
}
