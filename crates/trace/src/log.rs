//! The log of touches.

/// Seconds since 1970-01-01T00:00:00Z.
pub type Seconds = i64;

/// What is known of a cleaning, as bounds: the possible set lets a doubtful cleaning pass contact on, the certain set
/// does not.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Cleaning {
    /// Enough: nothing passes.
    Adequate,
    /// Known to be too short or too weak: passes in both sets.
    Short,
    /// Nobody can say: passes in the possible set only.
    Unknown,
}

/// What a blade did.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum What {
    /// Cut a palm, by its number.
    Cut {
        /// The palm.
        palm: u32,
    },
    /// Was cleaned.
    Clean(Cleaning),
}

/// One row of the log.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Touch {
    /// When it ended.
    pub at: Seconds,
    /// The blade, by its number.
    pub blade: u32,
    /// What happened.
    pub what: What,
}

/// Touches in the order of time.
#[derive(Clone, Debug, Default)]
pub struct Log {
    touches: Vec<Touch>,
}

impl Log {
    /// Takes rows in any order.
    pub fn of(mut touches: Vec<Touch>) -> Log {
        touches.sort_unstable();
        Log { touches }
    }

    /// The touches, in the order of time.
    pub fn touches(&self) -> &[Touch] {
        &self.touches
    }
}
