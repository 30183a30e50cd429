#include "platform/ear/weights.h"

#include <array>

// As in core/sight/weights.cpp: the assembler takes the files in. UNDERCOWL_EAR_NETS is their folder, from
// CMake.
asm(".section .rodata\n"
    ".balign 16\n"
    ".global undercowl_ear1\n"
    "undercowl_ear1:\n"
    ".incbin \"" UNDERCOWL_EAR_NETS "/words1.net\"\n"
    ".global undercowl_ear2\n"
    "undercowl_ear2:\n"
    ".incbin \"" UNDERCOWL_EAR_NETS "/words2.net\"\n"
    ".global undercowl_ear_end\n"
    "undercowl_ear_end:\n"
    ".previous\n");
extern "C" const unsigned char undercowl_ear1[];
extern "C" const unsigned char undercowl_ear2[];
extern "C" const unsigned char undercowl_ear_end[];

namespace undercowl::platform {

std::span<const unsigned char> earWeights(std::size_t net) {
    return net == 0 ? std::span{undercowl_ear1, undercowl_ear2}
                    : std::span{undercowl_ear2, undercowl_ear_end};
}

} // namespace undercowl::platform
