//! Shapes in a group of an SVG, one after the other: while the pump moves, the page touches only those that change.

use super::well::Stroke;
use super::well_words::Word;
use leptos::prelude::*;
use leptos::svg::G;
use wasm_bindgen::JsCast;
use web_sys::Element;

const SVG: &str = "http://www.w3.org/2000/svg";

/// What is drawn as one element.
trait Shape: Clone + PartialEq + Send + Sync + 'static {
    /// Name of the element.
    const TAG: &'static str;

    /// Writes on the element what was not so before.
    fn write(&self, before: Option<&Self>, on: &Element);
}

/// Writes an attribute where it changed; one that a browser does not take stays as it was.
fn set<T: PartialEq>(on: &Element, name: &str, now: T, before: Option<T>, text: impl Fn(T) -> String) {
    if before.as_ref() != Some(&now) {
        let _ = on.set_attribute(name, &text(now));
    }
}

impl Shape for Stroke {
    const TAG: &'static str = "path";

    fn write(&self, before: Option<&Self>, on: &Element) {
        set(on, "class", self.0, before.map(|one| one.0), str::to_owned);
        set(on, "d", self.1.as_str(), before.map(|one| one.1.as_str()), str::to_owned);
    }
}

impl Shape for Word {
    const TAG: &'static str = "text";

    fn write(&self, before: Option<&Self>, on: &Element) {
        let anchor = |end: bool| if end { "end" } else { "start" }.to_owned();
        set(on, "class", self.class(), before.map(Self::class), str::to_owned);
        set(on, "x", self.x, before.map(|one| one.x), |x| x.to_string());
        set(on, "y", self.y, before.map(|one| one.y), |y| y.to_string());
        set(on, "text-anchor", self.end, before.map(|one| one.end), anchor);
        if before.is_none_or(|before| before.text != self.text) {
            on.set_text_content(Some(&self.text));
        }
    }
}

/// What a group holds, and its elements.
struct Held<T> {
    shapes: Vec<T>,
    elements: Vec<Element>,
}

impl<T: Shape> Held<T> {
    /// Brings the group to other shapes.
    fn become_of(&mut self, group: &Element, now: Vec<T>) {
        for (shape, was, on) in now.iter().zip(&self.shapes).zip(&self.elements).map(|((a, b), c)| (a, b, c)) {
            if shape != was {
                shape.write(Some(was), on);
            }
        }
        for spare in self.elements.drain(now.len().min(self.elements.len())..) {
            spare.remove();
        }
        for shape in now.get(self.elements.len()..).unwrap_or_default() {
            // Where a browser makes no element, nothing after it is drawn either: places stay those of the shapes.
            let Ok(new) = document().create_element_ns(Some(SVG), T::TAG) else { break };
            shape.write(None, &new);
            let _ = group.append_child(&new);
            self.elements.push(new);
        }
        self.shapes = now;
    }
}

/// A group that holds shapes.
fn group<T: Shape>(all: Memo<Vec<T>>) -> impl IntoView {
    let node = NodeRef::<G>::new();
    Effect::new(move |before: Option<Held<T>>| {
        let mut held = before.unwrap_or(Held { shapes: Vec::new(), elements: Vec::new() });
        if let Some(group) = node.get() {
            held.become_of(group.unchecked_ref(), all.get());
        }
        held
    });
    view! { <g node_ref=node></g> }
}

/// Strokes, lowest first.
#[component]
pub fn Strokes(
    /// The strokes.
    all: Memo<Vec<Stroke>>,
) -> impl IntoView {
    group(all)
}

/// Words.
#[component]
pub fn Texts(
    /// The words.
    all: Memo<Vec<Word>>,
) -> impl IntoView {
    group(all)
}
