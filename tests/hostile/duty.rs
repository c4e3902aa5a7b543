//! Duties that can't be used: each says where, none stops the rest of the job, and none is taken for something else.

use super::jobs::house;
use wellwright_core::cost::duty_text::{FlowUnit, read_duty};
use wellwright_core::evaluate::{NoYear, evaluate};
use wellwright_core::job::Job;

/// Line and column of the fault that an evaluation tells; the rest of the answer stands.
fn refused(text: &str) -> (usize, usize) {
    let mut job = house();
    let without = evaluate(&job);
    text.clone_into(&mut job.duty);
    let answer = evaluate(&job);
    assert!(answer.year.is_none(), "{text:?}");
    assert!(answer.findings.iter().any(|finding| finding.code() == "DUTY_UNREADABLE"), "{text:?}");
    let saving =
        |answer: &wellwright_core::evaluate::Evaluation| answer.here.as_ref().unwrap().saving.map(|saving| saving.net);
    assert_eq!(saving(&answer), saving(&without), "{text:?}");
    assert_eq!(answer.water, without.water, "{text:?}");
    match answer.no_year {
        Some(NoYear::Text(error)) => (error.line, error.column),
        other => panic!("{text:?}: {other:?}"),
    }
}

#[test]
fn every_fault_is_told_with_its_line() {
    for (text, line) in [
        ("25", 1),
        ("25 1000 3", 1),
        ("25 1000\n20 lots", 2),
        ("25 1000\n-5 100", 2),
        ("25 -1000", 1),
        ("0 1000", 1),
        ("25 8785", 1),
        ("25 8000\n20 785", 2),
        ("25 NaN", 1),
        ("25 inf", 1),
        ("25 1e999", 1),
        ("25 =1+1", 1),
        ("25 1000\n=SUM(A1) 5", 2),
        ("Q (ft3/s); h\n25; 1000", 1),
        ("25 1000\u{0}", 1),
        ("25 1000\n\u{202e}20 100", 2),
        ("\"25 1000", 1),
        ("25 1,000,000,00", 1),
        ("{\"flow\": 25}", 1),
    ] {
        assert_eq!(refused(text).0, line, "{text:?}");
    }
    assert_eq!(refused(&"25 1\n".repeat(25)).0, 25);
    // Words alone hold no row.
    assert!(refused("no water at all").0 >= 1);
}

#[test]
fn what_a_spreadsheet_writes_is_read() {
    for text in [
        "\u{feff}gpm;h\r\n25;1000,5\r\n",
        "gpm\thours\n25\t1000.5\n",
        "# a year\n\n25, 1000.5\n",
        "h; gpm\n1000,5; 25\n",
        "hours; flow\n1000,5; 25\n",
    ] {
        let read = read_duty(text, FlowUnit::Gpm).unwrap_or_else(|error| panic!("{text:?}: {error:?}"));
        let row = read.duty.rows()[0];
        assert!((row.flow.value - 25.0 * 6.309_019_64e-5).abs() < 1e-12, "{text:?}: {row:?}");
        assert!((row.time.value / 3600.0 - 1000.5).abs() < 1e-6, "{text:?}: {row:?}");
    }
}

#[test]
fn a_text_without_end_is_refused_at_once() {
    let long = "25 1\n".repeat(200_000);
    assert!(read_duty(&long, FlowUnit::Gpm).is_err());
    assert!(read_duty(&"9".repeat(1_000_000), FlowUnit::Gpm).is_err());
    // A file may not hold so long a one.
    let file = serde_json::json!({"schema": 1, "energy": {"duty": "1".repeat(Job::MOST_DUTY + 1)}});
    let error = wellwright_core::job::wire::read(&file).unwrap_err();
    assert_eq!(error.path(), "energy.duty");
}
