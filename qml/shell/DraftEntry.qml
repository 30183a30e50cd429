// A text field of a form: kept in the form's draft on each change, and committed when its page is left.
//
//   draft, name   where its value goes
//   page          the page it stands on
import QtQuick
import Undercowl
import Undercowl.Style

TextEntry {
    id: root

    required property FormDraft draft
    required property ShopPage page
    required property string name

    value: draft.values[name] ?? ""

    onEdited: text => draft.set(name, text)

    Connections {
        function onLeaving() {
            root.commit();
        }

        target: root.page
    }
}
