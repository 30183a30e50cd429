#include "core/trade/threads.h"

#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/spelling.h"

#include <cmath>
#include <numbers>

namespace undercowl::trade {
namespace {

struct Size {
    double diameter;
    double pitch;   // coarse, ISO 261
    double bearing; // washer face and hole: mean diameter
};

constexpr std::array sizes{
    Size{3, 0.5, 0},
    Size{4, 0.7, (5.88 + 4.5) / 2},
    Size{5, 0.8, (6.88 + 5.5) / 2},
    Size{6, 1, 7.74},
    Size{7, 1, (9.63 + 7.6) / 2},
    Size{8, 1.25, 10.315},
    Size{10, 1.5, 12.815},
    Size{12, 1.75, (16.63 + 13.5) / 2},
    Size{14, 2, (19.37 + 15.5) / 2},
    Size{16, 2, (22.49 + 17.5) / 2},
};

constexpr std::array classes{
    PropertyClass{"4.6", 225, 400},   PropertyClass{"5.8", 380, 520},   PropertyClass{"8.8", 580, 800},
    PropertyClass{"10.9", 830, 1040}, PropertyClass{"12.9", 970, 1220},
};

struct Loads {
    double diameter;
    std::array<double, classes.size()> newtons;
};

// ISO 898-1:2013 table 5.
constexpr std::array tableLoads{
    Loads{4, {1980, 3340, 5100, 7290, 8520}},       Loads{5, {3200, 5400, 8230, 11800, 13800}},
    Loads{6, {4520, 7640, 11600, 16700, 19500}},    Loads{7, {6500, 11000, 16800, 24000, 28000}},
    Loads{8, {8240, 13900, 21200, 30400, 35500}},   Loads{10, {13000, 22000, 33700, 48100, 56300}},
    Loads{12, {19000, 32000, 48900, 70000, 81800}},
};

std::string sizeList() {
    std::string list;
    for (const Size& size : sizes)
        list.append(list.empty() ? "M" : ", M").append(units::formatSignificant(size.diameter));
    return list + ", a fine pitch written as M10x1.25";
}

const Size* sizeOf(double diameter) {
    for (const Size& size : sizes)
        if (size.diameter == diameter)
            return &size;
    return nullptr;
}

} // namespace

tl::expected<Thread, std::string> parseThread(std::string_view text) {
    std::string folded;
    for (const char c : units::foldedSpelling(units::plainBlanks(text)))
        if (c != ' ')
            folded += c;
    // The multiplication sign is as good as the letter.
    if (const auto cross = folded.find("\u00d7"); cross != std::string::npos)
        folded.replace(cross, std::string_view("\u00d7").size(), "x");
    if (!folded.starts_with('m'))
        return tl::unexpected(sizeList());
    const auto cross = folded.find('x');
    const auto diameter = units::parseNumber(folded.substr(1, cross == std::string::npos ? cross : cross - 1),
                                             units::Comma::Decimal);
    const Size* size = diameter ? sizeOf(diameter->value) : nullptr;
    if (size == nullptr)
        return tl::unexpected(sizeList());
    if (cross == std::string::npos)
        return Thread{size->diameter, size->pitch, true};
    const auto pitch = units::parseNumber(folded.substr(cross + 1), units::Comma::Decimal);
    if (!pitch || pitch->value < 0.2 || pitch->value > size->pitch)
        return tl::unexpected("a pitch from 0.2 to " + units::formatSignificant(size->pitch) +
                              " mm (the coarse one)");
    return Thread{size->diameter, pitch->value, pitch->value == size->pitch};
}

double stressArea(const Thread& thread) {
    const double core = thread.diameter - 0.938194 * thread.pitch;
    return std::numbers::pi / 4 * core * core;
}

double nominalStressArea(const Thread& thread) {
    const double area = stressArea(thread);
    const double unit = std::pow(10.0, std::floor(std::log10(area)) - 2);
    return std::round(area / unit) * unit;
}

double pitchDiameter(const Thread& thread) {
    return thread.diameter - 0.649519 * thread.pitch;
}

std::optional<PropertyClass> propertyClass(std::string_view name) {
    for (const PropertyClass& grade : classes)
        if (grade.name == name)
            return grade;
    return std::nullopt;
}

double proofLoad(const Thread& thread, const PropertyClass& grade) {
    for (const Loads& loads : tableLoads) {
        if (!thread.coarse || loads.diameter != thread.diameter)
            continue;
        for (std::size_t i = 0; i < classes.size(); ++i)
            if (classes.at(i).name == grade.name)
                return loads.newtons.at(i);
    }
    return grade.proofStress * nominalStressArea(thread);
}

double nutFactor(const Thread& thread, double threadFriction, double headFriction, double meanBearing) {
    const double pitchPart = thread.pitch / (2 * std::numbers::pi);
    const double threadPart = threadFriction * pitchDiameter(thread) / (2 * std::cos(std::numbers::pi / 6));
    return (pitchPart + threadPart + headFriction * meanBearing / 2) / thread.diameter;
}

std::optional<double> hexagonBearing(double diameter) {
    const Size* size = sizeOf(diameter);
    return size != nullptr && size->bearing > 0 ? std::optional(size->bearing) : std::nullopt;
}

} // namespace undercowl::trade
