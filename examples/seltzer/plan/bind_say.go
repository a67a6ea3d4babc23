package plan

import (
	"bytes"
	"fmt"
	"slices"
	"sort"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// fault is where the first text after an offset stands.
func fault(text []byte, offset int64) int {
	return len(text) - len(bytes.TrimLeft(text[offset:], " \t\r\n,:"))
}

// place tells the line and column of an offset.
func place(text []byte, at int) string {
	before := text[:at]
	line := 1 + bytes.Count(before, []byte("\n"))
	column := 1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:])
	return fmt.Sprintf(" at line %d, column %d", line, column)
}

// mistake names a usual slip at an offset; it is empty for any other.
func mistake(text []byte, at int) string {
	c, _ := utf8.DecodeRune(text[at:])
	before := bytes.TrimRight(text[:at], " \t\r\n")
	n := len(before)
	comma := n > 0 && before[n-1] == ','
	switch {
	case strings.ContainsRune("“”„‟«»‘’‚", c):
		return "a curly quotation mark, as a word processor sets it; JSON takes the straight one, \""
	case c == '\'':
		return "JSON takes double quotation marks, \""
	case comma && n > 1 && at == n && digit(before[n-2]) && digit(byte(c)):
		return "a decimal comma: write a point, as 3.6"
	case comma && (c == '}' || c == ']'):
		return "a comma with nothing after it: take it out"
	case comma && nothingBefore(before[:n-1]):
		return "a comma with nothing before it: take it out"
	}
	return ""
}

// nothingBefore says whether a comma after this text has no value to part from the next.
func nothingBefore(text []byte) bool {
	text = bytes.TrimRight(text, " \t\r\n")
	return len(text) == 0 || strings.IndexByte(",[{:", text[len(text)-1]) >= 0
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

// hint names the fields there are, the likeliest alone if one is near.
func hint(given string, names []string) string {
	plain := strings.ToLower(strings.NewReplacer("_", "", "-", "", " ", "").Replace(given))
	for _, n := range names {
		if plain == strings.ReplaceAll(strings.ToLower(n), "_", "") || slices.Contains(alsoCalled[n], plain) {
			return "did you mean " + n + "?"
		}
	}
	near := slices.Clone(names)
	sort.SliceStable(near, func(i, j int) bool { return distance(given, near[i]) < distance(given, near[j]) })
	if distance(given, near[0]) <= 2 {
		return "did you mean " + near[0] + "?"
	}
	return "one of " + strings.Join(names, ", ")
}

// alsoCalled are names that people have for a field, without capitals and joins.
var alsoCalled = map[string][]string{
	"strength":            {"abv", "alcohol", "alcoholbyvolume"},
	"original_gravity":    {"og", "gravity", "startinggravity", "originalextract", "plato"},
	"fermentable":         {"sugar", "juice", "honey", "malt", "fermentables"},
	"fermenter":           {"fermentor", "fermenters", "vessel", "carboy"},
	"volume":              {"batchsize", "batchvolume", "size", "litres", "liters"},
	"sugar":               {"honey", "juice", "malt", "fermentable"},
	"attenuation":         {"apparentattenuation", "realattenuation"},
	"sugar_for_1_percent": {"yield", "ownyield"},
	"sugar_portions":      {"portions"},
	"boil_off":            {"evaporation", "evaporationrate"},
	"salts_go":            {"when"},
	"alkalinity":          {"bicarbonate", "hco3"},
	"calcium":             {"ca"},
	"magnesium":           {"mg"},
	"sodium":              {"na"},
	"potassium":           {"k", "k2o"},
	"phosphorus":          {"p", "p2o5"},
	"chloride":            {"cl"},
	"sulfate":             {"so4", "sulphate"},
	"demand":              {"nitrogendemand"},
	"organic_nitrogen":    {"aminonitrogen"},
}

// distance counts the letters to change, add or drop (Levenshtein 1966).
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0]++
		for j := range len(b) {
			cost := diagonal
			if a[i] != b[j] {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}

func wrong(path string, node any, allowed string) error {
	return &RequestError{Field: name(path), Value: show(node), Allowed: allowed}
}

func show(node any) string {
	switch n := node.(type) {
	case object:
		return "an object"
	case []any:
		return "a list"
	case nil:
		return "null"
	case string:
		return strconv.Quote(clip(n))
	}
	return clip(fmt.Sprint(node))
}

const longestShown = 40 // bytes of a value in an error

// clip shortens what is shown of a value, to one line.
func clip(s string) string {
	s = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return ' '
		}
		return r
	}, s)
	if len(s) <= longestShown {
		return s
	}
	end := longestShown
	for end > 0 && !utf8.RuneStart(s[end]) {
		end--
	}
	return s[:end] + "…"
}

// clipped drops from a reason what repeats a long value.
func clipped(s string) string {
	if len(s) > 5*longestShown {
		return "this is too long"
	}
	return s
}

func join(path, key string) string {
	if key = clip(key); key == "" {
		key = `""`
	}
	if path == "" {
		return key
	}
	return path + "." + key
}

func name(path string) string {
	if path == "" {
		return "request"
	}
	return path
}
