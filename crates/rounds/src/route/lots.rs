//! Lots: a small generator of our own, so that a seed means the same everywhere and for ever.

/// SplitMix64 (Steele G. L., Lea D., Flood C. H., Fast splittable pseudorandom number generators, OOPSLA 2014; the
/// constants are those of Stafford's mix 13, as published there).
#[derive(Clone)]
pub(super) struct Lots(u64);

impl Lots {
    pub(super) fn new(seed: u64) -> Lots {
        Lots(seed)
    }

    #[inline]
    pub(super) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = self.0;
        let z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// 0..n, n above 0.
    #[inline]
    pub(super) fn below(&mut self, n: usize) -> usize {
        (((self.next() >> 32) * n as u64) >> 32) as usize
    }

    /// Above 0, up to 1.
    #[inline]
    pub(super) fn unit(&mut self) -> f64 {
        ((self.next() >> 11) + 1) as f64 * (1.0 / 9_007_199_254_740_992.0)
    }

    pub(super) fn shuffle<T>(&mut self, items: &mut [T]) {
        for i in (1..items.len()).rev() {
            items.swap(i, self.below(i + 1));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Lots;

    #[test]
    fn the_generator_gives_the_published_numbers() {
        // First outputs of SplitMix64 for the seed 1234567 (Rosetta Code, "Pseudo-random numbers/Splitmix64"; from memory).
        let mut lots = Lots::new(1_234_567);
        let first = [lots.next(), lots.next(), lots.next()];
        assert_eq!(
            first,
            [
                6_457_827_717_110_365_317,
                3_203_168_211_198_807_973,
                9_817_491_932_198_370_423
            ]
        );
    }

    #[test]
    fn lots_stay_in_their_range() {
        let mut lots = Lots::new(9);
        for _ in 0..10_000 {
            assert!(lots.below(7) < 7);
            let u = lots.unit();
            assert!(u > 0.0 && u <= 1.0);
        }
    }
}
