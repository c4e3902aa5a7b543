//! The browser: the only users of its storage, clipboard, files, focus and clock.

pub mod clipboard;
pub mod clock;
mod crash;
pub mod device;
pub mod files;
pub mod first;
pub mod focus;
pub mod forms;
pub mod frame;
pub mod full_screen;
pub mod language;
pub mod pictures;
pub mod share;
pub mod storage;
pub mod theme;
pub mod wake;

pub use crash::note_failures;
