package main

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"image/png"
	"io"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func realSite(t *testing.T) (alonePage []byte, files map[string][]byte) {
	laid, err := real(t).lay()
	require.NoError(t, err)
	alonePage, err = alone(laid)
	require.NoError(t, err)
	files, err = site(laid, "..")
	require.NoError(t, err)
	return alonePage, files
}

// What a served page has besides, one that stands alone has not.
func TestSite(t *testing.T) {
	page, files := realSite(t)
	served := string(files["index.html"])
	for _, only := range []string{`rel="manifest"`, "worker-src 'self' blob:", "manifest-src 'self'", "serviceWorker"} {
		assert.Contains(t, served, only)
		assert.NotContains(t, string(page), only)
	}
	assert.Contains(t, string(page), "it makes no request of any kind")
	assert.NotContains(t, served, "it makes no request of any kind")
	assert.NotContains(t, served, "<!--")
	policy := regexp.MustCompile(`script-src ([^;]*);`).FindStringSubmatch(served)
	require.NotNil(t, policy)
	assert.Len(t, regexp.MustCompile(`'sha256-[A-Za-z0-9+/]{43}='`).FindAllString(policy[1], -1), strings.Count(served, "<script>"))
	assert.NotContains(t, policy[1], "'self'")

	worker := string(files["sw.js"])
	assert.Contains(t, worker, fmt.Sprintf("'%x'", sha256.Sum256(files["index.html"])), "the page it keeps")
	for _, kept := range regexp.MustCompile(`'([^']+\.\w+)'`).FindAllStringSubmatch(between(worker, "const files", ";"), -1) {
		assert.Contains(t, files, kept[1])
	}
}

func between(text, from, to string) string {
	_, after, _ := strings.Cut(text, from)
	inner, _, _ := strings.Cut(after, to)
	return inner
}

// The manifest's pictures are there, as large as it says, and keep what they show within the
// circle of two fifths of their side that no mask cuts: W3C, Web Application Manifest.
func TestManifestIcons(t *testing.T) {
	_, files := realSite(t)
	var m struct {
		Icons []struct{ Src, Sizes string }
	}
	require.NoError(t, json.Unmarshal(files["manifest.webmanifest"], &m))
	require.Len(t, m.Icons, 2)
	for _, icon := range m.Icons {
		im, err := png.Decode(bytes.NewReader(files[icon.Src]))
		require.NoError(t, err, icon.Src)
		side := im.Bounds().Dx()
		assert.Equal(t, icon.Sizes, fmt.Sprintf("%dx%d", side, im.Bounds().Dy()))
		ground, drawn := im.At(0, 0), 0
		for y := range side {
			for x := range side {
				if im.At(x, y) == ground {
					continue
				}
				drawn++
				dx, dy := float64(2*x+1-side), float64(2*y+1-side)
				if dx*dx+dy*dy > 0.64*float64(side*side) {
					t.Fatalf("%s: drawn at %d, %d, outside the safe circle", icon.Src, x, y)
				}
			}
		}
		assert.Greater(t, drawn, side*side/20)
	}
}

// The checksums are of the files beside them, and the archive holds the site.
func TestRelease(t *testing.T) {
	page, files := realSite(t)
	out, err := release(page, files, "notices")
	require.NoError(t, err)
	require.Len(t, out, 4)
	name := "barkwright-" + strings.ReplaceAll(version(), " ", "-")
	for _, line := range strings.Split(strings.TrimSpace(string(out[name+"-SHA256SUMS.txt"])), "\n") {
		sum, file, _ := strings.Cut(line, "  ")
		assert.Equal(t, fmt.Sprintf("%x", sha256.Sum256(out[file])), sum, file)
	}
	assert.Contains(t, string(page), "It is "+version()+",")
	z, err := zip.NewReader(bytes.NewReader(out[name+"-site.zip"]), int64(len(out[name+"-site.zip"])))
	require.NoError(t, err)
	require.Len(t, z.File, len(files))
	for _, f := range z.File {
		r, err := f.Open()
		require.NoError(t, err)
		text, err := io.ReadAll(r)
		require.NoError(t, err)
		assert.Equal(t, files[f.Name], text, f.Name)
	}
}
