//! The inputs of a row: `name=value` pairs. A row may not give an input that its sum does not read.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::cable::drop::{Load, Phases};
use wellwright_core::quantity::{Celsius, Entry, Length, OhmsPerLength, Unit, amperes, feet, ohms_per_kilofoot, volts};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};

pub struct Inputs<'a> {
    given: BTreeMap<&'a str, &'a str>,
    read: RefCell<BTreeSet<&'a str>>,
}

impl<'a> Inputs<'a> {
    pub fn parse(text: &'a str) -> Result<Self, String> {
        let pairs = text.split(';').map(str::trim).filter(|pair| !pair.is_empty());
        let given = pairs
            .map(|pair| pair.split_once('=').ok_or_else(|| format!("input {pair:?}")))
            .collect::<Result<BTreeMap<_, _>, _>>()?;
        Ok(Self { given, read: RefCell::default() })
    }

    /// An error that names the inputs that no sum has read.
    pub fn all_read(&self) -> Result<(), String> {
        let read = self.read.borrow();
        let left: Vec<_> = self.given.keys().filter(|name| !read.contains(*name)).collect();
        if left.is_empty() { Ok(()) } else { Err(format!("inputs not read: {left:?}")) }
    }

    pub fn has(&self, name: &str) -> bool {
        self.given.contains_key(name)
    }

    pub fn text(&self, name: &str) -> Result<&'a str, String> {
        let (key, value) = self.given.get_key_value(name).ok_or_else(|| format!("no input {name}"))?;
        self.read.borrow_mut().insert(key);
        Ok(value)
    }

    pub fn number(&self, name: &str) -> Result<f64, String> {
        self.text(name)?.parse().map_err(|_| format!("{name} is no number"))
    }

    pub fn gauge(&self, name: &str) -> Result<i32, String> {
        self.text(name)?.parse().map_err(|_| format!("{name} is no gauge"))
    }

    pub fn size(&self, name: &str) -> Result<Size, String> {
        let name = self.text(name)?;
        Size::ALL.into_iter().find(|size| size.designation() == name).ok_or_else(|| format!("size {name}"))
    }

    pub fn metal(&self) -> Result<Metal, String> {
        match self.text("metal")? {
            "copper" => Ok(Metal::Copper),
            "aluminum" => Ok(Metal::Aluminum),
            other => Err(format!("metal {other}")),
        }
    }

    pub fn rating(&self, name: &str) -> Result<Rating, String> {
        match self.text(name)? {
            "60" => Ok(Rating::C60),
            "75" => Ok(Rating::C75),
            "90" => Ok(Rating::C90),
            other => Err(format!("rating {other}")),
        }
    }

    pub fn celsius(&self) -> Result<Celsius, String> {
        if self.has("ambient_f") {
            let entry = Entry::new(self.number("ambient_f")?, Unit::DegreeFahrenheit);
            return entry.to(Unit::DegreeCelsius).map(Celsius).ok_or_else(|| "no temperature".into());
        }
        self.number("ambient_c").map(Celsius)
    }

    pub fn per_kilofoot(&self, name: &str) -> Result<OhmsPerLength, String> {
        self.number(name).map(ohms_per_kilofoot)
    }

    pub fn length(&self) -> Result<Length, String> {
        self.number("length_ft").map(feet)
    }

    pub fn load(&self, sending: f64, current: f64, phases: Phases) -> Result<Load, String> {
        let power_factor = self.number("power_factor")?;
        Ok(Load { sending: volts(sending), current: amperes(current), power_factor, phases })
    }

    pub fn phases(&self) -> Result<Phases, String> {
        match self.text("phases")? {
            "1" => Ok(Phases::Single),
            "3" => Ok(Phases::Three),
            other => Err(format!("{other} phases")),
        }
    }
}
