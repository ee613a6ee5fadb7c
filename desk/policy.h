// policy.h - the Content-Security-Policy of the page: what is written in it may run, nothing else.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_POLICY_H
#define LW_DESK_POLICY_H

#include <stdbool.h>
#include <stddef.h>

#define LW_POLICY_ROOM 2000  // [bytes] for some twenty pieces of script and style

// The policy of a page whose scripts and styles stand in it: each is named by the hash of its
// bytes, so that nothing that is slipped in can run. False when it does not fit the room.
bool lw_policy_of(const char *page, size_t length, char policy[LW_POLICY_ROOM]);

#endif
