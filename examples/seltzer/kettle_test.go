package main

import (
	"bytes"
	"compress/zlib"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"html"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/check"
)

// kettle writes the page with the Go toolchain at hand, once for all tests.
func kettle(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("it builds the library for a browser")
	}
	name := filepath.Join(t.TempDir(), "kettle.html")
	if code, _, complaint := seltzerRun(t, "", "-page", name); code != 0 {
		t.Fatal(complaint)
	}
	return name
}

// The page is one file of at most 3 MB with a short script, and its policy lets it ask for
// nothing. The limits are those of the task: a mail takes 3 MB, a reader 1,000 lines.
func TestKettlePage(t *testing.T) {
	if n := strings.Count(kettleScript, "\n"); n >= 1000 {
		t.Errorf("%d lines of script", n)
	}
	text, err := os.ReadFile(kettle(t))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(text); n > 3e6 {
		t.Errorf("%d bytes", n)
	}
	t.Logf("%d bytes, %d lines of script", len(text), strings.Count(kettleScript, "\n"))
	for _, want := range []string{"default-src &#39;none&#39;", "worker-src blob:", "form-action &#39;none&#39;"} {
		if !bytes.Contains(text, []byte(want)) {
			t.Errorf("no %q", want)
		}
	}
	for _, wrong := range []string{"unsafe-inline", "connect-src", "unsafe-eval'; ", "<link", " src="} {
		if bytes.Contains(text, []byte(wrong)) {
			t.Errorf("it holds %q", wrong)
		}
	}
}

// What a request says is data on the page, whatever it says; and the policy's hashes are those
// of the script and the style that stand there.
func TestKettleEscapes(t *testing.T) {
	var b bytes.Buffer
	from := []drink{{"</script><b>", []byte(`{"name": "</script><script>alert(1)</script>"}`)}}
	if err := printKettle(&b, []byte("library"), []byte("glue();\r\n"), from); err != nil {
		t.Fatal(err)
	}
	text := b.String()
	if strings.Contains(text, "<script>alert") || strings.Contains(text, "</script><b>") {
		t.Error("a script got in")
	}
	if strings.Count(text, "Permission is hereby granted") < 2 || !strings.Contains(text, "The Go Authors") {
		t.Error("the page goes without the licences of what is in it")
	}
	parts := regexp.MustCompile(`(?s)<(?:style|script|script id="glue")>(.*?)</(?:style|script)>`).FindAllStringSubmatch(text, -1)
	if len(parts) != 3 {
		t.Fatalf("%d parts", len(parts))
	}
	for _, m := range parts {
		sum := sha256.Sum256([]byte(m[1]))
		if hash := "sha256-" + base64.StdEncoding.EncodeToString(sum[:]); !strings.Contains(html.UnescapeString(text), hash) {
			t.Errorf("the policy has no %s for %.40q", hash, m[1])
		}
	}
}

// Without a Go toolchain the page is not written, and the reason is plain.
func TestKettleWithoutToolchain(t *testing.T) {
	t.Setenv("PATH", "")
	name := filepath.Join(t.TempDir(), "kettle.html")
	code, _, complaint := seltzerRun(t, "", "-page", name)
	if code != 1 || !strings.Contains(complaint, "your own Go toolchain") {
		t.Errorf("exit %d: %s", code, complaint)
	}
	if _, err := os.Stat(name); err == nil {
		t.Error("a page without its library was written")
	}
}

