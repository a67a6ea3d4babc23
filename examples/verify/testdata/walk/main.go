// Command walk calls every public function and method with values good and bad, and prints
// what a caller should never meet. Its table of them is written by the test that runs it.
package main

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"time"
)

// An entry is a function, a constant or a variable by its name.
type entry struct {
	name  string
	value any
}

const (
	calls = 8   // of a function in a round
	tries = 150 // of a function that has not answered yet
	kept  = 60  // values of a type
)

// A walker has values by their type; what functions return is added.
type walker struct {
	*rand.Rand
	seeds map[reflect.Type][]reflect.Value
	pool  map[reflect.Type][]reflect.Value // what functions returned
	texts []string
	fits  map[[2]reflect.Type]bool // a type and an interface
}

func (w *walker) implements(t, of reflect.Type) bool {
	fits, known := w.fits[[2]reflect.Type{t, of}]
	if !known {
		fits = t.Implements(of)
		w.fits[[2]reflect.Type{t, of}] = fits
	}
	return fits
}

// A subject is what is called.
type subject struct {
	name             string
	fn               reflect.Value
	receiver         reflect.Type    // of a method
	good             []reflect.Value // arguments that it answered
	answered, failed bool
	said             map[string]bool
}

func main() {
	seed, err := strconv.ParseUint(os.Args[1], 10, 64)
	if err != nil {
		panic(err)
	}
	rounds, err := strconv.Atoi(os.Args[2])
	if err != nil {
		panic(err)
	}
	w := &walker{
		Rand: rand.New(rand.NewPCG(31, seed)), seeds: map[reflect.Type][]reflect.Value{}, pool: map[reflect.Type][]reflect.Value{},
		fits:  map[[2]reflect.Type]bool{},
		texts: []string{"", "1 kg", "-1 kg", "20 °C", "1e99 L", "0.5 %", "1.040", "?", "7 ± 1 g", "5", "2 h", "-300 °C", "{}", "null"},
	}
	for _, e := range values {
		w.seed(reflect.ValueOf(e.value))
	}
	var all []*subject
	for _, e := range functions {
		all = append(all, &subject{name: e.name, fn: reflect.ValueOf(e.value), said: map[string]bool{}})
	}
	seen := map[reflect.Type]bool{}
	for range rounds {
		for _, t := range w.ofOurs() {
			if !seen[t] {
				seen[t] = true
				all = append(all, methods(t)...)
			}
		}
		for _, s := range all {
			switch {
			case s.good == nil || !s.failed && fails(s.fn.Type()):
				for range tries {
					w.call(s)
				}
			default:
				for range calls {
					w.call(s)
				}
			}
		}
	}
	merged := map[string]*subject{} // a method of a generic type counts once
	for _, s := range all {
		m, ok := merged[s.name]
		if !ok {
			merged[s.name] = s
			continue
		}
		m.answered, m.failed = m.answered || s.answered, m.failed || s.failed
		for text := range s.said {
			m.said[text] = true
		}
	}
	var lines []string
	for name, s := range merged {
		for text := range s.said {
			lines = append(lines, text)
		}
		if !s.answered {
			lines = append(lines, "no answer: "+name)
		}
		if !s.failed && fails(s.fn.Type()) {
			lines = append(lines, "no error: "+name)
		}
	}
	slices.Sort(lines)
	for _, l := range lines {
		fmt.Fprintln(os.Stdout, l)
	}
}

// seed adds a value, and if it is a unit, quantities in it.
func (w *walker) seed(v reflect.Value) {
	w.keep(v)
	w.seeds[v.Type()] = append(w.seeds[v.Type()], v)
	try := v.MethodByName("Try")
	if !try.IsValid() {
		return
	}
	for _, x := range []float64{0, 0.01, 0.5, 1, 2.5, 1.04, 4, 5, 6.35, 7, 10, 12, 20, 20, 25, 40, 42, 60, 101.3, 300, 1000, 1e7, -0.5, -10, -500} {
		if out := try.Call([]reflect.Value{reflect.ValueOf(x)}); out[1].IsNil() {
			w.keep(out[0])
			w.seeds[out[0].Type()] = append(w.seeds[out[0].Type()], out[0])
		}
	}
}

