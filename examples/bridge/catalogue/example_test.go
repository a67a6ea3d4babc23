package catalogue_test

import (
	"fmt"

	"example.org/zymase/examples/bridge/catalogue"
)

func ExampleFind() {
	f, err := catalogue.Find("atmosphere_at_altitude")
	if err != nil {
		fmt.Println(err)
		return
	}
	altitude, err := f.Inputs[0].Parse("2100 ft")
	if err != nil {
		fmt.Println(err)
		return
	}
	out := make([]float64, len(f.Outputs))
	if err := f.Call([]float64{altitude}, out); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: %.2f %s\n", f.Outputs[0].Name, out[0], f.Outputs[0].Unit)
	// Output: pressure: 93.87 kPa absolute
}

func ExampleFunction_Call_refused() {
	f, err := catalogue.Find("atmosphere_at_altitude")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Call([]float64{20000}, make([]float64, 1)))
	// Output: atmosphere_at_altitude: altitude 20000 m outside -500 m to 11000 m (ISO 2533:1975, Standard atmosphere)
}
