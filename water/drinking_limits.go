package water

import (
	"fmt"
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/choice"
	"example.org/zymase/units"
)

// Authority is who set a limit.
type Authority int

// Authorities.
const (
	USRegulation Authority = iota // Code of Federal Regulations, annual edition 2015
	EUDirective                   // Directive (EU) 2020/2184, with values read in 98/83/EC, which it replaced in 2023
	WHOGuideline                  // Guidelines for drinking-water quality, second edition (1996) and fourth (2011, 2022)
)

var authorities = choice.Of[Authority]("authority", "US", "EU", "WHO")

// String returns "US", "EU" or "WHO".
func (a Authority) String() string { return authorities.Text(a) }

// MarshalText is [Authority.String]; another value is refused with a [*units.NameError].
func (a Authority) MarshalText() ([]byte, error) {
	return authorities.Marshal("water.Authority.MarshalText", a)
}

// UnmarshalText reads "US", "EU" or "WHO"; the error is a [*units.NameError].
func (a *Authority) UnmarshalText(text []byte) error {
	return authorities.Unmarshal("water.Authority.UnmarshalText", text, a)
}

// DrinkingLimit is one limit for drinking water.
type DrinkingLimit struct {
	Authority Authority
	Substance string  // "nitrate as N", "pH"
	Least     float64 // 0 where there is none
	Most      float64
	Unit      string
	Kind      string // what sort of limit it is
	Source    string
	Year      int
	Recalled  bool // recalled from memory, not read

	measure func(*Profile) (float64, bool)
}

func ofIon(i Ion) func(*Profile) (float64, bool) {
	return func(p *Profile) (float64, bool) { return p.mg[i], true }
}

// asNitrogen counts the nitrogen alone.
func asNitrogen(ions ...Ion) func(*Profile) (float64, bool) {
	n := chemistry.MustMass("N")
	return func(p *Profile) (float64, bool) {
		sum := 0.0
		for _, i := range ions {
			sum += p.mmol(i) * n
		}
		return sum, true
	}
}

func phOf(p *Profile) (float64, bool) { return p.ph, p.ph != 0 }

func solidsOf(p *Profile) (float64, bool) {
	return p.DissolvedSolids().In(units.MilligramPerLitre), true
}

func conductivityOf(p *Profile) (float64, bool) {
	e, err := p.Equilibrium()
	return e.ConductivityAt20().In(units.MicrosiemensPerCentimetre), err == nil
}

