package main

import (
	_ "embed"
	"fmt"
	"io"
	"regexp"
	"strings"
)

//go:embed laws.tsv
var lawsFile string

// A lawText is an article that a figure of the library is from.
type lawText struct {
	article, what, edition, since, changes, note string
}

// laws are the articles, in the order of the file.
func laws() []lawText {
	var all []lawText
	for line := range strings.Lines(lawsFile) {
		c := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if len(c) == 6 && c[0] != "article" {
			all = append(all, lawText{c[0], c[1], c[2], c[3], c[4], c[5]})
		}
	}
	return all
}

// writeLaws prints what of the library comes from a law, what changes often first.
func writeLaws(w io.Writer) error {
	fmt.Fprintln(w, "The law that figures of the library are from, by article, with the text that was read and the day")
	fmt.Fprintln(w, "from which it holds where that is known. Look up the law in force; what changes often stands first.")
	for _, how := range []string{"often", "seldom"} {
		fmt.Fprintf(w, "\nchanges %s:\n", how)
		for _, l := range laws() {
			if l.changes != how {
				continue
			}
			text := l.article + ": " + l.what + "; text: " + l.edition
			if l.since != "-" {
				text += "; in force: " + l.since
			}
			if l.note != "" {
				text += "; " + l.note
			}
			fmt.Fprintln(w, "  "+strings.ReplaceAll(text, "text: -; ", ""))
		}
	}
	return nil
}

// articles finds the articles that a text names, as the list writes them.
func articles(text string) []string {
	var all []string
	for _, m := range articleForms.FindAllStringSubmatch(text, -1) {
		switch {
		case m[1] != "":
			all = append(all, m[1])
		case m[2] != "":
			all = append(all, "EU "+m[2])
		case m[3] != "":
			all = append(all, "Directive "+m[3])
		}
	}
	return all
}

var articleForms = regexp.MustCompile(`([0-9]+ CFR [0-9]+\.[0-9]+|26 USC [0-9]+|OIV-MA-[A-Z0-9]+-[0-9]+[A-Z]?|French order of 3 May 1996)|Reg(?:\.|ulation) \((?:EU|EC|EEC)\)(?: No\.?)? ?([0-9]+/[0-9]+)|Directive (?:\(EU\) )?([0-9]+/[0-9]+)`)
