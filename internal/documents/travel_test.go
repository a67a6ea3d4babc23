package documents

import (
	"fmt"
	"go/types"
	"slices"
	"strings"
	"testing"
)

// What a service stores it reads back: no exported value type of the public face loses
// anything in JSON without an error. A type that writes itself reads itself too; another
// struct has exported fields alone, each of which travels; a named integer, which is an
// enumeration, has a text. The packages that are held to it stand in held; what the others
// lose is listed by go test -v.
func TestNothingIsLostOnItsWay(t *testing.T) {
	_, from := shared()
	lost := map[string]string{}
	for _, name := range face(t) {
		pkg, err := from.Import("example.org/zymase/" + name)
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range pkg.Scope().Names() {
			o, is := pkg.Scope().Lookup(n).(*types.TypeName)
			if !is || !o.Exported() || o.IsAlias() {
				continue
			}
			named, is := o.Type().(*types.Named)
			if !is || named.TypeParams().Len() > 0 || method(named, "Error") {
				continue // its instances are looked at where they are used; errors are not stored
			}
			if why := loses(named, map[*types.Named]bool{}); why != "" {
				lost[name+"."+n] = why
			}
		}
	}
	for name, why := range lost {
		top, _, _ := strings.Cut(name[:strings.LastIndexByte(name, '.')], "/")
		switch {
		case stays[name] != "":
		case slices.Contains(held, top):
			t.Errorf("%s: %s", name, why)
		default:
			t.Logf("%s: %s", name, why)
		}
	}
	for name := range stays {
		if lost[name] == "" {
			t.Logf("%s travels, or is gone: take it off the list", name)
		}
	}
}

// loses says what of a type JSON would lose; empty if it loses nothing.
func loses(typ types.Type, seen map[*types.Named]bool) string {
	switch typ := types.Unalias(typ).(type) {
	case *types.Pointer:
		return loses(typ.Elem(), seen)
	case *types.Slice:
		return loses(typ.Elem(), seen)
	case *types.Array:
		return loses(typ.Elem(), seen)
	case *types.Map:
		return loses(typ.Elem(), seen)
	case *types.Signature, *types.Chan:
		return "a function is not written"
	case *types.Interface:
		if types.Identical(typ, types.Universe.Lookup("error").Type().Underlying()) {
			return "an error is written as an empty object"
		}
		return "" // what is in it is its own affair
	case *types.Struct:
		return losesField(typ, seen)
	case *types.Named:
		if typ.Obj().Pkg() == nil {
			return loses(typ.Underlying(), seen) // error
		}
		if seen[typ] {
			return ""
		}
		seen[typ] = true
		for _, form := range []string{"Text", "JSON"} {
			if method(typ, "Marshal"+form) {
				if !method(typ, "Unmarshal"+form) && form == "Text" {
					return "it is written as text and not read"
				}
				return ""
			}
		}
		if pkg := typ.Obj().Pkg(); pkg == nil || !strings.HasPrefix(pkg.Path(), "example.org/zymase/") {
			return ""
		}
		switch under := typ.Underlying().(type) {
		case *types.Basic:
			if under.Info()&types.IsInteger != 0 {
				return "an enumeration without a text"
			}
			return ""
		default:
			return loses(under, seen)
		}
	}
	return ""
}

func losesField(s *types.Struct, seen map[*types.Named]bool) string {
	for f := range s.Fields() {
		if !f.Exported() && !f.Embedded() {
			if a, is := f.Type().(*types.Array); is && a.Len() == 0 {
				continue
			}
			return fmt.Sprintf("the field %s is not written", f.Name())
		}
		if why := loses(f.Type(), seen); why != "" {
			return f.Name() + ": " + why
		}
	}
	return ""
}

// method reports whether a type, or a pointer to it, has a method.
func method(typ *types.Named, name string) bool {
	o, _, _ := types.LookupFieldOrMethod(types.NewPointer(typ), true, typ.Obj().Pkg(), name)
	f, is := o.(*types.Func)
	return is && f.Exported()
}

// The packages, with those below them, of which nothing is lost.
var held = []string{"units", "gravity", "water", "carbonation", "nutrient"}

// What stays behind, with the reason.
var stays = map[string]string{
	"units.Trial": "a set of values inside Propagate",
}
