//! What the tables of a job hold: pure, from the evaluation.

use super::figures::Told;
use super::headline::{phases, why};
use super::{pump, water};
use crate::locale::{
    conductor, entry, lead_size, mass, money_alike, money_shown, percent, power, rating, reach, series_name, shown,
    size_name, temperature, unit_name, words,
};
use crate::parts::quantity_field::origin;
use crate::parts::table::{Cell, Grid};
use crate::pictures::curve_table;
use wellwright_core::evaluate::{Basis, Evaluation, Here, LeadInService, Piece, Sweep, WayHere, WaySweep};
use wellwright_core::job::{Checked, DemandBy, Field, Inputs, Job, Origin, Part, Way};
use wellwright_core::papers::Topic;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{
    ElectricCurrent, ElectricPotential, Money, Unit, UnitSystem, in_amperes, in_volts, in_watts,
};

fn amps(current: ElectricCurrent) -> Cell {
    Cell::Figure(shown(in_amperes(current), 1, unit_name(Unit::Ampere)))
}

fn volts(potential: ElectricPotential, decimals: usize) -> Cell {
    Cell::Figure(shown(in_volts(potential), decimals, unit_name(Unit::Volt)))
}

fn dollars(amount: Money, decimals: usize) -> Cell {
    Cell::Figure(money_shown(amount, decimals))
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
    let way = words().answer.way_short;
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
        both(words.required, &|_, way| opens(amps(way.required), Topic::Ampacity(way.way))),
        both(words.ampacity, &|lead, way| opens(amps(lead.run.run.ampacity), Topic::Ampacity(way.way))),
        both(words.drop, &|lead, way| opens(volts(lead.drop, 2), Topic::Drop(way.way))),
        both(words.drop_share, &|lead, way| opens(Cell::Figure(percent(lead.drop_share, 2)), Topic::Drop(way.way))),
        both(words.loss, &|lead, way| {
            opens(Cell::Figure(shown(in_watts(lead.loss), 0, unit_name(Unit::Watt))), Topic::FullLoadHeat(way.way))
        }),
        both(words.metal, &|lead, way| {
            opens(Cell::Figure(mass(lead.metal, system)), Topic::CableCost(way.way, Basis::Cable))
        }),
        both(words.reach, &|lead, way| {
            let last = way.pieces.iter().position(|piece| piece.to >= lead.run.to);
            let shown = Cell::Figure(reach(lead.run.to, system));
            last.map_or(shown.clone(), |place| opens(shown, Topic::Piece(way.way, place, Basis::Installed)))
        }),
    ]))
}

fn leads(here: &Here, sweep: &Sweep, cell: &dyn Fn(&WayHere, &WaySweep) -> Cell) -> [Cell; 2] {
    Way::ALL.map(|way| here.way(way).map_or_else(|| Cell::words("–"), |lead| cell(lead, sweep.way(way))))
}

/// Both leads in service, figure by figure.
#[must_use]
pub fn service(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    answer.service.iter().find_map(Option::as_ref)?;
    let words = &words().ways;
    let none = || Cell::words("–");
    let of = |cell: &dyn Fn(&LeadInService) -> Option<Cell>| {
        Way::ALL.map(|way| answer.service[way as usize].as_ref().and_then(cell).unwrap_or_else(none))
    };
    let money = |amount: Money| Cell::Figure(money_shown(amount, 0));
    let worked = |topic: fn(Way) -> Topic, cells: [Cell; 2]| {
        let [low, high] = cells;
        [opens(low, topic(Way::V240)), opens(high, topic(Way::V480))]
    };
    let mut rows = vec![
        (words.duty_amps, duty_amps(answer)),
        (
            words.temperature,
            worked(Topic::LeadTemperature, of(&|lead| Some(Cell::Figure(temperature(lead.warm.temperature, system))))),
        ),
        (
            words.warm_loss,
            worked(
                Topic::LeadLoss,
                of(&|lead| Some(Cell::Figure(shown(in_watts(lead.loss), 0, unit_name(Unit::Watt))))),
            ),
        ),
        (words.alternating, worked(Topic::Alternating, of(&|lead| Some(Cell::Figure(percent(lead.alternating?, 2)))))),
    ];
    if answer.service.iter().flatten().any(|lead| lead.flat.is_some()) {
        let unbalance = of(&|lead| Some(Cell::Figure(percent(lead.flat?.voltage_unbalance, 2))));
        rows.push((words.unbalance, worked(Topic::FlatUnbalance, unbalance)));
    }
    rows.push((words.economic, of(&|lead| Some(Cell::words(phases(lead.choice?.economic.candidate.conductor))))));
    rows.push((words.economic_saves, worked(Topic::EconomicSize, of(&|lead| Some(money(lead.saving()?))))));
    Some(by_way(rows))
}

