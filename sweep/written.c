// written.c - a sweep's table written down: CSV and JSON lines.
// SPDX-License-Identifier: MIT

#include "sweep/written.h"

#include <string.h>

#include "records/output_file.h"

// --- lines

static const char *lines_of(lw_store *store, lw_sweep_worker *worker, size_t point)
{
    const char *lines = lw_store_lines(store, point);
    if (!lines) lines = lw_sweep_gap(worker, point, lw_store_gap(store, point));
    return lines ? lines : "";
}

static void write_csv_cell(FILE *out, const char *cell, size_t length)
{
    if (strcspn(cell, ",\"\x1f\x1e") >= length) {
        fwrite(cell, 1, length, out);
        return;
    }
    fputc('"', out);
    for (size_t i = 0; i < length; i++) {
        if (cell[i] == '"') fputc('"', out);
        fputc(cell[i], out);
    }
    fputc('"', out);
}

static void write_csv_lines(FILE *out, const char *at)
{
    const char *cell;
    size_t length;
    char end;
    do {
        end = lw_lines_cell(&at, &cell, &length);
        write_csv_cell(out, cell, length);
        fputc(end == LW_CELL_END ? ',' : '\n', out);
    } while (end);
}

void lw_sweep_write_csv(lw_store *store, lw_sweep_worker *worker, FILE *out)
{
    char head[LW_HEAD_TEXT];
    bool is_text;
    for (size_t k = 0; lw_sweep_head(store->sweep, k, head, &is_text); k++) {
        if (k) fputc(',', out);
        write_csv_cell(out, head, strlen(head));
    }
    fputc('\n', out);
    for (size_t i = 0; i < store->sweep->points; i++) {
        if (store->sweep->sought_count && !store->at[i]) continue;  // not tried
        write_csv_lines(out, lines_of(store, worker, i));
    }
}

static void write_json_text(FILE *out, const char *text, size_t length)
{
    fputc('"', out);
    for (size_t i = 0; i < length; i++) {
        if (text[i] == '"' || text[i] == '\\') fputc('\\', out);
        fputc(text[i], out);
    }
    fputc('"', out);
}

static void write_json_member(FILE *out, const char *head, bool is_text, const char *cell,
                              size_t length)
{
    write_json_text(out, head, strlen(head));
    fputs(": ", out);
    if (length == 0)
        fputs("null", out);
    else if (is_text)
        write_json_text(out, cell, length);
    else
        fwrite(cell, 1, length, out);
}

static void write_json_lines(const lw_sweep *sweep, FILE *out, const char *at)
{
    char head[LW_HEAD_TEXT], end;
    const char *cell;
    size_t length;
    bool is_text;
    do {
        size_t k = 0;
        do {
            lw_sweep_head(sweep, k, head, &is_text);
            end = lw_lines_cell(&at, &cell, &length);
            fputs(k++ ? ", " : "{", out);
            write_json_member(out, head, is_text, cell, length);
        } while (end == LW_CELL_END);
        fputs("}\n", out);
    } while (end);
}

void lw_sweep_write_json(lw_store *store, lw_sweep_worker *worker, FILE *out)
{
    for (size_t i = 0; i < store->sweep->points; i++) {
        write_json_lines(store->sweep, out, lines_of(store, worker, i));
    }
}

// --- all that was asked for

static bool commit(lw_store *store, lw_output *output, const char *path)
{
    const char *why = "there is not enough memory";
    const lw_options *options = store->sweep->options;
    const bool may_replace = lw_options_has(options, "force") || lw_options_has(options, "resume");
    if (lw_output_commit(output, path, may_replace, &why)) return true;
    LW_FIT(store->why, "%s: %s", path ? path : "the table", why);
    return false;
}

static bool write_table(lw_store *store)
{
    const lw_options *options = store->sweep->options;
    lw_sweep_worker *worker = lw_sweep_worker_new(store->sweep);
    lw_output output = {0};
    const bool can = worker && lw_output_open(&output);
    if (can && lw_options_has(options, "json") && !store->sweep->sought_count)
        lw_sweep_write_json(store, worker, output.stream);
    else if (can)
        lw_sweep_write_csv(store, worker, output.stream);
    lw_sweep_worker_free(worker);
    if (can) return commit(store, &output, lw_options_text(options, "output"));
    LW_FIT(store->why, "there is not enough memory");
    return false;
}

static bool write_map(lw_store *store, const char *path)
{
    lw_output output;
    if (!lw_output_open(&output)) {
        LW_FIT(store->why, "there is not enough memory");
        return false;
    }
    if (lw_sweep_write_map(store, output.stream)) return commit(store, &output, path);
    lw_output_drop(&output);
    return false;
}

static bool write_all(lw_store *store)
{
    const char *map = lw_options_text(store->sweep->options, "svg");
    return write_table(store) && (!map || write_map(store, map));
}

// Of a search the table is of what was tried; what it came to is told apart.
static bool finish_search(lw_store *store)
{
    if (!store->best.is_over || store->best.is_short) {
        LW_FIT(store->why, "%zu points are worked out%s%s", store->done,
               store->path[0] ? " and kept in " : "; with -o FILE they would be kept", store->path);
        if (store->path[0]) lw_text_add(store->why, sizeof store->why, "; --resume goes on");
        return false;
    }
    return !lw_options_text(store->sweep->options, "output") || write_table(store);
}

bool lw_sweep_finish(lw_store *store)
{
    if (store->sweep->sought_count) return !store->is_broken && finish_search(store);
    const size_t points = store->sweep->points, missing = points - store->done;
    if (store->is_broken) return false;
    if (missing && store->path[0] && !store->gap_count) {
        LW_FIT(store->why, "%zu of %zu points are worked out and kept in %s; --resume goes on",
               store->done, points, store->path);
        return false;
    }
    if (!write_all(store)) return false;
    if (missing)
        LW_FIT(store->why, "%zu of %zu points are missing%s%s%s", missing, points,
               store->gap_count ? ", one of them because " : "",
               store->gap_count ? store->gaps[0].why : "",
               store->path[0] ? "; --resume works them out" : "");
    return !missing;
}
