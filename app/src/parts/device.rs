//! What the browser keeps of the page: a newer build that waits, and how it opens without a network.

use crate::locale::words;
use crate::platform::device;
use leptos::prelude::*;

/// A line over every page while a newer build waits; nothing changes until it is wanted.
#[component]
pub fn NewerBuild() -> impl IntoView {
    let device = device::follow();
    let later = RwSignal::new(false);
    view! {
        <div role="status">
            <Show when=move || device.get().newer && !later.get()>
                <p class="device newer">
                    <span>{words().device.newer}</span>
                    <span class="row">
                        <button class="btn" on:click=move |_| device::take_newer()>{words().device.take_newer}</button>
                        <button class="btn quiet" on:click=move |_| later.set(true)>{words().device.later}</button>
                    </span>
                </p>
            </Show>
        </div>
    }
}

/// Whether the page opens without a network, and the way to the home screen.
#[component]
pub fn OnDevice() -> impl IntoView {
    let device = device::follow();
    view! {
        <div class="device">
            <Show when=move || device.get().kept><span>{words().device.kept}</span></Show>
            <span>{move || if device.get().lasting { words().device.lasting } else { words().device.not_lasting }}</span>
            <Show when=move || device.get().installable>
                <button class="btn" on:click=move |_| device::install()>{words().device.install}</button>
            </Show>
            <Show when=move || device.get().by_hand><span>{words().device.by_hand}</span></Show>
        </div>
    }
}
