package newfile_test

import (
	"fmt"
	"os"
	"path/filepath"

	"example.org/zymase/examples/bridge/newfile"
)

// What is there stays, unless it is to be replaced.
func ExampleCreate() {
	dir, err := os.MkdirTemp("", "example")
	if err != nil {
		fmt.Println(err)
		return
	}
	defer os.RemoveAll(dir)
	name := filepath.Join(dir, "out.csv")
	f, err := newfile.Create(name, false)
	if err != nil {
		fmt.Println(err)
		return
	}
	defer f.Abort()
	fmt.Fprintln(f, "gravity,1.028")
	_, early := os.Stat(name)
	fmt.Println("there before Commit:", early == nil)
	fmt.Println("error of Commit:", f.Commit())
	_, err = newfile.Create(name, false)
	fmt.Println("a second one is refused:", err != nil)
	// Output:
	// there before Commit: false
	// error of Commit: <nil>
	// a second one is refused: true
}
