package fill

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/delimited"
)

// HeadError reports that the columns of a file do not fit the function.
type HeadError struct{ Reason string }

// Error is the reason: what is missing or doubled, and what to write.
func (e *HeadError) Error() string { return e.Reason }

func refuse(format string, args ...any) error {
	return &HeadError{fmt.Sprintf(format, args...)}
}

// source is where an input comes from.
type source struct {
	column  int // -1: fixed
	convert catalogue.Conversion
	fixed   float64
}

// plan is what the head of a file decides for all its rows.
type plan struct {
	function *catalogue.Function
	options  Options
	sources  []source
	results  []ask.Result
	width    int // columns of the user
}

// open reads the head, and returns what is to be done with each row and the
// head to write.
func open(rows *delimited.Reader, f *catalogue.Function, o Options) (*plan, []byte, error) {
	raw, err := rows.Next()
	var head []byte
	if rows.Mark() {
		head = append(head, "\xEF\xBB\xBF"...)
	}
	if err == nil && isSeparatorLine(raw) {
		if raw[4] != o.delim() {
			return nil, nil, refuse("the file says that its cells are parted by %q; %s", raw[4:5], delimHint(raw[4]))
		}
		head = append(head, raw...)
		raw, err = rows.Next()
	}
	if err == io.EOF {
		return nil, nil, refuse("the file is empty; its first line is to name the columns: %s", ask.Wanted(f))
	}
	if err != nil {
		return nil, nil, err
	}
	var row delimited.Row
	row.Split(raw, o.delim())
	if row.Flaw() != "" {
		return nil, nil, refuse("the first line has %s", row.Flaw())
	}
	if bytes.IndexByte(row.Body(), '\r') >= 0 && bytes.IndexByte(row.Body(), '"') < 0 {
		return nil, nil, refuse("the lines end with a lone CR; save the file again with LF or CR LF")
	}
	p := &plan{function: f, options: o, width: row.Len()}
	names := make([]string, row.Len())
	for i := range names {
		names[i] = strings.TrimSpace(string(row.Text(i)))
	}
	if err := p.chooseResults(names); err != nil {
		return nil, nil, err
	}
	if err := p.findInputs(names); err != nil {
		return nil, nil, err
	}
	head = append(head, row.Body()...)
	for _, text := range append(p.heads(), errorHead) {
		head = delimited.AppendText(append(head, o.delim()), text, o.delim())
	}
	end := row.End()
	if len(end) == 0 {
		end = []byte("\n")
	}
	return p, append(head, end...), nil
}

const errorHead = "error"

// isSeparatorLine tells "sep=;", which some spreadsheets write before the head.
func isSeparatorLine(raw []byte) bool {
	body := bytes.TrimRight(raw, "\r\n")
	return len(body) == 5 && strings.EqualFold(string(body[:4]), "sep=")
}

func delimHint(delim byte) string {
	switch delim {
	case ';':
		return "use -semicolon"
	case ',':
		return "leave out -semicolon"
	}
	return "save it again with commas or semicolons"
}

// chooseResults sets the outputs to write.
func (p *plan) chooseResults(names []string) error {
	results, err := ask.Wishes(p.function, p.options.Outputs)
	if err != nil {
		return refuse("%v", err)
	}
	p.results = results
	taken := map[string]bool{}
	for _, name := range names {
		taken[catalogue.Normal(name)] = true
	}
	for _, head := range append(p.heads(), errorHead) {
		if taken[catalogue.Normal(head)] {
			return refuse("there is a column %q already; rename it or take it away", head)
		}
		taken[catalogue.Normal(head)] = true
	}
	return nil
}

// heads are the heads of the results.
func (p *plan) heads() []string {
	var heads []string
	for i := range p.results {
		heads = append(heads, p.results[i].Head())
	}
	return heads
}

// findInputs finds the column, the fixed value or the default of each input.
func (p *plan) findInputs(names []string) error {
	for name := range p.options.Fixed {
		if _, ok := p.function.Input(name); !ok {
			return refuse("%s has no input %q; its inputs are: %s", p.function.Name, name, ask.Wanted(p.function))
		}
	}
	for i := range p.function.Inputs {
		s, err := p.find(&p.function.Inputs[i], names)
		if err != nil {
			return err
		}
		p.sources = append(p.sources, s)
	}
	return nil
}

func (p *plan) find(in *catalogue.Input, names []string) (source, error) {
	s := source{column: -1}
	bare := ""
	for i, head := range names {
		name, unit := catalogue.SplitHead(head)
		if catalogue.Normal(name) != in.Name {
			continue
		}
		if unit == "" && in.Unit != "" {
			bare = head
			continue
		}
		convert, err := in.Conversion(unit)
		if err != nil && len(names) == 1 {
			return s, refuse("column %q: %v; %s", head, err, p.missing(names))
		}
		if err != nil {
			return s, refuse("column %q: %v", head, err)
		}
		if s.column >= 0 {
			return s, refuse("the columns %q and %q both give %s", names[s.column], head, in.Name)
		}
		s.column, s.convert = i, convert
	}
	text, fixed := p.fixed(in.Name)
	switch {
	case fixed && s.column >= 0:
		return s, refuse("%s is given twice: column %q, and %s=%s", in.Name, names[s.column], in.Name, text)
	case fixed:
		v, err := in.Parse(text)
		if err != nil {
			return s, refuse("%v", err)
		}
		s.fixed = v
	case s.column >= 0:
	case bare != "":
		return s, refuse("column %q has no unit; head it %q, or with another unit", bare, catalogue.Head(bare, in.Unit))
	case in.HasDefault:
		s.fixed = in.Default
	default:
		return s, refuse("there is no column %q; %s", catalogue.Head(in.Name, in.Unit), p.missing(names))
	}
	return s, nil
}

func (p *plan) fixed(name string) (string, bool) {
	for key, text := range p.options.Fixed {
		if catalogue.Normal(key) == name {
			return text, true
		}
	}
	return "", false
}

// missing says what to do about a column that is not there.
func (p *plan) missing(names []string) string {
	if len(names) == 1 {
		other := byte(';')
		if p.options.Semicolon {
			other = ','
		}
		if strings.IndexByte(names[0], other) >= 0 {
			return "the file has one column, and its head has " + string(other) + " in it; " + delimHint(other)
		}
	}
	return "the function takes: " + ask.Wanted(p.function)
}
