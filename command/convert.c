// convert.c - pictures as PDF and PNG, by rsvg-convert.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "command/convert.h"

#include <errno.h>
#include <spawn.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "records/fault.h"

#define PROGRAM    "rsvg-convert"
#define PATH_MOST  4096
#define PAGES_MOST 2

extern char **environ;

bool lw_convert_is_there(void)
{
    char path[PATH_MOST];
    const char *at = getenv("PATH");
    while (at && *at) {
        const size_t length = strcspn(at, ":");
        const int wrote = snprintf(path, sizeof path, "%.*s/" PROGRAM, (int)length, at);
        if (wrote > 0 && (size_t)wrote < sizeof path && access(path, X_OK) == 0) return true;
        at += length + (at[length] == ':');
    }
    return false;
}

// A folder of its own for what the program reads and writes.
typedef struct folder {
    char path[PATH_MOST];
    char pages[PAGES_MOST][PATH_MOST + 16], made[PATH_MOST + 16];
} folder;

static bool make_folder(folder *at)
{
    const char *base = getenv("TMPDIR");
    const int wrote =
        snprintf(at->path, sizeof at->path, "%s/lullwise-XXXXXX", base && base[0] ? base : "/tmp");
    if (wrote < 0 || (size_t)wrote >= sizeof at->path || !mkdtemp(at->path)) return false;
    for (int i = 0; i < PAGES_MOST; i++) LW_FIT(at->pages[i], "%s/%d.svg", at->path, i + 1);
    LW_FIT(at->made, "%s/made", at->path);
    return true;
}

static void remove_folder(const folder *at)
{
    for (int i = 0; i < PAGES_MOST; i++) unlink(at->pages[i]);
    unlink(at->made);
    rmdir(at->path);
}

static bool put_page(const char *path, lw_output *page)
{
    if (fflush(page->stream) != 0) return false;
    FILE *file = fopen(path, "wb");
    if (!file) return false;
    const bool is_put = fwrite(page->bytes, 1, page->length, file) == page->length;
    return fclose(file) == 0 && is_put;
}

static bool fetch(const char *path, lw_output *to)
{
    char bytes[8192];
    size_t length;
    FILE *file = fopen(path, "rb");
    if (!file) return false;
    while ((length = fread(bytes, 1, sizeof bytes, file)) > 0) fwrite(bytes, 1, length, to->stream);
    const bool is_read = !ferror(file) && !ferror(to->stream);
    return fclose(file) == 0 && is_read;
}

// Runs the program over the pages that lie in the folder.
static bool run(folder *at, size_t count, char *format)
{
    char dots[] = "300", program[] = PROGRAM, f[] = "-f", d[] = "-d", p[] = "-p", o[] = "-o";
    char *words[9 + PAGES_MOST + 1] = {program, f, format, d, dots, p, dots, o, at->made};
    pid_t child;
    int status = 0;
    for (size_t i = 0; i < count; i++) words[9 + i] = at->pages[i];
    if (posix_spawnp(&child, PROGRAM, NULL, NULL, words, environ) != 0) return false;
    while (waitpid(child, &status, 0) < 0) {
        if (errno != EINTR) return false;
    }
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

bool lw_convert(lw_output *pages, size_t count, const char *format, lw_output *to, const char **why)
{
    static folder at;
    char kind[8];
    *why = "no folder could be made for rsvg-convert";
    if (!make_folder(&at)) return false;
    bool is_put = true;
    for (size_t i = 0; i < count && i < PAGES_MOST; i++) is_put &= put_page(at.pages[i], &pages[i]);
    snprintf(kind, sizeof kind, "%s", format);
    *why = "rsvg-convert could not make it";
    const bool is_made = is_put && run(&at, count, kind) && fetch(at.made, to);
    remove_folder(&at);
    return is_made;
}
