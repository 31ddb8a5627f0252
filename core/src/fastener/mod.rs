//! See the room's list in DEVELOPERS.md.
