package loopback

import (
	"bytes"
	"encoding/xml"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/number"
)

// ErrorMark starts an answer that is not a number.
const ErrorMark = "ERROR: "

// compute appends the body of the answer to b; err is what was wrong with the
// query.
func (h *Handler) compute(b []byte, name string, q query, err error) []byte {
	var results []ask.Result
	var out []float64
	if err == nil {
		results, out, err = h.call(name, q)
	}
	switch {
	case err == nil && q.xml:
		b = append(b, "<r>"...)
		for i := range results {
			b = append(appendEscaped(append(b, `<v name="`...), results[i].Name), `" unit="`...)
			b = append(appendEscaped(b, results[i].Unit), `">`...)
			if results[i].IsText() {
				b = appendEscaped(b, results[i].Text(out))
			} else {
				b = number.Append(b, results[i].Of(out))
			}
			b = append(b, "</v>"...)
		}
		return append(b, "</r>"...)
	case err == nil:
		return results[0].Append(b, out)
	case q.xml:
		return append(appendEscaped(append(b, "<r><error>"...), err.Error()), "</error></r>"...)
	}
	return append(append(b, ErrorMark...), err.Error()...)
}

func (h *Handler) call(name string, q query) ([]ask.Result, []float64, error) {
	k, ok := h.functions[name]
	if !ok {
		_, err := catalogue.Find(name) // for its reason
		return nil, nil, err
	}
	question := ask.New(k.function)
	for _, p := range q.inputs {
		if err := question.Give(p.key, p.value, (*catalogue.Input).ParseCell); err != nil {
			return nil, nil, err
		}
	}
	results := k.results
	switch only, is := k.function.OnlyNumber(); {
	case q.output != "":
		r, err := ask.Wish(k.function, q.output, q.unit)
		if err != nil {
			return nil, nil, err
		}
		results = []ask.Result{r}
	case q.xml:
	case is:
		results = results[only : only+1]
	default:
		return nil, nil, errSeveral
	}
	out, err := question.Answer()
	return results, out, err
}

func appendEscaped(b []byte, text string) []byte {
	w := bytes.NewBuffer(b)
	xml.EscapeText(w, []byte(text)) // a Buffer takes all
	return w.Bytes()
}