/// The current of both leads in service, with the working that it comes from.
fn duty_amps(answer: &Evaluation) -> [Cell; 2] {
    Way::ALL.map(|way| match &answer.service[way as usize] {
        Some(lead) if lead.at_duty => opens(amps(lead.current), Topic::RunningCurrent(way)),
        Some(lead) => opens(amps(lead.current), Topic::MotorCurrent(way)),
        None => Cell::words("–"),
    })
}

/// What each way costs at the job's depth; in cents only where whole dollars would not add up.
#[must_use]
pub fn costs(answer: &Evaluation) -> Option<Grid> {
    let (here, sweep) = (answer.here.as_ref()?, answer.sweep.as_ref()?);
    let words = &words().tables;
    let decimals = cost_decimals(here);
    let worked = |amount, way, basis| opens(dollars(amount, decimals), Topic::CableCost(way, basis));
    let mut rows = vec![
        (words.cable, leads(here, sweep, &|lead, way| worked(lead.cable, way.way, Basis::Cable))),
        (words.equipment, leads(here, sweep, &|lead, way| worked(lead.outfit.cost.total(), way.way, Basis::Installed))),
        (words.installed, leads(here, sweep, &|lead, way| worked(lead.installed, way.way, Basis::Installed))),
    ];
    if sweep.has_lifetime() {
        let none = || Cell::words("–");
        let over = |lead: &WayHere, way: &WaySweep| {
            lead.lifetime.map_or_else(none, |amount| worked(amount, way.way, Basis::Lifetime))
        };
        rows.push((words.lifetime, leads(here, sweep, &over)));
    }
    let mut grid = by_way(rows);
    if let Some(saving) = &here.saving {
        let saved = |name, amount, basis| {
            vec![Cell::words(name), opens(dollars(amount, decimals), Topic::Saving(basis)), Cell::words("–")]
        };
        grid.rows.push(saved(words.net, saving.net, Basis::Installed));
        grid.rows.extend(saving.lifetime.map(|amount| saved(words.lifetime_net, amount, Basis::Lifetime)));
    }
    Some(grid)
}

/// Decimals with which the costs of both ways and their parts add up.
pub fn cost_decimals(here: &Here) -> usize {
    let sums =
        Way::ALL.map(|way| here.way(way).map_or(0, |lead| money_alike(lead.installed, lead.outfit.cost.total())));
    let difference = match here.ways {
        [Some(low), Some(high)] => money_alike(low.installed, high.installed),
        _ => 0,
    };
    sums.into_iter().fold(difference, usize::max)
}

/// Every size of both ways and how deep it reaches: the curve as a table.
#[must_use]
pub fn steps(answer: &Evaluation, system: UnitSystem, basis: Basis) -> Option<Grid> {
    let sweep = answer.sweep.as_ref()?;
    let table = &words().tables;
    let cells = |way: &WaySweep, place: usize, piece: &Piece| {
        let run = piece.run;
        let cost = |at| Cell::Figure(money_shown(way.cost_on(piece, at, basis), 0));
        vec![
            Cell::words((words().answer.way_short)(way.way)),
            Cell::Figure(power(run.motor, system)),
            Cell::words(conductor(run.run.conductor)),
            Cell::words(lead_size(run.run.ground)),
            Cell::Figure(reach(piece.from, system)),
            // One working holds all of a row.
            Cell::Worked(reach(piece.to, system), Topic::Piece(way.way, place, basis)),
            Cell::words(why(run.run.governs)),
            Cell::words((words().ways.remedy)(piece.outfit.remedy)),
            cost(piece.from),
            cost(piece.to),
        ]
    };
    let columns = vec![
        table.way,
        table.motor,
        table.size,
        table.ground,
        table.from,
        table.to,
        table.why,
        words().ways.remedy_label,
        table.cost_from,
        table.cost_to,
    ];
    let of_way = |way: &'_ WaySweep| -> Vec<_> {
        way.pieces.iter().enumerate().map(|(place, piece)| cells(way, place, piece)).collect()
    };
    let rows = sweep.ways.iter().rev().flat_map(of_way).collect();
    // A motor, or a filter, that is the same everywhere says nothing.
    let told = [table.motor, words().ways.remedy_label];
    Some(Grid { columns, rows }.without_the_same(&told))
}

