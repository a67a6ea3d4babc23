package batch

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Water in air: 9.09 mg/L of oxygen at 20 °C (Benson & Krause 1984, recalled from memory), and the CO2 of air;
// under CO2 of one atmosphere in all 1.69 g/kg (CRC Handbook).
func TestStand(t *testing.T) {
	pure := must(FromWater(must(must(water.Profile{}.AtTemperature(deg(20))).InAir()).Water(), units.Litre.Of(1)))
	s := after(pure, Step{Kind: Stand, Share: per(100)})
	nitrogen, oxygen, err := must(carbonation.NewLiquid(must(s.Solution()))).Aerated(kPa(101.325), s.t)
	if err != nil {
		t.Fatal(err)
	}
	v := must(s.Solution()).VolumeAt20().In(units.Litre)
	near(t, "nitrogen as package carbonation has it", s.Of(Nitrogen)*molar[Nitrogen], nitrogen.In(units.GramPerLitre)*v, 1e-8)
	near(t, "oxygen as package carbonation has it", s.Of(Oxygen)*molar[Oxygen], oxygen.In(units.GramPerLitre)*v, 1e-8)
	air := must(must(s.Profile()).InAir()).InorganicCarbon().In(units.MolePerLitre) * s.litresOfWater()
	near(t, "CO2 as package water has it", s.Of(CarbonDioxide), air, 1e-5*air)
	near(t, "oxygen", 1000*s.Of(Oxygen)*31.998, 9.09, 0.2)
	near(t, "pH in air", must(s.PH()), 5.6, 0.05) // of pure water in air, common knowledge of chemistry
	s = after(s, Step{Kind: Stand, Share: per(100), Gas: true})
	near(t, "CO2", s.Of(CarbonDioxide)*44.009, 1.69*0.998, 0.03)
	near(t, "oxygen under CO2", s.Of(Oxygen), 0, 0)
	refused(t, pure, Step{Kind: Stand, Share: per(-1)})
	refused(t, pure, Step{Kind: Stand, Share: per(100), Pressure: kPa(1)})
}
