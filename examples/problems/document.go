package main

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// columns is how wide plain text is printed.
const columns = 92

// writeList prints a line for each problem.
func writeList(out io.Writer, chapters []Chapter) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%d worked problems; %d of them (marked *) rest on a published example or table, read there or in a copy that is named.\n",
		count(chapters), published(chapters))
	n := 0
	for _, c := range chapters {
		fmt.Fprintf(&b, "\n%s\n", c.Title)
		for _, p := range c.Problems {
			n++
			mark := " "
			if p.Source.Status == Read {
				mark = "*"
			}
			fmt.Fprintf(&b, "%4d %s %s\n", n, mark, p.Title)
		}
	}
	b.WriteString("\nproblems NUMBER prints one, problems -md the whole set as a document.\n")
	_, err := io.WriteString(out, b.String())
	return err
}

// writeProblem prints one problem as plain text.
func writeProblem(out io.Writer, n int, p Problem) error {
	w, err := p.Solve()
	if err != nil {
		return err
	}
	var b strings.Builder
	fmt.Fprintf(&b, "Problem %d: %s\n\n%s\n", n, p.Title, wrap(p.Ask, ""))
	b.WriteString("\nGiven\n")
	for _, g := range p.Given {
		fmt.Fprintf(&b, "  - %s\n", wrap(g, "    "))
	}
	b.WriteString("\nWorking\n")
	for i, s := range w.Steps {
		fmt.Fprintf(&b, "%3d. %s\n", i+1, wrap(s, "     "))
	}
	b.WriteString("\nAnswer\n")
	for _, a := range w.Answers {
		fmt.Fprintf(&b, "  - %s\n", wrap(a.String(), "    "))
	}
	for _, c := range w.Cautions {
		fmt.Fprintf(&b, "\nCaution: %s\n", wrap(c, "  "))
	}
	fmt.Fprintf(&b, "\nCheck (%s)\n  %s\n", p.Source.Status, wrap(p.Source.Text, "  "))
	_, err = io.WriteString(out, b.String())
	return err
}

// writeMarkdown prints the whole set with contents.
func writeMarkdown(out io.Writer, chapters []Chapter) error {
	var b strings.Builder
	b.WriteString("# Worked problems\n\n")
	fmt.Fprintf(&b, "%d problems in the order of a course. Every number in a working is computed by the library; "+
		"each answer stands beside a check value. %d problems rest on a published worked example or table, read there or in a copy that is named; "+
		"the others say what they rest on.\n\n## Contents\n", count(chapters), published(chapters))
	n := 0
	for _, c := range chapters {
		fmt.Fprintf(&b, "\n**%s**\n\n", c.Title)
		for _, p := range c.Problems {
			n++
			fmt.Fprintf(&b, "- [%d. %s](#problem-%d)\n", n, p.Title, n)
		}
	}
	n = 0
	for _, c := range chapters {
		fmt.Fprintf(&b, "\n## %s\n\n%s\n", c.Title, c.Intro)
		for _, p := range c.Problems {
			n++
			w, err := p.Solve()
			if err != nil {
				return err
			}
			markdownProblem(&b, n, p, w)
		}
	}
	_, err := io.WriteString(out, b.String())
	return err
}

func markdownProblem(b *strings.Builder, n int, p Problem, w Working) {
	fmt.Fprintf(b, "\n<a id=\"problem-%d\"></a>\n\n### %d. %s\n\n%s\n\nGiven:\n\n", n, n, p.Title, p.Ask)
	for _, g := range p.Given {
		fmt.Fprintf(b, "- %s\n", g)
	}
	b.WriteString("\nWorking:\n\n")
	for i, s := range w.Steps {
		fmt.Fprintf(b, "%d. %s\n", i+1, s)
	}
	b.WriteString("\n| answer | value | check | tolerance |\n| --- | --- | --- | --- |\n")
	for _, a := range w.Answers {
		fmt.Fprintf(b, "| %s | %s | %s | %s |\n", a.Name, strings.TrimSpace(fmt.Sprintf("%.*f %s", a.Places, a.Got, a.Unit)),
			a.Printed(), a.Bound())
	}
	for _, c := range w.Cautions {
		fmt.Fprintf(b, "\n> Caution: %s\n", c)
	}
	fmt.Fprintf(b, "\nCheck (%s): %s\n", p.Source.Status, p.Source.Text)
}

// wrap breaks text between words so that a line with its indent fits the width.
func wrap(text, indent string) string {
	var b strings.Builder
	at := utf8.RuneCountInString(indent)
	for i, word := range strings.Fields(text) {
		width := utf8.RuneCountInString(word)
		switch {
		case i == 0:
		case at+1+width > columns:
			b.WriteString("\n" + indent)
			at = utf8.RuneCountInString(indent)
		default:
			b.WriteByte(' ')
			at++
		}
		b.WriteString(word)
		at += width
	}
	return b.String()
}
