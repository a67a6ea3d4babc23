package fill

import (
	"io"
	"runtime"

	"example.org/zymase/examples/bridge/delimited"
)

// Rows go through in batches: one goroutine reads, several compute, the caller
// writes in the order of the file. There is a fixed number of batches, so memory
// does not depend on the file.
const batchSize = 128 << 10

type batch struct {
	in    []byte
	ends  []int // where each row ends in in
	out   []byte
	count Count
	done  chan struct{}
}

func run(out io.Writer, rows *delimited.Reader, p *plan) (Count, error) {
	workers := runtime.GOMAXPROCS(0)
	held := workers + 2
	free := make(chan *batch, held)
	for range held {
		free <- &batch{done: make(chan struct{}, 1)}
	}
	work := make(chan *batch, held)
	order := make(chan *batch, held)
	var readErr error // set before order is closed

	for range workers {
		go func() {
			w := newFiller(p)
			for b := range work {
				b.fill(w)
				b.done <- struct{}{}
			}
		}()
	}
	stop := make(chan struct{})
	go func() {
		defer close(order)
		defer close(work)
		for readErr == nil {
			var b *batch
			select {
			case b = <-free:
			case <-stop:
				return
			}
			readErr = b.read(rows)
			work <- b // never blocks: there is room for every batch
			order <- b
		}
	}()

	var total Count
	for b := range order {
		<-b.done
		if _, err := out.Write(b.out); err != nil {
			close(stop)
			return total, err // at once: the next byte of in may be long in coming
		}
		total.Rows += b.count.Rows
		total.Failed += b.count.Failed
		free <- b
	}
	if readErr == io.EOF {
		readErr = nil
	}
	return total, readErr
}

// read takes rows until the batch is full.
func (b *batch) read(rows *delimited.Reader) error {
	b.in, b.ends = b.in[:0], b.ends[:0]
	for len(b.in) < batchSize {
		raw, err := rows.Next()
		if err != nil {
			return err
		}
		b.in = append(b.in, raw...)
		b.ends = append(b.ends, len(b.in))
	}
	return nil
}

// fill computes the rows of the batch.
func (b *batch) fill(w *filler) {
	b.out, b.count = b.out[:0], Count{}
	from := 0
	for _, end := range b.ends {
		var state int
		b.out, state = w.add(b.out, b.in[from:end])
		from = end
		if state != blank {
			b.count.Rows++
		}
		if state == failed {
			b.count.Failed++
		}
	}
}
