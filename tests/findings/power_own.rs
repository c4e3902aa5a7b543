//! The user's own equipment: a table that can't be read, and figures of a data sheet in place of the generic ones.

use super::{OVER, UNDER, field, found, house, of_code, raised, with, without};
use wellwright_core::cost::book::{BookUnit, Item, Price, PriceBook};
use wellwright_core::cost::book_table::write;
use wellwright_core::evaluate::{DeviceBy, Evaluation, PoweredWay, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job, WayKey};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{Money, in_amperes, in_feet, in_kilovolt_amperes};

use Severity::{Caution, Stop};

/// A job with equipment of its own, and the way by its name chosen.
fn own(mut job: Job, table: &str, name: &str) -> Job {
    job.families = table.into();
    job.way = Some(WayKey::Own(name.into()));
    job
}

fn named(answer: &Evaluation, name: &str) -> PoweredWay {
    answer.ways.all.iter().find(|way| way.family.name == name).unwrap().clone()
}

#[test]
fn a_table_that_can_not_be_read() {
    const CODE: &str = "EQUIPMENT_UNREADABLE";
    let table = |text: &str| {
        let mut job = field();
        job.families = text.into();
        job
    };
    for good in ["", " \n", "name,kind\n", "name,kind\nMine,doubling\n"] {
        assert!(!raised(&table(good), CODE), "{good:?}");
    }
    for bad in ["x", "name,kind\nMine,doublin\n", "name,kind,rated_c\nMine,doubling,61\n", "name,kind\n,doubling\n"] {
        assert_eq!(found(&table(bad), CODE), [Caution], "{bad:?}");
        let ways = evaluate(&table(bad)).ways;
        assert!(ways.table.is_some() && ways.all.len() == Kind::ALL.len(), "{bad:?}");
    }
    // Where no supply can be used either, nothing stands on equipment, and the table is told all the same.
    assert!(evaluate(&with(table("x"), &[(Field::SupplyVolts, -5.0)])).ways.table.is_some());
    // A way of a table that can't be read is gone too; one that stands in it is there.
    let chosen = |text| own(field(), text, "Mine");
    assert!(raised(&chosen("x"), "WAY_GONE") && raised(&chosen("x"), CODE));
    assert!(!raised(&chosen("name,kind\nMine,large_low_harmonic\n"), "WAY_GONE"));
    assert!(raised(&chosen("name,kind\nYours,large_low_harmonic\n"), "WAY_GONE"));
}

/// A marked maximum is known; a device that was entered comes first.
#[test]
fn a_marked_device_is_no_stand_in() {
    const CODE: &str = "DEVICE_PROVISIONAL";
    let table = "name,kind,hp,device_a\nMine,large_low_harmonic,60,200\n";
    let job = own(field(), table, "Mine");
    let draw = named(&evaluate(&job), "Mine").draw.unwrap();
    assert_eq!((in_amperes(draw.device), draw.device_by), (200.0, DeviceBy::Marked));
    assert_eq!(found(&job, CODE), []);
    assert_eq!(found(&own(field(), "name,kind,hp\nMine,large_low_harmonic,60\n", "Mine"), CODE), [Caution]);
    assert_eq!(found(&with(job, &[(Field::DeviceAmps, 150.0)]), CODE), []);
}

/// Amperes of the data sheet decide on the frame, and its input on the conductors.
#[test]
fn amperes_of_a_data_sheet() {
    const CODE: &str = "DRIVE_AMPS_SHORT";
    let at = |amps: f64| {
        let table = format!("name,kind,hp,output_a_480,input_a\nMine,large_low_harmonic,60,{amps},111.1\n");
        own(field(), &table, "Mine")
    };
    assert_eq!((found(&at(69.76), CODE), found(&at(69.76 * OVER), CODE)), (vec![], vec![]));
    assert_eq!(found(&at(69.76 * UNDER), CODE), [Stop]);
    let draw = named(&evaluate(&at(70.0)), "Mine").draw.unwrap();
    assert!(draw.rated_typed && in_amperes(draw.rated) == 111.1 && (in_amperes(draw.ampacity) - 138.875).abs() < 1e-9);
}

/// A rating of 50 °C stands 45 °C, and the limit moves with it.
#[test]
fn a_rating_of_its_own_stands_more_heat() {
    const CODE: &str = "HEAT_OR_ALTITUDE";
    let at = |celsius: f64| {
        let cool = with(house(), &[(Field::DriveAmbient, celsius), (Field::Altitude, 1000.0)]);
        own(cool, "name,kind,rated_c,to_c_above\nMine,converting_active,50,5\n", "Mine")
    };
    assert_eq!((found(&at(50.0), CODE), found(&at(50.0 * OVER), CODE)), (vec![], vec![Caution]));
    assert_eq!((found(&at(55.0), CODE), found(&at(55.0 * OVER), CODE)), (vec![Caution], vec![Stop]));
}

