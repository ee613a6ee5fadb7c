-- A logbook of version 3 with one invented day, and one taken out, as its program made it. It stays as it is: later
-- versions are tested to read it. The only way to change it is another version, with a file of its own.
CREATE TABLE record (
  hash TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  text TEXT NOT NULL
) STRICT;
INSERT INTO record VALUES('4e5e45fdf2a21f3e','Grey Heron (invented)','name: "Grey Heron (invented)"
main_section: "as measured"
rudder_section: "as measured"
grip: "clockwise"
hull:
  length: 3.35 m
  beam: 0.34 m
  transom_beam: 0.20 m
  draft: 0.157 m
  block: 0.60
  waterplane: 0.73
  form_factor: 0.15
  mass: 36.0 kg
  centre_x: 1.45 m
  centre_height: 35 cm
  rack_width: 2.25 m
  rack_height: 35 cm
  rack_volume: 80 l
  windage_area: 0.45 m2
  windage_side: 1.20 m2
  windage_height: 0.60 m
main_foil:
  span: 0.960 m
  root_chord: 10.4 cm
  tip_chord: 0.062 m
  thickness: 0.120
  zero_lift_angle: -2.0 deg
  smooth: 5 %
  flap_chord: 0.30
  flap_span: 0.95
rudder_foil:
  span: 0.720 m
  root_chord: 0.090 m
  tip_chord: 0.055 m
  thickness: 0.110
  zero_lift_angle: -1.0 deg
  smooth: 5 %
  flap_chord: 0
  flap_span: 0
main_strut:
  x: 1.70 m
  length: 1.00 m
  chord: 0.115 m
  thickness: 0.130
rudder_strut:
  x: -0.40 m
  length: 1.05 m
  chord: 0.110 m
  thickness: 0.120
linkage:
  wand_x: 3.40 m
  wand_height: 0.25 m
  wand_length: 1.10 m
  forward_stop: 15 deg
  aft_stop: 80 deg
  neutral_angle: 41 deg
  gearing: 0.40
  rod: 0.0 deg
  flap_up_stop: -7 deg
  flap_down_stop: 6.8 deg
  pin_pivot_height: 0.10 m
rudder:
  mark_incidence: 0.0 deg
  turn: 0.70 deg/turn
  least_turns: -6.0 turns
  most_turns: 9.0 turns
  helm_limit: 25 deg
rig:
  sail_area: 8.00 m2
  luff: 5.10 m
  foot_height: 0.55 m
  centre_x: 1.50 m
  centre_part: 0.40
  greatest_lift: 1.20
  flattest: 0.20
  most_twist: 0.50
  profile_drag: 0.030
place:
  forward_x: 1.60 m
  aft_x: 0.80 m
  inboard: 0.00 m
pins:
  A: 5.20 deg
  B: 3.60 deg
  C: 2.40 deg
  D: 0.70 deg
');
INSERT INTO record VALUES('b9d2f09598fa3dcc','Wren (invented)','name: "Wren (invented)"
person:
  mass: 64.0 kg
  gear: 5.0 kg
  hike: 35 cm
  body_height: 0.15 m
  drag_area: 0.40 m2
  least_heel: 8 deg
  most_heel: 20 deg
  most_bow_down: 3.0 deg
  most_bow_up: 3.0 deg
  skill: 1.0
  puff_known: 18 kn
');
CREATE TABLE day (
  id TEXT PRIMARY KEY NOT NULL,
  date TEXT NOT NULL,
  waters TEXT NOT NULL,
  pin TEXT NOT NULL,
  verdict TEXT NOT NULL,
  wind_lull REAL, -- [kn]
  wind_mean REAL, -- [kn]
  wind_puff REAL, -- [kn]
  wind_height REAL, -- [m]
  wind_period REAL, -- [s]
  wind_shift REAL, -- [deg]
  sea_fetch REAL, -- [km]
  sea_height REAL, -- [m]
  sea_period REAL, -- [s]
  sea_from REAL, -- [deg]
  sea_spread REAL, -- [deg]
  water_temperature REAL, -- [degC]
  water_salinity REAL, -- [g/kg]
  air_temperature REAL, -- [degC]
  air_pressure REAL, -- [hPa]
  setup_incidence REAL, -- [deg]
  setup_wand_length REAL, -- [m]
  setup_gearing REAL,
  setup_rod REAL, -- [deg]
  turns_upwind REAL, -- [turns]
  turns_reach REAL, -- [turns]
  turns_downwind REAL, -- [turns]
  outing_mass REAL, -- [kg]
  outing_afloat REAL, -- [min]
  outing_swims REAL,
  sailed_upwind_speed REAL, -- [kn]
  sailed_reach_speed REAL, -- [kn]
  sailed_downwind_speed REAL, -- [kn]
  sailed_upwind_scatter REAL, -- [kn]
  sailed_reach_scatter REAL, -- [kn]
  sailed_downwind_scatter REAL, -- [kn]
  sailed_upwind_time REAL, -- [min]
  sailed_reach_time REAL, -- [min]
  sailed_downwind_time REAL, -- [min]
  sailed_flying REAL, -- [%]
  sailed_take_offs REAL,
  sailed_stops REAL,
  signs TEXT NOT NULL,
  notes TEXT NOT NULL,
  boat TEXT NOT NULL REFERENCES record (hash),
  sailor TEXT NOT NULL REFERENCES record (hash)
) STRICT;
INSERT INTO day VALUES('00000000000000a1','2026-11-02','Reed Lake (invented)','B','right',10.0,12.5,15.5,3.0,60.0,0.0,2.0,0.0,0.0,0.0,30.0,17.0,0.0,19.0,1015.0,3.6,1.1,0.4,0.0,4.0,NULL,NULL,69.0,NULL,2.0,11.2,16.5,17.25,0.8,1.2,1.5,22.5,NULL,18.0,87.0,6.0,2.0,'bow-up hops','Held it.','4e5e45fdf2a21f3e','b9d2f09598fa3dcc');
CREATE TABLE track (
  day TEXT NOT NULL REFERENCES day (id) ON DELETE CASCADE,
  place INTEGER NOT NULL, -- among the tracks of the day, from 0
  hash TEXT NOT NULL,
  file TEXT NOT NULL,
  PRIMARY KEY (day, place)
) STRICT, WITHOUT ROWID;
INSERT INTO track VALUES('00000000000000a1',0,'a7dbb1f818011560','morning.gpx');
CREATE TABLE removed (id TEXT PRIMARY KEY NOT NULL) STRICT, WITHOUT ROWID;
INSERT INTO removed VALUES('00000000000000b2');
CREATE INDEX day_by_date ON day (date);
PRAGMA application_id = 1280789570;
PRAGMA user_version = 3;
