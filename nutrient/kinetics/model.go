package kinetics

import "math"

// The model: cells grow on nitrogen, active cells take up sugar, ethanol ends their
// activity (Coleman, Fish & Block 2007, Appl. Environ. Microbiol. 73:5875, eqs 1 to 8 and
// table A2, as read in two carriers; the original was not read). Temperature in °C, time in
// hours, masses in g/L.
//
//   - ln βmax is given as −2.30 + 0.0771 T by one carrier and −2.98 + 0.0771 T by the other,
//     a factor of two in the rate: the middle is taken, and the width of a [Forecast] holds
//     both.
//   - Two misprints of table A2 are corrected as both carriers do: the slope of ln kd' is
//     −0.108, that of ln Yxn −0.00361 for each mg/L.
//   - The model's 0.55 g of ethanol a gram is beyond stoichiometry. Here it only sets how
//     fast sugar goes for a given activity; no alcohol is computed from it.
const (
	growthAt0, growthSlope       = -3.92, 0.0782
	uptakeAt0, uptakeSlope       = (-2.30 - 2.98) / 2, 0.0771
	deathAt0, deathLin, deathSq  = -9.81, -0.108, 0.00478
	cellsAt0, cellsSlope         = 3.50, -0.00361
	nitrogenHalf, sugarHalf      = 0.00883, 10.3 // Kn, Ks: ln Kn = -4.73, ln Ks = 2.33
	ethanolOfSugar               = 0.55
	deathVertex                  = 11.3           // °C: below it the quadratic would rise again
	leastNitrogen, mostNitrogen  = 70.0, 277.0    // mg/L: the table begins at 70; beyond 277 = 1/0.00361 more nitrogen would grow fewer cells
	turn                         = 22.0           // °C, where the rate of ales levels off
	energyAboveTurn, gasConstant = 17.9, 8.314e-3 // kJ/mol; Foster et al. 2022, fig. S1, 22 to 30 °C; kJ/(mol K)
)

// levelling is the rate above 22 °C against the model's exponential, which rises on: worts
// of three ale strains went up by 17.9 kJ/mol from there, as against 49.5 below it.
func levelling(t float64) float64 {
	if t <= turn {
		return 1
	}
	const zero = 273.15
	return math.Exp(energyAboveTurn/gasConstant*(1/(turn+zero)-1/(t+zero)) - uptakeSlope*(t-turn))
}

// speed is how fast a ferment goes at a temperature, against 20 °C.
func speed(t float64) float64 {
	const reference = 20.0
	return math.Exp(uptakeSlope*(t-reference)) * levelling(t)
}

// rates are the constants of the model at one temperature.
type rates struct{ growth, uptake, death float64 }

func ratesAt(t, slowing float64) rates {
	level := levelling(t) * slowing
	cold := math.Max(t, deathVertex)
	return rates{
		growth: level * math.Exp(growthAt0+growthSlope*t),
		uptake: level * math.Exp(uptakeAt0+uptakeSlope*t),
		death:  math.Exp(deathAt0 + deathLin*cold + deathSq*cold*cold),
	}
}

// liquid is the state of the model.
type liquid struct{ active, nitrogen, ethanol, sugar float64 } // g/L

// newLiquid starts the model, with the cells that a gram of its nitrogen grows.
func newLiquid(sugar, nitrogen, yeast float64) (l liquid, cells float64) {
	within := math.Min(nitrogen, mostNitrogen)
	return liquid{active: yeast, nitrogen: within / 1000, sugar: sugar},
		math.Exp(cellsAt0 + cellsSlope*math.Max(within, leastNitrogen))
}

// change is what an hour changes, at these rates.
func (l liquid) change(r rates, cells float64) liquid {
	nitrogen, sugar := math.Max(l.nitrogen, 0), math.Max(l.sugar, 0)
	growth := r.growth * nitrogen / (nitrogenHalf + nitrogen)
	ethanol := r.uptake * sugar / (sugarHalf + sugar) * l.active
	return liquid{
		active:   (growth - r.death*l.ethanol) * l.active,
		nitrogen: -growth * l.active / cells,
		ethanol:  ethanol,
		sugar:    -ethanol / ethanolOfSugar,
	}
}

// after is the state some hours on, at that change.
func (l liquid) after(hours float64, d liquid) liquid {
	return liquid{l.active + hours*d.active, l.nitrogen + hours*d.nitrogen, l.ethanol + hours*d.ethanol, l.sugar + hours*d.sugar}
}