// Every field of a request is asked for, and those of the first screen are there.
func TestFormAsksForEveryField(t *testing.T) {
	fields, err := describeRequest()
	if err != nil {
		t.Fatal(err)
	}
	first := map[string]bool{}
	var walk func(fields []field, path string)
	walk = func(fields []field, path string) {
		for _, f := range fields {
			p := strings.TrimPrefix(path+"."+f.Key, ".")
			if f.First {
				first[p] = true
			}
			if f.Kind == "quantity" && f.Write == "" && f.Key != "start" {
				t.Errorf("%s: nothing says how it is written", p)
			}
			if f.Kind == "list" {
				walk(f.Of[0].Of, p)
			} else {
				walk(f.Of, p)
			}
		}
	}
	walk(fields, "")
	for _, m := range reads.FindAllStringSubmatch(requestSource, -1) {
		if len(listed(m[1])) < 2 {
			t.Errorf("no names for what %s reads", m[1])
		}
	}
	for _, p := range firstScreen {
		if !first[p] {
			t.Errorf("%s is not asked first", p)
		}
	}
	var of func(v any, fields []field, path string)
	of = func(v any, fields []field, path string) { // whatever stands in a request has its field
		for k, inner := range v.(map[string]any) {
			i := slices.IndexFunc(fields, func(f field) bool { return f.Key == k })
			if i < 0 {
				t.Errorf("%s.%s is not asked for", path, k)
				continue
			}
			switch inner := inner.(type) {
			case map[string]any:
				of(inner, fields[i].Of, path+"."+k)
			case []any:
				for _, e := range inner {
					if m, ok := e.(map[string]any); ok {
						of(m, fields[i].Of[0].Of, path+"."+k)
					}
				}
			}
		}
	}
	var request any
	if err := json.Unmarshal(builtIn, &request); err != nil {
		t.Fatal(err)
	}
	of(request, fields, "")
}

// What a refusal offers can be planned, or is a step towards it.
func TestOffers(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{"4.6 % vol", "30 % vol", "strength 15 % vol for 30 strength=15 % vol"},
		{`"volume": "60 L"`, `"volume": "5 gal"`, "volume 5 US gal volume=5 US gal|volume 5 imp gal volume=5 imp gal"},
		{`"temperature": "20 °C"`, `"temperature": "50 °C"`, "fermenter.temperature 50 °F fermenter.temperature=50 °F|fermenter.temperature 38 °C"},
		{`"temperature": "20 °C"`, `"temperature": "68"`, "fermenter.temperature 68 °C fermenter.temperature=68 °C|fermenter.temperature 68 °F"},
		{`"80 L"`, `"50 L"`, "kettle.capacity 63.5 L"},
		{`"volume": "60 L"`, `"volume": "50 L"`, "packs that hold 50 L packs[0].volume=33.333 L|packs that hold 50 L packs[1].volume=16.667 " +
			"L|volume 60 L volume=60 L"},
		{"medium", "midium", ""},
		{"white sugar", "white suger", ""},
	} {
		var got []string
		for _, o := range offers(bytes.Replace(builtIn, []byte(c.from), []byte(c.to), 1)) {
			for _, s := range o.Set {
				got = append(got, fmt.Sprintf("%s %s=%v", o.Text, s.Path, s.Value))
			}
		}
		if text := strings.Join(got, "|"); !strings.Contains(text, c.want) {
			t.Errorf("%s: got %s, want %s", c.to, text, c.want)
		}
	}
}

// What is at hand says how strong it gets: 4.28 kg are weighed for 4.6 % vol.
func TestWithAtHand(t *testing.T) {
	for _, c := range []struct{ have, want, wrong string }{
		{"4.284 kg", "strength=4.6 % vol", ""}, {"2 kg", "strength=2.", ""}, {"500 kg", "strength=", ""}, {"1 g", "", "too little"}, {"5 L", "", "not a mass"},
	} {
		got, err := withAtHand(builtIn, c.have)
		switch {
		case c.wrong != "":
			if err == nil || !strings.Contains(err.Error(), c.wrong) {
				t.Errorf("%s: %v", c.have, err)
			}
		case err != nil || len(got) != 1 || !strings.Contains(fmt.Sprintf("%s=%v", got[0].Set[0].Path, got[0].Set[0].Value), c.want):
			t.Errorf("%s: %v, %v", c.have, got, err)
		}
	}
}

