//! Files out: written under another name and renamed when whole, so that nobody reads half a file.

use anyhow::Context;
use std::fs::File;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

/// A file being written, or standard output for `-`.
pub struct Output {
    write: Box<dyn Write>,
    paths: Option<(PathBuf, PathBuf)>,
}

impl Output {
    /// Begins a file.
    pub fn create(path: &Path) -> anyhow::Result<Output> {
        if path == Path::new("-") {
            return Ok(Output {
                write: Box::new(BufWriter::new(io::stdout().lock())),
                paths: None,
            });
        }
        let mut part = path.as_os_str().to_os_string();
        part.push(".part");
        let part = PathBuf::from(part);
        let file = File::create(&part).with_context(|| part.display().to_string())?;
        Ok(Output {
            write: Box::new(BufWriter::new(file)),
            paths: Some((part, path.to_owned())),
        })
    }

    /// Whether this is standard output.
    pub fn is_stdout(&self) -> bool {
        self.paths.is_none()
    }

    /// Ends the file and gives it its name.
    pub fn finish(mut self) -> anyhow::Result<()> {
        self.write.flush()?;
        if let Some((part, path)) = self.paths.take() {
            // close before renaming: some systems refuse otherwise
            self.write = Box::new(io::sink());
            std::fs::rename(&part, &path).with_context(|| path.display().to_string())?;
        }
        Ok(())
    }
}

impl Write for Output {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.write.write(bytes)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.write.flush()
    }
}

impl Drop for Output {
    fn drop(&mut self) {
        if let Some((part, _)) = &self.paths {
            // an unfinished file is worth nothing
            let _ = std::fs::remove_file(part);
        }
    }
}
