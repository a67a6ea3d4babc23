package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A card is a plan in the order of the work: what is done, one step after another, with a
// box to tick and blanks for what was read. Every figure on it is one of the plan's.
type card struct {
	alias  map[string]string // of steps by what is filled in them
	own    map[string]string // of steps by the words of a caution that belongs to one pack alone
	title  string
	before []string // cautions that belong to no one step
	steps  []step
}

// A step is one thing to do.
type step struct {
	id       string // keeps its name from plan to plan, so that a tick stays where it was
	title    string
	when     string // what has to be so first; empty: the step before is done
	do       []string
	weigh    []row // what goes in
	read     []row // what should be read: a blank stands beside it
	cautions []string
}

// cardOf lays a plan out as a brew-day card.
func cardOf(p plan.Plan, s style) card {
	p = s.said(p)
	c := card{title: p.Name, alias: map[string]string{}, own: map[string]string{}}
	for i, k := range p.Packs {
		c.own["The "+k.Named()+" are sweetened with"] = fmt.Sprintf("fill-%d", i+1)
		if f := p.Request.Packs[i].Flavour; f != nil && k.Taste != "" {
			c.own["The flavouring of the "+k.Named()+" brings"] = fmt.Sprintf("fill-%d", i+1)
			c.own[f.Added.Text(units.Millilitre, 2)+" of "+k.Taste+", is "] = fmt.Sprintf("fill-%d", i+1)
		}
		primed := k.Bottle != nil && k.Bottle.Priming.What != ""
		if _, have := c.alias["prime"]; primed && !have {
			c.alias["prime"] = fmt.Sprintf("prime-%d", i+1)
			if len(priming(k, "", s)) == 0 {
				c.alias["prime"] = fmt.Sprintf("fill-%d", i+1)
			}
		}
		for as, is := range map[string]bool{"fill-counter": k.Bottle != nil && k.Bottle.Filling != nil, "fill-still": k.Bottle != nil && k.Still} {
			if _, have := c.alias[as]; is && !have {
				c.alias[as] = fmt.Sprintf("fill-%d", i+1)
			}
		}
	}
	if p.Base != nil {
		c.add(lettingDown(p, s)...)
	} else {
		c.add(brewing(p, s)...)
		c.add(souring(p, s)...)
		c.add(pitching(p, s)...)
		c.add(fermenting(p, s)...)
	}
	c.add(packing(p, s)...)
	c.maturing(p, s)
	for _, text := range p.Cautions {
		c.caution(text)
	}
	return c
}

func (c *card) add(steps ...step) { c.steps = append(c.steps, steps...) }

// printCard writes a card for a terminal or a printer.
func printCard(w io.Writer, c card) {
	fmt.Fprintln(w, strings.ToUpper(c.title))
	for _, text := range c.before {
		wrap(w, "  ! ", text)
	}
	for i, st := range c.steps {
		fmt.Fprintf(w, "\n[ ] %2d  %s\n", i+1, st.title)
		if st.when != "" {
			wrap(w, "        when    ", st.when)
		}
		for _, r := range st.weigh {
			fmt.Fprintln(w, strings.TrimRight("        take    "+pad(r.label, labelWidth)+" "+pad(r.value, valueWidth)+" "+r.note, " "))
		}
		for _, text := range st.do {
			wrap(w, "        ", text)
		}
		for _, r := range st.read {
			fmt.Fprintln(w, "        read    "+pad(r.label, labelWidth)+" "+pad(r.value, valueWidth)+" ____________")
			if r.note != "" {
				wrap(w, "                  ", r.note)
			}
		}
		for _, text := range st.cautions {
			wrap(w, "      ! ", text)
		}
	}
}
