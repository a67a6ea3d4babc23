package main

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/internal/published"
)

// An asker maps the heads of an export to a function: by what was said with flags, by name, and
// what is left by question and answer. Without a terminal it ends with what may be said.
type asker struct {
	from      *bufio.Reader // nil where nobody answers
	to        io.Writer
	checks    string            // the function, if it was said
	columns   map[string]string // a head to what it is, "" for a label
	fixed     map[string]string // an input to what it is in every row
	tolerance string
	source    string
}

// mapped writes a sheet in the form of internal/published.
func (a *asker) mapped(s *sheet) (string, error) {
	f, err := a.function(s)
	if err != nil {
		return "", err
	}
	what := make([]string, len(s.heads)) // each column's input or output
	used := map[string]bool{}
	for i, h := range s.heads { // what was said counts first
		if to, ok := a.said(h); ok {
			what[i] = to
			used[to] = true
		}
	}
	for i, h := range s.heads {
		if _, ok := a.said(h); !ok {
			if to := likely(f, h, used); to != "" {
				what[i] = to
				used[to] = true
			}
		}
	}
	for i, h := range s.heads {
		if _, ok := a.said(h); ok || what[i] != "" {
			continue
		}
		if what[i], err = a.column(s, f, h, used); err != nil {
			return "", err
		}
		used[what[i]] = true
	}
	fixed := map[string]string{}
	for _, p := range f.Inputs {
		switch v, ok := a.fixed[p.Name]; {
		case used[p.Name]:
		case ok:
			fixed[p.Name] = v
		case !p.HasDefault:
			if fixed[p.Name], err = a.same(s, f, p); err != nil {
				return "", err
			}
		}
	}
	return a.written(s, f, what, fixed), nil
}

// said looks up a head in the -map flags, with its unit or without, and without what was merged
// above it.
func (a *asker) said(h sheetHead) (string, bool) {
	for _, text := range []string{h.text, h.name} {
		if to, ok := a.columns[strings.ToLower(text)]; ok {
			return to, true
		}
	}
	for text, to := range a.columns { // the lower of merged heads alone
		if strings.HasSuffix(strings.ToLower(h.text), " "+text) {
			return to, true
		}
	}
	return "", false
}

// function is the one that was said, or is asked for.
func (a *asker) function(s *sheet) (*catalogue.Function, error) {
	if a.checks != "" {
		f, err := catalogue.Find(a.checks)
		if err != nil {
			return nil, &published.FileError{File: s.name, Reason: "-checks: " + err.Error()}
		}
		return f, nil
	}
	type near struct {
		name string
		hits int
	}
	var list []near
	for _, f := range catalogue.All() {
		hits, used := 0, map[string]bool{}
		for _, h := range s.heads {
			if to := likely(&f, h, used); to != "" {
				used[to] = true
				hits++
			}
		}
		if hits > 0 {
			list = append(list, near{f.Name, hits})
		}
	}
	slices.SortStableFunc(list, func(a, b near) int { return cmp.Compare(b.hits, a.hits) })
	var names []string
	for _, n := range list[:min(8, len(list))] {
		names = append(names, n.name)
	}
	answer, err := a.ask(s, "which function computes what was measured?", names, "-checks FUNCTION (go run ./examples/bridge functions lists them)")
	if err != nil {
		return nil, err
	}
	f, err := catalogue.Find(answer)
	if err != nil {
		return nil, &published.FileError{File: s.name, Reason: err.Error()}
	}
	return f, nil
}

// likely is the input or output that a head means beyond doubt: by its name, or the only one whose
// name shares all words with it, where the unit fits.
func likely(f *catalogue.Function, h sheetHead, used map[string]bool) string {
	words := strings.Fields(strings.Map(func(r rune) rune {
		if strings.ContainsRune("_-./()[]:", r) {
			return ' '
		}
		return r
	}, strings.ToLower(h.name)))
	found := ""
	for _, p := range places(f) {
		if used[p.name] || !p.fits(h.unit) {
			continue
		}
		of := strings.Split(p.name, "_")
		if strings.Join(words, "_") == p.name {
			return p.name
		}
		if len(words) > 0 && (within(words, of) || within(of, words)) {
			if found != "" {
				return ""
			}
			found = p.name
		}
	}
	return found
}

func within(a, b []string) bool {
	for _, w := range a {
		if !slices.Contains(b, w) {
			return false
		}
	}
	return true
}

// A place is an input or an output of a function.
type place struct {
	name, unit, meaning string
	output              bool
	fits                func(unit string) bool
}

func places(f *catalogue.Function) []place {
	var all []place
	for i := range f.Inputs {
		p := &f.Inputs[i]
		all = append(all, place{p.Name, p.Unit, p.Meaning, false, func(unit string) bool {
			if unit == "" {
				return p.Unit == ""
			}
			_, err := p.Conversion(unit)
			return err == nil
		}})
	}
	for i := range f.Outputs {
		p := &f.Outputs[i]
		if p.IsText() {
			continue
		}
		all = append(all, place{p.Name, p.Unit, p.Meaning, true, func(unit string) bool {
			if unit == "" {
				return p.Unit == ""
			}
			_, err := p.Conversion(unit)
			return err == nil
		}})
	}
	return all
}

