package main

import (
	"errors"
	"flag"
	"fmt"
	"strings"
)

// request is what stands on the command line after the flags are taken out.
type request struct {
	name    string
	inputs  []given  // input=value
	outputs []string // all else
}

type given struct{ name, text string }

// words parses the flags, which may stand between other words, and returns
// these.
func (p *program) words() ([]string, error) {
	var words []string
	rest := p.args
	for {
		if err := p.flags.Parse(rest); err != nil {
			if errors.Is(err, flag.ErrHelp) {
				return nil, err
			}
			return nil, errTold
		}
		left := p.flags.Args()
		if n := len(rest) - len(left); n > 0 && rest[n-1] == "--" {
			return append(words, left...), nil
		}
		if len(left) == 0 {
			return words, nil
		}
		words = append(words, left[0])
		rest = left[1:]
	}
}

// noWords refuses words for a command that has flags only.
func (p *program) noWords() error {
	words, err := p.words()
	if err == nil && len(words) > 0 {
		p.flags.Usage()
		return fmt.Errorf("%.64q is not a flag", words[0])
	}
	return err
}

// parseRequest tells the name of the function, inputs and outputs apart. An input is
// given once.
func parseRequest(words []string) (request, error) {
	if len(words) == 0 {
		return request{}, errors.New(`the name of a function is missing; "bridge functions" lists them`)
	}
	r := request{name: words[0]}
	seen := map[string]bool{}
	for _, word := range words[1:] {
		name, text, isInput := strings.Cut(word, "=")
		name, text = strings.TrimSpace(name), strings.TrimSpace(text)
		switch {
		case name == "":
			return r, fmt.Errorf("%.64q is neither input=value nor an output", word)
		case !isInput:
			r.outputs = append(r.outputs, name)
		case seen[strings.ToLower(name)]:
			return r, fmt.Errorf("%.64s is given twice", name)
		default:
			seen[strings.ToLower(name)] = true
			r.inputs = append(r.inputs, given{name, text})
		}
	}
	return r, nil
}
