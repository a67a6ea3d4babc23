package loopback_test

import (
	"fmt"

	"example.org/zymase/examples/bridge/loopback"
)

func ExampleDialect_Number() {
	q := loopback.Question{
		Base: `"http://127.0.0.1:8460"`, Function: "atmosphere_at_altitude",
		Inputs: []loopback.Reference{{Input: "altitude", Cell: "B2"}},
	}
	fmt.Println("=" + loopback.Excel.Number(q))
	// Output: =IFERROR(NUMBERVALUE(WEBSERVICE("http://127.0.0.1:8460/v1/atmosphere_at_altitude?altitude="&ENCODEURL(B2)),"."),WEBSERVICE("http://127.0.0.1:8460/v1/atmosphere_at_altitude?altitude="&ENCODEURL(B2)))
}
