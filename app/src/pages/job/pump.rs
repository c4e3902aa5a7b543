//! Pump: the motor down the hole.

use super::{Desk, Heading};
use crate::locale::words;
use crate::parts::caution::CautionBoxes;
use crate::parts::quantity_field::QuantityField;
use crate::routes::Page;
use leptos::prelude::*;
use wellwright_core::job::Field;

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = words();
    view! {
        <Heading page=Page::Pump desk=desk />
        <QuantityField field=Field::MotorPower open=open />
        <QuantityField field=Field::NameplateAmps230 open=open />
        <QuantityField field=Field::NameplateAmps460 open=open />
        <QuantityField field=Field::MotorPowerFactor open=open />
        <QuantityField field=Field::MotorEfficiency open=open />
        <CautionBoxes cautions=words.cautions.pump.to_vec() />
    }
}
