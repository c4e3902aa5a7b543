//! The cable of two worked jobs, a house and stock well and a large surface pump, both invented: supply conductors,
//! pulses at the motor, filters, losses.
//!
//! Their results were worked by hand with the formulas that core documents (table 8 resistance at 75 degC, table 9
//! reactance in plastic conduit, exact drop, rms amperes at the true power factor); they are held to the printed digits.

use uom::si::electrical_resistance::ohm;
use wellwright_core::cable::ampacity::{Setting, ampacity};
use wellwright_core::cable::drop::{Load, Phases, lead_loss, voltage_drop};
use wellwright_core::cable::feeder::{Fed, Feeder, USUAL_DROP, fed};
use wellwright_core::cable::filter::{Practice, Remedy, SINE_BUILT_IN, behind_filter, remedy};
use wellwright_core::cable::lead::{Conductor, Demands, Governs, Laying, run_for, runs};
use wellwright_core::cable::long_lead::{
    Limit, Wave, critical_length, peak, pulses_can_meet, reflection, usual_cable_impedance, usual_motor_impedance,
};
use wellwright_core::cable::reactance::Build;
use wellwright_core::power::supply::{drive_input_current, provisional_device, true_power_factor};
use wellwright_core::pump::motor::{RatedVoltage, table_current};
use wellwright_core::quantity::{
    Celsius, ElectricalResistance, amperes, feet, horsepower, in_amperes, in_feet, in_meters, in_volts, in_watts,
    meters, meters_per_second, ohms_per_kilofoot, seconds, volts, watts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};

/// True where a value rounds to the digits that are printed.
#[track_caller]
fn prints(value: f64, decimals: usize, printed: &str) {
    assert_eq!(format!("{value:.decimals$}"), printed);
}

fn setting(ambient: f64) -> Setting {
    Setting { metal: Metal::Copper, insulation: Rating::C75, terminals: Rating::C75, ambient: Celsius(ambient) }
}

/// A drive's front end: displacement, distortion and efficiency.
#[derive(Clone, Copy)]
struct FrontEnd(f64, f64, f64);

/// A supply, with the rated input of the drive's frame and the input at the motor's load.
fn feeder(supply: f64, rated_input: f64, running: f64, front: FrontEnd, ambient: f64) -> Feeder {
    Feeder {
        phases: Phases::Single,
        supply: volts(supply),
        rated_input: amperes(rated_input),
        running: amperes(running),
        power_factor: true_power_factor(front.0, front.1).unwrap(),
        setting: setting(ambient),
        build: Build::PlasticConduit,
        laying: Laying::Together,
        most_sets: 1,
        allowed_drop: USUAL_DROP,
        device: provisional_device(amperes(rated_input)).unwrap(),
    }
}

const ACTIVE: FrontEnd = FrontEnd(0.99, 0.10, 0.95);
const PASSIVE: FrontEnd = FrontEnd(0.97, 0.80, 0.96);
const DOUBLING: FrontEnd = FrontEnd(0.99, 0.10, 0.94);

/// Input of a 10 hp frame, and of the 7.5 hp motor with its lead of 660 ft, at 240 V; efficiency of the motors 0.78.
fn house_well(front: FrontEnd, volts_of_way: f64, nameplate: f64, lead_r: f64) -> (f64, f64) {
    let pf = true_power_factor(front.0, front.1).unwrap();
    let frame = drive_input_current(horsepower(10.0), 0.78, front.2, volts(240.0), pf).unwrap();
    let load =
        Load { sending: volts(volts_of_way), current: amperes(nameplate), power_factor: 0.8, phases: Phases::Three };
    let lost = in_watts(lead_loss(load, ohms_per_kilofoot(lead_r), feet(660.0)));
    let drawn = watts(in_watts(horsepower(7.5)) / 0.78 + lost);
    (in_amperes(frame), in_amperes(drive_input_current(drawn, 1.0, front.2, volts(240.0), pf).unwrap()))
}

#[test]
fn the_house_wells_supply() {
    let of = |front: FrontEnd, way: f64, nameplate: f64, lead_r: f64| {
        let (frame, running) = house_well(front, way, nameplate, lead_r);
        let feeder = feeder(240.0, frame, running, front, 45.0);
        (running, 1.25 * frame, in_amperes(feeder.device), fed(&feeder, feet(150.0)).unwrap().unwrap())
    };
    let (running, required, device, active) = of(ACTIVE, 240.0, 22.5, 0.491);
    prints(running, 2, "34.12");
    prints(required, 2, "53.21");
    // 6 AWG carries 65 A, times 0.82 at 45 degC.
    prints(in_amperes(active.run.ampacity), 1, "53.3");
    assert_eq!((active.run.conductor.size, device), (Size::Awg6, 60.0));
    assert_eq!((active.run.ground, active.run.governs), (Size::Awg10, Governs::Ampacity));
    prints(in_volts(active.drop), 2, "5.04");
    let (running, required, device, doubling) = of(DOUBLING, 480.0, 11.3, 1.98);
    prints(running, 2, "34.52");
    prints(required, 2, "53.77");
    assert_eq!((doubling.run.conductor.size, device), (Size::Awg4, 60.0));
    let (running, required, device, passive) = of(PASSIVE, 240.0, 22.5, 0.491);
    prints(running, 2, "43.91");
    prints(required, 2, "68.48");
    assert_eq!((passive.run.conductor.size, device, passive.run.ground), (Size::Awg4, 70.0, Size::Awg8));
}

