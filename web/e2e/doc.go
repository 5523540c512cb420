// Package e2e drives the built page in a headless browser. Its tests run where
// BARKWRIGHT_PAGE names the page's file, which make test sets, and are skipped
// elsewhere. BARKWRIGHT_BROWSER names the browser's program; BARKWRIGHT_SHOTS a
// folder for the screenshots. browser.sh finds or installs the browser.
package e2e
