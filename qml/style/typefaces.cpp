#include "qml/style/typefaces.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace undercowl::ui {

Typefaces::Typefaces(QObject* parent) : QObject(parent) {
    load();
}

void Typefaces::load() {
    static const bool once = [] {
        for (const char* face : {"Sans-Regular", "Sans-Bold", "Mono-Regular", "Mono-Bold"})
            QFontDatabase::addApplicationFont(
                QStringLiteral(":/undercowl/fonts/Undercowl%1.otf").arg(QLatin1String(face)));
        // Glyphs are not hinted: on the screens of phones it changes nothing, and it costs time.
        QFont font(sans());
        font.setHintingPreference(QFont::PreferNoHinting);
        QGuiApplication::setFont(font);
        return true;
    }();
    Q_UNUSED(once)
}

} // namespace undercowl::ui
