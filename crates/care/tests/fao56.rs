//! Every figure of the worked examples of FAO Irrigation and Drainage Paper 56 (source `fao56`) in
//! `cases/water/fao56.csv`, computed from the inputs of its example.

use serde_json::Value;
use spearleaf_care::water::{
    Hour, Store, Weather, adjusted_fraction, air, hargreaves, reference_day, reference_hour, sun,
};

const CASES: &str = include_str!("../../../cases/water/fao56.csv");

/// The inputs of one row.
struct Given(Value);

impl Given {
    fn known(&self, key: &str) -> Option<f64> {
        self.0.get(key).and_then(Value::as_f64)
    }

    fn f(&self, key: &str) -> f64 {
        self.known(key)
            .unwrap_or_else(|| panic!("no {key} in {}", self.0))
    }

    fn j(&self) -> u16 {
        self.f("j") as u16
    }

    fn latitude(&self) -> f64 {
        let degrees = self.f("lat_deg") + self.known("lat_min").unwrap_or(0.0) / 60.0;
        let south = self.0.get("hemisphere").and_then(Value::as_str) == Some("S");
        if south { -degrees } else { degrees }.to_radians()
    }

    fn above(&self) -> f64 {
        match self.known("ra_mj") {
            Some(above) => above,
            None => sun::above_air(self.latitude(), self.j()),
        }
    }

    fn tmean(&self) -> f64 {
        match self.known("tmean_c") {
            Some(mean) => mean,
            None => (self.f("tmax_c") + self.f("tmin_c")) / 2.0,
        }
    }

    fn vapour(&self) -> Option<f64> {
        let by_extremes = || {
            let (high, low) = (self.known("rhmax_pct")?, self.known("rhmin_pct")?);
            Some(air::vapour_by_extremes(
                self.f("tmax_c"),
                self.f("tmin_c"),
                high,
                low,
            ))
        };
        self.known("ea_kpa").or_else(by_extremes)
    }

    fn wind(&self) -> Option<f64> {
        let measured = self
            .known("uz_ms")
            .or_else(|| self.known("uz_kmh").map(|kmh| kmh / 3.6));
        let from_height = || Some(measured? * air::wind_factor(self.f("z_m")));
        self.known("u2_ms").or_else(from_height)
    }

    /// At the ground: by hours of sunshine, by what is given, or by temperature.
    fn light(&self) -> f64 {
        if let Some(light) = self.known("rs_mj") {
            return light;
        }
        if let Some(hours) = self.known("n_h") {
            let daylight = sun::daylight_hours(self.latitude(), self.j());
            let a = self.known("as").unwrap_or(0.25);
            return sun::at_ground(
                self.above(),
                hours,
                daylight,
                a,
                self.known("bs").unwrap_or(0.5),
            );
        }
        let k = self.f("k_rs");
        sun::by_temperature(self.above(), self.f("tmax_c"), self.f("tmin_c"), k)
    }

    /// Under a clear sky: given, or with the share the example uses, or by height above the sea.
    fn clear(&self) -> f64 {
        if let Some(clear) = self.known("rso_mj") {
            return clear;
        }
        match self.known("as_plus_bs") {
            Some(share) => share * self.above(),
            None => sun::clear_sky(self.above(), self.known("elevation_m").unwrap_or(0.0)),
        }
    }

    fn long_waves(&self) -> f64 {
        let emission = (sun::emission(self.f("tmax_c")) + sun::emission(self.f("tmin_c"))) / 2.0;
        let share = self
            .known("rs_over_rso")
            .unwrap_or_else(|| self.light() / self.clear());
        let vapour = self
            .vapour()
            .unwrap_or_else(|| air::saturation(self.f("tmin_c")));
        sun::long_waves(emission, vapour, share)
    }

    fn weather(&self) -> Weather {
        let month = |before: &str, now: &str, k| {
            Some(sun::into_ground(self.known(before)?, self.known(now)?, k))
        };
        Weather {
            latitude: self.latitude(),
            elevation_m: self.f("elevation_m"),
            day: self.j(),
            tmax_c: self.f("tmax_c"),
            tmin_c: self.f("tmin_c"),
            vapour_kpa: self.vapour(),
            wind_ms: self.wind(),
            light_mj: Some(self.light()),
            coast: false,
            into_ground_mj: month("tmonth_prev_c", "tmonth_c", 0.14).unwrap_or(0.0),
        }
    }

    fn angle(&self, shift_h: f64) -> f64 {
        let clock = self.f("t_mid_h") + shift_h;
        sun::hour_angle(self.j(), clock, self.f("tz_lon_deg_w"), self.f("lon_deg_w"))
    }

