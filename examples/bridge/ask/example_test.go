package ask_test

import (
	"fmt"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
)

func ExampleQuestion() {
	f, err := catalogue.Find("pressure_absolute_from_gauge")
	if err != nil {
		fmt.Println(err)
		return
	}
	q := ask.New(f)
	if err := q.Give("gauge_pressure", "1 bar", (*catalogue.Input).Parse); err != nil {
		fmt.Println(err)
		return
	}
	out, err := q.Answer()
	if err != nil {
		fmt.Println(err)
		return
	}
	results, err := ask.Wishes(f, []string{"pressure (bar)"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s %.5f\n", results[0].Head(), results[0].Of(out))
	// Output: pressure (bar) 2.01325
}
