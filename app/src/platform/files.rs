//! Files: reading one that was chosen or dropped, saving one.

use leptos::prelude::{document, window};
use leptos::task::spawn_local;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, DragEvent, Event, File, FileList, HtmlAnchorElement, HtmlInputElement, Url};

/// Most bytes of a file of one thing; a job takes a few thousand.
pub const MOST: usize = 1_000_000;
/// Most bytes of a file of a whole device: more than a browser keeps for a page, with every sign written as an escape.
pub const MOST_WHOLE: usize = 40_000_000;

/// What came of reading a file.
pub enum Reading {
    /// Its text.
    Text(String),
    /// Larger than it may be.
    TooLarge,
    /// The browser could not read it.
    Failed,
}

/// The files of a file input's event; the input is emptied, so that the same file can be chosen again.
#[must_use]
pub fn chosen(event: &Event) -> Vec<File> {
    let input = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let files = input.as_ref().and_then(HtmlInputElement::files).map(list).unwrap_or_default();
    if let Some(input) = input {
        input.set_value("");
    }
    files
}

/// The files of a drop.
#[must_use]
pub fn dropped(event: &DragEvent) -> Vec<File> {
    event.data_transfer().and_then(|transfer| transfer.files()).map(list).unwrap_or_default()
}

fn list(files: FileList) -> Vec<File> {
    (0..files.length()).filter_map(|index| files.get(index)).collect()
}

/// Reads files one by one, those of at most so many bytes; each is given with its name.
pub fn read(files: Vec<File>, most: usize, each: impl Fn(String, Reading) + 'static) {
    spawn_local(async move {
        for file in files {
            let reading = if file.size() > most as f64 {
                Reading::TooLarge
            } else {
                match JsFuture::from(file.text()).await.ok().and_then(|text| text.as_string()) {
                    Some(text) => Reading::Text(text),
                    None => Reading::Failed,
                }
            };
            each(file.name(), reading);
        }
    });
}

/// Saves a text under a name, as the browser saves downloads. `false` where the browser refuses.
#[must_use]
pub fn save(name: &str, kind: &str, text: &str) -> bool {
    try_save(name, kind, text).is_ok()
}

fn try_save(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&js_sys::Array::of1(&JsValue::from_str(text)), &options)?;
    try_save_blob(name, &blob)
}

/// Saves what a blob holds, likewise.
#[must_use]
pub fn save_blob(name: &str, blob: &Blob) -> bool {
    try_save_blob(name, blob).is_ok()
}

fn try_save_blob(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The browser takes its copy after this turn; a minute is ample.
    let release = move || {
        let _ = Url::revoke_object_url(&address);
    };
    leptos::prelude::set_timeout(release, std::time::Duration::from_secs(60));
    Ok(())
}

/// Opens the browser's print dialog.
pub fn print() {
    let _ = window().print();
}

/// A file name from a title: letters, digits and hyphens; `nameless` for a title without any.
#[must_use]
pub fn file_name(title: &str, nameless: &str, ending: &str) -> String {
    let mut name = String::new();
    for letter in title.chars().take(60) {
        if letter.is_alphanumeric() {
            name.extend(letter.to_lowercase());
        } else if !name.ends_with('-') && !name.is_empty() {
            name.push('-');
        }
    }
    let name = name.trim_end_matches('-');
    format!("{}.{ending}", if name.is_empty() { nameless } else { name })
}

#[cfg(test)]
mod tests {
    use super::file_name;

    #[test]
    fn file_names_hold_nothing_that_a_file_system_minds() {
        assert_eq!(file_name("Brindle Wash, lot 7", "job", "json"), "brindle-wash-lot-7.json");
        assert_eq!(file_name("../../etc", "job", "json"), "etc.json");
        assert_eq!(file_name("Pozo Ñandú", "job", "json"), "pozo-ñandú.json");
        assert_eq!(file_name("<>", "job", "json"), "job.json");
        assert!(file_name(&"x".repeat(500), "job", "json").len() < 70);
    }
}
