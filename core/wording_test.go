package core_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Comments say it of the boat, as the page does: wasm/markup looks at the page's words.
func TestCommentsSayItOfTheBoat(t *testing.T) {
	she := regexp.MustCompile(`//.*\b([Ss]he|[Hh]ers?)\b`)
	for _, part := range []string{"core", "wasm", "web"} {
		err := filepath.WalkDir(filepath.Join("..", part), func(name string, _ fs.DirEntry, err error) error {
			if err != nil || filepath.Ext(name) != ".go" {
				return err
			}
			text, err := os.ReadFile(name)
			assert.Empty(t, she.FindString(string(text)), name)
			return err
		})
		require.NoError(t, err)
	}
}
