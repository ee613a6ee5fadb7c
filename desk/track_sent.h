// track_sent.h - what a page sends with a track: options as on a command line, and files.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_TRACK_SENT_H
#define LW_DESK_TRACK_SENT_H

#include <sys/queue.h>
// The library's list of words wants the line above.
#include <event2/keyvalq_struct.h>

#include "answer/inputs.h"
#include "answer/question.h"
#include "desk/tracks.h"
#include "records/logbook/entry.h"
#include "records/source_text.h"

typedef enum lw_sent_file {
    LW_SENT_BOAT,
    LW_SENT_SAILOR,
    LW_SENT_DAY,
    LW_SENT_LEARNED
} lw_sent_file;
#define LW_SENT_FILES 4

// Everything points into the words of the query and into the body, which must outlive it.
typedef struct lw_track_sent {
    struct evkeyvalq words;
    lw_options options;                         // the operands are the names of the tracks
    lw_source_text files[LW_SENT_FILES];        // whose text is NULL: not sent
    lw_source_text tracks[LW_DAY_TRACKS_MOST];  // as many as there are operands
} lw_track_sent;

// False where the query does not tell what the body is. To be released either way.
bool lw_track_sent_take(lw_track_sent *sent, const lw_track_asked *asked);
void lw_track_sent_release(lw_track_sent *sent);

// Boat, sailor and day, with what was learned of the boat; untouched where no boat was sent. False
// where one is missing, or has faults.
bool lw_track_sent_inputs(const lw_track_sent *sent, lw_inputs *inputs, lw_refusal *refusal);

#endif
