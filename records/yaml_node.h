// yaml_node.h - a YAML text taken one node at a time; refuses what our files may not have.
// SPDX-License-Identifier: MIT

#ifndef LW_YAML_NODE_H
#define LW_YAML_NODE_H

#include <yaml.h>

#include "records/source_text.h"

typedef enum lw_node_kind {
    LW_NODE_TEXT,  // a key or a value
    LW_NODE_MAP,   // its keys and values follow, then LW_NODE_END
    LW_NODE_LIST,  // its items follow, then LW_NODE_END
    LW_NODE_END,   // of a map, of a list, or of the text
    LW_NODE_NONE,  // an alias: reported, nothing follows
} lw_node_kind;

typedef struct lw_node {
    lw_node_kind kind;
    size_t line, column;  // from 1
    const char *text;     // of LW_NODE_TEXT; good until the next node is taken
} lw_node;

typedef struct lw_yaml {
    yaml_parser_t parser;
    yaml_event_t event;  // the text of the last node lives here
    bool has_event;
    bool has_document;
    bool is_over;  // the end, or a fault after which nothing can be read
    const char *file;
    size_t line;  // of the last node
    lw_faults *faults;
} lw_yaml;

// What not every release of libyaml reads alike becomes a fault: look before opening a text.
bool lw_yaml_is_alike(const lw_source_text *source, lw_faults *faults);

void lw_yaml_open(lw_yaml *yaml, const lw_source_text *source, lw_faults *faults);
void lw_yaml_close(lw_yaml *yaml);

// The next node. Anchors, aliases, a second document and what is no YAML become faults.
lw_node lw_yaml_next(lw_yaml *yaml);

// Passes over what is inside a map or list that was just opened; nothing for other nodes.
void lw_yaml_skip(lw_yaml *yaml, lw_node node);

#endif
