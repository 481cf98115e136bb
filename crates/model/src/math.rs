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

/// The smaller of two numbers that are not NaN: one instruction, where `f64::min` also has to look for NaN.
#[inline(always)]
pub fn smaller(a: f64, b: f64) -> f64 {
    if a < b { a } else { b }
}

/// The larger of two numbers that are not NaN.
#[inline(always)]
pub fn larger(a: f64, b: f64) -> f64 {
    if a > b { a } else { b }
}

/// Natural logarithm for long loops: positive normal numbers only, absolute error below 1e-12, no branches, so that
/// the compiler can do several at once. Same bits everywhere: plain IEEE arithmetic, no fused operations.
#[inline(always)]
pub fn ln_quick(x: f64) -> f64 {
    const TWO52: f64 = 4_503_599_627_370_496.0;
    let bits = x.to_bits();
    let exponent = f64::from_bits((bits >> 52) | TWO52.to_bits()) - TWO52 - 1023.0;
    let mantissa = f64::from_bits((bits & 0x000f_ffff_ffff_ffff) | 0x3ff0_0000_0000_0000);
    // mantissa = sqrt(2) (1 + s) / (1 - s), |s| < 0.172
    let s = (mantissa - core::f64::consts::SQRT_2) / (mantissa + core::f64::consts::SQRT_2);
    let q = s * s;
    let odd = 2.0 / 15.0;
    let odd = odd * q + 2.0 / 13.0;
    let odd = odd * q + 2.0 / 11.0;
    let odd = odd * q + 2.0 / 9.0;
    let odd = odd * q + 2.0 / 7.0;
    let odd = odd * q + 2.0 / 5.0;
    let odd = odd * q + 2.0 / 3.0;
    let odd = odd * q + 2.0;
    (exponent + 0.5) * core::f64::consts::LN_2 + s * odd
}

/// e to the x for long loops: relative error below 1e-13 for -700 <= x <= 700, clamped outside.
#[inline(always)]
pub fn exp_quick(x: f64) -> f64 {
    const ROUND: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52: adding it rounds to a whole number
    let x = larger(smaller(x, 700.0), -700.0);
    let shifted = x * core::f64::consts::LOG2_E + ROUND;
    let k = shifted - ROUND;
    let r = (x - k * 0.693_147_180_369_123_8) - k * 1.908_214_929_270_587_7e-10;
    let mut p = 1.0 / 479_001_600.0;
    for c in [
        1.0 / 39_916_800.0,
        1.0 / 3_628_800.0,
        1.0 / 362_880.0,
        1.0 / 40_320.0,
        1.0 / 5_040.0,
        1.0 / 720.0,
        1.0 / 120.0,
        1.0 / 24.0,
        1.0 / 6.0,
        0.5,
        1.0,
        1.0,
    ] {
        p = p * r + c;
    }
    let scale = f64::from_bits((shifted.to_bits().wrapping_add(1023)) << 52);
    p * scale
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quick_logarithm_and_exponential_agree_with_libm() {
        let mut worst = (0.0f64, 0.0f64);
        for i in -3000..3000 {
            let x = f64::from(i) * 0.0731;
            let e = exp(x);
            worst.0 = worst.0.max((exp_quick(x) / e - 1.0).abs());
            worst.1 = worst.1.max((ln_quick(e) - ln(e)).abs());
        }
        assert!(worst.0 < 1e-13, "exp {}", worst.0);
        assert!(worst.1 < 1e-12, "ln {}", worst.1);
        assert_eq!(exp_quick(-1e9), exp_quick(-700.0));
    }
}
