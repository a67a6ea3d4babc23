package water

import "math"

// line prepares for the last level: how each salt, limit and target moves along it.
func (r *reduced) line() {
	l := r.l
	r.move, r.tilt, r.turn = make([]float64, l.n), make([]float64, len(l.bound)), make([]float64, len(l.have))
	for k, i := range r.col {
		r.move[i] = r.u[0][k]
	}
	for c := range l.bound {
		r.tilt[c] = dot(l.limits[c*l.n:c*l.n+l.n], r.move)
	}
	for t := range l.have {
		r.turn[t] = dot(l.gain[t*l.n:t*l.n+l.n], r.move)
	}
	r.value = make([]float64, len(l.have))
}

// walk chooses level i of the reduced basis, nearest first.
func (r *reduced) walk(i int, near, far float64) {
	n := r.n
	if i == 0 {
		r.leaf()
		return
	}
	middle, other := r.near.middle(i, n, r.y), r.far.middle(i, n, r.y)
	d, od := r.near.mu[i*n+i], r.far.mu[i*n+i]
	x := math.Round(middle)
	step := math.Copysign(1, middle-x)
	for k := 1.0; ; k++ {
		if r.l.nodes++; r.l.nodes >= r.most {
			return
		}
		v, w := d*(x-middle), od*(x-other)
		c, o := near+v*v, far+w*w
		if c > r.beat+1+1e-9 {
			return // the others are further off
		}
		if o <= r.beat+r.light*r.light+1e-9 {
			r.y[i] = x
			r.walk(i-1, c, o)
			if r.again {
				return
			}
		}
		x += step * k
		step = -step
	}
}

// leaf finds the best whole number for the last level: what is off is convex along it.
func (r *reduced) leaf() {
	l := r.l
	copy(l.x, r.low)
	for k, i := range r.col {
		l.x[i] = 0
		for j := 1; j < r.n; j++ {
			l.x[i] += r.u[j][k] * r.y[j]
		}
	}
	down, up := -inf, inf
	for _, i := range r.col {
		down, up = within(r.move[i], r.low[i]-l.x[i], r.high[i]-l.x[i], down, up)
	}
	for c, b := range l.bound {
		down, up = within(r.tilt[c], -inf, b+leafSlack-dot(l.limits[c*l.n:c*l.n+l.n], l.x), down, up)
	}
	down, up = math.Ceil(down-stepSlack), wholeSteps(up)
	if !(down <= up) {
		return
	}
	for t := range l.have {
		r.value[t] = l.have[t] + dot(l.gain[t*l.n:t*l.n+l.n], l.x)
	}
	for up-down > 1 {
		at := math.Floor((down + up) / 2)
		var rise float64
		for t, g := range r.turn {
			v := r.value[t] + g*at
			rise += g * (max(0, v-l.width[t]) + min(0, v))
		}
		if rise > 0 {
			up = at
		} else {
			down = at
		}
	}
	for _, i := range r.col {
		l.x[i] += r.move[i] * down
	}
	l.leaf()
	if up > down {
		for _, i := range r.col {
			l.x[i] += r.move[i]
		}
		l.leaf()
	}
	r.beat = min(1, l.improve()/r.left)
	r.again = r.beat <= 0.5
}

// within narrows down and up so that a·t lies between least and most.
func within(a, least, most, down, up float64) (float64, float64) {
	switch {
	case a > 0:
		return max(down, least/a), min(up, most/a)
	case a < 0:
		return max(down, most/a), min(up, least/a)
	case least > stepSlack || most < -stepSlack:
		return inf, -inf
	}
	return down, up
}
