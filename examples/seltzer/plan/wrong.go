package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Guide goes from something seen, tasted or smelt to the figures of a batch that can explain it.
type Guide struct {
	Seen    string      `json:"seen"`
	Figures []GuideLine `json:"figures"` // what can explain it first
	Rest    []string    `json:"not_from_figures"`
}

// GuideLine is one figure of the batch, and what it says of what was seen.
type GuideLine struct {
	What  string `json:"what"`
	Value string `json:"value"`
	Says  string `json:"says"`
	Can   bool   `json:"can_explain_it"`
}

// A sign is something that a brewer notices, with the figures that bear on it and what no figure
// tells (common practice, no source).
type sign struct {
	name    string
	figures func(*maker, *Guide) error
	rest    []string
}

var signs = []sign{
	{"foam at opening", (*maker).foam, []string{
		"wild yeast or bacteria that ferment what yours leaves: one bottle kept warm that grows harder than the others",
		"specks to foam on: lees, fruit, a scratched or dusty glass; shaking; opened too soon after it was moved",
		"priming stirred in unevenly: one bottle foams and another is flat"}},
	{"haze", (*maker).haze, []string{
		"bacteria or wild yeast: haze that grows in storage, with gas or sourness",
		"pectin, starch or protein of fruit and malt: none of them is in these figures",
		"yeast that settles badly: its strain, and whether it was disturbed"}},
	{"flat", (*maker).flat, []string{
		"a closure or a fitting that leaks: weigh a bottle over some weeks; soap water on a keg",
		"primer left out or stirred in unevenly",
		"yeast killed by heat, sulfite or sorbate after the ferment"}},
	{"sour", (*maker).tastesSour, []string{
		"lactic or acetic bacteria: sourness that grows while the gravity stays; a smell of vinegar comes with air",
		"an acid or a flavouring that was added by taste",
		"carbonic acid: taste it again with its gas stirred out"}},
	{"sulfur", (*maker).sulfur, []string{
		"the strain: some smell of it in every ferment; most of it goes with the gas and with time",
		"a smell that stays after weeks: copper is the trade's test, and a matter for a laboratory and the law",
		"light on hops, and cooked cabbage of malt: neither is in these figures"}},
	{"no start", (*maker).noStart, []string{
		"dead yeast: a spoon of it in warm sugar water shows within an hour whether it lives",
		"a lid that leaks: it ferments, and the airlock shows nothing; read the gravity",
		"sanitiser or sulfite left in the vessel, or yeast pitched into a wash that was still hot"}},
	{"too sweet", (*maker).tooSweet, []string{
		"a hydrometer that reads wrong: check it in water",
		"a sweetener or a flavouring beside those in the request",
		"taste: glycerol, warmth and little gas or acid taste sweeter at the same sugar"}},
}

// Signs are what [Wrong] knows of.
func Signs() []string {
	out := make([]string, len(signs))
	for i, s := range signs {
		out[i] = s.name
	}
	return out
}

// Wrong goes from one of [Signs] to the figures of the batch of a request, by its readings if it
// has any, that can explain it, and says what no figure tells. The error is a [*RequestError].
func Wrong(req Request, seen string) (Guide, error) {
	for _, s := range signs {
		if !strings.EqualFold(s.name, strings.TrimSpace(seen)) {
			continue
		}
		m, err := newMaker(req)
		if err != nil {
			return Guide{}, err
		}
		g := Guide{Seen: s.name, Rest: s.rest}
		if err := s.figures(m, &g); err != nil {
			return Guide{}, placed("request", err)
		}
		var first, then []GuideLine
		for _, l := range g.Figures {
			if l.Can {
				first = append(first, l)
			} else {
				then = append(then, l)
			}
		}
		g.Figures = append(first, then...)
		return g, nil
	}
	return Guide{}, &RequestError{Field: "seen", Value: fmt.Sprintf("%q", seen), Allowed: "one of " + strings.Join(Signs(), ", ")}
}

func (g *Guide) add(can bool, what, value, says string, a ...any) {
	g.Figures = append(g.Figures, GuideLine{what, value, fmt.Sprintf(says, a...), can})
}

// unfermented is the sugar that the last reading leaves, g/L, and whether there is one.
func (m *maker) unfermented() (float64, bool) {
	s := m.plan.State
	if s == nil || len(s.Points) == 0 {
		return 0, false
	}
	return s.Points[len(s.Points)-1].Left.In(units.GramPerLitre), true
}

