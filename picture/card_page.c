// card_page.c - lines set on a page of paper, as large as they fit: boxes that know their place.
// SPDX-License-Identifier: MIT

#include "picture/card_page.h"

#include <assert.h>
#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "picture/letter_width.h"
#include "records/fault.h"
#include "records/svg.h"

#define LEAST      LW_CARD_LETTERS_LEAST
#define STEP       0.25  // from one size tried to the next
#define LINE       1.2   // from line to line / size
#define ABOVE_RULE 0.25  // of the size
#define BELOW_RULE 0.2
#define GAP        0.7  // between cells at least / size
#define CELLS_MOST 12

// --- paper

#define LW_AS_ENTRY(name, text, width, height) {text, width, height},
static const struct {
    const char *text;
    double width, height;
} papers[] = {LW_PAPER_LIST(LW_AS_ENTRY)};

const char *lw_paper_text(lw_paper paper) { return papers[paper].text; }
double lw_paper_width(lw_paper paper) { return papers[paper].width; }
double lw_paper_height(lw_paper paper) { return papers[paper].height; }

lw_paper lw_paper_of(const char *text)
{
    int paper = 0;
    while (paper < LW_PAPER_COUNT && strcmp(papers[paper].text, text) != 0) paper++;
    return (lw_paper)paper;
}

// --- a sheet

void lw_card_add(lw_card_sheet *sheet, lw_card_line how, const char *format, ...)
{
    va_list arguments;
    if (sheet->count == LW_CARD_LINES_MOST) return;
    lw_card_line *line = &sheet->lines[sheet->count++];
    *line = how;
    assert(how.spare >= 0 && how.spare <= LW_CARD_SPARE_MOST);
    va_start(arguments, format);
    vsnprintf(line->text, sizeof line->text, format, arguments);
    va_end(arguments);
}

// --- setting it

typedef struct cells {
    size_t count;
    const char *text[CELLS_MOST];
    size_t length[CELLS_MOST];
} cells;

// A table's columns, and how far its letters are shrunk.
typedef struct columns {
    int table;  // 0: none
    size_t count;
    double shrink, gap;
    double width[CELLS_MOST];
} columns;

// One attempt.
typedef struct setting {
    const lw_card_sheet *sheet;
    lw_card_page *page;
    const bool *is_out;  // by the number with which lines are spared; NULL: none is left out
    double y;
    columns columns;  // of the table that was set last
    bool fits;
} setting;

static cells cells_of(const char *text)
{
    cells of = {0};
    while (of.count < CELLS_MOST) {
        const size_t length = strcspn(text, "\t");
        of.text[of.count] = text, of.length[of.count++] = length;
        if (text[length] == '\0') break;
        text += length + 1;
    }
    return of;
}

static bool is_out(const setting *s, const lw_card_line *line)
{
    return s->is_out && s->is_out[line->spare];
}

static bool is_there(const setting *s, const lw_card_line *line)
{
    if (line->tells_of_spare) return s->is_out != NULL;
    for (size_t i = 0; line->is_head && i < s->sheet->count; i++) {
        const lw_card_line *other = &s->sheet->lines[i];
        if (other->table == line->table && !other->is_head && !is_out(s, other)) return true;
    }
    return !line->is_head && !is_out(s, line);
}

static double room_of(const setting *s) { return s->page->width - 2.0 * LW_CARD_MARGIN; }

static double size_of(const setting *s, const lw_card_line *line, double shrink)
{
    return fmax(s->page->size * line->scale * shrink, LEAST);
}

static void put_box(setting *s, lw_card_box box)
{
    lw_card_page *page = s->page;
    const bool is_on = box.y + box.height <= page->height - LW_CARD_MARGIN &&
                       box.x + box.width <= page->width - 0.5 * LW_CARD_MARGIN &&
                       page->box_count < LW_CARD_BOXES_MOST;
    s->fits &= is_on;
    if (is_on && box.length) page->boxes[page->box_count++] = box;
}

static lw_card_box box_of(const setting *s, const char *text, size_t length, double size, bool bold)
{
    return (lw_card_box){.x = LW_CARD_MARGIN,
                         .y = s->y,
                         .width = size * lw_letters_width(text, length, bold),
                         .height = size * (LW_LETTER_RISE + LW_LETTER_DROP),
                         .size = size,
                         .is_bold = bold,
                         .text = text,
                         .length = length};
}

// --- words across the page

// How much of a text goes into a line: whole words, or as many letters of a word as there is room
// for.
static size_t line_length(const char *text, double room, bool is_bold)
{
    size_t fit = 0, at = 0;
    while (text[at]) {
        const size_t word = at + strcspn(text + at, " ");
        if (lw_letters_width(text, word, is_bold) > room) break;
        fit = word;
        at = word + strspn(text + word, " ");
    }
    if (fit) return fit;
    for (at = 1; text[at] && lw_letters_width(text, at, is_bold) <= room; at++)
        if ((text[at] & 0xC0) != 0x80) fit = at;
    return fit ? fit : at;
}

static double words_size(const setting *s, const lw_card_line *line)
{
    const double size = size_of(s, line, 1.0);
    if (!line->is_single) return size;
    const double width = lw_letters_width(line->text, strlen(line->text), line->is_bold);
    return fmin(size, fmax(room_of(s) / fmax(width, 1.0), LEAST));
}

