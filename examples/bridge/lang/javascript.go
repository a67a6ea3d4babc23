package lang

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"

	"example.org/zymase/examples/bridge/licences"
)

// quote writes a text as JavaScript, C and Python read it.
func quote(text string) string { return string(compact(text)) }

func compact(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		panic(err) // not reached: texts and finite numbers
	}
	return bytes.TrimSpace(b.Bytes())
}

// JavaScript writes the ES module into dir: zymase.mjs, its TypeScript declarations, zymase.wasm
// and a package.json. It takes the Go toolchain at hand. A directory that holds anything else is
// refused.
func JavaScript(dir string) error {
	m, err := newModel()
	if err != nil {
		return err
	}
	script, err := m.render("zymase.mjs.tmpl", nil)
	if err != nil {
		return err
	}
	types, err := m.render("zymase.d.mts.tmpl", nil)
	if err != nil {
		return err
	}
	files := files{"zymase.mjs": script, "zymase.d.mts": types, "package.json": []byte(packageJSON), "zymase.wasm": nil, "licences.txt": nil}
	if err := files.mayGo(dir); err != nil {
		return err
	}
	if files["zymase.wasm"], err = buildModule(); err != nil {
		return err
	}
	if files["licences.txt"], err = licences.Text(); err != nil {
		return err
	}
	return files.write(dir)
}

const packageJSON = `{
  "name": "zymase",
  "version": "0.0.0",
  "description": "Brewing chemistry: the Go library as WebAssembly",
  "type": "module",
  "exports": {
    ".": {
      "types": "./zymase.d.mts",
      "default": "./zymase.mjs"
    },
    "./zymase.wasm": "./zymase.wasm"
  },
  "private": true
}
`

type jsInput struct {
	Name    string   `json:"name"`
	Number  string   `json:"number"`
	Unit    string   `json:"unit"`
	Meaning string   `json:"meaning"`
	Min     float64  `json:"min"`
	Max     float64  `json:"max"`
	Example float64  `json:"example"`
	Shown   string   `json:"shown"`
	Default *float64 `json:"default,omitempty"`
	Options []string `json:"options,omitempty"`
	Whole   bool     `json:"whole,omitempty"`
}

type jsOutput struct {
	Name    string   `json:"name"`
	Unit    string   `json:"unit"`
	Meaning string   `json:"meaning"`
	Words   []string `json:"words,omitempty"`
	Several bool     `json:"several,omitempty"`
}

type jsFunction struct {
	Name    string     `json:"name"`
	Meaning string     `json:"meaning"`
	Source  string     `json:"source"`
	Inputs  []jsInput  `json:"inputs"`
	Outputs []jsOutput `json:"outputs"`
}

// Catalogue is every function as JSON, one a line.
func (m *model) Catalogue() string {
	var b strings.Builder
	b.WriteString("[\n")
	for _, f := range m.Functions {
		one := jsFunction{Name: f.Name, Meaning: f.Meaning, Source: f.Source, Inputs: []jsInput{}}
		for _, in := range f.Inputs {
			j := jsInput{
				Name: in.Name, Number: in.Number, Unit: in.Unit, Meaning: in.Meaning, Min: in.Min, Max: in.Max,
				Example: in.Example, Shown: in.Shown, Options: in.Options, Whole: in.Whole,
			}
			if in.HasDefault {
				j.Default = &in.Default
			}
			one.Inputs = append(one.Inputs, j)
		}
		for _, out := range f.Outputs {
			one.Outputs = append(one.Outputs, jsOutput{out.Name, out.Unit, out.Meaning, out.Words, out.Several})
		}
		b.WriteString("  ")
		b.Write(compact(one))
		b.WriteString(",\n")
	}
	b.WriteString("]")
	return b.String()
}

// DocLines are the comment of a function in the declarations.
func (f function) DocLines() []string {
	lines := []string{upper(f.Meaning) + "."}
	for _, in := range f.Inputs {
		name := in.Name
		if in.Two {
			name += " or " + in.Number
		}
		lines = append(lines, "- "+name+": "+in.Doc())
	}
	for _, out := range f.Outputs {
		lines = append(lines, "- gives "+out.Name+": "+out.Doc())
	}
	lines = append(lines, "Source: "+f.Source)
	for i := range lines {
		lines[i] = strings.ReplaceAll(lines[i], "*/", "* /")
	}
	return lines
}

func upper(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// OutputNames is a union of the names of the outputs.
func (f function) OutputNames() string {
	var names []string
	for _, out := range f.Outputs {
		names = append(names, quote(out.Name))
	}
	return strings.Join(names, " | ")
}

// ResultType is what a call gives.
func (f function) ResultType() string {
	if len(f.Outputs) == 1 {
		return f.Outputs[0].jsType()
	}
	var fields []string
	for _, out := range f.Outputs {
		fields = append(fields, fmt.Sprintf("/** %s */ %s: %s", strings.ReplaceAll(out.Doc(), "*/", "* /"), out.Name, out.jsType()))
	}
	return "{ " + strings.Join(fields, "; ") + " }"
}

func (o output) jsType() string {
	switch {
	case o.Words == nil:
		return "number"
	case o.Several:
		return "string"
	}
	return union(o.Words)
}

func union(words []string) string {
	var quoted []string
	for _, w := range words {
		quoted = append(quoted, quote(w))
	}
	return strings.Join(quoted, " | ")
}

// CallType and ColumnType are what a call and a column take.
func (f function) CallType() string { return f.argument("One", "Maybe", "number | string", "") }
func (f function) ColumnType() string {
	return f.argument("Many", "MaybeMany", "number | string | Numbers | readonly [unit: string, values: Numbers]", "Words")
}

func (f function) argument(one, maybe, pure, words string) string {
	var parts, plain []string
	for _, in := range f.Inputs {
		optional, form := "", one
		if in.HasDefault {
			optional, form = "?", maybe
		}
		switch {
		case in.Two:
			parts = append(parts, fmt.Sprintf("%s<%q, %q>", form, in.Name, in.Number))
		case in.Options != nil:
			word := union(in.Options)
			if words != "" {
				word += fmt.Sprintf(" | %s<%s>", words, word)
			}
			plain = append(plain, fmt.Sprintf("%s%s: %s", in.Name, optional, word))
		default:
			plain = append(plain, fmt.Sprintf("%s%s: %s", in.Name, optional, pure))
		}
	}
	if plain != nil {
		parts = append(parts, "{ "+strings.Join(plain, "; ")+" }")
	}
	return strings.Join(parts, " & ")
}
