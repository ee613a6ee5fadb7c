// stop.h - Ctrl-C ends long work with what there is.
// SPDX-License-Identifier: MIT

#ifndef LW_STOP_H
#define LW_STOP_H

#include <stdbool.h>

// From now on the first Ctrl-C only asks to stop; the second ends the program as ever.
void lw_stop_watch(void);
bool lw_stop_wanted(void);

#endif
