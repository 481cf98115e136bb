//! Long lists in pages.

use std::ops::Range;

/// One page of a list.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Paging {
    /// This page, from 1.
    pub page: usize,
    /// All pages, at least 1.
    pub pages: usize,
    /// All things in the list.
    pub total: usize,
    per_page: usize,
}

impl Paging {
    /// The page asked for of a list; a number beyond the end gives the last page.
    pub fn of(total: usize, per_page: usize, asked: usize) -> Paging {
        let pages = total.div_ceil(per_page).max(1);
        Paging {
            page: asked.clamp(1, pages),
            pages,
            total,
            per_page,
        }
    }

    /// The things on this page.
    pub fn range(&self) -> Range<usize> {
        let start = (self.page - 1) * self.per_page;
        start..(start + self.per_page).min(self.total)
    }

    /// The page before, if there is one.
    pub fn previous(&self) -> Option<usize> {
        (self.page > 1).then(|| self.page - 1)
    }

    /// The page after, if there is one.
    pub fn next(&self) -> Option<usize> {
        (self.page < self.pages).then(|| self.page + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pages_cover_the_list_once() {
        for (total, pages) in [(0, 1), (1, 1), (40, 1), (41, 2), (100_000, 2500)] {
            let all: Vec<_> = (1..=pages).map(|p| Paging::of(total, 40, p)).collect();
            assert_eq!(all.iter().map(|p| p.range().len()).sum::<usize>(), total);
            assert_eq!((all[0].previous(), all[pages - 1].next()), (None, None));
            assert_eq!(Paging::of(total, 40, 9_999_999), all[pages - 1]);
            assert_eq!(Paging::of(total, 40, 0), all[0]);
        }
    }
}
