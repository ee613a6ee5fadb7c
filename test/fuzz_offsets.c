// fuzz_offsets.c - feeds any bytes to the reader of tables of offsets, and cuts what it takes.
// SPDX-License-Identifier: MIT
//
// Claims: nothing crashes; what is refused has a fault, each a sentence; what is taken is a sound
// hull, and what floats of it has a finite size.

#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "records/offsets_file.h"

#define CLAIM(claim) \
    if (!(claim)) abort()

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    lw_faults faults = {0};
    char *text = malloc(length + 1);
    CLAIM(text != NULL);
    if (length) memcpy(text, bytes, length);
    text[length] = '\0';
    if (lw_offsets_file_text(&shape, "file", text, length, &faults)) {
        CLAIM(faults.fault_count == 0);
        CLAIM(lw_hull_shape_check(&shape).status == LW_HULL_OK);
        const lw_hull_status status = lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.1, 0.01});
        if (status == LW_HULL_OK) CLAIM(isfinite(cut.floating.volume));
    } else {
        CLAIM(faults.fault_count > 0);
        for (size_t i = 0; i < faults.count; i++) CLAIM(faults.list[i].sentence[0] != '\0');
    }
    lw_faults_free(&faults);
    free(text);
    return 0;
}
