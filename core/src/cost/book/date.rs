//! The day that prices are of, and the currency that they are in.

/// A day of the calendar, 1583 to 9999.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date {
    pub(super) year: u16,
    pub(super) month: u8,
    pub(super) day: u8,
}

impl Date {
    /// The day of a text such as `2026-11-01`; `None` where it is none.
    ///
    /// # Units
    /// Year, month and day.
    /// # Range
    /// 1583-01-01 to 9999-12-31, the first full year of the calendar on.
    /// # Source
    /// [iso-8601]; a year has a leap day where 4 divides it, but not 100, or where 400 does.
    #[must_use]
    pub fn of(text: &str) -> Option<Self> {
        let mut parts = text.split('-');
        let mut part = |digits: usize| {
            let part = parts.next()?;
            let plain = part.len() == digits && part.bytes().all(|byte| byte.is_ascii_digit());
            if plain { part.parse::<u16>().ok() } else { None }
        };
        let (year, month, day) = (part(4)?, u8::try_from(part(2)?).ok()?, u8::try_from(part(2)?).ok()?);
        let is_day = year >= 1583 && day >= 1 && day <= days(year, month)?;
        (is_day && parts.next().is_none()).then_some(Self { year, month, day })
    }

    /// The day as a text.
    ///
    /// # Units
    /// Year, month and day.
    /// # Range
    /// Any day.
    /// # Source
    /// [iso-8601].
    #[must_use]
    pub fn text(self) -> String {
        format!("{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

fn days(year: u16, month: u8) -> Option<u8> {
    let leap = year.is_multiple_of(4) && !year.is_multiple_of(100) || year.is_multiple_of(400);
    match month {
        1 | 3 | 5 | 7 | 8 | 10 | 12 => Some(31),
        4 | 6 | 9 | 11 => Some(30),
        2 => Some(if leap { 29 } else { 28 }),
        _ => None,
    }
}

/// A currency by its code of three letters.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Currency([char; 3]);

impl Currency {
    pub(super) const USD: Self = Self(['U', 'S', 'D']);

    /// The currency of a code such as `USD`; `None` where it is none.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Three capital letters, A to Z; whether the standard lists them is not looked up.
    /// # Source
    /// [iso-4217].
    #[must_use]
    pub fn of(code: &str) -> Option<Self> {
        let letters: Vec<char> = code.chars().take(4).collect();
        let letters: [char; 3] = letters.try_into().ok()?;
        letters.iter().all(char::is_ascii_uppercase).then_some(Self(letters))
    }

    /// Its code.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any currency.
    /// # Source
    /// [iso-4217].
    #[must_use]
    pub fn code(self) -> String {
        self.0.iter().collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // From memory: 1900 and 2100 have no leap day, 2000 and 2024 have.
    #[test]
    fn days_of_the_calendar() {
        let days = ["1583-01-01", "1999-12-31", "2000-02-29", "2024-02-29", "2026-11-01", "2100-02-28", "9999-12-31"];
        for text in days {
            assert_eq!(Date::of(text).map(Date::text).as_deref(), Some(text));
        }
        let none = [
            "",
            "2026",
            "2026-11",
            "1900-02-29",
            "2100-02-29",
            "2023-02-29",
            "2026-02-30",
            "2026-04-31",
            "2026-13-01",
            "2026-00-10",
            "2026-01-00",
            "2026-1-1",
            "26-01-01",
            "2026-01-01-",
            "2026-01-01T00",
            "-2026-01-01",
            "+026-01-01",
            "2026/01/01",
            "01-02-2026",
            "1582-12-31",
            "0000-01-01",
            "12026-01-01",
            "2026-01-٠١",
            " 2026-01-01",
        ];
        for text in none {
            assert_eq!(Date::of(text), None, "{text:?}");
        }
        assert!(Date::of("2026-09-30") < Date::of("2026-10-01"));
    }

    // The calendar repeats after 400 years of 97 leap days, 146 097 days in all, which are whole weeks.
    #[test]
    fn four_centuries_have_their_days() {
        let mut count = 0;
        for year in 1600..2000 {
            for month in 0..=13 {
                count += (0..=40).filter(|day| Date::of(&format!("{year}-{month:02}-{day:02}")).is_some()).count();
            }
        }
        assert_eq!((count, count % 7), (400 * 365 + 97, 0));
    }

    #[test]
    fn codes_of_currencies() {
        for code in ["USD", "MXN", "EUR"] {
            assert_eq!(Currency::of(code).map(Currency::code).as_deref(), Some(code));
        }
        for code in ["", "US", "USDX", "usd", "U$D", "US1", "ÜSD", " USD"] {
            assert_eq!(Currency::of(code), None, "{code:?}");
        }
        assert_eq!(Currency::of("USD"), Some(Currency::USD));
    }
}
