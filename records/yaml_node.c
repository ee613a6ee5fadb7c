// yaml_node.c - a YAML text taken one node at a time.
// SPDX-License-Identifier: MIT

#include "records/yaml_node.h"

#include <string.h>

#include "records/yaml_alike.h"

#define DEPTH_MOST 16  // of maps and lists in one another, where they are passed over

// Some editors begin a file with a mark.
static size_t mark_length(const lw_source_text *source)
{
    static const char mark[] = "\xEF\xBB\xBF";
    return source->length >= 3 && memcmp(source->text, mark, 3) == 0 ? 3 : 0;
}

void lw_yaml_open(lw_yaml *yaml, const lw_source_text *source, lw_faults *faults)
{
    *yaml = (lw_yaml){.file = source->name, .line = 1, .faults = faults};
    if (!yaml_parser_initialize(&yaml->parser)) {
        yaml->is_over = true;
        lw_faults_no_memory(faults, source->name);
        return;
    }
    const size_t skipped = mark_length(source);
    yaml_parser_set_encoding(&yaml->parser, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&yaml->parser, (const unsigned char *)source->text + skipped,
                                 source->length - skipped);
}

static void drop_event(lw_yaml *yaml)
{
    if (yaml->has_event) yaml_event_delete(&yaml->event);
    yaml->has_event = false;
}

void lw_yaml_close(lw_yaml *yaml)
{
    drop_event(yaml);
    yaml_parser_delete(&yaml->parser);
}

static void add_fault(lw_faults *faults, const char *file, yaml_mark_t mark, const char *sentence)
{
    const lw_written written = {
        .file = file, .line = mark.line + 1, .column = mark.column + 1, .key = "", .text = ""};
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", sentence);
}

static void fault_at(lw_yaml *yaml, yaml_mark_t mark, const char *sentence)
{
    add_fault(yaml->faults, yaml->file, mark, sentence);
}

bool lw_yaml_is_alike(const lw_source_text *source, lw_faults *faults)
{
    const size_t skipped = mark_length(source);
    lw_yaml_unlike found;
    if (!lw_yaml_has_unlike(source->text + skipped, source->length - skipped, &found)) return true;
    add_fault(faults, source->name, found.mark, found.sentence);
    return false;
}

// What the parser's complaint means to somebody who edits a boat file, and where to point: at the
// beginning of what is not finished, or at what was met.
typedef struct complaint {
    const char *part, *sentence;
    bool is_at_beginning;
} complaint;

static complaint complaint_of(const char *problem)
{
    static const complaint list[] = {
        {"find expected ':'", "a colon and a value are missing, or the file breaks off", true},
        {"unexpected end of stream", "this text in quotes has no end", true},
        {"did not find expected key", "this does not fit the lines above: look at the indentation",
         false},
        {"did not find expected '-'", "this does not fit the list above: look at the indentation",
         false},
        {"did not find expected ','", "a bracket is not closed, or a comma is missing", false},
        {"mapping values are not allowed", "a second colon on the line, or a wrong indentation",
         false},
        {"block sequence entries are not", "no list can begin here: look at the indentation",
         false},
        {"block mapping", "this does not fit the lines above: look at the indentation", false},
        {"cannot start any token", "no value begins with this character: put it in quotes", false},
        {"document start", "text stands behind the end of the record", false},
        {"escape", "in a text in quotes, this behind \\ means nothing", false},
    };
    for (size_t i = 0; i < sizeof list / sizeof list[0]; i++) {
        if (problem && strstr(problem, list[i].part)) return list[i];
    }
    return (complaint){"", "this cannot be read: key: value lines are expected", false};
}

static lw_node end_of(lw_yaml *yaml)
{
    return (lw_node){.kind = LW_NODE_END, .line = yaml->line, .column = 1, .text = ""};
}

static lw_node over(lw_yaml *yaml)
{
    yaml->is_over = true;
    return end_of(yaml);
}

// Fetches the next event; false at the end, or at what is no YAML.
static bool fetch(lw_yaml *yaml)
{
    drop_event(yaml);
    if (!yaml_parser_parse(&yaml->parser, &yaml->event)) {
        const complaint found = complaint_of(yaml->parser.problem);
        fault_at(yaml,
                 found.is_at_beginning ? yaml->parser.context_mark : yaml->parser.problem_mark,
                 found.sentence);
        return false;
    }
    yaml->has_event = true;
    return yaml->event.type != YAML_STREAM_END_EVENT && yaml->event.type != YAML_NO_EVENT;
}

static void refuse_anchor(lw_yaml *yaml, const yaml_char_t *anchor)
{
    if (anchor) fault_at(yaml, yaml->event.start_mark, "an anchor (&): write the value out");
}

static lw_node node_of_event(lw_yaml *yaml)
{
    const yaml_event_t *event = &yaml->event;
    lw_node node = {.kind = LW_NODE_NONE,
                    .line = event->start_mark.line + 1,
                    .column = event->start_mark.column + 1,
                    .text = ""};
    switch (event->type) {
        case YAML_SCALAR_EVENT:
            refuse_anchor(yaml, event->data.scalar.anchor);
            node.kind = LW_NODE_TEXT;
            node.text = (const char *)event->data.scalar.value;
            if (strlen(node.text) != event->data.scalar.length) {
                fault_at(yaml, event->start_mark, "a zero character stands in the text");
            }
            break;
        case YAML_MAPPING_START_EVENT:
            refuse_anchor(yaml, event->data.mapping_start.anchor);
            node.kind = LW_NODE_MAP;
            break;
        case YAML_SEQUENCE_START_EVENT:
            refuse_anchor(yaml, event->data.sequence_start.anchor);
            node.kind = LW_NODE_LIST;
            break;
        case YAML_ALIAS_EVENT:
            fault_at(yaml, event->start_mark, "an alias (*): write the value out");
            break;
        default:
            node.kind = LW_NODE_END;
            break;
    }
    return node;
}

lw_node lw_yaml_next(lw_yaml *yaml)
{
    while (!yaml->is_over && fetch(yaml)) {
        const yaml_event_type_t type = yaml->event.type;
        if (type == YAML_STREAM_START_EVENT || type == YAML_DOCUMENT_END_EVENT) continue;
        if (type == YAML_DOCUMENT_START_EVENT) {
            if (!yaml->has_document) {
                yaml->has_document = true;
                continue;
            }
            fault_at(yaml, yaml->event.start_mark, "a second document (---): one record, one file");
            return over(yaml);
        }
        const lw_node node = node_of_event(yaml);
        yaml->line = node.line;
        return node;
    }
    return over(yaml);
}

void lw_yaml_skip(lw_yaml *yaml, lw_node node)
{
    size_t depth = node.kind == LW_NODE_MAP || node.kind == LW_NODE_LIST;
    while (depth > 0 && !yaml->is_over) {
        const lw_node_kind kind = lw_yaml_next(yaml).kind;
        if (kind == LW_NODE_MAP || kind == LW_NODE_LIST) depth++;
        if (kind == LW_NODE_END) depth--;
        if (depth <= DEPTH_MOST) continue;
        fault_at(yaml, yaml->event.start_mark, "too many lists and sections inside one another");
        yaml->is_over = true;
    }
}
