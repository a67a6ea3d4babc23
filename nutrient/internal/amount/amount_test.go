package amount

import (
	"example.org/zymase/units"
	"testing"

	"example.org/zymase/internal/check"
)

// The sizes that functions take.
func TestSizes(t *testing.T) {
	check.Near(t, "least volume, L", LeastVolume, 1e-6, 0, "a limit of the package")
	check.Near(t, "most volume, L", MostVolume, 1e9, 0, "a limit of the package")
	check.Near(t, "most mass, g", MostMass, 1e12, 0, "a limit of the package")
	check.Near(t, "ethanol at 20 °C, kg/L", PureEthanol, 0.78924, 0.00001, "OIML R 22: 789.24 kg/m³")
}

// The temperature of strengths (OIML R 22), and a whole as a share.
func TestRoomAndWhole(t *testing.T) {
	check.Near(t, "room, °C", Room.In(units.Celsius), 20, 0, "OIML R 22")
	check.Near(t, "all, %", Share(1).In(units.Percent), 100, 0, "by hand")
}
