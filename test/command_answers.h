// command_answers.h - runs a command on the demo files and reads what it answers.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_COMMAND_ANSWERS_H
#define LW_TEST_COMMAND_ANSWERS_H

#include <jansson.h>

#include "test/check.h"
#include "test/program.h"

#define DEMO                                                                                    \
    " --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR "/light.yaml --day " LW_DEMO_DIR \
    "/breeze.yaml "

// A day on which nothing flies.
#define CALM "--set wind.lull='3 kn' --set wind.mean='4 kn' --set wind.puff='5 kn' "

// One that no pin of the demo boat holds.
#define GALE "--set wind.lull='18 kn' --set wind.mean='24 kn' --set wind.puff='32 kn' "

// The answer in JSON of `lullwise WORDS --json`; the caller drops it. A test ends when it is none.
static inline json_t *json_answer(const char *words)
{
    char line[1500];
    snprintf(line, sizeof line, "%s --json 2>/dev/null | cat", words);
    CHECK(lullwise(line) == 0);
    json_t *json = json_loads(answer, 0, NULL);
    CHECK(json != NULL);
    return json;
}

static inline double json_number(const json_t *json, const char *object, const char *key)
{
    const json_t *value = json_object_get(json_object_get(json, object), key);
    CHECK(json_is_number(value));
    return json_number_value(value);
}

static inline const char *json_text(const json_t *json, const char *key)
{
    const json_t *value = json_object_get(json, key);
    return json_is_string(value) ? json_string_value(value) : "";
}

// The rows of a table of an answer, or of a part of one.
static inline const json_t *json_rows(const json_t *json, const char *key)
{
    return json_object_get(json_object_get(json, key), "rows");
}

// Characters of the last answer's longest line; continuation bytes of UTF-8 do not count.
static inline size_t widest_line(void)
{
    size_t widest = 0, wide = 0;
    for (const char *at = answer; *at; at++) {
        if (((unsigned char)*at & 0xC0) != 0x80) wide++;
        if (*at == '\n') wide = 0;
        if (wide > widest) widest = wide;
    }
    return widest;
}

// Each of these runs answers, in lines that fit a terminal, and every number is one.
static inline void texts_fit(const char *const *runs, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        CHECK(lullwise(runs[i]) == 0);
        CHECK(widest_line() <= 80);
        CHECK(!answer_has("nan") && !answer_has("inf "));
    }
}

#endif
