package main

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"barkwright/core/draw"
)

// servedPolicy is what a served page may have besides: its own worker, manifest and icons.
const servedPolicy = "; worker-src 'self' blob:; manifest-src 'self'; img-src 'self' data: blob:;"

// iconSides are in pixels: those that Chromium asks of a page it installs.
var iconSides = []int{192, 512}

// site is a folder to put on any web host, by its files' names.
func site(laid, web string) (map[string][]byte, error) {
	script, err := os.ReadFile(filepath.Join(web, "site.js"))
	if err != nil {
		return nil, err
	}
	if found := outside.FindString(uncommented(string(script))); found != "" {
		return nil, fmt.Errorf("site.js reaches outside: %q", found)
	}
	worker, err := os.ReadFile(filepath.Join(web, "sw.js"))
	if err != nil {
		return nil, err
	}
	opened := strings.Replace(laid, "; worker-src blob:; img-src data: blob:;", servedPolicy, 1)
	if opened == laid {
		return nil, fmt.Errorf("index.html has another policy than site.go opens")
	}
	page, err := finish(opened, `<link rel="manifest" href="manifest.webmanifest">
<link rel="apple-touch-icon" href="icon-192.png">
<script>`+strings.TrimSpace(uncommented(string(script)))+`</script>`,
		"it asks only the place it came from, and only for its own files, to keep them here and to see whether there is a newer page")
	if err != nil {
		return nil, err
	}
	sum := sha256.Sum256(page)
	named, err := hang(string(worker), "PAGE", hex.EncodeToString(sum[:]))
	if err != nil {
		return nil, err
	}
	files := map[string][]byte{"index.html": page, "sw.js": []byte(named)}
	if files["manifest.webmanifest"], err = manifest(); err != nil {
		return nil, err
	}
	for _, side := range iconSides {
		if files[iconName(side)], err = icon(side); err != nil {
			return nil, err
		}
	}
	return files, nil
}

func iconName(side int) string { return fmt.Sprintf("icon-%d.png", side) }

// manifest is the page's as the browser installs it: W3C, Web Application Manifest.
func manifest() ([]byte, error) {
	type picture struct {
		Src     string `json:"src"`
		Sizes   string `json:"sizes"`
		Type    string `json:"type"`
		Purpose string `json:"purpose"`
	}
	var icons []picture
	for _, side := range iconSides {
		icons = append(icons, picture{iconName(side), fmt.Sprintf("%dx%d", side, side), "image/png", "any maskable"})
	}
	colour := draw.Screen().Of(draw.Paper).Hex()
	return json.MarshalIndent(map[string]any{
		"name": "Barkwright", "short_name": "Barkwright", "lang": "en",
		"description": "A birchbark canoe, worked out before bark is cut",
		"id":          "./", "start_url": "./", "scope": "./", "display": "standalone",
		"background_color": colour, "theme_color": colour, "icons": icons,
	}, "", "  ")
}

// writeFolder writes files into a folder, and leaves nothing else in it.
func writeFolder(folder string, files map[string][]byte) error {
	if err := os.RemoveAll(folder); err != nil {
		return err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(folder, name), text, 0o644); err != nil {
			return err
		}
	}
	return nil
}
