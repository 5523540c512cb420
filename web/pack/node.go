package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// underNode runs a program that was built for the browser, a package's tests say, under node
// as the page has it, and returns what it exits with. go test -exec takes it so.
func underNode(args []string) int {
	err := runUnderNode(args)
	var exit *exec.ExitError
	switch {
	case err == nil:
		return 0
	case errors.As(err, &exit):
		return exit.ExitCode()
	}
	fmt.Fprintln(os.Stderr, "pack:", err)
	return 1
}

func runUnderNode(args []string) error {
	if len(args) == 0 {
		return errors.New("-node needs a program to run")
	}
	wasm, err := os.ReadFile(args[0])
	if err != nil {
		return err
	}
	if wasm, err = direct(wasm); err != nil {
		return err
	}
	dir, err := os.MkdirTemp("", "barkwright")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	program := filepath.Join(dir, filepath.Base(args[0]))
	if err := os.WriteFile(program, wasm, 0o755); err != nil {
		return err
	}
	root, err := goroot()
	if err != nil {
		return err
	}
	run := exec.Command(filepath.Join(root, "lib", "wasm", "go_js_wasm_exec"), append([]string{program}, args[1:]...)...)
	// wasm_exec refuses a long environment, so node gets only what it needs and the tests look for.
	for _, name := range []string{"PATH", "HOME", "TMPDIR"} {
		if value, found := os.LookupEnv(name); found {
			run.Env = append(run.Env, name+"="+value)
		}
	}
	run.Stdin, run.Stdout, run.Stderr = os.Stdin, os.Stdout, os.Stderr
	return run.Run()
}
