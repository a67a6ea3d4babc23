package lang

import (
	"fmt"
	"strconv"
	"strings"
	"text/template"

	"example.org/zymase/examples/bridge/licences"
)

// C writes a header and a shared library into dir. It takes the Go toolchain and the C compiler at
// hand. A directory that holds anything else is refused.
func C(dir string) error {
	m, err := newModel()
	if err != nil {
		return err
	}
	header, err := m.header()
	if err != nil {
		return err
	}
	files := files{"zymase.h": header, sharedName(): nil, "licences.txt": nil}
	if err := files.mayGo(dir); err != nil {
		return err
	}
	if files[sharedName()], err = buildShared(); err != nil {
		return err
	}
	if files["licences.txt"], err = licences.Text(); err != nil {
		return err
	}
	return files.write(dir)
}

func (m *model) header() ([]byte, error) {
	return m.render("zymase.h.tmpl", template.FuncMap{"enum": enum, "number": cNumber})
}

// enum are the words of a choice with their numbers.
func enum(function, input string, options []string) string {
	var all []string
	for i, o := range options {
		all = append(all, fmt.Sprintf("ZYMASE_%s_%s_%s = %d", strings.ToUpper(function), strings.ToUpper(input), constant(o), i))
	}
	return strings.Join(all, ", ")
}

// constant is a word as a part of a name in capitals.
func constant(word string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z':
			return r - 'a' + 'A'
		case r >= 'A' && r <= 'Z' || r >= '0' && r <= '9':
			return r
		}
		return '_'
	}, word)
}

// cNumber is a number that C takes for a double.
func cNumber(v float64) string { return strconv.FormatFloat(v, 'e', -1, 64) }
