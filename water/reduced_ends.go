package water

import (
	"math"

	"example.org/zymase/units"
)

// ends are the least and the most steps of each level that a nearer recipe can have.
func (r *reduced) ends(left float64) bool {
	l := r.l
	n, root, off := l.n, math.Sqrt(left), math.Sqrt(l.floor+left)
	r.low, r.high = make([]float64, n), append([]float64(nil), l.most...)
	for i := range n {
		if l.slope[i] > 0 {
			r.high[i] = min(r.high[i], wholeSteps(left/l.slope[i]))
		}
		if l.stock[i] > 0 {
			r.low[i] = max(0, math.Ceil(l.s.salts[l.order[i]].Most.In(units.Gram)/l.grams-left/l.stock[i]-stepSlack))
		}
		if r.low[i] > r.high[i] {
			return false
		}
	}
	r.spare()
	for range 4 {
		for t := range l.have {
			least, most := -off-l.have[t], off+l.width[t]-l.have[t]
			if l.width[t] == 0 {
				at := 0.0
				for i := range n {
					at += l.gain[t*n+i] * l.at[i]
				}
				least, most = max(least, at-root), min(most, at+root)
			}
			if !r.between(l.gain[t*n:t*n+n], least, most) {
				return false
			}
		}
		for c, b := range l.bound {
			if !r.between(l.limits[c*n:c*n+n], r.least(c, left), b+leafSlack) {
				return false
			}
		}
	}
	return true
}

// spare lowers the salts that no target counts: they are of use for limits alone, up
// to what keeps those whatever the others are.
func (r *reduced) spare() {
	l := r.l
	n := l.n
next:
	for i := range n {
		for t := range l.have {
			if l.gain[t*n+i] != 0 {
				continue next
			}
		}
		var need float64
		for c, b := range l.bound {
			row := l.limits[c*n : c*n+n]
			if row[i] >= 0 {
				continue
			}
			for j, a := range row {
				if j != i {
					b -= max(a*r.low[j], a*r.high[j])
				}
			}
			need = max(need, math.Ceil(b/row[i]))
		}
		r.high[i] = max(r.low[i], min(r.high[i], need))
	}
}

// least is the lowest that a limit's row can be: a limit that holds the optimum back
// costs what is left free of it.
func (r *reduced) least(c int, left float64) float64 {
	if y := r.l.price[c]; y > 0 {
		return r.l.bound[c] - left/y
	}
	return -inf
}

// between narrows the ends so that the row can lie between least and most.
func (r *reduced) between(row []float64, least, most float64) bool {
	var down, up float64
	for i, a := range row {
		down += min(a*r.low[i], a*r.high[i])
		up += max(a*r.low[i], a*r.high[i])
	}
	slack := stepSlack * (1 + math.Abs(up) + math.Abs(down))
	if down > most+slack || up < least-slack {
		return false
	}
	for i, a := range row {
		if a == 0 {
			continue
		}
		// What the others leave to this one.
		over := most - down + min(a*r.low[i], a*r.high[i])
		under := least - up + max(a*r.low[i], a*r.high[i])
		if a > 0 {
			r.high[i], r.low[i] = min(r.high[i], wholeSteps(over/a)), max(r.low[i], math.Ceil(under/a-stepSlack))
		} else {
			r.low[i], r.high[i] = max(r.low[i], math.Ceil(over/a-stepSlack)), min(r.high[i], wholeSteps(under/a))
		}
		if r.low[i] > r.high[i] {
			return false
		}
	}
	return true
}
