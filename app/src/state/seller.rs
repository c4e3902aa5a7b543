//! What a seller puts on the customer's page: a name, lines beneath it, a picture. Kept on this device alone.

use serde::{Deserialize, Serialize};

/// The seller's own.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Seller {
    /// Name or firm.
    pub name: String,
    /// Address, telephone, license: free lines.
    pub lines: String,
    /// A picture as a data address; empty without one.
    pub picture: String,
}

impl Seller {
    /// Most letters of the name.
    pub const MOST_NAME: usize = 80;
    /// Most letters of the lines.
    pub const MOST_LINES: usize = 400;

    /// What was kept, its picture only where it is one: an address of any other kind is not followed.
    #[must_use]
    pub fn checked(mut self) -> Self {
        let pictures = ["data:image/png;base64,", "data:image/jpeg;base64,"];
        if !pictures.iter().any(|kind| self.picture.starts_with(kind)) {
            self.picture.clear();
        }
        self.name = self.name.chars().take(Self::MOST_NAME).collect();
        self.lines = self.lines.chars().take(Self::MOST_LINES).collect();
        self
    }
}

#[cfg(test)]
mod tests {
    use super::Seller;

    #[test]
    fn only_a_picture_is_taken_for_one() {
        let with = |picture: &str| Seller { picture: picture.to_owned(), ..Seller::default() }.checked().picture;
        assert_eq!(with("data:image/png;base64,AAAA"), "data:image/png;base64,AAAA");
        for odd in ["https://elsewhere.invalid/x.png", "data:image/svg+xml,<svg/>", "javascript:alert(1)", "x"] {
            assert_eq!(with(odd), "", "{odd}");
        }
        let long = Seller { name: "n".repeat(999), lines: "l".repeat(999), ..Seller::default() }.checked();
        assert_eq!((long.name.len(), long.lines.len()), (Seller::MOST_NAME, Seller::MOST_LINES));
    }
}
