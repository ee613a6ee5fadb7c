// hull_craft.c - the splines that the force kernel reads, from cuts of the hull's own lines.
// SPDX-License-Identifier: MIT

#include "hull/hull_craft.h"

#include <math.h>

#include "foil/friction.h"
#include "hull/hull_cut.h"
#include "hull/hull_force.h"
#include "lullwise/elementary.h"
#include "lullwise/hull_shape.h"

#define FREEBOARD      0.3  // of the length: no sinkage that is prepared meets the deck
#define FRICTION_SPEED 4.0  // [m/s] at which the wetted length's part in friction is taken
#define VOLUMES        LW_HULL_VOLUMES
#define SLOPES         LW_HULL_SLOPES
#define SPEEDS         LW_HULL_SPEEDS

void lw_hull_shape_of_craft(lw_hull_shape *shape, const lw_hull *hull, double origin_x)
{
    lw_hull_dimensions d = {.length = hull->length,
                            .beam = hull->beam,
                            .draft = hull->draft,
                            .transom_beam = fmin(hull->transom_beam, hull->beam),
                            .block = hull->block,
                            .waterplane = hull->waterplane,
                            .freeboard = FREEBOARD * hull->length};
    for (int i = 0; i < 40; i++) {
        if (lw_hull_shape_of_dimensions(shape, d) == LW_HULL_OK) break;
        d.waterplane += 0.05 * (0.97 - d.waterplane);
        d.block *= 0.97;
    }
    lw_hull_lines lines;
    lw_hull_lines_of(&lines, shape);
    const double bottom = lw_hull_blend_at(&lines, origin_x).keel;
    for (int i = 0; i < shape->count; i++) {
        lw_hull_section *section = &shape->section[i];
        section->x -= origin_x;
        for (int k = 0; k < section->count; k++) section->height[k] -= bottom;
    }
}

static double slope_at(const lw_hull_craft *craft, int j)
{
    return craft->steepest * (2.0 * j / (SLOPES - 1) - 1.0);
}

static double volume_at(const lw_hull_craft *craft, int i)
{
    const double part = (double)i / (VOLUMES - 1);
    return craft->most * part * part;
}

// --- strips

#define STEPS 60  // of a section's height, from keel to DEEP drafts above it
#define DEEP  2.0

// Area of the section at x below each step, both sides.
static void section_areas(const lw_hull_lines *lines, double x, double step, double area[STEPS + 1])
{
    const lw_hull_blend blend = lw_hull_blend_at(lines, x);
    double z[2 * STEPS + 1], half[2 * STEPS + 1];  // ends of the steps, and their middles
    for (int k = 0; k <= 2 * STEPS; k++) z[k] = blend.keel + 0.5 * step * k;
    lw_hull_halves(lines, &blend, z, 2 * STEPS + 1, half);
    area[0] = 0.0;
    for (int k = 1; k <= STEPS; k++) {
        const int i = 2 * k;
        area[k] = area[k - 1] + step / 3.0 * (half[i - 2] + 4.0 * half[i - 1] + half[i]);
    }
}

// b and c by least squares on the area that the rounding below takes away from straight sides.
static lw_hull_strip strip_of(const lw_hull_lines *lines, double x, double length, double deep)
{
    double area[STEPS + 1];
    const double step = deep / STEPS;
    section_areas(lines, x, step, area);
    const double beam = (area[STEPS] - area[STEPS - 1]) / step;
    const double t_0 = fmax(deep - area[STEPS] / beam, 0.01 * deep);
    double m_22 = 0.0, m_23 = 0.0, m_33 = 0.0, r_2 = 0.0, r_3 = 0.0;
    for (int k = 1; k <= STEPS; k++) {
        const double T = step * k, y = T / t_0;
        const double left = (area[k] / beam - T + t_0) / t_0;  // 1 / (1 + y + b y^2 + c y^3)
        if (left < 0.01) break;
        const double weight = left * left * left * left, over = 1.0 / left - 1.0 - y;
        const double y_2 = y * y, y_3 = y_2 * y;
        m_22 += weight * y_2 * y_2, m_23 += weight * y_2 * y_3, m_33 += weight * y_3 * y_3;
        r_2 += weight * y_2 * over, r_3 += weight * y_3 * over;
    }
    const double det = m_22 * m_33 - m_23 * m_23;
    double b = 0.5, c = 0.2;  // nearly e^(-y)
    if (det > 0.0) b = (r_2 * m_33 - r_3 * m_23) / det, c = (r_3 * m_22 - r_2 * m_23) / det;
    return (lw_hull_strip){.x = x,
                           .keel = lw_hull_blend_at(lines, x).keel,
                           .width = beam * length,
                           .per_t = 1.0 / t_0,
                           .b = fmin(fmax(b, 0.0), 1.0),
                           .c = fmax(c, 0.0)};
}

