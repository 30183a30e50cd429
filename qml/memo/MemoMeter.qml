// The memo that is being spoken: that it runs, for how long, and how loud it is; seen from the corner of the eye.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property MemoRecording memo

    spacing: Theme.grid * 2

    Row {
        spacing: Theme.grid * 3
        width: parent.width

        Icon {
            id: light

            anchors.verticalCenter: time.verticalCenter
            color: Theme.stop
            height: width
            name: "record"
            width: Theme.bigIcon
        }

        Label {
            id: time

            Accessible.name: qsTr("Recording, %1").arg(root.memo.time)
            fontSizeMode: Text.HorizontalFit
            kind: Label.Value
            minimumPixelSize: Theme.textSize
            text: root.memo.time
            width: parent.width - light.width - parent.spacing
            wrapMode: Text.NoWrap
        }
    }

    Rectangle {
        color: Theme.raised
        height: Theme.grid * 4
        radius: height / 2
        width: parent.width

        Rectangle {
            color: Theme.act
            height: parent.height
            radius: height / 2
            width: Math.max(height, parent.width * root.memo.level)
        }
    }

    Waveform {
        levels: root.memo.levels
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: qsTr("marks: %1").arg(root.memo.marks)
        tone: Theme.quiet
        visible: root.memo.marks > 0
        width: parent.width
    }
}
