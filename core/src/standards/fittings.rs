//! Loss coefficients of fittings.
//!
//! Two tables in use: a coefficient K that is the same for every size ([pipe-surfaces]), and an equivalent length in
//! diameters, L/D, whose K falls with size as the friction of clean steel in full turbulence does ([crane-tp-410]). The two differ
//! by half and more for one fitting; neither is a measurement of the fitting in hand.

/// A fitting in the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fitting {
    /// 90° elbow, threaded.
    Elbow90Threaded,
    /// 90° elbow, flanged or welded.
    Elbow90Flanged,
    /// 45° elbow, threaded.
    Elbow45Threaded,
    /// Tee, flow straight through, threaded.
    TeeRunThreaded,
    /// Tee, flow through the branch, threaded.
    TeeBranchThreaded,
    /// Gate valve, open.
    GateValve,
    /// Ball valve, open, full bore.
    BallValve,
    /// Globe valve, open.
    GlobeValve,
    /// Swing check valve.
    SwingCheck,
    /// Foot valve with strainer, hinged disc.
    FootValveHinged,
    /// Foot valve with strainer, poppet disc.
    FootValvePoppet,
    /// Sharp-edged entrance from a tank.
    EntranceSharp,
    /// Exit into a tank: the whole velocity head is lost.
    Exit,
}

/// One row: the coefficient of the text table, and the equivalent length in diameters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// The fitting.
    pub fitting: Fitting,
    /// Loss coefficient K, any size.
    pub coefficient: Option<f64>,
    /// Equivalent length in inside diameters.
    pub diameters: Option<f64>,
}

const fn row(fitting: Fitting, coefficient: Option<f64>, diameters: Option<f64>) -> Row {
    Row { fitting, coefficient, diameters }
}

/// The rows, in the order of [`Fitting`].
pub const FITTINGS: [Row; 13] = [
    row(Fitting::Elbow90Threaded, Some(1.5), Some(30.0)),
    row(Fitting::Elbow90Flanged, Some(0.3), Some(20.0)),
    row(Fitting::Elbow45Threaded, Some(0.4), Some(16.0)),
    row(Fitting::TeeRunThreaded, Some(0.9), Some(20.0)),
    row(Fitting::TeeBranchThreaded, Some(2.0), Some(60.0)),
    row(Fitting::GateValve, Some(0.15), Some(8.0)),
    row(Fitting::BallValve, Some(0.05), Some(3.0)),
    row(Fitting::GlobeValve, Some(10.0), Some(340.0)),
    row(Fitting::SwingCheck, Some(2.0), Some(100.0)),
    row(Fitting::FootValveHinged, None, Some(75.0)),
    row(Fitting::FootValvePoppet, None, Some(420.0)),
    row(Fitting::EntranceSharp, Some(0.5), None),
    row(Fitting::Exit, Some(1.0), None),
];

/// The row of a fitting.
#[must_use]
pub fn fitting(fitting: Fitting) -> Row {
    FITTINGS[fitting as usize]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_stand_in_order_and_the_sums_are_as_typed() {
        assert!(FITTINGS.iter().enumerate().all(|(at, row)| row.fitting as usize == at));
        let coefficients: f64 = FITTINGS.iter().filter_map(|row| row.coefficient).sum();
        let diameters: f64 = FITTINGS.iter().filter_map(|row| row.diameters).sum();
        assert!((coefficients - 18.8).abs() < 1e-9 && (diameters - 1092.0).abs() < 1e-9, "{coefficients}, {diameters}");
    }

    // A wide-open valve, a straight run and a gentle bend lose less than their harsher kin, in both tables.
    #[test]
    fn the_gentler_fitting_loses_less() {
        for (gentle, harsh) in [
            (Fitting::BallValve, Fitting::GateValve),
            (Fitting::GateValve, Fitting::GlobeValve),
            (Fitting::Elbow45Threaded, Fitting::Elbow90Threaded),
            (Fitting::Elbow90Flanged, Fitting::Elbow90Threaded),
            (Fitting::TeeRunThreaded, Fitting::TeeBranchThreaded),
            (Fitting::FootValveHinged, Fitting::FootValvePoppet),
        ] {
            let (gentle, harsh) = (fitting(gentle), fitting(harsh));
            assert!(gentle.coefficient <= harsh.coefficient && gentle.diameters < harsh.diameters, "{gentle:?}");
        }
    }
}
