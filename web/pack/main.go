// Command pack builds the page: the program compiled to WebAssembly, compressed
// and laid into one HTML file that needs no network. Run it at the top of the
// repository.
//
//	go run ./web/pack           builds web/dist/barkwright.html
//	go run ./web/pack -serve    builds it and serves it on this machine
//	go run ./web/pack -notices  writes web/NOTICES.txt, which a test compares with what the page holds
//	go run ./web/pack -bare     builds web/dist/bare.html, an empty Ebitengine page to measure against
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
)

// budget is the largest page, bytes; a bare Ebitengine page is 1.95 MB of it.
const budget = 3_500_000

func main() {
	serveIt := flag.Bool("serve", false, "serve the page on this machine and open a browser where there is one")
	address := flag.String("address", "127.0.0.1:0", "where to serve; port 0 takes any free one")
	bare := flag.Bool("bare", false, "build an empty Ebitengine page instead, to measure against")
	notices := flag.Bool("notices", false, "write the licences of what the page has in it beside the source")
	flag.Parse()
	if err := run(*serveIt, *bare, *notices, *address); err != nil {
		fmt.Fprintln(os.Stderr, "pack:", err)
		os.Exit(1)
	}
}

func run(serveIt, bare, notices bool, address string) error {
	program, name := "./wasm", "barkwright.html"
	if bare {
		program, name = "./web/e2e/bare", "bare.html"
	}
	all, err := works(program)
	if err != nil {
		return err
	}
	if notices {
		return os.WriteFile(filepath.Join("web", "NOTICES.txt"), []byte(noticesText(noticesOf(all))), 0o644)
	}
	parts, err := read("web")
	if err != nil {
		return err
	}
	parts.Notices = noticesHTML(noticesOf(all))
	if bare {
		parts.Page, parts.Form, parts.Notches, parts.Cells, parts.Notices = barePage, "", "", "", ""
	}
	if parts.Wasm, err = compile(program); err != nil {
		return err
	}
	page, err := parts.assemble()
	if err != nil {
		return err
	}
	file := filepath.Join("web", "dist", name)
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		return err
	}
	if err := os.WriteFile(file, page, 0o644); err != nil {
		return err
	}
	fmt.Printf("%s: %.2f MB (program %.2f MB before packing)\n", file, float64(len(page))/1e6, float64(len(parts.Wasm))/1e6)
	if len(page) > budget {
		return fmt.Errorf("%s is %d bytes, over the budget of %d", file, len(page), budget)
	}
	if serveIt {
		return serve(file, address)
	}
	return nil
}
