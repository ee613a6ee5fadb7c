// root.c - the root of a sweep on many machines.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "ranks/message.h"
#include "ranks/rank.h"
#include "sweep/crew.h"

#define CHUNKS_EACH 4  // chunks that what is left is cut into, for each thread that asks

// What the root knows of a rank.
typedef struct known {
    bool is_welcome, is_gone;
    double heard;      // when the last word came [s]
    uint64_t threads;  // that wait for points
    uint64_t *points;  // it is at work on
    size_t count, room;
} known;

typedef struct root {
    lw_store *store;
    const lw_root_plan *plan;
    known *ranks;
    lw_message message;
    pthread_mutex_t lock;  // of what follows
    uint64_t *again;       // points of ranks that are gone
    size_t again_count;
    bool *was_lost;  // by point
    bool is_over;
} root;

// --- points to be handed out

static bool hand_out(root *r, size_t *point)
{
    pthread_mutex_lock(&r->lock);
    bool has_one = false;
    while (!has_one && r->again_count) {
        *point = (size_t)r->again[--r->again_count];
        has_one = !r->store->at[*point];
    }
    pthread_mutex_unlock(&r->lock);
    return has_one || lw_store_hand_out(r->store, point);
}

// For the root's own threads: they wait as long as points may come back.
static bool next(void *it, size_t *point)
{
    root *r = it;
    for (;;) {
        pthread_mutex_lock(&r->lock);
        const bool is_over = r->is_over;
        pthread_mutex_unlock(&r->lock);
        if (is_over) return false;
        if (hand_out(r, point)) return true;
        lw_message_pause();
    }
}

static void done(void *it, size_t point, const char *lines)
{
    lw_store_put(((root *)it)->store, point, lines);
}

static void lose(root *r, uint64_t point, const char *why)
{
    if (point >= r->store->sweep->points || r->store->at[point]) return;
    uint64_t *more = realloc(r->again, (r->again_count + 1) * sizeof *more);
    if (!more || r->was_lost[point]) {
        lw_store_leave(r->store, (size_t)point, why);
    } else {
        more[r->again_count++] = point;
        r->was_lost[point] = true;
    }
    if (more) r->again = more;
}

static void give_up(root *r, int number, const char *why)
{
    known *rank = &r->ranks[number];
    char text[80];
    if (rank->is_gone) return;
    LW_FIT(text, "rank %d %s", number, why);
    rank->is_gone = true;
    pthread_mutex_lock(&r->lock);
    for (size_t i = 0; i < rank->count; i++) lose(r, rank->points[i], text);
    pthread_mutex_unlock(&r->lock);
    rank->count = 0;
    LW_FIT(r->store->why, "%s", text);
}

// --- ranks

static size_t chunk(const root *r)
{
    size_t threads = r->plan->threads * (size_t)r->plan->ranks;
    const size_t left = lw_store_waiting(r->store);
    const size_t share = left / (CHUNKS_EACH * (threads ? threads : 1));
    return share < 1 ? 1 : share > LW_CHUNK_MOST ? LW_CHUNK_MOST : share;
}

static bool remember(known *rank, size_t point)
{
    if (rank->count == rank->room) {
        const size_t room = 2 * rank->room + LW_CHUNK_MOST;
        uint64_t *more = realloc(rank->points, room * sizeof *more);
        if (!more) return false;
        rank->points = more, rank->room = room;
    }
    rank->points[rank->count++] = point;
    return true;
}

static void serve(root *r, int number)
{
    known *rank = &r->ranks[number];
    uint64_t points[LW_CHUNK_MOST];
    size_t count = 0, point, most = chunk(r);
    if (rank->threads > most) most = rank->threads < LW_CHUNK_MOST ? rank->threads : LW_CHUNK_MOST;
    while (count < most && hand_out(r, &point)) {
        points[count++] = point;
        if (!remember(rank, point)) lose(r, point, "the root ran out of memory");
    }
    if (!count) return;
    rank->threads = 0;
    if (!lw_message_send(number, LW_TAG_POINTS, points, count * sizeof points[0]))
        give_up(r, number, "could not be reached");
}

