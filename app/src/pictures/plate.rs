//! The plate: well, rod, target, curve and probe on one scale.

use super::canvas::paint;
use super::facts::Facts;
use super::layout::Layout;
use super::mark::Lettering;
use super::moving::{facts_at, moving};
use super::probe::Probe;
use super::room::{follow_size, pens, printing};
use super::scale::scale_end;
use super::spec::{Ends, View, picture, standing};
use super::target::Target;
use super::vector::{markup, markup_over};
use super::well::Well;
use crate::locale::words;
use crate::state::Theme;
use leptos::html::{Canvas, Div};
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::quantity::{Entry, Length, UnitSystem};

/// The living picture of a job.
#[component]
pub fn Plate(
    /// The evaluation; the curve stands without a depth, nothing is drawn without a sweep.
    answer: Memo<Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
    /// What is counted in.
    basis: Signal<Basis>,
    /// Both ways at the ends of a band.
    band: Memo<Option<Ends>>,
    /// Theme: the picture is drawn again when it changes.
    theme: Signal<Theme>,
    /// Called when a drag or a run of key presses begins.
    on_grab: Callback<()>,
    /// Called with a new depth.
    on_depth: Callback<Entry>,
    /// Size on paper, in pixels of the page.
    paper: (f64, f64),
    /// Whether it is for paper alone: drawn in lines that are sharp at any size, and nothing to take hold of.
    on_paper: bool,
    /// Whether it tells money: without it the curve stands without figures of cost.
    #[prop(default = Signal::stored(true))]
    money: Signal<bool>,
    /// Whether the depth can be moved on the rod.
    #[prop(default = true)]
    movable: bool,
) -> impl IntoView {
    let (room, canvas) = (NodeRef::<Div>::new(), NodeRef::<Canvas>::new());
    let size = RwSignal::new((0.0, 0.0));
    let held = RwSignal::new(false);
    let printing = printing();
    follow_size(room, size, printing, paper);
    let side = move |length: f64| printing.get().then(|| format!("{length}px"));
    let ink = pens(theme, size);
    let facts = Memo::new(move |_| answer.with(Facts::of));
    // The depth under a finger, until what follows from it is worked out.
    let slides = RwSignal::new(None::<Length>);
    let sliding = Memo::new(move |_| slides.with(Option::is_some));
    let seen = Memo::new(move |_| match slides.get() {
        Some(depth) => answer.with(|answer| facts_at(&facts.get(), answer.sweep.as_ref(), depth)),
        None => facts.get(),
    });
    let depth = Memo::new(move |_| seen.get().depth);
    let end = scale_end_of(facts, basis, system, held);
    let lettering = Memo::new(move |_| ink.with(|ink| ink.as_ref().map_or(Lettering::USUAL, |ink| ink.lettering)));
    let view = Memo::new(move |_| View {
        layout: Layout::of(size.get().0, size.get().1, lettering.get()),
        end: end.get(),
        lettering: lettering.get(),
        system: system.get(),
        basis: basis.get(),
        money: money.get(),
    });
    let drawn = Memo::new(move |_| {
        let (view, draw) = (view.get(), if sliding.get() { standing } else { picture });
        answer.with(|answer| band.with(|band| draw(answer, &view, band.as_ref())))
    });
    Effect::new(move |_| {
        let size = size.get();
        let canvas = canvas.get().filter(|_| size.0 >= 1.0);
        ink.with(|ink| {
            if let (Some(canvas), Some(ink)) = (canvas, ink) {
                drawn.with(|drawn| paint(&canvas, size, drawn, ink));
            }
        });
    });
    // What is drawn is the program's own: words of the user's are not in it.
    let lines = move || {
        let size = Some(size.get()).filter(|size| size.0 >= 1.0)?;
        ink.with(|ink| drawn.with(|drawn| markup(size, drawn, ink.as_ref()?)))
    };
    let at_finger = move || {
        let view = view.get();
        let found = answer.with(|answer| Some(moving(answer.sweep.as_ref()?, slides.get()?, &view)))?;
        ink.with(|ink| markup_over(size.get(), &found, ink.as_ref()?))
    };
    // Nothing is drawn before the style sheets are there.
    let shown = Memo::new(move |_| size.get().0 >= 1.0 && ink.with(Option::is_some));
    let compact = move || view.with(|view| view.layout.compact);
    let on_surface = Memo::new(move |_| facts.get().on_surface);
    let scale_note =
        move || if on_surface.get() { words().picture.lead_runs_down } else { words().picture.depths_to_scale };
    view! {
        <div
            class="plate"
            style:width=move || side(paper.0)
            style:height=move || side(paper.1) class:compact=compact node_ref=room role="group" aria-label=words().picture.plate>
            <Show when=move || !on_paper fallback=move || view! { <div class="lines" aria-hidden="true" inner_html=lines></div> }>
                <canvas node_ref=canvas aria-hidden="true"></canvas>
            </Show>
            <Show when=move || shown.get()>
                <Show when=move || sliding.get()><div class="lines" aria-hidden="true" inner_html=at_finger></div></Show>
                <Well facts=seen told=facts view=view answer=answer />
                <p class="scale-note">{scale_note}</p>
                <Show when=move || answer.with(|answer| answer.sweep.is_none())>
                    <p class="no-curve">{words().picture.nothing_to_draw}</p>
                </Show>
                <Show when=move || !on_paper>
                    <Probe answer=answer view=view />
                    {movable.then(|| view! { <Target depth=depth on_surface=on_surface view=view held=held slides=slides on_grab=on_grab on_depth=on_depth /> })}
                </Show>
            </Show>
        </div>
    }
}

/// End of the depth scale; it stays as it is while the target is held.
fn scale_end_of(
    facts: Memo<Facts>,
    basis: Signal<Basis>,
    system: Signal<UnitSystem>,
    held: RwSignal<bool>,
) -> Memo<Length> {
    Memo::new(move |before: Option<&Length>| match before {
        Some(before) if held.get() => *before,
        _ => scale_end(&facts.get(), basis.get(), system.get()),
    })
}
