//! A table: figures with their units, sorted by any column, copied for a spreadsheet.

use super::equals::Equals;
use super::icon::Icon;
use crate::locale::{Shown, words};
use crate::platform::clipboard;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::numeric::order::{by_number, by_text};
use wellwright_core::papers::Topic;
use wellwright_core::table::harmless;

/// A cell.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// Words.
    Words(String),
    /// A figure with its unit.
    Figure(Shown),
    /// A figure whose working can be opened.
    Worked(Shown, Topic),
}

impl Cell {
    /// A cell of words.
    pub fn words(text: impl Into<String>) -> Self {
        Self::Words(text.into())
    }

    /// What it shows.
    #[must_use]
    pub fn text(&self) -> String {
        match self {
            Self::Words(text) => text.clone(),
            Self::Figure(shown) | Self::Worked(shown, _) => shown.text(),
        }
    }

    fn figure(&self) -> Option<&Shown> {
        match self {
            Self::Words(_) => None,
            Self::Figure(shown) | Self::Worked(shown, _) => Some(shown),
        }
    }
}

/// What a table holds. The first column names its rows.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Grid {
    /// Names of the columns.
    pub columns: Vec<&'static str>,
    /// Rows of as many cells.
    pub rows: Vec<Vec<Cell>>,
}

