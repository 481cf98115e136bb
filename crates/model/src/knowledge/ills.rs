//! Rows of the tables about what ails palms: signs, disorders, what links them, disinfectants, disagreements.

use crate::sourced::{Basis, SourceKey};

/// A text in every language of the tool, in our own words.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Texts {
    /// English.
    pub en: String,
    /// Spanish.
    pub es: String,
}

impl Texts {
    /// A text in both languages.
    pub(super) fn of(en: &str, es: &str) -> Texts {
        Texts {
            en: en.to_owned(),
            es: es.to_owned(),
        }
    }
}

/// Where on a palm a sign is looked for; the order of the sign picker.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Part {
    /// The youngest, still closed leaf.
    Spear,
    /// The newest open fronds.
    Young,
    /// The middle of the crown.
    Middle,
    /// The oldest, lowest fronds.
    Old,
    /// The crown as a whole, and the course of things in it.
    Crown,
    /// Flower and fruit stalks.
    Fruit,
    /// The trunk.
    Trunk,
    /// Roots and soil.
    Roots,
}

impl Part {
    /// All with their file words, in the order of the picker.
    pub const ALL: [(Part, &'static str); 8] = [
        (Part::Spear, "spear"),
        (Part::Young, "young"),
        (Part::Middle, "middle"),
        (Part::Old, "old"),
        (Part::Crown, "crown"),
        (Part::Fruit, "fruit"),
        (Part::Trunk, "trunk"),
        (Part::Roots, "roots"),
    ];
}

/// Something that can be looked for on a palm and is seen, or is not there.
#[derive(Clone, PartialEq, Debug)]
pub struct SignRow {
    /// Stable key, kebab case.
    pub key: String,
    /// Where it is looked for.
    pub part: Part,
    /// What is seen, short enough for a button (up to about 60 characters).
    pub name: Texts,
    /// How to look, and what not to take it for: one or two plain sentences.
    pub how: Texts,
    /// Minutes that the look takes (assumed where no source says).
    pub minutes: f64,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// How strongly a disorder shows a sign. The numbers behind the words are in `strengths.csv`, assumed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Strength {
    /// Nearly always there, if looked for.
    Always,
    /// As a rule.
    Usual,
    /// Now and then.
    Sometimes,
    /// Seldom.
    Rare,
    /// Speaks against the disorder when seen.
    Excludes,
}

impl Strength {
    /// All with their file words.
    pub const ALL: [(Strength, &'static str); 5] = [
        (Strength::Always, "always"),
        (Strength::Usual, "usual"),
        (Strength::Sometimes, "sometimes"),
        (Strength::Rare, "rare"),
        (Strength::Excludes, "excludes"),
    ];
}

/// A sign of a disorder.
#[derive(Clone, PartialEq, Debug)]
pub struct SignLink {
    /// Key of the disorder.
    pub disorder: String,
    /// Key of the sign.
    pub sign: String,
    /// How strongly.
    pub strength: Strength,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// What kind of trouble.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Family {
    /// Not a disorder.
    Normal,
    /// Something the soil does not give.
    Nutrient,
    /// A fungus, a phytoplasma, an alga-like organism.
    Disease,
    /// An insect or a mite.
    Pest,
    /// Weather, water, soil, people.
    Surroundings,
}

impl Family {
    /// All with their file words.
    pub const ALL: [(Family, &'static str); 5] = [
        (Family::Normal, "normal"),
        (Family::Nutrient, "nutrient"),
        (Family::Disease, "disease"),
        (Family::Pest, "pest"),
        (Family::Surroundings, "surroundings"),
    ];
}

/// How a disorder gets from palm to palm.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Spread {
    /// It does not.
    None,
    /// On blades and other tools.
    Blade,
    /// Carried by an insect, or the insect itself.
    Vector,
    /// With soil, roots, or water in it.
    Soil,
    /// Spores in the air.
    Wind,
    /// With seed or young plants.
    Seed,
}

impl Spread {
    /// All with their file words.
    pub const ALL: [(Spread, &'static str); 6] = [
        (Spread::None, "none"),
        (Spread::Blade, "blade"),
        (Spread::Vector, "vector"),
        (Spread::Soil, "soil"),
        (Spread::Wind, "wind"),
        (Spread::Seed, "seed"),
    ];
}

/// How well a host is attested.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum HostKind {
    /// A known, ordinary host.
    Known,
    /// Hit more than others.
    Prone,
    /// Reported, by experiment or seldom.
    Reported,
}

impl HostKind {
    /// All with their file words.
    pub const ALL: [(HostKind, &'static str); 3] = [
        (HostKind::Known, "known"),
        (HostKind::Prone, "prone"),
        (HostKind::Reported, "reported"),
    ];
}

/// A host of a disorder: a botanical species, a genus, or `*` for all palms.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Host {
    /// The name.
    pub name: String,
    /// How well it is attested.
    pub kind: HostKind,
}

/// Lowest and highest number of days, either of which may be unknown.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct DayRange {
    /// The shortest.
    pub min: Option<u32>,
    /// The longest.
    pub max: Option<u32>,
}

/// Why nobody may cut while a disorder is suspected. The key is the reason code of the hold.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum HoldKind {
    /// A wilt of the vessels.
    Wilt,
    /// A phytoplasma.
    Phytoplasma,
    /// Rot of the bud.
    BudRot,
    /// Rot of the trunk, a shelf of a fungus on it, or anything that makes it unsafe to climb.
    TrunkRot,
    /// A weevil in the crown or trunk.
    Weevil,
}

