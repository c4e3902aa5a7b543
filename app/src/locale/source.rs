//! Published sources by their keys, as a reader would look for them.

use super::words;

/// A source in words.
#[must_use]
pub fn source_text(key: &str) -> String {
    if let Some(part) = key.strip_prefix("nec-2023-") {
        return match part.strip_prefix("ch9-t") {
            Some(table) => (words().working.chapter_9)(table),
            None => (words().working.nec)(&paragraph(part)),
        };
    }
    match key {
        "practice" => words().working.practice.to_owned(),
        key => book(key).map_or_else(|| standard(key), str::to_owned),
    }
}

/// A book or paper by its writers.
#[rustfmt::skip]
fn book(key: &str) -> Option<&'static str> {
    Some(match key {
        "abramowitz-stegun-1964" => "Abramowitz, Stegun: Handbook of Mathematical Functions, 1964",
        "boyle-1662" => "Boyle: New Experiments Physico-Mechanical, 1662",
        "colebrook-1939" => "Colebrook: Turbulent Flow in Pipes, 1939",
        "cooper-jacob-1946" => "Cooper, Jacob: A Generalized Graphical Method for Evaluating Formation Constants, 1946",
        "fritsch-carlson-1980" => "Fritsch, Carlson: Monotone Piecewise Cubic Interpolation, 1980",
        "grainger-stevenson-1994" => "Grainger, Stevenson: Power System Analysis, 1994",
        "jacob-1947" => "Jacob: Drawdown Test to Determine Effective Radius of Artesian Well, 1947",
        "joukowsky-1898" => "Joukowsky: Über den hydraulischen Stoß in Wasserleitungsröhren, 1898",
        "kstate-livestock" => "Kansas State University: Livestock Watering Handbook",
        "moody-1944" => "Moody: Friction Factors for Pipe Flow, 1944",
        "pipe-surfaces" => "Munson et al.: Fundamentals of Fluid Mechanics, table 8.2",
        "ppi-handbook" => "Plastics Pipe Institute: Handbook of Polyethylene Pipe",
        "pump-handbook" => "Karassik et al.: Pump Handbook",
        "theis-1935" => "Theis: The Relation between the Lowering of the Piezometric Surface and the Discharge of a Well, 1935",
        "us-standard-atmosphere-1976" => "U.S. Standard Atmosphere, 1976",
        "williams-hazen-1933" => "Williams, Hazen: Hydraulic Tables, 1933",
        "wylie-streeter-1993" => "Wylie, Streeter: Fluid Transients in Systems, 1993",
        "kelvin-1881" => "Thomson (Lord Kelvin): On the Economy of Metal in Conductors of Electricity, 1881",
        "mohan-2003" => "Mohan, Undeland, Robbins: Power Electronics, 2003",
        "saunders-1996" => "Saunders et al.: Riding the Reflected Wave, IEEE IAS, 1996",
        "hi-9.6.1" => "ANSI/HI 9.6.1",
        "isa-50.00.01" => "ANSI/ISA-50.00.01",
        "mckay-1979" => "McKay, Beckman, Conover: Technometrics 21, 1979",
        "nebraska-criteria" => "University of Nebraska-Lincoln: Nebraska Pumping Plant Performance Criteria",
        "ieee-c57.12" => "IEEE C57.12",
        "nema-mg1-14.36" => "NEMA MG 1, 14.36",
        "nema-mg1-30" => "NEMA MG 1, 30",
        "nema-mg1-31" => "NEMA MG 1, 31",
        "nist-hb-135" => "NIST Handbook 135",
        "ul-508a" => "UL 508A",
        "nist-sp-811" => "NIST SP 811",
        "iapws-sr1-86" => "IAPWS SR1-86",
        "iapws-sr6-08" => "IAPWS SR6-08",
        "nema-mg1-2016" => "NEMA MG 1-2016",
        _ => return None,
    })
}

/// A standard by its body and number.
fn standard(key: &str) -> String {
    let mut parts = key.split('-');
    let body = parts.next().unwrap_or_default().to_uppercase();
    let rest: Vec<&str> = parts.collect();
    match (body.as_str(), rest.as_slice()) {
        // A technical specification, which its key does not say.
        ("IEC", ["60034", "25"]) => "IEC TS 60034-25".to_owned(),
        ("ASTM" | "ASME", [number]) => format!("{body} {}", number.to_uppercase()),
        (_, rest) => format!("{body} {}", rest.join("-")),
    }
}

/// A paragraph as the code writes it: keys have small letters without brackets.
fn paragraph(part: &str) -> String {
    let place = part.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(part.len());
    let (number, letter) = part.split_at(place);
    match (number, letter) {
        ("110.9-10", _) => "110.9, 110.10".to_owned(),
        (number, "") => number.to_owned(),
        ("310.15", letter) => format!("{number}({})(1)", letter.to_uppercase()),
        (number, letter) => format!("{number}({})", letter.to_uppercase()),
    }
}

#[cfg(test)]
mod tests {
    use super::source_text;

    #[test]
    fn keys_read_as_titles() {
        assert_eq!(source_text("nec-2023-310.16"), "NEC (NFPA 70), 2023 edition, 310.16");
        assert_eq!(source_text("nec-2023-ch9-t8"), "NEC (NFPA 70), 2023 edition, chapter 9, table 8");
        assert_eq!(source_text("nec-2023-110.14c"), "NEC (NFPA 70), 2023 edition, 110.14(C)");
        assert_eq!(source_text("nec-2023-310.15b"), "NEC (NFPA 70), 2023 edition, 310.15(B)(1)");
        assert_eq!(source_text("ieee-141-1993"), "IEEE 141-1993");
        assert_eq!(source_text("astm-b230"), "ASTM B230");
        assert_eq!(source_text("iec-60028"), "IEC 60028");
        assert_eq!(source_text("asme-b36.10"), "ASME B36.10");
        assert_eq!(source_text("nec-2023-110.9-10"), "NEC (NFPA 70), 2023 edition, 110.9, 110.10");
        assert_eq!(source_text("ul-508a"), "UL 508A");
        assert_eq!(source_text("moody-1944"), "Moody: Friction Factors for Pipe Flow, 1944");
        assert_eq!(source_text("practice"), "Common practice, no single source");
    }
}
