// same_bits.c - prints a hash of what the engine answers; every build must print the same.
// SPDX-License-Identifier: MIT
//
// test/same_bits.sh builds it with several compilers, levels, widths and as WebAssembly. One line
// for each part of the engine, so that a difference tells where to look.

#include <stdio.h>
#include <string.h>

#include "lullwise/boundary_layer.h"
#include "lullwise/choice.h"
#include "lullwise/elementary.h"
#include "lullwise/hull_shape.h"
#include "lullwise/modes.h"
#include "lullwise/wing.h"
#include "medium/gust_lanes.h"
#include "medium/sea_lanes.h"
#include "solve/eigen.h"
#include "solve/elementary.h"
#include "test/preset.h"
#include "test/ride.h"
#include "test/wings.h"

#define CASES 4096  // a multiple of every width

// FNV-1a over the eight bytes of x; every NaN counts as the same.
static uint64_t hash_with(uint64_t hash, double x)
{
    uint64_t bits = UINT64_C(0x7ff8000000000000);
    if (x == x) memcpy(&bits, &x, sizeof bits);
    for (int i = 0; i < 8; i++) hash = (hash ^ ((bits >> 8 * i) & 0xff)) * UINT64_C(0x100000001b3);
    return hash;
}

static uint64_t hash_start(void) { return UINT64_C(0xcbf29ce484222325); }

static void print_hash(const char *what, uint64_t hash)
{
    printf("%-12s %016llx\n", what, (unsigned long long)hash);
}

// --- elementary functions

typedef struct elementary {
    const char *name;
    lw_lanes (*lanes)(lw_lanes x, lw_lanes y);
    double (*number)(double x, double y);
} elementary;

#define OF_ONE(name)                                     \
    static lw_lanes name##_lanes(lw_lanes x, lw_lanes y) \
    {                                                    \
        (void)y;                                         \
        return lw_lanes_##name(x);                       \
    }                                                    \
    static double name##_number(double x, double y)      \
    {                                                    \
        (void)y;                                         \
        return lw_##name(x);                             \
    }
#define OF_TWO(name)                                                                       \
    static lw_lanes name##_lanes(lw_lanes x, lw_lanes y) { return lw_lanes_##name(x, y); } \
    static double name##_number(double x, double y) { return lw_##name(x, y); }
#define AS_ROW(name) {#name, name##_lanes, name##_number},

// clang-format off
#define EACH_OF_ONE(X) X(sin) X(cos) X(tan) X(asin) X(acos) X(atan) X(exp) X(log) X(log10) X(cbrt) \
                       X(tanh) X(sinh) X(cosh)
#define EACH_OF_TWO(X) X(atan2) X(pow)
EACH_OF_ONE(OF_ONE)
EACH_OF_TWO(OF_TWO)
static const elementary functions[] = {EACH_OF_ONE(AS_ROW) EACH_OF_TWO(AS_ROW)};
// clang-format on

// Any double at all every other time, else one of the sizes that boats have.
static double argument(random_stream *stream)
{
    const uint64_t bits = random_bits(stream);
    if (bits & 1) return random_between(stream, -30.0, 30.0);
    double x;
    memcpy(&x, &bits, sizeof x);
    return x;
}

static void print_function(const elementary *function)
{
    static double x[CASES], y[CASES], lanes[CASES];
    random_stream stream = {1};
    for (int i = 0; i < CASES; i++) {
        x[i] = argument(&stream);
        y[i] = argument(&stream);
    }
    for (int i = 0; i < CASES; i += LW_WIDTH) {
        lw_lanes a, b;
        memcpy(&a, x + i, sizeof a);
        memcpy(&b, y + i, sizeof b);
        const lw_lanes got = function->lanes(a, b);
        memcpy(lanes + i, &got, sizeof got);
    }

    uint64_t hash = hash_start();
    for (int i = 0; i < CASES; i++) {
        hash = hash_with(hash, lanes[i]);
        hash = hash_with(hash, function->number(x[i], y[i]));
    }
    print_hash(function->name, hash);
}

