package water

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// sums are what a state holds, and how it moves with the logarithms of the free metals and,
// last, with what is sought beside them for the alkalinity: the pH (as -ln h), or at a pH the free
// carbonate or the dose of an acid. The anions follow from their totals.
type sums struct {
	alk      float64 // protons that it takes up on the way to the forms that alkalinity counts from
	capacity float64 // slope of it by -ln h beside free metals as they are, the totals kept (of carbonate only in a closed water)
	strength float64 // ½Σ m z²

	n      int // metals that are there
	metals [mostUnknowns]uint8
	m      [mostUnknowns][mostUnknowns]float64 // slopes of the balances, the alkalinity last; of the metals' own those up to the diagonal
	off    [mostUnknowns]float64               // what the balances lack
	zz     [mostUnknowns]float64               // slopes of Σ m z²
}

const mostUnknowns = 8 // a power of two

var _ [mostUnknowns - 1 - int(metalsEnd-partCa)]struct{} // builds only while the metals and one more find room

// sums adds up the state and writes the anions.
func (s *solution) sums(way int, atPH bool, dose *acidDose, t *sums) {
	t.n, t.capacity = 0, 0
	t.off, t.zz = [mostUnknowns]float64{}, [mostUnknowns]float64{}
	for i := partCa; i < metalsEnd; i++ {
		if s.total[i] > 0 {
			if s.free[i] == 0 {
				s.free[i] = s.total[i] // it was not there before
			}
			t.metals[t.n%mostUnknowns] = uint8(i)
			t.n++
		}
	}
	last := t.n % mostUnknowns
	for q := range last + 1 {
		t.m[q] = [mostUnknowns]float64{}
	}
	atLast := &t.m[last]
	sought := nothing
	switch {
	case dose != nil:
		sought = dose.anion
	case atPH && way == byAlk:
		sought = partCO3
	}
	corner, zz, zzLast := s.oh+s.hydrogen, s.oh+s.hydrogen, s.oh-s.hydrogen
	t.alk = s.oh - s.hydrogen
	for _, a := range s.anions[:s.anionLives] {
		j := component(a) % mostParts
		own := &plan.free[j]
		all, alk, alk2, z2, alkZ := 1.0, own.alk, own.alk*own.alk, own.zz, own.alk*own.zz // for each free one
		var bound [mostUnknowns]struct{ all, alk, zz, _ float64 }                         // by metal
		for _, r := range s.madeOf(j) {
			f := &plan.facts[r]
			c := s.std[r] * s.power[f.protons%8] * s.free[f.metal%mostParts]
			ca, cz := f.alk*c, f.zz*c
			all += c
			alk += ca
			alk2 += f.alk * ca
			z2 += cz
			alkZ += f.alk * cz
			b := &bound[f.metal%mostUnknowns]
			b.all += c
			b.alk += ca
			b.zz += cz
		}
		n, share := 1.0, 0.0
		switch {
		case j == nothing:
			if nh3 := bound[partNH4].alk; nh3 != 0 { // ammonium is no metal: its total is kept
				t.capacity = -nh3 * nh3 / s.total[partNH4]
			}
		case j != partCO3 || way == byCarbon:
			share = 1 / all
			n = s.total[j] * share
		case way == byGas:
			n = s.gasCO3()
		default:
			n = s.free[j]
		}
		s.free[j] = n
		mean, meanZ := alk*share, z2*share
		t.alk += alk * n
		corner += (alk2 - mean*alk) * n
		zz += z2 * n
		zzLast += (alkZ - mean*z2) * n
		for q := range t.n {
			b := &bound[t.metals[q%mostUnknowns]%mostUnknowns]
			if b.all == 0 {
				continue
			}
			row, held := &t.m[q%mostUnknowns], b.all*n
			row[q%mostUnknowns] += held
			t.off[q%mostUnknowns] -= held
			t.zz[q%mostUnknowns] += b.zz*n - meanZ*held
			atLast[q%mostUnknowns] += b.alk*n - mean*held
			held *= share
			for p := range q + 1 {
				row[p%mostUnknowns] -= held * bound[t.metals[p%mostUnknowns]%mostUnknowns].all
			}
		}
		if j == sought && j != nothing {
			per := share // free ones for one of what is sought
			if dose == nil {
				per = 1
			}
			for q := range t.n {
				t.m[q%mostUnknowns][last] = per * bound[t.metals[q%mostUnknowns]%mostUnknowns].all
			}
			t.m[last][last], t.zz[last] = per*alk, per*z2
		}
	}
	t.capacity += corner
	for q := range t.n {
		q %= mostUnknowns
		i := t.metals[q] % mostParts
		n := s.free[i]
		t.m[q][q] += n
		t.off[q] += s.total[i] - n
		zzOwn := plan.free[i].zz * n
		t.zz[q] += zzOwn
		zz += zzOwn
		if !atPH {
			t.m[q][last] = atLast[q]
		}
	}
	t.strength = s.inertStrength + zz/2
	t.off[last] = s.alk - t.alk
	switch {
	case !atPH:
		t.m[last][last], t.zz[last] = corner, zzLast
	case dose != nil:
		t.m[last][last] += dose.protons
		if dose.anion == nothing {
			t.zz[last] = 1
		}
	case way != byAlk: // nothing is sought
		*atLast = [mostUnknowns]float64{}
		atLast[last], t.off[last] = 1, 0
	}
}

