// outbox.c - points between a rank's threads and the one of them that speaks MPI.
// SPDX-License-Identifier: MIT

#include "ranks/outbox.h"

#include <stdlib.h>
#include <string.h>

void lw_outbox_open(lw_outbox *box)
{
    *box = (lw_outbox){0};
    pthread_mutex_init(&box->lock, NULL);
    pthread_cond_init(&box->has_come, NULL);
}

void lw_outbox_close(lw_outbox *box)
{
    lw_finished *finished = box->finished, *next;
    for (; finished; finished = next) {
        next = finished->next;
        free(finished);
    }
    free(box->points);
    pthread_cond_destroy(&box->has_come);
    pthread_mutex_destroy(&box->lock);
}

bool lw_outbox_next(void *to, size_t *point)
{
    lw_outbox *box = to;
    pthread_mutex_lock(&box->lock);
    while (box->at == box->count && !box->has_ended) pthread_cond_wait(&box->has_come, &box->lock);
    const bool has_one = !box->has_ended;
    if (has_one) *point = (size_t)box->points[box->at++];
    pthread_mutex_unlock(&box->lock);
    return has_one;
}

void lw_outbox_done(void *to, size_t point, const char *lines)
{
    lw_outbox *box = to;
    lw_finished *one = malloc(sizeof *one + strlen(lines) + 1);
    pthread_mutex_lock(&box->lock);
    if (one) {
        one->point = point;
        memcpy(one->lines, lines, strlen(lines) + 1);
        one->next = box->finished;
        box->finished = one;
    } else {
        box->is_short = true;
    }
    pthread_mutex_unlock(&box->lock);
}

bool lw_outbox_add(lw_outbox *box, const uint64_t *points, size_t count)
{
    pthread_mutex_lock(&box->lock);
    if (box->at == box->count) box->at = box->count = 0;
    const size_t room = box->count + count;
    uint64_t *more = room > box->room ? realloc(box->points, room * sizeof *more) : box->points;
    if (more) {
        if (room > box->room) box->room = room;
        box->points = more;
        memcpy(more + box->count, points, count * sizeof *more);
        box->count += count;
        pthread_cond_broadcast(&box->has_come);
    }
    pthread_mutex_unlock(&box->lock);
    return more != NULL;
}

size_t lw_outbox_waiting(lw_outbox *box)
{
    pthread_mutex_lock(&box->lock);
    const size_t waiting = box->count - box->at;
    pthread_mutex_unlock(&box->lock);
    return waiting;
}

lw_finished *lw_outbox_take(lw_outbox *box)
{
    pthread_mutex_lock(&box->lock);
    lw_finished *finished = box->finished;
    box->finished = NULL;
    pthread_mutex_unlock(&box->lock);
    return finished;
}

void lw_outbox_end(lw_outbox *box)
{
    pthread_mutex_lock(&box->lock);
    box->has_ended = true;
    pthread_cond_broadcast(&box->has_come);
    pthread_mutex_unlock(&box->lock);
}
