//! What stands around a paper: the seller at its head, at its foot the job, who made it, the day.

use crate::locale::{day_of, words};
use crate::pages::job::Desk;
use crate::platform::clock;
use crate::state::app;
use leptos::prelude::*;

/// The seller, as far as anything of one was entered.
#[component]
pub fn Seller() -> impl IntoView {
    let seller = app().seller;
    let some = Memo::new(move |_| seller.with(|seller| *seller != crate::state::Seller::default()));
    let picture = move || seller.with(|seller| Some(seller.picture.clone()).filter(|picture| !picture.is_empty()));
    view! {
        <Show when=move || some.get()>
            <address class="seller">
                {move || picture().map(|picture| view! { <img src=picture alt="" /> })}
                <b>{move || seller.with(|seller| seller.name.clone())}</b>
                <span>{move || seller.with(|seller| seller.lines.clone())}</span>
            </address>
        </Show>
    }
}

/// The foot of a paper.
#[component]
pub fn Foot(desk: Desk, paper: &'static str) -> impl IntoView {
    let words = words();
    let papers = &words.papers;
    let open = desk.open;
    let name = move || open.sheet.with(|sheet| sheet.job.name.clone());
    let note = move || {
        open.sheet.with(|sheet| if sheet.job.demo { words.list.demo_note.to_owned() } else { sheet.job.note.clone() })
    };
    let seller = move || app().seller.with(|seller| seller.name.clone());
    let now = clock::now();
    let day = day_of(now.split('T').next().unwrap_or(&now));
    view! {
        <footer class="title-block">
            <div><small>{papers.job}</small><b>{name}</b><small>{note}</small></div>
            <div><small>{papers.made_by}</small><span>{seller}</span></div>
            <div><small>{papers.day}</small><span>{day}</span></div>
            <div><small>{papers.paper}</small><span>{paper}</span></div>
        </footer>
    }
}
