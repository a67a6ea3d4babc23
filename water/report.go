package water

import (
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Form says what the number of a laboratory report counts.
type Form int

// Forms. Degrees and CaCO3 count charge, for whatever ion.
const (
	AsIon           Form = iota // mg/L of the ion
	AsEquivalents               // mEq/L
	AsMillimoles                // mmol/L
	AsCaCO3                     // mg/L as CaCO3
	AsGermanDegree              // °dH
	AsFrenchDegree              // °fH
	AsEnglishDegree             // °e (Clark)
	AsNitrogen                  // mg/L as N: nitrate, nitrite, ammonium
	AsSulfur                    // mg/L as S: sulfate
	AsPhosphorus                // mg/L as P: phosphate
)

var forms = choice.Of[Form]("water.Form", "form of a reading", "mg/L", "mEq/L", "mmol/L", "mg/L as CaCO3", "°dH", "°fH", "°e",
	"mg/L as N", "mg/L as S", "mg/L as P")

// String returns the unit that a report prints, "mg/L as CaCO3".
func (f Form) String() string { return forms.Text(f) }

// MarshalText is [Form.String]; another value is refused with a [*units.NameError].
func (f Form) MarshalText() ([]byte, error) { return forms.Marshal(f) }

// UnmarshalText reads what [Form.String] writes; the error is a [*units.NameError].
func (f *Form) UnmarshalText(text []byte) error { return forms.Unmarshal(text, f) }

// ReportLine is one line of a report.
type ReportLine struct {
	Ion   Ion
	Value float64
	As    Form
}

// Report is a laboratory report as people get it. What is not given is not known;
// a number below a limit of detection is given as zero.
type Report struct {
	Temperature units.Temperature
	Readings    []ReportLine

	// Alkalinity, in any form but nitrogen, sulfur and phosphorus, AsIon meaning
	// mg/L of HCO3-. Endpoint is the pH where a titration ended, 0 where it was to the
	// equivalence point: 4.3 for the German acid capacity, 4.5 for many others.
	Alkalinity   float64
	AlkalinityAs Form
	Endpoint     float64

	// Hardness is the total hardness; where calcium is given and magnesium is not,
	// the difference is magnesium. Zero where it was not given.
	Hardness units.CalciumCarbonate

	PH           float64 // 0 where it was not given
	Conductivity units.Conductivity
	Solids       units.MassConcentration // total dissolved solids, by drying at 180 °C

	// Estimate fills what the report lacks: sodium or chloride by the balance of
	// charges. The notes say so.
	Estimate bool
}

// millimoles converts a reading.
func (r ReportLine) millimoles(fn string) (float64, error) {
	if err := r.Ion.known(fn); err != nil {
		return 0, err
	}
	if err := forms.Check(fn, r.As); err != nil {
		return 0, err
	}
	if err := limit.Check(fn, r.Ion.Name(), r.Value, "", 0, mostIon, "a content cannot be negative"); err != nil {
		return 0, err
	}
	z := math.Abs(float64(r.Ion.Charge()))
	switch r.As {
	case AsIon:
		return r.Value / r.Ion.facts().mass, nil
	case AsMillimoles:
		return r.Value, nil
	case AsEquivalents, AsCaCO3, AsGermanDegree, AsFrenchDegree, AsEnglishDegree:
		return equivalents(r.Value, r.As) / z, nil
	case AsNitrogen:
		if r.Ion == Nitrate || r.Ion == Nitrite || r.Ion == Ammonium {
			return r.Value / chemistry.MustMass("N"), nil
		}
	case AsSulfur:
		if r.Ion == Sulfate || r.Ion == Sulfite {
			return r.Value / chemistry.MustMass("S"), nil
		}
	case AsPhosphorus:
		if r.Ion == Phosphate {
			return r.Value / chemistry.MustMass("P"), nil
		}
	}
	return 0, &units.RangeError{
		Func: fn, Quantity: "form of " + r.Ion.Name(), Value: float64(r.As), Min: float64(AsIon), Max: float64(AsEnglishDegree),
		Source: "forms of every ion; AsNitrogen, AsSulfur and AsPhosphorus are for ions that hold it",
	}
}

// equivalents converts a number of a charge form to mEq/L.
func equivalents(v float64, as Form) float64 {
	switch as {
	case AsCaCO3:
		v /= cacO3PerEquivalent
	case AsGermanDegree:
		v *= units.GermanDegree.Of(1).In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	case AsFrenchDegree:
		v *= units.FrenchDegree.Of(1).In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	case AsEnglishDegree:
		v *= units.EnglishDegree.Of(1).In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	case AsIon:
		v /= Bicarbonate.facts().mass
	}
	return v
}

// Profile reads the report. The notes say what was estimated or does not fit
// together (charges, solids, conductivity); a report that cannot be is refused with
// a [*units.RangeError]: a negative content, a form the ion has not, a hardness below
// the calcium, a pH that the alkalinity cannot have.
//
//   - Source: acid used up at the end point itself, 10^-pH, taken off a titration to a
//     fixed pH (DIN 38409-7, recalled from memory); limits of solids and conductivity,
//     Standard Methods 1030 E, recalled from memory.
func (r Report) Profile() (Profile, []string, error) {
	const fn = "water.Report.Profile"
	var notes []string
	alk := equivalents(r.Alkalinity, r.AlkalinityAs)
	if err := limit.Check(fn, "form of the alkalinity", float64(r.AlkalinityAs), "", 0, float64(AsEnglishDegree), "a form of alkalinity"); err != nil {
		return Profile{}, nil, err
	}
	if r.Endpoint != 0 {
		if err := limit.Check(fn, "end point", r.Endpoint, "", 3.5, 5.5, "an end point of alkalinity"); err != nil {
			return Profile{}, nil, err
		}
		alk -= mmolPerMol * math.Pow(10, -r.Endpoint)
		notes = append(notes, fmt.Sprintf("alkalinity: %.3f mEq/L taken off for the acid left at pH %g", mmolPerMol*math.Pow(10, -r.Endpoint), r.Endpoint))
	}
	contents := make([]Content, 0, len(r.Readings)+1)
	seen := [ionCount]bool{}
	for _, line := range r.Readings {
		n, err := line.millimoles(fn)
		if err != nil {
			return Profile{}, nil, limit.Named(fn, err)
		}
		seen[line.Ion] = true
		contents = append(contents, line.Ion.At(units.MilligramPerLitre.Of(checked.Number(n*line.Ion.facts().mass))))
	}
	a, err := units.MilligramPerLitreCaCO3.Try(alk * cacO3PerEquivalent)
	if err != nil {
		return Profile{}, nil, limit.Named(fn, err)
	}
	p, err := NewProfile(r.Temperature, a, contents...)
	if err != nil {
		return Profile{}, nil, limit.Named(fn, err)
	}
	if err := r.magnesium(fn, &p, seen); err != nil {
		return Profile{}, nil, limit.Named(fn, err)
	}
	if r.Estimate {
		notes = append(notes, p.fill()...)
	}
	if b := p.IonicBalance(); !b.Acceptable {
		notes = append(notes, "ions do not balance: "+b.Judgement)
	}
	if r.PH != 0 {
		if p, err = p.WithPH(r.PH); err != nil {
			return Profile{}, nil, limit.Named(fn, err)
		}
	}
	return p, append(notes, r.fit(&p)...), nil
}

// magnesium takes it from the hardness where the report leaves it out.
func (r *Report) magnesium(fn string, p *Profile, seen [ionCount]bool) error {
	total := r.Hardness.In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	if total == 0 || seen[Magnesium] || !seen[Calcium] {
		return nil
	}
	mg := (total/2 - p.mmol(Calcium)) * Magnesium.facts().mass
	if err := limit.Check(fn, "magnesium by hardness less calcium", mg, "mg/L", -0.5, mostIon, "hardness is at least that of the calcium"); err != nil {
		return err
	}
	p.mg[Magnesium] = max(0, mg)
	return nil
}

// fill closes the balance with sodium or chloride.
func (p *Profile) fill() []string {
	cations, anions := p.charges()
	i, missing := Sodium, anions-cations
	if missing < 0 {
		i, missing = Chloride, -missing
	}
	if missing < negligible {
		return nil
	}
	p.mg[i] += missing * i.facts().mass
	return []string{fmt.Sprintf("%s: %.1f mg/L added to balance the charges, an estimate", i, missing*i.facts().mass)}
}

// fit compares solids and conductivity with the ions.
func (r *Report) fit(p *Profile) []string {
	var notes []string
	if tds := r.Solids.In(units.MilligramPerLitre); tds > 0 {
		// Bicarbonate leaves half its mass as CO2 and water on drying: 0.6 of the alkalinity.
		sum := 0.6*p.alk*cacO3PerEquivalent + p.DissolvedSolids().In(units.MilligramPerLitre) - max(0, p.ion(Bicarbonate))
		if ratio := tds / sum; ratio < 1.0 || ratio > 1.2 {
			notes = append(notes, fmt.Sprintf("dissolved solids are %.2f times what the ions add up to; 1.0 to 1.2 is usual", ratio))
		}
	}
	if k := r.Conductivity.In(units.MicrosiemensPerCentimetre); k > 0 {
		if e, err := p.Equilibrium(); err == nil {
			if ratio := k / e.Conductivity().In(units.MicrosiemensPerCentimetre); ratio < 0.9 || ratio > 1.1 {
				notes = append(notes, fmt.Sprintf("conductivity is %.2f times what the ions give; 0.9 to 1.1 is usual", ratio))
			}
		}
	}
	return notes
}
