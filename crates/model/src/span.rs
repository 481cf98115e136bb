//! A stretch between two figures: what is known of a quantity that is not known to the digit.

/// From `low` to `high`, both ends included, `low` not above `high`.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Span {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Span {
    /// Between two figures in any order.
    pub fn between(a: f64, b: f64) -> Span {
        Span {
            low: a.min(b),
            high: a.max(b),
        }
    }

    /// One figure.
    pub fn of(value: f64) -> Span {
        Span {
            low: value,
            high: value,
        }
    }

    /// The middle.
    pub fn middle(self) -> f64 {
        (self.low + self.high) / 2.0
    }

    /// The stretch that holds both.
    pub fn hull(self, other: Span) -> Span {
        Span {
            low: self.low.min(other.low),
            high: self.high.max(other.high),
        }
    }

    /// The products of quantities that are not below zero.
    pub fn times(self, other: Span) -> Span {
        Span {
            low: self.low * other.low,
            high: self.high * other.high,
        }
    }

    /// So many times each end; the factor is not below zero.
    pub fn scaled(self, factor: f64) -> Span {
        Span {
            low: self.low * factor,
            high: self.high * factor,
        }
    }

    /// The sums.
    pub fn plus(self, other: Span) -> Span {
        Span {
            low: self.low + other.low,
            high: self.high + other.high,
        }
    }

    /// Each end kept within bounds.
    pub fn clamp(self, low: f64, high: f64) -> Span {
        Span {
            low: self.low.clamp(low, high),
            high: self.high.clamp(low, high),
        }
    }

    /// What a function that never falls makes of both ends.
    pub fn map(self, f: impl Fn(f64) -> f64) -> Span {
        Span {
            low: f(self.low),
            high: f(self.high),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Span;

    #[test]
    fn ends_are_reckoned_by_themselves() {
        let (a, b) = (Span::between(3.0, 2.0), Span::of(4.0));
        assert_eq!(a.times(b), Span::between(8.0, 12.0));
        assert_eq!(a.plus(b), Span::between(6.0, 7.0));
        assert_eq!(a.hull(b), Span::between(2.0, 4.0));
        assert_eq!(a.clamp(2.5, 9.0), Span::between(2.5, 3.0));
        assert_eq!(a.scaled(2.0).middle(), 5.0);
    }
}