static void take(root *r, known *rank)
{
    uint64_t point;
    const lw_message *m = &r->message;
    if (m->length <= sizeof point) return;
    memcpy(&point, m->bytes, sizeof point);
    if (point >= r->store->sweep->points) return;
    lw_store_put(r->store, (size_t)point, m->bytes + sizeof point);
    for (size_t i = 0; i < rank->count; i++) {
        if (rank->points[i] != point) continue;
        rank->points[i] = rank->points[--rank->count];
        break;
    }
}

static void hear(root *r)
{
    while (lw_message_next(&r->message)) {
        const lw_message *m = &r->message;
        known *rank = &r->ranks[m->from];
        uint64_t number = 0;
        if (m->length >= sizeof number) memcpy(&number, m->bytes, sizeof number);
        rank->heard = lw_message_clock();
        if (m->tag == LW_TAG_HELLO) {
            rank->is_welcome = number == r->store->sweep->hash;
            if (!rank->is_welcome) give_up(r, m->from, "reads other files, or is another version");
        } else if (m->tag == LW_TAG_WANTED && number) {
            rank->threads = number;
        } else if (m->tag == LW_TAG_DONE) {
            take(r, rank);
        } else if (m->tag == LW_TAG_SHORT) {
            give_up(r, m->from, "ran out of memory");
        }
    }
}

static void look_after(root *r)
{
    const double now = lw_message_clock();
    for (int i = 1; i < r->plan->ranks; i++) {
        known *rank = &r->ranks[i];
        if (rank->is_gone) continue;
        if (now - rank->heard > r->plan->patience) give_up(r, i, "fell silent");
        if (rank->is_welcome && rank->threads && !rank->is_gone) serve(r, i);
    }
}

// --- the whole

static bool open_root(root *r, lw_store *store, const lw_root_plan *plan)
{
    *r = (root){.store = store, .plan = plan};
    pthread_mutex_init(&r->lock, NULL);
    r->ranks = calloc((size_t)plan->ranks, sizeof *r->ranks);
    r->was_lost = calloc(store->sweep->points, sizeof *r->was_lost);
    for (int i = 0; r->ranks && i < plan->ranks; i++) r->ranks[i].heard = lw_message_clock();
    return r->ranks && r->was_lost;
}

static bool close_root(root *r)
{
    bool are_there = true;
    for (int i = 1; r->ranks && i < r->plan->ranks; i++) {
        are_there = are_there && !r->ranks[i].is_gone;
        free(r->ranks[i].points);
    }
    free(r->ranks);
    free(r->was_lost);
    free(r->again);
    free(r->message.bytes);
    pthread_mutex_destroy(&r->lock);
    return are_there;
}

static bool is_over(const root *r) { return lw_store_is_over(r->store) || r->plan->wants_end(); }

bool lw_root_run(lw_store *store, const lw_root_plan *plan)
{
    static root r;
    static lw_crew crew;
    size_t shown = SIZE_MAX;
    if (open_root(&r, store, plan)) {
        lw_crew_start(&crew, store->sweep, plan->threads, (lw_crew_work){&r, next, done});
        while (!is_over(&r)) {
            lw_message_settle(false);
            hear(&r);
            look_after(&r);
            if (shown != store->done)
                plan->progress("points of the table", shown = store->done, lw_store_all(store));
            lw_message_pause();
        }
        pthread_mutex_lock(&r.lock);
        r.is_over = true;
        pthread_mutex_unlock(&r.lock);
        lw_crew_join(&crew);
    } else {
        store->is_broken = true;
        LW_FIT(store->why, "there is not enough memory");
    }
    return close_root(&r);
}

void lw_root_dismiss(int ranks, bool are_whole)
{
    const char may_finalize = are_whole ? 1 : 0;
    for (int i = 1; i < ranks; i++) lw_message_send(i, LW_TAG_END, &may_finalize, 1);
    const double since = lw_message_clock();
    while (!lw_message_all_sent() && lw_message_clock() - since < 2.0) {
        lw_message_settle(false);
        lw_message_pause();
    }
    lw_message_settle(true);
}
