//! Bad input, one line a kind: the file, then what must be said of it.

use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};
use model::{Clock, Day, Palm, Spear};
use std::io::{self, Read};

const PALMS: &str = "tag,species,stems\nA,Sabal palmetto,1\nB,Phoenix reclinata,3\n";

fn known() -> Known {
    let palms: Vec<Palm> = PalmReader::open(PALMS.as_bytes())
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    Known::of(&palms)
}

/// First refusal of a file as `line column code`, after checking that both languages have full words for it.
fn first<T>(opened: Result<impl Iterator<Item = Result<T, Refusal>>, Refusal>) -> String {
    let refusal = match opened {
        Err(refusal) => Some(refusal),
        Ok(mut rows) => rows.find_map(Result::err),
    };
    let Some(refusal) = refusal else {
        return "taken".to_owned();
    };
    for lang in Lang::ALL {
        let said = refusal.say("f.csv", &Measure::new(Units::Metric, Words::new(lang)));
        assert!(
            !said.contains("{$") && !said.contains(refusal.finding.code),
            "{lang:?}: {said}"
        );
        assert!(
            said.starts_with("f.csv") && said.contains(&refusal.found),
            "{lang:?}: {said}"
        );
    }
    format!(
        "{} {} {}",
        refusal.line, refusal.column, refusal.finding.code
    )
}

fn palms(file: &str) -> String {
    first(PalmReader::open(file.as_bytes()).map(|r| r.not_after(Day::parse("2026-05-01").unwrap())))
}

fn inspections(rows: &str) -> String {
    let header =
        "tag,stem,date,green,yellowing,brown,removed_green,spear,clock_left,clock_right,lat";
    let file = format!("{header}\n{rows}\n");
    let known = known();
    first(
        InspectionReader::open(file.as_bytes(), &known)
            .map(|r| r.not_after(Day::parse("2026-05-01").unwrap())),
    )
}

#[test]
fn palm_rows_are_refused_with_line_column_and_code() {
    for (rows, expected) in [
        ("A,x,1,,,,,,", "taken"),
        ("A,x,1,2026-02-30,,,,,", "2 planted_on intake-bad-date"),
        (
            "A,x,1,03/02/2026,,,,,",
            "2 planted_on intake-bad-date-offer",
        ),
        ("A,x,1,1066-10-14,,,,,", "2 planted_on intake-date-too-old"),
        (
            "A,x,1,2026-05-02,,,,,",
            "2 planted_on intake-date-in-future",
        ),
        (",x,1,,,,,,", "2 tag intake-no-tag"),
        (
            "A,x,1,,,,,,\n\nB,x,1,,,,,,\nA,x,1,,,,,,",
            "5 tag intake-doubled-tag",
        ),
        ("A,x,0,,,,,,", "2 stems intake-no-stem"),
        ("A,x,-1,,,,,,", "2 stems intake-negative"),
        ("A,x,two,,,,,,", "2 stems intake-not-whole"),
        ("A,x,1.5,,,,,,", "2 stems intake-not-whole"),
        ("A,x,5000,,,,,,", "2 stems intake-too-many"),
        ("A,x,1,,,25 ft,,,", "2 trunk_height_m intake-not-number"),
        (
            "A,x,1,,,\"7,5\",,,",
            "2 trunk_height_m intake-decimal-comma",
        ),
        ("A,x,1,,,NaN,,,", "2 trunk_height_m intake-not-number"),
        ("A,x,1,,,-2,,,", "2 trunk_height_m intake-out-of-range"),
        ("A,x,1,,,120,,,", "2 trunk_height_m intake-out-of-range"),
        ("A,x,1,,,,91,0,", "2 lat intake-out-of-range"),
        ("A,x,1,,,,26,181,", "2 lon intake-out-of-range"),
        ("A,x,1,,,,26,,", "2 lon intake-half-position"),
        ("A,x,1,,,,,-80,", "2 lat intake-half-position"),
        ("A,x,1,,", "2  intake-too-few-cells"),
        ("A,x,1,,,,,,fine, but a comma", "2  intake-too-many-cells"),
        ("A,x,1,,,,,,fine,,,", "taken"),
    ] {
        let file =
            format!("tag,species,stems,planted_on,moved_on,trunk_height_m,lat,lon,notes\n{rows}\n");
        assert_eq!(palms(&file), expected, "{rows}");
    }
}

