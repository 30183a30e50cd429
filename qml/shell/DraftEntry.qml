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
    property string refused: "" // what stood here when it could not be kept
    property bool tried: false

    changed: tried && text !== refused
    value: draft.values[name] ?? ""

    onErrorChanged: refused = text
    onEdited: text => draft.set(name, text)

    Connections {
        function onLeaving() {
            root.refused = root.commit();
            root.tried = true;
        }

        target: root.page
    }
}
