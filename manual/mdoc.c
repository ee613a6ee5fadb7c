// mdoc.c - the writing of mdoc.
// SPDX-License-Identifier: MIT

#include "manual/mdoc.h"

#include <ctype.h>
#include <string.h>

#define WIDTH 72  // of words; what is escaped takes a little more

static void write_upper(FILE *out, const char *text)
{
    for (; *text; text++) fputc(toupper((unsigned char)*text), out);
}

void lw_mdoc_head(const lw_mdoc *page)
{
    fprintf(page->out, ".\\\" Written by the build from the tables of the program.\n.Dd %s\n.Dt ",
            page->date);
    write_upper(page->out, page->name);
    fprintf(page->out, " %d\n.Os\n.Sh NAME\n.Nm %s\n.Nd %s\n", page->section, page->name,
            page->what);
}

void lw_mdoc_foot(const lw_mdoc *page)
{
    fprintf(page->out, ".Sh HISTORY\nThis is lullwise %s.\n", page->version);
}

void lw_mdoc_heading(const lw_mdoc *page, const char *text)
{
    fprintf(page->out, ".Sh %s\n", text);
}

void lw_mdoc_macro(const lw_mdoc *page, const char *line) { fprintf(page->out, "%s\n", line); }

// One word: what a line would begin a macro with, and what mdoc takes for an escape, is written so
// that it stands for itself.
static void write_word(FILE *out, const char *word, size_t length, bool is_first)
{
    if (is_first && (word[0] == '.' || word[0] == '\'')) fputs("\\&", out);
    for (size_t i = 0; i < length; i++) {
        const bool is_of_option =
            word[i] == '-' && ((i + 1 < length && word[i + 1] == '-') || (i && word[i - 1] == '-'));
        if (word[i] == '\\')
            fputs("\\e", out);
        else if (is_of_option)
            fputs("\\-", out);
        else
            fputc(word[i], out);
    }
}

static bool ends_sentence(const char *word, size_t length)
{
    while (length && (word[length - 1] == ')' || word[length - 1] == '"')) length--;
    return length && strchr(".!?", word[length - 1]);
}

void lw_mdoc_text(const lw_mdoc *page, const char *text)
{
    size_t column = 0;
    for (size_t length; *text; text += length + strspn(text + length, " ")) {
        length = strcspn(text, " ");
        if (column && column + 1 + length > WIDTH) {
            fputc('\n', page->out);
            column = 0;
        } else if (column) {
            fputc(' ', page->out);
            column++;
        }
        write_word(page->out, text, length, column == 0);
        column += length + (length > 2 && strncmp(text, "--", 2) == 0 ? 2 : 0);
        if (ends_sentence(text, length) && text[length]) {
            fputc('\n', page->out);
            column = 0;
        }
    }
    fputc('\n', page->out);
}