/// Answers of water and pump, those that there are.
#[must_use]
pub fn flow(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let row = |(name, of): &Told| Some(vec![Cell::words(name(words())), Cell::Figure(of(answer, system)?)]);
    let rows: Vec<_> = water::ANSWERS.iter().chain(&pump::ANSWERS).filter_map(row).collect();
    let table = &words().tables;
    (!rows.is_empty()).then(|| Grid { columns: vec![table.figure, table.value], rows })
}

/// Points of the pump's curve.
#[must_use]
pub fn curve(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let charts = &words().charts;
    let table = curve_table(answer, system)?;
    let cell = |shown: Option<_>| shown.map_or_else(|| Cell::words("–"), Cell::Figure);
    // One working holds all of a row.
    let rows = table.rows.into_iter().enumerate().map(|(place, row)| {
        let head = opens(Cell::Figure(row.head), Topic::CurvePoint(place));
        vec![Cell::Figure(row.flow), head, cell(row.takes), cell(row.efficiency), cell(row.shaft)]
    });
    Some(Grid {
        columns: vec![charts.flow, charts.head, charts.takes, charts.efficiency, charts.shaft],
        rows: rows.collect(),
    })
}

/// The speed that the points of the curve are told for.
#[must_use]
pub fn curve_hint(answer: &Evaluation, system: UnitSystem) -> String {
    curve_table(answer, system).map_or_else(String::new, |table| (words().charts.points)(&table.frequency.text()))
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
        (words.drive_sends, by(&|way| volts(way.sending(), 0))),
        (words.motor_connected, by(&|way| volts(wellwright_core::quantity::volts(way.rated_volts()), 0))),
        (words.nameplate_amps, by(&nameplate)),
        (words.table_amps, by(&|way| opens(amps(currents[way as usize].table), Topic::MotorCurrent(way)))),
        (words.sizing_amps, by(&|way| opens(amps(currents[way as usize].sizing), Topic::MotorCurrent(way)))),
    ]))
}

fn currents(inputs: &Inputs) -> Option<[&wellwright_core::job::MotorCurrent; 2]> {
    match &inputs.motor_current {
        [Ok(low), Ok(high)] => Some([low, high]),
        _ => None,
    }
}

/// The motor's figures as a drive asks for them: those of the nameplate only. What is assumed or from a table is not
/// shown here, since a drive that is set up by it does not protect the motor.
#[must_use]
pub fn plate(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (words, inputs) = (&words().tables, &answer.inputs);
    let rated = power(inputs.motor_power.as_ref().ok()?.value, system);
    let currents = currents(inputs)?;
    let unread = || Cell::words(words.read_plate);
    let current = |way: Way| currents[way as usize].nameplate.map_or_else(unread, |known| amps(known.value));
    let typed = |figure: &Checked<f64>| match figure {
        Ok(known) if known.origin == Origin::Typed => Cell::Figure(shown(known.value, 2, "")),
        _ => unread(),
    };
    let same = |cell: Cell| [cell.clone(), cell];
    Some(by_way(vec![
        (words.rated_power, same(Cell::Figure(rated))),
        (words.rated_volts, Way::ALL.map(|way| volts(wellwright_core::quantity::volts(way.rated_volts()), 0))),
        (words.rated_amps, Way::ALL.map(current)),
        (words.power_factor, same(typed(&inputs.power_factor))),
        (words.efficiency, same(typed(&inputs.efficiency))),
    ]))
}

