package basic_test

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/basic"
	"example.org/zymase/examples/bridge/catalogue"
)

func ExampleModule() {
	text, err := basic.Module("127.0.0.1:8460", catalogue.All())
	if err != nil {
		fmt.Println(err)
		return
	}
	for line := range strings.Lines(string(text)) {
		if strings.HasPrefix(line, "Function PRESSURE_GAUGE_FROM_ABSOLUTE") {
			fmt.Print(line)
		}
	}
	// Output: Function PRESSURE_GAUGE_FROM_ABSOLUTE(Optional v_pressure, Optional v_altitude)
}