// DrinkingLimits returns the limits for what a [Profile] holds. They are those of
// the year given, not legal advice: look up the law of the place.
//
//   - Source: 40 CFR 141.62, 141.80 and 143.3 (2015); Directive 98/83/EC annex I (read;
//     Directive (EU) 2020/2184 replaced it on 13 January 2023, and that it kept these values
//     is recalled from memory); WHO Guidelines for drinking-water quality, second edition, and fourth edition
//     recalled from memory.
func DrinkingLimits() []DrinkingLimit {
	const secondary, mcl, level = "secondary (aesthetic)", "maximum contaminant level", "action level 90th percentile"
	const cfr143, cfr141 = "40 CFR 143.3", "40 CFR 141.62"
	const value, indicator, annex = "parametric value", "indicator parameter", "Directive (EU) 2020/2184 annex I"
	const guideline, taste, who2, who4 = "guideline", "taste", "WHO Guidelines, 2nd ed.", "WHO Guidelines, 4th ed."
	return []DrinkingLimit{
		{USRegulation, "chloride", 0, 250, "mg/L", secondary, cfr143, 2015, false, ofIon(Chloride)},
		{USRegulation, "sulfate", 0, 250, "mg/L", secondary, cfr143, 2015, false, ofIon(Sulfate)},
		{USRegulation, "copper", 0, 1.0, "mg/L", secondary, cfr143, 2015, false, ofIon(Copper)},
		{USRegulation, "copper", 0, 1.3, "mg/L", level, "40 CFR 141.80(c)", 2015, false, ofIon(Copper)},
		{USRegulation, "fluoride", 0, 2.0, "mg/L", secondary, cfr143, 2015, false, ofIon(Fluoride)},
		{USRegulation, "fluoride", 0, 4.0, "mg/L", mcl, cfr141, 2015, false, ofIon(Fluoride)},
		{USRegulation, "iron", 0, 0.3, "mg/L", secondary, cfr143, 2015, false, ofIon(Iron)},
		{USRegulation, "manganese", 0, 0.05, "mg/L", secondary, cfr143, 2015, false, ofIon(Manganese)},
		{USRegulation, "zinc", 0, 5, "mg/L", secondary, cfr143, 2015, false, ofIon(Zinc)},
		{USRegulation, "pH", 6.5, 8.5, "", secondary, cfr143, 2015, false, phOf},
		{USRegulation, "total dissolved solids", 0, 500, "mg/L", secondary, cfr143, 2015, false, solidsOf},
		{USRegulation, "nitrate as N", 0, 10, "mg/L", mcl, cfr141, 2015, false, asNitrogen(Nitrate)},
		{USRegulation, "nitrite as N", 0, 1, "mg/L", mcl, cfr141, 2015, false, asNitrogen(Nitrite)},
		{USRegulation, "nitrate and nitrite as N", 0, 10, "mg/L", mcl, cfr141, 2015, false, asNitrogen(Nitrate, Nitrite)},
		{EUDirective, "nitrate", 0, 50, "mg/L", value, annex + " part B, as in 98/83/EC", 2020, false, ofIon(Nitrate)},
		{EUDirective, "nitrite", 0, 0.5, "mg/L", value, annex + " part B, as in 98/83/EC", 2020, false, ofIon(Nitrite)},
		{EUDirective, "copper", 0, 2.0, "mg/L", value, annex + " part B, as in 98/83/EC", 2020, false, ofIon(Copper)},
		{EUDirective, "fluoride", 0, 1.5, "mg/L", value, annex + " part B, as in 98/83/EC", 2020, false, ofIon(Fluoride)},
		{EUDirective, "chloride", 0, 250, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Chloride)},
		{EUDirective, "sulfate", 0, 250, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Sulfate)},
		{EUDirective, "sodium", 0, 200, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Sodium)},
		{EUDirective, "iron", 0, 0.2, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Iron)},
		{EUDirective, "manganese", 0, 0.05, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Manganese)},
		{EUDirective, "ammonium", 0, 0.5, "mg/L", indicator, annex + " part C, as in 98/83/EC", 2020, false, ofIon(Ammonium)},
		{EUDirective, "conductivity at 20 °C", 0, 2500, "µS/cm", indicator, annex + " part C, as in 98/83/EC", 2020, false, conductivityOf},
		{EUDirective, "pH", 6.5, 9.5, "", indicator, annex + " part C, as in 98/83/EC", 2020, false, phOf},
		{WHOGuideline, "nitrate", 0, 50, "mg/L", guideline, who2, 1996, false, ofIon(Nitrate)},
		{WHOGuideline, "nitrite", 0, 3, "mg/L", guideline, who2, 1996, false, ofIon(Nitrite)},
		{WHOGuideline, "copper", 0, 2, "mg/L", guideline, who2, 1996, false, ofIon(Copper)},
		{WHOGuideline, "fluoride", 0, 1.5, "mg/L", guideline, who2, 1996, false, ofIon(Fluoride)},
		{WHOGuideline, "sodium", 0, 200, "mg/L", taste, who4, 2011, true, ofIon(Sodium)},
		{WHOGuideline, "chloride", 0, 250, "mg/L", taste, who4, 2011, true, ofIon(Chloride)},
		{WHOGuideline, "sulfate", 0, 500, "mg/L", "notify above", who4, 2011, true, ofIon(Sulfate)},
		{WHOGuideline, "iron", 0, 0.3, "mg/L", taste, who4, 2011, true, ofIon(Iron)},
		{WHOGuideline, "manganese", 0, 0.08, "mg/L", "provisional guideline", who4, 2022, true, ofIon(Manganese)},
		{WHOGuideline, "zinc", 0, 3, "mg/L", taste, who4, 2011, true, ofIon(Zinc)},
	}
}

// Finding is a limit that a water does not keep.
type Finding struct {
	Limit DrinkingLimit
	Have  float64 // in the unit of the limit
}

// String reads "nitrate 62 mg/L, at most 50 mg/L (EU parametric value, Directive (EU)
// 2020/2184 annex I part B, as in 98/83/EC, 2020)".
func (f Finding) String() string {
	l := f.Limit
	bound := fmt.Sprintf("at most %g", l.Most)
	if f.Have < l.Least {
		bound = fmt.Sprintf("at least %g", l.Least)
	}
	unit := l.Unit
	if unit != "" {
		unit = " " + unit
	}
	note := ""
	if l.Recalled {
		note = ", recalled from memory"
	}
	return fmt.Sprintf("%s %.4g%s, %s%s (%s %s, %s, %d%s)", l.Substance, f.Have, unit, bound, unit, l.Authority, l.Kind, l.Source, l.Year, note)
}

// CheckDrinking returns the limits that a water does not keep. pH and conductivity
// are looked at where the pH is known.
func (p Profile) CheckDrinking() []Finding {
	var out []Finding
	for _, l := range DrinkingLimits() {
		if v, known := l.measure(&p); known && (v < l.Least || v > l.Most*(1+1e-12)) && !math.IsNaN(v) {
			out = append(out, Finding{l, v})
		}
	}
	return out
}
