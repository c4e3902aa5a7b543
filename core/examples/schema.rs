//! Prints the JSON Schema of a job: `cargo run -q --release -p wellwright-core --example schema`.

use std::io::Write as _;

fn main() {
    // A reader that has gone away, as `| head` does, is no error of ours.
    let _ = writeln!(std::io::stdout().lock(), "{:#}", wellwright_core::job::wire::schema());
}
