//! Monthly means of a place.

use crate::sourced::SourceKey;

/// One month's means. Absent means unknown.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Month {
    /// Mean temperature, °C.
    pub tmean_c: Option<f64>,
    /// Mean daily minimum, °C.
    pub tmin_c: Option<f64>,
    /// Mean daily maximum, °C.
    pub tmax_c: Option<f64>,
    /// Rain, mm a month.
    pub rain_mm: Option<f64>,
}

/// Twelve months of a place, January first.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Climate {
    /// Months, index 0 is January.
    pub months: [Month; 12],
    /// Where the figures come from; empty when the keeper gave them.
    pub sources: Vec<SourceKey>,
}

impl Climate {
    /// The twelve mean temperatures in °C, if all are known (a month with only minimum and maximum takes their mean).
    pub fn tmean(&self) -> Option<[f64; 12]> {
        let mut out = [0.0; 12];
        for (slot, month) in out.iter_mut().zip(&self.months) {
            *slot = month
                .tmean_c
                .or_else(|| Some((month.tmin_c? + month.tmax_c?) / 2.0))?;
        }
        Some(out)
    }
}
