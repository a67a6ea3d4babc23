package loopback

import (
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"
)

// Keys of a query that are not inputs of a function.
const (
	keyAs     = "as"
	keyOutput = "output"
	keyUnit   = "unit"
)

// query is what stands after the question mark.
type query struct {
	xml          bool
	output, unit string
	inputs       []pair
}

type pair struct{ key, value string }

// parse takes a raw query apart. Form, output and unit stand at most once; it
// is for the function to say whether an input is known or doubled.
func parse(raw string) (query, error) {
	q := query{inputs: make([]pair, 0, 8)}
	form := ""
	for part := range strings.SplitSeq(raw, "&") {
		if part == "" {
			continue
		}
		key, value, found := strings.Cut(part, "=")
		if !found {
			return q, fmt.Errorf("%.64q is not input=value", part)
		}
		key, err := decode(key)
		if err != nil {
			return q, err
		}
		if value, err = decode(value); err != nil {
			return q, fmt.Errorf("%s: %w", key, err)
		}
		switch key {
		case keyAs:
			err = once(key, &form, value)
		case keyOutput:
			err = once(key, &q.output, value)
		case keyUnit:
			err = once(key, &q.unit, value)
		default:
			q.inputs = append(q.inputs, pair{key, value})
		}
		if err != nil {
			return q, err
		}
	}
	switch form {
	case "":
	case "xml":
		q.xml = true
	default:
		return q, fmt.Errorf("as=%.64q is not known; there is as=xml", form)
	}
	if q.unit != "" && q.output == "" {
		return q, errors.New("unit=… needs output=…: it is the unit of a result; the unit of an input stands with its number, as in 55 °F")
	}
	return q, nil
}

func once(key string, to *string, value string) error {
	if *to != "" {
		return fmt.Errorf("%s is given twice", key)
	}
	if value == "" {
		return fmt.Errorf("%s is empty", key)
	}
	*to = value
	return nil
}

// decode turns %XX into bytes. A plus sign is a sign at the start of a number
// and of its exponent, as a cell joined to an address gives it (1E+21), and a
// space elsewhere, as forms and scripts write it.
func decode(text string) (string, error) {
	if strings.IndexByte(text, '%') >= 0 || strings.IndexByte(text, '+') >= 0 {
		b := make([]byte, 0, len(text))
		for i := 0; i < len(text); i++ {
			switch c := text[i]; {
			case c == '%':
				if i+2 >= len(text) || hex(text[i+1]) < 0 || hex(text[i+2]) < 0 {
					return "", errors.New("a per cent sign without two hexadecimal digits; write %25 for it")
				}
				b = append(b, byte(hex(text[i+1])<<4|hex(text[i+2])))
				i += 2
			case c == '+' && !isSign(text, i):
				b = append(b, ' ')
			default:
				b = append(b, c)
			}
		}
		text = string(b)
	}
	if !utf8.ValidString(text) {
		return "", errors.New("the text is not UTF-8")
	}
	for i := range len(text) {
		if text[i] < ' ' || text[i] == 0x7F {
			return "", errors.New("the text has a control character")
		}
	}
	return strings.TrimSpace(text), nil
}

func isSign(text string, i int) bool {
	if i == 0 {
		return true
	}
	if i < 2 || text[i-1]|0x20 != 'e' {
		return false
	}
	c := text[i-2]
	return c-'0' <= 9 || c == '.' || c == ','
}

func hex(c byte) int {
	switch {
	case c-'0' <= 9:
		return int(c - '0')
	case c|0x20 >= 'a' && c|0x20 <= 'f':
		return int(c|0x20-'a') + 10
	}
	return -1
}
