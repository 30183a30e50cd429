// Photos round the machine as it came in: a guided set of views, each of which may be passed over.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string machine: ""

    function photograph(view: string, once: bool) {
        root.opens("CameraPage", {
            "jobId": root.session.jobId,
            "purpose": "as found",
            "note": view,
            "once": once,
            "title": view === "" ? root.machine : view
        });
    }

    aside: walk.finished ? "" : (walk.current + 1) + " / " + walk.count
    title: qsTr("As found")
    footer: [
        ActionButton {
            iconName: "camera"
            kind: ActionButton.Main
            lift: true
            text: walk.finished ? qsTr("Another photo") : qsTr("Photo")
            width: parent.width

            onTriggered: root.photograph(walk.key, !walk.finished)
        },
        ActionButton {
            lift: true
            settle: body.settle
            text: walk.finished ? qsTr("Go on with the views") : qsTr("Pass over")
            visible: !walk.finished || walk.open > 0
            width: parent.width

            onTriggered: {
                if (walk.finished)
                    walk.on();
                else
                    walk.skip();
            }
        }
    ]

    ViewsView {
        id: walk

        session: root.session
    }

    CheckWalkBody {
        id: body

        doneText: qsTr("Every view is photographed or passed over.")
        walk: walk
        width: parent.width
    }
}
