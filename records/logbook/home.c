// home.c - where the logbook is when nobody says.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "records/logbook/logbook.h"

// [xdg-basedir]: a path that is not absolute does not count.
bool lw_logbook_home(char path[LW_LOGBOOK_PATH])
{
    const char *data = getenv("XDG_DATA_HOME"), *home = getenv("HOME");
    if (data && data[0] == '/')
        lw_text_fit(path, LW_LOGBOOK_PATH, "%s/lullwise/logbook.db", data);
    else if (home && home[0] == '/')
        lw_text_fit(path, LW_LOGBOOK_PATH, "%s/.local/share/lullwise/logbook.db", home);
    else
        return false;
    return true;
}
