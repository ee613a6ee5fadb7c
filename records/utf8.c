// utf8.c - characters of a text in UTF-8.
// SPDX-License-Identifier: MIT

#include "records/utf8.h"

size_t lw_utf8_length(const char *text, size_t left)
{
    const unsigned char *at = (const unsigned char *)text;
    static const struct {
        unsigned char first_low, first_high, second_low, second_high;
        size_t length;
    } forms[] = {
        // [rfc3629] section 4
        {0x00, 0x7F, 0x00, 0xFF, 1}, {0xC2, 0xDF, 0x80, 0xBF, 2}, {0xE0, 0xE0, 0xA0, 0xBF, 3},
        {0xE1, 0xEC, 0x80, 0xBF, 3}, {0xED, 0xED, 0x80, 0x9F, 3}, {0xEE, 0xEF, 0x80, 0xBF, 3},
        {0xF0, 0xF0, 0x90, 0xBF, 4}, {0xF1, 0xF3, 0x80, 0xBF, 4}, {0xF4, 0xF4, 0x80, 0x8F, 4},
    };
    for (size_t i = 0; i < sizeof forms / sizeof forms[0]; i++) {
        if (at[0] < forms[i].first_low || at[0] > forms[i].first_high) continue;
        const size_t length = forms[i].length;
        if (length > left) return 0;
        if (length > 1 && (at[1] < forms[i].second_low || at[1] > forms[i].second_high)) return 0;
        for (size_t k = 2; k < length; k++) {
            if (at[k] < 0x80 || at[k] > 0xBF) return 0;
        }
        return length;
    }
    return 0;
}

static int is_continuation(char byte) { return ((unsigned char)byte & 0xC0) == 0x80; }

size_t lw_utf8_whole(const char *text, size_t length)
{
    size_t start = length;  // of the last character
    while (start && is_continuation(text[start - 1])) start--;
    if (start == 0) return length;
    return lw_utf8_length(text + start - 1, length - start + 1) ? length : start - 1;
}

size_t lw_utf8_count(const char *text, size_t length)
{
    size_t count = 0;
    for (size_t i = 0; i < length; i++) count += !is_continuation(text[i]);
    return count;
}

uint32_t lw_utf8_code(const char *at, size_t length)
{
    const unsigned char first = (unsigned char)at[0];
    uint32_t code = length < 2 ? first : first & (0x7Fu >> length);
    for (size_t i = 1; i < length; i++) code = code << 6 | ((unsigned char)at[i] & 0x3Fu);
    return code;
}