const gasOfSucrose = 0.51428 // Gay-Lussac's equation with atomic weights CIAAW 2021

func (m *maker) foam(g *Guide) error {
	if m.recipe.base != nil {
		sugar := m.plan.Base.Sugar.In(units.GramPerLitre)
		g.add(sugar > 1, "sugar of the base, by its gravity", fmt.Sprintf("%.1f g/L", sugar), "it counts as fermented in the pack; 0.002 of gravity read too "+
			"low hides about 5 g/L, which make 2.6 g/L of CO2")
		return m.foamOfPacks(g)
	}
	hidden := nearFloor / math.Max(m.plan.Gravity.Original-m.plan.Gravity.Floor, 1e-3) * m.plan.Nutrient.Sugar.In(units.GramPerLitre)
	left, read := m.unfermented()
	if read {
		g.add(left > 1, "sugar left by the last reading", fmt.Sprintf("%.1f g/L", left), "packed so it makes up to %.1f g/L of CO2 more", gasOfSucrose*left)
	} else {
		g.add(true, "gravity at packing", m.ifDone(), "0.002 above it hides %.1f g/L of sugar, which make %.1f g/L of CO2 more: was it "+
			"read, twice, with the gas stirred out?", hidden, gasOfSucrose*hidden)
	}
	return m.foamOfPacks(g)
}

// foamOfPacks is the gas of each kind of pack against what stays in a glass, and its primer.
func (m *maker) foamOfPacks(g *Guide) error {
	for i, p := range m.plan.Packs {
		k := m.batch.packed[i]
		liquid, err := carbonation.NewLiquid(k.drink)
		if err != nil {
			return err
		}
		rest, err := liquid.Content(m.air.Pressure(), p.Temperature)
		if err != nil {
			return err
		}
		warm := units.Celsius.Of(checked.Number(math.Min(p.Temperature.In(units.Celsius)+10, 40)))
		warmer, err := liquid.Content(m.air.Pressure(), warm)
		if err != nil {
			return err
		}
		over, worse := p.Content.In(units.GramCO2PerLitre)/rest.In(units.GramCO2PerLitre), p.Content.In(units.GramCO2PerLitre)/warmer.In(units.GramCO2PerLitre)
		g.add(worse > 4, p.Named()+", content against what stays in an open glass",
			fmt.Sprintf("%.1f times at %.0f °C", over, p.Temperature.In(units.Celsius)), "%.1f times when 10 K warmer: open it colder", worse)
		if b := p.Bottle; b != nil && b.Priming.What != "" {
			more := 0.1 * (p.Content.In(units.GramCO2PerLitre) - b.Dissolved.In(units.GramCO2PerLitre))
			g.add(true, "priming of the "+p.Named(), b.Priming.Mass.String(), "a tenth too much, or bottles a tenth fewer, is %.1f g/L of CO2 more", more)
			most := m.req.Fermenter.Warmest
			cold, err := liquid.Content(m.air.Pressure(), units.Celsius.Of(checked.Number(math.Max(most.In(units.Celsius)-10, 0))))
			if err != nil {
				return err
			}
			counted, err := liquid.Content(m.air.Pressure(), most)
			if err != nil {
				return err
			}
			more = (cold.In(units.GramCO2PerLitre)/counted.In(units.GramCO2PerLitre) - 1) * b.Dissolved.In(units.GramCO2PerLitre)
			g.add(more > 0.3, "gas already dissolved", fmt.Sprintf("%.1f g/L", b.Dissolved.In(units.GramCO2PerLitre)),
				"counted at %.0f °C, the warmest since the ferment; if it was never warmer than 10 K below that, it held %.1f g/L more",
				m.req.Fermenter.Warmest.In(units.Celsius), more)
		}
	}
	return nil
}

