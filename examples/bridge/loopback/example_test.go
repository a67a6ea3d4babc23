package loopback_test

import (
	"fmt"
	"net/http/httptest"
	"net/netip"

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

// A handler for a server on this machine; another address is refused.
func ExampleNew() {
	h, err := loopback.New(netip.MustParseAddrPort("127.0.0.1:8460"))
	if err != nil {
		fmt.Println(err)
		return
	}
	r := httptest.NewRequest("GET", "/v1/atmosphere_at_altitude?altitude=0", nil)
	r.Host = "127.0.0.1:8460"
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	fmt.Println(w.Body)

	_, err = loopback.New(netip.MustParseAddrPort("192.0.2.1:8460"))
	fmt.Println(err)
	// Output:
	// 101.325
	// 192.0.2.1 is not a loopback address; use 127.0.0.1
}
