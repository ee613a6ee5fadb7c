// letter_width.h - how wide words are, whichever sans-serif letters they are set in.
// SPDX-License-Identifier: MIT

#ifndef LW_LETTER_WIDTH_H
#define LW_LETTER_WIDTH_H

#include <stdbool.h>
#include <stddef.h>

// Width of so many bytes of UTF-8, in sizes of the letters, by the advance widths of the widest
// of the common sans-serif letters: words in any of the others are no wider.
//
// Leaves out   letters that are drawn into one, and those beside ASCII: as wide as the widest.
double lw_letters_width(const char *text, size_t length, bool is_bold);

// How far letters of size 1 reach above and below the line on which they stand.
#define LW_LETTER_RISE 0.93
#define LW_LETTER_DROP 0.24

#endif
