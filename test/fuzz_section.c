// fuzz_section.c - feeds any bytes to the reader of foil sections, and what it takes to the panels.
// SPDX-License-Identifier: MIT
//
// Claims: nothing crashes; what is refused has a fault, each a sentence; what is taken can be laid
// out in panels or is refused by them with a word, and its loads are numbers.

#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "records/section_file.h"

#define CLAIM(claim) \
    if (!(claim)) abort()

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

static void check_flow(const lw_outline *outline)
{
    static lw_profile profile;
    static lw_profile_room room;
    static lw_profile_flow flow;
    const lw_profile_flap none = {0};
    if (lw_profile_of(outline, none, 40, &profile) != LW_PROFILE_OK) return;
    if (lw_profile_flow_of(&profile, &room, &flow) != LW_PROFILE_OK) return;
    const lw_profile_load load = lw_profile_load_of(&profile, &flow, 0.1);
    CLAIM(isfinite(load.lift) && isfinite(load.moment) && isfinite(load.least_pressure));
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static lw_section_file file;
    static lw_outline outline;
    lw_faults faults = {0};
    char *text = malloc(length + 1);
    CLAIM(text != NULL);
    if (length) memcpy(text, bytes, length);
    text[length] = '\0';
    if (lw_section_file_text(&file, "file", text, length, &faults) &&
        lw_section_file_outline(&file, "file", &outline, &faults)) {
        CLAIM(faults.fault_count == 0 && file.count <= LW_OUTLINE_MOST);
        check_flow(&outline);
    } else {
        CLAIM(faults.fault_count > 0);
        for (size_t i = 0; i < faults.count; i++) CLAIM(faults.list[i].sentence[0]);
    }
    lw_faults_free(&faults);
    free(text);
    return 0;
}
