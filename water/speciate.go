package water

import "math"

// constants are the equilibrium constants at a temperature.
type constants struct {
	a, b                                                     float64
	henry, hco3, co2, water                                  float64
	hso4, caHCO3, caCO3, mgHCO3, mgCO3, caSO4, mgSO4, naSO4  float64
	kSO4, nh4SO4, caHSO4, caOH, mgOH, naHCO3, naCO3, ammonia float64
	hpo4, h2po4, h3po4, caPO4, caHPO4, caH2PO4               float64
	mgPO4, mgHPO4, mgH2PO4, naHPO4, kHPO4                    float64
	acids                                                    [len(weakAcids)][3]float64
}

// solution is a water in moles a kilogram of water, with the state of its
// equilibrium. It holds no pointers: it lives on the stack.
type solution struct {
	k   constants
	g   gammas
	c   conditional // at the pH
	std conditional // at an activity of H+ of 1

	totals

	// the state
	h                                        float64 // activity
	fca, fmg, fna, fk, fnh4, fso4, fpo4, co3 float64 // free concentrations
	strength, move                           float64 // move is how far it last was from where it stood
	shareS, shareP                           float64 // free shares of sulfate and phosphate
}

// totals are what is given.
type totals struct {
	ca, mg, na, kk, nh4, so4, po4 float64
	acid                          [len(weakAcids)]float64
	acids                         bool    // some acid is not zero
	inertStrength                 float64 // ½Σ m z² of the ions that react with nothing
	inertCharge                   float64 // their charge
	alk, carbon, fugacity         float64 // two of these and the pH make a state
	unreported                    float64 // charge of the report that its ions do not balance
}

// conditional are products of constants and activity coefficients, for
// concentrations, at a pH.
type conditional struct {
	h, oh, hco3, co2 float64 // H+ and OH-; HCO3- and CO2 for each CO3-2
	hso4             float64 // for each SO4-2
	caHCO3, caCO3    float64 // for each Ca+2 and CO3-2
	mgHCO3, mgCO3    float64
	naHCO3, naCO3    float64
	caSO4, caHSO4    float64 // for each Ca+2 and SO4-2
	mgSO4, naSO4     float64
	kSO4, nh4SO4     float64
	caOH, mgOH       float64
	nh3              float64    // for each NH4+
	hp               [3]float64 // H1..3 for each PO4-3
	caP, mgP         [3]float64 // PO4, HPO4, H2PO4 with the metal
	naP, kP          float64
	acid             [len(weakAcids)][3]float64
}

const (
	mostStrength = 0.5 // mol/kg, Davies
	mostRounds   = 100 // of the quick ways; a drinking water needs ten or twenty
)

// constantsAt fills the constants that the solution needs.
func (s *solution) constantsAt(celsius float64) {
	w := warm(celsius)
	k := &s.k
	k.a, k.b = debyeHuckel(celsius, &w)
	k.henry, k.hco3, k.co2, k.water = fitHenry.at(&w), fitSecondBack.at(&w), fitBothBack.at(&w), fitWater.at(&w)
	if s.so4 > 0 {
		k.hso4 = fitBisulfate.at(&w)
		k.caSO4, k.mgSO4, k.naSO4, k.kSO4 = fitCaSO4.at(&w), fitMgSO4.at(&w), fitNaSO4.at(&w), fitKSO4.at(&w)
		k.nh4SO4, k.caHSO4 = constNH4SO4, constCaHSO4
	}
	if s.ca > 0 {
		k.caHCO3, k.caCO3, k.caOH = k.hco3*constCaHCO3, fitCaCO3.at(&w), constCaOH
	}
	if s.mg > 0 {
		k.mgHCO3, k.mgCO3, k.mgOH = fitMgHCO3.at(&w), fitMgCO3.at(&w), fitMgOH.at(&w)
	}
	k.naHCO3, k.naCO3 = constNaHCO3, fitNaCO3.at(&w)
	if s.nh4 > 0 {
		k.ammonia = fitAmmonia.at(&w)
	}
	if s.po4 > 0 {
		k.hpo4, k.h2po4, k.h3po4 = fitHPO4.at(&w), fitH2PO4.at(&w), fitH3PO4.at(&w)
		k.caPO4, k.caHPO4, k.caH2PO4 = fitCaPO4.at(&w), fitCaHPO4.at(&w), fitCaH2PO4.at(&w)
		k.mgPO4, k.mgHPO4, k.mgH2PO4 = fitMgPO4.at(&w), fitMgHPO4.at(&w), fitMgH2PO4.at(&w)
		k.naHPO4, k.kHPO4 = constNaHPO4, constKHPO4
	}
	if s.acids {
		for i := range weakAcids {
			if s.has(i) {
				for j := range weakAcids[i].protons {
					k.acids[i][j] = weakAcids[i].steps[j].at(&w)
				}
			}
		}
	}
}

