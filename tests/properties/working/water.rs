//! The workings of the water and the pump over whole jobs: every law of the well, every way to tell the demand, pumps with
//! and without a curve, slow and fast water.

use super::figures::{of_the_water, own, topics};
use super::{SYSTEMS, close, every_topic_holds, numbers};
use std::collections::BTreeSet;
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::{Control, DemandBy, DepthOf, DrawdownBy, Field, Job, Part, Way, wire};
use wellwright_core::papers::{Caveat, LimitKind, Math, Measured, Name, Topic, Working, working};
use wellwright_core::pump::demo::{DemoPump, FIELD_SURFACE, FIELD_WELL, HOUSE_WELL};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};
use wellwright_core::water::line::FrictionMethod;

const HOUSE: &str = include_str!("../../../core/examples/jobs/house_and_stock_well.json");
const FIELD: &str = include_str!("../../../core/examples/jobs/field_surface_pump.json");

fn read(text: &str) -> Job {
    wire::read_text(text).unwrap()
}

/// A job with other figures, each in the unit of its accepted range.
fn with(mut job: Job, figures: &[(Field, f64)]) -> Job {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
    job
}

fn without(mut job: Job, fields: &[Field]) -> Job {
    fields.iter().for_each(|field| job.set(*field, None));
    job
}

/// A job with a demo pump's curve: gpm, ft, percent.
fn curve(mut job: Job, pump: DemoPump) -> Job {
    job.curve = pump.rows.iter().map(|(flow, head, share)| format!("{flow}\t{head}\t{share}\n")).collect();
    job
}

fn house() -> Job {
    read(HOUSE)
}

/// The house's well with a curve and no motor told: the pump chooses it.
fn house_with_curve() -> Job {
    let known = [Field::MotorPower, Field::NameplateAmps230, Field::NameplateAmps460];
    with(without(curve(house(), HOUSE_WELL), &known), &[(Field::PumpMass, 120.0)])
}

fn land(depth_of: DepthOf) -> Job {
    let mut job = curve(house(), FIELD_WELL);
    (job.choices.demand, job.choices.depth_of) = (Some(DemandBy::Land), Some(depth_of));
    job.choices.control = Some(Control::OnOff);
    job.choices.pipes = Default::default();
    let job = without(job, &[Field::SurfaceInside, Field::CutIn]);
    with(job, &[(Field::IrrigatedArea, 20.0), (Field::WaterDepth, 0.3), (Field::StaticLevel, 200.0)])
}

fn people() -> Job {
    let mut job = house();
    job.choices.demand = Some(DemandBy::PeopleAndStock);
    with(job, &[(Field::People, 4.0), (Field::BeefCattle, 150.0), (Field::Horses, 3.0), (Field::BeefDaily, 18.0)])
}

fn aquifer(figures: &[(Field, f64)]) -> Job {
    let mut job = house();
    job.choices.drawdown = Some(DrawdownBy::Aquifer);
    let job = with(job, &[(Field::Transmissivity, 1500.0), (Field::Storage, 0.0005)]);
    with(job, figures)
}

/// Four times the demand at other frequencies than the curve's, by the other method of friction.
fn other_speeds() -> Job {
    let mut job = curve(read(FIELD), FIELD_SURFACE);
    job.choices.friction = Some(FrictionMethod::HazenWilliams);
    let speeds = [(Field::CurveFrequency, 60.0), (Field::MostFrequency, 65.0), (Field::LeastFrequency, 40.0)];
    with(with(job, &speeds), &[(Field::NpshRequired, 18.0)])
}

