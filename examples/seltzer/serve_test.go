package main

import (
	"net/http"
	"net/http/httptest"
	"net/netip"
	"strings"
	"testing"
)

// The page is served to this machine's own names alone: another host's name (DNS rebinding), a
// page of another origin, a body or a write are turned away, and so is any other address to
// listen on.
func TestServedToThisMachineAlone(t *testing.T) {
	h, err := kettleHandler(netip.MustParseAddrPort("127.0.0.1:8470"), []byte("<!DOCTYPE html>the page"))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name, method, path, host, body string
		header                         [2]string
		status                         int
	}{
		{"a browser", "GET", "/", "127.0.0.1:8470", "", [2]string{"Sec-Fetch-Site", "none"}, 200},
		{"by name", "GET", "/", "localhost:8470", "", [2]string{}, 200},
		{"head", "HEAD", "/", "127.0.0.1:8470", "", [2]string{}, 200},
		{"another host's name", "GET", "/", "rebound.example:8470", "", [2]string{}, 403},
		{"from another page", "GET", "/", "127.0.0.1:8470", "", [2]string{"Sec-Fetch-Site", "cross-site"}, 403},
		{"another origin", "GET", "/", "127.0.0.1:8470", "", [2]string{"Origin", "http://elsewhere.example"}, 403},
		{"a write", "POST", "/", "127.0.0.1:8470", "", [2]string{}, 405},
		{"a body", "GET", "/", "127.0.0.1:8470", "x", [2]string{}, 400},
		{"another path", "GET", "/plan", "127.0.0.1:8470", "", [2]string{}, 404},
	} {
		r := httptest.NewRequest(c.method, c.path, strings.NewReader(c.body))
		if c.body == "" {
			r = httptest.NewRequest(c.method, c.path, nil)
		}
		r.Host = c.host
		if c.header[0] != "" {
			r.Header.Set(c.header[0], c.header[1])
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != c.status {
			t.Errorf("%s: status %d, want %d: %s", c.name, w.Code, c.status, w.Body)
		}
		if page := strings.Contains(w.Body.String(), "the page"); page != (c.status == http.StatusOK && c.method == "GET") {
			t.Errorf("%s: the page was given: %v", c.name, page)
		}
		if w.Header().Get("Access-Control-Allow-Origin") != "" || w.Header().Get("X-Content-Type-Options") != "nosniff" {
			t.Errorf("%s: %v", c.name, w.Header())
		}
	}
	if _, err := kettleHandler(netip.MustParseAddrPort("0.0.0.0:8470"), nil); err == nil {
		t.Error("served to every machine")
	}
	var out, bad strings.Builder
	if code := run([]string{"-serve", "0.0.0.0:8470"}, strings.NewReader(""), &out, &bad); code != 2 || !strings.Contains(bad.String(), "127.0.0.1") {
		t.Errorf("%d %s", code, bad.String())
	}
}

// Each sign has figures of the batch and what no figure tells; the dangerous and the likely come
// first; another word is refused with the list.
func TestWhatIsWrong(t *testing.T) {
	for seen, want := range map[string][]string{
		"foam at opening": {"0.002 above it hides", "times at", "wild yeast"},
		"haze":            {"calcite's index", "oils that its alcohol held", "yeast grown"},
		"flat":            {"keg 5 K warmer", "million cells/mL", "leaks"},
		"sour":            {"pH at the end", "without the buffer", "bacteria"},
		"sulfur":          {"nitrogen brought", "copper"},
		"no start":        {"usual; no fault until", "osmotic load", "dead yeast"},
		"too sweet":       {"each 0.001 above", "hydrometer that reads wrong"},
	} {
		var out, bad strings.Builder
		if code := run([]string{"-seen", seen}, strings.NewReader(""), &out, &bad); code != 0 {
			t.Errorf("%s: %d %s", seen, code, bad.String())
			continue
		}
		text := strings.Join(strings.Fields(out.String()), " ")
		for _, w := range want {
			if !strings.Contains(text, w) {
				t.Errorf("%s: no %q in\n%s", seen, w, out.String())
			}
		}
		if can, hardly := strings.LastIndex(text, "can be: "), strings.Index(text, "hardly: "); hardly >= 0 && can > hardly {
			t.Errorf("%s: what can explain it does not come first", seen)
		}
	}
	var out, bad strings.Builder
	if code := run([]string{"-seen", "ropy"}, strings.NewReader(""), &out, &bad); code != 2 || !strings.Contains(bad.String(), "too sweet") {
		t.Errorf("%d %s", code, bad.String())
	}
}