// Places and lengths of strips from 0 to 1 that sum polynomials up exactly.
static const double gauss_place[LW_HULL_STRIPS / 2] = {0.0198550717512319, 0.1016667612931866,
                                                       0.2372337950418355, 0.4082826787521751};
static const double gauss_length[LW_HULL_STRIPS / 2] = {0.0506142681451881, 0.1111905172266872,
                                                        0.1568533229389437, 0.1813418916891810};

static void fill_strips(lw_hull_craft *craft, const lw_hull_lines *lines, double deep)
{
    const double aft = lw_hull_place(lines->shape, 0);
    const double length = lw_hull_place(lines->shape, LW_HULL_PLACES) - aft;
    craft->lowest = 1e9;
    for (int i = 0; i < LW_HULL_STRIPS; i++) {
        const int k = i < LW_HULL_STRIPS / 2 ? i : LW_HULL_STRIPS - 1 - i;
        const double place = i == k ? gauss_place[k] : 1.0 - gauss_place[k];
        craft->strip[i] = strip_of(lines, aft + length * place, length * gauss_length[k], deep);
        craft->lowest = fmin(craft->lowest, craft->strip[i].keel);
    }
}

// Water that a bow under it parts: a wedge from the stem to the greatest beam, at the main strut.
static void fill_stem(lw_hull_craft *craft, const lw_hull *hull, double strut_x)
{
    const double half_angle = lw_atan2(0.5 * hull->beam, hull->length - strut_x);
    const lw_hull_strip *stem = &craft->strip[LW_HULL_STRIPS - 1];
    craft->stem_x = stem->x;
    craft->stem_deep = fmax(hull->draft - stem->keel, 0.0);
    craft->stem_drag = lw_hull_form_wedge_drag(half_angle) * hull->beam;
}

// Height of the water at which the strips displace a volume: by halving.
static double water_for(const lw_hull_craft *craft, double volume, double slope, double high)
{
    double low = craft->lowest - craft->reach * fabs(slope);
    for (int k = 0; k < 40; k++) {
        const double middle = 0.5 * (low + high);
        lw_lanes V, moment;
        lw_hull_displaced(craft, lw_all(middle), lw_all(slope), &V, &moment);
        *(V[0] < volume ? &low : &high) = middle;
    }
    return 0.5 * (low + high);
}

// --- splines

// C_F on the wetted length over that on the whole, at a usual speed.
static double friction_part(double length, double whole, double viscosity)
{
    const double V = FRICTION_SPEED;
    return lw_friction_ittc57(lw_all(lw_log(V * length / viscosity)))[0] /
           lw_friction_ittc57(lw_all(lw_log(V * whole / viscosity)))[0];
}

typedef struct preparing {
    lw_hull_craft *craft;
    lw_hull_lines lines;
    lw_hull_cut cut;
    double length, viscosity;
    double speeds[SPEEDS];  // [m/s] at which the waves' part is worked out
} preparing;

// One attitude: i, j count knots, the coefficients stand one further on.
static void fill_form(preparing *p, int i, int j)
{
    const lw_hull_floating *f = &p->cut.floating;
    double *form = p->craft->form[i + 1][j + 1];
    form[LW_HULL_WETTED] = f->wetted * friction_part(f->length, p->length, p->viscosity);
    form[LW_HULL_ACROSS] = f->across;
    form[LW_HULL_CENTRE] = f->centre_z;
}

static void fill_waves(preparing *p, int i, int j)
{
    double areas[SPEEDS];
    lw_hull_wave_areas(&p->cut, p->speeds, SPEEDS, areas);
    for (int k = 0; k < SPEEDS; k++)
        p->craft->wave[i + 1][j + 1][k + 1] = areas[k] / p->cut.floating.volume;
}

