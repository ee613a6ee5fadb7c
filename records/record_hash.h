// record_hash.h - a number that tells whether two records are the same.
// SPDX-License-Identifier: MIT

#ifndef LW_RECORD_HASH_H
#define LW_RECORD_HASH_H

#include <stdint.h>

#include "lullwise/quantity.h"

// FNV-1a of 64 bits [fnv]: of bytes behind those hashed so far.
#define LW_HASH_NAME  "FNV-1a, 64 bits"
#define LW_HASH_EMPTY UINT64_C(0xcbf29ce484222325)
uint64_t lw_hash_add(uint64_t hash, const void *bytes, size_t count);

// Of what counts in a record: keys, texts, labels, and the bits of every number in SI, low byte
// first; of a row that came late only off its preset, so that what was logged and learned of a boat
// stays hers. The same on every machine, whatever comments, order and units its file has.
uint64_t lw_record_hash(const lw_record *record, const void *data);

#endif
