package dioxide

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const beerChart = "fit to the printed beer chart"

// Domain of the fit: a little round the printed points, °F, volumes and psi.
const (
	chartColdest, chartWarmest = 30, 60
	chartLeast, chartMost      = 1.5, 4
	chartSeaLevel              = 14.696 // psi
)

// chart is the fit, psi gauge at sea level from °F and volumes.
func chart(f, v float64) float64 {
	return chartConstant(f) + chartSlope(f)*v - chartBend*v*v
}

const chartBend = 0.0684226

func chartConstant(f float64) float64 { return -16.6999 - 0.0101059*f + 0.00116512*f*f }
func chartSlope(f float64) float64    { return 0.173354*f + 4.24267 }

// BeerChartPressure returns the absolute pressure for a content of beer after the
// chart that hangs in breweries. Its beer, by Speers & MacIntosh (2013), has 4.22 %
// mass of ethanol and a real extract of 5.78 °P.
//
//   - Source: a fit to the printed chart (BrewingTechniques 2 (1994) no. 1, table I;
//     the same family as the ASBC's): P = −16.6999 − 0.0101059·T + 0.00116512·T² +
//     0.173354·T·V + 4.24267·V − 0.0684226·V². The coefficients are recalled from
//     memory; no first publication is known.
//   - Range: 30 to 60 °F, 1.5 to 4 volumes; beyond it the error is a
//     [*units.RangeError]. It must not be stretched: it is 2 psi off at no gas.
//   - Units: psi over 14.696 psi, °F; volumes, the chart does not say which.
//   - Uncertainty: 0.10 psi rms, 0.36 psi at most against 292 printed points.
func BeerChartPressure(t units.Temperature, v units.CarbonDioxideVolumes) (units.AbsolutePressure, error) {
	const fn = "dioxide.BeerChartPressure"
	f, x := t.In(units.Fahrenheit), v.In(units.VolumesCO2)
	if err := chartTemperature(fn, f); err != nil {
		return units.AbsolutePressure{}, err
	}
	if err := limit.Check(fn, "content", x, "volumes", chartLeast-rounding, chartMost+rounding, beerChart); err != nil {
		return units.AbsolutePressure{}, err
	}
	return units.PSI.Of(checked.Number(chart(f, x) + chartSeaLevel)), nil
}

func chartTemperature(fn string, f float64) error {
	return limit.Check(fn, "temperature", f, "°F", chartColdest-rounding, chartWarmest+rounding, beerChart)
}

// BeerChartVolumes returns the content of beer at a temperature and an absolute
// pressure, the inverse of [BeerChartPressure].
//
//   - Source, units: as [BeerChartPressure]; the root of its square equation.
//   - Range: 30 to 60 °F, pressures of 1.5 to 4 volumes; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: 0.009 volumes rms, 0.036 at most against 292 printed points.
func BeerChartVolumes(t units.Temperature, p units.AbsolutePressure) (units.CarbonDioxideVolumes, error) {
	const fn = "dioxide.BeerChartVolumes"
	f, psi := t.In(units.Fahrenheit), p.In(units.PSI)-chartSeaLevel
	if err := chartTemperature(fn, f); err != nil {
		return units.CarbonDioxideVolumes{}, err
	}
	if err := limit.Check(fn, "pressure", psi, "psi over 14.696", chart(f, chartLeast)-rounding, chart(f, chartMost)+rounding, beerChart); err != nil {
		return units.CarbonDioxideVolumes{}, err
	}
	b, c := chartSlope(f), psi-chartConstant(f)
	v := 2 * c / (b + math.Sqrt(b*b-4*chartBend*c))
	return units.VolumesCO2.Of(checked.Number(v)), nil
}
