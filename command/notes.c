// notes.c - sentences that go with an answer.
// SPDX-License-Identifier: MIT

#include "command/notes.h"

#include <stdarg.h>

#include "command/terminal/print.h"

void lw_note(lw_notes *notes, const char *format, ...)
{
    if (notes->count == LW_NOTES_MOST) return;
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(notes->text[notes->count++], LW_NOTE_LENGTH, format, arguments);
    va_end(arguments);
}

void lw_notes_print(FILE *out, const lw_notes *notes)
{
    for (int i = 0; i < notes->count; i++) lw_print_wrapped(out, notes->text[i], 0, 2);
}

json_t *lw_notes_json(const lw_notes *notes)
{
    json_t *list = json_array();
    for (int i = 0; i < notes->count; i++) json_array_append_new(list, json_string(notes->text[i]));
    return list;
}