// column asks what a head is; nothing is a column that is only shown.
func (a *asker) column(s *sheet, f *catalogue.Function, h sheetHead, used map[string]bool) (string, error) {
	var choices []string
	for _, p := range places(f) {
		if !used[p.name] && (h.unit == "" || p.fits(h.unit)) {
			choices = append(choices, p.name)
		}
	}
	choices = append(choices, "label")
	answer, err := a.ask(s, fmt.Sprintf("what is the column %q for %s?", h.text, f.Name), choices, fmt.Sprintf("-map %q", h.text+"=NAME"))
	if err != nil || answer == "label" {
		return "", err
	}
	return answer, nil
}

// same asks what an input is that no column gives.
func (a *asker) same(s *sheet, f *catalogue.Function, p catalogue.Input) (string, error) {
	answer, err := a.ask(s, fmt.Sprintf("%s needs %s: what is it in every row (%s)?", f.Name, catalogue.Head(p.Name, p.Unit), p.Meaning),
		p.Options, fmt.Sprintf("-fix %q", p.Name+"=VALUE "+p.Unit))
	if err != nil {
		return "", err
	}
	if _, err := p.Parse(answer); err != nil {
		return "", &published.FileError{File: s.name, Reason: err.Error()}
	}
	return answer, nil
}

// ask puts a question, with choices where there are any: a number or the words are an answer.
// Where nobody answers the error says the choices and the flag that answers.
func (a *asker) ask(s *sheet, question string, choices []string, flag string) (string, error) {
	if a.from == nil {
		reason := question + " Say so with " + flag
		if len(choices) > 0 {
			reason += "; it may be " + strings.Join(choices, ", ")
		}
		return "", &published.FileError{File: s.name, Reason: reason}
	}
	fmt.Fprintln(a.to, question)
	for i, c := range choices {
		fmt.Fprintf(a.to, "  %d  %s\n", i+1, c)
	}
	for {
		fmt.Fprint(a.to, "> ")
		line, err := a.from.ReadString('\n')
		line = strings.TrimSpace(line)
		if n, e := strconv.Atoi(line); e == nil && n >= 1 && n <= len(choices) {
			return choices[n-1], nil
		}
		if line != "" && (len(choices) == 0 || slices.Contains(choices, line) || strings.HasPrefix(flag, "-checks")) {
			return line, nil
		}
		if err != nil {
			return "", &published.FileError{File: s.name, Reason: "no answer to: " + question}
		}
	}
}

// written is the table, with what was understood as its heads.
func (a *asker) written(s *sheet, f *catalogue.Function, what []string, fixed map[string]string) string {
	var b strings.Builder
	head := func(name, value string) { fmt.Fprintf(&b, "# %s: %s\n", name, value) }
	head("title", cmp.Or(s.title, s.name))
	head("source", cmp.Or(a.source, s.title, s.name))
	head("status", string(published.Read))
	head("checks", f.Name)
	head("tolerance", cmp.Or(a.tolerance, "printed; half the last digit that was written, as no -tolerance was said"))
	for _, p := range f.Inputs {
		if v, ok := fixed[p.Name]; ok {
			head("fixed "+p.Name, v)
		}
	}
	columns, labels := []string{"file_line"}, []string{"file_line"}
	var heads []string
	unit := map[string]string{}
	for _, p := range places(f) {
		unit[p.name] = p.unit
	}
	taken := map[string]int{}
	for i, h := range s.heads {
		name := what[i]
		if name == "" {
			name = label(h.text, taken)
			labels = append(labels, name)
			columns = append(columns, name)
		} else {
			columns = append(columns, catalogue.Head(name, cmp.Or(h.unit, unit[name])))
			heads = append(heads, fmt.Sprintf("%q as %s", h.text, columns[len(columns)-1]))
		}
	}
	head("labels", strings.Join(labels, ", "))
	notes := append([]string{"read " + strings.Join(heads, ", ")}, s.notes...)
	if s.comma {
		notes = append(notes, "the numbers have a decimal comma")
	}
	var rows []string
	for _, r := range s.rows {
		whole := true
		for i, c := range r.cells {
			whole = whole && (what[i] == "" || c != "")
		}
		if !whole {
			notes = append(notes, fmt.Sprintf("line %d is left out, as a cell is empty", r.line))
			continue
		}
		cells := []string{strconv.Itoa(r.line)}
		for i, c := range r.cells {
			if what[i] == "" && c == "" {
				c = "-"
			}
			cells = append(cells, quoted(c))
		}
		rows = append(rows, strings.Join(cells, ","))
	}
	head("note", strings.Join(notes, "; "))
	b.WriteString(strings.Join(columns, ",") + "\n" + strings.Join(rows, "\n") + "\n")
	return b.String()
}

// label is a name for a column that is only shown.
func label(text string, taken map[string]int) string {
	name := strings.Trim(strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			return r
		}
		return '_'
	}, strings.ToLower(text)), "_")
	name = "shown_" + cmp.Or(name, "column")
	if taken[name]++; taken[name] > 1 {
		name += "_" + strconv.Itoa(taken[name])
	}
	return name
}

func quoted(cell string) string {
	if strings.ContainsAny(cell, ",\"\n") {
		return `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
	}
	return cell
}
