"""A thousand friction factors by the general library fluids, in microseconds: python tests/bench/friction.py, with the packages
of tests/second. Beside it: a thousand friction factors of `tests/bench/wasm.sh`."""

from time import perf_counter

from fluids.friction import Colebrook

best = float("inf")
for _ in range(20):
    start = perf_counter()
    for i in range(1000):
        Colebrook(4e3 + 37.0 * i, 1.2e-4)
    best = min(best, perf_counter() - start)
print(f"a thousand friction factors by fluids: {best * 1e6:.0f} µs")
