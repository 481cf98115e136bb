use crate::*;
use model::*;
#[test]
fn effort() {
    let today = Day::from_ymd(2026, 6, 1).unwrap();
    let palm = Palm {
        species: "Sabal palmetto".into(),
        stems: 1,
        ..Palm::default()
    };
    let species = match Knowledge::embedded().species_named(&palm.species) {
        model::knowledge::Named::Exact(s) => s,
        _ => panic!(),
    };
    for which in ["ageing", "hungry", "declining", "moved"] {
        let counts: [[u32; 4]; 4] = match which {
            "ageing" => [[22, 0, 2, 2], [22, 0, 2, 2], [23, 1, 3, 3], [22, 0, 3, 3]],
            "hungry" => [[9, 3, 4, 4], [8, 3, 2, 2], [9, 4, 3, 3], [8, 3, 3, 3]],
            "declining" => [[22, 0, 2, 2], [21, 1, 3, 3], [14, 3, 5, 5], [6, 3, 9, 0]],
            _ => [[22, 1, 2, 2], [19, 3, 4, 4], [18, 1, 2, 2], [19, 0, 0, 0]],
        };
        let looks: Vec<Inspection> = counts
            .iter()
            .enumerate()
            .map(|(i, [g, y, b, off])| {
                let mut l = Inspection::blank(1, today.plus(91 * i as i32 - 300));
                (l.green, l.yellowing, l.brown, l.removed.brown) =
                    (Some(*g), Some(*y), Some(*b), Some(*off));
                l
            })
            .collect();
        let mut case = StemCase::of(&palm, 1, &looks, Prior::of(&palm, Some(species), &[]), None);
        if which == "moved" {
            case.moved_on = Some(today.plus(-310));
        }
        let r = read(&case, today, &mut Sampler::new(1024));
        println!(
            "{which}: p {:.3?} ess {:.0} rows {:?} vig {:.2?} K {:.2?} N {:.1?}",
            r.probabilities,
            r.effective_draws,
            r.rows.iter().map(|x| x.kind).collect::<Vec<_>>(),
            r.vigour,
            r.shortfall,
            r.full_crown
        );
        println!(
            "  loss {:?} trip {:?}",
            r.loss(),
            r.tripwire(today.plus(60))
        );
    }
}
