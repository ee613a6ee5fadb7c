// browser.h - shows an address in the browser, where there is one.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_BROWSER_H
#define LW_DESK_BROWSER_H

#include <stdbool.h>

// Starts $BROWSER, or xdg-open, and does not wait for it. False when there is no display to show
// it on, or nothing to start.
bool lw_browser_show(const char *address);

#endif