// --- balances

#define BALANCES 1000

#define HASH_OF(hash, record) \
    hash_of((hash), (const double *)(record), sizeof *(record) / sizeof(double))

static uint64_t hash_of(uint64_t hash, const double *x, size_t n)
{
    for (size_t i = 0; i < n; i++) hash = hash_with(hash, x[i]);
    return hash;
}

static uint64_t hash_answer(uint64_t hash, const lw_answer *answer)
{
    hash = hash_with(hash, answer->outcome);
    return HASH_OF(HASH_OF(hash, &answer->flight), &answer->margins);
}

// Flights, and towed boats on the hull and off it.
static void print_balances(void)
{
    static lw_ask asks[BALANCES];
    static lw_answer answers[BALANCES];
    const lw_craft craft = preset_craft();
    random_stream stream = {1};
    for (int i = 0; i < BALANCES; i++) {
        asks[i] = random_flight(&craft, &stream);
        if (i % 4 == 0) lw_ask_give_speed(&asks[i], random_between(&stream, 1.0, 12.0));
    }
    lw_balance(&craft, asks, answers, BALANCES);
    uint64_t hash = hash_start();
    for (int i = 0; i < BALANCES; i++) hash = hash_answer(hash, &answers[i]);
    print_hash("craft", HASH_OF(hash_start(), &craft));
    print_hash("balances", hash);
}

// --- a day's choice, through the prepared craft, ranges and laps

static void print_choice(void)
{
    static lw_outlook outlook;
    lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    boat.pin_count = 2;
    day.wind.lull = 9.0 * LW_KN, day.wind.mean = 12.0 * LW_KN, day.wind.puff = 15.0 * LW_KN;
    day.leg_count = 1;
    day.legs[0] = (lw_leg){0.0, 800.0};
    lw_outlook_prepare(&outlook, &boat, preset_sections(), &person, &day);

    uint64_t hash = hash_start();
    for (size_t pin = 0; pin < boat.pin_count; pin++) {
        const lw_range *range = &outlook.ranges[pin][0];
        for (int i = 0; i < LW_RANGE_WINDS; i++) {
            hash = hash_answer(hash, &range->at[i].trimmed);
            hash = hash_answer(hash, &range->at[i].puffed);
        }
    }
    print_hash("range", hash);

    const lw_choice choice = lw_choice_of(&outlook, LW_AIM_RACE, 0.0);
    hash = hash_start();
    for (size_t i = 0; i < choice.count; i++) hash = HASH_OF(hash, &choice.places[i].prospect);
    print_hash("choice", hash);
}

// --- wings and hulls

static void print_wing(void)
{
    static lw_wing_lattice lattice;
    static lw_wing_load load;
    uint64_t hash = hash_start();
    const lw_wing wing = straight_wing(8.0, 0.5, 0.0, 5.9);
    for (int i = 0; i < 5; i++) {
        const lw_wing_place place = {0.5 * i, 0.1 * i};
        if (lw_wing_lay(&lattice, &wing, lw_wing_mesh_usual(), place) != LW_WING_OK) return;
        lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.05}, &load);
        const lw_wing_point wash = lw_wing_wash(&lattice, &load, (lw_wing_point){-9.0, 0.4, 0.3});
        const double parts[] = {load.lift, load.drag, load.pitch, load.roll, wash.y, wash.z};
        for (size_t k = 0; k < sizeof parts / sizeof parts[0]; k++)
            hash = hash_with(hash, parts[k]);
    }
    print_hash("wing", hash);
}

