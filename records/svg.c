// svg.c - pictures as SVG: lines, paths and words.
// SPDX-License-Identifier: MIT

#include "records/svg.h"

#include <math.h>
#include <string.h>

#include "records/utf8.h"

static void escaped(FILE *out, const char *text)
{
    for (; *text; text++) {
        switch (*text) {
            case '&':
                fputs("&amp;", out);
                break;
            case '<':
                fputs("&lt;", out);
                break;
            case '>':
                fputs("&gt;", out);
                break;
            case '"':
                fputs("&quot;", out);
                break;
            default:
                fputc(*text, out);
        }
    }
}

static void white_page(FILE *out, const char *title)
{
    fputs("\n<title>", out);
    escaped(out, title);
    fputs("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n", out);
}

void lw_svg_begin(FILE *out, double width, double height, const char *title)
{
    fprintf(out,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" "
            "height=\"%.0f\" font-family=\"sans-serif\">",
            width, height, width, height);
    white_page(out, title);
}

void lw_svg_begin_paper(FILE *out, double width, double height, const char *title)
{
    fprintf(out,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.4f %.4f\" width=\"%gmm\" "
            "height=\"%gmm\" font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\">",
            width / LW_SVG_POINT, height / LW_SVG_POINT, width, height);
    white_page(out, title);
}

void lw_svg_end(FILE *out) { fputs("</svg>\n", out); }

void lw_svg_group(FILE *out, const char *name) { fprintf(out, "<g class=\"%s\">\n", name); }
void lw_svg_group_end(FILE *out) { fputs("</g>\n", out); }

// Letters are taken to be 0.55 of their size wide, about what sans-serif letters are.
static bool is_wider(lw_svg_words how, const char *text)
{
    const double letters = (double)lw_utf8_count(text, strlen(text));
    return how.room > 0.0 && 0.55 * how.size * letters > how.room;
}

void lw_svg_text(FILE *out, lw_svg_point at, lw_svg_words how, const char *text)
{
    fprintf(out, "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%g\" text-anchor=\"%s\" fill=\"%s\"",
            at.x, at.y, how.size, how.anchor ? how.anchor : "start",
            how.colour ? how.colour : "#222");
    if (how.is_bold) fputs(" font-weight=\"bold\"", out);
    if (how.turn != 0.0) fprintf(out, " transform=\"rotate(%g %.2f %.2f)\"", how.turn, at.x, at.y);
    if (is_wider(how, text))
        fprintf(out, " textLength=\"%g\" lengthAdjust=\"spacingAndGlyphs\"", how.room);
    fputc('>', out);
    escaped(out, text);
    fputs("</text>\n", out);
}

static void stroke(FILE *out, lw_svg_stroke how)
{
    fprintf(out, " fill=\"%s\" stroke=\"%s\" stroke-width=\"%g\"", how.fill ? how.fill : "none",
            how.colour ? how.colour : "#222", how.width);
    if (how.dashes) fprintf(out, " stroke-dasharray=\"%s\"", how.dashes);
    fputs(" stroke-linejoin=\"round\"/>\n", out);
}

void lw_svg_line(FILE *out, lw_svg_point from, lw_svg_point to, lw_svg_stroke how)
{
    fprintf(out, "<path d=\"M%.2f %.2fL%.2f %.2f\"", from.x, from.y, to.x, to.y);
    stroke(out, how);
}

void lw_svg_path(FILE *out, const lw_svg_point *points, int count, lw_svg_stroke how)
{
    bool is_down = false;
    fputs("<path d=\"", out);
    for (int i = 0; i < count; i++) {
        const bool is_there = isfinite(points[i].x) && isfinite(points[i].y);
        if (is_there) fprintf(out, "%c%.2f %.2f", is_down ? 'L' : 'M', points[i].x, points[i].y);
        is_down = is_there;
    }
    fputc('"', out);
    stroke(out, how);
}
