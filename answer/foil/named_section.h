// named_section.h - a foil section by its designation or from a file, as it was asked for.
// SPDX-License-Identifier: MIT

#ifndef LW_NAMED_SECTION_H
#define LW_NAMED_SECTION_H

#include "lullwise/base.h"
#include "lullwise/profile.h"
#include "records/fault.h"

#define LW_SECTION_NOTES 4

// A section as it was asked for.
typedef struct lw_named_section {
    char name[LW_NAME_LENGTH];
    const char *notes[LW_SECTION_NOTES];  // what was done to its points
    int note_count;
    lw_outline outline;
} lw_named_section;

// "NACA 2412", "63-412", or the name of a file; "./2412" where a file is called so. False with
// every fault.
bool lw_named_section_read(lw_named_section *section, const char *text, lw_faults *faults);

#endif
