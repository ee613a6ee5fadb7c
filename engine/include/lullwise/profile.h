// profile.h - the shape of a foil section, and the perfect fluid around it.
// SPDX-License-Identifier: MIT
//
// In chords, the nose near (0, 0) and the tail at (1, y). An outline becomes a profile of straight
// panels, with or without its flap down; a profile's flow is solved once and serves every angle.
// With friction: boundary_layer.h. The closed forms of foil/section.h are checks of both.

#ifndef LW_PROFILE_H
#define LW_PROFILE_H

#include <stdbool.h>

#define LW_OUTLINE_MOST  401  // points of an outline
#define LW_OUTLINE_LEAST 20   // of one from coordinates
#define LW_PANELS_LEAST  20
#define LW_PANELS_MOST   160
#define LW_PANELS_USUAL  160
#define LW_NODES_MOST    (LW_PANELS_MOST + 1)
#define LW_WAKE_NODES    24
#define LW_FLOW_NODES    (LW_NODES_MOST + LW_WAKE_NODES)

// clang-format off
#define LW_PROFILE_STATUS_LIST(X)                                                     \
    X(OK,             "ok")                                                           \
    X(UNKNOWN,        "no section has this designation")                              \
    X(MODIFIED,       ("A- and 16-series, 67-series and modified NACA sections are not built in: " \
                       "give coordinates"))                                           \
    X(TOO_FEW,        "a section needs at least 20 different points")                 \
    X(TOO_MANY,       "a section may have at most 401 points")                        \
    X(NOT_A_NUMBER,   "a coordinate is not a number")                                 \
    X(CROSSED,        "the outline crosses itself")                                   \
    X(FLAT,           "the outline has no inside, or is thicker than it is long")     \
    X(BAD_PANELS,     "panels: an even number from 20 to 160")                        \
    X(BAD_HINGE,      "the flap's hinge lies outside 40 to 95 % of the chord")        \
    X(BAD_FLAP,       "the flap's angle lies outside -30 to 30 degrees")              \
    X(NO_SOLUTION,    "the flow about this outline could not be solved")
#define LW_AS_PROFILE_STATUS(name, text) LW_PROFILE_##name,
typedef enum lw_profile_status {
    LW_PROFILE_STATUS_LIST(LW_AS_PROFILE_STATUS) LW_PROFILE_STATUS_COUNT
} lw_profile_status;
// clang-format on

const char *lw_profile_status_text(lw_profile_status status);

// Smooth curve from the tail along the lower side to the nose and back above: clockwise.
typedef struct lw_outline {
    int count;
    double s[LW_OUTLINE_MOST];  // length along the curve, by chords of its pieces
    double x[LW_OUTLINE_MOST], y[LW_OUTLINE_MOST];
    double x_s[LW_OUTLINE_MOST], y_s[LW_OUTLINE_MOST];  // slopes of the splines x(s), y(s)
    int given;          // how many of the points were given as coordinates, spread evenly; or 0
    bool was_reversed;  // points were given the other way round, or from the nose
    bool was_open;      // tail was open and has been closed, half from either side
    bool was_scaled;    // points were not in chords, or did not begin at 0
} lw_outline;

// "NACA 2412", "23012", "63-412", "63412", "63(1)-412", "64-209 a=0.8"; spaces and case do not
// matter.
//
// Four digits: camber, its place, thickness [naca-460]. Five: 210..250 and the reflexed 221..251
// [naca-610] [naca-537]. Six series 63, 64, 65, 66 on a mean line a (1 unless given) [naca-824].
// Thickness stands square on the mean line; tails are closed: -0.1036 x^4 for -0.1015, or, in the
// six series, as published. Six-series thickness is a conformal map fitted to published ordinates
// of the 12 % section, stretched for others: within 2e-4 chords of the tables from 6 to 15 %.
lw_profile_status lw_outline_naca(const char *designation, lw_outline *outline);

// Four digits that are none: camber m (down is negative), its place p and thickness t, in chords.
lw_profile_status lw_outline_four_digit(double camber, double place, double thickness,
                                        lw_outline *outline);

// Coordinates as section files have them: once around from the tail either way, or both sides from
// the nose; the tail named once or twice. Repeated points are dropped. Between few points others
// are put, on a curve that is smooth about the nose as a parabola is. On a fault nothing of the
// outline means anything.
lw_profile_status lw_outline_of_points(const double *x, const double *y, int count,
                                       lw_outline *outline);

// A flap without gap: the section behind the hinge turned down, joined by an arc as long as the
// section is thick there.
typedef struct lw_profile_flap {
    double hinge;  // [-]   place along the chord; 0: no flap
    double angle;  // [rad] tail down positive
} lw_profile_flap;

// Panels' ends, clockwise from the tail; crowded at the nose, as sharp as it is, and at the tail.
typedef struct lw_profile {
    int count;  // panels and one
    double x[LW_NODES_MOST], y[LW_NODES_MOST];
} lw_profile;

lw_profile_status lw_profile_of(const lw_outline *outline, lw_profile_flap flap, int panels,
                                lw_profile *profile);

// Speed along the surface, clockwise positive, at each node for the two unit flows.
typedef struct lw_profile_flow {
    double along[LW_NODES_MOST];   // undisturbed flow from the nose to the tail
    double across[LW_NODES_MOST];  // from below
} lw_profile_flow;

// Room to solve in: 0.5 MB, the caller's.
typedef struct lw_profile_room {
    double matrix[(LW_NODES_MOST + 1) * (LW_NODES_MOST + 1)];
    double right[(LW_NODES_MOST + 1) * LW_FLOW_NODES];
    int pivot[LW_NODES_MOST + 1];
} lw_profile_room;

// Vorticity linear on each panel, chosen so that the stream function is one number at all nodes;
// the same speed leaves both sides of the tail, inside which nothing flows [drela-1989]. At 140
// panels lift is within 0.25 % of exact flows and the lowest pressure within 1.3 %; in the mean
// 0.07 and 0.2 %.
lw_profile_status lw_profile_flow_of(const lw_profile *profile, lw_profile_room *room,
                                     lw_profile_flow *flow);

typedef struct lw_profile_load {
    double lift;            // c_l   [-]
    double moment;          // c_m   [-] about the quarter chord, bow up positive
    double least_pressure;  // C_p   [-] lowest on the surface
    double least_at;        // x     [-] where
} lw_profile_load;

double lw_profile_speed(const lw_profile_flow *flow, int node, double alpha);
lw_profile_load lw_profile_load_of(const lw_profile *profile, const lw_profile_flow *flow,
                                   double alpha);

#endif
