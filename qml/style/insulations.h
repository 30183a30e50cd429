// The insulation colours for screens: their codes, and their words in the user's language.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// A singleton without state.
class Insulations : public QObject {
    Q_OBJECT
    // The fourteen codes, in the order of core/colour.
    Q_PROPERTY(QStringList codes READ codes CONSTANT FINAL)
    QML_ELEMENT
    QML_SINGLETON

public:
    explicit Insulations(QObject* parent = nullptr);

    [[nodiscard]] QStringList codes() const;

    // "light blue"; empty for an unknown code.
    Q_INVOKABLE [[nodiscard]] QString word(const QString& code) const;
    // "green, white tracer"; "green" without a tracer; "colour not known" without a base.
    Q_INVOKABLE [[nodiscard]] QString words(const QString& base, const QString& tracer) const;
    // What may run round `base`: an empty code for no tracer, then every other colour.
    Q_INVOKABLE [[nodiscard]] QStringList tracersFor(const QString& base) const;
    // "GN/WH", "GN", or "?".
    Q_INVOKABLE [[nodiscard]] QString codeText(const QString& base, const QString& tracer) const;
};

} // namespace undercowl::ui
