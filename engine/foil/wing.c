// wing.c - a wing's stations, checked, and cut into the strips that are under water.
// SPDX-License-Identifier: MIT

#include "foil/wing_shape.h"

#include <math.h>

#include "lullwise/elementary.h"

#define AS_TEXT(name, text) text,
static const char *const texts[] = {LW_WING_STATUS_LIST(AS_TEXT)};

const char *lw_wing_status_text(lw_wing_status status)
{
    return status >= 0 && status < LW_WING_STATUS_COUNT ? texts[status] : "no such status";
}

lw_wing_mesh lw_wing_mesh_usual(void)
{
    return (lw_wing_mesh){
        .model = LW_WING_LATTICE, .spacing = LW_WING_COSINE, .strips = 32, .rows = 4};
}

// --- check

static bool is_finite(double x) { return fabs(x) <= 1e9; }  // false for NaN

static bool station_is_finite(const lw_wing_station *s)
{
    return is_finite(s->y) && is_finite(s->chord) && is_finite(s->x) && is_finite(s->z) &&
           is_finite(s->twist) && is_finite(s->zero_lift) && is_finite(s->slope) &&
           is_finite(s->moment);
}

static lw_wing_status check_station(const lw_wing *wing, int i)
{
    const lw_wing_station *s = &wing->station[i];
    const bool is_tip = i == wing->count - 1;
    if (i == 0 ? s->y != 0.0 : s->y <= wing->station[i - 1].y) return LW_WING_ORDER;
    if (s->chord < 0.0 || (s->chord == 0.0 && !is_tip)) return LW_WING_CHORD;
    if (s->slope <= 0.0) return LW_WING_SLOPE;
    return LW_WING_OK;
}

static lw_wing_status check_flap(const lw_wing *wing)
{
    const lw_wing_flap *flap = &wing->flap;
    if (!(is_finite(flap->inner) && is_finite(flap->outer) && is_finite(flap->angle_share) &&
          is_finite(flap->moment))) {
        return LW_WING_NOT_A_NUMBER;
    }
    const double tip = wing->station[wing->count - 1].y;
    const bool has_none = flap->inner == 0.0 && flap->outer == 0.0;
    const bool is_sound =
        flap->inner >= 0.0 && flap->outer > flap->inner && flap->outer <= tip * (1.0 + 1e-9);
    return has_none || is_sound ? LW_WING_OK : LW_WING_FLAP;
}

static lw_wing_status check_mesh(lw_wing_mesh mesh)
{
    const bool is_sound =
        mesh.strips >= 2 && mesh.strips <= LW_WING_STRIPS && mesh.rows >= 1 &&
        mesh.rows <= LW_WING_ROWS && mesh.strips * mesh.rows <= LW_WING_PANELS &&
        (mesh.model == LW_WING_LATTICE || (mesh.model == LW_WING_LINE && mesh.rows == 1)) &&
        (mesh.spacing == LW_WING_COSINE || mesh.spacing == LW_WING_EVEN);
    return is_sound ? LW_WING_OK : LW_WING_MESH;
}

lw_wing_status lw_wing_check(const lw_wing *wing, lw_wing_mesh mesh, lw_wing_place place)
{
    if (wing->count < 2 || wing->count > LW_WING_STATIONS) return LW_WING_COUNT;
    for (int i = 0; i < wing->count; i++) {
        if (!station_is_finite(&wing->station[i])) return LW_WING_NOT_A_NUMBER;
    }
    for (int i = 0; i < wing->count; i++) {
        const lw_wing_status status = check_station(wing, i);
        if (status != LW_WING_OK) return status;
    }
    const lw_wing_status flap = check_flap(wing);
    if (flap != LW_WING_OK) return flap;
    if (place.depth != place.depth || !is_finite(place.heel)) return LW_WING_NOT_A_NUMBER;
    if (fabs(place.heel) > 0.5 * LW_PI) return LW_WING_HEEL;
    return check_mesh(mesh);
}

// --- shape

lw_wing_station lw_wing_at(const lw_wing *wing, double y)
{
    const double out = fabs(y);
    int i = 0;
    while (i < wing->count - 2 && out > wing->station[i + 1].y) i++;
    const lw_wing_station *a = &wing->station[i], *b = &wing->station[i + 1];
    const double t = fmin((out - a->y) / (b->y - a->y), 1.0), s = 1.0 - t;
    return (lw_wing_station){.y = y,
                             .chord = s * a->chord + t * b->chord,
                             .x = s * a->x + t * b->x,
                             .z = s * a->z + t * b->z,
                             .twist = s * a->twist + t * b->twist,
                             .zero_lift = s * a->zero_lift + t * b->zero_lift,
                             .slope = s * a->slope + t * b->slope,
                             .moment = s * a->moment + t * b->moment};
}

// A wing in its place.
typedef struct placed {
    const lw_wing *wing;
    double sine, cosine, depth;
} placed;

// Level of the quarter chord at y above the surface [m].
static double level_at(const placed *p, double y)
{
    return y * p->sine + lw_wing_at(p->wing, y).z * p->cosine - p->depth;
}

// Where between a wet y and a dry one the wing meets the surface: by halving.
static double waterline(const placed *p, double wet, double dry)
{
    for (int i = 0; i < 50; i++) {
        const double middle = 0.5 * (wet + dry);
        if (level_at(p, middle) < 0.0) {
            wet = middle;
        } else {
            dry = middle;
        }
    }
    return wet;
}

lw_wing_extent lw_wing_wet(const lw_wing *wing, lw_wing_place place)
{
    const double tip = wing->station[wing->count - 1].y;
    if (place.depth >= LW_WING_DEEP) return (lw_wing_extent){-tip, tip};

    const placed p = {wing, lw_sin(place.heel), lw_cos(place.heel), place.depth};
    const int steps = 200;
    double deepest = 0.0, level = level_at(&p, 0.0);
    for (int i = 0; i <= steps; i++) {
        const double y = tip * (2.0 * i / steps - 1.0), at = level_at(&p, y);
        if (at < level) deepest = y, level = at;
    }
    if (level >= 0.0) return (lw_wing_extent){0.0, 0.0};

    // outward from there, to the first place in the air
    lw_wing_extent extent = {deepest, deepest};
    for (int side = -1; side <= 1; side += 2) {
        double end = side * tip, wet = deepest;
        const double step = 2.0 * tip / steps;
        for (double y = deepest + side * step; side * y < tip; y += side * step) {
            if (level_at(&p, y) >= 0.0) {
                end = y;
                break;
            }
            wet = y;
        }
        if (level_at(&p, end) >= 0.0) end = waterline(&p, wet, end);
        *(side < 0 ? &extent.from : &extent.to) = end;
    }
    return extent;
}

double lw_wing_area(const lw_wing *wing)
{
    double area = 0.0;
    for (int i = 1; i < wing->count; i++) {
        const lw_wing_station *a = &wing->station[i - 1], *b = &wing->station[i];
        area += (b->y - a->y) * (a->chord + b->chord);
    }
    return area;
}
