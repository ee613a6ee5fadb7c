// days.c - logged days at the desk.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // open_memstream

#include "desk/days.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "records/logbook/logbook.h"
#include "records/logbook/transfer.h"

bool lw_days_are_at(const char *target, const char **id)
{
    const size_t length = strlen(LW_DAYS_AT);
    *id = NULL;
    if (strncmp(target, LW_DAYS_AT, length) != 0) return false;
    if (target[length] == '\0') return true;
    *id = target + length + 1;
    if (target[length] == '/' && strcmp(*id, LW_DAYS_REMOVED) == 0) return true;
    return target[length] == '/' && strlen(*id) == LW_ID_LENGTH - 1 &&
           strspn(*id, "0123456789abcdef") == LW_ID_LENGTH - 1;
}

static lw_days_answer in_words(int status, const char *words)
{
    return (lw_days_answer){.status = status, .text = strdup(words)};
}

static lw_days_answer as_json(const lw_entries *days)
{
    lw_days_answer answer = {.status = 200, .is_json = true};
    size_t length;
    FILE *out = open_memstream(&answer.text, &length);
    const bool is_written = out && lw_days_write_json(days, out);
    if (out && fclose(out) == 0 && is_written) return answer;
    free(answer.text);
    return in_words(500, "there is not enough memory\n");
}

static lw_days_answer in_book(const lw_logbook *book)
{
    char words[sizeof book->why + 2];
    snprintf(words, sizeof words, "%s\n", book->why);
    return in_words(500, words);
}

// ["0123456789abcdef", ...]: ids are digits, which need no escape.
static lw_days_answer as_ids(const lw_entries *days)
{
    lw_days_answer answer = {.status = 200, .is_json = true};
    size_t length;
    FILE *out = open_memstream(&answer.text, &length);
    if (!out) return in_words(500, "there is not enough memory\n");
    fputc('[', out);
    for (size_t i = 0; i < days->count; i++)
        fprintf(out, "%s\"%s\"", i ? ", " : "", days->list[i].id);
    fputs("]\n", out);
    if (fclose(out) == 0) return answer;
    free(answer.text);
    return in_words(500, "there is not enough memory\n");
}

// A logbook that is not there yet has no days, and none was taken out of it.
static lw_days_answer read_days(const char *path, bool of_removed)
{
    lw_logbook book;
    lw_entries days = {0};
    if (access(path, F_OK) != 0) return of_removed ? as_ids(&days) : as_json(&days);
    if (!lw_logbook_open(&book, path, false)) return in_book(&book);
    const bool are_read =
        of_removed ? lw_logbook_removed(&book, &days) : lw_logbook_days(&book, true, &days);
    const lw_days_answer answer = !are_read    ? in_book(&book)
                                  : of_removed ? as_ids(&days)
                                               : as_json(&days);
    lw_entries_free(&days);
    lw_logbook_close(&book);
    return answer;
}

static lw_days_answer remove_day(const lw_days_asked *asked)
{
    lw_logbook book;
    const lw_entries none = {0};
    if (access(asked->path, F_OK) != 0) return as_json(&none);
    if (!lw_logbook_open(&book, asked->path, true)) return in_book(&book);
    const bool is_removed = lw_logbook_remove(&book, asked->id);
    const lw_days_answer answer = is_removed ? as_json(&none) : in_book(&book);
    lw_logbook_close(&book);
    return answer;
}

typedef enum keeping { KEPT, CHANGED_MEANWHILE, NOT_KEPT } keeping;

// known: as the page had it; NULL: it had none.
static keeping keep(lw_logbook *book, const lw_entries *there, const lw_entry *known,
                    const lw_entry *day)
{
    const lw_entry *own = lw_entries_find(there, day->id);
    if (own && lw_days_are_same(own, day)) return KEPT;
    if (known ? !own || !lw_days_are_same(own, known) : own != NULL) return CHANGED_MEANWHILE;
    return (own ? lw_logbook_replace(book, day) : lw_logbook_add(book, day)) ? KEPT : NOT_KEPT;
}

// All of them, or none.
static keeping keep_all(lw_logbook *book, const lw_entries *come)
{
    lw_entries there = {0};
    keeping kept = NOT_KEPT;
    if (!lw_logbook_begin(book)) return NOT_KEPT;
    if (lw_logbook_days(book, true, &there)) kept = KEPT;
    for (size_t i = 0; kept == KEPT && i < come->count; i++) {
        const lw_entry *first = &come->list[i];
        const bool is_twice = i + 1 < come->count && strcmp(first->id, first[1].id) == 0;
        i += is_twice;
        kept = keep(book, &there, is_twice ? first : NULL, &come->list[i]);
    }
    lw_entries_free(&there);
    return lw_logbook_end(book, kept == KEPT) || kept != KEPT ? kept : NOT_KEPT;
}

static lw_days_answer in_faults(const lw_faults *faults)
{
    lw_days_answer answer = {.status = 400};
    size_t length;
    FILE *out = open_memstream(&answer.text, &length);
    if (!out) return answer;
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        if (!fault->is_doubt)
            fprintf(out, "%s%s%s\n", fault->key, fault->key[0] ? ": " : "", fault->sentence);
    }
    if (fclose(out) != 0) free(answer.text), answer.text = NULL;
    return answer;
}

static lw_days_answer keep_days(const lw_days_asked *asked)
{
    lw_logbook book;
    lw_faults faults = {0};
    lw_entries come = {0};
    const lw_entries none = {0};
    const lw_source_text source = {"days", asked->body, asked->length};
    lw_days_answer answer;
    if (!lw_days_read(&source, asked->today, &come, &faults)) {
        answer = in_faults(&faults);
    } else if (!lw_logbook_open(&book, asked->path, true)) {
        answer = in_book(&book);
    } else {
        const keeping kept = keep_all(&book, &come);
        answer = kept == KEPT       ? as_json(&none)
                 : kept == NOT_KEPT ? in_book(&book)
                                    : in_words(409, "the day was changed meanwhile\n");
        lw_logbook_close(&book);
    }
    lw_entries_free(&come);
    lw_faults_free(&faults);
    return answer;
}

lw_days_answer lw_days_answered(const lw_days_asked *asked)
{
    if (asked->id && strcmp(asked->id, LW_DAYS_REMOVED) == 0) return read_days(asked->path, true);
    if (asked->id) return remove_day(asked);
    if (asked->length > LW_DAYS_MOST) return in_words(413, "These are too many days.\n");
    return asked->body ? keep_days(asked) : read_days(asked->path, false);
}
