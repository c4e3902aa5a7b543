//! Pictures: one that was chosen made small enough to keep, a drawing of the page as a file.

use leptos::prelude::{document, window};
use leptos::task::spawn_local;
use std::fmt::Write as _;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CanvasRenderingContext2d, Element, File, HtmlCanvasElement, HtmlImageElement, Url};

/// Widest and highest that a kept picture is, in pixels: sharp on paper at some inches.
const LARGEST: (f64, f64) = (600.0, 240.0);
/// Most letters of a kept picture.
const MOST: usize = 300_000;

/// Loads a picture from an address; nothing where it is none.
async fn loaded(address: &str) -> Option<HtmlImageElement> {
    let image = HtmlImageElement::new().ok()?;
    image.set_src(address);
    JsFuture::from(image.decode()).await.ok()?;
    Some(image)
}

/// A picture drawn on a canvas of this size.
fn drawn(image: &HtmlImageElement, (width, height): (f64, f64)) -> Option<HtmlCanvasElement> {
    let canvas: HtmlCanvasElement = document().create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width.round().max(1.0) as u32);
    canvas.set_height(height.round().max(1.0) as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    context.draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height).ok()?;
    Some(canvas)
}

/// Makes a chosen picture small enough to keep, as a data address; nothing where it can't be read.
pub fn shrink(file: File, done: impl FnOnce(Option<String>) + 'static) {
    spawn_local(async move {
        let Ok(address) = Url::create_object_url_with_blob(&file) else { return done(None) };
        let image = loaded(&address).await;
        let small = image.and_then(|image| {
            let (width, height) = (f64::from(image.natural_width()), f64::from(image.natural_height()));
            let scale = (LARGEST.0 / width).min(LARGEST.1 / height).min(1.0);
            let canvas = drawn(&image, (width * scale, height * scale))?;
            // A drawing keeps its clear ground; a photograph is smaller without one.
            let png = canvas.to_data_url().ok().filter(|text| text.len() <= MOST);
            png.or_else(|| canvas.to_data_url_with_type("image/jpeg").ok().filter(|text| text.len() <= MOST))
        });
        let _ = Url::revoke_object_url(&address);
        done(small);
    });
}

/// What style sheets give the elements of a drawing, which a file has to carry along.
const CARRIED: [&str; 14] = [
    "fill",
    "fill-opacity",
    "stroke",
    "stroke-width",
    "stroke-dasharray",
    "stroke-linejoin",
    "stroke-opacity",
    "opacity",
    "paint-order",
    "font-family",
    "font-size",
    "font-style",
    "font-weight",
    "visibility",
];

/// The drawings within an element, one over the other, as one drawing that needs no style sheet.
#[must_use]
pub fn drawing(within: &Element) -> Option<(String, (f64, f64))> {
    let (width, height) = (f64::from(within.client_width()), f64::from(within.client_height()));
    let found = within.query_selector_all("svg[data-drawn]").ok()?;
    let mut out = String::new();
    let ground = window().get_computed_style(within).ok()??.get_property_value("--sheet").ok()?;
    let _ = write!(
        out,
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}"><rect width="100%" height="100%" fill="{}"/>"#,
        ground.trim()
    );
    for place in 0..found.length() {
        let svg: Element = found.item(place)?.dyn_into().ok()?;
        let copy: Element = svg.clone_node_with_deep(true).ok()?.dyn_into().ok()?;
        carry(&svg, &copy);
        let [theirs, ours] = [&svg, &copy].map(|root| root.query_selector_all("*").ok());
        let (theirs, ours) = (theirs?, ours?);
        for index in 0..theirs.length() {
            if let (Some(from), Some(to)) = (theirs.item(index), ours.item(index)) {
                carry(from.unchecked_ref(), to.unchecked_ref());
            }
        }
        let _ = copy.set_attribute("width", &width.to_string());
        let _ = copy.set_attribute("height", &height.to_string());
        let _ = copy.remove_attribute("class");
        out.push_str(&web_sys::XmlSerializer::new().ok()?.serialize_to_string(&copy).ok()?);
    }
    out.push_str("</svg>");
    Some((out, (width, height)))
}

/// Writes what the style sheets give an element onto its copy.
fn carry(from: &Element, to: &Element) {
    let Ok(Some(style)) = window().get_computed_style(from) else { return };
    for name in CARRIED {
        if let Ok(value) = style.get_property_value(name)
            && !value.is_empty()
        {
            let _ = to.set_attribute(name, &value);
        }
    }
    let _ = to.remove_attribute("class");
}

/// A drawing as a picture of dots, this many a pixel of the page; given to `done` as a blob.
pub fn as_dots(drawing: String, size: (f64, f64), dots: f64, done: impl FnOnce(Option<web_sys::Blob>) + 'static) {
    spawn_local(async move {
        let address = format!("data:image/svg+xml;charset=utf-8,{}", js_sys::encode_uri_component(&drawing));
        let Some(image) = loaded(&address).await else { return done(None) };
        let Some(canvas) = drawn(&image, (size.0 * dots, size.1 * dots)) else { return done(None) };
        let given = std::cell::RefCell::new(Some(done));
        let take = Closure::once_into_js(move |blob: JsValue| {
            if let Some(done) = given.take() {
                done(blob.dyn_into().ok());
            }
        });
        let _ = canvas.to_blob(take.unchecked_ref());
    });
}
