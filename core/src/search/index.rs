//! What is known of each sheet? Its words by the place where they stand, the words of its fields, choices and results, and
//! its table rows.

use super::fold::is_mark;
use super::terms::{Id, Terms};
use crate::sheet::{Call, Choice, Entry, FieldKind, Find, Sheet, evaluate_quietly};

/// How much a word counts by the place where it stands.
const TITLE: f32 = 1.1;
const WORDS: f32 = 0.9;
const QUESTION: f32 = 0.65;
const ASIDE: f32 = 0.55;
const LABEL: f32 = 0.4;
const RESULT: f32 = 0.5;
const CHOICE: f32 = 0.35;
const HINT: f32 = 0.15;
const CAUTION: f32 = 0.2;
/// How much less a search word counts for each that the sheet has beside it.
const CROWD: f32 = 0.001;

/// One sheet.
pub(super) struct Doc {
    pub sheet: &'static Sheet,
    /// Words by number, in order, each with how much it counts here.
    pub posts: Vec<(Id, f32)>,
    /// Title, question and search words as sequences of words that say something, each with how many words it has in all.
    pub phrases: Vec<(usize, Vec<Id>)>,
    pub title: Vec<Id>,
    pub fields: Vec<FieldWords>,
    /// The words of each result's label.
    pub results: Vec<Vec<Id>>,
    pub finds: Vec<Find>,
}

/// The words of one field.
pub(super) struct FieldWords {
    pub label: Vec<Id>,
    pub choices: Vec<ChoiceWords>,
}

/// The words of one choice.
pub(super) struct ChoiceWords {
    /// Ways to say it: all but those of the title are wanted.
    pub heads: Vec<Vec<Id>>,
    /// Numbers and marks in its name, which have to be said.
    pub marks: Vec<Id>,
    /// Those of them that tell without another word: 8.8, A2-70.
    pub clear: Vec<Id>,
    pub all: Vec<Id>,
}

/// All sheets, and all words.
pub(super) struct Known {
    pub terms: Terms,
    pub docs: Vec<Doc>,
    /// In how many sheets a word stands, as its weight.
    pub rarity: Vec<f32>,
    /// Kinds of call that any field takes.
    pub calls: Vec<&'static Call>,
    /// What finds a table row: its text, the sheet, the row.
    pub keys: Vec<(String, u16, u16)>,
}

struct Posts(Vec<(Id, f32)>);

impl Posts {
    /// Counts the best place of a word, and a little for every further one.
    fn add(&mut self, ids: &[Id], weight: f32) {
        for id in ids {
            match self.0.iter_mut().find(|(old, _)| old == id) {
                Some((_, old)) => *old = old.max(weight) + 0.04 * weight,
                None => self.0.push((*id, weight)),
            }
        }
    }
}

