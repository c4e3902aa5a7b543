//! A QR code: dark squares on white, with the quiet edge around it that a camera needs.

use leptos::prelude::*;
use std::fmt::Write as _;
use wellwright_core::passing::Code;

/// Light squares around a code, by ISO/IEC 18004.
const QUIET: usize = 4;

/// A code.
#[component]
pub fn Qr(
    /// Its squares.
    code: Code,
    /// What it is, for who can't see it.
    label: String,
) -> impl IntoView {
    let side = code.side + 2 * QUIET;
    view! {
        <svg class="qr" role="img" aria-label=label viewBox=format!("0 0 {side} {side}") shape-rendering="crispEdges">
            <path class="light" d=format!("M0 0h{side}v{side}h-{side}z") />
            <path class="dark" d=squares(&code) />
        </svg>
    }
}

/// The dark squares, those side by side as one.
fn squares(code: &Code) -> String {
    let mut path = String::new();
    for (y, row) in code.dark.chunks(code.side.max(1)).enumerate() {
        let mut x = 0;
        while x < row.len() {
            let run = row[x..].iter().take_while(|dark| **dark).count();
            if run > 0 {
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", x + QUIET, y + QUIET);
            }
            x += run.max(1);
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn runs_of_dark_squares_are_one() {
        let code = Code { side: 3, dark: vec![true, true, false, false, false, false, true, false, true] };
        assert_eq!(squares(&code), "M4 4h2v1h-2zM4 6h1v1h-1zM6 6h1v1h-1z");
    }
}
