// options.c - the options of all questions in one table, and those given.
// SPDX-License-Identifier: MIT

#include "answer/options.h"

#include <string.h>

#include "records/record_value.h"

// clang-format off
static const lw_quantity wind_row = {
    .key = "wind", .unit = LW_UNIT_KN, .min = 0.5, .max = 60.0,
    .usual_min = 3.0, .usual_max = 35.0};
static const lw_quantity wind_from_row = {
    .key = "wind-from", .unit = LW_UNIT_DEG, .min = 0.0, .max = 360.0};
static const lw_quantity heading_row = {
    .key = "heading", .unit = LW_UNIT_DEG, .min = -180.0, .max = 180.0};
static const lw_quantity heel_row = {
    .key = "heel", .unit = LW_UNIT_DEG, .min = 0.0, .max = 45.0};
static const lw_quantity place_row = {
    .key = "place", .unit = LW_UNIT_M, .min = -1.0, .max = 5.0, .decimals = 2};
static const lw_quantity turns_row = {
    .key = "turns", .unit = LW_UNIT_TURN, .min = -50.0, .max = 50.0, .decimals = 1};
static const lw_quantity bow_row = {
    .key = "bow", .unit = LW_UNIT_DEG, .min = -20.0, .max = 20.0, .decimals = 1};
static const lw_quantity ride_height_row = {
    .key = "ride-height", .unit = LW_UNIT_CM, .min = -30.0, .max = 150.0};
static const lw_quantity wand_row = {
    .key = "wand", .unit = LW_UNIT_DEG, .min = -20.0, .max = 100.0};
static const lw_quantity puff_row = {
    .key = "puff", .unit = LW_UNIT_KN, .min = 0.0, .max = 20.0, .decimals = 1};
static const lw_quantity speed_row = {
    .key = "speed", .unit = LW_UNIT_KN, .min = 0.2, .max = 80.0, .decimals = 1};
static const lw_quantity froude_row = {
    .key = "froude", .unit = LW_UNIT_NONE, .min = 0.05, .max = 3.0, .decimals = 2};
static const lw_quantity length_row = {
    .key = "length", .unit = LW_UNIT_M, .min = 0.2, .max = 20.0, .decimals = 2};
static const lw_quantity alpha_row = {
    .key = "alpha", .unit = LW_UNIT_DEG, .min = -30.0, .max = 30.0, .decimals = 2};
static const lw_quantity flap_row = {
    .key = "flap", .unit = LW_UNIT_DEG, .min = -30.0, .max = 30.0, .decimals = 1};
static const lw_quantity flap_chord_row = {
    .key = "flap-chord", .unit = LW_UNIT_NONE, .min = 0.05, .max = 0.6, .decimals = 2};
static const lw_quantity depth_row = {
    .key = "depth", .unit = LW_UNIT_M, .min = 0.0, .max = 10.0, .decimals = 2};
static const lw_quantity re_row = {
    .key = "re", .unit = LW_UNIT_NONE, .min = 5e4, .max = 2e7};
static const lw_quantity trip_row = {
    .key = "trip", .unit = LW_UNIT_NONE, .min = 0.001, .max = 1.0, .decimals = 3};
static const lw_quantity waves_row = {
    .key = "waves", .unit = LW_UNIT_NONE, .min = 1.0, .max = 14.0, .decimals = 1};
static const lw_quantity load_row = {
    .key = "load", .unit = LW_UNIT_N, .min = 1.0, .max = 20000.0};
static const lw_quantity minutes_row = {
    .key = "minutes", .unit = LW_UNIT_NONE, .min = 0.1, .max = 1440.0, .decimals = 1};
static const lw_quantity every_row = {
    .key = "every", .unit = LW_UNIT_S, .min = 0.02, .max = 600.0, .decimals = 2};
static const lw_quantity seed_row = {
    .key = "seed", .unit = LW_UNIT_NONE, .min = 0.0, .max = 9e15};
static const lw_quantity runs_row = {
    .key = "runs", .unit = LW_UNIT_NONE, .min = 2.0, .max = 100000.0};
static const lw_quantity draws_row = {
    .key = "draws", .unit = LW_UNIT_NONE, .min = 0.0, .max = 1e8};
static const lw_quantity threads_row = {
    .key = "threads", .unit = LW_UNIT_NONE, .min = 1.0, .max = 256.0};
