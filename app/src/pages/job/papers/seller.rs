//! The seller's own on the customer's page: name, lines, picture. It stays on this device.

use crate::locale::words;
use crate::parts::group::Fold;
use crate::platform::{files, pictures};
use crate::state::{Seller, app};
use leptos::prelude::*;

/// The form.
#[component]
pub fn Form() -> impl IntoView {
    let app = app();
    let words = &words().papers;
    let seller = app.seller;
    let keep = move |change: &dyn Fn(&mut Seller)| {
        if !app.sell_as(|seller| change(seller)) {
            app.tell(words.seller_not_kept.to_owned());
        }
    };
    let picture = move |event: leptos::ev::Event| {
        let Some(file) = files::chosen(&event).into_iter().next() else { return };
        pictures::shrink(file, move |small| match small {
            Some(small) => keep(&|seller| seller.picture.clone_from(&small)),
            None => app.tell(words.not_a_picture.to_owned()),
        });
    };
    let has_picture = Memo::new(move |_| seller.with(|seller| !seller.picture.is_empty()));
    let note = Signal::derive(move || seller.with(|seller| seller.name.clone()));
    view! {
        <Fold title=words.seller note=note must=Signal::stored(false)>
            <p class="note">{words.seller_hint}</p>
            <div class="seller-form">
                <label for="seller.name">{words.seller_name}</label>
                <input
                    id="seller.name"
                    autocomplete="organization"
                    maxlength=Seller::MOST_NAME
                    prop:value=move || seller.with(|seller| seller.name.clone())
                    on:input=move |event| {
                        let text = event_target_value(&event);
                        keep(&|seller| seller.name.clone_from(&text));
                    }
                />
                <label for="seller.lines">{words.seller_lines}</label>
                <textarea
                    id="seller.lines"
                    rows="3"
                    maxlength=Seller::MOST_LINES
                    prop:value=move || seller.with(|seller| seller.lines.clone())
                    on:input=move |event| {
                        let text = event_target_value(&event);
                        keep(&|seller| seller.lines.clone_from(&text));
                    }
                ></textarea>
                <div class="row">
                    <label class="drop">
                        <input type="file" accept="image/*" on:change=picture />
                        <span class="btn">{words.seller_picture}</span>
                    </label>
                    <Show when=move || has_picture.get()>
                        <button class="btn quiet" on:click=move |_| keep(&|seller| seller.picture.clear())>{words.seller_no_picture}</button>
                    </Show>
                </div>
            </div>
        </Fold>
    }
}
