package plan

import (
	"bytes"
	"cmp"
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"slices"
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"
)

// bind reads JSON text into the struct that into points to. It is stricter than
// encoding/json and says where: a field that does not exist, stands twice or
// has the wrong kind is refused by its path, "kettle.capacity". It returns what was typed
// for each quantity by its path.
func bind(text []byte, into any) (typed, error) {
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	if !utf8.Valid(text) {
		return nil, &RequestError{Field: "request", Value: "not UTF-8", Allowed: "JSON text that was saved as UTF-8"}
	}
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	node, err := readNode(d, "", 0)
	if errors.Is(err, io.EOF) {
		return nil, &RequestError{Field: "request", Value: "empty", Allowed: "a JSON object; see the README for its fields"}
	}
	if e, ok := err.(*RequestError); ok && e.Value == notJSON {
		at := fault(text, d.InputOffset())
		e.Value, e.Allowed = e.Value+place(text, at), cmp.Or(mistake(text, at), e.Allowed)
	}
	if err != nil {
		return nil, err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return nil, &RequestError{Field: "request", Value: "text after the end", Allowed: "one JSON object"}
	}
	said := typed{}
	err = said.set(reflect.ValueOf(into).Elem(), node, "")
	if e, ok := err.(*RequestError); ok && e.Value == missing {
		of, _, inside := strings.Cut(e.Field, ".")
		if o, ok := node.(object); ok && inside && o.hasBase() && slices.Contains(brewOnly, of) { // what is missing there is not wanted
			return nil, leftOut(of)
		}
	}
	return said, err
}

// missing is the value of a field that is not there.
const missing = "missing"

const notJSON = "not JSON"

// An object is a JSON object whose keys keep their order.
type object struct {
	keys   []string
	values map[string]any
}

const deepest = 8 // levels of a request

func readNode(d *json.Decoder, path string, depth int) (any, error) {
	if depth > deepest {
		return nil, &RequestError{Field: path, Value: "nested too deep", Allowed: fmt.Sprintf("%d levels", deepest)}
	}
	tok, err := d.Token()
	if errors.Is(err, io.EOF) && depth == 0 {
		return nil, io.EOF
	}
	if err != nil {
		return nil, wrapJSON(path, err)
	}
	switch delim, _ := tok.(json.Delim); delim {
	case '{':
		o := object{values: map[string]any{}}
		for d.More() {
			key, err := d.Token()
			if err != nil {
				return nil, wrapJSON(path, err)
			}
			k := key.(string) // the decoder refuses any other key
			p := join(path, k)
			if _, twice := o.values[k]; twice {
				return nil, &RequestError{Field: p, Value: "stands twice", Allowed: "once"}
			}
			v, err := readNode(d, p, depth+1)
			if err != nil {
				return nil, err
			}
			o.keys, o.values[k] = append(o.keys, k), v
		}
		_, err := d.Token()
		return o, wrapJSON(path, err)
	case '[':
		list := []any{}
		for d.More() {
			v, err := readNode(d, fmt.Sprintf("%s[%d]", path, len(list)), depth+1)
			if err != nil {
				return nil, err
			}
			list = append(list, v)
		}
		_, err := d.Token()
		return list, wrapJSON(path, err)
	}
	return tok, nil
}

func wrapJSON(path string, err error) error {
	if err == nil {
		return nil
	}
	allowed := err.Error()
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		allowed = "the text ends before its last bracket"
	}
	return &RequestError{Field: name(path), Value: notJSON, Allowed: allowed}
}

// typed is what stands in the JSON text for a quantity, by its path.
type typed map[string]string

