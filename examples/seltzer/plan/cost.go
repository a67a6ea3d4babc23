package plan

import (
	"fmt"
	"slices"

	"example.org/zymase/units"
	"github.com/shopspring/decimal"
)

// cost says what to buy, in whole packs, and what is left over. All of it is decimal:
// nothing is rounded.
func (m *maker) cost(say *notes) (*CostPlan, error) {
	if len(m.req.Prices) == 0 {
		return nil, nil
	}
	c := &CostPlan{Currency: m.req.Currency, Buy: make([]Purchase, 0, len(m.req.Prices))}
	total := decimal.Zero
	for i, p := range m.req.Prices {
		field := func(name string) string { return fmt.Sprintf("prices[%d].%s", i, name) }
		price, err := decimal.NewFromString(p.Price)
		if err != nil || len(p.Price) > 20 || price.IsNegative() || price.GreaterThan(mostPrice) || price.Exponent() < -6 {
			return nil, &RequestError{Field: field("price"), Value: fmt.Sprintf("%q", p.Price), Allowed: `a decimal number such as "1.35", in the currency`}
		}
		if g := p.Pack.Quantity().In(units.Gram); !(g >= leastPack && g <= mostPack) {
			return nil, within(field("pack"), p.Pack.Quantity(), units.Gram, leastPack, mostPack)
		}
		need := decimal.Zero
		for _, w := range say.weighed {
			switch {
			case w.What != p.What:
			case need.IsZero():
				need = grams(w.Mass)
			default:
				need = need.Add(grams(w.Mass))
			}
		}
		if need.IsZero() {
			c.Unused = append(c.Unused, p.What) // this batch takes none
			continue
		}
		pack := grams(p.Pack)
		packs, over := need.QuoRem(pack, 0)
		left := decimal.Zero
		if !over.IsZero() {
			packs, left = packs.Add(one), pack.Sub(over)
		}
		paid := packs.Mul(price)
		buy := Purchase{What: p.What, Pack: p.Pack, Packs: int(packs.IntPart()), Price: paid.StringFixed(2)}
		if buy.Left, err = units.Gram.Exact(left); err != nil {
			return nil, err
		}
		total = total.Add(paid)
		c.Buy = append(c.Buy, buy)
	}
	for _, w := range say.weighed {
		if !m.priced(w.What) && !slices.Contains(c.Unpriced, w.What) {
			c.Unpriced = append(c.Unpriced, w.What)
		}
	}
	c.Total = total.StringFixed(2)
	c.PerLitre = total.DivRound(decimal.NewFromFloat(m.req.Volume.In(units.Litre)), 3).StringFixed(3)
	return c, nil
}

const leastPack, mostPack = 0.1, 1e6 // g

var one, mostPrice = decimal.NewFromInt(1), decimal.NewFromInt(1e9)

func (m *maker) priced(what string) bool {
	for _, p := range m.req.Prices {
		if p.What == what {
			return true
		}
	}
	return false
}

// grams is a mass in grams, exactly: every unit of mass is a short decimal of it.
func grams(x units.ExactMass) decimal.Decimal {
	switch x.Unit() {
	case units.Gram:
		return x.Decimal()
	case units.Kilogram:
		return x.Decimal().Shift(3)
	}
	return x.Decimal().Mul(decimal.NewFromFloat(x.Unit().Of(1).In(units.Gram)))
}
