//! The settings sheet: what is entered at the drive, large enough to read at arm's length, and why.

use crate::locale::{self, words};
use crate::pages::job::Desk;
use crate::parts::equals::Equals;
use crate::parts::group::Group;
use leptos::prelude::*;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::Job;
use wellwright_core::papers::{Topic, working};
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::startup::{Setting, SettingCode, Value, settings};

/// A setting in words.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Which setting.
    pub code: SettingCode,
    /// What is entered.
    pub value: String,
    /// Its unit.
    pub unit: &'static str,
    /// What is safe.
    pub safe: String,
    /// Whether it goes by a figure that is assumed.
    pub assumed: bool,
    topic: Option<Topic>,
    waits: bool,
}

/// The settings sheet.
#[component]
pub fn Settings(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = words();
    let lines = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| lines(&sheet.job, answer, open.system.get())))
    });
    let row = move |line: Line| {
        let note = if line.assumed { format!(" {}", words.fields.assumed) } else { String::new() };
        let title = (words.startup.setting)(line.code);
        let opens = line.topic.map(|topic| view! { " " <Equals of=title.to_owned() on_open=desk.opens(topic) /> });
        view! {
            <div class="setting" class:waits=line.waits>
                <dt>
                    {title}
                    <small>{(words.startup.why)(line.code)}</small>
                    <small class="safe">{line.safe}<em>{note}</em></small>
                </dt>
                <dd>{line.value}" "<span class="u">{line.unit}</span>{opens}</dd>
            </div>
        }
    };
    view! {
        <Group title=words.startup.settings>
            <p class="note">{words.startup.settings_hint}</p>
            <dl class="settings" aria-live="polite">{move || lines.get().into_iter().map(row).collect_view()}</dl>
        </Group>
    }
}

/// Every setting of a job in words.
pub fn lines(job: &Job, answer: &Evaluation, system: UnitSystem) -> Vec<Line> {
    let worked = |setting: &Setting| topic(setting.code).filter(|topic| working(answer, *topic, system).is_some());
    let line = |setting: &Setting| Line { topic: worked(setting), ..line(setting, system) };
    settings(job, answer).iter().map(line).collect()
}

/// One setting of a job in words.
pub fn line_of(code: SettingCode, job: &Job, answer: &Evaluation, system: UnitSystem) -> Option<Line> {
    settings(job, answer).iter().find(|setting| setting.code == code).map(|setting| line(setting, system))
}

/// The working of a setting; the others are typed, stand in, or are by definition.
fn topic(code: SettingCode) -> Option<Topic> {
    use SettingCode as S;
    match code {
        S::CurrentLimit | S::Overload | S::SensorSignal | S::DryRun | S::HighPressure => Some(Topic::Setting(code)),
        S::LowestSpeed => Some(Topic::LowestSpeed),
        _ => None,
    }
}

fn line(setting: &Setting, system: UnitSystem) -> Line {
    let words = &words().startup;
    let shown = |entry: Entry| locale::result(entry.shown_in(system));
    let (value, unit) = match &setting.value {
        Value::Figure(entry) => {
            let shown = shown(*entry);
            (shown.figure, shown.unit)
        }
        Value::Word(word) => ((words.word)(*word).to_owned(), ""),
        Value::Missing(fields) => {
            let names: Vec<&str> = fields.iter().map(|field| (crate::locale::words().fields.label)(*field)).collect();
            let what = if names.is_empty() { words.no_way.to_owned() } else { (words.waits)(&names.join(", ")) };
            (what, "")
        }
    };
    let [low, high] = setting.safe.map(|end| end.map(|end| shown(end).text()));
    Line {
        code: setting.code,
        value,
        unit,
        safe: (words.safe)(low.as_deref(), high.as_deref()),
        assumed: setting.assumed,
        topic: None,
        waits: matches!(setting.value, Value::Missing(_)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;

    #[test]
    fn every_setting_of_every_demo_job_says_a_value() {
        for job in demo_jobs().into_iter().chain([Job::default()]) {
            let answer = evaluate(&job);
            let all = settings(&job, &answer);
            assert!(!all.is_empty());
            for setting in &all {
                let line = line(setting, UnitSystem::Us);
                assert!(!line.value.is_empty(), "{setting:?}");
            }
        }
    }

    #[test]
    fn the_transducer_of_the_first_demo_job() {
        let job = demo_jobs().remove(0);
        let all = settings(&job, &evaluate(&job));
        let signal = all.iter().find(|setting| setting.code == SettingCode::SensorSignal).unwrap();
        let line = line(signal, UnitSystem::Us);
        // 60 psi on 150 psi.
        assert_eq!((line.value.as_str(), line.unit), ("10.4", "mA"));
    }
}
