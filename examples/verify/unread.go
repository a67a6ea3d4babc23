package main

import (
	_ "embed"
	"strings"
)

//go:embed unread.tsv
var unreadFile string

// unreadReasons says of each function that no published row reaches why that is so.
func unreadReasons() map[string]string {
	why := map[string]string{}
	for line := range strings.Lines(unreadFile) {
		if name, reason, ok := strings.Cut(strings.TrimSpace(line), "\t"); ok {
			why[name] = reason
		}
	}
	return why
}
