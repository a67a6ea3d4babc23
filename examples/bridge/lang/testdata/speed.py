"""python3 speed.py PARENT: until the library is ready, a call by number and by text, a column; JSON."""

import json
import sys
import time

start = time.perf_counter()
sys.path.insert(0, sys.argv[1])
import zymase  # noqa: E402

said = {"ready": (time.perf_counter() - start) * 1e3, "calls": {}, "texts": {}, "columns": {}}
import numpy  # noqa: E402

examples = {
    "water_density": [{"temperature_celsius": 20.0}, {"temperature": "20 °C"}],
    "hydrometer_correct": [{"reading": 1.046, "temperature_celsius": 25.0}, {"reading": "1.046", "temperature": "25 °C"}],
    "ferment_from_gravities": [{"original_gravity": 1.048, "gravity": 1.01}, {"original_gravity": "1.048", "gravity": "1.01"}],
}


def best(n, f):
    """The shortest of several runs of n, in ns each."""
    least, until = float("inf"), time.perf_counter() + 0.5
    while time.perf_counter() < until:
        t = time.perf_counter()
        f(n)
        least = min(least, (time.perf_counter() - t) / n * 1e9)
    return least


def repeat(f, given):
    def run(n):
        for _ in range(n):
            f(**given)
    return run


for name, (numbers, texts) in examples.items():
    f, first = getattr(zymase, name), next(iter(numbers))
    said["calls"][name] = best(100, repeat(f, numbers))
    said["texts"][name] = best(100, repeat(f, texts))
    column = {**numbers, first: numpy.full(256, numbers[first])}
    c = getattr(zymase.columns, name)
    said["columns"][name] = best(256, lambda n: c(**column))
print(json.dumps(said))
