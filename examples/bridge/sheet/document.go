package sheet

import (
	"bytes"
	_ "embed"
	"encoding/xml"
	"text/template"
)

//go:embed document.fods
var documentText string

var document = template.Must(template.New("document").Funcs(template.FuncMap{"xml": escape}).Parse(documentText))

func escape(text string) (string, error) {
	var b bytes.Buffer
	err := xml.EscapeText(&b, []byte(text))
	return b.String(), err
}

// write lays the lines out.
func write(address string, lines []line) ([]byte, error) {
	lines = append(lines[:len(lines):len(lines)], line{
		label: "Address of the bridge", name: addressName, text: "http://" + address,
		remark: "start it with: go run ./examples/bridge serve -addr " + address,
	})
	// The address stands last, but every formula names it.
	cells, err := solve(address, lines)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	err = document.Execute(&b, cells)
	return b.Bytes(), err
}

// The template asks a cell these.

func (c cell) Row() int        { return c.row }
func (c cell) Label() string   { return c.label }
func (c cell) Unit() string    { return c.unit }
func (c cell) Remark() string  { return c.remark }
func (c cell) Name() string    { return c.name }
func (c cell) Formula() string { return c.formula }
func (c cell) Shown() string   { return c.shown }
func (c cell) Places() int     { return c.places }
func (c cell) Heading() bool   { return c.name == "" && c.label != "" }
func (c cell) Text() bool      { return c.text != "" }
func (c cell) Words() bool     { return c.words }
func (c cell) Long() bool      { return c.long }

// Titles reports whether the heading also heads the column of the figures as
// they were when the sheet was written.
func (c cell) Titles() bool { return c.titles }

// Style is the style of the figure.
func (c cell) Style() string {
	kind := "figure"
	if c.value != nil || c.text != "" {
		kind = "wanted"
	}
	if c.text != "" {
		return kind + "-text"
	}
	return kind + "-" + string(rune('0'+c.places))
}
