package yeast_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// A pack comes back with its cells, their spread and how fast they die; a pack that is none is refused.
func TestPackInJSON(t *testing.T) {
	was := check.Must(yeast.DryPack(units.Cells{}, units.Celsius.Of(4)))
	text, err := json.Marshal(was)
	var is yeast.Pack
	if err := errors.Join(err, json.Unmarshal(text, &is)); err != nil {
		t.Fatal(err)
	}
	cells := units.BillionCells.Of(400)
	a, b := check.Must(was.Need(cells, 60*24*time.Hour)), check.Must(is.Need(cells, 60*24*time.Hour))
	if a.Mass != b.Mass {
		t.Errorf("%+v\n%+v", a, b)
	}
	if _, err := json.Marshal(yeast.Pack{}); err == nil {
		t.Error("a pack that is none is written")
	}
	for _, bad := range []string{`[]`, strings.Replace(string(text), `"dry"`, `"cake"`, 1), strings.Replace(string(text), `"cells":"`, `"cells":"9e9`, 1),
		strings.Replace(string(text), `"loss_rate_1/d":`, `"loss_rate_1/d":-`, 1), strings.Replace(string(text), `"low":"`, `"low":"9`, 1)} {
		if err := json.Unmarshal([]byte(bad), new(yeast.Pack)); err == nil {
			t.Errorf("%s is taken", bad)
		}
	}
}

// A pack that is read holds a billion to 10¹⁴ cells, its ends on either side, and loses between nothing and all a day.
func TestPackLimits(t *testing.T) {
	text, err := json.Marshal(check.Must(yeast.DryPack(units.BillionCells.Of(20), units.Celsius.Of(4))))
	if err != nil {
		t.Fatal(err)
	}
	set := func(key, value string) error {
		var in map[string]json.RawMessage
		if err := json.Unmarshal(text, &in); err != nil {
			t.Fatal(err)
		}
		if _, ok := in[key]; !ok {
			t.Fatalf("no %s in %s", key, text)
		}
		in[key] = json.RawMessage(value)
		changed, err := json.Marshal(in)
		if err != nil {
			t.Fatal(err)
		}
		return json.Unmarshal(changed, new(yeast.Pack))
	}
	check.Refused(t, set("cells", `"0.5 billion cells"`), "cells", 1, 1e5)
	check.Refused(t, set("low", `"0.5 billion cells"`), "low end of the cells", 1, 20)
	check.Refused(t, set("high", `"2e5 billion cells"`), "high end of the cells", 20, 1e5)
	check.Refused(t, set("loss_rate_1/d", "1.5"), "loss", 0, 1)
}
