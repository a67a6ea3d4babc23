package loopback

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/netip"
	"strings"
	"testing"
)

const host = "127.0.0.1:8460"

func handler(t testing.TB) *Handler {
	t.Helper()
	h, err := New(netip.MustParseAddrPort(host))
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// get asks as a spreadsheet does.
func get(h http.Handler, method, target string, headers ...string) *http.Response {
	r := httptest.NewRequest(method, target, nil)
	r.Host = host
	for i := 0; i < len(headers); i += 2 {
		if headers[i] == "Host" {
			r.Host = headers[i+1]
		}
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Result()
}

func body(r *http.Response) string {
	b, _ := io.ReadAll(r.Body)
	return string(b)
}

// At sea level the standard atmosphere is 101.325 kPa (ISO 2533:1975), and
// 1 bar is 100 kPa.
func TestAnswers(t *testing.T) {
	h := handler(t)
	const gauge = "/v1/pressure_gauge_from_absolute?"
	for target, want := range map[string]string{
		"/v1/atmosphere_at_altitude?altitude=0":                                  "101.325",
		"/v1/atmosphere_at_altitude?altitude=0.0e%2B00":                          "101.325",
		"/v1/atmosphere_at_altitude?altitude=0,0":                                "101.325",
		"/v1/atmosphere_at_altitude?altitude=+0":                                 "101.325",
		"/v1/atmosphere_at_altitude?altitude=0E+021":                             "101.325",
		"/v1/atmosphere_at_altitude?altitude=0%20ft":                             "101.325",
		"/v1/atmosphere_at_altitude?altitude=0+ft":                               "101.325",
		"/v1/atmosphere_at_altitude?&altitude=0&":                                "101.325",
		"/v1/atmosphere_at_altitude?Altitude=0&output=pressure":                  "101.325",
		"/v1/atmosphere_at_altitude?altitude=0&output=pressure&unit=bar":         "1.01325",
		gauge + "pressure=201.325":                                               "100",
		gauge + "pressure=201,325":                                               "100",
		gauge + "pressure=201325e-3":                                             "100",
		gauge + "pressure=2.01325%20bar%20absolute":                              "100",
		gauge + "altitude=0%20m&pressure=0":                                      "-101.325",
		gauge + "pressure=201.325&as=xml":                                        `<r><v name="gauge_pressure" unit="kPa gauge">100</v></r>`,
		gauge + "pressure=201.325&as=xml&output=gauge_pressure&unit=bar%20gauge": `<r><v name="gauge_pressure" unit="bar gauge">1</v></r>`,
		gauge + "pressure=1.234,5":                                               "ERROR: pressure: ~",
		gauge + "pressure=1,234.5":                                               "ERROR: pressure: ~",
		gauge + "pressure=NaN":                                                   "ERROR: pressure: ~",
		gauge + "pressure=1e999":                                                 "ERROR: pressure: ~",
		gauge + "pressure=1e9":                                                   "ERROR: pressure_gauge_from_absolute: pressure 1000000000 kPa absolute outside ~",
		gauge + "pressure=2%20kg":                                                "ERROR: pressure: ~",
		gauge + "pressure=":                                                      "ERROR: pressure is empty",
		gauge + "pressure":                                                       `ERROR: "pressure" is not input=value`,
		gauge + "pressure=1&pressure=1":                                          "ERROR: pressure is given twice",
		gauge + "pressure=1&PRESSURE=1":                                          "ERROR: pressure is given twice",
		gauge +
			"pressure=1&mood=2": `ERROR: no input "mood"; pressure_gauge_from_absolute takes pressure (kPa absolute), altitude (m) [0 if left out]`,
		gauge:                            "ERROR: pressure is missing; ~",
		gauge + "pressure=%":             "ERROR: pressure: a per cent sign without ~",
		gauge + "pressure=%G0":           "ERROR: pressure: a per cent sign without ~",
		gauge + "pressure=%FF":           "ERROR: pressure: the text is not UTF-8",
		gauge + "pressure=1%00":          "ERROR: pressure: the text has a control character",
		gauge + "pressure=1&output=mood": `ERROR: no output "mood"; ~`,
		gauge + "pressure=1&output=gauge_pressure&unit=kg":               "ERROR: gauge_pressure: ~",
		gauge + "pressure=1&unit=bar":                                    "ERROR: unit=… needs output=…~",
		gauge + "pressure=1&as=xml&as=xml":                               "ERROR: as is given twice",
		gauge + "pressure=1&output=gauge_pressure&output=gauge_pressure": "ERROR: output is given twice",
		gauge + "pressure=1&as=json":                                     `ERROR: as="json" is not known; there is as=xml`,
		gauge + "pressure=<&as=xml":                                      "<r><error>pressure: ~",
		"/v1/nothing?a=1":                                                `ERROR: no function "nothing"~`,
		"/v1/":                                                           `ERROR: no function ""~`,
		"/v1/%3Cscript%3E":                                               `ERROR: no function "<script>"~`,
	} {
		r := get(h, "GET", target)
		got := body(r)
		start, open := strings.CutSuffix(want, "~")
		if r.StatusCode != 200 || got != want && !(open && strings.HasPrefix(got, start)) {
			t.Errorf("%s: %d %q, want %q", target, r.StatusCode, got, want)
		}
		for name, want := range map[string]string{
			"X-Content-Type-Options": "nosniff", "Cache-Control": "no-store", "Access-Control-Allow-Origin": "",
		} {
			if r.Header.Get(name) != want {
				t.Errorf("%s: %s is %q", target, name, r.Header.Get(name))
			}
		}
		form := "text/plain; charset=utf-8"
		if strings.HasPrefix(want, "<r>") {
			form = "text/xml; charset=utf-8"
		}
		if got := r.Header.Get("Content-Type"); got != form {
			t.Errorf("%s: %s", target, got)
		}
	}
}

// Every function answers its own example, in both forms, and its own formula
// names each input that it needs.
func TestEveryFunction(t *testing.T) {
	h := handler(t)
	for name, k := range h.functions {
		f := k.function
		var target strings.Builder
		target.WriteString(prefix + name + "?as=xml")
		for i := range f.Inputs {
			in := &f.Inputs[i]
			for _, key := range []string{keyAs, keyOutput, keyUnit} {
				if in.Name == key {
					t.Errorf("%s: an input %s cannot be asked over HTTP", name, key)
				}
			}
			if _, twice := f.Output(in.Name); twice {
				t.Errorf("%s: %s is an input and an output, so a table cannot hold both", name, in.Name)
			}
			target.WriteString("&" + in.Name + "=" + strings.ReplaceAll(in.Text(in.Example), " ", "%20"))
		}
		if got := body(get(h, "GET", target.String())); strings.Count(got, "</v>") != len(f.Outputs) {
			t.Errorf("%s: %s", target.String(), got)
		}
		want := "ERROR: it gives several results; add output=NAME, or as=xml"
		plain := strings.Replace(target.String(), "as=xml&", "", 1)
		only, one := f.OnlyNumber()
		got := body(get(h, "GET", plain))
		if (got == want) == one {
			t.Errorf("%s: %s", plain, got)
		}
		if named := body(get(h, "GET", plain+"&output="+f.Outputs[only].Name)); one && got != named {
			t.Errorf("%s: %s, and by its name %s", plain, got, named)
		}
		if _, warns := f.Output("caution"); warns { // the same words by name and in the table
			words := body(get(h, "GET", plain+"&output=caution"))
			table := body(get(h, "GET", target.String()))
			if len(words) < 20 || !strings.HasSuffix(words, ".") ||
				!strings.HasSuffix(table, `<v name="caution" unit="">`+string(appendEscaped(nil, words))+"</v></r>") {
				t.Errorf("%s: caution %q in %s", plain, words, table)
			}
		}
	}
}

func TestMethods(t *testing.T) {
	h := handler(t)
	for _, target := range []string{"/v1/atmosphere_at_altitude?altitude=0", "/v1/nothing", "/"} {
		r := get(h, "OPTIONS", target)
		if r.StatusCode != 204 || r.Header.Get("Allow") != "GET, HEAD, OPTIONS" || body(r) != "" {
			t.Errorf("OPTIONS %s: %d %v", target, r.StatusCode, r.Header)
		}
		r = get(h, "HEAD", target)
		if r.StatusCode != 200 || body(r) != "" {
			t.Errorf("HEAD %s: %d", target, r.StatusCode)
		}
		for _, method := range []string{"POST", "PUT", "DELETE", "TRACE", "X"} {
			r = get(h, method, target)
			if r.StatusCode != 405 || r.Header.Get("Allow") == "" {
				t.Errorf("%s %s: %d", method, target, r.StatusCode)
			}
		}
	}
	if r := get(h, "GET", "/favicon.ico"); r.StatusCode != 404 {
		t.Errorf("another path: %d", r.StatusCode)
	}
	r := httptest.NewRequest("GET", "/v1/atmosphere_at_altitude?altitude=0", strings.NewReader("body"))
	r.Host = host
	w := httptest.NewRecorder()
	if h.ServeHTTP(w, r); w.Code != 400 {
		t.Errorf("a body: %d", w.Code)
	}
}

func TestWhoIsAnswered(t *testing.T) {
	h := handler(t)
	for _, c := range []struct {
		name, value string
		want        int
	}{
		{"Host", "127.0.0.1:8460", 200},
		{"Host", "localhost:8460", 200},
		{"Host", "LOCALHOST:8460", 200},
		{"Host", "[::1]:8460", 200},
		{"Host", "127.0.0.1:8461", 403},
		{"Host", "127.0.0.1", 403},
		{"Host", "localhost", 403},
		{"Host", "brewery.example:8460", 403},
		{"Host", "127.0.0.1.brewery.example:8460", 403},
		{"Host", "", 403},
		{"Origin", "https://brewery.example", 403},
		{"Origin", "null", 403},
		{"Origin", "http://127.0.0.1:8460", 403},
		{"Sec-Fetch-Site", "none", 200},
		{"Sec-Fetch-Site", "cross-site", 403},
		{"Sec-Fetch-Site", "same-site", 403},
		{"Sec-Fetch-Site", "same-origin", 403},
		{"Sec-Fetch-Site", "", 403},
	} {
		for _, method := range []string{"GET", "HEAD", "OPTIONS"} {
			r := get(h, method, "/v1/atmosphere_at_altitude?altitude=0", c.name, c.value)
			want := c.want
			if want == 200 && method == "OPTIONS" {
				want = 204
			}
			if r.StatusCode != want {
				t.Errorf("%s with %s %q: %d, want %d", method, c.name, c.value, r.StatusCode, want)
			}
		}
	}
}

func TestLongAddress(t *testing.T) {
	h := handler(t)
	const start = "/v1/atmosphere_at_altitude?altitude=0.0"
	if r := get(h, "GET", start+strings.Repeat("0", MaxAddress-len(start))); r.StatusCode != 200 {
		t.Errorf("%d bytes: %d", MaxAddress, r.StatusCode)
	}
	if r := get(h, "GET", start+strings.Repeat("0", MaxAddress-len(start)+1)); r.StatusCode != 414 {
		t.Errorf("one byte more: %d", r.StatusCode)
	}
}

func TestIndex(t *testing.T) {
	r := get(handler(t), "GET", "/")
	page := body(r)
	for _, want := range []string{
		"atmosphere_at_altitude",
		`=IFERROR(NUMBERVALUE(WEBSERVICE(&#34;http://127.0.0.1:8460/v1/atmosphere_at_altitude?altitude=&#34;&amp;ENCODEURL(A1));&#34;.&#34;);`,
		"kPa gauge",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
	if strings.Contains(page, "<script") || strings.Contains(page, "ZgotmplZ") {
		t.Error("the page has a script, or a value that the template refused")
	}
	if r.Header.Get("Content-Security-Policy") == "" {
		t.Error("no content security policy")
	}
}

func TestNew(t *testing.T) {
	for _, address := range []string{"0.0.0.0:80", "192.0.2.1:80", "[::]:80", "[2001:db8::1]:80"} {
		if _, err := New(netip.MustParseAddrPort(address)); err == nil {
			t.Errorf("%s is served", address)
		}
	}
	h, err := New(netip.MustParseAddrPort("127.0.0.1:80"))
	if err != nil || !h.guard.hosts["localhost"] || !h.guard.hosts["127.0.0.1:80"] {
		t.Errorf("port 80: %v, %v", h.guard.hosts, err)
	}
}
