//! What follows from a depth that moves under a finger is worked out now and then, so that the picture keeps up with the
//! finger on a slow phone too; the last depth is worked out in any case.

use crate::platform::clock::milliseconds;
use core::time::Duration;
use leptos::prelude::*;
use wellwright_core::quantity::Entry;

/// Least time between two of them, in milliseconds, and how often one's own time it is at least.
const EACH: f64 = 60.0;
const TIMES: f64 = 10.0;

/// Calls that are made now and then.
#[derive(Clone, Copy)]
pub struct Pace {
    call: Callback<Entry>,
    /// Moment from which on the next may be made; none while one is being worked out.
    next: StoredValue<Option<f64>>,
    /// What waits for it.
    waits: StoredValue<Option<Entry>>,
    timer: StoredValue<Option<TimeoutHandle>>,
}

impl Pace {
    /// Calls of this.
    pub fn of(call: Callback<Entry>) -> Self {
        let none = || StoredValue::new(None);
        Self { call, next: StoredValue::new(Some(f64::NEG_INFINITY)), waits: StoredValue::new(None), timer: none() }
    }

    /// Asks for a call, now or as soon as it is time for one; of several that wait the last is made.
    pub fn ask(self, entry: Entry) {
        self.waits.set_value(Some(entry));
        self.go();
    }

    /// Makes the call that waits.
    pub fn finish(self) {
        if let Some(Some(timer)) = self.timer.try_update_value(Option::take) {
            timer.clear();
        }
        if let Some(Some(entry)) = self.waits.try_update_value(Option::take) {
            self.call.run(entry);
        }
    }

    fn go(self) {
        if self.timer.try_with_value(Option::is_some) != Some(false) {
            return;
        }
        let now = milliseconds();
        let Some(Some(next)) = self.next.try_get_value() else { return };
        if now < next {
            self.later(next - now, move || self.go());
            return;
        }
        let Some(Some(entry)) = self.waits.try_update_value(Option::take) else { return };
        self.next.set_value(None);
        self.call.run(entry);
        // What follows is worked out before the browser comes back to a timer.
        self.later(0.0, move || {
            let done = milliseconds();
            let _ = self.next.try_set_value(Some(done + (TIMES * (done - now)).max(EACH)));
            self.go();
        });
    }

    fn later(self, wait: f64, then: impl Fn() + 'static) {
        let run = move || {
            let _ = self.timer.try_set_value(None);
            then();
        };
        let timer = set_timeout_with_handle(run, Duration::from_secs_f64(wait / 1000.0)).ok();
        self.timer.set_value(timer);
    }
}
