package main

import (
	"bufio"
	"bytes"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"
)

// A browser is a real one, driven from outside. Its network is off.
type browser interface {
	open(url string)              // in the tab that is looked at
	tab()                         // another tab, looked at from then on
	look(i int)                   // at the i-th tab
	run(body string, result any)  // the body of an async function in the page; result takes what it returns
	press(keys ...string)         // "Tab", "Enter", " ", or text
	width(px int)                 // of the page; the window of Firefox gets no narrower than 500 px
	print() []byte                // as PDF
	picture() []byte              // of the whole page, as PNG
	throttled(times float64) bool // slows the processor, where that can be done
	asked() []string              // what the page asked the network for, where it is known
	name() string
}

// patience is how long a browser may take for one thing.
const patience = 120 * time.Second

// started runs a browser until the test ends.
func started(t *testing.T, cmd *exec.Cmd) {
	t.Helper()
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		cmd.Process.Kill()
		cmd.Wait()
	})
}

// profileDir is a folder for a browser. Processes of it may write there for a moment after it is stopped.
func profileDir(t *testing.T) string {
	dir, err := os.MkdirTemp("", "profile")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		for range 50 {
			if os.RemoveAll(dir) == nil {
				return
			}
			time.Sleep(100 * time.Millisecond)
		}
	})
	return dir
}

// chromium speaks its protocol for developers over a pipe: JSON, each ended by a zero.
type chromium struct {
	t        *testing.T
	out      io.Writer
	mu       sync.Mutex
	next     int
	answers  map[int]chan json.RawMessage
	sessions []string
	session  string
	requests []string
}

