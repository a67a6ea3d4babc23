//go:build !kettle

package main

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	_ "embed"
	"encoding/ascii85"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"html/template"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"example.org/zymase/examples/bridge/licences"
	"example.org/zymase/examples/bridge/newfile"
	"example.org/zymase/examples/seltzer/plan"
)

// What the page is made of.
var (
	//go:embed kettle/kettle.html
	kettleText string
	//go:embed kettle/kettle.css
	kettleStyle string
	//go:embed kettle/kettle.js
	kettleScript string

	//go:embed drinks/base.json
	drinkBase []byte
	//go:embed drinks/cider.json
	drinkCider []byte
	//go:embed drinks/mead.json
	drinkMead []byte
	//go:embed drinks/ale.json
	drinkAle []byte
	//go:embed drinks/wine.json
	drinkWine []byte
)

var kettlePage = template.Must(template.New("kettle").Parse(kettleText))

// A drink is a request that the page starts from.
type drink struct {
	Name    string          `json:"name"`
	Request json.RawMessage `json:"request"`
}

// drinks are those that the page starts from, the built-in batch first.
func drinks() []drink {
	return []drink{
		{"Dry sparkler", builtIn}, {"Strong base to let down", drinkBase}, {"Cider", drinkCider},
		{"Mead", drinkMead}, {"Pale ale from extract", drinkAle}, {"Elderflower wine", drinkWine},
	}
}

// writeKettle writes the page that plans by itself, whole or not at all; own says whether it
// starts from a request of the user's.
func writeKettle(name string, force, own bool, req plan.Request) error {
	f, err := newfile.Create(name, force)
	if err != nil {
		return &outputError{err}
	}
	defer f.Abort() // nothing once it is committed
	if err := makeKettle(f, own, req); err != nil {
		return &outputError{err}
	}
	if err := f.Commit(); err != nil {
		return &outputError{err}
	}
	return nil
}

// makeKettle builds the page and writes it.
func makeKettle(w io.Writer, own bool, req plan.Request) error {
	wasm, glue, err := buildLibrary()
	if err != nil {
		return err
	}
	start := drinks()
	if own {
		text, err := json.Marshal(req)
		if err != nil {
			return err
		}
		start = append([]drink{{req.Name, text}}, start...)
	}
	return printKettle(w, wasm, glue, start)
}

// errNoToolchain reports that there is no Go to build the library for a browser with.
var errNoToolchain = errors.New("the page holds the library as WebAssembly, which your own Go toolchain builds: there is no go " +
	"command on the path; install Go (go.dev/dl), or take a page that somebody else wrote")

// buildLibrary builds the library for a browser with the Go toolchain at hand, and finds the
// script that goes with it.
func buildLibrary() (wasm, glue []byte, err error) {
	tool, err := exec.LookPath("go")
	if err != nil {
		return nil, nil, errNoToolchain
	}
	root, err := exec.Command(tool, "env", "GOROOT").Output()
	if err != nil {
		return nil, nil, fmt.Errorf("go env GOROOT: %w", err)
	}
	for _, dir := range []string{"lib", "misc"} {
		if glue, err = os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), dir, "wasm", "wasm_exec.js")); err == nil {
			break
		}
	}
	if err != nil {
		return nil, nil, fmt.Errorf("the Go toolchain lacks its script for WebAssembly: %w", err)
	}
	dir, err := os.MkdirTemp("", "seltzer")
	if err != nil {
		return nil, nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "library.wasm")
	how := []string{"build", "-tags", "kettle", "-trimpath", "-ldflags", "-s -w"}
	// Where little is computed functions are not inlined, which makes the page a tenth shorter; the last pattern that fits counts.
	const module = "example.org/zymase/"
	for _, small := range []string{"std=-l", "math=", "math/bits=", "runtime=", "internal/runtime/...=", "github.com/...=-l",
		module + "units/material=-l", module + "nutrient/law=-l", module + "water/must=-l", module + "examples/seltzer=-l",
		module + "examples/seltzer/plan=-l"} {
		how = append(how, "-gcflags="+small)
	}
	cmd := exec.Command(tool, append(how, "-o", file, module+"examples/seltzer")...)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, nil, fmt.Errorf("go build for a browser, from a folder of the library: %w\n%s", err, bytes.TrimSpace(out))
	}
	wasm, err = os.ReadFile(file)
	return wasm, glue, err
}

// asText is the library as text, five letters for four bytes: a sixteenth shorter than base 64. The
// letter "<", which could end the element that it stands in, is written "v", which is no other's.
func asText(packed []byte) string {
	out := make([]byte, ascii85.MaxEncodedLen(len(packed)))
	out = out[:ascii85.Encode(out, packed)]
	return string(bytes.ReplaceAll(out, []byte("<"), []byte("v")))
}

// printKettle writes the page. Its policy lets nothing in or out: no request of any kind, no
// script and no style but the ones inside, by their hashes.
func printKettle(w io.Writer, wasm, glue []byte, start []drink) error {
	fields, err := describeRequest()
	if err != nil {
		return err
	}
	form, err := json.Marshal(fields)
	if err != nil {
		return err
	}
	from, err := json.Marshal(start)
	if err != nil {
		return err
	}
	inside, err := licences.Text()
	if err != nil {
		return err
	}
	var packed bytes.Buffer
	z, err := gzip.NewWriterLevel(&packed, gzip.BestCompression)
	if err != nil {
		return err
	}
	if _, err := z.Write(wasm); err != nil {
		return err
	}
	if err := z.Close(); err != nil {
		return err
	}
	hash := func(text string) string {
		sum := sha256.Sum256([]byte(text))
		return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	}
	library := strings.ReplaceAll(string(glue), "\r\n", "\n")
	policy := fmt.Sprintf("default-src 'none'; script-src %s %s 'wasm-unsafe-eval'; style-src %s; worker-src blob:; base-uri 'none'; form-action 'none'",
		hash(library), hash(kettleScript), hash(kettleStyle))
	return kettlePage.Execute(w, map[string]any{
		"Policy":   policy,
		"Licences": string(inside),
		// Ours, or of the Go toolchain, or JSON with <, > and & escaped: no text of anybody else's.
		"Style":  template.HTML("<style>" + kettleStyle + "</style>"),
		"Glue":   template.HTML(`<script id="glue">` + library + "</script>"),
		"Script": template.HTML("<script>" + kettleScript + "</script>"),
		"Data": template.HTML(`<script type="application/json" id="the form">` + string(form) + "</script>\n" +
			`<script type="application/json" id="the drinks">` + string(from) + "</script>\n" +
			`<script type="application/octet-stream" id="library">` + asText(packed.Bytes()) + "</script>"),
	})
}
