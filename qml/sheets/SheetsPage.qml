// Everything as spreadsheets; machines and parts from one, looked at line by line before it is brought in.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Spreadsheets")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: view.ready > 0 ? qsTr("Bring in: %1").arg(view.ready) : qsTr("Look at the file")
            width: parent.width

            onTriggered: {
                if (view.ready > 0)
                    view.bringIn();
                else
                    view.look(file.commit());
            }
        },
        ActionButton {
            lift: true
            text: qsTr("Write everything")
            width: parent.width

            onTriggered: view.write()
        }
    ]

    SheetsView {
        id: view

        session: root.session
    }

    TextEntry {
        id: file

        error: view.error
        hint: qsTr("A sheet of machines has make and model in its head, one of parts has job and part.")
        label: qsTr("File to bring in (CSV)")
        mono: true
        width: parent.width

        onEdited: view.forget()
    }

    Label {
        text: qsTr("Not brought in: %1").arg(view.unknown)
        tone: Theme.caution
        visible: view.unknown !== ""
        width: parent.width
    }

    Label {
        strong: true
        text: qsTr("Lines brought in: %1").arg(view.broughtIn)
        visible: view.broughtIn > 0
        width: parent.width
    }

    Repeater {
        model: view.lines

        ListRow {
            id: line

            required title
            required property string detail
            required property string mark

            aside: line.detail
            iconName: line.mark === "wrong" ? "caution" : line.mark === "passed" ? "minus" : "plus"
            opens: false
            width: parent?.width ?? 0
        }
    }

    FilesWritten {
        files: view.files
        folder: view.folder
        receiverTitle: root.title
        session: root.session
        width: parent.width
    }
}
