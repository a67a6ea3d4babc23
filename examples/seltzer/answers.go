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

// What a page asks of the library, and what it is answered: all of it text and numbers that
// go through JSON, and all of it what the command line prints.
type (
	// An offer is what would do instead.
	offer struct {
		Text string   `json:"text"`
		Set  []change `json:"set"`
	}
	change struct {
		Path  string `json:"path"`
		Value any    `json:"value"` // nil takes it out
	}
	// A choice is something to look at: its path in the plan's JSON, and its name.
	choice struct {
		Path  string `json:"path"`
		Label string `json:"label"`
	}
)

// undated is a request without its days and its room, whose forecast takes most of the time
// of a plan.
func undated(req plan.Request) plan.Request {
	req.Schedule, req.Room = nil, nil
	return req
}

// A picture is a curve drawn.
type picture struct {
	Title string `json:"title"`
	SVG   string `json:"svg"`
	Read  bool   `json:"read"` // it shows the readings
}

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
		rest, _, _ = strings.Cut(rest, ":")
		if first, second, two := strings.Cut(rest, " or "); ok && two {
			number := strings.TrimSuffix(p.Input, unit)
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
	if low, rest, ok := strings.Cut(e.Allowed, " to "); ok { // 4 to 38 °C
		least, _, isLeast := leading(low)
		most, unit, isMost := leading(rest)
		x, _, is := leading(e.Value)
		switch {
		case !isLeast || !isMost || !is || strings.Count(unit, " ") > 1:
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

// choices are the numbers of a request's plan, by path, those most asked for first.
func choices(request []byte) ([]choice, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return nil, err
	}
	p, err := plan.Make(req)
	if err != nil {
		return nil, err
	}
	root, err := tree(p)
	if err != nil {
		return nil, err
	}
	all := []choice{}
	gather("", "", root, &all)
	slices.SortStableFunc(all, func(a, b choice) int { return asked(a.Path) - asked(b.Path) })
	return all, nil
}

// mostAsked are the ends of the paths that come first.
var mostAsked = []string{"cost.total", "strength", "gravity.original", "gravity.dry_floor", ".gauge", ".highest.gauge", ".pH", ".mass"}

func asked(path string) int {
	for i, end := range mostAsked {
		if strings.HasSuffix(path, end) {
			return i
		}
	}
	return len(mostAsked)
}

// gather lists the numbers under a node.
func gather(path, label string, node any, into *[]choice) {
	switch n := node.(type) {
	case map[string]any:
		for _, k := range slices.Sorted(maps.Keys(n)) {
			if path == "" && (k == "request" || k == "version") {
				continue
			}
			gather(strings.TrimPrefix(path+"."+k, "."), strings.TrimPrefix(label+", "+strings.ReplaceAll(k, "_", " "), ", "), n[k], into)
		}
	case []any:
		for i, v := range n {
			name := strconv.Itoa(i + 1)
			if m, ok := v.(map[string]any); ok {
				for _, k := range []string{"what", "when", "kind", "name", "sugar_used"} {
					if t, ok := m[k].(string); ok {
						name = t
						break
					}
				}
			}
			gather(fmt.Sprintf("%s[%d]", path, i), label+" "+name, v, into)
		}
	default:
		if _, _, ok := leading(node); ok {
			*into = append(*into, choice{path, label})
		}
	}
}

// leading is the number at the head of a value, and its unit.
func leading(v any) (x float64, unit string, ok bool) {
	switch v := v.(type) {
	case float64:
		return v, "", true
	case string:
		number, unit, _ := strings.Cut(v, " ")
		x, err := strconv.ParseFloat(strings.Replace(number, ",", ".", 1), 64)
		return x, unit, err == nil
	}
	return 0, "", false
}

// at is the value at a path of a tree, and how to put another there.
func at(root any, path string) (value any, put func(any), err error) {
	none := fmt.Errorf("%s: no such number", path)
	node := root
	for _, part := range strings.Split(strings.ReplaceAll(path, "[", ".["), ".") {
		switch n := node.(type) {
		case map[string]any:
			value, put = n[part], func(v any) { n[part] = v }
		case []any:
			i, err := strconv.Atoi(strings.Trim(part, "[]"))
			if err != nil || i < 0 || i >= len(n) {
				return nil, nil, none
			}
			value, put = n[i], func(v any) { n[i] = v }
		default:
			return nil, nil, none
		}
		node = value
	}
	if put == nil || value == nil {
		return nil, nil, none
	}
	return value, put, nil
}

// looks are how many plans are made to see how a result moves.
const looks = 24

// look draws a result of the plan while one figure of its request is moved by a share of
// itself either way; where there is no plan the curve has no point.
func look(request []byte, input, result string, share float64, s style) (picture, error) {
	var root any
	if err := json.Unmarshal(request, &root); err != nil {
		return picture{}, err
	}
	value, put, err := at(root, input)
	if err != nil {
		return picture{}, err
	}
	middle, unit, ok := leading(value)
	if !ok {
		return picture{}, fmt.Errorf("%s: %v: not a number", input, value)
	}
	width := share * middle
	if width < 0 {
		width = -width
	}
	if width == 0 {
		width = share
	}
	c := plan.Curve{Title: result + " against " + input, X: axis(input, unit)}
	for i := range looks + 1 {
		x := middle + width*(2*float64(i)/looks-1)
		if _, text := value.(string); text {
			put(strings.TrimSpace(strconv.FormatFloat(x, 'g', 6, 64) + " " + unit))
		} else {
			put(x)
		}
		text, err := json.Marshal(root)
		if err != nil {
			return picture{}, err
		}
		y, of, err := resultOf(text, result)
		if err != nil {
			if i == looks/2 {
				return picture{}, err
			}
			continue
		}
		c.Points = append(c.Points, [2]float64{x, y})
		if i == looks/2 {
			c.Y, c.At, c.AtName = axis(result, of), &[2]float64{x, y}, "as asked"
		}
	}
	if len(c.Points) < 2 {
		return picture{}, fmt.Errorf("%s: no plan either side of %v", input, value)
	}
	return picture{Title: c.Title, SVG: plot(s.curve(c), 0)}, nil
}

// axis is the last of a path with its unit.
func axis(path, unit string) plan.Axis {
	last := path[strings.LastIndexByte(path, '.')+1:]
	return plan.Axis{Name: strings.ReplaceAll(last, "_", " "), Unit: unit}
}

// resultOf is one number of the plan of a request.
func resultOf(request []byte, path string) (float64, string, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return 0, "", err
	}
	if !strings.HasPrefix(path, "schedule") && !strings.HasPrefix(path, "room") {
		req = undated(req)
	}
	p, err := plan.Make(req)
	if err != nil {
		return 0, "", err
	}
	root, err := tree(p)
	if err != nil {
		return 0, "", err
	}
	v, _, err := at(root, path)
	if err != nil {
		return 0, "", err
	}
	x, unit, ok := leading(v)
	if !ok {
		return 0, "", fmt.Errorf("%s: %v: not a number", path, v)
	}
	return x, unit, nil
}
