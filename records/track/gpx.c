// gpx.c - tracks in GPX 1.0 and 1.1, by expat.
// SPDX-License-Identifier: MIT

#include <expat.h>
#include <math.h>
#include <string.h>

#include "lullwise/quantity.h"
#include "records/track/moment.h"
#include "records/track/reading.h"

#define DEPTH_MOST 32  // elements inside each other
#define TEXT_MOST  64  // bytes of a number or a time
#define QUIET_MOST 16  // chunks without anything that is known: a word of a megabyte

typedef struct gpx {
    lw_track_reading *r;
    XML_Parser parser;
    size_t depth, point_depth;  // of the element; of the track's point, 0: outside
    bool is_gpx, is_stopped, has_event, has_route;
    bool has_time, is_broken;  // of the point
    lw_track_point point;
    char text[TEXT_MOST];  // of the element; as long as it may be
    size_t text_length;
} gpx;

// "trkpt" of "trkpt" and of "g:trkpt".
static const char *local(const char *name)
{
    const char *colon = strchr(name, ':');
    return colon ? colon + 1 : name;
}

static void stop(gpx *g, const char *sentence, const char *expected)
{
    if (g->is_stopped) return;
    g->is_stopped = true;
    lw_track_refuse(g->r, XML_GetCurrentLineNumber(g->parser), sentence, expected);
    XML_StopParser(g->parser, XML_FALSE);
}

// A number and nothing else.
static bool number_of(const char *text, double *value)
{
    const char *rest;
    text += strspn(text, " \t\r\n");
    return lw_decimal_read(text, value, &rest) && rest[strspn(rest, " \t\r\n")] == '\0';
}

static void begin_point(gpx *g, const char **attributes)
{
    g->point_depth = g->depth;
    g->point =
        (lw_track_point){.latitude_deg = NAN, .longitude_deg = NAN, .speed = NAN, .course = NAN};
    g->has_time = g->is_broken = false;
    for (size_t i = 0; attributes[i]; i += 2) {
        double *to = NULL;
        if (strcmp(attributes[i], "lat") == 0) to = &g->point.latitude_deg;
        if (strcmp(attributes[i], "lon") == 0) to = &g->point.longitude_deg;
        if (to && !number_of(attributes[i + 1], to)) *to = NAN;
    }
}

static void XMLCALL on_start(void *data, const char *name, const char **attributes)
{
    gpx *g = data;
    name = local(name);
    g->has_event = true;
    g->text_length = 0;
    g->depth++;
    if (g->depth > DEPTH_MOST) {
        stop(g, "elements lie inside each other too deep", "32 at most");
    } else if (g->depth == 1) {
        g->is_gpx = strcmp(name, "gpx") == 0;
        if (!g->is_gpx) stop(g, "this is XML, but no GPX", "<gpx>");
    } else if (strcmp(name, "trkseg") == 0) {
        g->r->starts = true;
    } else if (strcmp(name, "trkpt") == 0 && !g->point_depth) {
        begin_point(g, attributes);
    } else if (strcmp(name, "rte") == 0) {
        g->has_route = true;
    }
}

static void end_point(gpx *g)
{
    g->point_depth = 0;
    if (g->is_broken) {
        lw_track_broken(g->r, XML_GetCurrentLineNumber(g->parser));
    } else if (!g->has_time) {
        g->r->file->counts[LW_TRACK_READ]++;
        g->r->file->counts[LW_TRACK_WITHOUT_TIME]++;
    } else if (!lw_track_add(g->r, &g->point)) {
        g->is_stopped = true;
        XML_StopParser(g->parser, XML_FALSE);
    }
}

// A member of the point itself, not of what extends it.
static void end_member(gpx *g, const char *name)
{
    double value;
    g->text[g->text_length] = '\0';
    if (strcmp(name, "time") == 0) {
        g->has_time = lw_moment_read(g->text, &g->point.time);
        g->is_broken |= !g->has_time;
    } else if (strcmp(name, "speed") == 0 && number_of(g->text, &value) && value >= 0.0) {
        g->point.speed = value;
    } else if (strcmp(name, "course") == 0 && number_of(g->text, &value) && fabs(value) <= 360.0) {
        g->point.course = value * LW_DEG;
    }
}

