// log_folder.h - a folder for tests of the logbook, and files in it.
// SPDX-License-Identifier: MIT
//
// Define _DEFAULT_SOURCE before the first include.

#ifndef LW_TEST_LOG_FOLDER_H
#define LW_TEST_LOG_FOLDER_H

#include <sqlite3.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include "test/check.h"

static char folder[40];

// In memory where there is such a place: what is killed here is a program, not the machine.
static inline int enter_folder(void **state)
{
    (void)state;
    const char *place = access("/dev/shm", W_OK) == 0 ? "/dev/shm" : "/tmp";
    snprintf(folder, sizeof folder, "%s/lullwise-log-XXXXXX", place);
    return mkdtemp(folder) && chdir(folder) == 0 ? 0 : -1;
}

static inline int leave_folder(void **state)
{
    char line[100];
    (void)state;
    snprintf(line, sizeof line, "rm -r '%s'", folder);
    return system(line);
}

static inline void write_bytes(const char *path, const char *bytes, size_t length)
{
    FILE *file = fopen(path, "wb");
    CHECK(file && fwrite(bytes, 1, length, file) == length && fclose(file) == 0);
}

// A logbook as a version made it, written once and left as it was.
static inline void make_version(int version, const char *path)
{
    char sql[20000], name[200];
    snprintf(name, sizeof name, LW_TEST_DATA "/../logbook/version_%d.sql", version);
    FILE *file = fopen(name, "r");
    CHECK(file != NULL);
    sql[fread(sql, 1, sizeof sql - 1, file)] = '\0';
    fclose(file);
    sqlite3 *db;
    CHECK(sqlite3_open(path, &db) == SQLITE_OK);
    if (sqlite3_exec(db, sql, NULL, NULL, NULL)) fail_msg("%s", sqlite3_errmsg(db));
    sqlite3_close(db);
}

#endif
