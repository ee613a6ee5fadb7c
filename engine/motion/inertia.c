// inertia.c - masses and damping of a prepared craft, from what was measured of it.
// SPDX-License-Identifier: MIT

#include "motion/inertia_lanes.h"

#define RIG_PART      0.25  // of the boat's mass: mast, boom, sail  [judged]
#define FOILS_PART    0.25  // both foils with their struts          [judged]
#define HULL_PART     (1.0 - RIG_PART - FOILS_PART)
#define HULL_ROLL     0.35  // [m] radius of gyration of hull and racks about its length  [judged]
#define HULL_LENGTH   0.27  // the same about the others, over the length: less than a rod's
#define BODY_GYRATION 0.35  // [m] of a sitting person  [judged]
#define DEEP_PART     0.65  // of a strut's length is wet in flight  [judged]

// A thin foil or strut: the water it carries along, and the damping that its lift brings.
typedef struct plate {
    double x, z;     // of its quarter chord, or of the middle of its depth [m]
    double water;    // carried along, square to it [kg]
    double chord;    // [m]
    double damping;  // d force / d velocity across, over speed [kg/m]
    int across;      // axis square to it: 1 of a strut, 2 of a foil
} plate;

static double square(double x) { return x * x; }

// Moments of inertia about the boat's middle: a rig, a hull and foils where they are. The boat's
// middle is measured, its moments are not: [judged] as a whole.
static void boat_spin(const lw_craft *craft, double spin[3])
{
    const double m = craft->hull_mass, x_G = craft->hull_x, z_G = craft->hull_z;
    const double up = craft->main_strut.length, length = craft->bow_x - craft->transom_x;
    const double rig_z = craft->sail.centre_height - z_G, rig_x = craft->sail.centre_x - x_G;
    const double foil_z = square(0.3 * up - z_G);
    const double foil_x = 0.6 * square(x_G) + 0.4 * square(craft->rudder_x - x_G);
    const double rig = square(craft->sail.luff) / 12.0, hull = square(HULL_LENGTH * length);
    const double low = square(up + 0.15 - z_G);  // a hull's middle above its bottom
    spin[0] = m * (RIG_PART * (rig + square(rig_z)) + FOILS_PART * foil_z +
                   HULL_PART * (square(HULL_ROLL) + low));
    spin[1] = m * (RIG_PART * (rig + square(rig_z) + square(rig_x)) +
                   FOILS_PART * (foil_z + foil_x) + HULL_PART * (hull + low));
    spin[2] = m * (RIG_PART * square(rig_x) + FOILS_PART * foil_x + HULL_PART * hull);
}

// Water carried by a thin plate that moves across itself, a cylinder about its chord.
//
//     m = rho pi c^2 / 4 for each length                         [theodorsen]
static double carried_water(double density, double chord, double length)
{
    return density * LW_PI / 4.0 * square(chord) * length;
}

static plate foil_plate(const lw_foil_craft *foil, double density, double x, double z)
{
    const double a = foil->slope.value[LW_CURVE_KNOTS / 3];
    return (plate){.x = x,
                   .z = z,
                   .chord = foil->chord,
                   .water = carried_water(density, foil->chord, foil->span),
                   .damping = 0.5 * density * foil->area * a,
                   .across = 2};
}

static plate strut_plate(const lw_strut_craft *strut, double density, double x, double z)
{
    const double wet = DEEP_PART * strut->length;
    const double a = lw_strut_slope(lw_strut_aspect(strut, lw_all(wet)))[0];
    return (plate){.x = x,
                   .z = z + 0.5 * wet,
                   .chord = strut->chord,
                   .water = carried_water(density, strut->chord, wet),
                   .damping = 0.5 * density * strut->chord * wet * a,
                   .across = 1};
}

// Velocity along an axis, at a place in the plane of the boat, of each degree of freedom.
static void velocity_at(double x, double z, int along, double of[LW_DOF])
{
    const double all[3][LW_DOF] = {
        {1.0, 0.0, 0.0, 0.0, z, 0.0}, {0.0, 1.0, 0.0, -z, 0.0, x}, {0.0, 0.0, 1.0, 0.0, -x, 0.0}};
    for (int i = 0; i < LW_DOF; i++) of[i] = all[along][i];
}

// What resists along one axis at a place, as a matrix of all degrees of freedom.
static void add_along(double matrix[LW_DOF][LW_DOF], double much, double x, double z, int along)
{
    double of[LW_DOF];
    velocity_at(x, z, along, of);
    for (int i = 0; i < LW_DOF; i++) {
        for (int j = 0; j < LW_DOF; j++) matrix[i][j] += much * of[i] * of[j];
    }
}

lw_inertia lw_inertia_of(const lw_craft *craft)
{
    const double rho = craft->medium.water_density;
    const plate main = foil_plate(&craft->main_foil, rho, 0.0, 0.0);
    const plate rudder = foil_plate(&craft->rudder_foil, rho, craft->rudder_x, craft->rudder_z);
    const plate plates[] = {
        main, rudder, strut_plate(&craft->main_strut, rho, 0.0, 0.0),
        strut_plate(&craft->rudder_strut, rho, craft->rudder_x, craft->rudder_z)};
    lw_inertia inertia = {.body_spin = craft->body_mass * square(BODY_GYRATION)};

    boat_spin(craft, inertia.spin);
    for (int along = 0; along < 3; along++) {
        add_along(inertia.mass, craft->hull_mass, craft->hull_x, craft->hull_z, along);
        inertia.mass[3 + along][3 + along] += inertia.spin[along];
    }
    for (int i = 0; i < 4; i++) {  // water moves with the middle of the chord
        const plate *p = &plates[i];
        add_along(inertia.mass, p->water, p->x - 0.25 * p->chord, p->z, p->across);
        add_along(inertia.damping, p->damping, p->x, p->z, p->across);
    }
    const double b_2 = square(craft->main_foil.span), b_r_2 = square(craft->rudder_foil.span);
    inertia.mass[3][3] += (main.water * b_2 + rudder.water * b_r_2) / 12.0;
    inertia.damping[3][3] += (main.damping * b_2 + rudder.damping * b_r_2) / 16.0;
    return inertia;
}