func newChromium(t *testing.T, path string) browser {
	t.Helper()
	toRead, toUs, err := pipes()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(path, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--disable-dev-shm-usage", "--remote-debugging-pipe", "--user-data-dir="+profileDir(t))
	cmd.ExtraFiles = []*os.File{toRead[0], toUs[1]}
	started(t, cmd)
	c := &chromium{t: t, out: toRead[1], answers: map[int]chan json.RawMessage{}}
	go c.listen(bufio.NewReader(toUs[0]))
	c.tab()
	return c
}

func pipes() (a, b [2]*os.File, err error) {
	var errA, errB error
	a[0], a[1], errA = os.Pipe()
	b[0], b[1], errB = os.Pipe()
	return a, b, errors.Join(errA, errB)
}

func (c *chromium) listen(r *bufio.Reader) {
	for {
		text, err := r.ReadBytes(0)
		if err != nil {
			return
		}
		var m struct {
			ID     int
			Method string
			Params struct{ Request struct{ URL string } }
		}
		text = bytes.TrimSuffix(text, []byte{0})
		if json.Unmarshal(text, &m) != nil {
			continue
		}
		c.mu.Lock()
		if m.Method == "Network.requestWillBeSent" {
			c.requests = append(c.requests, m.Params.Request.URL)
		}
		if to := c.answers[m.ID]; m.ID > 0 && to != nil {
			to <- text
			delete(c.answers, m.ID)
		}
		c.mu.Unlock()
	}
}

func (c *chromium) call(session, method string, params, result any) {
	c.t.Helper()
	c.mu.Lock()
	c.next++
	id, answer := c.next, make(chan json.RawMessage, 1)
	c.answers[id] = answer
	c.mu.Unlock()
	message := map[string]any{"id": id, "method": method, "params": params}
	if session != "" {
		message["sessionId"] = session
	}
	text, err := json.Marshal(message)
	if err != nil {
		c.t.Fatal(err)
	}
	if _, err := c.out.Write(append(text, 0)); err != nil {
		c.t.Fatal(err)
	}
	select {
	case text := <-answer:
		var m struct {
			Result json.RawMessage
			Error  *struct{ Message string }
		}
		if err := json.Unmarshal(text, &m); err != nil {
			c.t.Fatal(err)
		}
		if m.Error != nil {
			c.t.Fatalf("%s: %s", method, m.Error.Message)
		}
		if result != nil {
			if err := json.Unmarshal(m.Result, result); err != nil {
				c.t.Fatal(err)
			}
		}
	case <-time.After(patience):
		c.t.Fatalf("%s: no answer", method)
	}
}

func (c *chromium) name() string { return "chromium" }

func (c *chromium) tab() {
	c.t.Helper()
	var target struct{ TargetID string }
	c.call("", "Target.createTarget", map[string]any{"url": "about:blank"}, &target)
	var at struct{ SessionID string }
	c.call("", "Target.attachToTarget", map[string]any{"targetId": target.TargetID, "flatten": true}, &at)
	c.session = at.SessionID
	c.sessions = append(c.sessions, c.session)
	for _, what := range []string{"Page.enable", "Network.enable", "Runtime.enable"} {
		c.call(c.session, what, map[string]any{}, nil)
	}
	c.call(c.session, "Network.emulateNetworkConditions", map[string]any{"offline": true, "latency": 0, "downloadThroughput": 0, "uploadThroughput": 0}, nil)
}

func (c *chromium) look(i int) { c.session = c.sessions[i] }

func (c *chromium) open(url string) {
	c.t.Helper()
	c.call(c.session, "Page.navigate", map[string]any{"url": url}, nil)
}

func (c *chromium) run(body string, result any) {
	c.t.Helper()
	var m struct {
		Result           struct{ Value json.RawMessage }
		ExceptionDetails *struct{ Exception struct{ Description string } }
	}
	c.call(c.session, "Runtime.evaluate", map[string]any{"expression": "(async () => {" + body + "})()", "awaitPromise": true, "returnByValue": true}, &m)
	if m.ExceptionDetails != nil {
		c.t.Fatalf("%s: %s", body, m.ExceptionDetails.Exception.Description)
	}
	if result != nil {
		if err := json.Unmarshal(m.Result.Value, result); err != nil {
			c.t.Fatalf("%s: %v: %s", body, err, m.Result.Value)
		}
	}
}

func (c *chromium) press(keys ...string) {
	c.t.Helper()
	for _, k := range keys {
		p := map[string]any{"type": "keyDown", "key": k}
		switch k {
		case "Tab":
			p["code"], p["windowsVirtualKeyCode"] = "Tab", 9
		case "Enter":
			p["code"], p["windowsVirtualKeyCode"], p["text"] = "Enter", 13, "\r"
		case " ":
			p["code"], p["windowsVirtualKeyCode"], p["text"] = "Space", 32, " "
		default:
			c.call(c.session, "Input.insertText", map[string]any{"text": k}, nil)
			continue
		}
		c.call(c.session, "Input.dispatchKeyEvent", p, nil)
		p["type"] = "keyUp"
		delete(p, "text")
		c.call(c.session, "Input.dispatchKeyEvent", p, nil)
	}
}

func (c *chromium) width(px int) {
	c.t.Helper()
	c.call(c.session, "Emulation.setDeviceMetricsOverride", map[string]any{"width": px, "height": 740, "deviceScaleFactor": 1.5, "mobile": px < 600}, nil)
}

func (c *chromium) data(method string, params any) []byte {
	c.t.Helper()
	var m struct{ Data string }
	c.call(c.session, method, params, &m)
	out, err := base64.StdEncoding.DecodeString(m.Data)
	if err != nil {
		c.t.Fatal(err)
	}
	return out
}

func (c *chromium) print() []byte {
	c.t.Helper()
	return c.data("Page.printToPDF", map[string]any{"preferCSSPageSize": true, "printBackground": true})
}

func (c *chromium) picture() []byte {
	c.t.Helper()
	return c.data("Page.captureScreenshot", map[string]any{"captureBeyondViewport": true})
}

func (c *chromium) throttled(times float64) bool {
	c.t.Helper()
	c.call(c.session, "Emulation.setCPUThrottlingRate", map[string]any{"rate": times}, nil)
	return true
}

// spent is the time of the processor, in ms, that the page's own thread has taken.
func (c *chromium) spent() float64 {
	c.t.Helper()
	c.call(c.session, "Performance.enable", map[string]any{"timeDomain": "threadTicks"}, nil)
	var m struct {
		Metrics []struct {
			Name  string
			Value float64
		}
	}
	c.call(c.session, "Performance.getMetrics", map[string]any{}, &m)
	for _, v := range m.Metrics {
		if v.Name == "TaskDuration" {
			return 1000 * v.Value
		}
	}
	c.t.Fatal("no time of the page's thread")
	return 0
}

func (c *chromium) asked() []string {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.requests
}

// firefox speaks Marionette over a local socket: "length:JSON".
type firefox struct {
	t    *testing.T
	conn net.Conn
	in   *bufio.Reader
	next int
	tabs []string
}

func newFirefox(t *testing.T, path string) browser {
	t.Helper()
	profile := profileDir(t)
	// Network off: all of it goes to a proxy that is not there.
	prefs := `user_pref("marionette.port", 0);
user_pref("network.proxy.type", 1);
user_pref("network.proxy.socks", "127.0.0.1");
user_pref("network.proxy.socks_port", 9);
user_pref("app.update.enabled", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.enabled", false);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.aboutwelcome.enabled", false);
`
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(prefs), 0o600); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(path, "--headless", "--marionette", "--no-remote", "--profile", profile)
	cmd.Env = append(os.Environ(), "HOME="+profile, "MOZ_REMOTE_SETTINGS_DEVTOOLS=1")
	started(t, cmd)
	f := &firefox{t: t}
	for end := time.Now().Add(patience); ; time.Sleep(200 * time.Millisecond) {
		port, err := os.ReadFile(filepath.Join(profile, "MarionetteActivePort"))
		if err == nil && len(port) > 0 {
			if f.conn, err = net.Dial("tcp", "127.0.0.1:"+strings.TrimSpace(string(port))); err == nil {
				break
			}
		}
		if time.Now().After(end) {
			t.Fatalf("firefox does not answer: %v", err)
		}
	}
	t.Cleanup(func() { f.conn.Close() })
	f.in = bufio.NewReader(f.conn)
	f.read() // its greeting
	f.call("WebDriver:NewSession", map[string]any{"capabilities": map[string]any{}}, nil)
	f.call("WebDriver:SetTimeouts", map[string]any{"script": patience.Milliseconds()}, nil)
	var at struct{ Value string }
	f.call("WebDriver:GetWindowHandle", map[string]any{}, &at)
	f.tabs = []string{at.Value}
	return f
}

