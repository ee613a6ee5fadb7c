// guard.c - which requests are answered, and with what status.
// SPDX-License-Identifier: MIT

#include "desk/guard.h"

#include <stdio.h>
#include <string.h>
#include <strings.h>

// True when `text` is what comes of "%s:%u" with one of our names and the port.
static bool is_named(const char *text, const char *name, uint16_t port)
{
    char own[40];
    snprintf(own, sizeof own, "%s:%u", name, (unsigned)port);
    return strcasecmp(text, own) == 0;
}

// Somebody else's page, open in the same browser, can send requests here: by a name of its own
// that it leads to this address (the Host tells), or across origins (the Origin tells).
lw_verdict lw_guard_verdict(const lw_asked *asked, uint16_t port)
{
    if (asked->host_count != 1 || asked->origin_count > 1)
        return (lw_verdict){400, "A request names one host, and one origin at most.\n", NULL};
    const bool is_local_name = is_named(asked->host, "localhost", port);
    if (!is_local_name && !is_named(asked->host, "127.0.0.1", port))
        return (lw_verdict){403, "The desk answers under its own address only.\n", NULL};
    if (asked->origin && !is_named(asked->origin, "http://127.0.0.1", port))
        return (lw_verdict){403, "The desk answers its own page only.\n", NULL};
    if (!asked->is_reading)
        return (lw_verdict){405, "The desk can be read, by GET or HEAD, and nothing else.\n", NULL};
    const lw_part *part = lw_part_at(asked->target);
    if (!part) return (lw_verdict){404, "The desk has nothing here. The page is at /.\n", NULL};
    if (is_local_name) return (lw_verdict){307, "The page is at 127.0.0.1.\n", part};
    return (lw_verdict){200, NULL, part};
}