/// Every job that is tried.
pub fn jobs() -> Vec<Job> {
    let measured = |mut job: Job| {
        job.choices.drawdown = Some(DrawdownBy::Measured);
        with(job, &[(Field::Drawdown, 42.0), (Field::MinimumSubmergence, 200.0)])
    };
    let mut switched = house_with_curve();
    switched.choices.control = Some(Control::OnOff);
    vec![
        house(),
        read(FIELD),
        house_with_curve(),
        with(switched, &[(Field::MostFrequency, 58.0)]),
        land(DepthOf::Gross),
        land(DepthOf::Net),
        people(),
        aquifer(&[]),
        aquifer(&[(Field::WellLoss, 0.01)]),
        aquifer(&[(Field::Transmissivity, 2.0), (Field::Storage, 0.3), (Field::AquiferTime, 1.0)]),
        measured(house()),
        without(measured(house()), &[Field::Flow]),
        other_speeds(),
        // Slow water: laminar in the drop pipe; then in transition.
        with(house(), &[(Field::Flow, 0.6), (Field::DropInside, 3.0)]),
        with(house(), &[(Field::Flow, 2.0)]),
        // Too fast for the pipe, the pump and the well.
        with(house_with_curve(), &[(Field::Flow, 36.0)]),
        // Downhill: the water runs by itself.
        with(read(FIELD), &[(Field::Rise, -500.0), (Field::Pressure, 0.0)]),
        // More air than at sea level, water that nearly boils, a lift that the suction can't take.
        with(read(FIELD), &[(Field::Altitude, -300.0), (Field::WaterTemperature, 139.0), (Field::SuctionLift, 30.0)]),
        with(read(FIELD), &[(Field::NpshRequired, 8.0)]),
        // Little between the lowest useful frequency and the highest; then one too low for the motor.
        with(house(), &[(Field::MostFrequency, 54.0)]),
        with(house(), &[(Field::LeastFrequency, 52.0)]),
        with(house(), &[(Field::SleeveInside, 4.0), (Field::LeastFlow, 1.0), (Field::TankPrecharge, 30.0)]),
    ]
}

#[test]
fn every_working_of_the_jobs_leads_to_its_answer() {
    for job in jobs() {
        let answer = evaluate(&job);
        every_topic_holds(&answer).unwrap_or_else(|trouble| panic!("{trouble:?} in {}, {:?}", job.name, answer.errors));
    }
}

/// The laws above hold idly where nothing comes up.
#[test]
fn the_jobs_meet_every_working_of_the_water() {
    let mut met = BTreeSet::new();
    let mut caveats = Vec::new();
    for answer in jobs().iter().map(evaluate) {
        for topic in of_the_water() {
            let Some(found) = working(&answer, topic, UnitSystem::Us) else { continue };
            met.insert(format!("{topic:?}"));
            let kind = super::kind(topic);
            met.extend(found.steps.iter().map(|step| format!("{kind} {}", step.symbol.text())));
            met.extend(found.limit.iter().map(|limit| format!("{kind} {}", limit.holds)));
            caveats.extend(found.caveats);
        }
    }
    for topic in of_the_water() {
        assert!(met.contains(&format!("{topic:?}")), "{topic:?}");
    }
    assert!(caveats.contains(&Caveat::TransitionFlow) && caveats.contains(&Caveat::LightLoad), "{caveats:?}");
    let limited = ["Submergence", "WellGives", "Friction", "SuctionHead", "DeadHead", "Cooling", "CoolingFlow"];
    let more = ["PumpSpeed", "LowestSpeed", "MotorLoad"];
    for topic in limited.into_iter().chain(more) {
        for holds in [true, false] {
            assert!(met.contains(&format!("{topic} {holds}")), "{topic} {holds} is not among {met:?}");
        }
    }
    let steps = [
        "Drawdown s",
        "Drawdown s_w",
        "Drawdown s_c",
        "Drawdown W(u)",
        "WellGives C_a",
        "Demand d_g",
        "Demand V_w",
        "Friction f_D",
        "Friction x_2",
        "Friction h_w",
        "DeadHead H_0",
        "DeadHead p_dp",
        "Tank n_s",
        "Tank t_r",
        "Hanging M",
        "ShaftPower q",
        "ShaftPower P_t",
        "PumpSpeed h_q",
        "LowestSpeed f_u",
        "MotorLoad x_max",
        "MotorLoad x_f",
        "RunningCurrent x_s",
        "SuctionHead NPSH_n",
        "PumpingLevel s",
        "Submergence s_a",
    ];
    for step in steps {
        assert!(met.contains(step), "{step} is not among {met:?}");
    }
}

fn of(job: &Job, topic: Topic) -> Working {
    working(&evaluate(job), topic, UnitSystem::Us).unwrap_or_else(|| panic!("{topic:?}"))
}

fn step(working: &Working, symbol: &str) -> f64 {
    let found = working.steps.iter().find(|step| step.symbol.text() == symbol);
    found.unwrap_or_else(|| panic!("no {symbol} in {working:?}")).result.value
}

fn put(working: &Working, name: Name) -> f64 {
    working.values.iter().find(|put| put.name == name).unwrap_or_else(|| panic!("no {name:?}")).value.value
}

/// A value rounds to what is printed.
#[track_caller]
fn prints(value: f64, printed: &str) {
    let decimals = printed.split_once('.').map_or(0, |(_, fraction)| fraction.len());
    assert_eq!(format!("{value:.decimals$}"), printed);
}

