// The line below a field: what is wrong and what to do about it, or else a hint.
//
//   error   shown with a mark and in the stop colour
//   hint    shown quietly when there is no error
import QtQuick
import Undercowl.Style

Row {
    id: root

    property string error: ""
    property string hint: ""

    spacing: Theme.grid * 2
    visible: error !== "" || hint !== ""

    Icon {
        id: mark

        color: Theme.stop
        height: width
        name: "outside"
        visible: root.error !== ""
        width: Theme.smallIcon
    }

    Label {
        Accessible.role: root.error !== "" ? Accessible.AlertMessage : Accessible.StaticText
        kind: Label.Aside
        text: root.error !== "" ? root.error : root.hint
        tone: root.error !== "" ? Theme.stop : Theme.quiet
        width: root.width - (mark.visible ? mark.width + root.spacing : 0)
    }
}
