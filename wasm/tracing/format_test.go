package tracing_test

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/wasm/tracing"
)

// encoded are pictures as Go's library writes them.
func encoded(t testing.TB) (ofPNG, ofJPEG []byte) {
	t.Helper()
	picture := image.NewGray(image.Rect(0, 0, 40, 30))
	for i := range picture.Pix {
		picture.Pix[i] = byte(i * 7)
	}
	var a, b bytes.Buffer
	require.NoError(t, png.Encode(&a, picture))
	require.NoError(t, jpeg.Encode(&b, picture, nil))
	return a.Bytes(), b.Bytes()
}

// webp is the header of a WebP with a canvas of so many pixels: RFC 9649, figure 7.
func webp(width, height int) []byte {
	data := append([]byte("RIFF....WEBPVP8X"), 10, 0, 0, 0, 0, 0, 0, 0)
	w, h := width-1, height-1
	data = append(data, byte(w), byte(w>>8), byte(w>>16), byte(h), byte(h>>8), byte(h>>16))
	data = append(data, make([]byte, 20)...)
	binary.LittleEndian.PutUint32(data[4:], uint32(len(data)-8))
	return data
}

// A picture is known by its bytes; one that breaks off anywhere, is empty, too large, or is no
// picture is refused in words.
func TestKind(t *testing.T) {
	ofPNG, ofJPEG := encoded(t)
	sized := func(width, height uint32) []byte {
		data := bytes.Clone(ofPNG)
		binary.BigEndian.PutUint32(data[16:], width)
		binary.BigEndian.PutUint32(data[20:], height)
		binary.BigEndian.PutUint32(data[29:], crc32.ChecksumIEEE(data[12:29]))
		return data
	}
	spoilt := bytes.Clone(ofPNG)
	spoilt[len(spoilt)/2] ^= 1
	for _, c := range []struct {
		name string
		data []byte
		kind string
		err  error
	}{
		{"PNG", ofPNG, "image/png", nil},
		{"JPEG", ofJPEG, "image/jpeg", nil},
		{"JPEG and what a phone writes behind it", append(bytes.Clone(ofJPEG), "a film"...), "image/jpeg", nil},
		{"WebP", webp(1200, 800), "image/webp", nil},
		{"SVG", []byte("<?xml version=\"1.0\"?>\n<!-- a boat -->\n<svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
			"image/svg+xml", nil},
		{"nothing", nil, "", tracing.ErrKind},
		{"a text", []byte("length overall\t16 ft"), "", tracing.ErrKind},
		{"a page", []byte("<!DOCTYPE html><html><svg></svg></html>"), "", tracing.ErrKind},
		{"another element", []byte("<svgx/>"), "", tracing.ErrKind},
		{"GIF", []byte("GIF89a\x01\x00\x01\x00"), "", tracing.ErrKind},
		{"no breadth", sized(0, 30), "image/png", tracing.ErrEmpty},
		{"a bit spoilt", spoilt, "", tracing.ErrDamaged},
		{"huge", sized(1<<31-1, 1<<31-1), "image/png", tracing.ErrPixels},
		{"long", sized(30000, 2), "image/png", tracing.ErrPixels},
		{"many pixels", webp(16000, 16000), "image/webp", tracing.ErrPixels},
		{"WebP cut short", webp(1200, 800)[:40], "", tracing.ErrDamaged},
		{"a large file", make([]byte, tracing.MostBytes+1), "", tracing.ErrLarge},
	} {
		kind, err := tracing.Kind(c.data)
		assert.Equal(t, c.kind, kind, c.name)
		assert.ErrorIs(t, err, c.err, c.name)
	}
	for _, whole := range [][]byte{ofPNG, ofJPEG} {
		for n := range whole[:len(whole)-1] {
			_, err := tracing.Kind(whole[:n])
			require.Error(t, err, "cut at %d", n)
		}
	}
	_, err := tracing.Kind([]byte("<svg" + strings.Repeat("<", 5000)))
	assert.Error(t, err)
}

// An SVG is read at 2000 pixels, whatever size it says of itself; another picture as it is.
func TestSized(t *testing.T) {
	w, h := tracing.Sized("image/svg+xml", 5e8, 2.5e8)
	assert.InDelta(t, 2000, w, 1e-9)
	assert.InDelta(t, 1000, h, 1e-9)
	w, h = tracing.Sized("image/png", 640, 480)
	assert.Equal(t, 640.0, w)
	assert.Equal(t, 480.0, h)
	assert.ErrorIs(t, tracing.Fits(tracing.Sized("image/svg+xml", 0, 0)), tracing.ErrEmpty)
}
