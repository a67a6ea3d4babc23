// Package choice gives the values of an enumeration their texts, reads them back, and
// refuses what is none of them with a *units.NameError.
//
//	var sugars = choice.Of[Sugar]("gravity.Sugar", "sugar", "sucrose", "glucose", "fructose")
//
//	func (s Sugar) String() string                   { return sugars.Text(s) }
//	func (s Sugar) MarshalText() ([]byte, error)     { return sugars.Marshal(s) }
//	func (s *Sugar) UnmarshalText(text []byte) error { return sugars.Unmarshal(text, s) }
//
// A function that takes one asks Check first.
package choice

import (
	"iter"
	"strconv"
	"strings"

	"example.org/zymase/units"
)

// List is the texts of an enumeration, in the order of its values from 0.
type List[T ~int | ~uint8] struct {
	name  string // of the type, as an error says it
	what  string
	texts []string
}

// Of makes the list of the type of a name, for what; a value that is not to be used has an
// empty text.
func Of[T ~int | ~uint8](name, what string, texts ...string) List[T] {
	return List[T]{name, what, texts}
}

func (l List[T]) known(v T) bool { return int(v) >= 0 && int(v) < len(l.texts) && l.texts[v] != "" }

// Text is the text of v; "unknown sugar 17" where it has none.
func (l List[T]) Text(v T) string {
	if !l.known(v) {
		return "unknown " + l.what + " " + strconv.Itoa(int(v))
	}
	return l.texts[v]
}

// All walks the values that may be used, with their texts.
func (l List[T]) All() iter.Seq2[T, string] {
	return func(yield func(T, string) bool) {
		for i, text := range l.texts {
			if text != "" && !yield(T(i), text) {
				return
			}
		}
	}
}

// Check refuses a v that has no text, for the function fn.
func (l List[T]) Check(fn string, v T) error {
	if !l.known(v) {
		return l.refuse(fn, strconv.Itoa(int(v)))
	}
	return nil
}

// Marshal is the text of v, for its method MarshalText.
func (l List[T]) Marshal(v T) ([]byte, error) {
	if !l.known(v) {
		return nil, l.refuse(l.name+".MarshalText", strconv.Itoa(int(v)))
	}
	return []byte(l.texts[v]), nil
}

// Unmarshal puts the value that has a text into v, for its method UnmarshalText. Case and
// space around it do not count.
func (l List[T]) Unmarshal(text []byte, v *T) error {
	found, err := l.Parse(l.name+".UnmarshalText", string(text))
	if err == nil {
		*v = found
	}
	return err
}

// Parse returns the value that has a text, for the function fn. Case and space around it
// do not count.
func (l List[T]) Parse(fn, text string) (T, error) {
	wanted := strings.TrimSpace(text)
	for v, have := range l.All() {
		if strings.EqualFold(have, wanted) {
			return v, nil
		}
	}
	return 0, l.refuse(fn, text)
}

func (l List[T]) refuse(fn, name string) error {
	var choices []string
	for _, text := range l.All() {
		choices = append(choices, text)
	}
	return &units.NameError{Func: fn, What: l.what, Name: name, Choices: choices}
}
