//! The ways to run the motor as JSON.

use super::findings::finding;
use super::{amps, feet, figure, horsepower, money, pounds, volts};
use crate::evaluate::{
    Draw, LeadInService, Pole, PoweredWay, SetNeed, Starting, Stress, SupplyRun, WayCost, WayVolts, Ways,
};
use crate::job::WayKey;
use crate::power::derating::Derated;
use crate::power::fit::FrameFit;
use crate::quantity::{Unit, in_amperes, in_hertz, in_kilovolt_amperes, in_ohms_per_kilofoot, in_watts};
use serde_json::{Value, json};

fn share(share: f64) -> Value {
    figure(100.0 * share, Unit::Percent)
}
fn kva(power: crate::quantity::Power) -> Value {
    figure(in_kilovolt_amperes(power), Unit::KilovoltAmpere)
}
fn kiloamperes(current: crate::quantity::ElectricCurrent) -> Value {
    figure(in_amperes(current) / 1000.0, Unit::Kiloampere)
}

/// What a way is called: its kind, or the name of the user's own equipment.
fn name(key: &WayKey) -> Value {
    match key {
        WayKey::Generic(kind) => json!({"kind": kind}),
        WayKey::Own(name) => json!({"own": name}),
    }
}

pub(super) fn ways(ways: &Ways) -> Value {
    json!({
        "picked": ways.picked().map(|way| name(&way.key())),
        "chosen": ways.chosen,
        "waits_for": ways.waits_for.iter().map(|field| field.path()).collect::<Vec<_>>(),
        "ways": ways.all.iter().map(way).collect::<Vec<_>>(),
    })
}

fn way(way: &PoweredWay) -> Value {
    json!({
        "way": name(&way.key()),
        "kind": way.family.kind,
        "fits": way.fits,
        "lead_voltage": way.way,
        "required_output": way.motor.map(|motor| amps(motor.required)),
        "frame": way.frame.map(frame),
        "left_of_rating": way.derated.and_then(Derated::factor).map(share),
        "input": way.draw.map(draw),
        "supply": way.supply.map(supply),
        "pole": way.pole.map(pole),
        "start": way.start.map(start),
        "generator": way.set.map(set),
        "lead": way.lead.map(|lead| json!({
            "sets": lead.run.conductor.sets, "size": lead.run.conductor.size, "ground": lead.run.ground,
            "drop": volts(lead.drop), "drop_share": share(lead.drop_share),
        })),
        "volts": way.volts.map(budget),
        "peak": way.stress.map(peak),
        "step_up": way.step_up.map(|step_up| json!({
            "transformer": step_up.rating.map(kva), "lowest": figure(in_hertz(step_up.lowest), Unit::Hertz),
        })),
        "idler": way.idler.map(|idler| json!({
            "power": horsepower(idler.power), "idle_loss": figure(in_watts(idler.idle), Unit::Watt),
        })),
        "cost": way.cost.map(cost),
        "findings": way.findings.iter().map(finding).collect::<Vec<_>>(),
    })
}

fn frame(fit: FrameFit) -> Value {
    match fit {
        FrameFit::Serves { frame, .. } => json!({
            "size": horsepower(frame.power), "rated": amps(frame.rated), "derated": amps(frame.derated),
        }),
        FrameFit::CurrentShort { most, .. } => json!({"most": amps(most)}),
        FrameFit::SizeShort { most, .. } => json!({"most": horsepower(most)}),
        FrameFit::AskMaker(_) => json!("ask_maker"),
    }
}

fn draw(draw: Draw) -> Value {
    json!({
        "power_factor": figure(draw.power_factor, Unit::One),
        "rated": amps(draw.rated),
        "ampacity": amps(draw.ampacity),
        "device": amps(draw.device),
        "device_by": draw.device_by,
        "power": figure(in_watts(draw.input), Unit::Watt),
        "current": amps(draw.current),
        "apparent": kva(draw.apparent),
    })
}

fn supply(run: SupplyRun) -> Value {
    json!({
        "length": feet(run.length), "sets": run.run.conductor.sets, "size": run.run.conductor.size,
        "ground": run.run.ground, "governs": run.run.governs, "drop": volts(run.drop), "drop_share": share(run.share),
    })
}

