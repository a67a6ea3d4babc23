package catalogue

import (
	"slices"

	"example.org/zymase/carbonation"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/mash"
	"example.org/zymase/water/must"
)

// Names of the texts that a function gives with a number that can hurt someone.
const cautionName, verdictName, ratingName = "caution", "verdict", "rating"

// takesRating is the maker's rating, which is often not known.
func takesRating() arg[units.GaugePressure] {
	return takes(ratingName, units.KilopascalGauge, "the maker's pressure rating of the vessel; 0 if it is not known", 0, 1e5, 400).or(0)
}

// verdictOutput says a [carbonation.Verdict].
func verdictOutput() *Output {
	return &Output{Name: verdictName, Meaning: "the pressure against the rating given", Words: wordsOf(upTo(carbonation.MayFreeze))}
}

// judges is the verdict on a pressure.
func judges[T any](get func(T) carbonation.Verdict) result[T] {
	return result[T]{verdictOutput().by(func(v T) float64 { return float64(get(v)) })}
}

// cautionOutput says [carbonation.Cautions].
func cautionOutput() *Output {
	var list []string
	for _, c := range sayable {
		list = append(list, c.Text())
	}
	return sentences(list...)
}

// sentences are what a caution may say, the gravest first.
func sentences(list ...string) *Output {
	return &Output{Name: cautionName, Meaning: "what whoever uses the result must know", Words: list, Several: true}
}

// sayable is all that package carbonation may say, made once: a call reads it.
var sayable = carbonation.Cautions()

// bits are cautions of package carbonation by their places in sayable.
type bits uint64

func set(list ...caution.Caution) bits {
	var b bits
	for _, c := range list {
		for i, known := range sayable {
			if c == known {
				b |= 1 << i
			}
		}
	}
	return b
}

// rated sets a pressure of a function, an input or output by its name, against a rating, its
// last input. A drink below its freezing point may freeze, too.
func rated(pressure string, f *Function, further ...caution.Caution) *Function {
	inputs, outputs, inner := len(f.Inputs), len(f.Outputs), f.call
	gauge, freezes, always := f.gauge(pressure), f.freezes(), set(further...)
	f.Inputs = append(f.Inputs, *takesRating().made.all[0])
	f.shows(verdictOutput())
	f.shows(cautionOutput())
	f.call = func(in, out []float64) error {
		if err := inner(in[:inputs], out[:outputs]); err != nil {
			return err
		}
		verdict, warned := carbonation.Rated(gauge(in, out), as(units.KilopascalGauge, in[inputs]))
		all := always | set(warned...)
		if freezes(in) {
			all |= set(carbonation.Freezing)
			if verdict == carbonation.WithinRating {
				verdict = carbonation.MayFreeze
			}
		}
		out[outputs], out[outputs+1] = float64(verdict), float64(all)
		return nil
	}
	return f
}

// gauge finds a gauge pressure by its name, an absolute one as a gauge at sea level shows it.
func (f *Function) gauge(name string) func(in, out []float64) units.GaugePressure {
	if i, ok := f.Output(name); ok && f.Outputs[i].Unit == units.Kilopascal.Symbol() {
		return func(_, out []float64) units.GaugePressure {
			return units.Atmosphere{}.Gauge(as(units.Kilopascal, out[i]))
		}
	} else if ok {
		return func(_, out []float64) units.GaugePressure { return as(units.KilopascalGauge, out[i]) }
	}
	i, ok := f.Input(name)
	if !ok {
		panic("catalogue: " + f.Name + " has no pressure " + name)
	}
	return func(in, _ []float64) units.GaugePressure { return as(units.KilopascalGauge, in[i]) }
}

// freezes says whether the drink of a function is below its freezing point, where it takes one.
func (f *Function) freezes() func(in []float64) bool {
	t, ok1 := f.Input("temperature")
	strength, ok2 := f.Input("strength")
	extract, ok3 := f.Input("extract")
	return func(in []float64) bool {
		if !(ok1 && ok2 && ok3) || in[t] >= 0 {
			return false
		}
		s, err := carbonation.DrinkOf(as(units.PercentVolume, in[strength]), as(units.DegreePlato, in[extract]))
		if err != nil {
			return false // the function has refused it
		}
		ice, err := carbonation.FreezingPoint(s)
		return err == nil && in[t] < ice.In(units.Celsius)
	}
}

// A saying is the caution of a function that says always the same, or goes by a choice
// among its inputs.
type saying struct {
	words []string
	by    string // input whose value is a place in bits; "" says them all
	bits  []float64
}

