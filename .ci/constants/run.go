package main

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"time"
)

func runBinary(bin, dir string, i int, limit time.Duration) (string, bool) {
	ctx, cancel := context.WithTimeout(context.Background(), limit+5*time.Second)
	defer cancel()
	cmd := exec.CommandContext(ctx, bin, "-test.short", "-test.failfast", "-test.timeout", limit.String())
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "ZYMASE_LITERAL="+strconv.Itoa(i), "RAPID_NOFAILFILE=true")
	out, err := cmd.CombinedOutput()
	return string(out), err == nil
}

// alone tries one literal in a build of its own.
func alone(dir string, l *literal, limit time.Duration) string {
	work, err := os.MkdirTemp("", "constants")
	if err != nil {
		return "broken"
	}
	defer os.RemoveAll(work)
	src, err := os.ReadFile(l.file)
	if err != nil {
		return "broken"
	}
	to := filepath.Join(work, "changed.go")
	if err := os.WriteFile(to, bytes.Join([][]byte{src[:l.start], []byte(l.new), src[l.end:]}, nil), 0o600); err != nil {
		return "broken"
	}
	abs, _ := filepath.Abs(l.file)
	over, err := overlay(work, map[string]string{abs: to})
	if err != nil {
		return "broken"
	}
	bin := filepath.Join(work, "tests")
	if err := exec.Command("go", "test", "-c", "-vet=off", "-ldflags=-s -w", "-overlay", over, "-o", bin, dir).Run(); err != nil {
		return "broken"
	}
	if _, ok := runBinary(bin, dir, -1, limit); ok {
		return "alive"
	}
	return "killed"
}
