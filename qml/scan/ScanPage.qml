// Scanning the label of a bag, or the number of a part: by the camera, from a picture, or typed.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property Camera camera
    property string pictures: ""

    title: qsTr("Scan")
    footer: ActionButton {
        enabled: typed.text !== ""
        lift: true
        text: qsTr("Look for the number")
        width: parent.width

        onTriggered: scan.look(typed.commit())
    }

    ScanView {
        id: scan

        active: root.visible
        camera: root.camera
        session: root.session

        onBagFound: (job, step) => root.opens("RefitPage", {
            "step": step
        })
        onPartFound: part => root.opens("PartPage", {
            "part": part
        })
    }

    Label {
        strong: true
        text: scan.answer === "" ? qsTr("Hold the code of a bag or a part before the camera.") : scan.answer
        width: parent.width
    }

    Repeater {
        model: scan.parts

        ListRow {
            id: part

            required title
            required property string lineId
            required property string detail
            required property string more

            aside: [part.detail, part.more].join("\n")
            iconName: "parts"
            width: parent?.width ?? 0

            onTriggered: scan.openPart(part.lineId)
        }
    }

    CameraView {
        camera: root.camera
        height: Math.max(Theme.liftMain, width * 3 / 4)
        visible: scan.hasCamera
        width: parent.width
    }

    TextEntry {
        id: typed

        label: qsTr("Or type the number")
        mono: true
        width: parent.width
    }

    PicturePicker {
        start: root.pictures
        visible: !scan.hasCamera
        width: parent.width

        onChosen: file => scan.readFile(file)
    }
}
