#include "spoken.h"

#include <QFile>
#include <QLocale>
#include <QMultiHash>
#include <QXmlStreamReader>

namespace undercowl::looks {
namespace {

// English to what stands for it; whatever the context, which the pages to be looked at do not name.
QMultiHash<QString, QString> readLanguage(const QString& language) {
    QFile file(QStringLiteral(UNDERCOWL_LANGUAGES "/undercowl_%1.ts").arg(language));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("no file of the language %s", qPrintable(language));
    QMultiHash<QString, QString> all;
    QXmlStreamReader xml(&file);
    QString source;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == u"source")
            source = xml.readElementText();
        else if (xml.name() == u"translation")
            all.insert(source, xml.readElementText(QXmlStreamReader::IncludeChildElements));
    }
    return all;
}

} // namespace

QStringList spoken(const QString& english, const QString& language) {
    if (language.isEmpty() || language == u"en")
        return {english};
    if (english == u".")
        return {QLocale().decimalPoint()};
    static const QMultiHash<QString, QString> all = readLanguage(language);
    QStringList found = all.values(english);
    found.removeDuplicates();
    for (const QString& mark : {QStringLiteral(", "), QStringLiteral(": ")}) {
        if (!found.isEmpty() || !english.contains(mark))
            continue;
        QStringList parts;
        for (const QString& part : english.split(mark))
            parts += spoken(part, language).front();
        found += parts.join(mark);
    }
    return found + QStringList{english}; // what was entered in English stays so
}

} // namespace undercowl::looks
