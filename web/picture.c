// picture.c - pictures of the boat for the page, as SVG.
// SPDX-License-Identifier: MIT

#include "picture/boat_picture.h"

#include "answer/parcel.h"
#include "answer/words/sections.h"
#include "web/page.h"

LW_EXPORT(lw_web_pictures) void lw_web_pictures(int slot)
{
    const lw_inputs *inputs = &lw_web_slots[slot].inputs;
    const lw_medium medium = lw_medium_of(&inputs->day);
    const char *const keys[] = {"side", "foils", "drag"};
    lw_parcel_begin();
    for (int i = 0; i < 3; i++) {
        FILE *out = lw_web_drawing();
        if (i == 0) lw_boat_draw_side(out, &inputs->boat);
        if (i == 1) lw_boat_draw_foils(out, &inputs->boat);
        if (i == 2) {
            lw_boat_draw_drag(out, &inputs->boat, lw_sections_of(&inputs->boat),
                              &inputs->sailor.person, &medium);
        }
        lw_web_put_drawing(keys[i], out);
    }
}