/// The house's well worked by hand with the formulas that core documents, held to the printed digits; not published.
#[test]
fn the_house_as_it_is_worked_by_hand() {
    let job = house();
    prints(of(&job, Topic::Drawdown).result.value, "41.667");
    let drop = of(&job, Topic::Friction(Part::Drop));
    prints(step(&drop, "v"), "3.940");
    prints(put(&drop, Name::FrictionFactor), "0.024781");
    prints(drop.result.value, "27.624");
    prints(of(&job, Topic::Friction(Part::Surface)).result.value, "3.114");
    prints(of(&job, Topic::Fittings(Part::Drop)).result.value, "2.171");
    prints(of(&job, Topic::PressureHead).result.value, "138.54");
    prints(of(&job, Topic::VelocityHead).result.value, "0.241");
    prints(of(&job, Topic::TotalHead).result.value, "647.35");
    let shaft = of(&job, Topic::ShaftPower);
    prints(shaft.result.value, "6.8145");
    // 25 · 647.35/(3960 · 0.60)
    prints(step(&shaft, "P_t"), "6.811");
    prints(of(&job, Topic::MotorLoad).result.value, "90.9");
    prints(of(&job, Topic::LowestSpeed).result.value, "50.14");
    let dead = of(&job, Topic::DeadHead);
    prints(dead.result.value, "167");
    let limit = dead.limit.unwrap();
    assert!(!limit.holds && limit.kind == LimitKind::AtMost && limit.limit == Entry::new(125.0, PSI));
    prints(of(&job, Topic::Cooling).result.value, "0.449");
    prints(of(&job, Topic::CoolingFlow).result.value, "13.9");
    let tank = of(&job, Topic::Tank);
    prints(step(&tank, "p_b"), "12.416");
    prints(tank.result.value, "2.452");
    prints(of(&job, Topic::Surge).result.value, "243");
    // π · 0.145 · 1.755 in² of steel, 7,850 kg/m³, and π/4 · 1.61² in² of water, 62.366 lb/ft³, over 620 ft.
    prints(of(&job, Topic::Hanging).result.value, "2233.5");
}

const PSI: Unit = Unit::PoundPerSquareInch;

/// The field's surface pump, the same way.
#[test]
fn the_field_as_it_is_worked_by_hand() {
    let job = read(FIELD);
    prints(of(&job, Topic::TotalHead).result.value, "194.42");
    prints(of(&job, Topic::ShaftPower).result.value, "50.26");
    prints(of(&job, Topic::MotorLoad).result.value, "83.8");
    let suction = of(&job, Topic::SuctionHead);
    prints(step(&suction, "h_b"), "30.538");
    prints(step(&suction, "h_vp"), "1.175");
    prints(put(&suction, Name::PipeLoss(Part::Suction)), "0.281");
    prints(put(&suction, Name::FittingLoss(Part::Suction)), "0.782");
    prints(suction.result.value, "18.30");
    // Its lead lies on the surface: 30 ft, and no depth.
    let drop = of(&job, Topic::Drop(Way::V480));
    assert_eq!(put(&drop, Name::SurfaceRun), 30.0);
    assert!(drop.values.iter().all(|put| put.name != Name::PumpSetting), "{drop:?}");
}

/// Both sides of Colebrook's equation, and both heads where a pump's curve meets the parabola of similar points.
#[test]
fn what_was_found_by_search_satisfies_its_equation() {
    let mut met = [0; 2];
    for answer in jobs().iter().map(evaluate) {
        for part in Part::ALL {
            let friction = working(&answer, Topic::Friction(part), UnitSystem::Us);
            if let Some(found) = friction.filter(|found| found.steps.iter().any(|step| step.symbol.text() == "x_1")) {
                assert!(close(step(&found, "x_1"), step(&found, "x_2"), 0.0), "{found:?}");
                met[0] += 1;
            }
        }
        if let Some(found) = working(&answer, Topic::PumpSpeed, UnitSystem::Us) {
            assert!(close(step(&found, "h_q"), put(&found, Name::CurveHead), 0.0), "{found:?}");
            met[1] += 1;
        }
    }
    assert!(met[0] > 20 && met[1] > 5, "{met:?}");
}

