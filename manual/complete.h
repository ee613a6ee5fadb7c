// complete.h - what a shell completes after `lullwise`, from the table of options.
// SPDX-License-Identifier: MIT

#ifndef LW_COMPLETE_H
#define LW_COMPLETE_H

#include <stdio.h>

void lw_complete_bash(FILE *out);
void lw_complete_zsh(FILE *out);
void lw_complete_fish(FILE *out);

#endif
