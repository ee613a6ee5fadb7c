// main.c - writes the manual pages and completions that are installed, into a folder.
// SPDX-License-Identifier: MIT

#include <stdio.h>
#include <string.h>

#include "manual/complete.h"
#include "manual/mdoc.h"
#include "records/fault.h"
#include "records/record_file.h"

static FILE *open_in(const char *folder, const char *name)
{
    char path[4096];
    LW_FIT(path, "%s/%s", folder, name);
    FILE *out = fopen(path, "w");
    if (!out) perror(path);
    return out;
}

static bool write_page(const char *folder, const char *name, int section, const char *what,
                       void write(const lw_mdoc *page))
{
    char file[100];
    LW_FIT(file, "%s.%d", name, section);
    const lw_mdoc page = {open_in(folder, file), name, section, what, LW_VERSION, LW_DATE};
    if (!page.out) return false;
    write(&page);
    return fclose(page.out) == 0;
}

static bool write_record(const char *folder, const lw_record *record)
{
    char file[100], name[100], what[100];
    LW_FIT(name, "lullwise-%s", record->name);
    LW_FIT(file, "%s.5", name);
    LW_FIT(what, "a %s as lullwise reads it", record->name);
    const lw_mdoc page = {open_in(folder, file), name, 5, what, LW_VERSION, LW_DATE};
    if (!page.out) return false;
    lw_mdoc_record(&page, record);
    return fclose(page.out) == 0;
}

static bool write_completion(const char *folder, const char *name, void write(FILE *out))
{
    FILE *out = open_in(folder, name);
    if (!out) return false;
    write(out);
    return fclose(out) == 0;
}

int main(int count, char **words)
{
    const char *folder = count == 2 ? words[1] : ".";
    bool is_fine = write_page(folder, "lullwise", 1, "which set-up to sail on a foiling dinghy",
                              lw_mdoc_program) &&
                   write_page(folder, "lullwise-sweep", 1, "tables of answers on many machines",
                              lw_mdoc_ranks) &&
                   write_completion(folder, "lullwise.bash", lw_complete_bash) &&
                   write_completion(folder, "_lullwise", lw_complete_zsh) &&
                   write_completion(folder, "lullwise.fish", lw_complete_fish);
    for (size_t i = 0; lw_records[i]; i++) is_fine = is_fine && write_record(folder, lw_records[i]);
    return is_fine ? 0 : 1;
}
