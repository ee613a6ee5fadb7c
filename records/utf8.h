// utf8.h - characters of a text in UTF-8.
// SPDX-License-Identifier: MIT

#ifndef LW_UTF8_H
#define LW_UTF8_H

#include <stddef.h>
#include <stdint.h>

// Bytes of the character at `at`; 0 when it is none (overlong, surrogate, beyond the end).
size_t lw_utf8_length(const char *at, size_t left);

// The character in its bytes, of which there are `length`.
uint32_t lw_utf8_code(const char *at, size_t length);

// A length that cuts no character in two: `length` or a little less.
size_t lw_utf8_whole(const char *text, size_t length);

// Characters in so many bytes.
size_t lw_utf8_count(const char *text, size_t length);

#endif
