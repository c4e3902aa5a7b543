"""Where the cheaper voltage changes, and what years are worth today."""

import numpy_financial

from lead import at


def changes(low, high, surface, extra):
    """Depths at which the cheaper way changes, from ground down, as (way that is cheaper below, depth)."""
    ends = sorted({run["to"] for run in low + high})
    least = min(low[-1]["to"], high[-1]["to"])
    first = cheaper = None
    found, start = [], 0.0

    def turn(way, depth):
        nonlocal first, cheaper
        if cheaper is None:
            first = way
        elif way != cheaper:
            found.append((way, depth))
        cheaper = way

    for end in (end for end in ends if 0 < end <= least):
        middle = (start + end) / 2
        rate = at(low, middle)["price"] - at(high, middle)["price"]
        gap = lambda depth: rate * (depth + surface) - extra
        name = lambda amount: "480 V" if amount > 0 else "240 V"
        before, after = gap(start), gap(end)
        if before or after:
            turn(name(before or after), start)
        if before * after < 0:
            turn(name(after), extra / rate - surface)
        start = end
    return first, found


def worth(rate, years):
    """Today's worth of 1 at the end of each year."""
    return float(-numpy_financial.pv(rate, years, 1.0))
