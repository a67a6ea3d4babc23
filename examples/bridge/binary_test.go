package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
	"sync"
	"testing"
	"time"
)

// The tests of this file build the program and run it as a user does.

// buildDir is made before the tests, so that it can be taken away after them.
var buildDir string

func TestMain(m *testing.M) {
	var err error
	if buildDir, err = os.MkdirTemp("", "bridge"); err != nil {
		panic(err)
	}
	code := m.Run()
	os.RemoveAll(buildDir)
	os.Exit(code)
}

var buildOnce = sync.OnceValues(func() (string, error) {
	name := filepath.Join(buildDir, "bridge.exe")
	out, err := exec.Command("go", "build", "-o", name, ".").CombinedOutput()
	if err != nil {
		return "", errors.New(string(out))
	}
	return name, nil
})

func binary(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("building the program is left out with -short")
	}
	name, err := buildOnce()
	if err != nil {
		t.Fatal(err)
	}
	return name
}

type said struct {
	out, err string
	code     int
}

func bridge(t *testing.T, in string, args ...string) said {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	defer cancel()
	c := exec.CommandContext(ctx, binary(t), args...)
	c.Stdin = strings.NewReader(in)
	var out, stderr bytes.Buffer
	c.Stdout, c.Stderr = &out, &stderr
	c.Run()
	return said{out.String(), stderr.String(), c.ProcessState.ExitCode()}
}

