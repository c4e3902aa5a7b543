//! Reading the source tree, and setting apart what is code from comments and tests.

use std::collections::BTreeSet;
use std::path::Path;
use wellwright_tests::root;

/// A file of the project: its path from the top, with `/`, and its text.
#[derive(Debug, Clone)]
pub struct File {
    pub path: String,
    pub text: String,
}

impl File {
    pub fn new(path: &str, text: &str) -> Self {
        Self { path: path.to_owned(), text: text.to_owned() }
    }
    /// The ending of the file's name, without the dot.
    pub fn ending(&self) -> &str {
        let name = self.path.rsplit('/').next().unwrap_or_default();
        name.rsplit_once('.').map_or("", |(_, ending)| ending)
    }
}

/// What is built or fetched, and stands in no commit.
const NOT_OURS: [&str; 3] = ["node_modules", "target", "dist"];

/// Every text file under a folder of the project, by path.
pub fn files(folder: &str) -> Vec<File> {
    let mut found = Vec::new();
    walk(&root().join(folder), folder, &mut found);
    assert!(!found.is_empty(), "{folder} holds no file");
    found.sort_by(|a, b| a.path.cmp(&b.path));
    found
}

fn walk(folder: &Path, name: &str, found: &mut Vec<File>) {
    for entry in std::fs::read_dir(folder).unwrap_or_else(|error| panic!("{name}: {error}")) {
        let entry = entry.unwrap();
        let file_name = entry.file_name().into_string().unwrap();
        let path = format!("{name}/{file_name}");
        if entry.file_type().unwrap().is_dir() {
            if !NOT_OURS.contains(&file_name.as_str()) {
                walk(&entry.path(), &path, found);
            }
        } else if let Ok(text) = std::fs::read_to_string(entry.path()) {
            found.push(File { path, text });
        }
    }
}

/// Rust files under a folder.
pub fn rust(folder: &str) -> Vec<File> {
    files(folder).into_iter().filter(|file| file.ending() == "rs").collect()
}

/// Rust files under a folder, but those that hold nothing but tests.
pub fn program(folder: &str) -> Vec<File> {
    let all = rust(folder);
    let tests = test_files(&all);
    all.into_iter().filter(|file| !tests.contains(&file.path)).collect()
}

/// The lines of a Rust file that are neither comment nor test, numbered from 1. Relies on the layout that the formatter
/// gives: an item ends at a closing brace as far in as it begins.
pub fn code(text: &str) -> Vec<(usize, &str)> {
    let mut kept = Vec::new();
    let mut lines = text.lines().enumerate();
    while let Some((index, line)) = lines.next() {
        let trimmed = line.trim_start();
        if trimmed.starts_with("#[cfg(test)]") {
            let indent = &line[..line.len() - trimmed.len()];
            let mut item = lines.by_ref().skip_while(|(_, line)| line.trim_start().starts_with("#["));
            let head = item.next().map_or("", |(_, line)| line);
            if !head.trim_end().ends_with([';', '}']) {
                let end = format!("{indent}}}");
                item.find(|(_, line)| line.starts_with(&end));
            }
        } else if !trimmed.starts_with("//") {
            let code = line.split(" // ").next().unwrap_or(line);
            kept.push((index + 1, code));
        }
    }
    kept
}

/// Paths of files that hold nothing but tests: those that another file declares under `#[cfg(test)]`.
fn test_files(all: &[File]) -> BTreeSet<String> {
    let declared = |file: &File| {
        let (folder, name) = file.path.rsplit_once('/').unwrap_or_default();
        let folder = match name {
            "mod.rs" | "lib.rs" | "main.rs" => folder.to_owned(),
            name => format!("{folder}/{}", name.trim_end_matches(".rs")),
        };
        let lines: Vec<&str> = file.text.lines().map(str::trim).collect();
        let after = lines.windows(2).filter(|pair| pair[0] == "#[cfg(test)]").map(|pair| pair[1]);
        let modules = after.filter_map(|line| line.strip_prefix("mod ")?.strip_suffix(';'));
        modules.map(|module| format!("{folder}/{module}.rs")).collect::<Vec<_>>()
    };
    all.iter().flat_map(declared).collect()
}

#[test]
fn comments_and_tests_are_set_apart() {
    let text = "//! a\nfn b() {} // c\n#[cfg(test)]\n#[allow(x)]\nmod tests {\n    fn d() {}\n}\nfn e() {}\n    // f\n\
        #[cfg(test)]\nmod probe;\nfn g() {}\n";
    let kept: Vec<_> = code(text).into_iter().map(|(line, code)| (line, code.trim())).collect();
    assert_eq!(kept, [(2, "fn b() {}"), (8, "fn e() {}"), (12, "fn g() {}")]);
}

#[test]
fn a_file_declared_for_tests_is_one() {
    let all = [File::new("app/src/pictures/mod.rs", "mod a;\n#[cfg(test)]\nmod tests;\n")];
    assert_eq!(test_files(&all).into_iter().collect::<Vec<_>>(), ["app/src/pictures/tests.rs"]);
}
