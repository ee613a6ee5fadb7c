// home.c - where the logbook is when nobody says.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "records/logbook/logbook.h"

// [xdg-basedir]: a path that is not absolute does not count; nor does one that leaves no room.
static bool is_folder(const char *path)
{
    return path && path[0] == '/' && strlen(path) < LW_LOGBOOK_PATH - 64;
}

bool lw_logbook_home(char path[LW_LOGBOOK_PATH])
{
    const char *data = getenv("XDG_DATA_HOME"), *home = getenv("HOME");
    if (is_folder(data))
        lw_text_fit(path, LW_LOGBOOK_PATH, "%s/lullwise/logbook.db", data);
    else if (is_folder(home))
        lw_text_fit(path, LW_LOGBOOK_PATH, "%s/.local/share/lullwise/logbook.db", home);
    else
        return false;
    return true;
}
