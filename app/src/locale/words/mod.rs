//! The table of words. One file a group, each language side by side: a phrase that a language lacks does not compile.

pub mod answer;
pub mod book;
pub mod cautions;
pub mod charts;
pub mod cost;
pub mod curve;
pub mod device;
pub mod embed;
pub mod equipment;
pub mod fields;
#[cfg(test)]
pub mod first;
pub mod flow;
pub mod found;
pub mod found_power;
pub mod frame;
pub mod gallery;
mod labels;
pub mod lesson;
pub mod list;
pub mod papers;
pub mod passing;
pub mod peak;
pub mod picture;
pub mod say;
pub mod show;
pub mod startup;
pub mod tables;
pub mod ways;
pub mod working;

/// A phrase without gaps.
pub type Text = &'static str;

/// All phrases of one language.
pub struct Words {
    /// The bar, the stations, settings, what parts say everywhere.
    pub frame: frame::Frame,
    /// What the browser keeps of the page itself.
    pub device: device::Device,
    /// The lesson.
    pub lesson: lesson::Lesson,
    /// The list of jobs.
    pub list: list::List,
    /// The papers and the files beside them.
    pub papers: papers::Papers,
    /// Passing a job on, and what comes in.
    pub passing: passing::Passing,
    /// The user's own equipment.
    pub equipment: equipment::Equipment,
    /// The price book.
    pub book: book::Book,
    /// The cost page.
    pub cost: cost::Cost,
    /// The start-up page.
    pub startup: startup::Startup,
    /// Figures and choices of a job.
    pub fields: fields::Fields,
    /// The answer.
    pub answer: answer::Answer,
    /// The well and the curve.
    pub picture: picture::Picture,
    /// The water and the pump: choices, answers, what they say.
    pub flow: flow::Flow,
    /// The points of a pump's curve as text.
    pub curve: curve::Curve,
    /// What is found about the water and the pump.
    pub found: found::Found,
    /// What is found about the supply and the ways to run the motor.
    pub found_power: found_power::FoundPower,
    /// The ways to run the motor.
    pub ways: ways::Ways,
    /// Tables of the pages.
    pub tables: tables::Tables,
    /// Cautions beside the steps.
    pub cautions: cautions::Cautions,
    /// The head bar and the picture of the pump.
    pub charts: charts::Charts,
    /// The picture of the peak voltage at the motor.
    pub peak: peak::Peak,
    /// Errors and findings.
    pub say: say::Say,
    /// The curve inside a page of somebody else.
    pub embed: embed::Embed,
    /// The page for the customer's side of the table.
    pub show: show::Show,
    /// The working behind an answer.
    pub working: working::Working,
    /// The gallery of parts.
    pub gallery: gallery::Gallery,
}

/// US English.
pub static ENGLISH: Words = Words {
    frame: frame::ENGLISH,
    device: device::ENGLISH,
    lesson: lesson::ENGLISH,
    list: list::ENGLISH,
    papers: papers::ENGLISH,
    passing: passing::ENGLISH,
    equipment: equipment::ENGLISH,
    book: book::ENGLISH,
    cost: cost::ENGLISH,
    startup: startup::ENGLISH,
    fields: fields::ENGLISH,
    answer: answer::ENGLISH,
    picture: picture::ENGLISH,
    flow: flow::ENGLISH,
    curve: curve::ENGLISH,
    found: found::ENGLISH,
    found_power: found_power::ENGLISH,
    ways: ways::ENGLISH,
    tables: tables::ENGLISH,
    cautions: cautions::ENGLISH,
    charts: charts::ENGLISH,
    peak: peak::ENGLISH,
    say: say::ENGLISH,
    embed: embed::ENGLISH,
    show: show::ENGLISH,
    working: working::ENGLISH,
    gallery: gallery::ENGLISH,
};

/// Spanish as the trade speaks it in the western US and in Mexico.
pub static SPANISH: Words = Words {
    frame: frame::SPANISH,
    device: device::SPANISH,
    lesson: lesson::SPANISH,
    list: list::SPANISH,
    papers: papers::SPANISH,
    passing: passing::SPANISH,
    equipment: equipment::SPANISH,
    book: book::SPANISH,
    cost: cost::SPANISH,
    startup: startup::SPANISH,
    fields: fields::SPANISH,
    answer: answer::SPANISH,
    picture: picture::SPANISH,
    flow: flow::SPANISH,
    curve: curve::SPANISH,
    found: found::SPANISH,
    found_power: found_power::SPANISH,
    ways: ways::SPANISH,
    tables: tables::SPANISH,
    cautions: cautions::SPANISH,
    charts: charts::SPANISH,
    peak: peak::SPANISH,
    say: say::SPANISH,
    embed: embed::SPANISH,
    show: show::SPANISH,
    working: working::SPANISH,
    gallery: gallery::SPANISH,
};
