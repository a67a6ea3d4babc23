package border

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"sync"
	"testing"

	"example.org/zymase/examples/bridge/catalogue"
)

func place(t testing.TB, name string) int {
	t.Helper()
	for i := range functions {
		if functions[i].Name == name {
			return i
		}
	}
	t.Fatal("no " + name)
	return 0
}

// There is room for every function, and its example is the same alone, as text and in a column.
func TestEveryExample(t *testing.T) {
	for i := range functions {
		f := &functions[i]
		if len(f.Inputs) > MostInputs || len(f.Outputs) > MostOutputs {
			t.Fatalf("%s needs more room", f.Name)
		}
		in, want := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		for j := range f.Inputs {
			p := &f.Inputs[j]
			in[j] = p.Example
			v, err := Number(i, j, p.Text(p.Example)+" "+p.Unit)
			if err != nil || v != p.Example {
				t.Errorf("%s: %s: %v, %v", f.Name, p.Name, v, err)
			}
		}
		if err := Call(i, in, want); err != nil {
			t.Fatal(err)
		}
		values, out := make([]Values, len(in)), make([][]float64, len(want))
		for j := range in {
			values[j] = Values{At: []float64{in[j], in[j], math.NaN()}, Step: 1}
			if j > 0 {
				values[j] = Values{At: in[j : j+1]}
			}
		}
		for j := range out {
			out[j] = make([]float64, 3)
		}
		failed := []byte{9, 9, 9}
		n, first, err := Column(i, 3, values, out, failed)
		if n != 1 || first != nil || err != nil || string(failed) != "\x00\x00\x01" {
			t.Errorf("%s: %d, %v, %v, %v", f.Name, n, first, err, failed)
		}
		for j := range out {
			if out[j][0] != want[j] || out[j][1] != want[j] || out[j][2] == out[j][2] {
				t.Errorf("%s: %v, want %v", f.Name, out[j], want[j])
			}
		}
	}
}

// A refusal has its parts. Range and source of the density of water: Bettin & Spieweck 1990,
// which holds from 0 to 100 °C.
func TestRefusal(t *testing.T) {
	density := place(t, "water_density")
	err := Call(density, []float64{200}, make([]float64, 1))
	r := Tell(err)
	if r.Kind != Range || r.Function != "water_density" || r.Quantity != "temperature" || *r.Value != 200 || r.Unit != "°C" || *r.Min != 0 || *r.Max != 100 ||
		!strings.HasPrefix(r.Source, "Bettin & Spieweck") || !strings.Contains(r.Message, "200 °C outside 0 °C to 100 °C") {
		t.Errorf("%+v", r)
	}
	if r := Tell(Call(density, []float64{math.NaN()}, make([]float64, 1))); r.Kind != Range || r.Value != nil || !json.Valid(r.JSON()) {
		t.Errorf("%+v", r)
	}
	for _, c := range []struct{ text, message string }{
		{"20", `"20" has no unit: write "20 °C"`},
		{"2e1", "has no unit"},
		{"20 kg", "not one of its units"},
		{"", "has no unit"},
		{"hot °C", "hot"},
	} {
		_, err := Number(density, 0, c.text)
		if r := Tell(err); err == nil || r.Kind != Text || r.Given != c.text || r.Source == "" || !strings.Contains(r.Message, c.message) {
			t.Errorf("%q: %+v", c.text, r)
		}
	}
	if err := Convert(density, 0, "furlong", nil); err == nil || Tell(err).Kind != Text {
		t.Error(err)
	}
	values := []float64{212, math.NaN()}
	if err := Convert(density, 0, "°F", values); err != nil || math.Abs(values[0]-100) > 1e-9 || values[1] == values[1] { // water boils at 212 °F
		t.Error(values, err)
	}
	for _, err := range []error{
		Call(-1, nil, nil), Call(len(functions), nil, nil), Call(density, nil, nil), Convert(density, 1, "", nil), second(Number(density, -1, "")),
		second(Number(1<<30, 0, "")), third(Column(density, 1, nil, nil, nil)), third(Column(-1, 1, nil, nil, nil)), second(Ask(-1, nil)),
		second(Ask(topicCount, nil)),
	} {
		if err == nil || Tell(err).Kind == Broken {
			t.Errorf("%v", err)
		}
	}
}

func second[T any](_ T, err error) error        { return err }
func third[T, U any](_ T, _ U, err error) error { return err }

