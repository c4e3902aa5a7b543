//! No way to stop the program by accident, outside tests.

use super::none;
use super::tree::{File, code, program};

const STOPS: [&str; 6] = [".unwrap()", ".expect(", "panic!(", "todo!(", "unimplemented!(", "unreachable!("];

fn problems(file: &File) -> Vec<String> {
    let lines = code(&file.text).into_iter();
    let found = lines.filter(|(_, line)| STOPS.iter().any(|stop| line.contains(stop)));
    found.map(|(number, line)| format!("{}:{number}: {}", file.path, line.trim())).collect()
}

#[test]
fn nothing_stops_the_program() {
    for folder in ["core/src", "app/src"] {
        none(program(folder).iter().flat_map(problems).collect());
    }
}

#[test]
fn a_stop_is_found() {
    let stops = |text: &str| problems(&File::new("core/src/a.rs", text)).len();
    for stop in ["a.unwrap();", "a.expect(\"b\");", "panic!(\"b\");", "todo!();", "unimplemented!()", "unreachable!()"]
    {
        assert_eq!(stops(&format!("fn a() {{\n    {stop}\n}}\n")), 1, "{stop}");
    }
    assert_eq!(stops("// a.unwrap()\na.unwrap_or(0);\n#[cfg(test)]\nmod tests {\n    b.unwrap();\n}\n"), 0);
    assert_eq!(stops("#[cfg(test)]\nmod tests {\n    b.unwrap();\n}\nc.unwrap();\n"), 1);
}
