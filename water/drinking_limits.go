package water

import (
	"fmt"

	"example.org/zymase/internal/checked"
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

var authorities = choice.Of[Authority]("water.Authority", "authority", "US", "EU", "WHO")

// String returns "US", "EU" or "WHO".
func (a Authority) String() string { return authorities.Text(a) }

// MarshalText is [Authority.String]; another value is refused with a [*units.NameError].
func (a Authority) MarshalText() ([]byte, error) { return authorities.Marshal(a) }

// UnmarshalText reads "US", "EU" or "WHO"; the error is a [*units.NameError].
func (a *Authority) UnmarshalText(text []byte) error { return authorities.Unmarshal(text, a) }

// DrinkingLimit is one limit for drinking water: of a content, of pH or of conductivity.
type DrinkingLimit struct {
	Authority        Authority
	Substance        string                  // "nitrate as N", "pH"
	Most             units.MassConcentration // zero for pH and conductivity
	LeastPH          float64                 // zero but for pH
	MostPH           float64
	MostConductivity units.Conductivity // at 20 °C; zero but for conductivity
	Kind             string             // what sort of limit it is
	Source           string
	Year             int
	Recalled         bool // recalled from memory, not read

	have func(*Profile) units.MassConcentration
}

func ofIon(i Ion) func(*Profile) units.MassConcentration {
	return func(p *Profile) units.MassConcentration { return p.Ion(i) }
}

// asNitrogen counts the nitrogen alone.
func asNitrogen(ions ...Ion) func(*Profile) units.MassConcentration {
	return func(p *Profile) units.MassConcentration {
		sum := 0.0
		for _, i := range ions {
			sum += p.mmol(i) * chemistry.N
		}
		return milligrams(sum)
	}
}

func solidsOf(p *Profile) units.MassConcentration { return p.DissolvedSolids() }

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
	mg := func(by Authority, substance string, most checked.Number, kind, source string, year int, have func(*Profile) units.MassConcentration) DrinkingLimit {
		return DrinkingLimit{Authority: by, Substance: substance, Most: units.MilligramPerLitre.Of(most), Kind: kind, Source: source, Year: year,
			Recalled: source == who4, have: have}
	}
	return []DrinkingLimit{
		mg(USRegulation, "chloride", 250, secondary, cfr143, 2015, ofIon(Chloride)),
		mg(USRegulation, "sulfate", 250, secondary, cfr143, 2015, ofIon(Sulfate)),
		mg(USRegulation, "copper", 1.0, secondary, cfr143, 2015, ofIon(Copper)),
		mg(USRegulation, "copper", 1.3, level, "40 CFR 141.80(c)", 2015, ofIon(Copper)),
		mg(USRegulation, "fluoride", 2.0, secondary, cfr143, 2015, ofIon(Fluoride)),
		mg(USRegulation, "fluoride", 4.0, mcl, cfr141, 2015, ofIon(Fluoride)),
		mg(USRegulation, "iron", 0.3, secondary, cfr143, 2015, ofIon(Iron)),
		mg(USRegulation, "manganese", 0.05, secondary, cfr143, 2015, ofIon(Manganese)),
		mg(USRegulation, "zinc", 5, secondary, cfr143, 2015, ofIon(Zinc)),
		{Authority: USRegulation, Substance: "pH", LeastPH: 6.5, MostPH: 8.5, Kind: secondary, Source: cfr143, Year: 2015},
		mg(USRegulation, "total dissolved solids", 500, secondary, cfr143, 2015, solidsOf),
		mg(USRegulation, "nitrate as N", 10, mcl, cfr141, 2015, asNitrogen(Nitrate)),
		mg(USRegulation, "nitrite as N", 1, mcl, cfr141, 2015, asNitrogen(Nitrite)),
		mg(USRegulation, "nitrate and nitrite as N", 10, mcl, cfr141, 2015, asNitrogen(Nitrate, Nitrite)),
		mg(EUDirective, "nitrate", 50, value, annex+" part B, as in 98/83/EC", 2020, ofIon(Nitrate)),
		mg(EUDirective, "nitrite", 0.5, value, annex+" part B, as in 98/83/EC", 2020, ofIon(Nitrite)),
		mg(EUDirective, "copper", 2.0, value, annex+" part B, as in 98/83/EC", 2020, ofIon(Copper)),
		mg(EUDirective, "fluoride", 1.5, value, annex+" part B, as in 98/83/EC", 2020, ofIon(Fluoride)),
		mg(EUDirective, "chloride", 250, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Chloride)),
		mg(EUDirective, "sulfate", 250, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Sulfate)),
		mg(EUDirective, "sodium", 200, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Sodium)),
		mg(EUDirective, "iron", 0.2, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Iron)),
		mg(EUDirective, "manganese", 0.05, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Manganese)),
		mg(EUDirective, "ammonium", 0.5, indicator, annex+" part C, as in 98/83/EC", 2020, ofIon(Ammonium)),
		{Authority: EUDirective, Substance: "conductivity at 20 °C", MostConductivity: units.MicrosiemensPerCentimetre.Of(2500),
			Kind: indicator, Source: annex + " part C, as in 98/83/EC", Year: 2020},
		{Authority: EUDirective, Substance: "pH", LeastPH: 6.5, MostPH: 9.5, Kind: indicator, Source: annex + " part C, as in 98/83/EC", Year: 2020},
		mg(WHOGuideline, "nitrate", 50, guideline, who2, 1996, ofIon(Nitrate)),
		mg(WHOGuideline, "nitrite", 3, guideline, who2, 1996, ofIon(Nitrite)),
		mg(WHOGuideline, "copper", 2, guideline, who2, 1996, ofIon(Copper)),
		mg(WHOGuideline, "fluoride", 1.5, guideline, who2, 1996, ofIon(Fluoride)),
		mg(WHOGuideline, "sodium", 200, taste, who4, 2011, ofIon(Sodium)),
		mg(WHOGuideline, "chloride", 250, taste, who4, 2011, ofIon(Chloride)),
		mg(WHOGuideline, "sulfate", 500, "notify above", who4, 2011, ofIon(Sulfate)),
		mg(WHOGuideline, "iron", 0.3, taste, who4, 2011, ofIon(Iron)),
		mg(WHOGuideline, "manganese", 0.08, "provisional guideline", who4, 2022, ofIon(Manganese)),
		mg(WHOGuideline, "zinc", 3, taste, who4, 2011, ofIon(Zinc)),
	}
}

