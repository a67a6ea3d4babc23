package lang

import (
	"fmt"
	"go/token"
	"slices"
	"strconv"
	"strings"
	"text/template"

	"example.org/zymase/examples/bridge/licences"
)

// Python writes a package into dir, whose name is then that of the package: the shared library,
// the functions with their docstrings, and type stubs. It needs nothing but the standard
// library of Python 3.8 or later. It takes the Go toolchain and the C compiler at hand. A directory
// that holds anything else is refused.
func Python(dir string) error {
	m, err := newModel()
	if err != nil {
		return err
	}
	m.Library = sharedName()
	files, err := m.python()
	if err != nil {
		return err
	}
	if err := files.mayGo(dir); err != nil {
		return err
	}
	if files[m.Library], err = buildShared(); err != nil {
		return err
	}
	if files["licences.txt"], err = licences.Text(); err != nil {
		return err
	}
	return files.write(dir)
}

// python are the files of the package, without what is in the library.
func (m *model) python() (files, error) {
	files := files{m.Library: nil, "py.typed": {}, pyCache: nil, "licences.txt": nil}
	more := template.FuncMap{"py": pyName, "words": pyWords, "pynumber": pyNumber}
	for name, from := range map[string]string{
		"__init__.py": "init.py.tmpl", "__init__.pyi": "init.pyi.tmpl", "columns.py": "columns.py.tmpl", "columns.pyi": "columns.pyi.tmpl",
		"_border.py": "border.py.tmpl", "_table.py": "table.py.tmpl",
	} {
		text, err := m.render(from, more)
		if err != nil {
			return nil, err
		}
		files[name] = text
	}
	return files, nil
}

// pyKeywords are those of Python that are words of a catalogue, or might become one.
var pyKeywords = []string{"and", "as", "assert", "async", "await", "class", "def", "del", "elif", "except", "finally", "from", "global", "in", "is", "lambda",
	"nonlocal", "not", "or", "pass", "raise", "try", "while", "with", "yield"}

// pyName is a name that Python takes: a keyword has an underscore after it.
func pyName(name string) string {
	if slices.Contains(pyKeywords, name) || token.IsKeyword(name) {
		return name + "_"
	}
	return name
}

func pyNumber(v float64) string {
	text := strconv.FormatFloat(v, 'g', -1, 64)
	if !strings.ContainsAny(text, ".e") {
		text += ".0"
	}
	return text
}

func pyWords(words []string) string {
	if words == nil {
		return "None"
	}
	var all []string
	for _, w := range words {
		all = append(all, quote(w))
	}
	return "(" + strings.Join(all, ", ") + ",)"
}

// ResultName is the type of several results: Co2Pressure.
func (f function) ResultName() string {
	var name strings.Builder
	for _, part := range strings.Split(f.Name, "_") {
		name.WriteString(upper(part))
	}
	return name.String()
}

// arguments are the names of the arguments, in the order of the inputs, text before number.
func (f function) arguments() []string {
	var names []string
	for _, in := range f.Inputs {
		names = append(names, pyName(in.Name))
		if in.Two {
			names = append(names, pyName(in.Number))
		}
	}
	return names
}

// PyParameters are the parameters of a function.
func (f function) PyParameters() string {
	s := "*"
	for _, name := range f.arguments() {
		s += ", " + name + "=None"
	}
	return s
}

// PyGiven hands them on.
func (f function) PyGiven() string {
	s := ""
	for _, name := range f.arguments() {
		s += name + ", "
	}
	return strings.TrimSuffix(s, " ")
}

