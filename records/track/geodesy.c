// geodesy.c - how far two places are apart on the ellipsoid.
// SPDX-License-Identifier: MIT

#include "records/track/geodesy.h"

#include <geodesic.h>

#include "lullwise/base.h"

lw_apart lw_geodesic(double latitude_deg, double longitude_deg, double to_latitude_deg,
                     double to_longitude_deg)
{
    struct geod_geodesic earth;
    lw_apart apart;
    geod_init(&earth, LW_EARTH_RADIUS, LW_EARTH_FLATTENING);
    geod_inverse(&earth, latitude_deg, longitude_deg, to_latitude_deg, to_longitude_deg,
                 &apart.metres, &apart.sets_out, &apart.arrives);
    apart.sets_out *= LW_DEG;
    apart.arrives *= LW_DEG;
    return apart;
}
