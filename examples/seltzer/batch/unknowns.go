package batch

import "math"

// Unknowns is what a batch depends on and nobody knows: each as it is in one world. [Usual]
// has the usual ones; [Known] what is known of each.
type Unknowns struct {
	Lost          float64 // % of the ethanol that the balance of atoms gives: gone with the gas or made into something else
	Acids         float64 // made by yeast: −1 the least, 0 the usual, 1 the most
	Glycerol      float64 // made by yeast, of 1 as usual
	LeanNitrogen  float64 // % of dry yeast that is short of it
	Chalk         float64 // 1/min: how fast a boil comes to calcite's equilibrium; +Inf is at once
	Solubility    float64 // of CO2 in a drink, of 1
	Cells         float64 // in a gram of dry yeast, billion
	Sugar         float64 // %, the fermentable is richer than its composition says
	Scale         float64 // %, more is weighed than the scale shows
	Level         float64 // %, more is there than a level shows
	Thermometer   float64 // K, warmer than it shows
	Gauge         float64 // kPa, more than it shows
	Hydrometer    float64 // 0.001 of gravity that it shows too much
	Air           float64 // taken up when a bottle is filled, of 1 of what the drink holds in air
	Growth        float64 // of yeast in a closed pack, of 1 of what the sugar carries
	BoilOff       float64 // %, more boils away than the rate says
	Left          float64 // %, of a fermentable's sugars, that yeast leaves beyond what its composition says
	Wash          float64 // salts of a juice, honey or malt, of 1 of what it may hold beyond the usual
	Refractometer float64 // °Bx that it shows too much, with what ethanol hides of it
	Meter         float64 // pH that it shows too much
	Vapour        float64 // %, more of the weight lost is water and ethanol than the gas carries
}

// Distribution is how the chance of an unknown lies between its ends.
type Distribution uint8

// Distributions.
const (
	Uniform    Distribution = iota // anywhere between low and high with the same chance
	Triangular                     // likeliest at the usual figure, none at the ends
	Normal                         // low and high are two standard deviations from the usual figure
)

// String returns "uniform", "triangular" or "normal".
func (d Distribution) String() string {
	switch d {
	case Triangular:
		return "triangular"
	case Normal:
		return "normal"
	}
	return "uniform"
}

// Unknown is what is known of one of the [Unknowns].
type Unknown struct {
	Name             string
	Low, Usual, High float64 // in the unit of the field
	Unit             string
	Distribution     Distribution
	Evidence         string

	of    func(*Unknowns) *float64
	moves kindSet
}

// kindSet has a bit for each [Kind].
type kindSet uint32

func by(kinds ...Kind) (set kindSet) {
	for _, k := range kinds {
		set |= 1 << k
	}
	return set
}

// Moves reports whether a step of that kind may come out otherwise where the unknown is otherwise. What
// no step asks for (cells, a hydrometer) moves only what is read off a state.
func (k Unknown) Moves(of Kind) bool { return k.moves>>of&1 != 0 }

// In returns the number of an unknown in a world.
func (k Unknown) In(u *Unknowns) *float64 { return k.of(u) }

// Deviation is the root of the mean square by which the unknown is off its usual figure: what its standard
// uncertainty is for a figure that was worked out with the usual one.
//
//   - Source: the second moments of the distributions, by any textbook.
func (k Unknown) Deviation() float64 {
	lo, hi := k.Usual-k.Low, k.High-k.Usual
	switch k.Distribution {
	case Triangular:
		return math.Sqrt((lo*lo + hi*hi - lo*hi) / 6)
	case Normal: // each half has its own width, and the ends are two deviations away
		return math.Sqrt((lo*lo + hi*hi) / 8)
	}
	return math.Sqrt((lo*lo + hi*hi - lo*hi) / 3)
}

// Known returns what is known of each of the unknowns, in the order of the fields.
func Known() []Unknown {
	all := known()
	return all[:]
}

