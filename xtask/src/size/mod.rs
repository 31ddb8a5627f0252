//! How many bytes does a first visit cost, and which parts of the program do they come from?
mod sections;

use crate::{
    args::Args,
    fail::Res,
    setup,
    web::{Page, compile, compress, site, site::Files},
};

/// A first visit may cost this much, everything, brotli 11. Raise it with figures and a reason.
///
/// 200,000 was set for a first few sheets. With all sheets of both issues in it was 473,472; then 510,142 with the cutting
/// speeds and feeds that were missing (most cuts had no answer), the torque of taps, several cutters on an arbor, the lathe's
/// pass, several machines of a kind in my shop, and machine sheets that tell more apart. Texts, tables and sources are a
/// quarter of the module and shrink no further. DEVELOPERS.md, "Figures", has what was taken out and what each part costs.
///
/// Then about 620,000, with what answers lacked to be acted on: power beside speed and feed, limits of slots, carriages and
/// deep holes, safe torque, the fault isolation followed to its end, ± and solving that name every worst corner, shops and
/// records that keep each figure's unit, and a look-up that reads whole questions. Sheets in groups that load apart come next.
const GATE: usize = 640_000;

/// `cargo xtask size`
pub fn command(args: &Args) -> Res<bool> {
    args.allow(&[], &[])?;
    let page = Page::app();
    let bindgen = setup::for_build()?;
    let visit = Visit::of(&site::build(&page, &bindgen)?)?;
    let named = compile::module(&page, &bindgen, true)?;
    println!("{}\n\n{}", visit.table(), sections::report(&named.wasm)?);
    Ok(visit.within_gate())
}

/// The bytes of a first visit by kind of file.
pub struct Visit {
    rows: Vec<(&'static str, usize, usize, usize)>,
}

impl Visit {
    /// Measures the files of a site.
    pub fn of(files: &Files) -> Res<Self> {
        let mut rows = vec![
            ("html", 0, 0, 0),
            ("css", 0, 0, 0),
            ("js", 0, 0, 0),
            ("wasm", 0, 0, 0),
            ("other", 0, 0, 0),
        ];
        for (name, bytes) in files {
            let ending = name.rsplit('.').next().unwrap_or_default();
            let at = rows
                .iter()
                .position(|r| r.0 == ending)
                .unwrap_or(rows.len() - 1);
            let packed = compress::worth_it(name);
            if let Some(row) = rows.get_mut(at) {
                row.1 += bytes.len();
                row.2 += if packed {
                    compress::gzip(bytes)?.len()
                } else {
                    bytes.len()
                };
                row.3 += if packed {
                    compress::brotli(bytes)?.len()
                } else {
                    bytes.len()
                };
            }
        }
        Ok(Self { rows })
    }

    fn total(&self) -> usize {
        self.rows.iter().map(|r| r.3).sum()
    }

    /// True where the visit costs no more than it may.
    pub fn within_gate(&self) -> bool {
        self.total() <= GATE
    }

    /// One line for a summary.
    pub fn line(&self) -> String {
        format!("first visit {} of {GATE} bytes, brotli", self.total())
    }

    /// All figures.
    pub fn table(&self) -> String {
        let mut text = format!(
            "{:<8} {:>10} {:>10} {:>10}\n",
            "bytes", "plain", "gzip 9", "brotli 11"
        );
        for (name, plain, gzip, brotli) in &self.rows {
            text += &format!("{name:<8} {plain:>10} {gzip:>10} {brotli:>10}\n");
        }
        let verdict = if self.within_gate() { "within" } else { "OVER" };
        text + &format!(
            "{:<8} {:>32}   {verdict} the gate of {GATE}",
            "all",
            self.total()
        )
    }
}
