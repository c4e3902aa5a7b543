//! The browser: the only users of its storage, clipboard and clock.

pub mod clipboard;
pub mod storage;
pub mod theme;
