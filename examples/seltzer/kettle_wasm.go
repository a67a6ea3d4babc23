//go:build kettle

// Command seltzer, built with the tag kettle for js/wasm, is the library inside the page that
// -page writes: it answers what the page's script asks and does nothing else.
package main

import (
	"encoding/json"
	"strings"
	"syscall/js"

	"example.org/zymase/examples/seltzer/plan"
)

func main() {
	us := func(v js.Value) style { return style{us: v.Bool()} }
	js.Global().Set("zymase", map[string]any{
		"plan": reply(func(a []js.Value) (any, error) {
			return planned([]byte(a[0].String()), us(a[1]), strings.Fields(a[2].String()), a[3].Bool()), nil
		}),
		"read": reply(func(a []js.Value) (any, error) {
			_, err := plan.ReadRequest([]byte(a[0].String()))
			if err != nil {
				return answer{Refused: refused(err)}, nil
			}
			return answer{}, nil
		}),
		"curves": reply(func(a []js.Value) (any, error) { return curvesOf([]byte(a[0].String()), us(a[1])) }),
		"offers": reply(func(a []js.Value) (any, error) { return offers([]byte(a[0].String())), nil }),
		"withAtHand": reply(func(a []js.Value) (any, error) {
			return withAtHand([]byte(a[0].String()), a[1].String())
		}),
		"signs":   reply(func([]js.Value) (any, error) { return plan.Signs(), nil }),
		"wrong":   reply(func(a []js.Value) (any, error) { return wrong([]byte(a[0].String()), a[1].String(), us(a[2])) }),
		"choices": reply(func(a []js.Value) (any, error) { return choices([]byte(a[0].String())) }),
		"look": reply(func(a []js.Value) (any, error) {
			return look([]byte(a[0].String()), a[1].String(), a[2].String(), a[3].Float(), us(a[4]))
		}),
	})
	select {}
}

// reply is a function for the script: JSON, {"error": …} where there is no answer.
func reply(f func([]js.Value) (any, error)) js.Func {
	return js.FuncOf(func(_ js.Value, args []js.Value) any {
		v, err := f(args)
		if err != nil {
			v = map[string]any{"error": err.Error()}
		}
		text, err := json.Marshal(v)
		if err != nil {
			return `{"error":"no JSON"}`
		}
		return string(text)
	})
}
