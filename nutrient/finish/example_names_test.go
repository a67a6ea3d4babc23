package finish_test

import (
	"fmt"

	"example.org/zymase/nutrient/finish"
)

// A sweetener by its number.
func ExampleSweetener_ENumber() {
	s, _ := finish.ParseSweetener("erythritol")
	fmt.Println(s, s.ENumber())
	// Output: erythritol E 968
}
