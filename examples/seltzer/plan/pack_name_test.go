package plan_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// fourKegs are a batch split into kegs of one size, each another drink; one has a label that tells it from the rest.
func fourKegs(t testing.TB) plan.Request {
	r := request(t)
	keg := r.Packs[0]
	keg.Volume, keg.Size = units.Litre.Of(15), units.Litre.Of(19)
	r.Packs = []plan.Pack{keg, keg, keg, keg}
	for i := range r.Packs[1:] {
		r.Packs[i+1].Sweeten = &plan.Sweeten{What: "white sugar", Like: units.GramPerLitre.Of(40)}
		r.Packs[i+1].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(1)}
	}
	r.Packs[2].Label = "green"
	return r
}

// No two packs have one name, wherever a plan speaks of them.
func TestPacksOfOneSizeAreToldApart(t *testing.T) {
	r := fourKegs(t)
	p := made(t, r)
	names := []string{"kegs of 19 L (pack 1)", "kegs of 19 L (pack 2)", "kegs of 19 L (green label)", "kegs of 19 L (pack 4)"}
	said, weighed := strings.Join(p.Cautions, "\n"), ""
	for _, w := range p.Weigh {
		weighed += w.For + "\n"
	}
	drawn, err := plan.Draw(r, 10)
	if err != nil {
		t.Fatal(err)
	}
	for i, name := range names {
		if got := p.Packs[i].Named(); got != name {
			t.Errorf("%q, want %q", got, name)
		}
		if !slices.ContainsFunc(p.Balance.Out, func(l plan.Line) bool { return l.What == "in the "+name }) {
			t.Errorf("%s: not in the balance", name)
		}
		if !slices.ContainsFunc(drawn, func(d plan.Drawn) bool { return d.What == "content of the "+name }) {
			t.Errorf("%s: not drawn", name)
		}
		if i == 0 {
			continue
		}
		for _, want := range []string{"sweetening the " + name + "\n", "souring the " + name + "\n"} {
			if !strings.Contains(weighed, want) {
				t.Errorf("%q is not weighed", want)
			}
		}
		// 40 g/L of sugar make 20.6 g/L of CO2 on top of 5.9: far over 9 bar.
		one := strings.Replace(name, "kegs", "keg", 1)
		for _, want := range []string{"The " + one + " at 22 °C, closed", "The " + name + " are sweetened with"} {
			if !strings.Contains(said, want) {
				t.Errorf("not said: %s", want)
			}
		}
	}
	if named := made(t, request(t)).Packs[0].Named(); named != "kegs" {
		t.Errorf("one kind of keg alone is %q", named)
	}
	// A label is said of a pack that stands alone, too.
	r = request(t)
	r.Packs[1].Label = "blue"
	if named := made(t, r).Packs[1].Named(); named != "bottles (blue label)" {
		t.Errorf("%q", named)
	}
	for _, bad := range []string{strings.Repeat("x", 41), "green\nred", "\x1b[31m", " "} {
		r.Packs[1].Label = bad
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "packs[1].label: ") {
			t.Errorf("%q: %v", bad, err)
		}
	}
}
