// The files of a folder that have such a name, newest first, and the folders in it; a tap takes one.
// Qt 6.4 cannot bind a delegate to the ids around it, knows no members of a list:
// qmllint disable unqualified type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    property string nothing: ""
    required property list<string> names

    signal chosen(file: string)

    spacing: Theme.grid * 3

    Component.onCompleted: {
        place.names = root.names;
        place.folder = "";
    }

    PictureFolder {
        id: place
    }

    ListRow {
        iconName: "up"
        opens: false
        title: qsTr("Folder above %1").arg(place.name)
        visible: place.hasParent
        width: parent.width

        onTriggered: place.up()
    }

    Label {
        text: place.busy ? qsTr("Looking") : root.nothing
        tone: Theme.quiet
        visible: place.busy || place.entries.count === 0
        width: parent.width
    }

    Repeater {
        model: place.entries

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail
            required property string mark

            aside: row.detail
            iconName: row.mark === "folder" ? "list" : "archive"
            width: parent?.width ?? 0

            onTriggered: {
                if (row.mark === "folder")
                    place.folder = row.lineId;
                else
                    root.chosen(row.lineId);
            }
        }
    }
}
