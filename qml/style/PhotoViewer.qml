// One photo as large as the window. Taps alone suffice: a tap goes closer to the place, a button shows the whole again.
//
//   source, marks, description   as in PhotoFrame
//   open(), close()
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import QtQuick.Templates as T

T.Popup {
    id: root

    property alias source: frame.source
    property alias marks: frame.marks
    property alias description: frame.description

    readonly property real most: 6

    function show(zoom: real) {
        frame.zoom = Math.max(1, Math.min(most, zoom));
    }

    closePolicy: T.Popup.CloseOnEscape
    focus: true
    height: parent ? parent.height : 0
    modal: true
    padding: Theme.margin
    parent: T.Overlay.overlay
    width: parent ? parent.width : 0

    background: Rectangle {
        color: Theme.ground
    }
    contentItem: Item {
        PhotoFrame {
            id: frame

            anchors.bottom: actions.top
            anchors.bottomMargin: Theme.targetGap
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            crop: false

            onTapped: (x, y) => {
                centre = Qt.point(x, y);
                if (zoom < 2)
                    zoom = 2.5;
            }

            PinchHandler {
                property real begun: 1

                target: null

                onActiveChanged: begun = frame.zoom
                onActiveScaleChanged: root.show(begun * activeScale)
            }
        }

        Row {
            id: actions

            readonly property real cell: (width - 2 * spacing) / 3

            anchors.bottom: parent.bottom
            anchors.horizontalCenter: parent.horizontalCenter
            spacing: Theme.targetGap
            width: Math.min(parent.width, Theme.readingWidth)

            ActionButton {
                enabled: frame.zoom < root.most
                lift: true
                text: qsTr("Closer")
                width: actions.cell

                onTriggered: root.show(frame.zoom * 1.6)
            }

            ActionButton {
                enabled: frame.zoom > 1
                lift: true
                text: qsTr("Whole")
                width: actions.cell

                onTriggered: {
                    root.show(1);
                    frame.centre = Qt.point(0.5, 0.5);
                }
            }

            ActionButton {
                lift: true
                text: qsTr("Close")
                width: actions.cell

                onTriggered: root.close()
            }
        }
    }
}
