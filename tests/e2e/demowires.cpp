#include "tests/e2e/demowires.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

namespace undercowl::e2e {

QString words(const Wire& wire) {
    const QString base = QString::fromLatin1(wire.base);
    const QString tracer = QString::fromLatin1(wire.tracer);
    return tracer == QStringLiteral("no tracer") ? base : QStringLiteral("%1, %2 tracer").arg(base, tracer);
}

std::vector<QPointF> strokeOf(const char* which) {
    std::ifstream in(std::string{UNDERCOWL_DEMO} + "/wiring.json");
    const auto wiring = nlohmann::json::parse(in);
    std::vector<QPointF> points;
    for (const auto& point : wiring.at(which).at("along"))
        points.emplace_back(point.at(0).get<double>(), point.at(1).get<double>());
    return points;
}

void lay(const std::string& photo, const std::string& as) {
    std::filesystem::create_directories(std::filesystem::path(as).parent_path());
    std::filesystem::copy_file(std::string{UNDERCOWL_DEMO} + "/" + photo, as);
}

} // namespace undercowl::e2e
