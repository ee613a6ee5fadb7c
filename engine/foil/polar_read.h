// polar_read.h - the polar of a section, read in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_READ_H
#define LW_POLAR_READ_H

#include "lullwise/polar.h"
#include "solve/elementary.h"
#include "solve/gather.h"
#include "solve/lanes.h"

// Where lanes fall among the knots of a polar.
typedef struct lw_polar_place {
    int below[LW_WIDTH];
    lw_lanes part;
} lw_polar_place;

LW_INLINE lw_polar_place lw_polar_place_of(lw_lanes u, int knots)
{
    lw_polar_place place;
    const lw_lanes x = lw_lanes_clamp(u, lw_all(0.0), lw_all(knots - 1.0));
    LW_EACH_LANE (i) {
        const int k = (int)x[i];
        place.below[i] = k < knots - 2 ? k : knots - 2;
        place.part[i] = x[i] - place.below[i];
    }
    return place;
}

LW_INLINE lw_polar_place lw_polar_lift_place(const lw_polar *polar, lw_lanes y)
{
    return lw_polar_place_of((y - polar->lift_first) * (1.0 / polar->lift_step), LW_POLAR_LIFTS);
}

// Cubic between two knots from values f and slopes m.
LW_INLINE lw_lanes lw_polar_cubic(lw_lanes t, lw_lanes f_0, lw_lanes f_1, lw_lanes m_0,
                                  lw_lanes m_1)
{
    const lw_lanes rise = f_1 - f_0, bend = m_0 - rise, fall = rise - m_1;
    return f_0 + t * (rise + (1.0 - t) * ((1.0 - t) * bend + t * fall));
}

// Over lift alone.
LW_INLINE lw_lanes lw_polar_in_line(const lw_polar_pair *row, const lw_polar_place *lift)
{
    lw_fours f;
    LW_EACH_LANE (i) f.from[i] = &row[lift->below[i]].value;
    lw_gather(&f);
    return lw_polar_cubic(lift->part, f.part[0], f.part[2], f.part[1], f.part[3]);
}

// Over lift and flap: bicubic, with one slope everywhere.
LW_INLINE lw_lanes lw_polar_over(const lw_polar_knot (*table)[LW_POLAR_LIFTS],
                                 const lw_polar_place *lift, const lw_polar_place *flap)
{
    lw_lanes value[2], by_flap[2];
    for (int over = 0; over < 2; over++) {
        lw_fours f, g;
        LW_EACH_LANE (i) {
            const lw_polar_knot *knot = &table[flap->below[i] + over][lift->below[i]];
            f.from[i] = &knot[0].value;
            g.from[i] = &knot[1].value;
        }
        lw_gather(&f);
        lw_gather(&g);
        const lw_lanes t = lift->part;
        value[over] = lw_polar_cubic(t, f.part[0], g.part[0], f.part[1], g.part[1]);
        by_flap[over] = lw_polar_cubic(t, f.part[2], g.part[2], f.part[3], g.part[3]);
    }
    return lw_polar_cubic(flap->part, value[0], value[1], by_flap[0], by_flap[1]);
}

// Lift curve: a straight line that bends before the stall and stays level beyond it.
//
//     s(x) = sqrt(1 + k^2) / 2 (sqrt((x + 1)^2 + k^2) - sqrt((x - 1)^2 + k^2))
//
// A hyperbola's two corners; k is fitted to each polar.
LW_INLINE lw_lanes lw_polar_bend(const lw_polar *polar, lw_lanes x)
{
    const lw_lanes up = x + 1.0, down = x - 1.0;
    return polar->half * (lw_lanes_sqrt(up * up + polar->corner_2) -
                          lw_lanes_sqrt(down * down + polar->corner_2));
}

// How far ln Re is from that of the polar, held near where it is known.
//
//     r = z / sqrt(1 + (z / 2)^2),   z = ln(Re / LW_POLAR_REYNOLDS)
LW_INLINE lw_lanes lw_polar_speed(lw_lanes log_re)
{
    const lw_lanes z = log_re - 13.017002861746503;  // ln 4.5e5
    return z / lw_lanes_sqrt(1.0 + 0.25 * z * z);
}

// What a section does at a flap angle.
typedef struct lw_polar_flap {
    lw_polar_place place;
    lw_lanes angle;  // [rad]
    lw_lanes worth, greatest, least, moment;
} lw_polar_flap;

// Beyond the last knots everything stays as it is there.
LW_INLINE lw_polar_flap lw_polar_flap_at(const lw_polar *polar, lw_lanes flap)
{
    const lw_polar_bent *only = &polar->bent[0].value;
    lw_polar_flap at = {.angle = flap,
                        .worth = lw_all(0.0),
                        .greatest = lw_all(only->greatest),
                        .least = lw_all(only->least),
                        .moment = lw_all(only->moment)};
    if (polar->flap_step == 0.0) return at;
    at.place =
        lw_polar_place_of((flap - polar->flap_first) * (1.0 / polar->flap_step), LW_POLAR_FLAPS);
    lw_fours f_0, f_1, m_0, m_1;
    LW_EACH_LANE (i) {
        const lw_polar_flap_knot *knot = &polar->bent[at.place.below[i]];
        f_0.from[i] = &knot[0].value.worth, f_1.from[i] = &knot[1].value.worth;
        m_0.from[i] = &knot[0].slope.worth, m_1.from[i] = &knot[1].slope.worth;
    }
    lw_gather(&f_0), lw_gather(&f_1), lw_gather(&m_0), lw_gather(&m_1);
    lw_lanes *const to[] = {&at.worth, &at.greatest, &at.least, &at.moment};
    for (int k = 0; k < 4; k++) {
        *to[k] = lw_polar_cubic(at.place.part, f_0.part[k], f_1.part[k], m_0.part[k], m_1.part[k]);
    }
    return at;
}

// Most lift on the side of the angle, as a positive number.
LW_INLINE lw_lanes lw_polar_most(const lw_polar *polar, const lw_polar_flap *flap, lw_lanes angle,
                                 lw_lanes r)
{
    return lw_select(angle > 0.0, flap->greatest, flap->least) * (1.0 + polar->most_growth * r);
}

LW_INLINE lw_lanes lw_polar_beyond(const lw_polar *polar, const lw_polar_flap *flap, lw_lanes lift)
{
    return lift - polar->ideal_lift - polar->ideal_per_flap * flap->angle;
}

// Drag over that at y = 0 with the flap in line.
LW_INLINE lw_lanes lw_polar_drag(const lw_polar *polar, const lw_polar_flap *flap, lw_lanes y,
                                 lw_lanes r)
{
    const lw_polar_place lift = lw_polar_lift_place(polar, y);
    const lw_lanes growth = lw_polar_in_line(polar->growth, &lift);
    const lw_lanes drag = polar->flap_step == 0.0 ? lw_polar_in_line(polar->drag_in_line, &lift)
                                                  : lw_polar_over(polar->drag, &lift, &flap->place);
    return drag * (1.0 + growth * r);
}

LW_INLINE lw_lanes lw_polar_suction(const lw_polar *polar, const lw_polar_flap *flap, lw_lanes y)
{
    const lw_polar_place lift = lw_polar_lift_place(polar, y);
    return polar->flap_step == 0.0 ? lw_polar_in_line(polar->suction_in_line, &lift)
                                   : lw_polar_over(polar->suction, &lift, &flap->place);
}

LW_INLINE lw_lanes lw_polar_moment(const lw_polar *polar, const lw_polar_flap *flap, lw_lanes y)
{
    return flap->moment + polar->moment_slope * y;
}

#endif
