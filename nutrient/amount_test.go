package nutrient

import "testing"

// The sizes that functions take.
func TestSizes(t *testing.T) {
	near(t, "least volume, L", leastVolume, 1e-6, 0, "a limit of the package")
	near(t, "most volume, L", mostVolume, 1e9, 0, "a limit of the package")
	near(t, "most mass, g", mostMass, 1e12, 0, "a limit of the package")
	near(t, "ethanol at 20 °C, kg/L", pureEthanol, 0.78924, 0.00001, "OIML R 22: 789.24 kg/m³")
}
