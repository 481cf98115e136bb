//! Larger logs against the reachability of a general-purpose graph library (petgraph) on the time-expanded graph: one node
//! for each state a touch can bring about, one arrow for each thing that follows. No two touches share a second here; the
//! small logs of `brute.rs` have the ties.
#![allow(missing_docs)]

use petgraph::graph::{DiGraph, NodeIndex};
use petgraph::visit::{Dfs, Reversed};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use spearleaf_trace::{Case, Cleaning, Log, Reach, Rules, Set, Touch, What, backward, forward};
use std::collections::BTreeMap;

const PALMS: u32 = 400;
const BLADES: u32 = 12;
const TOUCHES: i64 = 20_000;

struct World {
    log: Log,
    carries: Vec<bool>,
    latency: i64,
    set: Set,
    cases: Vec<Case>,
}

impl World {
    fn of(seed: u64, set: Set) -> World {
        let mut dice = ChaCha8Rng::seed_from_u64(seed);
        let mut log = Log::starting(0, BLADES, PALMS).unwrap();
        let dirty = dice.random_range(2..30);
        for k in 0..TOUCHES {
            let what = match dice.random_range(0..dirty) {
                0 => What::Clean(match dice.random_range(0..10) {
                    0 => Cleaning::Short,
                    1 => Cleaning::Unknown,
                    _ => Cleaning::Adequate,
                }),
                _ => What::Cut {
                    palm: dice.random_range(0..PALMS),
                },
            };
            let blade = dice.random_range(0..BLADES);
            log.push(Touch {
                at: k * 7,
                blade,
                what,
            })
            .unwrap();
        }
        let end = |dice: &mut ChaCha8Rng| dice.random_range(0..TOUCHES * 7);
        let cases = (0..2)
            .map(|palm| {
                let (one, two) = (end(&mut dice), end(&mut dice));
                let (from, until) = (Some(one.min(two)), Some(one.max(two)));
                Case { palm, from, until }
            })
            .collect();
        World {
            carries: (0..PALMS).map(|_| dice.random_bool(0.8)).collect(),
            latency: [0, 1, 5_000, 30_000][dice.random_range(0..4)],
            log,
            set,
            cases,
        }
    }

    fn rules(&self) -> Rules<'_> {
        Rules {
            latency: self.latency,
            carries: &self.carries,
            set: self.set,
        }
    }

    fn stops(&self, how: Cleaning) -> bool {
        match how {
            Cleaning::Adequate => true,
            Cleaning::Short => false,
            Cleaning::Unknown => self.set == Set::Certain,
        }
    }

    fn case(&self, palm: u32, at: i64) -> Option<bool> {
        let case = self.cases.iter().find(|case| case.palm == palm)?;
        Some(case.from.is_none_or(|t| t <= at) && case.until.is_none_or(|t| at <= t))
    }
}

/// For each touch: the palm was exposed by it, the palm was infectious at it, the blade was foul after it.
struct Expanded {
    graph: DiGraph<(), ()>,
    exposed: Vec<NodeIndex>,
    infectious: Vec<NodeIndex>,
}

