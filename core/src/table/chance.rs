//! Texts for tests that look random and are the same in every run.

/// Numbers that look random.
pub struct Chance(pub u64);

impl Chance {
    pub fn below(&mut self, end: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % end
    }

    pub fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }

    /// A table with up to two pieces put in anywhere.
    pub fn spoiled(&mut self, mut text: String, more: &[&str]) -> String {
        let pieces = [
            "\n", "\r", ",", ";", "\t", "\"", "\"\"", "'", "=", " ", "\0", "-", "e9", "1e400", "NaN", "inf",
            "\u{feff}", "\u{2028}", "𝟙", "٣", "é",
        ];
        let pieces = [&pieces, more].concat();
        for _ in 0..self.below(3) {
            let at = self.below(text.len() + 1);
            if text.is_char_boundary(at) {
                text.insert_str(at, self.one_of(&pieces));
            }
        }
        text
    }
}

/// Whether a line stands in a text, whatever ends its lines.
pub fn is_line(line: usize, text: &str) -> bool {
    (1..=text.replace("\r\n", "\n").split(['\n', '\r']).count()).contains(&line)
}
