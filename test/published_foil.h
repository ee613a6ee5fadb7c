// published_foil.h - functions that test/published/ names: sections, foils, struts, the surface.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_FOIL_H
#define LW_TEST_PUBLISHED_FOIL_H

#include "boat/foil_curves.h"
#include "foil/foil_force.h"
#include "foil/friction.h"
#include "foil/section.h"
#include "foil/strut.h"
#include "foil/strut_force.h"
#include "foil/ventilation/strut_limits.h"
#include "lullwise/elementary.h"
#include "test/planform.h"
#include "test/published_row.h"
#include "test/surface.h"

// The first lane of a lane function.
#define FIRST(lanes) ((lanes)[0])
#define LOG_RE(a)    lw_all(lw_log((a)[0]))

static double friction_ittc57(const double *a) { return FIRST(lw_friction_ittc57(LOG_RE(a))); }
static double friction_blasius(const double *a) { return FIRST(lw_friction_blasius(LOG_RE(a))); }
static double friction_schlichting(const double *a)
{
    return FIRST(lw_friction_schlichting(LOG_RE(a)));
}
static double friction_foil(const double *a) { return FIRST(lw_friction_foil(LOG_RE(a))); }
static double friction_hughes(const double *a) { return FIRST(lw_friction_hughes(LOG_RE(a))); }
static double friction_schoenherr(const double *a)
{
    return FIRST(lw_friction_schoenherr(LOG_RE(a)));
}

// Four-digit line m, p; the 230 line; a-series line a, c_li.
static double four_digit_zero_lift(const double *a)
{
    return lw_mean_line_four_digit(a[0], a[1]).zero_lift_angle / LW_DEG;
}
static double four_digit_moment(const double *a)
{
    return lw_mean_line_four_digit(a[0], a[1]).moment;
}
static double four_digit_ideal_angle(const double *a)
{
    return lw_mean_line_four_digit(a[0], a[1]).ideal_angle / LW_DEG;
}
static double four_digit_ideal_lift(const double *a)
{
    return lw_mean_line_four_digit(a[0], a[1]).ideal_lift;
}
static double five_digit_zero_lift(const double *a)
{
    return lw_mean_line_five_digit(a[0], a[1]).zero_lift_angle / LW_DEG;
}
static double five_digit_moment(const double *a)
{
    return lw_mean_line_five_digit(a[0], a[1]).moment;
}
static double five_digit_ideal_lift(const double *a)
{
    return lw_mean_line_five_digit(a[0], a[1]).ideal_lift;
}
static double a_line_zero_lift(const double *a)
{
    return lw_mean_line_a(a[0], a[1]).zero_lift_angle / LW_DEG;
}
static double a_line_moment(const double *a) { return lw_mean_line_a(a[0], a[1]).moment; }
static double a_line_ideal_angle(const double *a)
{
    return lw_mean_line_a(a[0], a[1]).ideal_angle / LW_DEG;
}

static double flap_share(const double *a) { return lw_flap_of(a[0]).angle_share; }
static double flap_lift(const double *a) { return lw_flap_of(a[0]).lift; }
static double flap_moment(const double *a) { return lw_flap_of(a[0]).moment; }
static double flap_effect(const double *a)  // part of theory found, at a flap angle
{
    return lw_flap_effect(a[0] * LW_DEG);
}
static double flap_share_real(const double *a)  // chord part, flap angle
{
    return flap_share(a) * flap_effect(a + 1);
}

static double slope_perfect(const double *a) { return lw_section_slope_perfect(a[0]); }
static double slope_measured(const double *a) { return lw_section_slope_measured(a[0]); }
static double form_foil(const double *a) { return lw_section_form_foil(a[0]); }
static double form_strut(const double *a) { return lw_section_form_strut(a[0]); }
static double section_drag_tripped(const double *a)  // thickness, Re
{
    return 2.0 * lw_section_form_foil(a[0]) * friction_schlichting(a + 1);
}
static double section_drag_smooth(const double *a)
{
    return 2.0 * lw_section_form_foil(a[0]) * friction_foil(a + 1);
}
static double least_pressure(const double *a)  // thickness, ideal lift, lift
{
    return lw_section_least_pressure(a[0], a[1], a[2]);
}

// The sea of the catalogue: 15 degC.
static const lw_medium sea_15 = {
    .water_density = 1026.021, .vapour_pressure = 1671.0, .air_pressure = 101325.0};
