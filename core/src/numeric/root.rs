//! A root between two bounds.

/// Why no root is found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum NoRoot {
    /// A bound or a value of the function is NaN or infinite.
    NotFinite,
    /// The function has the same sign at both bounds.
    SameSign,
}

/// Steps after which the closest bound is returned; halving a bracket of any two floats takes fewer.
const STEPS: usize = 2200;

/// A root of `f` between `low` and `high`, to `tolerance` or a few units in the last place, whichever is wider.
///
/// Halves the bracket, or steps by inverse quadratic interpolation where the last three points promise that the step is
/// safe; so it never leaves the bracket, never takes many more steps than halving, and takes few where `f` is smooth.
///
/// # Errors
/// [`NoRoot`] where the signs at the bounds do not differ, or a number is not finite.
/// # Source
/// [chandrupatla-1997] Advances in Engineering Software 28(3), 145-149.
/// # Example
/// ```
/// # use wellwright_core::numeric::root::bracketed_root;
/// let root = bracketed_root(|x| x * x - 2.0, 0.0, 2.0, 0.0)?;
/// assert!((root - 2f64.sqrt()).abs() < 1e-15);
/// # Ok::<(), wellwright_core::numeric::root::NoRoot>(())
/// ```
pub fn bracketed_root(mut f: impl FnMut(f64) -> f64, low: f64, high: f64, tolerance: f64) -> Result<f64, NoRoot> {
    let mut value = |x: f64| {
        let y = f(x);
        if x.is_finite() && y.is_finite() { Ok(y) } else { Err(NoRoot::NotFinite) }
    };
    let (mut a, mut b) = (high, low);
    let (mut fa, mut fb) = (value(a)?, value(b)?);
    if fa != 0.0 && fb != 0.0 && (fa > 0.0) == (fb > 0.0) {
        return Err(NoRoot::SameSign);
    }
    let mut share: f64 = 0.5;
    for _ in 0..STEPS {
        let (best, left) = if fa.abs() < fb.abs() { (a, fa) } else { (b, fb) };
        let least = (2.0 * f64::EPSILON * best.abs()).max(tolerance) / (b - a).abs();
        if left == 0.0 || least.is_nan() || least > 0.5 {
            return Ok(best);
        }
        let x = a + share.clamp(least, 1.0 - least) * (b - a);
        let fx = value(x)?;
        // The root lies between a, the newest point, and b; c is the one that was left.
        let (c, fc) = if (fx > 0.0) == (fa > 0.0) {
            (a, fa)
        } else {
            let left = (b, fb);
            (b, fb) = (a, fa);
            left
        };
        (a, fa) = (x, fx);
        share = next_share([a, b, c], [fa, fb, fc]);
    }
    Ok(if fa.abs() < fb.abs() { a } else { b })
}

/// How far from a towards b the next point lies: by inverse quadratic interpolation where the three points allow it.
fn next_share([a, b, c]: [f64; 3], [fa, fb, fc]: [f64; 3]) -> f64 {
    let xi = (a - b) / (c - b);
    let phi = (fa - fb) / (fc - fb);
    if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
        fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb))
    } else {
        0.5
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Root and number of steps.
    fn found(f: impl Fn(f64) -> f64, low: f64, high: f64) -> (f64, usize) {
        let mut steps = 0;
        let counted = |x: f64| {
            steps += 1;
            f(x)
        };
        (bracketed_root(counted, low, high, 0.0).unwrap(), steps)
    }

    // Roots known in closed form.
    #[test]
    fn known_roots_are_found_in_few_steps() {
        for (f, low, high, root) in [
            (&(|x: f64| x.cos()) as &dyn Fn(f64) -> f64, 1.0, 2.0, core::f64::consts::FRAC_PI_2),
            (&|x: f64| x.exp() - 5.0, -10.0, 10.0, 5f64.ln()),
            (&|x: f64| x.ln(), 1e-6, 1e6, 1.0),
            (&|x: f64| x.powi(3) - 27.0, 0.0, 1e3, 3.0),
            (&|x: f64| 3.0 - x, 0.0, 1e9, 3.0),
        ] {
            for (low, high) in [(low, high), (high, low)] {
                let (x, steps) = found(f, low, high);
                assert!((x - root).abs() <= 4.0 * f64::EPSILON * root, "{x} for {root}");
                assert!(steps < 60, "{steps} steps to {root}");
            }
        }
    }

    #[test]
    fn a_jump_and_a_flat_root_are_found_all_the_same() {
        let (jump, steps) = found(|x| if x < 0.7 { -1.0 } else { 1.0 }, -1e3, 1e6);
        assert!((jump - 0.7).abs() < 1e-15 && steps < 120, "{jump} in {steps}");
        let (flat, steps) = found(|x| (x - 1.0).powi(9), 0.0, 5.0);
        assert!((flat - 1.0).abs() < 1e-6 && steps < 120, "{flat} in {steps}");
    }

    #[test]
    fn a_root_at_a_bound_is_one_and_the_tolerance_is_kept() {
        assert_eq!(bracketed_root(|x| x - 1.0, 1.0, 2.0, 0.0), Ok(1.0));
        assert_eq!(bracketed_root(|x| x - 2.0, 1.0, 2.0, 0.0), Ok(2.0));
        assert_eq!(bracketed_root(|x| x, 0.0, 0.0, 0.0), Ok(0.0));
        let rough = bracketed_root(|x| x.exp() - 5.0, 0.0, 10.0, 1e-3).unwrap();
        assert!((rough - 5f64.ln()).abs() <= 1e-3 && rough != 5f64.ln());
    }

    #[test]
    fn what_has_no_root_says_so() {
        assert_eq!(bracketed_root(|x| x * x + 1.0, -1.0, 1.0, 0.0), Err(NoRoot::SameSign));
        assert_eq!(bracketed_root(|x| x, f64::NAN, 1.0, 0.0), Err(NoRoot::NotFinite));
        assert_eq!(bracketed_root(|x| x, -1.0, f64::INFINITY, 0.0), Err(NoRoot::NotFinite));
        assert_eq!(bracketed_root(|x| 1.0 / x, -1.0, 1.0, 0.0), Err(NoRoot::NotFinite));
    }
}
