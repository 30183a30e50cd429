#include "core/sight/weights.h"

#include <array>

// Standard C++ cannot take a file into the program yet (C++26 will, by #embed); GCC's and Clang's assembler
// can. UNDERCOWL_NETS is the folder of the files, from CMake.
#define UNDERCOWL_EMBED(name, file)                                                                          \
    asm(".section .rodata\n"                                                                                 \
        ".balign 16\n"                                                                                       \
        ".global undercowl_" #name "\n"                                                                      \
        "undercowl_" #name ":\n"                                                                             \
        ".incbin \"" UNDERCOWL_NETS "/" file "\"\n"                                                          \
        ".global undercowl_" #name "_end\n"                                                                  \
        "undercowl_" #name "_end:\n"                                                                         \
        ".previous\n");                                                                                      \
    extern "C" const unsigned char undercowl_##name[];                                                       \
    extern "C" const unsigned char undercowl_##name##_end[]

UNDERCOWL_EMBED(finder, "finder.onnx");
UNDERCOWL_EMBED(light1, "light1.onnx");
UNDERCOWL_EMBED(light2, "light2.onnx");
UNDERCOWL_EMBED(light3, "light3.onnx");
UNDERCOWL_EMBED(colours1, "colours1.onnx");
UNDERCOWL_EMBED(colours2, "colours2.onnx");
UNDERCOWL_EMBED(colours3, "colours3.onnx");

namespace undercowl::sight {

using Bytes = std::span<const unsigned char>;

Bytes finderWeights() {
    return {undercowl_finder, undercowl_finder_end};
}

Bytes lightWeights(std::size_t judge) {
    const std::array<Bytes, 3> all{Bytes{undercowl_light1, undercowl_light1_end},
                                   Bytes{undercowl_light2, undercowl_light2_end},
                                   Bytes{undercowl_light3, undercowl_light3_end}};
    return all.at(judge);
}

Bytes colourWeights(std::size_t judge) {
    const std::array<Bytes, 3> all{Bytes{undercowl_colours1, undercowl_colours1_end},
                                   Bytes{undercowl_colours2, undercowl_colours2_end},
                                   Bytes{undercowl_colours3, undercowl_colours3_end}};
    return all.at(judge);
}

} // namespace undercowl::sight