func (w *walker) keep(v reflect.Value) {
	if !v.CanInterface() {
		return
	}
	switch v.Kind() {
	case reflect.Slice, reflect.Array:
		for i := range min(v.Len(), 40) {
			w.keep(v.Index(i))
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			w.keep(v.Elem())
		}
		return
	case reflect.Func, reflect.Map, reflect.Chan:
		return
	case reflect.Struct:
		for i := range v.NumField() {
			w.keep(v.Field(i))
		}
	default:
		if v.Type().PkgPath() == "" {
			return // numbers and texts are made
		}
	}
	held := w.pool[v.Type()]
	if name, ok := v.Interface().(fmt.Stringer); ok && len(held) < 40 && v.Kind() != reflect.Pointer {
		if s := name.String(); !strings.Contains(s, "NaN") && !strings.Contains(s, "Inf") {
			w.texts = append(w.texts, s)
		}
	}
	if len(held) < kept {
		w.pool[v.Type()] = append(held, v)
	} else {
		held[w.IntN(kept)] = v
	}
}

// ofOurs are the types of the module that have been met, in order.
func (w *walker) ofOurs() []reflect.Type {
	var ours []reflect.Type
	for _, t := range types {
		ours = append(ours, t)
	}
	for t := range w.pool {
		if strings.HasPrefix(t.PkgPath(), module+"/") && !strings.Contains(t.PkgPath(), "/internal/") {
			ours = append(ours, t)
		}
	}
	slices.SortFunc(ours, func(a, b reflect.Type) int { return strings.Compare(a.PkgPath()+a.Name(), b.PkgPath()+b.Name()) })
	return slices.Compact(ours)
}

func methods(t reflect.Type) []*subject {
	var all []*subject
	if t.Kind() == reflect.Interface {
		return nil
	}
	p := reflect.PointerTo(t)
	name, _, _ := strings.Cut(t.Name(), "[")
	for i := range p.NumMethod() {
		m := p.Method(i)
		switch m.Name {
		case "Of", "Format", "Unwrap", "Check": // takes constants; a state of fmt; returns what it holds; is given the name
			continue
		}
		all = append(all, &subject{
			name: path.Base(t.PkgPath()) + "." + name + "." + m.Name, fn: m.Func, receiver: t, said: map[string]bool{},
		})
	}
	return all
}

// value makes a value of a type: one that is held, or a new one.
func (w *walker) value(t reflect.Type, depth int) reflect.Value {
	if held := w.seeds[t]; len(held) > 0 && w.IntN(2) > 0 {
		return held[w.IntN(len(held))]
	}
	if held := w.pool[t]; len(held) > 0 && w.IntN(8) > 0 {
		return held[w.IntN(len(held))]
	}
	v := reflect.New(t).Elem()
	if depth > 4 {
		return v
	}
	switch t.Kind() {
	case reflect.Struct:
		if w.IntN(8) == 0 || t.PkgPath() == "time" {
			break
		}
		for i := range t.NumField() {
			if t.Field(i).IsExported() {
				v.Field(i).Set(w.value(t.Field(i).Type, depth+1))
			}
		}
	case reflect.Pointer:
		v.Set(reflect.New(t.Elem()))
		v.Elem().Set(w.value(t.Elem(), depth+1))
	case reflect.Slice:
		n := w.IntN(5)
		v.Set(reflect.MakeSlice(t, n, n))
		if t.Elem().Kind() == reflect.Uint8 {
			v.SetBytes([]byte(w.text()))
			break
		}
		for i := range n {
			v.Index(i).Set(w.value(t.Elem(), depth+1))
		}
	case reflect.Array:
		for i := range t.Len() {
			v.Index(i).Set(w.value(t.Elem(), depth+1))
		}
	case reflect.Interface:
		var fit []reflect.Value
		for p, held := range w.pool {
			if w.implements(p, t) {
				fit = append(fit, held[0])
			}
			if w.implements(reflect.PointerTo(p), t) {
				q := reflect.New(p)
				q.Elem().Set(held[0])
				fit = append(fit, q)
			}
		}
		if len(fit) > 0 && t.NumMethod() > 0 && !t.Implements(reflect.TypeFor[error]()) {
			slices.SortFunc(fit, func(a, b reflect.Value) int { return strings.Compare(a.Type().String(), b.Type().String()) })
			v.Set(fit[w.IntN(len(fit))])
		}
	case reflect.Func:
		outs := make([]reflect.Value, t.NumOut())
		for i := range outs {
			outs[i] = w.value(t.Out(i), depth+1)
		}
		v.Set(reflect.MakeFunc(t, func([]reflect.Value) []reflect.Value { return outs }))
	case reflect.Float64:
		xs := []float64{0, 0.01, 0.48, 0.5, 1, 1.04, 1.36, 2.5, 3.2, 3.5, 4.1, 5.2, 7, 10, 40, 100, 1e9, -1, -1e9, math.NaN(), math.Inf(1), math.Inf(-1)}
		v.SetFloat(xs[w.IntN(len(xs))])
	case reflect.Int, reflect.Int64, reflect.Int32, reflect.Int8, reflect.Int16:
		ns := []int64{0, 1, 2, 3, 12, -1, 99, 2000}
		n := ns[w.IntN(len(ns))]
		if t == reflect.TypeFor[time.Duration]() {
			n *= int64(time.Hour)
		}
		v.SetInt(n)
	case reflect.Uint, reflect.Uint64, reflect.Uint32, reflect.Uint8, reflect.Uint16:
		v.SetUint(uint64(w.IntN(40)))
	case reflect.Bool:
		v.SetBool(w.IntN(2) == 0)
	case reflect.String:
		v.SetString(w.text())
	}
	return v
}