impl Grid {
    /// The grid without those of these columns whose cells are all the same.
    #[must_use]
    pub fn without_the_same(mut self, columns: &[&'static str]) -> Self {
        for place in
            (0..self.columns.len()).rev().filter(|place| columns.contains(&self.columns[*place])).collect::<Vec<_>>()
        {
            let mut cells = self.rows.iter().map(|row| row.get(place));
            let first = cells.next();
            if cells.all(|cell| Some(cell) == first) {
                self.columns.remove(place);
                self.rows.iter_mut().for_each(|row| drop(row.remove(place)));
            }
        }
        self
    }
}

/// By which column rows are sorted, and whether downward.
type Order = Option<(usize, bool)>;

/// A table with its title; nothing where there is nothing to show.
#[component]
pub fn Table(
    /// Its title.
    title: &'static str,
    /// A line beneath the title.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What it holds.
    grid: Memo<Option<Grid>>,
    /// Whether its rows can be sorted.
    #[prop(default = false)]
    sorts: bool,
    /// Opens the working of a cell; without it such cells are plain.
    #[prop(optional, into)]
    on_working: Option<Callback<Topic>>,
) -> impl IntoView {
    let order = RwSignal::new(None::<(usize, bool)>);
    let sorted = Memo::new(move |_| grid.with(|grid| grid.as_ref().map(|grid| in_order(grid, order.get()))));
    let columns = Memo::new(move |_| grid.with(|grid| grid.as_ref().map(names).unwrap_or_default()));
    let app = app();
    let copy = move |_| {
        let text = sorted.with_untracked(|grid| grid.as_ref().map(for_spreadsheet)).unwrap_or_default();
        clipboard::copy(&text, move |done| {
            app.tell(if done { words().frame.copied } else { words().frame.not_copied }.to_owned());
        });
    };
    view! {
        <Show when=move || grid.with(Option::is_some)>
            <section class="table" class:long=sorts class:opens=on_working.is_some()>
                <div class="head">
                    <h3>{title}</h3>
                    <button class="btn quiet" aria-label=(words().frame.copy_table)(title) on:click=copy>{words().frame.copy}</button>
                </div>
                <p class="note">{move || hint.get()}</p>
                <div class="scroll" tabindex="0" role="group" aria-label=title>
                    <table>
                        <thead><tr>{move || columns.get().into_iter().enumerate().map(|(place, (name, words))| {
                            head(place, name, words, sorts, order)
                        }).collect_view()}</tr></thead>
                        <tbody>{move || sorted.get().map(|grid| grid.rows.into_iter().map(|cells| row(cells, on_working)).collect_view())}</tbody>
                    </table>
                </div>
            </section>
        </Show>
    }
}

/// Names of the columns, each with whether words stand in it and no figure.
fn names(grid: &Grid) -> Vec<(&'static str, bool)> {
    let words = |place| cells_of(grid, place).all(|cell| cell.figure().is_none());
    grid.columns.iter().enumerate().map(|(place, name)| (*name, words(place))).collect()
}

fn head(place: usize, name: &'static str, words: bool, sorts: bool, order: RwSignal<Order>) -> AnyView {
    if name.is_empty() {
        return view! { <td></td> }.into_any();
    }
    if !sorts {
        return view! { <th scope="col" class:words=words>{name}</th> }.into_any();
    }
    let now = move || order.get().filter(|(column, _)| *column == place).map(|(_, down)| down);
    let said = move || now().map(|down| if down { "descending" } else { "ascending" });
    view! {
        <th scope="col" aria-sort=said>
            <button class="sort" title=(crate::locale::words().frame.sort_by)(name) on:click=move |_| order.update(|order| *order = next(*order, place))>
                {name}
                {move || now().map(|down| view! { <Icon name=if down { "down" } else { "up" } /> })}
            </button>
        </th>
    }
    .into_any()
}

/// Upward first, then downward, then as it was.
fn next(order: Order, place: usize) -> Order {
    match order {
        Some((column, false)) if column == place => Some((place, true)),
        Some((column, true)) if column == place => None,
        _ => Some((place, false)),
    }
}

fn row(cells: Vec<Cell>, on_working: Option<Callback<Topic>>) -> impl IntoView {
    let name = cells.first().map(Cell::text).unwrap_or_default();
    let cell = |(place, cell): (usize, Cell)| match (place, cell, on_working) {
        (0, cell, _) => view! { <th scope="row">{cell.text()}</th> }.into_any(),
        (_, Cell::Words(text), _) => view! { <td class="words">{text}</td> }.into_any(),
        (_, Cell::Worked(shown, topic), Some(open)) => {
            let of = format!("{name}, {}", shown.text());
            view! { <td>{shown.text()}<Equals of=of on_open=Callback::new(move |()| open.run(topic)) /></td> }
                .into_any()
        }
        (_, cell, _) => view! { <td>{cell.text()}</td> }.into_any(),
    };
    view! { <tr>{cells.into_iter().enumerate().map(cell).collect_view()}</tr> }
}

fn in_order(grid: &Grid, order: Order) -> Grid {
    let mut grid = grid.clone();
    if let Some((column, down)) = order {
        let text = |cells: &Vec<Cell>| cells.get(column).map(Cell::text).unwrap_or_default();
        // Figures by their size, and what has none after them, whichever way they go.
        let sign = if down { -1.0 } else { 1.0 };
        let figure = |cells: &Vec<Cell>| Some(sign * cells.get(column)?.figure()?.value);
        let mut rows: Vec<(String, Vec<Cell>)> = grid.rows.into_iter().map(|cells| (text(&cells), cells)).collect();
        by_text(&mut rows, |(text, _)| text);
        if down {
            rows.reverse();
        }
        by_number(&mut rows, |(_, cells)| figure(cells).unwrap_or(f64::INFINITY));
        grid.rows = rows.into_iter().map(|(_, cells)| cells).collect();
    }
    grid
}

/// The table as text parted by tabs.
fn for_spreadsheet(grid: &Grid) -> String {
    lines(grid).into_iter().map(|cells| cells.join("\t")).collect::<Vec<_>>().join("\n")
}

/// The cells of a table for another program, its names first. Units go to the names of columns or rows, so that figures
/// stay figures.
#[must_use]
pub fn lines(grid: &Grid) -> Vec<Vec<String>> {
    let columns = 0..grid.columns.len();
    let mixed = columns.clone().any(|column| unit_of(cells_of(grid, column)).is_none());
    let column_units: Vec<&str> = match mixed {
        true => vec![""; grid.columns.len()],
        false => columns.map(|column| unit_of(cells_of(grid, column)).unwrap_or_default()).collect(),
    };
    let names = grid.columns.iter().zip(&column_units).map(|(name, unit)| with_unit(name, unit));
    let mut lines = vec![names.collect::<Vec<_>>()];
    for row in &grid.rows {
        let row_unit = if mixed { unit_of(row.iter()).unwrap_or_default() } else { "" };
        let cells = row.iter().enumerate().map(|(column, cell)| match cell {
            Cell::Words(text) if column == 0 => with_unit(&harmless(text), row_unit),
            Cell::Words(text) => harmless(text),
            Cell::Figure(shown) | Cell::Worked(shown, _) => {
                let unit_is_told = !column_units[column].is_empty() || !row_unit.is_empty();
                if unit_is_told { shown.plain() } else { shown.text() }
            }
        });
        lines.push(cells.collect());
    }
    lines
}

fn cells_of(grid: &Grid, column: usize) -> impl Iterator<Item = &Cell> {
    grid.rows.iter().filter_map(move |row| row.get(column))
}

/// The unit that all figures share, empty where there are no figures or no units; `None` where they do not.
fn unit_of<'a>(cells: impl Iterator<Item = &'a Cell>) -> Option<&'a str> {
    let mut units = cells.filter_map(Cell::figure).map(Shown::measure);
    let first = units.next().unwrap_or_default();
    units.all(|unit| unit == first).then_some(first)
}

