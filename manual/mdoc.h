// mdoc.h - manual pages in mdoc, of what the tables have.
// SPDX-License-Identifier: MIT

#ifndef LW_MDOC_H
#define LW_MDOC_H

#include <stdio.h>

#include "lullwise/quantity.h"

// What a page is of: "lullwise" in section 1, and the date and version that all have.
typedef struct lw_mdoc {
    FILE *out;
    const char *name;
    int section;
    const char *what;  // in a line
    const char *version, *date;
} lw_mdoc;

void lw_mdoc_head(const lw_mdoc *page);
void lw_mdoc_foot(const lw_mdoc *page);  // behind SEE ALSO: the version
void lw_mdoc_heading(const lw_mdoc *page, const char *text);

// A line as it stands: lw_mdoc_macro(page, ".It Fl -boat Ar FILE").
void lw_mdoc_macro(const lw_mdoc *page, const char *line);

// Sentences, each on a line of its own, none over 78 columns.
void lw_mdoc_text(const lw_mdoc *page, const char *text);

// --- the pages

void lw_mdoc_program(const lw_mdoc *page);
void lw_mdoc_ranks(const lw_mdoc *page);
void lw_mdoc_record(const lw_mdoc *page, const lw_record *record);

#endif
