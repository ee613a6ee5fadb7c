// card_picture.c - a page of a card as SVG of its paper's size, its text as text.
// SPDX-License-Identifier: MIT

#include "picture/card_picture.h"

#include "picture/letter_width.h"
#include "records/fault.h"
#include "records/svg.h"

#define INK "#000"

static void draw_box(FILE *out, const lw_card_box *box)
{
    char text[LW_CARD_LINE_LENGTH];
    const lw_svg_point at = {box->is_to_right ? box->x + box->width : box->x,
                             box->y + LW_LETTER_RISE * box->size};
    LW_FIT(text, "%.*s", (int)box->length, box->text);
    lw_svg_text(out, at,
                (lw_svg_words){.size = box->size,
                               .anchor = box->is_to_right ? "end" : "start",
                               .colour = INK,
                               .is_bold = box->is_bold},
                text);
}

void lw_card_draw(FILE *out, const lw_card_page *page, const char *title)
{
    lw_svg_begin_paper(out, lw_paper_width(page->paper), lw_paper_height(page->paper), title);
    for (size_t i = 0; i < page->rule_count; i++) {
        const double right = page->width - LW_CARD_MARGIN, y = page->rules[i];
        lw_svg_line(out, (lw_svg_point){LW_CARD_MARGIN, y}, (lw_svg_point){right, y},
                    (lw_svg_stroke){.width = 0.6, .colour = INK});
    }
    for (size_t i = 0; i < page->box_count; i++) draw_box(out, &page->boxes[i]);
    lw_svg_end(out);
}

void lw_card_sheet_draw(FILE *out, const lw_card_sheet *sheet)
{
    lw_card_page page;
    lw_card_set(sheet, &page);
    lw_card_draw(out, &page, sheet->title);
}
