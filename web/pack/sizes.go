package main

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"os"
	"os/exec"
	"slices"
	"strings"
)

// printSizes prints the bytes of code of each package in a program, before packing, the
// largest first. Data, a third of the program, is not told apart.
func printSizes(w io.Writer, program string) error {
	wasm, err := compiled(program, "-w") // with the functions' names
	if err != nil {
		return err
	}
	list := exec.Command("go", "list", "-deps", program)
	list.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	packages, err := list.Output()
	if err != nil {
		return fmt.Errorf("go list -deps %s: %w", program, err)
	}
	sizes, err := sizesOf(wasm, strings.Fields(string(packages)))
	if err != nil {
		return err
	}
	total := 0
	names := slices.SortedFunc(maps.Keys(sizes), func(a, b string) int { return cmp.Compare(sizes[b], sizes[a]) })
	for _, name := range names {
		total += sizes[name]
		fmt.Fprintf(w, "%9d  %s\n", sizes[name], name)
	}
	fmt.Fprintf(w, "%9d  in all, of %d bytes of program\n", total, len(wasm))
	return nil
}

// otherCode is what belongs to no package by its name.
const otherCode = "(made by the compiler)"

// sizesOf adds up the code of a module's functions by their packages. The linker writes
// a package's slashes as underlines.
func sizesOf(wasm []byte, packages []string) (map[string]int, error) {
	all, err := sections(wasm)
	if err != nil {
		return nil, err
	}
	home := map[string]string{}
	for _, p := range packages {
		home[strings.NewReplacer("/", "_", "-", "_").Replace(p)] = p
	}
	names := map[uint64]string{}
	var bodies []int
	imported := uint64(0)
	for _, s := range all {
		switch s.id {
		case importSection:
			if imported, _, err = uleb(s.body); err != nil {
				return nil, err
			}
		case codeSection:
			count, rest, err := uleb(s.body)
			for range count {
				var size uint64
				if size, rest, err = uleb(rest); err != nil || uint64(len(rest)) < size {
					return nil, errShort
				}
				bodies, rest = append(bodies, int(size)), rest[size:]
			}
			if err != nil {
				return nil, err
			}
		case customSection:
			if err := readNames(s.body, names); err != nil {
				return nil, err
			}
		}
	}
	sizes := map[string]int{}
	for i, size := range bodies {
		sizes[packageOf(names[imported+uint64(i)], home)] += size
	}
	return sizes, nil
}

// packageOf is the package of a function: the longest one that its name begins with.
func packageOf(name string, home map[string]string) string {
	for at := len(name); at > 0; at = strings.LastIndexByte(name[:at], '.') {
		if p, ok := home[name[:at]]; ok {
			return p
		}
	}
	return otherCode
}

// readNames reads the names of functions from a custom section that holds names: W3C,
// WebAssembly Core Specification, 7.4.1.
func readNames(body []byte, into map[uint64]string) error {
	title, rest, err := text(body)
	if err != nil || title != "name" {
		return err
	}
	for len(rest) > 0 {
		id := rest[0]
		size, after, err := uleb(rest[1:])
		if err != nil || uint64(len(after)) < size {
			return errShort
		}
		part := after[:size]
		rest = after[size:]
		if id != functionNames {
			continue
		}
		count, part, err := uleb(part)
		for range count {
			var at uint64
			if at, part, err = uleb(part); err != nil {
				return err
			}
			if into[at], part, err = text(part); err != nil {
				return err
			}
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// text reads a length and so many bytes, and returns what follows.
func text(b []byte) (string, []byte, error) {
	n, rest, err := uleb(b)
	if err != nil || uint64(len(rest)) < n {
		return "", nil, errShort
	}
	return string(rest[:n]), rest[n:], nil
}
