//! Sets of at most two disorders, in one fixed order: nothing, each alone, each pair.

/// Sets over `n` disorders.
pub(super) struct Sets {
    /// Number of disorders.
    pub n: usize,
    /// Members of each set; `n` stands for nobody.
    pub members: Vec<[usize; 2]>,
    /// The sets that a disorder is in, in order.
    pub with: Vec<Vec<usize>>,
}

impl Sets {
    /// All of them: 1 + n + n (n - 1) / 2.
    pub fn over(n: usize) -> Sets {
        let mut members = vec![[n, n]];
        members.extend((0..n).map(|a| [a, n]));
        members.extend((0..n).flat_map(|a| (a + 1..n).map(move |b| [a, b])));
        let mut with = vec![Vec::new(); n];
        for (set, pair) in members.iter().enumerate() {
            for member in pair.iter().filter(|m| **m < n) {
                with[*member].push(set);
            }
        }
        Sets { n, members, with }
    }

    /// How many.
    pub fn len(&self) -> usize {
        self.members.len()
    }

    /// Who is in a set.
    pub fn of(&self, set: usize) -> impl Iterator<Item = usize> + '_ {
        self.members[set]
            .iter()
            .copied()
            .filter(move |m| *m < self.n)
    }

    /// The sets in which any of these is, in order.
    pub fn with_any(&self, wanted: &[bool]) -> Vec<usize> {
        (0..self.len())
            .filter(|set| self.of(*set).any(|m| wanted[m]))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Sets;

    #[test]
    fn every_set_is_there_once() {
        let sets = Sets::over(35);
        assert_eq!(sets.len(), 631);
        let distinct: std::collections::BTreeSet<_> = sets.members.iter().collect();
        assert_eq!(distinct.len(), 631);
        assert!(sets.with.iter().all(|with| with.len() == 35));
        assert_eq!(Sets::over(0).len(), 1);
    }
}
