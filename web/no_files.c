// no_files.c - the page opens no file: what is named by one is refused.
// SPDX-License-Identifier: MIT

#include "records/source_text.h"

#ifdef __wasm__

char *lw_source_fetch(const char *path, size_t most, size_t *length, lw_faults *faults)
{
    (void)most;
    *length = 0;
    lw_source_fault(faults, path, "the page opens no file");
    return NULL;
}

#endif
