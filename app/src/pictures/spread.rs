//! Blocks of words one under the other: pushed down from where they want to be, up again from the end of the room, and
//! off what stands fast. Where there is no room, the least of them gives way.

/// A block that wants a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    /// Upper end that it wants.
    pub want: f64,
    /// Its height.
    pub height: f64,
    /// Who gives way first: the largest; 0 never.
    pub rank: u8,
}

/// Upper and lower end of a stretch.
pub type Span = (f64, f64);

/// The upper end of every block inside the room, `None` for those that gave way. Blocks keep the order of their wishes.
#[must_use]
pub fn spread(blocks: &[Block], fast: &[Span], room: Span) -> Vec<Option<f64>> {
    let mut order: Vec<usize> = (0..blocks.len()).collect();
    order.sort_by(|a, b| blocks[*a].want.total_cmp(&blocks[*b].want));
    let mut fast = fast.to_vec();
    loop {
        let kept: Vec<Block> = order.iter().map(|index| blocks[*index]).collect();
        if let Some(tops) = settled(&kept, &fast, room) {
            let mut out = vec![None; blocks.len()];
            for (index, top) in order.iter().zip(tops) {
                out[*index] = Some(top);
            }
            return out;
        }
        let least = (0..order.len()).max_by_key(|at| kept[*at].rank).filter(|at| kept[*at].rank > 0);
        match least {
            Some(at) => {
                order.remove(at);
            }
            // None may give way: they stand on what stands fast rather than on one another.
            None if fast.pop().is_some() => {}
            // There is less room than words; they begin at its upper end.
            None => return stacked(blocks, &order, room),
        }
    }
}

fn stacked(blocks: &[Block], order: &[usize], room: Span) -> Vec<Option<f64>> {
    let mut out = vec![None; blocks.len()];
    let mut top = room.0;
    for index in order {
        out[*index] = Some(top);
        top += blocks[*index].height;
    }
    out
}

/// The upper ends of blocks in their order, or `None` where they do not all find room.
fn settled(blocks: &[Block], fast: &[Span], room: Span) -> Option<Vec<f64>> {
    let met = |top: f64, height: f64| fast.iter().find(|span| top < span.1 && span.0 < top + height);
    let mut tops: Vec<f64> = Vec::with_capacity(blocks.len());
    let mut least = room.0;
    for block in blocks {
        let mut top = block.want.max(least);
        while let Some(span) = met(top, block.height) {
            top = span.1;
        }
        tops.push(top);
        least = top + block.height;
    }
    let strict = blocks.iter().any(|block| block.rank > 0);
    let mut most = room.1;
    for (top, block) in tops.iter_mut().zip(blocks).rev() {
        if *top + block.height <= most {
            break;
        }
        *top = most - block.height;
        while let Some(span) = met(*top, block.height) {
            // While another may give way, none moves up past what it wants to stand below.
            if strict && block.want >= span.0 {
                return None;
            }
            *top = span.0 - block.height;
        }
        most = *top;
    }
    tops.first().is_none_or(|top| *top >= room.0).then_some(tops)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn block(want: f64, rank: u8) -> Block {
        Block { want, height: 10.0, rank }
    }

    #[test]
    fn blocks_that_have_room_stand_where_they_want() {
        let all = [block(50.0, 0), block(10.0, 0)];
        assert_eq!(spread(&all, &[], (0.0, 100.0)), [Some(50.0), Some(10.0)]);
    }

    #[test]
    fn blocks_push_down_and_up_again_from_the_end() {
        let all = [block(50.0, 0), block(52.0, 0), block(53.0, 0)];
        assert_eq!(spread(&all, &[], (0.0, 100.0)), [Some(50.0), Some(60.0), Some(70.0)]);
        assert_eq!(spread(&all, &[], (0.0, 75.0)), [Some(45.0), Some(55.0), Some(65.0)]);
    }

    #[test]
    fn blocks_keep_off_what_stands_fast() {
        assert_eq!(spread(&[block(45.0, 0)], &[(50.0, 60.0)], (0.0, 100.0)), [Some(60.0)]);
        assert_eq!(spread(&[block(45.0, 0)], &[(50.0, 60.0)], (0.0, 65.0)), [Some(40.0)]);
        let two = spread(&[block(45.0, 0), block(46.0, 0)], &[(50.0, 60.0)], (0.0, 72.0));
        assert_eq!(two, [Some(40.0), Some(62.0)]);
        let below = [block(55.0, 0), block(56.0, 5)];
        assert_eq!(spread(&below, &[(50.0, 60.0)], (0.0, 75.0)), [Some(60.0), None]);
    }

    #[test]
    fn the_largest_rank_gives_way_first_and_rank_0_never() {
        let all = [block(0.0, 3), block(5.0, 0), block(9.0, 8)];
        assert_eq!(spread(&all, &[], (0.0, 20.0)), [Some(0.0), Some(10.0), None]);
        assert_eq!(spread(&all, &[], (0.0, 12.0)), [None, Some(2.0), None]);
        assert_eq!(spread(&all, &[], (0.0, 4.0)), [None, Some(0.0), None]);
        assert_eq!(spread(&[block(0.0, 0)], &[(0.0, 8.0)], (0.0, 12.0)), [Some(0.0)]);
    }
}