// At sea level the standard atmosphere is 101.325 kPa (ISO 2533:1975); by
// definition 1 bar is 100 kPa.
func TestCommandLine(t *testing.T) {
	for _, c := range []struct {
		name string
		args []string
		in   string
		out  string // a pattern
		err  string // a part
		code int
	}{
		{"call", []string{"call", "atmosphere_at_altitude", "altitude=0"}, "", `^with altitude = 0 m\npressure  101\.325 kPa absolute\n$`, "", 0},
		{"call of a default", []string{"call", "pressure_gauge_from_absolute", "pressure=2 bar absolute"}, "",
			`^with pressure = 200 kPa absolute\nwith altitude = 0 m, as none was given\ngauge_pressure  98\.675 kPa gauge\n$`, "", 0},
		{"call in Fahrenheit", []string{"call", "co2_content_volumes", "temperature=38 °F", "gauge_pressure=12 psi gauge"}, "",
			`^with temperature = 3\.33333333333 °C\nwith gauge_pressure = 82\.7`, "", 0},
		{"call without a unit", []string{"call", "co2_content_volumes", "temperature=38", "gauge_pressure=12 psi gauge"}, "", "^$",
			`temperature: 38 has no unit: write 38 °C or 38 °F`, 1},
		{"call of a pressure without a unit", []string{"call", "pressure_gauge_from_absolute", "pressure=2"}, "", "^$",
			`pressure: 2 has no unit: write 2 kPa absolute, 2 bar absolute or 2 psi absolute`, 1},
		{"fill without a unit", []string{"fill", "co2_content_volumes", "temperature=38"}, "gauge_pressure (psi gauge)\n12\n", "^$",
			`temperature: 38 has no unit`, 2},
		{"call with units", []string{"call", "atmosphere_at_altitude", "altitude=0 ft", "pressure (bar)"}, "",
			`^with altitude = 0 m\npressure  1\.01325 bar\n$`, "", 0},
		{"call of a negative number", []string{"call", "atmosphere_at_altitude", "altitude=-500"}, "", `^with altitude = -500 m\npressure  107\.`, "", 0},
		{"call outside the range", []string{"call", "atmosphere_at_altitude", "altitude=99999"}, "", "^$", "outside -500 m to 11000 m", 1},
		{"call without an input", []string{"call", "atmosphere_at_altitude"}, "", "^$", "altitude is missing", 1},
		{"call of nothing", []string{"call"}, "", "^$", "the name of a function is missing", 2},
		{"call of an unknown function", []string{"call", "altitude"}, "", "^$", "there are atmosphere_at_altitude", 2},
		{"call with an unknown flag", []string{"call", "-x"}, "", "^$", "use: bridge call", 2},
		{"no command", nil, "", "^$", "bridge functions", 2},
		{"unknown command", []string{"brew"}, "", "^$", `no command "brew"`, 2},
		{"help", []string{"help"}, "", "bridge fill", "", 0},
		{"help of a command", []string{"fill", "-h"}, "", "^$", "-decimal-comma", 0},
		{"functions", []string{"functions"}, "", `(?m)^atmosphere_at_altitude: .*\n    altitude \(m\), -500 to 11000: `, "", 0},
		{"functions with a word", []string{"functions", "Standard Atmosphere"}, "", `^atmosphere_at_altitude: [^:]*:[^:]*:[^:]*:.*\n.*\n\n?$`, "", 0},
		{"functions with no such word", []string{"functions", "zymurgy"}, "", "^$", "no function", 1},
		{"fill", []string{"fill", "atmosphere_at_altitude"}, "n,altitude (ft)\nx,0\n", `^n,altitude \(ft\),pressure \(kPa absolute\),error\nx,0,101\.325,\n$`, "", 0},
		{"fill with flags after the name", []string{"fill", "atmosphere_at_altitude", "-semicolon", "-decimal-comma"}, "n;altitude (ft)\nx;0,0\n",
			`^n;altitude \(ft\);pressure \(kPa absolute\);error\nx;0,0;101,325;\n$`, "", 0},
		{"fill with a bad row", []string{"fill", "atmosphere_at_altitude"}, "altitude (ft)\nhigh\n0\n", `(?m)^0,101\.325,$`, "no answer in 1 of 2 rows", 1},
		{"fill without the column", []string{"fill", "atmosphere_at_altitude"}, "height\n1\n", "^$", `no column "altitude (m)"`, 2},
		{"fill of what is no text", []string{"fill", "atmosphere_at_altitude"}, "altitude (m)\n0\n\x00\n", `101\.325`,
			"after 1 rows: line 3: the file has a NUL byte", 2},
		{"fill of a mistyped flag", []string{"fill", "atmosphere_at_altitude", "-comma"}, "", "^$", "flag provided but not defined", 2},
		{"serve to the world", []string{"serve", "-addr", "0.0.0.0:0"}, "", "^$", "use 127.0.0.1", 2},
		{"module for the world", []string{"module", "-addr", "192.0.2.1:80"}, "", "^$", "127.0.0.1 only", 2},
		{"module", []string{"module"}, "", `Function ATMOSPHERE_AT_ALTITUDE\(`, "", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := bridge(t, c.in, c.args...)
			if !regexp.MustCompile(c.out).MatchString(got.out) || !strings.Contains(got.err, c.err) || got.code != c.code {
				t.Errorf("exit code %d, want %d\nout: %.500s\nerr: %s", got.code, c.code, got.out, got.err)
			}
		})
	}
}

func TestJSON(t *testing.T) {
	var list []struct {
		Name   string
		Inputs []struct {
			Name, Unit string
			Default    *float64
		}
	}
	if err := json.Unmarshal([]byte(bridge(t, "", "functions", "-json").out), &list); err != nil {
		t.Fatal(err)
	}
	if len(list) == 0 || list[0].Name == "" || list[0].Inputs[0].Unit != "m" {
		t.Errorf("%+v", list[:1])
	}
	var answer struct {
		Function string
		Outputs  []struct {
			Name, Unit string
			Value      float64
		}
	}
	got := bridge(t, "", "call", "-json", "atmosphere_at_altitude", "altitude=0")
	if err := json.Unmarshal([]byte(got.out), &answer); err != nil || answer.Outputs[0].Value != 101.325 {
		t.Errorf("%s: %v", got.out, err)
	}
}

