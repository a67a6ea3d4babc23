package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// offers are what would do instead of a request that is refused: the nearest that can be
// planned, and what the refusal itself says may stand in its field.
func offers(request []byte) []offer {
	out := []offer{}
	req, err := plan.ReadRequest(request)
	if err == nil {
		_, err = plan.Make(req)
		if near, changes, no := plan.Nearest(req); no == nil && len(changes) > 0 {
			if set, diff := changed(req, near); diff == nil {
				out = append(out, offer{strings.Join(changes, "; "), set})
			}
		}
	}
	if e, ok := errors.AsType[*plan.RequestError](err); ok {
		if e.Field == "packs" && len(req.Packs) > 0 {
			out = append(out, alike(req)...)
		}
		if len(out) == 1 && slices.ContainsFunc(out[0].Set, func(c change) bool { return c.Path == e.Field }) {
			return out // the nearest says what may stand in the field
		}
		for _, text := range instead(e) {
			out = append(out, offer{e.Field + " " + text, []change{{e.Field, text}}})
		}
	}
	return out
}

// alike are the packs of a request made to hold its volume, each by as much, and its volume
// made what they hold.
func alike(req plan.Request) []offer {
	sum := 0.0
	for _, p := range req.Packs {
		sum += p.Volume.In(units.Litre)
	}
	whole := req.Volume.In(units.Litre)
	if sum == 0 || whole == 0 {
		return nil
	}
	litres := func(x float64) string { return strconv.FormatFloat(x, 'g', 5, 64) + " L" }
	packs := offer{Text: "packs that hold " + litres(whole)}
	for i, p := range req.Packs {
		packs.Set = append(packs.Set, change{fmt.Sprintf("packs[%d].volume", i), litres(whole / sum * p.Volume.In(units.Litre))})
	}
	return []offer{packs, {"volume " + litres(sum), []change{{"volume", litres(sum)}}}}
}

// withAtHand offers the strength, to 0.01 % vol, for which what is to be fermented is as much
// as there is, or the most below it that can be planned.
func withAtHand(request []byte, have string) ([]offer, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return nil, err
	}
	mass, err := units.Parse[units.Mass](have)
	if err != nil {
		return nil, err
	}
	req = undated(req)
	var no error
	more := func(hundredths int) bool { // it takes more than there is, or than can be planned
		req.Strength = units.PercentVolume.Of(checked.Number(float64(hundredths) / 100))
		var p plan.Plan
		if p, no = plan.Make(req); no != nil {
			return true
		}
		for _, w := range p.Weigh {
			if w.For == "kettle" {
				return w.Asked.Compare(mass) > 0
			}
		}
		return true
	}
	const least, most = 50, 1500 // of a request: 0.5 to 15 % vol
	low, high := int(math.Round(100*req.Strength.In(units.PercentVolume))), most+1
	switch {
	case !more(low):
	case no != nil:
		return nil, no
	default: // weaker; what is too weak to be planned takes less than there is
		low, high = least-1, low
	}
	for weaker := low < least; high-low > 1; {
		if middle := (low + high) / 2; more(middle) && !(weaker && no != nil) {
			high = middle
		} else {
			low = middle
		}
	}
	if low < least || more(low) {
		return nil, fmt.Errorf("%s of %s is too little for %v", have, req.Fermentable, req.Volume)
	}
	text := strconv.FormatFloat(float64(low)/100, 'g', -1, 64) + " % vol"
	return []offer{{"strength " + text + ", with " + have, []change{{"strength", text}}}}, nil
}

// instead are the values that a refusal names.
func instead(e *plan.RequestError) []string {
	if p, ok := errors.AsType[*units.ParseError](e.Err); ok { // "gal": say US gal or imp gal: …
		unit, rest, ok := strings.Cut(strings.TrimPrefix(p.Reason, `"`), `": say `)
		number := strings.TrimSuffix(p.Input, unit)
		if bare, is := strings.CutPrefix(p.Reason, "no unit: say "); is { // no unit: say °C or °F
			number, rest, ok = strings.TrimSpace(p.Input)+" ", bare, true
		}
		rest, _, _ = strings.Cut(rest, ":")
		if first, second, two := strings.Cut(rest, " or "); ok && two {
			return []string{number + first, number + second}
		}
	}
	if name, ok := strings.CutPrefix(e.Allowed, "did you mean "); ok && e.Value != "no such field" {
		return []string{strings.TrimSuffix(name, "?")}
	}
	if text, ok := strings.CutPrefix(e.Allowed, "at least "); ok { // at least 63.7 L: …
		text, _, _ = strings.Cut(text, ":")
		if _, unit, is := leading(text); is && !strings.Contains(unit, " ") {
			return []string{text}
		}
	}
	allowed, meant, _ := strings.Cut(e.Allowed, "; ")
	if low, rest, ok := strings.Cut(allowed, " to "); ok { // 4 to 38 °C
		least, _, isLeast := leading(low)
		most, unit, isMost := leading(rest)
		x, _, is := leading(e.Value)
		switch {
		case !isLeast || !isMost || !is || strings.Count(unit, " ") > 1:
		case x > most && strings.Contains(meant, "write °F"):
			return []string{strings.TrimSuffix(e.Value, "°C") + "°F", rest}
		case x > most:
			return []string{rest}
		case x < least:
			return []string{strings.TrimSpace(low + " " + unit)}
		}
	}
	return nil
}

// changed are the fields in which two requests differ.
func changed(from, to plan.Request) ([]change, error) {
	a, err := tree(from)
	if err != nil {
		return nil, err
	}
	b, err := tree(to)
	if err != nil {
		return nil, err
	}
	var out []change
	compare("", a, b, &out)
	return out, nil
}

// tree is a value as its JSON has it.
func tree(v any) (any, error) {
	text, err := json.Marshal(v)
	if err != nil {
		return nil, err
	}
	var out any
	err = json.Unmarshal(text, &out)
	return out, err
}

func compare(path string, a, b any, out *[]change) {
	switch b := b.(type) {
	case map[string]any:
		if a, ok := a.(map[string]any); ok {
			keys := maps.Clone(a)
			maps.Copy(keys, b)
			for _, k := range slices.Sorted(maps.Keys(keys)) {
				compare(strings.TrimPrefix(path+"."+k, "."), a[k], b[k], out)
			}
			return
		}
	case []any:
		if a, ok := a.([]any); ok && len(a) == len(b) {
			for i := range b {
				compare(fmt.Sprintf("%s[%d]", path, i), a[i], b[i], out)
			}
			return
		}
	}
	if !reflect.DeepEqual(a, b) {
		*out = append(*out, change{path, b})
	}
}
