#include "qml/language/catalogue.h"

#include <QCoreApplication>

namespace undercowl::ui {

namespace {

std::shared_ptr<Catalogue>& current() {
    static std::shared_ptr<Catalogue> catalogue;
    return catalogue;
}

QString languageOf(const QLocale& locale) {
    return locale.name().section(u'_', 0, 0);
}

} // namespace

const QStringList& languageCodes() {
    static const QStringList codes{QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("it"),
                                   QStringLiteral("fr"), QStringLiteral("es")};
    return codes;
}

const QStringList& languageNames() {
    static const QStringList names{QStringLiteral("English"), QStringLiteral("Deutsch"),
                                   QStringLiteral("Italiano"), QStringLiteral("Français"),
                                   QStringLiteral("Español")};
    return names;
}

QString deviceLanguage() {
    for (const QString& wanted : QLocale::system().uiLanguages())
        if (const QString code = wanted.section(u'-', 0, 0); languageCodes().contains(code))
            return code;
    return languageCodes().front();
}

Catalogue::Catalogue(const QString& code)
    : code_(languageCodes().contains(code) ? code : languageCodes().front()), locale_(QLocale::system()) {
    // A device that speaks nothing in particular (its name is "C") writes numbers as English does.
    const bool plain = locale_.language() == QLocale::C && code_ == languageCodes().front();
    if (!plain && languageOf(locale_) != code_)
        locale_ = QLocale(code_);
    if (!translator_.load(QStringLiteral(":/undercowl/languages/undercowl_%1.qm").arg(code_)))
        qFatal("the language %s is not in the program", qPrintable(code_));
}

std::shared_ptr<const Catalogue> Catalogue::shown() {
    if (current() == nullptr)
        current() = std::make_shared<Catalogue>(languageCodes().front());
    return current();
}

bool Catalogue::isEnglish() const {
    return code_ == languageCodes().front();
}

QString Catalogue::found(const char* context, const char* source) const {
    return translator_.translate(context, source);
}

QString Catalogue::translated(const char* context, const char* source) const {
    const QString known = found(context, source);
    return known.isEmpty() ? QString::fromUtf8(source) : known;
}

bool speak(const QString& code) {
    const auto before = current();
    auto now = std::make_shared<Catalogue>(code);
    if (before != nullptr && before->code() == now->code())
        return false;
    if (before != nullptr) // else what the new one lacks would be taken from the old one
        QCoreApplication::removeTranslator(&before->translator_);
    current() = now;
    QLocale::setDefault(now->locale());
    QCoreApplication::installTranslator(&now->translator_);
    return before != nullptr || now->code() != languageCodes().front();
}

} // namespace undercowl::ui
