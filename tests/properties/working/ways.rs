//! The workings of the ways to run the motor and of the leads in service: both examples with other supplies, places and
//! choices, and random jobs with random supplies.

use super::super::jobs::{Plain, plain};
use super::super::tried;
use super::figures::{OF_A_WAY, of_the_service, of_the_ways, topics};
use super::{SYSTEMS, every_topic_holds, kind, steps_hold};
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use std::collections::BTreeSet;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::reactance::Build;
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::job::{Field, Job, Place, Sets, Way, wire};
use wellwright_core::papers::{EnteredValue, Name, Topic, Working, working};
use wellwright_core::power::family::Class;
use wellwright_core::power::generator::Hookup;
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::standards::ampacity::{ALUMINUM, COPPER};
use wellwright_core::standards::conductor::Metal;

const HOUSE: &str = include_str!("../../../core/examples/jobs/house_and_stock_well.json");
const FIELD: &str = include_str!("../../../core/examples/jobs/field_surface_pump.json");

fn read(text: &str) -> Job {
    wire::read_text(text).unwrap()
}

fn house() -> Job {
    read(HOUSE)
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

/// The house's job with other choices.
fn chosen(job: Job, choose: impl FnOnce(&mut wellwright_core::job::Choices)) -> Job {
    let mut job = job;
    choose(&mut job.choices);
    job
}

/// A motor of the field's job so large that supply conductors and lead come in several sets.
fn large() -> Job {
    let known = [Field::NameplateAmps460, Field::TransformerRating];
    let job = with(without(read(FIELD), &known), &[(Field::MotorPower, 150.0), (Field::PoleDistance, 200.0)]);
    chosen(job, |choices| {
        (choices.feeder_sets, choices.most_sets) = (Sets::new(4), Sets::new(4));
        (choices.feeder_metal, choices.feeder_build) = (Some(Metal::Aluminum), Some(Build::SteelConduit));
    })
}

/// Every job that is tried.
pub fn jobs() -> Vec<Job> {
    use Field as F;
    let amps = [F::ServiceAmps230, F::ServiceAmps460];
    let hot = chosen(house(), |choices| (choices.shaded, choices.place) = (Some(false), Some(Place::Outdoors)));
    let set = [(F::GeneratorRating, 20.0), (F::GeneratorSite, 0.85), (F::OtherLoad, 4.0), (F::UtilityLimit, 60.0)];
    let low = [(F::SupplyVolts, 480.0), (F::FeederAmbient, 35.0), (F::DriveAmbient, 42.0), (F::AllowedSupplyDrop, 2.0)];
    let pulses = [(F::MotorPeakLimit, 1200.0), (F::MotorImpedance, 900.0), (F::DeviceAmps, 20.0)];
    let line = [(F::LineDistance, 2600.0), (F::LineFree, 300.0), (F::Discount, 0.0), (F::OtherLoad, 12.0)];
    vec![
        house(),
        read(FIELD),
        without(house(), &[F::PoleDistance, F::DeviceAmps]),
        without(house(), &[F::TransformerRating, amps[0], F::DeviceAmps]),
        without(house(), &[amps[0], amps[1]]),
        with(without(hot.clone(), &[amps[1]]), &[(F::DriveAmbient, 38.0), (F::SunRise, 6.0), (F::Altitude, 1900.0)]),
        with(hot, &[(F::Altitude, 2900.0)]),
        chosen(with(house(), &set), |choices| choices.hookup = Some(Hookup::DoubleDelta)),
        chosen(with(house(), &set), |choices| choices.hookup = Some(Hookup::TwoLines)),
        with(house(), &[(F::GeneratorRating, 300.0)]),
        without(with(house(), &low), &[F::DeviceAmps]),
        with(house(), &line),
        chosen(with(house(), &line), |choices| choices.three_phase = Some(Class::Low)),
        with(chosen(house(), |choices| choices.build = Some(Build::FlatJacketed)), &pulses),
        chosen(house(), |choices| (choices.build, choices.inverter_duty) = (Some(Build::Twisted), Some(true))),
        chosen(house(), |choices| (choices.remedy, choices.feeder_build) = (Some(Remedy::SineFilter), None)),
        // So near that neither supply conductors nor lead are long; then no lead and no supply conductors at all.
        with(house(), &[(F::PumpSetting, 20.0), (F::StaticLevel, 5.0), (F::SurfaceRun, 0.0), (F::PoleDistance, 10.0)]),
        with(read(FIELD), &[(F::SurfaceRun, 0.0), (F::PoleDistance, 0.0)]),
        // No frame gives the current; then none has the size.
        with(house(), &[(F::MotorPower, 60.0), (F::ServiceAmps230, 240.0)]),
        with(house(), &[(F::MotorPower, 150.0), (F::ServiceAmps230, 3.0), (F::NameplateAmps230, 2.0)]),
        // A transformer that is too small, and a supply that sags.
        with(house(), &[(F::TransformerRating, 10.0), (F::TransformerImpedance, 5.0), (F::PoleDistance, 900.0)]),
        with(house(), &[(F::TransformerRating, 500.0), (F::PoleDistance, 3.0), (F::TransformerImpedance, 1.0)]),
        with(house(), &[(F::MarkedShortCircuit, 22.0), (F::StartDipMotor, 30.0), (F::StartDipPole, 30.0)]),
        with(house(), &[(F::StartDipMotor, 30.0), (F::StartDipPole, 1.0), (F::TransformerRating, 15.0)]),
        large(),
        chosen(large(), |choices| choices.build = Some(Build::FlatJacketed)),
        with(large(), &[(F::SupplyVolts, 240.0), (F::EnergyPrice, 0.3), (F::YearlyHours, 6000.0)]),
    ]
}

#[test]
fn every_working_of_the_ways_leads_to_its_answer() {
    for (at, job) in jobs().into_iter().enumerate() {
        let answer = evaluate(&job);
        let trouble = every_topic_holds(&answer);
        trouble.unwrap_or_else(|trouble| panic!("{trouble:?} in job {at}, {:?}", answer.errors));
    }
}

/// The laws hold idly where nothing comes up: steps and limits that the jobs must meet.
const MEETS: [&str; 45] = [
    "WayFrame I_s",
    "WayFrame I_o",
    "WayFrame I_o2",
    "WayFrame F_T",
    "WayFrame T_e",
    "WayFrame P_c",
    "WayFrame true",
    "WayFrame false",
    "WayInput P_l",
    "WaySupply I_ri",
    "WaySupplyDrop R_1",
    "WaySupply P_c",
    "WaySupplyDrop R",
    "WayDevice true",
    "WayDevice false",
    "WayVolts ΔV_f",
    "WayVolts ΔV_x",
    "WayVolts true",
    "WayVolts false",
    "WayPeak V_dc",
    "WayPeak V_s",
    "WayPeak true",
    "WayPeak false",
    "WaySag ΔV_t",
    "WayLoading true",
    "WayLoading false",
    "WayHarmonics true",
    "WayHarmonics false",
    "WayFault I_SCe",
    "WayFault true",
    "WayFault false",
    "WayStart true",
    "WayStart false",
    "WayGenerator S_st",
    "WayGenerator true",
    "WayGenerator false",
    "WayCost C_r",
    "WayCost C_x",
    "WayCost C_t",
    "LeadTemperature I_r30",
    "LeadTemperature R_T",
    "Alternating y_p",
    "FlatUnbalance u_V",
    "FlatUnbalance I_e1",
    "EconomicSize S",
];

#[test]
fn the_jobs_meet_every_working_of_the_ways() {
    let mut met = BTreeSet::new();
    for answer in jobs().iter().map(evaluate) {
        for topic in of_the_ways().into_iter().chain(of_the_service()) {
            let Some(found) = working(&answer, topic, UnitSystem::Us) else { continue };
            let kind = kind(topic);
            met.insert(kind.clone());
            met.extend(found.steps.iter().map(|step| format!("{kind} {}", step.symbol.text())));
            met.extend(found.values.iter().map(|put| format!("{kind} {}", put.symbol.text())));
            met.extend(found.limit.iter().map(|limit| format!("{kind} {}", limit.holds)));
        }
    }
    let missing: Vec<_> = MEETS.into_iter().filter(|one| !met.contains(*one)).collect();
    assert!(missing.is_empty(), "{missing:?} are not among {met:?}");
    for topic in OF_A_WAY {
        assert!(met.contains(&kind(topic(0))), "{:?}", topic(0));
    }
}

/// Figures of the supply, the place and the years, in the unit of each field, and how often of ten each is entered.
const LIKELY: [(Field, f64, f64, u32); 31] = [
    (Field::SupplyVolts, 200.0, 600.0, 5),
    (Field::PoleDistance, 0.0, 1500.0, 9),
    (Field::TransformerRating, 5.0, 500.0, 5),
    (Field::TransformerImpedance, 1.0, 8.0, 5),
    (Field::OtherLoad, 0.0, 60.0, 3),
    (Field::UtilityLimit, 10.0, 500.0, 3),
    (Field::FeederAmbient, -20.0, 55.0, 3),
    (Field::DriveAmbient, -20.0, 50.0, 3),
    (Field::SunRise, 0.0, 15.0, 3),
    (Field::Altitude, -100.0, 3200.0, 5),
    (Field::AllowedSupplyDrop, 0.5, 15.0, 5),
    (Field::MarkedShortCircuit, 1.0, 60.0, 3),
    (Field::StartDipMotor, 1.0, 30.0, 3),
    (Field::StartDipPole, 1.0, 30.0, 3),
    (Field::LineDistance, 0.0, 20_000.0, 5),
    (Field::LineFree, 0.0, 3000.0, 3),
    (Field::GeneratorRating, 5.0, 500.0, 5),
    (Field::GeneratorSite, 0.3, 1.0, 3),
    (Field::RiseTime, 0.02, 5.0, 3),
    (Field::WaveSpeed, 100.0, 250.0, 3),
    (Field::CableImpedance, 20.0, 300.0, 3),
    (Field::MotorImpedance, 100.0, 10_000.0, 3),
    (Field::MotorPeakLimit, 600.0, 3000.0, 3),
    (Field::YearlyHours, 0.0, 8784.0, 5),
    (Field::EnergyPrice, 0.0, 1.0, 5),
    (Field::Discount, 0.0, 30.0, 5),
    (Field::Years, 1.0, 50.0, 5),
    (Field::ServiceFactor, 1.0, 1.4, 3),
    (Field::ServiceAmps230, 1.0, 500.0, 2),
    (Field::ServiceAmps460, 0.6, 300.0, 2),
    (Field::LineFixed, 0.0, 20_000.0, 3),
];

/// A random job with a random supply.
fn supplied() -> impl Strategy<Value = Job> {
    let figures: Vec<_> = LIKELY
        .iter()
        .map(|(_, low, high, often)| proptest::option::weighted(f64::from(*often) / 10.0, *low..*high))
        .collect();
    let choices = (any::<[bool; 5]>(), 1u8..=4, 0usize..4, 0usize..5);
    (plain(), figures, choices).prop_map(|(plain, figures, (are, sets, build, remedy)): (Plain, Vec<_>, _)| {
        let mut job = plain.job(UnitSystem::Us);
        for ((field, ..), figure) in LIKELY.iter().zip(figures) {
            let entry = figure.map(|figure| Entry::new(figure, field.spec().accepted.unit));
            if entry.is_some() {
                job.set(*field, entry);
            }
        }
        const BUILDS: [Build; 4] = [Build::PlasticConduit, Build::SteelConduit, Build::FlatJacketed, Build::Twisted];
        let remedies = [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter];
        let [shaded, aluminum, low, duty, reconnected] = are;
        let choices = &mut job.choices;
        choices.shaded = Some(shaded);
        choices.feeder_metal = aluminum.then_some(Metal::Aluminum);
        choices.three_phase = low.then_some(Class::Low);
        choices.inverter_duty = Some(duty);
        choices.hookup = reconnected.then_some(Hookup::DoubleDelta);
        (choices.feeder_sets, choices.feeder_build) = (Sets::new(sets), Some(BUILDS[build]));
        choices.remedy = remedies.get(remedy).copied();
        job
    })
}

proptest! {
    #![proptest_config(tried(150))]

    #[test]
    fn every_step_of_a_random_supply_leads_to_its_result(job in supplied()) {
        every_topic_holds(&evaluate(&job))?;
    }
}

/// Where no usual remedy helps, the last one is paid for, and the working of the cost holds it.
#[test]
fn a_remedy_that_does_not_help_stands_in_the_working_of_the_cost() {
    let answer = evaluate(&with(house(), &[(Field::MotorPeakLimit, 600.0)]));
    let unhelped = answer.ways.all.iter().filter(|way| way.stress.is_some_and(|stress| stress.least.is_none()));
    let paid = unhelped.filter_map(|way| way.cost);
    let paid: Vec<Remedy> = paid.map(|cost| cost.remedy).collect();
    assert!(!paid.is_empty() && paid.iter().all(|remedy| *remedy == Remedy::SineFilter), "{paid:?}");
    every_topic_holds(&answer).unwrap();
}

/// The random supplies meet each kind of answer.
#[test]
fn the_random_supplies_meet_every_kind_of_working() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut met = BTreeSet::new();
    for _ in 0..100 {
        let answer = evaluate(&supplied().new_tree(&mut runner).unwrap().current());
        let found = topics().into_iter().filter(|topic| working(&answer, *topic, UnitSystem::Us).is_some());
        met.extend(found.map(kind));
    }
    for topic in of_the_ways().into_iter().chain(of_the_service()).map(kind) {
        assert!(met.contains(&topic), "{topic}");
    }
}

