package main

import (
	"bytes"
	"context"
	"encoding/xml"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/bridge/newfile"
)

// office is LibreOffice Calc with a profile of its own and no window.
type office struct {
	program string
	profile string // a directory
	docs    string // a directory whose documents may follow links
}

// startLimit and runLimit end a run that hangs.
const (
	startLimit = 60 * time.Second
	runLimit   = 90 * time.Second
)

// findOffice makes a profile, or skips the test where the program is missing.
func findOffice(t *testing.T) *office { return findOfficeIn(t, "en-US") }

// findOfficeIn is findOffice with a locale for numbers.
func findOfficeIn(t *testing.T, locale string) *office {
	t.Helper()
	if testing.Short() {
		t.Skip("the spreadsheet test takes some seconds: left out with -short")
	}
	script, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("LibreOffice Calc is not installed, so no real spreadsheet asks the bridge; install libreoffice-calc to run this test")
	}
	if script, err = filepath.EvalSymlinks(script); err != nil {
		t.Fatal(err)
	}
	// The script starts a child that a kill of the script would leave behind.
	program := filepath.Join(filepath.Dir(script), "soffice.bin")
	if _, err := os.Stat(program); err != nil {
		program = script
	}
	o := &office{program: program, profile: t.TempDir(), docs: t.TempDir()}
	o.write(t, filepath.Join(o.profile, "user", "registrymodifications.xcu"), `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="SecureURL" oor:op="fuse"><value><it>file://`+o.docs+
		`</it></value></prop></item>
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>`+locale+`</value></prop></item>
</oor:items>
`)
	o.run(t, startLimit, "--terminate_after_init") // else the module is written over
	return o
}

func (o *office) write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

// run runs the program to its end. Its exit code tells nothing, save that it
// wants to be started again.
func (o *office) run(t *testing.T, limit time.Duration, args ...string) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), limit)
	defer cancel()
	args = append([]string{"-env:UserInstallation=file://" + o.profile, "--headless", "--norestore"}, args...)
	for range 3 {
		c := exec.CommandContext(ctx, o.program, args...)
		c.WaitDelay = 5 * time.Second
		c.Dir = o.docs
		var said bytes.Buffer
		c.Stdout, c.Stderr = &said, &said
		c.Run()
		if ctx.Err() != nil {
			t.Fatalf("the spreadsheet did not end in %v: %s", limit, said.String())
		}
		if c.ProcessState == nil {
			t.Fatalf("the spreadsheet does not start: %s", said.String())
		}
		if c.ProcessState.ExitCode() != 81 { // start again, please
			return
		}
	}
	t.Fatal("the spreadsheet wants to be started again and again")
}

// install puts modules of Basic into the library that formulas see.
func (o *office) install(t *testing.T, modules map[string]string) {
	t.Helper()
	const head = `<?xml version="1.0" encoding="UTF-8"?>` + "\n"
	dir := filepath.Join(o.profile, "user", "basic", "Standard")
	var list strings.Builder
	list.WriteString(head + `<!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">` + "\n" +
		`<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false">` + "\n")
	for name, source := range modules {
		o.write(t, filepath.Join(dir, name+".xba"), head+
			`<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">`+"\n"+
			`<script:module xmlns:script="http://openoffice.org/2000/script" script:name="`+name+`" script:language="StarBasic">`+
			escape(source)+"</script:module>\n")
		list.WriteString(` <library:element library:name="` + name + `"/>` + "\n")
	}
	o.write(t, filepath.Join(dir, "script.xlb"), list.String()+"</library:library>\n")
}

func escape(text string) string {
	var b bytes.Buffer
	xml.EscapeText(&b, []byte(text))
	return b.String()
}

const csvFilter = "Text - txt - csv (StarCalc)"

// convert turns a document into CSV as any user's command line can.
func (o *office) convert(t *testing.T, doc string) []byte {
	t.Helper()
	out := strings.TrimSuffix(doc, filepath.Ext(doc)) + ".csv"
	os.Remove(out)
	o.run(t, runLimit, "--convert-to", "csv:"+csvFilter+":44,34,76,1", "--outdir", o.docs, doc)
	return o.read(t, out)
}

// export loads a document, lets it follow its links, and writes CSV. It needs
// the module exporter.
func (o *office) export(t *testing.T, doc string) []byte {
	t.Helper()
	out := doc + ".csv"
	os.Remove(out)
	o.run(t, runLimit, fmt.Sprintf(`macro:///Standard.Exporter.Export("file://%s","file://%s","%s")`, doc, out, csvFilter))
	return o.read(t, out)
}

func (o *office) read(t *testing.T, name string) []byte {
	t.Helper()
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatalf("the spreadsheet wrote nothing: %v", err)
	}
	return b
}

const exporter = `
Sub Export(source As String, target As String, filter As String)
	Dim load(1) As New com.sun.star.beans.PropertyValue
	load(0).Name = "Hidden"
	load(0).Value = True
	load(1).Name = "UpdateDocMode"
	load(1).Value = 3
	Dim doc As Object
	doc = StarDesktop.loadComponentFromURL(source, "_blank", 0, load())
	Dim dispatcher As Object
	dispatcher = createUnoService("com.sun.star.frame.DispatchHelper")
	dispatcher.executeDispatch(doc.CurrentController.Frame, ".uno:UpdateTableLinks", "", 0, Array())
	Dim store(1) As New com.sun.star.beans.PropertyValue
	store(0).Name = "FilterName"
	store(0).Value = filter
	store(1).Name = "FilterOptions"
	store(1).Value = "44,34,76,1"
	doc.storeToURL(target, store())
	doc.close(True)
	StarDesktop.terminate()
End Sub
`

// document writes a sheet of rows of cells; a cell that starts with = is a
// formula, one that starts with a digit or a minus a number, all else text.
func (o *office) document(t *testing.T, name string, rows [][]string) string {
	t.Helper()
	var b strings.Builder
	b.WriteString(`<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Test">
`)
	for _, row := range rows {
		b.WriteString("<table:table-row>")
		for _, cell := range row {
			switch {
			case cell == "":
				b.WriteString("<table:table-cell/>")
			case cell[0] == '=':
				fmt.Fprintf(&b, `<table:table-cell table:formula="of:%s"/>`, escape(cell))
			case cell[0] == '-' || cell[0]-'0' <= 9:
				fmt.Fprintf(&b, `<table:table-cell office:value-type="float" office:value="%s"/>`, cell)
			default:
				fmt.Fprintf(&b, `<table:table-cell office:value-type="string"><text:p>%s</text:p></table:table-cell>`, escape(cell))
			}
		}
		b.WriteString("</table:table-row>\n")
	}
	b.WriteString("</table:table></office:spreadsheet></office:body></office:document>\n")
	name = filepath.Join(o.docs, name)
	o.write(t, name, b.String())
	return name
}

// put writes a file that the bridge made.
func (o *office) put(t *testing.T, name string, text []byte) string {
	t.Helper()
	name = filepath.Join(o.docs, name)
	f, err := newfile.Create(name, true)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Abort()
	f.Write(text)
	if err := f.Commit(); err != nil {
		t.Fatal(err)
	}
	return name
}