/// Every figure of the job with where it comes from.
#[must_use]
pub fn figures(answer: &Evaluation, job: &Job, system: UnitSystem) -> Grid {
    let typed = |field| job.get(field).filter(|given| given.value.is_finite()).map(|given| entry(given, system));
    let table = &words().tables;
    let row = |field: Field| {
        let (value, from) = match typed(field) {
            Some(shown) => (shown, table.typed),
            None => (entry(answer.inputs.stand_in(field)?, system), origin(field, answer)),
        };
        Some(vec![Cell::words((words().fields.label)(field)), Cell::Figure(value), Cell::words(from)])
    };
    let counting = Field::ALL.into_iter().filter(|field| field.counts(job));
    Grid {
        columns: vec![table.figure, table.value, table.origin],
        rows: counting.filter_map(row).chain(choices(job)).collect(),
    }
}

/// Every choice that counts, with whether it was made: an order rests on them as on the figures.
fn choices(job: &Job) -> Vec<Vec<Cell>> {
    let (choices, fields, table) = (&job.choices, &words().fields, &words().tables);
    let row = |name: &'static str, value: &str, made: bool| {
        let from = if made { table.typed } else { fields.assumed };
        vec![Cell::words(name), Cell::words(value.to_owned()), Cell::words(from)]
    };
    let marked = if choices.terminals_marked_75() { words().frame.on } else { words().frame.off };
    let cooler = if choices.cooler_water() { words().frame.on } else { words().frame.off };
    let mut rows = of_water(job, &row);
    rows.extend(of_supply(job, &row));
    rows.extend([
        row(fields.metal_label, (fields.metal)(choices.metal()), choices.metal.is_some()),
        row(fields.insulation_label, rating(choices.insulation()), choices.insulation.is_some()),
        row(fields.terminals_label, marked, choices.terminals_marked_75.is_some()),
        row(fields.cooler_label, cooler, choices.cooler_water.is_some()),
        row(fields.build_label, (fields.build)(choices.build()), choices.build.is_some()),
        row(fields.sets_label, (fields.sets)(choices.most_sets()), choices.most_sets.is_some()),
    ]);
    rows
}

