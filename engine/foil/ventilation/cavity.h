// cavity.h - air on a foil and the strut above it, in lanes: drawn down, spread, and shed again.
// SPDX-License-Identifier: MIT
//
//     a foil   draws air when its higher tip is half a chord out of the water [benson-land-1942];
//              sheds what it holds (lw_cavity_lasts) once the tip is half a chord deep   [judged]
//     a strut  draws air beyond 14.5 deg, gathering way or turned at once [harwood-2016]; and
//              in waves beyond 7 deg where it would stay, once that was so for the way from
//              crest to crest: each brings a hole or a breaker that lets air in            [judged]
//              sheds it where it cannot stay (strut_limits.h), after a way of 5 chords   [judged]
//     air spreads from a strut to its foil, and from a foil up its strut where the strut's angle
//              lets it stay, once it has been there for a way of 10 chords                 [judged]
//
// A cavity grows and shrinks over a way of 3 chords [judged]: it formed within 3.5 to 7
// [aguiar-ferreira-2026].

#ifndef LW_CAVITY_H
#define LW_CAVITY_H

#include "foil/ventilation/ventilated_foil.h"
#include "foil/ventilation/ventilated_strut.h"

#define LW_CAVITY_LEAST 1e-3  // less of one counts as none
#define LW_CAVITY_SLOW  2.0   // [m/s] none holds below: foils do not suck enough  [judged]

// Of one foil or strut.
typedef struct lw_cavity {
    lw_mask on;     // it is ventilated
    lw_lanes part;  // how far it has grown: 0 wet, 1 ventilated
    lw_lanes age;   // [m] way made since it came
    lw_lanes held;  // [m] way made since something last held it; 0 where there is none
} lw_cavity;

// Of a foil and its strut.
typedef struct lw_cavities {
    lw_cavity foil, strut;
    lw_lanes open;  // [m] way made on which a wave may let it in on the strut
} lw_cavities;

// What foil and strut meet in one step of time.
typedef struct lw_cavity_flow {
    lw_lanes speed, moved;       // [m/s], [m] in this step
    lw_lanes depth, tip;         // of the foil's middle and its higher tip [m]
    lw_lanes face, strut_angle;  // to the flow: the foil's face, the strut [rad]
    lw_mask is_open;             // no hull closes the surface at the strut
    double crest;                // [m] from wave to wave, 0 on plain water
} lw_cavity_flow;

// Way [m] that a cavity lasts for which nothing supplies with air: what it holds, as theory has its
// length and thickness, over what its tail loses.
//
//     l / c = 1 + (alpha / q)^2 [geurst-1960],  t / c = a alpha^2 / sigma,  way = pi/4 l t / (C_Q
// c)
//
// C_Q: air lost / (speed x area of the foil). Tails of supplied cavities lose 0.01 to 0.2
// [brennen-1995]: the middle of that, as a factor. Five to a hundred chords.              [judged]
#define LW_CAVITY_LOSS 0.045

LW_INLINE lw_lanes lw_cavity_lasts(double chord, lw_lanes angle, lw_lanes depth, lw_lanes speed)
{
    const lw_lanes sigma = 2.0 * LW_GRAVITY * lw_lanes_max(depth, lw_all(0.02)) / (speed * speed);
    const lw_lanes x = lw_lanes_max(angle, lw_all(0.0)), r = (2.0 + sigma) * x / sigma;
    const lw_lanes held =
        (0.25 * LW_PI * 0.5 * LW_PI * LW_FACE_SHARE) * x * x / sigma * (1.0 + r * r);
    return chord * lw_lanes_clamp((1.0 / LW_CAVITY_LOSS) * held, lw_all(5.0), lw_all(100.0));
}

// What air does at a strut.
typedef struct lw_strut_cavity {
    lw_mask forms, may, stays;  // by itself; let in by a wave; once it is there
} lw_strut_cavity;

#define LW_CAVITY_STEEP (14.5 * LW_DEG)  // [harwood-2016]
#define LW_CAVITY_ROUGH (7.0 * LW_DEG)   // the nose begins to suck: half of that  [judged]
#define LW_CAVITY_FLAT  (0.5 * LW_DEG)   // in line with the flow it sucks on neither side  [judged]

