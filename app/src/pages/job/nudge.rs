//! The depth by two large keys, for a thumb.

use crate::locale::{depth, entry_text, words};
use crate::state::{Edit, Open};
use leptos::prelude::*;
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem};

/// Two keys and the depth between them.
#[component]
pub fn Nudge(
    /// The open job.
    open: Open,
) -> impl IntoView {
    let picture = &words().picture;
    let now = Memo::new(move |_| {
        open.answer.with(|answer| answer.inputs.pump_setting.as_ref().ok().map(|known| known.value))
    });
    let text = move || now.get().map_or_else(String::new, |now| depth(now, open.system.get()).text());
    let step = move |direction: f64| {
        if let Some(now) = now.get_untracked() {
            open.pause.run(());
            let next = nudged(now, direction, open.system.get_untracked());
            open.edit.run(Edit::Figure(Field::PumpSetting, Some(next)));
        }
    };
    let by = move || entry_text(step_of(open.system.get()), open.system.get());
    view! {
        <Show when=move || now.get().is_some()>
            <div class="nudge only-phone">
                <button class="btn" aria-label=move || (picture.shallower)(&by()) on:click=move |_| step(-1.0)>"−"</button>
                <output>{picture.pump_at}" "<b>{text}</b></output>
                <button class="btn" aria-label=move || (picture.deeper)(&by()) on:click=move |_| step(1.0)>"+"</button>
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
