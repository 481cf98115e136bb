//! Files in other encodings, on request.

use encoding_rs::{CoderResult, Decoder, Encoding};
use std::io::Read;

/// A reader that turns an encoding named by its label (`windows-1252`, `utf-16le`, ...) into UTF-8 as it goes.
/// `None`: no such encoding (labels are those of the WHATWG Encoding Standard).
pub fn decode<R: Read>(read: R, label: &str) -> Option<impl Read + use<R>> {
    let decoder = Encoding::for_label(label.as_bytes())?.new_decoder_with_bom_removal();
    Some(Decoding {
        read,
        decoder,
        raw: Vec::new(),
        taken: 0,
        ready: vec![0; 8192],
        from: 0,
        to: 0,
        ended: false,
    })
}

struct Decoding<R> {
    read: R,
    decoder: Decoder,
    raw: Vec<u8>,
    taken: usize,
    ready: Vec<u8>,
    from: usize,
    to: usize,
    ended: bool,
}

impl<R: Read> Decoding<R> {
    fn refill(&mut self) -> std::io::Result<()> {
        if self.taken == self.raw.len() {
            self.raw.resize(4096, 0);
            let n = self.read.read(&mut self.raw)?;
            self.raw.truncate(n);
            self.taken = 0;
        }
        let last = self.raw.is_empty();
        let (step, taken, wrote, _) =
            self.decoder
                .decode_to_utf8(&self.raw[self.taken..], &mut self.ready, last);
        self.taken += taken;
        (self.from, self.to) = (0, wrote);
        self.ended = last && step == CoderResult::InputEmpty;
        Ok(())
    }
}

impl<R: Read> Read for Decoding<R> {
    fn read(&mut self, out: &mut [u8]) -> std::io::Result<usize> {
        while self.from == self.to && !self.ended {
            self.refill()?;
        }
        let n = out.len().min(self.to - self.from);
        out[..n].copy_from_slice(&self.ready[self.from..self.from + n]);
        self.from += n;
        Ok(n)
    }
}
