//! Do native code and WebAssembly give the same digits? A digest a sheet over the answers to generated entries; the test
//! command computes it natively and hands it to the same test in a browser.

use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;

/// Entries a sheet.
const ENTRIES: usize = 60;

/// `sheet:digest` of every sheet, joined by commas: every line, cell, word and bit of the answers goes into it.
pub fn digests() -> String {
    let mut rng = fastrand::Rng::with_seed(7);
    let mut all = Vec::new();
    for sheet in sheets::ALL {
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        let mut add = |entry: &Entry| {
            let outcome = evaluate(sheet, entry);
            for byte in format!("{:?} {:?}", outcome.answer, outcome.fields).bytes() {
                hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
            }
        };
        for pairs in sheet.examples {
            add(&Entry::of(pairs));
        }
        for _ in 0..ENTRIES {
            add(&crate::entries::entry(sheet, 8, &mut rng));
        }
        all.push(format!("{}:{hash:016x}", sheet.id));
    }
    all.join(",")
}
