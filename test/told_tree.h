// told_tree.h - the teller's face that keeps what it is told as a tree, and beside each number what
// people are shown: "seconds", and "seconds shown".
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_TOLD_TREE_H
#define LW_TEST_TOLD_TREE_H

#include <jansson.h>
#include <math.h>
#include <stdio.h>

#include "answer/teller.h"

typedef struct told_tree {
    json_t *open[2 * LW_TELLER_DEPTH];
    size_t depth;
} told_tree;

static inline void tree_put(told_tree *tree, const char *key, json_t *value)
{
    json_t *into = tree->open[tree->depth - 1];
    if (json_is_array(into))
        json_array_append_new(into, value);
    else
        json_object_set_new(into, key, value);
}

static inline void tree_open(void *to, lw_branch branch, const char *key, const char *head)
{
    told_tree *tree = to;
    json_t *value = branch == LW_LIST ? json_array() : json_object();
    (void)head;
    tree_put(tree, key, value);
    tree->open[tree->depth++] = value;
}

static inline void tree_close(void *to, lw_branch branch)
{
    (void)branch;
    ((told_tree *)to)->depth--;
}

static inline void tree_number(void *to, const lw_item *item, double number, const char *shown)
{
    char key[80];
    snprintf(key, sizeof key, "%s shown", item->key);
    tree_put(to, item->key, isfinite(number) ? json_real(number) : json_null());
    tree_put(to, key, json_string(shown));
}

static inline void tree_text(void *to, const lw_item *item, const char *text)
{
    tree_put(to, item->key, text ? json_string(text) : json_null());
}

static inline void tree_truth(void *to, const lw_item *item, bool is_so)
{
    tree_put(to, item->key, json_boolean(is_so));
}

// All that is told of it; the caller drops it.
static inline json_t *tree_of(lw_tell *tell, const void *it)
{
    static const lw_teller_face face = {.shows = true,
                                        .open = tree_open,
                                        .close = tree_close,
                                        .number = tree_number,
                                        .text = tree_text,
                                        .truth = tree_truth};
    told_tree tree = {.open = {json_object()}, .depth = 1};
    lw_teller teller = lw_teller_of(&face, &tree);
    tell(it, &teller);
    lw_teller_finish(&teller);
    return tree.open[0];
}

#endif
