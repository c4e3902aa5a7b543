//! Blocks of words one under the other, in the order of what they name: each as near as can be to where it wants to be,
//! moved up as well as down. Where there is no room, the least of them gives way.

/// How a block stands among the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// It names a depth: it keeps its order.
    Depth,
    /// It names a part of the pump: it keeps its order, too, and loose blocks stand above it.
    Part,
    /// It names something long: it may pass others to where it disturbs least.
    Loose,
}

/// A block that wants a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    /// Upper end that it wants.
    pub want: f64,
    /// Its height.
    pub height: f64,
    /// How hard it holds on to its place.
    pub weight: f64,
    /// Who gives way first: the largest; 0 never.
    pub rank: u8,
    /// How it stands among the others.
    pub role: Role,
}

/// Upper and lower end of a stretch.
pub type Span = (f64, f64);

/// From this rank on, a block also gives way where it drives another far from its place.
pub const MINOR: u8 = 8;

/// The upper end of every block inside the room, `None` for those that gave way. Blocks come in their order; no other is
/// driven farther than `far` from its place while a minor one beside it could give way.
#[must_use]
pub fn spread(blocks: &[Block], room: Span, far: f64) -> Vec<Option<f64>> {
    let mut kept: Vec<usize> = (0..blocks.len()).collect();
    loop {
        let total: f64 = kept.iter().map(|at| blocks[*at].height).sum();
        let least = kept.iter().copied().filter(|at| blocks[*at].rank > 0).max_by_key(|at| blocks[*at].rank);
        let (order, tops) = if total <= room.1 - room.0 {
            let order = ordered(blocks, &kept, room);
            let tops = settled(blocks, &order, room);
            match crowding(blocks, &order, &tops, far) {
                Some(minor) => {
                    kept.retain(|at| *at != minor);
                    continue;
                }
                None => (order, tops),
            }
        } else if let Some(least) = least {
            kept.retain(|at| *at != least);
            continue;
        } else {
            // There is less room than words; they begin at its upper end.
            let order = ordered(blocks, &kept, (room.0, room.0 + total));
            let tops = settled(blocks, &order, (room.0, room.0 + total));
            (order, tops)
        };
        let mut out = vec![None; blocks.len()];
        for (at, top) in order.into_iter().zip(tops) {
            out[at] = Some(top);
        }
        return out;
    }
}

/// The blocks in the order that they stand in: each loose one where it costs least, above all parts and in its turn.
fn ordered(blocks: &[Block], kept: &[usize], room: Span) -> Vec<usize> {
    let loose = |at: &&usize| blocks[**at].role == Role::Loose;
    let mut order: Vec<usize> = kept.iter().filter(|at| !loose(at)).copied().collect();
    let mut first = 0;
    for at in kept.iter().filter(loose) {
        let last = order.iter().position(|other| blocks[*other].role == Role::Part).unwrap_or(order.len());
        let with = |place: usize| {
            let mut order = order.clone();
            order.insert(place, *at);
            order
        };
        let cost = |place: &usize| cost(blocks, &with(*place), room);
        let best = (first..=last.max(first)).min_by(|a, b| cost(a).total_cmp(&cost(b))).unwrap_or(first);
        order = with(best);
        first = best + 1;
    }
    order
}

/// How far blocks stand from their places.
fn cost(blocks: &[Block], order: &[usize], room: Span) -> f64 {
    let off = |(at, top): (&usize, f64)| blocks[*at].weight * (top - blocks[*at].want).powi(2);
    order.iter().zip(settled(blocks, order, room)).map(off).sum()
}

/// The upper ends of blocks in this order with the least weighted squares of the ways from their places.
fn settled(blocks: &[Block], order: &[usize], room: Span) -> Vec<f64> {
    // With the heights of those above taken off, places only must not fall; groups that would fall share their mean.
    let mut groups: Vec<(f64, f64, usize)> = Vec::with_capacity(order.len());
    let mut above = 0.0;
    for at in order {
        let block = &blocks[*at];
        let mut group = (block.want - above, block.weight, 1);
        while let Some(before) = groups.pop_if(|before| before.0 > group.0) {
            let weight = before.1 + group.1;
            group = ((before.0 * before.1 + group.0 * group.1) / weight, weight, before.2 + group.2);
        }
        groups.push(group);
        above += block.height;
    }
    let most = (room.1 - above).max(room.0);
    let places = groups.into_iter().flat_map(|(place, _, count)| std::iter::repeat_n(place.clamp(room.0, most), count));
    let mut above = 0.0;
    let top = |(place, at): (f64, &usize)| {
        let top = place + above;
        above += blocks[*at].height;
        top
    };
    places.zip(order).map(top).collect()
}

