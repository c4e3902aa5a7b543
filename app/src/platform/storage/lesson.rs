//! How far a learner went through the lesson, in the browser's local storage: one entry.
//!
//! An entry that can't be read is not written over: before the first write it is laid beside, under a key of its own.

use super::entries::{read as read_sheet, write as write_sheet};
use super::place::{Browser, Place};
use super::{Saved, new_id, there};
use crate::state::learning::within;
use crate::state::{Learning, Progress};
use leptos::ev;
use leptos::prelude::{on_cleanup, window_event_listener};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use wellwright_core::papers::LessonStep;

const LESSON: &str = "wellwright.lesson";
const UNREAD: &str = "wellwright.lesson.unread.";
/// The version of the entry's form.
const VERSION: u64 = 1;

/// How far the lesson went; its beginning where nothing was kept.
#[must_use]
pub fn load_lesson() -> Learning {
    if there() { load(&Browser) } else { Learning::anew(Saved::Nowhere, None) }
}

/// Keeps how far the lesson went.
pub fn save_lesson(learning: &mut Learning) -> Saved {
    match there() {
        false => Saved::Nowhere,
        true if save(&Browser, learning, new_id) => Saved::Yes,
        true => Saved::Full,
    }
}

/// Calls back when another tab changes the entry, as long as what calls this stands.
pub fn follow_lesson(changed: impl Fn() + 'static) {
    let handle = window_event_listener(ev::storage, move |event| {
        // Without a key everything was deleted.
        if event.key().is_none_or(|key| key == LESSON) {
            changed();
        }
    });
    on_cleanup(move || handle.remove());
}

fn load(place: &impl Place) -> Learning {
    let Some(text) = place.get(LESSON) else { return Learning::anew(Saved::Yes, None) };
    match read(&text) {
        Some(progress) => Learning { progress, saved: Saved::Yes, unread: None },
        None => Learning::anew(Saved::Yes, Some(text)),
    }
}

fn save(place: &impl Place, learning: &mut Learning, id: impl Fn() -> String) -> bool {
    if let Some(text) = &learning.unread {
        if !place.set(&format!("{UNREAD}{}", id()), text) {
            return false;
        }
        learning.unread = None;
    }
    place.set(LESSON, &write(&learning.progress))
}

fn write(progress: &Progress) -> String {
    let sheet = write_sheet(&progress.sheet);
    json!({ "lesson": VERSION, "step": progress.step, "answers": progress.answers, "sheet": sheet }).to_string()
}

fn read(text: &str) -> Option<Progress> {
    let value: Value = serde_json::from_str(text).ok()?;
    if value.get("lesson")?.as_u64()? != VERSION {
        return None;
    }
    let step = usize::try_from(value.get("step")?.as_u64()?).ok()?;
    let answers: BTreeMap<usize, u8> = serde_json::from_value(value.get("answers")?.clone()).ok()?;
    let steps = 1..=LessonStep::ALL.len();
    let known = steps.contains(&step) && answers.keys().all(|step| steps.contains(step));
    let sheet = read_sheet(&value.get("sheet")?.to_string()).ok()?;
    known.then(|| Progress { sheet, step: within(step), answers })
}

#[cfg(test)]
mod tests {
    use super::super::place::Room;
    use super::*;
    use wellwright_core::job::Field;
    use wellwright_core::quantity::{Entry, Unit};

    fn some_way() -> Learning {
        let mut learning = Learning::anew(Saved::Yes, None);
        learning.progress.step = 4;
        learning.progress.answers = BTreeMap::from([(1, 0), (3, 2)]);
        learning.progress.sheet.set(Field::MotorPower, Some(Entry::new(10.0, Unit::Horsepower)));
        learning.progress.sheet.set_draft(Field::PumpSetting, "6oo".to_owned());
        learning
    }

    #[test]
    fn what_was_learned_reads_back_as_it_was() {
        let room = Room::of(10_000, &[]);
        let mut learning = some_way();
        assert!(save(&room, &mut learning, String::new));
        let back = load(&room);
        assert_eq!((back.progress.step, &back.progress.answers), (4, &learning.progress.answers));
        assert_eq!(back.progress.sheet.drafts, learning.progress.sheet.drafts);
        assert_eq!(back.progress.sheet.job.get(Field::MotorPower), Some(Entry::new(10.0, Unit::Horsepower)));
        assert_eq!(load(&Room::of(0, &[])), Learning::anew(Saved::Yes, None));
    }

    #[test]
    fn an_entry_that_cannot_be_read_is_laid_beside_before_it_is_written_over() {
        let text = write(&some_way().progress);
        let altered = text.replace("10.0", "99.0");
        assert_ne!(text, altered);
        let newer = text.replace("\"lesson\":1", "\"lesson\":2");
        let beyond = text.replace("\"step\":4", "\"step\":11");
        for odd in ["", "{", "[]", "null", "\u{0}", altered.as_str(), newer.as_str(), beyond.as_str()] {
            let room = Room::of(20_000, &[(LESSON, odd)]);
            let mut learning = load(&room);
            assert_eq!(learning, Learning::anew(Saved::Yes, Some(odd.to_owned())), "{odd}");
            assert_eq!(room.get(LESSON).as_deref(), Some(odd), "looking changes nothing");
            learning.progress.step = 2;
            assert!(save(&room, &mut learning, || "a".to_owned()));
            assert_eq!(room.get("wellwright.lesson.unread.a").as_deref(), Some(odd));
            assert_eq!(load(&room).progress.step, 2);
            assert!(save(&room, &mut learning, || "b".to_owned()));
            assert_eq!(room.get("wellwright.lesson.unread.b"), None, "once is enough");
        }
    }

    #[test]
    fn without_room_nothing_is_lost() {
        let mut learning = some_way();
        let room = Room::of(write(&learning.progress).len() + LESSON.len(), &[]);
        assert!(save(&room, &mut learning, String::new));
        let kept = room.get(LESSON);
        learning.progress.sheet.set_draft(Field::AllowedDrop, "five in a hundred".to_owned());
        assert!(!save(&room, &mut learning, String::new));
        assert_eq!(room.get(LESSON), kept);
        // No room to lay it beside: what can't be read stays where it is.
        let odd = "x".repeat(400);
        let room = Room::of(500, &[(LESSON, odd.as_str())]);
        let mut learning = load(&room);
        assert!(!save(&room, &mut learning, || "a".to_owned()));
        assert_eq!(room.get(LESSON), Some(odd));
    }
}