/// The transformer, 25 kVA with 1.2 and 1.6 %, stands ahead of the feeder as a resistance and a reactance. Each drop is
/// taken at 240 V, and the two are added.
fn sag(front: FrontEnd) -> (f64, f64) {
    let (frame, running) = house_well(front, 240.0, 22.5, 0.491);
    let feeder = feeder(240.0, frame, running, front, 45.0);
    let load = Load {
        sending: volts(240.0),
        current: amperes(running),
        power_factor: feeder.power_factor,
        phases: Phases::Single,
    };
    // Half in each of two conductors, as if in one meter of them.
    let half = |share: f64| ElectricalResistance::new::<ohm>(share * 240.0 * 240.0 / 25e3 / 2.0) / meters(1.0);
    let ahead = in_volts(voltage_drop(load, half(0.012), half(0.016), meters(1.0)).unwrap().unwrap());
    (ahead, in_volts(fed(&feeder, feet(150.0)).unwrap().unwrap().drop))
}

#[test]
fn the_house_wells_volts_sag() {
    let (ahead, along) = sag(ACTIVE);
    prints(ahead, 2, "1.15");
    prints(along, 2, "5.04");
    prints(240.0 - ahead - along, 1, "233.8");
    prints(100.0 * (ahead + along) / 240.0, 2, "2.58");
    let (ahead, along) = sag(PASSIVE);
    prints(240.0 - ahead - along, 1, "234.5");
}

fn surface_pump(front: FrontEnd, ambient: f64) -> (f64, Feeder, Fed) {
    let pf = true_power_factor(front.0, front.1).unwrap();
    let input = drive_input_current(horsepower(50.26), 0.936, front.2, volts(480.0), pf);
    let rated = in_amperes(drive_input_current(horsepower(60.0), 0.936, front.2, volts(480.0), pf).unwrap());
    assert!(in_amperes(input.unwrap()) < rated);
    let feeder = feeder(480.0, rated, rated, front, ambient);
    (rated, feeder, fed(&feeder, feet(300.0)).unwrap().unwrap())
}

#[test]
fn the_surface_pumps_supply() {
    let low = FrontEnd(0.99, 0.08, 0.955);
    let economy = FrontEnd(0.97, 0.80, 0.965);
    let converter = FrontEnd(0.99, 0.10, 0.96);
    let printed = [
        (low, "105.67", "132.1", Size::Awg1_0, "8.087", "1.685", 150.0),
        (economy, "136.25", "170.3", Size::Awg2_0, "8.289", "1.727", 175.0),
        (converter, "105.31", "131.6", Size::Awg1_0, "8.074", "1.682", 150.0),
    ];
    for (front, amps, required, size, drop, share, device) in printed {
        // 30 degC along the feeder: the 40 degC of the job are those of the room that the drive stands in.
        let (rated, feeder, fed) = surface_pump(front, 30.0);
        prints(rated, 2, amps);
        prints(1.25 * rated, 1, required);
        assert_eq!((fed.run.conductor, fed.run.ground), (Conductor { sets: 1, size }, Size::Awg6));
        prints(in_volts(fed.drop), 3, drop);
        prints(100.0 * fed.share, 3, share);
        assert_eq!(in_amperes(feeder.device), device);
    }
}

// 150 A times 0.88 is 132.0 A, a hair below the 132.09 A that are needed; 175 A times 0.88 is 154 A, below 170.3 A.
#[test]
fn a_feeder_in_40_degrees_takes_a_size_more_for_two_of_the_three() {
    assert_eq!(ampacity(Size::Awg1_0, setting(40.0), 2).map(in_amperes), Some(132.0));
    let of = |front: FrontEnd| surface_pump(front, 40.0).2.run.conductor.size;
    assert_eq!(of(FrontEnd(0.99, 0.08, 0.955)), Size::Awg2_0);
    assert_eq!(of(FrontEnd(0.97, 0.80, 0.965)), Size::Awg3_0);
    assert_eq!(of(FrontEnd(0.99, 0.10, 0.96)), Size::Awg1_0);
}

