package loopback

import (
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

func TestFormula(t *testing.T) {
	q := Question{Base: `"http://127.0.0.1:8460"`, Function: "f", Inputs: []Reference{{"a", "A1"}, {"b", "B1"}}}
	for _, c := range []struct{ got, want string }{
		{Calc.URL(q), `"http://127.0.0.1:8460/v1/f?a="&ENCODEURL(A1)&"&b="&ENCODEURL(B1)`},
		{Excel.XML(q, "2"), `FILTERXML(WEBSERVICE("http://127.0.0.1:8460/v1/f?a="&ENCODEURL(A1)&"&b="&ENCODEURL(B1)&"&form=xml"),"number(/r/v[2])")`},
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

// A function with several outputs has a formula for each, and one for all.
func TestEntry(t *testing.T) {
	e := entry("http://127.0.0.1:8460", &catalogue.Function{
		Name:   "f",
		Inputs: []catalogue.Input{{Name: "a"}, {Name: "b", HasDefault: true}, {Name: "c"}},
		Outputs: []catalogue.Output{
			{Name: "x", Unit: "g"}, {Name: "y", Unit: "L"},
		},
	})
	const url = `"http://127.0.0.1:8460/v1/f?a="&ENCODEURL(A1)&"&c="&ENCODEURL(B1)&"&`
	if len(e.Formulas) != 2 || e.Formulas[1].Output != "y (L)" ||
		e.Formulas[1].Excel != `=IFERROR(NUMBERVALUE(WEBSERVICE(`+url+`output=y"),"."),WEBSERVICE(`+url+`output=y"))` ||
		e.XML != `=FILTERXML(WEBSERVICE(`+url+`form=xml");"number(/r/v[1])")` {
		t.Errorf("%+v", e)
	}
	if e.Inputs[0].Cell != "A1" || e.Inputs[1].Cell != "" || e.Inputs[2].Cell != "B1" {
		t.Errorf("%+v", e.Inputs)
	}
	only := Cells(&catalogue.Function{Inputs: []catalogue.Input{{Name: "a", HasDefault: true}, {Name: "b", HasDefault: true}}})
	if len(only) != 2 || only[1] != (Reference{"b", "B1"}) {
		t.Errorf("%v", only)
	}
}