// step solves for the step of Newton, that of what is sought beside the metals held between two
// ends. The metals' own slopes are positive definite, so that pivots need no search.
func (t *sums) step(low, high float64) (x [mostUnknowns]float64) {
	const mask = mostUnknowns - 1
	x = t.off
	n := t.n & mask
	atLast := &t.m[n]
	var over [mostUnknowns]float64
	for j := range n {
		j &= mask
		over[j] = 1 / t.m[j][j]
		f := atLast[j] * over[j]
		for k := j + 1; k < n; k++ {
			atLast[k&mask] -= f * t.m[k&mask][j]
		}
		atLast[n] -= f * t.m[j][n]
		x[n] -= f * x[j]
		for i := j + 1; i < n; i++ {
			row := &t.m[i&mask]
			f := row[j] * over[j]
			for k := j + 1; k <= i; k++ {
				row[k&mask] -= f * t.m[k&mask][j]
			}
			row[n] -= f * t.m[j][n]
			x[i&mask] -= f * x[j]
		}
	}
	x[n] = max(low, min(high, x[n]/atLast[n]))
	for j := range n {
		x[j&mask] -= t.m[j&mask][n] * x[n]
	}
	for j := n - 1; j >= 0; j-- {
		row := &t.m[j&mask]
		now := x[j&mask] * over[j&mask]
		x[j&mask] = now
		for k := range j {
			x[k&mask] -= row[k&mask] * now
		}
	}
	return x
}

// quick takes steps of Newton in the logarithms, and returns how many; mostRounds where they
// do not settle.
func (s *solution) quick(way int, atPH bool, dose *acidDose) int {
	var t sums
	s.condition()
	for round := range mostRounds {
		s.sums(way, atPH, dose, &t)
		low, high := -float64(longStep), float64(longStep)
		switch {
		case dose != nil:
			low, high = -dose.x, beyond*mostAcid-dose.x
		case atPH && way == byAlk:
			low, high = -s.free[partCO3], math.Inf(1)
		}
		x := t.step(low, high)
		far, strength := s.take(&t, &x)
		switch step := x[t.n%mostUnknowns]; {
		case !atPH:
			far = max(far, math.Abs(step))
			s.h = max(leastActivity, min(mostActivity, s.h*numeric.Exp(-step)))
		case dose != nil:
			dose.set(s, dose.x+step)
			far = max(far, math.Abs(step)/(dose.x+math.Abs(dose.alk)+s.hydrogen))
		case way == byAlk:
			before := s.free[partCO3]
			s.free[partCO3] = before + step
			far = max(far, change(before, s.free[partCO3]))
		}
		moved := far < longRefresh && s.moved(strength)
		if moved {
			s.refresh(strength)
		}
		s.condition()
		if !moved && far < lastStep {
			s.anionsFollow(way)
			return round
		}
	}
	return mostRounds
}

// take moves the free metals by a step, and returns how far that was and the strength that the
// whole step leads to.
func (s *solution) take(t *sums, x *[mostUnknowns]float64) (far, strength float64) {
	zz := t.zz[t.n%mostUnknowns] * x[t.n%mostUnknowns]
	for q := range t.n {
		q %= mostUnknowns
		i := t.metals[q] % mostParts
		far = max(far, math.Abs(x[q]))
		if math.Abs(x[q]) < longMetal {
			s.free[i] *= 1 + x[q] + x[q]*x[q]/2
		} else { // what its pairs leave beside the anions as they are: never too far
			s.free[i] *= s.total[i] / (s.total[i] - t.off[q])
		}
		zz += t.zz[q] * x[q]
	}
	return far, t.strength + zz/2
}
