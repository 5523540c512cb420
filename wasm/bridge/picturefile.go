//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/record"
	"barkwright/wasm/tracing"
)

// listenPictures takes pictures that are dropped on the record or its window, or pasted while
// that is open.
func (p *page) listenPictures() {
	for _, id := range []string{"tracing", "measured-boat"} {
		p.on(p.id(id), "dragover", func(e js.Value) {
			if holdsFile(e.Get("dataTransfer")) {
				e.Call("preventDefault")
			}
		})
		p.on(p.id(id), "drop", func(e js.Value) {
			if holdsFile(e.Get("dataTransfer")) {
				e.Call("preventDefault")
				p.trace("open")
				p.takeFirst(e.Get("dataTransfer").Get("files"))
			}
		})
	}
	p.on(p.document, "paste", func(e js.Value) {
		if data := e.Get("clipboardData"); p.desk.Tracing().IsOpen() && holdsFile(data) {
			e.Call("preventDefault")
			p.takeFirst(data.Get("files"))
		}
	})
}

// holdsFile tells whether what is dragged or pasted is a file.
func holdsFile(data js.Value) bool {
	return data.Truthy() && data.Get("types").Call("includes", "Files").Bool()
}

func (p *page) takeFirst(files js.Value) {
	if files.Length() > 0 {
		p.takePicture(files.Index(0))
	}
}

// takePicture looks at a file and shows it if it is a picture that is read here.
func (p *page) takePicture(file js.Value) {
	if file.Get("size").Float() > tracing.MostBytes {
		p.traced(p.desk.NoPicture(tracing.ErrLarge), false)
		return
	}
	p.then(file.Call("arrayBuffer"), func(buffer js.Value) {
		array := js.Global().Get("Uint8Array").New(buffer)
		data := make([]byte, array.Length())
		js.CopyBytesToGo(data, array)
		kind, r, ok := p.desk.PictureKind(data)
		if !ok {
			p.traced(r, false)
			return
		}
		// It is shown as what its bytes are, whatever its name says.
		url := js.Global().Call("pictureURL", buffer, kind)
		p.decode(url, func(width, height float64) error {
			_, _, err := p.desk.Decoded(kind, width, height)
			return err
		})
	})
}

// decode has the browser read a picture, and shows it where take takes its size.
func (p *page) decode(url js.Value, take func(width, height float64) error) {
	img := js.Global().Get("Image").New()
	img.Set("src", url)
	p.then(img.Call("decode"), func(js.Value) {
		err := take(img.Get("naturalWidth").Float(), img.Get("naturalHeight").Float())
		if err != nil {
			p.traced(p.desk.NoPicture(err), false)
			return
		}
		p.id("easel-picture").Set("src", url)
		p.id("loupe-picture").Set("src", url)
		p.showTracing(false)
		p.tracedSoon()
		p.id("easel").Call("focus")
	})
}

// then calls act with what a promise gives. A picture that the browser cannot read is said to
// be damaged.
func (p *page) then(promise js.Value, act func(js.Value)) {
	var kept, failed js.Func
	done := func() { kept.Release(); failed.Release() }
	kept = p.callback(func(args []js.Value) {
		defer done()
		act(args[0])
	})
	failed = p.callback(func([]js.Value) {
		defer done()
		p.traced(p.desk.NoPicture(tracing.ErrDamaged), false)
	})
	promise.Call("then", kept, failed)
}

// keepPicture keeps the picture with the boat, as small as that takes.
func (p *page) keepPicture() {
	small := js.Global().Call("smallerPicture", p.id("easel-picture"), record.MostPicture)
	p.traced(p.desk.KeepPicture(small.Get("url").String(), small.Get("width").Int(), small.Get("height").Int()), false)
}

// showKept shows the picture that the boat keeps, where its points lie on none that is shown.
func (p *page) showKept() {
	kept, width, height := tracing.Kept(p.work)
	if kept == "" || p.desk.Tracing().Lies(p.work) {
		return
	}
	p.decode(js.ValueOf(kept), func(float64, float64) error {
		p.desk.Tracing().Show(p.work, width, height)
		return nil
	})
}
