// source_file.c - bytes of a file, fetched.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "records/source_text.h"

static const char *sentence_of_errno(int number)
{
    switch (number) {
        case ENOENT:
            return "there is no such file";
        case EACCES:
            return "this file may not be read";
        case EISDIR:
            return "this is a folder, not a file";
        case ENAMETOOLONG:
            return "the name is too long for a file";
        default:
            return "the file cannot be read";
    }
}

#define PATIENCE 30000  // [ms] for the first byte of a pipe

// A file open for reading, or NULL with a sentence. A pipe that nobody writes into is not waited
// for for ever.
static FILE *open_source(const char *path, const char **sentence)
{
    struct stat about;
    const int file = open(path, O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    if (file < 0) {
        *sentence = sentence_of_errno(errno);
        return NULL;
    }
    struct pollfd first = {.fd = file, .events = POLLIN};
    if (fstat(file, &about) == 0 && S_ISFIFO(about.st_mode) && poll(&first, 1, PATIENCE) <= 0) {
        *sentence = "this is a pipe, and nobody has written into it for half a minute";
        close(file);
        return NULL;
    }
    fcntl(file, F_SETFL, fcntl(file, F_GETFL) & ~O_NONBLOCK);
    FILE *stream = fdopen(file, "rb");
    if (!stream) close(file);
    return stream;
}

static bool is_folder(FILE *file)
{
    struct stat about;
    return fstat(fileno(file), &about) == 0 && S_ISDIR(about.st_mode);
}

// Up to `room` bytes; more than `most` of them are a fault.
static char *fetch(FILE *file, size_t most, size_t *length)
{
    char *text = malloc(most + 2);
    if (!text) return NULL;
    *length = fread(text, 1, most + 1, file);
    text[*length] = '\0';
    return text;
}

// Standard input by a handle of its own, which can be closed like any file.
static FILE *open_stdin(void)
{
    const int file = dup(STDIN_FILENO);
    FILE *stream = file < 0 ? NULL : fdopen(file, "rb");
    if (!stream && file >= 0) close(file);
    return stream;
}

FILE *lw_source_open(const char *path, lw_faults *faults)
{
    const char *sentence = sentence_of_errno(0);
    FILE *file = strcmp(path, "-") == 0 ? open_stdin() : open_source(path, &sentence);
    if (file && !is_folder(file)) return file;
    if (file) sentence = sentence_of_errno(EISDIR);
    if (file) fclose(file);
    lw_source_fault(faults, path, sentence);
    return NULL;
}

char *lw_source_fetch(const char *path, size_t most, size_t *length, lw_faults *faults)
{
    const char *sentence = NULL;
    char too_long[64];
    FILE *file = lw_source_open(path, faults);
    if (!file) return NULL;
    char *text = fetch(file, most, length);
    if (!text) sentence = "there is not enough memory to read this";
    if (!sentence && ferror(file)) sentence = sentence_of_errno(errno);
    if (!sentence && *length > most) {
        LW_FIT(too_long, "the file is too long: %.3g MB is the most", (double)most / 1e6);
        sentence = too_long;
    }
    fclose(file);
    if (!sentence) return text;

    lw_source_fault(faults, path, sentence);
    free(text);
    return NULL;
}
