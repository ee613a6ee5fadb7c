// ask.c - any question of answer/ asked by the page, as on a command line.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "answer/parcel.h"
#include "web/page.h"

typedef struct asked {
    const lw_question *question;
    void *it;  // NULL: not taken
    lw_options options;
    char *words;  // that the options point into
} asked;

static asked latest[LW_WEB_SLOTS];

static void forget(asked *a)
{
    if (a->it && a->question->release) a->question->release(a->it);
    free(a->it);
    free(a->words);
    *a = (asked){0};
}

bool lw_web_options(lw_options *options, const char *at, const char *end)
{
    while (at < end) {
        const char *text = at + strlen(at) + 1;
        const lw_option *option = lw_option_named(at);
        if (!option || text >= end || options->count == LW_GIVEN_MOST) return false;
        options->given[options->count] = option;
        options->texts[options->count++] = text;
        at = text + strlen(text) + 1;
    }
    return true;
}

// What is asked: the name, then the options. False when it cannot be.
static bool read_words(asked *a, size_t length)
{
    a->words = malloc(length + 1);
    if (!a->words) abort();
    memcpy(a->words, lw_web_room(length), length);
    a->words[length] = '\0';
    a->question = lw_question_named(a->words);
    a->options = (lw_options){.command = a->words};
    const char *options = a->words + strlen(a->words) + 1;
    return a->question && lw_web_options(&a->options, options, a->words + length);
}

static bool begin(asked *a, const lw_web_slot *slot, lw_refusal *refusal)
{
    if (!slot->is_settled || slot->inputs.boat.pin_count == 0) return false;
    a->it = calloc(1, a->question->size);
    if (!a->it) abort();
    a->options.speed_unit = slot->speed_unit;
    return a->question->begin(a->it, &slot->inputs, &a->options, refusal);
}

LW_EXPORT(lw_web_ask) int lw_web_ask(int slot, size_t length)
{
    lw_refusal refusal = {0};
    asked *a = &latest[slot];
    forget(a);
    const bool is_taken = read_words(a, length) && begin(a, &lw_web_slots[slot], &refusal);
    lw_parcel_begin();
    lw_parcel_truth("is_taken", is_taken);
    lw_parcel_text("refusal", refusal.text);
    lw_parcel_faults(&refusal.faults);
    lw_faults_free(&refusal.faults);
    return is_taken;
}

const void *lw_web_asked(int slot, const lw_question *question)
{
    return latest[slot].question == question ? latest[slot].it : NULL;
}

LW_EXPORT(lw_web_ask_steps) int lw_web_ask_steps(int slot)
{
    const asked *a = &latest[slot];
    return a->question->steps ? (int)a->question->steps(a->it) : 0;
}

LW_EXPORT(lw_web_ask_part) size_t lw_web_ask_part(int slot) { return latest[slot].question->part; }

LW_EXPORT(lw_web_ask_step) void lw_web_ask_step(int slot, int step)
{
    const asked *a = &latest[slot];
    const size_t part = a->question->part;
    a->question->step(a->it, (size_t)step);
    if (!part) return;
    char *to = lw_web_room(part);
    memset(to, 0, part);
    a->question->give(a->it, (size_t)step, to);
}

LW_EXPORT(lw_web_ask_take) void lw_web_ask_take(int slot, int step)
{
    const asked *a = &latest[slot];
    a->question->take(a->it, (size_t)step, lw_web_room(a->question->part));
}

LW_EXPORT(lw_web_ask_tell) void lw_web_ask_tell(int slot)
{
    const asked *a = &latest[slot];
    if (a->question->end) a->question->end(a->it);
    lw_parcel_begin();
    lw_teller teller = lw_parcel_teller(a->options.speed_unit);
    a->question->tell(a->it, &teller);
    lw_teller_finish(&teller);
}

static void put_drawn(const char *key, lw_writer *write, const void *it)
{
    if (!write) return;
    FILE *out = lw_web_drawing();
    write(it, out);
    lw_web_put_drawing(key, out);
}

LW_EXPORT(lw_web_ask_draw) void lw_web_ask_draw(int slot)
{
    const asked *a = &latest[slot];
    lw_parcel_begin();
    put_drawn("svg", a->question->draw, a->it);
    put_drawn("back", a->question->draw_back, a->it);
}
