package plan

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// How finely the pH is followed: by thirds of the sugar in a plan, by twelfths in its
// curves, so that the stages of nutrient fall on steps.
const (
	courseSteps = 3
	curveCourse = 12
)

// acidity follows the pH of the ferment, and finds the buffer that holds a floor.
func (m *maker) acidity() error {
	f, err := m.ferment()
	if err != nil {
		return err
	}
	a := AcidityPlan{Unforeseen: m.unforeseen(), Points: []AcidityPoint{}}
	if a.Unforeseen != "" {
		m.plan.Acidity, m.course = a, f
		m.caution(a.Unforeseen)
		return nil
	}
	if b := m.req.Buffer; b != nil {
		salt, err := nutrient.ParseBuffer(b.Salt)
		if err != nil {
			return named("buffer.salt", b.Salt, err)
		}
		if a.EndUnbuffered, err = f.PH(units.Percent.Of(100)); err != nil {
			return err
		}
		a.Floor = b.Floor
		dose, err := f.BufferFor(b.Floor, salt)
		if err != nil {
			return &RequestError{Field: "buffer.floor_pH", Value: trim(b.Floor), Allowed: reason(err), Err: err}
		}
		mass, err := dose.Mass.Value.Round(m.req.Scales.Small, units.Up)
		if err != nil {
			return err
		}
		w := Weight{What: salt.String(), For: "fermenter, buffer", Mass: mass, Asked: dose.Mass.Value}
		a.Buffer = &w
		a.Low, a.High = dose.Mass.Low, dose.Mass.High
		f.Buffer, f.BufferMass = salt, mass.Quantity()
		m.plan.Weigh = append(m.plan.Weigh, w)
		for _, c := range dose.Cautions {
			m.caution(c)
		}
	}
	course, err := f.Course(courseSteps)
	if err != nil {
		return err
	}
	a.Points, m.course = points(course), f
	a.Halves = a.Buffer != nil && a.Points[0].PH > nutrient.PitchPH().Value
	for _, c := range course.Cautions {
		m.caution(c)
	}
	m.plan.Acidity = a
	return nil
}

func points(c nutrient.Course) []AcidityPoint {
	out := make([]AcidityPoint, len(c.Points))
	for i, p := range c.Points {
		out[i] = AcidityPoint{
			Used: p.Used, PH: p.PH.Value, Low: p.PH.Low, High: p.PH.High,
			Gravity: p.Gravity.SG(), Strength: p.Strength,
		}
	}
	return out
}

// ferment is the wash as package nutrient follows it.
func (m *maker) ferment() (nutrient.Ferment, error) {
	b := m.batch
	share := kg(b.wash.Mass()) / kg(b.boiled.Mass()) // what reaches the fermenter
	brew, err := nutrient.Wash{
		Fermentable: m.fermentable, Yield: m.yield, Attenuation: units.Percent.Of(100),
		Basis: nutrient.WaterAtHand(kilograms(share * (b.water - b.boiledOff))),
	}.From(kilograms(share * b.fermentable))
	if err != nil {
		return nutrient.Ferment{}, err
	}
	treated, err := concentrated(m.treated, b.water/(b.water-b.boiledOff))
	if err != nil {
		return nutrient.Ferment{}, err
	}
	return nutrient.Ferment{
		Brew: brew, Water: treated, Feed: m.fed, Additions: stages,
		Temperature: m.req.Fermenter.Temperature, Pressure: m.air.Pressure(),
	}, nil
}

// concentrated is a water that boiled down: every content goes up alike. What chalk
// drops out in the boil is not counted.
func concentrated(p water.Profile, k float64) (water.Profile, error) {
	var ions []water.Content
	for _, i := range water.Ions() {
		if c := p.Ion(i).In(units.MilligramPerLitre); c > 0 && i != water.Bicarbonate && i != water.Carbonate && i != water.Hydroxide {
			ions = append(ions, i.At(units.MilligramPerLitre.Of(checked.Number(k*c))))
		}
	}
	alkalinity := units.MilligramPerLitreCaCO3.Of(checked.Number(k * p.Alkalinity().In(units.MilligramPerLitreCaCO3)))
	return water.NewProfile(p.Temperature(), alkalinity, ions...)
}
