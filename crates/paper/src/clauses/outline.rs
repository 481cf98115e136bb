//! Which clauses, in which order. The texts are elsewhere: rows of the tables, and our own demands in words of a code.

/// A part of the sheet.
pub(super) struct Part {
    /// Code of its title.
    pub title: &'static str,
    /// Its clauses.
    pub items: &'static [Item],
    /// Whether the table of baths stands at its end.
    pub baths: bool,
}

/// Where a clause comes from.
pub(super) enum Item {
    /// A demand of ours, by its code.
    Own(&'static str),
    /// A row of the rules or cautions, by its key.
    Row(&'static str),
    /// A row, and rows that say otherwise and are shown below it.
    Stricter(&'static str, &'static [&'static str]),
}

use Item::{Own, Row, Stricter};

/// What is written in by hand at the top.
pub(super) const BLANKS: [&str; 6] = [
    "clauses-keeper",
    "clauses-firm",
    "clauses-site",
    "clauses-period",
    "clauses-person",
    "clauses-licence",
];

/// The columns of the log.
pub(super) const LOG: [&str; 8] = [
    "clauses-log-date",
    "clauses-log-palm",
    "clauses-log-blade",
    "clauses-log-start",
    "clauses-log-end",
    "clauses-log-off",
    "clauses-log-bath",
    "clauses-log-minutes",
];

/// All parts, in order.
pub(super) const PARTS: [Part; 7] = [
    Part {
        title: "clauses-cut-title",
        items: &[
            Own("clauses-level"),
            Stricter("horizontal_line_extension", &["angle_45_old_wording"]),
            Row("live_healthy_leave"),
            Row("remove_dead_ok"),
            Row("dead_leaf_definition"),
            Row("remove_flower_fruit_ok"),
            Row("keep_deficient_leaves"),
            Row("rooster_tail_not_acceptable"),
            Row("no_prestorm_cut"),
        ],
        baths: false,
    },
    Part {
        title: "clauses-stub-title",
        items: &[
            Row("stub_close"),
            Stricter("weevil_cut_distance_b", &["weevil_cut_distance_a"]),
            Row("peeling_no_damage"),
            Row("no_disinfectant_on_cut"),
        ],
        baths: false,
    },
    Part {
        title: "clauses-spikes-title",
        items: &[
            Stricter(
                "spikes_prohibited",
                &["spikes_over_65ft", "spikes_allowed_palms"],
            ),
            Own("clauses-spikes-breach"),
        ],
        baths: false,
    },
    Part {
        title: "clauses-blades-title",
        items: &[
            Own("clauses-clean-each"),
            Stricter("handsaw_sterile_each", &["clean_every_site"]),
            Row("brush_before_soak"),
            Row("bath_change"),
            Row("tool_rotation"),
            Row("disease_cut_each"),
            Row("chainsaw_apart"),
            Row("cidp_no_chainsaw_leaves"),
            Row("pitted_blades"),
            Row("bleach_ammonia"),
            Row("bleach_acid"),
            Row("bleach_alcohol"),
            Row("bleach_other"),
            Row("alcohol_flash"),
            Own("clauses-label-first"),
        ],
        baths: true,
    },
    Part {
        title: "clauses-holds-title",
        items: &[
            Own("clauses-holds"),
            Row("inspect_before_cut"),
            Own("clauses-report"),
        ],
        baths: false,
    },
    Part {
        title: "clauses-safety-title",
        items: &[
            Own("clauses-wires"),
            Row("line_min_50kv"),
            Row("line_min_50kv_m"),
            Row("line_formula"),
            Row("pole_nonconductive"),
            Row("skirt_never_below"),
            Row("skirt_from_above"),
            Row("lift_tie_off"),
            Row("eye_protection"),
            Own("clauses-trained"),
        ],
        baths: false,
    },
    Part {
        title: "clauses-hand-over-title",
        items: &[
            Own("clauses-log-each-cut"),
            Own("clauses-log-each-cleaning"),
            Own("clauses-log-when"),
            Own("clauses-blades-marked"),
        ],
        baths: false,
    },
];
