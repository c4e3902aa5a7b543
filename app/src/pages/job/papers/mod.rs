//! Papers: what is left behind, what is taken along, what is checked; and the ways to hand the job on.

mod customer;
mod engineer;
mod files;
mod frame;
mod installer;
mod lists;
mod pass;
mod seller;

use super::{Desk, Heading};
use crate::locale::words;
use crate::parts::segmented::Segmented;
use crate::platform::files as device;
use crate::routes::Page;
use crate::state::{PaperSize, app};
use leptos::prelude::*;

/// Who a paper is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Paper {
    /// Who pays: one page.
    #[default]
    Customer,
    /// Who does the work.
    Installer,
    /// Who checks it.
    Engineer,
}

/// Whether the readings of the installer's pages are those that were taken, or lines to write on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Readings {
    /// As they were taken.
    #[default]
    Taken,
    /// Lines to write on.
    Blank,
}

/// The page.
#[component]
pub fn Papers(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let app = app();
    let words = &words().papers;
    let none = move || desk.open.answer.with(|answer| answer.here.is_none());
    let size = Signal::derive(move || app.settings.get().paper);
    let sheets = move || match desk.paper.get() {
        Paper::Customer => view! { <customer::Customer desk=desk /> }.into_any(),
        Paper::Installer => view! { <installer::Installer desk=desk /> }.into_any(),
        Paper::Engineer => view! { <engineer::Engineer desk=desk /> }.into_any(),
    };
    view! {
        <article class="papers">
            <div class="screen">
                <Heading page=Page::Papers desk=desk />
                <div class="tools">
                    <Segmented
                        label=words.which
                        name="paper".to_owned()
                        options=vec![
                            (Paper::Customer, words.customer),
                            (Paper::Installer, words.installer),
                            (Paper::Engineer, words.engineer),
                        ]
                        value=desk.paper.into()
                        on_choose=Callback::new(move |chosen| desk.paper.set(chosen))
                    />
                    <Segmented
                        label=words.size
                        name="paper-size".to_owned()
                        options=vec![(PaperSize::Letter, PaperSize::Letter.name()), (PaperSize::A4, PaperSize::A4.name())]
                        value=size
                        on_choose=Callback::new(move |chosen| app.set(|settings| settings.paper = chosen))
                    />
                    <Show when=move || desk.paper.get() == Paper::Installer>
                        <Segmented
                            label=words.readings
                            name="paper-readings".to_owned()
                            options=vec![(Readings::Taken, words.as_taken), (Readings::Blank, words.blank)]
                            value=desk.blank.into()
                            on_choose=Callback::new(move |chosen| desk.blank.set(chosen))
                        />
                    </Show>
                    <button class="btn act" disabled=none on:click=move |_| device::print()>{words.print}</button>
                </div>
                <div class="hands">
                    <pass::PassOn desk=desk />
                    <files::Files desk=desk />
                    <seller::Form />
                </div>
            </div>
            <section class="paper" aria-label=words.preview data-size=move || size.get().name()>
                <Show
                    when=move || !none()
                    fallback=move || view! {
                        <p class="note">
                            {move || desk.open.answer.with(|answer| super::headline::sentence(answer, desk.open.system.get(), desk.basis.get()))}
                        </p>
                    }
                >
                    {sheets}
                </Show>
            </section>
        </article>
    }
}
