package lang

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/number"
)

// compiled compiles a C program against the library and runs it.
func compiled(t *testing.T, source string, flags ...string) string {
	t.Helper()
	cc := program(t, "CC", "gcc", "clang", "cc")
	dir := written(t, "c", C)
	file := filepath.Join(t.TempDir(), "program")
	args := append([]string{"-std=c99", "-D_POSIX_C_SOURCE=200809L", "-Wall", "-Wextra", "-Werror", "-I", dir, "-o", file, source,
		"-L", dir, "-lzymase", "-lpthread", "-Wl,-rpath," + dir}, flags...)
	run(t, "", nil, cc, args...)
	return run(t, "", nil, file)
}

// Every function with its example, through the header, has the digits of Go.
func TestC(t *testing.T) {
	elsewhere(t)
	m, err := newModel()
	if err != nil {
		t.Fatal(err)
	}
	var b, want bytes.Buffer
	b.WriteString("#include <stdio.h>\n#include \"zymase.h\"\nint main(void) {\n  zymase_error error;\n")
	for _, f := range m.Functions {
		fmt.Fprintf(&b, "  {\n    zymase_%s_in in = zymase_%[1]s_inputs();\n    zymase_%[1]s_out out;\n", f.Name)
		in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		for i, p := range f.Inputs {
			in[i] = p.Example
			if p.Two && i%2 == 0 {
				fmt.Fprintf(&b, "    if (zymase_%s_read_%s(%s, &in, &error)) puts(error.message);\n", f.Name, p.Name, quote(p.Shown))
			} else if p.Options != nil {
				fmt.Fprintf(&b, "    in.%s = ZYMASE_%s_%s_%s;\n", p.Number, strings.ToUpper(f.Name), strings.ToUpper(p.Name), constant(p.Shown))
			} else {
				fmt.Fprintf(&b, "    in.%s = %s;\n", p.Number, cNumber(p.Example))
			}
		}
		fmt.Fprintf(&b, "    if (zymase_%s(&in, &out, &error)) puts(error.message);\n", f.Name)
		if err := f.Call(in, out); err != nil {
			t.Fatal(err)
		}
		for i, o := range f.Outputs {
			fmt.Fprintf(&b, "    printf(\"%s %s %%.12g\\n\", out.%[2]s);\n", f.Name, o.Name)
			fmt.Fprintf(&want, "%s %s %s\n", f.Name, o.Name, number.Append(nil, out[i]))
		}
		b.WriteString("  }\n")
	}
	b.WriteString("  return 0;\n}\n")
	source := filepath.Join(t.TempDir(), "examples.c")
	if err := os.WriteFile(source, b.Bytes(), 0o666); err != nil {
		t.Fatal(err)
	}
	got, wanted := strings.Split(compiled(t, source), "\n"), strings.Split(want.String(), "\n")
	if len(got) != len(wanted) {
		t.Fatalf("%d figures, and not %d", len(got), len(wanted))
	}
	for i, line := range wanted {
		if !sameFigure(got[i], line) {
			t.Errorf("%s, and not %s", got[i], line)
		}
	}
}

// sameFigure compares two lines that end in a number.
func sameFigure(a, b string) bool {
	i, j := strings.LastIndexByte(a, ' '), strings.LastIndexByte(b, ' ')
	if i < 0 || j < 0 {
		return a == b
	}
	x, err := strconv.ParseFloat(a[i+1:], 64)
	y, no := strconv.ParseFloat(b[j+1:], 64)
	return err == nil && no == nil && x == y && a[:i] == b[:j]
}

func TestUseFromC(t *testing.T) {
	elsewhere(t)
	compiled(t, absolute(t, "testdata/use.c"))
}
