// card_page.h - lines set on a page of paper, as large as they fit: boxes that know their place.
// SPDX-License-Identifier: MIT
//
// Lengths are points, from the upper left corner to the right and down.

#ifndef LW_CARD_PAGE_H
#define LW_CARD_PAGE_H

#include <stdbool.h>
#include <stddef.h>

// clang-format off
//    name           width and height [mm], upright
#define LW_PAPER_LIST(X)             \
    X(A6,          "A6",          105.0, 148.0) \
    X(A5,          "A5",          148.0, 210.0) \
    X(HALF_LETTER, "half-letter", 139.7, 215.9)
// clang-format on

#define LW_AS_PAPER(name, text, width, height) LW_PAPER_##name,
typedef enum lw_paper { LW_PAPER_LIST(LW_AS_PAPER) LW_PAPER_COUNT } lw_paper;
const char *lw_paper_text(lw_paper paper);
lw_paper lw_paper_of(const char *text);  // the count when there is none of that name
double lw_paper_width(lw_paper paper);   // [mm]
double lw_paper_height(lw_paper paper);

#define LW_CARD_LETTERS_LEAST 8.0   // no letter is smaller
#define LW_CARD_LETTERS_MOST  12.0  // of lines at scale 1
#define LW_CARD_MARGIN        14.0

// --- what is to be set

#define LW_CARD_LINE_LENGTH 360
#define LW_CARD_LINES_MOST  160
#define LW_CARD_SPARE_MOST  127

typedef struct lw_card_line {
    char text[LW_CARD_LINE_LENGTH];  // of a table: its cells, tabs between
    int table;                       // lines with one number share columns; 0: words across
    size_t left;                     // of a table: so many first cells stand to the left
    double scale;                    // of its letters; of a table, less where it is too wide
    bool is_bold, is_ruled;          // a rule above it
    bool is_single;                  // words that rather shrink than go on in a second line
    int spare;                       // left out where there is no room: the less the later, 0 never
    bool is_head;                    // of a table: there with any other line of it
    bool tells_of_spare;             // there only when something was left out
} lw_card_line;

typedef struct lw_card_sheet {
    lw_paper paper;
    char title[120];  // for those who cannot see it
    size_t count;
    lw_card_line lines[LW_CARD_LINES_MOST];
} lw_card_sheet;

// A line more, `how` with this text; none beyond the most there is room for.
void lw_card_add(lw_card_sheet *sheet, lw_card_line how, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

// --- what is set

#define LW_CARD_BOXES_MOST 900

// A piece of text and the room that it takes in any letters.
typedef struct lw_card_box {
    double x, y, width, height;
    double size;  // of its letters
    bool is_bold, is_to_right;
    const char *text;  // so many bytes within the sheet
    size_t length;
} lw_card_box;

typedef struct lw_card_page {
    lw_paper paper;
    double width, height;
    double size;      // of letters at scale 1
    size_t left_out;  // lines
    size_t box_count, rule_count;
    lw_card_box boxes[LW_CARD_BOXES_MOST];  // in reading order
    double rules[LW_CARD_LINES_MOST];       // heights of rules across
} lw_card_page;

// Sets a sheet, which must outlive the page. Letters as large as lets all lines stand; at the least
// size, of those that may be spared as many as fit, all with one number or none. False: without
// any of them it does not fit either, and the page ends early.
bool lw_card_set(const lw_card_sheet *sheet, lw_card_page *page);

#endif
