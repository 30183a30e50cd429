// One instrument of the shop: added, changed, retired.
//
//   instrument   its id; empty for a new one
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string instrument: ""

    function fillIn() {
        if (instrument !== "" && view.ready && draft.ready && !draft.begun)
            draft.fill(view.known(instrument));
    }

    listPage: "InstrumentsPage"
    title: instrument === "" ? qsTr("New instrument") : qsTr("Instrument")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keep(draft, root.instrument);
            }
        },
        ActionButton {
            kind: ActionButton.Refuse
            text: view.ready && view.isRetired(root.instrument) ? qsTr("Use it again") : qsTr("No longer used")
            visible: root.instrument !== ""
            width: parent.width

            onTriggered: view.retire(root.instrument, !view.isRetired(root.instrument))
        }
    ]

    InstrumentsView {
        id: view

        session: root.session

        onChanged: root.fillIn()
        onKept: root.leaves()
    }

    FormDraft {
        id: draft

        form: "instrument/" + root.instrument
        session: root.session
        title: qsTr("Instrument")

        onReadyChanged: root.fillIn()
    }

    InstrumentForm {
        draft: draft
        page: root
        view: view
        width: parent.width
    }
}
