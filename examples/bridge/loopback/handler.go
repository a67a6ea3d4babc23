package loopback

import (
	"errors"
	"fmt"
	"net/http"
	"net/netip"
	"strings"

	"example.org/zymase/examples/bridge/ask"
	"example.org/zymase/examples/bridge/catalogue"
)

// MaxAddress is the most bytes of a request's path and query.
const MaxAddress = 2048

const (
	prefix  = "/v1/"
	methods = "GET, HEAD, OPTIONS"
)

// Handler answers requests. It is safe for concurrent use.
type Handler struct {
	guard     *Guard
	functions map[string]known
	index     []byte
}

// known is a function and all its results.
type known struct {
	function *catalogue.Function
	results  []ask.Result
}

// New returns a Handler for a server that listens at address, which is one of
// this machine's loopback addresses.
func New(address netip.AddrPort) (*Handler, error) {
	guard, err := NewGuard(address)
	if err != nil {
		return nil, err
	}
	h := &Handler{guard: guard, functions: map[string]known{}}
	all := catalogue.All()
	for i := range all {
		results, err := ask.Wishes(&all[i], nil)
		if err != nil {
			return nil, err
		}
		h.functions[all[i].Name] = known{&all[i], results}
	}
	h.index, err = index("http://"+address.String(), all)
	return h, err
}

func hostName(a netip.Addr) string {
	if a.Is6() {
		return "[" + a.String() + "]"
	}
	return a.String()
}

// Values of headers, shared by all answers.
var (
	noSniff   = []string{"nosniff"}
	noStore   = []string{"no-store"}
	plainText = []string{"text/plain; charset=utf-8"}
	xmlText   = []string{"text/xml; charset=utf-8"}
	htmlText  = []string{"text/html; charset=utf-8"}
	noScript  = []string{"default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"}
	allow     = []string{methods}
)

// ServeHTTP answers one request.
func (h *Handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	header := w.Header()
	if !h.guard.Admits(w, r) {
		return
	}
	if r.Method == http.MethodOptions {
		header["Allow"] = allow
		w.WriteHeader(http.StatusNoContent)
		return
	}
	path := r.URL.Path
	name, call := strings.CutPrefix(path, prefix)
	switch {
	case path == "/":
		header["Content-Type"] = htmlText
		header["Content-Security-Policy"] = noScript
		header["Referrer-Policy"] = []string{"no-referrer"}
		if r.Method == http.MethodGet {
			w.Write(h.index)
		}
	case !call:
		header["Content-Type"] = plainText
		w.WriteHeader(http.StatusNotFound)
		fmt.Fprintln(w, "the functions are at "+prefix+"NAME; the list is at /")
	default:
		h.answer(w, r, name)
	}
}

// answer computes. A spreadsheet asks three times (OPTIONS, HEAD, GET), and
// only the last needs the number.
func (h *Handler) answer(w http.ResponseWriter, r *http.Request, name string) {
	header := w.Header()
	header["Content-Type"] = plainText
	if r.Method == http.MethodHead {
		return
	}
	q, err := parse(r.URL.RawQuery)
	if err == nil && q.xml {
		header["Content-Type"] = xmlText
	}
	var room [256]byte
	w.Write(h.compute(room[:0], name, q, err))
}

var errSeveral = errors.New("it gives several results; add output=NAME, or as=xml")
