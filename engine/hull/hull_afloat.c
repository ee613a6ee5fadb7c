// hull_afloat.c - a hull afloat with its weights, and what it costs to drive it.
// SPDX-License-Identifier: MIT

#include "lullwise/hull_afloat.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "quantity/tables.h"

#define AFLOAT(member, ...) LW_RESULT(lw_hull_afloat, member, __VA_ARGS__)
#define DRIVE(member, ...)  LW_RESULT(lw_hull_drive, member, __VA_ARGS__)

// clang-format off
static const lw_quantity afloat_rows[] = {
    AFLOAT(displaced,              "m",    KG,   1, "water displaced"),
    AFLOAT(length,                 "L",    M,    3, "length under water"),
    AFLOAT(beam,                   "B",    M,    3, "beam under water"),
    AFLOAT(draft,                  "T",    M,    3, "greatest draft"),
    AFLOAT(wetted,                 "S",    M2,   3, "wetted surface, without the transom"),
    AFLOAT(waterplane,             "A_WP", M2,   3, "area of the waterplane"),
    AFLOAT(block,                  "C_B",  NONE, 4, "block coefficient, volume / (L B T)"),
    AFLOAT(waterplane_coefficient, "C_WP", NONE, 4, "waterplane coefficient, A_WP / (L B)"),
    AFLOAT(centre_x,               "LCB",  M,    3, "centre of buoyancy, forward of where x is 0"),
    AFLOAT(centre_height,          "KB",   M,    3, "centre of buoyancy above the lowest point"),
    AFLOAT(metacentre_across,      "BM_T", M,    4, "metacentre above that, heeling"),
    AFLOAT(metacentre_along,       "BM_L", M,    3, "metacentre above that, trimming"),
    AFLOAT(transom_area,           "A_T",  M2,   4, "transom under water"),
    AFLOAT(trim,                   "theta", DEG,  2, "trim, bow up"),
};
static const lw_quantity drive_rows[] = {
    DRIVE(froude,               "Fn",   NONE,    3, "V / sqrt(g L)"),
    DRIVE(speed,                "V",    KN,      2, "speed through the water"),
    DRIVE(friction,             "R_V",  N,       2, "resistance by friction, with the form factor"),
    DRIVE(waves,                "R_W",  N,       2, "by waves"),
    DRIVE(total,                "R_T",  N,       2, "by both"),
    DRIVE(of_weight,            "R/W",  PERCENT, 2, "that, of the weight"),
    DRIVE(friction_coefficient, "C_V",  NONE,    6, "friction / (1/2 rho V^2 S)"),
    DRIVE(wave_coefficient,     "C_W",  NONE,    6, "waves / (1/2 rho V^2 S)"),
    DRIVE(total_coefficient,    "C_T",  NONE,    6, "both / (1/2 rho V^2 S)"),
};
// clang-format on
LW_TABLE_COVERS(lw_hull_afloat, afloat_rows);
LW_TABLE_COVERS(lw_hull_drive, drive_rows);

const lw_table lw_hull_afloat_table = {.key = "afloat",
                                       .title = "Afloat",
                                       .rows = afloat_rows,
                                       .count = sizeof afloat_rows / sizeof afloat_rows[0],
                                       .doc = "A hull in the water."};
const lw_table lw_hull_drive_table = {.key = "curve",
                                      .title = "Resistance",
                                      .rows = drive_rows,
                                      .count = sizeof drive_rows / sizeof drive_rows[0],
                                      .doc = "A hull driven at one speed."};

// --- afloat

#define FREEBOARD 0.3  // of the hull's length at most: so that no sinkage meets the deck

lw_hull_status lw_hull_shape_of_boat(lw_hull_shape *shape, const lw_hull *hull)
{
    const lw_hull_dimensions dimensions = {.length = hull->length,
                                           .beam = hull->beam,
                                           .draft = hull->draft,
                                           .transom_beam = hull->transom_beam,
                                           .block = hull->block,
                                           .waterplane = hull->waterplane,
                                           .freeboard = FREEBOARD * hull->length};
    return lw_hull_shape_of_dimensions(shape, dimensions);
}

lw_hull_load lw_hull_load_of(const lw_hull *hull, const lw_person *person, double place)
{
    const double sailor = person->mass + person->gear, mass = hull->mass + sailor;
    return (lw_hull_load){mass, (hull->mass * hull->centre_x + sailor * place) / mass};
}

