package plan

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/zymase/units"
)

// Named is what a kind of pack is called, as no other of the plan: "kegs", "kegs of 19 L", "kegs of 19 L (green label)".
func (p *PackPlan) Named() string { return packName(p.Kind+"s", p.Of, p.Mark) }

// One is one of them.
func (p *PackPlan) One() string { return packName(p.Kind, p.Of, p.Mark) }

// named is [PackPlan.Named] before there is a plan.
func (p *packRecipe) named() string { return packName(p.Kind+"s", p.of, p.mark) }

func packName(name, of, mark string) string {
	if of != "" {
		name += " of " + of
	}
	if mark != "" {
		name += " (" + mark + ")"
	}
	return name
}

// SizeText is what a pack holds, to a millilitre: "0.33 L", "18.927 L" of a keg of 5 US gallons.
func SizeText(v units.Volume) string {
	return strconv.FormatFloat(math.Round(1000*v.In(units.Litre))/1000, 'f', -1, 64) + " L"
}

// namePacks names the packs by their label, by their size where a kind stands twice, and by their place where nothing
// else tells one from another.
func (k *recipe) namePacks() {
	for i := range k.packs {
		p := &k.packs[i]
		if p.Label != "" {
			p.mark = p.Label + " label"
		}
		for j := range k.packs {
			if i != j && k.packs[j].Kind == p.Kind {
				p.of = SizeText(p.Size)
			}
		}
	}
	names := map[string]int{}
	for i := range k.packs {
		names[k.packs[i].named()]++
	}
	for i := range k.packs {
		p := &k.packs[i]
		if names[p.named()] < 2 {
			continue
		}
		place := fmt.Sprintf("pack %d", i+1)
		if p.mark != "" {
			place = p.mark + ", " + place
		}
		p.mark = place
	}
}

// labelOK checks what a label is known by.
func (p *packRecipe) labelOK(field string) error {
	const longest = 40 // letters: it stands in the names of a pack
	text := p.Label
	if text == "" || utf8.RuneCountInString(text) <= longest && strings.TrimSpace(text) != "" &&
		strings.IndexFunc(text, func(r rune) bool { return !unicode.IsPrint(r) || r == utf8.RuneError }) < 0 {
		return nil
	}
	return &RequestError{Field: field, Value: fmt.Sprintf("%q", clip(text)),
		Allowed: fmt.Sprintf("a word or two, such as its colour, at most %d letters", longest)}
}
