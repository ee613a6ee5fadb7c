// pages.c - the picture of an answer into files: SVG, and where it is asked for PDF and PNG.
// SPDX-License-Identifier: MIT

#include "command/pages.h"

#include <stdlib.h>
#include <string.h>

#include "command/convert.h"
#include "command/terminal/print.h"
#include "records/output_file.h"

#define PATH_MOST 4096

static const char no_memory[] = "there is not enough memory";

// Where the second page goes: "-2" before the last dot of the name, or at its end.
static void second_path(const char *path, char second[PATH_MOST])
{
    const char *slash = strrchr(path, '/'), *name = slash ? slash + 1 : path;
    const char *dot = name[0] ? strrchr(name + 1, '.') : NULL;
    const size_t length = dot ? (size_t)(dot - path) : strlen(path);
    lw_text_fit(second, PATH_MOST, "%.*s-2%s", (int)length, path, dot ? dot : "");
}

static bool is_output(const char *path) { return strcmp(path, "-") == 0; }

// --- before any work

static bool can_be(const lw_options *options, const char *path)
{
    const char *why;
    if (lw_output_can(path, lw_options_has(options, "force"), &why)) return true;
    lw_print_complaint(options->command, "%s: %s", path, why);
    return false;
}

bool lw_pages_can(const lw_question *question, const lw_options *options)
{
    static const char *const each[] = {"svg", "png"};
    const char *pdf = lw_options_text(options, "pdf");
    const bool is_converted = pdf || lw_options_has(options, "png");
    if (pdf && !can_be(options, pdf)) return false;
    for (int i = 0; i < 2; i++) {
        char second[PATH_MOST];
        const char *path = lw_options_text(options, each[i]);
        if (!path) continue;
        second_path(path, second);
        if (!can_be(options, path)) return false;
        if (question->draw_back && !is_output(path) && !can_be(options, second)) return false;
    }
    if (!is_converted || lw_convert_is_there()) return true;
    lw_print_complaint(options->command, LW_CONVERT_MISSING);
    return false;
}

// --- once it is answered

static bool draw(const lw_question *question, const void *it, size_t page, lw_output *to)
{
    lw_writer *const draw_page = page ? question->draw_back : question->draw;
    if (!lw_output_open(to)) return false;
    draw_page(it, to->stream);
    return true;
}

static bool commit(const lw_options *options, lw_output *output, const char *path)
{
    const char *why;
    if (lw_output_commit(output, path, lw_options_has(options, "force"), &why)) return true;
    lw_print_complaint(options->command, "%s: %s", path, why);
    return false;
}

static bool complain(const lw_options *options, const char *path, const char *why)
{
    lw_print_complaint(options->command, "%s: %s", path, why);
    return false;
}

// Pages from one on, so many, into one file of a format: "svg" as they are.
typedef struct file {
    const char *path, *format;
    size_t first, count;
} file;

static bool convert(const lw_options *options, lw_output *pages, const file *of)
{
    lw_output made;
    const char *why = no_memory;
    const bool is_open = lw_output_open(&made);
    if (is_open && lw_convert(pages, of->count, of->format, &made, &why))
        return commit(options, &made, of->path);
    if (is_open) lw_output_drop(&made);
    return complain(options, of->path, why);
}

static bool write(const lw_question *question, const void *it, const lw_options *options, file of)
{
    lw_output pages[2] = {{0}};
    bool is_written = true;
    for (size_t i = 0; i < of.count; i++)
        is_written = is_written && draw(question, it, of.first + i, &pages[i]);
    if (!is_written)
        complain(options, of.path, no_memory);
    else if (strcmp(of.format, "svg") == 0)
        return commit(options, &pages[0], of.path);
    else
        is_written = convert(options, pages, &of);
    for (size_t i = 0; i < of.count; i++) lw_output_drop(&pages[i]);
    return is_written;
}

// Each page in a file of its own.
static bool write_each(const lw_question *question, const void *it, const lw_options *options,
                       const char *format)
{
    char second[PATH_MOST];
    const char *path = lw_options_text(options, format);
    if (!path) return true;
    second_path(path, second);
    const bool has_second = question->draw_back && !is_output(path);
    return write(question, it, options, (file){path, format, 0, 1}) &&
           (!has_second || write(question, it, options, (file){second, format, 1, 1}));
}

bool lw_pages_write(const lw_question *question, const void *it, const lw_options *options)
{
    const char *pdf = lw_options_text(options, "pdf");
    const size_t count = question->draw_back ? 2 : 1;
    if (!question->draw) return true;
    const bool is_svg = write_each(question, it, options, "svg");
    const bool is_png = write_each(question, it, options, "png");
    return (!pdf || write(question, it, options, (file){pdf, "pdf", 0, count})) && is_svg && is_png;
}