#[test]
fn inspection_rows_are_refused_with_line_column_and_code() {
    for (rows, expected) in [
        ("A,1,2026-03-02,30,2,1,0,firm,8.5,3.25,", "taken"),
        ("A,,2026-03-02,,,,,,,,", "taken"),
        (
            "C,1,2026-03-02,30,2,1,,,,,",
            "2 tag intake-unknown-palm-near",
        ),
        (
            "Court-17,1,2026-03-02,30,2,1,,,,,",
            "2 tag intake-unknown-palm",
        ),
        ("A,2,2026-03-02,30,2,1,,,,,", "2 stem intake-no-such-stem"),
        ("A,0,2026-03-02,30,2,1,,,,,", "2 stem intake-no-such-stem"),
        ("B,,2026-03-02,30,2,1,,,,,", "2 stem intake-which-stem"),
        ("A,1,,30,2,1,,,,,", "2 date intake-no-date"),
        ("A,1,yesterday,30,2,1,,,,,", "2 date intake-bad-date"),
        ("A,1,2026-05-02,30,2,1,,,,,", "2 date intake-date-in-future"),
        ("A,1,2026-03-02,-3,2,1,,,,,", "2 green intake-negative"),
        ("A,1,2026-03-02,3000,2,1,,,,,", "2 green intake-too-many"),
        (
            "A,1,2026-03-02,99999999999999999999,2,1,,,,,",
            "2 green intake-too-many",
        ),
        (
            "A,1,2026-03-02,30,~2,1,,,,,",
            "2 yellowing intake-not-whole",
        ),
        (
            "A,1,2026-03-02,5,2,1,6,,,,",
            "2 removed_green intake-more-off-than-on",
        ),
        (
            "A,1,2026-03-02,30,2,1,,wobbly,,,",
            "2 spear intake-bad-spear",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,13,,",
            "2 clock_left intake-bad-clock",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,8.3,,",
            "2 clock_left intake-bad-clock",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,4,,",
            "2 clock_left intake-clock-side",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,,8,",
            "2 clock_right intake-clock-side",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,,,\nA,,2026-03-02,31,2,1,,,,,",
            "3 date intake-twice-a-day",
        ),
        (
            "B,1,2026-03-02,30,2,1,,,,,\nB,2,2026-03-02,31,2,1,,,,,",
            "taken",
        ),
        (
            "A,1,2026-03-02,30,2,1,,,,,\nA,1,2026-03-01,31,2,1,,,,,",
            "taken",
        ),
    ] {
        assert_eq!(inspections(rows), expected, "{rows}");
    }
}

#[test]
fn an_inspection_cannot_come_before_planting() {
    let palms = "tag,species,planted_on\nA,x,2024-01-10\n";
    let palms: Vec<Palm> = PalmReader::open(palms.as_bytes())
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    let known = Known::of(&palms);
    let file = "tag,date,green,yellowing,brown\nA,2023-12-31,3,0,0\n";
    assert_eq!(
        first(InspectionReader::open(file.as_bytes(), &known)),
        "2 date intake-before-planting"
    );
}

#[test]
fn climate_rows_are_refused_with_line_column_and_code() {
    for (rows, expected) in [
        ("Yard,1,20.1,14,26", "taken"),
        ("Yard,13,20.1,14,26", "2 month intake-bad-month"),
        ("Yard,,20.1,14,26", "2 month intake-bad-month"),
        ("Yard,1,200,14,26", "2 tmean_c intake-out-of-range"),
        (
            "Yard,1,20,14,26\nYard,1,21,14,26",
            "3 month intake-doubled-month",
        ),
    ] {
        let file = format!("site,month,tmean_c,tmin_c,tmax_c\n{rows}\n");
        assert_eq!(
            first(ClimateReader::open(file.as_bytes())),
            expected,
            "{rows}"
        );
    }
}

#[test]
fn whole_files_are_refused() {
    let long = format!("tag,species\nA,\"{}", "never closed\n".repeat(10_000));
    let wide = format!("tag,species{}\n", ",x".repeat(400));
    for (file, expected) in [
        (&b""[..], "0  intake-empty-file"),
        (b" \r\n \n", "0  intake-empty-file"),
        (b"\xEF\xBB\xBF", "0  intake-empty-file"),
        (b"\xEF\xBB\xBFtag,species\nA,x\n", "taken"),
        (b"\xFF\xFEt\0a\0g\0", "1  intake-utf16"),
        (b"tag,species\nA,x\nB,Caf\xE9 palm\n", "3  intake-not-utf8"),
        (b"tag,species\nA,x\0y\n", "2  intake-not-text"),
        (b"PK\x03\x04\x14\x00\x06\x00", "1  intake-not-text"),
        (b"tag,species,tag\nA,x,B\n", "1 tag intake-doubled-column"),
        (b"tag,species,Tag \nA,x,B\n", "1 tag intake-doubled-column"),
        (b"tag,site\nA,x\n", "1 species intake-missing-columns"),
        (
            b"tag,specis\nA,x\n",
            "1 species intake-missing-columns-near",
        ),
        (b"tag,species\n", "taken"),
        (long.as_bytes(), "2  intake-row-too-long"),
        (wide.as_bytes(), "1  intake-too-many-columns"),
    ] {
        assert_eq!(
            first(PalmReader::open(file)),
            expected,
            "{:?}",
            String::from_utf8_lossy(&file[..file.len().min(30)])
        );
    }
}

