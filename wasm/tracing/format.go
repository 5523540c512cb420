package tracing

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"strconv"
	"strings"

	"barkwright/core/record"
)

// What a file of a picture may hold at most: bytes, and pixels in all.
const (
	MostBytes  = 40 << 20
	mostPixels = 64_000_000
)

// Why a file is not shown.
var (
	ErrLarge = errors.New("The file is larger than " + strconv.Itoa(MostBytes>>20) +
		" MB: save the picture smaller and open that.")
	ErrPixels  = errors.New("The picture has more than 64 million pixels, or a side of more than 20,000: save it smaller and open that.")
	ErrKind    = errors.New("This is not a picture that is read here: PNG, JPEG, WebP or SVG.")
	ErrDamaged = errors.New("The picture is damaged: part of it is missing or cannot be read.")
	ErrEmpty   = errors.New("The picture has no size: there is nothing on it.")
)

// Kind looks at a file's bytes and returns what kind of picture it is, as a media type, or why
// it is not shown. A file's name and what it says of itself elsewhere count for nothing. The
// browser that decodes it has the last word on the rest.
func Kind(data []byte) (string, error) {
	var check func([]byte) (width, height int, err error)
	kind := ""
	switch {
	case len(data) > MostBytes:
		return "", ErrLarge
	case bytes.HasPrefix(data, []byte("\x89PNG\r\n\x1a\n")):
		kind, check = "image/png", png
	case bytes.HasPrefix(data, []byte("\xff\xd8\xff")):
		kind, check = "image/jpeg", jpeg
	case len(data) >= 12 && string(data[:4]) == "RIFF" && string(data[8:12]) == "WEBP":
		kind, check = "image/webp", webp
	case isSVG(data):
		// The browser refuses one that breaks off, and lets a size be drawn as large as it is shown.
		return "image/svg+xml", nil
	default:
		return "", ErrKind
	}
	w, h, err := check(data)
	if err != nil {
		return "", err
	}
	return kind, Fits(float64(w), float64(h))
}

// Fits tells why a picture of so many pixels is not shown, nil where it is.
func Fits(width, height float64) error {
	switch {
	case !(width >= 1) || !(height >= 1):
		return ErrEmpty
	case width > record.MostPixels || height > record.MostPixels || width*height > mostPixels:
		return ErrPixels
	}
	return nil
}

// png reads the header of a PNG (ISO/IEC 15948) and walks its chunks to the last one, each with
// its checksum.
func png(data []byte) (width, height int, err error) {
	at := 8
	for at+12 <= len(data) {
		size, kind := int(binary.BigEndian.Uint32(data[at:])), string(data[at+4:at+8])
		if size < 0 || size > len(data)-at-12 {
			break
		}
		body := data[at+4 : at+8+size]
		switch {
		case at == 8 && (kind != "IHDR" || size < 8), crc32.ChecksumIEEE(body) != binary.BigEndian.Uint32(data[at+8+size:]):
			return 0, 0, ErrDamaged
		case at == 8:
			width, height = int(binary.BigEndian.Uint32(data[16:])), int(binary.BigEndian.Uint32(data[20:]))
		case kind == "IEND":
			return width, height, nil
		}
		at += 12 + size
	}
	return 0, 0, ErrDamaged
}

// jpeg walks the segments of a JPEG (ITU-T T.81) to its frame's header and on to the end of
// the image. What phones write after that end is left alone.
func jpeg(data []byte) (width, height int, err error) {
	at := 2
	for at+4 <= len(data) && data[at] == 0xff {
		marker := data[at+1]
		if marker == 0xff {
			at++
			continue
		}
		size := int(binary.BigEndian.Uint16(data[at+2:]))
		frame := marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc
		switch {
		case size < 2 || at+2+size > len(data):
			return 0, 0, ErrDamaged
		case frame && size >= 7:
			height, width = int(binary.BigEndian.Uint16(data[at+5:])), int(binary.BigEndian.Uint16(data[at+7:]))
		case marker == 0xda:
			// In the image's own data a 0xff is never followed by 0xd9.
			if width == 0 || !bytes.Contains(data[at:], []byte{0xff, 0xd9}) {
				return 0, 0, ErrDamaged
			}
			return width, height, nil
		}
		at += 2 + size
	}
	return 0, 0, ErrDamaged
}

// webp reads the canvas of a WebP (RFC 9649) and holds its size against the file's.
func webp(data []byte) (width, height int, err error) {
	if len(data) < 30 || int64(binary.LittleEndian.Uint32(data[4:]))+8 > int64(len(data)) {
		return 0, 0, ErrDamaged
	}
	switch string(data[12:16]) {
	case "VP8X":
		return 1 + int(data[24]) + int(data[25])<<8 + int(data[26])<<16,
			1 + int(data[27]) + int(data[28])<<8 + int(data[29])<<16, nil
	case "VP8L":
		bits := binary.LittleEndian.Uint32(data[21:])
		return 1 + int(bits&0x3fff), 1 + int(bits>>14&0x3fff), nil
	case "VP8 ":
		return int(binary.LittleEndian.Uint16(data[26:]) & 0x3fff), int(binary.LittleEndian.Uint16(data[28:]) & 0x3fff), nil
	}
	return 0, 0, ErrDamaged
}

// isSVG tells whether a text's first element is an SVG one.
func isSVG(data []byte) bool {
	head := strings.TrimPrefix(string(data[:min(len(data), 4096)]), "\ufeff")
	for {
		head = strings.TrimSpace(head)
		end := ""
		switch {
		case strings.HasPrefix(head, "<svg"):
			return len(head) > 4 && strings.ContainsRune(" \t\r\n>/", rune(head[4]))
		case strings.HasPrefix(head, "<!--"):
			end = "-->"
		case strings.HasPrefix(head, "<?"):
			end = "?>"
		case strings.HasPrefix(head, "<!DOCTYPE svg"):
			end = ">"
		default:
			return false
		}
		_, rest, found := strings.Cut(head, end)
		if !found {
			return false
		}
		head = rest
	}
}

// drawnLong is how long the longer side of an SVG counts, pixels: it has none of its own.
const drawnLong = 2000

// Sized is the size that a decoded picture of a kind is read at, from what the browser says.
func Sized(kind string, width, height float64) (float64, float64) {
	if long := max(width, height); kind == "image/svg+xml" && long > 0 {
		return width * drawnLong / long, height * drawnLong / long
	}
	return width, height
}
