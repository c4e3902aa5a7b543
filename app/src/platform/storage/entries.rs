//! Jobs in the browser's local storage: one entry a job, under the job's id, in the job file's format, with a sum over it.
//!
//! An entry that can't be read stays as it is and is reported; nothing writes over it, since ids are never used twice. What
//! stood in an entry before this tab first wrote to it stays beside it. What another tab wrote is never written over
//! unseen: before it writes, a tab looks whether the entry is still the one that it knows.

use super::place::{Browser, Place};
use super::{ORDER, Saved, there};
use crate::platform::first;
use crate::state::{Kept, SetAside, Sheet};
use leptos::ev;
use leptos::prelude::{on_cleanup, window_event_listener, window_event_listener_untyped};
use serde_json::{Map, Value, json};
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::job::Field;
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::passing::sum;

const JOB: &str = "wellwright.job.";
const BEFORE: &str = "wellwright.before.";

/// What stands under an id.
#[derive(Debug, Clone, PartialEq)]
pub enum Found {
    /// A job.
    Job(Box<Kept>),
    /// A text that is none.
    Aside(SetAside),
}

/// Bytes of this page's entries from which a browser's storage is nearly full: four fifths of the usual 5 MiB.
const NEARLY: usize = 4 * 1024 * 1024;

/// What this tab knows of the entries.
#[derive(Default)]
struct Known {
    /// Bytes of all entries, about: other tabs may have written since.
    bytes: usize,
    /// Their texts as it last read or wrote them, by id.
    texts: BTreeMap<String, String>,
    /// Those that it wrote to.
    written: BTreeSet<String>,
}

thread_local! {
    static KNOWN: RefCell<Known> = RefCell::default();
}

/// Every stored job.
pub(super) fn all() -> Vec<Found> {
    KNOWN.with_borrow_mut(|known| known.all(&Browser))
}

/// Keeps a job.
pub fn save(kept: &Kept) -> Saved {
    if !there() {
        return Saved::Nowhere;
    }
    KNOWN.with_borrow_mut(|known| match known.save(&Browser, kept) {
        false => Saved::Full,
        true => known.room(),
    })
}

/// Whether there is room left.
#[must_use]
pub fn room() -> Saved {
    KNOWN.with_borrow(Known::room)
}

/// Keeps a text that is no job to this build, as it is; `false` where there was no room.
#[must_use]
pub fn keep_text(id: &str, text: &str) -> bool {
    there() && Browser.set(&format!("{JOB}{id}"), text)
}

/// Deletes a job, or an entry that can't be read, and what stood there before.
pub fn delete(id: &str) {
    if there() {
        KNOWN.with_borrow_mut(|known| known.delete(&Browser, id));
        first::forget_last();
    }
}

/// What stands under an id now; nothing where it was deleted.
#[must_use]
pub fn find(id: &str) -> Option<Found> {
    there().then(|| KNOWN.with_borrow_mut(|known| known.find(&Browser, id))).flatten()
}

/// What another tab wrote under an id that this one has not seen.
#[must_use]
pub fn written_elsewhere(id: &str) -> Option<Found> {
    there().then(|| KNOWN.with_borrow(|known| known.written_elsewhere(&Browser, id))).flatten()
}

/// What stood in an entry before it was last opened and changed, where that can be read.
#[must_use]
pub fn before(id: &str) -> Option<Sheet> {
    if !there() {
        return None;
    }
    read(&Browser.get(&format!("{BEFORE}{id}"))?).ok()
}

/// Calls back with the id of each entry that another tab changed, as long as what calls this stands: when the browser
/// tells, and when the page is looked at again. The other call is for a list that was put in another order.
pub fn follow_jobs(changed: impl Fn(&str) + Clone + 'static, ordered: impl Fn() + 'static) {
    let told = changed.clone();
    let handle = window_event_listener(ev::storage, move |event| match event.key() {
        Some(key) if key == ORDER => ordered(),
        Some(key) => {
            if let Some(id) = key.strip_prefix(JOB) {
                told(id);
            }
        }
        // Without a key everything was deleted.
        None => strange().iter().for_each(|id| told(id)),
    });
    // A page that slept was told nothing.
    let woken = window_event_listener_untyped("pageshow", move |_| strange().iter().for_each(|id| changed(id)));
    on_cleanup(move || {
        handle.remove();
        woken.remove();
    });
}

/// Ids of the entries that are not as this tab knows them.
fn strange() -> Vec<String> {
    if there() { KNOWN.with_borrow(|known| known.strange(&Browser)) } else { Vec::new() }
}