/// The least of the minor blocks that touch, directly or through others, one that stands far from its place.
fn crowding(blocks: &[Block], order: &[usize], tops: &[f64], far: f64) -> Option<usize> {
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for index in 0..order.len() {
        let touches = index > 0 && tops[index] - tops[index - 1] - blocks[order[index - 1]].height < 0.1;
        match groups.last_mut() {
            Some(group) if touches => group.push(index),
            _ => groups.push(vec![index]),
        }
    }
    let driven = |index: &usize| {
        let block = &blocks[order[*index]];
        block.role != Role::Loose && (tops[*index] - block.want).abs() > far
    };
    let minor = |group: &Vec<usize>| {
        let minor = group.iter().map(|index| order[*index]).filter(|at| blocks[*at].rank >= MINOR);
        minor.max_by_key(|at| blocks[*at].rank)
    };
    groups.iter().filter(|group| group.iter().any(driven)).find_map(minor)
}

#[cfg(test)]
mod tests {
    use super::*;

    const FAR: f64 = 1000.0;

    fn block(want: f64, rank: u8) -> Block {
        Block { want, height: 10.0, weight: 1.0, rank, role: Role::Depth }
    }

    #[test]
    fn blocks_that_have_room_stand_where_they_want() {
        let all = [block(10.0, 0), block(50.0, 0)];
        assert_eq!(spread(&all, (0.0, 100.0), FAR), [Some(10.0), Some(50.0)]);
    }

    #[test]
    fn blocks_part_up_and_down_and_keep_their_order() {
        let all = [block(50.0, 0), block(52.0, 0), block(54.0, 0)];
        assert_eq!(spread(&all, (0.0, 100.0), FAR), [Some(42.0), Some(52.0), Some(62.0)]);
        assert_eq!(spread(&all, (0.0, 65.0), FAR), [Some(35.0), Some(45.0), Some(55.0)]);
        assert_eq!(spread(&all, (50.0, 100.0), FAR), [Some(50.0), Some(60.0), Some(70.0)]);
        let crossed = [block(60.0, 0), block(40.0, 0)];
        assert_eq!(spread(&crossed, (0.0, 100.0), FAR), [Some(45.0), Some(55.0)]);
    }

    #[test]
    fn what_holds_on_moves_less() {
        let fast = Block { weight: 1e9, ..block(50.0, 0) };
        let tops = spread(&[block(48.0, 0), fast, block(52.0, 0)], (0.0, 100.0), FAR);
        let near = |top: Option<f64>, at: f64| top.is_some_and(|top| (top - at).abs() < 1e-3);
        assert!(near(tops[0], 40.0) && near(tops[1], 50.0) && near(tops[2], 60.0), "{tops:?}");
    }

    #[test]
    fn loose_blocks_stand_where_they_disturb_least_and_above_parts() {
        let loose = Block { role: Role::Loose, ..block(12.0, 0) };
        let part = Block { role: Role::Part, ..block(60.0, 0) };
        let tops = spread(&[block(5.0, 0), part, loose], (0.0, 100.0), FAR);
        assert_eq!(tops, [Some(3.5), Some(60.0), Some(13.5)]);
        let low = Block { want: 90.0, ..loose };
        assert_eq!(spread(&[part, low], (0.0, 100.0), FAR), [Some(80.0), Some(70.0)]);
    }

    #[test]
    fn the_largest_rank_gives_way_first_and_rank_0_never() {
        let all = [block(0.0, 3), block(5.0, 0), block(9.0, 8)];
        assert_eq!(spread(&all, (0.0, 20.0), FAR), [Some(0.0), Some(10.0), None]);
        assert_eq!(spread(&all, (0.0, 12.0), FAR), [None, Some(2.0), None]);
        assert_eq!(spread(&all, (0.0, 4.0), FAR), [None, Some(0.0), None]);
    }

    #[test]
    fn a_minor_block_gives_way_where_it_drives_another_far() {
        let all = [block(50.0, 0), block(50.0, 9), block(90.0, 8)];
        assert_eq!(spread(&all, (0.0, 100.0), 4.0), [Some(50.0), None, Some(90.0)]);
        assert_eq!(spread(&all, (0.0, 100.0), 6.0), [Some(45.0), Some(55.0), Some(90.0)]);
        let needed = [block(50.0, 0), block(50.0, 5)];
        assert_eq!(spread(&needed, (0.0, 100.0), 4.0), [Some(45.0), Some(55.0)]);
    }
}
