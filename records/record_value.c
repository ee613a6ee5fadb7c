// record_value.c - one written value put into a record, with the fault it may have.
// SPDX-License-Identifier: MIT

#include "records/record_value.h"

#include <stdio.h>
#include <string.h>

void lw_quantity_range(const lw_quantity *row, double low, double high, char text[LW_RANGE_LENGTH])
{
    const char *unit = lw_unit_behind(row->unit);
    if (low == high)
        lw_text_fit(text, LW_RANGE_LENGTH, "%.10g%s", low, unit);
    else
        lw_text_fit(text, LW_RANGE_LENGTH, "%.10g to %.10g%s", low, high, unit);
}

// The number at the start of a text, as it was written.
static void number_of(const char *text, char *number, size_t room)
{
    double value;
    const char *rest;
    number[0] = '\0';
    while (*text == ' ') text++;
    if (!lw_decimal_read(text, &value, &rest) || (size_t)(rest - text) >= room) return;
    memcpy(number, text, (size_t)(rest - text));
    number[rest - text] = '\0';
}

// The same number in a unit in which it would be a usual value: "98 cm". The row's own unit first.
static void hint_of_unit(lw_fault *fault, const lw_quantity *row, const char *text)
{
    char number[32], other[48];
    number_of(text, number, sizeof number);
    for (int step = -1; number[0] && step < LW_UNIT_COUNT; step++) {
        const lw_unit unit = step < 0 ? row->unit : (lw_unit)step;
        double si;
        if (!lw_unit_same_dimension(unit, row->unit)) continue;
        LW_FIT(other, "%s%s", number, lw_unit_behind(unit));
        if (lw_quantity_read(row, other, &si) != LW_OK || lw_quantity_is_doubtful(row, si))
            continue;
        LW_FIT(fault->hint, "%s", other);
        return;
    }
}

// The unit that somebody may have meant by a text that names none.
static const char *nearest_unit(const char *text)
{
    const char *nearest = NULL;
    for (int unit = 0; unit < LW_UNIT_COUNT; unit++) {
        const char *name = lw_unit_text((lw_unit)unit);
        if (name[0]) nearest = lw_text_nearer(text, nearest, name);
    }
    return nearest;
}

// "64½ kg" asks for 64.5 kg; false when no such sign stands there.
static bool say_fraction(lw_fault *fault, double whole, const char *behind)
{
    static const struct {
        const char *sign;
        double part;
    } signs[] = {{"½", 0.5}, {"¼", 0.25}, {"¾", 0.75}, {"⅓", 0.333}, {"⅔", 0.667}};
    for (size_t i = 0; i < sizeof signs / sizeof signs[0]; i++) {
        const size_t length = strlen(signs[i].sign);
        if (strncmp(behind, signs[i].sign, length) != 0) continue;
        LW_FIT(fault->sentence, "write \"%s\" with a decimal point", signs[i].sign);
        LW_FIT(fault->hint, "%.10g%.8s",
               whole < 0.0 ? whole - signs[i].part : whole + signs[i].part, behind + length);
        return true;
    }
    return false;
}

static void say_bad_unit(lw_fault *fault, const lw_quantity *row, const char *text)
{
    double value;
    const char *unit = text;
    char shown[24];
    while (*text == ' ') text++;
    if (lw_decimal_read(text, &value, &unit)) {
        unit += strspn(unit, " ");
        if (say_fraction(fault, value, unit)) return;
    }
    lw_text_tame(shown, sizeof shown, unit);
    if (lw_unit_of(unit) != LW_UNIT_COUNT) {
        LW_FIT(fault->sentence, "\"%s\" does not measure this", shown);
        hint_of_unit(fault, row, text);
        return;
    }
    const char *nearest = nearest_unit(unit);
    LW_FIT(fault->sentence, "there is no unit \"%s\"", shown);
    if (nearest && strlen(unit) > 1)
        LW_FIT(fault->hint, "%s", nearest);
    else
        hint_of_unit(fault, row, text);
}

static void say_status(lw_fault *fault, lw_status status, const lw_quantity *row, const char *text)
{
    switch (status) {
        case LW_BAD_NUMBER:
            LW_FIT(fault->sentence, "%s", text[0] ? "this is not a number" : "no value is given");
            return;
        case LW_UNIT_MISSING:
            LW_FIT(fault->sentence, "the number has no unit");
            hint_of_unit(fault, row, text);
            return;
        case LW_BAD_UNIT:
            say_bad_unit(fault, row, text);
            return;
        default:
            LW_FIT(fault->sentence, "%s", lw_status_text(status));
            hint_of_unit(fault, row, text);
            return;
    }
}

static void say_doubt(const lw_quantity *row, const lw_written *written, lw_faults *faults)
{
    char range[LW_RANGE_LENGTH];
    lw_quantity_range(row, row->usual_min, row->usual_max, range);
    lw_fault *doubt = lw_faults_doubt(faults, written);
    LW_FIT(doubt->expected, "usually %s", range);
    LW_FIT(doubt->sentence, "unusual, but taken");
}