impl Known {
    fn room(&self) -> Saved {
        if self.bytes > NEARLY { Saved::Nearly } else { Saved::Yes }
    }

    fn all(&mut self, place: &impl Place) -> Vec<Found> {
        let bytes = |key: &String| key.len() + place.get(key).map_or(0, |text| text.len());
        self.bytes = place.keys().iter().map(bytes).sum();
        let ids: Vec<String> = place.keys().iter().filter_map(|key| key.strip_prefix(JOB).map(str::to_owned)).collect();
        ids.iter().filter_map(|id| self.find(place, id)).collect()
    }

    fn find(&mut self, place: &impl Place, id: &str) -> Option<Found> {
        match place.get(&format!("{JOB}{id}")) {
            Some(text) => {
                self.texts.insert(id.to_owned(), text.clone());
                Some(found(id, text))
            }
            None => {
                self.texts.remove(id);
                None
            }
        }
    }

    fn save(&mut self, place: &impl Place, kept: &Kept) -> bool {
        let (id, before) = (&kept.id, format!("{BEFORE}{}", kept.id));
        if let Some(old) = self.texts.get(id)
            && self.written.insert(id.clone())
            && place.set(&before, old)
        {
            self.bytes += old.len();
        }
        let text = write(&kept.sheet).to_string();
        let mut is_kept = place.set(&format!("{JOB}{id}"), &text);
        // What was before gives its room to what is.
        if !is_kept && let Some(gone) = place.get(&before) {
            place.remove(&before);
            self.bytes = self.bytes.saturating_sub(gone.len());
            is_kept = place.set(&format!("{JOB}{id}"), &text);
        }
        if is_kept {
            self.bytes += text.len();
            let old = self.texts.insert(id.clone(), text);
            self.bytes = self.bytes.saturating_sub(old.map_or(0, |old| old.len()));
        }
        is_kept
    }

    fn delete(&mut self, place: &impl Place, id: &str) {
        // What stood before is about as long.
        let old = self.texts.remove(id).map_or(0, |old| old.len());
        let both = if self.written.remove(id) { 2 * old } else { old };
        self.bytes = self.bytes.saturating_sub(both);
        place.remove(&format!("{JOB}{id}"));
        place.remove(&format!("{BEFORE}{id}"));
    }

    fn written_elsewhere(&self, place: &impl Place, id: &str) -> Option<Found> {
        let now = place.get(&format!("{JOB}{id}"))?;
        let known = self.texts.get(id)?;
        (*known != now).then(|| found(id, now))
    }

    fn strange(&self, place: &impl Place) -> Vec<String> {
        let is_strange = |id: &&String| place.get(&format!("{JOB}{id}")).as_ref() != self.texts.get(*id);
        let there: BTreeSet<String> =
            place.keys().iter().filter_map(|key| key.strip_prefix(JOB).map(str::to_owned)).collect();
        there.iter().chain(self.texts.keys().filter(|id| !there.contains(*id))).filter(is_strange).cloned().collect()
    }
}

pub(super) fn found(id: &str, text: String) -> Found {
    let id = id.to_owned();
    match read(&text) {
        Ok(sheet) => Found::Job(Box::new(Kept { id, sheet })),
        Err(why) => Found::Aside(SetAside { id, text, why }),
    }
}

/// A sheet as it is kept: the job file, the texts that are no numbers yet, and the sum over both.
pub(super) fn write(sheet: &Sheet) -> Value {
    let drafts: Map<String, Value> =
        sheet.drafts.iter().map(|(field, text)| (field.path().to_owned(), json!(text))).collect();
    let body = json!({ "job": wire::write(&sheet.job), "drafts": drafts });
    let sum = sum_of(&body);
    let mut entry = body;
    entry["sum"] = json!(sum);
    entry
}

/// The sum over an entry without it: members are written in one order, so that it is the same again.
fn sum_of(body: &Value) -> u32 {
    sum(body.to_string().as_bytes())
}

