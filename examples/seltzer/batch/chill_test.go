package batch

import (
	"testing"
)

// A drink of 4.6 % vol begins to freeze near −1.7 °C (Raoult's law; a wine of 10 % vol near −4).
func TestChill(t *testing.T) {
	near(t, "cold", after(beer(), Step{Kind: Chill, Temperature: deg(-1)}).Temperature().In(celsius), -1, 0)
	near(t, "below its ice", after(beer(), Step{Kind: Chill, Temperature: deg(-2)}).Temperature().In(celsius), -2, 0)
	refused(t, beer(), Step{Kind: Chill, Temperature: deg(-3)})
	refused(t, beer(), Step{Kind: Chill, Temperature: deg(30)})
}
