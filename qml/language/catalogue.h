// The languages that the screen and the record can speak. English is the language of the source texts; each
// other one is a file of Qt Linguist in assets/languages.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QTranslator>

#include <memory>

namespace undercowl::ui {

// "en", "de", ... in the order in which they are offered.
[[nodiscard]] const QStringList& languageCodes();

// "Deutsch": each language in its own words, so that whoever speaks it finds it.
[[nodiscard]] const QStringList& languageNames();

// The first of the device's languages that is here; English where there is none.
[[nodiscard]] QString deviceLanguage();

// The sentences of one language. Does not change once made: may be read on any thread.
class Catalogue {
public:
    explicit Catalogue(const QString& code); // an unknown code speaks English

    // What the screen speaks; English until speak() was called. To be called on the touch thread, kept
    // anywhere.
    [[nodiscard]] static std::shared_ptr<const Catalogue> shown();

    [[nodiscard]] const QString& code() const { return code_; }
    // Decimal mark and months: those of the device where it speaks this language, else of the language's own
    // country.
    [[nodiscard]] const QLocale& locale() const { return locale_; }
    [[nodiscard]] bool isEnglish() const;
    // The sentence in this language; empty where it has none.
    [[nodiscard]] QString found(const char* context, const char* source) const;
    // The same; the English one where it has none. CONTEXT and SOURCE as lupdate wrote
    // them.
    [[nodiscard]] QString translated(const char* context, const char* source) const;

private:
    friend bool speak(const QString& code);

    QString code_;
    QLocale locale_;
    QTranslator translator_;
};

// Makes the language that of the whole app: its texts, decimal marks and dates. True if it was another one
// before: then whoever shows words shows them again. Needs a QCoreApplication; on the touch thread.
bool speak(const QString& code);

} // namespace undercowl::ui
