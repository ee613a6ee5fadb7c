// work.c - an invented season worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "answer/asked.h"
#include "answer/invent/invent.h"
#include "answer/words/sections.h"
#include "lullwise/weather.h"

#define DAYS     40.0
#define SEED     1.0
#define FARTHEST 2.0  // errors that a hidden quantity may be off

static void hide(lw_inventing *inventing)
{
    lw_seed seed = lw_seed_of(inventing->seed, LW_SEED_DRAW);
    lw_table_preset(&lw_hidden_table, &inventing->truth);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        double off;
        do off = lw_seed_normal(&seed);
        while (fabs(off) > FARTHEST);
        lw_quantity_put(row, &inventing->truth,
                        (row->preset + off * row->error) * lw_unit_in_si(row->unit));
    }
}

bool lw_inventing_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal)
{
    lw_inventing *inventing = it;
    double days = DAYS, seed = SEED;
    if (options->operand_count != 1)
        return lw_refuse(refusal, "into which folder? lullwise invent FOLDER");
    if (!lw_asked_whole(options, "days", &days, refusal) ||
        !lw_asked_whole(options, "seed", &seed, refusal))
        return false;
    inventing->inputs = inputs;
    inventing->folder = options->operands[0];
    inventing->may_replace = lw_options_has(options, "force");
    inventing->seed = (uint64_t)seed;
    inventing->count = (size_t)days;
    inventing->sections = lw_sections_of(&inputs->boat);
    inventing->days = calloc(inventing->count, sizeof *inventing->days);
    hide(inventing);
    return inventing->days || lw_refuse(refusal, "there is not enough memory");
}

size_t lw_inventing_steps(void *it) { return ((const lw_inventing *)it)->count; }

void lw_inventing_step(void *it, size_t step)
{
    lw_inventing *inventing = it;
    lw_invented_sail(inventing, step, &inventing->days[step]);
}

bool lw_inventing_are_apart(const void *it)
{
    (void)it;
    return true;
}

void lw_inventing_end(void *it)
{
    lw_inventing *inventing = it;
    size_t sailed = 0;
    inventing->why = "stopped before all days were sailed; nothing was written";
    while (sailed < inventing->count && inventing->days[sailed].is_sailed) sailed++;
    inventing->is_written = sailed == inventing->count && lw_invented_write(inventing);
}

bool lw_inventing_is_answered(const void *it) { return ((const lw_inventing *)it)->is_written; }

void lw_inventing_release(void *it)
{
    lw_inventing *inventing = it;
    for (size_t i = 0; inventing->days && i < inventing->count; i++)
        lw_entry_free(&inventing->days[i].entry);
    free(inventing->days);
}