#[test]
fn what_is_written_is_what_is_read() {
    let file = "\u{feff}Tag , SPECIES,site,lat,lon,Plaque no.,clock\r\n\"A \"\"1\"\"\",Sabal palmetto,\"Yard, north\",-26.5,80,17,\r\n,,,,,,\r\n";
    let mut reader = PalmReader::open(file.as_bytes()).unwrap();
    let rows: Vec<_> = reader.by_ref().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 1);
    let palm = &rows[0].value;
    assert_eq!(
        (palm.tag.as_str(), palm.site.as_str(), palm.stems),
        ("A \"1\"", "Yard, north", 1)
    );
    assert_eq!(palm.position.map(|p| (p.lat, p.lon)), Some((-26.5, 80.0)));
    assert_eq!(palm.planted_on, None);
    assert_eq!(
        palm.extra.iter().collect::<Vec<_>>(),
        [(&"Plaque no.".to_owned(), &"17".to_owned())]
    );
    let codes: Vec<_> = reader.remarks().iter().map(|f| f.code).collect();
    assert_eq!(
        codes,
        [
            "intake-unknown-column",
            "intake-unknown-column",
            "intake-blank-rows"
        ]
    );
}

#[test]
fn an_inspection_row_is_read_in_full() {
    let file = "date;tag;stem;green;yellowing;brown;new_leaves;removed_brown;spear;clock_left;clock_right;signs;absent;notes\n\
                2026-03-02;B;2;30;;0;4;0;Leaning;8.75;12;\"tip-burn; ;one-sided\";\" conk;;nest \";windy\n";
    let known = known();
    let mut reader = InspectionReader::open(file.as_bytes(), &known).unwrap();
    let row = reader.next().unwrap().unwrap();
    let i = &row.value.inspection;
    assert_eq!(
        (row.line, row.value.palm, i.stem, i.date),
        (2, 1, 2, Day::parse("2026-03-02").unwrap())
    );
    assert_eq!(
        (i.green, i.yellowing, i.brown, i.new_leaves),
        (Some(30), None, Some(0), Some(4))
    );
    assert_eq!((i.removed.green, i.removed.brown), (None, Some(0)));
    assert_eq!(
        (i.spear, i.clock_left, i.clock_right),
        (Some(Spear::Leaning), Clock::new(8.75), Clock::new(12.0))
    );
    assert_eq!(
        (&i.signs[..], &i.absent[..], i.notes.as_str()),
        (
            &["tip-burn".to_owned(), "one-sided".to_owned()][..],
            &["conk".to_owned(), "nest".to_owned()][..],
            "windy"
        )
    );
    assert!(reader.next().is_none());
    assert_eq!(
        reader.remarks().iter().map(|f| f.code).collect::<Vec<_>>(),
        ["intake-separator"]
    );
}

#[test]
fn out_of_order_is_a_remark() {
    let file = "tag,date,green,yellowing,brown\nA,2026-03-02,3,0,0\nA,2026-02-02,3,0,0\nA,2026-04-02,3,0,0\n";
    let known = known();
    let mut reader = InspectionReader::open(file.as_bytes(), &known).unwrap();
    assert_eq!(reader.by_ref().filter(Result::is_ok).count(), 3);
    assert_eq!(reader.remarks()[0].code, "intake-out-of-order");
}

#[test]
fn another_encoding_can_be_named() {
    let file = b"tag,species,notes\nA,x,Caf\xE9\n";
    let mut reader = PalmReader::open(decode(&file[..], "windows-1252").unwrap()).unwrap();
    assert_eq!(reader.next().unwrap().unwrap().value.notes, "Café");
    assert!(decode(&file[..], "no-such-thing").is_none());
    let utf16: Vec<u8> = "\u{feff}tag,species\nA,Ñ\n"
        .encode_utf16()
        .flat_map(u16::to_le_bytes)
        .collect();
    let mut reader = PalmReader::open(decode(&utf16[..], "utf-16le").unwrap()).unwrap();
    assert_eq!(reader.next().unwrap().unwrap().value.species, "Ñ");
}

