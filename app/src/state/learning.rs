//! The lesson as a learner goes through it: the numbers, the step, the answers.

use super::{App, Edit, Sheet};
use crate::platform::storage::{self, Saved};
use leptos::prelude::*;
use std::collections::BTreeMap;
use wellwright_core::papers::{LessonStep, example};

/// How far a learner went.
#[derive(Debug, Clone, PartialEq)]
pub struct Progress {
    /// The learner's numbers, as a job of a motor on a lead.
    pub sheet: Sheet,
    /// The step, counted from 1.
    pub step: usize,
    /// The answers that were chosen, by their step from 1 and their key.
    pub answers: BTreeMap<usize, u8>,
}

impl Default for Progress {
    fn default() -> Self {
        Self { sheet: Sheet::of(example()), step: 1, answers: BTreeMap::new() }
    }
}

impl Progress {
    /// Whether the numbers are those of the example.
    #[must_use]
    pub fn is_example(&self) -> bool {
        self.sheet == Sheet::of(example())
    }
}

/// What the page holds of the lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Learning {
    /// How far it went.
    pub progress: Progress,
    /// Whether that is kept.
    pub saved: Saved,
    /// What stands in its place and can't be read.
    pub unread: Option<String>,
}

impl Learning {
    /// A lesson from its beginning.
    #[must_use]
    pub fn anew(saved: Saved, unread: Option<String>) -> Self {
        Self { progress: Progress::default(), saved, unread }
    }
}

/// The step of an address, within those that there are.
#[must_use]
pub fn within(step: usize) -> usize {
    step.clamp(1, LessonStep::ALL.len())
}

impl App {
    /// Changes how far the lesson went, and keeps it.
    pub fn learn(self, change: impl FnOnce(&mut Progress)) {
        self.learning.update(|learning| {
            let before = learning.progress.clone();
            change(&mut learning.progress);
            if learning.progress != before {
                learning.saved = storage::save_lesson(learning);
            }
        });
    }

    /// Changes the learner's numbers.
    pub fn edit_lesson(self, edit: Edit) {
        self.learn(|progress| progress.sheet = edit.apply(std::mem::take(&mut progress.sheet)));
    }

    /// Takes what another tab kept, unless this one could not keep its own.
    pub fn reload_lesson(self) {
        if self.learning.with_untracked(|learning| learning.saved) == Saved::Yes {
            let now = storage::load_lesson();
            if self.learning.with_untracked(|before| *before != now) {
                self.learning.set(now);
            }
        }
    }
}
