package loopback

import "testing"

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
