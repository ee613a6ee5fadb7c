// doc_text.c - what the brackets at the end of a doc mean: where a number comes from.
// SPDX-License-Identifier: MIT

#include "answer/words/doc_text.h"

#include <string.h>

// As in doc/sources.md.
static const struct {
    const char *mark, *words;
} sources[] = {
    {"judged", "Judged: nobody has measured it."},
    {"common practice", "A rule of the trade."},
    {"glauert-1926", "Glauert, The Elements of Aerofoil and Airscrew Theory, 1926."},
    {"harwood-2016",
     "Harwood, Young, Ceccio, Ventilated cavities on a surface-piercing "
     "hydrofoil at moderate Froude numbers, J. Fluid Mech. 800, 2016."},
    {"hazen-1980",
     "Hazen, A model of sail aerodynamics for diverse rig types, New England "
     "Sailing Yacht Symposium, 1980."},
    {"rp-c205", "Det Norske Veritas, Environmental conditions and environmental loads, RP-C205."},
    {"wmo-1555",
     "Harper, Kepert, Ginger, Guidelines for converting between various wind "
     "averaging periods in tropical cyclone conditions, WMO/TD-No. 1555, 2010."},
};
#define SOURCES (sizeof sources / sizeof sources[0])

// Which source stands here in brackets; SOURCES for none.
static size_t source_at(const char *at)
{
    for (size_t i = 0; at[0] == '[' && i < SOURCES; i++) {
        const size_t length = strlen(sources[i].mark);
        if (strncmp(at + 1, sources[i].mark, length) == 0 && at[1 + length] == ']') return i;
    }
    return SOURCES;
}

void lw_doc_plain(char *text, size_t room, const char *doc)
{
    size_t length = 0;
    for (const char *at = doc; *at && length + 1 < room;) {
        const size_t source = source_at(at + (*at == ' '));
        if (source < SOURCES)
            at += (*at == ' ') + strlen(sources[source].mark) + 2;
        else
            text[length++] = *at++;
    }
    text[length] = '\0';
}

const char *lw_doc_source(const char *doc, size_t index)
{
    for (const char *at = doc; (at = strchr(at, '[')); at++) {
        const size_t source = source_at(at);
        if (source < SOURCES && index-- == 0) return sources[source].words;
    }
    return NULL;
}
