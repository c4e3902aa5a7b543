//! What is told beside the figures of some jobs: every working, parts list, lesson, range and ranking. Frozen as the
//! evaluations are; that each working leads to its answer is proved by `properties`.

use super::text;
use std::fmt::Write as _;
use std::path::Path;
use wellwright_core::evaluate::range::{Band, band, saving_range};
use wellwright_core::evaluate::ranking::ranking;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::job::{Field, Job, Way, wire};
use wellwright_core::papers::{
    LessonStep, LessonSum, Math, Topic, Working, lesson, parts, question, with_numbers_of, working,
};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, in_feet};
use wellwright_core::standards::conductor::Metal;

/// Wells and a surface pump, with and without a curve, of both systems of units; then others for their workings alone: an
/// aquifer and land, sets in parallel, a pump between two switches, every place in the other units, a curve of another
/// frequency, a lead of aluminum.
const JOBS: [(&str, UnitSystem); 10] = [
    ("house_and_stock_well_on_its_supply", UnitSystem::Us),
    ("field_surface_pump_on_its_supply", UnitSystem::Si),
    ("pump_curve_with_a_year", UnitSystem::Us),
    ("every_place_with_supply_in_si", UnitSystem::Si),
    ("land_and_aquifer", UnitSystem::Us),
    ("surface_motor_parallel_sets", UnitSystem::Us),
    ("pump_curve_on_off", UnitSystem::Si),
    ("every_place_in_si", UnitSystem::Us),
    ("pump_curve_on_off, its curve of 50 Hz", UnitSystem::Us),
    ("pump_curve_with_a_year, in aluminum", UnitSystem::Us),
];

fn of_entry(entry: Entry) -> String {
    format!("{} {:?}", entry.value, entry.unit)
}

fn of_math(pieces: &[Math]) -> String {
    let one = |piece: &Math| match piece {
        Math::Symbol(symbol) => symbol.text(),
        Math::Number(entry) => of_entry(*entry),
        Math::Sign(sign) => (*sign).to_owned(),
        Math::Fraction(over, under) => format!("({})/({})", of_math(over), of_math(under)),
        Math::Root(of) => format!("√({})", of_math(of)),
        Math::Power(of, to) => format!("({})^{to}", of_math(of)),
        Math::Max(one, other) => format!("max({}, {})", of_math(one), of_math(other)),
        Math::Min(one, other) => format!("min({}, {})", of_math(one), of_math(other)),
    };
    pieces.iter().map(one).collect::<Vec<_>>().join(" ")
}

fn of_working(found: &Working) -> String {
    let mut told = format!("{:?} = {}", found.topic, of_entry(found.result));
    for more in &found.more {
        write!(told, ", {}", of_entry(*more)).unwrap();
    }
    for step in &found.steps {
        write!(told, "\n  {} = {} = {}", step.symbol.text(), of_math(&step.formula), of_entry(step.result)).unwrap();
    }
    for put in &found.values {
        let value = of_entry(put.value);
        write!(told, "\n  where {} {value} is {:?}, {:?}", put.symbol.text(), put.name, put.origin).unwrap();
    }
    for entered in &found.entered {
        write!(told, "\n  by {:?} {:?}", entered.name, entered.value).unwrap();
    }
    if let Some(limit) = &found.limit {
        write!(told, "\n  {limit:?}").unwrap();
    }
    told + &format!("\n  {:?} {:?}", found.sources, found.caveats)
}

fn of_lesson(job: &Job, answer: &Evaluation, system: UnitSystem) -> String {
    let Some(found) = lesson(answer) else { return "no lesson".to_owned() };
    let ratios = [found.least_ratio(), found.size_ratio(), found.metal_ratio()];
    let areas = Way::ALL.map(|way| found.area_at(way, found.lead * 1.5));
    let questions: Vec<_> = LessonStep::ALL.into_iter().map(|step| (step, question(&found, step))).collect();
    let its_job = with_numbers_of(job, answer, system).map(|job| wire::write(&job).to_string());
    format!("{found:?}\n{ratios:?} {areas:?} {:?}\n{questions:?}\n{its_job:?}", found.larger_motor())
}

fn stored(name: &str) -> (Job, Evaluation) {
    let (name, other) = name.split_once(", ").unwrap_or((name, ""));
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.job.json"));
    let mut job = wire::read_text(&text(&path)).unwrap();
    match other {
        "its curve of 50 Hz" => job.set(Field::CurveFrequency, Some(Entry::new(50.0, Unit::Hertz))),
        "with a larger motor" => job.set(Field::MotorPower, Some(Entry::new(60.0, Unit::Horsepower))),
        "in aluminum" => job.choices.metal = Some(Metal::Aluminum),
        _ => assert_eq!(other, ""),
    }
    let answer = evaluate(&job);
    (job, answer)
}

