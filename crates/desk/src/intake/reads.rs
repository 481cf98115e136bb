//! What every reader of rows does alike: it is an iterator over its rows, and it tells of its file what its table tells.

/// Makes a reader an iterator over its rows. It reads one with `row()`, in which nothing is to be remarked; otherwise the
/// table of the reader and a function to a row with its remarks are named.
macro_rules! rows {
    ($reader:ty, $row:ty, <$($life:lifetime,)? R>) => {
        $crate::intake::reads::rows!($reader, $row, <$($life,)? R>, table, |reader| {
            Ok((reader.row()?, Vec::new()))
        });
    };
    ($reader:ty, $row:ty, <$($life:lifetime,)? R>, $($table:tt).+, $next:expr) => {
        impl<$($life,)? R: std::io::Read> Iterator for $reader {
            type Item = Result<$crate::intake::Row<$row>, $crate::intake::Refusal>;

            fn next(&mut self) -> Option<Self::Item> {
                let read: fn(
                    &mut Self,
                ) -> Result<($row, Vec<model::Finding>), $crate::intake::Fault> = $next;
                if let Err(refusal) = self.$($table).+.advance()? {
                    return Some(Err(refusal));
                }
                Some(match read(self) {
                    Ok((value, remarks)) => Ok($crate::intake::Row {
                        line: self.$($table).+.line(),
                        value,
                        remarks,
                    }),
                    Err(fault) => Err(self.$($table).+.refuse(fault)),
                })
            }
        }
    };
}

/// Makes a reader tell of its file what its table does; `remarks` may add to what the table remarks.
macro_rules! about {
    ($reader:ty, <$($life:lifetime,)? R>, $($table:tt).+) => {
        $crate::intake::reads::about!($reader, <$($life,)? R>, $($table).+, |_, remarks| remarks);
    };
    ($reader:ty, <$($life:lifetime,)? R>, $($table:tt).+, $remarks:expr) => {
        impl<$($life,)? R: std::io::Read> $crate::intake::About for $reader {
            fn headers(&self) -> &[String] {
                self.$($table).+.headers()
            }

            fn refuse(&self, fault: $crate::intake::Fault) -> $crate::intake::Refusal {
                self.$($table).+.refuse(fault)
            }

            fn unknown_columns(&self) -> Vec<&str> {
                self.$($table).+.unknown_columns()
            }

            fn remarks(&self) -> Vec<model::Finding> {
                let all: fn(&Self, Vec<model::Finding>) -> Vec<model::Finding> = $remarks;
                all(self, self.$($table).+.remarks())
            }
        }
    };
}

pub(super) use {about, rows};
