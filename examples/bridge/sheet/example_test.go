package sheet_test

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/sheet"
)

func ExampleWrite() {
	text, err := sheet.Write("127.0.0.1:8460")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("asks the bridge:", strings.Contains(string(text), `COM.MICROSOFT.WEBSERVICE(bridge`))
	// Output: asks the bridge: true
}
