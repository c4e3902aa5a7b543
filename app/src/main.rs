//! skeleton
use leptos::prelude::*;
fn main() { leptos::mount::mount_to_body(|| view! { <main><h1>"Wellwright"</h1></main> }) }
