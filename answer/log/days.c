// days.c - all logged days told in a few words each, the newest first.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/log/words.h"
#include "answer/words/number_text.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, t->speed_unit)

static void tell_day(const lw_entry *entry, lw_teller *t)
{
    const lw_logged *day = &entry->day;
    char text[400], verdict[LW_NAME_LENGTH];
    const char *judged = lw_verdict_text(entry, verdict);
    const double swims = day->outing.swims;
    lw_tell_object(t, "", "");
    lw_tell_name(t, "id", entry->id);
    LW_FIT(text, "%s, pin %s%s%s", day->date, day->pin, judged ? ": " : "", judged ? judged : "");
    lw_tell_sentence(t, "title", text);
    LW_FIT(text, "Lull %s, mean %s, puff %s", SPEED(day->wind.lull), SPEED(day->wind.mean),
           SPEED(day->wind.puff));
    if (!isnan(swims))
        lw_text_add(text, sizeof text, ", %.0f swim%s", swims, swims == 1.0 ? "" : "s");
    lw_text_add(text, sizeof text, ". %s%s%s.", day->waters, day->waters[0] ? "; " : "",
                day->sailor);
    lw_tell_sentence(t, "line", text);
    lw_tell_end(t);
}

void lw_log_days_tell(const void *it, lw_teller *t)
{
    const lw_listed *listed = it;
    const lw_entries *days = listed->days;
    lw_log_says_count(listed, t);
    lw_tell_list(t, "days", "");
    for (size_t i = days->count; i-- > 0;) tell_day(&days->list[i], t);
    lw_tell_end(t);
}
