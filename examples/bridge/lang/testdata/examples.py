"""python3 examples.py PARENT EXAMPLES REQUEST: every function with its example, three ways; then what is refused."""

import array
import json
import math
import os
import pickle
import signal
import subprocess
import sys
import threading

parent, rows_file, request_file = sys.argv[1:]
sys.path.insert(0, parent)
import zymase  # noqa: E402

rows = json.load(open(rows_file))
request = json.load(open(request_file))
wrong = []


def digits(v):
    return float("%.12g" % v) if isinstance(v, float) else v


def equal(what, got, want):
    if got != want and not (isinstance(want, (int, float)) and digits(float(got)) == float(want)):
        wrong.append(f"{what}: {got!r}, and not {want!r}")


def named(names):
    return {k + "_" if k in ("yield", "from", "in") else k: v for k, v in names.items()}


for row in rows:
    name, want = row["name"], named(row["want"])
    f, texts, numbers = getattr(zymase, name), named(row["texts"]), named(row["numbers"])
    if name not in f.__doc__ and "Source: " not in f.__doc__:
        wrong.append(f"{name} has no text")
    for how, got in (("text", f(**texts)), ("number", f(**numbers))):
        got = {next(iter(want)): got} if len(want) == 1 else got._asdict()
        equal(f"{name}, {how}", sorted(got), sorted(want))
        for k in want:
            equal(f"{name}, {how}, {k}", got[k], want[k])
    columns = {k: [v, v, v] for k, v in numbers.items()}
    first = next(iter(columns))
    columns[first][1] = None if isinstance(columns[first][0], str) else math.nan
    c = getattr(zymase.columns, name)(**columns)
    equal(f"{name}, mask", [bool(b) for b in c.failed], [False, True, False])
    equal(f"{name}, failures", c.failures, 1)
    for k in want:
        a = getattr(c, k)
        for i in 0, 2:
            equal(f"{name}, row {i}, {k}", a[i] if not isinstance(want[k], str) else zymase.say(name, k, a[i]), want[k])
        if not math.isnan(a[1]):
            wrong.append(f"{name}, row 1, {k}: {a[1]}")


def refused(what, kind, f, **parts):
    try:
        f()
    except zymase.ZymaseError as e:
        if not isinstance(e, kind):
            wrong.append(f"{what}: {e!r}")
        for k, v in parts.items():
            equal(f"{what}, {k}", getattr(e, k), v)
        return
    wrong.append(f"{what} was not refused")


source = "Bettin & Spieweck, PTB-Mitteilungen 100 (1990) 195"
density = zymase.water_density
refused("out of range", zymase.OutOfRange, lambda: density(temperature_celsius=200), function="water_density", quantity="temperature",
        value=200.0, unit="°C", min=0.0, max=100.0, source=source)
refused("a ValueError", ValueError, lambda: density(temperature_celsius=200))
refused("NaN", zymase.OutOfRange, lambda: density(temperature_celsius=math.nan))
refused("another unit", zymase.NotUnderstood, lambda: density(temperature="20 kg"), quantity="temperature", given="20 kg", source=source)
refused("no unit", zymase.NotUnderstood, lambda: density(temperature="20"), given="20")
refused("bare number", zymase.WrongCall, lambda: density(temperature=20))
refused("text for a number", zymase.WrongCall, lambda: density(temperature_celsius="20"))
refused("missing", zymase.WrongCall, lambda: density(), quantity="temperature")
refused("a TypeError", TypeError, lambda: density())
refused("twice", zymase.WrongCall, lambda: density(temperature="20 °C", temperature_celsius=20))
refused("column without a unit", zymase.WrongCall, lambda: zymase.columns.water_density(temperature=[20]))
refused("no column", zymase.WrongCall, lambda: zymase.columns.water_density(temperature_celsius=20))
refused("unequal", zymase.WrongCall, lambda: zymase.columns.pressure_absolute_from_gauge(gauge_pressure_kilopascals_gauge=[1, 2], altitude_metres=[1]))
refused("unit of a column", zymase.NotUnderstood, lambda: zymase.columns.water_density(temperature=("furlong", [20])))
try:
    density(temperature_celsius=200)
except zymase.OutOfRange as e:
    again = pickle.loads(pickle.dumps(e))
    equal("pickled", (type(again), str(again), again.value), (type(e), str(e), e.value))

# numpy and pandas: the same memory where it is doubles, strides, masks, other types.
try:
    import numpy
except ImportError:
    numpy = None