// Files appear whole or not at all, and what is there stays without -force.
func TestFiles(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "out")
	hold := func(want string) {
		t.Helper()
		got, err := os.ReadFile(name)
		if want == "" && errors.Is(err, os.ErrNotExist) {
			return
		}
		if err != nil || !strings.Contains(string(got), want) {
			t.Errorf("the file holds %.100q, %v; want %q", got, err, want)
		}
	}
	for _, c := range []struct {
		in   string
		args []string
		code int
		want string
	}{
		{"altitude (m)\n0\n\x00\n", []string{"fill", "atmosphere_at_altitude", "-o", name}, 2, ""},
		{"altitude (m)\n0\nhigh\n", []string{"fill", "atmosphere_at_altitude", "-o", name}, 1, "0,101.325,\nhigh,,"},
		{"altitude (m)\n1\n", []string{"fill", "atmosphere_at_altitude", "-o", name}, 2, "0,101.325"},
		{"altitude (m)\n0\n\x00\n", []string{"fill", "atmosphere_at_altitude", "-o", name, "-force"}, 2, "0,101.325"},
		{"altitude (m)\n00\n", []string{"fill", "atmosphere_at_altitude", "-o", name, "-force"}, 0, "00,101.325"},
		{"", []string{"module", "-o", name}, 2, "00,101.325"},
		{"", []string{"module", "-o", name, "-force"}, 0, "Option Explicit"},
		{"", []string{"sheet", name}, 2, "Option Explicit"},
		{"", []string{"sheet", "-force", name}, 0, "office:document"},
	} {
		if got := bridge(t, c.in, c.args...); got.code != c.code {
			t.Errorf("%q: exit code %d, want %d: %s", c.args, got.code, c.code, got.err)
		}
		hold(c.want)
	}
	entries, _ := os.ReadDir(dir)
	if len(entries) != 1 {
		t.Errorf("the directory holds %v", entries)
	}
}

// The server says where it is, answers, and stops by a signal with code 0.
func TestServe(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("no signal to stop it by")
	}
	for _, signal := range signals() {
		ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
		defer cancel()
		c := exec.CommandContext(ctx, binary(t), "serve", "-addr", "127.0.0.1:0")
		stderr, err := c.StderrPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := c.Start(); err != nil {
			t.Fatal(err)
		}
		line, _ := bufio.NewReader(stderr).ReadString('\n')
		address := regexp.MustCompile(`http://127\.0\.0\.1:\d+/`).FindString(line)
		client := http.Client{Timeout: 5 * time.Second}
		r, err := client.Get(address + "v1/atmosphere_at_altitude?altitude=0")
		if err != nil {
			t.Fatalf("%q: %v", line, err)
		}
		body, _ := io.ReadAll(r.Body)
		r.Body.Close()
		if string(body) != "101.325" {
			t.Errorf("answered %q", body)
		}
		c.Process.Signal(signal)
		if err := c.Wait(); err != nil {
			t.Errorf("%v: %v", signal, err)
		}
	}
}

// A signal ends a fill that waits for input, and leaves no file.
func TestFillStopped(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("no signal to stop it by")
	}
	for _, signal := range signals() {
		dir := t.TempDir()
		ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
		defer cancel()
		c := exec.CommandContext(ctx, binary(t), "fill", "atmosphere_at_altitude", "-o", filepath.Join(dir, "out.csv"))
		in, err := c.StdinPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := c.Start(); err != nil {
			t.Fatal(err)
		}
		io.WriteString(in, "altitude (m)\n0\n")
		for range 500 { // until the file has been started
			if entries, _ := os.ReadDir(dir); len(entries) > 0 {
				break
			}
			time.Sleep(20 * time.Millisecond)
		}
		c.Process.Signal(signal)
		if c.Wait(); c.ProcessState.ExitCode() != 2 {
			t.Errorf("%v: exit code %d", signal, c.ProcessState.ExitCode())
		}
		if entries, _ := os.ReadDir(dir); len(entries) > 0 {
			t.Errorf("%v: %v is left", signal, entries)
		}
	}
}
