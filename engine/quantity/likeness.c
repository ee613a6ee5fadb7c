// likeness.c - how like two keys are, for "did you mean".
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/quantity.h"

#define LONGEST 64

static int small(char c) { return c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c; }

static size_t clipped(const char *text)
{
    const size_t length = strlen(text);
    return length < LONGEST ? length : LONGEST;
}

static size_t least(size_t a, size_t b, size_t c)
{
    const size_t d = a < b ? a : b;
    return d < c ? d : c;
}

size_t lw_text_distance(const char *a, const char *b)
{
    const size_t length_a = clipped(a), length_b = clipped(b);
    size_t rows[3][LONGEST + 1];  // edits from a's beginnings (three at a time) to each one of b
    for (size_t k = 0; k <= length_b; k++) rows[0][k] = k;
    for (size_t i = 1; i <= length_a; i++) {
        size_t *now = rows[i % 3];
        const size_t *above = rows[(i + 2) % 3], *two_above = rows[(i + 1) % 3];
        now[0] = i;
        for (size_t k = 1; k <= length_b; k++) {
            const bool is_same = small(a[i - 1]) == small(b[k - 1]);
            now[k] = least(above[k - 1] + !is_same, now[k - 1] + 1, above[k] + 1);
            const bool is_swap = i > 1 && k > 1 && small(a[i - 1]) == small(b[k - 2]) &&
                                 small(a[i - 2]) == small(b[k - 1]);
            if (is_swap) now[k] = least(now[k], two_above[k - 2] + 1, now[k]);
        }
    }
    return rows[length_a % 3][length_b];
}

// Edits between them; a word that stands whole in the other counts as one edit away.
static size_t strangeness(const char *key, const char *candidate)
{
    const size_t distance = lw_text_distance(key, candidate);
    const bool is_part = strlen(key) >= 3 && strstr(candidate, key);
    const bool is_whole = strlen(candidate) >= 3 && strstr(key, candidate);
    return distance > 1 && (is_part || is_whole) ? 1 : distance;
}

const char *lw_text_nearer(const char *key, const char *a, const char *b)
{
    const size_t far = clipped(key) / 3 + 1;
    const size_t from_a = a ? strangeness(key, a) : far;
    const size_t from_b = b ? strangeness(key, b) : far;
    if (from_a >= far && from_b >= far) return NULL;
    return from_a <= from_b ? a : b;
}