func known() [unknowns]Unknown {
	const (
		weighing = 1<<Treat | 1<<Dissolve | 1<<Feed | 1<<Pitch | 1<<Sweeten | 1<<Acidify | 1<<Stabilise | 1<<Prime | 1<<Dilute
		gas      = 1<<Ferment | 1<<Warm | 1<<Malolactic | 1<<Carbonate
	)
	return [...]Unknown{
		// 16.83 g/L of hexose to 1 % vol leave 2.5 % less ethanol than the atoms of a lean sugar wash
		// give; Pasteur's own yield was 95 % of Gay-Lussac's (package gravity, SugarWashYield).
		{"ethanol lost", 0, usualLost, mostLost, "%", Triangular,
			"16.83 g/L of hexose to 1 % vol (French order of 3 May 1996), against the balance of atoms; its 3 % in package gravity",
			func(u *Unknowns) *float64 { return &u.Lost }, by(Ferment)},
		{"acids made", -1, 0, 1, "", Triangular, "package nutrient, LeastAcids and MostAcids", func(u *Unknowns) *float64 { return &u.Acids }, by(Ferment)},
		{"glycerol made", 0.65, 1, 1.3, "", Normal, "4 to 8 g for 100 g of ethanol, recalled from memory", func(u *Unknowns) *float64 { return &u.Glycerol },
			by(Ferment)},
		{"nitrogen of lean yeast", 5, 6.4, 8, "%", Triangular, "40 % crude protein, recalled from memory",
			func(u *Unknowns) *float64 { return &u.LeanNitrogen }, by(Ferment)},
		{"rate of chalk", 0, 0.2, 0.4, "/min", Uniform, "none to one drop test of a tap water: 262 to 70 mg/L in 5 min, 39.5 at rest",
			func(u *Unknowns) *float64 { return &u.Chalk }, by(Boil)},
		{"solubility of CO2", 0.95, 1, 1.05, "", Normal, "published ways for a drink, package carbonation", func(u *Unknowns) *float64 { return &u.Solubility }, gas},
		{"cells in a gram", 5, 10, 25, "billion", Triangular, "package yeast, DryPack", func(u *Unknowns) *float64 { return &u.Cells }, 0},
		{"sugar of the fermentable", -0.5, 0, 0.5, "%", Normal, "common practice, no source", func(u *Unknowns) *float64 { return &u.Sugar },
			by(Dissolve, Sweeten, Prime)},
		{"scale", -0.3, 0, 0.3, "%", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Scale }, weighing},
		{"level", -1, 0, 1, "%", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Level }, by(Blend)},
		{"thermometer", -0.5, 0, 0.5, "K", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Thermometer }, by(Carbonate)},
		{"gauge", -10, 0, 10, "kPa", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Gauge }, by(Carbonate)},
		{"hydrometer", -1, 0, 1, "0.001", Uniform, "half a division of 0.002: common practice, no source", func(u *Unknowns) *float64 { return &u.Hydrometer }, 0},
		// None behind a ferment that swept it out and a filling from below; all of it where the drink splashes.
		{"air taken up in filling", 0, 0.3, 1, "", Triangular, "common practice, no source", func(u *Unknowns) *float64 { return &u.Air }, by(Close)},
		// The few cells that are racked into a pack double once or twice: 10⁷/mL on the 24 g/L of a sparkling wine is 1 % of them.
		{"yeast growing on a primer", 0, 0, 1, "", Triangular, "1.5 to 10 million cells in a mL in sparkling wine, recalled from memory",
			func(u *Unknowns) *float64 { return &u.Growth }, by(Ferment)},
		{"boil-off", -25, 0, 25, "%", Triangular, "a tenth as its deviation: common practice, no source", func(u *Unknowns) *float64 { return &u.BoilOff }, by(Boil)},
		{"sugar that yeast leaves", 0, 0, 0, "%", Normal, "of sugar nothing; of malt, juice and honey by what is known of them",
			func(u *Unknowns) *float64 { return &u.Left }, by(Dissolve)},
		{"salts of the fruit, honey or malt", -1, 0, 1, "", Normal, "the band of its pH, package must", func(u *Unknowns) *float64 { return &u.Wash }, by(Dissolve)},
		{"refractometer", -0.35, 0, 0.35, "°Bx", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Refractometer }, 0},
		{"pH meter", -0.1, 0, 0.1, "", Uniform, "common practice, no source", func(u *Unknowns) *float64 { return &u.Meter }, 0},
		{"vapour in the gas", -5, 0, 5, "%", Uniform, "of the weight lost: common practice, no source", func(u *Unknowns) *float64 { return &u.Vapour }, 0},
	}
}

// unknowns is how many there are.
const unknowns = 21

// usualLost makes the yield of a wash with the usual nitrogen that of package gravity.
const usualLost = 2.5

// mostLost makes the deviation about the usual the 3 % of the ethanol that gravity.SugarWashYield states:
// (2.5² + 8.1² − 2.5·8.1)/6 is 2.93², 3 % of 97.5. It stands for 18.4 g/L to 1 % vol.
const mostLost = 10.6

// Usual returns the usual unknowns.
func Usual() (u Unknowns) {
	all := known()
	for i := range all {
		*all[i].of(&u) = all[i].Usual
	}
	return u
}
