// named_section.c - a foil section by its designation or from a file, as it was asked for.
// SPDX-License-Identifier: MIT

#include "answer/foil/named_section.h"

#include <string.h>

#include "records/section_file.h"
#include "records/source_text.h"

static bool begins_with_naca(const char *text)
{
    static const char word[] = "naca";
    text += strspn(text, " ");
    for (size_t i = 0; word[i]; i++) {
        if ((text[i] | 0x20) != word[i]) return false;
    }
    return true;
}

static bool refuse(const char *text, lw_profile_status status, lw_faults *faults)
{
    const lw_written written = {
        .file = "command line", .line = 0, .key = "--section", .text = text};
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "%s", lw_profile_status_text(status));
    LW_FIT(fault->expected, "NACA 2412, 23012 or 63-412 or the like, or a file of x and y");
    return false;
}

static void add_note(lw_named_section *section, bool is_so, const char *note)
{
    if (is_so) section->notes[section->note_count++] = note;
}

// "NACA 2412" however it was written.
static void name_of(char name[LW_NAME_LENGTH], const char *text)
{
    text += strspn(text, " ");
    if (begins_with_naca(text)) text += 4;
    text += strspn(text, " ");
    lw_text_fit(name, LW_NAME_LENGTH, "NACA %s", text);
}

// The file's own title, or else the last part of its path.
static void title_of(char name[LW_NAME_LENGTH], const lw_section_file *file, const char *path)
{
    const char *slash = strrchr(path, '/');
    lw_text_tame(name, LW_NAME_LENGTH,
                 file->title[0] ? file->title
                 : slash        ? slash + 1
                                : lw_source_name(path));
}

bool lw_named_section_read(lw_named_section *section, const char *text, lw_faults *faults)
{
    lw_section_file file;
    section->note_count = 0;
    const lw_profile_status status = lw_outline_naca(text, &section->outline);
    if (status == LW_PROFILE_OK) {
        name_of(section->name, text);
        return true;
    }
    if (begins_with_naca(text) || status == LW_PROFILE_MODIFIED || !text[0])
        return refuse(text, status, faults);
    const size_t before = faults->count;
    if (!lw_section_file_read(&file, text, &section->outline, faults)) {
        const bool is_missing = faults->count == before + 1 && faults->list[before].line == 0 &&
                                strstr(faults->list[before].sentence, "no such file");
        if (is_missing)
            LW_FIT(faults->list[before].expected, "a file, or a designation as in NACA 2412");
        return false;
    }
    title_of(section->name, &file, text);
    add_note(section, section->outline.was_reversed,
             "Points were given from the nose on; they have been put once around from the tail.");
    add_note(section, file.is_lower_first,
             "Points run along the lower side first; they have been turned round.");
    add_note(section, section->outline.was_open,
             "The tail was open; it has been closed, half from either side.");
    add_note(section, section->outline.was_scaled,
             "Coordinates were not in chords; they have been brought to a chord of 1 from 0.");
    return true;
}
