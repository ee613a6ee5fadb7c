// track_sent.c - what a page sends with a track: options as on a command line, and files.
// SPDX-License-Identifier: MIT

#include "desk/track_sent.h"

#include <ctype.h>
#include <event2/http.h>
#include <stdlib.h>
#include <string.h>

#include "answer/learned.h"
#include "records/record_file.h"

static const char *const file_words[LW_SENT_FILES] = {"boat", "sailor", "day", "learned"};

// --- the query

// The next bytes of the body, as many as a word of the query says; the rest of the word names them.
static bool take_file(lw_source_text *file, const char *word, lw_source_text *left)
{
    char *name;
    const unsigned long long length = strtoull(word, &name, 10);
    if (!isdigit((unsigned char)word[0]) || length > left->length) return false;
    *file = (lw_source_text){name + (*name == ' '), left->text, (size_t)length};
    left->text += length, left->length -= (size_t)length;
    return true;
}

static bool take_track(lw_track_sent *sent, const char *word, lw_source_text *left)
{
    lw_options *options = &sent->options;
    const size_t i = options->operand_count;
    if (i == LW_DAY_TRACKS_MOST || !take_file(&sent->tracks[i], word, left)) return false;
    options->operands[options->operand_count++] = sent->tracks[i].name;
    return sent->tracks[i].name[0];
}

static bool take_option(lw_options *options, const char *key, const char *text)
{
    const lw_option *option = lw_option_named(key);
    if (!option || options->count == LW_GIVEN_MOST) return false;
    options->given[options->count] = option;
    options->texts[options->count++] = text;
    return true;
}

static bool take_unit(lw_options *options, const char *name)
{
    options->speed_unit = lw_unit_of(name);
    return options->speed_unit < LW_UNIT_COUNT &&
           lw_unit_same_dimension(options->speed_unit, LW_UNIT_KN);
}

static bool take_word(lw_track_sent *sent, const struct evkeyval *word, lw_source_text *left)
{
    if (strcmp(word->key, "unit") == 0) return take_unit(&sent->options, word->value);
    if (strcmp(word->key, "track") == 0) return take_track(sent, word->value, left);
    for (size_t i = 0; i < LW_SENT_FILES; i++) {
        const bool is_it = strcmp(word->key, file_words[i]) == 0;
        if (is_it && !take_file(&sent->files[i], word->value, left)) return false;
        if (is_it) sent->files[i].name = file_words[i];
    }
    return take_option(&sent->options, word->key, word->value);
}

bool lw_track_sent_take(lw_track_sent *sent, const lw_track_asked *asked)
{
    lw_source_text left = {.text = asked->body, .length = asked->length};
    *sent = (lw_track_sent){
        .options = {.command = "track", .speed_unit = LW_UNIT_KN, .today = asked->today}};
    TAILQ_INIT(&sent->words);
    if (evhttp_parse_query_str(asked->query, &sent->words) != 0) return false;
    for (const struct evkeyval *word = sent->words.tqh_first; word; word = word->next.tqe_next)
        if (!take_word(sent, word, &left)) return false;
    return sent->options.operand_count > 0 && left.length == 0;
}

void lw_track_sent_release(lw_track_sent *sent) { evhttp_clear_headers(&sent->words); }

// --- the files

static bool put_learned(const lw_source_text *file, lw_inputs *inputs, lw_faults *faults)
{
    lw_learned_boat learned;
    if (!file->text) return true;
    if (!lw_record_read_text(&lw_learned_record, file, &learned, faults)) return false;
    if (lw_learned_is_of(&learned, &inputs->boat)) lw_hidden_put(&learned.values, inputs);
    return true;
}

bool lw_track_sent_inputs(const lw_track_sent *sent, lw_inputs *inputs, lw_refusal *refusal)
{
    void *const data[] = {&inputs->boat, &inputs->sailor, &inputs->day_as_given};
    const char *why = "boat, sailor and day go together";
    if (!sent->files[LW_SENT_BOAT].text) return true;
    for (int i = LW_SENT_BOAT; i <= LW_SENT_DAY; i++) {
        const lw_source_text *file = &sent->files[i];
        if (!file->text) return lw_refuse(refusal, "%s", why);
        if (!lw_record_read_text(lw_records[i], file, data[i], &refusal->faults)) return false;
    }
    inputs->day = inputs->day_as_given;
    if (!lw_day_settle(&inputs->day, &why)) return lw_refuse(refusal, "%s", why);
    return put_learned(&sent->files[LW_SENT_LEARNED], inputs, &refusal->faults);
}
