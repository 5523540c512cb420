# make run     build the page, serve it on this machine, open a browser where there is one
# make test    formatting, vet, staticcheck, every test natively, the core's under node, the page in a browser
# make browsers the main tour in Chromium, Firefox and WebKit; on Debian, as root, it installs the two
# make bench   what the page costs: the core, the pictures, opening and standing idle
# make soak    a million random boats worked out and five thousand walked through everything: about an hour
# make axe     every stage by axe-core, fetched by npm: WCAG 2.2 A and AA at four widths
# make mutants small changes in four packages of the core, a sample of them, and which their quick tests miss: an hour
# make golden  rewrite the goldens; look at git diff afterwards
# make page    build web/dist/barkwright.html, the page that opens from disk
# make site    build web/dist/site, a folder to put on any web host
# make release build web/dist/release, what to hand out: page, site, licences and checksums
# make clean   remove what was built

PAGE  := web/dist/barkwright.html
WASM  := GOOS=js GOARCH=wasm
# What has no screen in it, and so runs on the page's target under node too.
PURE  := ./core/... ./wasm/scene/... ./wasm/paint/mesh/...
# Runs a program under node as the page has it.
NODE  := $(CURDIR)/web/dist/pack

# Every check but ST1005: errors here are sentences that users read, so they begin with a capital and end with a stop.
CHECKS := all,-ST1005

.PHONY: axe run test bench soak mutants labels golden page site release clean format vet lint native node browser browsers

run:
	go run ./web/pack -serve

page site:
	go run ./web/pack

release:
	go run ./web/pack -release

test: format vet lint native node browser

format:
	@unformatted=$$(gofmt -l .); test -z "$$unformatted" || { echo "gofmt these:"; echo "$$unformatted"; exit 1; }

vet:
	go vet ./...
	$(WASM) go vet ./wasm/... ./core/... ./web/e2e/bare

# The tool is built for this machine, and what it looks at may be for another.
lint:
	go tool staticcheck -checks $(CHECKS) ./...
	$(WASM) $$(go tool -n staticcheck) -checks $(CHECKS) ./wasm/... ./web/e2e/bare

native:
	go test -count=1 -timeout 30m ./...

node: $(NODE)
	@if command -v node >/dev/null; then \
		echo 'the same tests again, built for the browser, under node:'; \
		$(WASM) go test -short -count=1 -timeout 30m -exec "$(NODE) -node" $(PURE); \
	else echo "skipped: no node here to run the core's tests on the page's target"; fi

.PHONY: $(NODE)
$(NODE):
	go build -o $@ ./web/pack

LOOKED := $(CURDIR)/web/dist/looked
browser: page
	@rm -f "$(LOOKED)"
	@browser=$$(./web/e2e/browser.sh) && echo "the page in $$browser:" && BARKWRIGHT_LOOKED="$(LOOKED)" \
	BARKWRIGHT_BROWSER="$$browser" BARKWRIGHT_PAGE="$(CURDIR)/$(PAGE)" go test -count=1 -timeout 30m ./web/e2e
	@BARKWRIGHT_LOOKED="$(LOOKED)" ./web/e2e/others.sh

# The tour in every browser there is, longer than the look that make test has in each.
browsers: page
	@./web/e2e/others.sh -install
	@rm -f "$(LOOKED)"
	@browser=$$(./web/e2e/browser.sh) && BARKWRIGHT_TOUR=1 BARKWRIGHT_LOOKED="$(LOOKED)" BARKWRIGHT_BROWSER="$$browser" \
	BARKWRIGHT_PAGE="$(CURDIR)/$(PAGE)" go test -count=1 -v -timeout 30m -run TestTour ./web/e2e
	@BARKWRIGHT_LOOKED="$(LOOKED)" ./web/e2e/others.sh

bench: page $(NODE)
	go test -run '^$$' -bench . -benchmem $(PURE)
	BARKWRIGHT_DESIGNS=100000 go test -count=1 -timeout 60m -run RandomDesigns ./core ./core/frame
	BARKWRIGHT_SWEEP=10000 go test -count=1 -v -run 'Sweep|CostGrows' ./core ./wasm/pipeline
	go run ./web/pack -sizes
	@if command -v node >/dev/null; then $(WASM) go test -run '^$$' -bench . -benchmem -exec "$(NODE) -node" $(PURE); fi
	go run ./web/pack -bare
	@browser=$$(./web/e2e/browser.sh) && BARKWRIGHT_BROWSER="$$browser" BARKWRIGHT_PAGE="$(CURDIR)/$(PAGE)" \
	BARKWRIGHT_BARE="$(CURDIR)/web/dist/bare.html" go test -count=1 -v -run TestCost ./web/e2e

soak:
	BARKWRIGHT_SOAK_TRY=1000000 BARKWRIGHT_SOAK_WALK=5000 go test -count=1 -timeout 24h -run NothingStops -v ./core/internal/soak

AXE := web/dist/axe
axe: page
	@command -v npm >/dev/null || { echo "make axe fetches axe-core by npm, which is not here"; exit 1; }
	mkdir -p $(AXE) && cd $(AXE) && npm pack --silent axe-core@4.14.1 | xargs tar -xzf
	@browser=$$(./web/e2e/browser.sh) && BARKWRIGHT_AXE="$(CURDIR)/$(AXE)/package/axe.min.js" BARKWRIGHT_BROWSER="$$browser" \
	BARKWRIGHT_PAGE="$(CURDIR)/$(PAGE)" go test -count=1 -timeout 30m -run TestAxe -v ./web/e2e

labels:
	BARKWRIGHT_EVERY_LABEL=1 go test -count=1 -run Labels ./wasm/scene/view
	BARKWRIGHT_EVERY_TURN=1 go test -count=1 -run 'Outline|RaisedEdges' ./wasm/scene/solid ./wasm/scene/raise

SEED ?= 1
mutants:
	go run ./core/internal/mutants -seed $(SEED) ./core/frame ./core/bark ./core/refit ./core/afloat

golden:
	go test -count=1 $$(grep -rl --include='*_test.go' 'flag.Bool("update"' core wasm | xargs -n1 dirname | sort -u | sed 's|^|./|') -update

clean:
	rm -rf web/dist
