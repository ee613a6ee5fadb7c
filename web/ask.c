// ask.c - any question of answer/ asked by the page, as on a command line.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>
#include <string.h>

#include "answer/question.h"
#include "web/page.h"
#include "web/parcel.h"

static struct {
    const lw_question *question;
    void *it;
    lw_unit speed_unit;
    lw_options options;
    char *words;  // that the options point into
} asked;

static void forget(void)
{
    if (asked.it && asked.question->release) asked.question->release(asked.it);
    free(asked.it);
    asked.it = NULL;
}

// What is asked: the name, then options and their texts. False when it cannot be.
static bool read_words(size_t length)
{
    forget();
    free(asked.words);
    asked.words = malloc(length + 1);
    if (!asked.words) abort();
    memcpy(asked.words, lw_web_room(length), length);
    asked.words[length] = '\0';
    asked.question = lw_question_named(asked.words);
    asked.options = (lw_options){.command = asked.words};
    const char *const end = asked.words + length;
    for (const char *at = asked.words + strlen(asked.words) + 1; at < end;) {
        const char *name = at, *text = at + strlen(at) + 1;
        if (text >= end || asked.options.count == LW_GIVEN_MOST) return false;
        const lw_option *option = lw_option_named(name);
        if (!option) return false;
        asked.options.given[asked.options.count] = option;
        asked.options.texts[asked.options.count++] = text;
        at = text + strlen(text) + 1;
    }
    return asked.question != NULL;
}

static bool begin(const lw_web_slot *slot, lw_refusal *refusal)
{
    asked.it = calloc(1, asked.question->size);
    if (!asked.it) abort();
    asked.options.speed_unit = asked.speed_unit = slot->picked.speed_unit;
    return asked.question->begin(asked.it, &slot->picked.inputs, &asked.options, refusal);
}

LW_EXPORT(lw_web_ask) int lw_web_ask(int slot, size_t length)
{
    lw_refusal refusal = {0};
    const lw_web_slot *of = &lw_web_slots[slot];
    const bool is_taken = read_words(length) && of->is_settled && begin(of, &refusal);
    lw_parcel_begin();
    lw_parcel_truth("is_taken", is_taken);
    lw_parcel_text("refusal", refusal.text);
    lw_parcel_faults(&refusal.faults);
    lw_faults_free(&refusal.faults);
    return is_taken;
}

LW_EXPORT(lw_web_ask_steps) int lw_web_ask_steps(void)
{
    return asked.question->steps ? (int)asked.question->steps(asked.it) : 0;
}

LW_EXPORT(lw_web_ask_part) size_t lw_web_ask_part(void) { return asked.question->part; }

LW_EXPORT(lw_web_ask_step) void lw_web_ask_step(int step)
{
    const size_t part = asked.question->part;
    asked.question->step(asked.it, (size_t)step);
    if (!part) return;
    char *to = lw_web_room(part);
    memset(to, 0, part);
    asked.question->give(asked.it, (size_t)step, to);
}

LW_EXPORT(lw_web_ask_take) void lw_web_ask_take(int step)
{
    asked.question->take(asked.it, (size_t)step, lw_web_room(asked.question->part));
}

LW_EXPORT(lw_web_ask_tell) void lw_web_ask_tell(void)
{
    if (asked.question->end) asked.question->end(asked.it);
    lw_parcel_begin();
    lw_teller teller = lw_parcel_teller(asked.speed_unit);
    asked.question->tell(asked.it, &teller);
    lw_teller_finish(&teller);
}

LW_EXPORT(lw_web_ask_draw) void lw_web_ask_draw(void)
{
    char *text = NULL;
    size_t length;
    lw_parcel_begin();
    FILE *out = asked.question->draw ? open_memstream(&text, &length) : NULL;
    if (!out) return;
    asked.question->draw(asked.it, out);
    fclose(out);
    lw_parcel_text("svg", text);
    free(text);
}
