package lang

import (
	"path/filepath"
	"strings"
	"testing"
)

// The request that comes with the plan.
const builtInRequest = "../../seltzer/request.json"

func absolute(t *testing.T, name string) string {
	t.Helper()
	path, err := filepath.Abs(name)
	if err != nil {
		t.Fatal(err)
	}
	return path
}

func TestNode(t *testing.T) {
	elsewhere(t)
	for _, c := range []struct{ name, variable, program string }{{"one", "ZYMASE_NODE", "node"}, {"another", "ZYMASE_OTHER_NODE", ""}} {
		t.Run(c.name, func(t *testing.T) {
			names := []string{c.program}
			if c.program == "" {
				names = []string{"a second version of Node"}
			}
			node := program(t, c.variable, names...)
			dir := written(t, "js", JavaScript)
			said := run(t, "testdata", nil, node, "node.mjs", dir, examplesFile(t), absolute(t, builtInRequest))
			t.Log(strings.TrimSpace(said))
		})
	}
}
