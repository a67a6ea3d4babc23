package batch

import "example.org/zymase/units"

// bitartrate lets cream of tartar, KHC4H4O6, settle for a share of the way to rest at the liquid's temperature
// and strength; where the liquid could hold more, nothing does.
//
//   - Source: [water.Profile.CreamOfTartar]. How far it comes in a given time is the share: colloids hold wines above it
//     for months.
//   - Range: where the way is not zero, that of the source; otherwise the error is a [*units.RangeError].
func (j *job) bitartrate(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	part, err := share(st)
	if err != nil || part == 0 || j.s.amount[Potassium] <= 0 || j.s.amount[Tartrate] <= 0 {
		return err
	}
	p, err := j.s.Profile()
	if err != nil {
		return err
	}
	most, err := p.CreamOfTartar()
	if err != nil {
		return err
	}
	n := part * most.In(units.GramPerLitre) * j.s.litresOfWater() / (molar[Potassium] + molar[Tartrate] + molar[Proton])
	for _, c := range [...]Component{Potassium, Tartrate, Proton} {
		j.take(c, n, &j.left.Sediment)
	}
	return nil
}
