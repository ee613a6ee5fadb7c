// wind.c - how the wind of the day came about, for the form that asks for it.
// SPDX-License-Identifier: MIT

#include "answer/parcel.h"
#include "answer/words/wind_text.h"
#include "web/page.h"

LW_EXPORT(lw_web_wind) void lw_web_wind(int slot)
{
    const lw_web_slot *now = &lw_web_slots[slot];
    char text[LW_WIND_ORIGIN] = "";
    if (now->is_settled) lw_wind_origin(&now->inputs.day, now->speed_unit, text);
    lw_parcel_begin();
    lw_parcel_number("lull", now->inputs.day.wind.lull);
    lw_parcel_number("mean", now->inputs.day.wind.mean);
    lw_parcel_number("puff", now->inputs.day.wind.puff);
    lw_parcel_text("origin", text);
}
