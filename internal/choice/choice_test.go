package choice_test

import (
	"errors"
	"testing"

	"example.org/zymase/internal/choice"
	"example.org/zymase/units"
)

type step int

var steps = choice.Of[step]("p.Step", "step", "", "mash", "boil") // 0 is not to be used

func TestTexts(t *testing.T) {
	for text, want := range map[string]step{"mash": 1, "boil": 2, " Boil ": 2} {
		var got step
		if err := steps.Unmarshal([]byte(text), &got); err != nil || got != want {
			t.Errorf("%q: %v %v", text, got, err)
		}
	}
	for _, v := range []step{1, 2} {
		text, err := steps.Marshal(v)
		if back, again := steps.Parse("f", string(text)); back != v || err != nil || again != nil || steps.Text(v) != string(text) {
			t.Error(v, string(text), err, again)
		}
	}
}

func TestUnknown(t *testing.T) {
	for v, text := range map[step]string{-1: "unknown step -1", 0: "unknown step 0", 3: "unknown step 3"} {
		if steps.Text(v) != text {
			t.Errorf("%q", steps.Text(v))
		}
		_, err := steps.Marshal(v)
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.Func != "p.Step.MarshalText" || len(e.Choices) != 2 {
			t.Error(v, err)
		}
	}
	got := step(2)
	for _, text := range []string{"", "mashing", "1"} {
		if err := steps.Unmarshal([]byte(text), &got); err == nil || got != 2 {
			t.Error(text, got, err)
		}
	}
	const want = `p.Step.UnmarshalText: unknown step "1"; one of mash, boil`
	if err := steps.Unmarshal([]byte("1"), &got); err.Error() != want {
		t.Error(err)
	}
}

// Whoever needs the first only may stop there.
func TestAllStops(t *testing.T) {
	for v := range steps.All() {
		if v != 1 {
			t.Error(v)
		}
		break
	}
}

func TestCheckDoesNotAllocate(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() { _ = steps.Check("f", 1) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// The first text is as good as the others where it is not empty.
func TestFirst(t *testing.T) {
	of := choice.Of[step]("p.Step", "step", "soak", "mash")
	if v, err := of.Parse("f", "soak"); v != 0 || err != nil || of.Text(0) != "soak" {
		t.Errorf("%v, %v, %q", v, err, of.Text(0))
	}
}
