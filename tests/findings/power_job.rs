//! What is found about a job as a whole: no way that serves, a way that is gone, equipment that can't be read.

use super::{OVER, by, field, found, house, raised, way, with, without};
use wellwright_core::evaluate::{Fits, evaluate};
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Job, Place, WayKey};
use wellwright_core::power::family::Kind;
use wellwright_core::standards::enclosure::EnclosureType;

use Severity::{Caution, Stop};

#[test]
fn no_way_serves() {
    const CODE: &str = "NO_WAY_SERVES";
    assert!(!raised(&field(), CODE) && !raised(&house(), CODE));
    // Rain stops all that stands in a cabinet of type 1, and of 60 hp no single-phase motor is made.
    let outdoors = |kind| {
        let mut job = field();
        (job.choices.place, job.choices.enclosure) = (Some(Place::Outdoors), Some(kind));
        job.choices.shaded = Some(true);
        job
    };
    assert_eq!(found(&outdoors(EnclosureType::T1), CODE), [Stop]);
    assert_eq!(found(&outdoors(EnclosureType::T3R), CODE), []);
    assert!(evaluate(&outdoors(EnclosureType::T1)).ways.all.iter().all(|way| way.fits == Fits::No));
    assert!(evaluate(&outdoors(EnclosureType::T1)).ways.pick.is_none());
    // 50 °C is the end of every family.
    let hot = |celsius: f64| with(field(), &[(Field::DriveAmbient, celsius)]);
    assert_eq!((found(&hot(50.0), CODE), found(&hot(50.0 * OVER), CODE)), (vec![], vec![Stop]));
    // Nothing is told while all waits.
    let waits = without(outdoors(EnclosureType::T1), &[Field::PoleDistance, Field::SurfaceRun, Field::MotorPower]);
    let waits = without(waits, &[Field::Flow]);
    assert!(!raised(&waits, CODE), "{:?}", evaluate(&waits).findings);
}

#[test]
fn a_way_that_is_gone() {
    const CODE: &str = "WAY_GONE";
    let named = |name: &str| {
        let mut job = field();
        job.way = Some(WayKey::Own(name.into()));
        job
    };
    assert_eq!(found(&named("Well drive"), CODE), [Caution]);
    for kind in Kind::ALL {
        assert!(!raised(&by(field(), kind), CODE), "{kind:?}");
    }
    assert!(!raised(&field(), CODE));
    // The cheapest that serves stands in for it.
    let (gone, none) = (evaluate(&named("Well drive")).ways, evaluate(&field()).ways);
    assert_eq!((gone.pick, gone.chosen), (none.pick, false));
    assert!(none.pick.is_some());
}

/// A way that was chosen is gone by even where it does not serve; one that is picked serves.
#[test]
fn the_way_that_is_chosen_and_the_way_that_is_picked() {
    for kind in Kind::ALL {
        let ways = evaluate(&by(field(), kind)).ways;
        assert_eq!((ways.picked().unwrap().family.kind, ways.chosen), (kind, true));
    }
    let picked = |job: &Job| evaluate(job).ways.picked().map(|way| (way.family.kind, way.fits));
    for job in [house(), field()] {
        let (kind, fits) = picked(&job).unwrap();
        assert!(matches!(fits, Fits::Serves | Fits::WithCare), "{kind:?} {fits:?}");
        let cost = |kind| way(&job, kind).cost.unwrap().first;
        let others = evaluate(&job).ways.all.into_iter().filter(|way| {
            matches!(way.fits, Fits::Serves | Fits::WithCare)
                && way.cost.is_some()
                && way.family.start == wellwright_core::power::family::Start::Ramp
        });
        assert!(others.into_iter().all(|other| other.cost.unwrap().first.0 >= cost(kind).0), "{kind:?}");
    }
}