static const lw_quantity patience_row = {
    .key = "patience", .unit = LW_UNIT_S, .min = 2.0, .max = 86400.0};
static const lw_quantity error_row = {
    .key = "error", .unit = LW_UNIT_PERCENT, .min = 0.1, .max = 100.0, .decimals = 1};
static const lw_quantity left_row = {
    .key = "left", .unit = LW_UNIT_NMI, .min = 0.01, .max = 200.0, .decimals = 2};
static const lw_quantity builds_to_row = {
    .key = "builds-to", .unit = LW_UNIT_KN, .min = 0.5, .max = 60.0, .decimals = 1};
static const lw_quantity stop_row = {
    .key = "stop", .unit = LW_UNIT_S, .min = 0.0, .max = 3600.0};
static const lw_quantity season_row = {
    .key = "season", .unit = LW_UNIT_KN, .min = 2.0, .max = 40.0,
    .usual_min = 3.0, .usual_max = 35.0};
static const lw_quantity days_row = {
    .key = "days", .unit = LW_UNIT_NONE, .min = 1.0, .max = 200.0};
static const lw_quantity width_row = {
    .key = "width", .unit = LW_UNIT_NONE, .min = 240.0, .max = 10000.0};
static const lw_quantity port_row = {
    .key = "port", .unit = LW_UNIT_NONE, .min = 1024.0, .max = 65535.0};