static void set_words(setting *s, const lw_card_line *line)
{
    const double size = words_size(s, line), room = room_of(s) / size + 1e-9;
    const char *text = line->text;
    while (*text) {
        const size_t length = line_length(text, room, line->is_bold);
        put_box(s, box_of(s, text, length, size, line->is_bold));
        s->y += LINE * size;
        text += length + strspn(text + length, " ");
    }
}

// --- tables

static void widen(const setting *s, const lw_card_line *line, columns *to)
{
    const cells of = cells_of(line->text);
    const double size = size_of(s, line, to->shrink);
    if (of.count > to->count) to->count = of.count;
    for (size_t i = 0; i < of.count; i++) {
        const double width = size * lw_letters_width(of.text[i], of.length[i], line->is_bold);
        to->width[i] = fmax(to->width[i], width);
    }
}

static columns measured(const setting *s, int table, double shrink)
{
    columns of = {.table = table, .shrink = shrink};
    double taken = 0.0;
    for (size_t i = 0; i < s->sheet->count; i++) {
        const lw_card_line *line = &s->sheet->lines[i];
        if (line->table == table && is_there(s, line)) widen(s, line, &of);
    }
    for (size_t i = 0; i < of.count; i++) taken += of.width[i];
    of.gap = of.count > 1 ? (room_of(s) - taken) / (double)(of.count - 1) : room_of(s) - taken;
    return of;
}

// Letters only as large as leave a gap between the columns.
static columns columns_of(const setting *s, int table)
{
    double shrink = 1.0;
    columns of = measured(s, table, shrink);
    while (of.gap < GAP * s->page->size && shrink > 0.2) {
        shrink *= 0.95;
        of = measured(s, table, shrink);
    }
    return of;
}

// Cells to the left stand close; the others share what is left of the page, their ends in line.
static void set_row(setting *s, const lw_card_line *line)
{
    if (s->columns.table != line->table) s->columns = columns_of(s, line->table);
    const columns *of = &s->columns;
    const cells row = cells_of(line->text);
    const double size = size_of(s, line, of->shrink), close = fmin(of->gap, GAP * s->page->size);
    const double lefts = line->left ? (double)line->left : 1.0, all = (double)of->count;
    const double wide = (of->gap * (all - 1.0) - close * (lefts - 1.0)) / fmax(all - lefts, 1.0);
    double x = LW_CARD_MARGIN;
    s->fits &= of->gap >= 0.3 * LEAST;
    for (size_t i = 0; i < row.count; i++) {
        lw_card_box box = box_of(s, row.text[i], row.length[i], size, line->is_bold);
        box.is_to_right = i >= line->left;
        if (i > 0) x += box.is_to_right ? wide : close;
        box.x = box.is_to_right ? x + of->width[i] - box.width : x;
        put_box(s, box);
        x += of->width[i];
    }
    s->y += LINE * size;
}

// --- the page

static void set_line(setting *s, const lw_card_line *line)
{
    if (line->is_ruled) {
        s->y += ABOVE_RULE * s->page->size;
        s->page->rules[s->page->rule_count++] = s->y;
        s->y += BELOW_RULE * s->page->size;
    }
    if (line->table)
        set_row(s, line);
    else
        set_words(s, line);
}

static bool set_all(const lw_card_sheet *sheet, lw_card_page *page, double size, const bool *out)
{
    setting s = {.sheet = sheet, .page = page, .is_out = out, .y = LW_CARD_MARGIN, .fits = true};
    page->size = size;
    page->box_count = page->rule_count = page->left_out = 0;
    for (size_t i = 0; i < sheet->count && s.fits; i++) {
        const lw_card_line *line = &sheet->lines[i];
        if (is_there(&s, line))
            set_line(&s, line);
        else if (is_out(&s, line))
            page->left_out++;
    }
    return s.fits;
}

static bool has_spare(const lw_card_sheet *sheet, int spare)
{
    for (size_t i = 0; i < sheet->count; i++) {
        if (sheet->lines[i].spare == spare) return true;
    }
    return false;
}

// In the least letters, what is needed most first, each as far as it leaves room for it.
static bool set_some(const lw_card_sheet *sheet, lw_card_page *page)
{
    bool out[LW_CARD_SPARE_MOST + 1];
    for (int spare = 0; spare <= LW_CARD_SPARE_MOST; spare++) out[spare] = spare > 0;
    for (int spare = 1; spare <= LW_CARD_SPARE_MOST; spare++) {
        if (!has_spare(sheet, spare)) continue;
        out[spare] = false;
        out[spare] = !set_all(sheet, page, LEAST, out);
    }
    return set_all(sheet, page, LEAST, out);
}

bool lw_card_set(const lw_card_sheet *sheet, lw_card_page *page)
{
    page->paper = sheet->paper;
    page->width = papers[sheet->paper].width / LW_SVG_POINT;
    page->height = papers[sheet->paper].height / LW_SVG_POINT;
    for (double size = LW_CARD_LETTERS_MOST; size >= LEAST; size -= STEP) {
        if (set_all(sheet, page, size, NULL)) return true;
    }
    return set_some(sheet, page);
}
