package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// gravityStrengths are strengths with their volumes at another temperature than 20 °C.
func gravityStrengths() []*Function {
	temperature := temperatureOf("mixture and of its ethanol; for US proof 60 °F", -20, 40)
	return []*Function{
		entry("strength_by_volume_at", "strength by volume at a temperature, from that by mass; US proof is twice that at 60 °F", r22,
			of2(takes("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture", 0, 100, 33.3), temperature, gravity.ByVolumeAt),
			gives("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, both at that temperature"),
			numberFrom(func(v units.StrengthByVolume) float64 { return 2 * v.In(units.PercentVolume) }, "twice", "", "twice the number; at 60 °F US proof")),
		entry("strength_by_mass_at", "strength by mass from that by volume at a temperature; US proof is twice that at 60 °F", r22,
			of2(takes("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, both at that temperature", 0, 100, 40), temperature, gravity.ByMassAt),
			gives("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture"),
			from(gravity.ByVolume, "strength_20", units.PercentVolume, "strength by volume at 20 °C")),
	}
}
