// The pictures of a folder, newest first; a tap takes one.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    property string start: ""

    signal chosen(file: string)

    spacing: Theme.grid * 3

    PictureFolder {
        id: place

        folder: root.start
    }

    ListRow {
        iconName: "up"
        lift: true
        opens: false
        title: qsTr("Folder above %1").arg(place.name)
        visible: place.hasParent
        width: parent.width

        onTriggered: place.up()
    }

    Label {
        text: place.busy ? qsTr("Looking for pictures") : qsTr("No pictures here")
        tone: Theme.quiet
        visible: place.busy || place.entries.count === 0
        width: parent.width
    }

    Grid {
        id: grid

        readonly property real cell: (width - spacing * (columns - 1)) / columns

        columns: Math.max(2, Math.floor(width / 180))
        spacing: Theme.targetGap
        width: parent.width

        Repeater {
            model: place.entries

            PictureCell {
                width: grid.cell

                onChosen: (path, isFolder) => {
                    if (isFolder)
                        place.folder = path;
                    else
                        root.chosen(path);
                }
            }
        }
    }
}
