//! Steps of a figure by keys: arrows one step, with Shift or by page keys ten.

use leptos::ev::KeyboardEvent;
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Unit};

/// One step of a figure: what a person would turn it by.
fn step(field: Field, unit: Unit) -> f64 {
    match (field, unit) {
        (Field::MotorPowerFactor | Field::MotorEfficiency, _) => 0.01,
        (Field::DeviceAmps, _) => 5.0,
        (_, Unit::Foot | Unit::DegreeCelsius | Unit::DegreeFahrenheit) => 1.0,
        (_, Unit::Dollar) => 10.0,
        (_, Unit::DollarPerFoot | Unit::DollarPerMeter | Unit::DollarPerPound | Unit::DollarPerKilogram) => 0.1,
        (_, Unit::Ampere) => 0.1,
        _ => 0.5,
    }
}

/// The entry that a key leads to, on whole steps and inside what the field accepts.
pub fn stepped(event: &KeyboardEvent, field: Field, now: Option<Entry>, unit: Unit) -> Option<Entry> {
    if event.ctrl_key() || event.meta_key() || event.alt_key() {
        return None;
    }
    let many = if event.shift_key() { 10.0 } else { 1.0 };
    let steps = match event.key().as_str() {
        "ArrowUp" => many,
        "ArrowDown" => -many,
        "PageUp" => 10.0,
        "PageDown" => -10.0,
        _ => return None,
    };
    moved(field, now?, unit, steps)
}

fn moved(field: Field, now: Entry, unit: Unit, steps: f64) -> Option<Entry> {
    let range = field.spec().accepted;
    let step = step(field, unit);
    let value = now.to(unit).filter(|value| value.is_finite())?;
    let [a, b] = [range.min, range.max].map(|end| Entry::new(end, range.unit).to(unit));
    let (least, most) = (a?.min(b?), a?.max(b?));
    // A figure between two steps goes to the near one first; the small slack forgives the rounding of units.
    let place = value / step;
    let next = if steps > 0.0 { (place + 1e-6).floor() + steps } else { (place - 1e-6).ceil() + steps };
    // Division by a whole number keeps tenths as they are written.
    let value = if step < 1.0 { next / (1.0 / step).round() } else { next * step };
    Some(Entry::new(value.clamp(least, most), unit))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_land_on_whole_steps_inside_the_range() {
        let depth = |value, steps| moved(Field::PumpSetting, Entry::new(value, Unit::Foot), Unit::Foot, steps);
        assert_eq!(depth(620.0, 1.0), Some(Entry::new(621.0, Unit::Foot)));
        assert_eq!(depth(620.4, 1.0), Some(Entry::new(621.0, Unit::Foot)));
        assert_eq!(depth(620.4, -1.0), Some(Entry::new(620.0, Unit::Foot)));
        assert_eq!(depth(2995.0, 10.0), Some(Entry::new(3000.0, Unit::Foot)));
        assert_eq!(depth(0.0, -1.0), Some(Entry::new(0.0, Unit::Foot)));
        assert_eq!(depth(f64::NAN, 1.0), None);
        let factor = moved(Field::MotorPowerFactor, Entry::new(0.78, Unit::One), Unit::One, 1.0);
        assert!(factor.is_some_and(|entry| (entry.value - 0.79).abs() < 1e-12));
        let meters = moved(Field::PumpSetting, Entry::new(620.0, Unit::Foot), Unit::Meter, 1.0);
        assert_eq!(meters, Some(Entry::new(189.0, Unit::Meter)));
    }
}
