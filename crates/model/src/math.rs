//! The only door to transcendental functions, so that a server and a phone compute the same bits.
//!
//! Backed by `libm` (software, portable). `sqrt` and `abs` are exact in IEEE 754 and may be used directly.

/// e to the x.
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm.
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// x to the y.
pub fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// Sine of radians.
pub fn sin(x: f64) -> f64 {
    libm::sin(x)
}

/// Cosine of radians.
pub fn cos(x: f64) -> f64 {
    libm::cos(x)
}

/// Tangent of radians.
pub fn tan(x: f64) -> f64 {
    libm::tan(x)
}

/// Angle of the point (x, y), radians.
pub fn atan2(y: f64, x: f64) -> f64 {
    libm::atan2(y, x)
}

/// Error function.
pub fn erf(x: f64) -> f64 {
    libm::erf(x)
}

/// Complementary error function.
pub fn erfc(x: f64) -> f64 {
    libm::erfc(x)
}

/// Natural logarithm of the gamma function, x > 0.
pub fn ln_gamma(x: f64) -> f64 {
    libm::lgamma(x)
}

/// Standard normal distribution function.
pub fn normal_cdf(z: f64) -> f64 {
    0.5 * erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}
