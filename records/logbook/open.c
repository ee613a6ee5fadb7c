// open.c - a logbook opened, or made; what is none is refused.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "records/logbook/schema.h"
#include "records/logbook/statement.h"

#define PATIENCE 10000  // [ms] for another writer

static bool refuse(lw_logbook *book, const char *sentence)
{
    char path[200];
    lw_text_tame(path, sizeof path, book->path);
    LW_FIT(book->why, "%s: %s", path, sentence);
    return false;
}

static bool refuse_version(lw_logbook *book, long version)
{
    char sentence[200];
    LW_FIT(sentence,
           "a logbook of version %ld, and this program knows none beyond %d: a newer lullwise "
           "reads it",
           version, LW_LOGBOOK_VERSION);
    return refuse(book, sentence);
}

// --- the file's first bytes, before anything could write

#define HEAD       100  // bytes of an SQLite file's header [sqlite-format]
#define PAGE_AT    16   // bytes of a page; we make none of 65536, which is written as 1
#define VERSION_AT 60
#define OURS_AT    68

static uint32_t big_endian(const unsigned char *at)
{
    return (uint32_t)at[0] << 24 | (uint32_t)at[1] << 16 | (uint32_t)at[2] << 8 | at[3];
}

static bool is_head_ours(lw_logbook *book, const unsigned char *head, size_t length, off_t size)
{
    static const char magic[] = "SQLite format 3";
    if (length < HEAD || memcmp(head, magic, sizeof magic) != 0)
        return refuse(book, "this is no logbook; nothing was written. Name another file");
    if (big_endian(head + OURS_AT) != LW_LOGBOOK_APPLICATION)
        return refuse(book, "a database, but no logbook; nothing was written. Name another file");
    const uint32_t version = big_endian(head + VERSION_AT);
    if (version > LW_LOGBOOK_VERSION) return refuse_version(book, (long)version);
    const uint32_t page = (uint32_t)head[PAGE_AT] << 8 | head[PAGE_AT + 1];
    return (page > 1 && size % page == 0) || lw_logbook_fail(book, SQLITE_CORRUPT);
}

