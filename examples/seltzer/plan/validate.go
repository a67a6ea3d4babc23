package plan

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Kinds of pack.
const (
	keg    = "keg"
	bottle = "bottle"
	can    = "can"
)

// Limits of a request. They keep it inside the formulas and a brewer's world.
const (
	leastStrength, mostStrength = 0.5, 15.0 // % vol; above it few yeasts finish
	leastVolume, mostVolume     = 1.0, 1e5  // L
	mostBoil                    = 6 * time.Hour
	leastContent, mostContent   = 0.5, 6.0 // volumes
	leastFloor, mostFloor       = 2.5, 5.0 // pH
)

// within refuses a quantity that is missing (zero) or outside a range.
func within[D, E units.Dimension](field string, q units.Quantity[D, E], u units.Unit[D, E], least, most float64) error {
	if x := q.In(u); !(x >= least && x <= most) {
		value := number(x, least, most) + " " + u.Symbol()
		if q.IsZero() {
			value = "missing or zero"
		}
		allowed := fmt.Sprintf("%s to %s %s", plain(least), plain(most), u.Symbol())
		if c := (x - 32) / 1.8; u.Symbol() == "°C" && x > most && c >= least && c <= most {
			allowed += fmt.Sprintf("; %s °F would be %.1f °C: write °F where that is meant", plain(x), c)
		}
		return &RequestError{Field: field, Value: value, Allowed: allowed, is: quantity(q)}
	}
	return nil
}

// slipped tells of a gravity how it may have been meant; it is empty where that cannot be seen.
func slipped(sg float64) string {
	switch {
	case sg >= 900 && sg < 1200:
		return fmt.Sprintf("; with its point it is %.3f", sg/1000)
	case sg >= 1.5 && sg <= 40:
		if g, err := gravity.FromExtract(units.DegreePlato.Of(checked.Number(sg))); err == nil {
			return fmt.Sprintf("; %s °P or °Bx is a gravity of %.3f", trim(sg), g.SG())
		}
	}
	return ""
}

func oneOf(field, value string, allowed ...string) error {
	if slices.Contains(allowed, value) {
		return nil
	}
	text := `one of "` + strings.Join(allowed, `", "`) + `"`
	if value == "" {
		return &RequestError{Field: field, Value: "missing", Allowed: text}
	}
	return &RequestError{Field: field, Value: fmt.Sprintf("%q", value), Allowed: text}
}

// named wraps the error of a name that no package knows.
func named(field, value string, err error) error {
	if err == nil {
		return nil
	}
	if value == "" {
		value = "missing"
	}
	return &RequestError{Field: field, Value: value, Allowed: reason(err), Err: err}
}

func (d Duration) minutes() float64 { return time.Duration(d).Minutes() }

// newRecipe checks a request and prepares what the batch is solved with.
func newRecipe(r Request) (*recipe, error) {
	k := &recipe{req: r, swell: cmp.Or(r.swell, 1)}
	if r.made() != nil {
		return k, r.typed.echoed(k.setMade())
	}
	checks := []error{
		instead(r.Volume.IsZero(), "or at_hand, the sugar that there is", within("volume", r.Volume, units.Litre, leastVolume, mostVolume)),
		instead(r.Strength.IsZero(), "or original_gravity, or at_hand", within("strength", r.Strength, units.PercentVolume, leastStrength, mostStrength)),
		r.Kettle.capacityOK(),
		within("kettle.boil_off", r.Kettle.BoilOff, units.LitrePerHour, 0, mostVolume),
		within("fermenter.capacity", r.Fermenter.Capacity, units.Litre, leastVolume, 2*mostVolume),
		within("fermenter.loss", r.Fermenter.Loss, units.Litre, 0, r.Fermenter.Capacity.In(units.Litre)),
		within("fermenter.temperature", r.Fermenter.Temperature, units.Celsius, 4, 38),
		within("fermenter.warmest", r.Fermenter.Warmest, units.Celsius, 0, 40),
		warmestOK(r.Fermenter),
		temperaturesOK(r.Fermenter),
		alsoOK(r.Fermenter.Also),
		within("label.serving", r.Label.Serving, units.Millilitre, 10, 5000),
		oneOf("label.law", r.Label.Law, "EU", "US"),
		oneOf("yeast.form", r.Yeast.Form, "dry", "liquid"),
		scaleOK("scales.sugar", r.Scales.Sugar),
		scaleOK("scales.small", r.Scales.Small),
		k.setPlace(),
		k.setFermentable(),
		k.setMust(),
		k.boilOK(),
		k.portionsOK(),
		k.flavourOK(),
		k.setPacks(),
		k.yeastOK(),
		k.bufferOK(),
		k.waterOK(),
		k.acidOK(),
		k.afterOK(),
	}
	return k, r.typed.echoed(cmp.Or(checks...))
}