// Finding is a limit that a water does not keep, and what the water has of it.
type Finding struct {
	Limit        DrinkingLimit
	Have         units.MassConcentration // zero for pH and conductivity
	PH           float64                 // zero but for pH
	Conductivity units.Conductivity      // zero but for conductivity
}

// String reads "nitrate 62 mg/L, at most 50 mg/L (EU parametric value, Directive (EU)
// 2020/2184 annex I part B, as in 98/83/EC, 2020)".
func (f Finding) String() string {
	have, least, most, unit := f.numbers()
	bound := fmt.Sprintf("at most %g", most)
	if have < least {
		bound = fmt.Sprintf("at least %g", least)
	}
	note := ""
	if f.Limit.Recalled {
		note = ", recalled from memory"
	}
	l := f.Limit
	return fmt.Sprintf("%s %.4g%s, %s%s (%s %s, %s, %d%s)", l.Substance, have, unit, bound, unit, l.Authority, l.Kind, l.Source, l.Year, note)
}

// numbers are what the water has and what it may have, in the unit that the law writes.
func (f Finding) numbers() (have, least, most float64, unit string) {
	switch l := f.Limit; {
	case l.MostPH > 0:
		return f.PH, l.LeastPH, l.MostPH, ""
	case !l.MostConductivity.IsZero():
		return f.Conductivity.In(units.MicrosiemensPerCentimetre), 0, l.MostConductivity.In(units.MicrosiemensPerCentimetre), " µS/cm"
	default:
		return f.Have.In(units.MilligramPerLitre), 0, l.Most.In(units.MilligramPerLitre), " mg/L"
	}
}

// CheckDrinking returns the limits that a water does not keep. pH and conductivity
// are looked at where the pH is known.
func (p Profile) CheckDrinking() []Finding {
	var out []Finding
	for _, l := range DrinkingLimits() {
		f := Finding{Limit: l}
		switch {
		case l.have != nil:
			f.Have = l.have(&p)
		case p.ph == 0:
			continue
		case l.MostPH > 0:
			f.PH = p.ph
		default:
			if e, err := p.Equilibrium(); err == nil {
				f.Conductivity = e.ConductivityAt20()
			}
		}
		if have, least, most, _ := f.numbers(); have < least || have > most*(1+1e-12) {
			out = append(out, f)
		}
	}
	return out
}
