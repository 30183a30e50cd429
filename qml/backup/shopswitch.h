// Which of the shops on this device the app works on: asked for by a screen, done by whoever put the app
// together.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <filesystem>

namespace undercowl::ui {

// keeps: what is chosen is opened at the next start too; otherwise the folder was named for this run alone.
class ShopSwitch : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("The window has it from the app")
    Q_PROPERTY(bool keeps READ keeps CONSTANT)

public:
    ShopSwitch(std::filesystem::path home, bool keeps, QObject* parent = nullptr)
        : QObject(parent), home_(std::move(home)), keeps_(keeps) {}

    // Beside which the other shops lie (core/store/shops.h).
    [[nodiscard]] const std::filesystem::path& home() const { return home_; }
    [[nodiscard]] bool keeps() const { return keeps_; }

    // The app is to go on with that shop: screens and session end, and begin anew on it.
    void goOnWith(const std::filesystem::path& folder) { emit wanted(folder); }

signals:
    void wanted(const std::filesystem::path& folder);

private:
    std::filesystem::path home_;
    bool keeps_;
};

} // namespace undercowl::ui
