//! What things of the chapters are called in a price book.

use crate::cable::filter::Remedy;
use crate::cable::lead::Conductor;
use crate::cable::reactance::Build;
use crate::cost::book::{self, Cable, Piece};
use crate::cost::price::{CablePrice, Prices};
use crate::power::family::Kind;
use crate::quantity::{MassPerLength, MoneyPerLength};
use crate::standards::conductor::Metal;

/// Equipment of a kind.
pub(crate) fn equipment(kind: Kind) -> Piece {
    use book::Equipment as E;
    Piece::Equipment(match kind {
        Kind::ConvertingActive => E::ConvertingActive,
        Kind::ConvertingPassive => E::ConvertingPassive,
        Kind::Doubling => E::Doubling,
        Kind::LargeLowHarmonic => E::LargeLowHarmonic,
        Kind::LargeEconomy => E::LargeEconomy,
        Kind::LargeEconomyChoke => E::LargeEconomyChoke,
        Kind::SolidStateConverter => E::SolidStateConverter,
        Kind::RotaryConverter => E::RotaryConverter,
        Kind::DeratedDrive => E::DeratedDrive,
        Kind::StepUpActive => E::StepUpActive,
        Kind::StepUpPassive => E::StepUpPassive,
        Kind::ThreePhaseLine => E::ThreePhaseLine,
        Kind::ThreePhaseGenerator => E::ThreePhaseGenerator,
        Kind::SinglePhaseMotor => E::SinglePhaseMotor,
    })
}

/// What stands between drive and lead; nothing where nothing does.
pub(crate) fn remedy(remedy: Remedy) -> Option<Piece> {
    use book::Remedy as R;
    Some(Piece::Remedy(match remedy {
        Remedy::NoneNeeded => return None,
        Remedy::OutputReactor => R::OutputReactor,
        Remedy::DvDtFilter => R::DvDtFilter,
        Remedy::SineFilter => R::SineFilter,
    }))
}

/// How the price of one set of a cable comes about; `metal` in one set per length.
pub(crate) fn one_set(
    prices: &Prices,
    conductor: Conductor,
    (of, build): (Metal, Build),
    metal: MassPerLength,
) -> Option<CablePrice> {
    let build = match build {
        Build::PlasticConduit => book::Build::PlasticConduit,
        Build::SteelConduit => book::Build::SteelConduit,
        Build::FlatJacketed => book::Build::FlatJacketed,
        Build::Twisted => book::Build::Twisted,
    };
    prices.cable(Cable { build, metal: of, size: conductor.size }, metal)
}

/// Price of all sets of a cable per length; `metal` in all of them per length.
pub(crate) fn cable(
    prices: &Prices,
    conductor: Conductor,
    kind: (Metal, Build),
    metal: MassPerLength,
) -> Option<MoneyPerLength> {
    let sets = f64::from(conductor.sets.max(1));
    let one = one_set(prices, conductor, kind, metal / sets)?;
    Some(MoneyPerLength(one.of(metal / sets).0 * sets))
}