fn wave(hp: f64) -> Wave {
    Wave {
        speed: meters_per_second(150e6),
        rise: seconds(0.1e-6),
        cable: usual_cable_impedance(),
        motor: usual_motor_impedance(horsepower(hp)),
    }
}

#[test]
fn the_house_wells_pulses() {
    let wave = wave(7.5);
    prints(reflection(wave.motor, wave.cable).unwrap(), 3, "0.948");
    let at = |bus: f64| peak(volts(bus), wave, feet(660.0)).unwrap();
    prints(in_volts(at(370.0)), 0, "721");
    prints(in_volts(at(720.0)), 0, "1403");
    let critical = critical_length(wave.speed, wave.rise).unwrap();
    prints(in_meters(critical), 1, "7.5");
    assert!(pulses_can_meet(feet(660.0), critical) && !pulses_can_meet(feet(120.0), critical));
    let limit = Limit::GeneralPurpose.peak();
    let verdict = |bus: f64| remedy((at(bus), volts(bus)), limit, feet(660.0), &Practice::default()).unwrap();
    assert_eq!((verdict(370.0), verdict(720.0)), (Some(Remedy::NoneNeeded), Some(Remedy::SineFilter)));
}

#[test]
fn the_surface_pumps_pulses() {
    let motor = peak(volts(720.0), wave(60.0), feet(30.0)).unwrap();
    prints(in_volts(motor), 0, "1367");
    prints(in_volts(motor) / 720.0, 3, "1.899");
    let duty = Limit::InverterDuty(volts(460.0)).peak();
    prints(in_volts(duty), 0, "1426");
    let verdict = |limit| remedy((motor, volts(720.0)), limit, feet(30.0), &Practice::default()).unwrap();
    assert_eq!(verdict(Limit::GeneralPurpose.peak()), Some(Remedy::DvDtFilter));
    assert_eq!(verdict(duty), Some(Remedy::NoneNeeded));
}

// Doubling, 480 V: 3 % in the filter, then 21.108 V along 12 AWG, leave 444.5 V.
#[test]
fn the_house_wells_volts_behind_the_filter() {
    let load = Load { sending: volts(480.0), current: amperes(11.3), power_factor: 0.8, phases: Phases::Three };
    let lead = (ohms_per_kilofoot(1.98), ohms_per_kilofoot(0.054), feet(660.0));
    let drop = in_volts(voltage_drop(load, lead.0, lead.1, lead.2).unwrap().unwrap());
    prints(drop, 3, "21.108");
    let left = in_volts(behind_filter(load.sending, SINE_BUILT_IN).unwrap());
    prints(left - drop, 1, "444.5");
    prints(100.0 * (left - drop) / 460.0, 1, "96.6");
    // The drop by the lower voltage behind the filter is hardly another.
    let sending = volts(left);
    let behind = in_volts(voltage_drop(Load { sending, ..load }, lead.0, lead.1, lead.2).unwrap().unwrap());
    assert!((behind - drop).abs() < 0.02, "{behind}");
}

/// 15 hp at 900 ft, 5 % drop, plastic conduit, 30 degC: sized by the table's 42 and 21 A, the heat by what 15 hp draw at
/// efficiency 0.82 and power factor 0.84 and rated volts, 40.77 and 20.39 A.
#[test]
fn the_higher_voltage_saves_copper_and_not_always_losses() {
    let lost = |sending: f64, rated: f64, column: RatedVoltage| {
        let table = table_current(horsepower(15.0), column).unwrap();
        let load = Load { sending: volts(sending), current: table, power_factor: 0.84, phases: Phases::Three };
        let demands = Demands {
            load,
            required: 1.25 * table,
            setting: setting(30.0),
            build: Build::PlasticConduit,
            allowed_drop: 0.05,
            most_sets: 1,
            device: amperes(60.0),
        };
        let runs = runs(&demands).unwrap();
        let run = run_for(&runs, feet(900.0)).unwrap();
        assert!(in_feet(run.longest) >= 900.0);
        let drawn = in_watts(horsepower(15.0)) / (3f64.sqrt() * rated * 0.82 * 0.84);
        let heat = Load { current: amperes(drawn), ..load };
        let size = run.conductor.size;
        (size, in_watts(lead_loss(heat, ohms_per_kilofoot(size.row().copper), feet(900.0))))
    };
    let (low, high) = (lost(240.0, 230.0, RatedVoltage::V230), lost(480.0, 460.0, RatedVoltage::V460));
    assert_eq!((low.0, high.0), (Size::Awg1, Size::Awg8));
    prints(high.1 - low.1, 0, "182");
    // At the amperes that size them it is 193 W.
    prints((high.1 - low.1) * (42.0 / 40.7705_f64).powi(2), 0, "193");
}