// Looks at what is there. An empty file is as good as none to one that writes.
static bool is_ours(lw_logbook *book, bool writes)
{
    unsigned char head[HEAD];
    struct stat about;
    const int file = open(book->path, O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    if (file < 0 && errno == ENOENT)
        return writes || refuse(book, "no logbook is there yet; `lullwise log add` begins one");
    if (file < 0) return refuse(book, "this file may not be read");
    const bool is_plain = fstat(file, &about) == 0 && S_ISREG(about.st_mode);
    const ssize_t length = is_plain ? read(file, head, sizeof head) : -1;
    close(file);
    if (!is_plain) return refuse(book, "this is no plain file");
    if (length < 0) return refuse(book, "this file may not be read");
    if (length == 0)
        return writes || refuse(book, "the file is empty; `lullwise log add` makes it a logbook");
    return is_head_ours(book, head, (size_t)length, about.st_size);
}

// --- folders above it

static bool make_folders(lw_logbook *book)
{
    char path[LW_LOGBOOK_PATH];
    LW_FIT(path, "%s", book->path);
    for (char *at = strchr(path + 1, '/'); at; at = strchr(at + 1, '/')) {
        *at = '\0';
        if (mkdir(path, 0777) != 0 && errno != EEXIST)
            return refuse(book, "its folder cannot be made; --logbook FILE keeps it elsewhere");
        *at = '/';
    }
    return true;
}

// --- the database

// SQLite gives ":memory:" and "file:" a meaning of its own; behind a folder they are names.
static const char *folder_before(const char *path) { return path[0] == '/' ? "" : "./"; }

static int connect_to(lw_logbook *book, int flags)
{
    char *name = sqlite3_mprintf("%s%s", folder_before(book->path), book->path);
    const int result = name ? sqlite3_open_v2(name, &book->db, flags, NULL) : SQLITE_NOMEM;
    sqlite3_free(name);
    return result;
}

// Days may stand beside the file that are not yet in it.
static bool has_more_beside(const char *path)
{
    struct stat about;
    char *name = sqlite3_mprintf("%s-wal", path);
    const bool has_more = !name || (stat(name, &about) == 0 && about.st_size > 0);
    sqlite3_free(name);
    return has_more;
}

// In a folder that may not be written SQLite reads only what it is told will not change.
static int connect_still(lw_logbook *book)
{
    char *name = sqlite3_mprintf("file:%s%s?immutable=1", folder_before(book->path), book->path);
    const bool is_plain = name && !strpbrk(book->path, "?#%") &&  // a URI reads them otherwise
                          !has_more_beside(book->path);
    sqlite3_close(book->db);
    book->db = NULL;
    const int flags = SQLITE_OPEN_READONLY | SQLITE_OPEN_URI;
    const int result = is_plain ? sqlite3_open_v2(name, &book->db, flags, NULL) : SQLITE_CANTOPEN;
    sqlite3_free(name);
    return result;
}

// One that reads opens it for writing too, where it may: the last to close it tidies up behind all.
static bool connect(lw_logbook *book, bool writes)
{
    const int flags = SQLITE_OPEN_READWRITE | (writes ? SQLITE_OPEN_CREATE : 0);
    int number, result = connect_to(book, flags);
    if (result != SQLITE_OK) return lw_logbook_fail(book, result);
    sqlite3_busy_timeout(book->db, PATIENCE);
    if (writes || lw_logbook_number(book, "PRAGMA user_version", &number)) return true;
    const int error = sqlite3_errcode(book->db) & 0xFF;
    if (error != SQLITE_CANTOPEN && error != SQLITE_READONLY) return false;
    result = connect_still(book);
    return result == SQLITE_OK || lw_logbook_fail(book, result);
}

// Every page is where it should be: nothing is written into what is damaged.
static bool is_whole(lw_logbook *book)
{
    sqlite3_stmt *row = lw_statement(book, "PRAGMA integrity_check(1)");
    const bool is_ok = row && sqlite3_step(row) == SQLITE_ROW &&
                       strcmp((const char *)sqlite3_column_text(row, 0), "ok") == 0;
    return (lw_statement_run(book, row) && is_ok) || lw_logbook_fail(book, SQLITE_CORRUPT);
}

// Values in the file are not trusted: no function is run that a schema names.
static bool set_up(lw_logbook *book, bool writes)
{
    sqlite3_db_config(book->db, SQLITE_DBCONFIG_DEFENSIVE, 1, NULL);
    sqlite3_db_config(book->db, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, NULL);
    sqlite3_extended_result_codes(book->db, 1);
    if (!lw_logbook_do(book, "PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL")) return false;
    if (writes && !lw_schema_make(book)) return false;
    int application = 0;
    if (!lw_logbook_number(book, "PRAGMA user_version", &book->version) ||
        !lw_logbook_number(book, "PRAGMA application_id", &application))
        return false;
    if (application != LW_LOGBOOK_APPLICATION) return refuse(book, "this is no logbook");
    if (book->version > LW_LOGBOOK_VERSION) return refuse_version(book, book->version);
    if (book->version < 1) return refuse(book, "this is no logbook");
    if (!is_whole(book)) return false;
    if (writes && book->version < LW_LOGBOOK_VERSION && !lw_schema_renew(book)) return false;
    sqlite3_exec(book->db, writes ? "PRAGMA journal_mode = WAL" : "", NULL, NULL, NULL);
    return true;
}

bool lw_logbook_open(lw_logbook *book, const char *path, bool writes)
{
    *book = (lw_logbook){.path = path};
    if (!path[0]) return refuse(book, "no file is named");
    if (strlen(path) >= LW_LOGBOOK_PATH) return refuse(book, "the name is too long for a file");
    if (!is_ours(book, writes) || (writes && !make_folders(book))) return false;
    if (connect(book, writes) && set_up(book, writes)) return true;
    lw_logbook_close(book);
    return false;
}

void lw_logbook_close(lw_logbook *book)
{
    sqlite3_close(book->db);
    book->db = NULL;
}
