// output_file.c - output that is written whole or not at all.
// SPDX-License-Identifier: MIT

#define _XOPEN_SOURCE 700  // realpath

#include "records/output_file.h"

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#define PATH_MOST 4096

bool lw_output_open(lw_output *output)
{
    *output = (lw_output){0};
    output->stream = open_memstream(&output->bytes, &output->length);
    return output->stream != NULL;
}

void lw_output_drop(lw_output *output)
{
    if (output->stream) fclose(output->stream);
    free(output->bytes);
    *output = (lw_output){0};
}

static const char *reason(int number)
{
    switch (number) {
        case EEXIST:
            return "the file is there already; --force replaces it";
        case ENOENT:
            return "there is no such folder";
        case EACCES:
            return "nothing may be written there";
        case EISDIR:
            return "this is a folder, not a file";
        case ENXIO:
            return "this is a pipe, and nobody reads it";
        case ENOSPC:
            return "there is no room left";
        default:
            return "it cannot be written";
    }
}

static bool write_all(int file, const lw_output *output)
{
    for (size_t done = 0; done < output->length;) {
        const ssize_t wrote = write(file, output->bytes + done, output->length - done);
        if (wrote < 0 && errno == EINTR) continue;
        if (wrote <= 0) return false;
        done += (size_t)wrote;
    }
    return true;
}

// Writes and closes; the error number, or 0.
static int fill(int file, const lw_output *output)
{
    if (file < 0) return errno;
    const int number = write_all(file, output) ? 0 : errno;
    if (close(file) != 0 && number == 0) return errno;
    return number;
}

static int write_new(const char *path, const lw_output *output)
{
    const int file = open(path, O_WRONLY | O_CREAT | O_EXCL, 0666);
    const int number = fill(file, output);
    if (file >= 0 && number) unlink(path);
    return number;
}

// Beside the old file first, then in its place in one step.
static int write_instead(const char *path, mode_t mode, const lw_output *output)
{
    char beside[PATH_MOST];
    const int length = snprintf(beside, sizeof beside, "%s.XXXXXX", path);
    if (length < 0 || (size_t)length >= sizeof beside) return ENAMETOOLONG;
    const int file = mkstemp(beside);
    if (file < 0) return errno;
    int number = fchmod(file, mode & 0777) == 0 ? 0 : errno;
    const int filled = fill(file, output);
    if (number == 0) number = filled;
    if (number == 0 && rename(beside, path) != 0) number = errno;
    if (number) unlink(beside);
    return number;
}

// A pipe, a terminal: opened without waiting, so that a pipe that nobody reads is told.
static int write_stream(const char *path, const lw_output *output)
{
    const int file = open(path, O_WRONLY | O_NONBLOCK);
    if (file >= 0) fcntl(file, F_SETFL, O_WRONLY);
    return fill(file, output);
}

static int write_file(const char *path, bool may_replace, const lw_output *output)
{
    struct stat about;
    if (!may_replace || stat(path, &about) != 0) return write_new(path, output);
    if (S_ISDIR(about.st_mode)) return EISDIR;
    if (!S_ISREG(about.st_mode)) return write_stream(path, output);
    char *real =
        realpath(path, NULL);  // through a link: what it leads to is replaced, not the link
    const int wrote = real ? write_instead(real, about.st_mode, output) : errno;
    free(real);
    return wrote;
}

// The folder of a path: "." when it names none.
static void folder_of(const char *path, char folder[PATH_MOST])
{
    const char *slash = strrchr(path, '/');
    const size_t length = !slash ? 0 : slash == path ? 1 : (size_t)(slash - path);
    snprintf(folder, PATH_MOST, "%.*s", slash ? (int)length : 1, slash ? path : ".");
}

bool lw_output_can(const char *path, bool may_replace, const char **why)
{
    struct stat about;
    char folder[PATH_MOST];
    int number = 0;
    if (!path || strcmp(path, "-") == 0) return true;
    folder_of(path, folder);
    const bool is_there = lstat(path, &about) == 0;
    if (!is_there && errno != ENOENT) number = errno;
    if (is_there && !may_replace) number = EEXIST;
    if (is_there && may_replace && stat(path, &about) == 0 && S_ISDIR(about.st_mode))
        number = EISDIR;
    if (is_there && number == 0 && access(path, W_OK) != 0) number = errno;
    const bool in_folder = !is_there || S_ISREG(about.st_mode);
    if (number == 0 && in_folder && access(folder, W_OK) != 0) number = errno;
    if (number) *why = reason(number);
    return number == 0;
}

bool lw_output_commit(lw_output *output, const char *path, bool may_replace, const char **why)
{
    const bool is_gathered = fclose(output->stream) == 0;
    output->stream = NULL;
    int number = is_gathered ? 0 : ENOMEM;
    fflush(stdout);  // what was said before stands before it, should both go to one place
    if (number == 0 && path && strcmp(path, "-") != 0) {
        number = write_file(path, may_replace, output);
    } else if (number == 0) {
        number = write_all(STDOUT_FILENO, output) ? 0 : errno;
    }
    if (number) *why = reason(number);
    lw_output_drop(output);
    return number == 0;
}