#[test]
fn a_file_in_pieces_is_the_same_file() {
    struct Drip<'a>(&'a [u8]);
    impl Read for Drip<'_> {
        fn read(&mut self, out: &mut [u8]) -> io::Result<usize> {
            let n = self.0.len().min(out.len()).min(1);
            out[..n].copy_from_slice(&self.0[..n]);
            self.0 = &self.0[n..];
            Ok(n)
        }
    }
    let file = "tag,species,notes\r\nA,é,\"two\r\nlines\"\r\n\r\nA,x,\r\n";
    assert_eq!(
        first(PalmReader::open(Drip(file.as_bytes()))),
        "5 tag intake-doubled-tag"
    );
    assert_eq!(palms(file), "5 tag intake-doubled-tag");
}

#[test]
fn refused_rows_can_be_mended_and_read_again() {
    let file = "tag,species,stems\nA,x,1\nB,\"x, y\",-1\nC,x\n";
    let mut reader = PalmReader::open(file.as_bytes()).unwrap();
    let refused: Vec<Refusal> = reader.by_ref().filter_map(Result::err).collect();
    let mut out = Vec::new();
    let mut writer = RefusedFile::new(&mut out, reader.headers()).unwrap();
    for refusal in &refused {
        writer.write(refusal, "because").unwrap();
    }
    assert_eq!(writer.rows, 2);
    writer.finish().unwrap();
    let text = String::from_utf8(out).unwrap();
    assert_eq!(
        text,
        "tag,species,stems,refused_line,refused_column,refused_because\nB,\"x, y\",-1,3,stems,because\nC,x,,4,,because\n"
    );
    let mended = text.replace("-1", "2");
    let rows: Vec<_> = PalmReader::open(mended.as_bytes())
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    assert_eq!((rows[0].stems, rows[1].stems), (2, 1));
    assert!(rows.iter().all(|p| p.extra.is_empty()));
}

#[test]
fn a_row_of_signs_is_read_in_full() {
    let file = "Tag,species,moved_on,planted_on,date,signs,absent,frost_on,storm_on,lat,crew\n\
                A,Sabal palmetto,2026-03-02,2026-03-04,2026-04-20,a; ;b,c;,2026-01-05,2025-09-28,-27.5,north\n\
                A,,,,,,,,,,\n";
    let mut reader = SignsReader::open(file.as_bytes()).unwrap();
    let rows: Vec<_> = reader.by_ref().map(|row| row.unwrap().value).collect();
    let day = |text: &str| Day::parse(text);
    let keys = |keys: &[&str]| keys.iter().map(|k| (*k).to_owned()).collect::<Vec<_>>();
    assert_eq!(
        rows[0],
        SignsRow {
            tag: "A".into(),
            species: "Sabal palmetto".into(),
            signs: keys(&["a", "b"]),
            absent: keys(&["c"]),
            date: day("2026-04-20"),
            moved_on: day("2026-03-02"),
            planted_on: day("2026-03-04"),
            frost_on: day("2026-01-05"),
            storm_on: day("2025-09-28"),
            lat: Some(-27.5),
        }
    );
    let (tag, none) = (rows[1].tag.as_str(), &rows[1]);
    assert_eq!(tag, "A", "a palm may be looked at more than once");
    assert!(none.signs.is_empty() && none.date.is_none() && none.lat.is_none());
    let codes: Vec<_> = reader.remarks().iter().map(|f| f.code).collect();
    assert_eq!(codes, ["intake-unknown-column"]);
}

#[test]
fn bad_rows_of_signs_are_refused() {
    let today = Day::parse("2026-05-01").unwrap();
    for (row, expected) in [
        (",Sabal palmetto,a,2026-04-20,27", "2 tag intake-no-tag"),
        ("A,x,a,2026-05-02,27", "2 date intake-date-in-future"),
        ("A,x,a,20.4.26,27", "2 date intake-bad-date-offer"),
        ("A,x,a,2026-04-20,97", "2 lat intake-out-of-range"),
        ("A,x,a,2026-04-20", "2  intake-too-few-cells"),
    ] {
        let file = format!("tag,species,signs,date,lat\n{row}\n");
        let reader = SignsReader::open(file.as_bytes());
        assert_eq!(first(reader.map(|r| r.not_after(today))), expected, "{row}");
    }
    let reader = SignsReader::open("tag,species,sings\n".as_bytes());
    assert_eq!(first(reader), "1 signs intake-missing-columns-near");
}
