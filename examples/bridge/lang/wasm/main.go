//go:build wasip1

// Command wasm is the library as a WebAssembly module: `bridge js` builds it, for its script to
// ask. It is a library in the sense of WASI, without a main of its own, and asks its host for a
// clock and for random bytes alone.
package main

import (
	"unsafe"

	"example.org/zymase/examples/bridge/lang/border"
)

func main() {}

// rows is how many rows of a column cross at once.
const rows = 1024

// What crosses lies in memory that stays where it is. A call has its inputs from the start of
// inputs, its outputs from the start of outputs; a column has a block of rows for each.
var (
	inputs  [border.MostInputs * rows]float64
	outputs [border.MostOutputs * rows]float64
	failed  [rows]byte
	text    []byte // what is asked
	said    []byte // what is answered: JSON, or a refusal
)

//go:wasmexport contract
func contract() uint64 { return border.Contract() }

//go:wasmexport rows
func rowsAtOnce() uint32 { return rows }

//go:wasmexport inputs
func inputsAt() unsafe.Pointer { return unsafe.Pointer(&inputs) }

//go:wasmexport outputs
func outputsAt() unsafe.Pointer { return unsafe.Pointer(&outputs) }

//go:wasmexport failed
func failedAt() unsafe.Pointer { return unsafe.Pointer(&failed) }

// room makes room for a text of n bytes that is to be asked, and says where.
//
//go:wasmexport room
func room(n uint32) unsafe.Pointer {
	if uint32(cap(text)) < n || cap(text) > 1<<16 {
		text = make([]byte, max(n, 1<<12))
	}
	text = text[:n]
	return unsafe.Pointer(unsafe.SliceData(text))
}

//go:wasmexport said
func saidAt() unsafe.Pointer { return unsafe.Pointer(unsafe.SliceData(said)) }

//go:wasmexport said_length
func saidLength() uint32 { return uint32(len(said)) }

// told keeps a refusal, if there is one; 1 says so.
func told(err error) uint32 {
	if err == nil {
		return 0
	}
	said = border.Tell(err).JSON()
	return 1
}

//go:wasmexport number
func number(function, input uint32) uint32 {
	v, err := border.Number(int(function), int(input), string(text))
	outputs[0] = v
	return told(err)
}

//go:wasmexport convert
func convert(function, input, n uint32) uint32 {
	at := min(input, border.MostInputs-1) * rows
	return told(border.Convert(int(function), int(input), string(text), inputs[at:at+min(n, rows)]))
}

//go:wasmexport call
func call(function, in, out uint32) uint32 {
	return told(border.Call(int(function), inputs[:min(in, border.MostInputs)], outputs[:min(out, border.MostOutputs)]))
}

// column returns how many rows failed; the refusal of the first of them is said, if there is one.
// Bit j of single says that input j is one number for all rows.
//
//go:wasmexport column
func column(function, in, out, n, single uint32) uint32 {
	n = min(n, rows)
	var from [border.MostInputs]border.Values
	var to [border.MostOutputs][]float64
	in, out = min(in, border.MostInputs), min(out, border.MostOutputs)
	for j := range in {
		from[j] = border.Values{At: inputs[j*rows : j*rows+n], Step: 1 - int(single>>j&1)}
	}
	for j := range out {
		to[j] = outputs[j*rows : j*rows+n]
	}
	failures, first, err := border.Column(int(function), int(n), from[:in], to[:out], failed[:n])
	said = nil
	if err != nil {
		told(err)
		return n + 1
	}
	told(first)
	return uint32(failures)
}

//go:wasmexport ask
func ask(topic uint32) uint32 {
	answer, err := border.Ask(border.Topic(topic), text)
	if err == nil {
		said = answer
	}
	return told(err)
}
