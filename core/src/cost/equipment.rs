//! What equipment costs.

use crate::error::OutsideRange;
use crate::quantity::{Money, PieceAndSize, Power, in_horsepower};

/// Price of equipment: a part for the piece, and one for each horsepower of its size.
///
/// # Units
/// `size` a rated power; money of the price book.
/// # Range
/// Size 0 to 1,000 hp.
/// # Errors
/// [`OutsideRange`] names `size` (hp).
/// # Source
/// A model of a price list; the prices are the user's, and invented until then.
pub fn equipment_price(price: PieceAndSize, size: Power) -> Result<Money, OutsideRange> {
    let hp = OutsideRange::check("size", in_horsepower(size), 0.0, 1000.0)?;
    Ok(Money(price.fixed.0 + price.per_hp.0 * hp))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::horsepower;

    #[test]
    fn a_price_grows_with_the_size() {
        let price = PieceAndSize { fixed: Money(700.0), per_hp: Money(140.0) };
        assert!((equipment_price(price, horsepower(10.0)).unwrap().0 - 2100.0).abs() < 1e-9);
        assert_eq!(equipment_price(price, horsepower(-1.0)).unwrap_err().argument, "size");
    }
}
