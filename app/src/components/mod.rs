//! The visual parts, one file each.

mod answer_view;
mod bar;
mod call_view;
mod choice_row;
mod field;
mod fold;
mod live;
mod notices;
mod pad;
mod powers;
mod record_notice;
mod result_line;
mod rows_editor;
mod select;
mod share;
mod table_view;
mod top;

pub use answer_view::AnswerView;
pub use bar::{Bar, Panel};
pub use call_view::CallView;
pub use choice_row::ChoiceRow;
pub use field::{FieldView, SheetRef, sentence};
pub use fold::Fold;
pub use live::Live;
pub use notices::Notices;
pub use pad::{Pad, PadMode, keys_for};
pub use powers::Powers;
pub use record_notice::RecordNotice;
pub use result_line::ResultLine;
pub use rows_editor::RowsEditor;
pub use select::Select;
pub use share::SharePanel;
pub use table_view::TableView;
pub use top::Top;
