//! Conductors, leads, filters and money.

use super::near;
use wellwright_core::cable::ampacity::Setting;
use wellwright_core::cable::conductor::table_resistance;
use wellwright_core::cable::drop::{Load, Phases};
use wellwright_core::cable::economic::{self, Candidate, choose, lifetime};
use wellwright_core::cable::feeder::{Feeder, feeder_runs};
use wellwright_core::cable::filter::{Practice, Remedy, longest_by_volts, remedies};
use wellwright_core::cable::lead::{Conductor, Laying};
use wellwright_core::cable::long_lead::{Wave, corners, longest_unfiltered};
use wellwright_core::cable::reactance::{Build, reactance};
use wellwright_core::cable::stretches::{least_cool, most_warm};
use wellwright_core::cable::temperature::{Service, in_service};
use wellwright_core::cost::book::{Equipment, Piece, PriceBook};
use wellwright_core::cost::criteria::potential_saving;
use wellwright_core::cost::duty::{Duty, DutyRow};
use wellwright_core::cost::equipment::equipment_price;
use wellwright_core::cost::price::lead_price;
use wellwright_core::cost::spread::{Estimate, latin_hypercube};
use wellwright_core::power::derating::cabinet_ambient;
use wellwright_core::power::family::Feed;
use wellwright_core::power::harmonics::Coupling;
use wellwright_core::power::start::locked_rotor_input;
use wellwright_core::power::transformer::{Loading, Transformer};
use wellwright_core::pump::unbalance::{current_unbalance, derated_power};
use wellwright_core::quantity::{
    Celsius, Money, MoneyPerLength, PieceAndSize, amperes, feet, gpm, horsepower, hours, in_amperes, in_feet, in_gpm,
    in_meters, in_ohms_per_kilofoot, in_volts, kilovolt_amperes, kilowatts, meters, ohms_per_kilofoot, seconds, volts,
};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};

/// Rated input 53.21 A: 66.5 A at 125 %. At 45 °C copper of 75 °C keeps 0.82 of table 310.16: 6 AWG 53.3 A, 4 AWG 69.7 A,
/// which serves; 60 A need a ground of 10 AWG (table 250.122).
#[test]
fn supply_conductors() {
    let setting =
        Setting { metal: Metal::Copper, insulation: Rating::C75, terminals: Rating::C75, ambient: Celsius(45.0) };
    let feeder = Feeder {
        supply: volts(240.0),
        phases: Phases::Single,
        rated_input: amperes(53.21),
        running: amperes(34.12),
        power_factor: 0.985,
        setting,
        build: Build::PlasticConduit,
        laying: Laying::Apart,
        most_sets: 1,
        allowed_drop: 0.03,
        device: amperes(60.0),
    };
    let first = feeder_runs(&feeder).unwrap()[0];
    assert_eq!((first.conductor.size, first.ground), (Size::Awg4, Size::Awg10));
    near(first.ampacity.value, 0.82 * 85.0, 1e-9);
}

/// 480 V, a filter that costs 3 %: 465.6 V; the motor needs 450 V, so the lead may drop 15.6 V. At power factor 1 and without
/// reactance the drop is √3 I R ℓ: 12 AWG (1.98 Ω in 1,000 ft) and 10 A give 15.6/(1.7321 · 10 · 1.98) · 1,000 = 454.9 ft.
#[test]
fn a_lead_by_volts_behind_a_filter() {
    let load = Load { sending: volts(480.0), current: amperes(10.0), power_factor: 1.0, phases: Phases::Three };
    let (r, x) = (table_resistance(Size::Awg12, Metal::Copper), reactance(Size::Awg12, Build::PlasticConduit));
    near(in_feet(longest_by_volts(load, r, x * 0.0, volts(450.0), 0.03).unwrap()), 454.88, 0.01);
    near(in_feet(longest_by_volts(load, r, x, volts(470.0), 0.03).unwrap()), 0.0, 0.0);
}

/// 0.1 µs at 150 m/µs: 7.5 m. Γ = (3,000 − 80)/3,080 = 0.948052; 720 V grow straight to 1,402.6 V there, and stay.
#[test]
fn peaks_along_a_lead() {
    let speed = meters(150.0) / seconds(1e-6);
    let ohms = |value: f64| volts(value) / amperes(1.0);
    let wave = Wave { speed, rise: seconds(1e-7), motor: ohms(3000.0), cable: ohms(80.0) };
    let found = corners(volts(720.0), wave, meters(200.0)).unwrap();
    let found: Vec<(f64, f64)> = found.iter().map(|corner| (in_meters(corner.length), in_volts(corner.peak))).collect();
    for ((length, peak), (by_hand, high)) in found.iter().zip([(0.0, 720.0), (7.5, 1402.6), (200.0, 1402.6)]) {
        near(*length, by_hand, 1e-9);
        near(*peak, high, 0.01);
    }
    assert_eq!(found.len(), 3);
}

