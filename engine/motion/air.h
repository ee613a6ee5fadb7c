// air.h - air on foils and struts, in lanes: drawn down, spread, and shed again.
// SPDX-License-Identifier: MIT
//
//     a foil   draws air when its higher tip is half a chord out of the water [benson-land-1942];
//              sheds what it holds (foil/face_force.h) once the tip is half a chord deep   [judged]
//     a strut  draws air beyond 14.5 deg, gathering way or turned at once [harwood-2016]; and
//              in waves beyond 7 deg where it would stay, once that was so for the way from
//              crest to crest: each brings a hole or a breaker that lets air in            [judged]
//              sheds it where it cannot stay (foil/strut.h), after a way of 5 chords   [judged]
//     air spreads from a strut to its foil, and from a foil up its strut where the strut's angle
//              lets it stay, once it has been there for a way of 10 chords                 [judged]
//
// A cavity grows and shrinks over a way of 3 chords [judged]: it formed within 3.5 to 7
// [aguiar-ferreira-2026].

#ifndef LW_AIR_LANES_H
#define LW_AIR_LANES_H

#include "boat/loads.h"

#define LW_AIR_LEAST 1e-3  // less counts as none
#define LW_AIR_SLOW  2.0   // [m/s] no cavity holds below: foils do not suck enough  [judged]

typedef enum lw_place_of_air {
    LW_MAIN_FOIL,
    LW_RUDDER_FOIL,
    LW_MAIN_STRUT,
    LW_BLADE,  // of the rudder: its strut
    LW_PLACES
} lw_place_of_air;

// Which places have air, the way made since it came, and since nothing has held it [m]; and for
// which way a wave may have let it in on a strut.
typedef struct lw_cavities {
    lw_mask on[LW_PLACES];
    lw_lanes had[LW_PLACES], left[LW_PLACES];
    lw_lanes open[LW_PLACES];
} lw_cavities;

// What air does at a strut.
typedef struct lw_air_strut {
    lw_mask forms, may, stays;  // by itself; let in by a wave; once it is there
} lw_air_strut;

#define LW_AIR_STEEP (14.5 * LW_DEG)  // [harwood-2016]
#define LW_AIR_ROUGH (7.0 * LW_DEG)   // the nose begins to suck: half of that  [judged]
#define LW_AIR_FLAT  (0.5 * LW_DEG)  // a strut in line with the flow sucks on neither side  [judged]

// Washout in terms that need no search: air stays where the side force with it beats its boundary.
LW_INLINE lw_air_strut lw_air_strut_of(const lw_strut_craft *strut, lw_lanes depth, lw_lanes speed,
                                       lw_lanes angle)
{
    const lw_mask asked = lw_lanes_abs(angle) > LW_AIR_FLAT;
    if (!lw_any(asked)) return (lw_air_strut){{0}, {0}, {0}};
    const lw_lanes h = lw_lanes_clamp(depth, lw_all(0.02), lw_all(strut->length));
    const lw_lanes A = h / strut->chord, number = 2.0 * LW_GRAVITY * h / (speed * speed);
    const lw_lanes side = lw_lanes_abs(lw_strut_ventilated(A, number, angle));
    const lw_mask stays = asked & (depth > 0.0) & (side > lw_strut_washout(A, number));
    return (lw_air_strut){.forms = stays & (lw_lanes_abs(angle) > LW_AIR_STEEP),
                          .may = stays & (lw_lanes_abs(angle) > LW_AIR_ROUGH),
                          .stays = stays};
}

// Adds what crests do: `crest` [m] from one to the next, 0 on plain water.
LW_INLINE void lw_air_meets_crest(lw_cavities *air, lw_place_of_air strut, double crest,
                                  lw_lanes moved, lw_air_strut *at_strut)
{
    air->open[strut] = lw_select(at_strut->may, air->open[strut] + moved, lw_all(0.0));
    if (crest > 0.0) at_strut->forms |= air->open[strut] > crest;
}

