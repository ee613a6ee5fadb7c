// fault.c - the list of faults.
// SPDX-License-Identifier: MIT

#include "records/fault.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "records/utf8.h"

void lw_faults_free(lw_faults *faults)
{
    free(faults->list);
    *faults = (lw_faults){0};
}

static lw_fault *place_for_one(lw_faults *faults)
{
    if (faults->count == faults->room && faults->room < LW_FAULTS_MOST) {
        const size_t room = faults->room ? 2 * faults->room : 8;
        lw_fault *list = realloc(faults->list, room * sizeof *list);
        if (list) faults->list = list, faults->room = room;
    }
    if (faults->count < faults->room && faults->count < LW_FAULTS_MOST) {
        return &faults->list[faults->count++];
    }
    faults->left_out++;
    return &faults->spill;
}

static lw_fault *add(lw_faults *faults, const lw_written *written, bool is_doubt)
{
    lw_fault *fault = place_for_one(faults);
    *fault = (lw_fault){.file = written->file,
                        .line = written->line,
                        .column = written->column,
                        .is_doubt = is_doubt};
    lw_text_tame(fault->key, sizeof fault->key, written->key);
    lw_text_tame(fault->read, sizeof fault->read, written->text);
    if (!is_doubt) faults->fault_count++;
    return fault;
}

lw_fault *lw_faults_add(lw_faults *faults, const lw_written *written)
{
    return add(faults, written, false);
}

lw_fault *lw_faults_doubt(lw_faults *faults, const lw_written *written)
{
    return add(faults, written, true);
}

bool lw_faults_no_memory(lw_faults *faults, const char *file)
{
    const lw_written written = {.file = file, .key = "", .text = ""};
    LW_FIT(lw_faults_add(faults, &written)->sentence, "there is not enough memory to read this");
    return false;
}

static bool stands_after(const lw_fault *a, const lw_fault *b)
{
    return a->line != b->line ? a->line > b->line : a->column > b->column;
}

void lw_faults_sort(lw_faults *faults, size_t first)
{
    for (size_t i = first + 1; i < faults->count; i++) {
        const lw_fault fault = faults->list[i];
        size_t k = i;
        for (; k > first && stands_after(&faults->list[k - 1], &fault); k--) {
            faults->list[k] = faults->list[k - 1];
        }
        faults->list[k] = fault;
    }
}

// Of what vsnprintf has cut off no half of a character stays.
static void clip(char *to, size_t room, int wanted)
{
    if (wanted >= 0 && (size_t)wanted >= room) to[lw_utf8_whole(to, room - 1)] = '\0';
}

void lw_text_fit(char *to, size_t room, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    const int wanted = vsnprintf(to, room, format, arguments);
    va_end(arguments);
    clip(to, room, wanted);
}

void lw_text_add(char *to, size_t room, const char *format, ...)
{
    const size_t length = strlen(to);
    va_list arguments;
    va_start(arguments, format);
    const int wanted = vsnprintf(to + length, room - length, format, arguments);
    va_end(arguments);
    clip(to + length, room - length, wanted);
}

// Characters that are not seen, or turn the direction of those beside them: soft hyphen, Arabic
// letter mark, Hangul fillers, Mongolian vowel separator, U+200B to U+200F, U+2028 to U+202E,
// U+2060 to U+206F, variation selectors, byte order mark, interlinear marks, tags [unicode-tr36].
static bool is_unseen(uint32_t c)
{
    static const uint32_t ranges[][2] = {{0xAD, 0xAD},     {0x61C, 0x61C},   {0x115F, 0x1160},
                                         {0x180B, 0x180F}, {0x200B, 0x200F}, {0x2028, 0x202E},
                                         {0x2060, 0x206F}, {0x3164, 0x3164}, {0xFE00, 0xFE0F},
                                         {0xFEFF, 0xFEFF}, {0xFFF0, 0xFFFB}, {0xE0000, 0xE0FFF}};
    for (size_t i = 0; i < sizeof ranges / sizeof ranges[0]; i++) {
        if (c >= ranges[i][0] && c <= ranges[i][1]) return true;
    }
    return false;
}

// Written as one byte: a control character as a space, what is no UTF-8 or not seen as a question
// mark.
static char stand_in(const char *at, size_t length)
{
    if (length == 0) return '?';
    const uint32_t c = lw_utf8_code(at, length);
    if (c < 0x20 || (c >= 0x7F && c < 0xA0)) return ' ';
    return is_unseen(c) ? '?' : '\0';
}

void lw_text_tame(char *to, size_t room, const char *text)
{
    static const char dots[] = "...";
    const size_t all = strlen(text);
    size_t length = 0, step;
    for (size_t i = 0; i < all; i += step ? step : 1) {
        step = lw_utf8_length(text + i, all - i);
        const char other = stand_in(text + i, step);
        const size_t wanted = other ? 1 : step;
        if (length + wanted >= room) {
            length = lw_utf8_whole(to, room - sizeof dots < length ? room - sizeof dots : length);
            memcpy(to + length, dots, sizeof dots);
            return;
        }
        if (other)
            to[length] = other;
        else
            memcpy(to + length, text + i, step);
        length += wanted;
    }
    to[length] = '\0';
}
