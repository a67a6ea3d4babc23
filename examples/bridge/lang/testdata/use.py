"""What a type checker accepts and what it refuses, under --strict. It is checked, never run."""

import numpy
import zymase

density: float = zymase.water_density(temperature="68 °F")
same: float = zymase.water_density(temperature_celsius=20)
pressure = zymase.co2_pressure(temperature_celsius=4, volumes="2.5 vol CO2")
gauge: float = pressure.gauge_pressure
caution: str = pressure.caution
readings = zymase.columns.water_density(temperature=("°F", numpy.array([68.0, 70.0])))
failures: int = readings.failures
first: float = readings.density[0]
with zymase.Forecast({"sugar": "120 g/L"}) as forecast:
    forecast.add(hours=40, used=0.4, uncertainty=0.01)
    print(forecast.ask(used=[0.95])["when"], forecast.caution)
plan = zymase.plan("{}")
try:
    zymase.water_density(temperature_celsius=1000)
except zymase.OutOfRange as e:
    print(e.quantity, e.value, e.max, e.source)

zymase.water_density(temperature=20)  # type: ignore[call-overload]
zymase.water_density(temperature_celsius="20 °C")  # type: ignore[call-overload]
zymase.water_density()  # type: ignore[call-overload]
zymase.water_density(temperature="20 °C", mood=1)  # type: ignore[call-overload]
zymase.watery_density()  # type: ignore[attr-defined]
zymase.co2_pressure(temperature_celsius=4, volumes=2.5)  # type: ignore[call-overload]
