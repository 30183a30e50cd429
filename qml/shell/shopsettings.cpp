#include "qml/shell/shopsettings.h"

#include "qml/language/catalogue.h"

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

QStringList ShopSettings::languages() {
    return QStringList{tr("As the device")} + languageNames();
}

int ShopSettings::language() const {
    return static_cast<int>(languageCodes().indexOf(setting("language"))) + 1;
}

void ShopSettings::setLanguage(int language) {
    session_->set(QStringLiteral("language"), languageCodes().value(language - 1));
}

bool ShopSettings::english() {
    return Catalogue::shown()->code() == languageCodes().front();
}

double ShopSettings::dimAfter() const {
    return std::clamp(setting("dim-after").toDouble(), 0.0, 60.0); // 0 where nothing is set
}

double ShopSettings::slowness() const {
    return std::clamp(setting("slowness").toDouble(), 0.0, 1.0); // 0 where nothing is set
}

} // namespace undercowl::ui
