//! The top of the project holds only what a visitor expects there.

use super::none;
use wellwright_tests::root;

const ALLOWED: [&str; 12] = [
    "Cargo.toml",
    "Cargo.lock",
    "Trunk.toml",
    "index.html",
    "README.md",
    "DEVELOPERS.md",
    "CHANGELOG.md",
    "package-lock.json",
    "app",
    "core",
    "style",
    "tests",
];

/// What is built or fetched, and stands in no commit.
const BUILT: [&str; 3] = ["target", "dist", "node_modules"];

fn allowed(name: &str) -> bool {
    ALLOWED.contains(&name) || BUILT.contains(&name) || name.starts_with('.') || name.starts_with("LICENSE")
}

fn problems(names: &[String]) -> Vec<String> {
    names.iter().filter(|name| !allowed(name)).map(|name| format!("{name} stands at the top")).collect()
}

#[test]
fn nothing_strange_stands_at_the_top() {
    let names: Vec<String> =
        std::fs::read_dir(root()).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    assert!(names.iter().any(|name| name == "Cargo.toml"), "the top is not read");
    none(problems(&names));
}

#[test]
fn a_strange_name_is_found() {
    let names = ["Cargo.toml", "target", ".gitignore", "LICENSE-MIT", "notes.txt", "scripts"].map(str::to_owned);
    assert_eq!(problems(&names), ["notes.txt stands at the top", "scripts stands at the top"]);
}
