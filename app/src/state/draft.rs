//! How does the last stroke live through a reload? The form as it stands, put aside at each stroke under the address that
//! it belongs to. The address itself follows a little later, and can't hold everything.

use super::{Form, Typed};
use benchslate_core::link::{Asked, system_id, system_of};
use benchslate_core::quantity::units_of;
use benchslate_core::sheet::FieldKind;
use serde::{Deserialize, Serialize};
use std::rc::Rc;

/// A form put aside.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Draft {
    /// The addresses that may stand above it: one that is written while the page goes may come too late.
    at: Vec<String>,
    /// The sheet.
    sheet: String,
    /// The system that results are shown in.
    system: String,
    /// Field, text, and the unit chosen.
    typed: Vec<(String, String, Option<String>)>,
    /// What was asked: turned, wanted, swept.
    asked: [Option<String>; 3],
}

impl Draft {
    /// A form as a text to put aside.
    pub fn text(form: &Form, at: &[&str]) -> String {
        let fields = form.sheet.fields.iter().zip(&form.typed);
        let one = |(field, typed): (&benchslate_core::sheet::Field, &Typed)| {
            let unit = typed.unit.map(|unit| unit.id.to_owned());
            (field.id.to_owned(), typed.raw.to_string(), unit)
        };
        let asked = &form.asked;
        let draft = Self {
            at: at.iter().map(|&at| at.to_owned()).collect(),
            sheet: form.sheet.id.to_owned(),
            system: system_id(form.system).to_owned(),
            typed: fields
                .filter(|(_, typed)| !typed.raw.is_empty() || typed.unit.is_some())
                .map(one)
                .collect(),
            asked: [asked.turn.clone(), asked.want.clone(), asked.sweep.clone()],
        };
        serde_json::to_string(&draft).unwrap_or_default()
    }
    /// The form as it was put aside, where the text belongs to this address; else as the address opened it.
    pub fn restored(form: Form, text: Option<&str>, at: &str) -> Form {
        let draft = text.and_then(|text| serde_json::from_str::<Self>(text).ok());
        match draft {
            Some(draft) if draft.at.iter().any(|own| own == at) && draft.sheet == form.sheet.id => {
                draft.over(&form)
            }
            _ => form,
        }
    }
    fn over(self, form: &Form) -> Form {
        let mut next = form.clone();
        next.system = system_of(&self.system).unwrap_or(form.system);
        let [turn, want, sweep] = self.asked;
        next.asked = Asked { turn, want, sweep };
        let one = |field: &benchslate_core::sheet::Field| {
            let mut all = self.typed.iter();
            let Some((_, raw, unit)) = all.find(|(id, ..)| id == field.id) else {
                return Typed::default();
            };
            let of = |id: &String| match field.kind {
                FieldKind::Quantity { kind, .. } => {
                    units_of(kind).iter().copied().find(|unit| unit.id == id)
                }
                _ => None,
            };
            Typed {
                unit: unit.as_ref().and_then(of),
                ..Typed::of(raw)
            }
        };
        next.typed = form.sheet.fields.iter().map(one).collect();
        next.figure(form);
        next
    }
}

/// What a cleared form held, so that it can be put back.
#[derive(Clone)]
pub struct Cleared(pub(super) Rc<Form>);
