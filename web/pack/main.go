// Command pack builds the page: the program compiled to WebAssembly, compressed
// and laid into one HTML file that needs no network. Run it at the top of the
// repository.
//
//	go run ./web/pack           builds web/dist/barkwright.html, and web/dist/site to put on a web host
//	go run ./web/pack -release  builds both and web/dist/release, what to hand out
//	go run ./web/pack -serve    builds both and serves the page on this machine
//	go run ./web/pack -notices  writes web/NOTICES.txt, which a test compares with what the page holds
//	go run ./web/pack -sizes    prints what each package's code takes of the program
//	go run ./web/pack -bare     builds web/dist/bare.html, an empty Ebitengine page to measure against
//	go run ./web/pack -node FILE ARGUMENT...   runs a program, built for the browser, under node as the page has it
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
)

// budget is the largest page, bytes. One call of a method by its name would bring 0.4 MB.
const budget = 3_800_000

// options are what is asked for on the command line.
type options struct {
	serve, bare, notices, release, sizes, node bool
	address                                    string
}

func main() {
	var o options
	flag.BoolVar(&o.serve, "serve", false, "serve the page on this machine and open a browser where there is one")
	flag.StringVar(&o.address, "address", "127.0.0.1:0", "where to serve; port 0 takes any free one")
	flag.BoolVar(&o.bare, "bare", false, "build an empty Ebitengine page instead, to measure against")
	flag.BoolVar(&o.notices, "notices", false, "write the licences of what the page has in it beside the source")
	flag.BoolVar(&o.release, "release", false, "write what to hand out as well")
	flag.BoolVar(&o.sizes, "sizes", false, "print what each package's code takes of the program instead")
	flag.BoolVar(&o.node, "node", false, "run a program under node instead")
	flag.Parse()
	if o.node {
		os.Exit(underNode(flag.Args()))
	}
	if err := o.run(); err != nil {
		fmt.Fprintln(os.Stderr, "pack:", err)
		os.Exit(1)
	}
}

func (o options) run() error {
	program, name := "./wasm", "barkwright.html"
	if o.bare {
		program, name = bareProgram, "bare.html"
	}
	if o.sizes {
		return printSizes(os.Stdout, program)
	}
	all, err := works(program)
	if err != nil {
		return err
	}
	notices := noticesOf(all)
	if o.notices {
		return os.WriteFile(filepath.Join("web", "NOTICES.txt"), []byte(noticesText(notices)), 0o644)
	}
	parts, err := read("web")
	if err != nil {
		return err
	}
	parts.Notices = noticesHTML(notices)
	if o.bare {
		parts.Page, parts.Form, parts.Notches, parts.Cells, parts.Notices = barePage, "", "", "", ""
		parts.Headline, parts.Held, parts.First, parts.Key = "", "", "", ""
	}
	if parts.Wasm, err = compile(program); err != nil {
		return err
	}
	laid, err := parts.lay()
	if err != nil {
		return err
	}
	page, err := alone(laid)
	if err != nil {
		return err
	}
	file := filepath.Join(dist, name)
	if err := os.MkdirAll(dist, 0o755); err != nil {
		return err
	}
	if err := os.WriteFile(file, page, 0o644); err != nil {
		return err
	}
	fmt.Printf("%s: %.2f MB (program %.2f MB before packing)\n", file, float64(len(page))/1e6, float64(len(parts.Wasm))/1e6)
	if len(page) > budget {
		return fmt.Errorf("%s is %d bytes, over the budget of %d", file, len(page), budget)
	}
	if o.bare {
		return nil
	}
	if err := o.others(laid, page, noticesText(notices)); err != nil {
		return err
	}
	if o.serve {
		return serve(file, o.address)
	}
	return nil
}

// others writes the site, and what to hand out where that is asked for.
func (o options) others(laid string, page []byte, notices string) error {
	files, err := site(laid, "web")
	if err != nil {
		return err
	}
	if err := writeFolder(filepath.Join(dist, "site"), files); err != nil || !o.release {
		return err
	}
	out, err := release(page, files, notices)
	if err != nil {
		return err
	}
	return writeFolder(filepath.Join(dist, "release"), out)
}

var dist = filepath.Join("web", "dist")