// A fault is an error of its own kind, whatever it came from.
func TestFault(t *testing.T) {
	_, _, err := Column(place(t, "water_density"), 2, []Values{{At: []float64{20}, Step: 1}}, [][]float64{make([]float64, 2)}, make([]byte, 2))
	if err == nil || Tell(err).Kind != Broken {
		t.Error(err)
	}
}

// The contract changes with whatever a place, a number or a word stands for, and with nothing else.
func TestContract(t *testing.T) {
	was := Contract()
	change := func(what string, same bool, how func(*catalogue.Function)) {
		all := catalogue.All()
		how(&all[place(t, "co2_pressure")])
		if (contractOf(all) == was) != same {
			t.Errorf("%s: the contract is kept: %v", what, !same)
		}
	}
	change("nothing", true, func(*catalogue.Function) {})
	change("meaning", true, func(f *catalogue.Function) { f.Meaning = "" })
	change("name", false, func(f *catalogue.Function) { f.Name += "x" })
	change("unit", false, func(f *catalogue.Function) { f.Inputs[0].Unit = "°F" })
	change("default", false, func(f *catalogue.Function) { f.Inputs[len(f.Inputs)-1].Default = 1 })
	change("words", false, func(f *catalogue.Function) { f.Outputs[2].Words = f.Outputs[2].Words[1:] })
	change("order", false, func(f *catalogue.Function) { f.Outputs[0], f.Outputs[1] = f.Outputs[1], f.Outputs[0] })
}

func ask[T any](t *testing.T, topic Topic, request any) (answer T) {
	t.Helper()
	text, err := json.Marshal(request)
	if err != nil {
		t.Fatal(err)
	}
	said, err := Ask(topic, text)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(said, &answer); err != nil {
		t.Fatal(err)
	}
	return answer
}

const start = `{"sugar":"120 g/L","nitrogen":"200 mg/L","yeast":"0.5 g/L","pH":4,"temperatures":[{"hour":0,"temperature":"20 °C"}]}`

