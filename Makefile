# The face: each target does its own set-up. `make help` lists them.
# SPDX-License-Identifier: MIT

DEMO_COMMAND = build/release/lullwise pick --boat demo/heron.yaml --sailor demo/light.yaml --day demo/breeze.yaml
FUZZ_SECONDS = 60
SOAK_TIMES   = 50
# Which of the long tests have their turn under the sanitizers (test/spread.sh), and which third of
# random cases (test/random.h).
LW_RUN := $(or $(LW_RUN),$(shell echo $$(($$(date +%s) % 6))))

CONFIGURE = cmake -G Ninja --log-level=WARNING -S .
C_FILES   = $(shell git ls-files --cached --others --exclude-standard '*.c' '*.h')
SCRIPT    = $(shell git ls-files --cached --others --exclude-standard '*.js' '*.mjs')
PRETTIER  = node web/node_modules/prettier/bin/prettier.cjs --log-level=warn
CHECKED   = $(filter engine/%.c records/%.c answer/%.c picture/%.c sweep/%.c desk/%.c $\
    web/%.c command/%.c manual/%.c ranks/%.c,$(C_FILES))
# Left out of clang-tidy: what calls every memcpy unsafe, what misreads variable arguments and
# X-macros, and what takes a step along a length for a counter (it may end a rounding later).
# Left out of cppcheck in the engine: uninitvar, which takes lanes and arrays filled in a loop for
# never set (clang-tidy and gcc look for the same); overlappingWriteUnion, which takes two members of
# a struct within a union for overlapping.
TIDY = clang-analyzer-*,bugprone-*,misc-*,performance-*,-bugprone-easily-swappable-parameters,$\
    -bugprone-macro-parentheses,-bugprone-reserved-identifier,-clang-analyzer-valist.Uninitialized,$\
    -clang-analyzer-security.insecureAPI.DeprecatedOrUnsafeBufferHandling,$\
    -clang-analyzer-security.FloatLoopCounter

.PHONY: help page run samples test sanitize bench fuzz soak judged format check coverage deb clean packages-%

help:
	@echo 'make run       build the page and the program, then answer the demo day'
	@echo 'make page      the page, one file with the engine in it: build/page'
	@echo 'make test      build and run every test, under the sanitizers too'
	@echo 'make bench     speeds, each beside a general library; the page in Chromium'
	@echo 'make fuzz      feed broken files to the readers for $(FUZZ_SECONDS) s each (FUZZ_SECONDS=)'
	@echo 'make soak      random tests, $(SOAK_TIMES) times as many; a million boats (SOAK_TIMES=)'
	@echo 'make judged    swims when each judged number is 30 % less and more'
	@echo 'make check     clang-tidy, cppcheck, gcc -fanalyzer, layout'
	@echo 'make coverage  which lines the tests reach, as one table'
	@echo 'make deb       Debian packages, tried in a bare Debian 12 if root: build/deb'
	@echo 'make format    lay out C and script'
	@echo 'make clean     remove build/'

packages-%:
	@cmake/packages.sh $*

run: packages-run
	@$(MAKE) --no-print-directory page || echo 'The page could not be built; the program is, without it.'
	@$(CONFIGURE) -B build/release
	@cmake --build build/release --target lullwise
	$(DEMO_COMMAND)
	@echo
	@echo 'The same as a page, in a browser on this computer:  build/release/lullwise desk'
	@[ ! -f build/page/lullwise.html ] || \
	    echo 'On a phone or another laptop: open this one file there:  build/page/lullwise.html'

# The page: the engine by clang for WebAssembly; libyaml's sources and the bundler from npm.
YAML_SOURCE = $(CURDIR)/web/node_modules/libyaml/deps/yaml/src

web/node_modules/.package-lock.json: web/package-lock.json
	@cd web && npm ci --ignore-scripts --no-audit --no-fund --loglevel=error
	@touch $@

page: packages-page
	@$(MAKE) --no-print-directory web/node_modules/.package-lock.json
	@$(CONFIGURE) -B build/page -DCMAKE_TOOLCHAIN_FILE=$(CURDIR)/cmake/wasm.cmake -DLW_YAML_SOURCE=$(YAML_SOURCE) -DLW_WIDTH=2
	@cmake --build build/page --target page_engine
	@node web/build.mjs build/page/page_engine.wasm build/page/lullwise.html