// A plot of any result against any input passes through what was asked, and leaves out what
// cannot be: 15 % vol is the most, so a half more than 12 has no plan.
func TestLook(t *testing.T) {
	request := bytes.Replace(builtIn, []byte("4.6 % vol"), []byte("12 % vol"), 1)
	p, err := look(request, "strength", "gravity.original", 0.5, style{})
	if err != nil || !strings.Contains(p.SVG, "as asked") || !strings.Contains(p.SVG, "strength, % vol") {
		t.Errorf("%v: %s", err, p.SVG)
	}
	all, err := choices(builtIn)
	if err != nil || len(all) < 100 {
		t.Fatalf("%d choices: %v", len(all), err)
	}
	for _, c := range all[:20] {
		if _, err := look(builtIn, "strength", c.Path, 0.1, style{}); err != nil {
			t.Errorf("%s: %v", c.Path, err)
		}
	}
	for _, wrong := range [][2]string{{"name", "strength"}, {"strength", "name"}, {"none", "strength"}, {"packs[9].co2", "strength"}, {"strength", "packs[x]"}} {
		if _, err := look(builtIn, wrong[0], wrong[1], 0.1, style{}); err == nil {
			t.Errorf("%q was drawn", wrong)
		}
	}
}

// waitFor waits until an expression holds in the page.
func waitFor(t *testing.T, b browser, expression string) {
	t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(50 * time.Millisecond) {
		var is bool
		if b.run("try { return !!("+expression+") } catch { return false }", &is); is {
			return
		}
	}
	var text string
	b.run("return document.body ? document.body.innerText.slice(0, 1000) : 'no page'", &text)
	t.Fatalf("%s: not %s: %s", b.name(), expression, text)
}

const isReady = `document.documentElement.dataset.ready === "yes"`

// typed sets a field as if it were typed.
func typed(b browser, path, text string) {
	b.run(fmt.Sprintf(`const i = document.querySelector('[data-path=%q]'); i.value = %q; i.dispatchEvent(new Event("input", {bubbles: true}))`, path, text), nil)
}

func view(b browser, name string) {
	b.run(`document.querySelector("[data-view=`+name+`]").click()`, nil)
}

// The page in real browsers, opened from a file with the network off.
func TestKettleInBrowser(t *testing.T) {
	check.Whole(t)
	found := 0
	page := "file://" + kettle(t)
	for _, of := range []struct {
		name  string
		start func(*testing.T, string) browser
	}{{"chromium", newChromium}, {"firefox-esr", newFirefox}} {
		path, err := exec.LookPath(of.name)
		if err != nil {
			continue
		}
		found++
		t.Run(of.name, func(t *testing.T) {
			b := of.start(t, path)
			b.width(360)
			b.open(page)
			waitFor(t, b, isReady)
			drinksInBrowser(t, b)
			refusalInBrowser(t, b)
			nowInBrowser(t, b)
			keyboardInBrowser(t, b)
			keepsInBrowser(t, b, page)
			speedInBrowser(t, b)
			for _, url := range b.asked() {
				if !strings.HasPrefix(url, "file:") && !strings.HasPrefix(url, "blob:") {
					t.Errorf("it asked for %.80s", url)
				}
			}
		})
	}
	if found == 0 {
		t.Skip("no browser here; .ci/page installs them and runs this test")
	}
}

