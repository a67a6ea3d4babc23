package plan

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// brings is which need a source without nitrogen meets, and what a gram of it brings.
func brings(s material.Material) (need string, perGram float64, err error) {
	one, err := nutrient.SupplyOf(litres(1), material.Dose{Material: s, Mass: units.Gram.Of(1)})
	for _, of := range []struct {
		need string
		c    units.MassConcentration
	}{{"zinc", one.Zinc}, {"magnesium", one.Magnesium}, {"thiamine", one.Thiamine}, {"potassium", one.Potassium}, {"phosphorus", one.Phosphorus}} {
		if g := of.c.In(units.GramPerLitre); g > perGram {
			need, perGram = of.need, g
		}
	}
	return need, perGram, err
}

// fineStep is how finely what is far below the scale is told: it is weighed as a solution.
const fineStep = "0.001" // g

// supplement doses the sources that bring no nitrogen: what is short of zinc, magnesium and
// thiamine, within the limit of the law, all of it with the yeast.
func (m *maker) supplement(p *NutrientPlan, sources []material.Material, j law.Jurisdiction, say *notes) error {
	if len(sources) == 0 || m.unforeseen() != "" {
		return nil
	}
	cold := m.batch.wash.VolumeAt20().In(units.Litre)
	for _, s := range sources {
		f, err := m.ferment(p.fed)
		if err != nil {
			return err
		}
		needs, err := f.OtherNeeds()
		if err != nil {
			return err
		}
		name, per, err := brings(s)
		if err != nil {
			return err
		}
		short := 0.0 // mg/L
		for _, n := range needs {
			if n.Name == name && n.Have.Compare(n.Need.Value) < 0 { // of yeast matter it is not known
				short = n.Need.Value.Minus(n.Have).In(units.MilligramPerLitre)
			}
		}
		if short == 0 || per == 0 {
			say.caution(fmt.Sprintf("No %s is weighed: of what it brings there is enough.", s.Name()))
			continue
		}
		dose, way := short/per, units.Up // mg/L; up, as it would be short again
		if law.SubstanceOf(s) != law.Unlisted {
			limits, err := j.Limits(law.SubstanceOf(s), law.Wine)
			if err != nil {
				return err
			}
			for _, l := range limits {
				if most := l.Weighed().In(units.MilligramPerLitre); dose > most {
					dose, way = most, units.Down
				}
				p.Limits = append(p.Limits, l.String())
			}
		}
		asked := units.Milligram.Of(checked.Number(dose * cold))
		step := m.req.Scales.Small
		stock := asked.Compare(units.Gram.Of(checked.Number(10*step.Quantity().In(units.Gram)))) < 0
		if stock {
			if step, err = units.Gram.Exact(decimal.RequireFromString(fineStep)); err != nil {
				return err
			}
		}
		mass, err := asked.Round(step, way)
		if err != nil {
			return err
		}
		if mg := mass.Quantity().In(units.Milligram); stock {
			say.caution(fmt.Sprintf("%s, %.0f mg, is too little for the scale: dissolve 1.00 g in 1 L of water, weighed as well as it can be, and take %.0f mL.",
				s.Name(), mg, mg))
		}
		p.fed = append(p.fed, material.Dose{Material: s, Mass: mass.Quantity()})
		w := Weight{What: s.Name(), For: "fermenter, with the yeast", Mass: mass, Asked: asked}
		p.Supplements = append(p.Supplements, w)
		say.weigh(w)
	}
	return nil
}

// otherNeeds is the balance of what yeast needs beside nitrogen, with the buffer.
func (m *maker) otherNeeds(say *notes) (all []OtherNeed, err error) {
	if m.unforeseen() != "" {
		return nil, nil
	}
	needs, err := m.course.OtherNeeds()
	if err != nil {
		return nil, err
	}
	var short []string
	for _, n := range needs {
		if m.hasVitamins() && (n.Name == "thiamine" || n.Name == "other vitamins") {
			continue // juice and malt bring them; how much is not known
		}
		o := OtherNeed{Name: n.Name, Need: n.Need.Value, Low: n.Need.Low, High: n.Need.High, Brought: n.Have, Short: n.Short(),
			Unsure: n.Unsure, Brings: n.Remedy, Source: n.Need.Evidence.String()}
		all = append(all, o)
		if o.Short && n.Name != "potassium" { // which has a caution of its own, by what it does
			short = append(short, n.Name+" ("+n.Remedy+")")
		}
	}
	if len(short) > 0 {
		whose := "Sugar brings no minerals and no vitamins."
		if m.brings.some {
			whose = "What minerals " + m.fermentable.Name() + " brings is what is usual of it."
		}
		say.caution(whose + " By these figures the yeast is short of " + strings.Join(short, "; ") + ", and can ferment slowly or stop with sugar left.")
	}
	return all, nil
}
