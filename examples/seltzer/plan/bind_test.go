package plan_test

import (
	"encoding/json"
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
	"github.com/google/go-cmp/cmp"
)

// builtIn is the scenario that the main job plans.
func builtIn(t testing.TB) []byte {
	t.Helper()
	text, err := os.ReadFile("../request.json")
	if err != nil {
		t.Fatal(err)
	}
	return text
}

func request(t testing.TB) plan.Request {
	t.Helper()
	r, err := plan.ParseRequest(builtIn(t))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Each nonsense is refused by the field, with the value and what is allowed.
func TestParseRequestRefuses(t *testing.T) {
	for _, c := range []struct{ name, old, new, want string }{
		{"negative volume", `"volume": "60 L"`, `"volume": "-60 L"`, `volume: -60 L: volume is not below zero`},
		{"30 % vol", `"4.6 % vol"`, `"30 % vol"`, `strength: 30 % vol: 0.5 to 15 % vol`},
		{"ambiguous gallon", `"volume": "60 L"`, `"volume": "5 gal"`, `volume: 5 gal: "gal": say US gal or imp gal`},
		{"NaN", `"640 m"`, `"NaN m"`, `place.altitude: NaN m: it does not start with a number`},
		{"huge exponent", `"volume": "60 L"`, `"volume": "1e400 L"`, `volume: 1e400 L: an exponent above 30`},
		{"misspelt field", `"volume": "60 L"`, `"volme": "60 L"`, `volme: no such field: did you mean volume?`},
		{"misspelt inside", `"boil_off"`, `"boiloff"`, `kettle.boiloff: no such field: did you mean boil_off?`},
		{"field twice", `"volume": "60 L"`, `"volume": "60 L", "volume": "61 L"`, `volume: stands twice: once`},
		{"field missing", `"boil_off": "5 L/h", `, ``, `kettle.boil_off: missing`},
		{"bare number", `"60 L"`, `60`, `volume: 60: text in quotes with its unit`},
		{"boil-off larger than the kettle", `"5 L/h"`, `"400 L/h"`, `kettle.boil_off: 100.0 L in the boil: less than the kettle of 80.0 L`},
		{"unknown sugar", `"fermentable": "white sugar"`, `"fermentable": "sawdust"`, `fermentable: sawdust: `},
		{"dextrose alone", `"fermentable": "white sugar"`, `"fermentable": "dextrose"`, `fermentable: dextrose: `},
		{"packs do not add up", `"volume": "40 L"`, `"volume": "30 L"`, `packs: they hold 50 L: what the batch is, 60 L`},
		{"two atmospheres", `{"altitude": "640 m"}`, `{"altitude": "640 m", "barometer": "939 mbar"}`, `place: both altitude and barometer: one of the two`},
		{"gauge wanted", `"9 bar gauge"`, `"9 bar abs"`, `packs[0].rating: 9 bar abs: `},
		{"keg with head-space", `"rating": "9 bar gauge"`, `"rating": "9 bar gauge", "head_space": "4 %"`, `packs[0].head_space: given: only for bottles`},
		{"a name that people have for a field", `"strength": "4.6 % vol"`, `"ABV": "4.6 % vol"`, "ABV: no such field: did you mean strength?"},
		{"joined otherwise", `"fermentable": "white sugar"`, `"originalGravity": 1.04`, "originalGravity: no such field: did you mean original_gravity?"},
		{"a number in quotes", `"pH": 6.9`, `"pH": "6.9"`, `water.pH: "6.9": a number, without quotes`},
		{"nothing typed", `"volume": "60 L"`, `"volume": ""`, `volume: "": empty; write a number and a unit`},
		{"kind of pack", `"kind": "keg"`, `"kind": "sack"`, `packs[0].kind: "sack": one of "keg", "bottle", "can"`},
		{"content without unit", `"3.0 vol"`, `"3.0"`, `packs[0].co2: 3.0: write volumes or g/L`},
		{"content too high", `"3.0 vol"`, `"9 vol"`, `packs[0].co2: 9 vol: 0.5 to 6 vol CO2`},
		{"not an object", string(builtIn(t)), `[1, 2]`, `request: a list: an object`},
		{"empty", string(builtIn(t)), ``, `request: empty: a JSON object`},
		{"only spaces", string(builtIn(t)), " \n", `request: empty: a JSON object`},
		{"not JSON", string(builtIn(t)), `{"volume": `, `volume: not JSON at line 1, column 12: `},
		{"comma missing", `"volume": "60 L",`, `"volume": "60 L"`, `request: not JSON at line 4, column 3: `},
		{"comma at the end", string(builtIn(t)), "{\n\"name\": \"é\",\n}", `request: not JSON at line 3, column 1: `},
		{"a comma alone", string(builtIn(t)), " ,", `request: not JSON at line 1, column 3: a comma with nothing before it`},
		{"comma at the end of a list", string(builtIn(t)), "{\"packs\": [\n{},]}", `packs[1]: not JSON at line 2, column 4: a comma with nothing after it`},
		{"two commas", string(builtIn(t)), "{\"name\": \"a\",\n, \"volume\": \"60 L\"}", `request: not JSON at line 2, column `},
		{"curly quotes", `"60 L"`, `“60 L”`, `volume: not JSON at line 3, column 13: a curly quotation mark`},
		{"curly name", string(builtIn(t)), `{“volume”: "60 L"}`, `request: not JSON at line 1, column 2: a curly quotation mark`},
		{"single quotes", `"60 L"`, `'60 L'`, `volume: not JSON at line 3, column 13: JSON takes double quotation marks`},
		{"decimal comma", `"floor_pH": 3.6`, `"floor_pH": 3,6`, `buffer: not JSON at line 43, column 61: a decimal comma`},
		{"decimal comma in the middle", `"pH": 6.9`, `"pH": 6,9`, `water: not JSON at line 17, column 13: a decimal comma`},
		{"a drop", `"capacity": "75 L"`, `"capacity": "0.33 mL"`, `fermenter.capacity: 0.33 mL: 1 to 200000 L`},
		{"all digits", `"4.6 % vol"`, `"23.71990533730591 % vol"`, `strength: 23.72 % vol: 0.5 to 15 % vol`},
		{"just over", `"4.6 % vol"`, `"15.0000001 % vol"`, `strength: 15.0000001 % vol: 0.5 to 15 % vol`},
		{"boil of a day", `"boil": "15 min"`, `"boil": "7 h"`, `kettle.boil: 7 h: 0 to 6 h`},
		{"megabyte", `"60 L"`, `"` + strings.Repeat("6", 1<<20) + ` L"`, `volume: ` + strings.Repeat("6", 40) + `…: `},
		{"water by name", `"report": {`, `"report": "tap", "x": {`, `water.report: "tap": an object of ions, or "distilled"`},
		{"primer that does not ferment", `"prime_with": "white sugar"`, `"prime_with": "lactose monohydrate"`,
			`packs[1].prime_with: lactose monohydrate: something that yeast ferments`},
		{"comment", string(builtIn(t)), "{\"name\": \"é\" // mine", `request: not JSON at line 1, column 14: `},
		{"Latin-1", "20 °C", "20 \xb0C", `request: not UTF-8: JSON text that was saved as UTF-8`},
		{"UTF-16", string(builtIn(t)), "\xff\xfe{\x00}\x00", `request: not UTF-8: JSON text that was saved as UTF-8`},
		{"juice by name", `"white sugar"`, `"apple juice"`, `fermentable: apple juice: `},
		{"bare price", `"1.29"`, `1.29`, `prices[0].price: 1.29: text in quotes, as "1.29"`},
		{"two objects", string(builtIn(t)), string(builtIn(t)) + `{}`, `request: text after the end: one JSON object`},
		{"impossible pH of the water", `"pH": 6.9`, `"pH": 69`, `water.pH: 69: 4 to 11`},
		{"null", `"60 L"`, `null`, `volume: null: text in quotes with its unit`},
	} {
		text := strings.Replace(string(builtIn(t)), c.old, c.new, 1)
		_, err := plan.ParseRequest([]byte(text))
		e, ok := errors.AsType[*plan.RequestError](err)
		if !ok || !strings.HasPrefix(e.Error(), c.want) {
			t.Errorf("%s:\n got %v\nwant %s", c.name, err, c.want)
			continue
		}
		if len(e.Error()) > 500 {
			t.Errorf("%s: %d bytes", c.name, len(e.Error()))
		}
		if strings.Contains(e.Error(), "\n") {
			t.Errorf("%s: more than a line: %q", c.name, e.Error())
		}
	}
}

// What names cannot be is known only when the plan is made.
func TestMakeRefuses(t *testing.T) {
	for _, c := range []struct{ name, old, new, want string }{
		{"kettle too small", `"capacity": "80 L"`, `"capacity": "50 L"`, `kettle.capacity: 50 L: at least 63.`},
		{"fermenter too small", `"capacity": "75 L"`, `"capacity": "40 L"`, `fermenter.capacity: 40 L: at least 59.`},
		{"juice with a buffer", `"fermentable": "white sugar"`, `"fermentable": "juice 6 °Bx"`, `buffer: potassium bicarbonate: left out for juice`},
		{"unknown salt", `"gypsum"`, `"moon dust"`, `water.salts: moon dust: `},
		{"unknown source", `"diammonium phosphate"`, `"hope"`, `nutrient.sources: hope: `},
		{"unknown demand", `"medium"`, `"huge"`, `nutrient.demand: huge: `},
		{"unknown law", `"law": "US"`, `"law": "Moon"`, `nutrient.law: Moon: `},
		{"misspelt salt", `"gypsum"`, `"gypsom"`, `water.salts: gypsom: one of gypsum, `},
		{"scale too coarse", `"sugar": "10 g"`, `"sugar": "1 kg"`, `scales.sugar: 1 kg: a finer scale`},
	} {
		text := strings.Replace(string(builtIn(t)), c.old, c.new, 1)
		req, err := plan.ParseRequest([]byte(text))
		if err == nil {
			var p plan.Plan
			p, err = plan.Make(req)
			if err != nil && !cmp.Equal(p.Name, "") {
				t.Errorf("%s: a plan beside the error", c.name)
			}
		}
		e, ok := errors.AsType[*plan.RequestError](err)
		if !ok || !strings.HasPrefix(e.Error(), c.want) {
			t.Errorf("%s:\n got %v\nwant %s", c.name, err, c.want)
		}
	}
}

// A water without ions may be called distilled.
func TestDistilled(t *testing.T) {
	text := string(builtIn(t))
	i, j := strings.Index(text, `"report": {`), strings.Index(text, `"pH"`)
	want, err := plan.ParseRequest([]byte(text[:i] + `"report": {}, ` + text[j:]))
	if err != nil {
		t.Fatal(err)
	}
	got, err := plan.ParseRequest([]byte(text[:i] + `"report": "distilled", ` + text[j:]))
	if err != nil || !reflect.DeepEqual(got, want) || got.Water.Report != (plan.Ions{}) {
		t.Errorf("%+v, %v", got.Water, err)
	}
	if _, err := plan.Make(got); err != nil {
		t.Error(err)
	}
}

// The error under it can be read.
func TestRequestErrorUnwraps(t *testing.T) {
	text := strings.Replace(string(builtIn(t)), `"volume": "60 L"`, `"volume": "-60 L"`, 1)
	_, err := plan.ParseRequest([]byte(text))
	if r, ok := errors.AsType[*units.RangeError](err); !ok || r.Value != -60 {
		t.Errorf("got %v", err)
	}
}

// A request written as JSON reads back as the same request.
func TestRequestRoundTrip(t *testing.T) {
	want := request(t)
	text, err := json.Marshal(want)
	if err != nil {
		t.Fatal(err)
	}
	got, err := plan.ParseRequest(text)
	if err != nil {
		t.Fatal(err)
	}
	again, err := json.Marshal(got)
	if err != nil || string(again) != string(text) {
		t.Errorf("%v\n got %s\nwant %s", err, again, text)
	}
}

// texts are what may stand in a file that is no request.
var texts = []string{
	"", " ", ",", ":", "{", "}", "[", "]", "\"", "'", "“", "nul", "null", "true", "1", "-", "1e999", "\x00", "\ufeff", "\ufeff,", "{,}", "[,]", "{:}",
	"{\"a\"", "{\"a\":", "{\"a\":1", "{\"a\":1,", "{\"a\":,}", "{\"a\":1]", "[1}", "[1,", "[1 2]", "{\"a\" \"b\"}", "{1:2}", "{null:1}", "{\"volume\":{}}",
	"{\"volume\":[]}", "{\"packs\":{}}", "{\"packs\":[[]]}", "{\"packs\":[null]}", "{\"water\":null}", "{\"buffer\":null}", "{\"name\":\"\\ud800\"}",
	"{\"\\n\":1}", "{\"volume\":\"1\\n2\"}", "{\"\":1}", "\"a\"", "\"a\":1", "{}{}", "{} ,", "0x1", "+1", "01", "1.", ".5", "[[[[[[[[[[",
	"{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":",
}

// Every JSON text whatsoever, and what is none, is a plan's request or is refused in a line.
func TestEveryTextIsRefusedInALine(t *testing.T) {
	whole := string(builtIn(t))
	for _, text := range texts {
		refused(t, text)
	}
	for i := 0; i < len(whole); i += 7 { // cut off, and with something in the midst
		refused(t, whole[:i])
		for _, c := range []string{",", "}", "]", "\"", ":", "null", "{"} {
			refused(t, whole[:i]+c+whole[i:])
		}
	}
}

// refused reads a text; where it is no request, the error is of one line.
func refused(t *testing.T, text string) {
	t.Helper()
	_, err := plan.ReadRequest([]byte(text))
	if err == nil {
		return
	}
	if e, ok := errors.AsType[*plan.RequestError](err); !ok || e.Field == "" || strings.ContainsAny(e.Error(), "\n\x00") || len(e.Error()) > 500 {
		t.Errorf("%.80q: %T %v", text, err, err)
	}
}

func FuzzParseRequest(f *testing.F) {
	f.Add(builtIn(f))
	f.Add([]byte(`{"volume": "5 gal"}`))
	f.Add([]byte(`[[[[[[[[[[]]]]]]]]]]`))
	f.Add([]byte(`{"packs": [{"co2": "3 vol"}, null]}`))
	for _, text := range texts {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		req, err := plan.ParseRequest(text)
		if err != nil {
			if _, ok := errors.AsType[*plan.RequestError](err); !ok {
				t.Fatalf("%T: %v", err, err)
			}
			return
		}
		if _, err := plan.Make(req); err != nil {
			if _, ok := errors.AsType[*plan.RequestError](err); !ok {
				t.Fatalf("%T: %v", err, err)
			}
		}
	})
}

// A mark of the byte order before the text, as some editors put it, changes nothing.
func TestByteOrderMark(t *testing.T) {
	r, err := plan.ParseRequest(append([]byte("\ufeff"), builtIn(t)...))
	if err != nil || !reflect.DeepEqual(r, request(t)) {
		t.Errorf("%v, %+v", err, r)
	}
}

// What is missing is named all at once, and an object with what it holds.
func TestAllThatIsMissing(t *testing.T) {
	for text, want := range map[string]string{
		`{"packs": [{}]}`:                       "packs[0].kind: missing: this field must be given, and so must volume, size, co2, temperature, rating",
		`{"water": "distilled"}`:                `water: "distilled": an object with report, pH, target, salts, salts_go`,
		`{"label": {"law": "EU"}}`:              "label.serving: missing: this field must be given",
		`{"at_hand": {"base": {"gravity": 1}}}`: "at_hand.base.strength: missing: this field must be given, and so must warmest",
	} {
		_, err := plan.ParseRequest([]byte(text))
		if err == nil || err.Error() != want {
			t.Errorf("%s: %v", text, err)
		}
	}
}