// change gives a value another field, or makes another.
func (w *walker) change(v reflect.Value) reflect.Value {
	t := v.Type()
	if t.Kind() == reflect.Struct && t.PkgPath() != "time" && w.IntN(3) > 0 {
		i := 0
		if n := t.NumField(); n > 0 {
			i = w.IntN(n)
		}
		if t.NumField() > 0 && t.Field(i).IsExported() {
			changed := reflect.New(t).Elem()
			changed.Set(v)
			changed.Field(i).Set(w.change(v.Field(i)))
			return changed
		}
	}
	return w.value(t, 0)
}

// text is a text at random: half of them are what a value that is held prints.
func (w *walker) text() string { return w.texts[w.IntN(len(w.texts))] }

// call calls a subject once with values at random and keeps what it returns.
func (w *walker) call(s *subject) {
	t := s.fn.Type()
	args := slices.Clone(s.good) // all but one of them
	mend := -1
	if args != nil && t.NumIn() > 0 && w.IntN(8) > 0 {
		mend = w.IntN(t.NumIn())
	} else {
		args = make([]reflect.Value, t.NumIn())
	}
	for i := range t.NumIn() {
		switch {
		case mend >= 0 && i != mend:
		case i == 0 && s.receiver != nil:
			r := reflect.New(s.receiver) // a copy: a method with a pointer must not change what is held
			if mend >= 0 {
				r.Elem().Set(w.change(args[0].Elem()))
			} else {
				r.Elem().Set(w.value(s.receiver, 0))
			}
			args[i] = r
		case mend >= 0:
			args[i] = w.change(args[i])
		default:
			args[i] = w.value(t.In(i), 0)
		}
	}
	defer func() {
		if p := recover(); p != nil {
			s.said[fmt.Sprintf("panic: %s: %.200v", s.name, p)] = true
		}
	}()
	call := s.fn.Call
	if t.IsVariadic() {
		call = s.fn.CallSlice
	}
	outs := call(args)
	if fails(t) {
		if err, _ := outs[len(outs)-1].Interface().(error); err != nil {
			s.failed = true
			s.judge(err)
			return
		}
		outs = outs[:len(outs)-1]
	}
	s.answered, s.good = true, args
	for _, o := range outs {
		if unreal(o) {
			s.said["not a number: "+s.name] = true
		}
		w.keep(o)
	}
}

// unreal says whether a caller can see a NaN or an infinity in a value. The limits of a
// range may be open.
func unreal(v reflect.Value) bool {
	if text, ok := v.Interface().(fmt.Stringer); ok && v.Kind() != reflect.Pointer {
		s := text.String()
		return strings.Contains(s, "NaN") || strings.Contains(s, "Inf")
	}
	switch v.Kind() {
	case reflect.Float64:
		return math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0)
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			if unreal(v.Index(i)) {
				return true
			}
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() && unreal(v.Field(i)) {
				return true
			}
		}
	}
	return false
}

// fails says whether a function can return an error.
func fails(t reflect.Type) bool {
	return t.NumOut() > 0 && t.Out(t.NumOut()-1) == reflect.TypeFor[error]()
}

// judge looks through the errors that say which function refused.
func (s *subject) judge(err error) {
	text := err.Error()
	for ; err != nil; err = errors.Unwrap(err) {
		v := reflect.Indirect(reflect.ValueOf(err))
		if v.Kind() != reflect.Struct {
			continue
		}
		if f := v.FieldByName("Func"); f.IsValid() && f.Kind() == reflect.String && f.String() != s.name {
			s.said[fmt.Sprintf("name: %s says %q", s.name, f)] = true
			if strings.Contains(text, "\n") || text == "" {
				s.said["text: "+s.name] = true
			}
		}
	}
}
