#include "qml/style/icon.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>
#include <QtQml/qqmlinfo.h>

namespace undercowl::ui {

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

Icon::~Icon() = default;

void Icon::setName(const QString& name) {
    if (name == name_)
        return;
    name_ = name;
    reload();
    emit nameChanged();
}

void Icon::setColor(const QColor& color) {
    if (color == color_)
        return;
    color_ = color;
    drawing_.reset();
    update();
    emit colorChanged();
}

void Icon::reload() {
    drawing_.reset();
    if (!name_.isEmpty() && !QFile::exists(QStringLiteral(":/undercowl/icons/%1.svg").arg(name_)))
        qmlWarning(this) << "there is no icon named" << name_;
    update();
}

void Icon::paint(QPainter* painter) {
    if (name_.isEmpty())
        return;
    if (!drawing_) {
        QFile file(QStringLiteral(":/undercowl/icons/%1.svg").arg(name_));
        if (!file.open(QIODevice::ReadOnly))
            return;
        QByteArray svg = file.readAll();
        svg.replace("currentColor", color_.name(QColor::HexRgb).toLatin1());
        drawing_ = std::make_unique<QSvgRenderer>(svg);
    }
    drawing_->render(painter, boundingRect());
}

} // namespace undercowl::ui
