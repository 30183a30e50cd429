// An entry that was begun and not finished: continue it, or discard it.
import QtQuick
import Undercowl.Style

Panel {
    id: root

    required property string lineId
    required title
    required property string detail
    required property string aside

    signal continued(form: string)
    signal discarded(form: string)

    tone: Theme.caution

    Label {
        text: root.detail === "" ? qsTr("begun %1, not finished").arg(root.aside)
                                 : qsTr("%1, begun %2, not finished").arg(root.detail).arg(root.aside)
        width: parent.width
    }

    Row {
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            text: qsTr("Continue")
            width: (parent.width - parent.spacing) / 2

            onTriggered: root.continued(root.lineId)
        }

        ActionButton {
            kind: ActionButton.Refuse
            text: qsTr("Discard")
            width: (parent.width - parent.spacing) / 2

            onTriggered: root.discarded(root.lineId)
        }
    }
}
