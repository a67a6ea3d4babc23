package loopback

import (
	"bytes"
	"context"
	"log"
	"math/rand/v2"
	"os"
	"runtime"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// clientsPerKind is how many of each kind are at it at the same time.
const clientsPerKind = 6

// What the heap may grow by, clients included, since they live in the same
// process: at any time, and after all have gone.
const (
	heapCeiling = 48 << 20
	heapLeft    = 1 << 20
)

// soakTime is 2 s, or what ZYMASE_SOAK says: "60s".
func soakTime(t *testing.T) time.Duration {
	text := os.Getenv("ZYMASE_SOAK")
	if text == "" {
		return 2 * time.Second
	}
	d, err := time.ParseDuration(text)
	if err != nil {
		t.Fatalf("ZYMASE_SOAK: %v", err)
	}
	return d
}

// soak is one run: what the clients ask, and what became of it.
type soak struct {
	*testing.T
	address string
	over    context.Context // done when the time is over
	counts  []atomic.Int64  // by kind
	slowest atomic.Int64    // of the good answers
}

// eachCame reports whether a client of each kind came to its end.
func (s *soak) eachCame() bool {
	for i := range kinds {
		if s.counts[i].Load() == 0 && !kinds[i].patient {
			return false
		}
	}
	return true
}

// record is a log that tests read while the server writes.
type record struct {
	lock sync.Mutex
	text bytes.Buffer
}

func (r *record) Write(b []byte) (int, error) {
	r.lock.Lock()
	defer r.lock.Unlock()
	return r.text.Write(b)
}

// Good and bad clients of every kind at once. The good ones get their answers,
// during and after; nothing is left behind; and the server stops in time.
func TestSoak(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	lasts := soakTime(t)
	heapBefore, threadsBefore := settled(), runtime.NumGoroutine()

	l, address, err := Listen("127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	h, err := New(address)
	if err != nil {
		t.Fatal(err)
	}
	var told record
	ctx, stop := context.WithCancel(t.Context())
	defer stop()
	done := make(chan error, 1)
	go func() { done <- Serve(ctx, l, Server(h, log.New(&told, "", 0))) }()

	over, cancel := context.WithCancel(t.Context())
	defer cancel()
	s := &soak{T: t, address: address.String(), over: over, counts: make([]atomic.Int64, len(kinds))}
	peak := make(chan uint64)
	go func() { peak <- highest(over) }()
	var all sync.WaitGroup
	for i := range kinds {
		for n := range clientsPerKind {
			all.Go(func() {
				random := rand.New(rand.NewPCG(uint64(i), uint64(n)))
				for over.Err() == nil && !t.Failed() {
					if kinds[i].visit(s, random) {
						s.counts[i].Add(1)
					}
					time.Sleep(time.Duration(random.IntN(4)) * time.Millisecond)
				}
			})
		}
	}
	time.Sleep(lasts)
	for range 300 { // a busy machine: let one of each kind come to its end
		if t.Failed() || s.eachCame() {
			break
		}
		time.Sleep(100 * time.Millisecond)
	}
	cancel()
	all.Wait()
	heapPeak := <-peak

	for range 20 {
		good(t, s.address)
	}
	var late []*visitor // who hold up a server that is told to stop
	if lasts > 2*patience {
		late = append(late, s.dial(), s.dial())
		late[0].send("GET / HTTP/1.1\r\nX: ")
	}
	start := time.Now()
	stop()
	select {
	case err := <-done:
		if err != nil {
			t.Error(err)
		}
	case <-time.After(2 * patience):
		t.Fatal("the server does not stop")
	}
	stopped := time.Since(start)
	if stopped > patience+patience/5 {
		t.Errorf("it took %v to stop, over %v", stopped, patience)
	}
	for _, c := range late {
		c.close()
	}

	threads := runtime.NumGoroutine()
	for range 100 { // they may be about to end
		if threads <= threadsBefore {
			break
		}
		time.Sleep(50 * time.Millisecond)
		threads = runtime.NumGoroutine()
	}
	if threads > threadsBefore {
		trace := make([]byte, 1<<16)
		t.Errorf("%d goroutines, %d before:\n%s", threads, threadsBefore, trace[:runtime.Stack(trace, true)])
	}
	runtime.KeepAlive(h)
	heapAfter := settled()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	for i := range kinds {
		n := s.counts[i].Load()
		t.Logf("%8d %s", n, kinds[i].name)
		if n == 0 && !kinds[i].patient {
			t.Errorf("no client came to an end: %s", kinds[i].name)
		}
	}
	const mega = 1 << 20
	t.Logf("%v; slowest good answer %v; stopped in %v; goroutines %d before, %d after",
		lasts, time.Duration(s.slowest.Load()).Round(time.Millisecond), stopped.Round(time.Millisecond), threadsBefore, threads)
	t.Logf("heap %.1f MiB before, %.1f at most, %.1f after; %.1f from the system",
		float64(heapBefore)/mega, float64(heapPeak)/mega, float64(heapAfter)/mega, float64(m.HeapSys)/mega)
	if heapPeak > heapBefore+heapCeiling || heapAfter > heapBefore+heapLeft || m.HeapSys > heapBefore+2*heapCeiling {
		t.Error("that is too much")
	}
	if told.text.Len() > 0 {
		t.Errorf("the server complains: %.2000s", told.text.String())
	}
}

// settled is the heap in use when there is no garbage.
func settled() uint64 {
	var m runtime.MemStats
	runtime.GC()
	runtime.GC() // pools are emptied at the second
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

// highest is the largest heap seen until ctx is done.
func highest(ctx context.Context) uint64 {
	var peak uint64
	for {
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		peak = max(peak, m.HeapAlloc)
		select {
		case <-ctx.Done():
			return peak
		case <-time.After(20 * time.Millisecond):
		}
	}
}
