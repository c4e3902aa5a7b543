//! Addresses, in the fragment: they work from any folder of a static host, in a frame, and with back and forward.

use leptos::prelude::*;

/// A page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Route {
    /// The list of jobs.
    Jobs,
    /// One job, by its id.
    Job(String),
}

impl Route {
    /// The route of a fragment, with or without its `#`.
    #[must_use]
    pub fn parse(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_matches('/');
        match path.split_once('/') {
            Some(("job", id)) if !id.is_empty() => Self::Job(id.to_owned()),
            _ => Self::Jobs,
        }
    }

    /// The fragment of the route.
    #[must_use]
    pub fn href(&self) -> String {
        match self {
            Self::Jobs => "#/".to_owned(),
            Self::Job(id) => format!("#/job/{id}"),
        }
    }

    /// The route of the present address.
    #[must_use]
    pub fn current() -> Self {
        Self::parse(&window().location().hash().unwrap_or_default())
    }

    /// Goes to the route; the address changes and the page follows it.
    pub fn go(&self) {
        let _ = window().location().set_hash(&self.href());
    }
}

/// Keeps a signal on the present address.
pub fn follow(route: RwSignal<Route>) {
    let handle = window_event_listener_untyped("hashchange", move |_| route.set(Route::current()));
    on_cleanup(move || handle.remove());
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_read_back_as_written() {
        for route in [Route::Jobs, Route::Job("k3f".into())] {
            assert_eq!(Route::parse(&route.href()), route);
        }
        for odd in ["", "#", "#/", "#/job/", "#/nowhere/x", "#job"] {
            assert_eq!(Route::parse(odd), Route::Jobs, "{odd}");
        }
    }
}
