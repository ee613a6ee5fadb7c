// part.c - everything that the desk serves: a fixed table, its bytes inside the program.
// SPDX-License-Identifier: MIT

#include "desk/part.h"

#include <stddef.h>
#include <string.h>

#include "desk/desk.h"

// The build names the folder of the parts and, where it is built already, the page.
#ifdef LW_PAGE
#define HAS_PAGE true
#else
#define HAS_PAGE false
#define LW_PAGE  LW_DESK_PARTS "/no-page.html"
#endif

// clang-format off
#define PART_LIST(X)                                                                              \
    X(page,     "/",                "text/html; charset=utf-8",  LW_PAGE)                         \
    X(offline,  "/offline.js",      "text/javascript",           LW_DESK_PARTS "/offline.js")     \
    X(manifest, "/app.webmanifest", "application/manifest+json", LW_DESK_PARTS "/app.webmanifest") \
    X(icon,     "/icon.svg",        "image/svg+xml",             LW_DESK_PARTS "/icon.svg")

#define AS_BYTES(name, path, type, file)                      \
    __asm__(".pushsection .rodata\n"                          \
            "lw_part_" #name ": .incbin \"" file "\"\n"       \
            "lw_part_" #name "_end: .byte 0\n"                \
            ".popsection\n");                                 \
    extern const char lw_part_##name[], lw_part_##name##_end[];
PART_LIST(AS_BYTES)

#define AS_ROW(name, path, type, file) {path, type, lw_part_##name, lw_part_##name##_end},
const lw_part lw_parts[] = {PART_LIST(AS_ROW) {0}};
// clang-format on

const lw_part *lw_part_at(const char *target)
{
    const size_t length = strcspn(target, "?");
    for (const lw_part *part = lw_parts; part->path; part++) {
        if (strlen(part->path) == length && memcmp(part->path, target, length) == 0) return part;
    }
    return NULL;
}

bool lw_desk_has_page(void) { return HAS_PAGE; }
