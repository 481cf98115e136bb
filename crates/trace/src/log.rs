//! The log of touches, in compact columns.

use std::fmt;

/// Seconds since 1970-01-01T00:00:00Z.
pub type Seconds = i64;

/// What is known of a cleaning. The possible set lets contact pass a doubtful one, the certain set does not.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Cleaning {
    /// Enough: nothing passes.
    Adequate,
    /// Known to be too short or too weak: contact passes in both sets.
    Short,
    /// Nobody can say: contact passes in the possible set only.
    Unknown,
}

/// What a blade did.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
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
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Touch {
    /// When it ended.
    pub at: Seconds,
    /// The blade, by its number.
    pub blade: u32,
    /// What happened.
    pub what: What,
}

/// Why a log cannot be taken.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Refused {
    /// A blade's number is not below the number of blades.
    Blade(u32),
    /// A palm's number is not below the number of palms.
    Palm(u32),
    /// More than 2^32 seconds (136 years) lie between the first and the last touch.
    TooLong,
    /// More palms or blades than the columns can number (palms: 2^32 - 4, blades: 2^16).
    TooMany,
    /// A touch lies before the one in front of it; the number of the touch.
    OutOfOrder(usize),
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{self:?}")
    }
}

/// Cleanings in the order of their codes, which follow those of the palms.
const CLEANINGS: [Cleaning; 3] = [Cleaning::Adequate, Cleaning::Short, Cleaning::Unknown];

/// Touches in the order of time: ten bytes each.
#[derive(Clone, Debug, Default)]
pub struct Log {
    start: Seconds,
    blades: u32,
    palms: u32,
    pub(crate) after: Vec<u32>,
    pub(crate) blade: Vec<u16>,
    pub(crate) code: Vec<u32>,
}

impl Log {
    /// An empty log of so many blades and palms, to be filled in the order of time from `start` on.
    pub fn starting(start: Seconds, blades: u32, palms: u32) -> Result<Log, Refused> {
        if blades > 1 << 16 || palms > u32::MAX - 3 {
            return Err(Refused::TooMany);
        }
        Ok(Log {
            start,
            blades,
            palms,
            ..Log::default()
        })
    }

    /// Takes rows in any order.
    pub fn of(mut touches: Vec<Touch>, blades: u32, palms: u32) -> Result<Log, Refused> {
        touches.sort_unstable();
        let start = touches.first().map_or(0, |t| t.at);
        let mut log = Log::starting(start, blades, palms)?;
        log.reserve(touches.len());
        for touch in touches {
            log.push(touch)?;
        }
        Ok(log)
    }

    /// Makes room for so many more touches.
    pub fn reserve(&mut self, more: usize) {
        self.after.reserve(more);
        self.blade.reserve(more);
        self.code.reserve(more);
    }

    /// Takes one more touch, not earlier than the last.
    pub fn push(&mut self, touch: Touch) -> Result<(), Refused> {
        let number = self.len();
        let after = touch.at.checked_sub(self.start);
        let after = after.ok_or(Refused::TooLong)?;
        if after < i64::from(self.after.last().copied().unwrap_or(0)) {
            return Err(Refused::OutOfOrder(number));
        }
        let after = u32::try_from(after).map_err(|_| Refused::TooLong)?;
        if touch.blade >= self.blades {
            return Err(Refused::Blade(touch.blade));
        }
        let code = match touch.what {
            What::Cut { palm } if palm < self.palms => palm,
            What::Cut { palm } => return Err(Refused::Palm(palm)),
            What::Clean(how) => self.palms + how as u32,
        };
        self.after.push(after);
        self.blade.push(touch.blade as u16);
        self.code.push(code);
        Ok(())
    }

    /// How many touches.
    pub fn len(&self) -> usize {
        self.after.len()
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.after.is_empty()
    }

    /// How many palms are numbered.
    pub fn palms(&self) -> u32 {
        self.palms
    }

    /// How many blades are numbered.
    pub fn blades(&self) -> u32 {
        self.blades
    }

    /// A touch by its number in the order of time.
    pub fn touch(&self, number: usize) -> Touch {
        let code = self.code[number];
        Touch {
            at: self.at(number),
            blade: u32::from(self.blade[number]),
            what: match code.checked_sub(self.palms) {
                None => What::Cut { palm: code },
                Some(how) => What::Clean(CLEANINGS[how as usize]),
            },
        }
    }

    /// When a touch ended.
    pub fn at(&self, number: usize) -> Seconds {
        self.start + i64::from(self.after[number])
    }

    /// The number of the first touch at or after a moment; the length of the log if there is none.
    pub fn first_from(&self, at: Seconds) -> usize {
        self.after
            .partition_point(|after| self.start + i64::from(*after) < at)
    }
}