// PyDoc is the docstring.
func (f function) PyDoc() string {
	var s strings.Builder
	fmt.Fprintf(&s, "%s.\n\n", upper(f.Meaning))
	for _, in := range f.Inputs {
		name := pyName(in.Name)
		if in.Two {
			name += " or " + pyName(in.Number)
		}
		fmt.Fprintf(&s, "    %s: %s\n", name, in.Doc())
	}
	s.WriteString("\n")
	for _, out := range f.Outputs {
		fmt.Fprintf(&s, "    gives %s: %s\n", pyName(out.Name), out.Doc())
	}
	fmt.Fprintf(&s, "\n    Source: %s\n    ", f.Source)
	return strings.NewReplacer(`\`, `\\`, `"""`, `\"\"\"`).Replace(s.String())
}

func (o output) pyType() string {
	switch {
	case o.Words == nil:
		return "float"
	case o.Several:
		return "str"
	}
	return pyLiteral(o.Words)
}

func pyLiteral(words []string) string {
	var all []string
	for _, w := range words {
		all = append(all, quote(w))
	}
	return "Literal[" + strings.Join(all, ", ") + "]"
}

// mostOverloads is for how many inputs that must be given each pair of names is spelled out.
const mostOverloads = 3

// PyStub are the types of a call.
func (f function) PyStub() string {
	var s strings.Builder
	result := ""
	if len(f.Outputs) == 1 {
		result = f.Outputs[0].pyType()
	} else {
		result = f.ResultName()
		fmt.Fprintf(&s, "class %s(NamedTuple):\n", result)
		for _, out := range f.Outputs {
			fmt.Fprintf(&s, "    %s: %s\n", pyName(out.Name), out.pyType())
		}
	}
	var must []input
	for _, in := range f.Inputs {
		if in.Two && !in.HasDefault {
			must = append(must, in)
		}
	}
	forms := 1 << len(must)
	if len(must) > mostOverloads {
		forms, must = 1, nil
	}
	for form := range forms {
		if forms > 1 {
			s.WriteString("@overload\n")
		}
		parameters := []string{"*"}
		for _, in := range f.Inputs {
			place := slices.IndexFunc(must, func(m input) bool { return m.Name == in.Name })
			switch {
			case in.Options != nil:
				parameters = append(parameters, pyName(in.Name)+": "+pyLiteral(in.Options)+optional(in))
			case !in.Two:
				parameters = append(parameters, pyName(in.Name)+": Union[float, str]"+optional(in))
			case place >= 0 && form>>place&1 == 0:
				parameters = append(parameters, pyName(in.Name)+": str")
			case place >= 0:
				parameters = append(parameters, pyName(in.Number)+": float")
			default:
				parameters = append(parameters, pyName(in.Name)+": str = ...", pyName(in.Number)+": float = ...")
			}
		}
		fmt.Fprintf(&s, "def %s(%s) -> %s: ...\n", f.Name, strings.Join(parameters, ", "), result)
	}
	return s.String()
}

func optional(in input) string {
	if in.HasDefault {
		return " = ..."
	}
	return ""
}

// PyColumnStub are the types of a column.
func (f function) PyColumnStub() string {
	var s strings.Builder
	result := "_" + f.ResultName()
	fmt.Fprintf(&s, "class %s(Column):\n", result)
	for _, out := range f.Outputs {
		fmt.Fprintf(&s, "    %s: Any\n", pyName(out.Name))
	}
	parameters := []string{"*"}
	for _, in := range f.Inputs {
		switch {
		case in.Options != nil:
			word := pyLiteral(in.Options)
			parameters = append(parameters, fmt.Sprintf("%s: Union[%s, Sequence[Optional[%s]]]%s", pyName(in.Name), word, word, optional(in)))
		case !in.Two:
			parameters = append(parameters, pyName(in.Name)+": Union[float, str, Numbers]"+optional(in))
		default:
			parameters = append(parameters, pyName(in.Name)+": Union[str, Tuple[str, Numbers]] = ...", pyName(in.Number)+": Union[float, Numbers] = ...")
		}
	}
	fmt.Fprintf(&s, "def %s(%s) -> %s: ...\n", f.Name, strings.Join(parameters, ", "), result)
	return s.String()
}