// standard sets the products of constants and coefficients for an activity of H+ of 1.
func (s *solution) standard() {
	k, g, c := &s.k, &s.g, &s.std
	neutral, single, hco3 := 1/g.neutral, 1/g.one, 1/g.hco3
	c.h, c.oh = 1/g.h, k.water/g.oh
	c.hco3 = k.hco3 * g.co3 * hco3
	c.co2 = k.co2 * g.co3 * neutral
	ca, mg, na := g.ca*g.co3, g.mg*g.co3, g.na*g.co3
	c.caHCO3, c.caCO3 = k.caHCO3*ca*hco3, k.caCO3*ca*neutral
	c.mgHCO3, c.mgCO3 = k.mgHCO3*mg/g.mgHCO3, k.mgCO3*mg*neutral
	c.naHCO3, c.naCO3 = k.naHCO3*k.hco3*na*neutral, k.naCO3*na*hco3
	c.caOH, c.mgOH = k.caOH*g.ca*single, k.mgOH*g.mg*hco3
	c.hso4 = k.hso4 * g.so4 * single
	c.caSO4, c.mgSO4 = k.caSO4*g.ca*g.so4*neutral, k.mgSO4*g.mg*g.so4*neutral
	c.caHSO4 = k.caHSO4 * k.hso4 * g.ca * g.so4 * single
	c.naSO4, c.kSO4, c.nh4SO4 = k.naSO4*g.na*g.so4*hco3, k.kSO4*g.k*g.so4*hco3, k.nh4SO4*g.so4
	c.nh3 = k.ammonia * g.one * neutral
	if s.po4 > 0 {
		c.hp = [3]float64{k.hpo4 * g.po4 / g.hpo4, k.h2po4 * g.po4 * hco3, k.h3po4 * g.po4 * neutral}
		ca, mg := g.ca*g.po4, g.mg*g.po4
		c.caP = [3]float64{k.caPO4 * ca * hco3, k.caHPO4 * k.hpo4 * ca * neutral, k.caH2PO4 * k.h2po4 * ca * hco3}
		c.mgP = [3]float64{k.mgPO4 * mg * hco3, k.mgHPO4 * k.hpo4 * mg * neutral, k.mgH2PO4 * k.h2po4 * mg * hco3}
		c.naP, c.kP = k.naHPO4*k.hpo4*g.na*g.po4*single, k.kHPO4*k.hpo4*g.k*g.po4*single
	}
	if s.acids {
		bare := [4]float64{g.neutral, g.one, g.two, g.three}
		for i := range weakAcids {
			if s.has(i) {
				a := &weakAcids[i]
				for j := range a.protons {
					c.acid[i][j] = k.acids[i][j] * bare[a.charge] / bare[a.charge-1-j]
				}
			}
		}
	}
}

// condition takes the standard products to the pH.
func (s *solution) condition() {
	b, c, h := &s.std, &s.c, s.h
	over, h2 := 1/h, h*h
	c.h, c.oh = b.h*h, b.oh*over
	c.hco3, c.co2 = b.hco3*h, b.co2*h2
	c.caHCO3, c.caCO3 = b.caHCO3*h, b.caCO3
	c.mgHCO3, c.mgCO3 = b.mgHCO3*h, b.mgCO3
	c.naHCO3, c.naCO3 = b.naHCO3*h, b.naCO3
	c.caOH, c.mgOH = b.caOH*over, b.mgOH*over
	c.hso4, c.caHSO4 = b.hso4*h, b.caHSO4*h
	c.caSO4, c.mgSO4, c.naSO4, c.kSO4, c.nh4SO4 = b.caSO4, b.mgSO4, b.naSO4, b.kSO4, b.nh4SO4
	c.nh3 = b.nh3 * over
	if s.po4 > 0 {
		c.hp = [3]float64{b.hp[0] * h, b.hp[1] * h2, b.hp[2] * h2 * h}
		c.caP = [3]float64{b.caP[0], b.caP[1] * h, b.caP[2] * h2}
		c.mgP = [3]float64{b.mgP[0], b.mgP[1] * h, b.mgP[2] * h2}
		c.naP, c.kP = b.naP*h, b.kP*h
	}
	if s.acids {
		for i := range weakAcids {
			if s.has(i) {
				c.acid[i] = [3]float64{b.acid[i][0] * h, b.acid[i][1] * h2, b.acid[i][2] * h2 * h}
			}
		}
	}
}

