//! Money: exact decimals, never binary fractions. Minutes are charged whole, debris in tenths of a cubic metre, trips and
//! lift days whole; each charge and the tax are rounded once to the digits of the currency, half away from zero.

use super::PalmPart;
use model::{Knowledge, Prices};
use rounds::estimate::{Figures, Reach, Spread, total};
use rust_decimal::{Decimal, RoundingStrategy};
use std::collections::BTreeMap;
use std::str::FromStr;

/// Keys of the price list: a trip to a site, a lift for a day, an hour of a crew, a cubic metre taken away, a cubic metre
/// at the tip. The season plan uses the same.
pub const PRICES: [&str; 5] = ["trip", "lift_day", "crew_hour", "haul_m3", "tip_m3"];

/// Currency where no price list is set (assumed).
pub const CURRENCY: (&str, u8) = ("USD", 2);

/// A price.
#[derive(Clone, PartialEq, Debug)]
pub struct Price {
    /// In the currency's main unit.
    pub amount: Decimal,
    /// The keeper did not set it.
    pub assumed: bool,
}

/// Prices ready to reckon with.
#[derive(Clone, PartialEq, Debug)]
pub struct PriceList {
    /// ISO 4217 code.
    pub currency: String,
    /// Digits after the point.
    pub digits: u8,
    /// Whether the keeper has set a list at all.
    pub set: bool,
    /// By key; a price that nobody set and that cannot be assumed in this currency is absent.
    pub prices: BTreeMap<&'static str, Price>,
    /// Tax, per cent.
    pub tax_pct: Option<Decimal>,
    /// Words for quotes.
    pub notes: String,
}

/// Something that is charged for.
#[derive(Clone, PartialEq, Debug)]
pub struct Charge {
    /// Key of its price.
    pub key: &'static str,
    /// How much: trips, days, hours, cubic metres; seldom less, as a rule, seldom more.
    pub quantity: [Decimal; 3],
    /// Price of one; `None`: nobody set it.
    pub price: Option<Price>,
    /// What it costs; `None` without a price.
    pub amount: Option<[Decimal; 3]>,
}

impl PriceList {
    /// The keeper's list, or the assumed one. In another currency than the assumed one no price is assumed.
    pub fn of(set: Option<&Prices>, knowledge: &Knowledge) -> PriceList {
        let (currency, digits) = match set {
            Some(prices) => (prices.currency.clone(), prices.digits),
            None => (CURRENCY.0.to_owned(), CURRENCY.1),
        };
        let assumable = currency == CURRENCY.0;
        let price = |key: &'static str| {
            let own = set.and_then(|prices| prices.prices.get(key));
            let price = match own {
                Some(smallest) => Price {
                    amount: Decimal::new(*smallest, u32::from(digits)),
                    assumed: false,
                },
                None if assumable => Price {
                    amount: assumed(knowledge, key)?,
                    assumed: true,
                },
                None => return None,
            };
            Some((key, price))
        };
        PriceList {
            digits,
            set: set.is_some(),
            prices: PRICES.into_iter().filter_map(price).collect(),
            tax_pct: set.and_then(|prices| plain(prices.tax_pct?)),
            notes: set.map_or_else(String::new, |prices| prices.notes.clone()),
            currency,
        }
    }

    /// Rounded to the digits of the currency, half away from zero.
    pub fn round(&self, amount: Decimal) -> Decimal {
        let half_away = RoundingStrategy::MidpointAwayFromZero;
        let mut rounded = amount.round_dp_with_strategy(u32::from(self.digits), half_away);
        rounded.rescale(u32::from(self.digits));
        rounded
    }

    /// Tax on sums; `None` if none is set.
    pub fn tax_on(&self, net: &[Decimal; 3]) -> Option<[Decimal; 3]> {
        let pct = self.tax_pct?;
        Some(net.map(|net| self.round(net * pct / Decimal::ONE_HUNDRED)))
    }
}

/// The price of the tables, in the main unit of [`CURRENCY`].
pub fn assumed(knowledge: &Knowledge, key: &str) -> Option<Decimal> {
    plain(knowledge.effort_row(&format!("price.{key}"))?.mid)
}

/// A number as it is written in decimals: what was typed, not the binary fraction behind it.
fn plain(number: f64) -> Option<Decimal> {
    Decimal::from_str(&number.to_string()).ok()
}

/// How much there is of each thing that has a price.
pub(super) fn amounts(
    figures: &Figures,
    palms: &[PalmPart],
) -> BTreeMap<&'static str, [Decimal; 3]> {
    let day = figures.mid("day").max(1.0);
    let of = |keep: &dyn Fn(&PalmPart) -> bool| {
        let parts = palms.iter().filter(|palm| keep(palm));
        total(figures, parts.map(|palm| palm.visit.minutes))
    };
    let days = |minutes: Spread| each(minutes).map(|m| whole((m / day).ceil()));
    let mut trips = [Decimal::ZERO; 3];
    let sites: std::collections::BTreeSet<&str> = palms.iter().map(|p| p.site.as_str()).collect();
    for site in sites {
        let own = days(of(&|palm| palm.site == site));
        trips = std::array::from_fn(|i| trips[i] + own[i].max(Decimal::ONE));
    }
    let hours = each(of(&|_| true)).map(|m| whole(m.round()) / Decimal::from(60));
    let bulk = palms
        .iter()
        .map(|palm| palm.visit.debris_m3)
        .fold(Spread::default(), Spread::plus);
    let tenths = each(bulk).map(|m3| whole((m3 * 10.0).round()) / Decimal::TEN);
    BTreeMap::from([
        ("trip", trips),
        ("lift_day", days(of(&|palm| palm.work.from == Reach::Lift))),
        ("crew_hour", hours),
        ("haul_m3", tenths),
        ("tip_m3", tenths),
    ])
}

fn each(spread: Spread) -> [f64; 3] {
    [spread.low, spread.mid, spread.high]
}

/// A whole number of things; estimates are far from the ends of an `i64`.
fn whole(number: f64) -> Decimal {
    Decimal::from(number as i64)
}

/// The charges that are more than nothing, and the sum of those with a price.
pub(super) fn charges(
    list: &PriceList,
    amounts: &BTreeMap<&'static str, [Decimal; 3]>,
) -> (Vec<Charge>, [Decimal; 3]) {
    let mut net = [Decimal::ZERO; 3];
    let charges = PRICES
        .into_iter()
        .filter_map(|key| {
            let quantity = *amounts.get(key)?;
            let price = list.prices.get(key).cloned();
            let amount = price
                .as_ref()
                .map(|price| quantity.map(|n| list.round(n * price.amount)));
            (quantity[2] > Decimal::ZERO).then_some(Charge {
                key,
                quantity,
                price,
                amount,
            })
        })
        .inspect(|charge| {
            for (sum, amount) in net.iter_mut().zip(charge.amount.unwrap_or_default()) {
                *sum += amount;
            }
        })
        .collect();
    (charges, net.map(|sum| list.round(sum)))
}
