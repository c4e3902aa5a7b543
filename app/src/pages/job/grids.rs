//! What the tables of a job hold: pure, from the evaluation.

use super::headline::{phases, why};
use crate::locale::{
    Shown, conductor, depth, entry, lead_size, mass, money_shown, percent, power, shown, unit_name, words,
};
use crate::parts::quantity_field::origin;
use crate::parts::table::{Cell, Grid};
use wellwright_core::evaluate::{Basis, DepthRun, Evaluation, Here, Sweep, WayHere, WaySweep};
use wellwright_core::job::{Field, Inputs, Way};
use wellwright_core::papers::Topic;
use wellwright_core::quantity::{
    ElectricCurrent, ElectricPotential, Money, Unit, UnitSystem, in_amperes, in_volts, in_watts,
};

fn amps(current: ElectricCurrent) -> Cell {
    Cell::Figure(shown(in_amperes(current), 1, unit_name(Unit::Ampere)))
}

fn volts(potential: ElectricPotential, decimals: usize) -> Cell {
    Cell::Figure(shown(in_volts(potential), decimals, unit_name(Unit::Volt)))
}

fn dollars(amount: Money) -> Cell {
    Cell::Figure(money_shown(amount, 2))
}

/// A figure that opens its working.
fn opens(cell: Cell, topic: Topic) -> Cell {
    match cell {
        Cell::Figure(shown) => Cell::Worked(shown, topic),
        cell => cell,
    }
}

