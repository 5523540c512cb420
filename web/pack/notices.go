package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"html"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// copied is something that the page hands out a copy of, with the texts that must go
// with it, each under its file's name.
type copied struct {
	name  string
	texts map[string]string
}

// goes are the names of the files that must go with a copy; one of them at least is a licence.
var (
	goes    = regexp.MustCompile(`(?i)^(licen[cs]e|copying|notice|patents)(\.\w+)?$`)
	licence = regexp.MustCompile(`(?i)^(licen[cs]e|copying)`)
)

// found is what go list tells of a package.
type found struct {
	ImportPath, Dir string
	Standard        bool
	Module          *struct {
		Path, Version, Dir string
		Main               bool
	}
}

// works are all whose packages a program for the browser has in it, by name, Go first:
// its runtime and library are in every program, and wasm_exec.js in every page.
func works(program string) ([]copied, error) {
	list := exec.Command("go", "list", "-deps", "-json=ImportPath,Dir,Standard,Module", program)
	list.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	var faults bytes.Buffer
	list.Stderr = &faults
	out, err := list.Output()
	if err != nil {
		return nil, fmt.Errorf("go list -deps %s: %w\n%s", program, err, &faults)
	}
	root, err := goroot()
	if err != nil {
		return nil, err
	}
	standard := copied{name: "Go: its runtime, standard library and wasm_exec.js"}
	if err := standard.take(root, root); err != nil {
		return nil, err
	}
	modules := map[string]*copied{}
	for in := json.NewDecoder(bytes.NewReader(out)); ; {
		var p found
		if err := in.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		switch {
		case p.Standard:
			err = standard.take(p.Dir, root)
		case p.Module == nil:
			err = fmt.Errorf("%s belongs to no module: whose licence holds for it is not known", p.ImportPath)
		case !p.Module.Main:
			m := modules[p.Module.Path]
			if m == nil {
				m = &copied{name: p.Module.Path + " " + p.Module.Version}
				if p.Module.Path == engine {
					m.name += ", changed for this page: its shaders are compiled beforehand, and what draws nothing is left out"
				}
				modules[p.Module.Path] = m
			}
			err = m.take(p.Dir, p.Module.Dir)
		}
		if err != nil {
			return nil, err
		}
	}
	all := []copied{standard}
	for _, m := range modules {
		all = append(all, *m)
	}
	slices.SortFunc(all[1:], func(a, b copied) int { return strings.Compare(a.name, b.name) })
	for _, w := range all {
		if !w.licensed() {
			return nil, fmt.Errorf("%s has no licence file where its source is: the page may not be handed out with it", w.name)
		}
	}
	return all, nil
}

func (w copied) licensed() bool {
	for name := range w.texts {
		if licence.MatchString(filepath.Base(name)) {
			return true
		}
	}
	return false
}

// take reads the texts that stand in a package's folder and in those it lies in, up to
// the whole's own.
func (w *copied) take(dir, top string) error {
	if w.texts == nil {
		w.texts = map[string]string{}
	}
	for {
		entries, err := os.ReadDir(dir)
		if err != nil {
			return err
		}
		for _, e := range entries {
			if e.IsDir() || !goes.MatchString(e.Name()) {
				continue
			}
			file := filepath.Join(dir, e.Name())
			text, err := os.ReadFile(file)
			if err != nil {
				return err
			}
			name, err := filepath.Rel(top, file)
			if err != nil {
				return err
			}
			w.texts[filepath.ToSlash(name)] = strings.Trim(strings.ReplaceAll(string(text), "\r\n", "\n"), "\n") + "\n"
		}
		above := filepath.Dir(dir)
		if dir == top || above == dir {
			return nil
		}
		dir = above
	}
}

// notice is one text and all that it goes with: many works share a licence to the letter.
type notice struct {
	of   []string
	text string
}

func noticesOf(all []copied) []notice {
	var list []notice
	for _, w := range all {
		names := make([]string, 0, len(w.texts))
		for name := range w.texts {
			names = append(names, name)
		}
		slices.Sort(names)
		for _, name := range names {
			of := fmt.Sprintf("%s (%s)", w.name, name)
			at := slices.IndexFunc(list, func(n notice) bool { return n.text == w.texts[name] })
			if at < 0 {
				list = append(list, notice{[]string{of}, w.texts[name]})
			} else {
				list[at].of = append(list[at].of, of)
			}
		}
	}
	return list
}

// noticesText is what stands beside the source and goes with the page.
func noticesText(list []notice) string {
	var b strings.Builder
	b.WriteString("What the page has in it that others made, and the texts that go with each copy.\n" +
		"Written by go run ./web/pack -notices.\n")
	for _, n := range list {
		fmt.Fprintf(&b, "\n%s\n\n%s\n\n%s", strings.Repeat("=", 80), strings.Join(n.of, "\n"), n.text)
	}
	return b.String()
}

// noticesHTML is the same for the fold at the page's foot.
func noticesHTML(list []notice) string {
	var b strings.Builder
	for _, n := range list {
		fmt.Fprintf(&b, "<h3>%s</h3>\n<pre>%s</pre>\n", html.EscapeString(strings.Join(n.of, "; ")), html.EscapeString(n.text))
	}
	return b.String()
}
