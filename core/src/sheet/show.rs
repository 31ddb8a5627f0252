//! How does a sheet print numbers into its working? In the system in use, with the kind's usual decimals or its own.

use super::Inputs;
use crate::quantity::{
    Quantity, System, Unit, decimal, join, paper, plain, signed, usual, with_unit,
};

impl Inputs {
    /// The unit that a kind is shown in.
    pub fn unit_of<Q: Quantity>(&self) -> &'static Unit {
        usual(Q::KIND, self.system)
    }
    /// Digits only, usual decimals: "0.1878".
    pub fn num<Q: Quantity>(&self, q: Q) -> String {
        let unit = self.unit_of::<Q>();
        paper(decimal(q.base(), unit, unit.places))
    }
    /// Digits only, with these decimals (inch, metric).
    pub fn num_to<Q: Quantity>(&self, q: Q, inch: u8, metric: u8) -> String {
        paper(decimal(
            q.base(),
            self.unit_of::<Q>(),
            self.pick(inch, metric),
        ))
    }
    /// With its unit: "0.1878 in".
    pub fn show<Q: Quantity>(&self, q: Q) -> String {
        let unit = self.unit_of::<Q>();
        with_unit(q.base(), unit, unit.places)
    }
    /// With its unit and these decimals (inch, metric).
    pub fn show_to<Q: Quantity>(&self, q: Q, inch: u8, metric: u8) -> String {
        with_unit(q.base(), self.unit_of::<Q>(), self.pick(inch, metric))
    }
    /// With its sign and unit.
    pub fn show_signed<Q: Quantity>(&self, q: Q) -> String {
        let unit = self.unit_of::<Q>();
        join(&signed(q.base(), unit, unit.places), unit)
    }
    /// All digits, no rounding, with its unit.
    pub fn show_plain<Q: Quantity>(&self, q: Q) -> String {
        let unit = self.unit_of::<Q>();
        join(&paper(plain(q.base(), unit)), unit)
    }
    const fn pick(&self, inch: u8, metric: u8) -> u8 {
        match self.system {
            System::Inch => inch,
            System::Metric => metric,
        }
    }
}
