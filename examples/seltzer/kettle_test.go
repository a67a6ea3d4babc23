package main

import (
	"os"
	"path/filepath"
	"testing"
	"time"
)

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

// Temporary: pictures of each view.
func TestShots(t *testing.T) {
	page := os.Getenv("KETTLE_PAGE")
	if page == "" {
		t.Skip()
	}
	out := os.Getenv("KETTLE_OUT")
	for _, b := range browsers(t) {
		b.width(360)
		b.open("file://" + page)
		waitFor(t, b, isReady)
		var took string
		b.run(`return document.documentElement.dataset.took`, &took)
		t.Log(b.name(), took)
		for _, v := range []string{"batch", "card", "now", "look", "sheet"} {
			var w []int
			b.run(`document.querySelector("[data-view=`+v+`]").click(); await new Promise(r => setTimeout(r, 800)); return [document.documentElement.scrollWidth, innerWidth]`, &w)
			t.Log(v, w)
			os.WriteFile(filepath.Join(out, b.name()+"-"+v+".png"), b.picture(), 0o644)
		}
		os.WriteFile(filepath.Join(out, b.name()+".pdf"), b.print(), 0o644)
	}
}
