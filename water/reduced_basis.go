package water

import "math"

// build writes the ellipsoid as columns of the salts that can vary.
func (r *reduced) build(left float64) {
	l := r.l
	n, root, off := l.n, math.Sqrt(left), math.Sqrt(l.floor+left)
	r.col = r.col[:0]
	for i := range n {
		if r.high[i] > r.low[i] {
			r.col = append(r.col, i)
		}
	}
	r.n = len(r.col)
	type line struct {
		row []float64
		aim float64
	}
	var points, spans []line
	span := func(row []float64, least, most float64) {
		var down, up float64
		for i, a := range row {
			down += min(a*r.low[i], a*r.high[i])
			up += max(a*r.low[i], a*r.high[i])
		}
		if down >= least && up <= most {
			return // the salts' own ends keep it
		}
		least, most = max(least, down), min(most, up)
		if half := (most - least) / 2; half > 0 {
			scaled := make([]float64, n)
			for i, a := range row {
				scaled[i] = a / half
			}
			spans = append(spans, line{scaled, (least + most) / 2 / half})
		}
	}
	for t := range l.have {
		row, at := l.gain[t*n:t*n+n], 0.0
		for i, a := range row {
			at += a * l.at[i]
		}
		v := l.have[t] + at
		if l.width[t] == 0 || math.Sqrt(l.off(t, v)) >= root {
			scaled := make([]float64, n)
			for i, a := range row {
				scaled[i] = a / root
			}
			points = append(points, line{scaled, at / root})
		} else {
			span(row, -off-l.have[t], off+l.width[t]-l.have[t])
		}
	}
	for c, b := range l.bound {
		span(l.limits[c*n:c*n+n], r.least(c, left), b+leafSlack)
	}
	for _, i := range r.col {
		row := make([]float64, n)
		half := (r.high[i] - r.low[i]) / 2
		row[i] = 1 / half
		spans = append(spans, line{row, (r.high[i] + r.low[i]) / 2 / half})
	}
	m := math.Sqrt(float64(len(spans)))
	for k := range spans {
		for i := range spans[k].row {
			spans[k].row[i] /= m
		}
		spans[k].aim /= m
	}
	all := append(points, spans...)
	r.rows, r.points = len(all), len(points)
	r.aim = make([]float64, r.rows)
	r.b, r.u = make([][]float64, r.n), make([][]float64, r.n)
	for k, i := range r.col {
		r.b[k], r.u[k] = make([]float64, r.rows), make([]float64, r.n)
		r.u[k][k] = 1
		for p := range all {
			r.b[k][p] = all[p].row[i]
		}
	}
	for p := range all {
		r.aim[p] = all[p].aim
		for i := range n { // those that cannot vary
			if r.high[i] == r.low[i] {
				r.aim[p] -= all[p].row[i] * r.low[i]
			}
		}
	}
}

// triangle makes q and mu of the columns from the k-th on.
func (r *reduced) triangle(from int) {
	for i := from; i < r.n; i++ {
		copy(r.q[i], r.b[i])
		for j := range i {
			r.mu[j*r.n+i] = 0
		}
		for range 2 { // twice is enough
			for j := range i {
				v := dot(r.q[j], r.q[i])
				r.mu[j*r.n+i] += v
				for p := range r.rows {
					r.q[i][p] -= v * r.q[j][p]
				}
			}
		}
		d := math.Sqrt(dot(r.q[i], r.q[i]))
		r.mu[i*r.n+i] = d
		for p := range r.rows {
			r.q[i][p] /= d
		}
	}
}

func dot(a, b []float64) float64 {
	var sum float64
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}

// reduce makes the columns short and nearly square to one another.
func (r *reduced) reduce() {
	n := r.n
	r.q, r.mu = make([][]float64, n), make([]float64, n*n)
	for i := range n {
		r.q[i] = make([]float64, r.rows)
	}
	r.triangle(0)
	for k, turns := 1, 0; k < n && turns < 5000; turns++ {
		for j := k - 1; j >= 0; j-- {
			if t := math.Round(r.mu[j*n+k] / r.mu[j*n+j]); t != 0 {
				for p := range r.rows {
					r.b[k][p] -= t * r.b[j][p]
				}
				for p := range n {
					r.u[k][p] -= t * r.u[j][p]
				}
				for i := range j + 1 {
					r.mu[i*n+k] -= t * r.mu[i*n+j]
				}
			}
		}
		a, b, c := r.mu[(k-1)*n+k-1], r.mu[(k-1)*n+k], r.mu[k*n+k]
		if b*b+c*c >= lovasz*a*a {
			k++
			continue
		}
		r.b[k], r.b[k-1] = r.b[k-1], r.b[k]
		r.u[k], r.u[k-1] = r.u[k-1], r.u[k]
		r.triangle(k - 1)
		k = max(1, k-1)
	}
	r.triangle(0)
	r.near = r.along()
	// The same basis with less weight on the ends.
	for p := r.points; p < r.rows; p++ {
		for k := range n {
			r.b[k][p] *= r.light
		}
		r.aim[p] *= r.light
	}
	r.triangle(0)
	r.far = r.along()
	r.y = make([]float64, n)
	r.line()
}

// metric is a distance in the reduced basis.
type metric struct {
	mu    []float64 // upper triangle, by rows
	to    []float64 // the aim along q
	apart float64   // what of the aim lies outside the span, squared
}

func (r *reduced) along() metric {
	m := metric{mu: append([]float64(nil), r.mu...), to: make([]float64, r.n)}
	rest := append([]float64(nil), r.aim...)
	for i := range r.n {
		m.to[i] = dot(r.q[i], rest)
		for p := range r.rows {
			rest[p] -= m.to[i] * r.q[i][p]
		}
	}
	m.apart = dot(rest, rest)
	return m
}

// middle is where level i of the basis is nearest, the levels above being chosen.
func (m *metric) middle(i, n int, y []float64) float64 {
	e := m.to[i]
	for j := i + 1; j < n; j++ {
		e -= m.mu[i*n+j] * y[j]
	}
	return e / m.mu[i*n+i]
}
