package nutrient

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// Need is the assimilable nitrogen (ammonium and amino, counted as N) that a
// ferment wants, by one named method. The methods differ by a factor of two and
// more; the spread is part of the answer.
type Need struct {
	Method   string
	Nitrogen evidence.Figure[units.MassConcentration]
}

// NeedBySugar returns the nitrogen need by the sugar to ferment and the demand of
// the strain. It is the method to take for a sugar wash below wine strength, as
// the rules for musts hold for 20 °Bx and above only. The spread runs from the low
// to the high demand.
//
//   - Source: supplier rule of the wine trade, 0.75, 0.9 and 1.25 mg N per gram of
//     sugar for strains of low, medium and high demand (recalled from memory).
//   - Range: sugar 0 to 350 g/L; beyond it the error is a [*units.RangeError]. An unknown
//     demand is a [*units.NameError].
//   - Units: sugar as fermentable sugar in the start liquid, need as mg/L of N.
//   - Uncertainty: not stated; the three classes span a factor of 1.7.
func NeedBySugar(sugar units.MassConcentration, d Demand) (Need, error) {
	const low, medium, high = 0.75, 0.9, 1.25 // mg N per g sugar
	s := sugar.In(units.GramPerLitre)
	if err := limit.Check("nutrient.NeedBySugar", "sugar", s, "g/L", 0, 350, ruleOfTrade); err != nil {
		return Need{}, err
	}
	if err := demands.Check("nutrient.NeedBySugar", d); err != nil {
		return Need{}, err
	}
	rate := [...]float64{MediumDemand: medium, LowDemand: low, HighDemand: high}[d]
	return Need{
		Method: "by sugar and strain",
		Nitrogen: evidence.Figure[units.MassConcentration]{
			Value: amount.MgPerL(rate * s), Low: amount.MgPerL(low * s), High: amount.MgPerL(high * s),
			Evidence: evidence.Evidence{Source: ruleOfTrade, Grade: evidence.Recalled},
		},
	}, nil
}

const ruleOfTrade = "supplier rule of the wine trade"

// NeedOfMust returns the nitrogen need of a grape must by a published method, with its
// spread. The methods, of which [Needs] shows those that hold:
//
//   - "of a must by its sugar": 200 mg/L at 21 °Bx and 25 mg/L more for each degree, from
//     21 to 27 °Bx. Bisson & Butzke, Am. J. Enol. Vitic. 51 (2000) 168–177, table of 200,
//     250, 300, 350 mg/L at 21, 23, 25, 27 °Bx (recalled from memory); straight line
//     through it.
//   - "least of a must": the least with which a must near 21 °Bx ferments dry, 140 mg/L, and
//     as its spread the 140 to 500 mg/L that reviews give. Agenbach 1977, quoted (recalled
//     from memory); spread: Manipulating soil moisture and nitrogen availability, Oregon
//     State University (read).
//   - "of a white must, low risk": 150 mg/L, below which a white must runs a risk of a slow
//     ferment, to the 350 mg/L given for a clean and fruity white. Australian Wine Research
//     Institute, page on yeast assimilable nitrogen (read).
//   - "free amino nitrogen of a must": at least 250 to 300 mg/L. Fertiliser guidelines for
//     the wine industry, South Africa (read).
//
// Another method is a [*units.NameError], an extract outside the range of the first a
// [*units.RangeError]; the others are one figure whatever the extract.
func NeedOfMust(method string, must units.Extract) (Need, error) {
	const fn = "nutrient.NeedOfMust"
	for _, r := range mustRules {
		if r.method != method {
			continue
		}
		more := 0.0
		if r.slope != 0 {
			b := must.In(units.DegreePlato)
			if err := limit.Check(fn, "extract", b, "°Bx", 21, 27, r.evidence.Source); err != nil {
				return Need{}, err
			}
			more = r.slope * (b - 21)
		}
		return Need{Method: method, Nitrogen: evidence.Figure[units.MassConcentration]{
			Value: amount.MgPerL(r.value + more), Low: amount.MgPerL(r.low + more), High: amount.MgPerL(r.high + more), Evidence: r.evidence,
		}}, nil
	}
	var names []string
	for _, r := range mustRules {
		names = append(names, r.method)
	}
	return Need{}, &units.NameError{Func: fn, What: "method", Name: method, Choices: names}
}

