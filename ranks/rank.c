// rank.c - a rank that works points out for the root.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "ranks/message.h"
#include "ranks/outbox.h"
#include "ranks/rank.h"
#include "sweep/crew.h"

#define ROOT     0
#define FAREWELL 5.0  // [s] for the last words to arrive

typedef struct speaker {
    lw_outbox box;
    lw_message message;
    size_t threads;
    double beat;     // when the last word was sent
    bool has_asked;  // for points
    bool is_over, may_finalize;
} speaker;

static void send_number(lw_tag tag, uint64_t number)
{
    lw_message_send(ROOT, tag, &number, sizeof number);
}

static void hear(speaker *s)
{
    while (lw_message_next(&s->message)) {
        const lw_message *m = &s->message;
        if (m->tag == LW_TAG_END) {
            s->is_over = true;
            s->may_finalize = m->length == 1 && m->bytes[0];
        } else if (m->tag == LW_TAG_POINTS) {
            const uint64_t *points = (const uint64_t *)(const void *)m->bytes;
            s->has_asked = false;
            if (!lw_outbox_add(&s->box, points, m->length / sizeof *points))
                send_number(LW_TAG_SHORT, 0);
        }
    }
}

static void send_done(const lw_finished *one)
{
    const size_t length = strlen(one->lines) + 1;
    char *bytes = malloc(sizeof one->point + length);
    if (!bytes) {
        send_number(LW_TAG_SHORT, 0);
        return;
    }
    memcpy(bytes, &one->point, sizeof one->point);
    memcpy(bytes + sizeof one->point, one->lines, length);
    lw_message_send(ROOT, LW_TAG_DONE, bytes, sizeof one->point + length);
    free(bytes);
}

static void speak(speaker *s)
{
    lw_finished *one = lw_outbox_take(&s->box), *next;
    for (; one; one = next) {
        next = one->next;
        send_done(one);
        free(one);
    }
    const size_t waiting = lw_outbox_waiting(&s->box);
    const double now = lw_message_clock();
    if (!s->has_asked && waiting < s->threads) {
        send_number(LW_TAG_WANTED, s->threads);
        s->has_asked = true, s->beat = now;
    } else if (now - s->beat > LW_BEAT) {
        send_number(LW_TAG_WANTED, 0);
        s->beat = now;
    }
}

static bool farewell(void)
{
    const double since = lw_message_clock();
    while (!lw_message_all_sent() && lw_message_clock() - since < FAREWELL) {
        lw_message_settle(false);
        lw_message_pause();
    }
    lw_message_settle(true);
    return true;
}

bool lw_rank_run(const lw_sweep *sweep, size_t threads)
{
    static speaker s;
    static lw_crew crew;
    s = (speaker){.threads = threads};
    lw_outbox_open(&s.box);
    send_number(LW_TAG_HELLO, sweep->hash);
    if (!lw_crew_start(&crew, sweep, threads,
                       (lw_crew_work){&s.box, lw_outbox_next, lw_outbox_done}))
        send_number(LW_TAG_SHORT, 0);
    while (!s.is_over) {
        lw_message_settle(false);
        hear(&s);
        speak(&s);
        if (s.box.is_short || atomic_load(&crew.is_short)) send_number(LW_TAG_SHORT, 0);
        lw_message_pause();
    }
    lw_outbox_end(&s.box);
    lw_crew_join(&crew);
    lw_outbox_close(&s.box);
    free(s.message.bytes);
    return farewell() && s.may_finalize;
}

bool lw_rank_decline(void)
{
    lw_message message = {0};
    send_number(LW_TAG_HELLO, 0);
    while (!lw_message_next(&message) || message.tag != LW_TAG_END) lw_message_pause();
    const bool may_finalize = message.length == 1 && message.bytes[0];
    free(message.bytes);
    return farewell() && may_finalize;
}
