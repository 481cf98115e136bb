//! What the keeper has said of the site a palm stands on, as far as it changes how the palm is judged.

use care::Grounds;
use model::{Palm, State};

/// A site's own answers; `None`: not said, the usual answer holds.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct OnSite {
    /// Palm weevils fly there.
    pub weevil_area: Option<bool>,
    /// Voltage to ground of the line nearby, kV.
    pub line_kv: Option<f64>,
    /// So many dead fronds on a stem are worth a visit.
    pub tidy: Option<u32>,
    /// More dead fronds than this shall not hang on a stem.
    pub limit: Option<u32>,
}

impl OnSite {
    /// What is said of a palm's site; nothing where the site is not described.
    pub fn of(state: &State, palm: &Palm) -> OnSite {
        let site = state.work.sites.get(&palm.site);
        site.map_or(OnSite::default(), |site| OnSite {
            weevil_area: site.weevil_area,
            line_kv: site.line_kv,
            tidy: site.tidy,
            limit: site.limit,
        })
    }

    /// The grounds as asked about, with what is known of the site: a voltage that was asked about goes before the site's,
    /// weevils fly where either says so.
    pub fn with(self, asked: Grounds) -> Grounds {
        Grounds {
            weevil_area: asked.weevil_area || self.weevil_area == Some(true),
            line_kv: asked.line_kv.or(self.line_kv),
            ..asked
        }
    }

    /// From how many dead fronds on a visit is worth it, and above how many it is late: the site's own figures where it
    /// has them; a usual figure gives way where it would contradict one of them.
    pub fn tidy_and_limit(self, (tidy, limit): (u32, u32)) -> (u32, u32) {
        match (self.tidy, self.limit) {
            (Some(tidy), Some(limit)) => (tidy, limit),
            (Some(tidy), None) => (tidy, limit.max(tidy)),
            (None, Some(limit)) => (tidy.min(limit), limit),
            (None, None) => (tidy, limit),
        }
    }

    /// Whether the site has a say in when a visit is due.
    pub fn has_figures(self) -> bool {
        self.tidy.or(self.limit).is_some()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_asked_goes_before_what_the_site_says_of_its_line() {
        let site = OnSite {
            weevil_area: Some(true),
            line_kv: Some(7.6),
            ..OnSite::default()
        };
        let both = site.with(Grounds {
            line_kv: Some(69.0),
            storm_expected: true,
            ..Grounds::default()
        });
        assert_eq!(both.line_kv, Some(69.0));
        assert!(both.weevil_area && both.storm_expected);
        assert_eq!(site.with(Grounds::default()).line_kv, Some(7.6));
        assert_eq!(
            OnSite::default().with(Grounds::default()),
            Grounds::default()
        );
    }

    #[test]
    fn a_usual_figure_gives_way_to_the_sites_own() {
        let of = |tidy, limit| {
            let site = OnSite {
                tidy,
                limit,
                ..OnSite::default()
            };
            site.tidy_and_limit((3, 8))
        };
        assert_eq!(of(None, None), (3, 8));
        assert_eq!(of(Some(1), Some(2)), (1, 2));
        assert_eq!(of(Some(12), None), (12, 12));
        assert_eq!(of(None, Some(2)), (2, 2));
    }
}
