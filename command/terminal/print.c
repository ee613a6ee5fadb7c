// print.c - text within 80 columns, and faults as a person reads them.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE  // winsize

#include "command/terminal/print.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include "records/key_text.h"
#include "records/source_text.h"
#include "records/utf8.h"

#define RED    "\033[1;31m"
#define YELLOW "\033[1;33m"
#define PLAIN  "\033[0m"

#define NARROWEST 40
#define KEY_MOST  (LW_KEY_TEXT + 100)

// Of the terminal, or as COLUMNS says; never beyond the page's.
size_t lw_print_width(FILE *out)
{
    struct winsize size;
    const char *columns = getenv("COLUMNS");
    long width = columns ? strtol(columns, NULL, 10) : 0;
    if (width <= 0 && isatty(fileno(out)) && ioctl(fileno(out), TIOCGWINSZ, &size) == 0)
        width = size.ws_col;
    if (width <= 0 || width > LW_PRINT_WIDTH) return LW_PRINT_WIDTH;
    return width < NARROWEST ? NARROWEST : (size_t)width;
}

void lw_print_wrapped(FILE *out, const char *text, size_t column, size_t indent)
{
    const size_t width = lw_print_width(out);
    bool is_first = true;
    for (size_t word; *text; text += word + strspn(text + word, " ")) {
        word = strcspn(text, " ");
        const size_t wide = lw_utf8_count(text, word);
        if (!is_first && column + 1 + wide > width) {
            fprintf(out, "\n%*s", (int)indent, "");
            column = indent;
        } else if (!is_first) {
            fputc(' ', out);
            column++;
        }
        fwrite(text, 1, word, out);
        column += wide;
        is_first = false;
    }
    fputc('\n', out);
}

bool lw_print_has_colour(FILE *out)
{
    const char *no_colour = getenv("NO_COLOR"), *terminal = getenv("TERM");
    if (no_colour && no_colour[0]) return false;
    if (terminal && strcmp(terminal, "dumb") == 0) return false;
    return isatty(fileno(out)) == 1;
}

static void print_place(const lw_fault *fault, char *text, size_t room)
{
    const bool is_option = strncmp(fault->file, "--", 2) == 0;
    char file[300];
    lw_text_tame(file, sizeof file, lw_source_name(fault->file));
    if (is_option || fault->line == 0)
        lw_text_fit(text, room, "%s: ", file);
    else
        lw_text_fit(text, room, "%s:%zu:%zu: ", file, fault->line, fault->column);
}

static void print_member(FILE *out, const char *name, const char *text)
{
    if (!text[0]) return;
    fprintf(out, "    %-10s", name);
    lw_print_wrapped(out, text, 14, 14);
}

// "Main foil: span (main_foil.span)"; what has no name stays as it is.
static void print_key(const char *key, char name[KEY_MOST])
{
    const char *spoken = LW_KEY_SPOKEN(key);
    const bool is_named = strcmp(spoken, key) != 0;
    lw_text_fit(name, KEY_MOST, is_named ? "%s (%s)" : "%s", spoken, key);
}

static void print_fault(FILE *out, const lw_fault *fault, bool has_colour)
{
    const char *kind = fault->is_doubt ? "doubt" : "fault";
    char place[340], text[600], name[KEY_MOST];
    print_place(fault, place, sizeof place);
    print_key(fault->key, name);
    LW_FIT(text, "%s%s%s", name, name[0] ? ": " : "", fault->sentence);
    fprintf(out, "%s%s%s:%s ", place, has_colour ? fault->is_doubt ? YELLOW : RED : "", kind,
            has_colour ? PLAIN : "");
    lw_print_wrapped(out, text, lw_utf8_count(place, strlen(place)) + strlen(kind) + 2, 4);
    print_member(out, "read", fault->read);
    print_member(out, "expected", fault->expected);
    print_member(out, "perhaps", fault->hint);
}

void lw_print_faults(FILE *out, const lw_faults *faults)
{
    const bool has_colour = lw_print_has_colour(out);
    for (size_t i = 0; i < faults->count; i++) print_fault(out, &faults->list[i], has_colour);
    if (faults->left_out) fprintf(out, "... and %zu more\n", faults->left_out);
}

void lw_print_complaint(const char *command, const char *format, ...)
{
    char text[600];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(text, sizeof text, format, arguments);
    va_end(arguments);
    char tame[600];
    lw_text_tame(tame, sizeof tame, text);
    const int column = fprintf(stderr, "lullwise%s%s: ", command[0] ? " " : "", command);
    lw_print_wrapped(stderr, tame, (size_t)column, 4);
}
