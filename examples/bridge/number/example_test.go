package number_test

import (
	"fmt"

	"example.org/zymase/examples/bridge/number"
)

func ExampleParse() {
	fmt.Println(number.Parse([]byte("1,045"), ','))
	fmt.Println(number.Parse([]byte("1,045"), '.'))
	// Output:
	// 1.045 true
	// 0 false
}

func ExampleAppend() {
	fmt.Printf("%s\n", number.Append(nil, 0.1+0.2))
	fmt.Printf("%s\n", number.Append(nil, 1.0/3))
	// Output:
	// 0.3
	// 0.333333333333
}
