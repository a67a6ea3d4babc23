package water_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/zymase/water"
)

// Text that is no value of ours is refused, with the function that was called.
func TestJSONRefusals(t *testing.T) {
	for _, c := range []struct {
		into any
		text string
		want string
	}{
		{new(water.Profile), `{"ions":{"calcium":"9999999 mg/L"}}`, "water.Profile.UnmarshalJSON: "},
		{new(water.Profile), `[]`, "cannot unmarshal"},
		{new(water.Equilibrium), `[]`, "cannot unmarshal"},
		{new(water.Equilibrium), `{"temperature":"20 °C"}`, "water.Equilibrium.UnmarshalJSON: "},
		{new(water.Equilibrium), `{"temperature":"300 °C"}`, "water.Equilibrium.UnmarshalJSON: "},
		{new(water.CO2Loss), `[]`, "cannot unmarshal"},
		{new(water.Residual), `[]`, "cannot unmarshal"},
		{new(water.DrinkingLimit), `[]`, "cannot unmarshal"},
	} {
		err := json.Unmarshal([]byte(c.text), c.into)
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%T of %s: %v, want %s", c.into, c.text, err, c.want)
		}
	}
}
