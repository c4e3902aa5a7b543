//! Passing the job on: a link that carries it whole, and the same as codes to photograph.

use crate::locale::words;
use crate::pages::job::Desk;
use crate::parts::group::Fold;
use crate::parts::qr::Qr;
use crate::platform::{clipboard, share};
use crate::routes::Route;
use crate::state::{Sheet, app};
use leptos::prelude::*;
use wellwright_core::passing::{self, Code};

/// Most digits of one code without an address: more would be squares too small for a telephone's screen. A code of 97
/// squares a side holds 2061 (ISO/IEC 18004, version 20, level L).
const MOST: usize = 2_000;
/// Digits that a letter of the address takes the room of: 8 bits against 10 for three digits.
const LETTER: f64 = 2.4;
/// Letters that stand ahead of the digits of a part of a series.
const AROUND: usize = 22;

/// Passing the job on.
#[component]
pub fn PassOn(desk: Desk) -> impl IntoView {
    let app = app();
    let words = &words().passing;
    let open = desk.open;
    let letters = Memo::new(move |_| open.sheet.with(|sheet| passing::write(&sheet.job)));
    let drafts = Memo::new(move |_| open.sheet.with(|sheet: &Sheet| !sheet.drafts.is_empty()));
    let link = move || Route::Add(letters.get_untracked()).address();
    let codes = Memo::new(move |_| codes(&letters.get()));
    let count = Memo::new(move |_| codes.with(Vec::len));
    let series = Memo::new(move |_| count.get() > 1);
    let place = RwSignal::new(0_usize);
    let at = Memo::new(move |_| place.get().min(count.get().saturating_sub(1)));
    let is_last = Memo::new(move |_| at.get() + 1 >= count.get());
    let code = move || codes.with(|codes| codes.get(at.get()).cloned());
    let copy = move |_| {
        clipboard::copy(&link(), move |done| {
            let frame = &crate::locale::words().frame;
            app.tell(if done { frame.copied } else { frame.not_copied }.to_owned());
        });
    };
    let send = move |_| share::link(&open.sheet.with_untracked(|sheet| sheet.job.name.clone()), &link());
    let turn = move |by: isize| place.set(at.get_untracked().saturating_add_signed(by).min(count.get_untracked() - 1));
    let label =
        move || if count.get() > 1 { (words.code_of)(at.get() + 1, count.get()) } else { words.code.to_owned() };
    view! {
        <Fold title=words.pass_on note=Signal::stored(words.pass_on_note.to_owned()) must=Signal::stored(false)>
            <p class="note">{words.hint}</p>
            <Show when=move || drafts.get()><p class="note">{words.drafts}</p></Show>
            <div class="row">
                <button class="btn" on:click=copy>{words.copy_link}</button>
                <Show when=share::can><button class="btn" on:click=send>{words.share}</button></Show>
            </div>
            <Show when=move || count.get() != 0 fallback=move || view! { <p class="note">{words.too_large}</p> }>
                <figure class="code">
                    {move || code().map(|code| view! { <Qr code=code label=label() /> })}
                    <figcaption>
                        <Show when=move || series.get()>
                            <div class="row">
                                <button class="btn" disabled=move || at.get() == 0 on:click=move |_| turn(-1)>{words.code_before}</button>
                                <b>{label}</b>
                                <button class="btn" disabled=move || is_last.get() on:click=move |_| turn(1)>{words.code_after}</button>
                            </div>
                            <p class="note">{words.series_hint}</p>
                        </Show>
                        <p class="note">{words.code_hint}</p>
                    </figcaption>
                </figure>
            </Show>
        </Fold>
    }
}

/// The codes of a job: one, or a series; none where it would be too long.
fn codes(letters: &str) -> Vec<Code> {
    let of = |letters: String| passing::code(&Route::Add(letters).address());
    let Some(digits) = passing::as_digits(letters) else { return Vec::new() };
    let ahead = Route::Add(String::new()).address().len() + AROUND;
    let room = MOST.saturating_sub((ahead as f64 * LETTER) as usize);
    if digits.len() <= room {
        return of(digits).into_iter().collect();
    }
    let parts = passing::split(&digits, room).unwrap_or_default();
    parts.iter().filter_map(|part| of(part.to_string())).collect()
}
