// source_text.c - bytes of a file, looked over before anything reads them.
// SPDX-License-Identifier: MIT

#include "records/source_text.h"

#include <string.h>

#include "records/utf8.h"

const char *lw_source_name(const char *path)
{
    return strcmp(path, "-") == 0 ? "standard input" : path;
}

void lw_source_fault(lw_faults *faults, const char *path, const char *sentence)
{
    const lw_written written = {.file = path, .key = "", .text = ""};
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", sentence);
}

static bool is_control(unsigned char byte)
{
    return (byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F;
}

// What is wrong with one character, or NULL.
static const char *fault_of_character(unsigned char byte, size_t length, bool is_indent)
{
    if (length == 0) return "this is not UTF-8: save the file as UTF-8 text";
    if (is_control(byte)) return "a control character: this is not a text file";
    if (byte == '\t' && is_indent) return "a tab: indent with spaces";
    return NULL;
}

// Every second byte of its first sixteen is zero, as in UTF-16, which may come without its mark.
static bool is_wide(const lw_source_text *source)
{
    size_t zeros[2] = {0, 0};
    if (source->length < 16) return false;
    for (size_t i = 0; i < 16; i++) zeros[i % 2] += source->text[i] == '\0';
    return zeros[0] + zeros[1] == 8 && (zeros[0] == 8 || zeros[1] == 8);
}

bool lw_source_is_clean(const lw_source_text *source, lw_faults *faults)
{
    const char *file = source->name, *text = source->text;
    lw_written here = {.file = file, .line = 1, .column = 1, .key = "", .text = ""};
    if (is_wide(source)) {
        lw_source_fault(faults, file, "this looks like UTF-16: save the file as UTF-8 text");
        return false;
    }
    bool is_indent = true, has_text = false;
    size_t step = 1;
    for (size_t i = 0; i < source->length; i += step) {
        const unsigned char byte = (unsigned char)text[i];
        step = lw_utf8_length(text + i, source->length - i);
        const char *sentence = fault_of_character(byte, step, is_indent);
        if (sentence) {
            LW_FIT(lw_faults_add(faults, &here)->sentence, "%s", sentence);
            return false;
        }
        here.column++;
        if (byte != ' ') is_indent = false;
        if (byte > ' ') has_text = true;
        if (byte == '\n') here.line++, here.column = 1, is_indent = true;
    }
    if (!has_text) lw_source_fault(faults, file, "the file is empty");
    return has_text;
}
