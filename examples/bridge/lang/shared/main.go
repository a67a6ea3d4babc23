//go:build shared

// Command shared is the library as a shared library: `bridge c` and `bridge python` build it.
package main

/*
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

// What is refused, in parts; texts are cut to their room and end in a zero. A number that there is
// not is NaN.
typedef struct zymase_error {
	char kind[16];
	char message[512];
	char function[64];
	char quantity[96];
	char given[96];
	char unit[32];
	char source[256];
	double value, min, max;
} zymase_error;
*/
import "C"

import (
	"fmt"
	"math"
	"unicode/utf8"
	"unsafe"

	"example.org/zymase/examples/bridge/lang/border"
)

func main() {}

// told writes an error for the caller, if there is one; 1 says so.
func told(to *C.zymase_error, err error) C.int {
	if err == nil {
		return 0
	}
	if to == nil {
		return 1
	}
	r := border.Tell(err)
	put(to.kind[:], string(r.Kind))
	put(to.message[:], r.Message)
	put(to.function[:], r.Function)
	put(to.quantity[:], r.Quantity)
	put(to.given[:], r.Given)
	put(to.unit[:], r.Unit)
	put(to.source[:], r.Source)
	to.value, to.min, to.max = number(r.Value), number(r.Min), number(r.Max)
	return 1
}

// put writes a text with a zero at its end, cut between two letters where it is too long.
func put(to []C.char, text string) {
	if cut := len(to) - 1; len(text) > cut {
		for cut > 0 && !utf8.RuneStart(text[cut]) {
			cut--
		}
		text = text[:cut]
	}
	for i := range len(text) {
		to[i] = C.char(text[i])
	}
	to[len(text)] = 0
}

func number(v *float64) C.double {
	if v == nil {
		return C.double(math.NaN())
	}
	return C.double(*v)
}

// fault turns a fault, as of a pointer to nowhere, into an error; the caller then gets no.
func fault[T any](result *T, no T, to *C.zymase_error) {
	if what := recover(); what != nil {
		*result = no
		told(to, &border.Refusal{Kind: border.Broken, Message: fmt.Sprintf("a fault of the call or of the library: %v", what)})
	}
}

// zymase_contract is a number for what the places of functions, inputs and outputs stand for.
//
//export zymase_contract
func zymase_contract() C.uint64_t { return C.uint64_t(border.Contract()) }

// another reports a caller that was written with another catalogue.
func another(contract C.uint64_t, to *C.zymase_error) bool {
	if uint64(contract) == border.Contract() {
		return false
	}
	told(to, &border.Refusal{Kind: "version", Message: "the shared library and what calls it are of different versions: write both " +
		"again with `bridge c` or `bridge python`"})
	return true
}

//export zymase_number
func zymase_number(contract C.uint64_t, function, input C.int, text *C.char, value *C.double, err *C.zymase_error) (no C.int) {
	defer fault(&no, 1, err)
	if another(contract, err) {
		return 1
	}
	v, refused := border.Number(int(function), int(input), C.GoString(text))
	if refused == nil {
		*value = C.double(v)
	}
	return told(err, refused)
}

//export zymase_convert
func zymase_convert(contract C.uint64_t, function, input C.int, unit *C.char, values *C.double, n C.size_t, err *C.zymase_error) (no C.int) {
	defer fault(&no, 1, err)
	if another(contract, err) {
		return 1
	}
	return told(err, border.Convert(int(function), int(input), C.GoString(unit), unsafe.Slice((*float64)(values), int(n))))
}

//export zymase_call
func zymase_call(contract C.uint64_t, function C.int, in *C.double, inputs C.int, out *C.double, outputs C.int, err *C.zymase_error) (no C.int) {
	defer fault(&no, 1, err)
	if another(contract, err) {
		return 1
	}
	return told(err, border.Call(int(function), unsafe.Slice((*float64)(in), int(inputs)), unsafe.Slice((*float64)(out), int(outputs))))
}

// zymase_column computes rows; in holds a pointer for each input, and step how many numbers lie
// between its rows, 0 where one stands for all. It returns how many rows have no answer, and the
// refusal of the first in err; less than 0 if nothing was computed.
//
//export zymase_column
func zymase_column(contract C.uint64_t, function C.int, rows C.size_t, in **C.double, step *C.ptrdiff_t, inputs C.int,
	out **C.double, outputs C.int, failed *C.uint8_t, err *C.zymase_error) (n C.int64_t) {
	defer fault(&n, -1, err)
	if another(contract, err) {
		return -1
	}
	inputs, outputs = max(0, min(inputs, border.MostInputs)), max(0, min(outputs, border.MostOutputs)) // a wrong count is refused below
	var from [border.MostInputs]border.Values
	var to [border.MostOutputs][]float64
	for j := range inputs {
		at, gap := unsafe.Slice(in, int(inputs))[j], int(unsafe.Slice(step, int(inputs))[j])
		if gap < 0 {
			told(err, &border.Refusal{Kind: border.Other, Message: "a column that runs backwards: copy it first"})
			return -1
		}
		all := 1
		if gap > 0 && rows > 0 {
			all = (int(rows)-1)*gap + 1
		}
		from[j] = border.Values{At: unsafe.Slice((*float64)(at), all), Step: gap}
	}
	for j := range outputs {
		to[j] = unsafe.Slice((*float64)(unsafe.Slice(out, int(outputs))[j]), int(rows))
	}
	failures, first, refused := border.Column(int(function), int(rows), from[:inputs], to[:outputs], unsafe.Slice((*byte)(failed), int(rows)))
	if refused != nil {
		told(err, refused)
		return -1
	}
	if err != nil {
		err.kind[0] = 0
	}
	told(err, first)
	return C.int64_t(failures)
}

// zymase_text writes the words that a number of an output stands for, cut to the room that there
// is, with a zero at the end; it returns how many bytes they are.
//
//export zymase_text
func zymase_text(function, output C.int, value C.double, to *C.char, room C.size_t) C.size_t {
	f, err := border.Function(int(function))
	if err != nil || output < 0 || int(output) >= len(f.Outputs) || !f.Outputs[output].IsText() || math.IsNaN(float64(value)) {
		return 0
	}
	text := f.Outputs[output].Text(float64(value))
	if room > 0 {
		put(unsafe.Slice(to, int(room)), text)
	}
	return C.size_t(len(text))
}

// zymase_ask answers JSON with JSON, which zymase_free frees; NULL if it is refused.
//
//export zymase_ask
func zymase_ask(contract C.uint64_t, topic C.int, request *C.char, err *C.zymase_error) *C.char {
	if another(contract, err) {
		return nil
	}
	answer, no := border.Ask(border.Topic(topic), []byte(C.GoString(request)))
	if told(err, no) != 0 {
		return nil
	}
	return C.CString(string(answer))
}

//export zymase_free
func zymase_free(text *C.char) { C.free(unsafe.Pointer(text)) }
