// drawing.c - a picture as a text of the parcel.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>

#include "answer/parcel.h"
#include "web/page.h"

static char *text;
static size_t length;

FILE *lw_web_drawing(void)
{
    FILE *out = open_memstream(&text, &length);
    if (!out) abort();
    return out;
}

void lw_web_put_drawing(const char *key, FILE *out)
{
    fclose(out);
    lw_parcel_text(key, text);
    free(text);
}
