//! Which sheets are there? Rooms by domain, each with its list; the whole list is theirs, one after another.

use crate::sheet::Sheet;

mod cutting;
mod joints;
mod machine;
mod sizes;

/// The rooms, in the order in which home shows what they hold.
const ROOMS: [&[&Sheet]; 4] = [sizes::ALL, joints::ALL, machine::ALL, cutting::ALL];

#[allow(
    clippy::indexing_slicing,
    reason = "reckoned by the compiler, which refuses a step too far"
)]
const COUNT: usize = {
    let (mut count, mut room) = (0, 0);
    while room < ROOMS.len() {
        count += ROOMS[room].len();
        room += 1;
    }
    count
};

#[allow(
    clippy::indexing_slicing,
    reason = "reckoned by the compiler, which refuses a step too far"
)]
static LIST: [&Sheet; COUNT] = {
    let mut list = [ROOMS[0][0]; COUNT];
    let (mut at, mut room) = (0, 0);
    while room < ROOMS.len() {
        let mut one = 0;
        while one < ROOMS[room].len() {
            list[at] = ROOMS[room][one];
            at += 1;
            one += 1;
        }
        room += 1;
    }
    list
};

/// Every sheet.
pub static ALL: &[&Sheet] = &LIST;

/// A sheet by id.
pub fn by_id(id: &str) -> Option<&'static Sheet> {
    ALL.iter().find(|sheet| sheet.id == id).copied()
}