fn with_unit(name: &str, unit: &str) -> String {
    if unit.is_empty() { name.to_owned() } else { format!("{name} ({unit})") }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::locale::shown;

    fn figure(value: f64, unit: &'static str) -> Cell {
        Cell::Figure(shown(value, 1, unit))
    }

    fn grid() -> Grid {
        Grid {
            columns: vec!["Way", "From", "Note"],
            rows: vec![
                vec![Cell::words("b"), figure(1200.0, "ft"), Cell::words("=SUM(A1)")],
                vec![Cell::words("a"), figure(-3.0, "ft"), Cell::words("x\ty")],
            ],
        }
    }

    #[test]
    fn rows_sort_by_value_up_then_down_then_as_they_were() {
        let first = |order| in_order(&grid(), order).rows[0][0].text();
        assert_eq!(first(Some((1, false))), "a");
        assert_eq!(first(Some((1, true))), "b");
        assert_eq!(first(Some((0, false))), "a");
        assert_eq!(first(None), "b");
        assert_eq!(next(None, 1), Some((1, false)));
        assert_eq!(next(Some((1, false)), 1), Some((1, true)));
        assert_eq!(next(Some((1, true)), 1), None);
        assert_eq!(next(Some((1, true)), 2), Some((2, false)));
    }

    #[test]
    fn what_is_no_figure_stands_behind_figures() {
        let row = |cell: Cell| vec![cell];
        let rows = vec![row(Cell::words("1x")), row(figure(9.0, "ft")), row(Cell::words("–")), row(figure(10.0, "ft"))];
        let grid = Grid { columns: vec!["From"], rows };
        let texts = |down| {
            let rows = in_order(&grid, Some((0, down))).rows;
            rows.iter().map(|cells| cells[0].text().replace('\u{a0}', " ")).collect::<Vec<_>>()
        };
        assert_eq!(texts(false), ["9.0 ft", "10.0 ft", "1x", "–"]);
        assert_eq!(texts(true), ["10.0 ft", "9.0 ft", "–", "1x"]);
    }

    #[test]
    fn a_copy_holds_plain_figures_and_no_formula() {
        assert_eq!(for_spreadsheet(&grid()), "Way\tFrom (ft)\tNote\nb\t1200.0\t'=SUM(A1)\na\t-3.0\tx y");
    }

    #[test]
    fn where_each_row_has_its_unit_the_row_names_it() {
        let grid = Grid {
            columns: vec!["Figure", "480", "240"],
            rows: vec![
                vec![Cell::words("Drop"), figure(21.1, "V"), figure(11.0, "V")],
                vec![Cell::words("Metal"), figure(9.0, "lb"), Cell::words("–")],
            ],
        };
        assert_eq!(for_spreadsheet(&grid), "Figure\t480\t240\nDrop (V)\t21.1\t11.0\nMetal (lb)\t9.0\t–");
    }
}
