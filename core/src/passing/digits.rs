//! Bytes as decimal digits, which a QR code packs into 10 bits a three: seven bytes are seventeen digits.

/// Bytes of a group, and its digits.
const GROUP: (usize, usize) = (7, 17);
/// Digits of a last group of so many bytes: the fewest that hold them.
const REST: [usize; 7] = [0, 3, 5, 8, 10, 13, 15];

/// Digits of a group of bytes.
fn places(bytes: usize) -> usize {
    if bytes == GROUP.0 { GROUP.1 } else { REST[bytes % GROUP.0] }
}

/// Bytes as digits.
pub fn write(bytes: &[u8]) -> String {
    let group = |bytes: &[u8]| {
        let value = bytes.iter().fold(0_u64, |value, byte| value << 8 | u64::from(*byte));
        format!("{value:0places$}", places = places(bytes.len()))
    };
    bytes.chunks(GROUP.0).map(group).collect()
}

/// The bytes of digits; nothing where they are none that were written.
pub fn read(digits: &str) -> Option<Vec<u8>> {
    if !digits.bytes().all(|digit| digit.is_ascii_digit()) {
        return None;
    }
    let mut bytes = Vec::new();
    let mut rest = digits;
    while !rest.is_empty() {
        let (group, after) = rest.split_at(GROUP.1.min(rest.len()));
        let count =
            if group.len() == GROUP.1 { GROUP.0 } else { REST.iter().position(|places| *places == group.len())? };
        let value: u64 = group.parse().ok()?;
        if value >> (8 * count) != 0 {
            return None;
        }
        bytes.extend(value.to_be_bytes().into_iter().skip(8 - count));
        rest = after;
    }
    Some(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_of_every_length_come_back() {
        for length in 0..40 {
            for fill in [0_u8, 1, 127, 255] {
                let bytes: Vec<u8> = (0..length).map(|at: u8| fill.wrapping_add(at.wrapping_mul(fill))).collect();
                let digits = write(&bytes);
                assert_eq!(read(&digits).as_ref(), Some(&bytes));
                assert!(digits.len() <= bytes.len() * 17 / 7 + 3);
            }
        }
        assert_eq!(write(&[255]), "255");
        assert_eq!(write(&[255; 7]), "72057594037927935");
    }

    #[test]
    fn what_was_not_written_is_refused() {
        for odd in ["1", "256", "12a", "99999", "99999999999999999", "-12", "１２３"] {
            assert_eq!(read(odd), None, "{odd}");
        }
    }
}
