// sought.c - a quantity of hardware that is sought within bounds.
// SPDX-License-Identifier: MIT

#include "sweep/sought.h"

#include <math.h>
#include <string.h>

#include "records/record_value.h"

// The row of a boat's number, and where its struct is; NULL: there is none.
static const lw_quantity *row_of(const char *key, const lw_boat *boat, const void **data)
{
    char head[LW_OVER_KEY];
    if (strncmp(key, "boat.", 5) == 0) key += 5;
    const size_t length = strcspn(key, ".");
    lw_text_fit(head, sizeof head, "%.*s", (int)length, key);
    const lw_section *section = lw_record_section(&lw_boat_record, head);
    if (!section || section->kind != LW_SECTION_PLAIN || !key[length]) return NULL;
    *data = (const char *)boat + section->offset;
    return lw_table_find(section->table, key + length + 1);
}

// Moves the grid so that the boat's own value is on it. False: that is out of the bounds.
static bool take_own(lw_sought *sought, double own)
{
    lw_over *over = &sought->over;
    const double last = over->from + (double)(over->count - 1) * over->step, grain = 1e-9;
    const double along = (own - over->from) / over->step;
    if (along < -grain || own > last + over->step * (1.0 - grain)) return false;
    sought->own = (size_t)floor(along + grain);
    const double to = fmax(last, own);
    over->from = own - (double)sought->own * over->step;
    over->count = (size_t)floor((to - over->from) / over->step + grain) + 1;
    return true;
}

static lw_status status_of(const char *text, lw_unit wanted)
{
    const lw_unit unit = lw_unit_of(text);
    if (unit == LW_UNIT_NONE && wanted != LW_UNIT_NONE) return LW_UNIT_MISSING;
    const bool is_sound = unit != LW_UNIT_COUNT && lw_unit_same_dimension(unit, wanted);
    return is_sound ? LW_OK : LW_BAD_UNIT;
}

bool lw_sought_read(lw_sought *sought, const char *text, const lw_boat *boat, lw_refusal *refusal)
{
    const void *data;
    lw_over *over = &sought->over;
    if (!lw_over_read(over, "best", text, refusal)) return false;
    sought->row = row_of(over->key, boat, &data);
    if (!sought->row)
        return lw_refuse(refusal,
                         "--best %s: it seeks numbers of the boat, as in main_foil.span or "
                         "linkage.wand_length; `lullwise quantities` lists them",
                         over->key);
    if (over->list || over->record || over->step < 0.0)
        return lw_refuse(refusal, "--best %s: give bounds and the finest step, from:to:step",
                         over->key);
    const lw_status status = status_of(over->unit, sought->row->unit);
    if (status != LW_OK)
        return lw_refuse(refusal, "--best %s: %s; it is told in %s", over->key,
                         lw_status_text(status), lw_unit_text(sought->row->unit));
    const double own = lw_quantity_value(sought->row, data) / lw_unit_in_si(lw_unit_of(over->unit));
    if (take_own(sought, own)) return true;
    return lw_refuse(refusal, "--best %s: hers is %.6g%s%s; give bounds that hold it", over->key,
                     own, over->unit[0] ? " " : "", over->unit);
}

size_t lw_sought_candidates(const lw_sought *sought, size_t count)
{
    size_t all = 1;
    for (size_t i = 0; i < count; i++) all *= sought[i].over.count;
    return all;
}

size_t lw_sought_at(const lw_sought *sought, size_t count, size_t candidate, size_t which)
{
    for (size_t i = count; --i > which;) candidate /= sought[i].over.count;
    return candidate % sought[which].over.count;
}

size_t lw_sought_candidate(const lw_sought *sought, size_t count, const size_t at[LW_SOUGHT_MOST])
{
    size_t candidate = 0;
    for (size_t i = 0; i < count; i++) candidate = candidate * sought[i].over.count + at[i];
    return candidate;
}

void lw_sought_text(const lw_sought *sought, size_t i, char text[LW_OVER_TEXT])
{
    lw_over_value(&sought->over, i, text);
    lw_text_add(text, LW_OVER_TEXT, "%s%s", sought->over.unit[0] ? " " : "", sought->over.unit);
}
