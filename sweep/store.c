// store.c - the points that are worked out, kept on disk as they come.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "sweep/store.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define MAGIC "lullwise sweep"

static bool fail(lw_store *store, const char *why)
{
    LW_FIT(store->why, "%s%s%s", store->path, store->path[0] ? ": " : "", why);
    return false;
}

// --- the first line tells what is asked

static void write_head(const lw_store *store, char *text, size_t room)
{
    lw_text_fit(text, room, MAGIC " %016" PRIx64 " %zu\n", store->sweep->hash,
                store->sweep->points);
}

static bool begin(lw_store *store)
{
    char head[100];
    write_head(store, head, sizeof head);
    store->file = store->path[0] ? fopen(store->path, "w+") : tmpfile();
    if (!store->file || fputs(head, store->file) == EOF || fflush(store->file) != 0)
        return fail(store, "it cannot be written");
    return true;
}

// Takes up whole lines; cuts off what a run that was killed left of another.
static bool take_up(lw_store *store)
{
    char head[100];
    long at, whole;
    ssize_t length;
    write_head(store, head, sizeof head);
    if (getline(&store->line, &store->line_room, store->file) < 0 ||
        strncmp(store->line, MAGIC, strlen(MAGIC)) != 0)
        return fail(store, "this is no table that a sweep began");
    if (strcmp(store->line, head) != 0)
        return fail(store, "something else was asked there; ask the same, or take another -o");
    for (whole = at = ftell(store->file);
         (length = getline(&store->line, &store->line_room, store->file)) > 0; at = whole) {
        char *end;
        const size_t point = strtoull(store->line, &end, 10) - 1;
        if (store->line[length - 1] != '\n' || *end != ' ' || point >= store->sweep->points) break;
        store->done += store->at[point] == 0;
        store->at[point] = at;
        whole = at + (long)length;
    }
    return (ftruncate(fileno(store->file), whole) == 0 && fseek(store->file, 0, SEEK_END) == 0) ||
           fail(store, "it cannot be gone on with");
}

static bool is_there(const char *path) { return access(path, F_OK) == 0; }

bool lw_store_open(lw_store *store, const lw_sweep *sweep, const char *path, bool resumes,
                   bool may_replace)
{
    *store = (lw_store){.sweep = sweep};
    pthread_mutex_init(&store->lock, NULL);
    if (path) LW_FIT(store->path, "%s.part", path);
    store->at = calloc(sweep->points, sizeof *store->at);
    if (!store->at) return fail(store, "there is not enough memory");
    if (sweep->sought_count) lw_best_begin(&store->best, sweep);
    if (!path || !is_there(store->path)) {
        if (resumes && path && is_there(path))
            return fail(store, "it is not there: the table is whole already");
        return begin(store);
    }
    if (resumes)
        return ((store->file = fopen(store->path, "r+")) || fail(store, "it cannot be read")) &&
               take_up(store);
    if (may_replace) return begin(store);
    return fail(store, "it is there already; --resume goes on with it, --force begins anew");
}

void lw_store_close(lw_store *store, bool forgets)
{
    if (store->file) fclose(store->file);
    if (forgets && store->path[0]) unlink(store->path);
    free(store->at);
    free(store->gaps);
    free(store->line);
    lw_best_end(&store->best);
    pthread_mutex_destroy(&store->lock);
    *store = (lw_store){0};
}

// --- points

static bool is_search(const lw_store *store) { return store->sweep->sought_count > 0; }

static void tell_worth(lw_store *store, size_t point, const char *lines)
{
    if (is_search(store))
        lw_best_put(&store->best, point, lines ? lw_sweep_worth_of(store->sweep, lines) : NAN);
}

// What is kept of a run before is not asked for again.
static bool next_wanted(lw_store *store, size_t *point)
{
    while (lw_best_next(&store->best, point)) {
        if (!store->at[*point]) return true;
        tell_worth(store, *point, lw_store_lines(store, *point));
    }
    return false;
}

static bool next_of_all(lw_store *store, size_t *point)
{
    while (store->next < store->sweep->points && store->at[store->next]) store->next++;
    const bool has_one = store->next < store->sweep->points;
    if (has_one) *point = store->next++;
    return has_one;
}

bool lw_store_hand_out(lw_store *store, size_t *point)
{
    pthread_mutex_lock(&store->lock);
    const bool has_one = !store->is_broken &&
                         (is_search(store) ? next_wanted(store, point) : next_of_all(store, point));
    pthread_mutex_unlock(&store->lock);
    return has_one;
}

bool lw_store_is_over(lw_store *store)
{
    pthread_mutex_lock(&store->lock);
    const bool is_over = store->is_broken || (is_search(store) ? store->best.is_over
                                                               : store->done + store->gap_count >=
                                                                     store->sweep->points);
    pthread_mutex_unlock(&store->lock);
    return is_over;
}

size_t lw_store_waiting(lw_store *store)
{
    pthread_mutex_lock(&store->lock);
    const size_t waiting =
        is_search(store) ? lw_best_waiting(&store->best) : store->sweep->points - store->next;
    pthread_mutex_unlock(&store->lock);
    return waiting;
}

size_t lw_store_all(lw_store *store)
{
    pthread_mutex_lock(&store->lock);
    const size_t all = is_search(store) ? lw_best_wanted(&store->best) : store->sweep->points;
    pthread_mutex_unlock(&store->lock);
    return all;
}

void lw_store_put(lw_store *store, size_t point, const char *lines)
{
    pthread_mutex_lock(&store->lock);
    if (!store->at[point] && !store->is_broken) {
        const long at = fseek(store->file, 0, SEEK_END) == 0 ? ftell(store->file) : -1;
        store->is_broken = at <= 0 || fprintf(store->file, "%zu %s\n", point + 1, lines) < 0 ||
                           fflush(store->file) != 0;
        if (store->is_broken) fail(store, "it cannot be written");
        if (!store->is_broken) store->at[point] = at, store->done++;
        tell_worth(store, point, lines);
    }
    pthread_mutex_unlock(&store->lock);
}

void lw_store_leave(lw_store *store, size_t point, const char *why)
{
    pthread_mutex_lock(&store->lock);
    lw_gap *more = realloc(store->gaps, (store->gap_count + 1) * sizeof *more);
    if (more) {
        store->gaps = more;
        more[store->gap_count].point = point;
        LW_FIT(more[store->gap_count].why, "%s", why);
        store->gap_count++;
    }
    tell_worth(store, point, NULL);
    pthread_mutex_unlock(&store->lock);
}

const char *lw_store_lines(lw_store *store, size_t point)
{
    if (!store->at[point] || fseek(store->file, store->at[point], SEEK_SET) != 0) return NULL;
    const ssize_t length = getline(&store->line, &store->line_room, store->file);
    if (length <= 0) return NULL;
    store->line[strcspn(store->line, "\n")] = '\0';
    const char *space = strchr(store->line, ' ');
    return space ? space + 1 : NULL;
}

const char *lw_store_gap(const lw_store *store, size_t point)
{
    for (size_t i = 0; i < store->gap_count; i++) {
        if (store->gaps[i].point == point) return store->gaps[i].why;
    }
    return "not worked out yet";
}