// Ways to set the carbonate.
const (
	byCarbon = iota // total inorganic carbon
	byGas           // fugacity of CO2
	byAlk           // alkalinity at a known pH
)

// balance brings the free concentrations nearer to the mass balances, the metals
// after the anions, and returns the largest relative change.
func (s *solution) balance(way int) float64 {
	c := &s.c
	oldS, oldC, oldP := s.shareS, s.co3, s.shareP
	s.shareS = 1 / (1 + c.hso4 + (c.caSO4+c.caHSO4)*s.fca + c.mgSO4*s.fmg + c.naSO4*s.fna + c.kSO4*s.fk + c.nh4SO4*s.fnh4)
	s.fso4 = s.so4 * s.shareS
	if s.po4 > 0 {
		s.shareP = 1 / (1 + c.hp[0] + c.hp[1] + c.hp[2] + (c.caP[0]+c.caP[1]+c.caP[2])*s.fca +
			(c.mgP[0]+c.mgP[1]+c.mgP[2])*s.fmg + c.naP*s.fna + c.kP*s.fk)
		s.fpo4 = s.po4 * s.shareP
	}
	switch way {
	case byCarbon:
		s.co3 = s.carbon / s.carbonPerCO3()
	case byGas:
		s.co3 = s.gasCO3()
	case byAlk:
		alk, _ := s.alkalinity(byAlk)
		s.co3 = max(0, s.co3+(s.alk-alk)/s.alkPerCO3())
	}
	s.metals()
	// Shares, as an acid dose moves the totals themselves.
	return max(change(oldS, s.shareS), change(oldC, s.co3), change(oldP, s.shareP))
}

// gasCO3 is the free carbonate beside the gas, at the pH.
func (s *solution) gasCO3() float64 {
	return s.fugacity * s.k.henry / (s.k.co2 * s.h * s.h * s.g.co3)
}

func change(old, new float64) float64 {
	if new == old {
		return 0
	}
	return math.Abs(new-old) / math.Abs(new)
}

func (s *solution) carbonPerCO3() float64 {
	c := &s.c
	return 1 + c.hco3 + c.co2 + (c.caHCO3+c.caCO3)*s.fca + (c.mgHCO3+c.mgCO3)*s.fmg + (c.naHCO3+c.naCO3)*s.fna
}

func (s *solution) alkPerCO3() float64 {
	c := &s.c
	return 2 + c.hco3 + (c.caHCO3+2*c.caCO3)*s.fca + (c.mgHCO3+2*c.mgCO3)*s.fmg + (c.naHCO3+2*c.naCO3)*s.fna
}

func (s *solution) metals() {
	c := &s.c
	s.fca = s.ca / (1 + c.caOH + (c.caHCO3+c.caCO3)*s.co3 + (c.caSO4+c.caHSO4)*s.fso4 + (c.caP[0]+c.caP[1]+c.caP[2])*s.fpo4)
	s.fmg = s.mg / (1 + c.mgOH + (c.mgHCO3+c.mgCO3)*s.co3 + c.mgSO4*s.fso4 + (c.mgP[0]+c.mgP[1]+c.mgP[2])*s.fpo4)
	s.fna = s.na / (1 + (c.naHCO3+c.naCO3)*s.co3 + c.naSO4*s.fso4 + c.naP*s.fpo4)
	s.fk = s.kk / (1 + c.kSO4*s.fso4 + c.kP*s.fpo4)
	s.fnh4 = s.nh4 / (1 + c.nh3 + c.nh4SO4*s.fso4)
}

