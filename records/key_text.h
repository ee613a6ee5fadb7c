// key_text.h - a key of a record as people say it.
// SPDX-License-Identifier: MIT

#ifndef LW_KEY_TEXT_H
#define LW_KEY_TEXT_H

#include <stddef.h>

#define LW_KEY_TEXT 160

// "main_foil.zero_lift_angle" as the forms have it: "Main foil: zero lift angle"; any other text as
// it is. Returns text.
const char *lw_key_text(char text[LW_KEY_TEXT], const char *key);
#define LW_KEY_SPOKEN(key) lw_key_text((char[LW_KEY_TEXT]){0}, (key))

#endif
