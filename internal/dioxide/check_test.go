package dioxide_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

var (
	celsius, kpa, bar, percent               = check.Celsius, check.Kilopascal, check.Bar, check.Percent
	gramsCO2, gramsPerLitre, volumes, volPct = check.GramCO2, check.GramPerLitre, check.VolumesCO2, check.PercentVolume
	near, close, refused                     = check.Within, check.WithinShare, limits.OutOfRange
	table, within                            = check.Table, check.Printed
)

type tester = check.T

func ok[V any](t tester) func(V, error) V { return check.OK[V](t) }

func cell[D, E units.Dimension](t *testing.T, r published.Row, column string, like units.Unit[D, E]) units.Quantity[D, E] {
	t.Helper()
	return check.Cell(t, r, column, like)
}

var vary = math.NaN() // a limit that goes with the other inputs; tested beside them

// limits are the limits that the doc comments state, by function and quantity. Each
// refusal in the tests is held to them.
var limits = check.Limits{
	"dioxide.BeerChartPressure: content":         {1.5 - 1e-9, 4 + 1e-9},
	"dioxide.BeerChartPressure: temperature":     {30 - 1e-9, 60 + 1e-9},
	"dioxide.BeerChartVolumes: pressure":         {vary, vary},
	"dioxide.BeerChartVolumes: temperature":      {30 - 1e-9, 60 + 1e-9},
	"dioxide.EuropeanBeerContent: pressure":      {0.5, 5},
	"dioxide.EuropeanBeerContent: temperature":   {-1, 25},
	"dioxide.EuropeanBeerPressure: content":      {vary, vary},
	"dioxide.EuropeanBeerPressure: temperature":  {-1, 25},
	"dioxide.FugacityCoefficient: pressure":      {0, 2000},
	"dioxide.FugacityCoefficient: temperature":   {-10, 100},
	"dioxide.GasDensity: pressure":               {0, 2000},
	"dioxide.GasDensity: temperature":            {-10, 100},
	"dioxide.HenryCarroll: temperature":          {0, 160},
	"dioxide.HenryPlummerBusenberg: temperature": {-2, 90},
	"dioxide.HenryWeiss: salinity":               {0, 40},
	"dioxide.HenryWeiss: temperature":            {-1, 40},
	"dioxide.MoleFraction: pressure":             {0, 2000},
	"dioxide.MoleFraction: temperature":          {-2, 90},
	"dioxide.MoleFractionCarroll: pressure":      {0, 1000},
	"dioxide.MoleFractionCarroll: temperature":   {0, 100},
	"dioxide.SecondVirial: temperature":          {-10, 100},
	"dioxide.ThirdVirial: temperature":           {-10, 100},
	"dioxide.WineContent: pressure":              {0.5, 10},
	"dioxide.WineContent: strength":              {0, 20},
	"dioxide.WineContent: temperature":           {20, 20},
	"dioxide.WinePressure: content":              {vary, vary},
	"dioxide.WinePressure: strength":             {0, 20},
	"dioxide.WineContent: sugar":                 {0, 200},
	"dioxide.WinePressure: sugar":                {0, 200},
}
