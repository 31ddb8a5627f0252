//! The pages, one file each.

mod about;
mod answer;
mod home;
mod kept;
mod paper;
mod question;
mod shop;

pub use about::About;
pub use answer::Answer;
pub use home::Home;
pub use kept::KeptPage;
pub use question::Question;
pub use shop::ShopPage;
