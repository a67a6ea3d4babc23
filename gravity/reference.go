package gravity

import "example.org/zymase/units"

// Reference is the pair of temperatures that a specific gravity stands for: the
// liquid at the first over water at the second.
type Reference int

// References in use.
const (
	At20    Reference = iota // 20/20 °C: this package, most hydrometers today
	At60F                    // 60/60 °F, 15.56/15.56 °C: US and older British instruments
	At20On4                  // 20/4 °C: density in g/mL, near enough
	At15                     // 15/15 °C: older European tables
	At17p5                   // 17.5/17.5 °C: older saccharometers
	references
)

// sixtyFahrenheit is 60 °F in °C.
const sixtyFahrenheit = (60.0 - 32) / 1.8

var referenceTemperatures = [references]struct{ liquid, water float64 }{
	At20:    {20, 20},
	At60F:   {sixtyFahrenheit, sixtyFahrenheit},
	At20On4: {20, 4},
	At15:    {15, 15},
	At17p5:  {17.5, 17.5},
}

// String returns "20/20 °C" and so on.
func (r Reference) String() string {
	if r < 0 || r >= references {
		return "unknown reference"
	}
	return [references]string{"20/20 °C", "15.56/15.56 °C", "20/4 °C", "15/15 °C", "17.5/17.5 °C"}[r]
}

// Temperatures returns that of the liquid and that of the water.
func (r Reference) Temperatures() (liquid, water units.Temperature) {
	t := referenceTemperatures[At20]
	if r > 0 && r < references {
		t = referenceTemperatures[r]
	}
	return celsius(t.liquid), celsius(t.water)
}
