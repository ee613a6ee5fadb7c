// sections.c - the sections of a slot's boat row by row, each by any worker, and taken by every
// one.
// SPDX-License-Identifier: MIT

#include "answer/words/sections.h"

#include <string.h>

#include "answer/parcel.h"
#include "records/fault.h"
#include "web/page.h"

static lw_polar_shape shape_of(int slot, int name)
{
    return lw_sections_shape(&lw_web_slots[slot].inputs.boat, (lw_section_name)name);
}

LW_EXPORT(lw_web_sections) void lw_web_sections(int slot)
{
    lw_parcel_begin();
    lw_parcel_number("size", (double)sizeof(lw_polar));
    lw_parcel_list("sections");
    for (int name = 0; name < LW_SECTION_COUNT; name++) {
        const lw_polar_shape shape = shape_of(slot, name);
        char key[256];
        lw_text_fit(key, sizeof key, "%s %a %a %a %a %a %a",
                    shape.designation ? shape.designation : "", shape.thickness,
                    shape.zero_lift_angle, shape.flap_chord, shape.flap_up, shape.flap_down,
                    shape.smooth);
        lw_parcel_object("");
        lw_parcel_text("key", key);
        lw_parcel_number("rows", (double)lw_polar_row_count(&shape));
        lw_parcel_end();
    }
    lw_parcel_end();
}

LW_EXPORT(lw_web_row_size) size_t lw_web_row_size(void) { return sizeof(lw_polar_row); }
LW_EXPORT(lw_web_polar_size) size_t lw_web_polar_size(void) { return sizeof(lw_polar); }

LW_EXPORT(lw_web_row) void lw_web_row(int slot, int name, int number)
{
    static lw_polar_room room;
    const lw_polar_shape shape = shape_of(slot, name);
    lw_polar_row *row = (lw_polar_row *)lw_web_room(sizeof *row);
    lw_polar_row_prepare(row, &shape, (size_t)number, &room);
}

LW_EXPORT(lw_web_polar) void lw_web_polar(int slot, int name)
{
    const lw_polar_shape shape = shape_of(slot, name);
    const size_t size = lw_polar_row_count(&shape) * sizeof(lw_polar_row);
    lw_polar_rows rows = {0};
    memcpy(&rows, lw_web_room(size), size);
    lw_polar_of_rows((lw_polar *)lw_web_room(sizeof(lw_polar)), &shape, &rows);
}

LW_EXPORT(lw_web_sections_take) void lw_web_sections_take(int slot)
{
    lw_sections sections;
    const lw_polar *from = (const lw_polar *)lw_web_room(LW_SECTION_COUNT * sizeof *from);
    for (int name = 0; name < LW_SECTION_COUNT; name++) {
        *lw_sections_polar(&sections, (lw_section_name)name) = from[name];
    }
    lw_sections_take(&lw_web_slots[slot].inputs.boat, &sections);
}
