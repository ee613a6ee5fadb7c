// nmea.c - tracks in NMEA 0183: RMC, GGA, VTG; wind by MWD, MWV and VHW.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/quantity.h"
#include "records/track/moment.h"
#include "records/track/reading.h"

#define FIELDS_MOST 32
#define DAY         86400.0  // [s]
#define FRESH       3.0      // [s] that a heading or a speed holds for a wind

// A fix is put together from the sentences of one time of day.
typedef struct nmea {
    lw_track_reading *r;
    double day, clock;  // [s] since 1970; [s] of the day; NAN: none yet
    bool has_date;
    bool is_pending, has_place;
    lw_track_point point;
    double heading, heading_at;  // [rad] and its clock, by VHW
} nmea;

typedef struct sentence {
    char *fields[FIELDS_MOST];  // the first is the name: "GPRMC"
    size_t count;
} sentence;

// --- sentences

static bool is_letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); }

static const char *start_of(const char *line)
{
    for (; *line; line++) {
        if (*line != '$' && *line != '!') continue;
        size_t i = 1;
        while (i <= 5 && is_letter(line[i])) i++;
        if (i == 6 && line[6] == ',') return line;
    }
    return NULL;
}

bool lw_nmea_is_sentence(const char *line) { return start_of(line) != NULL; }