/// The short-circuit rating of a data sheet counts, whatever stands in the job for other equipment.
#[test]
fn a_marked_short_circuit_rating() {
    const CODE: &str = "FAULT_OVER_SCCR";
    let marked = |kiloamperes: f64| {
        let table = format!("name,kind,short_circuit_ka\nMine,large_low_harmonic,{kiloamperes}\n");
        own(field(), &table, "Mine")
    };
    let fault = in_amperes(named(&evaluate(&marked(65.0)), "Mine").pole.unwrap().fault_here) / 1000.0;
    assert_eq!((found(&marked(fault * OVER), CODE), found(&marked(fault * UNDER), CODE)), (vec![Caution], vec![Stop]));
    assert_eq!(found(&with(marked(1.0), &[(Field::MarkedShortCircuit, 65.0)]), CODE), [Stop]);
    // Marked with a type, a cabinet keeps out what that type does.
    let mut outdoors = own(field(), "name,kind,enclosure\nMine,large_low_harmonic,1\n", "Mine");
    (outdoors.choices.place, outdoors.choices.shaded) = (Some(wellwright_core::job::Place::Outdoors), Some(true));
    assert_eq!(found(&outdoors, "ENCLOSURE_WRONG"), [Stop]);
    outdoors.families = "name,kind,enclosure\nMine,large_low_harmonic,4\n".into();
    assert_eq!(found(&outdoors, "ENCLOSURE_WRONG"), []);
}

/// Own equipment is judged beside the generic ways, and may be the cheapest that serves.
#[test]
fn own_equipment_may_be_picked() {
    let table = |price: f64| {
        let mut job = field();
        job.families = format!("name,kind,price_usd,price_per_hp_usd\nMine,large_low_harmonic,{price},0\n");
        evaluate(&job).ways
    };
    // The generic one costs 2,500 and 150 a horsepower of its 60.
    let at = 2500.0 + 150.0 * 60.0;
    let picked = |price| table(price).picked().unwrap().family.name.clone();
    assert_eq!((picked(at - 0.01).as_str(), picked(at + 0.01).as_str()), ("Mine", ""));
    assert_eq!(table(at).all.len(), Kind::ALL.len() + 1);
    let unknown = without(field(), &[Field::TransformerRating]);
    let told = of_code(&evaluate(&unknown), "TRANSFORMER_OR_UTILITY");
    assert_eq!(told, [Finding::UtilityUnknown]);
    assert_eq!(in_kilovolt_amperes(evaluate(&unknown).ways.picked().unwrap().pole.unwrap().transformer.rating), 75.0);
}

/// The price of equipment of one's own holds the transformer behind it; the generic one pays for its own.
#[test]
fn own_equipment_with_its_transformer_is_one_price() {
    let table = "name,kind,hp,price_usd\nMine,step_up_active,10,5000\n";
    let job = own(without(house(), &[Field::ExtraEquipment]), table, "Mine");
    let answer = evaluate(&job);
    let mine = named(&answer, "Mine").cost.unwrap().beyond;
    assert_eq!((mine.equipment, mine.transformer), (Money(5000.0), Money(0.0)));
    let generic = answer.ways.all.iter().find(|way| way.family.kind == Kind::StepUpActive).unwrap();
    assert!(generic.family.name.is_empty() && generic.cost.unwrap().beyond.transformer > Money(0.0));
}

/// Labor: 1,000 $ whatever the lead, and 2 $ a foot of it.
#[test]
fn labor_counts_what_is_asked_once_and_the_lead_by_its_length() {
    let mut job = without(house(), &[Field::ExtraEquipment]);
    let mut book = PriceBook::invented();
    book.set(Item::LaborFixed, Price::new(1000.0, BookUnit::Each)).unwrap();
    book.set(Item::LaborPerLength, Price::new(2.0, BookUnit::PerFoot)).unwrap();
    job.book = write(&book);
    let ways = evaluate(&job).ways;
    let way = ways.picked().unwrap();
    let (cost, lead) = (way.cost.unwrap(), way.lead.unwrap());
    assert!((cost.labor.0 - 2.0 * in_feet(lead.length)).abs() < 1e-9, "{:?}", cost.labor);
    assert_eq!(cost.beyond.labor, Money(1000.0));
    let sum = cost.lead.0 + cost.beyond.total().0 + cost.labor.0;
    assert!((cost.first.0 - sum).abs() < 1e-9);
}
