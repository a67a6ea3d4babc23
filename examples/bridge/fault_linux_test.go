package main

import (
	"bytes"
	"context"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// The tests of this file give the built program real faults of the system.

// faulted runs the program with that standard output.
func faulted(t *testing.T, in io.Reader, out *os.File, name string, args ...string) said {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	defer cancel()
	c := exec.CommandContext(ctx, name, args...)
	var stderr bytes.Buffer
	c.Stdin, c.Stdout, c.Stderr = in, out, &stderr
	c.Run()
	return said{"", stderr.String(), c.ProcessState.ExitCode()}
}

func TestFullDevice(t *testing.T) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip(err)
	}
	defer full.Close()
	for _, use := range writing {
		got := faulted(t, strings.NewReader(use.in), full, binary(t), use.args...)
		if got.code != 2 || !strings.HasSuffix(got.err, "write /dev/stdout: no space left on device\n") {
			t.Errorf("%q: exit code %d, %q", use.args, got.code, got.err)
		}
	}
	if got := faulted(t, nil, full, binary(t), "call", "altitude"); got.code != 2 || !strings.Contains(got.err, "there are") {
		t.Errorf("a mistake on a full device: %+v", got)
	}
}

func TestClosedPipe(t *testing.T) {
	for _, use := range writing {
		reader, writer, err := os.Pipe()
		if err != nil {
			t.Fatal(err)
		}
		reader.Close()
		got := faulted(t, strings.NewReader(use.in), writer, binary(t), use.args...)
		writer.Close()
		if got.code != 2 || !strings.HasSuffix(got.err, "write /dev/stdout: broken pipe\n") {
			t.Errorf("%q: exit code %d, %q", use.args, got.code, got.err)
		}
	}
}

// A filter whose reader has gone ends, though its input stays open and says no
// more.
func TestFillClosedPipe(t *testing.T) {
	in, feed, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer in.Close()
	defer feed.Close()
	go io.WriteString(feed, "altitude (m)\n"+strings.Repeat("0\n", 200_000))
	reader, writer, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	go func() {
		io.ReadFull(reader, make([]byte, 1000))
		reader.Close()
	}()
	got := faulted(t, in, writer, binary(t), "fill", "atmosphere_at_altitude")
	writer.Close()
	if got.code != 2 || !strings.HasSuffix(got.err, "write /dev/stdout: broken pipe\n") {
		t.Errorf("exit code %d, %q", got.code, got.err)
	}
}

// A disk that fills while a file is written: no file is left, and one that was
// there is as it was. The room is limited with ulimit, which counts blocks of
// 512 or 1024 bytes.
func TestFileTooLarge(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "out")
	rows := "altitude (m)\n" + strings.Repeat("0\n", 100_000)
	for _, use := range []struct {
		in, old string
		args    []string
	}{
		{rows, "", []string{"fill", "atmosphere_at_altitude", "-o", name}},
		{"", "", []string{"module", "-o", name}},
		{"", "", []string{"sheet", name}},
		{rows, "old", []string{"fill", "atmosphere_at_altitude", "-force", "-o", name}},
		{"", "old", []string{"module", "-force", "-o", name}},
		{"", "old", []string{"sheet", "-force", name}},
	} {
		left := 0
		if use.old != "" {
			left = 1
			if err := os.WriteFile(name, []byte(use.old), 0o666); err != nil {
				t.Fatal(err)
			}
		}
		shell := append([]string{"-c", `ulimit -f 8 && exec "$0" "$@"`, binary(t)}, use.args...)
		got := faulted(t, strings.NewReader(use.in), nil, "sh", shell...)
		if got.code != 2 || !strings.HasSuffix(got.err, "write "+name+": file too large\n") {
			t.Errorf("%q: exit code %d, %q", use.args, got.code, got.err)
		}
		if text, _ := os.ReadFile(name); string(text) != use.old {
			t.Errorf("%q: the file holds %.100q", use.args, text)
		}
		if entries, _ := os.ReadDir(dir); len(entries) != left {
			t.Errorf("%q: the directory holds %v", use.args, entries)
		}
	}
}

// A server goes on when its terminal is gone: nobody reads what it says, and it
// was told to ignore the hang-up.
func TestServeAlone(t *testing.T) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	address := l.Addr().String()
	l.Close()
	reader, writer, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	reader.Close()
	ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	defer cancel()
	c := exec.CommandContext(ctx, "sh", "-c", `trap "" HUP; exec "$0" "$@"`, binary(t), "serve", "-addr", address)
	c.Stderr = writer
	if err := c.Start(); err != nil {
		t.Fatal(err)
	}
	writer.Close()
	client := http.Client{Timeout: 5 * time.Second}
	for range 3 {
		var r *http.Response
		for range 250 { // until it listens
			if r, err = client.Get("http://" + address + "/v1/atmosphere_at_altitude?altitude=0"); err == nil {
				break
			}
			time.Sleep(20 * time.Millisecond)
		}
		if err != nil {
			t.Fatal(err)
		}
		if body, _ := io.ReadAll(r.Body); string(body) != "101.325" {
			t.Errorf("answered %q", body)
		}
		r.Body.Close()
		c.Process.Signal(syscall.SIGHUP)
	}
	c.Process.Signal(syscall.SIGTERM)
	if err := c.Wait(); err != nil {
		t.Error(err)
	}
}
