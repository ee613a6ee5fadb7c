// yaml_alike.h - what not every release of libyaml reads alike is refused before any of them reads
// it.
// SPDX-License-Identifier: MIT
//
// The page carries 0.1.6, the program the system's (0.2.5 on Debian 12). Their scanners differ in
// tags, directives, plain texts with : or ? inside brackets, and the escapes \/ and \'.

#ifndef LW_YAML_ALIKE_H
#define LW_YAML_ALIKE_H

#include <stdbool.h>
#include <yaml.h>

// The first place that is not read alike, from its line and column on: what to write instead.
typedef struct lw_yaml_unlike {
    const char *sentence;
    yaml_mark_t mark;
} lw_yaml_unlike;

// True when there is one. The text is UTF-8 without a byte order mark.
bool lw_yaml_has_unlike(const char *text, size_t length, lw_yaml_unlike *found);

#endif