/// Theis in the units of the trade: s = 114.6 Q W(u)/T with gpm and gal/(d ft), u = 1.87 r² S/(T t) with feet and days;
/// 114.6 and 1.87 are rounded, 1440/(4 π) and 7.48/4.
#[test]
fn the_aquifer_in_the_form_of_the_trade() {
    let found = of(&aquifer(&[]), Topic::Drawdown);
    let (radius, day) = (8.0 / 24.0, 1.0);
    let u = 1.87 * radius * radius * 0.0005 / (1500.0 * day);
    assert!((step(&found, "u") / u - 1.0).abs() < 1e-3, "{found:?}");
    let function = step(&found, "W(u)");
    // W(u) = −0.5772 − ln u for so small an argument.
    assert!((function + 0.5772 + u.ln()).abs() < 2e-3, "{function}");
    assert!((found.result.value / (114.6 * 25.0 * function / 1500.0) - 1.0).abs() < 1e-3, "{found:?}");
    // The short form lacks u and less: nothing here.
    assert!((step(&found, "s_c") / found.result.value - 1.0).abs() < 1e-6);
    // Tables print W(0.5) = 0.5598 and W(1) = 0.2194; here u is large and the function is read from its table.
    let tight = aquifer(&[(Field::Transmissivity, 2.0), (Field::Storage, 0.3), (Field::AquiferTime, 1.0)]);
    let found = of(&tight, Topic::Drawdown);
    let (u, function) = (step(&found, "u"), put(&found, Name::WellFunction));
    assert!(u > 0.5 && u < 1.0 && function < 0.5598 && function > 0.2194, "{u}, {function}");
}

/// A motor that the pump chose shows the power at the shaft, and says that its own was worked out.
#[test]
fn a_motor_that_follows_shows_the_shaft() {
    let found = of(&house_with_curve(), Topic::MotorCurrent(Way::V240));
    let shaft = of(&house_with_curve(), Topic::ShaftPower).result.value;
    assert_eq!(put(&found, Name::ShaftPower), shaft);
    assert!(put(&found, Name::MotorPower) >= shaft && shaft > 5.0, "{found:?}");
    let typed = of(&house(), Topic::MotorCurrent(Way::V240));
    assert!(typed.values.iter().all(|put| put.name != Name::ShaftPower));
}

/// A number as it is shown, to seven digits.
fn to_seven(number: Measured) -> Measured {
    let digits = format!("{:.6e}", number.value);
    Entry::new(digits.parse().unwrap(), number.unit)
}

fn rounded(pieces: &[Math]) -> Vec<Math> {
    let piece = |piece: &Math| match piece {
        Math::Number(number) => Math::Number(to_seven(*number)),
        Math::Fraction(over, under) => Math::Fraction(rounded(over), rounded(under)),
        Math::Root(part) => Math::Root(rounded(part)),
        Math::Power(base, power) => Math::Power(rounded(base), to_seven(Entry::new(*power, Unit::One)).value),
        Math::Max(one, other) => Math::Max(rounded(one), rounded(other)),
        Math::Min(one, other) => Math::Min(rounded(one), rounded(other)),
        other => other.clone(),
    };
    pieces.iter().map(piece).collect()
}

/// A reader with a pocket calculator, who has the seven digits that stand on the page, finds the four of the answer.
#[test]
fn the_digits_on_the_page_are_enough() {
    for answer in [house(), read(FIELD), house_with_curve(), people(), aquifer(&[])].iter().map(evaluate) {
        for (topic, system) in of_the_water().into_iter().flat_map(|topic| SYSTEMS.map(|system| (topic, system))) {
            let Some(found) = working(&answer, topic, system) else { continue };
            for step in &found.steps {
                let again = numbers(&rounded(&step.filled)).unwrap().value;
                assert!(
                    again == step.result.value || (again / step.result.value - 1.0).abs() < 2e-5,
                    "{again}: {step:?} of {topic:?}"
                );
            }
        }
    }
}

/// Without a flow nothing of the line is worked, and a measured drawdown stands as it is.
#[test]
fn without_a_flow_the_levels_still_stand() {
    let mut job = without(house(), &[Field::Flow]);
    job.choices.drawdown = Some(DrawdownBy::Measured);
    let job = with(job, &[(Field::Drawdown, 42.0)]);
    let answer = evaluate(&job);
    let level = of(&job, Topic::PumpingLevel);
    assert_eq!((level.steps.len(), level.result), (1, Entry::new(472.0, Unit::Foot)));
    let there: Vec<Topic> = topics().into_iter().filter(|topic| own(&answer, *topic).is_some()).collect();
    assert!(there.contains(&Topic::Drawdown) && there.contains(&Topic::Tank), "{there:?}");
    assert!(!there.contains(&Topic::TotalHead) && !there.contains(&Topic::WellGives), "{there:?}");
}
