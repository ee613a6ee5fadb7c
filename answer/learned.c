// learned.c - what was learned of a boat, put into her.
// SPDX-License-Identifier: MIT

#include "answer/learned.h"

#include <inttypes.h>
#include <string.h>

#include "lullwise/learned.h"
#include "records/record_file.h"
#include "records/record_hash.h"

void lw_boat_hash_text(const lw_boat *boat, char text[LW_HASH_TEXT])
{
    lw_text_fit(text, LW_HASH_TEXT, "%016" PRIx64, lw_record_hash(&lw_boat_record, boat));
}

bool lw_learned_is_of(const lw_learned_boat *learned, const lw_boat *boat)
{
    char hash[LW_HASH_TEXT];
    lw_boat_hash_text(boat, hash);
    return strcmp(hash, learned->hash) == 0;
}

bool lw_learned_put(lw_inputs *inputs, const lw_options *options, lw_faults *faults)
{
    lw_learned_boat learned;
    char hash[LW_HASH_TEXT];
    const char *path = lw_options_text(options, "learned");
    if (!path) return true;
    if (!lw_record_read_file(&lw_learned_record, path, &learned, faults)) return false;
    if (lw_learned_is_of(&learned, &inputs->boat)) {
        lw_hidden_put(&learned.values, inputs);
        return true;
    }
    lw_boat_hash_text(&inputs->boat, hash);
    const lw_written written = {
        .file = path, .line = 1, .column = 1, .key = "hash", .text = learned.hash};
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence,
           "learned of another boat, or of this one measured otherwise; learn anew");
    LW_FIT(fault->expected, "%s, of %s", hash, inputs->boat.name);
    return false;
}
