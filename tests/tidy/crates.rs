//! Crates that may not stand under core, near or far: no browser, no clock, no chance.

use super::none;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_tests::root;

const FORBIDDEN: [&str; 11] =
    ["web-sys", "js-sys", "gloo", "leptos", "getrandom", "wasm-bindgen", "chrono", "time", "rand", "tokio", "instant"];

/// True for a forbidden crate or one of its family: `gloo`, `gloo-storage`, `leptos_macro`.
fn forbidden(name: &str) -> bool {
    let family = |crate_name: &str| {
        name.strip_prefix(crate_name).is_some_and(|rest| rest.is_empty() || rest.starts_with(['-', '_']))
    };
    FORBIDDEN.into_iter().any(family)
}

/// Names under `[dependencies]`, `[build-dependencies]` and the like; what only tests and benches need is left out.
fn dependencies(manifest: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut inside = false;
    for line in manifest.lines().map(str::trim) {
        if let Some(section) = line.strip_prefix('[') {
            let section = section.trim_end_matches(']');
            inside = section.ends_with("dependencies") && !section.ends_with("dev-dependencies");
            if let Some((before, name)) = section.rsplit_once("dependencies.")
                && !before.ends_with("dev-")
            {
                names.insert(name.trim_matches('"').to_owned());
            }
        } else if inside && !line.starts_with('#') {
            names.extend(
                line.split(['=', '.']).next().map(str::trim).filter(|name| !name.is_empty()).map(str::to_owned),
            );
        }
    }
    names
}

/// What each package of a lock file needs, by name.
fn lock(text: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut packages: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for package in text.split("[[package]]").skip(1) {
        let name = package.lines().find_map(|line| line.strip_prefix("name = ")).unwrap_or_default().trim_matches('"');
        let needs = package.split_once("dependencies = [").map_or("", |(_, rest)| rest.split(']').next().unwrap_or(""));
        let needs = needs.lines().filter_map(|line| line.trim().strip_prefix('"')?.split(['"', ' ']).next());
        packages.entry(name.to_owned()).or_default().extend(needs.map(str::to_owned));
    }
    packages
}

/// Everything that these crates need, near or far, themselves included.
fn closure(start: BTreeSet<String>, packages: &BTreeMap<String, BTreeSet<String>>) -> BTreeSet<String> {
    let mut seen = BTreeSet::new();
    let mut open: Vec<String> = start.into_iter().collect();
    while let Some(name) = open.pop() {
        if seen.insert(name.clone()) {
            open.extend(packages.get(&name).into_iter().flatten().cloned());
        }
    }
    seen
}

fn problems(manifest: &str, lock_text: &str) -> Vec<String> {
    let all = closure(dependencies(manifest), &lock(lock_text));
    all.into_iter().filter(|name| forbidden(name)).map(|name| format!("core needs {name}")).collect()
}

fn read(path: &str) -> String {
    std::fs::read_to_string(root().join(path)).unwrap()
}

#[test]
fn core_needs_no_browser_no_clock_no_chance() {
    let manifest = read("core/Cargo.toml");
    assert!(dependencies(&manifest).contains("uom"), "the dependencies are not found");
    none(problems(&manifest, &read("Cargo.lock")));
}

#[test]
fn a_forbidden_crate_is_found_near_and_far() {
    let lock = "[[package]]\nname = \"uom\"\ndependencies = [\n \"num-traits\",\n \"rand_core 0.9.0\",\n]\n\n\
        [[package]]\nname = \"num-traits\"\n";
    assert_eq!(problems("[dependencies]\nuom.workspace = true\n", lock), ["core needs rand_core"]);
    assert_eq!(problems("[dependencies]\ngloo-storage = \"0.4\"\n", ""), ["core needs gloo-storage"]);
    assert_eq!(problems("[target.'cfg(unix)'.dependencies]\nchrono = \"1\"\n", ""), ["core needs chrono"]);
    assert_eq!(problems("[dependencies.web-sys]\nversion = \"1\"\n", ""), ["core needs web-sys"]);
    assert!(problems("[dev-dependencies]\nrand = \"1\"\n[dependencies]\nrandom-name = \"1\"\n", "").is_empty());
}