/// A plant at 80 % of the criteria that uses 10,000 kWh could do with 8,000.
#[test]
fn what_a_better_plant_saves() {
    near(potential_saving(10_000.0, 0.8).unwrap(), 2000.0, 1e-9);
    near(potential_saving(10_000.0, 1.1).unwrap(), -1000.0, 1e-9);
}

/// 1,000 h at 30 gpm and 500 h at 60: 40 gpm on the mean. 3 and 6 kW: 6,000 kWh of 6 kW · 1,500 h, two thirds.
#[test]
fn means_of_a_duty() {
    let row = |flow: f64, time: f64| DutyRow { flow: gpm(flow), time: hours(time) };
    let duty = Duty::new(vec![row(30.0, 1000.0), row(60.0, 500.0)]).unwrap();
    near(in_gpm(duty.mean_flow().unwrap()), 40.0, 1e-9);
    let shares = duty.shares().unwrap();
    near(shares[0], 2.0 / 3.0, 1e-12);
    near(shares[1], 1.0 / 3.0, 1e-12);
    near(duty.mean_share(&[kilowatts(3.0), kilowatts(6.0)]).unwrap().unwrap(), 2.0 / 3.0, 1e-12);
}

#[test]
fn a_cabinet_in_the_sun() {
    near(cabinet_ambient(Celsius(45.0), 10.0).unwrap().0, 55.0, 1e-12);
}

/// 7.5 m of critical length, Γ = 2,920/3,080: 720 V reach 1,000 V at 7.5 · (1,000/720 − 1)/Γ = 3.0765 m, and 80 % of them at
/// 7.5 · (1,000/576 − 1)/Γ = 5.8234 m. 370 V never do.
#[test]
fn leads_that_need_no_filter() {
    let ohms = |value: f64| volts(value) / amperes(1.0);
    let wave =
        Wave { speed: meters(150.0) / seconds(1e-6), rise: seconds(1e-7), motor: ohms(3000.0), cable: ohms(80.0) };
    let limit = volts(1000.0);
    near(in_meters(longest_unfiltered(volts(720.0), wave, limit).unwrap()), 3.0765, 1e-4);
    assert!(longest_unfiltered(volts(370.0), wave, limit).unwrap().value.is_infinite());
    let all = remedies(volts(720.0), wave, limit, &Practice::default()).unwrap();
    let found: Vec<Remedy> = all.iter().map(|(_, remedy)| *remedy).collect();
    assert_eq!(found[..3], [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter]);
    near(in_meters(all[1].0), 5.8234, 1e-4);
}

/// NEC 310.14(A)(2): up to 10 ft, and a tenth of the rest.
#[test]
fn short_warm_stretches() {
    near(in_feet(least_cool(feet(8.0)).unwrap()), 80.0, 1e-9);
    assert_eq!(least_cool(feet(10.1)), None);
    near(in_feet(most_warm(feet(50.0))), 5.0, 1e-9);
    near(in_feet(most_warm(feet(500.0))), 10.0, 1e-9);
}

/// 6 AWG, 20.442 A of 65 A in 45 °C: 45 + 45 · (20.442/65)² = 49.451 °C; 0.491 Ω · (1 + 0.00323 (49.451 − 75)) = 0.45048 Ω in
/// 1,000 ft.
#[test]
fn a_conductor_in_service() {
    let service = Service {
        ambient: Celsius(45.0),
        insulation: Rating::C75,
        current: amperes(20.442),
        rated_at_30: amperes(65.0),
    };
    let found = in_service(Size::Awg6, Metal::Copper, service).unwrap();
    near(found.temperature.0, 49.451, 0.001);
    near(in_ohms_per_kilofoot(found.resistance), 0.450_48, 1e-5);
    near(in_ohms_per_kilofoot(found.at_75), 0.491, 1e-9);
}

/// 20 A in 8 AWG, 3 · 400 · 0.778/1,000 = 0.9336 W a foot; 2,000 h at $0.12 and ten years' worth: $2.2406 a foot on $2. 6 AWG:
/// 0.5892 W, $1.4141 on $2.6, which is $4.0141 against $4.2406: the larger one pays.
#[test]
fn the_cheapest_size_over_the_years() {
    let candidate = |size, ohms: f64, price: f64| Candidate {
        conductor: Conductor { sets: 1, size },
        resistance: ohms_per_kilofoot(ohms),
        price: MoneyPerLength(price / 0.3048),
    };
    let duty = economic::Duty {
        current: amperes(20.0),
        phases: Phases::Three,
        hours: 2000.0,
        kilowatt_hour: Money(0.12),
        present_worth: 10.0,
    };
    let both = [candidate(Size::Awg8, 0.778, 2.0), candidate(Size::Awg6, 0.491, 2.6)];
    let totals = both.map(|one| lifetime(one, duty).unwrap().total.0 * 0.3048);
    near(totals[0], 4.240_64, 1e-4);
    near(totals[1], 4.014_08, 1e-4);
    let choice = choose(&both, duty).unwrap().unwrap();
    assert_eq!(choice.economic.candidate.conductor.size, Size::Awg6);
    near(choice.saving(feet(100.0)).0, 22.656, 0.01);
}