// Washout in terms that need no search: air stays where the side force with it beats its boundary.
// Asked where there is air already, and where the nose sucks.
// One way out: with one lane gcc 12 at -O3 lost the masks of an early one (test/same_bits.sh).
LW_INLINE lw_strut_cavity lw_strut_cavity_of(const lw_strut_craft *strut, const lw_cavity_flow *in,
                                             lw_mask is_there)
{
    const lw_lanes angle = lw_lanes_abs(in->strut_angle);
    const lw_mask asked = (is_there & (angle > LW_CAVITY_FLAT)) | (angle > LW_CAVITY_ROUGH);
    lw_mask stays = asked & in->is_open & (in->depth > 0.0);
    if (lw_any(stays)) {
        const lw_lanes h = lw_lanes_clamp(in->depth, lw_all(0.02), lw_all(strut->length));
        const lw_lanes A = h / strut->chord, v = in->speed, number = 2.0 * LW_GRAVITY * h / (v * v);
        const lw_lanes side = lw_lanes_abs(lw_strut_ventilated(A, number, in->strut_angle));
        stays &= side > lw_strut_washout(A, number);
    }
    return (lw_strut_cavity){.forms = stays & (angle > LW_CAVITY_STEEP),
                             .may = stays & (angle > LW_CAVITY_ROUGH),
                             .stays = stays};
}

// `draws` starts a cavity, `keeps` holds it; without both it goes after the way `lasts`.
LW_INLINE void lw_cavity_turn(lw_cavity *cavity, lw_mask draws, lw_mask keeps, lw_lanes moved,
                              lw_lanes lasts)
{
    const lw_lanes none = lw_all(0.0);
    cavity->held = lw_select(draws | keeps, none, cavity->held + moved);
    cavity->on = draws | (cavity->on & (cavity->held <= lasts));
    cavity->held = lw_select(cavity->on, cavity->held, none);
    cavity->age = lw_select(cavity->on, cavity->age + moved, none);
}

// It grows and shrinks over a way of `over` [m].
LW_INLINE void lw_cavity_grow(lw_cavity *cavity, double over, lw_lanes moved)
{
    if (!lw_any(cavity->on | (cavity->part > 0.0))) return;
    const lw_lanes none = lw_all(0.0), wanted = lw_select(cavity->on, lw_all(1.0), none);
    cavity->part += (wanted - cavity->part) * moved / (moved + over);
    cavity->part = lw_select(cavity->part > LW_CAVITY_LEAST, cavity->part, none);
}

// After a step of time.
LW_INLINE void lw_cavities_step(const lw_foil_craft *foil, const lw_strut_craft *strut,
                                const lw_cavity_flow *in, lw_cavities *air)
{
    const double chord = foil->chord, spread = 10.0 * chord;
    const lw_mask fast = in->speed > LW_CAVITY_SLOW;
    lw_strut_cavity at_strut = lw_strut_cavity_of(strut, in, air->strut.on | air->foil.on);
    air->open = lw_select(at_strut.may, air->open + in->moved, lw_all(0.0));
    if (in->crest > 0.0) at_strut.forms |= air->open > in->crest;

    const lw_mask from_foil = air->foil.on & (air->foil.age > spread) & at_strut.stays;
    const lw_mask from_strut = air->strut.on & (air->strut.age > spread);
    const lw_mask out = in->tip < -0.5 * chord;
    lw_cavity_turn(&air->strut, fast & (at_strut.forms | from_foil), fast & at_strut.stays,
                   in->moved, lw_all(5.0 * chord));
    lw_lanes lasts = lw_all(0.0);
    if (lw_any(air->foil.on)) lasts = lw_cavity_lasts(chord, in->face, in->depth, in->speed);
    lw_cavity_turn(&air->foil, fast & (out | from_strut),
                   fast & ((in->tip < 0.5 * chord) | air->strut.on), in->moved, lasts);
    lw_cavity_grow(&air->foil, 3.0 * chord, in->moved);
    lw_cavity_grow(&air->strut, 3.0 * strut->chord, in->moved);
}

#endif
