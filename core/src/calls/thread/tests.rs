//! What the reader of a thread takes, and what it answers to the rest.

use super::*;
use crate::thread::ThreadClass;

#[test]
fn every_thread_reads_back_to_itself() {
    for &thread in ThreadCall::all() {
        assert_eq!(read(&thread.short()).as_ref(), Ok(&thread));
        assert_eq!(read(&thread.to_string()).as_ref(), Ok(&thread));
        for class in ThreadClass::ALL {
            if class.is_metric() == thread.series.is_metric() {
                let with = ThreadCall {
                    class: Some(class),
                    ..thread
                };
                assert_eq!(read(&with.to_string()).as_ref(), Ok(&with));
            }
        }
    }
}

#[test]
fn shop_writing() {
    for (text, full) in [
        ("1/4-20", "1/4-20 UNC"),
        ("1/4 - 20", "1/4-20 UNC"),
        ("1/4\"-20", "1/4-20 UNC"),
        (".25-20", "1/4-20 UNC"),
        ("0,25-20", "1/4-20 UNC"),
        ("3/8-16 UNC", "3/8-16 UNC"),
        ("3/8 unc", "3/8-16 UNC"),
        ("1/4-20 UNC-2B", "1/4-20 UNC-2B"),
        ("1/4-20UNC-2B", "1/4-20 UNC-2B"),
        ("1/4-20-2B", "1/4-20 UNC-2B"),
        ("5/16-20 UN", "5/16-20 UN"),
        ("1-1/8-7", "1-1/8-7 UNC"),
        ("1 1/8-7", "1-1/8-7 UNC"),
        ("#10-24", "#10-24 UNC"),
        ("10-32", "#10-32 UNF"),
        ("No. 10-32", "#10-32 UNF"),
        ("6-32", "#6-32 UNC"),
        ("6-12", "6-12 UN"),
        ("4-40", "#4-40 UNC"),
        ("4-4", "4-4 UNC"),
        ("1-8", "1-8 UNC"),
        ("1-72", "#1-72 UNF"),
        ("2-4.5", "2-4.5 UNC"),
        ("1-14 UNS", "1-14 UNS"),
        (".190-24", "#10-24 UNC"),
        ("M10", "M10x1.5"),
        ("m10x1.5", "M10x1.5"),
        ("M10 X 1.25", "M10x1.25"),
        ("M6 x 0,75", "M6x0.75"),
        ("M8-6H", "M8x1.25-6H"),
        ("M8x1-6g", "M8x1-6g"),
        ("M8-6h", "M8x1.25-6h"),
    ] {
        assert_eq!(
            read(text).map(|thread| thread.to_string()).as_deref(),
            Ok(full),
            "{text}"
        );
    }
}

#[test]
fn past_our_table_is_not_undefined() {
    assert!(matches!(read("M70"), Err(CallFault::NoSource { .. })));
    assert!(matches!(size("M72x6"), Err(CallFault::NoSource { .. })));
}

#[test]
fn sizes_of_screws() {
    for (text, name) in [
        ("1/4", "1/4"),
        ("#10", "No. 10"),
        ("M8", "M8"),
        ("3/8-16", "3/8"),
        ("1 in", "1"),
        ("10", "No. 10"),
        (".25", "1/4"),
    ] {
        assert_eq!(
            size(text).map(|size| size.name).as_deref(),
            Ok(name),
            "{text}"
        );
        let said = said_size(text).unwrap();
        assert_eq!(said_size(&said.call).unwrap(), said, "{text}");
    }
    assert!(matches!(size("4"), Err(CallFault::Ambiguous(_))));
    assert!(matches!(size("1/"), Err(CallFault::Unfinished)));
    assert!(matches!(size("fish"), Err(CallFault::Unknown { .. })));
}

#[test]
fn half_typed_is_not_wrong() {
    assert_eq!(read("  "), Err(CallFault::Empty));
    for text in ["1/", "1/4-", "M", "#", "M10x", "1/4-20 UNC-", "M6x0."] {
        assert_eq!(read(text), Err(CallFault::Unfinished), "{text}");
    }
}

#[test]
fn several_are_asked_and_others_refused() {
    let Err(CallFault::Ambiguous(found)) = read("1/4") else {
        panic!()
    };
    let calls: Vec<&str> = found.iter().map(|(text, _)| text.as_str()).collect();
    assert_eq!(calls, ["1/4-20", "1/4-28", "1/4-32"]);
    for text in ["M10x1.4", "M13", "3/8-16 UNF", "M5.5"] {
        assert!(
            matches!(read(text), Err(CallFault::NotDefined { .. })),
            "{text}: {:?}",
            read(text)
        );
    }
    for text in [
        "1/0-20",
        "1e3-20",
        "fish",
        "1,250-7",
        "M8-6G",
        "1/4-20 UNC-4B",
        "10'6\"-20",
        "M-6",
        "NaN-20",
    ] {
        assert!(
            matches!(read(text), Err(CallFault::Unknown { .. })),
            "{text}: {:?}",
            read(text)
        );
    }
}
