package gravity

import "example.org/zymase/units"

// VolumeAt20 returns the volume at 20 °C, where strength by volume and gravity are
// defined. Every Solution has one: it is [Solution.Volume] there, without an error.
func (s Solution) VolumeAt20() units.Volume {
	return litres(1000 * s.total() / s.density20())
}
