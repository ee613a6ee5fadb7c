// letter_width.c - how wide words are, whichever sans-serif letters they are set in.
// SPDX-License-Identifier: MIT

#include "picture/letter_width.h"

#define FIRST 32
#define LAST  126

// Advance widths of " " to "~" in thousandths of the size, those of DejaVu Sans 2.37, plain and
// bold, rounded up [dejavu].
// clang-format off
static const short widths[2][LAST - FIRST + 1] = {
    {318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, 637, 637, 637,
     637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531, 1000, 685, 687, 699, 771, 632,
     576, 775, 752, 295, 295, 656, 558, 863, 749, 788, 604, 788, 695, 635, 611, 732, 685, 989, 686,
     611, 686, 391, 337, 391, 838, 500, 500, 613, 635, 550, 635, 616, 353, 635, 634, 278, 278, 580,
     278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838},
    {349, 457, 521, 838, 696, 1002, 873, 307, 458, 458, 523, 838, 380, 416, 380, 366, 696, 696, 696,
     696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 581, 1000, 774, 763, 734, 831, 684,
     684, 821, 837, 373, 373, 775, 638, 996, 837, 851, 733, 851, 771, 721, 683, 813, 774, 1104, 771,
     725, 726, 458, 366, 458, 838, 500, 500, 675, 716, 593, 716, 679, 436, 716, 712, 343, 343, 666,
     343, 1042, 712, 688, 716, 716, 494, 596, 479, 712, 652, 924, 646, 652, 583, 712, 366, 712,
     838},
};
// clang-format on

#define OTHER 1.6  // any letter of Latin, Greek and Cyrillic, bold too, is narrower  [dejavu]

double lw_letters_width(const char *text, size_t length, bool is_bold)
{
    double width = 0.0;
    for (size_t i = 0; i < length; i++) {
        const unsigned char byte = (unsigned char)text[i];
        if (byte >= FIRST && byte <= LAST)
            width += widths[is_bold][byte - FIRST] / 1000.0;
        else if ((byte & 0xC0) != 0x80)  // not inside a letter
            width += OTHER;
    }
    return width;
}
