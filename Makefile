# Everything here needs Go alone, except race (a C compiler), geos (a C
# compiler and libgeos) and lint (staticcheck, fetched by .ci/run or by hand:
# go install honnef.co/go/tools/cmd/staticcheck@v0.8.2).

FUZZTIME ?= 8s
STATICCHECK ?= $(shell go env GOPATH)/bin/staticcheck
PLATFORMS = linux/amd64 linux/arm64 darwin/amd64 darwin/arm64 windows/amd64 windows/arm64

.PHONY: test race fuzz bench bench-rack bench-solvers geos outside librecad office bars-solver build-all lint docs

test: ## all tests
	go test ./...

# Of what draws and writes only the packet is made in several goroutines, and the tests
# are long: but for that one they are left to the plain tests. So are the scripts of the
# commands, but for those that plan and write beside one another, are stopped or tell how
# far they are.
race: ## tests under the race detector, with fewer random floors
	CGO_ENABLED=1 go test -race -short -timeout 20m $$(go list ./... | grep -vE '/(drawing|detail|method|section|packet|paper|cmd/strake)$$')
	CGO_ENABLED=1 go test -race -short -run Workers ./packet
	CGO_ENABLED=1 go test -race -short -run 'Bar|Plain|Quiet|Scripts/(plan_ferry|kept|run_out)$$' ./cmd/strake

fuzz: ## every parser, FUZZTIME each
	@set -e; for p in $$(go list ./...); do \
		for f in $$(go test -list '^Fuzz' $$p | grep '^Fuzz' || true); do \
			echo "fuzz $$p $$f"; \
			go test -run '^$$' -fuzz "^$$f\$$" -fuzztime $(FUZZTIME) $$p; \
		done; \
	done

bench: ## time of a whole plan: each example and the bench room; and of the packet beside it
	go test -run '^$$' -bench "BenchmarkPlan|BenchmarkRack|BenchmarkPacket" ./plan ./rack ./cmd/strake

bench-rack: ## what racking is worth on the bench room, against its targets: docs/racking.md
	go run ./bench rack -out docs/racking.md

# Installs what it can (npm, and apt where it may) in a folder of its own; a
# solver that cannot be had is skipped and named in the table.
bench-solvers: ## small floors against HiGHS and CBC: docs/solvers.md
	@d=$$(mktemp -d); trap 'rm -r "$$d"' EXIT; \
		(cd "$$d" && npm install --ignore-scripts --no-audit --no-fund highs) || echo "no HiGHS"; \
		command -v cbc >/dev/null || apt-get install -y --no-install-recommends coinor-cbc || echo "no CBC"; \
		go run ./bench solvers -highs "$$d" -out docs/solvers.md

outside: ## drawings read by other programs: poppler, qpdf, python3-ezdxf
	go test -tags outside -count=1 -run Outside ./cmd/strake

# Skipped, and says so, where LibreCAD is not installed.
librecad: ## the floor's .dxf drawn by LibreCAD
	go vet -tags outside ./cmd/strake
	go test -tags outside -count=1 -v -run LibreCAD ./cmd/strake

geos: ## floor outlines and gaps held against GEOS
	CGO_ENABLED=1 go vet -tags geos ./floor
	CGO_ENABLED=1 go test -tags geos -count=1 -run GEOS ./floor

# Skipped, and says so, where cbc is not installed.
bars-solver: ## pieces cut out of bars against CBC on small random cases
	go vet -tags solver ./bars
	go test -tags solver -count=1 -v -run CBC ./bars

# Skipped, and says so, where LibreOffice is not installed.
office: ## totals of order.xlsx and lists.xlsx worked out by LibreOffice (soffice, headless)
	go vet -tags office ./paper
	go test -tags office -count=1 -v -run InLibreOffice ./paper

build-all: ## strake for every platform, without C
	@set -e; for p in $(PLATFORMS); do \
		echo "build $$p"; \
		CGO_ENABLED=0 GOOS=$${p%/*} GOARCH=$${p#*/} go build -o /dev/null ./cmd/strake; \
	done

lint: ## gofmt, vet, staticcheck
	@out=$$(gofmt -l .); if [ -n "$$out" ]; then echo "gofmt these:"; echo "$$out"; exit 1; fi
	go vet ./...
	$(STATICCHECK) ./...

# The picture of a packet's page needs poppler-utils.
docs: ## draw the pictures in the README again
	@set -e; d=$$(mktemp -d); trap 'rm -r "$$d"' EXIT; \
		go run ./cmd/strake plan examples/ferry-parlour.yaml -o "$$d"; \
		mkdir -p docs; cp "$$d/plan.svg" docs/ferry-parlour.svg; \
		n=1; until pdftotext -f $$n -l $$n "$$d/packet.pdf" - | grep -q '^Row cards, sheet 2'; do n=$$((n+1)); done; \
		pdftoppm -f $$n -l $$n -r 80 -gray -png -singlefile "$$d/packet.pdf" docs/row-cards