# Files of real receivers, for test/sample_tracks.sh.
samples:
	@cmake/samples.sh build/samples

test: page samples sanitize
	@$(CONFIGURE) -B build/release -DLW_TESTS=ON
	@cmake --build build/release
	@LW_RUN=$(LW_RUN) ctest --test-dir build/release -j $$(nproc) --output-on-failure
	@LW_RUN=$(LW_RUN) node --test --test-concurrency=$$(nproc) web/test/*.test.mjs

sanitize: packages-test
	@$(CONFIGURE) -B build/sanitize -DLW_TESTS=ON -DLW_SANITIZE=ON
	@cmake --build build/sanitize
	@echo 'Long tests and random cases take turns: LW_RUN=$(LW_RUN) repeats this run, LW_RUN=all has all.'
	@LW_RUN=$(LW_RUN) ctest --test-dir build/sanitize -j $$(nproc) --output-on-failure

bench: packages-bench page
	@$(CONFIGURE) -B build/release
	@cmake --build build/release --target lullwise_bench
	build/release/lullwise_bench
	node bench/page.mjs

# The table of doc/motion.md, about half an hour.
judged: packages-test
	@node test/judged.mjs . build/judged

fuzz: packages-fuzz
	@CC=clang-14 $(CONFIGURE) -B build/fuzz -DLW_FUZZ=ON -DLW_SANITIZE=ON
	@cmake --build build/fuzz
	@test/fuzz.sh build/fuzz $(FUZZ_SECONDS)

soak: packages-test
	@$(CONFIGURE) -B build/sanitize -DLW_TESTS=ON -DLW_SANITIZE=ON
	@cmake --build build/sanitize
	LW_RUN=all LW_SOAK=$(SOAK_TIMES) ctest --test-dir build/sanitize -j $$(nproc) --output-on-failure --timeout 86400
	@$(CONFIGURE) -B build/release
	@cmake --build build/release --target lullwise
	test/random_boats.sh . build/release/lullwise $$((20000 * $(SOAK_TIMES)))

check: packages-check web/node_modules/.package-lock.json
	@$(CONFIGURE) -B build/check -DLW_TESTS=ON
	@$(CONFIGURE) -B build/analyzer -DLW_ANALYZE=ON
	printf '%s\n' $(CHECKED) | xargs -P $$(nproc) -n 1 clang-tidy-14 --quiet -p build/check \
	    --warnings-as-errors='*' --checks='-*,$(TIDY)'
	cppcheck --quiet -j $$(nproc) --error-exitcode=1 --enable=warning,portability --inline-suppr \
	    --suppress=missingIncludeSystem --suppress=uninitvar:engine/* \
	    --suppress=overlappingWriteUnion:engine/* -Iengine -Iengine/include -I. $(CHECKED)
	cmake --build build/analyzer --target lullwise
	clang-format-14 --dry-run --Werror $(C_FILES)
	$(PRETTIER) --check $(SCRIPT)

coverage: packages-test
	@$(CONFIGURE) -B build/coverage -DLW_TESTS=ON -DLW_COVERAGE=ON
	@cmake --build build/coverage
	@LW_RUN=$(LW_RUN) ctest --test-dir build/coverage -j $$(nproc) --output-on-failure --timeout 7200
	@node test/coverage.mjs . build/coverage

format: packages-format web/node_modules/.package-lock.json
	clang-format-14 -i $(C_FILES)
	$(PRETTIER) --write $(SCRIPT)

# The root is kept between runs; as root only.
deb: packages-deb page
	@$(CONFIGURE) -B build/deb -DCMAKE_INSTALL_PREFIX=/usr \
	    -DCMAKE_C_FLAGS='-ffile-prefix-map=$(CURDIR)=. -D_FORTIFY_SOURCE=2 -fstack-protector-strong' \
	    -DCMAKE_EXE_LINKER_FLAGS=-Wl,-z,relro,-z,now
	@cmake --build build/deb
	cd build/deb && rm -f *.deb && cpack
	lintian --fail-on error,warning --allow-root build/deb/*.deb
	[ "$$(id -u)" != 0 ] || test/bare_root.sh build/deb build/bare-root

clean:
	rm -rf build