func (f *firefox) read() []byte {
	f.t.Helper()
	if err := f.conn.SetReadDeadline(time.Now().Add(patience)); err != nil {
		f.t.Fatal(err)
	}
	head, err := f.in.ReadString(':')
	if err != nil {
		f.t.Fatal(err)
	}
	n, err := strconv.Atoi(strings.TrimSuffix(head, ":"))
	if err != nil {
		f.t.Fatal(err)
	}
	text := make([]byte, n)
	if _, err := io.ReadFull(f.in, text); err != nil {
		f.t.Fatal(err)
	}
	return text
}

func (f *firefox) call(method string, params, result any) {
	f.t.Helper()
	f.next++
	text, err := json.Marshal([]any{0, f.next, method, params})
	if err != nil {
		f.t.Fatal(err)
	}
	if _, err := fmt.Fprintf(f.conn, "%d:%s", len(text), text); err != nil {
		f.t.Fatal(err)
	}
	var m [4]json.RawMessage
	if err := json.Unmarshal(f.read(), &m); err != nil {
		f.t.Fatal(err)
	}
	if string(m[2]) != "null" {
		f.t.Fatalf("%s: %s", method, m[2])
	}
	if result != nil {
		if err := json.Unmarshal(m[3], result); err != nil {
			f.t.Fatalf("%s: %v: %s", method, err, m[3])
		}
	}
}

func (f *firefox) name() string { return "firefox" }

func (f *firefox) open(url string) {
	f.t.Helper()
	f.call("WebDriver:Navigate", map[string]any{"url": url}, nil)
}

func (f *firefox) tab() {
	f.t.Helper()
	var at struct{ Handle string }
	f.call("WebDriver:NewWindow", map[string]any{"type": "tab"}, &at)
	f.tabs = append(f.tabs, at.Handle)
	f.look(len(f.tabs) - 1)
}

func (f *firefox) look(i int) {
	f.t.Helper()
	f.call("WebDriver:SwitchToWindow", map[string]any{"handle": f.tabs[i], "focus": true}, nil)
}

func (f *firefox) run(body string, result any) {
	f.t.Helper()
	// A script from outside sees the page's own names only so.
	body = "const kettle = (window.wrappedJSObject || window).kettle; " + body
	script := "const end = arguments[arguments.length - 1]; (async () => {" + body + "})().then(v => end({v}), e => end({e: String(e)}))"
	var m struct {
		Value struct {
			V json.RawMessage
			E string
		}
	}
	f.call("WebDriver:ExecuteAsyncScript", map[string]any{"script": script, "args": []any{}, "sandbox": nil}, &m)
	if m.Value.E != "" {
		f.t.Fatalf("%s: %s", body, m.Value.E)
	}
	if result != nil {
		if err := json.Unmarshal(m.Value.V, result); err != nil {
			f.t.Fatalf("%s: %v: %s", body, err, m.Value.V)
		}
	}
}

func (f *firefox) press(keys ...string) {
	f.t.Helper()
	var actions []any
	for _, k := range keys {
		switch k {
		case "Tab":
			k = "\ue004"
		case "Enter":
			k = "\ue007"
		}
		for _, r := range k {
			actions = append(actions, map[string]any{"type": "keyDown", "value": string(r)}, map[string]any{"type": "keyUp", "value": string(r)})
		}
	}
	f.call("WebDriver:PerformActions", map[string]any{"actions": []any{map[string]any{"type": "key", "id": "keys", "actions": actions}}}, nil)
}

func (f *firefox) width(px int) {
	f.t.Helper()
	f.call("WebDriver:SetWindowRect", map[string]any{"width": px, "height": 740}, nil)
}

func (f *firefox) data(method string, params any) []byte {
	f.t.Helper()
	var m struct{ Value string }
	f.call(method, params, &m)
	out, err := base64.StdEncoding.DecodeString(m.Value)
	if err != nil {
		f.t.Fatal(err)
	}
	return out
}

func (f *firefox) print() []byte {
	f.t.Helper()
	return f.data("WebDriver:Print", map[string]any{"background": true, "page": map[string]any{"width": 21.0, "height": 29.7},
		"margin": map[string]any{"top": 0.8, "bottom": 0.8, "left": 0.8, "right": 0.8}, "shrinkToFit": false})
}

func (f *firefox) picture() []byte {
	f.t.Helper()
	return f.data("WebDriver:TakeScreenshot", map[string]any{"full": true})
}

func (f *firefox) throttled(float64) bool { return false }

func (f *firefox) asked() []string { return nil }
