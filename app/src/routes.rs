//! Addresses, in the fragment: they work from any folder of a static host, in a frame, and with back and forward.

use leptos::prelude::*;

/// A page of a job, in the order of the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Page {
    /// Levels, depth, what stands in the well.
    #[default]
    Water,
    /// Pump and motor.
    Pump,
    /// The supply and the ways to run the motor.
    Power,
    /// The lead.
    Cable,
    /// Money.
    Cost,
    /// The day of the start.
    Startup,
    /// What is printed and handed on.
    Papers,
}

impl Page {
    /// Every page, in order.
    pub const ALL: [Self; 7] =
        [Self::Water, Self::Pump, Self::Power, Self::Cable, Self::Cost, Self::Startup, Self::Papers];

    /// Its word in an address; the same in every language, so that a link can be passed on.
    #[must_use]
    pub fn slug(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::Pump => "pump",
            Self::Power => "power",
            Self::Cable => "cable",
            Self::Cost => "cost",
            Self::Startup => "start-up",
            Self::Papers => "papers",
        }
    }

    /// The page before.
    #[must_use]
    pub fn before(self) -> Option<Self> {
        (self as usize).checked_sub(1).and_then(|place| Self::ALL.get(place)).copied()
    }

    /// The page after.
    #[must_use]
    pub fn after(self) -> Option<Self> {
        Self::ALL.get(self as usize + 1).copied()
    }
}

/// What an address asks for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Route {
    /// The list of jobs.
    Jobs,
    /// A page of a job, by the job's id.
    Job(String, Page),
    /// A job for the customer's side of the table, by its id.
    Show(String),
    /// A step of the lesson, counted from 1; 0 is the one where the learner stood.
    Lesson(usize),
    /// The gallery of parts.
    Gallery,
    /// The list, with the letters of a job that came by a link.
    Add(String),
}

impl Route {
    /// The route of a query and a fragment, each with or without its sign. A page that is not known is the first.
    #[must_use]
    pub fn parse(query: &str, fragment: &str) -> Self {
        if query.trim_start_matches('?') == "gallery" {
            return Self::Gallery;
        }
        let path = fragment.trim_start_matches('#').trim_matches('/');
        match path.split_once('/') {
            Some(("job", rest)) if !rest.is_empty() => {
                let (id, slug) = rest.split_once('/').unwrap_or((rest, ""));
                let page = Page::ALL.into_iter().find(|page| page.slug() == slug).unwrap_or_default();
                Self::Job(id.to_owned(), page)
            }
            Some(("show", id)) if !id.is_empty() => Self::Show(id.to_owned()),
            Some(("add", letters)) => Self::Add(letters.to_owned()),
            Some(("lesson", step)) => Self::Lesson(step.parse().unwrap_or_default()),
            None if path == "lesson" => Self::Lesson(0),
            _ => Self::Jobs,
        }
    }

    /// The address of the route, to be followed from any page but the gallery.
    #[must_use]
    pub fn href(&self) -> String {
        match self {
            Self::Jobs => "#/".to_owned(),
            Self::Job(id, page) => format!("#/job/{id}/{}", page.slug()),
            Self::Show(id) => format!("#/show/{id}"),
            Self::Lesson(0) => "#/lesson".to_owned(),
            Self::Lesson(step) => format!("#/lesson/{step}"),
            Self::Gallery => "?gallery".to_owned(),
            Self::Add(letters) => format!("#/add/{letters}"),
        }
    }

    /// The route of the present address.
    #[must_use]
    pub fn current() -> Self {
        let location = window().location();
        Self::parse(&location.search().unwrap_or_default(), &location.hash().unwrap_or_default())
    }

    /// The whole address of the route, for who opens it elsewhere.
    #[must_use]
    pub fn address(&self) -> String {
        let location = window().location();
        let [origin, path] = [location.origin(), location.pathname()].map(Result::unwrap_or_default);
        format!("{origin}{path}{}", self.href())
    }

    /// Takes the place of the present address, which can't be gone back to.
    pub fn take_place(&self) {
        let _ = window().location().replace(&self.href());
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
        let jobs = Page::ALL.map(|page| Route::Job("k3f-0a".into(), page));
        for route in jobs.into_iter().chain([Route::Jobs, Route::Show("k3f-0a".into()), Route::Add("1.AbC-_".into())]) {
            assert_eq!(Route::parse("", &route.href()), route);
        }
        assert_eq!(Route::parse(&Route::Gallery.href(), "#/"), Route::Gallery);
        for step in [0, 1, 10] {
            assert_eq!(Route::parse("", &Route::Lesson(step).href()), Route::Lesson(step));
        }
        assert_eq!(Route::parse("", "#/lesson/last"), Route::Lesson(0));
        for odd in ["", "#", "#/", "#/job/", "#/nowhere/x", "#job"] {
            assert_eq!(Route::parse("", odd), Route::Jobs, "{odd}");
        }
        for short in ["#/job/k3f", "#/job/k3f/", "#/job/k3f/tomorrow"] {
            assert_eq!(Route::parse("?a=b", short), Route::Job("k3f".into(), Page::Water), "{short}");
        }
    }

    #[test]
    fn pages_follow_one_another() {
        assert_eq!(Page::Water.before(), None);
        assert_eq!(Page::Papers.after(), None);
        for pair in Page::ALL.windows(2) {
            assert_eq!((pair[0].after(), pair[1].before()), (Some(pair[1]), Some(pair[0])));
        }
    }
}
