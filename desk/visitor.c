// visitor.c - the connections that are open: so many at a time, and so long each.
// SPDX-License-Identifier: MIT
//
// The library's own timeout begins anew with every byte, so that a client that sends one byte now
// and then would stay for ever. Here a connection has one life, whatever it does.

#include "desk/visitor.h"

#include <event2/bufferevent.h>
#include <stdbool.h>
#include <stdlib.h>
#include <sys/socket.h>

typedef struct lw_visitor {
    TAILQ_ENTRY(lw_visitor) entry;
    lw_visitors *among;
    struct event *end;           // of its life
    struct bufferevent *socket;  // held, so that it can be asked whether its owner freed it
} lw_visitor;

// The library does not tell when a server's connection ends, but freeing takes the callbacks off.
static bool is_gone(const lw_visitor *visitor)
{
    bufferevent_event_cb on_event;
    bufferevent_getcb(visitor->socket, NULL, NULL, &on_event, NULL);
    return !on_event;
}

static void leave(lw_visitor *visitor)
{
    TAILQ_REMOVE(&visitor->among->list, visitor, entry);
    visitor->among->count--;
    if (visitor->end) event_free(visitor->end);
    if (visitor->socket) bufferevent_decref(visitor->socket);
    free(visitor);
}

static void shut(lw_visitor *visitor)
{
    if (!is_gone(visitor)) shutdown(bufferevent_getfd(visitor->socket), SHUT_RDWR);
    leave(visitor);
}

static void life_is_over(evutil_socket_t fd, short what, void *visitor)
{
    (void)fd, (void)what;
    shut(visitor);
}

void lw_visitors_begin(lw_visitors *visitors, size_t most, double seconds)
{
    TAILQ_INIT(&visitors->list);
    visitors->count = 0;
    visitors->most = most;
    visitors->life.tv_sec = (time_t)seconds;
    visitors->life.tv_usec = (suseconds_t)((seconds - (double)(time_t)seconds) * 1e6);
}

void lw_visitors_end(lw_visitors *visitors)
{
    // NOLINTNEXTLINE(clang-analyzer-unix.Malloc): it misses that leave() unlinks the first
    while (!TAILQ_EMPTY(&visitors->list)) leave(TAILQ_FIRST(&visitors->list));
}

// Makes room for one: first by those who are gone, then by the oldest.
static void make_room(lw_visitors *visitors)
{
    for (lw_visitor *visitor = TAILQ_FIRST(&visitors->list), *after; visitor; visitor = after) {
        after = TAILQ_NEXT(visitor, entry);
        if (is_gone(visitor)) leave(visitor);
    }
    lw_visitor *oldest = TAILQ_FIRST(&visitors->list);
    // NOLINTNEXTLINE(clang-analyzer-unix.Malloc): as in lw_visitors_end
    if (oldest && visitors->count >= visitors->most) shut(oldest);
}

struct bufferevent *lw_visitors_add(lw_visitors *visitors, struct event_base *base)
{
    make_room(visitors);
    lw_visitor *visitor = calloc(1, sizeof *visitor);
    if (!visitor) return NULL;
    visitor->among = visitors;
    visitor->end = evtimer_new(base, life_is_over, visitor);
    visitor->socket = bufferevent_socket_new(base, -1, 0);
    TAILQ_INSERT_TAIL(&visitors->list, visitor, entry);
    visitors->count++;
    if (visitor->end && visitor->socket && event_add(visitor->end, &visitors->life) == 0) {
        bufferevent_incref(visitor->socket);
        return visitor->socket;
    }
    leave(visitor);
    return NULL;
}