impl Known {
    pub fn of(sheets: &[&'static Sheet]) -> Self {
        let mut terms = Terms::of_trade();
        let docs: Vec<Doc> = sheets.iter().map(|sheet| doc(sheet, &mut terms)).collect();
        let count = docs.len() as f64;
        let mut times = vec![0.0_f64; terms.count()];
        for (id, weight) in docs.iter().flat_map(|doc| &doc.posts) {
            if let Some(times) = times.get_mut(usize::from(*id)) {
                // a word of a hint is hardly a word of the sheet
                *times += f64::from(weight.min(0.6)) / 0.6;
            }
        }
        let rarity = times
            .iter()
            .enumerate()
            .map(|(id, times)| {
                if terms.is_filler(id as Id) {
                    0.0
                } else {
                    libm::log(1.0 + count / (times + 0.5)) as f32
                }
            })
            .collect();
        let mut calls: Vec<&'static Call> = Vec::new();
        for field in sheets.iter().flat_map(|sheet| sheet.fields) {
            if let FieldKind::Call(call) = field.kind
                && !calls.iter().any(|known| std::ptr::eq(*known, call))
            {
                calls.push(call);
            }
        }
        let mut keys = Vec::new();
        for (at, doc) in docs.iter().enumerate() {
            for (row, find) in doc.finds.iter().enumerate() {
                keys.extend(
                    find.keys
                        .iter()
                        .map(|key| (key_of(key), at as u16, row as u16)),
                );
            }
        }
        crate::order::sort(&mut keys);
        Self {
            terms,
            docs,
            rarity,
            calls,
            keys,
        }
    }

    /// How much a word tells.
    pub fn weight(&self, id: Id) -> f32 {
        self.rarity.get(usize::from(id)).copied().unwrap_or(0.0)
    }
}

/// A key of a table row, and what is typed for one: lower case, single spaces, a leading zero before a point taken off.
pub(super) fn key_of(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for word in text.split_whitespace() {
        if !folded.is_empty() {
            folded.push(' ');
        }
        let short = word.strip_prefix('0').filter(|rest| rest.starts_with('.'));
        folded.extend(short.unwrap_or(word).chars().map(|c| match c {
            '\u{201d}' | '\u{2033}' => '"',
            c => c.to_ascii_lowercase(),
        }));
    }
    folded
}

fn doc(sheet: &'static Sheet, terms: &mut Terms) -> Doc {
    let mut posts = Posts(Vec::new());
    let mut phrases = Vec::new();
    let (title, more) = terms.learn(sheet.title);
    posts.add(&title, TITLE);
    posts.add(&more, TITLE);
    let id = sheet.id.replace('-', " ");
    let titles = [(id.as_str(), WORDS), (sheet.question, QUESTION)];
    let crowd = CROWD * sheet.words.len() as f32;
    let words = sheet.words.iter().map(|word| (*word, WORDS - crowd));
    for (text, weight) in titles.into_iter().chain(words) {
        let (ids, more) = terms.learn(text);
        posts.add(&ids, weight);
        posts.add(&more, weight);
        phrases.push(ids);
    }
    phrases.push(title.clone());
    let phrases = phrases
        .into_iter()
        .map(|ids| {
            (
                ids.len(),
                ids.into_iter()
                    .filter(|id| !terms.is_filler(*id))
                    .collect::<Vec<_>>(),
            )
        })
        .filter(|(_, ids)| !ids.is_empty())
        .collect();
    let mut add = |text: &str, weight: f32, terms: &mut Terms| {
        let (mut ids, more) = terms.learn(text);
        ids.extend(more);
        ids.retain(|id| !terms.is_filler(*id));
        posts.add(&ids, weight);
        ids
    };
    add(sheet.aside, ASIDE, terms);
    let mut fields = Vec::with_capacity(sheet.fields.len());
    for field in sheet.fields {
        let label = add(field.label, LABEL, terms);
        add(field.hint, HINT, terms);
        let mut choices = Vec::new();
        match &field.kind {
            FieldKind::Choice(list) => {
                for one in *list {
                    add(one.label, CHOICE, terms);
                    choices.push(choice(one, &title, terms));
                }
            }
            FieldKind::Rows { columns, .. } => {
                for column in *columns {
                    add(column.label, LABEL, terms);
                }
            }
            FieldKind::Quantity { .. } | FieldKind::Call(_) => {}
        }
        fields.push(FieldWords { label, choices });
    }
    let results = sheet
        .results
        .iter()
        .map(|res| add(res.label, RESULT, terms))
        .collect();
    for caution in cautions(sheet) {
        add(&caution, CAUTION, terms);
    }
    let mut posts = posts.0;
    posts.retain(|(id, _)| !terms.is_filler(*id));
    crate::order::sort_by_key(&mut posts, |post| post.0);
    Doc {
        sheet,
        posts,
        phrases,
        title,
        fields,
        results,
        finds: sheet.finds.map(|finds| finds()).unwrap_or_default(),
    }
}

/// What the cautions of the sheet's example stand before.
fn cautions(sheet: &'static Sheet) -> Vec<String> {
    let example = sheet.examples.first().copied().unwrap_or_default();
    let outcome = evaluate_quietly(sheet, &Entry::of(example));
    let cautions = outcome.answer.cautions.into_iter();
    cautions
        .map(|caution| caution.before.into_owned())
        .collect()
}

/// A choice is said by the part of its label before a colon or a comma, by one side of an "or", or by its id.
fn choice(one: &'static Choice, title: &[Id], terms: &mut Terms) -> ChoiceWords {
    let mut said = String::new();
    let mut inside = false;
    for c in one.label.chars() {
        match c {
            '(' => inside = true,
            ')' => inside = false,
            c if !inside => said.push(c),
            _ => {}
        }
    }
    let head = said.split([':', ',']).next().unwrap_or_default();
    let id = one.id.replace('-', " ");
    let id = Some(id.as_str()).filter(|id| id.len() > 2 && !is_mark(id));
    let mut heads = Vec::new();
    for way in head
        .split(" or ")
        .chain(id)
        .filter(|way| way.trim().len() > 1)
    {
        let (mut ids, _) = terms.learn(way);
        ids.retain(|id| !terms.is_filler(*id) && !title.contains(id));
        if !ids.is_empty() && !heads.contains(&ids) {
            heads.push(ids);
        }
    }
    let (_, more) = terms.learn(head);
    heads.extend(more.iter().map(|id| vec![*id]));
    let marked = |wanted: fn(&str) -> bool, terms: &mut Terms| {
        let words: Vec<&str> = said
            .split([' ', ','])
            .filter(|word| is_mark(word) && wanted(word))
            .collect();
        terms.learn(&words.join(" ")).0
    };
    let marks = marked(|_| true, terms);
    let clear = marked(|word| !word.bytes().all(|b| b.is_ascii_digit()), terms);
    let (mut all, more) = terms.learn(one.label);
    all.extend(heads.iter().flatten().chain(&more));
    all.retain(|id| !terms.is_filler(*id) && !title.contains(id));
    ChoiceWords {
        heads,
        marks,
        clear,
        all,
    }
}
