// Answers from below, for more than fit side by side. A tap outside or Escape leaves without an answer.
//
//   title     what is asked
//   options   the words;  icons: before them, as many or none
//   current   index of the present answer, -1 for none
//   lift      sized for gloved thumbs
//   chosen(index)
//   open(), close()
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import QtQuick.Templates as T

T.Popup {
    id: root

    property string title: ""
    property list<string> options
    property list<string> icons
    property int current: -1
    property bool lift: false

    signal chosen(index: int)

    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    focus: true
    height: Math.min(list.contentHeight + heading.height + 2 * Theme.margin + Theme.grid * 2,
                     parent ? parent.height * 0.85 : 0)
    modal: true
    padding: Theme.margin
    parent: T.Overlay.overlay
    width: parent ? Math.min(parent.width, Theme.readingWidth) : 0
    x: parent ? (parent.width - width) / 2 : 0
    y: parent ? parent.height - height : 0

    background: Rectangle {
        border.color: Theme.line
        border.width: Theme.hairline
        color: Theme.ground
        radius: Theme.corner
    }
    contentItem: Item {
        Label {
            id: heading

            Accessible.role: Accessible.Heading
            kind: Label.Title
            text: root.title
            width: parent.width
        }

        ListView {
            id: list

            anchors.bottom: parent.bottom
            anchors.top: heading.bottom
            anchors.topMargin: Theme.grid * 2
            boundsBehavior: Flickable.StopAtBounds
            clip: true
            model: root.options
            spacing: root.lift ? Theme.targetGap : Theme.grid * 2
            width: parent.width

            delegate: ListRow {
                required property int index
                required property string modelData

                done: index === root.current
                iconName: root.icons[index] ?? ""
                lift: root.lift
                opens: false
                title: modelData
                width: list.width

                onTriggered: {
                    root.close();
                    root.chosen(index);
                }
            }
        }
    }
    T.Overlay.modal: Rectangle {
        color: Theme.shade
    }

    Connections {
        // Qt 6.4 crashes when it destroys a window over which a sheet is still open.
        function onClosing() {
            root.close();
        }

        target: root.parent?.Window.window ?? null
    }
}