static double cavitation_number(const double *a)  // speed, depth
{
    return lw_cavitation_number(&sea_15, a[1], a[0]);
}
static double cavitation_speed(const double *a)  // thickness, ideal lift, lift, depth
{
    return lw_cavitation_speed(&sea_15, a[3], least_pressure(a));
}
static double ventilation_number(const double *a) { return lw_ventilation_number(a[1], a[0]); }
// Depth / chord and V / sqrt(g h), then an angle [deg] or a coefficient.
static double per_froude(double froude) { return 2.0 / (froude * froude); }
static double ventilation_forms(const double *a)
{
    return lw_ventilation_of(a[0], per_froude(a[1])).forms / LW_DEG;
}
static double ventilation_forms_most(const double *a)
{
    return lw_ventilation_of(a[0], per_froude(a[1])).forms_most / LW_DEG;
}
static double ventilation_stays(const double *a)
{
    return lw_ventilation_of(a[0], per_froude(a[1])).stays / LW_DEG;
}
static double washout_froude(const double *a)  // depth / chord, coefficient
{
    return sqrt(lw_ventilation_washout(a[0], per_froude(1.0)) / a[1]);
}
static double ventilated_side(const double *a)
{
    return lw_ventilated_side(a[0], per_froude(a[1]), a[2] * LW_DEG);
}
static double ventilated_part(const double *a)  // of the wetted force
{
    return ventilated_side(a) / (FIRST(lw_strut_slope(lw_all(a[0]))) * a[2] * LW_DEG);
}
static double strut_slope(const double *a) { return FIRST(lw_strut_slope(lw_all(a[0]))); }
static double strut_side(const double *a)  // wetted: depth / chord, angle [deg]
{
    const lw_strut_craft strut = {.chord = 1.0, .length = a[0]};
    const lw_lanes one = lw_all(1.0);
    const lw_strut_flow flow = {.forward = one,
                                .across = lw_all(0.0),
                                .at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, one),
                                .turn = lw_all(a[1] * LW_DEG),
                                .wet = lw_all(a[0]),
                                .spray = one};
    return FIRST(lw_strut_force(&strut, 2.0 / a[0], flow).side);  // q S = 1
}

static double spray_area(const double *a) { return lw_strut_spray_area(a[0]); }
static double spray_drag(const double *a)  // thickness, speed, density
{
    return 0.5 * a[2] * a[1] * a[1] * lw_strut_spray_area(a[0]);
}
static double junction(const double *a) { return lw_strut_junction_area(1.0, a[0]); }  // on t^2
static double wall(const double *a) { return lw_strut_wall_area(1.0, a[0]); }

static lw_lifting_line line_of(const double *a)  // aspect, taper
{
    return lw_planform_lifting_line((lw_planform){a[0], a[1], 2.0 * LW_PI});
}
static double line_slope(const double *a) { return line_of(a).slope; }
static double line_delta(const double *a) { return line_of(a).drag; }
static double line_tau(const double *a) { return line_of(a).lift; }
static double helmbold(const double *a) { return lw_planform_helmbold(a[0]); }

// The same coefficient at every depth.
static lw_curve even(double value)
{
    lw_curve curve = {.step = LW_DEPTH_STEP};
    for (int i = 0; i < LW_CURVE_KNOTS; i++) curve.value[i] = value;
    return curve;
}

// Force on a wing of unit chord in unit flow, deep, with neither friction nor stall.
static lw_foil_load wing(double aspect, double tau, double delta, double alpha)
{
    const double slope = 2.0 * LW_PI / (1.0 + 2.0 * (1.0 + tau) / aspect);
    const lw_foil_craft craft = {.span = aspect,
                                 .area = aspect,
                                 .chord = 1.0,
                                 .slope = even(slope),
                                 .induced = even((1.0 + delta) / (LW_PI * aspect)),
                                 .span_share = 1.0,
                                 .polar = {.half = 0.5,  // no flap, no stall, no drag
                                           .stall_share = 1.0,
                                           .lift_step = 1.0,
                                           .bent = {{.value = {.greatest = 1e3, .least = 1e3}}}}};
    const lw_foil_flow flow = {.forward = lw_all(1.0),
                               .upward = lw_all(0.0),
                               .incidence = lw_all(alpha),
                               .flap = lw_all(0.0),
                               .depth = lw_all(1.0),
                               .tip_rise = lw_all(0.0)};
    return lw_foil_force(&craft, 2.0 / aspect, flow);  // q S = 1: forces are coefficients
}
static double wing_lift(const double *a)  // aspect, tau, delta, alpha
{
    return FIRST(wing(a[0], a[1], a[2], a[3] * LW_DEG).lift);
}
static double wing_drag(const double *a)
{
    return FIRST(wing(a[0], a[1], a[2], a[3] * LW_DEG).drag);
}

// Rectangular wing under the surface, as a craft is prepared with it: aspect, depth / chord. Lift /
// lift far below; C_Di pi A / C_L^2.
static lw_foil_craft under_surface(const double *a)
{
    const double chord = 0.1, half = 0.5 * a[0] * chord;
    const lw_wing plate = {.count = 2,
                           .station = {{.chord = chord, .slope = 2.0 * LW_PI},
                                       {.y = half, .chord = chord, .slope = 2.0 * LW_PI}}};
    lw_foil_craft craft = {.span = 2.0 * half, .chord = chord};
    lw_foil_curves(&craft, &plate, NULL, (lw_wing_point){0});
    return craft;
}
static double surface_lift(const double *a)
{
    const lw_foil_craft craft = under_surface(a);
    const double deep = craft.slope.value[LW_CURVE_KNOTS - 1];
    return FIRST(lw_curve_at(&craft.slope, lw_all(0.1 * a[1]))) / deep;
}
static double surface_drag(const double *a)
{
    const lw_foil_craft craft = under_surface(a);
    return FIRST(lw_curve_at(&craft.induced, lw_all(0.1 * a[1]))) * LW_PI * a[0];
}
static double surface_slope(const double *a)
{
    return FIRST(lw_surface_slope_factor(lw_all(a[0])));
}
static double biplane(const double *a) { return lw_planform_interference(a[0]); }
static double biplane_fit(const double *a) { return FIRST(lw_surface_interference(lw_all(a[0]))); }