fn workings(name: &str, system: UnitSystem) -> String {
    let (job, answer) = stored(name);
    let picked = answer.ways.picked().map(|way| way.key());
    let place = answer.ways.all.iter().position(|way| Some(way.key()) == picked);
    let mut told = format!("== {name}\n");
    // Rows of tables open with a working too.
    let pieces = Way::ALL.into_iter().flat_map(|way| {
        [(0, Basis::Cable), (1, Basis::Installed), (2, Basis::Lifetime)].map(|(at, basis)| Topic::Piece(way, at, basis))
    });
    let last = answer.sweep.iter().flat_map(|sweep| &sweep.ways);
    let last = last.map(|way| Topic::Piece(way.way, way.pieces.len().saturating_sub(1), Basis::Cable));
    let required = (0..answer.ways.all.len()).map(Topic::WayRequired);
    let topics = Topic::all(place).into_iter().chain((0..6).map(Topic::CurvePoint)).chain(pieces).chain(last);
    let of_both = [LessonSum::Current, LessonSum::SameWire, LessonSum::Area, LessonSum::Least, LessonSum::Peak];
    let sums = of_both.into_iter().flat_map(|sum| Way::ALL.map(sum)).chain([LessonSum::Ratio, LessonSum::Metal]);
    let topics = topics.chain(required).chain(sums.map(Topic::Lesson));
    for found in topics.filter_map(|topic| working(&answer, topic, system)) {
        told += &(of_working(&found) + "\n");
    }
    for part in parts(&job, &answer) {
        writeln!(told, "{part:?}").unwrap();
    }
    told + &of_lesson(&job, &answer, system) + "\n"
}

/// Jobs whose ways are told one and all: a well, a surface pump, and one that most equipment is too small for.
const OF_WAYS: [(&str, UnitSystem); 3] = [
    ("house_and_stock_well_on_its_supply", UnitSystem::Us),
    ("field_surface_pump_on_its_supply", UnitSystem::Si),
    ("house_and_stock_well_on_its_supply, with a larger motor", UnitSystem::Us),
];

fn ways(name: &str, system: UnitSystem) -> String {
    let (_, answer) = stored(name);
    let mut told = String::new();
    let of_none = Topic::all(None);
    for (place, way) in answer.ways.all.iter().enumerate() {
        writeln!(told, "== {name}, {:?}", way.key()).unwrap();
        let own = Topic::all(Some(place)).into_iter().filter(|topic| !of_none.contains(topic));
        for found in own.filter_map(|topic| working(&answer, topic, system)) {
            told += &(of_working(&found) + "\n");
        }
    }
    told
}

/// The job with its pump a hair below the depth from which on 480 V stays cheaper: what is assumed decides there.
fn at_the_even_depth(job: &Job, answer: &Evaluation) -> Option<Job> {
    let even = answer.sweep.as_ref()?.break_even(Basis::Installed).lasting()?.depth;
    let mut moved = job.clone();
    moved.set(Field::PumpSetting, Some(Entry::new(in_feet(even) * 1.002, Unit::Foot)));
    Some(moved)
}

fn outlook(name: &str, _: UnitSystem) -> String {
    let (job, answer) = stored(name);
    let mut told = format!("== {name}\n") + &of_outlook(&job, &answer);
    if let Some(moved) = at_the_even_depth(&job, &answer) {
        told += &(format!("== {name}, where both cost the same\n") + &of_outlook(&moved, &evaluate(&moved)));
    }
    told
}

fn of_outlook(job: &Job, answer: &Evaluation) -> String {
    let saved = |end: Evaluation| end.here.and_then(|here| here.saving);
    let bands = [Band::None, Band::Metal, Band::Drop].map(|of| band(job, answer, of).map(|ends| ends.map(saved)));
    let mut told = format!("{:?}\n{bands:?}\n", saving_range(answer));
    let all = ranking(job, answer);
    for rank in &all.ranks {
        writeln!(told, "{rank:?}").unwrap();
    }
    for basis in Basis::ALL {
        let order: Vec<_> = all.on(basis).iter().map(|rank| (rank.what, rank.moves(basis))).collect();
        writeln!(told, "{basis:?} {order:?}").unwrap();
    }
    writeln!(told, "{:?}", all.findings()).unwrap();
    told
}

/// A text in numbers and what stands between them.
fn pieces(text: &str) -> Vec<&str> {
    let of_number = |c: char| c.is_ascii_digit() || "+-.e".contains(c);
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let same = |c: char| of_number(c) == of_number(first);
        let end = rest.find(|c| !same(c)).unwrap_or(rest.len());
        let (piece, after) = rest.split_at(end);
        found.push(piece);
        rest = after;
    }
    found
}

fn same(one: &str, other: &str) -> bool {
    let both = one.parse::<f64>().ok().zip(other.parse::<f64>().ok());
    one == other || both.is_some_and(|(a, b)| (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-3))
}

/// Written anew where `WELLWRIGHT_WRITE` is set.
fn is_told_as_it_was(file: &str, jobs: &[(&str, UnitSystem)], tell: fn(&str, UnitSystem) -> String) {
    let now: String = jobs.iter().map(|(name, system)| tell(name, *system)).collect();
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("golden").join(file);
    if std::env::var_os("WELLWRIGHT_WRITE").is_some() {
        std::fs::write(&path, &now).unwrap();
    }
    let kept = text(&path);
    for (number, (line, before)) in now.lines().zip(kept.lines()).enumerate() {
        let (pieces, others) = (pieces(line), pieces(before));
        let agrees = pieces.len() == others.len() && pieces.iter().zip(&others).all(|(a, b)| same(a, b));
        assert!(agrees, "line {}:\n{line}\nwas\n{before}", number + 1);
    }
    assert_eq!(now.lines().count(), kept.lines().count());
}

#[test]
fn workings_parts_and_lesson_are_told_as_they_were() {
    is_told_as_it_was("workings.txt", &JOBS, workings);
}

#[test]
fn range_and_ranking_are_told_as_they_were() {
    is_told_as_it_was("outlook.txt", &JOBS[..4], outlook);
}

#[test]
fn workings_of_every_way_are_told_as_they_were() {
    is_told_as_it_was("ways.txt", &OF_WAYS, ways);
}
