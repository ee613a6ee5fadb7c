// guard.c - which requests are answered, and with what status.
// SPDX-License-Identifier: MIT

#include "desk/guard.h"

#include <stdio.h>
#include <string.h>
#include <strings.h>

#include "desk/days.h"
#include "desk/tracks.h"

// True when `text` is what comes of "%s:%u" with one of our names and the port.
static bool is_named(const char *text, const char *name, uint16_t port)
{
    char own[40];
    snprintf(own, sizeof own, "%s:%u", name, (unsigned)port);
    return strcasecmp(text, own) == 0;
}

// A browser names the origin of whatever changes something; who names none is no page of ours.
static lw_verdict verdict_of_days(const lw_asked *asked, const char *id)
{
    const bool is_of_removed = id && strcmp(id, LW_DAYS_REMOVED) == 0;
    const bool is_named_by_method =
        is_of_removed ? asked->is_reading : asked->is_removing == (id != NULL);
    const bool changes = asked->is_keeping || asked->is_removing;
    if (!asked->is_reading && !changes)
        return (lw_verdict){.status = 405,
                            .why = "Days are read, kept and taken out, nothing else.\n"};
    if (!is_named_by_method)
        return (lw_verdict){.status = 405, .why = "A day's own address is for taking it out.\n"};
    if (changes && asked->origin_count != 1)
        return (lw_verdict){.status = 403,
                            .why = "Days are changed by the desk's own page only.\n"};
    return (lw_verdict){.status = 200, .is_of_days = true, .id = id};
}

static lw_verdict verdict_of_track(const lw_asked *asked)
{
    if (!asked->is_keeping)
        return (lw_verdict){.status = 405, .why = "A track is sent here to be read, by POST.\n"};
    if (asked->origin_count != 1)
        return (lw_verdict){.status = 403,
                            .why = "Tracks are read for the desk's own page only.\n"};
    return (lw_verdict){.status = 200, .is_of_track = true};
}

// Somebody else's page, open in the same browser, can send requests here: by a name of its own
// that it leads to this address (the Host tells), or across origins (the Origin tells).
lw_verdict lw_guard_verdict(const lw_asked *asked, uint16_t port)
{
    if (asked->host_count != 1 || asked->origin_count > 1)
        return (lw_verdict){.status = 400,
                            .why = "A request names one host, and one origin at most.\n"};
    const bool is_local_name = is_named(asked->host, "localhost", port);
    if (!is_local_name && !is_named(asked->host, "127.0.0.1", port))
        return (lw_verdict){.status = 403, .why = "The desk answers under its own address only.\n"};
    if (asked->origin && !is_named(asked->origin, "http://127.0.0.1", port))
        return (lw_verdict){.status = 403, .why = "The desk answers its own page only.\n"};
    const char *id;
    if (asked->has_logbook && !is_local_name && lw_days_are_at(asked->target, &id))
        return verdict_of_days(asked, id);
    if (!is_local_name && strncmp(asked->target, LW_TRACK_AT, strlen(LW_TRACK_AT)) == 0)
        return verdict_of_track(asked);
    if (!asked->is_reading)
        return (lw_verdict){.status = 405,
                            .why = "The desk can be read, by GET or HEAD, and nothing else.\n"};
    const lw_part *part = lw_part_at(asked->target);
    if (!part)
        return (lw_verdict){.status = 404, .why = "The desk has nothing here. The page is at /.\n"};
    if (is_local_name)
        return (lw_verdict){.status = 307, .why = "The page is at 127.0.0.1.\n", .part = part};
    return (lw_verdict){.status = 200, .part = part};
}
