//! The pages, one file each.

mod about;
mod answer;
mod home;
mod kept;
mod paper;
mod proving;
mod proving_form;
mod question;
mod shop;
mod shop_link;

pub use about::About;
pub use answer::AnswerPage;
pub use home::Home;
pub use kept::KeptPage;
pub use proving::ProvingPage;
pub use question::Question;
pub use shop::ShopPage;
pub use shop_link::ShopLink;
