package main

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"
)

// numbersOf are the paths of the numbers of a request, as the page lists them.
func numbersOf(path string, node any, into *[]string) {
	switch n := node.(type) {
	case map[string]any:
		for k, v := range n {
			if k != "readings" {
				numbersOf(strings.TrimPrefix(path+"."+k, "."), v, into)
			}
		}
	case []any:
		for i, v := range n {
			numbersOf(fmt.Sprintf("%s[%d]", path, i), v, into)
		}
	default:
		if _, unit, ok := leading(n); ok && (unit != "" || path != "") {
			*into = append(*into, path)
		}
	}
}

// Any figure of the request can be moved against any of the plan: there is a picture, or it is
// said that no plan lies beside this one. Each input against a result, each result against an
// input; every third, the short test every thirtieth.
func TestLookAtAnything(t *testing.T) {
	var root any
	if err := json.Unmarshal(builtIn, &root); err != nil {
		t.Fatal(err)
	}
	var inputs []string
	numbersOf("", root, &inputs)
	slices.Sort(inputs)
	results, err := choices(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	if len(inputs) < 40 || len(results) < 150 {
		t.Fatalf("%d inputs, %d results", len(inputs), len(results))
	}
	step := 3
	if testing.Short() {
		step = 30
	}
	drawn := 0
	try := func(input, result string) {
		p, err := look(builtIn, input, result, 0.1, style{})
		switch {
		case err == nil && strings.Contains(p.SVG, `class="curve"`) && !strings.Contains(p.SVG, "NaN"):
			drawn++
		case err != nil && (strings.Contains(err.Error(), "no plan either side") || strings.Contains(err.Error(), "no such number")):
		default:
			t.Errorf("%s against %s: %v", result, input, err)
		}
	}
	for i := 0; i < len(inputs); i += step {
		try(inputs[i], "gravity.original")
	}
	for i := 0; i < len(results); i += step {
		try("strength", results[i].Path)
	}
	if all := (len(inputs) + len(results)) / step; drawn < all*9/10 {
		t.Errorf("%d of %d drawn", drawn, all)
	}
}
