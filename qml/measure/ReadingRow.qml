// One reading that was kept; a tap shows it among earlier ones of the same thing, over the days.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl.Style

Panel {
    id: root

    required title
    required property string detail
    required property string aside
    required property string mark

    signal followed(what: string)

    TapHandler {
        onTapped: root.followed(root.title)
    }

    Label {
        kind: Label.Title
        text: root.aside
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: root.detail
        visible: text !== ""
        width: parent.width
    }

    Loader {
        active: root.mark !== ""
        visible: active
        width: parent.width

        sourceComponent: VerdictMark {
            verdict: root.mark === "too close to call" ? "undecided" : root.mark
        }
    }

    Label {
        kind: Label.Aside
        text: qsTr("no verdict: limits or the instrument's uncertainty are not known")
        visible: root.mark === ""
        width: parent.width
    }
}