static void print_hull(void)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    uint64_t hash = hash_start();
    const lw_hull_dimensions d = {3.353, 0.345, 0.157, 0.2, 0.598, 0.734, 0.25};
    if (lw_hull_shape_of_dimensions(&shape, d) != LW_HULL_OK) return;
    for (int i = 0; i < 5; i++) {
        if (lw_hull_float(&cut, &shape, 0.06 + 0.015 * i, 1.5) != LW_HULL_OK) return;
        const lw_hull_floating *f = &cut.floating;
        const double waves = lw_hull_wave_area(&cut, 1.0 + i);
        const double parts[] = {cut.attitude.draft, cut.attitude.trim, f->wetted, f->along, waves};
        for (size_t k = 0; k < sizeof parts / sizeof parts[0]; k++)
            hash = hash_with(hash, parts[k]);
    }
    print_hash("hull", hash);
}

// Sections with their layers, once settled: loads at some angles and a flap.
static void print_section(void)
{
    static lw_outline outline;
    static lw_profile profile;
    static lw_profile_room room;
    static lw_layer layer;
    const char *const names[] = {"2412", "63-412"};
    uint64_t hash = hash_start();
    for (int i = 0; i < 2; i++) {
        const lw_profile_flap flap = {0.7, 0.1 * i};
        if (lw_outline_naca(names[i], &outline) != LW_PROFILE_OK) continue;
        if (lw_profile_of(&outline, flap, 60, &profile) != LW_PROFILE_OK) continue;
        if (lw_layer_of(&profile, &room, &layer) != LW_PROFILE_OK) continue;
        for (int k = -1; k < 3; k++) {
            const lw_layer_conditions at = lw_layer_free(1e6, 0.05 * k);
            const lw_layer_load load = lw_layer_load_of(&layer, &at);
            hash = hash_with(hash_with(hash, load.lift), load.drag);
            hash = hash_with(hash_with(hash, load.moment), load.least_pressure);
        }
    }
    print_hash("section", hash);
}

static void print_eigen(void)
{
    enum { N = 12 };
    uint64_t hash = hash_start();
    random_stream stream = {1};
    for (int run = 0; run < 100; run++) {
        double matrix[N * N];
        lw_complex values[N], vector[N];
        for (int i = 0; i < N * N; i++) matrix[i] = random_between(&stream, -1.0, 1.0);
        if (!lw_eigen_values(matrix, N, values)) return;
        hash = hash_of(hash, (const double *)values, 2 * N);
        for (int i = 0; i < N; i++) {
            if (!lw_eigen_vector(matrix, N, values[i], vector)) return;
            hash = hash_of(hash, (const double *)vector, 2 * N);
        }
    }
    print_hash("eigen", hash);
}

// --- sea and wind in time; lane by lane, as the width differs between builds

#define RIDES 8  // a multiple of every width
#define STEPS 2000

static double sea_part(lw_sea_look look, int lane)
{
    return look.surface[lane] + look.u[lane] + look.v[lane] + look.w[lane];
}

static void print_sea(void)
{
    const lw_sea_kind kind = {.wave = {0.3, 2.0}, .gamma = 3.3, .from = 0.4, .spread = 0.5};
    uint64_t hash = hash_start(), exact = hash_start();
    for (int first = 0; first < RIDES; first += LW_WIDTH) {
        lw_sea_lanes lanes;
        for (int k = 0; k < LW_WIDTH; k++) {
            const lw_sea_waves sea = lw_sea_of(kind, lw_seed_of(first + k, LW_SEED_SEA));
            const lw_sea_point point = lw_sea_at(&sea, 12.0, -3.0, 40.0, 0.4);
            exact = HASH_OF(HASH_OF(exact, &sea), &point);
            lw_sea_lanes_put(&lanes, k, &sea, 0.01);
        }
        double sum[LW_WIDTH] = {0};
        for (int i = 0; i < STEPS; i++) {
            const lw_lanes x = lw_all(0.07 * i), y = lw_all(0.02 * i);
            lw_sea_lanes_advance(&lanes);
            const lw_sea_look look = lw_sea_lanes_look(&lanes, x, y, lw_all(0.5));
            const lw_lanes wand = lw_sea_lanes_surface(&lanes, x + 1.7, y);
            for (int k = 0; k < LW_WIDTH; k++) sum[k] += sea_part(look, k) * (1 + i) + wand[k];
        }
        hash = hash_of(hash, sum, LW_WIDTH);
    }
    print_hash("sea", exact);
    print_hash("sea_lanes", hash);
}