fn expand(world: &World) -> Expanded {
    let mut graph = DiGraph::new();
    let n = world.log.len();
    let mut nodes = || -> Vec<NodeIndex> { (0..n).map(|_| graph.add_node(())).collect() };
    let (exposed, infectious, foul) = (nodes(), nodes(), nodes());
    let mut last: BTreeMap<u32, usize> = BTreeMap::new();
    let mut cuts: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    for k in 0..n {
        let touch = world.log.touch(k);
        let before = last.insert(touch.blade, k);
        let stops = match touch.what {
            What::Cut { palm } => {
                cuts.entry(palm).or_default().push(k);
                graph.add_edge(infectious[k], foul[k], ());
                if let Some(before) = before {
                    graph.add_edge(foul[before], exposed[k], ());
                }
                false
            }
            What::Clean(how) => world.stops(how),
        };
        if let Some(before) = before.filter(|_| !stops) {
            graph.add_edge(foul[before], foul[k], ());
        }
    }
    let wait = world.latency.max(1);
    for (palm, own) in &cuts {
        if !world.carries[*palm as usize] || world.case(*palm, 0).is_some() {
            continue;
        }
        for pair in own.windows(2) {
            graph.add_edge(infectious[pair[0]], infectious[pair[1]], ());
        }
        for k in own {
            let ready = world.log.at(*k) + wait;
            let next = own.partition_point(|other| world.log.at(*other) < ready);
            if let Some(next) = own.get(next) {
                graph.add_edge(exposed[*k], infectious[*next], ());
            }
        }
    }
    Expanded {
        graph,
        exposed,
        infectious,
    }
}

fn palm(world: &World, k: usize) -> Option<u32> {
    match world.log.touch(k).what {
        What::Cut { palm } => Some(palm),
        What::Clean(_) => None,
    }
}

/// Cuts of cases within their time.
fn starts(world: &World) -> Vec<usize> {
    let within =
        |k: &usize| palm(world, *k).and_then(|p| world.case(p, world.log.at(*k))) == Some(true);
    (0..world.log.len()).filter(within).collect()
}

/// Palms whose node among `nodes` was seen, with the first such touch (backward: the last); no cases.
fn seen(world: &World, nodes: &[NodeIndex], seen: &[bool], back: bool) -> BTreeMap<u32, usize> {
    let mut out = BTreeMap::new();
    for k in 0..nodes.len() {
        let Some(palm) = palm(world, k).filter(|p| world.case(*p, 0).is_none()) else {
            continue;
        };
        if seen[nodes[k].index()] && (back || !out.contains_key(&palm)) {
            out.insert(palm, k);
        }
    }
    out
}

fn own(reach: &Reach) -> BTreeMap<u32, usize> {
    reach.contacts.iter().map(|c| (c.palm, c.own)).collect()
}

#[test]
fn forward_is_reachability() {
    let mut reached = 0;
    for seed in 0..24 {
        let world = World::of(seed, [Set::Certain, Set::Possible][seed as usize % 2]);
        let expanded = expand(&world);
        let mut mark = vec![false; expanded.graph.node_count()];
        let mut search = Dfs::empty(&expanded.graph);
        for k in starts(&world) {
            search.move_to(expanded.infectious[k]);
            while let Some(node) = search.next(&expanded.graph) {
                mark[node.index()] = true;
            }
        }
        let wanted = seen(&world, &expanded.exposed, &mark, false);
        let found = own(&forward(&world.log, &world.cases, &world.rules()));
        assert_eq!(found, wanted, "seed {seed}");
        reached += found.len();
    }
    assert!(reached > 1000, "the worlds are not trivial: {reached}");
}

#[test]
fn backward_is_reachability_against_the_arrows() {
    let mut reached = 0;
    for seed in 100..124 {
        let world = World::of(seed, [Set::Certain, Set::Possible][seed as usize % 2]);
        let expanded = expand(&world);
        let graph = Reversed(&expanded.graph);
        let mut mark = vec![false; expanded.graph.node_count()];
        let mut search = Dfs::empty(graph);
        for k in starts(&world) {
            search.move_to(expanded.exposed[k]);
            while let Some(node) = search.next(graph) {
                mark[node.index()] = true;
            }
        }
        // a palm on the way is one that could be infectious at its cut, however it came to be so
        let mut wanted = seen(&world, &expanded.infectious, &mark, true);
        wanted.retain(|palm, _| world.carries[*palm as usize]);
        let found = own(&backward(&world.log, &world.cases, &world.rules()));
        assert_eq!(found, wanted, "seed {seed}");
        reached += found.len();
    }
    assert!(reached > 1000, "the worlds are not trivial: {reached}");
}