    fn above_in_hour(&self) -> f64 {
        sun::above_air_between(self.latitude(), self.j(), self.angle(-0.5), self.angle(0.5))
    }

    fn hour(&self) -> Hour {
        let by_day = self.known("rs_over_rso_assumed").is_none();
        let clear = || sun::clear_sky(self.above_in_hour(), self.f("elevation_m"));
        Hour {
            elevation_m: self.f("elevation_m"),
            t_c: self.f("t_c"),
            rh_pct: self.f("rh_pct"),
            wind_ms: self.f("u2_ms"),
            light_mj: self.f("rs_mj"),
            clear_share: self
                .known("rs_over_rso_assumed")
                .unwrap_or_else(|| self.f("rs_mj") / clear()),
            by_day,
        }
    }

    fn store(&self) -> Store {
        match (self.known("taw_mm"), self.known("raw_mm")) {
            (Some(total_mm), Some(ready_mm)) => Store { total_mm, ready_mm },
            (Some(total_mm), None) => Store {
                total_mm,
                ready_mm: self.f("p") * total_mm,
            },
            _ => Store::of(
                self.f("theta_fc"),
                self.f("theta_wp"),
                self.f("zr_m"),
                self.known("p").unwrap_or(0.0),
            ),
        }
    }

    /// The balance of example 37 run to its day: share taken, taken, and run down at the end.
    fn balance(&self) -> (f64, f64, f64) {
        let (store, need) = (self.store(), self.f("kc") * self.f("et0_mm"));
        let mut run_down = self.f("dr_initial_mm");
        let mut last = (1.0, 0.0, run_down);
        for _ in 0..self.f("day") as u32 {
            let share = store.share_taken(run_down);
            let (taken, after) = store.day(run_down, need, 0.0);
            last = (share, taken, after);
            run_down = after;
        }
        last
    }
}

/// What the program gives for a quantity.
fn computed(quantity: &str, g: &Given) -> f64 {
    match quantity {
        "e0_tmax" => air::saturation(g.f("tmax_c")),
        "e0_tmin" | "ea_from_tmin" => air::saturation(g.f("tmin_c")),
        "e0_at_tmean" => air::saturation(g.f("tmean_c")),
        "e0_night" | "e0_day" => air::saturation(g.f("t_c")),
        "es" => air::mean_saturation(g.f("tmax_c"), g.f("tmin_c")),
        "ea_psychrometer" => air::vapour_by_bulbs(
            g.f("tdry_c"),
            g.f("twet_c"),
            air::pressure(g.f("elevation_m")),
            g.f("a_psy"),
        ),
        "ea_eq17" | "ea" => g.vapour().expect("humidity is given"),
        "ea_eq19" => air::vapour_by_mean(g.f("tmax_c"), g.f("tmin_c"), g.f("rhmean_pct")),
        "ea_night" | "ea_day" => air::saturation(g.f("t_c")) * g.f("rh_pct") / 100.0,
        "vpd" => {
            let vapour = g.vapour().unwrap_or_else(|| air::saturation(g.f("tmin_c")));
            air::mean_saturation(g.f("tmax_c"), g.f("tmin_c")) - vapour
        }
        "atmospheric_pressure" | "pressure" => air::pressure(g.f("elevation_m")),
        "gamma" => air::psychrometric(air::pressure(g.f("elevation_m"))),
        "slope" | "slope_night" | "slope_day" => {
            air::slope(g.known("t_c").unwrap_or_else(|| g.tmean()))
        }
        "tmean" => g.tmean(),
        "u2_factor" => air::wind_factor(g.f("z_m")),
        "u2" => g.wind().expect("wind is given"),
        other => of_sun(other, g),
    }
}