/// A step of any of these workings that leads elsewhere is noticed.
#[test]
fn a_wrong_result_of_a_way_is_noticed() {
    let answer = evaluate(&chosen(house(), |choices| choices.build = Some(Build::FlatJacketed)));
    let ways = OF_A_WAY
        .into_iter()
        .filter_map(|topic| (0..14).map(topic).find_map(|topic| working(&answer, topic, UnitSystem::Us)));
    let leads = of_the_service().into_iter().filter_map(|topic| working(&answer, topic, UnitSystem::Us));
    let all: Vec<Working> = ways.chain(leads).collect();
    assert_eq!(all.len(), OF_A_WAY.len() + of_the_service().len());
    for good in all {
        for index in 0..good.steps.len() {
            let mut wrong = good.clone();
            let result = &mut wrong.steps[index].result.value;
            *result = *result * (1.0 + 1e-6) + 1e-9;
            assert!(steps_hold(&wrong).is_err(), "{:?} of {:?}", good.steps[index], good.topic);
        }
    }
}

/// What a working says of the supply conductors, read again from the tables.
fn supply_says_so(answer: &Evaluation, place: usize) -> bool {
    let Some(supply) = answer.ways.all[place].supply else { return false };
    let found = working(answer, Topic::WaySupply(place), UnitSystem::Si).unwrap();
    let entered = |name| found.entered.iter().find(|entered| entered.name == name).map(|entered| entered.value);
    let value = |name| found.values.iter().find(|put| put.name == name).map(|put| put.value.value);
    let Some(EnteredValue::Size(size)) = entered(Name::ConductorSize) else { panic!("{found:?}") };
    let Some(EnteredValue::Metal(metal)) = entered(Name::ConductorMetal) else { panic!("{found:?}") };
    assert_eq!((size, metal), (supply.run.conductor.size, supply.demands.setting.metal));
    let row = if metal == Metal::Copper { COPPER[size as usize] } else { ALUMINUM[size as usize - 1] };
    for (rating, amperes) in
        [(Name::InsulationRating, Name::InsulationAmpacity), (Name::TerminalRating, Name::TerminalAmpacity)]
    {
        let Some(EnteredValue::Rating(rating)) = entered(rating) else { panic!("{found:?}") };
        assert_eq!(value(amperes), Some(row[rating as usize]), "{found:?}");
    }
    let sets = value(Name::ParallelSets).unwrap_or(1.0);
    assert_eq!(sets, f64::from(supply.run.conductor.sets));
    sets > 1.0
}