func always(words ...string) saying { return saying{words: words} }

// warned adds the caution that sayings holds for a function.
func warned(f *Function, s saying) *Function {
	outputs, inner := len(f.Outputs), f.call
	f.shows(sentences(s.words...))
	all := float64(uint64(1)<<len(s.words) - 1)
	place, chosen := f.Input(s.by)
	f.call = func(in, out []float64) error {
		if out[outputs] = all; chosen {
			out[outputs] = s.bits[int(in[place])]
		}
		return inner(in, out[:outputs])
	}
	return f
}

// Common practice, no source.
const (
	scalds = "Boiling water scalds, and hot sugar solution sticks and burns worse: cover eyes and arms, fill the kettle to three quarters at most, " +
		"and let it cool before it goes into glass or plastic."
	burns      = "Vapour of ethanol burns: no flame and no spark near it, and air the room; distilling, even for a test, needs a licence in many countries."
	foams      = "Bicarbonate foams: stir it in by portions, and leave the vessel open to the gas."
	fermenting = "What yeast can ferment makes gas in a closed pack, and bursts it: count it in the pressure, or keep the pack from fermenting by a " +
		"method fit for it."
	notDry = "Closed up with sugar left, this liquid can still make gas, and glass bursts; a reading may hide some. Pack it only at the floor, " +
		"unchanged over days, and within the maker's rating of the pack."
	driving = "A count of drinks says nothing about whether a person may drive or drink: the law and a physician do."
)

// sayings are the cautions by function that do not come with the result of the library.
func sayings() map[string]saying {
	gas := always(ferment.GasCaution.Text())
	acid := always(water.AcidCautions().Texts()...)
	base := always(material.Burns.Text())
	var words []string
	var bits []float64
	for _, s := range nutrient.Sources() {
		var b uint64
		for _, text := range s.Cautions().With(law.CheckTheLaw).Texts() {
			if !slices.Contains(words, text) {
				words = append(words, text)
			}
			b |= 1 << slices.Index(words, text)
		}
		bits = append(bits, float64(b))
	}
	source := saying{words: words, by: "source", bits: bits}
	dechlorinated, _ := water.Profile{}.Dechlorinate(dechlorinators[0], water.FreeChlorine(units.MilligramPerLitre.Of(1), water.ChlorineAs(0)), units.Litre.Of(1))
	return map[string]saying{
		"co2_given_off":             always(carbonation.Asphyxiation.Text(), ferment.GasCaution.Text()),
		"sugar_for_strength":        always(ferment.GasCaution.Text(), scalds),
		"strength_from_sugar":       gas,
		"strong_base":               always(ferment.GasCaution.Text(), scalds),
		"wash_from_sugar":           always(ferment.GasCaution.Text(), scalds),
		"fermentation_balance":      gas,
		"fermentable_composition":   gas,
		"wash_progress":             always(notDry),
		"ferment_forecast":          always(notDry),
		"co2_saturation_pressure":   always(carbonation.Cylinder.Text()),
		"boil_down_to":              always(scalds),
		"water_boiled":              always(scalds),
		"strength_from_boiling_off": always(scalds, burns),
		"strength_from_distillate":  always(burns),
		"acid_as_sold":              acid,
		"water_acid_to_ph":          acid,
		"mash_acid_to_ph":           always(water.AcidBurns.Text(), mash.MeasurePH.Text()),
		"juice_acid_to_ph":          always(water.AcidBurns.Text(), must.TrialFirst.Text(), must.Settles.Text(), must.Law.Text()),
		"juice_blend_to_ph":         always(must.TrialFirst.Text()),
		"juice_base_to_acidity":     always(material.Burns.Text(), must.Foams.Text(), must.TrialFirst.Text(), must.Settles.Text(), must.Law.Text()),
		"water_base_to_alkalinity":  base,
		"water_base_to_ph":          base,
		"dechlorination_dose":       always(dechlorinated.Cautions.Texts()...),
		"nutrient_dose":             source,
		"nutrient_brings":           source,
		"buffer_for_ph":             always(foams),
		"buffer_for_stuck_ferment":  always(foams),
		"so2_free_for_molecular":    always(finish.SulfiteCaution.Text()),
		"sulfite_dose":              always(finish.SulfiteCaution.Text()),
		"sorbate_for_wine":          always(finish.SorbateCaution.Text()),
		"sweetener_for_sucrose":     always(fermenting, law.CheckTheLaw.Text()),
		"flavour_for_batch":         always(fermenting, burns),
		"standard_drinks":           always(driving),
	}
}