// drinksInBrowser plans each drink, holds every figure against the command line's, and looks
// at each view: width, labels, contrast, sheets of a print.
func drinksInBrowser(t *testing.T, b browser) {
	for i, d := range drinks() {
		b.run(fmt.Sprintf(`document.querySelectorAll("#drinks button")[%d].click()`, i), nil)
		req, err := plan.ParseRequest(d.Request)
		if err != nil {
			t.Fatal(err)
		}
		p, err := plan.Make(req)
		if err != nil {
			t.Fatal(err)
		}
		var want, got []string
		for _, sec := range sheet(p, style{}) {
			for _, r := range sec.rows {
				want = append(want, r.label+"|"+r.value+"|"+r.note)
			}
		}
		view(b, "sheet")
		b.run(`return kettle.answer.sections.flatMap(s => s.rows.map(r => [r.label, r.value || "", r.note || ""].join("|")))`, &got)
		if !slices.Equal(got, want) {
			t.Errorf("%s: the page says other things than the command line:\n%s\n%s", d.Name, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
		var shown []string
		b.run(`return [...document.querySelectorAll("#sheet td b")].map(e => e.textContent)`, &shown)
		n := 0
		for _, sec := range sheet(p, style{}) {
			for _, r := range sec.rows {
				if r.value == "" {
					continue
				}
				if n >= len(shown) || shown[n] != r.value {
					t.Fatalf("%s: row %d is not %s %s", d.Name, n, r.label, r.value)
				}
				n++
			}
		}
		for _, v := range []string{"batch", "card", "now", "look", "sheet"} {
			view(b, v)
			if v == "look" {
				waitFor(t, b, `document.querySelector("#plot svg") && document.querySelector("#curves svg")`)
			}
			var wrong []string
			b.run(`document.querySelectorAll("details").forEach(d => { d.open = true });`+accessible, &wrong)
			for _, w := range append(wrong, checkedByAxe(t, b)...) {
				t.Errorf("%s, %s: %s", d.Name, v, w)
			}
		}
		if n := sheets(b.print()); n != 2 {
			t.Errorf("%s: printed on %d sheets", d.Name, n)
		}
		view(b, "batch")
	}
	b.run(`document.querySelector("main").append(document.createElement("button"))`, nil)
	if wrong := checkedByAxe(t, b); os.Getenv("ZYMASE_AXE") != "" && len(wrong) == 0 {
		t.Error("axe-core lets a button without a name pass")
	}
	b.run(`document.querySelector("main > button:last-child").remove()`, nil)
}

// checkedByAxe lists what axe-core, a checker of accessibility, finds against the Web Content
// Accessibility Guidelines, levels A and AA. ZYMASE_AXE is its script; .ci/page gets it from npm.
func checkedByAxe(t *testing.T, b browser) (wrong []string) {
	t.Helper()
	path := os.Getenv("ZYMASE_AXE")
	if path == "" {
		return nil
	}
	script, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var found struct {
		Passed int
		Wrong  []string
	}
	b.run(string(script)+`;
const of = await axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa"] });
return { Passed: of.passes.length, Wrong: of.violations.flatMap(v => v.nodes.map(n => v.id + ": " + n.html.slice(0, 120))) };`, &found)
	if found.Passed < 5 {
		t.Errorf("axe-core looked at %d rules only", found.Passed)
	}
	return found.Wrong
}

// sheets counts the pages of a PDF; some stand in packed streams.
func sheets(pdf []byte) int {
	page := regexp.MustCompile(`/Type\s*/Page\b`)
	n := len(page.FindAll(pdf, -1))
	for _, part := range bytes.Split(pdf, []byte("stream"))[1:] {
		z, err := zlib.NewReader(bytes.NewReader(bytes.TrimLeft(part, "\r\n")))
		if err != nil {
			continue // not packed, or what stands between two streams
		}
		text, _ := io.ReadAll(z) // cut off at its end; what was read counts
		n += len(page.FindAll(text, -1))
	}
	return n
}

// accessible lists what is wrong on the page: too wide, names twice, controls without a
// label, text without contrast. Contrast: W3C, Web Content Accessibility Guidelines 2.1 (2018),
// success criteria 1.4.3 and 1.4.10, and the definition of relative luminance.
const accessible = `
const wrong = [], html = document.documentElement;
html.style.width = "360px"; // where the window does not get as narrow as a phone
for (const e of document.querySelectorAll("header *, main *")) {
  if (e.getClientRects().length && !e.closest("svg") && e.getBoundingClientRect().right > 360.5) wrong.push("out of a phone's 360 px: " + e.outerHTML.slice(0, 120));
}
if (html.scrollWidth > innerWidth) wrong.push("wider than the window: " + html.scrollWidth + " of " + innerWidth);
const ids = new Set();
for (const e of document.querySelectorAll("[id]")) { if (ids.has(e.id)) wrong.push("twice: " + e.id); ids.add(e.id); }
const seen = e => e.getClientRects().length > 0;
for (const e of document.querySelectorAll("input, select, button")) {
  if (!seen(e)) continue;
  const name = e.getAttribute("aria-label") || [...(e.labels || [])].map(l => l.textContent).join(" ") || (e.tagName === "BUTTON" ? e.textContent : "");
  if (!name.trim()) wrong.push("no label: " + e.outerHTML.slice(0, 120));
  const by = e.getAttribute("aria-describedby");
  if (by && !document.getElementById(by)) wrong.push("described by nothing: " + by);
  const box = e.getBoundingClientRect();
  if (!e.disabled && !e.matches(".usual, .ask, [type=checkbox], .unseen, .read input") && box.height < 44) wrong.push("small to tap: " + Math.round(box.height) + " " + e.outerHTML.slice(0, 120));
}
const light = c => { const [r, g, b] = c.match(/[\d.]+/g).slice(0, 3).map(v => { v /= 255; return v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; }); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
let checked = 0;
while (texts.nextNode()) {
  const e = texts.currentNode.parentElement;
  if (!texts.currentNode.data.trim() || e.closest("script, style, noscript, option, datalist, title, desc") || !seen(e)) continue;
  let under = e, back = "";
  while (under && /rgba\(.*, 0\)|transparent/.test(back = getComputedStyle(under).backgroundColor)) under = under.parentElement;
  if (!under) back = "rgb(255, 255, 255)";
  const style = getComputedStyle(e), front = e.closest("svg") ? style.fill : style.color;
  const a = light(front), b = light(back), ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  checked++;
  if (ratio < 4.5) wrong.push("contrast " + ratio.toFixed(2) + ": " + texts.currentNode.data.slice(0, 60));
}
if (checked < 20) wrong.push("only " + checked + " texts looked at");
html.style.width = "";
return wrong;`

// refusalInBrowser: what cannot be is told at its field, and one tap mends it.
func refusalInBrowser(t *testing.T, b browser) {
	b.run(`document.querySelectorAll("#drinks button")[0].click()`, nil)
	typed(b, "strength", "30 % vol")
	waitFor(t, b, `document.querySelector("#refused-here .offer")`)
	var at []string
	b.run(`const e = document.querySelector("[aria-invalid]"); return [e.dataset.path, document.querySelector("#refused-here p").textContent]`, &at)
	if at[0] != "strength" || at[1] != "30 % vol: 0.5 to 15 % vol" {
		t.Errorf("told at %s: %s", at[0], at[1])
	}
	b.run(`document.querySelector("#refused-here .offer").click()`, nil)
	waitFor(t, b, `!kettle.answer.refused && kettle.batch.request.strength === "15 % vol"`)
	typed(b, "strength", "4,6%")
	waitFor(t, b, `kettle.answer.refused`)
	typed(b, "strength", "4,7 % vol")
	waitFor(t, b, `!kettle.answer.refused && document.querySelector("#brief").textContent.includes("4.70 % vol")`)
	typed(b, "volume", "16 US gal")
	waitFor(t, b, `kettle.answer.refused && kettle.answer.refused.field === "packs" && document.querySelector("#refused-here .offer")`)
	b.run(`document.querySelector("#refused-here .offer").click()`, nil)
	waitFor(t, b, `!kettle.answer.refused && document.querySelector("#brief").textContent.includes("4.70 % vol")`)
	b.run(`const i = document.getElementById("have"); i.value = "3 kg"; i.dispatchEvent(new Event("input"))`, nil)
	waitFor(t, b, `document.querySelector("#hand .offer")`)
	b.run(`document.querySelector("#hand .offer").click()`, nil)
	// The strength is offered to 0.01 % vol, which is 9 g of sugar here, and the scale shows 10 g.
	waitFor(t, b, `!kettle.answer.refused && /3\.00 kg|2\.99 kg/.test(document.querySelector("#brief").textContent)`)
	b.run(`document.querySelectorAll("#drinks button")[0].click()`, nil)
	typed(b, "water.pH", "7,1")
	waitFor(t, b, `!kettle.answer.refused && kettle.batch.request.water.pH === 7.1`)
	typed(b, "schedule.start", "someday") // takes longer: told a moment after
	waitFor(t, b, `kettle.answer.refused && kettle.answer.refused.field === "schedule.start" && document.querySelector("#refused-here")`)
	typed(b, "schedule.start", "2027-03-07")
	waitFor(t, b, `!kettle.answer.refused`)
	var text string
	b.run(`return kettle.request()`, &text)
	if _, err := plan.ParseRequest([]byte(text)); err != nil {
		t.Errorf("what would be saved is refused by the command line: %v", err)
	}
}

// nowInBrowser: readings typed as they come say where the batch is and what to do.
func nowInBrowser(t *testing.T, b browser) {
	view(b, "now")
	add := func(after, gravity, volume string) {
		b.run(fmt.Sprintf(`const set = (id, v) => { const e = document.getElementById("new " + id); e.value = v; e.dispatchEvent(new Event("input")) };
set("after", %q); set("gravity", %q); set("temperature", "20 °C"); set("volume", %q); document.querySelector("#reading button").click()`,
			after, gravity, volume), nil)
	}
	add("0 h", "1,0290", "29.6 L")
	waitFor(t, b, `document.getElementById("state").textContent === "not begun"`)
	add("40 h", "1.0210", "")
	waitFor(t, b, `document.getElementById("state").textContent === "fermenting"`)
	var next string
	b.run(`return document.getElementById("now").textContent`, &next)
	// Half of the 59.0 L is there: half of the 5.8 g of the addition.
	if !strings.Contains(next, "Nutrient, addition 2") || !strings.Contains(next, "2.9 g") {
		t.Errorf("now: %s", next)
	}
	waitFor(t, b, `document.querySelector("#now figure svg circle")`)
	add("30 h", "1.0200", "")
	waitFor(t, b, `document.querySelector("#now .refusal") && kettle.batch.request.readings.length === 2`)
	var urgent string
	b.run(`return document.getElementById("urgent").textContent`, &urgent)
	if !strings.HasPrefix(urgent, "Do not pack yet") {
		t.Errorf("above everything: %q", urgent)
	}
	view(b, "batch")
}

// keyboardInBrowser: no pointer is needed.
func keyboardInBrowser(t *testing.T, b browser) {
	active := func() (at string) {
		b.run(`const e = document.activeElement; return e.dataset.path || e.dataset.view || e.id`, &at)
		return at
	}
	until := func(want string) {
		t.Helper()
		for range 60 {
			if active() == want {
				return
			}
			b.press("Tab")
		}
		t.Fatalf("%s is not reached by the tab key: at %s", want, active())
	}
	b.run(`document.querySelectorAll("#drinks button")[0].click(); document.getElementById("title").focus()`, nil)
	until("card")
	b.press("Enter")
	waitFor(t, b, `!document.getElementById("card").hidden`)
	until("tick clean")
	b.press(" ")
	waitFor(t, b, `kettle.batch.ticks.clean > 0`)
	b.run(`document.getElementById("title").focus()`, nil)
	until("batch")
	b.press("Enter")
	until("strength")
	b.run(`document.activeElement.select()`, nil)
	b.press("5 % vol")
	waitFor(t, b, `kettle.batch.request.strength === "5 % vol" && document.querySelector("#brief").textContent.includes("5.00 % vol")`)
}

// keepsInBrowser: a reload keeps all, two tabs destroy nothing of each other's, and a damaged
// file is refused with its place.
func keepsInBrowser(t *testing.T, b browser, page string) {
	view(b, "card")
	b.run(`const i = document.querySelector("#card .read input"); i.value = "58,4"; i.dispatchEvent(new Event("input"))`, nil)
	reload := func() {
		b.open("about:blank")
		waitFor(t, b, `location.href === "about:blank"`)
		b.open(page)
		waitFor(t, b, isReady)
	}
	reload()
	var have []string
	b.run(`return [kettle.batch.request.strength, String(kettle.batch.ticks.clean > 0), document.querySelector("#card .read input").value]`, &have)
	if !slices.Equal(have, []string{"5 % vol", "true", "58,4"}) {
		t.Errorf("after a reload: %q", have)
	}

	// What one tab types the other shows.
	b.tab()
	b.width(360)
	b.open(page)
	waitFor(t, b, isReady)
	view(b, "batch")
	typed(b, "strength", "5.2 % vol")
	b.look(0)
	waitFor(t, b, `kettle.batch.request.strength === "5.2 % vol"`)
	// Written by another tab, unseen here: both are kept.
	b.run(`const k = "zymase batch " + kettle.id, was = JSON.parse(localStorage.getItem(k)); was.count++; was.batch.request.strength = "5.9 % vol"; localStorage.setItem(k, JSON.stringify(was))`, nil)
	view(b, "batch")
	typed(b, "strength", "6.1 % vol")
	var strengths []string
	b.run(`return kettle.kept().map(k => k.batch.request.strength)`, &strengths)
	if !slices.Contains(strengths, "5.9 % vol") || !slices.Contains(strengths, "6.1 % vol") {
		t.Errorf("kept: %q", strengths)
	}

	load := func(text string) {
		b.run(fmt.Sprintf(`const files = new DataTransfer(); files.items.add(new File([%q], "mine.json")); const e = document.getElementById("load"); e.files = files.files; e.dispatchEvent(new Event("change"))`,
			text), nil)
	}
	var before, after string
	b.run(`return JSON.stringify(Object.entries(localStorage).sort())`, &before)
	load("{\n\"name\": \"x\",\n\"volume\" \"60 L\"}")
	waitFor(t, b, `document.getElementById("say").textContent.includes("line 3, column")`)
	b.run(`return JSON.stringify(Object.entries(localStorage).sort())`, &after)
	if before != after {
		t.Error("a damaged file changed what is kept")
	}
	load(strings.Replace(string(builtIn), "4.6 % vol", "4.9 % vol", 1))
	waitFor(t, b, `kettle.batch.request.strength === "4.9 % vol" && !kettle.answer.refused`)
	// What is damaged in the browser's own storage is left as it is, and stops nothing.
	b.run(`localStorage.setItem("zymase batch broken", "{")`, nil)
	reload()
	var broken string
	b.run(`return localStorage.getItem("zymase batch broken") + kettle.batch.request.strength`, &broken)
	if broken != "{4.9 % vol" {
		t.Errorf("kept: %q", broken)
	}
}

// speedInBrowser reports how long it is from typing to plan; it fails only where nobody would
// wait, as a machine may be busy with other work.
func speedInBrowser(t *testing.T, b browser) {
	view(b, "batch")
	for _, times := range []float64{1, 6} {
		if !b.throttled(times) && times > 1 {
			continue
		}
		c, timed := b.(*chromium)
		before := 0.0
		if timed {
			before = c.spent()
		}
		var took []float64
		b.run(`const out = [], i = document.querySelector("[data-path=strength]");
for (let k = 0; k < 15; k++) { i.value = (4.6 + k / 100).toFixed(2) + " % vol"; const t = performance.now(); i.dispatchEvent(new Event("input")); document.body.offsetHeight; out.push(performance.now() - t); await new Promise(r => setTimeout(r, 20)); }
return out`, &took)
		slices.Sort(took)
		t.Logf("%s, processor slowed %g times: from typing to plan %.0f ms at best, %.0f in the middle of 15", b.name(), times, took[0], took[7])
		if timed {
			t.Logf("%s: %.1f ms of the processor for a keystroke, with all that follows it", b.name(), (c.spent()-before)/15)
		}
		if took[0] > 500 {
			t.Errorf("too slow to type")
		}
	}
	b.throttled(1)
}
