// Several lines of a form's draft, one thing in each.
import QtQuick
import Undercowl
import Undercowl.Style

TextEntryArea {
    id: root

    required property FormDraft draft
    required property ShopPage page
    required property string name

    lines: 2
    value: draft.values[name] ?? ""

    onEdited: text => draft.set(name, text)

    Connections {
        function onLeaving() {
            root.commit();
        }

        target: root.page
    }
}
