// track_hash.h - a track's file named in a day, with a hash of its bytes.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGBOOK_TRACK_HASH_H
#define LW_LOGBOOK_TRACK_HASH_H

#include "records/logbook/entry.h"

// Adds the file of a path, by its name without folders. False with a sentence in *why.
bool lw_track_hash(lw_entry *entry, const char *path, const char **why);

// The same of a file's bytes. False: its name cannot be shown, or the day has enough.
bool lw_track_hash_bytes(lw_entry *entry, const char *name, const void *bytes, size_t count);

#endif
