// The demo's pair of photos: a connector before and after two of its wires were exchanged.
#pragma once

#include <QPointF>
#include <QSize>
#include <QString>

#include <array>
#include <string>
#include <vector>

namespace undercowl::e2e {

struct Wire {
    const char* base;   // as the picker calls it
    const char* tracer; // "no tracer" for none
    const char* code;   // as the record has it
};

// What lies in place 1 to 9 of the photo before. The photo is a rendered one, so that this is known: source,
// the render's own description of the scene.
inline constexpr std::array<Wire, 9> truth{{{"blue", "no tracer", "BU"},
                                            {"black", "white", "BK/WH"},
                                            {"white", "red", "WH/RD"},
                                            {"pink", "no tracer", "PK"},
                                            {"red", "no tracer", "RD"},
                                            {"light blue", "no tracer", "LBU"},
                                            {"violet", "black", "VT/BK"},
                                            {"light green", "no tracer", "LGN"},
                                            {"black", "blue", "BK/BU"}}};
inline constexpr QSize photoSize{1280, 960}; // of both photos

// As the screens say it.
[[nodiscard]] QString words(const Wire& wire);

// The stroke across the wires, "before" or "after", in pixels of the photo.
[[nodiscard]] std::vector<QPointF> strokeOf(const char* which);

// A copy of one of the demo's files.
void lay(const std::string& photo, const std::string& as);

} // namespace undercowl::e2e
