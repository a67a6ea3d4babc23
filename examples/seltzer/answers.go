package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What a page asks of the library, and what it is answered: all of it text and numbers that
// go through JSON, and all of it what the command line prints.
type (
	answer struct {
		Refused  *refusal        `json:"refused,omitempty"`
		Brief    []answerRow     `json:"brief,omitempty"`  // what stands beside the form
		Urgent   []string        `json:"urgent,omitempty"` // cautions that cannot wait
		Now      *answerNow      `json:"now,omitempty"`
		Before   []string        `json:"before,omitempty"` // cautions of no one step
		Steps    []answerStep    `json:"steps,omitempty"`
		Sections []answerSection `json:"sections,omitempty"`
	}
	answerSection struct {
		Title string      `json:"title"`
		Rows  []answerRow `json:"rows"`
	}
	answerRow struct {
		Label string      `json:"label"`
		Value string      `json:"value,omitempty"`
		Note  string      `json:"note,omitempty"`
		Why   [][2]string `json:"why,omitempty"` // relation, source
	}
	answerStep struct {
		ID       string      `json:"id"`
		Title    string      `json:"title"`
		When     string      `json:"when,omitempty"`
		Do       []string    `json:"do"`
		Take     []answerRow `json:"take"`
		Read     []answerRow `json:"read"`
		Cautions []string    `json:"cautions"`
	}
	answerNow struct {
		State    string      `json:"state"`
		Cautions []string    `json:"cautions"`
		Next     []string    `json:"next"`
		Take     []answerRow `json:"take"`
		When     []answerRow `json:"when"`
		Why      []answerRow `json:"why"`
	}
	// A refusal is a request that cannot be.
	refusal struct {
		Field   string `json:"field"`
		Value   string `json:"value"`
		Allowed string `json:"allowed"`
	}
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

func refused(err error) *refusal {
	if e, ok := errors.AsType[*plan.RequestError](err); ok {
		return &refusal{e.Field, e.Value, e.Allowed}
	}
	return &refusal{"request", "as given", err.Error()}
}

// planned answers with the plan of a request: what is to be seen while it is typed, and if
// the whole is wanted sheet, card, and what to do now.
func planned(request []byte, s style, done []string, whole bool) answer {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	if !whole {
		req = undated(req)
	}
	p, err := plan.Make(req)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	a := answer{Brief: answerRows(brief(p, s)), Urgent: urgent(p)}
	if !whole {
		return a
	}
	n, err := nowOf(p, s, done)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	a.Now = &answerNow{n.state, texts(n.cautions), texts(n.next), answerRows(n.take), answerRows(n.when), answerRows(n.why)}
	c := cardOf(p, s)
	a.Before = texts(c.before)
	for _, st := range c.steps {
		a.Steps = append(a.Steps, answerStep{st.id, st.title, st.when, texts(st.do), answerRows(st.weigh), answerRows(st.read), texts(st.cautions)})
	}
	for i, sec := range sheet(p, s) {
		if i == 0 {
			sec.title = "The batch"
		}
		a.Sections = append(a.Sections, answerSection{sec.title, answerRows(sec.rows)})
	}
	return a
}

// texts is a list that is a list in JSON, too, where it is empty.
func texts(list []string) []string { return append([]string{}, list...) }

// undated is a request without its days and its room, whose forecast takes most of the time
// of a plan.
func undated(req plan.Request) plan.Request {
	req.Schedule, req.Room = nil, nil
	return req
}

func answerRows(rows []row) []answerRow {
	out := []answerRow{}
	for _, r := range rows {
		a := answerRow{Label: r.label, Value: r.value, Note: r.note}
		if r.relation != "" {
			sources := strings.Split(r.source, "\n")
			for i, relation := range strings.Split(r.relation, "\n") {
				a.Why = append(a.Why, [2]string{relation, sources[i]})
			}
		}
		out = append(out, a)
	}
	return out
}

// brief is what a brewer wants to see move while the request is typed.
func brief(p plan.Plan, s style) []row {
	rows := going(p, s, "kettle")
	rows = append(rows,
		row{label: "water", value: s.volume(p.Water.Volume)},
		row{label: "gravity", value: number(p.Gravity.Original, 4)},
		row{label: "dry floor", value: number(p.Gravity.Floor, 4)},
		row{label: "strength", value: strength(p.Strength), note: "± " + number(p.Uncertainty.Planned.In(units.PercentVolume), 2)})
	if c := p.Cost; c != nil {
		rows = append(rows, row{label: "cost", value: c.Total + " " + c.Currency})
	}
	for _, k := range p.Packs {
		rows = append(rows, row{label: packTitle(k), value: bound(s.gauge(k.Highest.Gauge), k.Highest.AtLeast), note: "at most, of " + s.gauge(k.Rating)})
	}
	return rows
}

// curvesOf draws the curves of a request.
func curvesOf(request []byte, s style) ([]picture, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return nil, err
	}
	_, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		return nil, err
	}
	out := []picture{}
	for i, c := range curves {
		c = s.curve(c)
		out = append(out, picture{c.Title, plot(c, i), len(c.Marks) > 0})
	}
	return out, nil
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
		if len(out) == 1 && slices.ContainsFunc(out[0].Set, func(c change) bool { return c.Path == e.Field }) {
			return out // the nearest says what may stand in the field
		}
		for _, text := range instead(e) {
			out = append(out, offer{e.Field + " " + text, []change{{e.Field, text}}})
		}
	}
	return out
}

var (
	sayOr   = regexp.MustCompile(`^"([^"]+)": say (.+?) or ([^:,;]+)`)
	meant   = regexp.MustCompile(`^did you mean (.+)\?$`)
	atLeast = regexp.MustCompile(`^at least (-?[\d.]+ \S+)[:;]`)
	between = regexp.MustCompile(`^(-?[\d.]+) to (-?[\d.]+)( \S+(?: \S+)?)?$`)
	figure  = regexp.MustCompile(`^-?[\d.]+`)
)

// instead are the values that a refusal names.
func instead(e *plan.RequestError) []string {
	if p, ok := errors.AsType[*units.ParseError](e.Err); ok {
		if m := sayOr.FindStringSubmatch(p.Reason); m != nil {
			number := strings.TrimSuffix(p.Input, m[1])
			return []string{number + m[2], number + m[3]}
		}
	}
	if m := meant.FindStringSubmatch(e.Allowed); m != nil && e.Value != "no such field" {
		return []string{m[1]}
	}
	if m := atLeast.FindStringSubmatch(e.Allowed); m != nil {
		return []string{m[1]}
	}
	if m := between.FindStringSubmatch(e.Allowed); m != nil {
		least, _ := strconv.ParseFloat(m[1], 64) // no error: digits; at worst an offer that is refused again
		most, _ := strconv.ParseFloat(m[2], 64)
		if x, err := strconv.ParseFloat(figure.FindString(e.Value), 64); err == nil {
			if x > most {
				return []string{m[2] + m[3]}
			}
			if x < least {
				return []string{m[1] + m[3]}
			}
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
func axis(path, unit string) string {
	last := path[strings.LastIndexByte(path, '.')+1:]
	return strings.TrimSuffix(strings.ReplaceAll(last, "_", " ")+", "+unit, ", ")
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