/// Reads what [`write`] wrote. A draft of a field that is not known is left out: it never was a figure.
pub(super) fn read(text: &str) -> Result<Sheet, WireError> {
    let mut value = wire::parse(text)?;
    let told = value.as_object_mut().and_then(|entry| entry.remove("sum"));
    let mut sheet = Sheet::of(wire::read(value.get("job").unwrap_or(&Value::Null))?);
    // Entries of the first builds have none.
    if told.is_some_and(|told| told.as_u64() != Some(u64::from(sum_of(&value)))) {
        return Err(WireError::Altered);
    }
    let drafts: BTreeMap<String, String> =
        value.get("drafts").and_then(|drafts| serde_json::from_value(drafts.clone()).ok()).unwrap_or_default();
    for field in Field::ALL {
        if let Some(text) = drafts.get(field.path()) {
            sheet.set_draft(field, text.clone());
        }
    }
    Ok(sheet)
}

#[cfg(test)]
mod tests {
    use super::super::demo_jobs;
    use super::super::place::Room;
    use super::*;
    use wellwright_core::job::Job;
    use wellwright_core::numeric::pcg::Pcg32;
    use wellwright_core::quantity::{Entry, Unit};

    fn kept(name: &str) -> Kept {
        Kept { id: "1".to_owned(), sheet: Sheet::of(Job::named(name)) }
    }

    fn name(found: Option<Found>) -> Option<String> {
        match found? {
            Found::Job(kept) => Some(kept.sheet.job.name),
            Found::Aside(entry) => Some(entry.why.code().to_owned()),
        }
    }

    #[test]
    fn a_sheet_reads_back_as_written() {
        for job in demo_jobs() {
            let mut sheet = Sheet::of(job);
            assert!(read(&write(&sheet).to_string()).is_ok_and(|again| again == sheet));
            sheet.set_draft(Field::Ambient, "warm".into());
            let again = read(&write(&sheet).to_string()).unwrap_or_default();
            assert_eq!(again.drafts, sheet.drafts);
            assert!(again.job.get(Field::Ambient).is_some_and(|entry| entry.value.is_nan()));
        }
    }

    /// What builds before this one wrote stays readable: a sample of each form that an entry ever had.
    #[test]
    fn entries_of_older_builds_are_read() {
        let samples = [
            (include_str!("samples/without_sum.json"), "Brindle Wash, lot 7", Field::Ambient, "warm"),
            (include_str!("samples/with_sum.json"), "Brindle Wash 7", Field::Drawdown, "forty"),
        ];
        for (sample, name, field, draft) in samples {
            let sheet = read(sample).unwrap();
            assert_eq!(sheet.job.name, name);
            assert_eq!(sheet.job.get(Field::PumpSetting), Some(Entry::new(620.0, Unit::Foot)), "{name}");
            assert_eq!(sheet.drafts, BTreeMap::from([(field, draft.to_owned())]), "{name}");
        }
    }

    #[test]
    fn broken_entries_are_refused_by_reason() {
        for (text, code) in [
            ("", "not_json"),
            ("{\"job\":{\"schema\":1", "not_json"),
            ("null", "no_schema"),
            ("{}", "no_schema"),
            ("{\"job\":{\"schema\":99}}", "newer_schema"),
            ("{\"job\":{\"schema\":1,\"cable\":{\"metal\":\"gold\"}}}", "bad_field"),
            ("{\"job\":{\"schema\":1},\"drafts\":{},\"sum\":1}", "altered"),
            ("{\"job\":{\"schema\":1},\"sum\":\"x\"}", "altered"),
        ] {
            assert_eq!(read(text).err().map(|error| error.code()), Some(code), "{text}");
        }
        assert_eq!(read("{\"job\":{\"schema\":1},\"drafts\":{}}"), Ok(Sheet::default()));
    }

    #[test]
    fn one_figure_altered_is_found_out() {
        let text = write(&Sheet::of(demo_jobs().remove(0))).to_string();
        assert!(read(&text).is_ok());
        for at in text.match_indices(|letter: char| letter.is_ascii_digit()).map(|(at, _)| at) {
            let other = if text[at..].starts_with('1') { '2' } else { '1' };
            let altered = format!("{}{other}{}", &text[..at], &text[at + 1..]);
            assert!(read(&altered).is_err(), "{altered}");
        }
    }

    #[test]
    fn what_another_tab_wrote_is_seen_before_it_is_written_over() {
        let room = Room::of(1_000_000, &[]);
        let (mut one, mut other) = (Known::default(), Known::default());
        assert!(one.save(&room, &kept("first")));
        assert_eq!(one.written_elsewhere(&room, "1"), None);
        assert_eq!(name(other.find(&room, "1")), Some("first".to_owned()));
        assert!(other.save(&room, &kept("second")));
        assert_eq!(name(one.written_elsewhere(&room, "1")), Some("second".to_owned()));
        assert_eq!(one.strange(&room), ["1"]);
        // Once seen, it is as good as its own.
        assert_eq!(name(one.find(&room, "1")), Some("second".to_owned()));
        assert!(one.strange(&room).is_empty());
        other.delete(&room, "1");
        assert_eq!(one.strange(&room), ["1"]);
        assert_eq!(one.find(&room, "1"), None);
        assert!(one.strange(&room).is_empty());
    }

