package mash

import (
	"cmp"
	"math"

	"example.org/zymase/units/evidence"
)

// Rival is one way to predict a mash pH, with what it says of a mash.
type Rival struct {
	Method string
	Known  bool // false where the method's figures were not read
	PH     evidence.Figure[float64]
}

// Rivals returns what the published ways say of the mash, side by side: the balance of protons,
// Kolbach's residual alkalinity, and Barth and Zaman's, of whom no figures were read.
//
// Kolbach's is the pH of the wort, for 12 °P: 0.084 higher for each mEq/L of residual
// alkalinity than in distilled water, which is here the mean of the malts, weighed by
// their buffering. Its band is that of the malts and a slope from half to twice (chosen).
//
// Errors are those of [Mash.PH].
//
//   - Source: P. Kolbach, Monatsschr. Brau. 6 (1953) 49, the slope recalled from memory;
//     Barth and Zaman, J. Am. Soc. Brew. Chem. 2015-0621-01, abstract.
func (m Mash) Rivals() ([]Rival, error) {
	const fn = "mash.Mash.Rivals"
	s, err := m.prepare(fn)
	if err != nil {
		return nil, err
	}
	own, err := s.estimatePH()
	distilled, also := s.estimate(func() (float64, error) {
		acid, buffer := 0.0, 0.0
		for k, kg := range s.kg {
			acid += kg * s.unknown[2*k+1].now * s.unknown[2*k].now
			buffer += kg * s.unknown[2*k+1].now
		}
		return acid / buffer, nil
	})
	if err := cmp.Or(err, also); err != nil {
		return nil, err
	}
	move := kolbachSlope * equivalents(s.water.ResidualAlkalinity())
	ph := distilled.Value + move
	ends := [2]float64{move / 2, -move} // half and twice the slope, as differences
	kolbach := band(ph,
		ph-math.Hypot(distilled.Value-distilled.Low, max(ends[0], ends[1])),
		ph+math.Hypot(distilled.High-distilled.Value, -min(ends[0], ends[1])))
	kolbach.Evidence = evidence.Evidence{Source: "Kolbach 1953", Grade: evidence.Recalled, Note: "pH of the wort at 12 °P, whatever the thickness of the mash"}
	unread := figure{Evidence: evidence.Evidence{Source: "Barth & Zaman 2015", Grade: evidence.Read,
		Note: "the abstract alone: Kolbach's equation needs other parameters for ale, Munich and pilsner malt, which stand in the paper"}}
	return []Rival{
		{"balance of protons", true, own.Figure},
		{"residual alkalinity", true, kolbach},
		{"residual alkalinity, modified for mashes", false, unread},
	}, nil
}

// kolbachSlope is pH for a mEq/L of residual alkalinity: 0.3 for 10 °dH.
const kolbachSlope = 0.084
