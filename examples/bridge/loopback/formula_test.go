package loopback

import (
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

func TestFormula(t *testing.T) {
	q := Question{Base: `"http://127.0.0.1:8460"`, Function: "f", Inputs: []Reference{{"a", "A1"}, {"b", "B1"}}}
	for _, c := range []struct{ got, want string }{
		{Calc.URL(q), `"http://127.0.0.1:8460/v1/f?a="&ENCODEURL(A1)&"&b="&ENCODEURL(B1)`},
		{Excel.XML(q, "2"), `FILTERXML(WEBSERVICE("http://127.0.0.1:8460/v1/f?a="&ENCODEURL(A1)&"&b="&ENCODEURL(B1)&"&as=xml"),"number(/r/v[2])")`},
		{
			OpenDocument.Number(Question{Base: "[.$B$2]", Function: "f", Output: "x", Unit: "g/L CO2"}),
			`IFERROR(NUMBERVALUE(COM.MICROSOFT.WEBSERVICE([.$B$2]&"/v1/f?output=x&unit=g%2FL%20CO2");".");` +
				`COM.MICROSOFT.WEBSERVICE([.$B$2]&"/v1/f?output=x&unit=g%2FL%20CO2"))`,
		},
	} {
		if c.got != c.want {
			t.Errorf("got  %s\nwant %s", c.got, c.want)
		}
	}
	for i, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 27: "AB", 51: "AZ", 52: "BA"} {
		if got := column(i); got != want {
			t.Errorf("column %d is %s, want %s", i, got, want)
		}
	}
}

// A function with several outputs has a formula for each, and one for all, and
// cells for what has no default.
func TestEntry(t *testing.T) {
	f, err := catalogue.Find("priming_sugar")
	if err != nil {
		t.Fatal(err)
	}
	e := entry("http://127.0.0.1:8460", f)
	const url = `"http://127.0.0.1:8460/v1/priming_sugar?volumes="&ENCODEURL(A1)&"&volume="&ENCODEURL(B1)&"&warmest="&ENCODEURL(C1)&"&`
	if len(e.Formulas) != len(f.Outputs) || e.Formulas[0].Output != "mass (g)" ||
		e.Formulas[0].Excel != `=IFERROR(NUMBERVALUE(WEBSERVICE(`+url+`output=mass"),"."),WEBSERVICE(`+url+`output=mass"))` ||
		e.XML != `=FILTERXML(WEBSERVICE(`+url+`as=xml");"number(/r/v[1])")` {
		t.Errorf("%+v", e)
	}
	for i, want := range []string{"A1", "B1", "C1", ""} {
		if e.Inputs[i].Cell != want {
			t.Errorf("%s is in cell %q, want %q", e.Inputs[i].Name, e.Inputs[i].Cell, want)
		}
	}
}