static void print_gust(void)
{
    const lw_gust_kind kind = {4.0, 6.0, 9.0, 60.0, 0.1, 2.5, 0.1};
    const lw_gust_filter filter = lw_gust_filter_of(kind, 0.02);
    uint64_t hash = HASH_OF(hash_start(), &filter);
    for (int first = 0; first < RIDES; first += LW_WIDTH) {
        lw_gust_lanes lanes = {0};
        for (int k = 0; k < LW_WIDTH; k++)
            lw_gust_lanes_put(&lanes, k, lw_seed_of(first + k, LW_SEED_GUST));
        double sum[LW_WIDTH] = {0};
        for (int i = 0; i < STEPS; i++) {
            lw_gust_lanes_advance(&lanes, &filter, lw_all(5.0 + 0.005 * i));
            const lw_lanes wind = lw_gust_lanes_wind(&lanes, &filter);
            const lw_lanes shift = lw_gust_lanes_shift(&lanes, &filter);
            for (int k = 0; k < LW_WIDTH; k++) sum[k] += wind[k] * (1 + i) + shift[k];
        }
        hash = hash_of(hash, sum, LW_WIDTH);
    }
    print_hash("gust", hash);
}

// --- rides: a minute in gusts and chop from the balance, and a launch

#define RIDES 8  // a multiple of every width

static void print_rides(void)
{
    static lw_ride rides[RIDES];
    static flown f;
    flown_fill(&f, 0, 16.0, 100.0);
    flown_stir(&f, 0.25);
    f.motion.sea.wave = (lw_wave){0.4, 2.2};
    const lw_ride_state aloft = f.plan.start;
    for (int i = 0; i < RIDES; i++) {
        f.plan.seed = (uint64_t)i + 1;
        f.plan.starts_aloft = i % 2 == 0;
        f.plan.start = f.plan.starts_aloft ? aloft : f.plan.rest;
        lw_ride_begin(&rides[i], &f.motion, &f.plan);
    }
    lw_rides_advance(&f.motion, rides, RIDES, 3000);
    uint64_t hash = hash_start();
    for (int i = 0; i < RIDES; i++) {
        const lw_ride_state now = lw_ride_now(&rides[i]);
        const lw_trace at = lw_ride_trace(&f.motion, &rides[i]);
        hash = HASH_OF(HASH_OF(HASH_OF(hash, &now), &at), &rides[i].tally);
    }
    print_hash("rides", hash);
}

// --- small motions about some flights

static void print_modes(void)
{
    static lw_modes modes;
    const lw_craft craft = preset_craft();
    const lw_motion motion = lw_motion_of(&craft);
    uint64_t hash = hash_start();
    for (int i = 0; i < 4; i++) {
        const lw_setup setup = preset_setup(&craft, i);
        lw_ask ask = lw_ask_of(&craft, &setup, (13.0 + 2.0 * i) * LW_KN, 100.0 * LW_DEG);
        lw_answer answer;
        lw_balance(&craft, &ask, &answer, 1);
        const lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &answer);
        lw_modes_of(&motion, &plan, LW_HANDS_SAILING, &modes);
        for (size_t k = 0; k < modes.count; k++) {
            hash = HASH_OF(hash, &modes.mode[k].swing);
            hash = hash_of(hash, modes.mode[k].share, LW_PARTS);
        }
        const lw_wand_margin margin = lw_wand_margin_of(&motion, &plan, LW_HANDS_SAILING);
        hash = HASH_OF(hash, &margin);
    }
    print_hash("modes", hash);
}

int main(void)
{
    for (size_t i = 0; i < sizeof functions / sizeof functions[0]; i++) {
        print_function(&functions[i]);
    }
    print_balances();
    print_choice();
    print_wing();
    print_hull();
    print_section();
    print_rides();
    print_eigen();
    print_modes();
    print_sea();
    print_gust();
    return 0;
}
