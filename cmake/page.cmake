# The engine of the page: a WebAssembly module without a main program, for web/script/engine.js.
# SPDX-License-Identifier: MIT
file(GLOB page_sources CONFIGURE_DEPENDS picture/*.c web/*.c
     records/fault.c records/key_text.c records/logbook/arrived.c records/logbook/column.c records/logbook/csv.c
     records/logbook/entry.c records/offsets_file.c records/record_*.c records/section_file.c records/source_text.c records/svg.c records/utf8.c records/yaml_*.c)
file(GLOB_RECURSE answer_sources CONFIGURE_DEPENDS answer/*.c)
list(FILTER answer_sources EXCLUDE REGEX "/answer/(track|learn|invent)/")  # read files
file(GLOB yaml_sources ${LW_YAML_SOURCE}/src/*.c)

add_library(page_yaml STATIC ${yaml_sources})
target_include_directories(page_yaml SYSTEM PUBLIC ${LW_YAML_SOURCE}/include)
target_compile_definitions(page_yaml PUBLIC YAML_DECLARE_STATIC PRIVATE NDEBUG  # an assertion of 0.1.6 fails on broken files; later releases have it no more
 
  YAML_VERSION_MAJOR=0 YAML_VERSION_MINOR=1 YAML_VERSION_PATCH=6 YAML_VERSION_STRING="0.1.6")
target_compile_options(page_yaml PRIVATE -Os -w)

add_executable(page_engine ${page_sources} ${answer_sources})
target_compile_definitions(page_engine PRIVATE LW_VERSION="${PROJECT_VERSION}")
target_compile_options(page_engine PRIVATE -Os)  # words and pictures: small; the engine stays quick
target_link_libraries(page_engine PRIVATE lw_flags lullwise_engine page_yaml)
target_link_options(page_engine PRIVATE -mexec-model=reactor -Wl,--gc-sections -Wl,--strip-all)
