// back.c - the second page of a card: what it rests on, and cautions.
// SPDX-License-Identifier: MIT

#include "answer/card/card.h"
#include "picture/card_picture.h"
#include "records/fault.h"

static const lw_card_line plain = {.scale = 1.0};
static const lw_card_line head = {.scale = 1.0, .is_bold = true, .is_ruled = true};

#define SPARE_TRUST (LW_CARD_CAUTIONS_MOST + 1)  // before any caution

static void add_trust(const lw_carded *card, lw_card_sheet *sheet)
{
    lw_card_words texts[LW_CARD_TRUST_MOST];
    const size_t count = lw_card_trust(card, texts);
    lw_card_add(sheet, head, "How far to trust it");
    for (size_t i = 0; i < count; i++) {
        const lw_card_line line = {.scale = 1.0, .spare = SPARE_TRUST};
        lw_card_add(sheet, line, "%s", texts[i]);
    }
}

// Those with numbers are spared first: what holds stands on the first page.
static void add_cautions(const lw_carded *card, lw_card_sheet *sheet)
{
    lw_card_words texts[LW_CARD_CAUTIONS_MOST];
    const size_t count = lw_card_cautions(card, texts);
    lw_card_add(sheet, head, LW_CAUTIONS_HEAD);
    for (size_t i = 0; i < count; i++) {
        const lw_card_line line = {.scale = 1.0, .spare = (int)(count - i)};
        lw_card_add(sheet, line, "%s", texts[i]);
    }
}

void lw_carded_back(const lw_carded *card, lw_card_sheet *sheet)
{
    lw_card_words text;
    const char *boat = card->sides[0].picked.inputs.boat.name;
    *sheet = (lw_card_sheet){.paper = card->paper};
    LW_FIT(sheet->title, "%s: what the card rests on, and cautions", boat);
    lw_card_add(sheet, (lw_card_line){.scale = 1.25, .is_bold = true, .is_single = true}, "%s",
                boat);
    for (size_t i = 0; i < card->side_count; i++) {
        lw_card_who(&card->sides[i], text);
        lw_card_add(sheet, plain, "%s", text);
    }
    lw_card_scene(card, text);
    lw_card_add(sheet, plain, "%s", text);
    add_cautions(card, sheet);
    add_trust(card, sheet);
    lw_card_made(card, text);
    lw_card_add(sheet, (lw_card_line){.scale = 1.0, .is_ruled = true}, "%s", text);
    lw_card_add(sheet, (lw_card_line){.scale = 1.0, .tells_of_spare = true}, LW_CARD_SPARED);
}

void lw_carded_draw_back(const void *it, FILE *out)
{
    lw_card_sheet sheet;
    lw_carded_back(it, &sheet);
    lw_card_sheet_draw(out, &sheet);
}
