// An entry that was begun and not finished: continue it, or discard it.
import QtQuick
import Undercowl.Style

Panel {
    id: root

    required property string lineId
    required title
    required property string detail
    required property string aside
    property bool asking: false // whether it is to be thrown away

    signal continued(form: string)
    signal discarded(form: string)

    tone: asking ? Theme.stop : Theme.caution

    Label {
        text: root.asking ? qsTr("Throw away what was typed? It cannot be brought back.")
                          : root.detail === "" ? qsTr("begun %1, not finished").arg(root.aside)
                                               : qsTr("%1, begun %2, not finished").arg(root.detail).arg(root.aside)
        width: parent.width
    }

    Row {
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            kind: root.asking ? ActionButton.Refuse : ActionButton.Other
            text: root.asking ? qsTr("Throw away") : qsTr("Continue")
            width: (parent.width - parent.spacing) / 2

            onTriggered: {
                if (root.asking)
                    root.discarded(root.lineId);
                else
                    root.continued(root.lineId);
            }
        }

        ActionButton {
            // A second touch on the same place keeps it.
            text: root.asking ? qsTr("Keep it") : qsTr("Discard")
            width: (parent.width - parent.spacing) / 2

            onTriggered: root.asking = !root.asking
        }
    }
}