// set writes a node into a value of the request.
func (said typed) set(v reflect.Value, node any, path string) error {
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.New(v.Type().Elem()))
		return said.set(v.Elem(), node, path)
	}
	if u, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		text, ok := node.(string)
		if !ok {
			return wrong(path, node, "text in quotes with its unit")
		}
		if err := u.UnmarshalText([]byte(text)); err != nil {
			return &RequestError{Field: path, Value: cmp.Or(clip(strings.TrimSpace(text)), `""`), Allowed: clipped(reason(err)), Err: err}
		}
		said[path] = text
		return nil
	}
	switch v.Kind() {
	case reflect.Struct:
		o, ok := node.(object)
		if _, water := v.Interface().(Ions); water && node == "distilled" && path == "water.report" {
			return nil // no ion
		}
		if !ok && path == "water.report" {
			return wrong(path, node, `an object of ions, or "distilled"`)
		}
		if !ok {
			names, _ := fieldsOf(v.Type())
			return wrong(path, node, "an object with "+strings.Join(names, ", "))
		}
		return said.setStruct(v, o, path)
	case reflect.Slice:
		list, ok := node.([]any)
		if !ok {
			return wrong(path, node, "a list, in [ ]")
		}
		if len(list) > longestList {
			return wrong(path, len(list), fmt.Sprintf("at most %d entries", longestList))
		}
		v.Set(reflect.MakeSlice(v.Type(), len(list), len(list)))
		for i, n := range list {
			if err := said.set(v.Index(i), n, fmt.Sprintf("%s[%d]", path, i)); err != nil {
				return err
			}
		}
		return nil
	case reflect.String:
		s, ok := node.(string)
		if !ok || len(s) > longestString {
			allowed := fmt.Sprintf("text of at most %d bytes", longestString)
			if n, number := node.(json.Number); number {
				allowed = fmt.Sprintf("text in quotes, as %q", n)
			}
			return wrong(path, node, allowed)
		}
		v.SetString(s)
		return nil
	case reflect.Bool:
		b, ok := node.(bool)
		if !ok {
			return wrong(path, node, "true or false")
		}
		v.SetBool(b)
		return nil
	case reflect.Int:
		n, ok := node.(json.Number)
		i, err := strconv.Atoi(string(n))
		if !ok || err != nil {
			return wrong(path, node, bare(node, "a whole number"))
		}
		v.SetInt(int64(i))
		return nil
	case reflect.Float64:
		n, ok := node.(json.Number)
		f, err := n.Float64()
		if !ok || err != nil {
			return wrong(path, node, bare(node, "a number"))
		}
		v.SetFloat(f)
		return nil
	}
	return wrong(path, node, "nothing here") // not reached: the request has no other kind
}

// bare is what a number is to look like, without quotes where it was typed in them.
func bare(node any, what string) string {
	if text, ok := node.(string); ok {
		if _, err := strconv.ParseFloat(text, 64); err == nil {
			return what + ", without quotes"
		}
		return what + " without a unit or quotes"
	}
	return what
}

const (
	longestList   = 100
	longestString = 200
)

func (said typed) setStruct(v reflect.Value, o object, path string) error {
	names, fields := fieldsOf(v.Type())
	for _, k := range o.keys {
		i, ok := fields[k]
		if !ok {
			sort.SliceStable(names, func(i, k int) bool { return names[i] < names[k] })
			return &RequestError{Field: join(path, k), Value: "no such field", Allowed: hint(clip(k), names)}
		}
		if err := said.set(v.Field(i), o.values[k], join(path, k)); err != nil {
			return err
		}
	}
	var left []string
	for i := range v.NumField() {
		tag, option, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
		must := fields[tag] == i && (!strings.HasPrefix(option, "omit") || v.Type().Field(i).Tag.Get("need") == "brew" && !o.hasBase())
		if _, given := o.values[tag]; must && !given {
			left = append(left, tag)
		}
	}
	if left == nil {
		return nil
	}
	allowed := "this field must be given"
	if more := left[1:]; len(more) > 0 {
		allowed += ", and so must " + strings.Join(more, ", ")
	}
	return &RequestError{Field: join(path, left[0]), Value: missing, Allowed: allowed}
}

// fieldsOf are the names of the fields of a part of the request, and where each stands.
func fieldsOf(t reflect.Type) (names []string, at map[string]int) {
	at = map[string]int{}
	for i := range t.NumField() {
		if f := t.Field(i); f.IsExported() {
			tag, _, _ := strings.Cut(f.Tag.Get("json"), ",")
			names, at[tag] = append(names, tag), i
		}
	}
	return names, at
}

// hasBase tells whether a request has a base that is made, which needs nothing to brew it.
func (o object) hasBase() bool {
	hand, _ := o.values["at_hand"].(object)
	_, ok := hand.values["base"]
	return ok
}