static int hex(char c)
{
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

// The sum behind "*" is that of the bytes between "$" and it; without one nothing is known.
static bool is_sum_right(const char *from, const char *star)
{
    unsigned sum = 0;
    for (const char *at = from; at < star; at++) sum ^= (unsigned char)*at;
    return hex(star[1]) >= 0 && hex(star[2]) >= 0 &&
           sum == (unsigned)(16 * hex(star[1]) + hex(star[2]));
}

// Cuts a sentence at its commas.
static void cut(char *at, sentence *s)
{
    s->count = 0;
    while (at && s->count < FIELDS_MOST) {
        s->fields[s->count++] = at;
        at = strchr(at, ',');
        if (at) *at++ = '\0';
    }
}

static const char *field(const sentence *s, size_t i) { return i < s->count ? s->fields[i] : ""; }

static double number(const sentence *s, size_t i)
{
    double value;
    const char *rest;
    return lw_decimal_read(field(s, i), &value, &rest) && *rest == '\0' ? value : NAN;
}

static double angle(const sentence *s, size_t i)
{
    const double degrees = number(s, i);
    return fabs(degrees) <= 360.0 ? degrees * LW_DEG : NAN;
}

// Degrees and minutes "4807.038" with the side behind, S and W negative.
static double place(const sentence *s, size_t i)
{
    const double written = number(s, i), degrees = floor(written / 100.0);
    const double minutes = written - 100.0 * degrees;
    const char side = field(s, i + 1)[0];
    if (!(minutes < 60.0) || written < 0.0 || !side || !strchr("NSEW", side)) return NAN;
    return (side == 'S' || side == 'W' ? -1.0 : 1.0) * (degrees + minutes / 60.0);
}

// "123519.25": seconds of the day.
static double clock_of(const sentence *s, size_t i)
{
    const double written = number(s, i), hours = floor(written / 1e4);
    const double minutes = floor(written / 100.0) - 100.0 * hours;
    const double seconds = written - 1e4 * hours - 100.0 * minutes;
    if (!(hours >= 0.0 && hours < 24.0 && minutes < 60.0 && seconds < 61.0)) return NAN;
    return 3600.0 * hours + 60.0 * minutes + seconds;
}

// "230394": seconds since 1970; years from 80 on are of the last century.
static double day_of(const sentence *s, size_t i)
{
    const double written = number(s, i);
    if (strlen(field(s, i)) != 6 || !(written >= 0.0)) return NAN;
    const int date = (int)written, year = date % 100;
    const int whole = year + (year < 80 ? 2000 : 1900);
    if (!lw_is_day(whole, date / 100 % 100, date / 10000)) return NAN;
    return DAY * lw_days_of(whole, date / 100 % 100, date / 10000);
}

// --- fixes

static bool hand_over(nmea *n)
{
    const bool is_there = n->is_pending && n->has_place;
    n->is_pending = n->has_place = false;
    if (!is_there) return true;
    n->point.time = n->day + n->clock;
    return lw_track_add(n->r, &n->point);
}

// The first date: what came before it had times of day only.
static void set_day(nmea *n, double day)
{
    if (!n->has_date) {
        lw_track_file *file = n->r->file;
        for (size_t i = n->r->first; i < file->count; i++) file->points[i].time += day - n->day;
    }
    n->has_date = true;
    n->day = day;
}

// A sentence of this time of day: a new fix, if it is another. Past midnight the day is the next.
static bool begin_clock(nmea *n, double clock)
{
    if (n->is_pending && clock == n->clock) return true;
    if (!hand_over(n)) return false;
    if (clock < n->clock - 0.5 * DAY) n->day += DAY;
    n->clock = clock;
    n->is_pending = true;
    n->point = (lw_track_point){.speed = NAN, .course = NAN};
    return true;
}

static bool put_place(nmea *n, const sentence *s, size_t i)
{
    const double latitude = place(s, i), longitude = place(s, i + 2);
    if (isnan(latitude) || isnan(longitude)) return false;
    n->point.latitude_deg = latitude;
    n->point.longitude_deg = longitude;
    n->has_place = true;
    return true;
}

static bool lack_fix(nmea *n)
{
    n->r->file->counts[LW_TRACK_READ]++;
    n->r->file->counts[LW_TRACK_WITHOUT_FIX]++;
    return true;
}

static bool is_broken(nmea *n)
{
    lw_track_broken(n->r, n->r->line_number);
    return true;
}

static bool on_rmc(nmea *n, const sentence *s)
{
    const double clock = clock_of(s, 1), day = day_of(s, 9), speed = number(s, 7);
    if (field(s, 2)[0] == 'V') return lack_fix(n);
    if (isnan(clock) || isnan(place(s, 3)) || isnan(place(s, 5))) return is_broken(n);
    if (!begin_clock(n, clock)) return false;
    put_place(n, s, 3);
    if (!isnan(day)) set_day(n, day);
    if (speed >= 0.0) n->point.speed = speed * LW_KN;
    n->point.course = angle(s, 8);
    return true;
}

static bool on_gga(nmea *n, const sentence *s)
{
    const double clock = clock_of(s, 1);
    if (field(s, 6)[0] == '0') return lack_fix(n);
    if (isnan(clock) || isnan(place(s, 2)) || isnan(place(s, 4))) return is_broken(n);
    if (!begin_clock(n, clock)) return false;
    return n->has_place || put_place(n, s, 2);
}

static bool on_vtg(nmea *n, const sentence *s)
{
    const double knots = number(s, 5), kmh = number(s, 7);
    if (!n->is_pending) return true;
    if (isnan(n->point.speed) && knots >= 0.0) n->point.speed = knots * LW_KN;
    if (isnan(n->point.speed) && kmh >= 0.0) n->point.speed = kmh / 3.6;
    if (isnan(n->point.course)) n->point.course = angle(s, 1);
    return true;
}

// --- wind

static void add_wind(nmea *n, double from, double speed)
{
    lw_track_told_wind *wind = &n->r->file->wind;
    if (isnan(from) || !(speed >= 0.0 && speed < 100.0)) return;
    wind->east += lw_sin(from);
    wind->north += lw_cos(from);
    wind->speed += speed;
    wind->count++;
}

static bool on_mwd(nmea *n, const sentence *s)
{
    const double knots = number(s, 5), mps = number(s, 7);
    add_wind(n, angle(s, 1), isnan(knots) ? mps : knots * LW_KN);
    return true;
}

static bool on_vhw(nmea *n, const sentence *s)
{
    n->heading = angle(s, 1);
    n->heading_at = n->clock;
    return true;
}

// An angle from the bow: as a true wind, or felt on board, from which her own way is taken out.
static bool on_mwv(nmea *n, const sentence *s)
{
    const char unit = field(s, 4)[0];
    const double scale = unit == 'N' ? LW_KN : unit == 'K' ? 1.0 / 3.6 : unit == 'M' ? 1.0 : NAN;
    const double speed = number(s, 3) * scale, off = angle(s, 1);
    if (field(s, 5)[0] == 'V' || isnan(off) || isnan(speed)) return true;
    const bool is_fresh = fabs(n->clock - n->heading_at) <= FRESH;
    const double from = off + (is_fresh ? n->heading : NAN);
    if (field(s, 2)[0] == 'T') {
        add_wind(n, from, speed);
        return true;
    }
    if (!n->is_pending || isnan(from) || isnan(n->point.speed) || isnan(n->point.course))
        return true;
    const double east = speed * lw_sin(from) - n->point.speed * lw_sin(n->point.course);
    const double north = speed * lw_cos(from) - n->point.speed * lw_cos(n->point.course);
    add_wind(n, lw_atan2(east, north), sqrt(east * east + north * north));
    return true;
}

// --- the file

static const struct {
    const char *name;
    bool (*on)(nmea *n, const sentence *s);
} known[] = {{"RMC", on_rmc}, {"GGA", on_gga}, {"VTG", on_vtg},
             {"MWD", on_mwd}, {"MWV", on_mwv}, {"VHW", on_vhw}};

static bool read_line(nmea *n)
{
    sentence s;
    size_t *counts = n->r->file->counts;
    char *at = n->r->line + strcspn(n->r->line, "$!");
    const char *start = start_of(at);
    if (!start) {
        counts[LW_TRACK_OTHER] += n->r->line[strspn(n->r->line, " \t")] != '\0';
        return true;
    }
    at += start - at + 1;
    char *star = strchr(at, '*');
    if (star && !is_sum_right(at, star)) {
        counts[LW_TRACK_WRONG_SUMS]++;
        return true;
    }
    if (star) *star = '\0';
    cut(at, &s);
    for (size_t i = 0; i < sizeof known / sizeof known[0]; i++) {
        if (strcmp(s.fields[0] + 2, known[i].name) == 0) return known[i].on(n, &s);
    }
    counts[LW_TRACK_OTHER]++;
    return true;
}

bool lw_nmea_read(lw_track_reading *r)
{
    nmea n = {.r = r, .clock = NAN, .heading = NAN, .heading_at = NAN};
    const size_t faults = r->faults->fault_count, before = r->file->counts[LW_TRACK_WITHOUT_FIX];
    while (lw_track_line(r)) {
        if (!read_line(&n)) return false;
    }
    if (r->faults->fault_count > faults || !hand_over(&n)) return false;
    if (r->file->count > r->first) {
        r->file->lacks_date |= !n.has_date;
        return true;
    }
    if (r->file->counts[LW_TRACK_WITHOUT_FIX] > before)
        return lw_track_refuse(r, 0, "the receiver never had a fix", "");
    return lw_track_refuse(r, 0, "this NMEA 0183 has no place in it",
                           "sentences RMC or GGA with right checksums");
}
