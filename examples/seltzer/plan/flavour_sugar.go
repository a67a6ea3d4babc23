package plan

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// tooSweet is a flavouring whose sugar alone makes more gas than a bottle may have.
type tooSweet struct {
	past string // what it takes the bottles past
	now  string // what this much of it brings
}

func (e *tooSweet) Error() string {
	return "its sugar alone takes " + e.past + "; this much brings " + e.now
}

// tooMuch is what a content may be passed by before it counts, in g/L.
const tooMuch = 0.005

// bottled refuses bottles that have more gas than they shall without any primer: from the
// ferment, or from the sugar of the flavouring; and those that it takes over their rating.
func (r *recipe) bottled(b batch) error {
	for i, p := range r.packs {
		if p.Kind == keg {
			continue
		}
		k := b.packed[i]
		dissolved, err := r.dissolved(b, p, k)
		if err != nil {
			return err
		}
		if p.excess > tooMuch {
			return r.tooMuchGas(p, k, dissolved)
		}
		if r.flavourSugar(p, k) == 0 {
			continue
		}
		k.primer = 0
		sweet, err := r.highestOf(p, k, dissolved)
		if err != nil {
			return err
		}
		k.flavour = 0
		plain, err := r.highestOf(p, k, dissolved)
		if err != nil {
			return err
		}
		if over(sweet.Verdict) && !over(plain.Verdict) {
			return p.tooSweet(fmt.Sprintf("the bottles of packs[%d] over their rating, %s, at %s", i, p.Rating.Text(units.BarGauge, 1),
				sweet.Temperature.Text(units.Celsius, 0)), atLeast(sweet))
		}
	}
	return nil
}

// highestOf is the highest state of a bottle as it is filled.
func (r *recipe) highestOf(p packRecipe, k packed, dissolved units.CarbonDioxideContent) (HighestPlan, error) {
	closed, err := r.close(p, k, dissolved, true)
	if err != nil {
		return HighestPlan{}, err
	}
	return r.highest(p, closed)
}

// tooMuchGas says where the gas comes from that a bottle has beyond its content.
func (r *recipe) tooMuchGas(p packRecipe, k packed, dissolved units.CarbonDioxideContent) error {
	plain := k
	plain.primer, plain.flavour = 0, 0
	closed, err := r.close(p, plain, dissolved, false)
	if err != nil {
		return err
	}
	served, err := closed.At(p.Temperature)
	if err != nil {
		return err
	}
	least, from := vol(served.Content), "the ferment leaves"
	all := vol(p.target) // with the flavouring
	if !math.IsInf(p.excess, 1) {
		all = vol(p.target.Plus(units.GramCO2PerLitre.Of(checked.Number(p.excess))))
	}
	if r.flavourSugar(p, k) > 0 && all > least && all < mostContent-0.01 {
		least, from = all, "the ferment and the flavouring leave"
	}
	switch {
	case served.AtLeast:
		return p.full("at "+p.Temperature.Text(units.Celsius, 0), nil)
	case served.Content.Compare(p.target) > 0:
		least = math.Ceil(100*least) / 100
		return &RequestError{Field: p.field + ".co2", Value: p.Content.String(),
			Allowed: fmt.Sprintf(`at least %.2f vol, which %s in the bottle; or "still"`, least, from),
			Err:     &units.RangeError{Func: "plan.Make", Quantity: "content", Value: vol(p.target), Unit: "vol", Min: least, Max: mostContent, Source: "the ferment"}}
	}
	now := "far more"
	if !math.IsInf(p.excess, 1) {
		now = fmt.Sprintf("%.2f vol", all)
	}
	return p.tooSweet(fmt.Sprintf("the bottles of %s past their %s", p.field, p.Content), now)
}

func vol(c units.CarbonDioxideContent) float64 {
	return carbonation.RealVolume.Volumes(c).In(units.VolumesCO2)
}

// tooSweet refuses a flavouring; mostFlavour adds how much of it may be.
func (p *packRecipe) tooSweet(past, now string) error {
	f, e := p.taste, &tooSweet{past, now}
	return &RequestError{Field: p.tasteField + ".added", Allowed: "less: " + e.Error(), Err: e,
		Value: millilitres(f.Added.In(units.Millilitre), 4) + " in " + millilitres(f.Sample.In(units.Millilitre), 4)}
}

// mostFlavour adds to the refusal of a flavouring that is too sweet how much of it may be:
// the most that can be planned, to three digits.
func mostFlavour(req Request, refused *RequestError) error {
	at := flavourAt(&req, refused.Field)
	f, whole := **at, (*at).Added.In(units.Millilitre)
	e, _ := errors.AsType[*tooSweet](refused)
	can := func(added float64) bool {
		f.Added = units.Millilitre.Of(checked.Number(added))
		*at = &f
		_, _, _, err := solved(req)
		sweet, no := errors.AsType[*tooSweet](err)
		if of, ok := errors.AsType[*RequestError](err); no && ok && of.Field == refused.Field {
			e = &tooSweet{sweet.past, e.now} // what a little more than the most runs into
			return false
		}
		return true // what else there is to mend, another flavouring too, is told next
	}
	lo, hi := 0.0, whole
	for range 14 { // to a ten-thousandth
		if mid := (lo + hi) / 2; can(mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	if lo > 0 {
		step := math.Pow(10, math.Floor(math.Log10(lo))-2)
		lo = math.Floor(lo/step) * step
	}
	if lo < whole/100 || !can(lo) {
		refused.Allowed = "none of it, or one without sugar: " + e.Error()
		return refused
	}
	refused.Allowed = "at most " + millilitres(lo, 3) + ": " + e.Error()
	refused.Err = errors.Join(e, &units.RangeError{Func: "plan.Make", Quantity: "flavouring", Value: whole, Unit: "mL", Max: lo,
		Source: "its sugar ferments in the bottle"})
	return refused
}

// flavourAt is the flavouring of a field "flavour.added", or of "packs[1].flavour.added"; the packs are then
// the request's own.
func flavourAt(req *Request, field string) **Flavour {
	if i := packAt(field); i >= 0 {
		req.Packs = slices.Clone(req.Packs)
		return &req.Packs[i].Flavour
	}
	return &req.Flavour
}

// packAt is the pack whose field it is, −1 if it is none's.
func packAt(field string) int {
	number, _, ofPack := strings.Cut(strings.TrimPrefix(field, "packs["), "].")
	i, err := strconv.Atoi(number)
	if !ofPack || err != nil {
		return -1
	}
	return i
}

// millilitres is a volume to so many digits, without an exponent.
func millilitres(x float64, digits int) string {
	decimals := max(0, digits-1-int(math.Floor(math.Log10(x))))
	text := strconv.FormatFloat(x, 'f', decimals, 64)
	if decimals > 0 {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text + " mL"
}
