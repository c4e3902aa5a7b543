//! Mutants of core, all in one program: each is compiled in behind its number, and the variable `MUTANT` turns one on. So
//! core is built once, not once for each of thousands.
//!
//! `wellwright-mutants switch MUTANTS FOLDER LEFT_OUT` writes the mutants of a list (`cargo mutants --list --json`) into the
//! files of a copy of the project, but for the numbers in LEFT_OUT, and prints the numbers that it could not write.
//! `wellwright-mutants unbuilt MESSAGES FOLDER` reads what the compiler says of that copy (`--message-format json`) and
//! prints the numbers that do not build, each with `alone`, or with `among` where only one of several can be at fault.
//!
//! A mutant's number is its place in the list, from 1 on.

mod switch;
mod unbuilt;

use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fs;
use std::path::Path;
use switch::{Mutant, Place, with_switches};

type Done = Result<(), Box<dyn Error>>;

fn main() -> Done {
    let all: Vec<String> = std::env::args().skip(1).collect();
    match all.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["switch", list, folder, left_out] => switch_all(list, Path::new(folder), left_out),
        ["unbuilt", messages, folder] => {
            for (number, how) in unbuilt::unbuilt(&fs::read_to_string(messages)?, Path::new(folder))? {
                println!("{number} {how}");
            }
            Ok(())
        }
        _ => Err("switch MUTANTS FOLDER LEFT_OUT, or unbuilt MESSAGES FOLDER".into()),
    }
}

fn switch_all(list: &str, folder: &Path, left_out: &str) -> Done {
    let list: Vec<serde_json::Value> = serde_json::from_str(&fs::read_to_string(list)?)?;
    let left_out = fs::read_to_string(left_out)?;
    let left_out = left_out.split_whitespace().map(str::parse).collect::<Result<BTreeSet<u32>, _>>()?;
    let mut files: BTreeMap<&str, BTreeMap<Place, Vec<Mutant>>> = BTreeMap::new();
    for (mutant, number) in list.iter().zip(1..).filter(|(_, number)| !left_out.contains(number)) {
        let text = |key: &str| mutant[key].as_str().unwrap_or_default();
        let part = |key: &str| mutant["span"]["start"][key].as_u64().unwrap_or_default() as usize;
        let mutant = Mutant { number, kind: text("genre").to_owned(), put: text("replacement").to_owned() };
        files.entry(text("file")).or_default().entry((part("line"), part("column"))).or_default().push(mutant);
    }
    for (file, at) in &files {
        let path = folder.join(file);
        let (written, done) = with_switches(&fs::read_to_string(&path)?, at)?;
        fs::write(&path, written)?;
        for mutant in at.values().flatten().filter(|mutant| !done.contains(&mutant.number)) {
            println!("{}", mutant.number);
        }
    }
    let top = folder.join("core/src/lib.rs");
    fs::write(&top, fs::read_to_string(&top)? + SWITCH)?;
    Ok(())
}

/// What tells core which mutant is on, and writes the numbers of those that are met into the file that `MUTANTS_MET` names.
/// The first test that fails ends the run.
const SWITCH: &str = r#"
/// The mutant that is on.
pub mod mutant {
    use std::io::Write as _;
    use std::sync::atomic::{AtomicBool, Ordering};
    use std::sync::{Mutex, OnceLock};

    struct State {
        on: u32,
        met: Option<Mutex<std::fs::File>>,
    }

    static STATE: OnceLock<State> = OnceLock::new();
    static SEEN: [AtomicBool; 65536] = [const { AtomicBool::new(false) }; 65536];

    fn state() -> State {
        std::panic::set_hook(Box::new(|_| std::process::exit(101)));
        let on = std::env::var("MUTANT").ok().and_then(|text| text.parse().ok()).unwrap_or(0);
        let met = std::env::var("MUTANTS_MET").ok().map(|path| Mutex::new(std::fs::File::create(path).unwrap()));
        State { on, met }
    }

    /// Its number, where some are met; none is on without one.
    #[inline]
    pub fn on(here: &'static [u32]) -> u32 {
        let state = STATE.get_or_init(state);
        if let Some(file) = &state.met {
            for number in here.iter().filter(|number| !SEEN[**number as usize].swap(true, Ordering::Relaxed)) {
                writeln!(file.lock().unwrap(), "{number}").unwrap();
            }
        }
        state.on
    }
}
"#;