if numpy is not None:
    t = numpy.linspace(0, 99.9, 10000)
    kept = t.copy()
    want = numpy.array([density(temperature_celsius=x) for x in t])
    c = zymase.columns.water_density
    assert (c(temperature_celsius=t).density == want).all() and (t == kept).all()
    assert (c(temperature_celsius=t[::3]).density == want[::3]).all()
    assert (c(temperature_celsius=t[::-1]).density == want[::-1]).all()
    assert (c(temperature_celsius=t.astype(">f8")).density == want).all()
    assert (c(temperature_celsius=t.reshape(100, 100)[:, 7]).density == want.reshape(100, 100)[:, 7]).all()
    assert (c(temperature_celsius=numpy.arange(5)).density == [density(temperature_celsius=x) for x in range(5)]).all()
    assert (c(temperature=("K", t + 273.15)).density - want < 1e-9).all() and (t == kept).all()
    assert c(temperature_celsius=numpy.ma.masked_greater(t, 50)).failures == (t > 50).sum()
    assert len(c(temperature_celsius=t[:0]).density) == 0
    far = c(temperature_celsius=numpy.where(t > 50, 500, t))
    assert (far.failed == (t > 50)).all() and isinstance(far.first, zymase.OutOfRange) and far.first.value == 500
    refused("two dimensions", zymase.WrongCall, lambda: c(temperature_celsius=t.reshape(100, 100)))
    try:
        import pandas
    except ImportError:
        print("pandas is not there")
    else:
        frame = pandas.DataFrame({"t": t})
        out = pandas.DataFrame(c(temperature_celsius=frame.t).as_dict(), index=frame.index)
        assert (out.density == want).all() and not out.failed.any()
        gaps = pandas.Series([20, None, 4], dtype="Int64")
        assert list(c(temperature_celsius=gaps).failed) == [False, True, False]
        assert list(c(temperature_celsius=pandas.Series([20, None, 4])).failed) == [False, True, False]
else:
    print("numpy is not there")

# The plan, the batch, the forecast.
equal("plan", zymase.plan(request)["request"]["name"], request["name"])
refused("plan", zymase.ZymaseError, lambda: zymase.plan({**request, "strength": "40 % vol"}), function="plan", quantity="strength")
water = {"temperature": "20 °C", "alkalinity": "2 mEq/L", "ions": {"calcium": "40 mg/L"}, "pH": 7.5, "inorganic_carbon": "2.1 mmol/L"}
w = zymase.walk({"water": water, "volume": "57 L", "steps": [{"do": "dissolve", "what": "white sugar", "mass": "4.3 kg"}, {"do": "ferment", "share": "100 %"}]})
equal("walk", [m.get("after") for m in w["measured"]], [None, "dissolve", "ferment"])
start = {"sugar": "120 g/L", "nitrogen": "200 mg/L", "yeast": "0.5 g/L", "pH": 4, "temperatures": [{"hour": 0, "temperature": "20 °C"}]}
with zymase.Forecast(start) as one:
    before = one.ask(hours=[60])["used"][0]
    one.add(hours=40, used=0.4, uncertainty=0.01)
    after = one.ask(hours=[60])["used"][0]
    equal("a reading narrows", after["high90"] - after["low90"] < before["high90"] - before["low90"], True)
    two = zymase.Forecast(one.state())
    equal("state", two.ask(hours=[60]), one.ask(hours=[60]))
    refused("reading", zymase.OutOfRange, lambda: one.add(hours=-1, used=0.1, uncertainty=0.1), quantity="time since the pitch", value=-1.0)
refused("closed forecast", zymase.Closed, lambda: one.ask())

# Threads: the same figures from eight at once, each refusal with its own.
bad = []


def thread(n):
    for i in range(200):
        if digits(density(temperature_celsius=20)) != digits(998.2031227373548):
            bad.append("figure")
        try:
            density(temperature_celsius=1000 + n)
        except zymase.OutOfRange as e:
            if e.value != 1000 + n:
                bad.append(e.value)


threads = [threading.Thread(target=thread, args=(n,)) for n in range(8)]
for t in threads:
    t.start()
for t in threads:
    t.join()
equal("threads", bad, [])

# A child of a fork is told, and does not hang; an interrupt comes through.
child = os.fork()
if child == 0:
    try:
        density(temperature_celsius=20)
    except zymase.Closed as e:
        os._exit(7 if "forked" in str(e) else 8)
    os._exit(9)
equal("fork", os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), 7)
try:
    os.kill(os.getpid(), signal.SIGINT)
    for _ in range(1000):
        density(temperature_celsius=20)
    wrong.append("an interrupt was lost")
except KeyboardInterrupt:
    pass

# Without numpy; with no library, another version, what is no library.
here = os.path.join(parent, "zymase")


def elsewhere(what, change, want):
    import shutil
    import tempfile
    with tempfile.TemporaryDirectory() as d:
        shutil.copytree(here, os.path.join(d, "zymase"), ignore=shutil.ignore_patterns("__pycache__"))
        change(os.path.join(d, "zymase"))
        r = subprocess.run([sys.executable, "-c", "import sys; sys.path.insert(0, sys.argv[1]); sys.modules['numpy'] = None\nimport zymase\n"
                            "c = zymase.columns.water_density(temperature=('°F', [68, float('nan')])); print(round(c.density[0], 4), list(c.failed))", d],
                           capture_output=True, text=True)
        if want not in r.stdout + r.stderr:
            wrong.append(f"{what}: {r.stdout}{r.stderr}")


def library(d):
    return next(os.path.join(d, n) for n in os.listdir(d) if n.startswith("libzymase") or n.endswith(".dll"))


def other(d):
    name = os.path.join(d, "_border.py")
    text = open(name).read()
    open(name, "w").write("\n".join("CONTRACT = 1" if line.startswith("CONTRACT") else line for line in text.split("\n")))


elsewhere("no numpy", lambda d: None, "998.2031 [0, 1]")
elsewhere("no library", lambda d: os.remove(library(d)), "the shared library is not there")
elsewhere("no such library", lambda d: open(library(d), "w").write("text") and None, "is not the shared library for this machine")
elsewhere("another version", other, "are of different versions")

for line in wrong:
    print(line)
if wrong:
    sys.exit(1)
print("ok Python", sys.version.split()[0], "numpy", numpy.__version__ if numpy else "none")
