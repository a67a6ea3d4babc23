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
	for _, line := range []string{"cider apples, 2021", "musts, rootstock trial", "musts, ripening", "sulfate none", "sulfate usual",
		"sulfate high", "54 ( 98 %)"} {
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

// A content of strong ions that is fitted to half of the rows holds for the other half as for its own: what the
// coverage is worth for juices that nobody has seen.
func TestAcidityHoldsForRowsLeftOut(t *testing.T) {
	scores, err := crossScore()
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []struct {
		rows, inside int
		bias, rms    float64
	}{{55, 54, -0.01, 0.14}, {149, 139, -0.10, 0.16}, {41, 41, 0.11, 0.13}} {
		if s := scores[i]; s.Rows != want.rows || s.Inside < want.inside-2 || math.Abs(s.Bias-want.bias) > 0.02 || math.Abs(s.RMS-want.rms) > 0.01 {
			t.Errorf("%+v, as fitted to all %+v", s, want)
		}
	}
}

// Of 14 measured buffer capacities ten are met within 10 %; each other one has its reason.
func TestBufferScores(t *testing.T) {
	scores, err := scoreBuffers()
	if err != nil {
		t.Fatal(err)
	}
	outside := 0
	for _, s := range scores {
		if math.Abs(s.off()) > mostBufferOff {
			outside++
			if s.Why == "" {
				t.Errorf("%s is %+.0f %% off, and nothing says why", s.Row, s.off())
			}
		}
	}
	if len(scores) != 14 || outside != len(whyOutside) || outside != 4 {
		t.Errorf("%d of %d outside", outside, len(scores))
	}
}
