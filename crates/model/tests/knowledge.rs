//! The embedded tables against what their published sources say, and the finding of names.

use spearleaf_model as model;

use model::knowledge::Named;
use model::species::{Armature, Habit, LeafForm, Occurs, Range, SelfCleaning};
use model::{Basis, Knowledge, Metres, Species};

fn known() -> &'static Knowledge {
    Knowledge::embedded()
}

fn species(name: &str) -> &'static Species {
    match known().species_named(name) {
        Named::Exact(s) => s,
        other => panic!("{name} is not an accepted name: {other:?}"),
    }
}

/// Live fronds of a full crown and fronds made in a year, with the source each figure was published in.
#[test]
fn crowns_and_yearly_fronds_are_those_of_the_sources() {
    let per_year = |name| species(name).leaves_per_year.clone().unwrap();
    let live = |name| species(name).live_leaves.clone().unwrap();
    // UF/IFAS ENH-732: a royal palm drops about one frond a month.
    assert_eq!(
        per_year("Roystonea regia").value,
        Range::between(12.0, 12.0)
    );
    assert_eq!(per_year("Roystonea regia").sources[0].0, "enh732");
    // Quoted from UF/IFAS [st439-quoted]: 130 to 150 fronds, about 50 a year.
    assert_eq!(
        live("Phoenix canariensis").value,
        Range::between(130.0, 150.0)
    );
    assert_eq!(
        per_year("Phoenix canariensis").value,
        Range::between(50.0, 50.0)
    );
    // Japanese Journal of Tropical Agriculture 38(1):41 (1994): 11 to 18 a year, 23 and more live.
    assert_eq!(per_year("Cocos nucifera").value, Range::between(11.0, 18.0));
    assert_eq!(live("Cocos nucifera").value.low, Some(23.0));
    // ICAR course page on leaf pruning in oil palm: 20 to 25 a year; areca nut 6 a year.
    assert_eq!(
        per_year("Elaeis guineensis").value,
        Range::between(20.0, 25.0)
    );
    assert_eq!(per_year("Areca catechu").value, Range::between(6.0, 6.0));
    // PalmTraits 1.0: at most 20 live on a royal palm, 10 on an areca nut; a maximum has no lower end.
    assert_eq!(live("Roystonea regia").value, Range::up_to(20.0));
    assert_eq!(live("Areca catechu").value, Range::up_to(10.0));
    assert_eq!(live("Areca catechu").sources[0].0, "palmtraits-1.0");
}

/// PalmTraits 1.0 (Kissling et al. 2019, doi:10.1038/s41597-019-0189-0): 2,557 species.
#[test]
fn the_trait_table_is_whole() {
    assert_eq!(known().species.len(), 2_557);
    assert_eq!(known().species.iter().filter(|s| s.detailed).count(), 64);
    let wax = species("Ceroxylon quindiuense");
    assert_eq!(wax.max_height.as_ref().unwrap().value, Metres(61.0));
    assert_eq!(wax.trunk_diameter.as_ref().unwrap().value, Metres(0.40));
    assert_eq!(wax.petiole_length.as_ref().unwrap().value, Metres(0.92));
    let rattan = species("Calamus manan");
    assert_eq!(rattan.max_height.as_ref().unwrap().value, Metres(170.0));
    assert_eq!(
        rattan.growth.as_ref().unwrap().value.climbing,
        Some(Occurs::Always)
    );
    assert_eq!(Species::known(&rattan.armature), Some(Armature::Armed));
    assert_eq!(Species::known(&rattan.live_leaves), None);
    let cherry = species("Astrocaryum campestre");
    assert_eq!(
        cherry.growth.as_ref().unwrap().value.acaulescent,
        Some(Occurs::Always)
    );
    assert_eq!(Species::known(&cherry.habit), Some(Habit::Either));
    assert_eq!(cherry.max_height.as_ref().unwrap().value, Metres(0.0));
    let raffia = species("Raphia regalis");
    assert_eq!(raffia.leaf_length.as_ref().unwrap().value, Metres(25.0));
    assert!(raffia.note("leaf_length").unwrap().contains("petiole"));
}

/// A row worked through by hand lies over the line of the trait table.
#[test]
fn hand_made_facts_come_first() {
    let date = species("Phoenix canariensis");
    // The trait table says 55 fronds and a blade of 7 m; UF/IFAS ST439 says a frond of 4.6 m.
    assert_eq!(date.leaf_length.as_ref().unwrap().value, Metres(4.6));
    assert_eq!(date.note("leaf_length"), None);
    assert_eq!(date.max_height.as_ref().unwrap().value, Metres(20.0));
    assert_eq!(Species::known(&date.self_cleaning), Some(SelfCleaning::No));
    assert_eq!(Species::known(&date.armature), Some(Armature::Spines));
    assert_eq!(Species::known(&date.fusarium), Some(true));
    let lady = species("Rhapis excelsa");
    assert_eq!(
        lady.trunk_diameter, None,
        "30 cm in the trait table cannot be right"
    );
    assert_eq!(
        Species::known(&species("Caryota mitis").leaf_form),
        Some(LeafForm::Bipinnate)
    );
}