static void XMLCALL on_end(void *data, const char *name)
{
    gpx *g = data;
    g->has_event = true;
    if (g->is_stopped) return;
    if (g->point_depth && g->depth == g->point_depth)
        end_point(g);
    else if (g->point_depth && g->depth == g->point_depth + 1)
        end_member(g, local(name));
    g->text_length = 0;
    g->depth--;
}

// What does not fit is no number and no time: what is read of it will not be one either.
static void XMLCALL on_text(void *data, const char *text, int length)
{
    gpx *g = data;
    const size_t left = TEXT_MOST - 1 - g->text_length;
    const size_t taken = (size_t)length < left ? (size_t)length : left;
    g->has_event = true;
    memcpy(g->text + g->text_length, text, taken);
    g->text_length += taken;
}

// Entities are declared there, and could swell without end; no GPX needs one.
static void XMLCALL on_doctype(void *data, const char *name, const char *system, const char *public,
                               int has_inside)
{
    (void)name, (void)system, (void)public, (void)has_inside;
    stop(data, "a DOCTYPE is declared here, which is not taken", "GPX without a DOCTYPE");
}

static void set_up(gpx *g)
{
    XML_SetUserData(g->parser, g);
    XML_SetElementHandler(g->parser, on_start, on_end);
    XML_SetCharacterDataHandler(g->parser, on_text);
    XML_SetStartDoctypeDeclHandler(g->parser, on_doctype);
    XML_SetParamEntityParsing(g->parser, XML_PARAM_ENTITY_PARSING_NEVER);
}

static bool refuse_xml(gpx *g)
{
    char sentence[160];
    LW_FIT(sentence, "this is no XML from here on: %s",
           XML_ErrorString(XML_GetErrorCode(g->parser)));
    return lw_track_refuse(g->r, XML_GetCurrentLineNumber(g->parser), sentence, "");
}

// The file ends inside an element: it was cut, or is still being written.
static bool is_cut(const gpx *g)
{
    const enum XML_Error error = XML_GetErrorCode(g->parser);
    const bool is_open = error == XML_ERROR_NO_ELEMENTS || error == XML_ERROR_UNCLOSED_TOKEN ||
                         error == XML_ERROR_PARTIAL_CHAR ||
                         error == XML_ERROR_UNCLOSED_CDATA_SECTION;
    return g->r->is_over && is_open && g->depth > 0 && g->r->file->count > g->r->first;
}

static bool parse(gpx *g)
{
    size_t quiet = 0;
    do {
        g->has_event = false;
        const int length = (int)g->r->length;
        const enum XML_Status status = XML_Parse(g->parser, g->r->chunk, length, g->r->is_over);
        if (g->is_stopped) return false;
        if (status == XML_STATUS_ERROR && is_cut(g)) {
            g->r->file->counts[LW_TRACK_CUT]++;
            return true;
        }
        if (status == XML_STATUS_ERROR) return refuse_xml(g);
        quiet = g->has_event ? 0 : quiet + 1;
        if (quiet > QUIET_MOST) {
            stop(g, "a single word or comment is longer than a megabyte", "");
            return false;
        }
        if (g->r->is_over) return true;
        lw_track_chunk(g->r);
    } while (true);
}

bool lw_gpx_read(lw_track_reading *r)
{
    gpx g = {.r = r, .parser = XML_ParserCreate(NULL)};
    const size_t timeless = r->file->counts[LW_TRACK_WITHOUT_TIME];
    if (!g.parser) return lw_faults_no_memory(r->faults, r->path);
    set_up(&g);
    const bool is_read = parse(&g);
    XML_ParserFree(g.parser);
    if (!is_read || r->file->count > r->first) return is_read;
    if (r->file->counts[LW_TRACK_WITHOUT_TIME] > timeless)
        return lw_track_refuse(r, 0, "no point of its track has a time: speeds cannot be told", "");
    if (g.has_route)
        return lw_track_refuse(r, 0, "this has a route, but no track: nobody has sailed it", "");
    return lw_track_refuse(r, 0, "this GPX has no track",
                           "<trk> with <trkpt lat= lon=> and <time>");
}
