// Command service stores batches and gives them back: it starts, is asked for one that it
// was given, and says whether what came back is the same.
package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"log"
	"net/http"
	"net/http/httptest"
	"sync"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Batch is what the service keeps.
type Batch struct {
	Name     string                     `json:"name"`
	Water    units.Mass                 `json:"water"`
	Sugar    units.Mass                 `json:"sugar"`
	Salt     material.Material          `json:"salt"`
	SaltMass units.ExactMass            `json:"salt_mass"`
	Air      units.Atmosphere           `json:"air"`
	Content  units.CarbonDioxideContent `json:"co2"`
	Rating   units.GaugePressure        `json:"rating"`
	Gravity  gravity.Gravity            `json:"gravity"`
	Read     units.MeasuredTemperature  `json:"read"`
}

// store is a service with its batches as JSON text.
type store struct {
	sync.Mutex
	kept map[string][]byte
}

func (s *store) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	s.Lock()
	defer s.Unlock()
	switch r.Method {
	case http.MethodPut:
		var b Batch
		if err := json.NewDecoder(r.Body).Decode(&b); err != nil {
			http.Error(w, err.Error(), http.StatusBadRequest) // the library's words: which value, and what it may be
			return
		}
		text, err := json.Marshal(b)
		if err != nil {
			http.Error(w, err.Error(), http.StatusInternalServerError)
			return
		}
		s.kept[r.URL.Path] = text
	default:
		w.Write(s.kept[r.URL.Path])
	}
}

func main() {
	log.SetFlags(0)
	server := httptest.NewServer(&store{kept: map[string][]byte{}})
	defer server.Close()
	gypsum, err := material.Find("gypsum")
	if err != nil {
		log.Fatal(err)
	}
	weighed, err := units.ParseExact[units.Mass]("6.50 g")
	if err != nil {
		log.Fatal(err)
	}
	air, err := units.AtAltitude(units.Metre.Of(640))
	if err != nil {
		log.Fatal(err)
	}
	wash, err := gravity.NewSolution(units.Kilogram.Of(55), units.Kilogram.Of(4.5), units.Mass{})
	if err != nil {
		log.Fatal(err)
	}
	warm, err := units.ReadTo(units.Celsius.Of(20.5), units.KelvinDifference.Of(0.5))
	if err != nil {
		log.Fatal(err)
	}
	sent := Batch{
		Name: "first", Water: wash.Water(), Sugar: wash.Extract(), Salt: gypsum, SaltMass: weighed, Air: air,
		Content: units.GramCO2PerLitre.Of(5.7), Rating: units.BarGauge.Of(9), Gravity: wash.Gravity(), Read: warm,
	}
	text, err := json.Marshal(sent)
	if err != nil {
		log.Fatal(err)
	}
	put(server.URL, text)
	put(server.URL, bytes.Replace(text, []byte(`4.5 kg`), []byte(`4.5 stone`), 1))
	answer, err := http.Get(server.URL + "/first")
	if err != nil {
		log.Fatal(err)
	}
	var got Batch
	if err := json.NewDecoder(answer.Body).Decode(&got); err != nil {
		log.Fatal(err)
	}
	again, err := gravity.NewSolution(got.Water, got.Sugar, units.Mass{})
	if err != nil {
		log.Fatal(err)
	}
	back, err := json.Marshal(got)
	fmt.Println("same:", bytes.Equal(back, text) && again == wash && got.Read == sent.Read && err == nil)
}

func put(url string, text []byte) {
	r, err := http.NewRequest(http.MethodPut, url+"/first", bytes.NewReader(text))
	if err != nil {
		log.Fatal(err)
	}
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		log.Fatal(err)
	}
	var words bytes.Buffer
	words.ReadFrom(answer.Body)
	fmt.Println(answer.Status, words.String())
}
