// yaml_alike.c - what not every release of libyaml reads alike is refused before any of them reads
// it.
// SPDX-License-Identifier: MIT
//
// Looks at the tokens in their order. Up to the first that is read otherwise by another release all
// scanners agree; one may break off there while another goes on, so that a scanner's complaint is
// looked at like a token, and behind the tokens that wait in its queue.

#include "records/yaml_alike.h"

#include <string.h>

static const char escape_sentence[] = "in a text in quotes, this behind \\ means nothing";
static const char bracket_sentence[] = "in brackets, put a text with : or ? in quotes";
static const char directive_sentence[] = "a directive (%): a record needs none";
static const char deep_sentence[] = "too many lists and sections inside one another";
static const char tag_sentence[] = "a tag (!): values are texts, and need none";

#define BRACKETS_MOST 20  // a scanner's time grows with the square of their depth

typedef struct scan {
    yaml_parser_t parser;
    const char *text, *end;
    const char *at;  // the byte of a mark's character, counted on from the last
    size_t index;    // of that character
    size_t brackets;
} scan;

static const char *byte_at(scan *s, size_t index)
{
    if (index < s->index) s->at = s->text, s->index = 0;
    for (; s->index < index && s->at < s->end; s->index++) {
        do s->at++;
        while (s->at < s->end && ((unsigned char)*s->at & 0xC0) == 0x80);
    }
    return s->at;
}

// An escape that only some releases know, from one mark to another.
static bool has_escape(scan *s, yaml_mark_t from, yaml_mark_t to)
{
    const char *at = byte_at(s, from.index), *end = byte_at(s, to.index);
    for (; at < end; at++) {
        if (*at != '\\') continue;
        at++;
        if (at < s->end && (*at == '/' || *at == '\'')) return true;
    }
    return false;
}

// A blank or a break of lines as YAML 1.1 has them: how many bytes, 0 for anything else.
static size_t gap_at(const char *at, const char *end)
{
    static const char *const gaps[] = {" ",        "\t",           "\r",          "\n",
                                       "\xC2\x85", "\xE2\x80\xA8", "\xE2\x80\xA9"};
    for (size_t i = 0; i < sizeof gaps / sizeof gaps[0]; i++) {
        const size_t length = strlen(gaps[i]);
        if ((size_t)(end - at) >= length && memcmp(at, gaps[i], length) == 0) return length;
    }
    return 0;
}

// In brackets: a plain text with : or ? in it, or cut short by a ?.
static bool has_sign(scan *s, yaml_mark_t from, yaml_mark_t to)
{
    const char *at = byte_at(s, from.index), *end = byte_at(s, to.index);
    for (; at < end; at++) {
        if (*at == ':' || *at == '?') return true;
    }
    for (size_t gap; (gap = gap_at(end, s->end)) > 0;) end += gap;
    return end < s->end && *end == '?';
}

static const char *unlike_token(scan *s, const yaml_token_t *token)
{
    switch (token->type) {
        case YAML_VERSION_DIRECTIVE_TOKEN:
        case YAML_TAG_DIRECTIVE_TOKEN:
            return directive_sentence;
        case YAML_TAG_TOKEN:
            return tag_sentence;
        case YAML_FLOW_SEQUENCE_START_TOKEN:
        case YAML_FLOW_MAPPING_START_TOKEN:
            return ++s->brackets > BRACKETS_MOST ? deep_sentence : NULL;
        case YAML_FLOW_SEQUENCE_END_TOKEN:
        case YAML_FLOW_MAPPING_END_TOKEN:
            if (s->brackets > 0) s->brackets--;
            return NULL;
        case YAML_SCALAR_TOKEN:
            if (token->data.scalar.style == YAML_DOUBLE_QUOTED_SCALAR_STYLE &&
                has_escape(s, token->start_mark, token->end_mark))
                return escape_sentence;
            if (token->data.scalar.style == YAML_PLAIN_SCALAR_STYLE && s->brackets > 0 &&
                has_sign(s, token->start_mark, token->end_mark))
                return bracket_sentence;
            return NULL;
        default:
            return NULL;
    }
}

// What the scanner complains of may be what another release reads.
static const char *unlike_complaint(scan *s)
{
    const yaml_parser_t *p = &s->parser;
    const char *where = p->context ? p->context : "";
    yaml_mark_t from = p->context_mark, to = p->problem_mark;
    to.index++;  // with what it breaks off at
    if (strstr(where, "directive")) return directive_sentence;
    if (strstr(where, "tag")) return tag_sentence;
    if (strstr(where, "plain scalar") && p->flow_level > 0 && has_sign(s, from, to))
        return bracket_sentence;
    if (strstr(where, "quoted scalar") && *byte_at(s, from.index) == '"' && has_escape(s, from, to))
        return escape_sentence;
    return NULL;
}

static bool is_found(lw_yaml_unlike *found, const char *sentence, yaml_mark_t mark)
{
    if (sentence) *found = (lw_yaml_unlike){sentence, mark};
    return sentence != NULL;
}

// The scanner has broken off: first what waits in its queue, then its complaint.
static bool is_unlike_end(scan *s, lw_yaml_unlike *found)
{
    for (const yaml_token_t *token = s->parser.tokens.head; token < s->parser.tokens.tail;
         token++) {
        if (is_found(found, unlike_token(s, token), token->start_mark)) return true;
    }
    return is_found(found, unlike_complaint(s), s->parser.context_mark);
}

static bool has_unlike(scan *s, lw_yaml_unlike *found)
{
    for (bool is_over = false; !is_over;) {
        yaml_token_t token;
        if (!yaml_parser_scan(&s->parser, &token)) return is_unlike_end(s, found);
        const bool is_it = is_found(found, unlike_token(s, &token), token.start_mark);
        is_over = token.type == YAML_STREAM_END_TOKEN || token.type == YAML_NO_TOKEN;
        yaml_token_delete(&token);
        if (is_it) return true;
    }
    return false;
}

bool lw_yaml_has_unlike(const char *text, size_t length, lw_yaml_unlike *found)
{
    scan s = {.text = text, .end = text + length, .at = text};
    if (!yaml_parser_initialize(&s.parser)) return false;
    yaml_parser_set_encoding(&s.parser, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&s.parser, (const unsigned char *)text, length);
    const bool is_it = has_unlike(&s, found);
    yaml_parser_delete(&s.parser);
    return is_it;
}
