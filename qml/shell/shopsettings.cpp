#include "qml/shell/shopsettings.h"

#include <algorithm>

namespace undercowl::ui {

QString ShopSettings::theme() const {
    const QString chosen = setting("theme");
    return chosen == u"night" || chosen == u"day" || chosen == u"sun" ? chosen : QString();
}

double ShopSettings::textScale() const {
    bool ok = false;
    const double scale = setting("text-scale").toDouble(&ok);
    return ok ? std::clamp(scale, 1.0, 2.0) : 1.0;
}

namespace {

const QStringList deficiencies{QString(), QStringLiteral("red"), QStringLiteral("green"),
                               QStringLiteral("blue")};

} // namespace

int ShopSettings::vision() const {
    return std::max(0, static_cast<int>(deficiencies.indexOf(setting("vision"))));
}

void ShopSettings::setVision(int deficiency) {
    session_->set(QStringLiteral("vision"), deficiencies.value(deficiency));
}

double ShopSettings::slowness() const {
    return std::clamp(setting("slowness").toDouble(), 0.0, 1.0); // 0 where nothing is set
}

} // namespace undercowl::ui
