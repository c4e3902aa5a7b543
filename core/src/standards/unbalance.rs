//! NEMA MG 1, figure 14-1: how much of its rating a motor carries under unbalanced voltages. Source:
//! [nema-mg1-14.36]; a graph, so that every reading is good to 0.015.

/// Unbalance beyond which a motor should not run at all, percent.
pub const MOST_PERCENT: f64 = 5.0;

/// Unbalance in percent and the share of rated power that goes with it, read off the graph.
pub const TABLE: [(f64, f64); 6] = [(0.0, 1.0), (1.0, 1.0), (2.0, 0.95), (3.0, 0.88), (4.0, 0.82), (5.0, 0.75)];

/// The factor at an unbalance, on a straight line between two readings; `None` outside 0 to 5 percent.
#[must_use]
pub fn derating_factor(percent: f64) -> Option<f64> {
    let pair = TABLE.windows(2).find(|pair| percent >= pair[0].0 && percent <= pair[1].0)?;
    let ((from, high), (to, low)) = (pair[0], pair[1]);
    Some(high + (low - high) * (percent - from) / (to - from))
}

#[cfg(test)]
mod tests {
    use super::*;

    // More unbalance, more heat, less load.
    #[test]
    fn the_factor_never_rises() {
        for pair in TABLE.windows(2) {
            assert!(pair[1].0 - pair[0].0 == 1.0 && pair[1].1 <= pair[0].1, "{pair:?}");
        }
        assert_eq!(TABLE[TABLE.len() - 1].0, MOST_PERCENT);
        assert!((TABLE.iter().map(|row| row.1).sum::<f64>() - 5.4).abs() < 1e-12);
        for percent in [-0.1, 5.1, f64::NAN, f64::INFINITY] {
            assert_eq!(derating_factor(percent), None, "{percent}");
        }
        for (percent, factor) in TABLE {
            assert_eq!(derating_factor(percent), Some(factor));
        }
    }
}