// `draws` starts the air of a place, `keeps` holds it; without both it goes after the way `shed`.
LW_INLINE void lw_air_turn(lw_cavities *air, lw_place_of_air place, lw_mask draws, lw_mask keeps,
                           lw_lanes moved, lw_lanes shed)
{
    const lw_lanes none = lw_all(0.0);
    air->left[place] = lw_select(draws | keeps, none, air->left[place] + moved);
    air->on[place] = draws | (air->on[place] & (air->left[place] <= shed));
    air->had[place] = lw_select(air->on[place], air->had[place] + moved, none);
}

// A strut and the foil below it, whose higher tip is `tip` below the surface [m].
LW_INLINE void lw_air_turn_pair(lw_cavities *air, lw_place_of_air foil, lw_place_of_air strut,
                                lw_air_strut at_strut, lw_mask fast, lw_lanes tip, double chord,
                                lw_lanes lasts, lw_lanes moved)
{
    const double spread = 10.0 * chord;
    const lw_mask from_foil = air->on[foil] & (air->had[foil] > spread) & at_strut.stays;
    const lw_mask from_strut = air->on[strut] & (air->had[strut] > spread);
    const lw_mask out = tip < -0.5 * chord;
    lw_air_turn(air, strut, fast & (at_strut.forms | from_foil), fast & at_strut.stays, moved,
                lw_all(5.0 * chord));
    lw_air_turn(air, foil, fast & (out | from_strut), fast & ((tip < 0.5 * chord) | air->on[strut]),
                moved, lasts);
}

// Air after a step in which the boat moved on by `moved` [m], and how much of it there is. `clear`:
// hull above the water at the main strut [m]; `crest`: from wave to wave [m].
LW_INLINE void lw_air_step(const lw_craft *craft, const lw_loads *loads, lw_lanes clear,
                           double crest, lw_lanes speed, lw_lanes moved, lw_cavities *air,
                           lw_lanes amount[LW_PLACES])
{
    const lw_mask fast = speed > LW_AIR_SLOW, is_clear = clear > 0.0;
    lw_air_strut main = lw_air_strut_of(&craft->main_strut, loads->inflow.main.depth, speed,
                                        loads->main_strut.angle);
    main.forms &= is_clear, main.may &= is_clear,
        main.stays &= is_clear;  // else the hull closes the surface
    lw_air_strut blade = lw_air_strut_of(&craft->rudder_strut, loads->inflow.rudder.depth, speed,
                                         loads->rudder_strut.angle);
    lw_air_meets_crest(air, LW_MAIN_STRUT, crest, moved, &main);
    lw_air_meets_crest(air, LW_BLADE, crest, moved, &blade);
    const double c = craft->main_foil.chord, c_r = craft->rudder_foil.chord;
    lw_air_turn_pair(air, LW_MAIN_FOIL, LW_MAIN_STRUT, main, fast,
                     loads->inflow.main.depth - loads->inflow.main.tip_rise, c,
                     lw_face_lasts(c, loads->main.face, loads->inflow.main.depth, speed), moved);
    lw_air_turn_pair(air, LW_RUDDER_FOIL, LW_BLADE, blade, fast,
                     loads->inflow.rudder.depth - loads->inflow.rudder.tip_rise, c_r,
                     lw_face_lasts(c_r, loads->rudder.face, loads->inflow.rudder.depth, speed),
                     moved);
    const double growth[LW_PLACES] = {3.0 * c, 3.0 * c_r, 3.0 * craft->main_strut.chord,
                                      3.0 * craft->rudder_strut.chord};
    for (int i = 0; i < LW_PLACES; i++) {
        const lw_lanes wanted = lw_select(air->on[i], lw_all(1.0), lw_all(0.0));
        amount[i] += (wanted - amount[i]) * moved / (moved + growth[i]);
        amount[i] = lw_select(amount[i] > LW_AIR_LEAST, amount[i], lw_all(0.0));
    }
}

#endif
