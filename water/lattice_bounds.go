package water

import "math"

// open reports whether ranges and limits leave room below level i.
func (l *lattice) open(i int) bool {
	n := l.n
	if l.ranged != nil {
		var sum float64 // what is off whatever the levels below are
		for r := range l.have {
			v := l.have[r]
			for j := i; j < n; j++ {
				v += l.gain[r*n+j] * l.x[j]
			}
			d := max(0, v-l.width[r]) + min(0, v+l.rest[r*(n+1)+i])
			sum += d * d
		}
		if sum > l.value+l.slack {
			return false
		}
	}
	for c, b := range l.bound {
		v := l.restLimit[c*(n+1)+i]
		for j := i; j < n; j++ {
			v += l.limits[c*n+j] * l.x[j]
		}
		if v > b+leafSlack {
			return false
		}
	}
	return true
}

// simpler reports whether a partial choice that can only tie with the best known may
// still need fewer salts, or as many and less mass.
func (l *lattice) simpler(i int, cost float64) bool {
	if !l.found || cost < l.value-l.slack {
		return true // it may be nearer
	}
	count, mass := l.taken(l.x[i:])
	// What a target still lacks needs so many steps of the salt that brings most.
	var more float64
	n := l.n
	radius := math.Sqrt(l.value)
	for r := range l.have {
		v := l.have[r] + radius
		for j := i; j < n; j++ {
			v += l.gain[r*n+j] * l.x[j]
		}
		if l.richest[r*(n+1)+i] > 0 {
			more = max(more, math.Ceil(-v/l.richest[r*(n+1)+i]-stepSlack))
		}
	}
	if more > 0 {
		count++
	}
	return count < l.count || count == l.count && mass+more < l.mass
}

// taken counts the salts of a choice and its steps.
func (l *lattice) taken(x []float64) (count int, steps float64) {
	for _, v := range x {
		if v > 0 {
			count++
			steps += v
		}
	}
	return count, steps
}

// leaf weighs a full choice.
func (l *lattice) leaf() {
	n := l.n
	var value float64
	for r := range l.have {
		v := l.have[r]
		for j := range n {
			v += l.gain[r*n+j] * l.x[j]
		}
		value += l.off(r, v)
	}
	for c, b := range l.bound {
		var v float64
		for j := range n {
			v += l.limits[c*n+j] * l.x[j]
		}
		if v > b+leafSlack {
			return
		}
	}
	count, mass := l.taken(l.x)
	tie := l.found && math.Abs(value-l.value) <= alike(l.value)
	if tie && (count > l.count || count == l.count && mass >= l.mass) || !tie && value >= l.value {
		return
	}
	l.found, l.value, l.count, l.mass = true, value, count, mass
	for i, j := range l.order {
		l.best[j] = int(l.x[i])
	}
}
