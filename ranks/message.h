// message.h - what root and ranks say to each other, in bytes.
// SPDX-License-Identifier: MIT
//
// A rank says hello with the hash of what it was asked, asks for points, sends what each comes to,
// and now and then that it is still there. The root sends points, or that there are no more. Both
// look for messages and never wait for one, so that nobody hangs on a rank that died.

#ifndef LW_MESSAGE_H
#define LW_MESSAGE_H

#include <mpi.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

typedef enum lw_tag {
    LW_TAG_HELLO = 1,  // rank to root: a uint64_t
    LW_TAG_WANTED,     // rank to root: how many points it would take, a uint64_t; 0: still there
    LW_TAG_DONE,       // rank to root: a uint64_t, and the point's lines with a closing zero
    LW_TAG_SHORT,      // rank to root: out of memory, it takes no more
    LW_TAG_POINTS,     // root to rank: uint64_t each
    LW_TAG_END,        // root to rank: there are no more
} lw_tag;

#define LW_CHUNK_MOST 64  // points handed out at once

// One that has come, if there is one. *bytes is grown with malloc to hold it, a zero behind. False:
// there is none, or the one who sent it is gone.
typedef struct lw_message {
    int from;
    lw_tag tag;
    char *bytes;
    size_t length, room;
} lw_message;
bool lw_message_next(lw_message *message);

// Sent without waiting; what is sent is copied. False: the other is gone, or there is no memory.
bool lw_message_send(int to, lw_tag tag, const void *bytes, size_t length);

// Frees what has arrived of what was sent. With `gives_up` the rest too.
void lw_message_settle(bool gives_up);
bool lw_message_all_sent(void);

double lw_message_clock(void);  // [s]
void lw_message_pause(void);    // for a millisecond

#endif