// Downwash angle times pi A / C_L behind an elliptic wing of unit span: distance behind, and height
// below the image, in spans; far away a vortex sheet gives 2.
static double downwash(const double *a)
{
    const double area = 1.0;
    return LW_PI / area * FIRST(lw_surface_downwash(area, LW_PI / 8.0, lw_all(a[0]), lw_all(a[1])));
}

// clang-format off
#define PUBLISHED_FOIL                                              \
    {"friction_ittc57",        "-",     1, friction_ittc57},        \
    {"friction_blasius",       "-",     1, friction_blasius},       \
    {"friction_schlichting",   "-",     1, friction_schlichting},   \
    {"friction_foil",          "-",     1, friction_foil},          \
    {"friction_hughes",        "-",     1, friction_hughes},        \
    {"friction_schoenherr",    "-",     1, friction_schoenherr},    \
    {"four_digit_zero_lift",   "deg",   2, four_digit_zero_lift},   \
    {"four_digit_moment",      "-",     2, four_digit_moment},      \
    {"four_digit_ideal_angle", "deg",   2, four_digit_ideal_angle}, \
    {"four_digit_ideal_lift",  "-",     2, four_digit_ideal_lift},  \
    {"five_digit_zero_lift",   "deg",   2, five_digit_zero_lift},   \
    {"five_digit_moment",      "-",     2, five_digit_moment},      \
    {"five_digit_ideal_lift",  "-",     2, five_digit_ideal_lift},  \
    {"a_line_zero_lift",       "deg",   2, a_line_zero_lift},       \
    {"a_line_moment",          "-",     2, a_line_moment},          \
    {"a_line_ideal_angle",     "deg",   2, a_line_ideal_angle},     \
    {"flap_share",             "-",     1, flap_share},             \
    {"flap_lift",              "1/rad", 1, flap_lift},              \
    {"flap_moment",            "1/rad", 1, flap_moment},            \
    {"flap_effect",            "-",     1, flap_effect},            \
    {"flap_share_real",        "-",     2, flap_share_real},        \
    {"slope_perfect",          "1/rad", 1, slope_perfect},          \
    {"slope_measured",         "1/rad", 1, slope_measured},         \
    {"form_foil",              "-",     1, form_foil},              \
    {"form_strut",             "-",     1, form_strut},             \
    {"section_drag_tripped",   "-",     2, section_drag_tripped},   \
    {"section_drag_smooth",    "-",     2, section_drag_smooth},    \
    {"least_pressure",         "-",     3, least_pressure},         \
    {"cavitation_number",      "-",     2, cavitation_number},      \
    {"cavitation_speed",       "m/s",   4, cavitation_speed},       \
    {"ventilation_number",     "-",     2, ventilation_number},     \
    {"ventilation_forms",      "deg",   2, ventilation_forms},      \
    {"ventilation_forms_most", "deg",   2, ventilation_forms_most}, \
    {"ventilation_stays",      "deg",   2, ventilation_stays},      \
    {"washout_froude",         "-",     2, washout_froude},         \
    {"ventilated_side",        "-",     3, ventilated_side},        \
    {"ventilated_part",        "-",     3, ventilated_part},        \
    {"strut_side",             "-",     2, strut_side},             \
    {"strut_slope",            "1/rad", 1, strut_slope},            \
    {"spray_area",             "m2",    1, spray_area},             \
    {"spray_drag",             "N",     3, spray_drag},             \
    {"junction",               "-",     1, junction},               \
    {"wall",                   "-",     1, wall},                   \
    {"line_slope",             "1/rad", 2, line_slope},             \
    {"line_delta",             "-",     2, line_delta},             \
    {"line_tau",               "-",     2, line_tau},               \
    {"helmbold",               "1/rad", 1, helmbold},               \
    {"wing_lift",              "-",     4, wing_lift},              \
    {"wing_drag",              "-",     4, wing_drag},              \
    {"surface_slope",          "-",     1, surface_slope},          \
    {"surface_lift",           "-",     2, surface_lift},           \
    {"surface_drag",           "-",     2, surface_drag},           \
    {"biplane",                "-",     1, biplane},                \
    {"biplane_fit",            "-",     1, biplane_fit},            \
    {"downwash",               "-",     2, downwash}
// clang-format on

#endif