// Hardly touching: what follows from the next volumes.
static void fill_touching(lw_hull_craft *craft, int j)
{
    for (int k = 1; k <= SPEEDS; k++) {
        const double a = craft->wave[2][j + 1][k], b = craft->wave[3][j + 1][k];
        craft->wave[1][j + 1][k] = fmax(a + (a - b), 0.0);
    }
    const double a = craft->form[2][j + 1][LW_HULL_CENTRE];
    const double b = craft->form[3][j + 1][LW_HULL_CENTRE];
    craft->form[1][j + 1][LW_HULL_CENTRE] = a + (a - b);
}

static void fit(lw_hull_craft *craft)
{
    const int row = 4, plane = (SLOPES + 2) * 4;
    for (int n = 0; n < 4; n++) {
        for (int i = 1; i <= VOLUMES; i++) lw_bspline_fit(&craft->form[i][0][n], SLOPES, row);
        for (int j = 0; j < SLOPES + 2; j++) lw_bspline_fit(&craft->form[0][j][n], VOLUMES, plane);
    }
    const int speeds = SPEEDS + 2, sheet = (SLOPES + 2) * speeds;
    for (int i = 1; i <= VOLUMES; i++) {
        for (int j = 1; j <= SLOPES; j++) lw_bspline_fit(craft->wave[i][j], SPEEDS, 1);
        for (int k = 0; k < speeds; k++) lw_bspline_fit(&craft->wave[i][0][k], SLOPES, speeds);
    }
    for (int j = 0; j < SLOPES + 2; j++) {
        for (int k = 0; k < speeds; k++) lw_bspline_fit(&craft->wave[0][j][k], VOLUMES, sheet);
    }
}

static void friction_curve(lw_curve *curve, const lw_hull *hull, double viscosity)
{
    *curve = (lw_curve){.first = LW_SPEED_FIRST, .step = LW_SPEED_STEP};
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const double log_re = LW_SPEED_FIRST + i * LW_SPEED_STEP + lw_log(hull->length / viscosity);
        curve->value[i] = (1.0 + hull->form_factor) * lw_friction_ittc57(lw_all(log_re))[0];
    }
    lw_curve_smooth(curve);
}

void lw_hull_prepare(lw_hull_craft *craft, const lw_hull *hull, double origin_x, double viscosity)
{
    lw_hull_shape shape;
    preparing p = {.craft = craft, .length = hull->length, .viscosity = viscosity};
    lw_hull_shape_of_craft(&shape, hull, origin_x);
    lw_hull_lines_of(&p.lines, &shape);
    const double slowest = LW_HULL_SLOWEST * sqrt(LW_GRAVITY * hull->length);
    *craft = (lw_hull_craft){.most = 2.0 * hull->length * hull->beam * hull->draft * hull->block,
                             .steepest = lw_tan(LW_HULL_STEEPEST),
                             .reach = fmax(origin_x, hull->length - origin_x),
                             .wave_first = lw_log(slowest),
                             .wave_step = lw_log(LW_HULL_FASTEST / LW_HULL_SLOWEST) / (SPEEDS - 1)};
    fill_strips(craft, &p.lines, DEEP * hull->draft);
    fill_stem(craft, hull, origin_x);
    friction_curve(&craft->friction, hull, viscosity);
    for (int k = 0; k < SPEEDS; k++) p.speeds[k] = lw_exp(craft->wave_first + k * craft->wave_step);
    for (int j = 0; j < SLOPES; j++) {
        const double slope = slope_at(craft, j), trim = lw_atan(slope);
        for (int i = 1; i < VOLUMES; i++) {
            const double water = water_for(craft, volume_at(craft, i), slope, hull->length);
            const lw_hull_attitude attitude = {water, trim};
            const lw_hull_status status =
                lw_hull_cut_lines(&p.cut, &p.lines, attitude, LW_HULL_AREA_COARSE);
            if (status != LW_HULL_OK) continue;
            fill_form(&p, i, j);
            fill_waves(&p, i, j);
        }
        fill_touching(craft, j);
    }
    fit(craft);
}
