// pages.h - the picture of an answer into files: SVG, and where it is asked for PDF and PNG.
// SPDX-License-Identifier: MIT

#ifndef LW_PAGES_H
#define LW_PAGES_H

#include "answer/question.h"

// Whether the files could be written, before any work; a message on standard error when not.
bool lw_pages_can(const lw_question *question, const lw_options *options);

// Writes those that are asked for. A second page stands beside the first: card.svg, card-2.svg; on
// standard output the first stands alone, but for PDF. False after a message.
bool lw_pages_write(const lw_question *question, const void *it, const lw_options *options);

#endif
