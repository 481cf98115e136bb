//! Chance that is the same in every run: SplitMix64 (Steele, Lea and Flood 2014, doi:10.1145/2660193.2660195).

/// A stream of numbers that its seed decides.
pub(super) struct Dice(u64);

impl Dice {
    /// The stream of a seed.
    pub fn new(seed: u64) -> Dice {
        Dice(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Evenly spread over 0 to 1.
    pub fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Evenly spread between two numbers.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    /// Close to a standard normal number: twelve even ones less six.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.share()).sum::<f64>() - 6.0
    }

    /// True in this share of throws.
    pub fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }
}

#[cfg(test)]
mod tests {
    use super::Dice;

    #[test]
    fn the_stream_is_the_published_one() {
        // First outputs of SplitMix64 for the seed 1234567, as published test vectors give them (from memory).
        let mut dice = Dice::new(1_234_567);
        assert_eq!(dice.next(), 6_457_827_717_110_365_317);
        assert_eq!(dice.next(), 3_203_168_211_198_807_973);
    }

    #[test]
    fn shares_and_normals_are_spread_as_they_should_be() {
        let mut dice = Dice::new(1);
        let n = 20_000;
        let mean = (0..n).map(|_| dice.share()).sum::<f64>() / f64::from(n);
        assert!((mean - 0.5).abs() < 0.01, "{mean}");
        let squared = |x: f64| x * x;
        let square = (0..n).map(|_| squared(dice.normal())).sum::<f64>() / f64::from(n);
        assert!((square - 1.0).abs() < 0.05, "{square}");
    }
}
