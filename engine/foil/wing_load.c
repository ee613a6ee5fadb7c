// wing_load.c - loads of a wing on its lattice, and the flow that it leaves behind.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "foil/horseshoe.h"
#include "foil/wing_shape.h"
#include "lullwise/elementary.h"
#include "lullwise/wing.h"
#include "solve/linear.h"

#define WASH_PLACES 16  // along another wing

static bool is_dry(const lw_wing_lattice *lattice) { return lattice->wet_from == lattice->wet_to; }

// Angle of a strip to the undisturbed flow, from its own zero-lift direction. `twist`: 1 with the
// wing's own angles, 0 for the change that a flow makes.
static double strip_angle(const lw_wing_lattice *lattice, int k, lw_wing_flow flow, double twist)
{
    const lw_wing_strip *strip = &lattice->strip[k];
    const double sinking = flow.roll * strip->y / (0.5 * lattice->span);  // as a wing goes up
    return (flow.alpha - sinking) * lw_cos(strip->dihedral) + twist * strip->twist +
           flow.flap * lattice->flap_share * strip->flapped;
}

static void solve_for(const lw_wing_lattice *lattice, lw_wing_flow flow, double twist,
                      double *circulation)
{
    const int rows = lattice->mesh.rows, n = lattice->mesh.strips * rows;
    for (int i = 0; i < n; i++) circulation[i] = strip_angle(lattice, i / rows, flow, twist);
    lw_linear_solve(lattice->matrix, n, lattice->pivot, circulation);
}

static double strip_circulation(const lw_wing_lattice *lattice, const double *circulation, int k)
{
    double sum = 0.0;
    for (int r = 0; r < lattice->mesh.rows; r++) sum += circulation[k * lattice->mesh.rows + r];
    return sum;
}

// C_Di = 1/S sum_k Gamma_k w_k dy_k / cos(dihedral), w far behind: half of it acts at the wing.
double lw_wing_wake_drag(const lw_wing_lattice *lattice, const double *circulation)
{
    if (is_dry(lattice)) return 0.0;
    const int n = lattice->mesh.strips;
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
        double down = 0.0;
        for (int j = 0; j < n; j++) down += lattice->wake[i * n + j] * circulation[j];
        const lw_wing_strip *strip = &lattice->strip[i];
        sum += circulation[i] * down * strip->width / lw_cos(strip->dihedral);
    }
    return sum / lattice->area;
}

// Lift, side force and moments, by Kutta and Joukowski: force V Gamma on a unit of length.
static void add_panels(const lw_wing_lattice *lattice, int k, lw_wing_load *load)
{
    const lw_wing_strip *strip = &lattice->strip[k];
    const double S = lattice->area, lean = lw_tan(strip->dihedral);
    const double s = lw_sin(lattice->place.heel), c = lw_cos(lattice->place.heel);
    for (int r = 0; r < lattice->mesh.rows; r++) {
        const int i = k * lattice->mesh.rows + r;
        const double part = 2.0 / S * load->circulation[i] * strip->width;
        const lw_wing_panel *panel = &lattice->panel[i];
        const double x = 0.5 * (panel->port.x + panel->starboard.x);
        // height of the strip above the origin, back in the wing's axes
        const double depth = lattice->has_surface ? lattice->place.depth : 0.0;
        const double z = -s * strip->middle.y + c * (strip->middle.z + depth);
        load->lift += part;
        load->side -= part * lean;
        load->pitch += part * x / lattice->mean_chord;
        load->roll += part * (strip->y + z * lean) / lattice->span;
    }
}

static void loads_of(const lw_wing_lattice *lattice, double flap, lw_wing_load *load)
{
    double gamma[LW_WING_STRIPS], moment = 0.0;
    for (int k = 0; k < lattice->mesh.strips; k++) {
        const lw_wing_strip *strip = &lattice->strip[k];
        gamma[k] = strip_circulation(lattice, load->circulation, k);
        load->section_lift[k] = 2.0 * gamma[k] / strip->chord;
        add_panels(lattice, k, load);
        const double c_m = strip->moment + flap * lattice->flap_moment * strip->flapped;
        moment += c_m * strip->chord * strip->chord * strip->width;
        load->centre += 2.0 / lattice->area * gamma[k] * strip->width * strip->y;
    }
    load->pitch += moment / (lattice->area * lattice->mean_chord);
    load->drag = lw_wing_wake_drag(lattice, gamma);
    load->centre = load->lift != 0.0 ? load->centre / load->lift : 0.0;
    const double aspect = lattice->span / lattice->mean_chord;
    load->efficiency =
        load->drag > 0.0 ? load->lift * load->lift / (LW_PI * aspect * load->drag) : 0.0;
}

void lw_wing_load_at(const lw_wing_lattice *lattice, lw_wing_flow flow, lw_wing_load *load)
{
    memset(load, 0, sizeof *load);
    if (is_dry(lattice)) return;
    solve_for(lattice, flow, 1.0, load->circulation);
    loads_of(lattice, flow.flap, load);
}

// The change of the load for a unit of a flow, without twist and section moments.
static void change_for(const lw_wing_lattice *lattice, lw_wing_flow flow, lw_wing_load *load)
{
    memset(load, 0, sizeof *load);
    solve_for(lattice, flow, 0.0, load->circulation);
    for (int k = 0; k < lattice->mesh.strips; k++) add_panels(lattice, k, load);
}