static const lw_option list[] = {
    {"help",    'h', NULL,        NULL, "Show this help."},
    {"boat",    0,   "FILE",      NULL, "The boat as measured. Without it: a generic boat."},
    {"sailor",  0,   "FILE",      NULL, "Who sails. Without it: a sailor of 75 kg."},
    {"day",     0,   "FILE",      NULL, "Wind, sea and course. Without it: 8, 11 and 14 kn in "
                                        "lull, "
                                        "mean and puff, upwind and down again."},
    {"learned", 0,   "FILE",      NULL, "What lullwise learn has learned of the boat, put into her "
                                        "before anything is worked out."},
    {"set",     0,   "KEY=VALUE", NULL, "Change one value after the files are read, as in --set "
                                        "main_foil.span='1.05 m'. May be given again."},
    {"pin",     0,   "LABEL",     NULL, "This pin only; for hold: the pin in the boat; for "
                                        "log: the pin sailed."},
    {"wind",    0,   "SPEED",     &wind_row, "True wind at the height where the day's wind is "
                                        "read, as in --wind '12 kn'."},
    {"wind-from", 0, "ANGLE",     &wind_from_row, "Where the wind comes from, clockwise from "
                                        "north, as in --wind-from '225 deg', instead of what the "
                                        "track tells."},
    {"heading", 0,   "ANGLE",     &heading_row, "Course from the wind, as in --heading '60 deg': 0 "
                                        "dead upwind, 180 dead downwind."},
    {"heel",    0,   "ANGLE",     &heel_row, "Windward heel, as in --heel '15 deg'."},
    {"place",   0,   "LENGTH",    &place_row, "Where the sailor sits, forward of the transom, as "
                                        "in --place '1.2 m'."},
    {"turns",   0,   "TURNS",     &turns_row, "Rudder lift on from the reference mark, as in "
                                        "--turns '2 turns'."},
    {"sign",    0,   "WORD",      NULL, "What the boat does, as in --sign bow-up. May be given "
                                        "again."},
    {"bow",     0,   "ANGLE",     &bow_row, "Bow up as a photo has it, as in --bow '2 deg'; down: "
                                        "negative."},
    {"ride-height", 0, "LENGTH",  &ride_height_row, "Hull above the water as a photo has it, as "
                                        "in --ride-height '55 cm'."},
    {"wand",    0,   "ANGLE",     &wand_row, "Wand from straight down, swung aft positive, as a "
                                        "photo has it, as in --wand '35 deg'."},
    {"trim",    0,   "WORD",      NULL, "How the sailor trims: speed, hold (most in hand) or level "
                                        "(the bow); speed without it."},
    {"puff",    0,   "SPEED",     &puff_row, "How far a puff goes above the wind that the boat is "
                                        "trimmed for, as in --puff '3 kn'."},
    {"sensitivity", 0, NULL,      NULL, "Also tell which measurements matter most."},
    {"aim",     0,   "WORD",      NULL, "race, steady or easy, instead of the day's aim."},
    {"against", 0,   "KEY=VALUE", NULL, "Answer twice, side by side: as things are, and with this "
                                        "value changed. May be given again."},
    {"section", 0,   "NAME|FILE", NULL, "The foil's section: a designation, as in --section "
                                        "'NACA 2412', or a file of x and y."},
    {"alpha",   0,   "ANGLES",    &alpha_row, "Angles of attack in degrees: one, or from:to:step, "
                                        "as in --alpha -4:12:1."},
    {"re",      0,   "NUMBER",    &re_row, "Reynolds number of the chord, as in --re 3e6."},
    {"trip",    0,   "PART",      &trip_row, "Both layers turbulent from this part of the chord on "
                                        "at the latest, as a rough nose makes them."},
    {"waves",   0,   "NUMBER",    &waves_row, "How often waves in a layer grow e times before it "
                                        "turns turbulent: 9, a quiet tunnel; 4, rough water."},
    {"flap",    0,   "ANGLE",     &flap_row, "Flap, trailing edge down positive, as in --flap "
                                        "'5 deg'."},
    {"flap-chord", 0, "PART",     &flap_chord_row, "Of the chord that is flap, as in --flap-chord "
                                        "0.3, which is taken without it."},
    {"depth",   0,   "LENGTH",    &depth_row, "Of the foil below the surface, as in --depth "
                                        "'0.5 m', which is taken without it."},
    {"part",    0,   "WORD",      NULL, "main or rudder: which foil of the boat."},
    {"load",    0,   "FORCE",     &load_row, "What the foil is to carry, as in --load '900 N'."},
    {"svg",     0,   "FILE",      NULL, "Also draw it as a picture into this file."},
    {"width",   0,   "NUMBER",    &width_row, "Of the picture that --svg draws, in pixels: what "
                                        "does not fit beside one another is set below."},
    {"speed",   0,   "SPEEDS",    &speed_row, "Through the water: one, or from:to:step, as in "
                                        "--speed '1:8:0.5 kn'."},
    {"froude",  0,   "NUMBERS",   &froude_row, "Froude numbers on the length, instead of speeds: "
                                        "one, or from:to:step, as in --froude 0.25:1.0:0.05."},
    {"wigley",  0,   NULL,        NULL, "A mathematical hull instead of a boat's."},
    {"offsets", 0,   "FILE",      NULL, "A hull's table of offsets, instead of lines between the "
                                        "boat's dimensions: a line such as 'unit mm', one of "
                                        "heights, "
                                        "then x, keel and half-breadths of each station."},
    {"length",  0,   "LENGTH",    &length_row, "Of the mathematical hull, as in --length '3 m'."},
    {"course",  0,   "WORD",      NULL, "upwind, reach or downwind: upwind and downwind on the "
                                        "heading with the best VMG."},
    {"minutes", 0,   "NUMBER",    &minutes_row, "How long a ride takes; 10 without it."},
    {"seed",    0,   "NUMBER",    &seed_row, "Which gusts and waves: the same number, the same "
                                             "ride. "
                                        "1 without it."},
    {"runs",    0,   "NUMBER",    &runs_row, "So many rides at most, from this seed on, each with "
                                        "the next one's gusts and waves."},
    {"error",   0,   "PART",      &error_row, "With --runs: ends as soon as every rate is known "
                                        "to this part, as in --error '5 %', which is taken "
                                        "without it."},
    {"days",    0,   "NUMBER",    &days_row, "How many days are invented; 40 without it."},
    {"every",   0,   "TIME",      &every_row, "From row to row of the history, as in --every "
                                        "'0.2 s', which is taken without it."},
    {"csv",     0,   "FILE",      NULL, "Also write the history into this file, a row a "
                                        "line; log export: the days."},
    {"geojson", 0,   "FILE",      NULL, "Also write a map of it into this file, as GeoJSON."},
    {"left",    0,   "LENGTH",    &left_row, "Of the race along its legs, from mark to mark, as in "
                                        "--left '3 nmi'. Without it: the day's course once."},
    {"builds-to", 0, "SPEED",     &builds_to_row, "Mean wind expected at the finish, as in "
                                        "--builds-to '16 kn'. Without it: the day's, to the end."},
    {"stop",    0,   "TIME",      &stop_row, "What a stop to change the pin costs, from slowing "
                                        "down to sailing at speed again: by a watch, or 120 s, "
                                        "which "
                                        "is taken without it."},
    {"over",    0,   "KEY=VALUES", NULL, "Vary this: --over person.mass=55:100:5kg, or values "
                                        "with semicolons between, as in --over 'sailor=wren.yaml; "
                                        "heron.yaml'. May be given again; the last goes fastest."},
    {"best",    0,   "KEY=BOUNDS", NULL, "Seek hardware within from:to:step, as in --best "
                                        "main_foil.span=0.9:1.2:0.02m. Up to four times."},
    {"draws",   0,   "NUMBER",    &draws_row, "So many draws of boat and sailor within the errors "
                                        "of their tables, at every point."},
    {"ask",     0,   "WORD",      NULL, "choice, range, swims, flight or balance; choice without "
                                        "it."},
    {"threads", 0,   "NUMBER",    &threads_row, "At work at once; as many as the machine has cores "
                                        "without it."},
    {"patience", 0,  "TIME",      &patience_row, "A rank from which nothing is heard for so long "
                                        "is dead; 30 s without it."},
    {"resume",  0,   NULL,        NULL, "Go on with the table that -o FILE has begun, and fill its "
                                        "gaps."},
    {"map",     0,   "COLUMN",    NULL, "What --svg shows, of each point's first line."},
    {"second",  0,   "FILE",      NULL, "A second sailor of this boat, on the same card."},
    {"season",  0,   "SPEEDS",    &season_row, "A card for mean winds from:to:step, eight at most, "
                                        "as in --season '6:24:3 kn', instead of the day's."},
    {"paper",   0,   "WORD",      NULL, "A6, A5 or half-letter (5.5 x 8.5 in); A6 without it."},
    {"date",    0,   "DATE",      NULL, "Of the card or the logged day, as in --date "
                                        "2030-05-17; today without it."},
    {"pdf",     0,   "FILE",      NULL, "Also write both pages as PDF; takes rsvg-convert."},
    {"png",     0,   "FILE",      NULL, "Also write each page as a picture of 300 dots an inch, "
                                        "named as for --svg; takes rsvg-convert."},
    {"notes",   0,   "TEXT",      NULL, "Your own words on the day."},
    {"track",   0,   "FILE",      NULL, "A track of the day: its name is kept, and a hash "
                                        "that tells whether it is still the same. May be given "
                                        "again."},
    {"logbook", 0,   "FILE",      NULL, "The logbook, instead of lullwise/logbook.db in "
                                        "$XDG_DATA_HOME or ~/.local/share."},
    {"port",    0,   "NUMBER",    &port_row, "Where the page is, instead of at port 8247. What the "
                                        "page keeps belongs to its port."},
    {"no-browser", 0, NULL,       NULL, "Only print the address."},
    {"output",  'o', "FILE",      NULL, "Write to this file instead of standard output."},
    {"force",   0,   NULL,        NULL, "Replace the file if it is there already."},
    {"json",    0,   NULL,        NULL, "Answer in JSON."},
};
// clang-format on
#define OPTION_COUNT (sizeof list / sizeof list[0])