fn pole(pole: Pole) -> Value {
    use crate::power::transformer::Loading::{Close, Over, Within};
    let (Within(load) | Close(load) | Over(load)) = pole.loading;
    json!({
        "transformer": kva(pole.transformer.rating), "assumed": pole.assumed, "load": share(load),
        "fault": kiloamperes(pole.fault), "fault_at_equipment": kiloamperes(pole.fault_here),
        "short_circuit_rating": kiloamperes(pole.marked),
        "sag": pole.sag.map(|sag| json!({
            "at_pole": volts(sag.at_pole), "at_equipment": volts(sag.at_equipment), "left": volts(sag.left),
        })),
        "harmonics": pole.harmonics.map(|harmonics| json!({
            "short_circuit_ratio": figure(harmonics.ratio, Unit::One),
            "distortion": share(harmonics.distortion), "limit": share(harmonics.limit),
        })),
    })
}

fn start(start: Starting) -> Value {
    json!({
        "locked_rotor": amps(start.locked_rotor), "current": amps(start.dip.current),
        "dip_at_pole": share(start.dip.at_pole), "dip_at_motor": share(start.dip.at_motor),
    })
}

fn set(need: SetNeed) -> Value {
    json!({"running": kva(need.running), "starting": need.starting.map(kva), "needed": kva(need.needed())})
}

fn budget(found: WayVolts) -> Value {
    let budget = found.budget;
    json!({
        "at_equipment": volts(budget.at_equipment), "output": volts(budget.output), "filter": volts(budget.filter),
        "transformer": volts(budget.transformer), "lead": volts(budget.lead), "at_motor": volts(budget.at_motor),
        "runs_out": figure(in_hertz(found.runs_out), Unit::Hertz),
        "needed": figure(in_hertz(found.needed), Unit::Hertz),
    })
}

fn peak(stress: Stress) -> Value {
    json!({
        "bus": volts(stress.bus), "reflection": figure(stress.reflection, Unit::One),
        "critical_length": feet(stress.critical), "peak": volts(stress.peak), "limit": volts(stress.limit.peak()),
        "least_remedy": stress.least, "fitted": stress.fitted, "cured": stress.cured, "pulses_can_meet": stress.meet,
    })
}

fn cost(cost: WayCost) -> Value {
    json!({
        "lead": money(cost.lead), "supply": money(cost.beyond.supply), "equipment": money(cost.beyond.equipment),
        "remedy": money(cost.beyond.remedy), "line": money(cost.beyond.line), "first": money(cost.first),
        "energy_in_a_year": cost.energy.map(|energy| json!({"value": energy, "unit": "kWh"})),
        "lifetime": cost.lifetime.map(money), "metal": pounds(cost.metal),
    })
}

/// A lead in service.
pub(super) fn service(lead: &LeadInService) -> Value {
    let conductor = |choice: crate::cable::economic::Lifetime| {
        let conductor = choice.candidate.conductor;
        json!({"sets": conductor.sets, "size": conductor.size, "over_the_years": money(choice.cost(lead.length))})
    };
    json!({
        "current": amps(lead.current), "at_duty": lead.at_duty,
        "temperature": figure(lead.warm.temperature.0, Unit::DegreeCelsius),
        "resistance": figure(in_ohms_per_kilofoot(lead.warm.resistance), Unit::OhmPerKilofoot),
        "resistance_at_75": figure(in_ohms_per_kilofoot(lead.warm.at_75), Unit::OhmPerKilofoot),
        "loss": figure(in_watts(lead.loss), Unit::Watt),
        "frequency": figure(in_hertz(lead.frequency), Unit::Hertz),
        "alternating_adds": lead.alternating.map(share),
        "flat_unbalance": lead.flat.map(|flat| share(flat.voltage_unbalance)),
        "smallest": lead.choice.map(|choice| conductor(choice.smallest)),
        "economic": lead.choice.map(|choice| conductor(choice.economic)),
    })
}