// Level, and sunk until so much volume [m^3] is under water.
static lw_hull_status float_level(lw_hull_cut *cut, const lw_hull_shape *shape, double volume)
{
    double low = 1e9, high = -1e9;
    for (int i = 0; i < shape->count; i++) {
        const lw_hull_section *section = &shape->section[i];
        low = fmin(low, section->height[0]);
        high = fmax(high, section->height[section->count - 1]);
    }
    lw_hull_status status = LW_HULL_NO_BALANCE;
    for (int step = 0; step < 60; step++) {
        const double draft = 0.5 * (low + high);
        const lw_hull_status at = lw_hull_cut_at(cut, shape, (lw_hull_attitude){draft, 0.0});
        const bool is_under = at == LW_HULL_DECK_UNDER;
        if (at != LW_HULL_OK && at != LW_HULL_DRY && !is_under) return at;
        const bool is_too_deep = is_under || (at == LW_HULL_OK && cut->floating.volume > volume);
        *(is_too_deep ? &high : &low) = draft;
        status = at;
    }
    if (status != LW_HULL_OK) return status;
    return fabs(cut->floating.volume / volume - 1.0) < 1e-6 ? LW_HULL_OK : LW_HULL_NO_BALANCE;
}

lw_hull_status lw_hull_float_load(lw_hull_cut *cut, const lw_hull_shape *shape, lw_hull_load load,
                                  double density)
{
    const double volume = load.mass / density;
    return isnan(load.x) ? float_level(cut, shape, volume)
                         : lw_hull_float(cut, shape, volume, load.x);
}

lw_hull_status lw_hull_float_wigley(lw_hull_cut *cut, lw_hull_shape *shape, double length)
{
    const lw_hull_form form = {length, 0.1 * length, 0.0625 * length};
    const lw_hull_status status = lw_hull_shape_wigley(shape, form, 0.05 * length);
    if (status != LW_HULL_OK) return status;
    return lw_hull_cut_at(cut, shape, (lw_hull_attitude){form.draft, 0.0});
}

// --- what it tells

// Height of the lowest point under water above z = 0.
static double lowest(const lw_hull_cut *cut)
{
    double low = 1e9;
    for (int i = 0; i <= LW_HULL_LENGTHS; i++) {
        const double x = cut->aft + (cut->fore - cut->aft) * i / LW_HULL_LENGTHS;
        low = fmin(low, cut->attitude.draft - x * lw_tan(cut->attitude.trim) - cut->draft[i]);
    }
    return low;
}

lw_hull_afloat lw_hull_afloat_of(const lw_hull_cut *cut, double density)
{
    const lw_hull_floating *f = &cut->floating;
    return (lw_hull_afloat){.displaced = density * f->volume,
                            .length = f->length,
                            .beam = f->beam,
                            .draft = f->draft,
                            .wetted = f->wetted,
                            .waterplane = f->waterplane,
                            .block = f->volume / (f->length * f->beam * f->draft),
                            .waterplane_coefficient = f->waterplane / (f->length * f->beam),
                            .centre_x = f->centre_x,
                            .centre_height = f->centre_z - lowest(cut),
                            .metacentre_across = f->across / f->volume,
                            .metacentre_along = f->along / f->volume,
                            .transom_area = f->transom_area,
                            .trim = cut->attitude.trim};
}

lw_hull_drive lw_hull_drive_at(const lw_hull_cut *cut, lw_hull_water water, double speed)
{
    const lw_hull_floating *f = &cut->floating;
    const double pressure = 0.5 * water.density * speed * speed;
    const double friction = lw_hull_friction_area(cut, speed, water.viscosity, water.form_factor);
    const double waves = lw_hull_wave_area(cut, speed);
    const double total = friction + waves;
    return (lw_hull_drive){.froude = speed / sqrt(LW_GRAVITY * f->length),
                           .speed = speed,
                           .friction = pressure * friction,
                           .waves = pressure * waves,
                           .total = pressure * total,
                           .of_weight = pressure * total / (water.density * LW_GRAVITY * f->volume),
                           .friction_coefficient = friction / f->wetted,
                           .wave_coefficient = waves / f->wetted,
                           .total_coefficient = total / f->wetted};
}

double lw_hull_speed_at(const lw_hull_cut *cut, double froude)
{
    return froude * sqrt(LW_GRAVITY * cut->floating.length);
}
