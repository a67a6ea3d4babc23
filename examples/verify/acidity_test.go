package main

import (
	"bytes"
	"math"
	"strings"
	"testing"
)

// The scores are those that package must and the README state.
func TestAcidityScores(t *testing.T) {
	var out, bad bytes.Buffer
	if code := run([]string{"-acidity"}, &out, &bad); code != 0 {
		t.Fatal(code, bad.String())
	}
	for _, line := range []string{"cider apples, 2021", "musts, rootstock trial", "musts, ripening", "sulfate none", "sulfate usual", "sulfate high", "54 ( 98 %)"} {
		if !strings.Contains(out.String(), line) {
			t.Errorf("no %q in\n%s", line, out.String())
		}
	}
	scores, err := scoreAcidity()
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []struct {
		rows, inside int
		bias, rms    float64
	}{{55, 54, -0.01, 0.14}, {149, 139, -0.10, 0.16}, {41, 41, 0.11, 0.13}, {89, 82, 0.14, 0.17}, {89, 88, 0.02, 0.11}, {89, 85, -0.11, 0.16}} {
		s := scores[i]
		if s.Rows != want.rows || math.Abs(s.Bias-want.bias) > 0.0051 || math.Abs(s.RMS-want.rms) > 0.0051 || i < 3 && s.Inside != want.inside {
			t.Errorf("%+v, the text says %+v", s, want)
		}
	}
}