// alkalinity returns the protons that the state takes up on the way to the forms
// that alkalinity counts from, and its slope by -ln h at fixed metals.
func (s *solution) alkalinity(way int) (alk, slope float64) {
	c := &s.c
	hco3 := s.co3 * (c.hco3 + c.caHCO3*s.fca + c.mgHCO3*s.fmg + c.naHCO3*s.fna)
	co3 := s.co3 * (1 + c.caCO3*s.fca + c.mgCO3*s.fmg + c.naCO3*s.fna)
	co2 := s.co3 * c.co2
	hso4 := s.fso4 * (c.hso4 + c.caHSO4*s.fca)
	metalOH := c.caOH*s.fca + c.mgOH*s.fmg
	nh3 := c.nh3 * s.fnh4
	alk = hco3 + 2*co3 + c.oh - c.h + metalOH - hso4 + nh3
	slope = c.oh + c.h + metalOH + hso4
	held := 1 + c.nh4SO4*s.fso4 // NH4+ with its pair, for each free NH4+
	slope += nh3 * held / (held + c.nh3)
	if way == byGas {
		slope += hco3 + 4*co3
	} else if sum := hco3 + co3 + co2; sum > 0 {
		mean := (hco3 + 2*co3) / sum
		slope += hco3 + 4*co3 - mean*mean*sum
	}
	if s.po4 > 0 {
		p0 := s.fpo4 * (1 + c.caP[0]*s.fca + c.mgP[0]*s.fmg)
		p1 := s.fpo4 * (c.hp[0] + c.caP[1]*s.fca + c.mgP[1]*s.fmg + c.naP*s.fna + c.kP*s.fk)
		p3 := s.fpo4 * c.hp[2]
		alk += 2*p0 + p1 - p3
		mean := (2*p0 + p1 - p3) / s.po4
		slope += 4*p0 + p1 + p3 - mean*mean*s.po4
	}
	if s.acids {
		a, b := s.acidAlkalinity()
		alk += a
		slope += b
	}
	return alk, slope
}

func (s *solution) acidAlkalinity() (alk, slope float64) {
	for i := range weakAcids {
		if !s.has(i) {
			continue
		}
		mean, square := s.protons(i)
		alk += s.acid[i] * (float64(weakAcids[i].zero) - mean)
		slope += s.acid[i] * (square - mean*mean)
	}
	return alk, slope
}

// has reports whether there is any of acid i.
func (s *solution) has(i int) bool { return s.acid[i] > 0 }

// protons returns the mean of the protons that acid i holds, and of their square.
func (s *solution) protons(i int) (mean, square float64) {
	f := &s.c.acid[i]
	sum := 1 + f[0] + f[1] + f[2]
	return (f[0] + 2*f[1] + 3*f[2]) / sum, (f[0] + 4*f[1] + 9*f[2]) / sum
}

// ionicStrength returns ½Σ m z² of the state.
func (s *solution) ionicStrength() float64 {
	c := &s.c
	one := c.h + c.oh + s.fna + s.fk + s.fnh4 +
		s.co3*(c.hco3+c.caHCO3*s.fca+c.mgHCO3*s.fmg+c.naCO3*s.fna) +
		s.fso4*(c.hso4+c.caHSO4*s.fca+c.naSO4*s.fna+c.kSO4*s.fk+c.nh4SO4*s.fnh4) +
		c.caOH*s.fca + c.mgOH*s.fmg
	two := s.fca + s.fmg + s.fso4 + s.co3
	three := 0.0
	if s.po4 > 0 {
		one += s.fpo4 * (c.hp[1] + (c.caP[0]+c.caP[2])*s.fca + (c.mgP[0]+c.mgP[2])*s.fmg + c.naP*s.fna + c.kP*s.fk)
		two += s.fpo4 * c.hp[0]
		three += s.fpo4
	}
	if s.acids {
		for i := range weakAcids {
			if !s.has(i) {
				continue
			}
			f := &c.acid[i]
			n := s.acid[i] / (1 + f[0] + f[1] + f[2])
			by := [4]float64{}
			by[weakAcids[i].charge] = n
			for j := range weakAcids[i].protons {
				by[weakAcids[i].charge-1-j] = n * f[j]
			}
			one, two, three = one+by[1], two+by[2], three+by[3]
		}
	}
	return s.inertStrength + 0.5*one + 2*two + 4.5*three
}
