package main

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
)

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
