//! How many tests passed and failed, read from what the test programs print.

/// A stage's result.
#[derive(Default, Debug, PartialEq)]
pub struct Count {
    /// Tests that passed; a stage without tests of its own counts as one.
    pub passed: u32,
    /// Tests that failed.
    pub failed: u32,
    /// A few words for the summary line.
    pub note: String,
}

impl Count {
    /// A stage that is one check.
    pub fn one(ok: bool) -> Self {
        Self {
            passed: u32::from(ok),
            failed: u32::from(!ok),
            note: String::new(),
        }
    }

    /// Sums cargo's `test result:` lines. A run that failed without a failed test did not compile: one failure.
    pub fn of_cargo(ok: bool, text: &str) -> Self {
        let mut count = Self::default();
        for line in text
            .lines()
            .filter_map(|l| l.trim().strip_prefix("test result: "))
        {
            count.passed += before(line, " passed").unwrap_or(0);
            count.failed += before(line, " failed").unwrap_or(0);
        }
        count.failed += u32::from(!ok && count.failed == 0);
        count
    }

    /// The browser tests' own last line, `N passed, N failed`.
    pub fn of_browser(ok: bool, text: &str) -> Self {
        let last = text
            .lines()
            .rev()
            .find(|l| l.contains(" passed, "))
            .unwrap_or_default();
        let passed = before(last, " passed").unwrap_or(0);
        let failed = before(last, " failed").unwrap_or(0);
        Self {
            passed,
            failed: failed + u32::from(!ok && failed == 0),
            note: String::new(),
        }
    }

    /// Fails where fewer ran than there must be: tests that silently stop running look like success.
    pub fn at_least(mut self, floor: u32) -> Self {
        if self.passed + self.failed < floor {
            self.note = format!(
                "only {} ran; there must be at least {floor}",
                self.passed + self.failed
            );
            self.failed += 1;
        }
        self
    }
}

/// The number that stands before `word`.
fn before(line: &str, word: &str) -> Option<u32> {
    line.split(word)
        .next()?
        .rsplit([' ', ','])
        .next()?
        .parse()
        .ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_what_cargo_prints() {
        let text = "\nrunning 2 tests\ntest result: ok. 2 passed; 0 failed; 0 ignored; 0 measured; 0 filtered out\n\
            test result: FAILED. 10 passed; 3 failed; 1 ignored\n";
        assert_eq!(
            Count::of_cargo(false, text),
            Count {
                passed: 12,
                failed: 3,
                note: String::new()
            }
        );
        assert_eq!(Count::of_cargo(false, "error: could not compile").failed, 1);
        assert_eq!(Count::of_cargo(true, "").at_least(1).failed, 1);
        assert_eq!(
            Count::of_browser(true, "ok a\n14 passed, 2 failed\n"),
            Count {
                passed: 14,
                failed: 2,
                note: String::new()
            }
        );
        assert_eq!(Count::of_browser(false, "Error: no module").failed, 1);
    }
}
