//! A bar on standard error for work over a second; nothing where standard error is no terminal.

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::io::{self, Read};
use std::time::{Duration, Instant};

/// Work shorter than this shows no bar.
const PATIENCE: Duration = Duration::from_secs(1);

/// A bar that shows itself once the work has taken a second.
pub struct Progress {
    bar: ProgressBar,
    since: Instant,
    shown: bool,
}

impl Progress {
    /// Counts things up to `total`; `None` where nobody knows how many there are.
    pub fn new(what: &str, total: Option<u64>) -> Progress {
        let bar = ProgressBar::with_draw_target(total, ProgressDrawTarget::hidden());
        let shape = if total.is_some() {
            "{msg} {wide_bar} {pos}/{len} {eta}"
        } else {
            "{msg} {spinner} {pos}"
        };
        if let Ok(style) = ProgressStyle::with_template(shape) {
            bar.set_style(style);
        }
        bar.set_message(what.to_owned());
        Progress {
            bar,
            since: Instant::now(),
            shown: false,
        }
    }

    /// So many more are done.
    pub fn add(&mut self, n: u64) {
        self.bar.inc(n);
        if !self.shown && self.since.elapsed() > PATIENCE {
            self.bar
                .set_draw_target(ProgressDrawTarget::stderr_with_hz(4));
            self.shown = true;
        }
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.bar.finish_and_clear();
    }
}

/// A reader that moves a bar on.
pub struct Watched<R> {
    /// The reader.
    pub read: R,
    /// Its bar, in bytes.
    pub progress: Progress,
}

impl<R: Read> Read for Watched<R> {
    fn read(&mut self, out: &mut [u8]) -> io::Result<usize> {
        let n = self.read.read(out)?;
        self.progress.add(n as u64);
        Ok(n)
    }
}
