//! The check list: what is looked at before, at and after the first start, in the order of the work.

use crate::cable::filter::Remedy;
use crate::evaluate::{Evaluation, PoweredWay};
use crate::job::{Check, Control, Job, Place};
use crate::power::family::{Kind, Start};
use crate::pump::motor::MotorKind;

/// The steps that a job asks for, in the order of the work.
///
/// # Range
/// The job that the evaluation is of. A step that hangs on the way to run the motor stands until a way is known.
#[must_use]
pub fn checks(job: &Job, answer: &Evaluation) -> Vec<Check> {
    Check::ALL.into_iter().filter(|check| applies(*check, job, answer)).collect()
}

fn applies(check: Check, job: &Job, answer: &Evaluation) -> bool {
    let choices = &job.choices;
    let way = answer.ways.picked();
    let submersible = choices.motor_kind() == MotorKind::Submersible;
    let drive = way.is_none_or(|way| way.family.start == Start::Ramp);
    let is = |kinds: &[Kind]| way.is_some_and(|way| kinds.contains(&way.family.kind));
    match check {
        Check::Clearances | Check::Entries => drive,
        Check::FilterFitted => way.is_some_and(fitted),
        Check::ShaftGrounded => drive && !submersible,
        Check::MadePhaseAlone => is(&[Kind::SolidStateConverter, Kind::RotaryConverter]),
        Check::TransferSwitch => {
            is(&[Kind::ThreePhaseGenerator]) || job.get(crate::job::Field::GeneratorRating).is_some()
        }
        Check::GroundFault => choices.place() != Place::Indoors,
        Check::SpliceTested | Check::CheckValves => submersible,
        Check::TransducerLine => drive && choices.control() == Control::ConstantPressure,
        Check::DryRunTest | Check::SettingsEntered => drive,
        _ => true,
    }
}

/// Whether something stands between its drive and its lead.
fn fitted(way: &PoweredWay) -> bool {
    way.stress.is_some_and(|stress| stress.fitted != Remedy::NoneNeeded)
}