// A forecast behind a handle: readings narrow it, its state goes on from where it was, and once
// closed it says so. Many threads may ask at once.
func TestForecast(t *testing.T) {
	open := ask[ForecastHandle](t, ForecastOpen, json.RawMessage(start))
	if !strings.Contains(open.Caution, "265 to 300 g/L") { // the musts that the model was fitted to
		t.Error(open.Caution)
	}
	q := ForecastQuestion{Forecast: open.Forecast, Hours: []float64{60}, Used: []float64{0.5, 0.99}}
	before := ask[ForecastAnswer](t, ForecastAsk, q)
	var wait sync.WaitGroup
	for i := range 4 {
		wait.Go(func() {
			if _, err := Ask(ForecastAdd, []byte(`{"forecast":`+trim(open.Forecast)+`,"hours":40,"used":0.4,"uncertainty":0.01}`)); err != nil {
				t.Error(i, err)
			}
		})
	}
	wait.Wait()
	after := ask[ForecastAnswer](t, ForecastAsk, q)
	if a, b := after.Used[0], before.Used[0]; !(a.High90-a.Low90 < b.High90-b.Low90) || len(after.When) != 2 || !(after.When[0].Median < after.When[1].Median) {
		t.Errorf("%+v, before %+v", a, b)
	}
	state := ask[json.RawMessage](t, ForecastState, ForecastHandle{Forecast: open.Forecast})
	again := ask[ForecastHandle](t, ForecastOpen, state)
	q.Forecast = again.Forecast
	if a, b := ask[ForecastAnswer](t, ForecastAsk, q), after; math.Abs(a.Used[0].Median-b.Used[0].Median) > 1e-9 {
		t.Errorf("%+v, want %+v", a, b)
	}
	ask[any](t, ForecastClose, ForecastHandle{Forecast: open.Forecast})
	ask[any](t, ForecastClose, ForecastHandle{Forecast: again.Forecast})
	if len(forecasts.open) != 0 {
		t.Errorf("%d are left", len(forecasts.open))
	}
	for topic, text := range map[Topic]string{
		ForecastAsk: `{"forecast":1}`, ForecastState: `{"forecast":1}`, ForecastAdd: `{"forecast":1,"hours":1,"used":0.1,"uncertainty":0.1}`,
	} {
		if _, err := Ask(topic, []byte(text)); err == nil || Tell(err).Kind != State {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func trim(n int64) string {
	text, _ := json.Marshal(n)
	return string(text)
}

// What is asked wrongly is refused, and told where.
func TestAskRefuses(t *testing.T) {
	open := ask[ForecastHandle](t, ForecastOpen, json.RawMessage(start))
	defer ask[any](t, ForecastClose, open)
	n := trim(open.Forecast)
	for _, c := range []struct {
		topic         Topic
		text, message string
	}{
		{Plan, `{}`, "must be given"},
		{Plan, `x`, "not JSON"},
		{Walk, `x`, "not JSON"},
		{Walk, `{"steps":[],"mood":1}`, "mood"},
		{Walk, `{"steps":[]}`, "starts from a state, or from a water"},
		{Walk, `{"state":{"mol":{"water":1},"temperature":"20 °C"},"volume":"1 L","steps":[]}`, "starts from a state"},
		{Walk, `{"water":{"temperature":"20 °C","alkalinity":"2 mEq/L"},"volume":"0 L","steps":[]}`, ""},
		{ForecastOpen, `{}`, ""},
		{ForecastAdd, `{"forecast":` + n + `,"hours":-1,"used":0.1,"uncertainty":0.1}`, "time since the pitch -1 h"},
		{ForecastAdd, `{"forecast":` + n + `,"hours":1,"used":1.5,"uncertainty":0.1}`, "share used 1.5"},
		{ForecastAdd, `{"forecast":` + n + `,"hours":1,"used":0.5,"uncertainty":-1}`, "uncertainty -1"},
		{ForecastAsk, `{"forecast":` + n + `,"hours":[1e9]}`, "time since the pitch"},
		{ForecastAsk, `{"forecast":` + n + `,"used":[2]}`, "share used 2"},
	} {
		_, err := Ask(c.topic, []byte(c.text))
		if err == nil {
			t.Errorf("%s was answered", c.text)
			continue
		}
		if r, ok := errors.AsType[*Refusal](err); !ok || r.Kind == Broken || !strings.Contains(r.Message, c.message) {
			t.Errorf("%s: %v", c.text, err)
		}
	}
}

// A walk ends where the batch does that is carried forward by hand in package batch: 4.3 kg of white
// sugar in 57 L ferment to 4.6 % vol (its ExampleDo).
func TestWalk(t *testing.T) {
	const request = `{"water":{"temperature":"20 °C","alkalinity":"2 mEq/L","ions":{"calcium":"40 mg/L"},"pH":7.5,"inorganic_carbon":"2.1 mmol/L"},"volume":"57 L",
		"steps":[{"do":"dissolve","what":"white sugar","mass":"4.3 kg"},{"do":"ferment","share":"100 %"}]}`
	a := ask[WalkAnswer](t, Walk, json.RawMessage(request))
	if len(a.States) != 3 || len(a.Measured) != 3 || a.Measured[0].After != "" || a.Measured[2].After != "ferment" {
		t.Fatalf("%+v", a.Measured)
	}
	if s := a.Measured[2].Strength.String(); !strings.HasPrefix(s, "4.6") {
		t.Error(s)
	}
	if a.Left["gas"]["carbon dioxide"] == 0 && len(a.Left["gas"]) == 0 {
		t.Errorf("no gas left: %v", a.Left)
	}
	// The same from its state on.
	text, err := json.Marshal(map[string]any{"state": a.States[1], "steps": []map[string]string{{"do": "ferment", "share": "100 %"}}})
	if err != nil {
		t.Fatal(err)
	}
	b := ask[WalkAnswer](t, Walk, json.RawMessage(text))
	if b.Measured[1].Strength != a.Measured[2].Strength {
		t.Error(b.Measured[1].Strength, a.Measured[2].Strength)
	}
}

// Threads share nothing.
func TestThreads(t *testing.T) {
	i := place(t, "co2_pressure")
	f := &functions[i]
	in, want := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
	for j := range f.Inputs {
		in[j] = f.Inputs[j].Example
	}
	if err := Call(i, in, want); err != nil {
		t.Fatal(err)
	}
	var wait sync.WaitGroup
	for range 4 {
		wait.Go(func() {
			out := make([]float64, len(want))
			for range 200 {
				if err := Call(i, in, out); err != nil || out[0] != want[0] {
					t.Error(out, err)
				}
			}
		})
	}
	wait.Wait()
}

func BenchmarkColumn(b *testing.B) {
	i := place(b, "water_density")
	const rows = 1024
	in, out, failed := make([]float64, rows), [][]float64{make([]float64, rows)}, make([]byte, rows)
	for b.Loop() {
		if n, _, err := Column(i, rows, []Values{{At: in, Step: 1}}, out, failed); n != 0 || err != nil {
			b.Fatal(n, err)
		}
	}
}
