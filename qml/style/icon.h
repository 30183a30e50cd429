// One icon of assets/icons, drawn in a colour of the theme: Qt Quick's Image cannot tint.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>

class QSvgRenderer;

namespace undercowl::ui {

// name: the file's name in assets/icons without its suffix; an unknown name draws nothing and warns once.
// color: replaces the drawing's currentColor. The icon fills the item, which should be square.
class Icon : public QQuickPaintedItem {
    Q_OBJECT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY nameChanged FINAL)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY colorChanged FINAL)
    QML_ELEMENT

public:
    explicit Icon(QQuickItem* parent = nullptr);
    ~Icon() override;

    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] QColor color() const { return color_; }
    void setColor(const QColor& color);

    void paint(QPainter* painter) override;

signals:
    void nameChanged();
    void colorChanged();

private:
    void reload();

    QString name_;
    QColor color_{Qt::black};
    std::unique_ptr<QSvgRenderer> drawing_;
};

} // namespace undercowl::ui