/// A table of figures by way, the 480 V way first.
fn by_way(rows: Vec<(&'static str, [Cell; 2])>) -> Grid {
    let way = words().answer.way;
    let row = |(name, [low, high]): (&'static str, [Cell; 2])| vec![Cell::words(name), high, low];
    Grid {
        columns: vec![words().tables.figure, way(Way::V480), way(Way::V240)],
        rows: rows.into_iter().map(row).collect(),
    }
}

/// Both leads at the job's depth, figure by figure.
#[must_use]
pub fn here(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (here, sweep) = (answer.here.as_ref()?, answer.sweep.as_ref()?);
    let words = &words().tables;
    let both = |name, cell: &dyn Fn(&WayHere, &WaySweep) -> Cell| (name, leads(here, sweep, cell));
    Some(by_way(vec![
        both(words.size, &|lead, _| Cell::words(phases(lead.run.run.conductor))),
        both(words.ground, &|lead, _| Cell::words(lead_size(lead.run.run.ground))),
        both(words.why, &|lead, _| Cell::words(why(lead.run.run.governs))),
        both(words.motor_amps, &|_, way| opens(amps(way.current.sizing), Topic::MotorCurrent(way.way))),
        both(words.required, &|_, way| amps(way.required)),
        both(words.ampacity, &|lead, way| opens(amps(lead.run.run.ampacity), Topic::Ampacity(way.way))),
        both(words.drop, &|lead, way| opens(volts(lead.drop, 2), Topic::Drop(way.way))),
        both(words.drop_share, &|lead, _| Cell::Figure(percent(lead.drop_share, 2))),
        both(words.loss, &|lead, _| Cell::Figure(shown(in_watts(lead.loss), 0, unit_name(Unit::Watt)))),
        both(words.metal, &|lead, _| Cell::Figure(mass(lead.metal, system))),
        both(words.reach, &|lead, _| Cell::Figure(depth(lead.run.to, system))),
    ]))
}

fn leads(here: &Here, sweep: &Sweep, cell: &dyn Fn(&WayHere, &WaySweep) -> Cell) -> [Cell; 2] {
    Way::ALL.map(|way| here.way(way).map_or_else(|| Cell::words("–"), |lead| cell(lead, sweep.way(way))))
}

/// What each way costs at the job's depth.
#[must_use]
pub fn costs(answer: &Evaluation) -> Option<Grid> {
    let (here, sweep) = (answer.here.as_ref()?, answer.sweep.as_ref()?);
    let words = &words().tables;
    let mut grid = by_way(vec![
        (
            words.cable,
            leads(here, sweep, &|lead, way| opens(dollars(lead.cable), Topic::CableCost(way.way, Basis::Cable))),
        ),
        (words.equipment, leads(here, sweep, &|_, way| dollars(way.equipment))),
        (
            words.installed,
            leads(here, sweep, &|lead, way| {
                opens(dollars(lead.installed), Topic::CableCost(way.way, Basis::Installed))
            }),
        ),
    ]);
    if let Some(saving) = &here.saving {
        grid.rows.push(vec![
            Cell::words(words.net),
            opens(dollars(saving.net), Topic::Saving(Basis::Installed)),
            Cell::words("–"),
        ]);
    }
    Some(grid)
}

/// Every size of both ways and how deep it reaches: the curve as a table.
#[must_use]
pub fn steps(answer: &Evaluation, system: UnitSystem, basis: Basis) -> Option<Grid> {
    let sweep = answer.sweep.as_ref()?;
    let table = &words().tables;
    let cells = |way: &WaySweep, run: &DepthRun| {
        let cost = |at| Cell::Figure(money_shown(way.cost_on(run, at, basis), 0));
        vec![
            Cell::words((words().answer.way)(way.way)),
            Cell::words(conductor(run.run.conductor)),
            Cell::words(lead_size(run.run.ground)),
            Cell::Figure(depth(run.from, system)),
            Cell::Figure(depth(run.to, system)),
            Cell::words(why(run.run.governs)),
            cost(run.from),
            cost(run.to),
        ]
    };
    let columns =
        vec![table.way, table.size, table.ground, table.from, table.to, table.why, table.cost_from, table.cost_to];
    let rows = sweep.ways.iter().rev().flat_map(|way| way.runs.iter().map(move |run| cells(way, run))).collect();
    Some(Grid { columns, rows })
}

/// The ways to run the motor, side by side.
#[must_use]
pub fn ways(answer: &Evaluation) -> Option<Grid> {
    let words = &words().tables;
    let currents = currents(&answer.inputs)?;
    let by = |cell: &dyn Fn(Way) -> Cell| Way::ALL.map(cell);
    let nameplate =
        |way: Way| currents[way as usize].nameplate.map_or_else(|| Cell::words("–"), |known| amps(known.value));
    Some(by_way(vec![
        (words.supply, by(&|_| Cell::words(words.supply_value))),
        (words.drive_sends, by(&|way| volts(way.sending(), 0))),
        (words.motor_connected, by(&|way| volts(wellwright_core::quantity::volts(way.rated_volts()), 0))),
        (words.nameplate_amps, by(&nameplate)),
        (words.table_amps, by(&|way| amps(currents[way as usize].table))),
        (words.sizing_amps, by(&|way| opens(amps(currents[way as usize].sizing), Topic::MotorCurrent(way)))),
    ]))
}

fn currents(inputs: &Inputs) -> Option<[&wellwright_core::job::MotorCurrent; 2]> {
    match &inputs.motor_current {
        [Ok(low), Ok(high)] => Some([low, high]),
        _ => None,
    }
}

/// The motor's figures as a drive asks for them.
#[must_use]
pub fn plate(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (words, inputs) = (&words().tables, &answer.inputs);
    let currents = currents(inputs)?;
    let rated = power(inputs.motor_power.as_ref().ok()?.value, system);
    let current = |way: Way| {
        let current = currents[way as usize];
        amps(current.nameplate.map_or(current.table, |known| known.value))
    };
    let plain = |value: f64| Cell::Figure(shown(value, 2, ""));
    let same = |cell: Cell| [cell.clone(), cell];
    let mut rows = vec![
        (words.rated_power, same(Cell::Figure(rated))),
        (words.rated_volts, Way::ALL.map(|way| volts(wellwright_core::quantity::volts(way.rated_volts()), 0))),
        (words.rated_amps, Way::ALL.map(current)),
    ];
    for (name, figure) in [(words.power_factor, &inputs.power_factor), (words.efficiency, &inputs.efficiency)] {
        rows.extend(figure.as_ref().ok().map(|known| (name, same(plain(known.value)))));
    }
    Some(by_way(rows))
}

/// Every figure of the job with where it comes from.
#[must_use]
pub fn figures(answer: &Evaluation, typed: impl Fn(Field) -> Option<Shown>, system: UnitSystem) -> Grid {
    let table = &words().tables;
    let row = |field: Field| {
        let (value, from) = match typed(field) {
            Some(shown) => (shown, table.typed),
            None => (entry(answer.inputs.stand_in(field)?, system), origin(field, answer)),
        };
        Some(vec![Cell::words((words().fields.label)(field)), Cell::Figure(value), Cell::words(from)])
    };
    Grid {
        columns: vec![table.figure, table.value, table.origin],
        rows: Field::ALL.into_iter().filter_map(row).collect(),
    }
}
