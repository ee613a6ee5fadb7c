// searched.h - what a search for hardware came to, on standard output.
// SPDX-License-Identifier: MIT

#ifndef LW_SEARCHED_H
#define LW_SEARCHED_H

#include "sweep/store.h"

// Of a store whose search is over; nothing of another.
void lw_searched_tell(const lw_store *store);

#endif
