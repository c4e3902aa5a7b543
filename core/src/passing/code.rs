//! A QR code (ISO/IEC 18004) of a text, as dark and light squares.

use qrcode::{Color, EcLevel, QrCode};

/// Squares of a code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Code {
    /// Squares of a side.
    pub side: usize,
    /// Row by row, whether a square is dark.
    pub dark: Vec<bool>,
}

/// The code of a text, at the lowest level of correction: a screen is clean, and fewer squares are larger. `None` where
/// the text is longer than any code.
#[must_use]
pub fn code(text: &str) -> Option<Code> {
    let code = QrCode::with_error_correction_level(text, EcLevel::L).ok()?;
    Some(Code { side: code.width(), dark: code.to_colors().into_iter().map(|color| color == Color::Dark).collect() })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_three_corners_have_their_marks() {
        let code = code("1.abc").unwrap_or(Code { side: 0, dark: Vec::new() });
        assert_eq!((code.side, code.dark.len()), (21, 441));
        // ISO/IEC 18004, 6.3.3: a dark square of 7, in it a light one of 5, in it a dark one of 3.
        for (left, top) in [(0, 0), (14, 0), (0, 14)] {
            for (y, x) in (0..7).flat_map(|y| (0..7).map(move |x| (y, x))) {
                let ring = [x, y, 6 - x, 6 - y].into_iter().min();
                assert_eq!(code.dark[(top + y) * 21 + left + x], ring != Some(1), "{x} {y}");
            }
        }
        assert_eq!(super::code(&"x".repeat(2954)), None);
        assert!(super::code(&"x".repeat(2953)).is_some());
    }
}