/// Recalled is marked recalled, practice practice, read read; the weakest source of a value decides.
#[test]
fn every_value_says_how_it_is_known() {
    let royal = species("Roystonea regia");
    assert_eq!(
        royal.leaves_per_year.as_ref().unwrap().basis,
        Basis::Published
    );
    assert_eq!(royal.crownshaft.as_ref().unwrap().basis, Basis::Published);
    let pygmy = species("Phoenix roebelenii");
    assert_eq!(pygmy.crownshaft.as_ref().unwrap().basis, Basis::Memory);
    assert_eq!(pygmy.habit.as_ref().unwrap().basis, Basis::Practice);
    // FAO 156 chapter I is cited from memory.
    assert_eq!(
        species("Phoenix dactylifera")
            .leaves_per_year
            .as_ref()
            .unwrap()
            .basis,
        Basis::Memory
    );
    let fan = species("Sabal rosei");
    assert_eq!(fan.leaf_form.as_ref().unwrap().basis, Basis::Memory);
    assert!(fan.note("leaf_form").unwrap().contains("genus"));
}

#[test]
fn names_resolve_in_any_dress() {
    let royal = species("Roystonea regia");
    for written in [
        "roystonea regia",
        "  ROYSTONEA   REGIA ",
        "Roystonea\u{a0}regia",
        "Roystonea regia (Kunth)",
    ] {
        assert_eq!(
            known().species_named(written),
            Named::Exact(royal),
            "{written}"
        );
    }
    assert_eq!(
        known()
            .species_named("Phoenix dactylifera 'Medjool'")
            .species()
            .unwrap()
            .name,
        "Phoenix dactylifera"
    );
    let other = |written| match known().species_named(written) {
        Named::Synonym(s) => s.name.as_str(),
        found => panic!("{written}: {found:?}"),
    };
    assert_eq!(other("Cocos plumosa"), "Syagrus romanzoffiana");
    assert_eq!(other("arecastrum romanzoffianum"), "Syagrus romanzoffiana");
    assert_eq!(other("Queen palm"), "Syagrus romanzoffiana");
    assert_eq!(other("queen palms"), "Syagrus romanzoffiana");
    assert_eq!(other("Coconut"), "Cocos nucifera");
    assert_eq!(other("Canary Island date"), "Phoenix canariensis");
}

#[test]
fn names_that_do_not_resolve_are_offered_the_nearest() {
    let near = |written| match known().species_named(written) {
        Named::Near(names) => names,
        found => panic!("{written}: {found:?}"),
    };
    for (typo, meant) in [
        ("Wasingtonia robusta", "Washingtonia robusta"),
        ("Washingtonia robsuta", "Washingtonia robusta"),
        ("Syagrus romanzofiana", "Syagrus romanzoffiana"),
        (
            "Archontophenix cunninghamania",
            "Archontophoenix cunninghamiana",
        ),
        ("Sabal palmeto", "Sabal palmetto"),
        ("Phoenix canarensis", "Phoenix canariensis"),
        ("quen palm", "Syagrus romanzoffiana"),
        ("W. robusta", "Washingtonia robusta"),
        ("Cocos plumossa", "Syagrus romanzoffiana"),
    ] {
        assert_eq!(near(typo)[0], meant, "{typo}: {:?}", near(typo));
    }
    // Shared by two species: nobody may choose for the keeper.
    assert_eq!(
        near("king palm"),
        [
            "Archontophoenix alexandrae",
            "Archontophoenix cunninghamiana"
        ]
    );
    assert_eq!(
        near("Petticoat palm"),
        ["Washingtonia filifera", "Washingtonia robusta"]
    );
    assert_eq!(near("Phoenix sp.").len(), 3);
    assert!(near("Phoenix").iter().all(|n| n.starts_with("Phoenix ")));
    // A hybrid is not one of its parents.
    assert_eq!(
        known()
            .species_named("Butia odorata x Jubaea chilensis")
            .species(),
        None
    );
    for nothing in ["", "   ", "Quercus robur", "???", "12"] {
        assert_eq!(known().species_named(nothing), Named::Unknown, "{nothing}");
    }
}

/// *Butia capitata* is a species of its own (PalmTraits lists both), whatever the trade calls *B. odorata*.
#[test]
fn a_trade_misnomer_does_not_redirect_a_real_species() {
    assert_eq!(species("Butia capitata").name, "Butia capitata");
    assert!(
        species("Butia odorata")
            .note("common")
            .unwrap()
            .contains("Butia capitata")
    );
}

#[test]
fn relatives_sources_and_climates_are_found() {
    assert_eq!(known().relatives("Washingtonia").len(), 2);
    assert_eq!(known().relatives("phoenix").len(), 14);
    assert!(known().relatives("Quercus").is_empty());
    let traits = known().source("palmtraits-1.0").unwrap();
    assert!(traits.identifier.contains("10.1038/s41597-019-0189-0"));
    // Two spellings of one work lead to one row.
    assert_eq!(
        known().source("broschat1991"),
        known().source("broschat-1991")
    );
    assert!(known().source("nobody-2099").is_none());
    let (place, far) = known().climate_near(25.8, -80.2).unwrap();
    assert_eq!(place.name, "Miami FL");
    assert!(far < 15.0, "{far}");
    // ASHRAE 2009 station 722020: July mean 28.7 °C.
    assert_eq!(place.climate.months[6].tmean_c, Some(28.7));
    assert!(
        known().climate_near(91.0, 0.0).is_none() && known().climate_near(f64::NAN, 0.0).is_none()
    );
}