// instead adds to a refusal what may stand in the place of a field that is left out.
func instead(missing bool, what string, err error) error {
	if e, ok := err.(*RequestError); ok && missing {
		e.Value, e.Allowed = "missing", e.Allowed+"; "+what
	}
	return err
}

func scaleOK(field string, step units.ExactMass) error {
	return within(field, step.Quantity(), units.Gram, 0.001, 1000)
}

func (k *recipe) setPlace() (err error) {
	p := k.req.Place
	switch {
	case p.Altitude != nil && p.Barometer != nil:
		return &RequestError{Field: "place", Value: "both altitude and barometer", Allowed: "one of the two"}
	case p.Altitude != nil:
		if k.air, err = units.AtAltitude(*p.Altitude); err != nil {
			return &RequestError{Field: "place.altitude", Value: number(p.Altitude.In(units.Metre), -500, 5000) + " m", Allowed: "-500 to 5000 m",
				is: quantity(*p.Altitude)}
		}
		return within("place.altitude", *p.Altitude, units.Metre, -500, 5000)
	case p.Barometer != nil:
		if k.air, err = units.Barometer(*p.Barometer); err != nil {
			return &RequestError{Field: "place.barometer", Value: p.Barometer.Text(units.Millibar, 0), Allowed: reason(err), Err: err, is: quantity(*p.Barometer)}
		}
		return within("place.barometer", *p.Barometer, units.Millibar, 540, 1100)
	}
	return &RequestError{Field: "place", Value: "missing", Allowed: `{"altitude": "640 m"} or {"barometer": "939 mbar"}`}
}

func (k *recipe) setFermentable() (err error) {
	f := k.req.Fermentable
	if isJuice(f) {
		if k.fermentable, err = juiceOf("fermentable", f); err != nil {
			return err
		}
	} else if k.fermentable, err = material.FindAmong(f, sugar.Fermentables()...); err != nil {
		allowed := reason(err) + `; or juice by its Brix, "juice 12 °Bx"`
		if strings.Contains(f, "juice") {
			allowed = juiceForm
		}
		return &RequestError{Field: "fermentable", Value: cmp.Or(f, "missing"), Allowed: allowed, Err: err}
	}
	if sugar.Of(k.fermentable).Fermentability().In(units.Percent) < 1 {
		return &RequestError{Field: "fermentable", Value: f, Allowed: "something that yeast ferments"}
	}
	if err := k.setFruit(); err != nil {
		return err
	}
	k.yield = sugar.Of(k.fermentable).Yield()
	return nil
}

// isJuice tells a juice by its Brix from a fermentable with a name.
func isJuice(text string) bool {
	fruit, _, ok := strings.Cut(text, "juice ")
	return ok && (fruit == "" || fruit == "apple " || fruit == "grape ")
}

const juiceForm = `a juice with its Brix, "apple juice 12 °Bx", "grape juice 22 °Bx" or, of any other fruit, "juice 9 °Bx"`

func juiceOf(field, text string) (material.Material, error) {
	_, brix, _ := strings.Cut(text, "juice ")
	e, err := units.Parse[units.Extract](brix)
	if err != nil {
		return material.Material{}, &RequestError{Field: field, Value: text, Allowed: juiceForm, Err: err}
	}
	m, err := material.Juice(e, units.Share{})
	if err != nil {
		return m, named(field, text, err)
	}
	return m, nil
}

