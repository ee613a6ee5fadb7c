// tell.c - an invented season, told.
// SPDX-License-Identifier: MIT

#include "answer/invent/invent.h"
#include "records/source_text.h"

void lw_inventing_tell(const void *it, lw_teller *teller)
{
    const lw_inventing *inventing = it;
    static const lw_item count = {"count", NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL};
    char text[800], folder[300];
    lw_text_tame(folder, sizeof folder, inventing->folder);
    if (inventing->is_written)
        LW_FIT(text,
               "%zu invented days of %s are in %s: days.csv for `lullwise log import`, a track of "
               "each for `lullwise track`, and truth.yaml with what was hidden in the boat. Nobody "
               "sailed them.",
               inventing->count, inventing->inputs->boat.name, folder);
    else
        LW_FIT(text, "%s: %s.", folder, inventing->why);
    lw_tell_sentence(teller, "says", text);
    lw_tell_flag(teller, "is_written", inventing->is_written);
    lw_tell_name(teller, "folder", folder);
    lw_tell_number(teller, &count, (double)inventing->count);
    lw_tell_rows(teller, "hidden", &lw_hidden_table, &inventing->truth);
}
