package lang

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
)

// root begins the paths of the library, module those of the commands that are built.
const (
	root   = "example.org/zymase/"
	module = root + "examples/bridge/lang/"
)

// errNoGo reports that there is no Go to build the library with.
var errNoGo = errors.New("the library is built by your own Go toolchain, and there is no go command on the path: install Go " +
	"(go.dev/dl), or take a directory that somebody else wrote")

// errNoC reports that there is no C compiler to build the shared library with.
var errNoC = errors.New("a shared library takes a C compiler beside Go, and there is none on the path: install gcc or clang, or name one in the variable CC")

// buildModule builds the library as WebAssembly. But for what a column calls for each of its numbers (units,
// gravity, math) its functions are not inlined, which makes the module a tenth smaller when packed; the last
// pattern that fits counts.
func buildModule() ([]byte, error) {
	how := []string{"-buildmode=c-shared"}
	for _, small := range []string{"std=-l", "math=", "math/bits=", "internal/runtime/...=", "github.com/...=-l", root + "...=-l",
		root + "units=", root + "gravity=", root + "internal/checked=", root + "internal/numeric="} {
		how = append(how, "-gcflags="+small)
	}
	return build("zymase.wasm", how, module+"wasm", "GOOS=wasip1", "GOARCH=wasm")
}

// buildShared builds the library as a shared library for this machine.
func buildShared() ([]byte, error) {
	if _, err := exec.LookPath("go"); err != nil {
		return nil, errNoGo
	}
	if !hasCompiler() {
		return nil, errNoC
	}
	return build(sharedName(), []string{"-buildmode=c-shared", "-tags", "shared"}, module+"shared", "CGO_ENABLED=1")
}

// sharedName is the file of the shared library on this machine.
func sharedName() string {
	switch runtime.GOOS {
	case "windows":
		return "zymase.dll"
	case "darwin":
		return "libzymase.dylib"
	}
	return "libzymase.so"
}

// hasCompiler reports whether a C compiler is at hand.
func hasCompiler() bool {
	if named := os.Getenv("CC"); named != "" {
		_, err := exec.LookPath(named)
		return err == nil
	}
	for _, name := range []string{"gcc", "clang", "cc"} {
		if _, err := exec.LookPath(name); err == nil {
			return true
		}
	}
	return false
}

// build builds a command into a file and returns what is in it.
func build(name string, how []string, command string, env ...string) ([]byte, error) {
	tool, err := exec.LookPath("go")
	if err != nil {
		return nil, errNoGo
	}
	dir, err := os.MkdirTemp("", "bridge")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, name)
	args := append([]string{"build", "-trimpath", "-ldflags", "-s -w", "-o", file}, how...)
	cmd := exec.Command(tool, append(args, command)...)
	cmd.Env = append(os.Environ(), env...)
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("go build of %s, from a folder of the library: %w\n%s", name, err, bytes.TrimSpace(out))
	}
	return os.ReadFile(file)
}