#[test]
fn the_tables_give_the_ampacity_of_the_supply_conductors() {
    let several = jobs().iter().map(evaluate).fold(false, |met, answer| {
        (0..answer.ways.all.len()).fold(met, |met, place| supply_says_so(&answer, place) || met)
    });
    assert!(several, "no supply in several sets");
}

/// The house's lead by hand, at 480 V: 620 ft and 40 ft of 75 °C copper of 60 °C terminals in 45 °C air.
#[test]
fn the_lead_of_the_house_is_as_warm_as_by_hand() {
    for system in SYSTEMS {
        let answer = evaluate(&house());
        let found = working(&answer, Topic::LeadTemperature(Way::V480), system).unwrap();
        let value = |name| found.values.iter().find(|put| put.name == name).unwrap().value.to_si();
        let (amps, rated) = (value(Name::ServiceLoad), value(Name::InsulationAmpacity));
        let kelvins = 45.0 * (amps / rated) * (amps / rated);
        assert!((found.result.to_si() - (45.0 + kelvins)).abs() < 1e-9, "{found:?}");
    }
}

trait ToSi {
    fn to_si(self) -> f64;
}

impl ToSi for Entry {
    fn to_si(self) -> f64 {
        self.shown_in(UnitSystem::Si).value
    }
}