func (m *maker) haze(g *Guide) error {
	s := m.poured.state
	const none = -20 // no calcium or no carbonate to speak of
	if index, err := s.CalciteIndex(); err == nil && m.unforeseen() == "" && index > none {
		g.add(index > 0, "calcite's index of the drink", fmt.Sprintf("%.1f", index), "above 0 it could drop chalk; below it none")
	}
	if w := m.plan.Water.Boiled; w != nil && w.Scale.In(units.Gram) > 0 {
		g.add(w.Scale.In(units.Gram) > 1, "chalk of the boil", fmt.Sprintf("up to %.1f g", w.Scale.In(units.Gram)),
			"it falls in the kettle; carried over it is a white haze that settles within days")
	}
	var told []string
	for i, p := range m.recipe.packs {
		f := p.taste
		if f == nil || f.Strength == nil || slices.Contains(told, f.Name) {
			continue
		}
		told = append(told, f.Name)
		oily := f.Strength.In(units.PercentVolume)
		g.add(oily > 20, f.Name, fmt.Sprintf("%.0f %% vol, diluted to %.1f", oily, m.plan.Packs[i].Strength.In(units.PercentVolume)),
			"oils that its alcohol held fall out as a lasting haze: try it in a glass of water at that strength")
	}
	if err := m.tartar(g, s); err != nil {
		return err
	}
	if grown := m.yeastLeft(); grown > 0 {
		g.add(true, "yeast grown, dry", fmt.Sprintf("%.1f g/L", grown),
			"what is not settled or fined is haze; at 4 °C most strains settle within two weeks (common practice, no source)")
	}
	for _, p := range m.plan.Packs {
		if p.Bottle != nil && p.Bottle.Priming.What != "" {
			g.add(true, "primed bottles", fmt.Sprint(p.Count), "yeast works in them, and lies on the bottom: pour off it")
			break
		}
	}
	return nil
}

// tartar is the cream of tartar that a drink of grapes can still drop where it is coldest.
func (m *maker) tartar(g *Guide, s forward.State) error {
	if s.Of(forward.Tartrate) <= 0 {
		return nil
	}
	coldest := m.recipe.packs[0].Temperature
	for _, p := range m.recipe.packs {
		if p.Temperature.Compare(coldest) < 0 {
			coldest = p.Temperature
		}
	}
	u := forward.Usual()
	v, err := s.Volume(at20)
	if err != nil {
		return err
	}
	cold := s
	if coldest.Compare(s.Temperature()) < 0 {
		if cold, _, err = forward.Do(forward.Step{Kind: forward.Chill, Temperature: coldest}, s, &u); err != nil {
			return outside(err)
		}
	}
	_, left, err := forward.Do(forward.Step{Kind: forward.Settle, Share: units.Percent.Of(100)}, cold, &u)
	if err != nil {
		return outside(err)
	}
	falls := left.Sediment.Mass().In(units.Gram) / v.In(units.Litre)
	g.add(falls > 0.1, "cream of tartar that can still fall", fmt.Sprintf("%.1f g/L", falls),
		"crystals at %s, in weeks or months: a rest in the cold before packing takes them out (cold)", coldest.Text(units.Celsius, 0))
	return nil
}

// yeastLeft is the dry yeast that the ferment of a litre grew, g, before it is fined out.
func (m *maker) yeastLeft() float64 {
	for _, l := range m.plan.Balance.Out {
		if strings.HasPrefix(l.What, "yeast grown") {
			return 1000 * kg(l.Mass) / m.batch.base.VolumeAt20().In(units.Litre)
		}
	}
	return 0
}

