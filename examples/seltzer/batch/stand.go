package batch

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// stand leaves the liquid in air, or under CO2, for a share of the way to rest.
//
//   - Source: [carbonation.Liquid.Aerated], [water.AirCO2] and [water.Profile.Under] in air;
//     [carbonation.Liquid.Content] under CO2.
func (j *job) stand(st *Step) error {
	if err := j.opened(st); err != nil {
		return err
	}
	part, err := share(st)
	if err != nil || part == 0 {
		return err
	}
	rest, err := j.above(st)
	if err != nil {
		return err
	}
	for i, c := range gases {
		have := j.s.amount[c]
		j.exchange(c, have+part*(rest[i]-have))
	}
	return nil
}

// gases are those that dissolve.
var gases = [...]Component{CarbonDioxide, Nitrogen, Oxygen}

// above is what the liquid holds of each gas at rest with what stands above it, in moles.
func (j *job) above(st *Step) (rest [len(gases)]float64, err error) {
	if st.Gas {
		rest[0], err = j.atRest(st.place(), j.s.t)
		return rest, err
	}
	drink, err := j.s.Solution()
	if err != nil {
		return rest, err
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return rest, err
	}
	nitrogen, oxygen, err := l.Aerated(st.place(), j.s.t)
	if err != nil {
		return rest, err
	}
	e, err := j.under(airCO2(st.place()))
	if err != nil {
		return rest, err
	}
	v := drink.VolumeAt20().In(units.Litre)
	rest[0] = e.InorganicCarbon().In(units.MillimolePerLitre) / 1000 * j.s.litresOfWater()
	rest[1] = nitrogen.In(units.GramPerLitre) * v / molar[Nitrogen]
	rest[2] = oxygen.In(units.GramPerLitre) * v / molar[Oxygen]
	return rest, nil
}

// airCO2 is the CO2 of the air of a place; where the vessel is to hold a pressure that no place
// has, that of sea level.
func airCO2(p units.AbsolutePressure) units.AbsolutePressure {
	place, _ := units.Barometer(p)
	return water.AirCO2(place)
}
