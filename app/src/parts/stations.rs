//! The seven pages of a job as stations on a line, each with its answer; on a phone a dock with the page before and after.

use super::icon::Icon;
use super::menu::Menu;
use crate::locale::words;
use crate::routes::Page;
use leptos::prelude::*;

/// How a station stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Its figures give an answer.
    Done,
    /// Figures are missing or wrong.
    Open,
    /// A figure is out of range or no number.
    Wrong,
    /// A finding says stop.
    Stop,
}

/// A station: how it stands and its answer in a few words.
#[derive(Debug, Clone, PartialEq)]
pub struct Station {
    /// How it stands.
    pub standing: Standing,
    /// Its answer.
    pub says: String,
}

/// The line of stations, for wide screens.
#[component]
pub fn Traverse(
    /// The stations, in the order of the pages.
    stations: Memo<[Station; 7]>,
    /// The page that is shown.
    here: Memo<Page>,
    /// Address of a page.
    href: Callback<Page, String>,
) -> impl IntoView {
    view! {
        <nav class="traverse" aria-label=words().frame.pages_label>
            <ol><Each stations=stations here=here href=href /></ol>
        </nav>
    }
}

/// Every station as an item of a list.
#[component]
fn Each(stations: Memo<[Station; 7]>, here: Memo<Page>, href: Callback<Page, String>) -> impl IntoView {
    Page::ALL
        .map(|page| {
            let station = Memo::new(move |_| stations.with(|stations| stations[page as usize].clone()));
            let current = move || here.get() == page;
            view! {
                <li class="station" data-standing=move || name(station.with(|station| station.standing))>
                    <a href=href.run(page) aria-current=move || current().then_some("page")>
                        <svg class="icon" aria-hidden="true">
                            <use href=move || format!("#s-{}", mark(station.with(|station| station.standing), current())) />
                        </svg>
                        <b>{words().frame.pages[page as usize]}</b>
                        <span class="says">{move || station.with(|station| station.says.clone())}</span>
                    </a>
                </li>
            }
        })
        .collect_view()
}

/// The dock at the foot of a phone: the page before, all pages, the page after.
#[component]
pub fn Dock(
    /// The stations, in the order of the pages.
    stations: Memo<[Station; 7]>,
    /// The page that is shown.
    here: Memo<Page>,
    /// Address of a page.
    href: Callback<Page, String>,
    /// Address of the list of jobs.
    list: String,
) -> impl IntoView {
    let frame = &words().frame;
    let title = move || frame.pages[here.get() as usize];
    let before = move || match here.get().before() {
        Some(page) => (href.run(page), frame.pages[page as usize]),
        None => (list.clone(), frame.jobs),
    };
    let after = move || here.get().after().map(|page| (href.run(page), frame.pages[page as usize]));
    view! {
        <nav class="dock" aria-label=frame.pages_label>
            {move || {
                let (href, name) = before();
                view! { <a href=href aria-label=(frame.back_to)(name)><Icon name="back" />{name}</a> }
            }}
            <div class="middle">
                <b aria-hidden="true">{title}</b>
                <Dots stations=stations here=here />
                <Menu label=Signal::derive(move || format!("{}: {}", frame.pages_label, title())) closes=true>
                    <ol><Each stations=stations here=here href=href /></ol>
                </Menu>
            </div>
            {move || {
                let (href, name) = after().unwrap_or_default();
                (!name.is_empty()).then(|| view! {
                    <a class="after" href=href aria-label=(frame.on_to)(name)>{name}<Icon name="on" /></a>
                })
            }}
        </nav>
    }
}

/// The stations as small marks on a line.
#[component]
fn Dots(stations: Memo<[Station; 7]>, here: Memo<Page>) -> impl IntoView {
    let dot = move |page: Page| {
        let standing = move || stations.with(|stations| stations[page as usize].standing);
        let x = 8 + 21 * page as usize;
        view! {
            <use
                data-standing=move || name(standing())
                href=move || format!("#s-{}", mark(standing(), here.get() == page))
                x=x - 6
                y="1"
                width="12"
                height="12"
            />
        }
    };
    view! {
        <svg class="dots" aria-hidden="true" width="142" height="14" viewBox="0 0 142 14">
            <path class="line" d="M8 7h126" />
            {Page::ALL.map(dot).collect_view()}
        </svg>
    }
}

/// Name of a mark in the sprite. A stop shows even on the page itself.
fn mark(standing: Standing, here: bool) -> &'static str {
    match (standing, here) {
        (Standing::Stop, _) => "stop",
        (Standing::Wrong, _) => "wrong",
        (_, true) => "here",
        (standing, false) => name(standing),
    }
}

fn name(standing: Standing) -> &'static str {
    match standing {
        Standing::Done => "done",
        Standing::Open => "open",
        Standing::Wrong => "wrong",
        Standing::Stop => "stop",
    }
}