lw_wing_slopes lw_wing_slopes_of(const lw_wing_lattice *lattice)
{
    lw_wing_slopes slopes = {0};
    if (is_dry(lattice)) return slopes;
    lw_wing_load load;
    lw_wing_load_at(lattice, (lw_wing_flow){0}, &load);
    const double at_none = load.lift;
    change_for(lattice, (lw_wing_flow){.alpha = 1.0}, &load);
    slopes.lift = load.lift, slopes.roll = load.roll;
    slopes.zero_lift = -at_none / load.lift;
    change_for(lattice, (lw_wing_flow){.flap = 1.0}, &load);
    slopes.flap = load.lift;
    change_for(lattice, (lw_wing_flow){.roll = 1.0}, &load);
    slopes.damping = load.roll;
    return slopes;
}

// --- downwash

// Flow of all panels and their image at points of the wing's axes, in those axes.
static void flow_at(const lw_wing_lattice *lattice, const lw_wing_load *load, const lw_vector *p,
                    lw_vector *flow)
{
    const double s = lw_sin(lattice->place.heel), c = lw_cos(lattice->place.heel);
    const double depth = lattice->has_surface ? lattice->place.depth : 0.0;
    const lw_vector at = {p->x, c * p->y - s * p->z, s * p->y + c * p->z - depth};
    const lw_vector mirrored = lw_mirrored(at);
    lw_vector sum = lw_vector_zero(), v;
    for (int i = 0; i < lattice->mesh.strips * lattice->mesh.rows; i++) {
        const lw_panel_lanes panel = lw_panel_in_all(&lattice->panel[i]);
        const lw_lanes gamma = lw_all(load->circulation[i]);
        lw_horseshoe_flow(&panel, &at, &v);
        sum = lw_vector_sum(sum, gamma, v);
        if (!lattice->has_surface) continue;
        lw_horseshoe_flow(&panel, &mirrored, &v);
        sum = lw_vector_sum(sum, gamma, lw_image_flow(v));
    }
    *flow = (lw_vector){sum.x, c * sum.y + s * sum.z, c * sum.z - s * sum.y};
}

// Points between two middles of strips, where the single legs cancel best, or beyond them: the flow
// is read at both, in part.
typedef struct between {
    lw_vector at[2];
    lw_lanes part;
} between;

static void put_between(const lw_wing_lattice *lattice, lw_wing_point at, int lane, between *b)
{
    int k = 0;
    while (k < lattice->mesh.strips && lattice->strip[k].y < at.y) k++;
    const bool is_beyond = k == 0 || k == lattice->mesh.strips;
    const double y_0 = is_beyond ? at.y : lattice->strip[k - 1].y;
    const double y_1 = is_beyond ? at.y : lattice->strip[k].y;
    b->part[lane] = is_beyond ? 0.0 : (at.y - y_0) / (y_1 - y_0);
    for (int i = 0; i < 2; i++) {
        b->at[i].x[lane] = at.x, b->at[i].z[lane] = at.z;
        b->at[i].y[lane] = i ? y_1 : y_0;
    }
}

static void wash_at(const lw_wing_lattice *lattice, const lw_wing_load *load, const between *b,
                    lw_vector *wash)
{
    lw_vector v[2];
    for (int i = 0; i < 2; i++) flow_at(lattice, load, &b->at[i], &v[i]);
    *wash = lw_vector_sum(v[0], b->part, lw_between(v[0], v[1]));
}

lw_wing_point lw_wing_wash(const lw_wing_lattice *lattice, const lw_wing_load *load,
                           lw_wing_point at)
{
    between b;
    lw_vector v;
    if (is_dry(lattice)) return (lw_wing_point){0};
    LW_EACH_LANE (i) put_between(lattice, at, i, &b);
    wash_at(lattice, load, &b, &v);
    return (lw_wing_point){v.x[0], v.y[0], v.z[0]};
}

double lw_wing_wash_over(const lw_wing_lattice *lattice, const lw_wing_load *load,
                         const lw_wing *other, lw_wing_point origin)
{
    const double half = other->station[other->count - 1].y, phi = lattice->place.heel;
    const double up = origin.y * lw_sin(phi) + origin.z * lw_cos(phi);
    const lw_wing_place place = {lattice->place.depth - up, phi};
    const lw_wing_extent wet = lw_wing_wet(other, place);
    if (is_dry(lattice) || !(wet.to > wet.from) || !(half > 0.0)) return 0.0;
    double sum = 0.0, weights = 0.0;
    for (int first = 0; first < WASH_PLACES; first += LW_WIDTH) {
        between b;
        lw_vector wash;
        double chord[LW_WIDTH];
        LW_EACH_LANE (i) {
            const double part = (first + i + 0.5) / WASH_PLACES;
            const double y = wet.from + (wet.to - wet.from) * part;
            const lw_wing_station s = lw_wing_at(other, y);
            put_between(lattice, (lw_wing_point){origin.x + s.x, origin.y + y, origin.z + s.z}, i,
                        &b);
            chord[i] = s.chord;
        }
        wash_at(lattice, load, &b, &wash);
        LW_EACH_LANE (i) sum += chord[i] * wash.z[i], weights += chord[i];
    }
    return sum / weights;
}
