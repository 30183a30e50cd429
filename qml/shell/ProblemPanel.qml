// What went wrong, with its remedy; stays until it is read.
//
//   bringsBack   where the shop is at fault, a backup is offered
//   opens(page, properties)
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session
    property bool bringsBack: true

    signal opens(page: string, properties: var)

    height: panel.active ? panel.height + Theme.margin : 0

    Loader {
        id: panel

        active: root.session.problem !== ""
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(parent.width - 2 * Theme.margin, Theme.readingWidth)

        sourceComponent: Panel {
            tone: Theme.stop

            Label {
                text: root.session.problem
                tone: Theme.stop
                width: parent.width
            }

            ActionButton {
                text: root.session.state === ShopSession.Failed ? qsTr("Try again") : qsTr("Read")
                width: parent.width

                onTriggered: root.session.state === ShopSession.Failed ? root.session.tryAgain()
                                                                       : root.session.clearProblem()
            }

            ActionButton {
                text: qsTr("Bring a shop back")
                visible: root.bringsBack && (root.session.state === ShopSession.Failed || root.session.readOnly)
                width: parent.width

                onTriggered: {
                    if (root.session.state !== ShopSession.Failed) // which it was read for
                        root.session.clearProblem();
                    root.opens("RestorePage", {});
                }
            }
        }
    }
}