// mustRules are the published needs of grape musts, mg/L of N; slope is for each °Bx above 21.
var mustRules = [...]struct {
	method                  string
	value, low, high, slope float64
	evidence                evidence.Evidence
}{
	{"of a must by its sugar", 200, 200, 200, 25, evidence.Evidence{Source: "Bisson & Butzke, Am. J. Enol. Vitic. 51 (2000) 168", Grade: evidence.Recalled}},
	{"least of a must", 140, 140, 500, 0, evidence.Evidence{Source: "Agenbach 1977; spread: Oregon State University", Grade: evidence.Recalled}},
	{"of a white must, low risk", 150, 150, 350, 0, evidence.Evidence{Source: "Australian Wine Research Institute, yeast assimilable nitrogen",
		Grade: evidence.Read}},
	{"free amino nitrogen of a must", 275, 250, 300, 0,
		evidence.Evidence{Source: "Fertiliser guidelines for the wine industry, South Africa", Grade: evidence.Read}},
}

// NeedByGrowth returns the nitrogen that a mass of new dry yeast holds when it is
// well fed. Yeast that is short of nitrogen grows with less; the lower end is the
// nitrogen of yeast with 40 % crude protein.
//
//   - Source: Dharmadhikari, Nitrogen during fermentation: 10 % of dry matter (read).
//     Lower end: protein 40 % of dry matter, N = protein/6.25 (recalled from memory).
//   - Range: 0 to 20 g/L of dry yeast; beyond it the error is a [*units.RangeError].
//   - Units: dry yeast in g/L, need in mg/L of N.
func NeedByGrowth(dryYeast units.MassConcentration) (Need, error) {
	const source = "Dharmadhikari, Nitrogen during fermentation"
	y := dryYeast.In(units.GramPerLitre)
	if err := limit.Check("nutrient.NeedByGrowth", "dry yeast", y, "g/L", 0, 20, source); err != nil {
		return Need{}, err
	}
	return Need{
		Method: "by the yeast that grows",
		Nitrogen: evidence.Figure[units.MassConcentration]{
			Value: amount.MgPerL(1000 * formula.NitrogenOfYeast * y), Low: amount.MgPerL(1000 * formula.NitrogenOfLeanYeast * y),
			High:     amount.MgPerL(1000 * formula.NitrogenOfYeast * y),
			Evidence: evidence.Evidence{Source: source, Grade: evidence.Read},
		},
	}, nil
}

// Needs returns the need by every method that holds for a wash of this sugar, the
// first of them the one to take. Methods for musts are left out below 20 °Bx.
//
//   - Source: each method names its own.
//   - Range: sugar 0 to 350 g/L; beyond it the error is a [*units.RangeError].
//   - Units: fermentable sugar in g/L and extract in °P of the same start liquid.
func Needs(sugar units.MassConcentration, extract units.Extract, d Demand) ([]Need, error) {
	first, err := NeedBySugar(sugar, d)
	if err != nil {
		return nil, limit.Named("nutrient.Needs", err)
	}
	all := []Need{first}
	for _, r := range mustRules {
		if n, err := NeedOfMust(r.method, extract); err == nil && (r.slope != 0 || extract.In(units.DegreePlato) >= 20) {
			all = append(all, n)
		}
	}
	return all, nil
}

// Assimilable returns the yeast assimilable nitrogen of a must from its two
// analyses: free ammonia and alpha amino nitrogen.
//
//   - Source: Australian Wine Research Institute, yeast assimilable nitrogen:
//     0.8225·NH3 + alpha amino N (read). The factor is the share of N in NH3, taken
//     from the atomic weights (0.8224).
//   - Range: 0 to 2 g/L each; beyond it the error is a [*units.RangeError].
//   - Units: ammonia in mg/L as NH3 (not as NH4), amino nitrogen in mg/L as N.
func Assimilable(ammonia, amino units.MassConcentration) (units.MassConcentration, error) {
	const fn, source = "nutrient.Assimilable", "Australian Wine Research Institute"
	a, n := ammonia.In(units.MilligramPerLitre), amino.In(units.MilligramPerLitre)
	if err := limit.Check(fn, "ammonia", a, "mg/L", 0, 2000, source); err != nil {
		return units.MassConcentration{}, err
	}
	if err := limit.Check(fn, "amino nitrogen", n, "mg/L", 0, 2000, source); err != nil {
		return units.MassConcentration{}, err
	}
	return amount.MgPerL(formula.NitrogenInAmmonia*a + n), nil
}