// capacityOK checks a kettle, which may be left out where nothing is boiled.
func (k Kettle) capacityOK() error {
	largest := 2 * mostVolume
	if k.Boil > 0 || !k.Capacity.IsZero() {
		if err := within("kettle.capacity", k.Capacity, units.Litre, leastVolume, largest); err != nil {
			return err
		}
		largest = k.Capacity.In(units.Litre)
	}
	if k.TopUp != nil {
		if err := within("kettle.top_up", *k.TopUp, units.Litre, 0, mostVolume); err != nil {
			return err
		}
	}
	return within("kettle.loss", k.Loss, units.Litre, 0, largest)
}

// alsoOK checks the fermenters beside the first.
func alsoOK(also []AlsoFermenter) error {
	for i, f := range also {
		field := fmt.Sprintf("fermenter.also[%d].", i)
		if err := cmp.Or(
			within(field+"capacity", f.Capacity, units.Litre, leastVolume, 2*mostVolume),
			within(field+"loss", f.Loss, units.Litre, 0, f.Capacity.In(units.Litre)),
		); err != nil {
			return err
		}
	}
	return nil
}

// portionsOK checks the portions of the sugar.
func (k *recipe) portionsOK() error {
	if n := k.req.Portions; n < 0 || n > mostPortions {
		return &RequestError{Field: "sugar_portions", Value: fmt.Sprint(n), Allowed: fmt.Sprintf("2 to %d, or left out", mostPortions)}
	}
	return nil
}

const mostPortions = 6

// warmestOK refuses a warmest temperature after the ferment that is below the ferment's own.
func warmestOK(f Fermenter) error {
	if f.Warmest.Compare(f.Temperature) < 0 {
		return &RequestError{Field: "fermenter.warmest", Value: f.Warmest.Text(units.Celsius, 1), is: quantity(f.Warmest),
			Allowed: "at least the temperature of the ferment, " + f.Temperature.Text(units.Celsius, 1) + ", at which it ends"}
	}
	return nil
}

func (k *recipe) boilOK() error {
	b := k.req.Kettle.Boil
	if time.Duration(b) > mostBoil {
		return &RequestError{Field: "kettle.boil", Value: b.String(), Allowed: fmt.Sprintf("0 to %v", Duration(mostBoil))}
	}
	away, capacity := k.req.Kettle.BoilOff.In(units.LitrePerMinute)*b.minutes(), k.req.Kettle.Capacity.In(units.Litre)
	if b > 0 && away >= capacity {
		return &RequestError{Field: "kettle.boil_off", Value: fmt.Sprintf("%.1f L in the boil", away),
			Allowed: fmt.Sprintf("less than the kettle of %.1f L", capacity)}
	}
	return nil
}

func (k *recipe) flavourOK() error {
	_, err := k.req.Flavour.checked("flavour")
	return err
}

func (k *recipe) waterOK() error {
	switch w := k.req.Water; {
	case w.When == "":
	case w.When == afterBoil && k.req.Kettle.Boil == 0:
		return &RequestError{Field: "water.salts_go", Value: w.When, Allowed: "left out: there is no boil"}
	default:
		if err := oneOf("water.salts_go", w.When, beforeBoil, afterBoil); err != nil {
			return err
		}
	}
	if ph := k.req.Water.PH; !(ph >= 4 && ph <= 11) {
		return &RequestError{Field: "water.pH", Value: trim(ph), Allowed: "4 to 11, as a water report gives it"}
	}
	return nil
}

func (k *recipe) bufferOK() error {
	if b := k.req.Buffer; b != nil && k.unforeseen() != "" {
		return &RequestError{Field: "buffer", Value: b.Salt,
			Allowed: "left out for " + k.fermentable.Name() + ", which brings acids and minerals of its own: dose by a meter"}
	}
	if b := k.req.Buffer; b != nil && !(b.Floor >= leastFloor && b.Floor <= mostFloor) {
		return &RequestError{Field: "buffer.floor_pH", Value: trim(b.Floor), Allowed: "2.5 to 5"}
	}
	return nil
}