func (m *maker) flat(g *Guide) error {
	onGas := false
	for i, p := range m.plan.Packs {
		if p.Still {
			g.add(true, p.Named()+", still", fmt.Sprintf("%.1f g/L", p.Content.In(units.GramCO2PerLitre)), "as planned: no gas is added")
			continue
		}
		r, k := m.recipe.packs[i], m.batch.packed[i]
		liquid, err := carbonation.NewLiquid(k.drink)
		if err != nil {
			return err
		}
		want := p.Content.In(units.GramCO2PerLitre)
		if r.Kind == keg {
			total, err := m.air.Absolute(p.Gauge)
			if err != nil {
				return err
			}
			warm := units.Celsius.Of(checked.Number(math.Min(p.Temperature.In(units.Celsius)+5, 40)))
			c, err := liquid.Content(total, warm)
			if err != nil {
				return err
			}
			g.add(c.In(units.GramCO2PerLitre) < 0.9*want, p.One()+" 5 K warmer than set", fmt.Sprintf("%.1f g/L", c.In(units.GramCO2PerLitre)),
				"of the %.1f wanted at %.2f bar gauge: measure the drink, not the room", want, p.Gauge.In(units.BarGauge))
			if !onGas {
				g.add(true, "days on gas", "7 to 14", "at rest, unshaken, before the drink holds what the gauge says")
			}
			onGas = true
			continue
		}
		if b := p.Bottle; b != nil && b.Priming.What != "" {
			g.add(b.Held, "priming of the "+p.Named(), b.Priming.Mass.String(), "of %s for all, %.1f g each; a tenth too little is %.1f g/L less",
				b.Priming.What, b.PerBottle.In(units.Gram), 0.1*(want-b.Dissolved.In(units.GramCO2PerLitre)))
			pitched := "in the base, as it was made"
			if m.recipe.base == nil {
				cells := m.plan.Yeast.Cells / m.batch.wash.VolumeAt20().In(units.Litre) // billion/L is million/mL
				pitched = fmt.Sprintf("%.1f million cells/mL pitched", cells)
			}
			g.add(true, "yeast", pitched,
				"after long chilling or fining about 1 million/mL has to be left: pitch a little fresh yeast with the primer (common practice, no source)")
			g.add(m.req.Fermenter.Temperature.In(units.Celsius) < 15, "warmth to condition in",
				fmt.Sprintf("%.0f °C", m.req.Fermenter.Temperature.In(units.Celsius)), "below about 15 °C two weeks are not enough")
			g.add(b.ServedGauge.In(units.BarGauge) < 0.5, "pressure when served", fmt.Sprintf("%.2f bar gauge", b.ServedGauge.In(units.BarGauge)),
				"a gauge on one bottle that shows less tells of a leak or of too little sugar")
			continue
		}
		f := p.Bottle.Filling
		g.add(true, p.Named()+", filled under counter-pressure", fmt.Sprintf("%.1f g/L", f.Content.In(units.GramCO2PerLitre)),
			"in the keg, at %.2f bar gauge and %.0f °C; what foams out in filling is lost: drink and bottle as cold as each other, closed on the foam",
			f.Gauge.In(units.BarGauge), f.Temperature.In(units.Celsius))
	}
	return nil
}

func (m *maker) tastesSour(g *Guide) error {
	a := m.plan.Acidity
	if n := len(a.Points); n > 0 {
		p := a.Points[n-1]
		g.add(p.PH < 3.4, "pH at the end, as planned", fmt.Sprintf("%.2f", p.PH), "likely %.2f to %.2f; below %.2f the acids are not this yeast's",
			p.Low, p.High, p.Low)
		if a.EndUnbuffered > 0 {
			g.add(a.EndUnbuffered < 3.4, "pH without the buffer", fmt.Sprintf("%.2f", a.EndUnbuffered), "was it weighed, and stirred in? %s of %s",
				a.Buffer.Mass, a.Buffer.What)
		}
	} else {
		why := a.Unforeseen
		if b := m.req.made(); b != nil {
			if why = "that of the base was not given (at_hand.base.pH)"; b.PH != nil {
				why = fmt.Sprintf("the base has %.2f", *b.PH)
			}
		}
		g.add(false, "pH", "not foreseen", "%s", why)
	}
	if p := m.plan.After; p != nil && len(p.Points) > 1 {
		last := p.Points[len(p.Points)-1]
		g.add(last.PH < 3.4, "pH of the drink, "+last.After, fmt.Sprintf("%.2f", last.PH), "titratable acidity %.1f g/L as %s; many taste sour from 7 on (common "+
			"practice, no source)", last.Acidity.In(units.GramPerLitre), p.As)
	}
	if i := m.lastPH(); i >= 0 {
		ph, low := *m.req.Readings[i].PH, 0.0
		if n := len(a.Points); n > 0 {
			low = a.Points[n-1].Low
		}
		g.add(ph < low || low == 0 && ph < sourBelow, "pH, as last read", fmt.Sprintf("%.2f", ph),
			"lower than the plan's range is an acid that the plan does not know: bacteria, or one that was added")
	}
	if acids := m.plan.Label.Acids.In(units.GramPerLitre); acids >= 0.05 { // in beer they count in the real extract
		what, says := "acids that yeast makes", "as planned: succinic above all; a taste begins near 0.2 g/L (recalled from memory)"
		switch {
		case m.brings.some:
			what, says = "organic acids of the drink", "as planned: those of the fruit, the honey or the malt with the yeast's own"
		case m.plan.Acid != nil || m.recipe.base != nil:
			what, says = "organic acids of the drink", "as planned: the yeast's own, and what was added"
		}
		g.add(false, what, fmt.Sprintf("%.1f g/L", acids), "%s", says)
	}
	for _, p := range m.plan.Packs {
		if c := p.Content.In(units.GramCO2PerLitre); c > 3 {
			g.add(true, p.Named()+", CO2", fmt.Sprintf("%.1f g/L", c), "carbonic acid: part of the sourness, and it leaves with the gas")
			break
		}
	}
	return nil
}

