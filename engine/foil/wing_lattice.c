// wing_lattice.c - lays strips and panels over the wet part of a wing and factors its matrix.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/horseshoe.h"
#include "foil/wing_shape.h"
#include "lullwise/elementary.h"
#include "lullwise/wing.h"
#include "solve/linear.h"

// From the wing's axes to those of the water: heel about x, then down to the depth.
static lw_wing_point in_water(const lw_wing_lattice *lattice, lw_wing_point at)
{
    const double s = lw_sin(lattice->place.heel), c = lw_cos(lattice->place.heel);
    const double depth = lattice->has_surface ? lattice->place.depth : 0.0;
    return (lw_wing_point){at.x, c * at.y - s * at.z, s * at.y + c * at.z - depth};
}

// The place a part of the chord behind the nose.
static lw_wing_point on_chord(const lw_wing_station *s, double part)
{
    return (lw_wing_point){s->x + (0.25 - part) * s->chord, s->y, s->z};
}

// Part of a strip that has a flap.
static double flapped_part(const lw_wing_flap *flap, double from, double to)
{
    const double port = fmin(to, flap->outer) - fmax(from, flap->inner);
    const double starboard = fmin(to, -flap->inner) - fmax(from, -flap->outer);
    return (fmax(port, 0.0) + fmax(starboard, 0.0)) / (to - from);
}

// Edge k of the strips, or with k + 1/2 the middle of a strip.
static double place_of(const lw_wing_lattice *lattice, double k)
{
    const double n = lattice->mesh.strips, from = lattice->wet_from, to = lattice->wet_to;
    const double t =
        lattice->mesh.spacing == LW_WING_EVEN ? k / n : 0.5 * (1.0 - lw_cos(LW_PI * k / n));
    return from + (to - from) * t;
}

static void lay_strip(lw_wing_lattice *lattice, const lw_wing *wing, int k)
{
    const double from = place_of(lattice, k), to = place_of(lattice, k + 1);
    const lw_wing_station a = lw_wing_at(wing, from), b = lw_wing_at(wing, to);
    const lw_wing_station middle = lw_wing_at(wing, place_of(lattice, k + 0.5));
    const double dihedral = lw_atan2(b.z - a.z, to - from);
    lattice->strip[k] = (lw_wing_strip){.y = middle.y,
                                        .width = to - from,
                                        .chord = middle.chord,
                                        .twist = middle.twist - middle.zero_lift,
                                        .slope = middle.slope,
                                        .moment = middle.moment,
                                        .flapped = flapped_part(&wing->flap, from, to),
                                        .dihedral = dihedral,
                                        .sine = lw_sin(dihedral + lattice->place.heel),
                                        .cosine = lw_cos(dihedral + lattice->place.heel),
                                        .middle = in_water(lattice, on_chord(&middle, 0.25))};

    const int rows = lattice->mesh.rows;
    const double at_control = lattice->mesh.model == LW_WING_LINE ? 0.25 : 0.75;
    for (int r = 0; r < rows; r++) {
        const double bound = (r + 0.25) / rows;
        lattice->panel[k * rows + r] = (lw_wing_panel){
            .port = in_water(lattice, on_chord(&b, bound)),
            .starboard = in_water(lattice, on_chord(&a, bound)),
            .control = in_water(lattice, on_chord(&middle, (r + at_control) / rows))};
    }
}

// --- what panels do at points, some panels side by side

#define PACKS (LW_WING_PANELS / LW_WIDTH)
_Static_assert(LW_WING_PANELS % LW_WIDTH == 0, "packs are full");

// Downwash along a strip's normal (0, -sin, cos).
LW_INLINE lw_lanes down_along(const lw_wing_strip *strip, lw_vector flow)
{
    return flow.y * strip->sine - flow.z * strip->cosine;
}

LW_INLINE void put_point(lw_vector *to, int lane, lw_wing_point at)
{
    to->x[lane] = at.x, to->y[lane] = at.y, to->z[lane] = at.z;
}

// Every `apart`-th panel, packed; the last fills up.
static int pack_panels(const lw_wing_lattice *lattice, int apart, lw_panel_lanes packs[PACKS])
{
    const int n = lattice->mesh.strips * lattice->mesh.rows / apart;
    for (int j = 0; j < n || j % LW_WIDTH; j++) {
        const lw_wing_panel *panel = &lattice->panel[(size_t)(j < n ? j : n - 1) * (size_t)apart];
        put_point(&packs[j / LW_WIDTH].port, j % LW_WIDTH, panel->port);
        put_point(&packs[j / LW_WIDTH].starboard, j % LW_WIDTH, panel->starboard);
    }
    return n;
}

static void put_row(double *row, int j, int n, const lw_lanes *down)
{
    for (int p = 0; p < LW_WIDTH && j + p < n; p++) row[j + p] = (*down)[p];
}