    #[test]
    fn what_stood_there_before_this_tab_wrote_stays_beside_it() {
        let room = Room::of(1_000_000, &[]);
        assert!(Known::default().save(&room, &kept("yesterday")));
        let mut today = Known::default();
        let _ = today.all(&room);
        for name in ["today", "later"] {
            assert!(today.save(&room, &kept(name)));
        }
        let before = room.get("wellwright.before.1").map(|text| read(&text).map(|sheet| sheet.job.name));
        assert_eq!(before, Some(Ok("yesterday".to_owned())));
        today.delete(&room, "1");
        assert!(room.keys().is_empty());
    }

    #[test]
    fn a_storage_that_fills_up_is_told_before_it_is_full() {
        let room = Room::of(10_000_000, &[]);
        let mut known = Known::default();
        let _ = known.all(&room);
        let mut large = kept("large");
        large.sheet.job.note = "x".repeat(1_000_000);
        for (place, nearly) in [false, false, false, false, true].into_iter().enumerate() {
            large.id = place.to_string();
            assert!(known.save(&room, &large));
            assert_eq!(known.bytes > NEARLY, nearly, "{place}");
        }
        let mut again = Known::default();
        let _ = again.all(&room);
        assert!(again.bytes > NEARLY);
        known.delete(&room, "0");
        assert!(known.bytes <= NEARLY);
    }

    #[test]
    fn ten_thousand_mutated_entries_give_the_job_or_a_reason() {
        let job = demo_jobs().remove(0);
        let sheet = Sheet::of(job);
        let text = write(&sheet).to_string();
        let mut chance = Pcg32::new(9, 9);
        let mut read_whole = 0;
        for round in 0..10_000 {
            let mut letters: Vec<char> = text.chars().collect();
            for _ in 0..=chance.below(3) {
                let at = chance.below(letters.len() as u32) as usize;
                match chance.below(4) {
                    0 => {
                        letters.remove(at);
                    }
                    1 => letters.truncate(at.max(1)),
                    2 => letters.insert(at, char::from_u32(chance.below(0x500)).unwrap_or('{')),
                    _ => letters[at] = ['0', '"', '}', ',', 'e', '-', '\u{0}'][chance.below(7) as usize],
                }
            }
            let mutated: String = letters.into_iter().collect();
            match read(&mutated) {
                // A blank more, or a member that says what is usual anyway, changes nothing.
                Ok(came) => {
                    read_whole += 1;
                    assert!(came == sheet || !mutated.contains("\"sum\""), "round {round}: {mutated}");
                }
                Err(why) => assert!(!why.code().is_empty()),
            }
        }
        assert!(read_whole < 500, "{read_whole}");
    }

    #[test]
    fn what_was_before_gives_its_room_to_what_is() {
        let (first, then) = (kept("first"), kept("then"));
        let bytes = write(&first.sheet).to_string().len();
        // Room for one of them twice, and for a letter of the second more.
        let room = Room::of(2 * bytes + 80, &[]);
        assert!(Known::default().save(&room, &first));
        let mut known = Known::default();
        let _ = known.all(&room);
        assert!(known.save(&room, &then));
        assert!(room.get("wellwright.before.1").is_some());
        let longer = kept(&"then ".repeat(20));
        assert!(known.save(&room, &longer));
        assert_eq!(name(known.find(&room, "1")), Some(longer.sheet.job.name));
        assert_eq!(room.get("wellwright.before.1"), None);
        let _ = known.all(&room);
        let bytes: usize = room.keys().iter().map(|key| key.len() + room.get(key).map_or(0, |text| text.len())).sum();
        assert_eq!(known.bytes, bytes);
    }

    #[test]
    fn a_full_storage_keeps_what_it_had() {
        let first = kept("first");
        let room = Room::of(write(&first.sheet).to_string().len() + 40, &[]);
        let mut known = Known::default();
        assert!(known.save(&room, &first));
        assert!(!known.save(&room, &kept(&"longer ".repeat(20))));
        assert_eq!(name(known.find(&room, "1")), Some("first".to_owned()));
    }
}
