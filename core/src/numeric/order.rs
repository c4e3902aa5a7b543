//! Things put in an order. Every sort by a closure is compiled anew, some 5 kB of the page's program each; these sort
//! numbers or texts, compiled once for all, and put the things where theirs went. What is equal stays as it was.

/// Puts things in the order of a number that each has, from the least up: the totalOrder of IEEE 754, which has a place
/// for what is no number too.
pub fn by_number<T>(things: &mut Vec<T>, number: impl Fn(&T) -> f64) {
    let places = ascending(things.iter().map(number).collect());
    put(things, &places);
}

/// Puts things in the order of a text that each has.
pub fn by_text<T>(things: &mut Vec<T>, text: impl Fn(&T) -> &str) {
    let places = alphabetical(things.iter().map(text).collect());
    put(things, &places);
}

/// The places of numbers, the least number's first.
fn ascending(numbers: Vec<f64>) -> Vec<usize> {
    let mut placed: Vec<(f64, usize)> = numbers.into_iter().zip(0..).collect();
    placed.sort_by(|one, other| one.0.total_cmp(&other.0));
    placed.into_iter().map(|(_, place)| place).collect()
}

/// The places of texts by their code points.
fn alphabetical(texts: Vec<&str>) -> Vec<usize> {
    let mut placed: Vec<(&str, usize)> = texts.into_iter().zip(0..).collect();
    placed.sort();
    placed.into_iter().map(|(_, place)| place).collect()
}

/// Puts things in the order of their places, each of which is there once.
fn put<T>(things: &mut Vec<T>, places: &[usize]) {
    let mut from: Vec<Option<T>> = things.drain(..).map(Some).collect();
    things.extend(places.iter().filter_map(|place| from.get_mut(*place)?.take()));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_go_up_and_equals_stay() {
        let mut found =
            vec![(2.0, 'a'), (f64::NAN, 'b'), (-1.0, 'c'), (2.0, 'd'), (f64::INFINITY, 'e'), (-0.0, 'f'), (0.0, 'g')];
        by_number(&mut found, |(number, _)| *number);
        assert_eq!(found.iter().map(|(_, name)| name).collect::<String>(), "cfgadeb");
    }

    #[test]
    fn texts_go_by_their_letters_and_equals_stay() {
        let mut found = vec![("b", 1), ("", 2), ("a", 3), ("b", 0), ("B", 4), ("ab", 5)];
        by_text(&mut found, |(text, _)| text);
        assert_eq!(found, [("", 2), ("B", 4), ("a", 3), ("ab", 5), ("b", 1), ("b", 0)]);
    }

    // A library's sort says the same for numbers without order among them.
    #[test]
    fn many_are_as_a_library_sorts_them() {
        let mut seed = crate::numeric::pcg::Pcg32::new(7, 11);
        let mut found: Vec<(f64, usize)> = (0..5_000).map(|at| ((seed.share() * 200.0).floor(), at)).collect();
        let mut told = found.clone();
        told.sort_by(|one, other| one.0.total_cmp(&other.0).then(one.1.cmp(&other.1)));
        by_number(&mut found, |(number, _)| *number);
        assert_eq!(found, told);
    }
}
