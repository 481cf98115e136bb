//! Addresses of our own pages.

use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};

const KEPT: &AsciiSet = &NON_ALPHANUMERIC
    .remove(b'-')
    .remove(b'_')
    .remove(b'.')
    .remove(b'~');

/// A palm's page, or one below it (`tail` begins with `/` or `?`, or is empty).
pub fn palm(tag: &str, tail: &str) -> String {
    format!("/palm/{}{tail}", utf8_percent_encode(tag, KEPT))
}

/// A blade's page, or one below it (`tail` begins with `/` or `?`, or is empty).
pub fn blade(tag: &str, tail: &str) -> String {
    format!("/blades/{}{tail}", utf8_percent_encode(tag, KEPT))
}

/// A site's page, or one below it (`tail` begins with `/` or `?`, or is empty).
pub fn site(name: &str, tail: &str) -> String {
    format!("/site/{}{tail}", utf8_percent_encode(name, KEPT))
}

/// In the query of an address: palms without a site.
const NO_SITE: &str = "-";

/// A site as the query of an address carries it; palms without a site have pages, too.
pub fn site_word(name: &str) -> &str {
    if name.is_empty() { NO_SITE } else { name }
}

/// The site of such a word.
pub fn site_of(word: &str) -> &str {
    if word == NO_SITE { "" } else { word }
}

/// A crew's page, or one below it (`tail` begins with `/` or `?`, or is empty).
pub fn crew(name: &str, tail: &str) -> String {
    format!("/crew/{}{tail}", utf8_percent_encode(name, KEPT))
}

/// `path?name=value&...` without the empty values.
pub fn with_query(path: &str, pairs: &[(&str, &str)]) -> String {
    let query: Vec<String> = pairs
        .iter()
        .filter(|(_, value)| !value.is_empty())
        .map(|(name, value)| {
            let [name, value] = [name, value].map(|text| utf8_percent_encode(text, KEPT));
            format!("{name}={value}")
        })
        .collect();
    if query.is_empty() {
        path.to_owned()
    } else {
        format!("{path}?{}", query.join("&"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn anything_may_stand_in_a_tag() {
        assert_eq!(palm("A 1/ñ?", "/edit"), "/palm/A%201%2F%C3%B1%3F/edit");
        assert_eq!(
            with_query("/palms", &[("q", "a&b"), ("site", "")]),
            "/palms?q=a%26b"
        );
        assert_eq!(with_query("/", &[("site-a b", "y")]), "/?site-a%20b=y");
        assert_eq!(with_query("/", &[("page", "")]), "/");
    }
}
