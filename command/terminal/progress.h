// progress.h - one line on standard error that says what is being worked out, on a terminal only.
// SPDX-License-Identifier: MIT

#ifndef LW_PROGRESS_H
#define LW_PROGRESS_H

#include <stddef.h>

// Shows "working out pin B, reach (4 of 12)". The next call, or lw_progress_over, wipes it out.
void lw_progress(const char *what, size_t done, size_t all);
void lw_progress_over(void);

#endif
