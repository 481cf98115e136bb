//! Soil: how much water the roots can reach, and how it runs down day by day.

/// Water within reach of the roots. Millimetres over the area the roots are under.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Store {
    /// All that roots can take (eq. 82).
    pub total_mm: f64,
    /// What they take without want (eq. 83).
    pub ready_mm: f64,
}

impl Store {
    /// From the water content at field capacity and at the wilting point, in shares of the volume, the depth of the
    /// roots in metres and the fraction that may run down before want sets in.
    pub fn of(field_capacity: f64, wilting_point: f64, depth_m: f64, fraction: f64) -> Store {
        let total_mm = 1000.0 * (field_capacity - wilting_point) * depth_m;
        Store {
            total_mm,
            ready_mm: fraction * total_mm,
        }
    }

    /// Share of its need that a plant still takes when so much has run down (eq. 84): 1 without want, 0 when all is gone.
    pub fn share_taken(&self, run_down_mm: f64) -> f64 {
        if run_down_mm <= self.ready_mm {
            return 1.0;
        }
        ((self.total_mm - run_down_mm) / (self.total_mm - self.ready_mm)).clamp(0.0, 1.0)
    }

    /// One day: from what had run down at its start and the need of the day, what the plant takes and what has run down
    /// at its end (eq. 85), with so much rain and watering. What does not fit drains away.
    pub fn day(&self, run_down_mm: f64, need_mm: f64, received_mm: f64) -> (f64, f64) {
        let before = (run_down_mm - received_mm).max(0.0);
        let taken = need_mm * self.share_taken(before);
        (taken, (before + taken).min(self.total_mm))
    }
}

/// Fraction that may run down before want sets in, for a day's need other than 5 mm (note to table 22):
/// less when the air takes much; within 0.1 and 0.8.
pub fn adjusted_fraction(fraction: f64, need_mm: f64) -> f64 {
    (fraction + 0.04 * (5.0 - need_mm)).clamp(0.1, 0.8)
}
