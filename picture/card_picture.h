// card_picture.h - a page of a card as SVG of its paper's size, its text as text.
// SPDX-License-Identifier: MIT

#ifndef LW_CARD_PICTURE_H
#define LW_CARD_PICTURE_H

#include <stdio.h>

#include "picture/card_page.h"

// Black on white; `title` for those who cannot see it.
void lw_card_draw(FILE *out, const lw_card_page *page, const char *title);

// A sheet set and drawn.
void lw_card_sheet_draw(FILE *out, const lw_card_sheet *sheet);

#endif
