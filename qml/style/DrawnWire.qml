// A wire drawn large: insulation with its tracer, and a white sleeve with the code in letters. Put the words
// (Insulations.words) below it: colour, letters and words always go together.
//
//   base, tracer   codes ("GN", "WH"); an empty tracer means none, an empty base an unknown colour
//   height         Theme.wireHeight unless set
import QtQuick
import Undercowl.Style

Item {
    id: root

    property string base: ""
    property string tracer: ""

    Accessible.name: Insulations.words(base, tracer)
    Accessible.role: Accessible.Graphic
    implicitHeight: Math.max(Theme.wireHeight, letters.implicitHeight + Theme.grid)
    implicitWidth: Theme.liftKeyWidth * 3

    WireStretch {
        anchors.fill: parent
        anchors.bottomMargin: Theme.grid
        anchors.topMargin: Theme.grid
        base: root.base
        edge: Theme.line
        gap: sleeve.width
        radius: Theme.corner
        tracer: root.tracer
    }

    Rectangle {
        id: sleeve

        anchors.centerIn: parent
        border.color: Theme.sleeveInk
        border.width: Theme.stroke
        color: Theme.sleeve
        height: parent.height
        radius: Theme.smallCorner
        // However long the code, a quarter of the wire shows on each side at 100 %.
        width: Math.min(letters.implicitWidth + Theme.grid * 5, parent.width * 3 / 4)

        Label {
            id: letters

            anchors.fill: parent
            anchors.margins: Theme.grid
            fontSizeMode: Text.Fit
            horizontalAlignment: Text.AlignHCenter
            kind: Label.Code
            minimumPixelSize: Theme.textSize
            text: Insulations.codeText(root.base, root.tracer)
            tone: Theme.sleeveInk
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
        }
    }
}