LW_CLONES static void fill_wake(lw_wing_lattice *lattice)
{
    lw_panel_lanes packs[PACKS];
    const int n = pack_panels(lattice, lattice->mesh.rows, packs);
    for (int i = 0; i < n; i++) {
        const lw_wing_strip *strip = &lattice->strip[i];
        const lw_vector at = lw_point_lanes(strip->middle);
        for (int j = 0; j < n; j += LW_WIDTH) {
            const lw_panel_lanes *panel = &packs[j / LW_WIDTH];
            lw_vector flow = lw_wake_flow(panel, at);
            if (lattice->has_surface)
                flow = lw_vector_sum(flow, lw_all(1.0),
                                     lw_image_flow(lw_wake_flow(panel, lw_mirrored(at))));
            const lw_lanes down = down_along(strip, flow);
            put_row(lattice->wake + (size_t)i * (size_t)n, j, n, &down);
        }
    }
}

static void fill_down(lw_wing_lattice *lattice)
{
    lw_panel_lanes packs[PACKS];
    const int n = pack_panels(lattice, 1, packs);
    for (int i = 0; i < n; i++) {
        const lw_wing_strip *strip = &lattice->strip[i / lattice->mesh.rows];
        const lw_vector at = lw_point_lanes(lattice->panel[i].control), mirrored = lw_mirrored(at);
        for (int j = 0; j < n; j += LW_WIDTH) {
            lw_vector flow, image;
            lw_horseshoe_flow(&packs[j / LW_WIDTH], &at, &flow);
            if (lattice->has_surface) {
                lw_horseshoe_flow(&packs[j / LW_WIDTH], &mirrored, &image);
                flow = lw_vector_sum(flow, lw_all(1.0), lw_image_flow(image));
            }
            const lw_lanes down = down_along(strip, flow);
            put_row(lattice->matrix + (size_t)i * (size_t)n, j, n, &down);
        }
    }
}

// 2 / (a_0 c): the angle that a unit of circulation needs. The lattice gives 1 / (pi c) itself.
static double angle_of_circulation(const lw_wing_lattice *lattice, const lw_wing_strip *strip)
{
    const double own = lattice->mesh.model == LW_WING_LINE ? 0.0 : 1.0 / LW_PI;
    return (2.0 / strip->slope - own) / strip->chord;
}

static void fill_matrix(lw_wing_lattice *lattice)
{
    const int rows = lattice->mesh.rows, n = lattice->mesh.strips * rows;
    if (lattice->mesh.model == LW_WING_LINE) {
        for (int k = 0; k < n * n; k++)
            lattice->matrix[k] = 0.5 * lattice->wake[k];  // legs that
                                                          // begin there
    } else {
        fill_down(lattice);
    }
    for (int i = 0; i < n; i++) {
        const double own = angle_of_circulation(lattice, &lattice->strip[i / rows]);
        double *of_strip = lattice->matrix + (size_t)i * (size_t)n + (size_t)(i / rows * rows);
        for (int r = 0; r < rows; r++) of_strip[r] += own;
    }
}

lw_wing_status lw_wing_lay(lw_wing_lattice *lattice, const lw_wing *wing, lw_wing_mesh mesh,
                           lw_wing_place place)
{
    const lw_wing_status status = lw_wing_check(wing, mesh, place);
    if (status != LW_WING_OK) return status;

    const lw_wing_extent wet = lw_wing_wet(wing, place);
    const double tip = wing->station[wing->count - 1].y;
    lattice->mesh = mesh;
    lattice->place = place;
    lattice->has_surface = place.depth < LW_WING_DEEP;
    lattice->span = 2.0 * tip;
    lattice->area = lw_wing_area(wing);
    lattice->mean_chord = lattice->area / lattice->span;
    lattice->flap_share = wing->flap.angle_share;
    lattice->flap_moment = wing->flap.moment;
    const double z = wing->station[wing->count - 1].z;
    const double rise = tip * lw_sin(place.heel), up = z * lw_cos(place.heel);
    lattice->depth_port = place.depth - rise - up;
    lattice->depth_starboard = place.depth + rise - up;

    // a sliver is none
    const bool is_dry = wet.to - wet.from < 1e-3 * lattice->span;
    lattice->wet_from = is_dry ? 0.0 : wet.from;
    lattice->wet_to = is_dry ? 0.0 : wet.to;
    if (is_dry) return LW_WING_OK;

    for (int k = 0; k < mesh.strips; k++) lay_strip(lattice, wing, k);
    fill_wake(lattice);
    fill_matrix(lattice);
    const bool is_sound =
        lw_linear_factor(lattice->matrix, mesh.strips * mesh.rows, lattice->pivot);
    return is_sound ? LW_WING_OK : LW_WING_SINGULAR;
}
