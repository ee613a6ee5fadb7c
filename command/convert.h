// convert.h - pictures as PDF and PNG, by rsvg-convert.
// SPDX-License-Identifier: MIT

#ifndef LW_CONVERT_H
#define LW_CONVERT_H

#include <stdbool.h>
#include <stddef.h>

#include "records/output_file.h"

#define LW_CONVERT_MISSING \
    "PDF and PNG take rsvg-convert, which is not there: install the Debian package librsvg2-bin"

bool lw_convert_is_there(void);

// So many pages of SVG, each gathered, into one document, "pdf" or "png" (of one page, 300 dots an
// inch), which goes into *to. False, with a sentence in *why, when it cannot be made.
bool lw_convert(lw_output *pages, size_t count, const char *format, lw_output *to,
                const char **why);

#endif
