// The shop's own measuring instruments: those to be seen to first, then the others, then those no longer used.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Instruments")
    footer: ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Add an instrument")
        width: parent.width

        onTriggered: root.opens("InstrumentPage", {})
    }

    InstrumentsView {
        id: view

        session: root.session
    }

    EmptyState {
        iconName: "gauge"
        text: qsTr("An instrument with its limit of error gives readings their verdict. Until the shop has its own, ordinary ones "
                   + "with assumed limits can be chosen.")
        title: qsTr("No instruments of the shop yet")
        visible: view.ready && view.inUse.count === 0 && view.retired.count === 0
        width: parent.width
    }

    Repeater {
        model: view.inUse

        InstrumentRow {
            width: parent?.width ?? 0

            onChosen: id => root.opens("InstrumentPage", {
                "instrument": id
            })
        }
    }

    SectionHeader {
        text: qsTr("No longer used")
        visible: view.retired.count > 0
        width: parent.width
    }

    Repeater {
        model: view.retired

        InstrumentRow {
            width: parent?.width ?? 0

            onChosen: id => root.opens("InstrumentPage", {
                "instrument": id
            })
        }
    }
}