func (m *maker) sulfur(g *Guide) error {
	n := m.plan.Nutrient
	if m.recipe.base != nil {
		g.add(false, "ferment", "none here", "the base brought it: a lack of nitrogen or of vitamins in its ferment is the usual cause, and none of it is known here")
		return nil
	}
	if m.unforeseen() == "" {
		brought, low := n.Brought.Plus(n.FromMust).In(units.MilligramPerLitre), n.Low.In(units.MilligramPerLitre)
		g.add(brought < low, "nitrogen brought", fmt.Sprintf("%.0f mg/L", brought),
			"strains of low demand want %.0f, of this one %.0f; short of it yeast makes hydrogen sulfide", low, n.Need.In(units.MilligramPerLitre))
	}
	for _, o := range n.Others {
		if vitamin := strings.Contains(o.Name, "thiamine") || strings.Contains(o.Name, "vitamin"); vitamin && (o.Short || o.Unsure) {
			g.add(o.Short, o.Name+" brought", fmt.Sprintf("%.3g mg/L", o.Brought.In(units.MilligramPerLitre)),
				"%.3g wanted; a lack of vitamins does the same as one of nitrogen", o.Need.In(units.MilligramPerLitre))
		}
	}
	sulfate := m.plan.Water.After.Sulfate.In(units.MilligramPerLitre)
	g.add(false, "sulfate of the water", fmt.Sprintf("%.0f mg/L", sulfate), "yeast takes what it needs from 20 on: more is no cause (common practice, no source)")
	if p := m.plan.After; p != nil && p.Sulfite != nil {
		g.add(false, "molecular SO2", fmt.Sprintf("%.1f mg/L", p.Sulfite.Molecular.In(units.MilligramPerLitre)),
			"as planned; a sharp smell, of a match, is noticed from about 2 on (common practice, no source) and is none of hydrogen sulfide")
	}
	t := m.vesselIs().In(units.Celsius)
	g.add(t < 14, "temperature", fmt.Sprintf("%.0f °C", t), "cold ferments drive less of it out: a few days at the end some kelvin warmer help")
	return nil
}

// vesselIs is the temperature of the ferment as it was read last, else as planned.
func (m *maker) vesselIs() units.Temperature {
	for _, r := range slices.Backward(m.req.Readings) {
		if r.Vessel != nil {
			return *r.Vessel
		}
	}
	return m.req.Fermenter.Temperature
}

func (m *maker) noStart(g *Guide) error {
	if m.recipe.base != nil {
		g.add(false, "ferment", "none here", "the base is made: only a primer ferments, in its pack; see flat")
		return nil
	}
	if f, err := m.byPlan(); err == nil {
		t, err := f.fit.When(units.Percent.Of(begunAt))
		if err == nil {
			g.add(true, "time until a hydrometer shows it", inHours(t.Median), "usual; no fault until %s", inHours(t.High90))
		}
	}
	y, wash := m.plan.Yeast, m.batch.wash
	cells := y.Cells / wash.VolumeAt20().In(units.Litre) // billion/L is million/mL
	g.add(true, "live cells pitched, by the label", fmt.Sprintf("%.1f million/mL", cells),
		"were they alive? With a tenth of them a start takes a day or two longer")
	if age := m.req.Yeast.Age; age != nil {
		g.add(time.Duration(*age) > 180*day, "age of the yeast", age.String(), "more than half a year asks for a trial in sugar water")
	}
	t := m.vesselIs().In(units.Celsius)
	g.add(t < 12, "temperature", fmt.Sprintf("%.0f °C", t), "each 9 K colder is half as fast; below 10 °C many strains sleep")
	if i := m.lastPH(); i >= 0 {
		ph := *m.req.Readings[i].PH
		g.add(ph < 3 || ph > 8, "pH, as last read", fmt.Sprintf("%.2f", ph), "outside 3 to 8 it can hinder the start")
	} else if a := m.plan.Acidity; len(a.Points) > 0 {
		ph := a.Points[0].PH
		g.add(ph < 3 || ph > 8, "pH of the wash", fmt.Sprintf("%.2f", ph), "outside 3 to 8 it can hinder the start; well-fed yeast brings a high one down by itself")
	}
	c, err := m.washed()
	if err != nil {
		return err
	}
	load, err := c.OsmoticLoad()
	if err != nil {
		return err
	}
	g.add(load > 1.5, "osmotic load", fmt.Sprintf("%.2f mol/kg", load), "yeast suffers from about 2 on (common practice, no source): feed the sugar in portions")
	if m.unforeseen() == "" {
		n := m.plan.Nutrient.Brought.Plus(m.plan.Nutrient.FromMust).In(units.MilligramPerLitre)
		g.add(n < 60, "nitrogen brought", fmt.Sprintf("%.0f mg/L", n),
			"a lack slows it later rather than at the start")
	}
	return nil
}

