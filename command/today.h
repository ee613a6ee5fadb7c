// today.h - the day on this computer's clock.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_TODAY_H
#define LW_COMMAND_TODAY_H

// As in 2030-05-17; NULL: not known.
const char *lw_today(void);

#endif
