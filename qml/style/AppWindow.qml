// The window that screens live in: tells the theme how big it is and paints the ground.
//
//   theme       "night", "day" or "sun"
//   textScale   1 to 2
import QtQuick
import QtQuick.Templates as T

T.ApplicationWindow {
    id: root

    property string theme: "night"
    property real textScale: 1

    color: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.textSize

    Component.onCompleted: {
        Theme.mode = Qt.binding(() => root.theme);
        Theme.textScale = Qt.binding(() => root.textScale);
        Theme.windowHeight = Qt.binding(() => root.height);
        Theme.windowWidth = Qt.binding(() => root.width);
    }
}
