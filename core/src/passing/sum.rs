//! The sum by which what was altered is found out.

/// CRC-32 (as in RFC 1952): bytes that were altered have another, always where the change lies within four of them, else
/// but for one chance in four thousand million.
#[must_use]
pub fn sum(bytes: &[u8]) -> u32 {
    crc32fast::hash(bytes)
}

#[cfg(test)]
mod tests {
    use super::sum;

    #[test]
    fn the_check_value_of_the_algorithm() {
        // CRC-32/ISO-HDLC of "123456789" in the catalogue of parametrised CRC algorithms: 0xCBF43926.
        assert_eq!(sum(b"123456789"), 0xcbf4_3926);
        assert_eq!(sum(b""), 0);
    }
}