/// $700 and $140 a horsepower: $2,100 for 10 hp. 660 ft at $3.41659, and $900: $3,154.95.
#[test]
fn what_is_bought() {
    let price = PieceAndSize { fixed: Money(700.0), per_hp: Money(140.0) };
    near(equipment_price(price, horsepower(10.0)).unwrap().0, 2100.0, 1e-9);
    near(lead_price(MoneyPerLength(3.416_59 / 0.3048), feet(660.0), Money(900.0)).0, 3154.949, 1e-3);
}

/// McKay, Beckman and Conover (1979): one number in each of ten equal parts of the chances. A triangle from 0 over 1 to 2 has
/// half its chances below 1, and a tenth of them below √0.2.
#[test]
fn a_latin_hypercube() {
    let triangle = Estimate::new(0.0, 1.0, 2.0).unwrap();
    assert_eq!((triangle.low(), triangle.expected(), triangle.high()), (0.0, 1.0, 2.0));
    let sample = latin_hypercube(&[triangle, triangle], 10, 7).unwrap();
    for column in 0..2 {
        let numbers: Vec<f64> = sample.points().map(|point| point[column]).collect();
        assert_eq!(numbers.iter().filter(|number| **number < 1.0).count(), 5, "{numbers:?}");
        assert_eq!(numbers.iter().filter(|number| **number < 0.2f64.sqrt()).count(), 1, "{numbers:?}");
    }
}

/// 40 A of equipment beside 60 A of other load, a fault current of 1,500 A: 15 times the demand, where table 2 of IEEE 519
/// allows 4 % of the fifth order, 2 % of the thirteenth. A fifth of 20 % of 40 A is 8 % of 100 A.
#[test]
fn one_order_of_the_current() {
    let coupling = Coupling { short_circuit: amperes(1500.0), equipment: amperes(40.0), other: amperes(60.0) };
    for (order, limit) in [(5, 0.04), (13, 0.02)] {
        let found = coupling.single(order, 0.2).unwrap().unwrap();
        near(found.ratio, 15.0, 1e-9);
        near(found.distortion, 0.08, 1e-12);
        near(found.limit, limit, 1e-12);
        near(found.margin, limit - 0.08, 1e-12);
    }
    near(coupling.total(0.2).unwrap().margin, 0.05 - 0.08, 1e-12);
}

/// 20 A, six times: 120 A. Made of two lines three take √3 as much from them, and two made of three as much less.
#[test]
fn a_motor_that_starts() {
    let drawn = |supply, motor| in_amperes(locked_rotor_input(amperes(20.0), 6.0, supply, motor).unwrap());
    near(drawn(Feed::ThreePhase, Feed::ThreePhase), 120.0, 1e-9);
    near(drawn(Feed::SinglePhase, Feed::SinglePhase), 120.0, 1e-9);
    near(drawn(Feed::SinglePhase, Feed::ThreePhase), 207.846, 1e-3);
    near(drawn(Feed::ThreePhase, Feed::SinglePhase), 69.282, 1e-3);
}

/// 25 kVA at 240 V are 104.17 A: 83 A are 79.7 % of them, 94 A 90.2 %, 110 A 105.6 %; close from 80 % on (common practice).
#[test]
fn how_much_of_a_transformer_is_taken() {
    let one =
        Transformer { rating: kilovolt_amperes(25.0), voltage: volts(240.0), impedance: 0.02, feed: Feed::SinglePhase };
    let of = |current: f64| one.loading(amperes(current)).unwrap();
    assert!(matches!(of(83.0), Loading::Within(share) if (share - 0.7968).abs() < 1e-4));
    assert!(matches!(of(94.0), Loading::Close(share) if (share - 0.9024).abs() < 1e-4));
    assert!(matches!(of(110.0), Loading::Over(share) if (share - 1.056).abs() < 1e-4));
}

/// A fixed part and one for each horsepower make the price of any size.
#[test]
fn parts_of_a_price() {
    let book = PriceBook::invented();
    let piece = Piece::Equipment(Equipment::Doubling);
    let (fixed, per_size) = book.piece_parts(piece, horsepower(10.0)).unwrap();
    let whole = |hp: f64| book.piece_price(piece, horsepower(hp)).unwrap().unwrap().0;
    near(fixed.0 + 10.0 * per_size.0, whole(10.0), 1e-9);
    near(per_size.0, (whole(30.0) - whole(10.0)) / 20.0, 1e-9);
    assert!(per_size.0 > 0.0);
}

/// One line of three alone: it deviates from the mean by twice that. Beyond 5 % a motor is not run (NEMA MG 1, 14.36).
#[test]
fn the_ends_of_unbalance() {
    let share = current_unbalance([0.001, 0.0, 0.0].map(amperes)).unwrap();
    near(share, 2.0, 1e-12);
    let refused = derated_power(horsepower(10.0), 0.051).unwrap_err();
    assert_eq!((refused.argument, refused.min, refused.max), ("unbalance", 0.0, 0.05));
}
