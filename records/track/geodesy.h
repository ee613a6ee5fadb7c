// geodesy.h - the ellipsoid on which tracks lie, and how far two places are apart on it.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_GEODESY_H
#define LW_TRACK_GEODESY_H

// WGS 84 [nima-wgs84].
#define LW_EARTH_RADIUS     6378137.0              // a [m]
#define LW_EARTH_FLATTENING (1.0 / 298.257223563)  // f

typedef struct lw_apart {
    double metres;             // along the geodesic
    double sets_out, arrives;  // bearings [rad] from north at either end
} lw_apart;

// From one place to another, in degrees, by the shortest line on the ellipsoid [karney-2013].
lw_apart lw_geodesic(double latitude_deg, double longitude_deg, double to_latitude_deg,
                     double to_longitude_deg);

#endif