impl HoldKind {
    /// All with their hold reason codes.
    pub const ALL: [(HoldKind, &'static str); 5] = [
        (HoldKind::Wilt, "wilt-suspect"),
        (HoldKind::Phytoplasma, "phytoplasma-suspect"),
        (HoldKind::BudRot, "bud-rot-suspect"),
        (HoldKind::TrunkRot, "trunk-rot-suspect"),
        (HoldKind::Weevil, "weevil-suspect"),
    ];
}

/// Which explanation of the crown reading a disorder would look like.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Course {
    /// Does not show in counts, or is ordinary ageing.
    Ageing,
    /// The shedding after a move.
    Move,
    /// Hunger.
    Hunger,
    /// A decline to death.
    Decline,
}

impl Course {
    /// All with their file words, in the order of `crown::Explanation::ALL`.
    pub const ALL: [(Course, &'static str); 4] = [
        (Course::Ageing, "ageing"),
        (Course::Move, "move"),
        (Course::Hunger, "hunger"),
        (Course::Decline, "decline"),
    ];
}

/// What ails a palm, or looks as if it did.
#[derive(Clone, PartialEq, Debug)]
pub struct DisorderRow {
    /// Stable key, kebab case.
    pub key: String,
    /// Its name.
    pub name: Texts,
    /// What kind of trouble.
    pub family: Family,
    /// What it is, in one or two plain sentences.
    pub about: Texts,
    /// The organism, as far as the sources agree; empty if there is none.
    pub organism: String,
    /// Hosts; `*` stands for all palms.
    pub hosts: Vec<Host>,
    /// How it spreads.
    pub spread: Vec<Spread>,
    /// Days from infection to the first sign.
    pub latency: DayRange,
    /// Days from the first sign to death or to a clear course.
    pub decline: DayRange,
    /// Relative weight before anything is seen on a host of the ordinary kind (1 is an everyday disorder); assumed.
    pub common: f64,
    /// How it looks in the counts.
    pub course: Course,
    /// Nobody cuts while it is suspected, for this reason.
    pub hold: Option<HoldKind>,
    /// What would settle it.
    pub confirm: Texts,
    /// Which sample to take and how, if a laboratory can settle it; empty otherwise.
    pub sample: Texts,
    /// What to do first.
    pub first: Texts,
    /// What never to do.
    pub never: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// What trade and publications, or two publications, do not agree on. Both are shown, marked.
#[derive(Clone, PartialEq, Debug)]
pub struct DisagreementRow {
    /// Stable key.
    pub key: String,
    /// Keys of the disorders it is about; empty if about cutting or cleaning as such.
    pub disorders: Vec<String>,
    /// The question.
    pub question: Texts,
    /// What one side says.
    pub one: Texts,
    /// Where from.
    pub one_sources: Vec<SourceKey>,
    /// What the other says.
    pub other: Texts,
    /// Where from.
    pub other_sources: Vec<SourceKey>,
    /// What the tool does until it is settled: the stricter reading.
    pub we: Texts,
}

/// What stands for the numbers behind [`Strength`] and the other assumed weights of the judgement.
#[derive(Clone, PartialEq, Debug)]
pub struct WeightRow {
    /// Stable key.
    pub key: String,
    /// The number.
    pub value: f64,
    /// What it is.
    pub text: Texts,
    /// How it is known: nearly always assumed.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// How a source says a disinfectant does against something.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Works {
    /// Stated or shown to work when used so.
    Yes,
    /// Works on some stages, partly, or only without soil.
    Partly,
    /// Shown or stated not to be enough.
    No,
}

impl Works {
    /// All with their file words.
    pub const ALL: [(Works, &'static str); 3] = [
        (Works::Yes, "yes"),
        (Works::Partly, "partly"),
        (Works::No, "no"),
    ];
}

/// One thing a source says of cleaning a blade.
#[derive(Clone, PartialEq, Debug)]
pub struct CleanerRow {
    /// Stable key of this row.
    pub key: String,
    /// Key of the agent: rows of one agent share it (`bleach`, `isopropyl`, `flame`, `new-blade`, ...).
    pub agent: String,
    /// Name of the agent.
    pub name: Texts,
    /// How it is mixed or used.
    pub mix: Texts,
    /// Strength as percent by volume of the product named in `mix` in the bath; `None` unknown or not applicable.
    pub strength_pct: Option<f64>,
    /// Shortest contact that the source gives, minutes; `None` unknown.
    pub contact_min: Option<f64>,
    /// Contact after which nothing more is gained, minutes; `None` unknown.
    pub contact_max: Option<f64>,
    /// Keys of the disorders it is stated for; `fungi`, `bacteria`, `general` or another word of the source beside them.
    pub against: Vec<String>,
    /// What the source says of it.
    pub works: Works,
    /// Whether it still works with soil or sap on the blade; `None`: the source does not say.
    pub with_soil: Option<bool>,
    /// Trial on another organism than the palm's, or recalled: shown, and not enough for `adequate` alone.
    pub indirect: bool,
    /// Cautions in our words.
    pub caution: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}
