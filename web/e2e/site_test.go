package e2e

import (
	"crypto/sha256"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// host is a web host whose files change while it runs.
type host struct {
	sync.Mutex
	files map[string]string
}

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.Lock()
	defer h.Unlock()
	name, under := strings.CutPrefix(r.URL.Path, "/boats/")
	if name == "" {
		name = "index.html"
	}
	text, ok := h.files[name]
	if !under || !ok {
		http.NotFound(w, r)
		return
	}
	kinds := map[string]string{".html": "text/html", ".js": "text/javascript", ".png": "image/png",
		".webmanifest": "application/manifest+json"}
	w.Header().Set("Content-Type", kinds[filepath.Ext(name)])
	_, _ = w.Write([]byte(text))
}

// put lays another page on the host, with the worker that keeps it or with one of a page
// that has not arrived.
func (h *host) put(index string, arrived bool) {
	h.Lock()
	defer h.Unlock()
	old := fmt.Sprintf("%x", sha256.Sum256([]byte(h.files["index.html"])))
	worker := strings.Replace(h.files["sw.js"], old, fmt.Sprintf("%x", sha256.Sum256([]byte(index))), 1)
	if arrived {
		h.files["index.html"] = index
	}
	h.files["sw.js"] = worker
}

// A served page can be installed, keeps itself, takes a newer page whole and only when its
// user says so, and opens without the network with the boat that was in hand.
func TestSite(t *testing.T) {
	folder := filepath.Join(filepath.Dir(pageFile(t)), "site")
	entries, err := os.ReadDir(folder)
	require.NoError(t, err, "make site writes it")
	h := &host{files: map[string]string{}}
	for _, e := range entries {
		text, err := os.ReadFile(filepath.Join(folder, e.Name()))
		require.NoError(t, err)
		h.files[e.Name()] = string(text)
	}
	served := httptest.NewServer(h)
	defer served.Close()
	address := served.URL + "/boats/"

	p := openAddress(t, address, "", desktop, own(t))
	p.ready()
	p.mu.Lock()
	// The first opening asked before this was said; the next one is listened to.
	p.asks, p.faults = address, nil
	p.mu.Unlock()
	p.wait(`navigator.serviceWorker.controller !== null || navigator.serviceWorker.ready.then(r => r.active !== null)`)
	p.goTo(address)
	p.ready()
	p.wait(`navigator.serviceWorker.controller !== null`)
	faults, err := chromedp.Call(p.ctx, page.GetInstallabilityErrors, cdp.Empty{})
	require.NoError(t, err)
	assert.Empty(t, faults.InstallabilityErrors, "the browser's own report")
	manifest, err := chromedp.Call(p.ctx, page.GetAppManifest, page.GetAppManifestParams{})
	require.NoError(t, err)
	assert.Empty(t, manifest.Errors)
	assert.Equal(t, address+"manifest.webmanifest", manifest.URL)

	typed := func(key string) string {
		return eval[string](p, `document.querySelector('[data-typed="%s"]').value`, key)
	}
	p.enter("length", "14 ft 7 in")
	first := h.files["index.html"]
	second := strings.Replace(first, "<title>Barkwright", "<title>Newer Barkwright", 1)
	require.NotEqual(t, first, second)
	newer := `document.querySelector('[data-newer]') !== null`
	update := `navigator.serviceWorker.getRegistration().then(r => r.update()).then(r => new Promise(done => {
		const of = r.installing ?? r.waiting;
		if (!of || of.state !== 'installing') return done(of?.state ?? 'none');
		of.addEventListener('statechange', () => done(of.state));
	}))`

	// A worker whose page has not arrived is not installed.
	h.put(second, false)
	state, err := chromedp.Run(p.ctx, chromedp.Evaluate[string](update, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	assert.Equal(t, "redundant", state)
	assert.False(t, eval[bool](p, "%s", newer))

	// One whose page has arrived waits, under the boat in hand and past a reload.
	h.Lock()
	h.files["sw.js"] += "\n"
	h.files["index.html"] = second
	h.Unlock()
	state, err = chromedp.Run(p.ctx, chromedp.Evaluate[string](update, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	assert.Equal(t, "installed", state)
	p.wait("%s", newer)
	assert.NotContains(t, eval[string](p, `document.title`), "Newer")
	p.do(chromedp.Reload())
	p.ready()
	assert.NotContains(t, eval[string](p, `document.title`), "Newer", "what waits is not taken by a reload")
	p.wait("%s", newer)
	eval[bool](p, `document.querySelector('[data-newer] [data-take]').click(), true`)
	require.Eventually(t, func() bool {
		now, err := chromedp.Run(p.ctx, chromedp.Evaluate[bool](`document.title.startsWith('Newer')`))
		return err == nil && now
	}, 10*time.Second, 20*time.Millisecond, "the newer page is taken")
	p.ready()
	assert.Equal(t, "14' 7\"", typed("length"))
	p.wait(`caches.keys().then(k => k.length === 1)`) // the older page is dropped

	served.Close()
	p.goTo(address)
	p.ready()
	assert.Contains(t, eval[string](p, `document.title`), "Newer")
	assert.Equal(t, "14' 7\"", typed("length"), "without the network")
	p.take()
}
