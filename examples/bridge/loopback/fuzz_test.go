package loopback

import (
	"bufio"
	"bytes"
	"encoding/xml"
	"io"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"
)

// Whatever bytes come in, if they are a request at all: only this machine's own
// names are answered and no web page, each answer has the headers that keep it
// to its reader, a number or its reason comes in the form asked for, and the
// same question has the same answer.
func FuzzHandler(f *testing.F) {
	for _, s := range []string{
		"GET /v1/atmosphere_at_altitude?altitude=0 HTTP/1.1\r\nHost: 127.0.0.1:8460\r\n\r\n",
		"GET /v1/pressure_gauge_from_absolute?pressure=2%20bar&as=xml HTTP/1.1\r\nHost: localhost:8460\r\n\r\n",
		"HEAD /v1/x HTTP/1.0\r\nHost: [::1]:8460\r\nSec-Fetch-Site: none\r\n\r\n",
		"OPTIONS * HTTP/1.1\r\nHost: 127.0.0.1:8460\r\n\r\n",
		"POST / HTTP/1.1\r\nHost: 127.0.0.1:8460\r\nContent-Length: 2\r\n\r\nab",
		"GET http://brewery.example/ HTTP/1.1\r\nHost: 127.0.0.1:8460\r\nOrigin: null\r\n\r\n",
	} {
		f.Add([]byte(s))
	}
	h := handler(f)
	f.Fuzz(func(t *testing.T, raw []byte) {
		r, err := http.ReadRequest(bufio.NewReader(bytes.NewReader(raw)))
		if err != nil {
			return
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		got, text := w.Result(), w.Body.String()

		own := slices.Contains([]string{"127.0.0.1:8460", "localhost:8460", "[::1]:8460"}, strings.ToLower(r.Host))
		site := r.Header["Sec-Fetch-Site"]
		page := r.Header["Origin"] != nil || site != nil && !slices.Equal(site, []string{"none"})
		if (!own || page) != (got.StatusCode == http.StatusForbidden) {
			t.Fatalf("%q: status %d", raw, got.StatusCode)
		}
		if !slices.Contains([]int{200, 204, 400, 403, 404, 405, 414}, got.StatusCode) {
			t.Fatalf("%q: status %d", raw, got.StatusCode)
		}
		if got.Header.Get("X-Content-Type-Options") != "nosniff" || got.Header.Get("Cache-Control") != "no-store" {
			t.Fatalf("%q: headers %v", raw, got.Header)
		}
		for name := range got.Header {
			if strings.HasPrefix(name, "Access-Control") {
				t.Fatalf("%q: %s", raw, name)
			}
		}
		if !utf8.ValidString(text) {
			t.Fatalf("%q is answered %q", raw, text)
		}
		if got.StatusCode == 200 && r.Method == http.MethodGet && r.URL.Path != "/" {
			checkAnswer(t, raw, got.Header.Get("Content-Type"), text)
			again := httptest.NewRecorder()
			if h.ServeHTTP(again, r); again.Body.String() != text {
				t.Fatalf("%q is answered %q, then %q", raw, text, again.Body.String())
			}
		}
	})
}

// checkAnswer: a number or a reason on one line; XML if it says so.
func checkAnswer(t *testing.T, raw []byte, form, text string) {
	if text == "" || strings.ContainsFunc(text, unicode.IsControl) {
		t.Fatalf("%q is answered %q", raw, text)
	}
	switch form {
	case "text/plain; charset=utf-8":
		if c := text[0]; !strings.HasPrefix(text, ErrorMark) && c != '-' && (c < '0' || c > '9') {
			t.Fatalf("%q is answered %q", raw, text)
		}
	case "text/xml; charset=utf-8":
		for d := xml.NewDecoder(strings.NewReader(text)); ; {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%q is answered %q: %v", raw, text, err)
			}
		}
	default:
		t.Fatalf("%q is answered as %q", raw, form)
	}
}
