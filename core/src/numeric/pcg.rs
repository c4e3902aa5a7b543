//! Numbers that look like chance and repeat with their seed.

/// Multiplier of the 64-bit state.
const MULTIPLIER: u64 = 6_364_136_223_846_793_005;

/// PCG32, XSH-RR 64/32: a linear congruential state of 64 bits, from which 32 are taken, shifted and turned. The same
/// on every machine. Not for secrets.
///
/// Source: [oneill-2014].
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pcg32 {
    state: u64,
    increment: u64,
}

impl Pcg32 {
    /// A generator of a seed; streams of different numbers do not repeat one another.
    #[must_use]
    pub fn new(seed: u64, stream: u64) -> Self {
        let mut generator = Self { state: 0, increment: (stream << 1) | 1 };
        generator.draw();
        generator.state = generator.state.wrapping_add(seed);
        generator.draw();
        generator
    }

    /// The next 32 bits.
    pub fn draw(&mut self) -> u32 {
        let old = self.state;
        self.state = old.wrapping_mul(MULTIPLIER).wrapping_add(self.increment);
        // Keeping the low 32 bits is the method's.
        let shifted = (((old >> 18) ^ old) >> 27) as u32;
        shifted.rotate_right((old >> 59) as u32)
    }

    /// A whole number below a bound, each as likely as the next; 0 where the bound is 0 or 1.
    pub fn below(&mut self, bound: u32) -> u32 {
        if bound < 2 {
            return 0;
        }
        // Draws below the threshold would favor the small numbers, so they are thrown away.
        let threshold = bound.wrapping_neg() % bound;
        loop {
            let drawn = self.draw();
            if drawn >= threshold {
                return drawn % bound;
            }
        }
    }

    /// A number above 0 and below 1: the middle of one of 2³² equal parts.
    pub fn share(&mut self) -> f64 {
        (f64::from(self.draw()) + 0.5) / 4_294_967_296.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The published output of the reference program for seed 42 and stream 54, first round: draws, coins, dice and a
    /// pack of cards, https://www.pcg-random.org/using-pcg-c-basic.html, read where tests of other programs repeat it.
    const DRAWS: [u32; 6] = [0xa15c_02b7, 0x7b47_f409, 0xba1d_3330, 0x83d2_f293, 0xbfa4_784b, 0xcbed_606e];
    const COINS: &str = "HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT";
    const DICE: &str = "341122324324335231315141564662633";
    const CARDS: &str = "Qd Ks 6d 3s 3d 4c 3h Td Kc 5c Jh Kd Jd As 4s 4h Ad Th Ac Jc 7s Qs \
        2s 7h Kh 2d 6c Ah 4d Qh 9h 6s 5s 2c 9c Ts 8d 9s 3c 8c Js 5d 2h 6h 7d 8s 9d 5h 8h Qc 7c Tc";
    /// And of the fifth round.
    const FIFTH: [u32; 6] = [0xfcef_7cd6, 0x1b48_8b5a, 0xd0da_f7ea, 0x1d9a_70f7, 0x241a_37cf, 0x9a38_57b7];

    fn card(number: usize) -> String {
        [b"A23456789TJQK"[number / 4], b"hcds"[number % 4]].map(char::from).iter().collect()
    }

    #[test]
    fn it_draws_what_the_reference_draws() {
        let mut chance = Pcg32::new(42, 54);
        for round in 1..=5 {
            let draws = [(); 6].map(|()| chance.draw());
            let coins: String = (0..65).map(|_| if chance.below(2) == 1 { 'H' } else { 'T' }).collect();
            let dice: String = (0..33).map(|_| (chance.below(6) + 1).to_string()).collect();
            let mut cards: Vec<usize> = (0..52).collect();
            for left in (2..=52_u32).rev() {
                cards.swap(chance.below(left) as usize, left as usize - 1);
            }
            if round == 1 {
                assert_eq!((draws, coins.as_str(), dice.as_str()), (DRAWS, COINS, DICE));
                assert_eq!(cards.into_iter().map(card).collect::<Vec<_>>().join(" "), CARDS);
            } else if round == 5 {
                assert_eq!(draws, FIFTH);
            }
        }
    }

    #[test]
    fn shares_lie_between_and_seeds_differ() {
        let mut chance = Pcg32::new(7, 0);
        assert!((0..10_000).map(|_| chance.share()).all(|share| share > 0.0 && share < 1.0));
        assert_ne!(Pcg32::new(7, 0).draw(), Pcg32::new(8, 0).draw());
        assert_ne!(Pcg32::new(7, 0).draw(), Pcg32::new(7, 1).draw());
        assert_eq!((chance.below(0), chance.below(1)), (0, 0));
    }
}
