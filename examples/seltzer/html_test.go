package main

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
)

func pageOf(t *testing.T, s style) string {
	t.Helper()
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	p, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := printHTML(&b, p, curves, s); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// The page stands alone, is small, and says what the text says.
func TestPage(t *testing.T) {
	for _, s := range []style{{}, {us: true}} {
		text := pageOf(t, s)
		if len(text) > 200<<10 {
			t.Errorf("%d bytes", len(text))
		}
		if found := regexp.MustCompile(`(?i)https?:|src=|@import|url\(|<script|<link`).FindString(text); found != "" {
			t.Errorf("it asks for something outside: %q", found)
		}
		if n := strings.Count(text, "<svg "); n != 11 || strings.Count(text, "<title id=") != n || strings.Count(text, "<desc id=") != n ||
			strings.Count(text, `role="img"`) != n {
			t.Errorf("%d pictures, not all with words", n)
		}
		for _, want := range []string{`lang="en"`, `scope="row"`, "dry floor", "set point", "rating given", "burst"} {
			if !strings.Contains(text, want) {
				t.Errorf("no %q", want)
			}
		}
		for i, picture := range regexp.MustCompile(`(?s)<svg .*?</svg>`).FindAllString(text, -1) {
			if err := xml.Unmarshal([]byte(picture), new(struct{})); err != nil {
				t.Errorf("picture %d: %v", i, err)
			}
			if strings.Contains(picture, "NaN") || strings.Contains(picture, ">-0<") || strings.Contains(picture, ">-0.0<") {
				t.Errorf("picture %d holds %s", i, picture)
			}
		}
	}
	if text := pageOf(t, style{us: true}); !strings.Contains(text, "gauge pressure, psi") || strings.Contains(text, ", bar<") ||
		strings.Contains(text, "kegs at 4 °C") {
		t.Error("plots not in US units")
	}
}

// What a request says is text on the page, whatever it says.
func TestPageEscapes(t *testing.T) {
	req, err := plan.ParseRequest(bytes.Replace(builtIn, []byte("Elderflower and"), []byte(`<script>alert(1)</script>`), 1))
	if err != nil {
		t.Fatal(err)
	}
	p, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := printHTML(&b, p, curves, style{}); err != nil || strings.Contains(b.String(), "<script") {
		t.Errorf("%v: a script got in", err)
	}
}

// Text contrast of at least 4.5 to 1: W3C, Web Content Accessibility Guidelines 2.1
// (2018), success criterion 1.4.3 and the definition of relative luminance.
func TestContrast(t *testing.T) {
	colour := map[string]float64{}
	for _, m := range regexp.MustCompile(`--(\w+): #([0-9a-f]{3,6});`).FindAllStringSubmatch(pageText, -1) {
		hex := m[2]
		if len(hex) == 3 {
			hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
		}
		var l float64
		for i, k := range []float64{0.2126, 0.7152, 0.0722} {
			n, err := strconv.ParseUint(hex[2*i:2*i+2], 16, 8)
			if err != nil {
				t.Fatal(err)
			}
			c := float64(n) / 255
			if c <= 0.03928 {
				c /= 12.92
			} else {
				c = math.Pow((c+0.055)/1.055, 2.4)
			}
			l += k * c
		}
		colour[m[1]] = l
	}
	for _, name := range []string{"ink", "soft", "mark", "curve"} {
		for _, on := range []string{"paper", "band"} {
			if ratio := (colour[on] + 0.05) / (colour[name] + 0.05); ratio < 4.5 && on == "paper" || ratio < 3 {
				t.Errorf("%s on %s: %.2f to 1", name, on, ratio)
			}
		}
	}
}

func TestWritesPageWholeAndOnce(t *testing.T) {
	name := filepath.Join(t.TempDir(), "plan.html")
	if code, _, complaint := seltzerRun(t, "", "-html", name); code != 0 {
		t.Fatal(complaint)
	}
	if text, err := os.ReadFile(name); err != nil || !bytes.HasSuffix(text, []byte("</html>\n")) {
		t.Errorf("%v: not whole", err)
	}
	if code, _, complaint := seltzerRun(t, "", "-html", name); code != 1 || !strings.Contains(complaint, "-force") {
		t.Errorf("a second time: exit %d: %s", code, complaint)
	}
	if code, _, complaint := seltzerRun(t, "", "-html", name, "-force", "-units", "us"); code != 0 {
		t.Error(complaint)
	}
}

func TestTicks(t *testing.T) {
	for _, c := range []struct {
		least, most float64
		want        string
	}{
		{0, 100, "0 20 40 60 80 100"}, {0.9921, 1.0296, "1.00 1.01 1.02"}, {-0.3, 5, "0 1 2 3 4 5"}, {3.2, 3.9, "3.2 3.4 3.6 3.8"},
	} {
		at, places := scale{least: c.least, most: c.most}.ticks()
		var words []string
		for _, v := range at {
			words = append(words, strconv.FormatFloat(v, 'f', places, 64))
		}
		if got := strings.Join(words, " "); got != c.want {
			t.Errorf("%v to %v: got %s, want %s", c.least, c.most, got, c.want)
		}
	}
}

// In a real browser: nothing overflows on a phone of 360 px, the print is three sheets of
// A4, and the page asks for nothing but itself.
func TestPageInBrowser(t *testing.T) {
	browser, err := exec.LookPath("chromium")
	if err != nil {
		t.Skip("no chromium here; .ci/page installs it and runs this test")
	}
	var mu sync.Mutex
	var asked []string
	text := pageOf(t, style{})
	frame := `<!DOCTYPE html><iframe id="f" src="/plan" style="width:360px;height:600px;border:0"></iframe>
<script>f.onload = () => { const e = f.contentDocument.documentElement; document.title = "width " + e.scrollWidth + " of " + e.clientWidth }</script>`
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		mu.Lock()
		asked = append(asked, r.URL.Path)
		mu.Unlock()
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		switch r.URL.Path {
		case "/plan":
			fmt.Fprint(w, text)
		case "/frame":
			fmt.Fprint(w, frame)
		default:
			http.NotFound(w, r)
		}
	}))
	defer server.Close()
	dir := t.TempDir()
	run := func(args ...string) []byte {
		t.Helper()
		args = append([]string{"--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
			"--disable-component-update", "--disable-sync", "--virtual-time-budget=5000", "--user-data-dir=" + filepath.Join(dir, "profile")}, args...)
		cmd := exec.Command(browser, args...)
		timer := time.AfterFunc(60*time.Second, func() { cmd.Process.Kill() })
		defer timer.Stop()
		out, err := cmd.Output()
		if err != nil {
			t.Fatalf("chromium: %v", err)
		}
		return out
	}
	dom := run("--dump-dom", server.URL+"/frame")
	var width, room int
	if m := regexp.MustCompile(`<title>(width \d+ of \d+)`).FindSubmatch(dom); m == nil {
		t.Fatalf("no width in %s", dom)
	} else if _, err := fmt.Sscanf(string(m[1]), "width %d of %d", &width, &room); err != nil {
		t.Fatal(err)
	}
	if width > room || room > 360 {
		t.Errorf("on a phone the page is %d px wide where there are %d", width, room)
	}
	pdf := filepath.Join(dir, "plan.pdf")
	run("--no-pdf-header-footer", "--print-to-pdf="+pdf, server.URL+"/plan")
	printed, err := os.ReadFile(pdf)
	if err != nil {
		t.Fatal(err)
	}
	if n := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(printed, -1)); n < 1 || n > 3 {
		t.Errorf("printed on %d sheets", n)
	}
	mu.Lock()
	defer mu.Unlock()
	for _, path := range asked {
		if path != "/plan" && path != "/frame" && path != "/favicon.ico" {
			t.Errorf("asked for %s", path)
		}
	}
}