fn of_sun(quantity: &str, g: &Given) -> f64 {
    match quantity {
        "latitude_rad" => g.latitude(),
        "day_of_year" => {
            // no leap year, as in the paper
            let date = model::Day::from_ymd(2023, g.f("month") as i8, g.f("day") as i8);
            f64::from(date.expect("a day").of_year())
        }
        "inverse_relative_distance" => sun::closeness(g.j()),
        "solar_declination" => sun::declination(g.j()),
        "sunset_hour_angle" => sun::sunset_angle(g.latitude(), g.j()),
        "daylight_hours" => sun::daylight_hours(g.latitude(), g.j()),
        "ra" => g.above(),
        "ra_as_evaporation" => g.above() * sun::MM_PER_MJ,
        "sunshine_per_day" => g.f("hours_in_month") / g.f("days"),
        "rs" | "rs_from_temperature" => g.light(),
        "rs_as_evaporation" => g.f("rs_mj") * sun::MM_PER_MJ,
        "rn_as_evaporation" => g.f("rn_mj") * sun::MM_PER_MJ,
        "g_month_as_evaporation" => g.f("g_mj") * sun::MM_PER_MJ,
        "radiation_to_evaporation" => 1.0 / g.f("lambda_mj_kg"),
        "rso" => g.clear(),
        "sigma_tmax4" => sun::emission(g.f("tmax_c")),
        "sigma_tmin4" => sun::emission(g.f("tmin_c")),
        "rs_over_rso" => g.light() / g.clear(),
        "rnl" => g.long_waves(),
        "rns" => sun::kept(g.light()),
        "rn" => sun::kept(g.light()) - g.long_waves(),
        "g_month" => match g.known("t_prev_c") {
            Some(before) => sun::into_ground(before, g.f("t_next_c"), 0.07),
            None => sun::into_ground(g.f("tmonth_prev_c"), g.f("tmonth_c"), 0.14),
        },
        "seasonal_correction_b" => 2.0 * std::f64::consts::PI * (f64::from(g.j()) - 81.0) / 364.0,
        "seasonal_correction_sc" => sun::equation_of_time(g.j()),
        "solar_time_angle_mid" => g.angle(0.0),
        "omega1" => g.angle(-0.5),
        "omega2" => g.angle(0.5),
        "ra_hour_night" | "ra_hour_day" => g.above_in_hour(),
        "rso_hour_day" => sun::clear_sky(g.above_in_hour(), g.f("elevation_m")),
        other => of_water(other, g),
    }
}

fn of_water(quantity: &str, g: &Given) -> f64 {
    match quantity {
        "et0" | "et0_reported" | "et0_wind_sensitivity" => reference_day(&g.weather()),
        "et0_hargreaves" => hargreaves(g.latitude(), g.j(), g.f("tmax_c"), g.f("tmin_c")),
        "rnl_hour_night" | "rnl_hour_day" => g.hour().long_waves(),
        "rn_hour_day" => g.hour().net(),
        "g_hour_day" | "g_hour_night" => g.hour().into_ground(),
        "et0_hour_night" | "et0_hour_day" => reference_hour(&g.hour()),
        "taw" => g.store().total_mm,
        "raw" => g.store().ready_mm,
        "ks" => g.balance().0,
        "etc_adj" => g.balance().1,
        "dr_end" => g.balance().2,
        "p_adjusted" => adjusted_fraction(g.f("p_table"), g.f("etc_mm")),
        other => panic!("no such quantity: {other}"),
    }
}

#[test]
fn every_printed_figure_comes_out() {
    let mut rows = csv::Reader::from_reader(CASES.as_bytes());
    let mut wrong = Vec::new();
    let mut seen = 0;
    for row in rows.records() {
        let row = row.expect("a row");
        let number = |i: usize| row[i].parse::<f64>().expect("a number");
        let given = Given(serde_json::from_str(&row[3]).expect("inputs are JSON"));
        let got = computed(&row[1], &given);
        // a figure that lies exactly on the edge of rounding must not fail for the last bit
        let near = (got - number(4)).abs() <= number(5) * (1.0 + 1e-9);
        if !near {
            wrong.push(format!(
                "example {} {}: {got}, printed {}",
                &row[0], &row[1], &row[4]
            ));
        }
        seen += 1;
    }
    assert_eq!(seen, 174, "rows of the paper's examples");
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// The daily formula takes what is missing from what is there: the same day with and without its own figures.
#[test]
fn what_is_missing_is_taken_from_the_temperatures() {
    // Example 20 of the paper: only temperatures known; dew point at the lowest temperature, wind 2 m/s.
    let bare = Weather {
        latitude: 45.72_f64.to_radians(),
        elevation_m: 200.0,
        day: 196,
        tmax_c: 26.6,
        tmin_c: 14.8,
        ..Weather::default()
    };
    assert!((reference_day(&bare) - 4.56).abs() < 0.005);
}

#[test]
fn the_poles_have_nights_and_days_without_end() {
    let north = 80_f64.to_radians();
    assert_eq!(sun::above_air(north, 355), 0.0);
    assert!((sun::daylight_hours(north, 172) - 24.0).abs() < 1e-9);
    let night = Weather {
        latitude: north,
        day: 355,
        tmax_c: -10.0,
        tmin_c: -20.0,
        ..Weather::default()
    };
    assert!(reference_day(&night).is_finite());
}
