package main

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// release is what to hand out: the page, the site as one archive, the notices and the
// checksums of the three, named by the version that the page and every sheet show.
func release(page []byte, site map[string][]byte, notices string) (map[string][]byte, error) {
	name := "barkwright-" + strings.ReplaceAll(version(), " ", "-")
	archive, err := zipped(site)
	if err != nil {
		return nil, err
	}
	files := map[string][]byte{
		name + ".html": page, name + "-site.zip": archive, name + "-notices.txt": []byte(notices),
	}
	var sums strings.Builder
	for _, file := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(&sums, "%x  %s\n", sha256.Sum256(files[file]), file)
	}
	files[name+"-SHA256SUMS.txt"] = []byte(sums.String())
	return files, nil
}

// zipped is an archive of files, the same to the byte for the same files: without dates.
func zipped(files map[string][]byte) ([]byte, error) {
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, name := range slices.Sorted(maps.Keys(files)) {
		w, err := z.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate})
		if err != nil {
			return nil, err
		}
		if _, err := w.Write(files[name]); err != nil {
			return nil, err
		}
	}
	err := z.Close()
	return b.Bytes(), err
}
