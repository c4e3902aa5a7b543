//! The list is searched by what stands on its rows: a job's name and its note.

use crate::locale::words;
use crate::state::{Kept, Shelf};
use leptos::prelude::*;

/// The field that the list is searched by, with how many jobs are found.
#[component]
pub fn Search(
    /// What is asked for.
    asked: RwSignal<String>,
    /// Jobs that are found.
    found: Signal<usize>,
    /// Jobs there are.
    count: Signal<usize>,
) -> impl IntoView {
    let words = &words().list;
    let told = move || {
        let nothing = asked.with(|asked| asked.trim().is_empty());
        if nothing { String::new() } else { (words.found)(found.get(), count.get()) }
    };
    view! {
        <search class="search-jobs">
            <label>
                <span class="note">{words.search}</span>
                <input
                    type="search"
                    autocomplete="off"
                    enterkeyhint="search"
                    maxlength="120"
                    prop:value=asked
                    on:input=move |event| asked.set(event_target_value(&event))
                />
            </label>
            <span class="note" role="status">{told}</span>
        </search>
    }
}

/// Ids of the jobs in whose name or note every word that is asked for stands, in the order of the list.
#[must_use]
pub fn found(shelf: &Shelf, asked: &str) -> Vec<String> {
    let asked = plain(asked);
    let asked: Vec<&str> = asked.split_whitespace().collect();
    let holds = |kept: &&Kept| {
        let job = &kept.sheet.job;
        let demo = if job.demo { words().list.demo } else { "" };
        let text = plain(&format!("{} {} {demo}", job.name, job.note));
        asked.iter().all(|word| text.contains(word))
    };
    shelf.jobs.iter().filter(|kept| asked.is_empty() || holds(kept)).map(|kept| kept.id.clone()).collect()
}

/// Small letters without the marks that are left out in haste.
fn plain(text: &str) -> String {
    let bare = |letter: char| match letter {
        'á' | 'à' | 'â' | 'ä' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'ì' | 'î' | 'ï' => 'i',
        'ó' | 'ò' | 'ô' | 'ö' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    };
    text.chars().flat_map(char::to_lowercase).filter(|letter| !marks(*letter)).map(bare).collect()
}

/// Marks that stand apart from their letters.
fn marks(letter: char) -> bool {
    ('\u{300}'..='\u{36f}').contains(&letter)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::Sheet;
    use wellwright_core::job::Job;

    fn shelf(names: &[(&str, &str)]) -> Shelf {
        let kept = |(id, (name, note)): (usize, &(&str, &str))| {
            let mut job = Job::named(name);
            job.note = (*note).to_owned();
            Kept { id: id.to_string(), sheet: Sheet::of(job) }
        };
        Shelf { jobs: names.iter().enumerate().map(kept).collect(), set_aside: Vec::new() }
    }

    #[test]
    fn every_word_stands_in_the_name_or_the_note() {
        let shelf = shelf(&[("North pivot", "beans, 2026"), ("Peña, el pozo viejo", ""), ("South pivot", "corn")]);
        assert_eq!(found(&shelf, ""), ["0", "1", "2"]);
        assert_eq!(found(&shelf, "  "), ["0", "1", "2"]);
        assert_eq!(found(&shelf, "PIVOT"), ["0", "2"]);
        assert_eq!(found(&shelf, "pivot bean"), ["0"]);
        assert_eq!(found(&shelf, "2026 north"), ["0"]);
        assert_eq!(found(&shelf, "pena"), ["1"]);
        assert_eq!(found(&shelf, "PEN\u{303}A viejo"), ["1"]);
        assert!(found(&shelf, "pivot rice").is_empty());
        assert!(found(&shelf, "\u{0}(*[").is_empty());
    }
}
