// source_text.c - bytes of a file, fetched and looked over before anything reads them.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "records/source_text.h"

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "records/utf8.h"

static void fault_of_file(lw_faults *faults, const char *path, const char *sentence)
{
    const lw_written written = {.file = path, .key = "", .text = ""};
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", sentence);
}

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

const char *lw_source_name(const char *path)
{
    return strcmp(path, "-") == 0 ? "standard input" : path;
}

char *lw_source_fetch(const char *path, size_t most, size_t *length, lw_faults *faults)
{
    const bool is_stdin = strcmp(path, "-") == 0;
    const char *sentence = sentence_of_errno(0);
    FILE *file = is_stdin ? stdin : open_source(path, &sentence);
    if (!file) {
        fault_of_file(faults, path, sentence);
        return NULL;
    }
    sentence = is_folder(file) ? sentence_of_errno(EISDIR) : NULL;
    char *text = sentence ? NULL : fetch(file, most, length);
    if (!sentence && !text) sentence = "there is not enough memory to read this";
    if (!sentence && ferror(file)) sentence = sentence_of_errno(errno);
    if (!sentence && *length > most) sentence = "the file is too long: 1 MB is the most";
    if (!is_stdin) fclose(file);
    if (!sentence) return text;

    fault_of_file(faults, path, sentence);
    free(text);
    return NULL;
}

static bool is_control(unsigned char byte)
{
    return (byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F;
}

// What is wrong with one character, or NULL.
static const char *fault_of_character(unsigned char byte, size_t length, bool is_indent)
{
    if (length == 0) return "this is not UTF-8: save the file as UTF-8 text";
    if (is_control(byte)) return "a control character: this is not a text file";
    if (byte == '\t' && is_indent) return "a tab: indent with spaces";
    return NULL;
}

// Every second byte of its first sixteen is zero, as in UTF-16, which may come without its mark.
static bool is_wide(const char *text, size_t length)
{
    size_t zeros[2] = {0, 0};
    if (length < 16) return false;
    for (size_t i = 0; i < 16; i++) zeros[i % 2] += text[i] == '\0';
    return zeros[0] + zeros[1] == 8 && (zeros[0] == 8 || zeros[1] == 8);
}

bool lw_source_is_clean(const char *file, const char *text, size_t length, lw_faults *faults)
{
    lw_written here = {.file = file, .line = 1, .column = 1, .key = "", .text = ""};
    if (is_wide(text, length)) {
        fault_of_file(faults, file, "this looks like UTF-16: save the file as UTF-8 text");
        return false;
    }
    bool is_indent = true, has_text = false;
    size_t step = 1;
    for (size_t i = 0; i < length; i += step) {
        const unsigned char byte = (unsigned char)text[i];
        step = lw_utf8_length(text + i, length - i);
        const char *sentence = fault_of_character(byte, step, is_indent);
        if (sentence) {
            LW_FIT(lw_faults_add(faults, &here)->sentence, "%s", sentence);
            return false;
        }
        here.column++;
        if (byte != ' ') is_indent = false;
        if (byte > ' ') has_text = true;
        if (byte == '\n') here.line++, here.column = 1, is_indent = true;
    }
    if (!has_text) fault_of_file(faults, file, "the file is empty");
    return has_text;
}
