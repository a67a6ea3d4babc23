package loopback

import (
	"fmt"
	"net/http"
	"net/netip"
	"strings"
)

// Guard turns away what does not come from this machine's user: requests under another host's
// name, from other web pages, with a body, or to do more than read. It is safe for concurrent use.
type Guard struct{ hosts map[string]bool }

// NewGuard returns the guard of a server that listens at address, which is one of this
// machine's loopback addresses.
func NewGuard(address netip.AddrPort) (*Guard, error) {
	if !address.Addr().IsLoopback() {
		return nil, fmt.Errorf("%s is not a loopback address; use 127.0.0.1", address.Addr())
	}
	g := &Guard{map[string]bool{}}
	for _, name := range []string{"127.0.0.1", "localhost", "[::1]", hostName(address.Addr())} {
		g.hosts[fmt.Sprintf("%s:%d", name, address.Port())] = true
		if address.Port() == 80 {
			g.hosts[name] = true
		}
	}
	return g, nil
}

// Admits reports whether a request is to be answered; where it is not, it has answered it, with
// the reason.
func (g *Guard) Admits(w http.ResponseWriter, r *http.Request) bool {
	header := w.Header()
	header["X-Content-Type-Options"] = noSniff
	header["Cache-Control"] = noStore
	status, reason := g.refuse(r)
	if status == 0 {
		return true
	}
	if status == http.StatusMethodNotAllowed {
		header["Allow"] = allow
	}
	header["Content-Type"] = plainText
	header.Set("Connection", "close")
	w.WriteHeader(status)
	fmt.Fprintln(w, reason)
	return false
}

// refuse says with which status a request is turned away; 0 if it is not.
func (g *Guard) refuse(r *http.Request) (int, string) {
	switch {
	case !g.hosts[strings.ToLower(r.Host)]:
		return http.StatusForbidden, "this server answers to 127.0.0.1 and localhost only"
	case len(r.Header["Origin"]) > 0, !fetchedByUser(r.Header["Sec-Fetch-Site"]):
		return http.StatusForbidden, "this server does not answer web pages"
	case len(r.RequestURI) > MaxAddress:
		return http.StatusRequestURITooLong, fmt.Sprintf("an address has at most %d bytes", MaxAddress)
	case r.Method != http.MethodGet && r.Method != http.MethodHead && r.Method != http.MethodOptions:
		return http.StatusMethodNotAllowed, "use GET"
	case r.ContentLength != 0:
		return http.StatusBadRequest, "a request has no body"
	}
	return 0, ""
}

// fetchedByUser reports whether Sec-Fetch-Site is absent, or says that a person
// typed the address.
func fetchedByUser(site []string) bool {
	return len(site) == 0 || len(site) == 1 && site[0] == "none"
}
