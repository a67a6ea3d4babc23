//go:build js && wasm

// Command page runs in a browser: a form asks it what to set on the regulator.
package main

import (
	"fmt"
	"syscall/js"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

func main() {
	js.Global().Set("regulator", js.FuncOf(func(_ js.Value, in []js.Value) any {
		text, err := regulator(in[0].String(), in[1].String(), in[2].String(), in[3].String())
		if err != nil {
			return err.Error()
		}
		return text
	}))
	// A page would wait here for its form; run by itself it asks once.
	fmt.Println(js.Global().Call("regulator", "4.6 % vol", "38 °F", "2.6 vol", "640 m").String())
	fmt.Println(js.Global().Call("regulator", "4.6 % vol", "38", "2.6 vol", "640 m").String())
}

func regulator(strength, temperature, volumes, altitude string) (string, error) {
	s, err := units.Parse[units.StrengthByVolume](strength)
	if err != nil {
		return "", err
	}
	t, err := units.Parse[units.Temperature](temperature)
	if err != nil {
		return "", err
	}
	v, err := units.Parse[units.CarbonDioxideVolumes](volumes)
	if err != nil {
		return "", err
	}
	h, err := units.Parse[units.Length](altitude)
	if err != nil {
		return "", err
	}
	air, err := units.AtAltitude(h)
	if err != nil {
		return "", err
	}
	drink, err := carbonation.DrinkOf(s, units.Extract{})
	if err != nil {
		return "", err
	}
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return "", err
	}
	p, err := l.Pressure(carbonation.RealVolume.Content(v), t)
	if err != nil {
		return "", err
	}
	return air.Gauge(p).Text(units.PSIGauge, 1), nil
}
