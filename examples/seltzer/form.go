//go:build !kettle

package main

import (
	_ "embed"
	"encoding"
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// requestSource is where the request is described: its comments are the form's hints.
//
//go:embed plan/request.go
var requestSource string

//go:embed plan/request_must.go
var mustSource string

// A field describes one thing that a form asks for.
type field struct {
	Key      string   `json:"key"`
	Label    string   `json:"label"`
	Kind     string   `json:"kind"`            // "quantity" and "text" are text in JSON, "number" is not; "group", "list"
	Write    string   `json:"write,omitempty"` // how people write it
	Hint     string   `json:"hint,omitempty"`
	Names    []string `json:"names,omitempty"` // what may stand there, or some of it
	Optional bool     `json:"optional,omitempty"`
	First    bool     `json:"first,omitempty"` // on the first screen
	Of       []field  `json:"of,omitempty"`    // of a group; the one kind of entry of a list
}

// firstScreen is what a brewer is asked before all else.
var firstScreen = []string{
	"volume", "strength", "fermentable", "water.report", "place.altitude", "packs",
	"packs.kind", "packs.volume", "packs.size", "packs.co2",
}

// written is how a quantity is written, by its dimension.
var written = map[string]string{
	"volume": "60 L, 330 mL or 16 US gal", "strengthByVolume": "4.6 % vol", "length": "640 m or 2100 ft",
	"absolutePressure": "939 mbar", "gaugePressure": "8 bar gauge or 116 psi gauge", "massConcentration": "50 mg/L",
	"calciumCarbonate": "90 mg/L as CaCO3", "volumeFlow": "5 L/h", "temperature": "20 °C or 68 °F",
	"temperatureDifference": "0.5 K", "share": "4 %", "mass": "10 g", "Duration": "31 h, 8 d or 15 min", "Content": "2.9 vol or 5.7 g/L",
	"Acidity": "6 g/L as malic acid to pH 8.2",
}

// describeRequest lists what a request may hold, from its type and its comments: a new
// field appears by itself.
func describeRequest() ([]field, error) {
	comments, err := commentsOf(requestSource)
	if err != nil {
		return nil, err
	}
	more, err := commentsOf(mustSource)
	if err != nil {
		return nil, err
	}
	maps.Copy(comments, more)
	return describeStruct(reflect.TypeFor[plan.Request](), "", comments), nil
}

// commentsOf are the comments behind the fields of a file's types, by "Type.Field".
func commentsOf(source string) (map[string]string, error) {
	file, err := parser.ParseFile(token.NewFileSet(), "request.go", source, parser.ParseComments)
	if err != nil {
		return nil, err
	}
	out := map[string]string{}
	ast.Inspect(file, func(n ast.Node) bool {
		spec, ok := n.(*ast.TypeSpec)
		if !ok {
			return true
		}
		of, ok := spec.Type.(*ast.StructType)
		if !ok {
			return false
		}
		for _, f := range of.Fields.List {
			for _, name := range f.Names {
				out[spec.Name.Name+"."+name.Name] = strings.TrimSpace(f.Comment.Text())
			}
		}
		return false
	})
	return out, nil
}

func describeStruct(t reflect.Type, path string, comments map[string]string) []field {
	var out []field
	for i := range t.NumField() {
		f := t.Field(i)
		key, option, _ := strings.Cut(f.Tag.Get("json"), ",")
		d := describeType(f.Type, strings.TrimPrefix(path+"."+key, "."), comments)
		d.Key, d.Label, d.Optional = key, strings.ReplaceAll(key, "_", " "), strings.HasPrefix(option, "omit") && f.Tag.Get("need") == ""
		d.Hint, d.Names = hints(comments[t.Name()+"."+f.Name])
		out = append(out, d)
	}
	return out
}

// quoted are the examples and choices of a comment.
var (
	quoted = regexp.MustCompile(`"([^"]+)"`)
	reads  = regexp.MustCompile(`(?:: )?(?:an? )?names? of ([a-z]+\.\w+)(?:[:,] )?`)
)

// hints are a comment for those who fill in a form, and the names it speaks of.
func hints(comment string) (hint string, names []string) {
	for _, m := range quoted.FindAllStringSubmatch(comment, -1) {
		names = append(names, m[1])
	}
	if m := reads.FindStringSubmatch(comment); m != nil {
		names = append(names, listed(m[1])...)
		comment = strings.Replace(comment, m[0], "", 1)
	}
	slices.Sort(names)
	return strings.TrimPrefix(comment, "optional: "), slices.Compact(names)
}

// listed are the names of a list of the library.
func listed(list string) (names []string) {
	var of []material.Material
	switch list {
	case "water.Acids":
		for _, a := range water.Acids() {
			names = append(names, a.Name())
		}
	case "finish.Sweeteners": // those that yeast leaves
		for _, s := range finish.Sweeteners() {
			if s.Survives() {
				names = append(names, s.Name())
			}
		}
	case "sugar.Fermentables":
		of = sugar.Fermentables()
	case "nutrient.Sources":
		of = nutrient.Sources()
	case "water.Salts":
		of = water.Salts()
	case "ferment.Buffers":
		of = ferment.Buffers()
	}
	for _, m := range of {
		names = append(names, m.Name())
	}
	return names
}

func describeType(t reflect.Type, path string, comments map[string]string) field {
	d := field{Kind: "text", First: slices.Contains(firstScreen, path)}
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch _, text := reflect.New(t).Interface().(encoding.TextUnmarshaler); {
	case text:
		d.Kind, d.Write = "quantity", written[dimension(t)]
	case t.Kind() == reflect.Struct:
		d.Kind, d.Of = "group", describeStruct(t, path, comments)
	case t.Kind() == reflect.Slice:
		d.Kind, d.Of = "list", []field{describeType(t.Elem(), path, comments)}
	case t.Kind() == reflect.Float64, t.Kind() == reflect.Int:
		d.Kind = "number"
	}
	return d
}

// dimension is the name of what a quantity is one of: "volume".
func dimension(t reflect.Type) string {
	name := t.Name()
	if i := strings.IndexAny(name, "[,"); i >= 0 {
		name, _, _ = strings.Cut(name[i+1:], ",")
	}
	return name[strings.LastIndexByte(name, '.')+1:]
}
