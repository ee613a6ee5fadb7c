// doc_text.h - what the brackets at the end of a doc mean: where a number comes from.
// SPDX-License-Identifier: MIT

#ifndef LW_DOC_TEXT_H
#define LW_DOC_TEXT_H

#include <stddef.h>

// The doc without its brackets.
void lw_doc_plain(char *text, size_t room, const char *doc);

// What its brackets say in words, the first is 0; NULL behind the last.
const char *lw_doc_source(const char *doc, size_t index);

#endif