// washed is the batch as pitched.
func (m *maker) washed() (forward.State, error) {
	steps, err := m.untilNow(0)
	if err != nil {
		return forward.State{}, err
	}
	c := carried{unknowns: forward.Usual()}
	if c.state, err = m.tap(m.inKettle()); err != nil {
		return forward.State{}, err
	}
	for _, st := range steps {
		if _, err := c.do(st); err != nil {
			return forward.State{}, err
		}
	}
	return c.state, nil
}

func inHours(t time.Duration) string { return fmt.Sprintf("%.0f h", t.Hours()) }

func (m *maker) tooSweet(g *Guide) error {
	if m.recipe.base != nil {
		sugar := m.plan.Base.Sugar.In(units.GramPerLitre)
		g.add(sugar > 4, "sugar of the base, by its gravity", fmt.Sprintf("%.1f g/L", sugar), "a taste begins near 4 g/L (recalled from memory)")
	} else if left, read := m.unfermented(); read {
		g.add(left > 4, "sugar left by the last reading", fmt.Sprintf("%.1f g/L", left),
			"a taste begins near 4 g/L (recalled from memory); it can still ferment: do not pack it so")
	} else {
		sugar := m.plan.Nutrient.Sugar.In(units.GramPerLitre)
		g.add(true, "gravity now", m.ifDone(), "each 0.001 above it is %.1f g/L of sugar: read it",
			0.001*sugar/math.Max(m.plan.Gravity.Original-m.plan.Gravity.Floor, 1e-3))
	}
	if err := m.sweetAsPlanned(g); err != nil || m.recipe.base != nil {
		return err
	}
	if f := m.plan.Forecast; f != nil {
		g.add(f.Stops.In(units.Percent) > 30, "chance that it stops", f.Stops.Text(units.Percent, 0), "for good above gravity %.4f, as foreseen", f.StopsAbove)
	}
	if a := m.plan.Acidity; len(a.Points) > 0 {
		ph := a.Points[len(a.Points)-1].PH
		g.add(ph > 4, "pH at the end, as planned", fmt.Sprintf("%.2f", ph), "little acid makes the same sugar taste sweeter")
	}
	return nil
}

// sweetAsPlanned is what of the drink tastes sweet by the plan.
func (m *maker) sweetAsPlanned(g *Guide) error {
	base := m.batch.base
	rest := 1000 * kg(base.Fermentable()) / base.VolumeAt20().In(units.Litre)
	if m.recipe.base == nil {
		g.add(rest > 4, "sugar that this yeast leaves, as planned", fmt.Sprintf("%.1f g/L", rest), "by the attenuation of the request, %s",
			m.attenuation().Text(units.Percent, 0))
	}
	sugars := m.plan.Label.Sugars.In(units.GramPerLitre)
	g.add(sugars > 4, "sugars of the packed drink", fmt.Sprintf("%.1f g/L", sugars), "with the flavouring's own; where yeast is alive it ferments")
	for i, p := range m.plan.Packs {
		if p.Sweetener == nil {
			continue
		}
		litres := m.recipe.packs[i].Volume.In(units.Litre)
		g.add(true, p.Sweetener.What+" of the "+p.Named(), fmt.Sprintf("%.1f g/L", p.Sweetener.Mass.Quantity().In(units.Gram)/litres),
			"as sweet as %.1f g/L of sugar, as asked for", m.recipe.packs[i].Sweeten.Like.In(units.GramPerLitre))
	}
	glycerol := 1000 * kg(base.ExtractOf(gravity.AsGlycerol)) / base.VolumeAt20().In(units.Litre)
	g.add(false, "polyols of the ferment", fmt.Sprintf("%.1f g/L", glycerol),
		"glycerol: a taste begins near 5 g/L (recalled from memory)")
	return nil
}

// ifDone is the gravity of the batch when the yeast is done.
func (m *maker) ifDone() string {
	_, is := m.req.EndName()
	return fmt.Sprintf("%.4f if %s", m.plan.Gravity.Floor, is)
}
