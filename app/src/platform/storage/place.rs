//! Where entries stand: the browser's local storage, and for tests a room of so many bytes.

use gloo_storage::{LocalStorage, Storage as _};
#[cfg(test)]
use std::cell::RefCell;
#[cfg(test)]
use std::collections::BTreeMap;

/// Where entries stand: texts under keys.
pub trait Place {
    /// The keys of all entries.
    fn keys(&self) -> Vec<String>;
    /// The text of an entry.
    fn get(&self, key: &str) -> Option<String>;
    /// Whether there was room; without it the entry stays as it was.
    fn set(&self, key: &str, text: &str) -> bool;
    /// Takes an entry out.
    fn remove(&self, key: &str);
}

/// The browser's local storage.
pub struct Browser;

impl Place for Browser {
    fn keys(&self) -> Vec<String> {
        let storage = LocalStorage::raw();
        (0..storage.length().unwrap_or(0)).filter_map(|index| storage.key(index).ok().flatten()).collect()
    }

    fn get(&self, key: &str) -> Option<String> {
        LocalStorage::raw().get_item(key).ok().flatten()
    }

    fn set(&self, key: &str, text: &str) -> bool {
        LocalStorage::raw().set_item(key, text).is_ok()
    }

    fn remove(&self, key: &str) {
        let _ = LocalStorage::raw().remove_item(key);
    }
}

/// A storage with room for so many bytes.
#[cfg(test)]
pub struct Room {
    bytes: usize,
    entries: RefCell<BTreeMap<String, String>>,
}

#[cfg(test)]
impl Room {
    /// A storage with these entries.
    pub fn of(bytes: usize, entries: &[(&str, &str)]) -> Self {
        let owned = |(key, text): &(&str, &str)| ((*key).to_owned(), (*text).to_owned());
        Self { bytes, entries: RefCell::new(entries.iter().map(owned).collect()) }
    }
}

#[cfg(test)]
impl Place for Room {
    fn keys(&self) -> Vec<String> {
        self.entries.borrow().keys().cloned().collect()
    }

    fn get(&self, key: &str) -> Option<String> {
        self.entries.borrow().get(key).cloned()
    }

    fn set(&self, key: &str, text: &str) -> bool {
        let mut entries = self.entries.borrow_mut();
        let others: usize = entries.iter().filter(|(other, _)| *other != key).map(|(a, b)| a.len() + b.len()).sum();
        let has_room = others + key.len() + text.len() <= self.bytes;
        if has_room {
            entries.insert(key.to_owned(), text.to_owned());
        }
        has_room
    }

    fn remove(&self, key: &str) {
        self.entries.borrow_mut().remove(key);
    }
}
