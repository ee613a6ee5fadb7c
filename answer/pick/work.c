// work.c - the answer of `lullwise pick` worked out.
// SPDX-License-Identifier: MIT

#include "answer/compare/compare.h"
#include "answer/pick/pick.h"
#include "answer/words/sections.h"

static bool change(lw_inputs *inputs, const lw_options *options, lw_faults *faults)
{
    bool is_sound = true;
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(options, "against", n)); n++) {
        if (!lw_inputs_set(inputs, "--against", text, faults)) is_sound = false;
    }
    return is_sound;
}

static void begin(lw_picked *picked, lw_outlook *outlook, lw_unit speed_unit)
{
    const lw_inputs *inputs = &picked->inputs;
    picked->outlook = outlook;
    picked->speed_unit = speed_unit;
    lw_outlook_begin(outlook, &inputs->boat, lw_sections_of(&inputs->boat), &inputs->sailor.person,
                     &inputs->day);
}

bool lw_pick_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal)
{
    lw_pick *pick = it;
    pick->options = options;
    pick->is_against = lw_options_has(options, "against");
    pick->as_is.inputs = pick->changed.inputs = *inputs;
    if (!change(&pick->changed.inputs, options, &refusal->faults)) return false;
    begin(&pick->as_is, &pick->outlook, options->speed_unit);
    if (pick->is_against) begin(&pick->changed, &pick->other, options->speed_unit);
    lw_pick_steps(pick);  // some can be done at once
    return true;
}

// Of two outlooks the steps of one are the even ones, those of the other the odd ones: their
// numbers stand whichever has more.
size_t lw_pick_steps(void *it)
{
    lw_pick *pick = it;
    const size_t one = pick->counts[0] = lw_outlook_steps(&pick->outlook);
    if (!pick->is_against) return one;
    const size_t two = pick->counts[1] = lw_outlook_steps(&pick->other);
    return 2 * (one > two ? one : two);
}

static bool is_of_other(const lw_pick *pick, size_t step) { return pick->is_against && step % 2; }

static size_t number_of(const lw_pick *pick, size_t step)
{
    return pick->is_against ? step / 2 : step;
}

static bool is_there(const lw_pick *pick, size_t step)
{
    return number_of(pick, step) < pick->counts[is_of_other(pick, step)];
}

void lw_pick_step(void *it, size_t step)
{
    lw_pick *pick = it;
    if (!is_there(pick, step)) return;
    lw_outlook_step(is_of_other(pick, step) ? &pick->other : &pick->outlook, number_of(pick, step));
}

void lw_pick_give(const void *it, size_t step, void *part)
{
    const lw_pick *pick = it;
    if (!is_there(pick, step)) return;
    lw_outlook_give(is_of_other(pick, step) ? &pick->other : &pick->outlook, number_of(pick, step),
                    part);
}

// How many there are is looked at again, for it may be the last of a round.
void lw_pick_take(void *it, size_t step, const void *part)
{
    lw_pick *pick = it;
    if (!is_there(pick, step)) return;
    lw_outlook_take(is_of_other(pick, step) ? &pick->other : &pick->outlook, number_of(pick, step),
                    part);
    lw_pick_steps(pick);
}

void lw_pick_end(void *it)
{
    lw_pick *pick = it;
    lw_outlook_end(&pick->outlook);
    lw_picked_rank(&pick->as_is);
    if (!pick->is_against) return;
    lw_outlook_end(&pick->other);
    lw_picked_rank(&pick->changed);
}

bool lw_pick_is_answered(const void *it)
{
    return lw_picked_flies(&((const lw_pick *)it)->as_is.now);
}

// The changes as they were written.
static void tell_changes(const lw_pick *pick, lw_teller *t)
{
    const char *text;
    char tame[300];
    lw_tell_list(t, "changes", "Changed");
    for (size_t n = 0; (text = lw_options_nth(pick->options, "against", n)); n++) {
        lw_text_tame(tame, sizeof tame, text);
        lw_tell_text(t, NULL, tame);
    }
    lw_tell_end(t);
}

void lw_pick_tell(const void *it, lw_teller *t)
{
    const lw_pick *pick = it;
    if (!pick->is_against) {
        lw_tell_picked(t, &pick->as_is);
        return;
    }
    lw_tell_picked_head(t, &pick->as_is);
    tell_changes(pick, t);
    lw_tell_compared(t, lw_side_of(&pick->as_is, NULL), lw_side_of(&pick->changed, NULL));
    lw_tell_object(t, "as_is", NULL);
    lw_tell_picked(t, &pick->as_is);
    lw_tell_end(t);
    lw_tell_object(t, "changed", NULL);
    lw_tell_picked(t, &pick->changed);
    lw_tell_end(t);
}