fn of_supply(job: &Job, row: &dyn Fn(&'static str, &str, bool) -> Vec<Cell>) -> Vec<Vec<Cell>> {
    let (choices, words, fields) = (&job.choices, &words().ways, &words().fields);
    let on = |on: bool| if on { crate::locale::words().frame.on } else { crate::locale::words().frame.off };
    let mut rows = vec![row(words.place_label, (words.of_place)(choices.place()), choices.place.is_some())];
    if choices.place().outdoors() {
        rows.push(row(words.shaded_label, on(choices.out_of_the_sun()), choices.shaded.is_some()));
    }
    let enclosure = (words.enclosure)(choices.enclosure().row().name);
    rows.extend([
        row(words.enclosure_label, &enclosure, choices.enclosure.is_some()),
        row(words.feeder_metal, (fields.metal)(choices.feeder_metal()), choices.feeder_metal.is_some()),
        row(words.feeder_build, (fields.build)(choices.feeder_build()), choices.feeder_build.is_some()),
        row(words.inverter_label, on(choices.inverter_duty()), choices.inverter_duty.is_some()),
    ]);
    rows
}

fn of_water(job: &Job, row: &dyn Fn(&'static str, &str, bool) -> Vec<Cell>) -> Vec<Vec<Cell>> {
    let (choices, flow) = (&job.choices, &words().flow);
    let submersible = choices.motor_kind() == MotorKind::Submersible;
    let mut rows = vec![
        row(flow.where_label, (flow.place)(choices.motor_kind()), choices.motor_kind.is_some()),
        row(flow.demand_label, (flow.demand)(choices.demand()), choices.demand.is_some()),
    ];
    if choices.demand() == DemandBy::Land {
        rows.push(row(flow.depth_of_label, (flow.depth_of)(choices.depth_of()), choices.depth_of.is_some()));
    }
    if submersible {
        rows.push(row(flow.drawdown_label, (flow.drawdown)(choices.drawdown()), choices.drawdown.is_some()));
    }
    for part in [if submersible { Part::Drop } else { Part::Suction }, Part::Surface] {
        let pick = choices.pipe(part);
        rows.push(row((flow.series_label)(part), &series_name(choices.series(part)), pick.series.is_some()));
        let size = pick.size.map_or_else(|| "–".to_owned(), size_name);
        rows.push(row((flow.size_label)(part), &size, pick.size.is_some()));
    }
    rows.push(row(flow.friction_label, (flow.friction)(choices.friction()), choices.friction.is_some()));
    rows.push(row(flow.control_label, (flow.control)(choices.control()), choices.control.is_some()));
    rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::locale::Shown;
    use crate::pages::job::year;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::papers::{Measured, Working, working};
    use wellwright_core::quantity::Entry;

    /// Everything that a working says in figures.
    fn figures_of(working: &Working) -> Vec<Measured> {
        let steps = working.steps.iter().map(|step| step.result);
        let values = working.values.iter().map(|put| put.value);
        let limits = working.limit.iter().flat_map(|limit| [limit.actual, limit.limit]);
        let more = working.more.iter().copied();
        core::iter::once(working.result).chain(more).chain(steps).chain(values).chain(limits).collect()
    }

    /// The demo jobs, and each with a year of duties under a tariff.
    fn with_duties() -> Vec<Job> {
        let mut jobs = demo_jobs();
        for mut job in demo_jobs() {
            "gpm, hours\n20, 1500\n12, 900\n".clone_into(&mut job.duty);
            let figures = [(Field::DemandPrice, 9.0), (Field::StandingCharge, 20.0), (Field::Carbon, 0.8)];
            for (field, value) in figures {
                job.set(field, Some(Entry::new(value, field.spec().accepted.unit)));
            }
            jobs.push(job);
        }
        jobs
    }

    fn worked(cell: &Cell) -> Option<Topic> {
        match cell {
            Cell::Worked(_, topic) => Some(*topic),
            _ => None,
        }
    }

    /// Whether a working holds a figure as a table tells it.
    fn holds(answer: &Evaluation, topic: Topic, system: UnitSystem, shown: &Shown) -> bool {
        let found = working(answer, topic, system).unwrap();
        let decimals = shown.figure.split_once('.').map_or(0, |(_, after)| after.len());
        // A depth that a size reaches is rounded to its safe side.
        let share = if matches!(topic, Topic::Piece(..)) { 1.000_001 } else { 0.500_001 };
        let off = share * 10_f64.powi(-i32::try_from(decimals).unwrap());
        // A table tells kilowatts and percent where a formula has watts and a share.
        let times = match shown.unit {
            "kW" if matches!(topic, Topic::Year(_)) => 0.001,
            "%" if matches!(topic, Topic::CurvePoint(_)) => 100.0,
            _ => 1.0,
        };
        figures_of(&found).iter().any(|figure| (figure.value * times - shown.value).abs() <= off)
    }

    #[test]
    fn every_figure_of_every_table_stands_in_a_working_that_opens() {
        let tables = &words().tables;
        let typed = [tables.drive_sends, tables.motor_connected, tables.nameplate_amps];
        let mut opened = 0;
        for job in with_duties() {
            let answer = evaluate(&job);
            for system in [UnitSystem::Us, UnitSystem::Si] {
                let mut grids = vec![here(&answer, system), service(&answer, system), costs(&answer), ways(&answer)];
                grids.extend([year::rows(&answer, system), year::summary(&answer, system)]);
                grids.extend(Basis::ALL.map(|basis| steps(&answer, system, basis)));
                grids.push(curve(&answer, system));
                for row in grids.into_iter().flatten().flat_map(|grid| grid.rows) {
                    let name = row[0].text();
                    let topics: Vec<Topic> = row.iter().filter_map(worked).collect();
                    for cell in &row[1..] {
                        match cell {
                            Cell::Words(_) => {}
                            Cell::Worked(shown, topic) => {
                                let told = holds(&answer, *topic, system, shown);
                                assert!(told, "{name}: {} is not in {topic:?}", shown.text());
                                opened += 1;
                            }
                            // The working of its row holds it, or it is what was put in.
                            Cell::Figure(shown) => {
                                let told = topics.iter().any(|topic| holds(&answer, *topic, system, shown));
                                let put_in = typed.contains(&name.as_str());
                                assert!(told || put_in, "{name}: {} opens nothing", shown.text());
                            }
                        }
                    }
                }
            }
        }
        assert!(opened > 100, "{opened}");
    }
}
