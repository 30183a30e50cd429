// What was done, as large as its room lets it be, and what the button beside it does.
//
//   text      what was done
//   largest   size of its letters, where there is room; at the least they are those of the smallest words at 100 %
//   whole     all of it, or what stands before its first colon, or nothing
//   named     "Undo" stands above it where there is room for both: the button beside it has an icon alone
//   alone     it stands on the button, which has nothing else: "Undo" comes first
import QtQuick

Item {
    id: root

    property string text: ""
    property int largest: Theme.asideSize
    property bool whole: false
    property bool named: false
    property bool alone: false

    readonly property int least: Math.round(Theme.asideSize / Theme.textScale)
    readonly property int alignment: alone ? Text.AlignHCenter : Text.AlignLeft
    readonly property bool brief: whole && full.implicitHeight > height
    readonly property Label shown: brief ? beginning : full
    readonly property bool both: named && shown.implicitHeight + name.implicitHeight <= height

    FontMetrics {
        id: small

        font.family: Theme.family
        font.pixelSize: root.least
    }

    Label {
        id: name

        font.pixelSize: Math.round(Theme.textSize / Theme.textScale)
        fontSizeMode: Text.HorizontalFit
        height: root.both ? implicitHeight : parent.height
        horizontalAlignment: root.alignment
        minimumPixelSize: root.least
        strong: true
        text: qsTr("Undo")
        verticalAlignment: Text.AlignVCenter
        visible: root.both || root.alone || root.named && !said.visible
        width: parent.width
        wrapMode: Text.NoWrap
    }

    component Trial: Label {
        visible: false
        width: parent?.width ?? 0
    }

    Trial {
        id: full

        font.pixelSize: root.least
        text: root.text
    }

    Trial {
        id: beginning

        font.pixelSize: root.least
        text: root.text.split(/\s*: /)[0]
    }

    Label {
        id: said

        readonly property real longest: Math.max(...text.split(" ").map(word => small.advanceWidth(word)))

        elide: Text.ElideRight
        font.pixelSize: root.both ? Theme.textSize : root.largest
        fontSizeMode: Text.Fit
        height: parent.height - y
        horizontalAlignment: root.alignment
        kind: Label.Aside
        minimumPixelSize: root.least
        text: root.shown.text
        tone: Theme.ink
        verticalAlignment: Text.AlignVCenter
        visible: (root.both || !root.alone) && !(root.whole && root.shown.implicitHeight > root.height)
        width: parent.width
        // Letters become smaller before a word is parted.
        wrapMode: longest > width ? Text.Wrap : Text.WordWrap
        y: root.both ? name.height : 0
    }
}