bool lw_written_quantity(const lw_written *written, const lw_quantity *row, double *si,
                         lw_faults *faults)
{
    const lw_status status = lw_quantity_read(row, written->text, si);
    if (status == LW_OK) {
        if (lw_quantity_is_doubtful(row, *si)) say_doubt(row, written, faults);
        return true;
    }
    char range[LW_RANGE_LENGTH];
    lw_quantity_range(row, row->min, row->max, range);
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->expected, "%s", range);
    say_status(fault, status, row, written->text);
    return false;
}

// The text has something that cannot be shown: control characters, or what is no UTF-8.
static bool is_unshowable(const char *text)
{
    char tame[LW_NAME_LENGTH];
    lw_text_tame(tame, sizeof tame, text);
    return strncmp(tame, text, strlen(text)) != 0;
}

static bool say(lw_faults *faults, const lw_written *written, const char *sentence,
                const char *expected)
{
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "%s", expected);
    return false;
}

static void words_text(const lw_text *text, char *list, size_t room)
{
    list[0] = '\0';
    for (const char *const *word = text->words; *word; word++) {
        const size_t length = strlen(list);
        const char *joint = word == text->words ? "" : word[1] ? ", " : " or ";
        lw_text_fit(list + length, room - length, "%s%s", joint, *word);
    }
}

static bool is_word(const lw_text *text, const char *word)
{
    for (const char *const *known = text->words; *known; known++) {
        if (strcmp(*known, word) == 0) return true;
    }
    return false;
}

static bool is_text_sound(const lw_written *written, const lw_text *text, lw_faults *faults)
{
    char expected[160] = "a text of up to 63 bytes";
    if (text->words) {
        words_text(text, expected, sizeof expected);
        return is_word(text, written->text) ||
               say(faults, written, "this word is not one of those allowed", expected);
    }
    if (!written->text[0]) return say(faults, written, "no text is given", expected);
    if (strlen(written->text) >= LW_NAME_LENGTH) {
        return say(faults, written, "the text is too long", expected);
    }
    if (is_unshowable(written->text)) {
        return say(faults, written, "a character that cannot be shown stands in the text",
                   expected);
    }
    return true;
}

bool lw_written_text(const lw_written *written, const lw_text *text, void *data, lw_faults *faults)
{
    if (!is_text_sound(written, text, faults)) return false;
    char *member = (char *)data + text->offset;
    memset(member, 0, LW_NAME_LENGTH);
    memcpy(member, written->text, strlen(written->text));
    return true;
}

bool lw_written_label(const lw_written *written, lw_faults *faults)
{
    static const char expected[] = "a label of 1 to 15 bytes";
    if (!written->text[0]) return say(faults, written, "the label is empty", expected);
    if (strlen(written->text) >= LW_LABEL_LENGTH) {
        return say(faults, written, "the label is too long", expected);
    }
    if (is_unshowable(written->text)) {
        return say(faults, written, "a character that cannot be shown stands in the label",
                   expected);
    }
    return true;
}

void lw_written_unknown(const lw_written *written, const char *what, const char *nearest,
                        lw_faults *faults)
{
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "there is no such %s", what);
    if (nearest) LW_FIT(fault->hint, "%s", nearest);
}

const lw_section *lw_record_section(const lw_record *record, const char *key)
{
    for (size_t i = 0; i < record->section_count; i++) {
        if (strcmp(record->sections[i].table->key, key) == 0) return &record->sections[i];
    }
    return NULL;
}

const lw_text *lw_record_text(const lw_record *record, const char *key)
{
    for (size_t i = 0; i < record->text_count; i++) {
        if (strcmp(record->texts[i].key, key) == 0) return &record->texts[i];
    }
    return NULL;
}

const char *lw_record_nearest(const lw_record *record, const char *key)
{
    const char *nearest = NULL;
    for (size_t i = 0; i < record->text_count; i++) {
        nearest = lw_text_nearer(key, nearest, record->texts[i].key);
    }
    for (size_t i = 0; i < record->section_count; i++) {
        nearest = lw_text_nearer(key, nearest, record->sections[i].table->key);
    }
    return nearest;
}

void lw_section_mark(const lw_section *section, void *data)
{
    if (section->kind != LW_SECTION_PLAIN || section->required || !section->count_offset) return;
    *(bool *)((char *)data + section->count_offset) = true;
}

bool lw_section_is_given(const lw_section *section, const void *data)
{
    const char *asked = (const char *)data + section->count_offset;
    if (section->required) return true;
    if (section->kind != LW_SECTION_PLAIN) return *(const size_t *)asked > 0;
    return !section->count_offset || *(const bool *)asked;
}

static double first_number(const lw_section *section, void *data, size_t index)
{
    return lw_quantity_value(section->table->rows, lw_section_element(section, data, index));
}

static void swap(char *a, char *b, size_t length)
{
    for (size_t i = 0; i < length; i++) {
        const char kept = a[i];
        a[i] = b[i], b[i] = kept;
    }
}

void lw_section_sort(const lw_section *section, void *data)
{
    const size_t count = *lw_section_length(section, data);
    for (size_t i = 1; i < count; i++) {
        for (size_t k = i; k > 0; k--) {
            if (!(first_number(section, data, k) > first_number(section, data, k - 1))) break;
            swap(lw_section_element(section, data, k), lw_section_element(section, data, k - 1),
                 section->stride);
        }
    }
}
