package lang

import (
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// The request that comes with the plan.
const builtInRequest = "../../seltzer/request.json"

func absolute(t *testing.T, name string) string {
	t.Helper()
	path, err := filepath.Abs(name)
	if err != nil {
		t.Fatal(err)
	}
	return path
}

func TestNode(t *testing.T) {
	elsewhere(t)
	for _, c := range []struct{ name, variable, program string }{
		{"one", "ZYMASE_NODE", "node"}, {"another", "ZYMASE_OTHER_NODE", "a second version of Node"}, {"deno", "ZYMASE_DENO", "deno"},
	} {
		t.Run(c.name, func(t *testing.T) {
			command := []string{program(t, c.variable, c.program)}
			if c.name == "deno" {
				command = append(command, "run", "--allow-read")
			}
			command = append(command, "node.mjs", written(t, "js", JavaScript), examplesFile(t), absolute(t, builtInRequest))
			t.Log(strings.TrimSpace(run(t, "testdata", nil, command[0], command[1:]...)))
		})
	}
}

// The declarations are sound, and hold callers to the units.
func TestTypeScript(t *testing.T) {
	elsewhere(t)
	tsc := program(t, "ZYMASE_TSC", "tsc")
	dir := t.TempDir()
	text, err := os.ReadFile("testdata/use.mts")
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "use.mts"), text, 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(written(t, "js", JavaScript), filepath.Join(dir, "zymase")); err != nil {
		t.Fatal(err)
	}
	run(t, dir, nil, tsc, "--strict", "--noEmit", "--noUncheckedIndexedAccess", "--exactOptionalPropertyTypes", "--target", "es2022",
		"--module", "nodenext", "use.mts")
}

// In a real browser, from a server that gives the module the wrong type, with a policy that lets
// nothing in but the page's own.
func TestChromium(t *testing.T) {
	elsewhere(t)
	chromium := program(t, "ZYMASE_CHROMIUM", "chromium", "chromium-browser", "google-chrome")
	dir := written(t, "js", JavaScript)
	rows, err := os.ReadFile(examplesFile(t))
	if err != nil {
		t.Fatal(err)
	}
	request, err := os.ReadFile(builtInRequest)
	if err != nil {
		t.Fatal(err)
	}
	page := `<!DOCTYPE html><meta charset="utf-8"><title>running</title><pre></pre><script type="module">
import * as glue from './zymase.mjs';
import { examples } from './examples.mjs';
let wrong;
try {
  const [rows, request] = await Promise.all(['examples.json', 'request.json'].map((n) => fetch(n).then((r) => r.json())));
  wrong = await examples(glue, undefined, rows, request);
} catch (e) { wrong = [e.name + ': ' + e.message]; }
const globals = Object.getOwnPropertyNames(globalThis).filter((n) => /zymase|^Go$|^fs$|^process$/i.test(n));
if (globals.length) wrong.push('globals: ' + globals);
await fetch('said', { method: 'POST', body: wrong.join('\n') || 'ok ' + navigator.userAgent });
</script>`
	said := make(chan string, 1)
	files := http.FileServer(http.Dir(dir))
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Security-Policy", "default-src 'none'; script-src 'self' 'unsafe-inline' 'wasm-unsafe-eval'; connect-src 'self'")
		switch r.URL.Path {
		case "/":
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			io.WriteString(w, page)
		case "/examples.mjs":
			w.Header().Set("Content-Type", "text/javascript")
			http.ServeFile(w, r, "testdata/examples.mjs")
		case "/examples.json":
			w.Write(rows)
		case "/request.json":
			w.Write(request)
		case "/said":
			text, _ := io.ReadAll(r.Body)
			select {
			case said <- string(text):
			default:
			}
		case "/zymase.mjs":
			w.Header().Set("Content-Type", "text/javascript")
			files.ServeHTTP(w, r)
		default:
			w.Header().Set("Content-Type", "application/octet-stream")
			files.ServeHTTP(w, r)
		}
	}))
	defer server.Close()
	profile, err := os.MkdirTemp("", "profile") // its processes write to it for a moment after the first is killed
	if err != nil {
		t.Fatal(err)
	}
	defer func() {
		for range 50 {
			if os.RemoveAll(profile) == nil {
				return
			}
			time.Sleep(100 * time.Millisecond)
		}
	}()
	cmd := exec.Command(chromium, "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update",
		"--disable-sync", "--disable-dev-shm-usage", "--user-data-dir="+profile, "--remote-debugging-port=0", server.URL)
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	defer func() {
		cmd.Process.Kill()
		cmd.Wait()
	}()
	select {
	case text := <-said:
		if !strings.HasPrefix(text, "ok ") {
			t.Error(text)
		}
		t.Log(text)
	case <-time.After(3 * time.Minute):
		t.Fatal("the page said nothing")
	}
}