const lw_option *lw_option_at(size_t i) { return i < OPTION_COUNT ? &list[i] : NULL; }

const lw_option *lw_option_named(const char *name)
{
    for (size_t i = 0; i < OPTION_COUNT; i++) {
        if (strcmp(list[i].name, name) == 0) return &list[i];
    }
    return NULL;
}

const char *lw_options_nth(const lw_options *options, const char *name, size_t n)
{
    for (size_t i = 0; i < options->count; i++) {
        if (strcmp(options->given[i]->name, name) == 0 && n-- == 0) return options->texts[i];
    }
    return NULL;
}

const char *lw_options_text(const lw_options *options, const char *name)
{
    const char *text = NULL;
    for (size_t i = 0; i < options->count; i++) {
        if (strcmp(options->given[i]->name, name) == 0) text = options->texts[i];
    }
    return text;
}

bool lw_options_has(const lw_options *options, const char *name)
{
    return lw_options_text(options, name) != NULL;
}

bool lw_options_quantity(const lw_options *options, const char *name, double *si, lw_faults *faults)
{
    const lw_option *option = lw_option_named(name);
    const char *text = lw_options_text(options, name);
    if (!text || !option || !option->row) return false;
    char key[64];
    LW_FIT(key, "--%s", option->name);
    const lw_written written = {.file = "command line", .key = key, .text = text};
    return lw_written_quantity(&written, option->row, si, faults);
}
