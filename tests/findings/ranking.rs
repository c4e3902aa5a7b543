//! A verdict that turns on a figure which is assumed: on both sides of where the figure's likely range ends.

use super::{OVER, UNDER, edge, found, house, with, without};
use wellwright_core::evaluate::ranking::{Ranked, ranking};
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job};
use wellwright_core::quantity::in_psi;

/// The house's well with a pump of this shut-off head, and its pressure rating left to be assumed: 125 psi, and likely
/// from 100 to 200.
fn rated(shut_off: f64) -> Job {
    with(without(house(), &[Field::PressureRating]), &[(Field::ShutOffHead, shut_off)])
}

fn gauge(answer: &Evaluation) -> f64 {
    in_psi(answer.water.dead_head.as_ref().unwrap().gauge)
}

fn told(job: &Job) -> Vec<Finding> {
    ranking(job, &evaluate(job)).findings()
}

#[test]
fn a_verdict_turns_on_an_assumption() {
    const FIELD: Finding = Finding::AssumptionDecides { field: Field::PressureRating };
    let decides = |shut_off: f64| told(&rated(shut_off)).contains(&FIELD);
    // At 167 psi it is a stop by the 125 psi that are assumed, and none by 200.
    assert_eq!(found(&rated(820.0), "DEADHEAD_OVER_RATING"), [Severity::Stop]);
    assert!(decides(820.0) && FIELD.severity() == Severity::Note && FIELD.code() == "ASSUMPTION_DECIDES");
    // Beyond 200 psi it is a stop by any likely rating; at 100 psi by none.
    let most = edge(820.0, 1100.0, |head| gauge(&evaluate(&rated(head))) <= 200.0);
    let least = edge(600.0, 820.0, |head| gauge(&evaluate(&rated(head))) <= 100.0);
    assert_eq!((decides(most * UNDER), decides(most * OVER)), (true, false));
    assert_eq!((decides(least * UNDER), decides(least * OVER)), (false, true));
    // What is entered is no assumption.
    assert!(!told(&with(rated(820.0), &[(Field::PressureRating, 125.0)])).contains(&FIELD));
}

#[test]
fn what_is_assumed_is_ranked_and_nothing_else() {
    let job = rated(820.0);
    let found = ranking(&job, &evaluate(&job));
    let on = found.on(Basis::Installed);
    assert!(!on.is_empty());
    let moves: Vec<f64> = on.iter().map(|rank| rank.moves(Basis::Installed).unwrap().0).collect();
    assert!(moves.windows(2).all(|pair| pair[0] >= pair[1]), "{moves:?}");
    for rank in &found.ranks {
        let Ranked::Assumed(field) = rank.what else { continue };
        assert!(job.get(field).is_none(), "{field:?} was entered");
        let accepted = field.spec().accepted;
        for end in rank.ends {
            let value = end.to(accepted.unit).unwrap();
            assert!(value >= accepted.min && value <= accepted.max, "{field:?}: {value}");
        }
    }
}
