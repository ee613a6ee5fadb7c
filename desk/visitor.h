// visitor.h - the connections that are open: so many at a time, and so long each.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_VISITOR_H
#define LW_DESK_VISITOR_H

#include <event2/event.h>
#include <stddef.h>
#include <sys/queue.h>

struct bufferevent;
struct lw_visitor;
typedef TAILQ_HEAD(lw_visitor_list, lw_visitor) lw_visitor_list;

typedef struct lw_visitors {
    lw_visitor_list list;  // the oldest first
    size_t count, most;
    struct timeval life;  // of one connection
} lw_visitors;

void lw_visitors_begin(lw_visitors *visitors, size_t most, double seconds);
void lw_visitors_end(lw_visitors *visitors);

// The socket for a connection that is about to be accepted; NULL when there is no memory. Whoever
// asked closes it and frees it. When there are too many the oldest is shut, as every one is at the
// end of its life: its owner then reads its end.
struct bufferevent *lw_visitors_add(lw_visitors *visitors, struct event_base *base);

#endif
