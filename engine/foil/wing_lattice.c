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

// Downwash along a strip's normal (0, -sin, cos).
static double down_along(const lw_wing_strip *strip, lw_space_vector flow)
{
    return flow.y * strip->sine - flow.z * strip->cosine;
}

static lw_space_vector with_image(const lw_wing_lattice *lattice, const lw_wing_panel *panel,
                                  lw_wing_point at,
                                  lw_space_vector (*flow)(const lw_wing_panel *, lw_wing_point))
{
    const lw_space_vector own = flow(panel, at);
    if (!lattice->has_surface) return own;
    return lw_space_sum(own, 1.0, lw_image_flow(flow(panel, lw_mirrored(at))));
}

static void fill_wake(lw_wing_lattice *lattice)
{
    const int n = lattice->mesh.strips;
    for (int i = 0; i < n; i++) {
        const lw_wing_strip *strip = &lattice->strip[i];
        for (int j = 0; j < n; j++) {
            const lw_wing_panel *panel = &lattice->panel[(size_t)j * (size_t)lattice->mesh.rows];
            const lw_space_vector flow = with_image(lattice, panel, strip->middle, lw_wake_flow);
            lattice->wake[i * n + j] = down_along(strip, flow);
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
    const bool is_line = lattice->mesh.model == LW_WING_LINE;
    for (int i = 0; i < n; i++) {
        const lw_wing_strip *strip = &lattice->strip[i / rows];
        for (int j = 0; j < n; j++) {
            double down;
            if (is_line) {
                down = 0.5 * lattice->wake[i * n + j];  // legs that begin at the line
            } else {
                const lw_wing_point at = lattice->panel[i].control;
                const lw_space_vector flow =
                    with_image(lattice, &lattice->panel[j], at, lw_horseshoe_flow);
                down = down_along(strip, flow);
            }
            if (i / rows == j / rows) down += angle_of_circulation(lattice, strip);
            lattice->matrix[i * n + j] = down;
        }
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
