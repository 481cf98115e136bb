//! The shortest way through classes of few palms, by dynamic programming over sets of palms (Held and Karp, 1962), chained:
//! a class starts from every palm at which the class before may end, at the cost of the best way to end there.

use super::field::Field;

/// One class solved: for each set of its palms and each last palm the least cost, and the palm before.
struct Table {
    /// Node of the first palm of the class.
    first: usize,
    palms: usize,
    cost: Vec<f64>,
    before: Vec<usize>,
}

impl Table {
    fn at(&self, set: usize, last: usize) -> usize {
        set * self.palms + last
    }

    fn full(&self) -> usize {
        (1 << self.palms) - 1
    }

    /// Ends of the class with the least cost of each.
    fn ends(&self) -> Vec<(usize, f64)> {
        let cost = |last| self.cost[self.at(self.full(), last)];
        (0..self.palms)
            .map(|last| (self.first + last, cost(last)))
            .collect()
    }
}

/// Nodes in the best order. Nodes are numbered class by class; `sizes` says how many each class has, none of them none.
pub fn shortest(field: &Field, sizes: &[usize]) -> Vec<usize> {
    let mut tables: Vec<Table> = Vec::new();
    let mut ends = vec![(field.gate(), 0.0)];
    let mut first = 0;
    for &palms in sizes {
        let table = solved(field, first, palms, &ends);
        ends = table.ends();
        tables.push(table);
        first += palms;
    }
    back(&tables, &ends)
}

fn solved(field: &Field, first: usize, palms: usize, starts: &[(usize, f64)]) -> Table {
    let mut table = Table {
        first,
        palms,
        cost: vec![f64::INFINITY; palms << palms],
        before: vec![0; palms << palms],
    };
    for palm in 0..palms {
        let slot = table.at(1 << palm, palm);
        for (start, (node, cost)) in starts.iter().enumerate() {
            table.offer(slot, cost + field.length(*node, first + palm), start);
        }
    }
    for set in 1..=table.full() {
        for last in (0..palms).filter(|p| set >> p & 1 == 1) {
            let cost = table.cost[table.at(set, last)];
            for next in (0..palms).filter(|p| set >> p & 1 == 0) {
                let slot = table.at(set | 1 << next, next);
                table.offer(slot, cost + field.length(first + last, first + next), last);
            }
        }
    }
    table
}

impl Table {
    fn offer(&mut self, slot: usize, cost: f64, before: usize) {
        if cost < self.cost[slot] {
            (self.cost[slot], self.before[slot]) = (cost, before);
        }
    }
}

/// From the cheapest end back to the start.
fn back(tables: &[Table], ends: &[(usize, f64)]) -> Vec<usize> {
    let cheapest = ends.iter().enumerate();
    let cheapest = cheapest.min_by(|a, b| a.1.1.total_cmp(&b.1.1));
    let mut last = cheapest.map_or(0, |(at, _)| at);
    let mut way = Vec::new();
    for table in tables.iter().rev() {
        let mut set = table.full();
        while set != 0 {
            way.push(table.first + last);
            let before = table.before[table.at(set, last)];
            set &= !(1 << last);
            last = before;
        }
    }
    way.reverse();
    way
}
