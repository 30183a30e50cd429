// A memo that was kept, by its line in JobMemoList.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a component to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Panel {
    id: root

    required property ShopSession session
    property Player player
    property string memo: ""
    property string detail: ""
    property string aside: ""
    property bool spoken: false

    Label {
        kind: Label.Aside
        text: [root.detail, root.aside].filter(word => word !== "").join(" · ")
        tone: Theme.quiet
        width: parent.width
    }

    Loader {
        active: root.spoken
        visible: active
        width: parent.width

        sourceComponent: SpokenMemo {
            memo: root.memo
            player: root.player
            session: root.session
        }
    }
}
