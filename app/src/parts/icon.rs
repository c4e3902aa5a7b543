//! Small drawn marks, kept once in a sprite and used by name.

use leptos::prelude::*;

/// The marks, out of sight; put once at the top of the page. Lines are drawn by the class `mark`.
#[component]
pub fn Sprite() -> impl IntoView {
    view! {
        <svg class="sprite" aria-hidden="true">
            <symbol id="i-back" viewBox="0 0 18 18"><path d="M11.5 3 5.5 9l6 6" class="mark" /></symbol>
            <symbol id="i-on" viewBox="0 0 18 18"><path d="m6.500 3 6 6-6 6" class="mark" /></symbol>
            <symbol id="i-undo" viewBox="0 0 20 20">
                <path d="M8 4 3.5 8.5 8 13M4 8.5h7.5a4.5 4 0 0 1 0 8H8" class="mark" />
            </symbol>
            <symbol id="i-redo" viewBox="0 0 20 20">
                <path d="m12 4 4.500 4.500L12 13M16 8.500H8.500a4.500 4 0 0 0 0 8H12" class="mark" />
            </symbol>
            <symbol id="i-more" viewBox="0 0 20 20"><path d="M3 5h14M3 10h14M3 15h14" class="mark" /></symbol>
            <symbol id="i-close" viewBox="0 0 20 20"><path d="m4 4 12 12M16 4 4 16" class="mark" /></symbol>
            <symbol id="i-ok" viewBox="0 0 18 18">
                <circle cx="9" cy="9" r="7.2" class="mark" /><path d="m5.500 9.200 2.500 2.500 4.500-5" class="mark" />
            </symbol>
            <symbol id="i-note" viewBox="0 0 18 18">
                <circle cx="9" cy="9" r="7.2" class="mark" /><path d="M9 8v5M9 4.800v1.600" class="mark" />
            </symbol>
            <symbol id="i-caution" viewBox="0 0 18 18">
                <path d="M9 1.800 17 16H1z" class="mark" /><path d="M9 6.800v4.400M9 12.700v1.500" class="mark" />
            </symbol>
            <symbol id="i-stop" viewBox="0 0 18 18">
                <path d="M5.600 1h6.800L17 5.600v6.800L12.400 17H5.600L1 12.400V5.600z" class="mark" /><path d="M4.800 9h8.400" class="mark" />
            </symbol>
            <symbol id="i-error" viewBox="0 0 18 18">
                <path d="M9 1.500 16.500 9 9 16.500 1.500 9z" class="mark" /><path d="M9 5v5M9 11.500v1.600" class="mark" />
            </symbol>
            <symbol id="i-up" viewBox="0 0 12 12"><path d="M6 10V2M2.500 5.500 6 2l3.500 3.500" class="mark" /></symbol>
            <symbol id="i-down" viewBox="0 0 12 12"><path d="M6 2v8M2.500 6.500 6 10l3.500-3.500" class="mark" /></symbol>
            <symbol id="i-file" viewBox="0 0 20 20">
                <path d="M5 2h7l4 4v12H5zM12 2v4h4" class="mark" />
            </symbol>
            <symbol id="s-done" viewBox="0 0 18 18">
                <circle cx="9" cy="9" r="7" class="mark" /><circle cx="9" cy="9" r="3.2" class="solid" />
            </symbol>
            <symbol id="s-here" viewBox="0 0 18 18">
                <path d="M9 2 16.500 15.500h-15z" class="mark" /><circle cx="9" cy="11.200" r="1.8" class="solid" />
            </symbol>
            <symbol id="s-open" viewBox="0 0 18 18"><circle cx="9" cy="9" r="7" class="mark" /></symbol>
            <symbol id="s-wrong" viewBox="0 0 18 18">
                <path d="M9 1.500 16.500 9 9 16.500 1.500 9z" class="mark" /><path d="M9 5v5M9 11.500v1.600" class="mark" />
            </symbol>
            <symbol id="s-stop" viewBox="0 0 18 18">
                <path d="M5.600 1h6.800L17 5.600v6.800L12.400 17H5.600L1 12.400V5.600z" class="solid" /><path d="M5 9h8" class="bar-mark" />
            </symbol>
        </svg>
    }
}

/// A mark by its name; words beside it say what it means.
#[component]
pub fn Icon(
    /// Name in the sprite, as `back`.
    name: &'static str,
) -> impl IntoView {
    view! {
        <svg class="icon" aria-hidden="true"><use href=format!("#i-{name}") /></svg>
    }
}
