package main

import (
	"fmt"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
)

// serve shows the page on this machine alone, until interrupted.
func serve(file, address string) error {
	place, err := filepath.Abs(file)
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", address)
	if err != nil {
		return err
	}
	where := fmt.Sprintf("http://%s/%s", listener.Addr(), filepath.Base(file))
	fmt.Printf("the page: %s\nthe same without a server: open %s\nstop with Ctrl+C\n", where, place)
	openBrowser(where)
	return http.Serve(listener, http.FileServer(http.Dir(filepath.Dir(file))))
}

// openBrowser tries, where there is a screen, and leaves it at that: the address
// is printed either way.
func openBrowser(address string) {
	var open *exec.Cmd
	switch {
	case runtime.GOOS == "darwin":
		open = exec.Command("open", address)
	case runtime.GOOS == "windows":
		open = exec.Command("rundll32", "url.dll,FileProtocolHandler", address)
	case os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != "":
		open = exec.Command("xdg-open", address)
	default:
		return
	}
	if err := open.Start(); err != nil {
		fmt.Println("no browser was opened:", err)
		return
	}
	go open.Wait()
}
