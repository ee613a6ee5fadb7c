// order.h - numbers of a record of which one must stay below another.
// SPDX-License-Identifier: MIT

#ifndef LW_ORDER_H
#define LW_ORDER_H

#include "lullwise/quantity.h"

typedef struct lw_order {
    const char *lesser, *greater;  // as in files: "linkage.forward_stop"
    size_t lesser_offset, greater_offset;
    bool may_be_alike;
    bool zero_is_none;    // a greater of 0 is not given
    const char *section;  // blamed where it fails
    const char *why;      // what is said then
} lw_order;

// The orders of a record, one after the other; behind the last one whose `lesser` is NULL.
const lw_order *lw_orders_of(const lw_record *record);

// The first order that fails, or NULL. A NaN fails.
const lw_order *lw_order_failing(const lw_record *record, const void *data);

#endif
