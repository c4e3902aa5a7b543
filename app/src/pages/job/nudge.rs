//! The depth by two large keys, for a thumb.

use super::depth_field;
use crate::locale::{depth, entry_text, words};
use crate::state::{Edit, Open};
use leptos::prelude::*;
use std::time::Duration;
use wellwright_core::job::Field;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem};

/// How long a key is held before it goes on, and how fast it goes on.
const HOLD: Duration = Duration::from_millis(450);
const EACH: Duration = Duration::from_millis(110);

/// Two keys and the depth between them.
#[component]
pub fn Nudge(
    /// The open job.
    open: Open,
    /// Called to type the depth.
    on_type: Callback<()>,
) -> impl IntoView {
    let picture = &words().picture;
    let now = Memo::new(move |_| open.answer.with(|answer| answer.depth));
    let text = move || now.get().map_or_else(String::new, |now| depth(now, open.system.get()).text());
    let step = move |direction: f64| {
        if let Some(now) = now.get_untracked() {
            open.pause.run(());
            let next = nudged(now, direction, open.system.get_untracked());
            open.edit.run(Edit::Figure(depth_field(open), Some(next)));
        }
    };
    let name = move || match open.answer.with(|answer| answer.kind) {
        MotorKind::Submersible => picture.pump_at,
        MotorKind::Surface => picture.lead_at,
    };
    let by = move || entry_text(step_of(open.system.get()), open.system.get());
    let held = StoredValue::new(None::<IntervalHandle>);
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let release = move || {
        if let Some(Some(handle)) = waiting.try_update_value(Option::take) {
            handle.clear();
        }
        if let Some(Some(handle)) = held.try_update_value(Option::take) {
            handle.clear();
        }
    };
    on_cleanup(release);
    // A key that is held goes on by itself.
    let hold = move |direction: f64| {
        release();
        let repeat = move || held.set_value(set_interval_with_handle(move || step(direction), EACH).ok());
        waiting.set_value(set_timeout_with_handle(repeat, HOLD).ok());
    };
    let key = move |direction: f64, sign: &'static str, label: fn(&str) -> String| {
        view! {
            <button
                class="btn"
                aria-label=move || label(&by())
                on:click=move |_| step(direction)
                on:pointerdown=move |_| hold(direction)
                on:pointerup=move |_| release()
                on:pointerleave=move |_| release()
                on:pointercancel=move |_| release()
            >
                {sign}
            </button>
        }
    };
    view! {
        <Show when=move || now.get().is_some()>
            <div class="nudge only-phone">
                {key(-1.0, "−", picture.shallower)}
                <button class="btn" on:click=move |_| on_type.run(())>{name}" "<b>{text}</b></button>
                {key(1.0, "+", picture.deeper)}
            </div>
        </Show>
    }
}

/// One press of a key: ten feet, or five meters.
fn step_of(system: UnitSystem) -> Entry {
    match system {
        UnitSystem::Us => Entry::new(10.0, Unit::Foot),
        UnitSystem::Si => Entry::new(5.0, Unit::Meter),
    }
}

/// The depth one step away, on whole steps, inside what the field accepts.
fn nudged(depth: Length, direction: f64, system: UnitSystem) -> Entry {
    let step = step_of(system);
    let range = Field::PumpSetting.spec().accepted;
    let [least, most] = [range.min, range.max].map(|end| Entry::new(end, range.unit).to(step.unit).unwrap_or(end));
    let now = Entry::new(depth.value, Unit::Meter).to(step.unit).unwrap_or(0.0) / step.value;
    // A depth between two steps goes to the near one first; the small slack forgives the rounding of units.
    let next = if direction > 0.0 { (now + 1e-6).floor() + 1.0 } else { (now - 1e-6).ceil() - 1.0 };
    Entry::new((next * step.value).clamp(least, most), step.unit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::feet;

    #[test]
    fn a_nudge_lands_on_whole_steps_and_stays_in_range() {
        let us = |depth: f64, direction| nudged(feet(depth), direction, UnitSystem::Us).value;
        assert_eq!(us(620.0, 1.0), 630.0);
        assert_eq!(us(620.0, -1.0), 610.0);
        assert_eq!(us(617.0, 1.0), 620.0);
        assert_eq!(us(617.0, -1.0), 610.0);
        assert_eq!(us(0.0, -1.0), 0.0);
        assert_eq!(us(3000.0, 1.0), 3000.0);
        let meters = nudged(feet(620.0), 1.0, UnitSystem::Si);
        assert_eq!((meters.value, meters.unit), (190.0, Unit::Meter));
    }
}
